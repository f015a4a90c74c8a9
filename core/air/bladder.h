// SPDX-License-Identifier: Apache-2.0
// Purpose: what became of the air in a bladder when temperature or elevation changed. Two bounds are given: a rigid bladder keeps its
// volume and its gauge pressure moves; a soft one keeps its gauge pressure and its volume moves. The truth lies between.
// Formulas, p absolute, T in kelvin: rigid p2 = p1 T2/T1, gauge2 = p2 - ambient2 (Gay-Lussac's law); soft at held gauge
// V2/V1 = (T2/T1)(p1/p2) (ideal gas law). Rigid gauge may fall below zero: then no air is left to hold the bladder.
// Units: whole pascals and millikelvin in and out, double inside, rounded half away from zero once. Gauge unless said.
// Ranges: temperatures, ambient and gauge as believed (atmosphere.h, believedGauge); what comes in is checked there, not here.
// Errors: only believedGauge, outOfRange. Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/air/atmosphere.h"
#include "core/gear/model_sheet.h"
#include "core/quantity/quantity.h"

namespace snugline::air {

struct AirState {
  Pressure gauge;
  Temperature temperature;
  Pressure ambient = kStandardAtmosphere;  // absolute
  friend bool operator==(const AirState&, const AirState&) = default;
};

struct Foresight {
  Pressure gauge;                                                  // bound for a rigid bladder; may be below zero
  Pressure held;                                                   // bound for a soft bladder: the gauge it was set to
  Pressure change;                                                 // gauge - held
  Pressure byTemperature;                                          // these two add up to change exactly
  Pressure byElevation;                                            // ambient then - ambient now: thinner air, higher gauge
  double volumeRatio = 1;                                          // of the soft bladder at held gauge, now / then; 1 in the rigid one
  [[nodiscard]] bool isBelowZero() const { return gauge.pa < 0; }  // "no air left to hold it"
  friend bool operator==(const Foresight&, const Foresight&) = default;
};
[[nodiscard]] Foresight foresee(const AirState& set, Temperature now, Pressure ambientNow);

// What moved the air most: the part with the larger amount, temperature where they are equal.
enum class Cause : std::uint8_t { none, cold, warm, higher, lower };
[[nodiscard]] Cause causeOf(const Foresight& f);

// A gauge pressure carried to 20 C and one standard atmosphere, as a rigid bladder: what readings of different days are compared by.
inline constexpr Temperature kReferenceTemperature{293'150};
[[nodiscard]] double carriedPascals(const AirState& s);  // not rounded
[[nodiscard]] Pressure carried(const AirState& s);

// What a gauge in or off a bladder may read: kAbsoluteLow to kAbsoluteHigh, less the ambient.
[[nodiscard]] Result<Pressure> believedGauge(Pressure gauge, Pressure ambient = kStandardAtmosphere, std::string_view place = {});

// The cold rule for one port. Band and allowance are the sheet's, ours where the sheet is ours; no published threshold is known.
// calls: the rigid bound leaves the port's band, or has moved by more than the allowance since the marks were last seen.
struct Judgement {
  Foresight since;          // the marks were last seen, or the start of the sheet when the port was never measured
  bool isMeasured = false;  // the gauge was read once; else only the move is judged
  bool leavesBand = false;  // only for measured ports, and only where it lay within the band when set
  bool movesTooMuch = false;
  [[nodiscard]] bool calls() const { return leavesBand || movesTooMuch; }
};
// The air under the conditions in which the marks were last seen: a reading of an earlier day is carried there by foresee first. No gauge
// when the port was never measured: the start of the sheet stands in and only the move is judged.
struct SeenAir {
  std::optional<Pressure> gauge;
  Temperature temperature;
  Pressure ambient = kStandardAtmosphere;
};
[[nodiscard]] Judgement judge(const gear::AirPort& port, Pressure allowance, const SeenAir& seen, Temperature now, Pressure ambientNow);

}  // namespace snugline::air
