// SPDX-License-Identifier: Apache-2.0
#include "core/air/atmosphere.h"

#include <algorithm>
#include <cmath>

namespace snugline::air {

namespace {

// U.S. Standard Atmosphere, 1976, tables 2 to 4 and equation 33a.
constexpr double kEarthRadiusMetres = 6'356'766.0;
constexpr double kSeaLevelKelvin = 288.15;
constexpr double kLapse = -0.0065;          // K a metre of geopotential height, up to 11 km
constexpr double kGravity = 9.80665;        // m/s2
constexpr double kMolarMass = 28.96442538;  // kg/kmol; the gases of table 3 summed, which the standard rounds to 28.9644
constexpr double kGasConstant = 8'314.32;   // N m/(kmol K), as the standard has it
constexpr double kLayerLow = -5'000.0, kLayerHigh = 11'000.0;

template <typename Quantity>
Result<Quantity> within(Quantity v, Quantity low, Quantity high, std::string_view place) {
  if (v >= low && v <= high) return v;
  return fail(ErrorCode::outOfRange, std::string(place), exact(v) + ", " + exact(low) + ", " + exact(high));
}

}  // namespace

Result<Elevation> believed(Elevation v, std::string_view place) { return within(v, kElevationLow, kElevationHigh, place); }
Result<Temperature> believed(Temperature v, std::string_view place) { return within(v, kTemperatureLow, kTemperatureHigh, place); }
Result<Pressure> believedAmbient(Pressure absolute, std::string_view place) {
  return within(absolute, kBarometerLow, kBarometerHigh, place);
}

double geopotentialMetres(double geometric) { return kEarthRadiusMetres * geometric / (kEarthRadiusMetres + geometric); }
double geometricMetres(double geopotential) { return kEarthRadiusMetres * geopotential / (kEarthRadiusMetres - geopotential); }

double pascalsAtGeopotential(double geopotential) {
  const double height = std::clamp(geopotential, kLayerLow, kLayerHigh);
  const double kelvin = kSeaLevelKelvin + kLapse * height;
  return static_cast<double>(kStandardAtmosphere.pa) * std::pow(kSeaLevelKelvin / kelvin, kGravity * kMolarMass / (kGasConstant * kLapse));
}

double pascalsAt(Elevation geometric) { return pascalsAtGeopotential(geopotentialMetres(geometric.metres())); }

Pressure ambientAt(Elevation geometric) {
  return Pressure::pascals(std::llround(pascalsAt(std::clamp(geometric, kElevationLow, kElevationHigh))));
}

std::optional<Pressure> ambientOf(std::optional<Pressure> barometer, std::optional<Elevation> elevation) {
  if (barometer) return barometer;
  if (elevation) return ambientAt(*elevation);
  return std::nullopt;
}

}  // namespace snugline::air
