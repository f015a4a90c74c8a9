// SPDX-License-Identifier: Apache-2.0
// The recovery key, the yearly warning, how long names are shown, roles, and what follows a hit, as bodies of facts; changed athletes and
// practice times read.
#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

constexpr std::size_t kLanguagesMost = 2;
constexpr std::size_t kTextHashDigits = 64;
constexpr std::string_view kMistake = "touched-by-mistake", kAdultTold = "adult-told";

void readHash(ObjectReader& in, std::string_view key, std::string& hash) {
  hash = in.text(key);
  const bool isHex = hash.find_first_not_of("0123456789abcdef") == std::string::npos;
  if (!isHex || hash.size() != kTextHashDigits) in.fail(ErrorCode::wrongType, key, "64 hex digits");
}

Body readWarningSet(ObjectReader& in) {
  WarningSet b;
  in.objects("texts", [&](ObjectReader& each) {
    WarningSet::Text text;
    text.language = each.text("language");
    text.text = each.text("text");
    if (!isLanguage(text.language)) each.fail(ErrorCode::unknownWord, "language", text.language);
    if (text.text.empty()) each.fail(ErrorCode::outOfRange, "text", "empty");
    b.texts.push_back(std::move(text));
  });
  if (b.texts.empty() || b.texts.size() > kLanguagesMost) in.fail(ErrorCode::outOfRange, "texts", "1, 2");
  b.asksAnew = in.flag("ask_anew");
  return b;
}

Body readWarningSigned(ObjectReader& in) {
  WarningSigned b;
  b.season = in.text("season");
  readHash(in, "text", b.text);
  b.language = in.text("language");
  if (!isLanguage(b.language)) in.fail(ErrorCode::unknownWord, "language", b.language);
  b.as = in.word("as", season::signerFromCode);
  b.initials = in.text("initials");
  b.isOnPaper = in.flag("on_paper");
  return b;
}

std::optional<int> intIf(ObjectReader& in, std::string_view key, int low, int high) {
  const auto number = in.integerIf(key, low, high);
  return number ? std::optional<int>(static_cast<int>(*number)) : std::nullopt;
}

Body readAthleteChanged(ObjectReader& in) {
  AthleteChanged b;
  b.jersey = in.textIf("jersey");
  b.family = in.textIf("family");
  b.given = in.textIf("given");
  b.birthYear = intIf(in, "birth_year", 0, 9999);
  b.isOnRoster = in.booleanIf("on_roster");
  return b;
}

Body readPracticeSet(ObjectReader& in) {
  PracticeSet b;
  b.seasonStart = in.dayIf("season_start");
  b.seasonEnd = in.dayIf("season_end");
  b.minute = intIf(in, "minute", 0, 1439);
  if (in.has("days")) {
    std::array<bool, 7> days{};
    if (!in.booleans("days", days)) in.fail(ErrorCode::wrongType, "days", "seven of true or false");
    b.days = days;
  }
  b.season = in.textOr("season");
  return b;
}

Body readRetentionSet(ObjectReader& in) {
  RetentionSet b;
  if (const auto years = in.integerIf("years", 1, kRetentionYearsMost)) b.years = static_cast<int>(*years);
  return b;
}

Body readPersonChanged(ObjectReader& in) {
  PersonChanged b;
  b.role = in.wordIf("role", roleWord);
  b.isPractitioner = in.booleanIf("practitioner");
  return b;
}

Body readSaidFollowed(ObjectReader& in) {
  SaidFollowed b;
  b.said = in.text("said");
  const std::string follows = in.text("follows");
  b.isMistake = follows == kMistake;
  if (!b.isMistake && follows != kAdultTold) in.fail(ErrorCode::unknownWord, "follows", follows);
  b.isUnnamed = in.flag("unnamed");
  return b;
}

}  // namespace

std::optional<std::string> roleWord(std::string_view word) {
  const bool isRole = word == kHelper || word == kStaff || word == kAdmin;
  return isRole ? std::optional<std::string>(word) : std::nullopt;
}
bool isLanguage(std::string_view code) { return code == "en" || code == "es"; }

void writeBody(LineWriter& out, const RecoverySet& b) { writeCode(out, b.key); }
void writeBody(LineWriter& out, const WarningSet& b) {
  out.key("texts").beginArray();
  for (const WarningSet::Text& each : b.texts) {
    out.beginObject().key("language").string(each.language).key("text").string(each.text).endObject();
  }
  out.endArray().flag("ask_anew", b.asksAnew);
}
void writeBody(LineWriter& out, const WarningSigned& b) {
  out.key("season").string(b.season).key("text").string(b.text).key("language").string(b.language);
  out.key("as").string(season::code(b.as)).key("initials").string(b.initials).flag("on_paper", b.isOnPaper);
}
void writeBody(LineWriter& out, const RetentionSet& b) {
  if (b.years) out.key("years").integer(*b.years);
}
void writeBody(LineWriter& out, const EmergencySet& b) { out.key("number").string(b.number).text("plan", b.plan); }
void writeBody(LineWriter& out, const PersonChanged& b) {
  if (b.role) out.key("role").string(*b.role);
  if (b.isPractitioner) out.key("practitioner").boolean(*b.isPractitioner);
}
void writeBody(LineWriter& out, const SaidFollowed& b) {
  out.key("said").string(b.said).key("follows").string(b.isMistake ? kMistake : kAdultTold).flag("unnamed", b.isUnnamed);
}
void writeBody(LineWriter& out, const LegalHoldMade& b) { out.flag("everybody", b.isForAll).key("reason").string(b.reason); }
void writeBody(LineWriter& out, const LegalHoldEnded& b) {
  out.flag("everybody", b.isForAll).key("hold").string(b.hold).key("reason").string(b.reason);
}

void addPeopleReaders(std::unordered_map<std::string_view, BodyReader>& readers) {
  readers["athlete-changed"] = readAthleteChanged;
  readers["practice-set"] = readPracticeSet;
  readers["recovery-set"] = [](ObjectReader& in) -> Body { return RecoverySet{readCode(in)}; };
  readers["warning-set"] = readWarningSet;
  readers["warning-signed"] = readWarningSigned;
  readers["retention-set"] = readRetentionSet;
  readers["person-changed"] = readPersonChanged;
  readers["said-followed"] = readSaidFollowed;
  // Braces keep the order of reading the order of writing.
  readers["emergency-set"] = [](ObjectReader& in) -> Body { return EmergencySet{in.text("number"), in.textOr("plan")}; };
  readers["legal-hold-made"] = [](ObjectReader& in) -> Body { return LegalHoldMade{in.flag("everybody"), in.text("reason")}; };
  readers["legal-hold-ended"] = [](ObjectReader& in) -> Body {
    return LegalHoldEnded{in.flag("everybody"), in.text("hold"), in.text("reason")};
  };
}

}  // namespace snugline::book
