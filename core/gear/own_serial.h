// SPDX-License-Identifier: Apache-2.0
// Purpose: serials of our own, for helmets without a tag: "K7QD-00042-T". Four letters of the device that gave it, so that two devices
// never give the same one; a number; and a letter that tells a slip of the pen (Luhn's rule over the 32 letters of RFC 4648 base32, which
// catches every single wrong letter). Ranges: numbers 1 to kOwnSerialMost. Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace snugline::gear {

inline constexpr std::uint32_t kOwnSerialMost = 99'999;

struct OwnSerial {
  std::string device;  // four letters, upper case
  std::uint32_t number = 0;
  bool isCheckOk = false;
};
// device: as the Book names it (lower-case base32, at least four). Empty where number is out of range or device is too short.
[[nodiscard]] std::string ownSerial(std::string_view device, std::uint32_t number);
// Nothing: it does not look like one of ours. Case does not count.
[[nodiscard]] std::optional<OwnSerial> readOwnSerial(std::string_view text);

}  // namespace snugline::gear
