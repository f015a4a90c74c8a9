// SPDX-License-Identifier: Apache-2.0
#include "core/book/fact_decode.h"

#include <set>
#include <unordered_map>

#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

constexpr std::int64_t kMostFacts = (std::int64_t{1} << 40) - 1;
constexpr std::int64_t kMostOrder = std::int64_t{1} << 50;  // leaves room: a wild order from elsewhere must not stop us counting
constexpr std::int64_t kMostOffset = 840;
constexpr std::size_t kNameBytesMost = 64;
using Reader = ObjectReader;

PointsSeen pointsSeen(Reader& in) {
  PointsSeen b;
  in.objects("points", [&](Reader& each) {
    gear::PointFinding finding;
    const auto point = each.word("point", gear::pointFromCode);
    finding.state = each.word("state", pointStateFromCode);
    finding.what = each.textOr("what");
    b.points.emplace_back(point, std::move(finding));
  });
  b.isGroup = in.flag("group");
  b.check = in.textOr("check");
  return b;
}

CheckBegun checkBegun(Reader& in) {
  CheckBegun b;
  b.athlete = in.text("athlete");
  b.unit = in.text("unit");
  b.sheet = in.text("sheet");
  b.before = in.textOr("before");
  b.kind = in.word("check_kind", fit::checkKindFromCode);
  b.rules = static_cast<int>(in.integer("rules", 1, 1'000'000));
  b.certifiedUntil = in.dayIf("certified_until");
  b.isLabelMissing = in.flag("label_missing");
  in.objects("words", [&](Reader& each) {
    WordRef word;
    word.said = each.text("said");
    word.where = each.wordIf("where", fit::markFromCode);
    word.side = readSide(each);
    word.feels = each.word("feels", feelsWord);
    b.words.push_back(std::move(word));
  });
  return b;
}

CheckEnded checkEnded(Reader& in) {
  CheckEnded b;
  b.athlete = in.text("athlete");
  b.unit = in.text("unit");
  b.outcome.unit = b.unit;
  b.outcome.kind = in.word("check_kind", fit::checkKindFromCode);
  b.outcome.verdict = in.word("verdict", fit::verdictFromCode);
  b.outcome.reasons = in.texts("reasons");
  const auto strip = in.texts("strip");
  if (strip.size() != fit::kMarkCount) in.fail(ErrorCode::outOfRange, "strip", "nine findings");
  for (std::size_t i = 0; i < strip.size() && i < fit::kMarkCount; ++i) {
    const auto finding = findingWord(strip[i]);
    if (!finding) in.fail(ErrorCode::unknownWord, "strip", strip[i]);
    b.outcome.strip[i] = finding.value_or(fit::Finding::unseen);
  }
  b.outcome.isHairDry = in.flag("hair_dry");
  b.outcome.isForCold = in.flag("for_cold");
  b.outcome.dueFrom = in.day("due_from");
  b.outcome.dueBy = in.day("due_by");
  b.conditions = conditions(in);
  if (in.has("pumped")) in.objects("pumped", [&](Reader& each) { b.pumped.push_back(readPumped(each)); });
  return b;
}

Said said(Reader& in) {
  Said b;
  b.said.unit = in.textOr("unit");
  b.said.where = in.wordIf("where", fit::markFromCode);
  b.said.side = readSide(in);
  b.said.feels = in.word("feels", feelsWord);
  b.said.isHairChanged = in.flag("hair_changed");
  b.said.isBroken = in.flag("broken");
  b.said.isUnwell = in.flag("unwell");
  b.said.words = in.textOr("words");
  b.check = in.textOr("check");
  b.isUnnamed = in.flag("unnamed");
  if (b.isUnnamed && !b.said.isUnwell) in.fail(ErrorCode::inconsistent, "unnamed");
  return b;
}

LabelRead labelRead(Reader& in) {
  LabelRead b;
  const auto kind = in.wordIf("label", labelKindFromCode);
  if (!kind) {
    b.isUnreadable = in.flag("unreadable");
    return b;
  }
  gear::Label label;
  label.kind = *kind;
  label.year = static_cast<int>(in.integer("year", 0, 9999));
  label.fullDate = in.dayIf("full_date");
  label.source = in.textOr("source");
  b.label = std::move(label);
  return b;
}

CheckAnswered checkAnswered(Reader& in) {
  CheckAnswered b;
  in.objects("answers", [&](Reader& each) { b.answers.push_back(readAnswer(each)); });
  b.unit = in.textOr("unit");
  b.conditions = conditions(in);
  b.source = source(in);
  return b;
}

TapeRead tapeRead(Reader& in) {
  TapeRead b;
  for (std::int64_t um : in.integers("readings_um", -kLargestInteger, kLargestInteger)) b.readings.push_back(Length{um});
  b.with = in.textOr("with");
  return b;
}

