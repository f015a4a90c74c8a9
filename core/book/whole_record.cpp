// SPDX-License-Identifier: Apache-2.0
#include "core/book/whole_record.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace snugline::book {

Result<std::vector<Fact>> wholeRecord(Book& book, const std::string& athlete) {
  auto facts = book.history(athlete);
  if (!facts) return facts;
  std::vector<std::string> checks;
  for (const Fact& fact : *facts) {
    const auto* begun = std::get_if<CheckBegun>(&fact.body);
    if (begun != nullptr && begun->athlete == athlete) checks.push_back(fact.about);
  }
  for (const std::string& check : checks) {
    auto answers = book.history(check);
    if (!answers) return answers;
    std::move(answers->begin(), answers->end(), std::back_inserter(*facts));
  }
  const auto place = [](const Fact& f) { return std::tie(f.order, f.device, f.n); };
  std::sort(facts->begin(), facts->end(), [&](const Fact& a, const Fact& b) { return place(a) < place(b); });
  facts->erase(std::unique(facts->begin(), facts->end(), [&](const Fact& a, const Fact& b) { return place(a) == place(b); }), facts->end());
  return facts;
}

std::vector<Fact> forExport(std::vector<Fact> facts) {
  std::set<std::string> unwell;
  for (const Fact& fact : facts) {
    const auto* said = std::get_if<Said>(&fact.body);
    if (said != nullptr && said->said.isUnwell) unwell.insert(fact.id());
  }
  std::erase_if(facts, [&](Fact& fact) {
    if (unwell.contains(fact.id())) return true;
    if (const auto* followed = std::get_if<SaidFollowed>(&fact.body)) return unwell.contains(followed->said);
    if (const auto* acknowledged = std::get_if<SaidAcknowledged>(&fact.body)) return unwell.contains(acknowledged->said);
    if (const auto* corrected = std::get_if<Corrected>(&fact.body)) return unwell.contains(corrected->fact);
    if (auto* begun = std::get_if<CheckBegun>(&fact.body))
      std::erase_if(begun->words, [&](const WordRef& word) { return unwell.contains(word.said); });
    if (auto* answered = std::get_if<CheckAnswered>(&fact.body)) {
      const auto taken = std::erase_if(answered->answers, [](const fit::Answer& a) { return std::holds_alternative<fit::Unwell>(a); });
      return taken != 0 && answered->answers.empty();
    }
    if (auto* ended = std::get_if<CheckEnded>(&fact.body))
      std::erase_if(ended->outcome.reasons, [](const std::string& reason) { return reason.find("unwell") != std::string::npos; });
    return false;
  });
  return facts;
}

void keepNameBack(std::vector<Fact>& facts, const std::string& athlete) {
  for (Fact& fact : facts) {
    if (fact.about != athlete) continue;
    if (auto* added = std::get_if<AthleteAdded>(&fact.body)) {
      added->family.clear();
      added->given.clear();
    }
    if (auto* changed = std::get_if<AthleteChanged>(&fact.body)) {
      if (changed->family) changed->family = "";
      if (changed->given) changed->given = "";
    }
  }
}

}  // namespace snugline::book
