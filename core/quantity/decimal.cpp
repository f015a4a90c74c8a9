// SPDX-License-Identifier: Apache-2.0
#include "core/quantity/decimal.h"

namespace snugline::decimal {

namespace {

constexpr std::size_t kMostWholeDigits = 12;
constexpr int kMostPlaces = 12;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

bool skip(std::string_view& text, std::string_view what) {
  if (!text.starts_with(what)) return false;
  text.remove_prefix(what.size());
  return true;
}

// Spreadsheets and phones put a no-break or narrow blank between number and unit.
void skipBlanks(std::string_view& text) {
  while (skip(text, " ") || skip(text, "\t") || skip(text, "\u00A0") || skip(text, "\u202F") || skip(text, "\u2009")) {
  }
}

}  // namespace

std::optional<Reading> read(std::string_view text) {
  skipBlanks(text);
  const bool isNegative = skip(text, "-") || skip(text, "\u2212");
  if (!isNegative) skip(text, "+");
  Reading reading;
  std::size_t whole = 0;
  bool hasDigits = false;
  for (; !text.empty() && isDigit(text.front()); text.remove_prefix(1)) {
    hasDigits = true;
    if (whole > 0 || text.front() != '0') ++whole;
    if (whole <= kMostWholeDigits) reading.number.mantissa = reading.number.mantissa * 10 + (text.front() - '0');
  }
  reading.isHuge = whole > kMostWholeDigits;
  if (skip(text, ".") || skip(text, ",")) {
    if (text.empty() || !isDigit(text.front())) return std::nullopt;
    hasDigits = true;
    for (int places = 0; !text.empty() && isDigit(text.front()); text.remove_prefix(1), ++places) {
      if (places >= kMostPlaces) continue;
      reading.number.mantissa = reading.number.mantissa * 10 + (text.front() - '0');
      reading.number.scale *= 10;
    }
  }
  if (!hasDigits) return std::nullopt;
  if (isNegative) reading.number.mantissa = -reading.number.mantissa;
  skipBlanks(text);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r' || text.back() == '\n')) text.remove_suffix(1);
  reading.rest = text;
  return reading;
}

std::int64_t roundedQuotient(Wide numerator, Wide denominator) {
  const Wide half = denominator / 2;
  // An odd denominator has no exact half, so that adding the floor of it rounds just the same.
  return static_cast<std::int64_t>(numerator < 0 ? -((-numerator + half) / denominator) : (numerator + half) / denominator);
}

std::string fixed(std::int64_t value, int places) {
  std::string digits = std::to_string(value < 0 ? -value : value);
  const auto width = static_cast<std::size_t>(places);
  if (digits.size() <= width) digits.insert(0, width + 1 - digits.size(), '0');
  if (places > 0) digits.insert(digits.size() - width, 1, '.');
  return value < 0 ? "-" + digits : digits;
}

std::string trimmed(std::int64_t value, int places) {
  std::string text = fixed(value, places);
  if (places == 0) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

}  // namespace snugline::decimal
