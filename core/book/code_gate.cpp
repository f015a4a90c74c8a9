// SPDX-License-Identifier: Apache-2.0
#include "core/book/code_gate.h"

#include <algorithm>
#include <array>

#include "core/book/recovery.h"

namespace snugline::book {

std::int64_t waitAfter(std::uint32_t misses) {
  constexpr std::uint32_t kFree = 3;
  constexpr std::array<std::int64_t, 5> kWaits{10'000, 30'000, 60'000, 300'000, kWaitMostMs};
  if (misses < kFree) return 0;
  return kWaits[std::min<std::size_t>(misses - kFree, kWaits.size() - 1)];
}

CodeGate::CodeGate(ports::Attempts& attempts) : m_attempts(attempts) {
  const Result<ports::MissedCodes> kept = attempts.load();
  m_missed = kept ? *kept : ports::MissedCodes{0, kWaitMostMs};
  m_missed.waitLeftMs = std::clamp<std::int64_t>(m_missed.waitLeftMs, 0, kWaitMostMs);
  m_keptWaitMs = m_missed.waitLeftMs;
}

Result<CodeGate::Outcome> CodeGate::tryCode(const std::vector<CodeHash>& kept, std::string_view digits, std::size_t& which) {
  return tryAny(kept, digits, isCode, which);
}

Result<CodeGate::Outcome> CodeGate::tryRecovery(const CodeHash& kept, std::string_view key) {
  std::size_t which = 0;
  return tryAny({kept}, key, isRecoveryKey, which);
}

Result<CodeGate::Outcome> CodeGate::tryAny(const std::vector<CodeHash>& kept, std::string_view secret, IsIt isTheOne, std::size_t& which) {
  if (m_missed.waitLeftMs > 0) return Outcome::waiting;
  const std::uint32_t misses = std::min<std::uint32_t>(m_missed.misses, 1'000'000) + 1;
  const ports::MissedCodes missed{misses, waitAfter(misses)};
  if (auto ok = m_attempts.keep(missed); !ok) return tl::unexpected<Error>(ok.error());
  for (std::size_t i = 0; i < kept.size(); ++i) {
    const Result<bool> isIt = isTheOne(kept[i], secret);
    // It could not be told: the try does not count, and the gate stays shut.
    if (!isIt) {
      if (auto ok = m_attempts.keep(m_missed); !ok) m_missed = missed;
      return tl::unexpected<Error>(isIt.error());
    }
    if (!*isIt) continue;
    which = i;
    m_missed = {};
    m_keptWaitMs = 0;
    // Not struck out on the disk: the next start asks for patience, nothing worse.
    static_cast<void>(m_attempts.keep(m_missed));
    return Outcome::right;
  }
  m_missed = missed;
  m_keptWaitMs = missed.waitLeftMs;
  return Outcome::wrong;
}

Result<CodeGate::Outcome> CodeGate::tryCode(const CodeHash& kept, std::string_view digits) {
  std::size_t which = 0;
  return tryCode(std::vector<CodeHash>{kept}, digits, which);
}

void CodeGate::passed(std::int64_t ms) {
  if (ms <= 0 || m_missed.waitLeftMs == 0) return;
  m_missed.waitLeftMs = std::max<std::int64_t>(0, m_missed.waitLeftMs - ms);
  if (m_missed.waitLeftMs != 0 && m_keptWaitMs - m_missed.waitLeftMs < kWaitKeptEachMs) return;
  if (auto ok = m_attempts.keep(m_missed); ok) m_keptWaitMs = m_missed.waitLeftMs;
}

}  // namespace snugline::book
