// SPDX-License-Identifier: Apache-2.0
#include "line_model.h"

#include <algorithm>

#include "core/season/turn.h"
#include "drawn_values.h"

namespace snugline::models {

using season::DueRow;
using season::Lane;
using season::RowAction;

namespace {

constexpr int kMinuteMs = 60'000;
constexpr int kFoundShown = 6;
constexpr int kLineCheckFrom = 4;  // fewer are seen one by one as fast (ours)
constexpr std::array<Lane, 4> kLanes{Lane::doNotWear, Lane::beforePractice, Lane::weekly, Lane::nothingDue};

QString toneOf(Lane lane) {
  switch (lane) {
    case Lane::doNotWear:
      return QStringLiteral("stop");
    case Lane::beforePractice:
      return QStringLiteral("see");
    case Lane::weekly:
      return QStringLiteral("plain");
    case Lane::nothingDue:
      return QStringLiteral("quiet");
  }
  return {};
}

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
  }
  return {};
}

bool leadsToGuide(const DueRow& row) {
  switch (row.action) {
    case RowAction::firstFit:
    case RowAction::refit:
    case RowAction::look:
    case RowAction::resume:
      return true;
    case RowAction::none:
    case RowAction::chooseHelmet:
    case RowAction::athlete:
      return false;
  }
  return false;
}

QString laneCode(Lane lane) { return codeWord(season::code(lane)); }

}  // namespace

LineModel::LineModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent)
    : QAbstractListModel(parent), m_desk(desk), m_choices(choices), m_weather(weather) {
  connect(weather, &WeatherModel::weatherChanged, this, &LineModel::onWeather);
  connect(desk, &Desk::opened, this, &LineModel::build);
  connect(desk, &Desk::changed, this,
          [this](const std::vector<std::string>&, const std::vector<std::string>& athletes) { update(athletes); });
  connect(choices, &Choices::changed, this, [this] {
    if (!m_entries.empty()) emit dataChanged(index(0), index(rowCount() - 1));
    emit matchesChanged();
    emit walkChanged();
  });
  // Days turn and practices pass while the glass lies on the bench.
  m_minute.setInterval(kMinuteMs);
  connect(&m_minute, &QTimer::timeout, this, &LineModel::onMinute);
  m_minute.start();
  if (desk->isOpen()) build();
}

Speech LineModel::speech() const {
  return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort(), m_weather->now()};
}

void LineModel::build() {
  const Instant now = m_desk->now();
  m_builtFor = dayOf(now);
  m_practice = season::nextPractice(m_desk->views(), now);
  m_given = m_weather->draft().value_or(season::Conditions{});
  m_board.build(m_desk->views(), {now}, m_given);
  relist();
}

// Rows whose air it concerns are made anew; their words speak of the weather, so that all of them are shown anew.
void LineModel::onWeather() {
  if (!m_desk->isOpen()) return;
  m_given = m_weather->draft().value_or(season::Conditions{});
  m_board.weather(m_desk->views(), m_given);
  relist();
  if (!m_entries.empty()) emit dataChanged(index(0), index(rowCount() - 1), {reasonRole});
}

void LineModel::update(const std::vector<std::string>& athletes) {
  if (!m_desk->isOpen()) return;
  const Instant now = m_desk->now();
  if (dayOf(now) != m_builtFor || season::nextPractice(m_desk->views(), now) != m_practice) return build();
  m_board.update(m_desk->views(), athletes);
  relist();
}

void LineModel::onMinute() {
  if (!m_desk->isOpen()) return;
  const Instant now = m_desk->now();
  if (dayOf(now) != m_builtFor || season::nextPractice(m_desk->views(), now) != m_practice) build();
}

