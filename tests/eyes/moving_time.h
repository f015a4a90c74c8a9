// SPDX-License-Identifier: Apache-2.0
// Purpose: the time of a test of screens. It goes on by itself at every touch and key that reaches a window, as it does under real fingers,
// and by days when told; between them it stands, so that a test gives the same each time. Thread: read from any, moved from the GUI thread
// alone.
#pragma once

#include <atomic>
#include <memory>
#include <utility>

#include <QCoreApplication>
#include <QEvent>
#include <QObject>

#include "core/ports/ports.h"
#include "core/quantity/time.h"

namespace snugline::eyes {

inline constexpr std::int64_t kTouchMs = 2'000;  // of a hand that is quick
inline constexpr std::int64_t kKeyMs = 20;       // of a scanner that types
inline constexpr std::int64_t kDayMs = 24LL * 60 * 60 * 1000;

class MovingTime {
 public:
  explicit MovingTime(Instant start) : m_ms(start.ms), m_offset(start.offsetMinutes) {}
  [[nodiscard]] Instant now() const { return {m_ms, m_offset}; }
  void pass(std::int64_t ms) { m_ms += ms; }  // back where it is negative, as a clock that was set
  void set(Instant now) { m_ms = now.ms; }

 private:
  std::atomic<std::int64_t> m_ms;
  std::int32_t m_offset;
};

class MovingClock final : public ports::Clock {
 public:
  explicit MovingClock(std::shared_ptr<const MovingTime> time) : m_time(std::move(time)) {}
  [[nodiscard]] Instant now() override { return m_time->now(); }

 private:
  std::shared_ptr<const MovingTime> m_time;
};

// While it lives, every touch moves the time on before it is handled.
class Hand : public QObject {
 public:
  explicit Hand(std::shared_ptr<MovingTime> time) : m_time(std::move(time)) { QCoreApplication::instance()->installEventFilter(this); }
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (!watched->isWindowType()) return false;
    const QEvent::Type type = event->type();
    if (type == QEvent::TouchBegin || type == QEvent::MouseButtonPress) m_time->pass(kTouchMs);
    if (type == QEvent::KeyPress) m_time->pass(kKeyMs);
    return false;
  }

 private:
  std::shared_ptr<MovingTime> m_time;
};

}  // namespace snugline::eyes
