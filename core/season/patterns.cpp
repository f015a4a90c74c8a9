// SPDX-License-Identifier: Apache-2.0
#include "core/season/patterns.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

#include "core/season/board.h"

namespace snugline::season {

namespace {

constexpr Day kEver{std::numeric_limits<std::int32_t>::min()};

bool counts(const SaidRecord& said, Day from, Day to) {
  if (!said.where || said.isUnwell) return false;
  const Day day = dayOf(said.at);
  return day <= to && day >= from;
}

// The words of one place while they are gathered.
struct Heap {
  std::set<Day> days;
  std::set<std::string> athletes;
  int tight = 0, loose = 0;
  bool isOpen = false;

  void add(const SaidRecord& said, const std::string& athlete) {
    days.insert(dayOf(said.at));
    athletes.insert(athlete);
    if (!said.isBroken && said.feels == fit::Feels::tight) ++tight;
    if (!said.isBroken && said.feels == fit::Feels::loose) ++loose;
    isOpen = isOpen || !said.isAnswered;
  }
};

// The model worn when it was said; where the word does not say, the one worn now.
std::string sheetOfWord(const Views& views, const AthleteRecord& athlete, const SaidRecord& said) {
  const std::string& id = !said.unit.empty() || athlete.units.empty() ? said.unit : athlete.units.back();
  const UnitRecord* unit = views.unit(id);
  return unit == nullptr ? std::string() : views.standingSheet(unit->sheet);
}

Pattern patternOf(const Views& views, const Heap& heap) {
  Pattern pattern;
  pattern.tight = heap.tight;
  pattern.loose = heap.loose;
  pattern.isOpen = heap.isOpen;
  pattern.first = *heap.days.begin();
  pattern.last = *heap.days.rbegin();
  pattern.athletes.assign(heap.athletes.begin(), heap.athletes.end());
  std::stable_sort(pattern.athletes.begin(), pattern.athletes.end(), [&](const std::string& a, const std::string& b) {
    return jerseyBefore(views.athlete(a)->jersey, views.athlete(b)->jersey);
  });
  return pattern;
}

bool comesBefore(const Pattern& a, const Pattern& b) {
  if (a.isOpen != b.isOpen) return a.isOpen;
  if (a.times != b.times) return a.times > b.times;
  if (a.last != b.last) return a.last > b.last;
  if (a.kind != b.kind) return a.kind == PatternKind::oneModel;
  return std::tie(a.where, a.side, a.sheet, a.athlete) < std::tie(b.where, b.side, b.sheet, b.athlete);
}

}  // namespace

SaidBefore saidBefore(const AthleteRecord& athlete, const SaidRecord& said, std::optional<Day> from) {
  if (!said.where || said.isUnwell) return {};
  const Day to = dayOf(said.at);
  std::set<Day> days;
  for (const SaidRecord& other : athlete.said) {
    if (counts(other, from.value_or(kEver), to) && other.where == said.where && other.side == said.side) days.insert(dayOf(other.at));
  }
  if (days.empty()) return {};
  return {static_cast<int>(days.size()), *days.begin()};
}

std::vector<Pattern> saidAgain(const Views& views, Day today) {
  const Day from = views.team ? views.team->seasonStart.value_or(kEver) : kEver;
  std::map<std::tuple<std::string, fit::Mark, fit::Side>, Heap> byAthlete;
  std::map<std::pair<std::string, fit::Mark>, Heap> byModel;
  for (const auto& [id, athlete] : views.athletes) {
    for (const SaidRecord& said : athlete.said) {
      if (!counts(said, from, today)) continue;
      if (athlete.isOnRoster) byAthlete[{id, *said.where, said.side}].add(said, id);
      const std::string sheet = sheetOfWord(views, athlete, said);
      if (!sheet.empty()) byModel[{sheet, *said.where}].add(said, id);
    }
  }
  std::vector<Pattern> patterns;
  for (const auto& [key, heap] : byAthlete) {
    if (static_cast<int>(heap.days.size()) < kAgainTimes) continue;
    Pattern& pattern = patterns.emplace_back(patternOf(views, heap));
    std::tie(pattern.athlete, pattern.where, pattern.side) = key;
    pattern.times = static_cast<int>(heap.days.size());
  }
  for (const auto& [key, heap] : byModel) {
    if (static_cast<int>(heap.athletes.size()) < kAgainAthletes) continue;
    Pattern& pattern = patterns.emplace_back(patternOf(views, heap));
    pattern.kind = PatternKind::oneModel;
    std::tie(pattern.sheet, pattern.where) = key;
    pattern.times = static_cast<int>(heap.athletes.size());
  }
  std::sort(patterns.begin(), patterns.end(), comesBefore);
  return patterns;
}

}  // namespace snugline::season
