// SPDX-License-Identifier: Apache-2.0
#include "core/book/acts_air.h"

#include <algorithm>
#include <cstdlib>

#include "core/air/atmosphere.h"
#include "core/season/board_reasons.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::Conditions;
using season::UnitRecord;
using season::Views;

constexpr std::size_t kMarksInLine = 3;

tl::unexpected<Error> refuseAir(const std::string& place, std::string_view name) {
  return fail(ErrorCode::notAllowed, place, std::string(name));
}

std::size_t lengthOf(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

Result<void> checkPlace(const std::string& place) {
  if (lengthOf(place) <= kNameLimit) return {};
  return fail(ErrorCode::tooLong, "place", std::to_string(lengthOf(place)) + ", " + std::to_string(kNameLimit));
}

Result<void> checkSource(const season::AirSource& source) {
  if (lengthOf(source.gauge) > kNameLimit)
    return fail(ErrorCode::tooLong, "gauge", std::to_string(lengthOf(source.gauge)) + ", " + std::to_string(kNameLimit));
  if (source.sensor) {
    if (auto ok = air::believed(*source.sensor, "sensor"); !ok) return tl::unexpected<Error>(ok.error());
  }
  return {};
}

Result<void> checkConditions(const Conditions& c) {
  if (c.temperature) {
    if (auto ok = air::believed(*c.temperature, "temperature"); !ok) return tl::unexpected<Error>(ok.error());
  }
  if (c.elevation) {
    if (auto ok = air::believed(*c.elevation, "elevation"); !ok) return tl::unexpected<Error>(ok.error());
  }
  if (c.ambient) {
    if (auto ok = air::believedAmbient(*c.ambient, "ambient"); !ok) return tl::unexpected<Error>(ok.error());
  }
  return checkPlace(c.place);
}

// Walks the answers of a check and notes what pumps did between two looks at the brow, or two readings of one port.
struct PumpWalk {
  std::vector<season::PumpedRecord> found;
  std::array<int, gear::kPortCount> sinceGap{}, sinceAir{};
  std::array<std::optional<Pressure>, gear::kPortCount> air;
  std::optional<Length> gap;
  bool isGapMixed = false;  // something else was changed too: no telling what moved the shell

  void read(gear::Port port, Pressure gauge) {
    const auto i = static_cast<std::size_t>(port);
    if (air[i] && sinceAir[i] != 0) found.push_back({{}, port, sinceAir[i], std::nullopt, std::nullopt, air[i], gauge});
    air[i] = gauge;
    sinceAir[i] = 0;
  }
  void operator()(const fit::MarkSeen& a) {
    if (a.mark != fit::Mark::brow || !a.gap) return;
    const auto pumped = std::count_if(sinceGap.begin(), sinceGap.end(), [](int n) { return n != 0; });
    for (std::size_t i = 0; gap && !isGapMixed && pumped == 1 && i < gear::kPortCount; ++i) {
      if (sinceGap[i] == 0) continue;
      found.push_back({{}, static_cast<gear::Port>(i), sinceGap[i], gap, a.gap, std::nullopt, std::nullopt});
    }
    gap = a.gap;
    sinceGap = {};
    isGapMixed = false;
  }
  void operator()(const fit::Adjusted& a) {
    if (!a.port || a.pumps == 0) {
      isGapMixed = true;
      if (a.port) air[static_cast<std::size_t>(*a.port)].reset();  // air moved without being counted
    } else {
      const auto i = static_cast<std::size_t>(*a.port);
      const int pumps = a.deed == fit::Deed::release ? -a.pumps : a.pumps;
      sinceGap[i] += pumps;
      sinceAir[i] += pumps;
    }
    if (a.port && a.air) read(*a.port, *a.air);
  }
  void operator()(const fit::AirRead& a) { read(a.port, a.gauge); }
  void operator()(const fit::Fitted& a) { air = a.air; }
  template <typename A>
  void operator()(const A&) {}
};

bool isElsewhere(const UnitRecord& unit) {
  switch (unit.place) {
    case season::UnitPlace::shelf:
    case season::UnitPlace::withAthlete:
      return false;
    case season::UnitPlace::repair:
    case season::UnitPlace::sentOut:
    case season::UnitPlace::retired:
    case season::UnitPlace::lost:
      return true;
  }
  return true;
}

// The helmet of somebody who may stand in the line.
Result<const UnitRecord*> standingIn(const Views& views, const std::string& id, Instant now) {
  const AthleteRecord* athlete = views.athlete(id);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + id);
  const std::string& number = athlete->jersey;
  if (!athlete->isOnRoster) return refuseAir(number, rule::kOffRoster);
  if (athlete->units.empty()) return refuseAir(number, rule::kNoUnit);
  if (athlete->units.size() > 1) return refuseAir(number, rule::kTwoUnits);
  const UnitRecord* unit = views.unit(athlete->units.front());
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + athlete->units.front());
  if (unit->athletes.size() > 1) return refuseAir(number, rule::kTwoAthletes);
  if (unit->place == season::UnitPlace::retired) return refuseAir(number, rule::kUnitRetired);
  if (isElsewhere(*unit)) return refuseAir(number, rule::kUnitAway);
  if (!unit->holds.empty()) return refuseAir(number, rule::kUnitHeld);
  if (const auto span = season::lastGoodDay(views, *unit); span && gear::judge(*span, dayOf(now)) != gear::LabelState::good)
    return refuseAir(number, rule::kLabelLapsed);
  for (const season::SaidRecord& said : athlete->said) {
    if (!said.isAnswered) return refuseAir(number, said.isUnwell ? rule::kUnwellSaid : rule::kReportOpen);
  }
  if (!athlete->openCheck.empty()) return refuseAir(number, rule::kCheckOpen);
  if (kindDue(views, *athlete) == fit::CheckKind::first) return refuseAir(number, rule::kNeverFitted);
  return unit;
}

}  // namespace

