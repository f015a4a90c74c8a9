// SPDX-License-Identifier: Apache-2.0
// Purpose: telling text in UTF-8 (RFC 3629: no surrogates, no overlong forms, nothing above U+10FFFF) from other bytes.
// Thread: pure functions.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace snugline::gear {

// Bytes of the code point at the front, 0 where the front is none.
[[nodiscard]] std::size_t utf8Length(std::string_view text);
[[nodiscard]] bool isUtf8(std::string_view text);
// Where the text stops being UTF-8; its size where it never does.
[[nodiscard]] std::size_t utf8End(std::string_view text);
// Every byte that belongs to no code point becomes U+FFFD.
[[nodiscard]] std::string mendedUtf8(std::string_view text);
// Code points, where the text is UTF-8; control characters (C0, DEL, C1) make it unprintable.
[[nodiscard]] bool isPrintable(std::string_view text);
[[nodiscard]] std::size_t codePoints(std::string_view text);

}  // namespace snugline::gear
