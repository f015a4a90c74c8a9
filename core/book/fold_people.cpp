// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"

namespace snugline::book {

namespace {

void foldWarning(season::TeamRecord& record, const Fact& fact, const WarningSet& body) {
  season::WarningRecord warning;
  if (record.warning && !body.asksAnew) warning.accepted = record.warning->accepted;
  for (const WarningSet::Text& each : body.texts) {
    warning.texts.push_back({each.language, each.text, hashOf(each.text)});
    const std::string& hash = warning.texts.back().hash;
    const auto at = std::lower_bound(warning.accepted.begin(), warning.accepted.end(), hash);
    if (at == warning.accepted.end() || *at != hash) warning.accepted.insert(at, hash);
  }
  warning.stamp = stampOf(fact);
  record.warning = std::move(warning);
}

}  // namespace

void foldHold(std::vector<season::LegalHoldRecord>& holds, const Fact& fact, const LegalHoldMade& body) {
  holds.push_back({fact.id(), body.reason, stampOf(fact)});
}

void foldHold(std::vector<season::LegalHoldRecord>& holds, const LegalHoldEnded& body) {
  std::erase_if(holds, [&](const auto& hold) { return hold.fact == body.hold; });
}

void follow(std::vector<season::SaidRecord>& all, const SaidFollowed& body) {
  for (season::SaidRecord& said : all) {
    if (said.fact != body.said) continue;
    said.isAdultTold = said.isAdultTold || !body.isMistake;
    said.isMistake = said.isMistake || body.isMistake;
  }
}

void acknowledge(std::vector<season::SaidRecord>& all, const SaidAcknowledged& body) {
  for (season::SaidRecord& said : all) {
    if (said.fact != body.said) continue;
    said.isAcknowledged = true;
    said.isAnswered = said.isAnswered || body.isClosed;
  }
}

void foldUnnamed(season::TeamRecord& record, const Fact& fact) {
  if (const auto* body = std::get_if<Said>(&fact.body)) {
    season::SaidRecord said = body->said;
    said.fact = fact.id();
    said.at = fact.at;
    record.unnamed.push_back(std::move(said));
  }
  if (const auto* followed = std::get_if<SaidFollowed>(&fact.body)) follow(record.unnamed, *followed);
  if (const auto* acknowledged = std::get_if<SaidAcknowledged>(&fact.body)) acknowledge(record.unnamed, *acknowledged);
}

void foldPrivacy(season::TeamRecord& record, const Fact& fact) {
  if (const auto* recovery = std::get_if<RecoverySet>(&fact.body)) record.recovery = {recovery->key, stampOf(fact)};
  if (const auto* warning = std::get_if<WarningSet>(&fact.body)) foldWarning(record, fact, *warning);
  if (const auto* retention = std::get_if<RetentionSet>(&fact.body)) record.nameYears = retention->years;
  if (const auto* emergency = std::get_if<EmergencySet>(&fact.body)) record.emergency = {emergency->number, emergency->plan};
  if (const auto* made = std::get_if<LegalHoldMade>(&fact.body)) foldHold(record.legalHolds, fact, *made);
  if (const auto* ended = std::get_if<LegalHoldEnded>(&fact.body)) foldHold(record.legalHolds, *ended);
}

}  // namespace snugline::book
