// SPDX-License-Identifier: Apache-2.0
// Purpose: a clock that starts at the demo's hour, or at the last entry of its Book where that is later, and goes on from there; or that
// stands still for pictures. Clocks of one start show one time, whenever each was made. Thread: one.
#pragma once

#include <chrono>

#include "core/ports/ports.h"
#include "core/season/record.h"

namespace snugline::demo {

struct DemoStart {
  Instant at;
  bool stands = false;
  std::chrono::steady_clock::time_point since = std::chrono::steady_clock::now();
};

// What was done when the demo last ran must not lie in the future.
[[nodiscard]] inline Instant goOnFrom(Instant hour, const season::Views& views) {
  for (const auto& [device, heard] : views.devices) {
    if (heard.latest.ms > hour.ms) hour.ms = heard.latest.ms;
  }
  return hour;
}

class DemoClock final : public ports::Clock {
 public:
  explicit DemoClock(DemoStart start) : m_start(start) {}
  [[nodiscard]] Instant now() override {
    if (m_start.stands) return m_start.at;
    const auto gone = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - m_start.since).count();
    return {m_start.at.ms + gone, m_start.at.offsetMinutes};
  }

 private:
  DemoStart m_start;
};

}  // namespace snugline::demo
