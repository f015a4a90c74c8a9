// SPDX-License-Identifier: Apache-2.0
#include "core/book/outcomes.h"

#include <algorithm>
#include <set>
#include <variant>

namespace snugline::book {

namespace {

bool isOff(fit::Finding finding) { return finding == fit::Finding::over || finding == fit::Finding::under; }

using Off = std::pair<fit::Mark, fit::Finding>;

// Which way a change went, by what was found before it: a mark that presses wants a thinner pad and longer straps, one that gapes the
// other way round; at the nape a thicker crown pad lifts an edge that digs in (the guide's table). Pads of the jaw follow the jaw's
// finding, everything else the last thing found. 0 where that does not say.
int directionOf(const fit::Adjusted& change, const std::vector<Off>& offs) {
  if (change.deed != fit::Deed::swap && change.deed != fit::Deed::relength) return 0;
  const bool isJaw = change.part == gear::Part::jawLeft || change.part == gear::Part::jawRight;
  for (auto off = offs.rbegin(); off != offs.rend(); ++off) {
    const auto [mark, finding] = *off;
    if (isJaw && mark != fit::Mark::jaw) continue;
    const int loosens = finding == fit::Finding::over ? -1 : 1;  // of a pad
    if (change.deed == fit::Deed::relength) return mark == fit::Mark::chin || mark == fit::Mark::straps ? -loosens : 0;
    return mark == fit::Mark::nape ? -loosens : loosens;
  }
  return 0;
}

bool isSameDeed(const fit::Adjusted& a, const fit::Adjusted& b) {
  const auto isAir = [](fit::Deed deed) { return deed == fit::Deed::add || deed == fit::Deed::release; };
  return (a.deed == b.deed || (isAir(a.deed) && isAir(b.deed))) && a.port == b.port && a.part == b.part;
}

int netPumps(const fit::Adjusted& change) {
  const int pumps = std::max(change.pumps, 1);  // only gauged: once
  return change.deed == fit::Deed::release ? -pumps : pumps;
}

void merge(std::vector<Done>& done, const Done& one) {
  const auto same = std::find_if(done.begin(), done.end(), [&](const Done& d) { return isSameDeed(d.change, one.change); });
  if (same == done.end()) {
    done.push_back(one);
    return;
  }
  fit::Adjusted change = one.change;
  if (change.deed == fit::Deed::add || change.deed == fit::Deed::release) {
    const int pumps = netPumps(same->change) + netPumps(one.change);
    if (pumps == 0) {
      done.erase(same);
      return;
    }
    change.deed = pumps > 0 ? fit::Deed::add : fit::Deed::release;
    change.pumps = std::abs(pumps);
  }
  same->change = change;
  same->direction = one.direction;
}

}  // namespace

std::vector<WordOutcome> outcomesOf(const season::AthleteRecord& athlete) {
  std::vector<WordOutcome> outcomes;
  for (const season::SaidRecord& said : athlete.said) {
    if (!said.isAnswered || said.isUnwell || !said.where) continue;
    WordOutcome outcome;
    outcome.said = said.fact;
    outcome.where = *said.where;
    outcome.side = said.side;
    outcome.feels = said.isBroken ? fit::Feels::broke : said.feels;
    outcome.saidAt = outcome.seenAt = said.at;
    outcome.isOtherHelmet = !said.unit.empty() && !athlete.units.empty() &&
                            std::find(athlete.units.begin(), athlete.units.end(), said.unit) == athlete.units.end();
    const season::Stamp saidThen{said.at, {}, said.fact};
    for (const season::EndedCheck& check : athlete.checks) {
      if (!season::isAfter(check.stamp, saidThen) || check.strip[static_cast<std::size_t>(*said.where)] == fit::Finding::unseen) continue;
      outcome.check = check.check;
      outcome.seenAt = check.stamp.at;
      outcome.found = check.strip[static_cast<std::size_t>(*said.where)];
      outcome.verdict = check.verdict;
      break;
    }
    outcomes.push_back(std::move(outcome));
  }
  return outcomes;
}

std::vector<Done> doneIn(const std::vector<Fact>& history) {
  std::set<std::string> takenBack;
  for (auto fact = history.rbegin(); fact != history.rend(); ++fact) {
    const auto* corrected = std::get_if<Corrected>(&fact->body);
    if (corrected != nullptr && !takenBack.contains(fact->id())) takenBack.insert(corrected->fact);
  }
  std::vector<Done> done;
  std::vector<Off> offs;  // as last found, oldest first
  for (const Fact& fact : history) {
    const auto* answered = std::get_if<CheckAnswered>(&fact.body);
    if (answered == nullptr || takenBack.contains(fact.id())) continue;
    for (const fit::Answer& answer : answered->answers) {
      if (const auto* seen = std::get_if<fit::MarkSeen>(&answer); seen != nullptr && isOff(seen->finding)) {
        offs.emplace_back(seen->mark, seen->finding);
      }
      const auto* change = std::get_if<fit::Adjusted>(&answer);
      if (change == nullptr) continue;
      merge(done, {*change, directionOf(*change, offs)});
    }
  }
  return done;
}

}  // namespace snugline::book
