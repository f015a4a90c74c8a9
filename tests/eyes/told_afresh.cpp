// SPDX-License-Identifier: Apache-2.0
#include "told_afresh.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMap>
#include <QProcess>
#include <QProcessEnvironment>

namespace snugline::eyes {

namespace {

constexpr int kPatienceMs = 30'000;

std::optional<QJsonObject> ask(const QStringList& arguments, const QString& keys, QStringList& found) {
  QProcess snug;
  QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
  surroundings.insert(QStringLiteral("SNUGLINE_KEYS"), keys);
  snug.setProcessEnvironment(surroundings);
  snug.start(QStringLiteral(SNUG_PROGRAM), arguments);
  if (!snug.waitForFinished(kPatienceMs) || snug.exitCode() != 0) {
    found << QStringLiteral("snug %1: %2").arg(arguments.join(QLatin1Char(' ')), QString::fromUtf8(snug.readAllStandardError()));
    return std::nullopt;
  }
  return QJsonDocument::fromJson(snug.readAllStandardOutput()).object();
}

// One row as every page must have it. Of an athlete to be seen now the board says nothing else, not even the helmet.
QString rowOf(const QString& lane, const QString& athlete, const QString& jersey) {
  return lane + QLatin1String(": ") + athlete + QLatin1String(" number ") + jersey;
}

// Rows shown are rows told, in their order; what is told and not shown lies in a lane or group that is closed.
void compareBoard(const models::LineModel& line, const QJsonArray& told, QStringList& found) {
  using Line = models::LineModel;
  struct Shown {
    QString words, helmet;
  };
  QList<Shown> shown;
  QMap<QString, bool> isOpen;
  for (int i = 0; i < line.rowCount(); ++i) {
    const auto text = [&](int role) { return line.data(line.index(i), role).toString(); };
    if (text(Line::kindRole) == QLatin1String("row"))
      shown << Shown{rowOf(text(Line::laneRole), text(Line::athleteRole), text(Line::jerseyRole)), text(Line::serialRole)};
    else
      isOpen.insert(text(Line::laneRole), line.data(line.index(i), Line::isOpenRole).toBool());
  }
  const bool isWeatherClosed = !isOpen.value(QStringLiteral("weather"), true);
  qsizetype at = 0;
  for (const QJsonValue& each : told) {
    const QJsonObject row = each.toObject();
    const auto text = [&row](const char* key) { return row.value(QLatin1String(key)).toString(); };
    const QString words = rowOf(text("lane"), text("athlete_id"), text("jersey"));
    const QJsonArray reasons = row.value(QLatin1String("reasons")).toArray();
    if (at < shown.size() && shown[at].words == words) {
      if (!shown[at].helmet.isEmpty() && shown[at].helmet != text("helmet"))
        found << QStringLiteral("Line: %1 in %2, and a fresh process says %3").arg(words, shown[at].helmet, text("helmet"));
      ++at;
    } else if (isOpen.value(text("lane"), true) && !(isWeatherClosed && reasons.first().toString() == QLatin1String("air-changed"))) {
      found << QStringLiteral("Line: a fresh process says \"%1\", shown is \"%2\"").arg(words, shown.value(at).words);
      return;
    }
  }
  for (; at < shown.size(); ++at)
    found << QStringLiteral("Line: \"%1\" is shown, and a fresh process says nothing of it").arg(shown[at].words);
}

QStringList textsOf(const QJsonValue& list) {
  QStringList texts;
  for (const QJsonValue& each : list.toArray()) texts << each.toString();
  return texts;
}

// The headline of a page and what stands under it, by their codes.
void comparePage(const QObject& page, const QStringList& whom, const QString& keys, QStringList& found) {
  const auto told = ask(whom, keys, found);
  if (!told) return;
  const auto compare = [&](const char* what, const QString& here) {
    const QJsonValue value = told->value(QLatin1String(what));
    const QString there = value.isArray() ? textsOf(value).join(QStringLiteral(", ")) : value.toString();
    if (here != there)
      found << QStringLiteral("%1 of %2: shown \"%3\", a fresh process says \"%4\"").arg(QLatin1String(what), whom.last(), here, there);
  };
  compare("standing", page.property("standing").toString());
  if (page.property("acts").userType() != QMetaType::QStringList) return;  // an athlete's page offers by its row
  compare("acts", page.property("acts").toStringList().join(QStringLiteral(", ")));
  QStringList reasons;
  for (const QVariant& reason : page.property("reasons").toList()) reasons << reason.toMap().value(QStringLiteral("code")).toString();
  compare("reasons", reasons.join(QStringLiteral(", ")));
}

}  // namespace

QStringList toldByProcess(const Glass& shown, const QString& book, const QString& keys, Instant now) {
  QStringList found;
  const QString at = QString::fromStdString(print(now));
  const auto due =
      ask({QStringLiteral("due"), QStringLiteral("--book"), book, QStringLiteral("--at"), at, QStringLiteral("--json")}, keys, found);
  if (!due) return found;
  const QJsonArray rows = due->value(QLatin1String("rows")).toArray();
  compareBoard(*shown.line, rows, found);
  QMap<QString, int> counts;
  for (const QJsonValue& each : rows) {
    const QJsonObject row = each.toObject();
    // With the athletic trainer: nobody has to see anything there.
    const bool isToSee = row.value(QLatin1String("reasons")).toArray().first().toString() != QLatin1String("with-athletic-trainer");
    counts[row.value(QLatin1String("lane")).toString()] += isToSee ? 1 : 0;
  }
  const auto compareCount = [&](const char* lane, int count) {
    if (counts.value(QLatin1String(lane)) != count)
      found << QStringLiteral("Doors: %1 under %2, and a fresh process counts %3")
                   .arg(QString::number(count), QLatin1String(lane), QString::number(counts.value(QLatin1String(lane))));
  };
  compareCount("do-not-wear", shown.line->doNotWear());
  compareCount("before-practice", shown.line->beforePractice());
  QStringList show{QStringLiteral("show"), QStringLiteral("--book"), book, QStringLiteral("--at"), at, QStringLiteral("--json")};
  if (shown.athlete != nullptr && !shown.athlete->jersey().isEmpty())
    comparePage(*shown.athlete, show + QStringList{QStringLiteral("--jersey"), shown.athlete->jersey()}, keys, found);
  if (shown.units != nullptr && !shown.units->page()->serial().isEmpty())
    comparePage(*shown.units->page(), show + QStringList{QStringLiteral("--helmet"), shown.units->page()->serial()}, keys, found);
  return found;
}

}  // namespace snugline::eyes
