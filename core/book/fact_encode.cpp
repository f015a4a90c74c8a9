// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

template <typename... Ts>
struct Overloaded : Ts... {
  using Ts::operator()...;
};
template <typename... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

template <typename T>
constexpr bool isOneOf(const fit::Answer& a) {
  return std::holds_alternative<T>(a);
}

std::string_view kindOfAnswer(const fit::Answer& a) {
  if (isOneOf<fit::MarkSeen>(a) || isOneOf<fit::GroupSnug>(a)) return "mark-seen";
  if (isOneOf<fit::HairSeen>(a)) return "hair-seen";
  if (isOneOf<fit::ColdSeen>(a)) return "cold-seen";
  if (isOneOf<fit::Fitted>(a)) return "fitting-set";
  if (isOneOf<fit::Adjusted>(a)) return "adjusted";
  if (isOneOf<fit::AirRead>(a)) return "air-read";
  if (isOneOf<fit::QuestionAnswered>(a)) return "question-answered";
  return "check-answered";
}

std::string_view kindOfAnswers(const CheckAnswered& body) {
  if (body.answers.empty()) return "check-answered";
  const std::string_view first = kindOfAnswer(body.answers.front());
  const bool isOneSort = std::all_of(body.answers.begin(), body.answers.end(), [&](const auto& a) { return kindOfAnswer(a) == first; });
  return isOneSort ? first : "check-answered";
}

void side(LineWriter& out, fit::Side s) {
  if (s != fit::Side::both) out.key("side").string(fit::code(s));
}
void where(LineWriter& out, const std::optional<fit::Mark>& m) {
  if (m) out.key("where").string(fit::code(*m));
}

struct AnswerWriter {
  LineWriter& out;
  void operator()(const fit::HairSeen& a) const { out.key("hair_wet").boolean(a.isWet); }
  void operator()(const fit::ColdSeen& a) const { out.key("cold").boolean(a.isCold).flag("said", a.isSaid); }
  void operator()(const fit::Fitted& a) const {
    out.key("fitted").beginObject();
    out.key("air_pa").beginObject();
    for (std::size_t i = 0; i < gear::kPortCount; ++i) {
      if (a.air[i]) out.key(gear::code(static_cast<gear::Port>(i))).integer(a.air[i]->pa);
    }
    out.endObject().key("pad_um").beginObject();
    for (std::size_t i = 0; i < gear::kPartCount; ++i) {
      if (a.pad[i]) out.key(gear::code(static_cast<gear::Part>(i))).integer(a.pad[i]->um);
    }
    out.endObject().endObject();
  }
  void operator()(const fit::MarkSeen& a) const {
    out.key("mark").string(fit::code(a.mark)).key("finding").string(fit::code(a.finding));
    side(out, a.side);
    if (a.how != fit::HoldHow::unsaid) out.key("how").string(fit::code(a.how));
    if (a.gap) out.key("gap_um").integer(a.gap->um);
  }
  void operator()(const fit::GroupSnug& a) const { out.key("group").string(fit::code(a.view)); }
  void operator()(const fit::Adjusted& a) const {
    out.key("deed").string(fit::code(a.deed));
    if (a.port) out.key("port").string(gear::code(*a.port));
    if (a.part) out.key("part").string(gear::code(*a.part));
    if (a.pumps != 0) out.key("pumps").integer(a.pumps);
    if (a.air) out.key("gauge_pa").integer(a.air->pa);
    if (a.to) out.key("to_um").integer(a.to->um);
  }
  void operator()(const fit::AirRead& a) const {
    out.key("air").string(gear::code(a.port)).key("gauge_pa").integer(a.gauge.pa).key("on_head").boolean(a.isOnHead);
  }
  void operator()(const fit::PointSeen& a) const {
    out.key("point").string(gear::code(a.point)).key("state").string(code(a.state)).text("what", a.what);
  }
  void operator()(const fit::PointsSound&) const { out.key("points").string("sound"); }
  void operator()(const fit::QuestionAnswered& a) const { out.key("question").string(a.id).key("yes").boolean(a.isYes); }
  void operator()(const fit::AthleteSaid& a) const {
    where(out, a.where);
    side(out, a.side);
    out.key("feels").string(fit::code(a.feels));
  }
  void operator()(const fit::Unwell&) const { out.key("unwell").boolean(true); }

  static std::string_view code(gear::PointState s) {
    switch (s) {
      case gear::PointState::unseen:
        return "unseen";
      case gear::PointState::sound:
        return "sound";
      case gear::PointState::fault:
        return "fault";
    }
    return "unseen";
  }
};