// Only the stretch of the list that differs is taken out and put in, so that the list keeps its place under the thumb.
void LineModel::relist() {
  std::vector<Entry> fresh;
  const auto counts = m_board.counts();
  const auto& rows = m_board.rows();
  auto row = rows.begin();
  for (const Lane lane : kLanes) {
    const int count = counts[static_cast<std::size_t>(lane)];
    if (!rows.empty()) fresh.push_back({true, lane, {}, count});
    for (; row != rows.end() && row->lane == lane; ++row) {
      if (!m_closed.contains(lane)) fresh.push_back({false, lane, *row, 0});
    }
  }
  const auto [oldHead, newHead] = std::mismatch(m_entries.begin(), m_entries.end(), fresh.begin(), fresh.end());
  const auto head = std::distance(m_entries.begin(), oldHead);
  const auto room = std::min(std::distance(oldHead, m_entries.end()), std::distance(newHead, fresh.end()));
  std::ptrdiff_t tail = 0;
  while (tail < room &&
         m_entries[m_entries.size() - 1 - static_cast<std::size_t>(tail)] == fresh[fresh.size() - 1 - static_cast<std::size_t>(tail)]) {
    ++tail;
  }
  const auto oldEnd = std::distance(m_entries.begin(), m_entries.end()) - tail;
  const auto newEnd = std::distance(fresh.begin(), fresh.end()) - tail;
  if (oldEnd > head) {
    beginRemoveRows({}, static_cast<int>(head), static_cast<int>(oldEnd - 1));
    m_entries.erase(m_entries.begin() + head, m_entries.begin() + oldEnd);
    endRemoveRows();
  }
  if (newEnd > head) {
    beginInsertRows({}, static_cast<int>(head), static_cast<int>(newEnd - 1));
    m_entries.insert(m_entries.begin() + head, fresh.begin() + head, fresh.begin() + newEnd);
    endInsertRows();
  }
  m_weather->setUnjudged(m_board.airUnknownCount());
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

QVariant LineModel::laneValue(const Entry& entry, int role) const {
  switch (role) {
    case titleRole:
      return tr("%1, %2", "a lane of the board, count").arg(DueWords::lane(entry.lane)).arg(entry.count);
    case isOpenRole:
      return !m_closed.contains(entry.lane);
    case reasonRole:
      return entry.count == 0 ? DueWords::laneEmpty(entry.lane) : QString();
    default:
      return rowValue({}, role);
  }
}

QVariant LineModel::rowValue(const DueRow& row, int role) const {
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
    case reasonRole:
      if (!row.reasons.empty()) return DueWords::reason(row.reasons.front(), speech());
      return row.athlete.empty() || row.dueFrom <= m_builtFor ? QString()
                                                              : tr("Next look %1").arg(PlainWords::dueDay(row.dueFrom, m_builtFor));
    case moreRole:
      return row.reasons.size() < 2 ? QString() : tr("and %n more", nullptr, static_cast<int>(row.reasons.size() - 1));
    case stripRole:
      return stripCodes(row.strip, row.words, row.wordFeels);
    case pointsRole:
      return pointCodes(row.points);
    case serialRole:
      return QString::fromStdString(row.serial);
    case actionRole:
      return DueWords::action(row.action);
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
      return entry.isLane ? QStringLiteral("lane") : QStringLiteral("row");
    case laneRole:
      return laneCode(entry.lane);
    case toneRole:
      return toneOf(entry.lane);
    default:
      return entry.isLane ? laneValue(entry, role) : rowValue(entry.row, role);
  }
}

QVariantMap LineModel::rowMap(const DueRow& row) const {
  QVariantMap map;
  const auto names = roleNames();
  for (auto it = names.begin(); it != names.end(); ++it) map.insert(QString::fromUtf8(it.value()), rowValue(row, it.key()));
  map.insert(QStringLiteral("kind"), QStringLiteral("row"));
  map.insert(QStringLiteral("lane"), laneCode(row.lane));
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

// Exact numbers first, then those that begin with what was typed.
QVariantList LineModel::matches() const {
  if (m_query.isEmpty()) return {};
  QVariantList exact, beginning;
  for (const DueRow& row : m_board.rows()) {
    const QString jersey = QString::fromStdString(row.jersey);
    if (jersey == m_query)
      exact << rowMap(row);
    else if (jersey.startsWith(m_query) && beginning.size() < kFoundShown)
      beginning << rowMap(row);
  }
  return (exact + beginning).mid(0, std::max<qsizetype>(kFoundShown, exact.size()));
}

void LineModel::toggleLane(const QString& lane) {
  for (const Lane known : kLanes) {
    if (laneCode(known) != lane) continue;
    if (!m_closed.erase(known)) m_closed.insert(known);
    const auto entry = std::find_if(m_entries.begin(), m_entries.end(), [&](const Entry& e) { return e.isLane && e.lane == known; });
    const int row = static_cast<int>(std::distance(m_entries.begin(), entry));
    relist();
    if (row < rowCount()) emit dataChanged(index(row), index(row));
  }
}

// The lane that a line is walked for: whoever is due before practice, else the weekly looks, else first fits.
std::vector<const DueRow*> LineModel::walkable() const {
  for (const Lane lane : {Lane::beforePractice, Lane::weekly, Lane::doNotWear}) {
    if (m_isWalking && lane != m_walkLane) continue;
    std::vector<const DueRow*> rows;
    for (const DueRow& row : m_board.rows()) {
      if (row.lane == lane && leadsToGuide(row) && !m_walked.contains(row.athlete)) rows.push_back(&row);
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
      return tr("%n first fit(s)", nullptr, count);
    case Lane::nothingDue:
      break;
  }
  return {};
}

std::vector<const DueRow*> LineModel::airRows() const {
  std::vector<const DueRow*> rows;
  for (const DueRow& row : m_board.rows()) {
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
  const auto& rows = m_board.rows();
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
