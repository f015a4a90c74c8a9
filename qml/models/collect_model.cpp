// SPDX-License-Identifier: Apache-2.0
// What the page of handing in says: counts, the last helmet, what is missing.
#include "qml/models/collect_model.h"

#include <algorithm>
#include <tuple>

#include "core/season/board.h"
#include "core/season/turn.h"
#include "qml/models/choices.h"
#include "qml/models/scan_reading.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

namespace {

constexpr qsizetype kRecentShown = 5;
constexpr qsizetype kMatchesShown = 6;

// What is open on it, in a word; a helmet that only waits to be put in service needs none.
QString openWords(const season::Views& views, const season::UnitRecord& unit, Day today) {
  const season::UnitStanding standing = season::standingOf(views, unit, today);
  const season::WhyNot* why = standing.offEveryHead();
  const bool isSaid = why != nullptr && why->bar != season::Bar::notInService && why->bar != season::Bar::pointUnchecked;
  return isSaid ? StandingWords::reason(*why, today) : QString();
}

}  // namespace

CollectModel::CollectModel(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_last(QStringLiteral("hand-in"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &CollectModel::changed);
  connect(&m_last, &LastAct::undone, this, [this] {
    m_lastUnit.clear();
    findGivers();
    emit changed();
  });
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_refusal = why;
    emit changed();
  });
  connect(desk, &Desk::opened, this, &CollectModel::changed);
  connect(desk, &Desk::changed, this, [this] {
    if (m_isOpen && !m_isBusy) findGivers();
    emit changed();
  });
  connect(choices, &Choices::changed, this, &CollectModel::changed);
}

const season::UnitRecord* CollectModel::unit(const std::string& id) const { return m_desk->views().unit(id); }

QString CollectModel::title() const {
  const auto& team = m_desk->views().team;
  return team ? tr("Season %1").arg(text(team->season)) : QString();
}

std::vector<const season::UnitRecord*> CollectModel::collectedUnits() const {
  std::vector<const season::UnitRecord*> units;
  const season::Views& views = m_desk->views();
  if (!views.team) return units;
  for (const auto& [id, helmet] : views.units) {
    if (season::isCollected(helmet, views.team->season)) units.push_back(&helmet);
  }
  std::sort(units.begin(), units.end(), [](const auto* a, const auto* b) {
    return std::tie(a->collected->stamp.order, a->id) > std::tie(b->collected->stamp.order, b->id);
  });
  return units;
}

std::string CollectModel::giverOf(const season::UnitRecord& helmet) const {
  if (!helmet.collected) return {};
  const auto it = m_givers.find(helmet.collected->stamp.fact);
  return it == m_givers.end() ? std::string() : it->second;
}

CollectModel::Counts CollectModel::counts() const {
  Counts counts;
  const season::TurnCount turn = season::turnCount(m_desk->views());
  counts.withAthletes = turn.withAthletes;
  counts.onShelf = turn.onShelf;
  for (const season::UnitRecord* helmet : collectedUnits()) ++(giverOf(*helmet).empty() ? counts.seen : counts.handedIn);
  return counts;
}

QString CollectModel::countWords() const {
  const Counts count = counts();
  const int all = count.handedIn + count.withAthletes;
  return all == 0 ? tr("No athlete has a helmet") : tr("%1 of %2 handed in").arg(count.handedIn).arg(all);
}

QString CollectModel::shelfWords() const {
  const Counts count = counts();
  const int all = count.seen + count.onShelf;
  return all == 0 ? QString() : tr("Shelf: %1 of %2 seen").arg(count.seen).arg(all);
}

double CollectModel::share() const {
  const Counts count = counts();
  const int all = count.handedIn + count.withAthletes + count.seen + count.onShelf;
  return all == 0 ? 0 : static_cast<double>(count.handedIn + count.seen) / all;
}

QString CollectModel::athleteWords(const std::string& id) const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(id);
  return athlete == nullptr ? QString() : athleteName(*athlete, m_choices->areNamesShort());
}

QString CollectModel::helmetWords(const season::UnitRecord& helmet) const {
  return tr("%1, %2", "serial, kind").arg(text(helmet.serial), kindOf(m_desk->views(), helmet));
}

