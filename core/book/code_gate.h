// SPDX-License-Identifier: Apache-2.0
// Purpose: tries of codes on one device, with a wait that grows after misses. A try is written down as missed before the code is looked
// at, so that killing the app does not give a free one; it is struck out when the code was right. The wait runs down only by time that
// the caller saw go by on a clock that nobody can set (passed()): a restart or a clock set forward ends nothing, at worst
// the wait begins where it was last kept.
// Errors: those of ports::Attempts and of isCode. Where misses cannot be kept, no code is tried: the gate stays shut.
// Thread: one.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/book/code.h"
#include "core/ports/ports.h"

namespace snugline::book {

// After so many misses in a row (ours): three free, then 10 s, 30 s, 1, 5 and 15 minutes, and 15 minutes from then on.
[[nodiscard]] std::int64_t waitAfter(std::uint32_t misses);
inline constexpr std::int64_t kWaitMostMs = 900'000;
inline constexpr std::int64_t kWaitKeptEachMs = 5'000;  // how much of a wait a restart can cost

class CodeGate {
 public:
  // Cannot be read: the longest wait stands.
  explicit CodeGate(ports::Attempts& attempts);

  enum class Outcome : std::uint8_t { right, wrong, waiting };
  // Right when it is the code of any of these: several people may hold the tablet. Which one: place in `kept`, by reference.
  [[nodiscard]] Result<Outcome> tryCode(const std::vector<CodeHash>& kept, std::string_view digits, std::size_t& which);
  [[nodiscard]] Result<Outcome> tryCode(const CodeHash& kept, std::string_view digits);

  // The key of the recovery sheet: the same count and the same wait. Text that is no key at all must have been refused before.
  [[nodiscard]] Result<Outcome> tryRecovery(const CodeHash& kept, std::string_view key);

  void passed(std::int64_t ms);  // by a steady clock, while the app ran
  [[nodiscard]] std::int64_t waitMs() const { return m_missed.waitLeftMs; }
  [[nodiscard]] std::uint32_t misses() const { return m_missed.misses; }

 private:
  using IsIt = Result<bool> (*)(const CodeHash&, std::string_view);
  [[nodiscard]] Result<Outcome> tryAny(const std::vector<CodeHash>& kept, std::string_view secret, IsIt isIt, std::size_t& which);
  ports::Attempts& m_attempts;
  ports::MissedCodes m_missed;
  std::int64_t m_keptWaitMs = 0;
};

}  // namespace snugline::book
