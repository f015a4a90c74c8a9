// SPDX-License-Identifier: Apache-2.0
// The join code: bytes, letters, and the key that both ends work out of it.
#include <algorithm>
#include <charconv>

#include <sodium.h>

#include "core/book/phone.h"

namespace snugline::book {

namespace {

constexpr std::string_view kMark = "SNUGLINE-JOIN:";
constexpr std::string_view kKeyMark = "snugline phone 1\n";
constexpr std::string_view kLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr std::uint8_t kVersion = 1;
constexpr std::size_t kDeviceBytes = 8, kNumberBytes = 5, kOrderBytes = 6, kCheckBytes = 4, kJerseyMost = 3;

std::string toLetters(std::string_view bytes) {
  std::string out;
  unsigned held = 0, bits = 0;
  for (const char each : bytes) {
    held = (held << 8) | static_cast<unsigned char>(each);
    bits += 8;
    for (; bits >= 5; bits -= 5) out += kLetters[(held >> (bits - 5)) & 31];
    held &= (1U << bits) - 1;
  }
  if (bits > 0) out += kLetters[(held << (5 - bits)) & 31];
  return out;
}

// Small letters, blanks and hyphens are taken as somebody types them. What does not come out again as it went in is refused.
std::optional<std::string> fromLetters(std::string_view text) {
  std::string plain, bytes;
  for (char each : text) {
    if (each == ' ' || each == '-' || each == '\n' || each == '\r' || each == '\t') continue;
    if (each >= 'a' && each <= 'z') each = static_cast<char>(each - 'a' + 'A');
    if (kLetters.find(each) == std::string_view::npos) return std::nullopt;
    plain += each;
  }
  unsigned held = 0, bits = 0;
  for (const char each : plain) {
    held = (held << 5) | static_cast<unsigned>(kLetters.find(each));
    bits += 5;
    if (bits < 8) continue;
    bits -= 8;
    bytes += static_cast<char>((held >> bits) & 0xFF);
    held &= (1U << bits) - 1;
  }
  if (toLetters(bytes) != plain) return std::nullopt;
  return bytes;
}

std::string upper(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  return text;
}
std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return text;
}

std::string big(std::uint64_t value, std::size_t bytes) {
  std::string out;
  for (std::size_t i = bytes; i > 0; --i) out += static_cast<char>((value >> (8 * (i - 1))) & 0xFF);
  return out;
}
std::uint64_t fromBig(std::string_view bytes) {
  std::uint64_t value = 0;
  for (const char each : bytes) value = (value << 8) | static_cast<unsigned char>(each);
  return value;
}

std::string check(std::string_view bytes) {
  std::array<unsigned char, 32> hash{};
  crypto_generichash(hash.data(), hash.size(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), nullptr, 0);
  return {reinterpret_cast<const char*>(hash.data()), kCheckBytes};
}

std::optional<std::string> deviceBytes(const std::string& device) {
  if (device.size() != kDeviceLetters) return std::nullopt;
  auto bytes = fromLetters(upper(device));
  return bytes && bytes->size() == kDeviceBytes ? bytes : std::nullopt;
}

bool areDigits(std::string_view text) { return text.find_first_not_of("0123456789") == std::string_view::npos; }

tl::unexpected<Error> refused() { return fail(ErrorCode::notAllowed, "join code", std::string(rule::kNotAJoinCode)); }

}  // namespace

Result<std::string> print(const JoinCode& code) {
  const std::size_t colon = code.athlete.find(':');
  if (colon == std::string::npos) return fail(ErrorCode::notFound, "athlete " + code.athlete);
  const auto staff = deviceBytes(code.staffDevice), athlete = deviceBytes(code.athlete.substr(0, colon));
  std::uint64_t n = 0;
  const char* end = code.athlete.data() + code.athlete.size();
  const bool isNumber = std::from_chars(code.athlete.data() + colon + 1, end, n).ptr == end;
  if (!staff || !athlete || !isNumber || n >> (8 * kNumberBytes) != 0) return fail(ErrorCode::notFound, "athlete " + code.athlete);
  if (code.order < 0 || code.order >> (8 * kOrderBytes) != 0) return fail(ErrorCode::outOfRange, "order");
  if (code.jersey.size() > kJerseyMost || !areDigits(code.jersey)) return fail(ErrorCode::outOfRange, "jersey");
  std::string bytes(1, static_cast<char>(kVersion));
  bytes.append(bytesOf(code.secret)).append(*staff).append(*athlete).append(big(n, kNumberBytes));
  bytes.append(big(static_cast<std::uint64_t>(code.order), kOrderBytes)).append(big(code.jersey.size(), 1)).append(code.jersey);
  return std::string(kMark) + toLetters(bytes + check(bytes));
}

Result<JoinCode> parseJoin(std::string_view text) {
  const std::string start = upper(std::string(text));
  const std::size_t at = start.find(kMark);
  const auto decoded = fromLetters(at == std::string::npos ? start : std::string_view(start).substr(at + kMark.size()));
  constexpr std::size_t kFixed = 1 + 16 + 2 * kDeviceBytes + kNumberBytes + kOrderBytes + 1;
  if (!decoded || decoded->size() < kFixed + kCheckBytes || decoded->front() != static_cast<char>(kVersion)) return refused();
  std::string_view bytes(*decoded);
  const std::string_view body = bytes.substr(0, bytes.size() - kCheckBytes);
  if (check(body) != bytes.substr(body.size())) return refused();
  JoinCode code;
  std::size_t place = 1;
  const auto take = [&](std::size_t count) {
    const std::string_view part = body.substr(std::min(place, body.size()), count);
    place += count;
    return part;
  };
  if (!fromBytes(take(code.secret.size()), code.secret)) return refused();
  code.staffDevice = lower(toLetters(take(kDeviceBytes)));
  code.athlete = lower(toLetters(take(kDeviceBytes)));
  code.athlete += ':' + std::to_string(fromBig(take(kNumberBytes)));
  code.order = static_cast<std::int64_t>(fromBig(take(kOrderBytes)));
  const std::size_t length = fromBig(take(1));
  code.jersey = take(length);
  const bool isWhole = length <= kJerseyMost && place == body.size() && areDigits(code.jersey);
  if (!isWhole) return refused();
  return code;
}

Result<SigningKey> phoneKey(const JoinCode& code) {
  std::string words(kKeyMark);
  words.append(bytesOf(code.secret)).append(code.athlete);
  ports::Seed seed{};
  crypto_generichash(seed.data(), seed.size(), reinterpret_cast<const unsigned char*>(words.data()), words.size(), nullptr, 0);
  return signingKey(seed);
}

}  // namespace snugline::book
