// SPDX-License-Identifier: Apache-2.0
#include "core/book/shown_text.h"

#include <algorithm>

#include "core/book/written.h"

namespace snugline::book {

namespace {

constexpr std::string_view kReplaced = "\xEF\xBF\xBD";  // U+FFFD
constexpr std::string_view kIsolate = "\xE2\x81\xA8";   // U+2068 first strong isolate
constexpr std::string_view kEndIsolate = "\xE2\x81\xA9";
constexpr std::string_view kMore = "\xE2\x80\xA6";
constexpr int kMarksMost = 4;  // on one letter (ours)

struct Span {
  char32_t low, high;
};
template <std::size_t N>
bool isIn(char32_t point, const Span (&spans)[N]) {
  return std::any_of(std::begin(spans), std::end(spans), [point](const Span& s) { return point >= s.low && point <= s.high; });
}
// Blocks of scripts written from right to left (Unicode 15, Blocks.txt).
constexpr Span kRightToLeft[] = {{0x0590, 0x08FF}, {0xFB1D, 0xFDFF}, {0xFE70, 0xFEFE}, {0x10800, 0x10FFF}, {0x1E800, 0x1EFFF}};
// Characters that show nothing and change what follows: direction, invisible blanks, tags, separators, annotations.
constexpr Span kUnseen[] = {{0x0080, 0x009F}, {0x061C, 0x061C}, {0x180E, 0x180E}, {0x200B, 0x200B}, {0x200E, 0x200F}, {0x2028, 0x202E},
                            {0x2060, 0x206F}, {0xFDD0, 0xFDEF}, {0xFEFF, 0xFEFF}, {0xFFF0, 0xFFFB}, {0xFFFE, 0xFFFF}, {0xE0000, 0xE0FFF}};
// Combining marks for any letter (Unicode 15, Blocks.txt).
constexpr Span kMarks[] = {{0x0300, 0x036F}, {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF}, {0x20D0, 0x20FF}, {0xFE20, 0xFE2F}};

bool isPlain(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7F; });
}

void appendPicture(std::string& out, char32_t control) {  // U+2400 and on, U+2421
  const char32_t picture = control == 0x7F ? 0x2421 : 0x2400 + control;
  out += static_cast<char>(0xE2);
  out += static_cast<char>(0x80 | (picture >> 6 & 0x3F));
  out += static_cast<char>(0x80 | (picture & 0x3F));
}

}  // namespace

std::string shownText(std::string_view text, std::size_t most, Lines lines) {
  if (isPlain(text) && (most == 0 || text.size() <= most)) return std::string(text);
  std::string out;
  std::size_t count = 0;
  int marks = 0;
  bool isRightToLeft = false, isCut = false;
  while (!text.empty()) {
    if (most != 0 && count == most) {
      isCut = true;
      break;
    }
    char32_t point = 0;
    const std::size_t length = sequenceLength(text, point);
    const std::string_view bytes = text.substr(0, std::max<std::size_t>(length, 1));
    text.remove_prefix(bytes.size());
    ++count;
    marks = length != 0 && isIn(point, kMarks) ? marks + 1 : 0;
    if (marks > kMarksMost) continue;
    if (length == 0 || isIn(point, kUnseen)) {
      out += kReplaced;
    } else if (point == '\n' && lines == Lines::several) {
      out += '\n';
    } else if (point < 0x20 || point == 0x7F) {
      appendPicture(out, point);
    } else {
      isRightToLeft = isRightToLeft || isIn(point, kRightToLeft);
      out += bytes;
    }
  }
  if (isRightToLeft) out = std::string(kIsolate) + out + std::string(kEndIsolate);
  if (isCut) out += kMore;
  return out;
}

}  // namespace snugline::book
