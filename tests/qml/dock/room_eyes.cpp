// SPDX-License-Identifier: Apache-2.0
// The room looked at with fresh eyes after every act, and days that pass in it.
#include <QTimer>

#include "room.h"

namespace snugline::tests {

void Room::pass(int minutes) {
  constexpr std::int64_t kMinuteMs = 60'000;
  m_time->pass(minutes * kMinuteMs);
  m_desk->askClock();
}

// A write is looked at once whatever it set going has come to rest; several writes at a time are looked at together.
void Room::openEyes() {
  if (qEnvironmentVariableIsSet("SNUGLINE_ROOM")) return;
  connect(m_desk.get(), &models::Desk::changed, this, [this] {
    if (m_isStirred) return;
    m_isStirred = true;
    QTimer::singleShot(0, m_desk.get(), [this] { look(); });
  });
}

void Room::look() {
  const eyes::Glass glass{m_desk.get(), m_choices.get(), m_weather.get(), m_line.get(), m_doors.get(), nullptr, m_units.get()};
  if (!eyes::settle(*m_desk)) return qWarning("the Book never came to rest");
  m_isStirred = false;
  for (const QString& each : eyes::untruths(glass, m_time)) qWarning("Not true: %s", qPrintable(each));
}

}  // namespace snugline::tests
