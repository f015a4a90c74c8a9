// SPDX-License-Identifier: Apache-2.0
#include "core/gear/sheet_figure.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace snugline::gear {

namespace {

constexpr std::int64_t kUmPerInch = 25'400;
constexpr double kPaPerPsi = 6894.757293168361;

std::string_view unitName(FigureUnit unit, UnitSystem system) {
  const bool isMetric = system == UnitSystem::metric;
  switch (unit) {
    case FigureUnit::um:
      return isMetric ? "mm" : "in";
    case FigureUnit::pa:
      return isMetric ? "kPa" : "psi";
    case FigureUnit::months:
    case FigureUnit::points:
      return {};
  }
  return {};
}

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string_view::npos ? std::string_view() : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::optional<std::int64_t> whole(std::string_view text) {
  std::int64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc{} && end == text.data() + text.size() && value >= 0 ? std::optional(value) : std::nullopt;
}

// 21654, 3 -> "21.654"; 21650 -> "21.65"; 21000 -> "21".
std::string decimals(std::int64_t value, int places) {
  std::string digits = std::to_string(std::abs(value));
  if (digits.size() <= static_cast<std::size_t>(places)) digits.insert(0, static_cast<std::size_t>(places) + 1 - digits.size(), '0');
  digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
  digits.erase(digits.find_last_not_of('0') + 1);
  if (digits.ends_with('.')) digits.pop_back();
  return (value < 0 ? "-" : "") + digits;
}

double smallest(FigureUnit unit, UnitSystem system) {
  const bool isMetric = system == UnitSystem::metric;
  switch (unit) {
    case FigureUnit::um:
      return isMetric ? 1'000 : kUmPerInch / 8.0;
    case FigureUnit::pa:
      return isMetric ? 1'000 : kPaPerPsi / 10;
    case FigureUnit::months:
    case FigureUnit::points:
      return 1;
  }
  return 1;
}

}  // namespace

Result<std::int64_t> readFigure(std::string_view text, FigureUnit unit, UnitSystem system) {
  text = trimmed(text);
  switch (unit) {
    case FigureUnit::um: {
      auto length = parseLength(text);
      const bool isFraction = text.find('/') != std::string_view::npos;
      if (!length && (isFraction || length.error().code == ErrorCode::missingUnit))
        length = parseLength(std::string(text) + std::string(unitName(unit, system)));
      if (!length) return tl::unexpected<Error>(length.error());
      return length->um;
    }
    case FigureUnit::pa: {
      auto pressure = parsePressure(text);
      if (!pressure && pressure.error().code == ErrorCode::missingUnit)
        pressure = parsePressure(std::string(text) + std::string(unitName(unit, system)));
      if (!pressure) return tl::unexpected<Error>(pressure.error());
      return pressure->pa;
    }
    case FigureUnit::months:
    case FigureUnit::points:
      break;
  }
  const auto count = whole(text);
  if (!count) return fail(ErrorCode::notAQuantity, {}, std::string(text.substr(0, 60)));
  return *count;
}

std::string printFigure(std::int64_t value, FigureUnit unit, UnitSystem system) {
  const bool isMetric = system == UnitSystem::metric;
  switch (unit) {
    case FigureUnit::um:
      return (isMetric ? decimals(value, 3) : decimals(std::llround(static_cast<double>(value) * 1000 / kUmPerInch), 3)) + ' ' +
             std::string(unitName(unit, system));
    case FigureUnit::pa:
      return (isMetric ? decimals(value, 3) : decimals(std::llround(static_cast<double>(value) * 100 / kPaPerPsi), 2)) + ' ' +
             std::string(unitName(unit, system));
    case FigureUnit::months:
    case FigureUnit::points:
      return std::to_string(value);
  }
  return {};
}

bool isPrintedWhole(std::int64_t value, FigureUnit unit, UnitSystem system) {
  const auto read = readFigure(printFigure(value, unit, system), unit, system);
  return read && *read == value;
}

std::vector<FigureStep> figureSteps(FigureUnit unit, UnitSystem system) {
  const bool isMetric = system == UnitSystem::metric;
  switch (unit) {
    case FigureUnit::um:
      return isMetric ? std::vector<FigureStep>{{"1 mm", 1}, {"5 mm", 5}} : std::vector<FigureStep>{{"1/8 in", 1}, {"1/2 in", 4}};
    case FigureUnit::pa:
      return isMetric ? std::vector<FigureStep>{{"1 kPa", 1}, {"5 kPa", 5}} : std::vector<FigureStep>{{"0.1 psi", 1}, {"1 psi", 10}};
    case FigureUnit::months:
      return {{"1", 1}, {"12", 12}};
    case FigureUnit::points:
      return {{"2", 2}};
  }
  return {};
}

std::int64_t stepFigure(const Figure& value, int wholes, const FigureRange& range, UnitSystem system, const Figure& from) {
  const double step = smallest(range.unit, system);
  if (!value) return std::clamp(from.value_or(std::llround(wholes * step)), range.lowest, range.highest);
  const std::int64_t nearest = std::llround(static_cast<double>(*value) / step);
  const bool isOnScale = std::abs(std::llround(static_cast<double>(nearest) * step) - *value) <= 1;
  const std::int64_t next = isOnScale ? std::llround(static_cast<double>(nearest + wholes) * step) : *value + std::llround(wholes * step);
  return std::clamp(next, range.lowest, range.highest);
}

}  // namespace snugline::gear
