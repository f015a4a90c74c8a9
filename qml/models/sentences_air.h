// SPDX-License-Identifier: Apache-2.0
// Purpose: air, weather and gauge in words, in either unit system: what moved it and by how much, the arithmetic behind it in plain
// numbers, leaks, pumps, and what a gauge is doing. Numbers of pressure in reasons are rounded ("about 6 kPa"), in the arithmetic they are
// exact. Words are about equipment only. Thread: GUI thread.
#pragma once

#include <optional>

#include <QCoreApplication>
#include <QString>
#include <QVariantMap>

#include "core/air/gauge_packet.h"
#include "core/air/leak.h"
#include "core/air/pump_response.h"
#include "core/ports/gauge_port.h"
#include "core/season/board.h"
#include "sentences.h"

namespace snugline::models {

struct AirWords {
  Q_DECLARE_TR_FUNCTIONS(AirWords)
 public:
  static QString about(Pressure amount, UnitSystem units);                // "about 6 kPa", without sign; "less than 1 kPa"
  static QString signedExact(Pressure v, UnitSystem units);               // "−6.2 kPa"
  static QString whereabouts(season::Whereabouts w);                      // "Outside"
  static QString place(const season::Conditions& c);                      // "Outside, home field"; may be empty
  static QString figures(const season::Conditions& c, UnitSystem units);  // "4 °C, 180 m"; empty when neither is known
  static QString noted(Instant at, Day today);                            // "noted yesterday", "noted 3 Oct"

  // Reasons of the board.
  static QString changed(const season::DueReason& reason, const season::Conditions& now, UnitSystem units);
  static QString leaking(const season::DueReason& reason, UnitSystem units);
  static QString lineOff(const season::DueReason& reason);

  // "Loses 3.1 kPa a week (between 2.4 and 4.0, from 8 readings)", or that there are too few.
  static QString leak(const air::Leak& leak, Pressure allowance, UnitSystem units);
  static QString leakRange(const air::Leak& leak, UnitSystem units);            // "between 2.4 kPa and 4.0 kPa", of what is lost or gained
  static QString pumps(const air::PumpCount& count, std::int64_t steps);        // "About 2 pumps (1 to 4), from 12 pumpings"
  static QString onePump(const air::PumpResponse& response, UnitSystem units);  // "One pump does about 3 kPa"
  static QString source(const season::AirSource& source);                       // "Typed", "Gauge Bench 0142"
};

// The arithmetic behind one port, for the sheet that says why: see WhyLines.qml. Empty when nothing can be worked out.
[[nodiscard]] QVariantMap airWhy(const season::Views& views, const season::AthleteRecord* athlete, const season::UnitRecord& unit,
                                 gear::Port port, const season::Conditions& now, UnitSystem units, Instant at);

// The arithmetic behind a leak: what was read and what that is carried to, the slopes, and what the sheet allows. Empty without a reading.
[[nodiscard]] QVariantMap leakWhy(const season::Views& views, const season::UnitRecord& unit, gear::Port port, UnitSystem units,
                                  Instant at);

struct GaugeWords {
  Q_DECLARE_TR_FUNCTIONS(GaugeWords)
 public:
  static QString state(const ports::GaugeState& state);                    // one sentence for every phase, with what to do
  static QString refusal(const Error& error);                              // what was sent cannot be decoded
  static QString refusal(const air::GaugeValue& value, UnitSystem units);  // decoded, and not taken; empty when it is
  static QString doubt(air::ZeroDoubt doubt, const air::GaugeValue& value, std::optional<Pressure> expected, UnitSystem units);
};

// "4", "4 C", "39,5 F" -> a temperature; a bare number is in the unit shown. Errors: as parse, and outOfRange with the places and limits of
// core/air/atmosphere.h.
[[nodiscard]] Result<Temperature> typedTemperature(const QString& words, UnitSystem units);
[[nodiscard]] Result<Elevation> typedElevation(const QString& words, UnitSystem units);
[[nodiscard]] Result<Pressure> typedGauge(const QString& words, UnitSystem units);
// For fields of weather and air: which value, and between what it is believed, in the unit shown.
[[nodiscard]] QString airErrorSentence(const Error& error, UnitSystem units);

}  // namespace snugline::models
