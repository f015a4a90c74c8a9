// SPDX-License-Identifier: Apache-2.0
// Purpose: a hand scanner types as on one keyboard (nearly always US English); a device that is set to another shows other characters, and
// a serial would go into the Book wrong. So it does where the scanner is set to another one and the device to US English. Noticed where the
// text as it stands is no sound GS1 tag or label of our own and read back through another layout it is one; where letters that no tag has
// (ß, ñ, ç ...) become plain ones; and where a plain serial has a / or a ' and no -. Never put right silently: the caller asks.
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
  std::string meant;       // what the scanner sent
  bool isScanner = false;  // the scanner is set to that layout, the device to US English; else the other way round
  bool isAsRead = false;   // may as well stand on the helmet as it was read: asked, not refused
};
// Nothing: no sign of another layout. UTF-8; today as for parseTag.
[[nodiscard]] std::optional<LayoutGuess> wrongLayout(std::string_view text, Day today);
// What a device set to that layout shows when a scanner types US English; for tests. Characters without a key of their own stay.
[[nodiscard]] std::string shownOn(KeyboardLayout layout, std::string_view sent);

}  // namespace snugline::gear
