// SPDX-License-Identifier: Apache-2.0
#include "fresh_eyes.h"

#include <cstdio>

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QEventLoop>
#include <QMetaProperty>

#include "core/book/book.h"
#include "platform/system/file_keys.h"
#include "told_afresh.h"

namespace snugline::eyes {

using models::Desk;

namespace {

constexpr int kPatienceMs = 20'000;

QString rendered(const QVariant& value);

template <typename List>
QString renderedList(const List& list) {
  QStringList parts;
  for (const auto& each : list) parts << rendered(each);
  return QLatin1Char('[') + parts.join(QStringLiteral("; ")) + QLatin1Char(']');
}

// Anything that a model hands to a screen, as text: lists, maps and values with properties part by part.
QString rendered(const QVariant& value) {
  if (value.userType() == QMetaType::QVariantMap) {
    QStringList parts;
    const QVariantMap map = value.toMap();
    for (auto it = map.begin(); it != map.end(); ++it) parts << it.key() + QLatin1String(": ") + rendered(it.value());
    return QLatin1Char('{') + parts.join(QStringLiteral(", ")) + QLatin1Char('}');
  }
  if (value.metaType().flags().testFlag(QMetaType::IsGadget)) {
    const QMetaObject* kind = value.metaType().metaObject();
    QStringList parts;
    for (int i = 0; i < kind->propertyCount(); ++i)
      parts << QLatin1String(kind->property(i).name()) + QLatin1String(": ") + rendered(kind->property(i).readOnGadget(value.constData()));
    return QLatin1Char('{') + parts.join(QStringLiteral(", ")) + QLatin1Char('}');
  }
  if (value.userType() != QMetaType::QString && value.canConvert<QVariantList>()) return renderedList(value.value<QVariantList>());
  return value.toString();
}

// What only this glass knows: whom it was handed to, what is being typed, where a walk stands, what is still being read, and which entries
// are its own.
const QStringList kOwn{
    QStringLiteral("objectName"),      QStringLiteral("holder"),         QStringLiteral("holderDetail"), QStringLiteral("people"),
    QStringLiteral("trouble"),         QStringLiteral("refusal"),        QStringLiteral("isBusy"),       QStringLiteral("query"),
    QStringLiteral("matches"),         QStringLiteral("isWalking"),      QStringLiteral("walkRow"),      QStringLiteral("walkLeft"),
    QStringLiteral("walkWords"),       QStringLiteral("history"),        QStringLiteral("timeline"),     QStringLiteral("readings"),
    QStringLiteral("tapeAdvice"),      QStringLiteral("lineCheckWords"), QStringLiteral("candidates"),   QStringLiteral("undoWords"),
    QStringLiteral("candidateSearch"), QStringLiteral("clockWords"),     QStringLiteral("lastWords"),    QStringLiteral("doneWords")};

void compareProperties(const char* what, const QObject& shown, const QObject& fresh, QStringList& found) {
  for (int i = 0; i < shown.metaObject()->propertyCount(); ++i) {
    const QMetaProperty property = shown.metaObject()->property(i);
    if (property.metaType().flags().testFlag(QMetaType::PointerToQObject) || kOwn.contains(QLatin1String(property.name()))) continue;
    const QString here = rendered(property.read(&shown)), there = rendered(property.read(&fresh));
    if (here != there)
      found << QStringLiteral("%1, %2: shown \"%3\", afresh \"%4\"").arg(QLatin1String(what), QLatin1String(property.name()), here, there);
  }
}

QStringList rowsOf(const QAbstractListModel& list) {
  QStringList rows;
  const auto roles = list.roleNames();
  for (int i = 0; i < list.rowCount(); ++i) {
    QStringList parts;
    for (auto it = roles.begin(); it != roles.end(); ++it)
      parts << QString::fromUtf8(it.value()) + QLatin1String(": ") + rendered(list.data(list.index(i), it.key()));
    parts.sort();
    rows << parts.join(QStringLiteral(", "));
  }
  return rows;
}

void compareRows(const char* what, const QAbstractListModel& shown, const QAbstractListModel& fresh, QStringList& found) {
  const QStringList here = rowsOf(shown), there = rowsOf(fresh);
  for (qsizetype i = 0; i < std::max(here.size(), there.size()); ++i) {
    if (here.value(i) == there.value(i)) continue;
    found << QStringLiteral("%1, row %2: shown \"%3\", afresh \"%4\"")
                 .arg(QLatin1String(what), QString::number(i), here.value(i), there.value(i));
    return;  // the ones below it are moved by it
  }
}

// Lanes that were opened or closed here are so there too.
void openAlike(const models::LineModel& shown, models::LineModel& fresh) {
  const auto lanesOf = [](const models::LineModel& line) {
    QMap<QString, bool> lanes;
    for (int i = 0; i < line.rowCount(); ++i) {
      const QModelIndex at = line.index(i);
      if (line.data(at, models::LineModel::kindRole) != QLatin1String("row"))
        lanes.insert(line.data(at, models::LineModel::laneRole).toString(), line.data(at, models::LineModel::isOpenRole).toBool());
    }
    return lanes;
  };
  const QMap<QString, bool> here = lanesOf(shown), there = lanesOf(fresh);
  for (auto it = here.begin(); it != here.end(); ++it) {
    if (there.contains(it.key()) && there.value(it.key()) != it.value()) fresh.toggleLane(it.key());
  }
}

}  // namespace

bool until(const std::function<bool()>& isSo) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 10);
  }
  return true;
}

