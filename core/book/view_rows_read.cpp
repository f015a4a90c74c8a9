// SPDX-License-Identifier: Apache-2.0
#include "core/book/fact_json.h"
#include "core/book/view_rows.h"
#include "core/book/view_rows_people.h"
#include "core/season/season_air.h"

namespace snugline::book {

namespace {

using Reader = ObjectReader;
constexpr std::int64_t kDayMost = 200'000;  // far beyond every day that is parsed

std::vector<std::string> textsIf(Reader& in, std::string_view key) { return in.has(key) ? in.texts(key) : std::vector<std::string>(); }
std::optional<Day> dayIf(Reader& in, std::string_view key) {
  const auto number = in.integerIf(key, -kDayMost, kDayMost);
  return number ? std::optional<Day>(Day{static_cast<std::int32_t>(*number)}) : std::nullopt;
}
Day day(Reader& in, std::string_view key) { return Day{static_cast<std::int32_t>(in.integer(key, -kDayMost, kDayMost))}; }
fit::Side side(Reader& in) { return in.wordIf("side", fit::sideFromCode).value_or(fit::Side::both); }

season::Climate climate(Reader& in) {
  season::Climate c;
  c.temperatureMk = static_cast<std::int32_t>(in.integerIf("temperature_mk", 0, 1'000'000).value_or(0));
  c.ambientPa = static_cast<std::int32_t>(in.integerIf("ambient_pa", 0, 1'000'000).value_or(0));
  return c;
}

season::AirEvent airEvent(Reader& in) {
  season::AirEvent e;
  e.port = in.word("port", gear::portFromCode);
  e.kind = in.word("kind", season::airKindFromCode);
  e.isOnHead = in.flag("on_head");
  if (const auto pa = in.integerIf("gauge_pa")) e.gauge = Pressure{*pa};
  e.pumps = static_cast<int>(in.integerIf("pumps", -1000, 1000).value_or(0));
  e.climate = climate(in);
  e.source = source(in);
  e.check = in.textOr("check");
  e.stamp = stamp(in, "stamp");
  return e;
}

season::LineRecord line(Reader& in) {
  season::LineRecord l;
  l.unit = in.text("unit");
  l.brow = in.word("brow", findingWord);
  l.straps = in.word("straps", findingWord);
  l.hold = in.word("hold", findingWord);
  l.climate = climate(in);
  l.stamp = stamp(in, "stamp");
  return l;
}

std::optional<gear::Label> labelIf(Reader& in) {
  const auto kind = in.wordIf("label", labelKindFromCode);
  if (!kind) return std::nullopt;
  gear::Label label;
  label.kind = *kind;
  label.year = static_cast<int>(in.integer("year", 0, 9999));
  label.fullDate = dayIf(in, "full_day");
  label.source = in.textOr("source");
  return label;
}

season::EndedCheck ended(Reader& in) {
  season::EndedCheck e;
  e.check = in.text("check");
  e.unit = in.text("unit");
  e.kind = in.word("kind", fit::checkKindFromCode);
  e.verdict = in.word("verdict", fit::verdictFromCode);
  e.reasons = textsIf(in, "reasons");
  const std::string strip = in.text("strip");
  for (std::size_t i = 0; i < fit::kMarkCount; ++i) {
    const char c = i < strip.size() ? strip[i] : '?';
    if (c < '0' || c > '4') return in.fail(ErrorCode::outOfRange, "strip"), e;
    e.strip[i] = static_cast<fit::Finding>(c - '0');
  }
  e.isHairDry = in.flag("hair_dry");
  e.isForCold = in.flag("for_cold");
  e.dueFrom = day(in, "due_from");
  e.dueBy = day(in, "due_by");
  e.climate = climate(in);
  e.stamp = stamp(in, "stamp");
  return e;
}

season::SaidRecord readSaid(Reader& in) {
  season::SaidRecord s;
  s.fact = in.text("fact");
  s.at.ms = in.integer("at_ms");
  s.at.offsetMinutes = static_cast<std::int32_t>(in.integer("offset_min", -840, 840));
  s.unit = in.textOr("unit");
  s.where = in.wordIf("where", fit::markFromCode);
  s.side = side(in);
  s.feels = in.word("feels", feelsWord);
  s.isHairChanged = in.flag("hair_changed");
  s.isBroken = in.flag("broken");
  s.isUnwell = in.flag("unwell");
  s.words = in.textOr("words");
  s.isAdultTold = in.flag("adult_told");
  s.isMistake = in.flag("mistake");
  s.isAcknowledged = in.flag("acknowledged");
  s.isAnswered = in.flag("answered");
  return s;
}

AthleteNotes athleteNotes(Reader& in) {
  AthleteNotes n;
  in.objects("pairings", [&](Reader& each) {
    AthleteNotes::Pairing pairing;
    pairing.unit = each.text("unit");
    pairing.stamp = stamp(each, "stamp");
    n.pairings.push_back(std::move(pairing));
  });
  in.objects("open", [&](Reader& each) {
    AthleteNotes::OpenCheck open;
    open.check = each.text("check");
    open.unit = each.text("unit");
    open.hairFact = each.textOr("hair_fact");
    open.partFact = each.textOr("part_fact");
    open.saidBefore = static_cast<std::uint64_t>(each.integer("said_before", 0));
    open.words = textsIf(each, "words");
    n.open.push_back(std::move(open));
  });
  in.objects("said_in", [&](Reader& each) {
    std::string word = each.text("said");
    n.saidIn[std::move(word)] = each.text("check");
  });
  n.partUnit = in.textOr("part_unit");
  return n;
}

void athlete(Reader& in, season::AthleteRecord& r, AthleteNotes& notes) {
  r.jersey = in.text("jersey");
  r.family = in.text("family");
  r.given = in.text("given");
  if (const auto year = in.integerIf("birth_year", 0, 9999)) r.birthYear = static_cast<int>(*year);
  r.isOnRoster = in.boolean("on_roster");
  r.added = stamp(in, "added");
  in.objects("tapes", [&](Reader& each) {
    season::TapeRecord tape;
    for (std::int64_t um : each.integers("readings_um", -kLargestInteger, kLargestInteger)) tape.readings.push_back(Length{um});
    tape.names = each.texts("names");
    each.objects("aside", [&](Reader& one) {
      season::AsideReading aside;
      aside.reading = Length{one.integer("reading_um")};
      aside.name = one.text("name");
      aside.reason = one.text("reason");
      aside.stamp = stamp(one, "stamp");
      tape.aside.push_back(std::move(aside));
    });
    tape.stamp = stamp(each, "stamp");
    r.tapes.push_back(std::move(tape));
  });
  in.objects("said", [&](Reader& each) { r.said.push_back(readSaid(each)); });
  r.hairChanged = stampIf(in, "hair_changed");
  r.partChanged = stampIf(in, "part_changed");
  r.partMarks = marks(in, "part_marks");
  r.changedParts = textsIf(in, "changed_parts");
  if (in.has("had")) {
    in.object("had", [&](Reader& inner) {
      season::HadRecord had{inner.text("unit"), inner.text("reason"), {}};
      had.stamp = stamp(inner, "stamp");
      r.had = std::move(had);
    });
  }
  in.objects("checks", [&](Reader& each) { r.checks.push_back(ended(each)); });
  if (in.has("lines")) in.objects("lines", [&](Reader& each) { r.lines.push_back(line(each)); });
  readPrivacy(in, r);
  readPhones(in, r);
  in.object("notes", [&](Reader& inner) { notes = athleteNotes(inner); });
  // The rest of the record says the same as the notes and is not stored twice.
  for (const auto& pairing : notes.pairings) r.units.push_back(pairing.unit);
  if (!notes.pairings.empty()) {
    r.pairedAs = notes.pairings.back().stamp.fact;
    r.paired = notes.pairings.back().stamp;
  }
  if (!notes.open.empty()) r.openCheck = notes.open.back().check;
}

void unit(Reader& in, season::UnitRecord& r, UnitNotes& notes) {
  r.serial = in.text("serial");
  r.tagKey = in.text("tag_key");
  r.sheet = in.text("sheet");
  r.size = in.text("size");
  r.made = in.textOr("made");
  r.lot = in.textOr("lot");
  r.shelf = in.textOr("shelf");
  r.received = stamp(in, "received");
  r.isInService = in.boolean("in_service");
  r.place = static_cast<season::UnitPlace>(in.integer("place", 0, static_cast<int>(season::UnitPlace::lost)));
  r.placeWords = in.textOr("place_words");
  in.objects("labels", [&](Reader& each) {
    const auto label = labelIf(each);
    if (label) r.labels.push_back({*label, stamp(each, "stamp")});
  });
  r.isLabelMissing = in.flag("label_missing");
  r.isLabelUnreadable = in.flag("label_unreadable");
  r.isLabelDisputed = in.flag("label_disputed");
  in.objects("points", [&](Reader& each) {
    season::PointSeenRecord seen;
    const auto point = each.word("point", gear::pointFromCode);
    seen.finding.state = static_cast<gear::PointState>(each.integer("state", 0, 2));
    seen.finding.what = each.textOr("what");
    seen.isInGroup = each.flag("group");
    seen.stamp = stamp(each, "stamp");
    r.points.see(point, std::move(seen));
  });
  in.objects("holds", [&](Reader& each) {
    season::HoldRecord hold;
    hold.reason = each.text("reason");
    hold.what = each.textOr("what");
    hold.notice = each.textOr("notice");
    hold.stamp = stamp(each, "stamp");
    hold.fact = hold.stamp.fact;
    r.holds.push_back(std::move(hold));
  });
  r.athletes = textsIf(in, "athletes");
  r.isInHand = in.flag("in_hand");
  r.keptBy = in.textOr("kept_by");
  if (in.has("returned")) {
    in.object("returned", [&](Reader& inner) {
      r.returned.emplace();
      readReturn(inner, *r.returned);
      r.returned->stamp = stamp(inner, "stamp");
    });
  }
  if (in.has("air")) in.objects("air", [&](Reader& each) { r.air.push_back(airEvent(each)); });
  r.airFrom = static_cast<std::uint32_t>(in.integerIf("air_from", 0, static_cast<std::int64_t>(r.air.size())).value_or(0));
  if (in.has("pumped")) {
    in.objects("pumped", [&](Reader& each) {
      season::PumpedRecord pumped = readPumped(each);
      pumped.check = each.text("check");
      r.pumped.push_back(std::move(pumped));
    });
  }
  readTurn(in, r);
  season::workOutPorts(r);
  season::settleLeaks(r);
  in.object("notes", [&](Reader& inner) {
    inner.objects("readings", [&](Reader& each) {
      UnitNotes::Reading reading;
      reading.fact = each.text("fact");
      reading.label = labelIf(each);
      notes.readings.push_back(std::move(reading));
    });
  });
}

void check(Reader& in, season::CheckRecord& r, CheckNotes& notes) {
  r.athlete = in.text("athlete");
  r.unit = in.text("unit");
  r.sheet = in.text("sheet");
  r.kind = in.word("kind", fit::checkKindFromCode);
  r.rules = static_cast<int>(in.integer("rules"));
  r.begun = stamp(in, "begun");
  r.certifiedUntil = dayIf(in, "certified_until");
  r.isLabelMissing = in.flag("label_missing");
  r.before = in.textOr("before");
  in.objects("answers", [&](Reader& each) {
    season::AnswerRecord answer;
    answer.fact = each.text("fact");
    answer.group = each.textOr("group");
    each.object("answer", [&](Reader& inner) { answer.answer = readAnswer(inner); });
    r.answers.push_back(std::move(answer));
  });
  in.object("notes", [&](Reader& inner) {
    inner.objects("words", [&](Reader& each) {
      WordRef word;
      word.said = each.text("said");
      word.where = each.wordIf("where", fit::markFromCode);
      word.side = side(each);
      word.feels = each.word("feels", feelsWord);
      notes.words.push_back(std::move(word));
    });
  });
}

void team(Reader& in, season::TeamRecord& r) {
  r.name = in.text("name");
  r.mascot = in.text("mascot");
  r.season = in.text("season");
  r.seasonStart = dayIf(in, "season_start");
  r.seasonEnd = dayIf(in, "season_end");
  r.practiceMinute = static_cast<int>(in.integer("minute", 0, 1439));
  if (!in.booleans("days", r.practiceDays)) in.fail(ErrorCode::wrongType, "days");
  in.objectIf("weather", [&](Reader& inner) {
    season::WeatherRecord weather;
    weather.conditions = readConditions(inner);
    weather.stamp = stamp(inner, "stamp");
    r.weather = std::move(weather);
  });
  readPrivacy(in, r);
  readSeasons(in, r);
  if (in.has("unnamed")) in.objects("unnamed", [&](Reader& each) { r.unnamed.push_back(readSaid(each)); });
  if (in.has("notices")) {
    in.objects("notices", [&](Reader& each) {
      season::NoticeRecord notice;
      notice.text = each.text("text");
      notice.day = day(each, "day");
      notice.scope = readScope(each);
      notice.stamp = stamp(each, "stamp");
      notice.fact = notice.stamp.fact;
      r.notices.push_back(std::move(notice));
    });
  }
  if (!in.has("places")) return;
  in.objects("places", [&](Reader& each) {
    season::PlaceRecord& place = r.places[each.text("place")];
    if (const auto mm = each.integerIf("elevation_mm")) place.elevation = Elevation{*mm};
    place.isPreset = each.flag("preset");
    for (std::size_t i = 0; i < season::kWhereaboutsCount; ++i) {
      if (const auto mk = each.integerIf(season::code(static_cast<season::Whereabouts>(i)))) place.temperatures[i] = Temperature{*mk};
    }
  });
}

}  // namespace

bool RowReader::read(Entity entity, std::string_view keyView, std::string_view value, Folded& into) {
  const std::string key(keyView);
  const auto root = m_parser.parse(value, key);
  if (!root) return false;
  FirstFault fault{key, std::nullopt};
  Reader in(fault, **root);
  season::Views& views = into.views;
  switch (entity) {
    case Entity::team:
      views.team.emplace();
      views.team->id = key;
      team(in, *views.team);
      break;
    case Entity::person: {
      season::PersonRecord& person = views.people[key];
      person = {key, in.text("name"), in.text("initials"), in.word("role", roleWord), in.flag("practitioner")};
      in.objectIf("code", [&](Reader& code) { person.code = readCode(code); });
      break;
    }
    case Entity::sheet: {
      auto sheet = gear::parseSheet(in.text("sheet"), key);
      if (!sheet) return false;
      season::SheetRecord& record = views.sheets[key];
      record.hash = key;
      record.sheet = std::make_shared<const gear::ModelSheet>(std::move(*sheet));
      record.adopted = stamp(in, "adopted");
      if (in.has("replaced_by")) record.replaced = season::ReplacedRecord{in.text("replaced_by"), stamp(in, "replaced")};
      break;
    }
    case Entity::athlete: {
      season::AthleteRecord& record = views.athletes[key];
      record.id = key;
      athlete(in, record, into.athleteNotes[key]);
      break;
    }
    case Entity::unit: {
      season::UnitRecord& record = views.units[key];
      record.id = key;
      unit(in, record, into.unitNotes[key]);
      into.unitsByTag[record.tagKey].insert(key);
      break;
    }
    case Entity::check: {
      season::CheckRecord& record = views.openChecks[key];
      record.id = key;
      check(in, record, into.checkNotes[key]);
      into.restate(record);
      break;
    }
    case Entity::other:
      return false;
  }
  in.finish();
  return !fault.error;
}

}  // namespace snugline::book
