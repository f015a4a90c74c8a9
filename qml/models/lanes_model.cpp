// SPDX-License-Identifier: Apache-2.0
#include "lanes_model.h"

#include <array>

#include "core/book/past_lanes.h"
#include "core/season/board.h"
#include "log_reading.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

struct LaneLook {
  season::Lane lane;
  const char* kind;
  const char* tone;
};
// Worst at the foot, where heights are easiest to compare.
constexpr std::array<LaneLook, 4> kLooks{{{season::Lane::doNotWear, "full", "stop"},
                                          {season::Lane::beforePractice, "striped", "see"},
                                          {season::Lane::weekly, "dotted", "info"},
                                          {season::Lane::nothingDue, "hollow", "snug"}}};

int helmets(const season::LaneCount& count, season::Lane lane) { return count.helmets[static_cast<std::size_t>(lane)]; }

}  // namespace

struct LanesModel::Reading : LogReading<book::PastLanes> {};

LanesModel::LanesModel(Desk* desk, QObject* parent) : QObject(parent), m_desk(desk) {}
LanesModel::~LanesModel() = default;

void LanesModel::begin() {
  if (!m_desk->isOpen() || !m_desk->views().team) return;
  m_trouble.clear();
  m_reading = std::make_shared<Reading>(Reading{{book::PastLanes(season::laneTimes(*m_desk->views().team, m_desk->now()))}});
  m_progress = 0;
  emit progressChanged();
  emit changed();
  step(m_reading);
}

void LanesModel::leave() {
  m_reading.reset();
  m_progress = -1;
  emit progressChanged();
}

void LanesModel::step(const std::shared_ptr<Reading>& reading) {
  readPiece<book::PastLanes>(*m_desk, this, reading, [this, reading](const Result<bool>& isDone) {
    if (reading != m_reading) return;  // left, or begun anew
    if (!isDone) {
      m_trouble = errorSentence(isDone.error());
      leave();
      emit changed();
    } else if (*isDone) {
      end(reading);
    } else {
      m_progress = reading->share();
      emit progressChanged();
      step(reading);
    }
  });
}

void LanesModel::end(const std::shared_ptr<Reading>& reading) {
  m_counts = reading->answer.counts();
  // Weeks before the first helmet was in the Book say nothing.
  const auto isEmpty = [](const season::LaneCount& count) { return count.helmets == season::LaneCount{}.helmets && count.bare == 0; };
  while (!m_counts.empty() && isEmpty(m_counts.front())) m_counts.erase(m_counts.begin());
  m_chosen = static_cast<int>(m_counts.size()) - 1;
  leave();
  emit changed();
}

void LanesModel::choose(int column) {
  if (column < 0 || column >= static_cast<int>(m_counts.size()) || column == m_chosen) return;
  m_chosen = column;
  emit changed();
}

const season::LaneCount* LanesModel::chosenCount() const { return m_chosen < 0 ? nullptr : &m_counts[static_cast<std::size_t>(m_chosen)]; }

QVariantList LanesModel::columns() const {
  QVariantList list;
  for (const season::LaneCount& count : m_counts) {
    QVariantList parts;
    QStringList said;
    for (const LaneLook& look : kLooks) {
      const int value = helmets(count, look.lane);
      parts << QVariantMap{{QStringLiteral("value"), value},
                           {QStringLiteral("kind"), QLatin1String(look.kind)},
                           {QStringLiteral("tone"), QLatin1String(look.tone)}};
      if (value > 0) said << tr("%1: %2").arg(DueWords::lane(look.lane)).arg(value);
    }
    list << QVariantMap{{QStringLiteral("label"), PlainWords::day(dayOf(count.at), m_desk->today())},
                        {QStringLiteral("words"), said.join(QStringLiteral(", "))},
                        {QStringLiteral("parts"), parts}};
  }
  return list;
}

QString LanesModel::chosenTitle() const {
  const season::LaneCount* count = chosenCount();
  if (count == nullptr) return {};
  const bool isNow = m_chosen + 1 == static_cast<int>(m_counts.size()) && dayOf(count->at) == m_desk->today();
  return isNow ? tr("Today") : tr("Practice of %1").arg(PlainWords::weekdayAndDay(dayOf(count->at)));
}

QVariantList LanesModel::figures() const {
  QVariantList list;
  const season::LaneCount* count = chosenCount();
  if (count == nullptr) return list;
  for (const LaneLook& look : kLooks) {
    list << QVariantMap{
        {QStringLiteral("name"), QString::fromUtf8(season::code(look.lane).data(), static_cast<qsizetype>(season::code(look.lane).size()))},
        {QStringLiteral("title"), DueWords::lane(look.lane)},
        {QStringLiteral("count"), QString::number(helmets(*count, look.lane))},
        {QStringLiteral("kind"), QLatin1String(look.kind)},
        {QStringLiteral("tone"), QLatin1String(look.tone)}};
  }
  list << QVariantMap{{QStringLiteral("name"), QStringLiteral("bare")},
                      {QStringLiteral("title"), tr("Athletes without a helmet")},
                      {QStringLiteral("count"), QString::number(count->bare)},
                      {QStringLiteral("kind"), QString()},
                      {QStringLiteral("tone"), QStringLiteral("quiet")}};
  return list;
}

QString LanesModel::rule() const {
  return tr(
      "Helmets with an athlete, by the lane of the Line they stood in when the last practice of each week began. Worked out from the "
      "log as it is known now: what was taken back since is left out.");
}

QString LanesModel::emptyWords() const {
  return m_counts.empty() && m_progress < 0 && m_trouble.isEmpty() ? tr("No helmet was with an athlete yet.") : QString();
}

}  // namespace snugline::models
