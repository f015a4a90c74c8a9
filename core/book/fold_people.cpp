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

void foldPrivacy(season::TeamRecord& record, const Fact& fact) {
  if (const auto* recovery = std::get_if<RecoverySet>(&fact.body)) record.recovery = {recovery->key, stampOf(fact)};
  if (const auto* warning = std::get_if<WarningSet>(&fact.body)) foldWarning(record, fact, *warning);
  if (const auto* retention = std::get_if<RetentionSet>(&fact.body)) record.nameYears = retention->years;
  if (const auto* made = std::get_if<LegalHoldMade>(&fact.body)) foldHold(record.legalHolds, fact, *made);
  if (const auto* ended = std::get_if<LegalHoldEnded>(&fact.body)) foldHold(record.legalHolds, *ended);
}

}  // namespace snugline::book
