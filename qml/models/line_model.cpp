// SPDX-License-Identifier: Apache-2.0
#include "line_model.h"

#include <algorithm>
#include <unordered_map>
#include <utility>

#include "drawn_values.h"

namespace snugline::models {

using season::DueRow;
using season::Lane;
using season::RowAction;

namespace {

constexpr auto kWeather = "weather";
constexpr std::array<Lane, season::kLaneCount> kLanes{Lane::doNotWear, Lane::beforePractice, Lane::noHelmet, Lane::weekly,
                                                      Lane::nothingDue};

QString actionCode(RowAction action) {
  switch (action) {
    case RowAction::none:
      return {};
    case RowAction::firstFit:
      return QStringLiteral("first");
    case RowAction::refit:
      return QStringLiteral("refit");
    case RowAction::look:
      return QStringLiteral("look");
    case RowAction::resume:
      return QStringLiteral("resume");
    case RowAction::chooseHelmet:
      return QStringLiteral("choose");
    case RowAction::athlete:
      return QStringLiteral("athlete");
    case RowAction::close:
      return QStringLiteral("close");
  }
  return {};
}

QString laneCode(Lane lane) { return codeWord(season::code(lane)); }
std::string headOf(Lane lane) { return "lane-" + std::string(season::code(lane)); }

// What a row always says: its first reason, and every report and what is graver than one. Of an athlete to be seen now, or with the
// athletic trainer, nothing but that and a helmet that must come out of their hands.
bool isSaid(const DueRow& row, std::size_t i) {
  const season::Grade most = row.grade <= season::Grade::withTrainer ? season::Grade::broke : season::Grade::report;
  return i == 0 || row.reasons[i].grade <= most;
}
bool isCounted(const DueRow& row, std::size_t i) { return row.grade > season::Grade::withTrainer && !isSaid(row, i); }

}  // namespace

QString toneOf(Lane lane) {
  switch (lane) {
    case Lane::doNotWear:
      return QStringLiteral("stop");
    case Lane::beforePractice:
      return QStringLiteral("see");
    case Lane::noHelmet:
    case Lane::weekly:
      return QStringLiteral("plain");
    case Lane::nothingDue:
      return QStringLiteral("quiet");
  }
  return {};
}

LineModel::LineModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent)
    : QAbstractListModel(parent), m_desk(desk), m_choices(choices), m_weather(weather) {
  m_closed = {headOf(Lane::nothingDue), headOf(Lane::noHelmet), kWeather};
  connect(weather, &WeatherModel::weatherChanged, this, &LineModel::onWeather);
  connect(desk, &Desk::opened, this, &LineModel::build);
  connect(desk, &Desk::changed, this, &LineModel::build);
  connect(desk, &Desk::timeTurned, this, &LineModel::build);
  connect(choices, &Choices::changed, this, [this] {
    if (!m_entries.empty()) emit dataChanged(index(0), index(rowCount() - 1));
    emit matchesChanged();
    emit walkChanged();
  });
  if (desk->isOpen()) build();
}

Speech LineModel::speech() const {
  return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort(), m_weather->now()};
}

void LineModel::build() {
  if (!m_desk->isOpen()) return;
  const Instant now = m_desk->now();
  const bool isOtherDay = std::exchange(m_builtFor, dayOf(now)) != dayOf(now);
  m_practice = season::nextPractice(m_desk->views(), now);
  // What was touched on the chip and is not noted yet counts at once.
  const season::Board before =
      std::exchange(m_board, season::boardOf(m_desk->views(), {now}, m_weather->draft().value_or(season::Conditions{})));
  relist();
  if (isOtherDay && !m_entries.empty()) emit dataChanged(index(0), index(rowCount() - 1));  // words say "today"
}

// Words speak of the weather, so that all of them are shown anew.
void LineModel::onWeather() {
  build();
  if (!m_entries.empty()) emit dataChanged(index(0), index(rowCount() - 1), {reasonRole});
}