struct BodyWriter {
  LineWriter& out;
  void operator()(const TeamFounded& b) const {
    out.key("name").string(b.name).key("mascot").string(b.mascot).key("season").string(b.season);
    out.key("public_key").string(b.publicKey);
  }
  void operator()(const DeviceAdmitted& b) const {
    out.key("device").string(b.device).key("public_key").string(b.publicKey).key("because").string(b.because);
  }
  void operator()(const PersonAdded& b) const {
    out.key("name").string(b.name).key("initials").string(b.initials).key("role").string(b.role);
    out.flag("practitioner", b.isPractitioner);
  }
  void operator()(const PersonChanged& b) const { writeBody(out, b); }
  void operator()(const CodeSet& b) const { writeCode(out, b.code); }
  void operator()(const AthleteAdded& b) const {
    out.key("jersey").string(b.jersey).key("family").string(b.family).key("given").string(b.given);
    if (b.birthYear) out.key("birth_year").integer(*b.birthYear);
  }
  void operator()(const AthleteChanged& b) const {
    if (b.jersey) out.key("jersey").string(*b.jersey);
    if (b.family) out.key("family").string(*b.family);
    if (b.given) out.key("given").string(*b.given);
    if (b.birthYear) out.key("birth_year").integer(*b.birthYear);
    if (b.isOnRoster) out.key("on_roster").boolean(*b.isOnRoster);
  }
  void operator()(const TapeRead& b) const {
    out.key("readings_um").beginArray();
    for (Length reading : b.readings) out.integer(reading.um);
    out.endArray().text("with", b.with);
  }
  void operator()(const ReadingSetAside& b) const {
    out.key("tape").string(b.tape).key("place").integer(b.place).key("reason").string(b.reason);
  }
  void operator()(const SheetAdopted& b) const { out.key("sheet").string(b.sheet).text("replaces", b.replaces); }
  void operator()(const UnitReceived& b) const {
    out.key("serial").string(b.serial).key("tag_key").string(b.tagKey).key("sheet").string(b.sheet).key("size").string(b.size);
    out.text("made", b.made).text("lot", b.lot);
  }
  void operator()(const LabelRead& b) const {
    if (!b.label) {
      out.flag("unreadable", b.isUnreadable);
      return;
    }
    out.key("label").string(b.label->kind == gear::LabelKind::makersMark ? "makers-mark" : "recertification");
    out.key("year").integer(b.label->year);
    if (b.label->fullDate) out.key("full_date").string(print(*b.label->fullDate));
    out.text("source", b.label->source);
  }
  void operator()(const PointsSeen& b) const {
    out.key("points").beginArray();
    for (const auto& [point, finding] : b.points) {
      out.beginObject().key("point").string(gear::code(point)).key("state").string(AnswerWriter::code(finding.state));
      out.text("what", finding.what).endObject();
    }
    out.endArray().flag("group", b.isGroup).text("check", b.check);
  }
  void operator()(const UnitHeld& b) const {
    out.key("reason").string(b.reason).text("what", b.what).flag("with_athlete", b.isWithAthlete).text("notice", b.notice);
  }
  void operator()(const HoldReleased& b) const { out.key("hold").string(b.hold).key("reason").string(b.reason); }
  void operator()(const UnitMoved& b) const {
    out.key("to").string(b.to).text("where", b.where).text("reason", b.reason);
    returnOf(out, b.returned);
  }
  void operator()(const PartChanged& b) const {
    out.key("part").string(b.part).text("what", b.what).text("athlete", b.athlete);
    marks(out, "reopens", b.reopens);
  }
  void operator()(const UnitPaired& b) const { out.key("athlete").string(b.athlete); }
  void operator()(const UnitUnpaired& b) const {
    out.key("athlete").string(b.athlete).key("reason").string(b.reason).flag("still_with", b.isStillWith);
  }
  void operator()(const CheckBegun& b) const {
    out.key("athlete").string(b.athlete).key("unit").string(b.unit).key("sheet").string(b.sheet).text("before", b.before);
    out.key("check_kind").string(fit::code(b.kind)).key("rules").integer(b.rules);
    if (b.certifiedUntil) out.key("certified_until").string(print(*b.certifiedUntil));
    out.flag("label_missing", b.isLabelMissing).key("words").beginArray();
    for (const WordRef& word : b.words) {
      out.beginObject().key("said").string(word.said);
      where(out, word.where);
      side(out, word.side);
      out.key("feels").string(fit::code(word.feels)).endObject();
    }
    out.endArray();
  }
  void operator()(const CheckAnswered& b) const {
    out.key("answers").beginArray();
    for (const fit::Answer& answer : b.answers) {
      out.beginObject();
      std::visit(AnswerWriter{out}, answer);
      out.endObject();
    }
    out.endArray().text("unit", b.unit);
    conditions(out, b.conditions);
    source(out, b.source);
  }
  void operator()(const CheckEnded& b) const {
    const season::EndedCheck& e = b.outcome;
    out.key("athlete").string(b.athlete).key("unit").string(b.unit).key("check_kind").string(fit::code(e.kind));
    out.key("verdict").string(fit::code(e.verdict)).key("reasons").beginArray();
    for (const std::string& reason : e.reasons) out.string(reason);
    out.endArray().key("strip").beginArray();
    for (fit::Finding finding : e.strip) out.string(fit::code(finding));
    out.endArray().flag("hair_dry", e.isHairDry).flag("for_cold", e.isForCold);
    out.key("due_from").string(print(e.dueFrom)).key("due_by").string(print(e.dueBy));
    conditions(out, b.conditions);
    if (b.pumped.empty()) return;
    out.key("pumped").beginArray();
    for (const season::PumpedRecord& each : b.pumped) {
      out.beginObject();
      writePumped(out, each);
      out.endObject();
    }
    out.endArray();
  }
  void operator()(const Said& b) const {
    const season::SaidRecord& s = b.said;
    out.text("unit", s.unit);
    where(out, s.where);
    side(out, s.side);
    out.key("feels").string(fit::code(s.feels)).flag("hair_changed", s.isHairChanged).flag("broken", s.isBroken);
    out.flag("unwell", s.isUnwell).text("words", s.words).text("check", b.check).flag("unnamed", b.isUnnamed);
  }
  void operator()(const SaidFollowed& b) const { writeBody(out, b); }
  void operator()(const SaidAcknowledged& b) const {
    out.key("said").string(b.said).flag("closed", b.isClosed).text("outcome", b.outcome).flag("unnamed", b.isUnnamed);
  }
  void operator()(const HairChanged& b) const { out.text("words", b.words); }
  void operator()(const PracticeSet& b) const {
    if (b.seasonStart) out.key("season_start").string(print(*b.seasonStart));
    if (b.seasonEnd) out.key("season_end").string(print(*b.seasonEnd));
    if (b.minute) out.key("minute").integer(*b.minute);
    if (b.days) {
      out.key("days").beginArray();
      for (bool day : *b.days) out.boolean(day);
      out.endArray();
    }
    out.text("season", b.season);
  }
  void operator()(const WeatherNoted& b) const { writeBody(out, b); }
  void operator()(const PlaceSet& b) const { writeBody(out, b); }
  void operator()(const UnitAirRead& b) const { writeBody(out, b); }
  void operator()(const LineSeen& b) const { writeBody(out, b); }
  void operator()(const RecoverySet& b) const { writeBody(out, b); }
  void operator()(const WarningSet& b) const { writeBody(out, b); }
  void operator()(const WarningSigned& b) const { writeBody(out, b); }
  void operator()(const RetentionSet& b) const { writeBody(out, b); }
  void operator()(const EmergencySet& b) const { writeBody(out, b); }
  void operator()(const LegalHoldMade& b) const { writeBody(out, b); }
  void operator()(const LegalHoldEnded& b) const { writeBody(out, b); }
  void operator()(const NoticeIssued& b) const {
    out.key("text").string(b.text).key("day").string(print(b.day));
    writeScope(out, b.scope);
  }
  void operator()(const PhoneJoined& b) const { writeBody(out, b); }
  void operator()(const PhoneLeft& b) const { writeBody(out, b); }
  void operator()(const SeasonClosed& b) const { writeBody(out, b); }
  void operator()(const UnitCollected& b) const { writeBody(out, b); }
  void operator()(const PhotoTaken& b) const { writeBody(out, b); }
  void operator()(const Corrected& b) const {
    out.key("fact").string(b.fact).key("touches").beginArray();
    for (const std::string& subject : b.touches) out.string(subject);
    out.endArray();
  }
  void operator()(const NoteAdded& b) const { out.key("text").string(b.text); }
  void operator()(const Unknown&) const {}
};

}  // namespace

