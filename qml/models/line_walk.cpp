// SPDX-License-Identifier: Apache-2.0
// What is said beside the board's list, whom a number finds, and the walk of a line.
#include <algorithm>

#include "core/season/turn.h"
#include "drawn_values.h"
#include "line_model.h"

namespace snugline::models {

using season::DueRow;
using season::Lane;

namespace {
constexpr int kMatchesShown = 6;
constexpr int kLineCheckFrom = 4;  // fewer are seen one by one as fast (ours)
}  // namespace

QVariantMap LineModel::rowMap(const DueRow& row) const {
  QVariantMap map;
  const auto names = roleNames();
  for (auto it = names.begin(); it != names.end(); ++it) map.insert(QString::fromUtf8(it.value()), rowValue(row, it.key()));
  map.insert(QStringLiteral("kind"), QStringLiteral("row"));
  map.insert(QStringLiteral("lane"), codeWord(season::code(row.lane)));
  map.insert(QStringLiteral("tone"), toneOf(row.lane));
  return map;
}

QString LineModel::heading() const {
  if (!m_desk->isOpen()) return {};
  const QString today = PlainWords::weekdayAndDay(m_builtFor);
  if (!m_desk->views().team) return today;
  if (season::between(m_desk->views()) != nullptr) return tr("%1, no season is open").arg(today);
  const Instant practice = instantAt(m_practice, m_desk->views().team->practiceMinute, 0);
  if (m_practice == m_builtFor) return tr("%1, practice at %2").arg(today, PlainWords::time(practice));
  return tr("%1, next practice %2 at %3").arg(today, PlainWords::weekdayAndDay(m_practice), PlainWords::time(practice));
}

QString LineModel::betweenWords() const {
  const season::SeasonRecord* closed = m_desk->isOpen() ? season::between(m_desk->views()) : nullptr;
  if (closed == nullptr) return {};
  return tr("Season %1 is closed and no other is open. No looks are due and nobody is asked for a helmet; helmets still with athletes stay "
            "here.")
      .arg(PlainWords::text(closed->season));
}

void LineModel::setQuery(const QString& digits) {
  if (m_query == digits) return;
  m_query = digits;
  emit queryChanged();
  emit matchesChanged();
}

QString LineModel::clockWords() const {
  QStringList words;
  for (const season::ClockDoubt& doubt : m_board.clocks) {
    const QString when = tr("%1, %2", "a day, a time").arg(PlainWords::weekdayAndDay(dayOf(doubt.latest)), PlainWords::time(doubt.latest));
    const QString who = PlainWords::person(m_desk->views(), doubt.who);
    words << (doubt.isOwn     ? tr("The clock of this tablet is not right, or was not: it has an entry of %1.").arg(when)
              : who.isEmpty() ? tr("The clock of another device is far off: it has an entry of %1.").arg(when)
                              : tr("The clock of another device is far off: it has an entry by %1 of %2.").arg(who, when));
  }
  return words.join(QLatin1Char(' '));
}

// Exact numbers first, then those that begin with what was typed.
QVariantList LineModel::matches() const {
  if (m_query.isEmpty()) return {};
  QVariantList exact, beginning;
  for (const DueRow& row : m_board.rows) {
    const QString jersey = QString::fromStdString(row.jersey);
    if (jersey == m_query)
      exact << rowMap(row);
    else if (jersey.startsWith(m_query) && beginning.size() < kMatchesShown)
      beginning << rowMap(row);
  }
  return (exact + beginning).mid(0, std::max<qsizetype>(kMatchesShown, exact.size()));
}

// Every row of the lane: whoever is due before practice, else whoever must not wear a helmet as it is, else the weekly looks. Left out is
// only who is with the athletic trainer, of whom nobody has to see anything.
std::vector<const DueRow*> LineModel::walkable() const {
  for (const Lane lane : {Lane::beforePractice, Lane::doNotWear, Lane::weekly}) {
    if (m_isWalking && lane != m_walkLane) continue;
    std::vector<const DueRow*> rows;
    for (const DueRow& row : m_board.rows) {
      if (row.lane == lane && row.grade != season::Grade::withTrainer && !m_walked.contains(row.athlete)) rows.push_back(&row);
    }
    if (!rows.empty()) return rows;
  }
  return {};
}

QString LineModel::walkWords() const {
  if (m_isWalking) return {};
  const auto rows = walkable();
  if (rows.empty()) return {};
  const int count = static_cast<int>(rows.size());
  switch (rows.front()->lane) {
    case Lane::beforePractice:
      return tr("%n before practice", nullptr, count);
    case Lane::weekly:
      return tr("%n weekly look(s)", nullptr, count);
    case Lane::doNotWear:
      return tr("%n: do not wear", nullptr, count);
    case Lane::noHelmet:
    case Lane::nothingDue:
      break;
  }
  return {};
}

std::vector<const DueRow*> LineModel::airRows() const {
  std::vector<const DueRow*> rows;
  for (const DueRow& row : m_board.rows) {
    if (row.lane != Lane::beforePractice) continue;
    const auto isAir = [](const season::DueReason& reason) { return reason.kind == season::DueKind::airChanged; };
    if (std::any_of(row.reasons.begin(), row.reasons.end(), isAir)) rows.push_back(&row);
  }
  return rows;
}

QString LineModel::lineCheckWords() const {
  const auto count = static_cast<int>(airRows().size());
  return m_isWalking || count < kLineCheckFrom ? QString() : tr("%n in this lane because of the air", nullptr, count);
}

void LineModel::startWalk() {
  m_isWalking = false;
  m_walked.clear();
  const auto rows = walkable();
  if (rows.empty()) return;
  m_walkLane = rows.front()->lane;
  m_walkAthlete = rows.front()->athlete;
  m_isWalking = true;
  emit walkChanged();
  emit boardChanged();
}

void LineModel::walkOn() {
  if (!m_isWalking) return;
  m_walked.insert(m_walkAthlete);
  const auto rows = walkable();
  m_walkAthlete = rows.empty() ? std::string() : rows.front()->athlete;
  emit walkChanged();
}

void LineModel::endWalk() {
  m_isWalking = false;
  m_walkAthlete.clear();
  m_walked.clear();
  emit walkChanged();
  emit boardChanged();
}

QVariantMap LineModel::walkRow() const {
  const auto& rows = m_board.rows;
  const auto row = std::find_if(rows.begin(), rows.end(), [this](const DueRow& r) { return r.athlete == m_walkAthlete; });
  return !m_isWalking || m_walkAthlete.empty() || row == rows.end() ? QVariantMap() : rowMap(*row);
}

QString LineModel::walkLeft() const {
  if (!m_isWalking || m_walkAthlete.empty()) return {};
  const auto rows = walkable();
  const auto others = std::count_if(rows.begin(), rows.end(), [this](const DueRow* row) { return row->athlete != m_walkAthlete; });
  return others == 0 ? tr("The last of the line") : tr("%n more after this one", nullptr, static_cast<int>(others));
}

}  // namespace snugline::models
