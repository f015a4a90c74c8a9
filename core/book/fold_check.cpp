// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"

namespace snugline::book {

namespace {

using season::CheckRecord;

// No season end and no today that matters: those belong to the verdict, not to what was answered.
fit::Setup setupFor(const CheckRecord& check, const gear::ModelSheet& sheet) {
  fit::Setup setup;
  setup.sheet = &sheet;
  setup.kind = check.kind;
  setup.today = dayOf(check.begun.at);
  setup.certifiedUntil = check.certifiedUntil;
  setup.isLabelMissing = check.isLabelMissing;
  return setup;
}

// An answer that the guide refuses (of another version of the rules, say) stays in the record and leaves the state alone.
void step(const fit::Setup& setup, fit::State& state, const fit::Answer& answer) {
  if (auto next = fit::take(setup, state, answer)) state = std::move(*next);
}

fit::State beginState(const fit::Setup& setup, const CheckNotes& notes) {
  fit::State state = fit::begin(setup);
  for (const WordRef& word : notes.words) step(setup, state, fit::AthleteSaid{word.where, word.side, word.feels});
  return state;
}

}  // namespace

std::vector<fit::Answer> answersIn(const Fact& fact) {
  if (const auto* answered = std::get_if<CheckAnswered>(&fact.body)) return answered->answers;
  std::vector<fit::Answer> answers;
  if (const auto* seen = std::get_if<PointsSeen>(&fact.body)) {
    const bool isAllSound =
        seen->isGroup && seen->points.size() == gear::kPointCount &&
        std::all_of(seen->points.begin(), seen->points.end(), [](const auto& p) { return p.second.state == gear::PointState::sound; });
    if (isAllSound) {
      answers.emplace_back(fit::PointsSound{});
    } else {
      for (const auto& [point, finding] : seen->points) answers.emplace_back(fit::PointSeen{point, finding.state, finding.what});
    }
  } else if (const auto* said = std::get_if<Said>(&fact.body)) {
    if (said->said.isUnwell) {
      answers.emplace_back(fit::Unwell{});
    } else if (said->said.where || said->said.isBroken || said->said.words.empty()) {
      const auto feels = said->said.isBroken ? fit::Feels::broke : said->said.feels;
      if (!said->said.isHairChanged) answers.emplace_back(fit::AthleteSaid{said->said.where, said->said.side, feels});
    }
  }
  return answers;
}

void Folded::restate(CheckRecord& check) const {
  check.state = {};
  const gear::ModelSheet* sheet = views.sheet(check.sheet);
  if (sheet == nullptr) return;
  const fit::Setup setup = setupFor(check, *sheet);
  const auto notes = checkNotes.find(check.id);
  check.state = beginState(setup, notes == checkNotes.end() ? CheckNotes{} : notes->second);
  for (const season::AnswerRecord& record : check.answers) step(setup, check.state, record.answer);
}

void Folded::restate(const std::string& sheetHash) {
  for (auto& [id, check] : views.openChecks) {
    if (check.sheet == sheetHash) restate(check);
  }
}

void Folded::takeCheck(const Fact& fact, const std::string& id) {
  if (const auto* begun = std::get_if<CheckBegun>(&fact.body)) {
    if (fact.id() != id) return;
    CheckRecord check;
    check.id = id;
    check.athlete = begun->athlete;
    check.unit = begun->unit;
    check.sheet = begun->sheet;
    check.kind = begun->kind;
    check.rules = begun->rules;
    check.begun = stampOf(fact);
    check.certifiedUntil = begun->certifiedUntil;
    check.isLabelMissing = begun->isLabelMissing;
    check.before = begun->before;
    checkNotes[id].words = begun->words;
    restate(check);
    views.openChecks.insert_or_assign(id, std::move(check));
  } else if (std::holds_alternative<CheckEnded>(fact.body)) {
    views.openChecks.erase(id);
    checkNotes.erase(id);
  } else {
    const auto it = views.openChecks.find(id);
    if (it == views.openChecks.end()) return;
    CheckRecord& check = it->second;
    const auto answers = answersIn(fact);
    const gear::ModelSheet* sheet = views.sheet(check.sheet);
    const std::string group = answers.size() > 1 ? fact.id() : std::string();
    for (const fit::Answer& answer : answers) {
      if (sheet != nullptr) step(setupFor(check, *sheet), check.state, answer);
      check.answers.push_back({fact.id(), answer, group});
    }
  }
  changed[static_cast<std::size_t>(Entity::check)].insert(id);
}

}  // namespace snugline::book