std::vector<LineModel::Entry> LineModel::entriesOf(const season::Board& board) const {
  std::vector<Entry> entries;
  auto row = board.rows.begin();
  for (const Lane lane : kLanes) {
    const int count = board.counts[static_cast<std::size_t>(lane)];
    const auto head = [&](std::string id, int of) {
      const bool isOpen = !m_closed.contains(id);
      entries.push_back({std::move(id), lane, nullptr, of, isOpen});
      return isOpen;
    };
    // A lane that most teams never need stands there only when somebody is in it.
    if (board.rows.empty() || (lane == Lane::noHelmet && count == 0)) continue;
    bool isOpen = head(headOf(lane), count);
    const int folded = isOpen && lane == Lane::beforePractice ? board.foldedCount : 0;
    for (int i = 0; i < count; ++i, ++row) {
      if (folded > 0 && i == count - folded) isOpen = head(kWeather, folded);
      if (isOpen) entries.push_back({row->athlete, lane, &*row, 0, true});
    }
  }
  return entries;
}

// The old list becomes the new one: who is gone is taken out, who moved is moved, who came is put in, and what differs is told.
void LineModel::relist() {
  const std::vector<Entry> fresh = entriesOf(m_board);
  std::unordered_map<std::string, int> places;
  for (std::size_t i = 0; i < fresh.size(); ++i) places.emplace(fresh[i].id, static_cast<int>(i));
  for (int i = rowCount() - 1; i >= 0; --i) {
    if (places.contains(m_entries[static_cast<std::size_t>(i)].id)) continue;
    beginRemoveRows({}, i, i);
    m_entries.erase(m_entries.begin() + i);
    endRemoveRows();
  }
  const auto moveEntry = [this](int from, int to) {
    beginMoveRows({}, from, from, {}, to > from ? to + 1 : to);
    Entry moved = std::move(m_entries[static_cast<std::size_t>(from)]);
    m_entries.erase(m_entries.begin() + from);
    m_entries.insert(m_entries.begin() + to, std::move(moved));
    endMoveRows();
  };
  for (int i = 0; i < static_cast<int>(fresh.size()); ++i) {
    const Entry& wanted = fresh[static_cast<std::size_t>(i)];
    const auto here = m_entries.begin() + i;
    const auto there = std::find_if(here, m_entries.end(), [&](const Entry& entry) { return entry.id == wanted.id; });
    if (there == m_entries.end()) {
      beginInsertRows({}, i, i);
      m_entries.insert(here, wanted);
      endInsertRows();
      continue;
    }
    // One that sinks leaves all others where they are.
    if (there == here + 1)
      moveEntry(i, std::min(places.at(here->id), rowCount() - 1));
    else if (there != here)
      moveEntry(static_cast<int>(there - m_entries.begin()), i);
    Entry& entry = m_entries[static_cast<std::size_t>(i)];
    const bool isSame = entry.lane == wanted.lane && entry.count == wanted.count && entry.isOpen == wanted.isOpen &&
                        (entry.row == wanted.row || (entry.row != nullptr && wanted.row != nullptr && *entry.row == *wanted.row));
    entry = wanted;
    if (!isSame) emit dataChanged(index(i), index(i));
  }
  m_weather->setUnjudged(m_board.airUnknown);
  emit boardChanged();
  emit matchesChanged();
  emit walkChanged();
}

int LineModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_entries.size()); }

QHash<int, QByteArray> LineModel::roleNames() const {
  return {
      {kindRole, "kind"},         {laneRole, "lane"},     {toneRole, "tone"},     {titleRole, "title"},   {isOpenRole, "isOpen"},
      {athleteRole, "athleteId"}, {jerseyRole, "jersey"}, {nameRole, "name"},     {reasonRole, "reason"}, {moreRole, "more"},
      {stripRole, "strip"},       {pointsRole, "points"}, {serialRole, "serial"}, {actionRole, "action"}, {actionCodeRole, "actionCode"}};
}

