// SPDX-License-Identifier: Apache-2.0
#include "core/quantity/quantity.h"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <span>

#include "core/quantity/decimal.h"

namespace snugline {

namespace {

using decimal::Wide;

// One psi is a pound-force, 4.4482216152605 N, on a square inch, 0.00064516 m2, both exact by definition
// (international yard and pound agreement, 1959; standard gravity, 3rd CGPM, 1901). As a fraction of whole numbers:
constexpr Wide kPsiNumerator = 44482216152605;
constexpr Wide kPsiDenominator = 6451600000;

// value in the type's own unit = (number * numerator + offset) / denominator
struct Unit {
  std::string_view name;  // lower case
  Wide numerator = 1;
  Wide denominator = 1;
  Wide offset = 0;
};

constexpr std::array<Unit, 8> kLengthUnits{{{"um", 1, 1, 0},
                                            {"\u00B5m", 1, 1, 0},
                                            {"\u03BCm", 1, 1, 0},
                                            {"mm", 1000, 1, 0},
                                            {"cm", 10000, 1, 0},
                                            {"m", 1000000, 1, 0},
                                            {"in", 25400, 1, 0},
                                            {"ft", 304800, 1, 0}}};
constexpr std::array<Unit, 7> kPressureUnits{{{"pa", 1, 1, 0},
                                              {"hpa", 100, 1, 0},
                                              {"kpa", 1000, 1, 0},
                                              {"bar", 100000, 1, 0},
                                              {"psi", kPsiNumerator, kPsiDenominator, 0},
                                              {"psig", kPsiNumerator, kPsiDenominator, 0},
                                              {"psia", kPsiNumerator, kPsiDenominator, 0}}};
// Fahrenheit: (F + 459.67) * 5/9 kelvin.
constexpr std::array<Unit, 3> kTemperatureUnits{{{"c", 1000, 1, 273150}, {"f", 5000, 9, 2298350}, {"k", 1000, 1, 0}}};
constexpr std::array<Unit, 3> kElevationUnits{{{"m", 1000, 1, 0}, {"ft", 3048, 10, 0}, {"km", 1000000, 1, 0}}};

struct Range {
  std::int64_t low = 0, high = 0;
};
constexpr Range kLengthRange{0, 10'000'000};
constexpr Range kPressureRange{-200'000, 2'000'000};
constexpr Range kTemperatureRange{183'150, 363'150};
constexpr Range kElevationRange{-430'000, 9'000'000};

std::string lowerCase(std::string_view text) {
  std::string lower(text);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

struct Parsed {
  std::int64_t value = 0;
  std::string_view unit;
};

constexpr std::int64_t kUmPerInch = 25'400;
constexpr std::int64_t kDenominatorMost = 128;  // of a tape or a rule, and twice that
constexpr std::int64_t kInchesMost = 1000;
constexpr std::int64_t kPadFraction = 16, kTapeFraction = 8;

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string_view::npos ? std::string_view() : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::optional<std::int64_t> whole(std::string_view text) {
  std::int64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc{} && end == text.data() + text.size() && value >= 0 ? std::optional(value) : std::nullopt;
}

// "21 5/8 in", "5/8in".
std::optional<std::int64_t> inchFraction(std::string_view text) {
  text = trimmed(text);
  if (lowerCase(text.substr(text.size() < 2 ? 0 : text.size() - 2)) != "in") return std::nullopt;
  text = trimmed(text.substr(0, text.size() - 2));
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) return std::nullopt;
  const std::size_t blank = text.rfind(' ', slash);
  const bool isMixed = blank != std::string_view::npos;
  const auto inches = isMixed ? whole(trimmed(text.substr(0, blank))) : std::optional<std::int64_t>(0);
  const auto over = whole(trimmed(text.substr(isMixed ? blank + 1 : 0, slash - (isMixed ? blank + 1 : 0))));
  const auto under = whole(trimmed(text.substr(slash + 1)));
  if (!inches || !over || !under || *under < 1 || *under > kDenominatorMost || *over >= *under || *inches > kInchesMost)
    return std::nullopt;
  return (2 * (*inches * *under + *over) * kUmPerInch + *under) / (2 * *under);
}

std::string inInches(Length v, std::int64_t parts) {
  const std::int64_t all = decimal::roundedQuotient(Wide{v.um < 0 ? -v.um : v.um} * parts, kUmPerInch);
  std::int64_t over = all % parts, under = parts;
  for (; over != 0 && over % 2 == 0; over /= 2) under /= 2;
  std::string text = v.um < 0 && all != 0 ? "-" : "";
  if (all >= parts || over == 0) text += std::to_string(all / parts) + (over != 0 ? " " : "");
  if (over != 0) text += std::to_string(over) + '/' + std::to_string(under);
  return text + " in";
}

std::string shown(std::string_view text) { return std::string(text.substr(0, 60)); }

Result<Parsed> parse(std::string_view text, std::string_view place, std::span<const Unit> units, Range range,
                     std::string (*print)(std::int64_t)) {
  const std::optional<decimal::Reading> reading = decimal::read(text);
  if (!reading) return fail(ErrorCode::notAQuantity, std::string(place), shown(text));
  if (reading->rest.empty()) return fail(ErrorCode::missingUnit, std::string(place), shown(text));
  const std::string name = lowerCase(reading->rest);
  for (const Unit& unit : units) {
    if (unit.name != name) continue;
    const std::string limits = shown(text) + ", " + print(range.low) + ", " + print(range.high);
    if (reading->isHuge) return fail(ErrorCode::outOfRange, std::string(place), limits);
    const decimal::Number& n = reading->number;
    // A long fraction is brought over the unit's denominator at once, so that it is rounded only here.
    const std::int64_t value = decimal::roundedQuotient(n.mantissa * unit.numerator + unit.offset * n.scale, n.scale * unit.denominator);
    if (value < range.low || value > range.high) return fail(ErrorCode::outOfRange, std::string(place), limits);
    return Parsed{value, unit.name};
  }
  return fail(ErrorCode::notAQuantity, std::string(place), shown(text));
}

std::int64_t scaled(double v, double factor) { return std::isfinite(v) ? std::llround(v * factor) : 0; }

}  // namespace

Length Length::millimetres(double v) { return {scaled(v, 1000.0)}; }
Pressure Pressure::kilopascals(double v) { return {scaled(v, 1000.0)}; }
Temperature Temperature::celsius(double v) { return {scaled(v, 1000.0) + 273150}; }
Elevation Elevation::metres(double v) { return {scaled(v, 1000.0)}; }

Result<Length> parseLength(std::string_view text, std::string_view place) {
  if (const auto um = inchFraction(text)) {
    if (*um <= kLengthRange.high) return Length{*um};
    return fail(ErrorCode::outOfRange, std::string(place),
                shown(text) + ", " + exact(Length{kLengthRange.low}) + ", " + exact(Length{kLengthRange.high}));
  }
  const auto parsed = parse(text, place, kLengthUnits, kLengthRange, [](std::int64_t v) { return exact(Length{v}); });
  if (!parsed) return tl::unexpected<Error>(parsed.error());
  return Length{parsed->value};
}

Result<Pressure> parsePressure(std::string_view text, std::string_view place, PressureKind kind) {
  const auto parsed = parse(text, place, kPressureUnits, kPressureRange, [](std::int64_t v) { return exact(Pressure{v}); });
  if (!parsed) return tl::unexpected<Error>(parsed.error());
  const bool saysOther = kind == PressureKind::gauge ? parsed->unit == "psia" : parsed->unit == "psig";
  if (saysOther)
    return fail(ErrorCode::inconsistent, std::string(place),
                shown(text) + (kind == PressureKind::gauge ? ": absolute where a gauge pressure is asked for"
                                                           : ": gauge where an absolute pressure is asked for"));
  return Pressure{parsed->value};
}

Result<Temperature> parseTemperature(std::string_view text, std::string_view place) {
  // The degree sign says nothing that the letter behind it does not, and needs one.
  std::string plain(text);
  for (std::string_view sign : {std::string_view("\u00B0"), std::string_view("\u00BA")})
    if (const std::size_t at = plain.find(sign); at != std::string::npos && at + sign.size() < plain.size()) plain.erase(at, sign.size());
  const auto parsed = parse(plain, place, kTemperatureUnits, kTemperatureRange, [](std::int64_t v) { return exact(Temperature{v}); });
  if (!parsed) return tl::unexpected<Error>(parsed.error());
  return Temperature{parsed->value};
}

Result<Elevation> parseElevation(std::string_view text, std::string_view place) {
  const auto parsed = parse(text, place, kElevationUnits, kElevationRange, [](std::int64_t v) { return exact(Elevation{v}); });
  if (!parsed) return tl::unexpected<Error>(parsed.error());
  return Elevation{parsed->value};
}

std::string print(Length v, UnitSystem system) {
  if (system == UnitSystem::metric) return decimal::fixed(decimal::roundedQuotient(v.um, 1000), 0) + " mm";
  return inInches(v, kPadFraction);
}

std::string printTape(Length v, UnitSystem system) { return system == UnitSystem::metric ? print(v, system) : inInches(v, kTapeFraction); }

std::string print(Pressure v, UnitSystem system) {
  if (system == UnitSystem::metric) return decimal::fixed(decimal::roundedQuotient(v.pa, 100), 1) + " kPa";
  return decimal::fixed(decimal::roundedQuotient(Wide{v.pa} * 100 * kPsiDenominator, kPsiNumerator), 2) + " psi";
}

std::string print(Temperature v, UnitSystem system) {
  if (system == UnitSystem::metric) return decimal::fixed(decimal::roundedQuotient(v.mk - 273150, 1000), 0) + " \u00B0C";
  return decimal::fixed(decimal::roundedQuotient(Wide{v.mk - 273150} * 9 + 160000, 5000), 0) + " \u00B0F";
}

std::string print(Elevation v, UnitSystem system) {
  if (system == UnitSystem::metric) return decimal::fixed(decimal::roundedQuotient(v.mm, 1000), 0) + " m";
  return decimal::fixed(decimal::roundedQuotient(Wide{v.mm} * 10, 3048), 0) + " ft";
}

std::string exact(Length v) { return decimal::trimmed(v.um, 3) + "mm"; }
std::string exact(Pressure v) { return decimal::trimmed(v.pa, 0) + "Pa"; }
std::string exact(Temperature v) { return decimal::trimmed(v.mk - 273150, 3) + "C"; }
std::string exact(Elevation v) { return decimal::trimmed(v.mm, 3) + "m"; }

}  // namespace snugline
