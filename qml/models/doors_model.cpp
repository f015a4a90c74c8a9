// SPDX-License-Identifier: Apache-2.0
#include "doors_model.h"

namespace snugline::models {

DoorsModel::DoorsModel(Desk* desk, LineModel* line, QObject* parent) : QObject(parent), m_desk(desk), m_line(line) {
  connect(desk, &Desk::opened, this, &DoorsModel::changed);
  connect(desk, &Desk::changed, this, &DoorsModel::changed);
  connect(line, &LineModel::boardChanged, this, &DoorsModel::changed);
}

QString DoorsModel::team() const {
  const auto& team = m_desk->views().team;
  return team ? (PlainWords::text(team->name) + QLatin1Char(' ') + PlainWords::text(team->mascot)).trimmed() : QString();
}

QString DoorsModel::lineWaiting() const {
  if (!m_desk->isOpen()) return {};
  const int count = m_line->beforePractice() + m_line->doNotWear();
  if (count == 0) return tr("Nobody to see before practice");
  const auto& team = m_desk->views().team;
  const Instant practice = instantAt(m_desk->today(), team ? team->practiceMinute : 0, 0);
  return team ? tr("%n to see before %1", nullptr, count).arg(PlainWords::time(practice)) : tr("%n to see", nullptr, count);
}

QString DoorsModel::lineWorst() const { return m_line->doNotWear() == 0 ? QString() : tr("%n of them: do not wear", nullptr, m_line->doNotWear()); }

QString DoorsModel::dockWaiting() const {
  if (!m_desk->isOpen()) return {};
  int held = 0;
  for (const auto& [id, unit] : m_desk->views().units) {
    if (!unit.holds.empty() && unit.place != season::UnitPlace::retired && unit.place != season::UnitPlace::lost) ++held;
  }
  return held == 0 ? tr("Take helmets in, one scan after another") : tr("%n helmet(s) on hold", nullptr, held);
}

QString DoorsModel::bookWaiting() const {
  if (!m_desk->isOpen()) return {};
  const auto& views = m_desk->views();
  int athletes = 0;
  for (const auto& [id, athlete] : views.athletes) athletes += athlete.isOnRoster ? 1 : 0;
  return tr("%1, %2", "athletes, helmets")
      .arg(tr("%n athlete(s)", nullptr, athletes), tr("%n helmet(s)", nullptr, static_cast<int>(views.units.size())));
}

}  // namespace snugline::models