QVariant LineModel::headValue(const Entry& entry, int role) const {
  const bool isGroup = entry.id == kWeather;
  switch (role) {
    case titleRole:
      return isGroup ? tr("%n because of the weather alone", nullptr, entry.count)
                     : tr("%1, %2", "a lane of the board, count").arg(DueWords::lane(entry.lane)).arg(entry.count);
    case isOpenRole:
      return entry.isOpen;
    case reasonRole:
      return entry.count == 0 ? DueWords::laneEmpty(entry.lane) : QString();
    default:
      return rowValue({}, role);
  }
}

QVariant LineModel::rowValue(const DueRow& row, int role) const {
  const auto count = static_cast<int>(row.reasons.size());
  switch (role) {
    case titleRole:
      return QString();
    case isOpenRole:
      return true;
    case athleteRole:
      return QString::fromStdString(row.athlete);
    case jerseyRole:
      return QString::fromStdString(row.jersey);
    case nameRole:
      return PlainWords::name(speech(), row.family, row.given);
    case reasonRole: {
      QStringList said;
      for (int i = 0; i < count; ++i)
        if (isSaid(row, static_cast<std::size_t>(i))) said << DueWords::reason(row.reasons[static_cast<std::size_t>(i)], speech());
      if (!said.isEmpty()) return said.join(QStringLiteral(". "));
      return row.athlete.empty() || row.dueFrom <= m_builtFor ? QString()
                                                              : tr("Next look %1").arg(PlainWords::dueDay(row.dueFrom, m_builtFor));
    }
    case moreRole: {
      int more = 0;
      for (int i = 0; i < count; ++i) more += isCounted(row, static_cast<std::size_t>(i)) ? 1 : 0;
      return more == 0 ? QString() : tr("and %n more", nullptr, more);
    }
    case stripRole:
      return stripCodes(row.strip, row.words, row.wordFeels);
    case pointsRole:
      return pointCodes(row.points);
    case serialRole:  // without it no strip: of an athlete to be seen now the board says nothing else
      return row.reasons.empty() || row.grade > season::Grade::withTrainer ? QString::fromStdString(row.serial) : QString();
    case actionRole:
      return DueWords::action(row);
    case actionCodeRole:
      return actionCode(row.action);
    default:
      return {};
  }
}

QVariant LineModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Entry& entry = m_entries[static_cast<std::size_t>(index.row())];
  switch (role) {
    case kindRole:
      return entry.row == nullptr ? QStringLiteral("lane") : QStringLiteral("row");
    case laneRole:
      return entry.id == kWeather ? QString::fromLatin1(kWeather) : laneCode(entry.lane);
    case toneRole:
      return toneOf(entry.lane);
    default:
      return entry.row == nullptr ? headValue(entry, role) : rowValue(*entry.row, role);
  }
}

void LineModel::toggleLane(const QString& lane) {
  const std::string id = lane == QLatin1String(kWeather) ? kWeather : "lane-" + lane.toStdString();
  if (!m_closed.erase(id)) m_closed.insert(id);
  relist();
}

void LineModel::keepPlace(int entry, double beyond) {
  const bool isThere = entry >= 0 && entry < rowCount();
  m_kept = isThere ? m_entries[static_cast<std::size_t>(entry)].id : std::string();
  m_keptAt = isThere ? entry : -1;
  m_keptLane = isThere ? m_entries[static_cast<std::size_t>(entry)].lane : Lane::nothingDue;
  m_keptBeyond = isThere ? beyond : 0;
}

// Who stood there may be gone from the lane; then whoever took the place.
int LineModel::keptEntry() const {
  const auto kept = std::find_if(m_entries.begin(), m_entries.end(),
                                 [this](const Entry& entry) { return entry.id == m_kept && entry.lane == m_keptLane; });
  return kept != m_entries.end() ? static_cast<int>(kept - m_entries.begin()) : std::min(m_keptAt, rowCount() - 1);
}

}  // namespace snugline::models
