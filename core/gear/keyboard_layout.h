// SPDX-License-Identifier: Apache-2.0
// Purpose: a hand scanner types as on one keyboard (nearly always US English); a device that is set to another shows other characters, and
// a serial would go into the Book wrong. Noticed where the text as it stands is no sound GS1 tag and read back through another layout it
// is one, or where letters that no tag has (ß, ñ, ç ...) become plain ones. Never put right silently: the caller asks.
// Source of the layouts: the keyboards themselves (German, French, Spanish); only keys that print one character. Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/time.h"

namespace snugline::gear {

enum class KeyboardLayout : std::uint8_t { german, french, spanish, capsLock };
[[nodiscard]] std::string_view code(KeyboardLayout l);  // "german", "french", "spanish", "caps-lock"

struct LayoutGuess {
  KeyboardLayout layout = KeyboardLayout::german;
  std::string meant;  // what the scanner sent
};
// Nothing: no sign of another layout. UTF-8; today as for parseTag.
[[nodiscard]] std::optional<LayoutGuess> wrongLayout(std::string_view text, Day today);
// What a device set to that layout shows when a scanner types US English; for tests. Characters without a key of their own stay.
[[nodiscard]] std::string shownOn(KeyboardLayout layout, std::string_view sent);

}  // namespace snugline::gear
