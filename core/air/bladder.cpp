// SPDX-License-Identifier: Apache-2.0
#include "core/air/bladder.h"

#include <cmath>
#include <cstdlib>

namespace snugline::air {

namespace {

// Kelvin over kelvin. A temperature at or below absolute zero is nobody's: it changes nothing.
double ratio(Temperature now, Temperature then) {
  return now.mk > 0 && then.mk > 0 ? static_cast<double>(now.mk) / static_cast<double>(then.mk) : 1.0;
}

bool isWithin(const gear::AirPort& port, Pressure gauge) { return gauge >= port.low && gauge <= port.high; }

}  // namespace

Foresight foresee(const AirState& set, Temperature now, Pressure ambientNow) {
  const auto absolute = static_cast<double>(set.gauge.pa + set.ambient.pa);
  const double warmer = ratio(now, set.temperature);
  Foresight f;
  f.held = set.gauge;
  f.gauge = Pressure::pascals(std::llround(absolute * warmer - static_cast<double>(ambientNow.pa)));
  f.change = Pressure::pascals(f.gauge.pa - set.gauge.pa);
  f.byElevation = Pressure::pascals(set.ambient.pa - ambientNow.pa);
  f.byTemperature = Pressure::pascals(f.change.pa - f.byElevation.pa);
  const auto absoluteHeld = static_cast<double>(set.gauge.pa + ambientNow.pa);
  f.volumeRatio = absoluteHeld > 0 ? warmer * absolute / absoluteHeld : 1.0;
  return f;
}

Cause causeOf(const Foresight& f) {
  if (f.byTemperature.pa == 0 && f.byElevation.pa == 0) return Cause::none;
  if (std::abs(f.byTemperature.pa) >= std::abs(f.byElevation.pa)) return f.byTemperature.pa < 0 ? Cause::cold : Cause::warm;
  return f.byElevation.pa > 0 ? Cause::higher : Cause::lower;
}

double carriedPascals(const AirState& s) {
  return static_cast<double>(s.gauge.pa + s.ambient.pa) * ratio(kReferenceTemperature, s.temperature) -
         static_cast<double>(kStandardAtmosphere.pa);
}

Pressure carried(const AirState& s) { return Pressure::pascals(std::llround(carriedPascals(s))); }

Result<Pressure> believedGauge(Pressure gauge, Pressure ambient, std::string_view place) {
  const Pressure low{kAbsoluteLow.pa - ambient.pa}, high{kAbsoluteHigh.pa - ambient.pa};
  if (gauge >= low && gauge <= high) return gauge;
  return fail(ErrorCode::outOfRange, std::string(place), exact(gauge) + ", " + exact(low) + ", " + exact(high));
}

Judgement judge(const gear::AirPort& port, Pressure allowance, const SeenAir& seen, Temperature now, Pressure ambientNow) {
  Judgement j;
  j.isMeasured = seen.gauge.has_value();
  const Pressure gauge = seen.gauge.value_or(port.start);
  j.since = foresee({gauge, seen.temperature, seen.ambient}, now, ambientNow);
  j.leavesBand = j.isMeasured && isWithin(port, gauge) && !isWithin(port, j.since.gauge);
  j.movesTooMuch = std::abs(j.since.change.pa) > allowance.pa;
  return j;
}

}  // namespace snugline::air