std::vector<season::PumpedRecord> pumpedIn(const season::CheckRecord& check) {
  PumpWalk walk;
  for (const season::AnswerRecord& each : check.answers) std::visit(walk, each.answer);
  return std::move(walk.found);
}

Result<void> carryAir(const Views& views, CheckAnswered& body, const std::string& unit, Instant now, const season::AirSource& source) {
  const auto isAir = [](const fit::Answer& a) {
    if (const auto* fitted = std::get_if<fit::Fitted>(&a))
      return std::any_of(fitted->air.begin(), fitted->air.end(), [](const auto& p) { return p.has_value(); });
    if (const auto* adjusted = std::get_if<fit::Adjusted>(&a)) return adjusted->port.has_value();
    return std::holds_alternative<fit::AirRead>(a);
  };
  if (std::none_of(body.answers.begin(), body.answers.end(), isAir)) return {};
  if (auto ok = checkSource(source); !ok) return ok;
  body.unit = unit;
  body.conditions = weatherFor(views, now);
  body.source = source;
  return {};
}

Conditions weatherFor(const Views& views, Instant now) {
  if (!views.team || !views.team->weather) return {};
  const season::WeatherRecord& noted = *views.team->weather;
  return std::abs(now.ms - noted.stamp.at.ms) > season::kWeatherFreshMs ? Conditions{} : noted.conditions;
}

Result<Drafts> noteWeather(const Views& views, const Conditions& said) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (said.isEmpty()) return refuseAir("weather", rule::kNothingSaid);
  if (auto ok = checkConditions(said); !ok) return tl::unexpected<Error>(ok.error());
  Conditions noted = said;
  const auto place = views.team->places.find(said.place);
  if (place != views.team->places.end() && !noted.elevation && !noted.ambient) noted.elevation = place->second.elevation;
  return Drafts{{views.team->id, WeatherNoted{std::move(noted)}}};
}

Result<Drafts> setPlace(const Views& views, const std::string& place, Elevation elevation) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (place.empty()) return fail(ErrorCode::outOfRange, "place", "0, 1, " + std::to_string(kNameLimit));
  if (auto ok = checkPlace(place); !ok) return tl::unexpected<Error>(ok.error());
  if (auto ok = air::believed(elevation, "elevation"); !ok) return tl::unexpected<Error>(ok.error());
  const auto known = views.team->places.find(place);
  if (known != views.team->places.end() && known->second.isPreset && known->second.elevation == elevation) return Drafts{};
  return Drafts{{views.team->id, PlaceSet{place, elevation}}};
}

