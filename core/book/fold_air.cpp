// SPDX-License-Identifier: Apache-2.0
// What facts say of the weather and of a unit's air.
#include <algorithm>

#include "core/book/fold.h"
#include "core/season/season_air.h"

namespace snugline::book {

namespace {

using season::AirEvent;
using season::AirKind;

// One answer as what it says of the air; answers that say nothing of it leave nothing.
struct AirAnswers {
  season::UnitRecord& record;
  const Fact& fact;
  const CheckAnswered& body;

  [[nodiscard]] AirEvent event(gear::Port port, AirKind kind, bool isOnHead) const {
    AirEvent made;
    made.port = port;
    made.kind = kind;
    made.isOnHead = isOnHead;
    made.climate = season::climateOf(body.conditions);
    made.check = fact.about;
    made.stamp = stampOf(fact);
    return made;
  }
  void operator()(const fit::Fitted& a) const {
    for (std::size_t i = 0; i < gear::kPortCount; ++i) {
      if (!a.air[i]) continue;
      AirEvent set = event(static_cast<gear::Port>(i), AirKind::set, false);
      set.gauge = a.air[i];
      set.source = body.source;
      season::addAir(record, std::move(set));
    }
  }
  void operator()(const fit::Adjusted& a) const {
    if (!a.port) return;
    AirEvent changed = event(*a.port, AirKind::changed, true);
    changed.pumps = a.deed == fit::Deed::release ? -a.pumps : a.pumps;
    changed.gauge = a.air;
    if (a.air) changed.source = body.source;
    season::addAir(record, std::move(changed));
  }
  void operator()(const fit::AirRead& a) const {
    AirEvent read = event(a.port, AirKind::read, a.isOnHead);
    read.gauge = a.gauge;
    read.source = body.source;
    season::addAir(record, std::move(read));
  }
  template <typename A>
  void operator()(const A&) const {}
};

}  // namespace

void foldAir(season::UnitRecord& record, const Fact& fact, const CheckAnswered& body) {
  for (const fit::Answer& answer : body.answers) std::visit(AirAnswers{record, fact, body}, answer);
}

void foldAir(season::UnitRecord& record, const Fact& fact, const UnitAirRead& body) {
  AirEvent event;
  event.port = body.port;
  event.kind = body.isRefill ? AirKind::set : AirKind::read;
  event.isOnHead = body.isOnHead;
  event.gauge = body.gauge;
  event.climate = season::climateOf(body.conditions);
  event.source = body.source;
  event.stamp = stampOf(fact);
  season::addAir(record, std::move(event));
}

// Two devices may end one check; what pumps did in it counts once, as the later one says.
void foldPumped(season::UnitRecord& record, const Fact& fact, const CheckEnded& body) {
  std::erase_if(record.pumped, [&](const season::PumpedRecord& each) { return each.check == fact.about; });
  for (season::PumpedRecord each : body.pumped) {
    each.check = fact.about;
    record.pumped.push_back(std::move(each));
  }
}

void foldWeather(season::TeamRecord& record, const Fact& fact) {
  if (const auto* noted = std::get_if<WeatherNoted>(&fact.body)) {
    const season::Conditions& c = noted->conditions;
    record.weather = season::WeatherRecord{c, stampOf(fact)};
    if (c.place.empty()) return;
    season::PlaceRecord& place = record.places[c.place];
    if (c.elevation && !place.isPreset) place.elevation = c.elevation;
    if (c.temperature && c.whereabouts) place.temperatures[static_cast<std::size_t>(*c.whereabouts)] = c.temperature;
  } else if (const auto* set = std::get_if<PlaceSet>(&fact.body)) {
    if (!set->elevation) {
      record.places.erase(set->place);
      return;
    }
    season::PlaceRecord& place = record.places[set->place];
    place.elevation = set->elevation;
    place.isPreset = true;
  }
}

}  // namespace snugline::book
