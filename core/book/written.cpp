// SPDX-License-Identifier: Apache-2.0
#include "core/book/written.h"

#include <algorithm>

namespace snugline::book {

namespace {

constexpr std::size_t kJerseyLimit = 3;

bool isControl(char32_t point) {
  return point < 0x20 || (point >= 0x7F && point < 0xA0) || point == 0x2028 || point == 0x2029 || point == 0xFEFF;
}

}  // namespace

std::size_t sequenceLength(std::string_view text, char32_t& point) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) {
    point = lead;
    return 1;
  }
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return 0;
  point = static_cast<char32_t>(lead & (0x7FU >> length));
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
    point = point << 6 | (byte(i) & 0x3FU);
  }
  const bool isTooShort = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
  const bool isSurrogate = point >= 0xD800 && point <= 0xDFFF;
  return isTooShort || isSurrogate || point > 0x10FFFF ? 0 : length;
}

std::optional<std::size_t> printableLength(std::string_view text) {
  std::size_t count = 0;
  while (!text.empty()) {
    char32_t point = 0;
    const std::size_t length = sequenceLength(text, point);
    if (length == 0 || isControl(point)) return std::nullopt;
    text.remove_prefix(length);
    ++count;
  }
  return count;
}

Result<void> checkWritten(std::string_view text, std::size_t lowest, std::size_t highest, const std::string& place) {
  const auto length = printableLength(text);
  if (!length) return fail(ErrorCode::outOfRange, place, "not printable");
  if (*length < lowest || *length > highest) {
    return fail(ErrorCode::outOfRange, place, std::to_string(*length) + ", " + std::to_string(lowest) + ", " + std::to_string(highest));
  }
  return {};
}

Result<void> checkJersey(std::string_view jersey, const std::string& place) {
  const bool isDigits = std::all_of(jersey.begin(), jersey.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!isDigits || jersey.size() > kJerseyLimit) return fail(ErrorCode::outOfRange, place, std::string(jersey));
  return {};
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kNoBreak = "\xC2\xA0";
  for (bool isDone = false; !isDone;) {
    isDone = true;
    if (!text.empty() && (text.front() == ' ' || text.front() == '\t' || text.front() == '\r' || text.front() == '\n')) {
      text.remove_prefix(1);
      isDone = false;
    } else if (text.starts_with(kNoBreak)) {
      text.remove_prefix(kNoBreak.size());
      isDone = false;
    }
    if (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r' || text.back() == '\n')) {
      text.remove_suffix(1);
      isDone = false;
    } else if (text.ends_with(kNoBreak)) {
      text.remove_suffix(kNoBreak.size());
      isDone = false;
    }
  }
  return text;
}

}  // namespace snugline::book
