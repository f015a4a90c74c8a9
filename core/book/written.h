// SPDX-License-Identifier: Apache-2.0
// Purpose: what people typed, before it becomes a fact: valid UTF-8, printable, not too long. Errors: outOfRange with the place and
// "length, lowest, highest" or what was wrong. Thread: plain functions.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline::book {

// Length in bytes of the sequence that the text begins with, 0 when it is not well formed (RFC 3629). The text must not be empty.
[[nodiscard]] std::size_t sequenceLength(std::string_view text, char32_t& point);
// Number of characters (code points), nothing when it is not valid UTF-8 or holds control characters.
[[nodiscard]] std::optional<std::size_t> printableLength(std::string_view text);
[[nodiscard]] Result<void> checkWritten(std::string_view text, std::size_t lowest, std::size_t highest, const std::string& place);
[[nodiscard]] Result<void> checkJersey(std::string_view jersey, const std::string& place);
// Without blanks at both ends, also no-break ones.
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace snugline::book
