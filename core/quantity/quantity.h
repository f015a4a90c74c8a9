// SPDX-License-Identifier: Apache-2.0
// Purpose: units as types. Each quantity is one integer; conversion to decimals happens only at the edge.
// Ranges are what the type accepts when parsed; arithmetic inside core stays far from the integer's limits.
// Errors: parsing returns notAQuantity, missingUnit or outOfRange. Thread: plain values.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline {

enum class UnitSystem : std::uint8_t { metric, us };
enum class PressureKind : std::uint8_t { gauge, absolute };

// Micrometres. Parsed range: 0 to 10 m. Units: um, mm, cm, m, in, ft.
struct Length {
  std::int64_t um = 0;
  [[nodiscard]] static constexpr Length micrometres(std::int64_t v) { return {v}; }
  [[nodiscard]] static Length millimetres(double v);
  [[nodiscard]] double mm() const { return static_cast<double>(um) / 1000.0; }
  [[nodiscard]] double inches() const { return static_cast<double>(um) / 25400.0; }
  friend auto operator<=>(const Length&, const Length&) = default;
};

// Pascals; gauge or absolute is said by the name of whatever holds it. Parsed range: -200 kPa to 2 MPa.
// Units: Pa, hPa, kPa, bar, psi (also "psig", "psia", which must agree with what the caller asks for, else inconsistent).
struct Pressure {
  std::int64_t pa = 0;
  [[nodiscard]] static constexpr Pressure pascals(std::int64_t v) { return {v}; }
  [[nodiscard]] static Pressure kilopascals(double v);
  [[nodiscard]] double kpa() const { return static_cast<double>(pa) / 1000.0; }
  [[nodiscard]] double psi() const { return static_cast<double>(pa) / 6894.757293168361; }
  friend auto operator<=>(const Pressure&, const Pressure&) = default;
};

// Millikelvin. Parsed range: -90 C to 90 C. Units: C, F, K (a degree sign is accepted).
struct Temperature {
  std::int64_t mk = 273150;
  [[nodiscard]] static constexpr Temperature millikelvin(std::int64_t v) { return {v}; }
  [[nodiscard]] static Temperature celsius(double v);
  [[nodiscard]] double celsius() const { return static_cast<double>(mk - 273150) / 1000.0; }
  [[nodiscard]] double fahrenheit() const { return celsius() * 9.0 / 5.0 + 32.0; }
  friend auto operator<=>(const Temperature&, const Temperature&) = default;
};

// Millimetres above mean sea level, geometric. Parsed range: -430 m to 9000 m. Units: m, ft, km.
struct Elevation {
  std::int64_t mm = 0;
  [[nodiscard]] static Elevation metres(double v);
  [[nodiscard]] double metres() const { return static_cast<double>(mm) / 1000.0; }
  [[nodiscard]] double feet() const { return static_cast<double>(mm) / 304.8; }
  friend auto operator<=>(const Elevation&, const Elevation&) = default;
};

// "575mm", "22.5in": a number, optional blanks, a unit in any case. Decimal point or decimal comma, no thousands mark; inches also as
// "22 5/8in" and "5/8 in", down to 128ths. No exponent, no bare number. What is finer than the type's unit is rounded half away from zero.
[[nodiscard]] Result<Length> parseLength(std::string_view text, std::string_view place = {});
[[nodiscard]] Result<Pressure> parsePressure(std::string_view text, std::string_view place = {}, PressureKind kind = PressureKind::gauge);
[[nodiscard]] Result<Temperature> parseTemperature(std::string_view text, std::string_view place = {});
[[nodiscard]] Result<Elevation> parseElevation(std::string_view text, std::string_view place = {});

// For people, rounded half away from zero: "25 mm", "22 5/8 in" to sixteenths, as pads are made; "20.0 kPa", "2.90 psi"; "4 °C", "39 °F";
// "180 m", "591 ft".
[[nodiscard]] std::string print(Length v, UnitSystem system);
[[nodiscard]] std::string printTape(Length v, UnitSystem system);  // to eighths of an inch, as a tape is read
[[nodiscard]] std::string print(Pressure v, UnitSystem system);
[[nodiscard]] std::string print(Temperature v, UnitSystem system);
[[nodiscard]] std::string print(Elevation v, UnitSystem system);

// Exact: parseX(exact(v)) == v for every value in range, with as many places as needed: "575.123mm", "28mm", "20000Pa",
// "22.5C", "180m".
[[nodiscard]] std::string exact(Length v);
[[nodiscard]] std::string exact(Pressure v);
[[nodiscard]] std::string exact(Temperature v);
[[nodiscard]] std::string exact(Elevation v);

}  // namespace snugline
