// SPDX-License-Identifier: Apache-2.0
// Purpose: exact decimal text to whole units and back, for this folder's sources only. A number is read as a fraction of
// integers, so that no binary fraction stands between what was typed and what is kept. Rounding: half away from zero.
// Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace snugline::decimal {

__extension__ typedef __int128 Wide;  // 12 digits before the point, 12 behind and the psi fraction need more than 64 bits

// value = mantissa / 10^places. At most 12 digits before the point; digits beyond 12 places lie below every resolution.
struct Number {
  Wide mantissa = 0;
  Wide scale = 1;
};

// The number at the front of the text: sign, digits, point or comma, digits. `rest` is what follows, blanks skipped.
// Nothing where there is no number; isHuge where it has more than 12 digits before the point.
struct Reading {
  Number number;
  bool isHuge = false;
  std::string_view rest;
};
[[nodiscard]] std::optional<Reading> read(std::string_view text);

[[nodiscard]] std::int64_t roundedQuotient(Wide numerator, Wide denominator);  // denominator > 0
[[nodiscard]] std::string fixed(std::int64_t value, int places);               // 1234, 2 -> "12.34"
[[nodiscard]] std::string trimmed(std::int64_t value, int places);             // 22000, 3 -> "22"; 22500, 3 -> "22.5"

}  // namespace snugline::decimal
