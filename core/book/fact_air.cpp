// SPDX-License-Identifier: Apache-2.0
// Weather, places and readings of air as bodies of facts.
#include "core/air/atmosphere.h"
#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

constexpr std::int64_t kRawMost = 0xFFFF'FFFE;  // 0.1 Pa; the next one up says "not known" on the air

std::optional<Temperature> temperatureIf(ObjectReader& in, std::string_view key) {
  const auto mk = in.integerIf(key, air::kTemperatureLow.mk, air::kTemperatureHigh.mk);
  return mk ? std::optional(Temperature{*mk}) : std::nullopt;
}

}  // namespace

void writeConditions(LineWriter& out, const season::Conditions& c) {
  out.text("place", c.place);
  if (c.whereabouts) out.key("whereabouts").string(season::code(*c.whereabouts));
  if (c.temperature) out.key("temperature_mk").integer(c.temperature->mk);
  if (c.elevation) out.key("elevation_mm").integer(c.elevation->mm);
  if (c.ambient) out.key("ambient_pa").integer(c.ambient->pa);
}

season::Conditions readConditions(ObjectReader& in) {
  season::Conditions c;
  c.place = in.textOr("place");
  c.whereabouts = in.wordIf("whereabouts", season::whereaboutsFromCode);
  c.temperature = temperatureIf(in, "temperature_mk");
  if (const auto mm = in.integerIf("elevation_mm", air::kElevationLow.mm, air::kElevationHigh.mm)) c.elevation = Elevation{*mm};
  if (const auto pa = in.integerIf("ambient_pa", air::kBarometerLow.pa, air::kBarometerHigh.pa)) c.ambient = Pressure{*pa};
  return c;
}

void conditions(LineWriter& out, const season::Conditions& c) {
  if (c.isEmpty()) return;
  out.key("conditions").beginObject();
  writeConditions(out, c);
  out.endObject();
}

season::Conditions conditions(ObjectReader& in) {
  season::Conditions c;
  in.objectIf("conditions", [&](ObjectReader& inner) {
    c = readConditions(inner);
    if (c.isEmpty()) inner.fail(ErrorCode::missingKey, "temperature_mk");  // an empty one is left out
  });
  return c;
}

void source(LineWriter& out, const season::AirSource& s) {
  if (s.isEmpty()) return;
  out.key("source").beginObject().text("gauge", s.gauge);
  if (s.rawDeciPascal) out.key("raw_dpa").integer(*s.rawDeciPascal);
  if (s.zeroDeciPascal) out.key("zero_dpa").integer(*s.zeroDeciPascal);
  if (s.sensor) out.key("sensor_mk").integer(s.sensor->mk);
  out.endObject();
}

season::AirSource source(ObjectReader& in) {
  season::AirSource s;
  in.objectIf("source", [&](ObjectReader& inner) {
    s.gauge = inner.textOr("gauge");
    s.rawDeciPascal = inner.integerIf("raw_dpa", 0, kRawMost);
    s.zeroDeciPascal = inner.integerIf("zero_dpa", 0, kRawMost);
    s.sensor = temperatureIf(inner, "sensor_mk");
    if (s.isEmpty()) inner.fail(ErrorCode::missingKey, "gauge");
  });
  return s;
}

void writePumped(LineWriter& out, const season::PumpedRecord& p) {
  out.key("port").string(gear::code(p.port)).key("pumps").integer(p.pumps);
  if (p.gapBefore) out.key("gap_before_um").integer(p.gapBefore->um);
  if (p.gapAfter) out.key("gap_after_um").integer(p.gapAfter->um);
  if (p.airBefore) out.key("air_before_pa").integer(p.airBefore->pa);
  if (p.airAfter) out.key("air_after_pa").integer(p.airAfter->pa);
}

season::PumpedRecord readPumped(ObjectReader& in) {
  season::PumpedRecord p;
  p.port = in.word("port", gear::portFromCode);
  p.pumps = static_cast<int>(in.integer("pumps", -1000, 1000));
  if (const auto um = in.integerIf("gap_before_um")) p.gapBefore = Length{*um};
  if (const auto um = in.integerIf("gap_after_um")) p.gapAfter = Length{*um};
  if (const auto pa = in.integerIf("air_before_pa")) p.airBefore = Pressure{*pa};
  if (const auto pa = in.integerIf("air_after_pa")) p.airAfter = Pressure{*pa};
  return p;
}

