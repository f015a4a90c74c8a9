// SPDX-License-Identifier: Apache-2.0
// Purpose: what the records say of the air: a unit's ports as they stand, its leaks, what pumps do in a sheet's helmets, and whether the
// weather calls for a look. The arithmetic is core/air's. Thread: plain functions.
// A climate of which a part is not known: ambient pressure not known on one side is taken as on the other (the helmet has not travelled),
// on neither as one standard atmosphere; temperature likewise as the same. With nothing known when the air was set, nothing is judged.
#pragma once

#include <array>
#include <vector>

#include "core/air/leak.h"
#include "core/air/pump_response.h"
#include "core/season/record.h"

namespace snugline::season {

// --- records, for the fold
void addAir(UnitRecord& unit, AirEvent event);  // and ports as they stand, but for leaks
void forgetAir(UnitRecord& unit);               // back from repair: another bladder as far as anybody knows; the events stay
// Ports anew from the events, for a record that was read. Linear in them.
void workOutPorts(UnitRecord& unit);
// Leaks of all ports, from the last kLeakReadings readings within kLeakDays of the latest one, so that a unit costs the same in its tenth
// season as in its first. Asked once after a fold, not for each fact.
inline constexpr std::size_t kLeakReadings = 32;  // ours
inline constexpr int kLeakDays = 70;              // ours: ten weeks; what was long ago says little of the bladder now
void settleLeaks(UnitRecord& unit);

// --- for screens
// Readings of one port since the last repair, in the order recorded, as core/air wants them. What has no weather noted is given with a
// temperature that is not believed, so that it is left out and still parts the runs where it was a refill.
[[nodiscard]] std::vector<air::LeakReading> leakReadingsOf(const UnitRecord& unit, gear::Port port);
// Of the whole history since the last repair, for the plot. Allowance of the sheet.
[[nodiscard]] air::Leak leakOf(const Views& views, const UnitRecord& unit, gear::Port port);
// What the board judges: the latest readings, as settleLeaks takes them. Readings of the leak are indexes into events, which live as long
// as the record does. Allowance of the sheet.
struct RecentAir {
  std::vector<const AirEvent*> events;  // oldest first
  air::Leak leak;
};
[[nodiscard]] RecentAir recentAirOf(const Views& views, const UnitRecord& unit, gear::Port port);

struct PumpLearned {
  std::array<air::PumpEvidence, gear::kPortCount> brow;  // um of brow gap for a pump at this port
  std::array<air::PumpEvidence, gear::kPortCount> air;   // Pa for a pump
};
// Over all units of the sheet: linear in units. Brow by crown pumps has the prior air::kBrowPrior, air has air::airPrior(port).
[[nodiscard]] PumpLearned pumpLearned(const Views& views, const std::string& sheet);
[[nodiscard]] air::PumpResponse browResponse(const PumpLearned& learned);  // of crown pumps
[[nodiscard]] air::PumpResponse airResponse(const PumpLearned& learned, gear::Port port);

// --- for a check
inline constexpr Temperature kColdBelow{278'150};  // 5 C (ours)
// The cold rule: below kColdBelow, or the temperature alone took more than the sheet's allowance from a bladder since its air was set. What
// was set within `check` does not count: air added in the cold does not make the helmet warm. Nothing known: not cold.
[[nodiscard]] bool isCold(const UnitRecord& unit, const gear::ModelSheet& sheet, const Climate& now, const std::string& check = {});

// --- for the board
// What the weather is judged against.
struct PortWatch {
  std::int32_t gaugePa = 0;            // when the marks were last seen; the sheet's start where it was never measured
  std::int32_t lowPa = 0, highPa = 0;  // of the sheet
  gear::Port port = gear::Port::crown;
  bool isMeasured = false;
  Climate seen;  // nothing known: not judged
  friend bool operator==(const PortWatch&, const PortWatch&) = default;
};
struct AirWatch {
  std::array<PortWatch, gear::kPortCount> ports;
  std::int32_t allowancePa = 0;
  std::uint8_t count = 0;  // ports of the sheet
  bool isForCold = false;  // as MarksSeen
};
// In which the marks of the wearer were last seen, by a check or in a line.
struct MarksSeen {
  Climate climate;
  const Stamp* stamp = nullptr;  // nothing: never
  bool isForCold = false;        // they fitted with air added in the cold
};
[[nodiscard]] AirWatch watchOf(const UnitRecord& unit, const gear::ModelSheet& sheet, const MarksSeen& seen);

struct AirFinding {
  gear::Port port = gear::Port::crown;  // the worst
  Pressure change;
  std::optional<Pressure> air;  // foreseen; nothing where it was never measured
  bool isBelowZero = false;
  int count = 0;  // ports that call for a look; 0: none does
  AirCause cause = AirCause::none;
  bool isUnknown = false;  // at least one port could not be judged, for want of the weather when it was set
  friend bool operator==(const AirFinding&, const AirFinding&) = default;
};
[[nodiscard]] AirFinding findAir(const AirWatch& watch, const Climate& now);

}  // namespace snugline::season
