// SPDX-License-Identifier: Apache-2.0
#include "core/air/steady.h"

#include <algorithm>

namespace snugline::air {

namespace {

std::int64_t slotOf(std::int64_t ms, std::int64_t width) { return ms >= 0 ? ms / width : (ms - width + 1) / width; }

}  // namespace

SteadyReading::SteadyReading(std::optional<Pressure> uncertainty) : m_within(kSteadyWithin) {
  if (uncertainty && uncertainty->pa > 0) m_within = std::min(*uncertainty, kSteadyWithinMost);
}

void SteadyReading::startOver() {
  m_first = m_count = 0;
  m_trend = Trend::unknown;
}

std::optional<Pressure> SteadyReading::latest() const {
  if (m_count == 0) return std::nullopt;
  return Pressure::pascals(m_latest);
}

void SteadyReading::add(Instant at, Pressure sample) {
  std::int64_t ms = at.ms;
  if (m_count > 0) {
    const bool isJump = ms > m_latestMs ? ms - m_latestMs > kSteadyGapMostMs : m_latestMs - ms > kSteadyGapMostMs;
    if (isJump) startOver();
  }
  if (m_count > 0) ms = std::max(ms, m_latestMs);
  m_latestMs = ms;
  m_latest = sample.pa;

  const std::int64_t slot = slotOf(ms, kSlotMs);
  Slot& last = m_ring[(m_first + m_count + kSlots - 1) % kSlots];
  if (m_count > 0 && last.slot == slot) {
    last.low = std::min(last.low, sample.pa);
    last.high = std::max(last.high, sample.pa);
  } else {
    m_ring[(m_first + m_count) % kSlots] = {slot, ms, sample.pa, sample.pa, sample.pa};
    ++m_count;
  }
  // The newest slot that began a second ago or earlier stands at the start of the second; what is older goes.
  while (m_count > 1 && m_ring[(m_first + 1) % kSlots].firstMs <= ms - kSteadySpanMs) {
    m_first = (m_first + 1) % kSlots;
    --m_count;
  }
  judge();
}

void SteadyReading::judge() {
  const Slot& first = m_ring[m_first];
  m_trend = Trend::unknown;
  if (first.firstMs > m_latestMs - kSteadySpanMs) return;
  std::int64_t low = first.low, high = first.high;
  for (std::size_t i = 1; i < m_count; ++i) {
    const Slot& slot = m_ring[(m_first + i) % kSlots];
    low = std::min(low, slot.low);
    high = std::max(high, slot.high);
  }
  if (high - low <= m_within.pa) {
    m_trend = Trend::level;
  } else if (m_latest - first.first > m_within.pa) {
    m_trend = Trend::rising;
  } else if (first.first - m_latest > m_within.pa) {
    m_trend = Trend::falling;
  }
}

}  // namespace snugline::air