void writeAnswer(LineWriter& out, const fit::Answer& answer) { std::visit(AnswerWriter{out}, answer); }

std::string_view kindOf(const Body& body) {
  return std::visit(Overloaded{[](const TeamFounded&) -> std::string_view { return "team-founded"; },
                               [](const DeviceAdmitted&) -> std::string_view { return "device-admitted"; },
                               [](const PersonAdded&) -> std::string_view { return "person-added"; },
                               [](const PersonChanged&) -> std::string_view { return "person-changed"; },
                               [](const CodeSet&) -> std::string_view { return "code-set"; },
                               [](const AthleteAdded&) -> std::string_view { return "athlete-added"; },
                               [](const AthleteChanged&) -> std::string_view { return "athlete-changed"; },
                               [](const TapeRead&) -> std::string_view { return "tape-read"; },
                               [](const ReadingSetAside&) -> std::string_view { return "reading-set-aside"; },
                               [](const SheetAdopted&) -> std::string_view { return "sheet-adopted"; },
                               [](const UnitReceived&) -> std::string_view { return "unit-received"; },
                               [](const LabelRead&) -> std::string_view { return "label-read"; },
                               [](const PointsSeen&) -> std::string_view { return "point-seen"; },
                               [](const UnitHeld&) -> std::string_view { return "unit-held"; },
                               [](const HoldReleased&) -> std::string_view { return "hold-released"; },
                               [](const UnitMoved&) -> std::string_view { return "unit-moved"; },
                               [](const PartChanged&) -> std::string_view { return "part-changed"; },
                               [](const UnitPaired&) -> std::string_view { return "unit-paired"; },
                               [](const UnitUnpaired&) -> std::string_view { return "unit-unpaired"; },
                               [](const CheckBegun&) -> std::string_view { return "check-begun"; },
                               [](const CheckAnswered& b) { return kindOfAnswers(b); },
                               [](const CheckEnded&) -> std::string_view { return "check-ended"; },
                               [](const Said&) -> std::string_view { return "said"; },
                               [](const SaidFollowed&) -> std::string_view { return "said-followed"; },
                               [](const SaidAcknowledged&) -> std::string_view { return "said-acknowledged"; },
                               [](const HairChanged&) -> std::string_view { return "hair-changed"; },
                               [](const PracticeSet&) -> std::string_view { return "practice-set"; },
                               [](const WeatherNoted&) -> std::string_view { return "weather-noted"; },
                               [](const PlaceSet&) -> std::string_view { return "place-set"; },
                               [](const UnitAirRead&) -> std::string_view { return "unit-air-read"; },
                               [](const LineSeen&) -> std::string_view { return "line-seen"; },
                               [](const RecoverySet&) -> std::string_view { return "recovery-set"; },
                               [](const WarningSet&) -> std::string_view { return "warning-set"; },
                               [](const WarningSigned&) -> std::string_view { return "warning-signed"; },
                               [](const RetentionSet&) -> std::string_view { return "retention-set"; },
                               [](const EmergencySet&) -> std::string_view { return "emergency-set"; },
                               [](const LegalHoldMade&) -> std::string_view { return "legal-hold-made"; },
                               [](const LegalHoldEnded&) -> std::string_view { return "legal-hold-ended"; },
                               [](const NoticeIssued&) -> std::string_view { return "notice-issued"; },
                               [](const PhoneJoined&) -> std::string_view { return "phone-joined"; },
                               [](const PhoneLeft&) -> std::string_view { return "phone-left"; },
                               [](const SeasonClosed&) -> std::string_view { return "season-closed"; },
                               [](const UnitCollected&) -> std::string_view { return "unit-collected"; },
                               [](const PhotoTaken&) -> std::string_view { return "photo-taken"; },
                               [](const Corrected&) -> std::string_view { return "corrected"; },
                               [](const NoteAdded&) -> std::string_view { return "note-added"; },
                               [](const Unknown& b) -> std::string_view { return b.kind; }},
                    body);
}

