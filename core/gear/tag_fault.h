// SPDX-License-Identifier: Apache-2.0
// Purpose: why a text cannot be a serial tag, as data: what Error::detail of ErrorCode::notATag holds, so that the sentence is made at the
// screen or the terminal in its own language. Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline::gear {

enum class TagFault : std::uint8_t {
  nothing,
  blanks,
  tooManyBytes,       // count, most
  tooManyCharacters,  // of a plain serial: count, most
  notUtf8,
  controlCharacter,
  nothingBehindPrefix,
  unknownIdentifier,  // identifier
  wrongLength,        // identifier, count, least, most
  needsDigits,        // identifier, count: so many digits it begins with
  strangeCharacter,   // identifier: a character that GS1 does not allow
  noCompanyPrefix,    // identifier
  noLeadingZero,      // identifier
  noSuchMonth,        // identifier
  noSuchDay,          // identifier
  twiceDifferent,     // identifier: stands twice with different values
  badPercent,         // identifier: a % without two hexadecimal digits
  noValueInPath,      // identifier
  twoKeysInPath,
  belongsInPath,  // identifier: not behind the question mark
  noBracket,      // no identifier in brackets where one is needed
  noHost,
  serialAlone,   // 21 without 01
  namesNoHelmet  // 01, 8003 and 8004 are missing
};
[[nodiscard]] std::string_view code(TagFault fault);  // "wrong-length"

struct TagRefusal {
  TagFault fault = TagFault::nothing;
  std::string identifier{};  // as read, at most 20 bytes; may be any text
  std::size_t count = 0, least = 0, most = 0;
  friend bool operator==(const TagRefusal&, const TagRefusal&) = default;
};
[[nodiscard]] tl::unexpected<Error> refuse(const TagRefusal& refusal);
// From Error::detail; nothing where it is none of these.
[[nodiscard]] std::optional<TagRefusal> refusalOf(std::string_view detail);

}  // namespace snugline::gear
