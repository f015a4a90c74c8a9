// SPDX-License-Identifier: Apache-2.0
// Purpose: a gauge for the demo, where there is none: it is found when looked for, and plays a round again and again: open air, so that it
// can be zeroed, then the pressure of a bladder that stands still, then another. Whoever owns it calls play() as time goes.
// Units: Pa above open air, seconds of the round. Thread: as gauge_port.h.
#pragma once

#include <cmath>

#include "core/air/gauge_packet.h"
#include "core/ports/memory_gauge.h"

namespace snugline::demo {

inline constexpr double kOpenAirPa = 101'325.0;  // U.S. Standard Atmosphere 1976, sea level
inline constexpr double kRoundSeconds = 40.0;

// Open air for eight seconds, up, a crown at 20 kPa, down to sides at 14 kPa, and open air again.
[[nodiscard]] inline double playedPa(double seconds) {
  struct Point {
    double at, pa;
  };
  constexpr Point kRound[] = {{0, 0}, {8, 0}, {10, 20'000}, {22, 20'000}, {24, 14'000}, {37, 14'000}, {kRoundSeconds, 0}};
  const double at = std::fmod(seconds, kRoundSeconds);
  for (std::size_t i = 1; i < std::size(kRound); ++i) {
    const Point &from = kRound[i - 1], &to = kRound[i];
    if (at <= to.at) return from.pa + (to.pa - from.pa) * (at - from.at) / (to.at - from.at);
  }
  return 0.0;
}

class PlayedGauge final : public ports::PressureGauge {
 public:
  PlayedGauge() { m_gauge.offer({"played", "Demo gauge", -48, false, true}, "0142"); }
  void listen(ports::GaugeListener listener) override { m_gauge.listen(std::move(listener)); }
  [[nodiscard]] Result<void> scan(const ports::RememberedGauge& remembered) override { return m_gauge.scan(remembered); }
  void stopScan() override { m_gauge.stopScan(); }
  [[nodiscard]] Result<void> choose(const std::string& id) override { return m_gauge.choose(id); }
  [[nodiscard]] Result<void> start(const ports::RememberedGauge& remembered) override { return m_gauge.start(remembered); }
  void stop() override { m_gauge.stop(); }

  // What it reads at this moment; at: of the clock that the readings are kept by. False while nobody listens to it.
  bool play(double seconds, Instant at) {
    const auto tenths = static_cast<std::uint32_t>(std::llround((kOpenAirPa + playedPa(seconds)) * 10.0));
    std::vector<std::uint8_t> bytes;
    for (unsigned shift = 0; shift < 32; shift += 8) bytes.push_back(static_cast<std::uint8_t>((tenths >> shift) & 0xFFU));
    return m_gauge.send({{"Demo gauge 0142", air::kPressureCharacteristic, std::move(bytes), at}});
  }

 private:
  ports::MemoryGauge m_gauge;
};

}  // namespace snugline::demo
