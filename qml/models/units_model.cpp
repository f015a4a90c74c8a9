// SPDX-License-Identifier: Apache-2.0
#include "qml/models/units_model.h"

#include <algorithm>
#include <array>

#include <QVariantMap>

#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/drawn_values.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

namespace {
constexpr std::array kFilters{UnitsModel::Filter::All,   UnitsModel::Filter::InService,    UnitsModel::Filter::OnHold,
                              UnitsModel::Filter::Shelf, UnitsModel::Filter::WithAthletes, UnitsModel::Filter::Lapsing};

// Lapsed, not known, or good no longer than the season lasts.
bool isLapsing(const season::Views& views, const season::UnitStanding& standing) {
  const bool isBad = std::any_of(standing.reasons.begin(), standing.reasons.end(), [](const auto& why) { return isLabelBar(why.bar); });
  return isBad || (standing.lastGood && views.team && views.team->seasonEnd && standing.lastGood->first < *views.team->seasonEnd);
}

bool matches(UnitsModel::Filter filter, const season::Views& views, const season::UnitStanding& standing) {
  const bool isHere = standing.where == season::Where::withUs || standing.where == season::Where::withAthlete;
  switch (filter) {
    case UnitsModel::Filter::All:
      return true;
    case UnitsModel::Filter::InService:
      return standing.state == season::UnitState::inService;
    case UnitsModel::Filter::OnHold:
      return standing.state == season::UnitState::onHold || standing.state == season::UnitState::doNotWear;
    case UnitsModel::Filter::Shelf:
      return standing.where == season::Where::withUs && standing.unit->athletes.empty();
    case UnitsModel::Filter::WithAthletes:
      return standing.where == season::Where::withAthlete || (isHere && !standing.unit->athletes.empty());
    case UnitsModel::Filter::Lapsing:
      return isHere && isLapsing(views, standing);
  }
  return true;
}

QString wearerOf(const season::Views& views, const season::UnitRecord& unit, bool areNamesShort) {
  if (unit.athletes.empty()) return {};
  const season::AthleteRecord* wearer = views.athlete(unit.athletes.front());
  return wearer == nullptr ? QString() : athleteName(*wearer, areNamesShort);
}
}  // namespace

UnitsModel::UnitsModel(Desk* desk, const Choices* choices, QObject* parent)
    : QAbstractListModel(parent),
      m_desk(desk),
      m_choices(choices),
      m_page(desk, choices),
      m_air(desk, choices),
      m_sheets(desk, choices),
      m_notices(desk, choices) {
  connect(desk, &Desk::opened, this, &UnitsModel::list);
  connect(desk, &Desk::changed, this, &UnitsModel::list);
  connect(desk, &Desk::timeTurned, this, [this] {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1));
  });
  connect(choices, &Choices::changed, this, &UnitsModel::list);
  list();
}

int UnitsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant UnitsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() < 0 || index.row() >= count()) return {};
  const season::Views& views = m_desk->views();
  const season::UnitRecord* unit = views.unit(m_rows[static_cast<std::size_t>(index.row())]);
  if (unit == nullptr) return {};
  const season::UnitStanding standing = season::standingOf(views, *unit, m_desk->today());
  switch (static_cast<Role>(role)) {
    case UnitIdRole:
      return text(unit->id);
    case SerialRole:
      return text(unit->serial);
    case KindRole:
      return kindOf(views, *unit);
    case StatusRole:
      return StandingWords::headline(standing, m_choices->areNamesShort() ? Names::initials : Names::full, m_desk->today());
    case PointsRole:
      return pointCodes(standing.points);
    case ToneRole:
      return StandingWords::tone(standing);
    case StandingRole:
      return codeWord(season::code(standing.state));
  }
  return {};
}

QHash<int, QByteArray> UnitsModel::roleNames() const {
  return {{UnitIdRole, "unitId"}, {SerialRole, "serial"},     {KindRole, "kind"},        {StatusRole, "status"},
          {PointsRole, "points"}, {ToneRole, "standingTone"}, {StandingRole, "standing"}};
}

QVariantList UnitsModel::filters() const {
  const auto name = [](Filter filter) {
    switch (filter) {
      case Filter::All:
        return tr("All");
      case Filter::InService:
        return tr("In service");
      case Filter::OnHold:
        return tr("On hold");
      case Filter::Shelf:
        return tr("On the shelf");
      case Filter::WithAthletes:
        return tr("With athletes");
      case Filter::Lapsing:
        return tr("Label lapses");
    }
    return QString();
  };
  std::array<int, kFilters.size()> counts{};
  const season::Views& views = m_desk->views();
  const season::Standings standings(views, m_desk->today());
  for (const auto& [id, unit] : views.units) {
    const season::UnitStanding standing = standings.of(unit);
    for (std::size_t i = 0; i < kFilters.size(); ++i) counts[i] += matches(kFilters[i], views, standing) ? 1 : 0;
  }
  QVariantList list;
  for (std::size_t i = 0; i < kFilters.size(); ++i) {
    list.append(QVariantMap{{QStringLiteral("filter"), static_cast<int>(kFilters[i])},
                            {QStringLiteral("name"), name(kFilters[i])},
                            {QStringLiteral("count"), counts[i]}});
  }
  return list;
}

void UnitsModel::setFilter(Filter filter) {
  if (m_filter == filter) return;
  m_filter = filter;
  list();
}

void UnitsModel::setSearch(const QString& search) {
  if (m_search == search) return;
  m_search = search;
  list();
}

void UnitsModel::list() {
  const season::Views& views = m_desk->views();
  const season::Standings standings(views, m_desk->isOpen() ? m_desk->today() : Day{});
  const QString wanted = m_search.trimmed();
  std::vector<std::pair<std::string, std::string>> found;  // serial, id
  for (const auto& [id, unit] : views.units) {
    if (!matches(m_filter, views, standings.of(unit))) continue;
    const bool isWanted = wanted.isEmpty() || text(unit.serial).contains(wanted, Qt::CaseInsensitive) ||
                          wearerOf(views, unit, false).contains(wanted, Qt::CaseInsensitive);
    if (isWanted) found.emplace_back(unit.serial, id);
  }
  std::sort(found.begin(), found.end());
  std::vector<std::string> rows;
  rows.reserve(found.size());
  for (auto& entry : found) rows.push_back(std::move(entry.second));
  if (rows == m_rows) {  // the same rows: only their words may have changed
    if (!m_rows.empty()) emit dataChanged(index(0), index(count() - 1));
  } else {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
  }
  emit listed();
}

}  // namespace snugline::models
