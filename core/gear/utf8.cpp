// SPDX-License-Identifier: Apache-2.0
#include "core/gear/utf8.h"

#include <cstdint>
#include <cstring>

namespace snugline::gear {

namespace {

unsigned byteAt(std::string_view text, std::size_t i) { return static_cast<unsigned char>(text[i]); }

bool isBetween(unsigned value, unsigned low, unsigned high) { return value >= low && value <= high; }

}  // namespace

std::size_t utf8Length(std::string_view text) {
  if (text.empty()) return 0;
  const unsigned first = byteAt(text, 0);
  if (first < 0x80) return 1;
  const std::size_t length = isBetween(first, 0xC2, 0xDF) ? 2 : isBetween(first, 0xE0, 0xEF) ? 3 : isBetween(first, 0xF0, 0xF4) ? 4 : 0;
  if (length == 0 || text.size() < length) return 0;
  // The second byte is what shuts out overlong forms, surrogates and the far end.
  const unsigned low = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
  const unsigned high = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
  if (!isBetween(byteAt(text, 1), low, high)) return 0;
  for (std::size_t i = 2; i < length; ++i)
    if (!isBetween(byteAt(text, i), 0x80, 0xBF)) return 0;
  return length;
}

std::size_t utf8End(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    // Eight bytes of ASCII at a time: most texts are nothing else.
    std::uint64_t eight = 0;
    for (; text.size() - at >= sizeof eight; at += sizeof eight) {
      std::memcpy(&eight, text.data() + at, sizeof eight);
      if ((eight & 0x8080808080808080ULL) != 0) break;
    }
    if (at == text.size()) break;
    const std::size_t length = utf8Length(text.substr(at));
    if (length == 0) return at;
    at += length;
  }
  return at;
}

bool isUtf8(std::string_view text) { return utf8End(text) == text.size(); }

std::string mendedUtf8(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t length = utf8Length(text);
    out += length == 0 ? std::string_view("\uFFFD") : text.substr(0, length);
    text.remove_prefix(length == 0 ? 1 : length);
  }
  return out;
}

bool isPrintable(std::string_view text) {
  while (!text.empty()) {
    const std::size_t length = utf8Length(text);
    if (length == 0) return false;
    const unsigned first = byteAt(text, 0);
    if (first < 0x20 || first == 0x7F || (first == 0xC2 && byteAt(text, 1) < 0xA0)) return false;
    text.remove_prefix(length);
  }
  return true;
}

std::size_t codePoints(std::string_view text) {
  std::size_t count = 0;
  for (; !text.empty(); ++count) {
    const std::size_t length = utf8Length(text);
    text.remove_prefix(length == 0 ? 1 : length);
  }
  return count;
}

}  // namespace snugline::gear
