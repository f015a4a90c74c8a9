// SPDX-License-Identifier: Apache-2.0
// Purpose: when a live gauge may be read: all samples of the last second lie within the gauge's stated uncertainty, or 0.2 kPa where it
// states none (the span of a second is ours). No timers: samples carry their instants, and only a sample changes the answer.
// A second counts as seen once a sample at least a second older than the latest stands at its start. Samples are kept as lowest and
// highest of each 10 ms, so that memory is bounded whatever the gauge's rate. Equal times are fine; a sample up to kSteadyGapMostMs back
// counts as of the latest time; further back, or after a gap longer than that, the clock or the link jumped, and the second starts over.
// Units: Pa gauge or absolute, as long as it is the same throughout. Thread: confined to one.
#pragma once

#include <array>
#include <cstdint>
#include <optional>

#include "core/quantity/quantity.h"
#include "core/quantity/time.h"

namespace snugline::air {

inline constexpr Pressure kSteadyWithin{200};           // where the gauge states no uncertainty (ours)
inline constexpr Pressure kSteadyWithinMost{1'000};     // of what a gauge states: more would call anything steady (ours)
inline constexpr std::int64_t kSteadySpanMs = 1000;     // ours
inline constexpr std::int64_t kSteadyGapMostMs = 3000;  // ours: a gauge that sends every two seconds still works

enum class Trend : std::uint8_t { unknown, level, rising, falling };

class SteadyReading {
 public:
  explicit SteadyReading(std::optional<Pressure> uncertainty = std::nullopt);
  void add(Instant at, Pressure sample);
  void startOver();  // the gauge went away, the port changed

  [[nodiscard]] std::optional<Pressure> latest() const;
  [[nodiscard]] bool isSteady() const { return m_trend == Trend::level; }
  // Over the last second: level is steady; rising or falling when the latest is further from the first than the limit; unknown before a
  // whole second was seen, or when samples go to and fro.
  [[nodiscard]] Trend trend() const { return m_trend; }
  [[nodiscard]] Pressure within() const { return m_within; }

 private:
  struct Slot {
    std::int64_t slot = 0;  // at / 10 ms
    std::int64_t firstMs = 0;
    std::int64_t low = 0, high = 0, first = 0;
  };
  static constexpr std::int64_t kSlotMs = 10;
  static constexpr std::size_t kSlots = 128;  // a second of slots, and the one before it
  void judge();

  Pressure m_within;
  std::array<Slot, kSlots> m_ring{};
  std::size_t m_first = 0, m_count = 0;
  std::int64_t m_latestMs = 0, m_latest = 0;
  Trend m_trend = Trend::unknown;
};

}  // namespace snugline::air
