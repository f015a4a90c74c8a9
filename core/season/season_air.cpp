// SPDX-License-Identifier: Apache-2.0
#include "core/season/season_air.h"

#include <algorithm>

#include "core/air/bladder.h"

namespace snugline::season {

namespace {

constexpr std::size_t kReadingsInOneRun = 5;  // fewer have no 95 % ranks (core/air/leak.h)
constexpr Temperature kNotNoted{0};           // believed by nobody

std::size_t indexOf(gear::Port port) { return static_cast<std::size_t>(port); }

// The port as the event leaves it. Leaks are settled later.
void takeIn(std::vector<PortAir>& ports, const AirEvent& event) {
  if (ports.empty()) ports.resize(gear::kPortCount);
  PortAir& port = ports[indexOf(event.port)];
  port.isMeasured = event.gauge.has_value();
  port.gaugePa = event.gauge ? static_cast<std::int32_t>(event.gauge->pa) : 0;
  port.climate = event.climate;
  port.order = event.stamp.order;
}

// Events of a port since the last repair, newest first, until visit says enough.
template <typename Visit>
void eachBack(const UnitRecord& unit, gear::Port port, Visit visit) {
  for (std::size_t i = unit.air.size(); i > unit.airFrom; --i) {
    if (unit.air[i - 1].port == port && !visit(unit.air[i - 1])) return;
  }
}

std::int32_t wholeOf(double pa) {
  constexpr double kMost = 1e9;
  return static_cast<std::int32_t>(std::clamp(pa, -kMost, kMost) + (pa < 0 ? -0.5 : 0.5));
}

std::vector<air::LeakReading> readingsOf(const std::vector<const AirEvent*>& events) {
  // Where no reading knows its ambient pressure the helmet has not travelled; one that does not, among others that do, is not compared.
  const bool knowsAmbient = std::any_of(events.begin(), events.end(), [](const AirEvent* e) { return e->climate.ambientPa != 0; });
  std::vector<air::LeakReading> readings;
  readings.reserve(events.size());
  for (const AirEvent* event : events) {
    air::LeakReading reading;
    reading.at = event->stamp.at;
    reading.isRefill = event->kind != AirKind::read;
    reading.isOnHead = event->isOnHead;
    const bool isUsable = event->gauge && event->climate.temperatureMk != 0 && (event->climate.ambientPa != 0 || !knowsAmbient);
    reading.temperature = isUsable ? Temperature{event->climate.temperatureMk} : kNotNoted;
    if (event->gauge) reading.gauge = *event->gauge;
    if (event->climate.ambientPa != 0) reading.ambient = Pressure{event->climate.ambientPa};
    readings.push_back(reading);
  }
  return readings;
}

// The latest of a port, oldest first.
std::vector<const AirEvent*> recent(const UnitRecord& unit, gear::Port port) {
  constexpr std::int64_t kSpanMs = std::int64_t{kLeakDays} * 24 * 60 * 60 * 1000;
  std::vector<const AirEvent*> events;
  std::size_t readings = 0;
  eachBack(unit, port, [&](const AirEvent& event) {
    if (readings == kLeakReadings || (!events.empty() && event.stamp.at.ms < events.front()->stamp.at.ms - kSpanMs)) return false;
    if (event.gauge) ++readings;
    events.push_back(&event);
    return true;
  });
  std::reverse(events.begin(), events.end());
  return events;
}

bool mayHaveInterval(const std::vector<const AirEvent*>& events) {
  std::array<std::size_t, 2> run{};
  for (const AirEvent* event : events) {
    if (event->kind != AirKind::read) run = {};
    if (event->gauge && ++run[event->isOnHead ? 1 : 0] >= kReadingsInOneRun) return true;
  }
  return false;
}

Pressure allowanceOf(const Views& views, const UnitRecord& unit) {
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  return sheet != nullptr && sheet->leakPerWeek.pa > 0 ? sheet->leakPerWeek : air::kLeakAllowanceUnsaid;
}

AirCause whatMoved(const air::Foresight& f) {
  const std::int64_t byTemperature = std::abs(f.byTemperature.pa), byElevation = std::abs(f.byElevation.pa);
  constexpr std::int64_t kQuarter = 4;  // a quarter of the other is worth naming (ours)
  if (std::min(byTemperature, byElevation) * kQuarter >= std::max(byTemperature, byElevation)) return AirCause::both;
  if (byElevation > byTemperature) return AirCause::altitude;
  return f.byTemperature.pa < 0 ? AirCause::cold : AirCause::warm;
}

// What is not known on one side is taken as on the other.
struct Both {
  Temperature then, now;
  Pressure ambientThen, ambientNow;
  bool isTemperatureKnown = false, isAmbientKnown = false;  // on both sides
};
Both bothOf(const Climate& then, const Climate& now) {
  Both both;
  both.isTemperatureKnown = then.temperatureMk != 0 && now.temperatureMk != 0;
  both.isAmbientKnown = then.ambientPa != 0 && now.ambientPa != 0;
  const auto either = [](std::int32_t a, std::int32_t b, std::int64_t none) { return a != 0 ? a : b != 0 ? b : none; };
  both.then = Temperature{either(then.temperatureMk, now.temperatureMk, air::kReferenceTemperature.mk)};
  both.now = Temperature{either(now.temperatureMk, then.temperatureMk, air::kReferenceTemperature.mk)};
  both.ambientThen = Pressure{either(then.ambientPa, now.ambientPa, air::kStandardAtmosphere.pa)};
  both.ambientNow = Pressure{either(now.ambientPa, then.ambientPa, air::kStandardAtmosphere.pa)};
  return both;
}

}  // namespace

void addAir(UnitRecord& unit, AirEvent event) {
  takeIn(unit.ports, event);
  unit.air.push_back(std::move(event));
}

void forgetAir(UnitRecord& unit) {
  unit.airFrom = static_cast<std::uint32_t>(unit.air.size());
  unit.ports.clear();
}

void workOutPorts(UnitRecord& unit) {
  unit.ports.clear();
  for (std::size_t i = unit.airFrom; i < unit.air.size(); ++i) takeIn(unit.ports, unit.air[i]);
}

void settleLeaks(UnitRecord& unit) {
  for (std::size_t i = 0; i < unit.ports.size(); ++i) {
    PortAir& port = unit.ports[i];
    port.leakPa = port.leakLowPa = port.leakHighPa = port.leakCount = 0;
    const auto events = recent(unit, static_cast<gear::Port>(i));
    if (!mayHaveInterval(events)) continue;
    const air::Leak leak = air::leakOf(readingsOf(events));
    if (!leak.hasInterval) continue;
    port.leakPa = wholeOf(leak.paPerWeek);
    port.leakLowPa = wholeOf(leak.low);
    port.leakHighPa = wholeOf(leak.high);
    port.leakCount = static_cast<std::int32_t>(leak.used);
  }
}

std::vector<air::LeakReading> leakReadingsOf(const UnitRecord& unit, gear::Port port) {
  std::vector<const AirEvent*> events;
  eachBack(unit, port, [&](const AirEvent& event) { return events.push_back(&event), true; });
  std::reverse(events.begin(), events.end());
  return readingsOf(events);
}

air::Leak leakOf(const Views& views, const UnitRecord& unit, gear::Port port) {
  return air::leakOf(leakReadingsOf(unit, port), allowanceOf(views, unit));
}

RecentAir recentAirOf(const Views& views, const UnitRecord& unit, gear::Port port) {
  RecentAir air{recent(unit, port), {}};
  air.leak = air::leakOf(readingsOf(air.events), allowanceOf(views, unit));
  return air;
}

PumpLearned pumpLearned(const Views& views, const std::string& sheet) {
  PumpLearned learned;
  const std::string& standing = views.standingSheet(sheet);
  for (const auto& [id, unit] : views.units) {
    if (unit.pumped.empty() || views.standingSheet(unit.sheet) != standing) continue;
    for (const PumpedRecord& each : unit.pumped) {
      const std::size_t port = indexOf(each.port);
      // Pumping in brings the shell up: the gap grows.
      if (each.gapBefore && each.gapAfter) learned.brow[port].add(each.pumps, each.gapAfter->um - each.gapBefore->um);
      if (each.airBefore && each.airAfter) learned.air[port].add(each.pumps, each.airAfter->pa - each.airBefore->pa);
    }
  }
  return learned;
}

air::PumpResponse browResponse(const PumpLearned& learned) {
  return air::respond(air::kBrowPrior, learned.brow[indexOf(gear::Port::crown)]);
}

air::PumpResponse airResponse(const PumpLearned& learned, gear::Port port) {
  return air::respond(air::airPrior(port), learned.air[indexOf(port)]);
}

bool isCold(const UnitRecord& unit, const gear::ModelSheet& sheet, const Climate& now, const std::string& check) {
  if (now.temperatureMk == 0) return false;
  if (now.temperatureMk < kColdBelow.mk) return true;
  return std::any_of(sheet.air.begin(), sheet.air.end(), [&](const gear::AirPort& port) {
    const AirEvent* set = nullptr;
    eachBack(unit, port.port, [&](const AirEvent& event) {
      const bool isSet = event.kind != AirKind::read && (check.empty() || event.check != check);
      if (isSet) set = &event;
      return !isSet;
    });
    if (set == nullptr) return false;
    const Both both = bothOf(set->climate, now);
    if (!both.isTemperatureKnown) return false;
    const auto moved = air::foresee({set->gauge.value_or(port.start), both.then, both.ambientThen}, both.now, both.ambientNow);
    return moved.byTemperature.pa < -sheet.changeAllowance.pa;
  });
}

AirWatch watchOf(const UnitRecord& unit, const gear::ModelSheet& sheet, const MarksSeen& seen) {
  AirWatch watch;
  watch.allowancePa = static_cast<std::int32_t>(sheet.changeAllowance.pa);
  watch.isForCold = seen.isForCold;
  for (const gear::AirPort& of : sheet.air) {
    PortWatch& port = watch.ports[watch.count++];
    port.port = of.port;
    port.lowPa = static_cast<std::int32_t>(of.low.pa);
    port.highPa = static_cast<std::int32_t>(of.high.pa);
    port.gaugePa = static_cast<std::int32_t>(of.start.pa);
    port.seen = seen.climate;
    const PortAir* air = unit.ports.empty() ? nullptr : &unit.ports[indexOf(of.port)];
    if (air == nullptr || !air->isMeasured) continue;
    port.gaugePa = air->gaugePa;
    const bool isSeenSince = seen.stamp != nullptr && seen.stamp->order >= air->order;
    if (!isSeenSince || !seen.climate.isKnown()) {
      port.isMeasured = true;
      port.seen = air->climate;
    } else if (air->climate.isKnown()) {
      const Both both = bothOf(air->climate, seen.climate);
      const auto then = air::foresee({Pressure{air->gaugePa}, both.then, both.ambientThen}, both.now, both.ambientNow);
      port.isMeasured = true;
      port.gaugePa = static_cast<std::int32_t>(then.gauge.pa);
    }
  }
  return watch;
}

AirFinding findAir(const AirWatch& watch, const Climate& now) {
  AirFinding found;
  if (!now.isKnown()) return found;
  for (std::size_t i = 0; i < watch.count; ++i) {
    const PortWatch& port = watch.ports[i];
    const Both both = bothOf(port.seen, now);
    if (now.temperatureMk != 0 && !both.isTemperatureKnown) found.isUnknown = true;
    if (!both.isTemperatureKnown && !both.isAmbientKnown) {
      found.isUnknown = true;
      continue;
    }
    const Pressure gauge{port.gaugePa};
    const gear::AirPort of{port.port, gauge, Pressure{port.lowPa}, Pressure{port.highPa}};
    const air::SeenAir seen{port.isMeasured ? std::optional(gauge) : std::nullopt, both.then, both.ambientThen};
    const air::Judgement judged = air::judge(of, Pressure{watch.allowancePa}, seen, both.now, both.ambientNow);
    if (!judged.calls()) continue;
    const bool isBelowZero = port.isMeasured && judged.since.isBelowZero();
    const std::int64_t size = std::abs(judged.since.change.pa), sizeBefore = std::abs(found.change.pa);
    const bool isWorse = isBelowZero != found.isBelowZero ? isBelowZero : size > sizeBefore;
    if (found.count++ != 0 && !isWorse) continue;
    found.port = port.port;
    found.change = judged.since.change;
    found.air = port.isMeasured ? std::optional(judged.since.gauge) : std::nullopt;
    found.isBelowZero = isBelowZero;
    found.cause = whatMoved(judged.since);
    if (watch.isForCold && found.cause == AirCause::warm) found.cause = AirCause::afterCold;
  }
  return found;
}

}  // namespace snugline::season
