// SPDX-License-Identifier: Apache-2.0
#include "core/book/fact_json.h"
#include "core/book/view_rows.h"
#include "core/book/view_rows_people.h"

namespace snugline::book {

namespace {

void texts(LineWriter& out, std::string_view key, const std::vector<std::string>& all) {
  if (all.empty()) return;
  out.key(key).beginArray();
  for (const std::string& each : all) out.string(each);
  out.endArray();
}
void dayIf(LineWriter& out, std::string_view key, const std::optional<Day>& day) {
  if (day) out.key(key).integer(day->number);
}
void mark(LineWriter& out, const std::optional<fit::Mark>& where, fit::Side side) {
  if (where) out.key("where").string(fit::code(*where));
  if (side != fit::Side::both) out.key("side").string(fit::code(side));
}
void label(LineWriter& out, const gear::Label& l) {
  out.key("label").string(l.kind == gear::LabelKind::makersMark ? "makers-mark" : "recertification").key("year").integer(l.year);
  dayIf(out, "full_day", l.fullDate);
  out.text("source", l.source);
}

void climate(LineWriter& out, const season::Climate& c) {
  if (c.temperatureMk != 0) out.key("temperature_mk").integer(c.temperatureMk);
  if (c.ambientPa != 0) out.key("ambient_pa").integer(c.ambientPa);
}

void airOf(LineWriter& out, const season::UnitRecord& r) {
  if (!r.air.empty()) {
    out.key("air").beginArray();
    for (const season::AirEvent& e : r.air) {
      out.beginObject().key("port").string(gear::code(e.port)).key("kind").string(season::code(e.kind)).flag("on_head", e.isOnHead);
      if (e.gauge) out.key("gauge_pa").integer(e.gauge->pa);
      if (e.pumps != 0) out.key("pumps").integer(e.pumps);
      climate(out, e.climate);
      source(out, e.source);
      out.text("check", e.check);
      stamp(out, "stamp", e.stamp);
      out.endObject();
    }
    out.endArray();
  }
  if (r.airFrom != 0) out.key("air_from").integer(r.airFrom);
  if (r.pumped.empty()) return;
  out.key("pumped").beginArray();
  for (const season::PumpedRecord& each : r.pumped) {
    out.beginObject();
    writePumped(out, each);
    out.key("check").string(each.check).endObject();
  }
  out.endArray();
}

void linesOf(LineWriter& out, const season::AthleteRecord& r) {
  if (r.lines.empty()) return;
  out.key("lines").beginArray();
  for (const season::LineRecord& l : r.lines) {
    out.beginObject().key("unit").string(l.unit).key("brow").string(fit::code(l.brow)).key("straps").string(fit::code(l.straps));
    out.key("hold").string(fit::code(l.hold));
    climate(out, l.climate);
    stamp(out, "stamp", l.stamp);
    out.endObject();
  }
  out.endArray();
}

void weatherOf(LineWriter& out, const season::TeamRecord& r) {
  if (r.weather) {
    out.key("weather").beginObject();
    writeConditions(out, r.weather->conditions);
    stamp(out, "stamp", r.weather->stamp);
    out.endObject();
  }
  if (r.places.empty()) return;
  out.key("places").beginArray();
  for (const auto& [name, place] : r.places) {
    out.beginObject().key("place").string(name);
    if (place.elevation) out.key("elevation_mm").integer(place.elevation->mm);
    out.flag("preset", place.isPreset);
    for (std::size_t i = 0; i < season::kWhereaboutsCount; ++i) {
      if (place.temperatures[i]) out.key(season::code(static_cast<season::Whereabouts>(i))).integer(place.temperatures[i]->mk);
    }
    out.endObject();
  }
  out.endArray();
}

void noticesOf(LineWriter& out, const season::TeamRecord& r) {
  if (r.notices.empty()) return;
  out.key("notices").beginArray();
  for (const season::NoticeRecord& n : r.notices) {
    out.beginObject().key("text").string(n.text).key("day").integer(n.day.number);
    writeScope(out, n.scope);
    stamp(out, "stamp", n.stamp);
    out.endObject();
  }
  out.endArray();
}

void ended(LineWriter& out, const season::EndedCheck& e) {
  std::string strip;
  for (fit::Finding finding : e.strip) strip += static_cast<char>('0' + static_cast<int>(finding));
  out.beginObject().key("check").string(e.check).key("unit").string(e.unit).key("kind").string(fit::code(e.kind));
  out.key("verdict").string(fit::code(e.verdict));
  texts(out, "reasons", e.reasons);
  out.key("strip").string(strip).flag("hair_dry", e.isHairDry).flag("for_cold", e.isForCold);
  out.key("due_from").integer(e.dueFrom.number).key("due_by").integer(e.dueBy.number);
  climate(out, e.climate);
  stamp(out, "stamp", e.stamp);
  out.endObject();
}

void said(LineWriter& out, const season::SaidRecord& s) {
  out.beginObject().key("fact").string(s.fact).key("at_ms").integer(s.at.ms).key("offset_min").integer(s.at.offsetMinutes);
  out.text("unit", s.unit);
  mark(out, s.where, s.side);
  out.key("feels").string(fit::code(s.feels)).flag("hair_changed", s.isHairChanged).flag("broken", s.isBroken).flag("unwell", s.isUnwell);
  out.text("words", s.words).flag("adult_told", s.isAdultTold).flag("mistake", s.isMistake);
  out.flag("acknowledged", s.isAcknowledged).flag("answered", s.isAnswered).endObject();
}

void notesOf(LineWriter& out, const AthleteNotes& n) {
  out.key("notes").beginObject().key("pairings").beginArray();
  for (const auto& pairing : n.pairings) {
    out.beginObject().key("unit").string(pairing.unit);
    stamp(out, "stamp", pairing.stamp);
    out.endObject();
  }
  out.endArray().key("open").beginArray();
  for (const auto& open : n.open) {
    out.beginObject().key("check").string(open.check).key("unit").string(open.unit).text("hair_fact", open.hairFact);
    out.text("part_fact", open.partFact).key("said_before").integer(static_cast<std::int64_t>(open.saidBefore));
    texts(out, "words", open.words);
    out.endObject();
  }
  out.endArray().key("said_in").beginArray();
  for (const auto& [word, check] : n.saidIn) out.beginObject().key("said").string(word).key("check").string(check).endObject();
  out.endArray().text("part_unit", n.partUnit).endObject();
}

}  // namespace

std::string rowOf(const season::TeamRecord& r) {
  LineWriter out;
  out.beginObject().key("name").string(r.name).key("mascot").string(r.mascot).key("season").string(r.season);
  dayIf(out, "season_start", r.seasonStart);
  dayIf(out, "season_end", r.seasonEnd);
  out.key("minute").integer(r.practiceMinute).key("days").beginArray();
  for (bool day : r.practiceDays) out.boolean(day);
  out.endArray();
  weatherOf(out, r);
  privacyOf(out, r);
  noticesOf(out, r);
  seasonsOf(out, r);
  if (!r.unnamed.empty()) {
    out.key("unnamed").beginArray();
    for (const auto& each : r.unnamed) said(out, each);
    out.endArray();
  }
  out.endObject();
  return out.take();
}

std::string rowOf(const season::PersonRecord& r) {
  LineWriter out;
  out.beginObject().key("name").string(r.name).key("initials").string(r.initials).key("role").string(r.role);
  out.flag("practitioner", r.isPractitioner);
  if (r.code) {
    out.key("code").beginObject();
    writeCode(out, *r.code);
    out.endObject();
  }
  out.endObject();
  return out.take();
}

std::string rowOf(const season::SheetRecord& r) {
  LineWriter out;
  out.beginObject().key("sheet").string(r.sheet->bytes);
  stamp(out, "adopted", r.adopted);
  if (r.replaced) {
    out.key("replaced_by").string(r.replaced->by);
    stamp(out, "replaced", r.replaced->stamp);
  }
  out.endObject();
  return out.take();
}

std::string rowOf(const season::AthleteRecord& r, const AthleteNotes& notes) {
  LineWriter out;
  out.reserve(1024 + 400 * r.checks.size());
  out.beginObject().key("jersey").string(r.jersey).key("family").string(r.family).key("given").string(r.given);
  if (r.birthYear) out.key("birth_year").integer(*r.birthYear);
  out.key("on_roster").boolean(r.isOnRoster);
  stamp(out, "added", r.added);
  out.key("tapes").beginArray();
  for (const auto& tape : r.tapes) {
    out.beginObject().key("readings_um").beginArray();
    for (Length reading : tape.readings) out.integer(reading.um);
    out.endArray().key("names").beginArray();
    for (const std::string& name : tape.names) out.string(name);
    out.endArray().key("aside").beginArray();
    for (const season::AsideReading& each : tape.aside) {
      out.beginObject().key("reading_um").integer(each.reading.um).key("name").string(each.name).key("reason").string(each.reason);
      stamp(out, "stamp", each.stamp);
      out.endObject();
    }
    out.endArray();
    stamp(out, "stamp", tape.stamp);
    out.endObject();
  }
  out.endArray().key("said").beginArray();
  for (const auto& each : r.said) said(out, each);
  out.endArray();
  stampIf(out, "hair_changed", r.hairChanged);
  stampIf(out, "part_changed", r.partChanged);
  marks(out, "part_marks", r.partMarks);
  texts(out, "changed_parts", r.changedParts);
  if (r.had) {
    out.key("had").beginObject().key("unit").string(r.had->unit).key("reason").string(r.had->reason);
    stamp(out, "stamp", r.had->stamp);
    out.endObject();
  }
  out.key("checks").beginArray();
  for (const auto& each : r.checks) ended(out, each);
  out.endArray();
  linesOf(out, r);
  privacyOf(out, r);
  phonesOf(out, r);
  notesOf(out, notes);
  out.endObject();
  return out.take();
}

std::string rowOf(const season::UnitRecord& r, const UnitNotes& notes) {
  LineWriter out;
  out.reserve(1024);
  out.beginObject().key("serial").string(r.serial).key("tag_key").string(r.tagKey).key("sheet").string(r.sheet);
  out.key("size").string(r.size).text("made", r.made).text("lot", r.lot).text("shelf", r.shelf);
  stamp(out, "received", r.received);
  out.key("in_service").boolean(r.isInService).key("place").integer(static_cast<int>(r.place)).text("place_words", r.placeWords);
  out.key("labels").beginArray();
  for (const auto& each : r.labels) {
    out.beginObject();
    label(out, each.label);
    stamp(out, "stamp", each.stamp);
    out.endObject();
  }
  out.endArray()
      .flag("label_missing", r.isLabelMissing)
      .flag("label_unreadable", r.isLabelUnreadable)
      .flag("label_disputed", r.isLabelDisputed)
      .key("points")
      .beginArray();
  for (gear::Point point : gear::kPoints) {
    const auto& seen = r.points[static_cast<std::size_t>(point)];
    if (!seen) continue;
    out.beginObject().key("point").string(gear::code(point)).key("state").integer(static_cast<int>(seen->finding.state));
    out.text("what", seen->finding.what).flag("group", seen->isInGroup);
    stamp(out, "stamp", seen->stamp);
    out.endObject();
  }
  out.endArray().key("holds").beginArray();
  for (const auto& hold : r.holds) {
    out.beginObject().key("reason").string(hold.reason).text("what", hold.what).text("notice", hold.notice);
    stamp(out, "stamp", hold.stamp);
    out.endObject();
  }
  out.endArray();
  texts(out, "athletes", r.athletes);
  out.flag("in_hand", r.isInHand).text("kept_by", r.keptBy);
  if (r.returned) {
    out.key("returned").beginObject();
    returnOf(out, *r.returned);
    stamp(out, "stamp", r.returned->stamp);
    out.endObject();
  }
  airOf(out, r);
  turnOf(out, r);
  out.key("notes").beginObject().key("readings").beginArray();
  for (const auto& reading : notes.readings) {
    out.beginObject().key("fact").string(reading.fact);
    if (reading.label) label(out, *reading.label);
    out.endObject();
  }
  out.endArray().endObject().endObject();
  return out.take();
}

std::string rowOf(const season::CheckRecord& r, const CheckNotes& notes) {
  LineWriter out;
  out.beginObject().key("athlete").string(r.athlete).key("unit").string(r.unit).key("sheet").string(r.sheet);
  out.key("kind").string(fit::code(r.kind)).key("rules").integer(r.rules);
  stamp(out, "begun", r.begun);
  dayIf(out, "certified_until", r.certifiedUntil);
  out.flag("label_missing", r.isLabelMissing).text("before", r.before).key("answers").beginArray();
  for (const auto& each : r.answers) {
    out.beginObject().key("fact").string(each.fact).text("group", each.group).key("answer").beginObject();
    writeAnswer(out, each.answer);
    out.endObject().endObject();
  }
  out.endArray().key("notes").beginObject().key("words").beginArray();
  for (const WordRef& word : notes.words) {
    out.beginObject().key("said").string(word.said);
    mark(out, word.where, word.side);
    out.key("feels").string(fit::code(word.feels)).endObject();
  }
  out.endArray().endObject().endObject();
  return out.take();
}

}  // namespace snugline::book