QString CollectModel::cameWords(const season::UnitRecord& helmet, Came came) const {
  const std::string giver = giverOf(helmet);
  const QString whose = giver.empty() ? QString() : tr("It was with %1").arg(athleteWords(giver));
  switch (came) {
    case Came::fromAthlete:
    case Came::fromShelf:
      return whose.isEmpty() ? tr("From the shelf") : whose;
    case Came::wasLost:
      return whose.isEmpty() ? tr("It was lost and has come to light") : whose;
    case Came::wasBack:
      return tr("It is back: its points are to be seen again");
    case Came::isNew:
      return tr("Taken in by its tag: say its model and size at the Dock");
    case Came::already:
      return tr("In already since %1").arg(timeWords(helmet.collected->stamp.at, m_desk->today())) +
             (whose.isEmpty() ? QString() : QStringLiteral(". ") + whose);
  }
  return {};
}

QVariantMap CollectModel::lastReturn() const { return returnMap(m_lastReturn); }
QVariantMap CollectModel::last() const {
  const season::UnitRecord* helmet = unit(m_lastUnit);
  if (helmet == nullptr || !helmet->collected) return {};
  const bool isHeld = !helmet->holds.empty();
  return {{QStringLiteral("unit"), text(helmet->id)},
          {QStringLiteral("title"), helmetWords(*helmet)},
          {QStringLiteral("detail"), cameWords(*helmet, m_lastCame)},
          {QStringLiteral("note"), openWords(m_desk->views(), *helmet, m_desk->today())},
          {QStringLiteral("isAlready"), m_lastCame == Came::already},
          {QStringLiteral("isHeld"), isHeld}};
}

QVariantList CollectModel::recent() const {
  QVariantList list;
  for (const season::UnitRecord* helmet : collectedUnits()) {
    if (list.size() >= kRecentShown) break;
    if (helmet->id == m_lastUnit) continue;
    const QString held = openWords(m_desk->views(), *helmet, m_desk->today());
    list << QVariantMap{{QStringLiteral("unit"), text(helmet->id)},
                        {QStringLiteral("title"), helmetWords(*helmet)},
                        {QStringLiteral("detail"), held.isEmpty() ? cameWords(*helmet, Came::fromAthlete) : held},
                        {QStringLiteral("tone"), held.isEmpty() ? QStringLiteral("plain") : QStringLiteral("stop")}};
  }
  return list;
}

QString CollectModel::meant() const { return readableScan(m_meant); }

QString CollectModel::awayWords() const {
  const season::UnitRecord* helmet = unit(m_away);
  return helmet == nullptr ? QString()
                           : tr("%1 stands in the Book as away: %2. Is it back?")
                                 .arg(text(helmet->serial), placeWords(helmet->place, helmet->placeWords));
}

QString CollectModel::strayWords() const {
  return m_stray ? tr("%1 is not in the Book. It is put aside, and the line goes on.").arg(readableScan(m_askedScan)) : QString();
}

QString CollectModel::askedWords() const {
  return m_asked.empty() ? QString() : tr("%1 may mean these. Which one is it?").arg(readableScan(m_askedScan));
}

QVariantList CollectModel::asked() const {
  QVariantList list;
  for (const std::string& id : m_asked) {
    const season::UnitRecord* helmet = unit(id);
    if (helmet == nullptr) continue;
    list << QVariantMap{{QStringLiteral("unit"), text(id)},
                        {QStringLiteral("title"), helmetWords(*helmet)},
                        {QStringLiteral("detail"), unitStatus(m_desk->views(), *helmet, m_desk->today(),
                                                              m_choices->areNamesShort() ? Names::initials : Names::full)}};
  }
  return list;
}

QVariantList CollectModel::strays() const {
  QVariantList list;
  for (auto tag = m_strays.rbegin(); tag != m_strays.rend(); ++tag) list << QVariantMap{{QStringLiteral("tag"), readableScan(*tag)}};
  return list;
}