using Readers = std::unordered_map<std::string_view, BodyReader>;
Readers withPeople(Readers readers) {
  addPeopleReaders(readers);
  addGearReaders(readers);
  addPhoneReaders(readers);
  addSeasonReaders(readers);
  return readers;
}
const Readers& readers() {
  // Braces keep the order of reading the order of writing.
  static const Readers kReaders = withPeople({
      {"team-founded",
       [](Reader& in) -> Body {
         return TeamFounded{in.text("name"), in.text("mascot"), in.text("season"), in.text("public_key")};
       }},
      {"device-admitted",
       [](Reader& in) -> Body {
         return DeviceAdmitted{in.text("device"), in.text("public_key"), in.text("because")};
       }},
      {"person-added",
       [](Reader& in) -> Body {
         return PersonAdded{in.text("name"), in.text("initials"), in.word("role", roleWord), in.flag("practitioner")};
       }},
      {"code-set", [](Reader& in) -> Body { return CodeSet{readCode(in)}; }},
      {"athlete-added",
       [](Reader& in) -> Body {
         return AthleteAdded{in.text("jersey"), in.text("family"), in.text("given"), readIntIf(in, "birth_year", 0, 9999)};
       }},
      {"tape-read", [](Reader& in) -> Body { return tapeRead(in); }},
      {"reading-set-aside",
       [](Reader& in) -> Body {
         return ReadingSetAside{in.text("tape"), readIntIf(in, "place", 0, 1000).value_or(0), in.text("reason")};
       }},
      {"sheet-adopted",
       [](Reader& in) -> Body {
         return SheetAdopted{in.text("sheet"), in.textOr("replaces")};
       }},
      {"label-read", [](Reader& in) -> Body { return labelRead(in); }},
      {"point-seen", [](Reader& in) -> Body { return pointsSeen(in); }},
      {"check-begun", [](Reader& in) -> Body { return checkBegun(in); }},
      {"mark-seen", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"adjusted", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"air-read", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"hair-seen", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"cold-seen", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"fitting-set", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"question-answered", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"check-answered", [](Reader& in) -> Body { return checkAnswered(in); }},
      {"check-ended", [](Reader& in) -> Body { return checkEnded(in); }},
      {"said", [](Reader& in) -> Body { return said(in); }},
      {"said-acknowledged",
       [](Reader& in) -> Body {
         return SaidAcknowledged{in.text("said"), in.flag("closed"), in.textOr("outcome"), in.flag("unnamed")};
       }},
      {"hair-changed", [](Reader& in) -> Body { return HairChanged{in.textOr("words")}; }},
      {"weather-noted", readWeatherNoted},
      {"place-set", readPlaceSet},
      {"unit-air-read", readUnitAirRead},
      {"line-seen", readLineSeen},
      {"corrected",
       [](Reader& in) -> Body {
         return Corrected{in.text("fact"), in.texts("touches")};
       }},
      {"note-added", [](Reader& in) -> Body { return NoteAdded{in.text("text")}; }},
  });
  return kReaders;
}

bool isName(std::string_view text) {
  if (text.empty() || text.size() > kNameBytesMost) return false;
  for (char c : text) {
    if ((c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-') return false;
  }
  return true;
}

}  // namespace

Result<Fact> FactDecoder::decode(std::string_view line, const std::string& name) {
  if (line.size() > kFactLimitBytes) {
    return fail(ErrorCode::tooLong, name, std::to_string(line.size()) + ", " + std::to_string(kFactLimitBytes));
  }
  if (line.find('\n') != std::string_view::npos) return fail(ErrorCode::notJson, name, "a line feed");
  const auto root = m_parser.parse(line, name);
  if (!root) return tl::unexpected<Error>(root.error());

  FirstFault fault{name, std::nullopt};
  Reader in(fault, **root);
  Fact fact;
  fact.device = in.text("device");
  fact.n = static_cast<std::uint64_t>(in.integer("n", 1, kMostFacts));
  fact.order = in.integer("order", 1, kMostOrder);
  fact.at.ms = in.integer("at_ms");
  fact.at.offsetMinutes = static_cast<std::int32_t>(in.integer("offset_min", -kMostOffset, kMostOffset));
  fact.who = in.text("who");
  const std::string kind = in.text("kind");
  const std::int64_t version = in.integer("v", 1);
  fact.about = in.text("about");
  if (!isName(fact.device)) in.fail(ErrorCode::outOfRange, "device", fact.device);
  if (!isName(kind)) in.fail(ErrorCode::outOfRange, "kind", kind);
  if (fact.about.empty()) in.fail(ErrorCode::outOfRange, "about", "empty");

  const auto known = readers().find(kind);
  const bool isKnown = known != readers().end() && version <= newestOf(kind);
  if (!isKnown) {
    // Not looked into: whoever knows the kind reads the bytes as they came.
    if (!in.has("body")) in.fail(ErrorCode::missingKey, "body");
    fact.body = Unknown{kind, version};
  } else {
    in.object("body", [&](Reader& body) { fact.body = known->second(body); });
    in.finish();
    if (in.isSound() && kindOf(fact.body) != kind) in.fail(ErrorCode::inconsistent, "kind", kind);
    if (in.isSound() && versionOf(fact.body) != version) in.fail(ErrorCode::inconsistent, "v", std::to_string(version));
  }
  if (fault.error || std::holds_alternative<Unknown>(fact.body)) {
    if (auto refused = refusedByIJson(**root, name)) return tl::unexpected<Error>(std::move(*refused));
  }
  if (fault.error) return tl::unexpected<Error>(std::move(*fault.error));
  return fact;
}

namespace {
// To be raised when the fold makes something else of a kind that it knew already.
constexpr int kFold = 1;
}  // namespace

const std::string& foldSign() {
  static const std::string kSign = [] {
    std::set<std::string_view> kinds;
    for (const auto& [kind, read] : readers()) kinds.insert(kind);
    std::string sign;
    for (const std::string_view kind : kinds) sign += std::string(kind) + " " + std::to_string(newestOf(kind)) + ", ";
    return sign + "fold " + std::to_string(kFold);
  }();
  return kSign;
}

Result<Fact> decode(std::string_view line, const std::string& name) {
  try {
    FactDecoder decoder;
    return decoder.decode(line, name);
  } catch (const std::exception& problem) {
    return fail(ErrorCode::outOfMemory, name, problem.what());
  }
}

}  // namespace snugline::book
