// SPDX-License-Identifier: Apache-2.0
// Purpose: the pressure of the air around us from the height above the sea, and the ranges in which weather is believed.
// Source: U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), lowest layer. Its pressure is defined over geopotential height; maps and
// people say geometric height, which is what Elevation means everywhere. A device's barometer, where there is one, is better than both.
// Units: Pa absolute. Errors: only the two checks, outOfRange ("value, lowest, highest"). Thread: pure functions.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.h"

namespace snugline::air {

inline constexpr Pressure kStandardAtmosphere{101'325};  // the standard's P0, sea level

// The earth's lowest shore lies at -430 m; above 9000 m nobody plays (ours).
inline constexpr Elevation kElevationLow{-430'000}, kElevationHigh{9'000'000};
// Air in which a helmet is kept or worn, -60 C to 60 C (ours): beyond that somebody mistyped.
inline constexpr Temperature kTemperatureLow{213'150}, kTemperatureHigh{333'150};
// What a barometer of a device can say on this earth: 30 kPa is the top of the highest mountain with bad weather, 110 kPa the Dead Sea
// with good weather (ours).
inline constexpr Pressure kBarometerLow{30'000}, kBarometerHigh{112'000};
// Absolute pressure in a bladder or at a gauge (ours): from the thinnest air to five times the air at sea level.
inline constexpr Pressure kAbsoluteLow{30'000}, kAbsoluteHigh{600'000};

[[nodiscard]] Result<Elevation> believed(Elevation v, std::string_view place = {});
[[nodiscard]] Result<Temperature> believed(Temperature v, std::string_view place = {});
[[nodiscard]] Result<Pressure> believedAmbient(Pressure absolute, std::string_view place = {});

// Geopotential from geometric height and back, metres, with the standard's radius of the earth.
[[nodiscard]] double geopotentialMetres(double geometricMetres);
[[nodiscard]] double geometricMetres(double geopotentialMetres);
// Pascals, not rounded, -5000 m to 11000 m of geopotential height; the nearer end beyond.
[[nodiscard]] double pascalsAtGeopotential(double geopotentialMetres);
[[nodiscard]] double pascalsAt(Elevation geometric);

// Whole pascals, absolute. Elevations outside the believed range are taken at its nearer end: check what comes in with believed().
[[nodiscard]] Pressure ambientAt(Elevation geometric);
// The barometer where it is known, else by elevation, else nothing.
[[nodiscard]] std::optional<Pressure> ambientOf(std::optional<Pressure> barometer, std::optional<Elevation> elevation);

}  // namespace snugline::air