QVariantList CollectModel::missing() const {
  QVariantList list;
  for (const season::MissingUnit& each : season::missingUnits(m_desk->views())) {
    const QString held = openWords(m_desk->views(), *each.unit, m_desk->today());
    QString title = each.athlete == nullptr
                        ? text(each.unit->serial)
                        : PlainWords::name({m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()},
                                           each.athlete->family, each.athlete->given);
    QStringList detail{each.athlete == nullptr ? kindOf(m_desk->views(), *each.unit) : helmetWords(*each.unit)};
    if (each.athlete == nullptr && !each.unit->shelf.empty()) detail << text(each.unit->shelf);
    if (each.athlete != nullptr && !each.athlete->isOnRoster) detail << tr("off the roster");
    if (!held.isEmpty()) detail << held;
    list << QVariantMap{{QStringLiteral("unit"), text(each.unit->id)},
                        {QStringLiteral("athlete"), each.athlete == nullptr ? QString() : text(each.athlete->id)},
                        {QStringLiteral("number"), each.athlete == nullptr ? QString() : text(each.athlete->jersey)},
                        {QStringLiteral("serial"), text(each.unit->serial)},
                        {QStringLiteral("title"), title},
                        {QStringLiteral("detail"), detail.join(QStringLiteral(". "))},
                        {QStringLiteral("tone"), held.isEmpty() ? QStringLiteral("plain") : QStringLiteral("stop")},
                        {QStringLiteral("hasAthlete"), each.athlete != nullptr}};
  }
  return list;
}

int CollectModel::missingCount() const {
  const season::TurnCount count = season::turnCount(m_desk->views());
  return count.withAthletes + count.onShelf;
}

QString CollectModel::missingWords() const {
  const season::TurnCount count = season::turnCount(m_desk->views());
  const int all = count.withAthletes + count.onShelf;
  if (all == 0) return count.collected == 0 ? QString() : tr("None is missing");
  return tr("%n still missing", nullptr, all) +
         (count.withAthletes == 0 ? QString() : tr(", %n with athletes", nullptr, count.withAthletes));
}

QVariantList CollectModel::elsewhere() const {
  std::vector<const season::UnitRecord*> units;
  const season::Views& views = m_desk->views();
  for (const auto& [id, helmet] : views.units) {
    const bool isIn = views.team && season::isCollected(helmet, views.team->season);
    if (!season::isExpected(helmet) && !isIn && helmet.place != season::UnitPlace::retired) units.push_back(&helmet);
  }
  std::sort(units.begin(), units.end(),
            [](const auto* a, const auto* b) { return std::tie(a->place, a->serial, a->id) < std::tie(b->place, b->serial, b->id); });
  QVariantList list;
  for (const season::UnitRecord* helmet : units)
    list << QVariantMap{{QStringLiteral("unit"), text(helmet->id)},
                        {QStringLiteral("title"), helmetWords(*helmet)},
                        {QStringLiteral("detail"), placeWords(helmet->place, helmet->placeWords)}};
  return list;
}

void CollectModel::setQuery(const QString& digits) {
  if (m_query == digits) return;
  m_query = digits;
  emit changed();
}

// The number itself first, then those that begin with it; only who has a helmet.
QVariantList CollectModel::matches() const {
  std::vector<const season::AthleteRecord*> found;
  const std::string query = utf8(m_query);
  if (query.empty()) return {};
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    if (!athlete.units.empty() && athlete.jersey.starts_with(query)) found.push_back(&athlete);
  }
  std::sort(found.begin(), found.end(), [&](const auto* a, const auto* b) {
    if ((a->jersey == query) != (b->jersey == query)) return a->jersey == query;
    return a->jersey != b->jersey ? season::jerseyBefore(a->jersey, b->jersey) : a->id < b->id;
  });
  QVariantList list;
  for (const season::AthleteRecord* athlete : found) {
    for (const std::string& id : athlete->units) {
      const season::UnitRecord* helmet = unit(id);
      if (helmet == nullptr || list.size() >= kMatchesShown) continue;
      list << QVariantMap{
          {QStringLiteral("unit"), text(id)},
          {QStringLiteral("number"), text(athlete->jersey)},
          {QStringLiteral("title"), PlainWords::name({m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()},
                                                     athlete->family, athlete->given)},
          {QStringLiteral("detail"), helmetWords(*helmet)}};
    }
  }
  return list;
}

}  // namespace snugline::models
