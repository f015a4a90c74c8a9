// SPDX-License-Identifier: Apache-2.0
// Purpose: what a scanned or typed tag says. GS1 element strings (GS1 General Specifications; identifiers 01, 10, 11, 21,
// 8003, 8004, 90 to 99; FNC1 as character 29; symbology prefixes ]d2 ]Q3 ]C1), GS1 Digital Link URIs, and plain serials of
// 1 to 64 printable characters, kept as read. Serials are unique only together with their 01 (or 8003): 21 never stands alone.
// Which of them a text is, the first that holds:
//  1. It starts with ]d2, ]Q3 or ]C1, or holds a character 29: an element string; what does not read as one is refused.
//  2. It starts with two to four digits in brackets and has 01, 21, 8003 or 8004 in brackets: the form for people,
//     "(01)07300011000017(21)ABC"; what does not read as such is refused.
//  3. An http or https address whose path has a segment 01, 8003 or 8004 (or begins with 21): a Digital Link; else refused.
//     Identifiers behind the question mark that are not among ours are passed over, as is the fragment.
//  4. 01 and 14 digits, where the rest reads as elements to its end; where the check digit is right, what does not is refused.
//  5. Anything else is a plain serial, so also other addresses and whatever merely starts with digits.
// Errors: notATag with the reason as detail (a control character other than 29, too long, an identifier that is not ours or
// has a wrong length, nothing that names a helmet ...), outOfMemory. A wrong check digit is a finding, not an error.
// Thread: pure functions.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/time.h"

namespace snugline::gear {

enum class TagForm : std::uint8_t { gs1, digitalLink, plain };
[[nodiscard]] std::string_view code(TagForm f);  // "gs1", "digital-link", "plain"

struct Tag {
  TagForm form = TagForm::plain;
  std::map<std::string, std::string> ai;  // identifier -> value; empty for a plain serial
  std::string serial;                     // what names the unit for people: 21, the serial part of 8003 or 8004, or the text; may be empty
  std::string key;                        // what names the unit for the Book: "01…21…" joined, or the plain text
  std::string made;                       // "2024-01-15", or "2024-01" when the day is 00; empty when not said
  bool isCheckDigitOk = true;             // of 01 (or 8003)
};

// Character 29 is accepted raw or written as \x1d. today settles two-digit years (-49/+50; value from memory).
[[nodiscard]] Result<Tag> parseTag(std::string_view text, Day today);

// A plain serial that looks like a slip of the finger or half a scan. To be asked about where the Book knows no such serial, never refused.
enum class TagDoubt : std::uint8_t {
  tooShort,  // one or two characters (ours)
  onlySigns  // neither a letter nor a digit
};
[[nodiscard]] std::optional<TagDoubt> doubtOf(const Tag& tag);

// Weights 3,1 from the right over the digits before the check digit (GS1 General Specifications). -1 where one is no digit.
[[nodiscard]] int gs1CheckDigit(std::string_view digitsWithoutCheck);

}  // namespace snugline::gear