Result<std::string> encode(const Fact& fact) try {
  // An unknown body was never taken apart, so its line can only be kept, not written anew.
  if (std::holds_alternative<Unknown>(fact.body)) return fail(ErrorCode::notAllowed, fact.id(), "unknown kind");
  LineWriter out;
  out.reserve(320);
  out.beginObject().key("device").string(fact.device).key("n").integer(static_cast<std::int64_t>(fact.n));
  out.key("order").integer(fact.order).key("at_ms").integer(fact.at.ms).key("offset_min").integer(fact.at.offsetMinutes);
  out.key("who").string(fact.who).key("kind").string(kindOf(fact.body)).key("v").integer(versionOf(fact.body));
  out.key("about").string(fact.about.empty() ? fact.id() : fact.about).key("body").beginObject();
  std::visit(BodyWriter{out}, fact.body);
  out.endObject().endObject();
  if (!out.isText()) return fail(ErrorCode::notText, fact.id());
  if (!out.isInRange()) return fail(ErrorCode::outOfRange, fact.id(), "an integer beyond 53 bits");
  std::string line = out.take();
  if (line.size() > kFactLimitBytes) {
    return fail(ErrorCode::tooLong, fact.id(), std::to_string(line.size()) + ", " + std::to_string(kFactLimitBytes));
  }
  return line;
} catch (const std::exception& problem) {
  return fail(ErrorCode::outOfMemory, "fact", problem.what());
}

}  // namespace snugline::book
