// SPDX-License-Identifier: Apache-2.0
#include "core/gear/own_serial.h"

#include <charconv>

namespace snugline::gear {

namespace {

constexpr std::string_view kLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";  // RFC 4648 base32
constexpr std::string_view kFigures = "0123456789";
constexpr std::size_t kDeviceLetters = 4, kDigits = 5, kLength = kDeviceLetters + 1 + kDigits + 1 + 1;

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

// Luhn's rule, base 32: every second value from the right is doubled, and its two digits in that base are added.
char checkLetter(std::string_view device, std::string_view digits) {
  const std::uint32_t base = static_cast<std::uint32_t>(kLetters.size());
  std::uint32_t sum = 0, factor = 2;
  const auto add = [&](std::string_view part, std::string_view alphabet) {
    for (auto c = part.rbegin(); c != part.rend(); ++c, factor = 3 - factor) {
      const std::uint32_t product = factor * static_cast<std::uint32_t>(alphabet.find(*c));
      sum += product / base + product % base;
    }
  };
  add(digits, kFigures);
  add(device, kLetters);
  return kLetters[(base - sum % base) % base];
}

}  // namespace

std::string ownSerial(std::string_view device, std::uint32_t number) {
  if (number == 0 || number > kOwnSerialMost || device.size() < kDeviceLetters) return {};
  std::string letters;
  for (const char c : device.substr(0, kDeviceLetters)) letters += upper(c);
  if (letters.find_first_not_of(kLetters) != std::string::npos) return {};
  std::string digits = std::to_string(number);
  digits.insert(0, kDigits - digits.size(), '0');
  return letters + '-' + digits + '-' + checkLetter(letters, digits);
}

std::optional<OwnSerial> readOwnSerial(std::string_view text) {
  if (text.size() != kLength || text[kDeviceLetters] != '-' || text[kLength - 2] != '-') return std::nullopt;
  OwnSerial own;
  for (const char c : text.substr(0, kDeviceLetters)) own.device += upper(c);
  const char letter = upper(text.back());
  if (own.device.find_first_not_of(kLetters) != std::string::npos || kLetters.find(letter) == std::string_view::npos) return std::nullopt;
  const std::string_view digits = text.substr(kDeviceLetters + 1, kDigits);
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), own.number);
  if (read.ec != std::errc{} || read.ptr != digits.data() + digits.size() || own.number == 0) return std::nullopt;
  own.isCheckOk = letter == checkLetter(own.device, digits);
  return own;
}

}  // namespace snugline::gear