void writeBody(LineWriter& out, const WeatherNoted& b) { writeConditions(out, b.conditions); }
void writeBody(LineWriter& out, const PlaceSet& b) {
  out.key("place").string(b.place);
  if (b.elevation) out.key("elevation_mm").integer(b.elevation->mm);
}
void writeBody(LineWriter& out, const UnitAirRead& b) {
  out.key("port").string(gear::code(b.port)).key("gauge_pa").integer(b.gauge.pa).flag("on_head", b.isOnHead).flag("refill", b.isRefill);
  conditions(out, b.conditions);
  source(out, b.source);
}
void writeBody(LineWriter& out, const LineSeen& b) {
  out.key("unit").string(b.unit).key("brow").string(fit::code(b.brow)).key("straps").string(fit::code(b.straps));
  out.key("hold").string(fit::code(b.hold));
  conditions(out, b.conditions);
}

Body readWeatherNoted(ObjectReader& in) { return WeatherNoted{readConditions(in)}; }
Body readPlaceSet(ObjectReader& in) {
  PlaceSet b;
  b.place = in.text("place");
  if (b.place.empty()) in.fail(ErrorCode::outOfRange, "place", "empty");
  if (const auto mm = in.integerIf("elevation_mm", air::kElevationLow.mm, air::kElevationHigh.mm)) b.elevation = Elevation{*mm};
  return b;
}
Body readUnitAirRead(ObjectReader& in) {
  UnitAirRead b;
  b.port = in.word("port", gear::portFromCode);
  b.gauge = Pressure{in.integer("gauge_pa", season::kGaugeLeast.pa, season::kGaugeMost.pa)};
  b.isOnHead = in.flag("on_head");
  b.isRefill = in.flag("refill");
  b.conditions = conditions(in);
  b.source = source(in);
  return b;
}
Body readLineSeen(ObjectReader& in) {
  LineSeen b;
  b.unit = in.text("unit");
  b.brow = in.word("brow", findingWord);
  b.straps = in.word("straps", findingWord);
  b.hold = in.word("hold", findingWord);
  b.conditions = conditions(in);
  return b;
}

// 2 where a body of version 1 could not say what stands in it.
std::int64_t versionOf(const Body& body) {
  if (const auto* answered = std::get_if<CheckAnswered>(&body))
    return answered->unit.empty() && answered->conditions.isEmpty() && answered->source.isEmpty() ? 1 : 2;
  if (const auto* ended = std::get_if<CheckEnded>(&body)) return ended->conditions.isEmpty() && ended->pumped.empty() ? 1 : 2;
  if (const auto* received = std::get_if<UnitReceived>(&body)) return received->lot.empty() ? 1 : 2;
  if (const auto* held = std::get_if<UnitHeld>(&body)) return held->notice.empty() ? 1 : 2;
  if (const auto* moved = std::get_if<UnitMoved>(&body)) {
    const bool isOld = moved->reason.empty() && moved->to != "shelf" && moved->to != "in-hand" && moved->to != "with-athlete";
    return isOld && moved->returned == season::ReturnRecord{} ? 1 : 2;
  }
  if (const auto* unpaired = std::get_if<UnitUnpaired>(&body)) return unpaired->isStillWith ? 2 : 1;
  if (const auto* read = std::get_if<LabelRead>(&body)) return read->isUnreadable && !read->label ? 2 : 1;
  if (const auto* changed = std::get_if<PartChanged>(&body)) return changed->reopens == fit::MarkSet{} ? 1 : 2;
  if (const auto* adopted = std::get_if<SheetAdopted>(&body)) return adopted->replaces.empty() ? 1 : 2;
  return 1;
}

std::int64_t newestOf(std::string_view kind) {
  const bool isGrown = kind == "check-ended" || kind == "air-read" || kind == "adjusted" || kind == "fitting-set" ||
                       kind == "check-answered" || kind == "unit-received" || kind == "unit-held" || kind == "unit-moved" ||
                       kind == "unit-unpaired" || kind == "label-read" || kind == "part-changed" || kind == "sheet-adopted";
  return isGrown ? 2 : 1;
}

}  // namespace snugline::book
