// SPDX-License-Identifier: Apache-2.0
// Purpose: what a Book keeps of a person's code: the Argon2id hash (RFC 9106), its salt and what it cost. Made and compared by
// core/book/code.h. Thread: plain values.
#pragma once

#include <array>
#include <cstdint>

namespace snugline::season {

// Passes over the memory, and the memory: libsodium's "interactive" pair, a setting for machines with little memory.
struct CodeCost {
  std::uint32_t passes = 2;
  std::uint32_t memoryKib = 65536;
  friend bool operator==(const CodeCost&, const CodeCost&) = default;
};
using CodeSalt = std::array<std::uint8_t, 16>;
struct CodeHash {
  CodeCost cost;
  CodeSalt salt{};
  std::array<std::uint8_t, 32> hash{};
  friend bool operator==(const CodeHash&, const CodeHash&) = default;
};

}  // namespace snugline::season
