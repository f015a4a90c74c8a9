// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

#include "core/book/acts.h"
#include "core/book/written.h"
#include "core/fit/size.h"

namespace snugline::book {

namespace {

constexpr int kBirthYearLowest = 1900, kBirthYearHighest = 2199;  // as days are parsed
constexpr std::size_t kMostReadings = 20;

Result<void> checkBirthYear(int year) {
  if (year >= kBirthYearLowest && year <= kBirthYearHighest) return {};
  return fail(ErrorCode::outOfRange, "birth year",
              std::to_string(year) + ", " + std::to_string(kBirthYearLowest) + ", " + std::to_string(kBirthYearHighest));
}

}  // namespace

Result<Drafts> addAthlete(const season::Views&, const AthleteAdded& added) {
  if (auto ok = checkJersey(added.jersey, "jersey"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(added.family, 1, kNameLimit, "family name"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(added.given, 0, kNameLimit, "given name"); !ok) return tl::unexpected(ok.error());
  if (added.birthYear) {
    if (auto ok = checkBirthYear(*added.birthYear); !ok) return tl::unexpected(ok.error());
  }
  return Drafts{{"", added}};
}

Result<Drafts> changeAthlete(const season::Views& views, const std::string& athlete, const AthleteChanged& asked) {
  const season::AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  AthleteChanged change;
  if (asked.jersey && *asked.jersey != record->jersey) {
    if (auto ok = checkJersey(*asked.jersey, "jersey"); !ok) return tl::unexpected(ok.error());
    change.jersey = asked.jersey;
  }
  if (asked.family && *asked.family != record->family) {
    if (auto ok = checkWritten(*asked.family, 1, kNameLimit, "family name"); !ok) return tl::unexpected(ok.error());
    change.family = asked.family;
  }
  if (asked.given && *asked.given != record->given) {
    if (auto ok = checkWritten(*asked.given, 0, kNameLimit, "given name"); !ok) return tl::unexpected(ok.error());
    change.given = asked.given;
  }
  if (asked.birthYear && asked.birthYear != record->birthYear) {
    if (auto ok = checkBirthYear(*asked.birthYear); !ok) return tl::unexpected(ok.error());
    change.birthYear = asked.birthYear;
  }
  if (asked.isOnRoster && *asked.isOnRoster != record->isOnRoster) change.isOnRoster = asked.isOnRoster;
  const bool isNothing = !change.jersey && !change.family && !change.given && !change.birthYear && !change.isOnRoster;
  if (isNothing) return Drafts{};
  return Drafts{{athlete, change}};
}

Result<Drafts> readTape(const season::Views& views, const std::string& athlete, const std::vector<Length>& readings,
                        const std::string& with) {
  if (views.athlete(athlete) == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (readings.empty() || readings.size() > kMostReadings) {
    return fail(ErrorCode::outOfRange, "readings", std::to_string(readings.size()) + ", 1, " + std::to_string(kMostReadings));
  }
  for (Length reading : readings) {
    if (reading < fit::kTapeLowest || reading > fit::kTapeHighest) {
      return fail(ErrorCode::outOfRange, "tape", exact(reading) + ", " + exact(fit::kTapeLowest) + ", " + exact(fit::kTapeHighest));
    }
  }
  return Drafts{{athlete, TapeRead{readings, with}}};
}

Result<Drafts> setReadingAside(const season::Views& views, const std::string& athlete, const std::string& reading,
                               const std::string& reason) {
  constexpr std::array<std::string_view, 5> kReasons{"misread", "typed", "hair", "other-head", "other"};
  const season::AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (std::find(kReasons.begin(), kReasons.end(), reason) == kReasons.end()) return fail(ErrorCode::unknownWord, "reason", reason);
  for (const season::TapeRecord& tape : record->tapes) {
    const auto found = std::find(tape.names.begin(), tape.names.end(), reading);
    if (found == tape.names.end()) continue;
    const std::size_t slash = reading.rfind('/');
    return Drafts{{athlete, ReadingSetAside{reading.substr(0, slash), std::stoi(reading.substr(slash + 1)), reason}}};
  }
  return fail(ErrorCode::notFound, "reading " + reading);
}

// --- what was said

Result<Drafts> say(const season::Views& views, const std::string& athlete, const season::SaidRecord& asked) {
  const season::AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  season::SaidRecord said = asked;
  if (auto ok = checkWritten(said.words, 0, kWordsLimit, "words"); !ok) return tl::unexpected(ok.error());
  if (!said.where && !said.isHairChanged && !said.isBroken && !said.isUnwell && said.words.empty()) {
    return fail(ErrorCode::notAllowed, "words", std::string(rule::kNothingSaid));
  }
  if (!said.where || !fit::knowsSides(*said.where)) said.side = fit::Side::both;
  if (said.feels == fit::Feels::broke) said.isBroken = true;
  if (said.unit.empty() && !record->units.empty()) said.unit = record->units.back();
  said.fact.clear();
  said.at = {};
  said.isAdultTold = said.isMistake = said.isAcknowledged = said.isAnswered = false;
  return Drafts{{athlete, Said{said, record->openCheck}}};
}

Result<Drafts> sayUnnamed(const season::Views& views) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  Said body;
  body.said.isUnwell = body.isUnnamed = true;
  return Drafts{{views.team->id, std::move(body)}};
}

namespace {

// What was said and is not closed yet, and whose it is.
struct OpenSaid {
  std::string about;
  season::SaidRecord said;
};
Result<OpenSaid> openSaid(const season::Views& views, const std::string& athlete, const std::string& said) {
  const season::AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr && (!athlete.empty() || !views.team)) return fail(ErrorCode::notFound, "athlete " + athlete);
  const auto& all = record == nullptr ? views.team->unnamed : record->said;
  const auto it = std::find_if(all.begin(), all.end(), [&](const auto& s) { return s.fact == said; });
  if (it == all.end()) return fail(ErrorCode::notFound, "said " + said);
  if (it->isAnswered) return fail(ErrorCode::notAllowed, said, std::string(rule::kAlreadyClosed));
  return OpenSaid{record == nullptr ? views.team->id : athlete, *it};
}

}  // namespace

Result<Drafts> followSaid(const season::Views& views, const std::string& athlete, const std::string& said, bool isMistake) {
  const auto open = openSaid(views, athlete, said);
  if (!open) return tl::unexpected(open.error());
  if (!open->said.isUnwell) return fail(ErrorCode::inconsistent, "said " + said);
  if (isMistake ? open->said.isMistake : open->said.isAdultTold) return Drafts{};
  return Drafts{{open->about, SaidFollowed{said, isMistake, athlete.empty()}}};
}

Result<Drafts> acknowledge(const season::Views& views, const std::string& athlete, const std::string& said, bool isClosed,
                           const std::string& outcome) {
  const auto open = openSaid(views, athlete, said);
  if (!open) return tl::unexpected(open.error());
  if (auto ok = checkWritten(outcome, 0, kWordsLimit, "outcome"); !ok) return tl::unexpected(ok.error());
  if (open->said.isAcknowledged && !isClosed) return Drafts{};
  return Drafts{{open->about, SaidAcknowledged{said, isClosed, outcome, athlete.empty()}}};
}

Result<Drafts> hairChanged(const season::Views& views, const std::string& athlete, const std::string& words) {
  if (views.athlete(athlete) == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (auto ok = checkWritten(words, 0, kWordsLimit, "words"); !ok) return tl::unexpected(ok.error());
  return Drafts{{athlete, HairChanged{words}}};
}

}  // namespace snugline::book