// Twice: what is done once a write is known may write again.
bool settle(Desk& desk) {
  for (int i = 0; i < 2; ++i) {
    QObject context;
    bool isThrough = false;
    desk.read([](book::Book&) { return Result<bool>(true); }, &context, [&isThrough](const Result<bool>&) { isThrough = true; });
    if (!until([&isThrough] { return isThrough; })) return false;
  }
  return true;
}

QString copyOf(Desk& desk, const QTemporaryDir& folder, const std::shared_ptr<MovingTime>& time) {
  const std::string backup = folder.filePath(QStringLiteral("copy.snugbackup")).toStdString();
  const QString copy = folder.filePath(QStringLiteral("copy.snugbook"));
  QObject context;
  std::optional<bool> isGood;
  desk.read(
      [backup](book::Book& book) -> Result<bool> {
        const auto made = book.backup(backup);
        if (!made) return tl::unexpected<Error>(made.error());
        return true;
      },
      &context, [&isGood](const Result<bool>& outcome) { isGood = outcome.has_value(); });
  MovingClock clock(time);
  platform::FileKeys keys(folder.filePath(QStringLiteral("keys")).toStdString());
  if (!until([&isGood] { return isGood.has_value(); }) || !*isGood || !book::Book::restore(backup, copy.toStdString(), keys, clock)) {
    std::fprintf(stderr, "The Book could not be copied to look at it afresh.\n");
    return {};
  }
  return copy;
}

QStringList differences(const Glass& shown, const Glass& fresh) {
  QStringList found;
  openAlike(*shown.line, *fresh.line);
  compareRows("Line", *shown.line, *fresh.line, found);
  compareProperties("Line", *shown.line, *fresh.line, found);
  compareProperties("Doors", *shown.doors, *fresh.doors, found);
  if (shown.athlete != nullptr && !shown.athlete->athleteId().isEmpty()) {
    fresh.athlete->open(shown.athlete->athleteId());
    compareProperties("Athlete", *shown.athlete, *fresh.athlete, found);
  }
  if (shown.units != nullptr) {
    fresh.units->setFilter(shown.units->filter());
    fresh.units->setSearch(shown.units->search());
    compareRows("Helmets", *shown.units, *fresh.units, found);
    compareProperties("Helmets", *shown.units, *fresh.units, found);
    if (!shown.units->page()->unitId().isEmpty()) {
      fresh.units->page()->open(shown.units->page()->unitId());
      compareProperties("Helmet", *shown.units->page(), *fresh.units->page(), found);
    }
  }
  return found;
}

QStringList untruths(const Glass& shown, const std::shared_ptr<MovingTime>& time) {
  shown.desk->askClock();  // it is asked every second; a test does not wait for that
  if (!settle(*shown.desk)) return {QStringLiteral("the Book never came to rest")};
  // What was touched on the weather's sheet ranks the board before it is noted; the Book cannot know it yet.
  if (shown.weather->draft()) return {};
  const QTemporaryDir folder;
  const QString copy = copyOf(*shown.desk, folder, time);
  if (copy.isEmpty()) return {QStringLiteral("no copy")};
  QStringList found = toldByProcess(shown, copy, folder.filePath(QStringLiteral("keys")), time->now());
  Desk desk([time] { return std::make_unique<MovingClock>(time); },
            [keys = folder.filePath(QStringLiteral("keys")).toStdString()] { return std::make_unique<platform::FileKeys>(keys); });
  models::WeatherModel weather(&desk, shown.choices);
  models::LineModel line(&desk, shown.choices, &weather);
  models::DoorsModel doors(&desk, shown.choices, &line);
  models::AthleteModel athlete(&desk, shown.choices, &weather);
  models::UnitsModel units(&desk, shown.choices);
  desk.open(copy, {});
  if (!until([&desk] { return desk.isOpen(); })) return {QStringLiteral("the copy does not open")};
  found << differences(shown, {&desk, shown.choices, &weather, &line, &doors, &athlete, &units});
  return found;
}

}  // namespace snugline::eyes
