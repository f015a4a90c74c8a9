// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"
#include "core/book/privacy_acts.h"
#include "core/book/written.h"
#include "core/season/privacy.h"

namespace snugline::book {

namespace {

// Line by line, as a text has several.
Result<void> checkText(std::string_view text) {
  std::string plain(text);
  std::replace(plain.begin(), plain.end(), '\n', ' ');
  if (trimmed(plain).empty()) return fail(ErrorCode::outOfRange, "warning", "0, 1, " + std::to_string(kWarningTextMost));
  return checkWritten(plain, 1, kWarningTextMost, "warning");
}

const std::vector<season::LegalHoldRecord>* holdsOn(const season::Views& views, const std::string& athlete) {
  if (athlete.empty()) return views.team ? &views.team->legalHolds : nullptr;
  const season::AthleteRecord* record = views.athlete(athlete);
  return record == nullptr ? nullptr : &record->legalHolds;
}

std::string subjectOf(const season::Views& views, const std::string& athlete) { return athlete.empty() ? views.team->id : athlete; }

}  // namespace

Result<Drafts> setWarning(const season::Views& views, const std::vector<WarningSet::Text>& texts, bool asksAnew) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (texts.empty()) return fail(ErrorCode::outOfRange, "warning", "0, 1, 2");
  std::vector<std::string> languages;
  for (const WarningSet::Text& each : texts) {
    if (!isLanguage(each.language)) return fail(ErrorCode::unknownWord, "language", each.language);
    if (std::find(languages.begin(), languages.end(), each.language) != languages.end()) return fail(ErrorCode::inconsistent, "language");
    languages.push_back(each.language);
    if (auto ok = checkText(each.text); !ok) return tl::unexpected<Error>(ok.error());
  }
  const auto& before = views.team->warning;
  const bool isSame = before && std::equal(before->texts.begin(), before->texts.end(), texts.begin(), texts.end(),
                                           [](const auto& a, const auto& b) { return a.language == b.language && a.text == b.text; });
  if (isSame && !asksAnew) return Drafts{};
  return Drafts{{views.team->id, WarningSet{texts, asksAnew}}};
}

Result<Drafts> signWarning(const season::Views& views, const std::string& athlete, const Signing& signing, const std::string& witness,
                           const std::vector<WarningSet::Text>& shown, Day today) {
  const season::AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr || !views.team) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (!views.people.contains(witness)) return fail(ErrorCode::notAllowed, "witness", std::string(rule::kNoWitness));
  if (auto ok = checkWritten(signing.initials, 1, kSignedInitialsMost, "initials"); !ok) return tl::unexpected<Error>(ok.error());
  Drafts drafts;
  const std::string hash = hashOf(signing.text);
  if (views.team->warning) {
    const auto& accepted = views.team->warning->accepted;
    if (!std::binary_search(accepted.begin(), accepted.end(), hash))
      return fail(ErrorCode::notAllowed, athlete, std::string(rule::kWarningChanged));
  } else {
    const auto isShown = [&](const auto& each) { return each.language == signing.language && each.text == signing.text; };
    if (std::none_of(shown.begin(), shown.end(), isShown)) return fail(ErrorCode::notAllowed, athlete, std::string(rule::kWarningChanged));
    auto set = setWarning(views, shown, false);
    if (!set) return set;
    drafts = std::move(*set);
  }
  const season::WarningState state = season::warningState(views.team, *record, today);
  // An adult's guardian may sign too; nobody signs twice.
  const bool isOpen =
      signing.as == season::Signer::athlete ? state.isAthleteOpen : state.isGuardianOpen || !season::needsGuardian(*record, today);
  if (!isOpen) return fail(ErrorCode::notAllowed, athlete, std::string(rule::kWarningSigned));
  drafts.push_back({athlete, WarningSigned{views.team->season, hash, signing.language, signing.as, signing.initials, signing.isOnPaper}});
  return drafts;
}

Result<Drafts> setRetention(const season::Views& views, std::optional<int> years) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (years && (*years < 1 || *years > kRetentionYearsMost))
    return fail(ErrorCode::outOfRange, "years", std::to_string(*years) + ", 1, " + std::to_string(kRetentionYearsMost));
  if (views.team->nameYears == years) return Drafts{};
  return Drafts{{views.team->id, RetentionSet{years}}};
}

Result<Drafts> makeLegalHold(const season::Views& views, const std::string& athlete, const std::string& reason) {
  if (holdsOn(views, athlete) == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (auto ok = checkWritten(reason, 1, kReasonMost, "reason"); !ok) return tl::unexpected<Error>(ok.error());
  return Drafts{{subjectOf(views, athlete), LegalHoldMade{athlete.empty(), reason}}};
}

Result<Drafts> endLegalHold(const season::Views& views, const std::string& athlete, const std::string& hold, const std::string& reason) {
  const auto* holds = holdsOn(views, athlete);
  if (holds == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (std::none_of(holds->begin(), holds->end(), [&](const auto& each) { return each.fact == hold; }))
    return fail(ErrorCode::notFound, "hold " + hold);
  if (auto ok = checkWritten(reason, 1, kReasonMost, "reason"); !ok) return tl::unexpected<Error>(ok.error());
  return Drafts{{subjectOf(views, athlete), LegalHoldEnded{athlete.empty(), hold, reason}}};
}

}  // namespace snugline::book