Result<Drafts> removePlace(const Views& views, const std::string& place) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  const auto known = views.team->places.find(place);
  if (known == views.team->places.end() || !known->second.isPreset) return fail(ErrorCode::notFound, "place " + place);
  return Drafts{{views.team->id, PlaceSet{place, std::nullopt}}};
}

Result<Drafts> readAir(const Views& views, const std::string& unitId, const AirReading& reading, Instant now) {
  const UnitRecord* unit = views.unit(unitId);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + unitId);
  if (unit->place == season::UnitPlace::retired) return refuseAir(unit->serial, rule::kUnitRetired);
  if (isElsewhere(*unit)) return refuseAir(unit->serial, rule::kUnitAway);
  const gear::ModelSheet* sheet = views.sheetOf(*unit);
  if (sheet == nullptr) return fail(ErrorCode::notFound, "sheet " + unit->sheet);
  if (!sheet->hasPort(reading.port)) return fail(ErrorCode::unknownPort, std::string(gear::code(reading.port)), sheet->id);
  if (reading.gauge < season::kGaugeLeast || reading.gauge > season::kGaugeMost) {
    return fail(
        ErrorCode::outOfRange, "gauge",
        std::to_string(reading.gauge.pa) + ", " + std::to_string(season::kGaugeLeast.pa) + ", " + std::to_string(season::kGaugeMost.pa));
  }
  if (auto ok = checkSource(reading.source); !ok) return tl::unexpected<Error>(ok.error());
  for (auto it = unit->air.rbegin(); it != unit->air.rend(); ++it) {
    if (it->port != reading.port || it->stamp.at.ms <= now.ms) continue;
    return refuseAir(unit->serial, it->kind == season::AirKind::read ? rule::kBeforeReading : rule::kBeforeRefill);
  }
  UnitAirRead body{reading.port, reading.gauge, reading.isOnHead, reading.isRefill, weatherFor(views, now), reading.source};
  return Drafts{{unitId, std::move(body)}};
}

std::vector<int> lineScreens(int athletes) {
  std::vector<int> screens(static_cast<std::size_t>((athletes + kLineScreenMost - 1) / kLineScreenMost));
  const int count = static_cast<int>(screens.size());
  for (int i = 0; i < count; ++i) screens[static_cast<std::size_t>(i)] = athletes / count + (i < athletes % count ? 1 : 0);
  return screens;
}

Result<Drafts> lineCheck(const Views& views, const std::vector<std::string>& seen, const std::vector<LineException>& exceptions,
                         Instant now) {
  if (seen.empty()) return refuseAir("line", rule::kNothingSaid);
  const Conditions conditions = weatherFor(views, now);
  Drafts drafts;
  drafts.reserve(seen.size());
  std::vector<std::string> sorted = seen;
  std::sort(sorted.begin(), sorted.end());
  if (const auto twice = std::adjacent_find(sorted.begin(), sorted.end()); twice != sorted.end())
    return fail(ErrorCode::inconsistent, "athlete " + *twice, "twice in the line");
  for (const LineException& each : exceptions) {
    if (!std::binary_search(sorted.begin(), sorted.end(), each.athlete))
      return fail(ErrorCode::inconsistent, "athlete " + each.athlete, "not in the line");
    const std::array<fit::Mark, kMarksInLine> kMarks{fit::Mark::brow, fit::Mark::straps, fit::Mark::hold};
    if (std::find(kMarks.begin(), kMarks.end(), each.mark) == kMarks.end())
      return fail(ErrorCode::inconsistent, "athlete " + each.athlete, std::string(fit::code(each.mark)) + " is not seen in a line");
  }
  for (const std::string& id : seen) {
    const auto unit = standingIn(views, id, now);
    if (!unit) return tl::unexpected<Error>(unit.error());
    LineSeen body;
    body.unit = (*unit)->id;
    body.conditions = conditions;
    for (const LineException& each : exceptions) {
      if (each.athlete != id) continue;
      (each.mark == fit::Mark::brow ? body.brow : each.mark == fit::Mark::straps ? body.straps : body.hold) = each.finding;
    }
    drafts.push_back({id, std::move(body)});
  }
  return drafts;
}

}  // namespace snugline::book
