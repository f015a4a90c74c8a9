// SPDX-License-Identifier: Apache-2.0
// Purpose: what proves the log: device ids, the chain over lines, signatures over segments (BOOK_FORMAT.md, Chain and segments).
// Errors: noKey. Thread: plain functions.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/ports/ports.h"

namespace snugline::book {

using Chain = std::array<std::uint8_t, 32>;
using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;
inline constexpr std::uint64_t kSegmentFacts = 256;
inline constexpr std::size_t kDeviceLetters = 13;

struct SigningKey {
  PublicKey publicKey{};
  std::array<std::uint8_t, 64> secret{};
};
[[nodiscard]] Result<SigningKey> signingKey(const ports::Seed& seed);
[[nodiscard]] std::string deviceOf(const PublicKey& key);
[[nodiscard]] Chain chainStart(std::string_view device);
[[nodiscard]] Chain chainStep(const Chain& before, std::string_view line);
[[nodiscard]] Signature signSegment(const SigningKey& key, std::string_view device, std::uint64_t first, std::uint64_t last,
                                    const Chain& chain);
[[nodiscard]] bool isSignedBy(const PublicKey& key, const Signature& signature, std::string_view device, std::uint64_t first,
                              std::uint64_t last, const Chain& chain);

template <std::size_t N>
[[nodiscard]] std::string_view bytesOf(const std::array<std::uint8_t, N>& value) {
  return {reinterpret_cast<const char*>(value.data()), N};
}
// False when the bytes have another length.
template <std::size_t N>
[[nodiscard]] bool fromBytes(std::string_view bytes, std::array<std::uint8_t, N>& value) {
  if (bytes.size() != N) return false;
  for (std::size_t i = 0; i < N; ++i) value[i] = static_cast<std::uint8_t>(bytes[i]);
  return true;
}
[[nodiscard]] std::string hexOf(const PublicKey& key);
[[nodiscard]] bool fromHex(std::string_view hex, PublicKey& key);

}  // namespace snugline::book
