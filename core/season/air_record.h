// SPDX-License-Identifier: Apache-2.0
// Purpose: the weather where the helmets are and what was read of the air in them, as records. Pressures are gauge unless their name says
// ambient or absolute. Ranges are those of core/air/atmosphere.h (believed): what lies outside is refused before it is written
// (core/book/acts.h) and when it arrives (fact codec). Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/air/atmosphere.h"
#include "core/gear/model_sheet.h"
#include "core/quantity/quantity.h"
#include "core/season/stamp.h"

namespace snugline::season {

// What a bladder's gauge is believed to say (ours): the bands of a sheet end at 200 kPa, and cold brings a slack bladder a little below
// zero.
inline constexpr Pressure kGaugeLeast{-20'000}, kGaugeMost{200'000};

// Where the helmets have been: the air in them has that temperature.
enum class Whereabouts : std::uint8_t { indoors, outside, truck };
inline constexpr std::size_t kWhereaboutsCount = 3;
[[nodiscard]] std::string_view code(Whereabouts w);  // "indoors", "outside", "truck"
[[nodiscard]] std::optional<Whereabouts> whereaboutsFromCode(std::string_view);

// Weather and place as noted, each part only as far as it was said.
struct Conditions {
  std::optional<Temperature> temperature;  // of the air where the helmets are
  std::optional<Elevation> elevation;
  std::optional<Pressure> ambient;  // absolute, by the device's barometer
  std::optional<Whereabouts> whereabouts;
  std::string place;  // "home field"; may be empty
  [[nodiscard]] bool isEmpty() const { return !temperature && !elevation && !ambient && !whereabouts && place.empty(); }
  friend bool operator==(const Conditions&, const Conditions&) = default;
};
// By barometer where there is one, else from the elevation (US Standard Atmosphere 1976); nothing when neither is known. Absolute.
[[nodiscard]] std::optional<Pressure> ambientOf(const Conditions& conditions);

// What the arithmetic of air needs of the conditions, small enough to stand in many records. 0: not known.
struct Climate {
  std::int32_t temperatureMk = 0;
  std::int32_t ambientPa = 0;  // absolute
  [[nodiscard]] bool isKnown() const { return temperatureMk != 0 || ambientPa != 0; }
  friend bool operator==(const Climate&, const Climate&) = default;
};
[[nodiscard]] Climate climateOf(const Conditions& conditions);

// By what a pressure was read. All empty: typed from a gauge without a name.
struct AirSource {
  std::string gauge;                           // as the team calls it
  std::optional<std::int64_t> rawDeciPascal;   // as sent, absolute, 0.1 Pa
  std::optional<std::int64_t> zeroDeciPascal;  // its zero in open air, 0.1 Pa
  std::optional<Temperature> sensor;           // of the gauge
  [[nodiscard]] bool isEmpty() const { return gauge.empty() && !rawDeciPascal && !zeroDeciPascal && !sensor; }
  friend bool operator==(const AirSource&, const AirSource&) = default;
};

// set: filled to this (first fit, refill). read: gauged only. changed: pumped in or out, then perhaps gauged.
enum class AirKind : std::uint8_t { set, read, changed };
[[nodiscard]] std::string_view code(AirKind k);  // "set", "read", "changed"
[[nodiscard]] std::optional<AirKind> airKindFromCode(std::string_view);

// What moved the air since the marks were last seen: the weather, the height, or a hand outside a check (refilled). afterCold: as warm, and
// what fitted then fitted for the cold, with air added in it.
enum class AirCause : std::uint8_t { none, cold, warm, afterCold, altitude, both, refilled };
[[nodiscard]] std::string_view code(AirCause c);  // "none", "cold", "warm", "after-cold", "altitude", "both", "refilled"

struct AirEvent {
  gear::Port port = gear::Port::crown;
  AirKind kind = AirKind::read;
  bool isOnHead = true;           // only like is compared with like
  std::optional<Pressure> gauge;  // nothing: pumps counted, not measured
  int pumps = 0;                  // changed: + in, - out
  Climate climate;
  AirSource source;
  std::string check;  // within which it was recorded; empty outside one
  Stamp stamp;
  friend bool operator==(const AirEvent&, const AirEvent&) = default;
};

// What some pumps did within one check; the pump response of a sheet is learned from these (season_air.h).
struct PumpedRecord {
  std::string check;  // filled by the fold
  gear::Port port = gear::Port::crown;
  int pumps = 0;                                // net, + in, - out, never 0
  std::optional<Length> gapBefore, gapAfter;    // brow gap seen before and after; both or none
  std::optional<Pressure> airBefore, airAfter;  // gauge read before and after; both or none
  friend bool operator==(const PumpedRecord&, const PumpedRecord&) = default;
};

// The air of one port as it stands, from the events that touch the unit; 0 in `climate` where no weather was noted.
struct PortAir {
  bool isMeasured = false;   // the last word on this port is a reading
  std::int32_t gaugePa = 0;  // as read, at `climate`
  Climate climate;
  std::int64_t order = 0;  // of the fact that says so
  // Slope of the readings since the last repair, Pa a week at 20 C, with its 95 % interval; count 0: too few readings in one run.
  std::int32_t leakPa = 0, leakLowPa = 0, leakHighPa = 0, leakCount = 0;
  friend bool operator==(const PortAir&, const PortAir&) = default;
};

struct WeatherRecord {
  Conditions conditions;
  Stamp stamp;
  friend bool operator==(const WeatherRecord&, const WeatherRecord&) = default;
};
// A place that the team knows: entered for travel, or named with the weather.
struct PlaceRecord {
  std::optional<Elevation> elevation;
  bool isPreset = false;                                                     // entered by the team, offered before the journey
  std::array<std::optional<Temperature>, kWhereaboutsCount> temperatures{};  // last noted there, by where the helmets were
  friend bool operator==(const PlaceRecord&, const PlaceRecord&) = default;
};

}  // namespace snugline::season
