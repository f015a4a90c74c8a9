// SPDX-License-Identifier: Apache-2.0
#include "core/gear/tag.h"

#include <algorithm>
#include <array>
#include <new>
#include <utility>

#include "core/gear/gs1.h"
#include "core/gear/tag_fault.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

constexpr std::size_t kPlainMost = 64;
constexpr std::size_t kPlainLeast = 3;   // ours: shorter ones are asked about
constexpr std::size_t kTextMost = 2048;  // ours: an address may be long, a scan never is
constexpr std::size_t kItemDigits = 14;
constexpr std::array<std::string_view, 3> kSymbologies{"]d2", "]Q3", "]C1"};  // Data Matrix, QR and Code 128, each with GS1 data
constexpr int kYearsAhead = 50;                                               // memory: GS1 settles a century by -49/+50 years
constexpr int kYearsBehind = 49;

bool isTagDigit(char c) { return c >= '0' && c <= '9'; }

// "\x1d" as people and shells write character 29.
std::string withSeparators(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    if (text.starts_with("\\x1d") || text.starts_with("\\x1D")) {
      out += gs1::kFnc1;
      text.remove_prefix(4);
    } else {
      out += text.front();
      text.remove_prefix(1);
    }
  }
  return out;
}

bool isCheckDigitRight(std::string_view digits) { return gs1CheckDigit(digits.substr(0, digits.size() - 1)) == digits.back() - '0'; }

std::string madeOf(std::string_view yymmdd, Day today) {
  const int now = civil(today).year;
  int year = now - now % 100 + (yymmdd[0] - '0') * 10 + (yymmdd[1] - '0');
  if (year - now > kYearsAhead) year -= 100;
  if (now - year > kYearsBehind) year += 100;
  std::string made = std::to_string(year) + '-' + std::string(yymmdd.substr(2, 2));
  if (yymmdd.substr(4) != "00") made += '-' + std::string(yymmdd.substr(4));
  return made;
}

Result<Tag> tagOf(TagForm form, const Result<gs1::Elements>& elements, Day today) {
  if (!elements) return tl::unexpected<Error>(elements.error());
  if (const Result<void> together = gs1::checkTogether(*elements); !together) return tl::unexpected<Error>(together.error());
  Tag tag;
  tag.form = form;
  tag.ai = *elements;
  const auto value = [&](const char* identifier) {
    const auto found = tag.ai.find(identifier);
    return found == tag.ai.end() ? std::string() : found->second;
  };
  const std::string item = value("01"), returnable = value("8003"), asset = value("8004"), made = value("11");
  if (!item.empty()) {
    tag.serial = value("21");
    tag.key = "01" + item + (tag.serial.empty() ? std::string() : "21" + tag.serial);
  } else if (!returnable.empty()) {
    tag.serial = returnable.substr(kItemDigits);
    tag.key = "8003" + returnable;
  } else {
    tag.serial = asset;
    tag.key = "8004" + asset;
  }
  tag.isCheckDigitOk =
      (item.empty() || isCheckDigitRight(item)) && (returnable.empty() || isCheckDigitRight(returnable.substr(0, kItemDigits)));
  if (!made.empty()) tag.made = madeOf(made, today);
  return tag;
}

Result<Tag> plainTag(std::string_view text) {
  if (text.find_first_not_of(' ') == std::string_view::npos) return refuse({TagFault::blanks});
  const std::size_t length = codePoints(text);
  if (length > kPlainMost) return refuse({TagFault::tooManyCharacters, {}, length, 0, kPlainMost});
  Tag tag;
  tag.serial = std::string(text);
  tag.key = tag.serial;
  return tag;
}

bool startsWithNoCase(std::string_view text, std::string_view lower) {
  return text.size() >= lower.size() && std::equal(lower.begin(), lower.end(), text.begin(), [](char a, char b) {
           return a == (b >= 'A' && b <= 'Z' ? static_cast<char>(b - 'A' + 'a') : b);
         });
}

std::optional<Result<Tag>> linkTag(std::string_view text, Day today) {
  for (const std::string_view scheme : {std::string_view("https://"), std::string_view("http://")}) {
    if (!startsWithNoCase(text, scheme)) continue;
    const std::string_view rest = text.substr(scheme.size());
    if (!gs1::isLink(rest)) return std::nullopt;
    return tagOf(TagForm::digitalLink, gs1::readLink(rest), today);
  }
  return std::nullopt;
}

// Without any prefix: 01 and 14 digits, alone or with a right check digit or with identifiers that read well to the end.
std::optional<Result<Tag>> bareTag(std::string_view text, Day today) {
  if (!text.starts_with("01") || text.size() < 2 + kItemDigits) return std::nullopt;
  const std::string_view item = text.substr(2, kItemDigits);
  if (!std::all_of(item.begin(), item.end(), isTagDigit)) return std::nullopt;
  Result<Tag> tag = tagOf(TagForm::gs1, gs1::readElements(text), today);
  if (!tag && !isCheckDigitRight(item)) return std::nullopt;
  return tag;
}

}  // namespace

std::string_view code(TagForm f) {
  switch (f) {
    case TagForm::gs1:
      return "gs1";
    case TagForm::digitalLink:
      return "digital-link";
    case TagForm::plain:
      return "plain";
  }
  return {};
}

std::optional<TagDoubt> doubtOf(const Tag& tag) {
  if (tag.form != TagForm::plain) return std::nullopt;
  const auto isWord = [](char c) {
    return isTagDigit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
  };
  if (std::none_of(tag.serial.begin(), tag.serial.end(), isWord)) return TagDoubt::onlySigns;
  return codePoints(tag.serial) < kPlainLeast ? std::optional(TagDoubt::tooShort) : std::nullopt;
}

int gs1CheckDigit(std::string_view digitsWithoutCheck) {
  int sum = 0;
  int weight = 3;
  for (auto digit = digitsWithoutCheck.rbegin(); digit != digitsWithoutCheck.rend(); ++digit, weight = 4 - weight) {
    if (!isTagDigit(*digit)) return -1;
    sum += (*digit - '0') * weight;
  }
  return (10 - sum % 10) % 10;
}

Result<Tag> parseTag(std::string_view text, Day today) try {
  if (text.empty()) return refuse({TagFault::nothing});
  if (text.size() > kTextMost) return refuse({TagFault::tooManyBytes, {}, text.size(), 0, kTextMost});
  if (!isUtf8(text)) return refuse({TagFault::notUtf8});
  std::string read = withSeparators(text);
  const bool hasSeparator = read.find(gs1::kFnc1) != std::string::npos;
  // Character 29 is the only control character that a tag may carry.
  std::string visible = read;
  std::erase(visible, gs1::kFnc1);
  if (!isPrintable(visible)) return refuse({TagFault::controlCharacter});

  std::string_view rest = read;
  const bool hasSymbology = std::any_of(kSymbologies.begin(), kSymbologies.end(), [&](std::string_view s) { return rest.starts_with(s); });
  if (hasSymbology) rest.remove_prefix(kSymbologies.front().size());
  if (hasSymbology || hasSeparator) {
    while (rest.starts_with(gs1::kFnc1)) rest.remove_prefix(1);
    return tagOf(TagForm::gs1, gs1::readElements(rest), today);
  }
  if (gs1::isBracketed(rest)) return tagOf(TagForm::gs1, gs1::readBracketed(rest), today);
  if (std::optional<Result<Tag>> link = linkTag(rest, today)) return std::move(*link);
  if (std::optional<Result<Tag>> bare = bareTag(rest, today)) return std::move(*bare);
  return plainTag(rest);
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

}  // namespace snugline::gear
