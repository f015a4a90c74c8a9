// SPDX-License-Identifier: Apache-2.0
// Purpose: text of people as it may be shown or printed: the Book keeps what was written, the glass and the paper show it so that it can do
// nothing. Not UTF-8, control characters, and the characters that turn the direction of what follows become visible signs; right-to-left
// text is set apart from what stands around it (Unicode Standard Annex 9, isolates); a pile of marks on one letter is cut after four;
// what is longer than asked ends in "…". Ranges: any bytes. Thread: plain functions.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace snugline::book {

inline constexpr std::size_t kShownMost = 600;     // characters on a screen: more than any act takes (ours)
inline constexpr std::size_t kShownNameMost = 80;  // of a name

enum class Lines : std::uint8_t { one, several };  // several: line feeds stay
// most 0: all of it.
[[nodiscard]] std::string shownText(std::string_view text, std::size_t most = kShownMost, Lines lines = Lines::one);

}  // namespace snugline::book
