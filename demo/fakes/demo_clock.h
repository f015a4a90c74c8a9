// SPDX-License-Identifier: Apache-2.0
// Purpose: a clock that starts at the demo's hour and goes on from there, or stands still for pictures. Thread: one.
#pragma once

#include <chrono>

#include "core/ports/ports.h"

namespace snugline::demo {

class DemoClock final : public ports::Clock {
 public:
  DemoClock(Instant start, bool stands) : m_start(start), m_stands(stands), m_since(std::chrono::steady_clock::now()) {}
  [[nodiscard]] Instant now() override {
    if (m_stands) return m_start;
    const auto gone = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - m_since).count();
    return {m_start.ms + gone, m_start.offsetMinutes};
  }

 private:
  Instant m_start;
  bool m_stands;
  std::chrono::steady_clock::time_point m_since;
};

}  // namespace snugline::demo
