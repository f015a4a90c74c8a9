// SPDX-License-Identifier: Apache-2.0
// The pictures of the turn of a season: helmets handed in, what is missing, closing, between two seasons, the next one, past ones.
#include <algorithm>

#include <QQuickItem>
#include <QQuickView>

#include "core/season/turn.h"
#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/season_model.h"
#include "qml/models/shell.h"

namespace snugline::demo {

void Gallery::seasonScreens() {
  models::SeasonModel& season = *m_composition.shell().season();
  models::CollectModel& collect = *season.collect();
  models::TurnModel& turn = *season.turn();
  const auto& views = m_composition.desk().views();
  const auto isQuiet = [&] { return !collect.isBusy() && !turn.isBusy(); };
  models::LockModel& lock = *m_composition.shell().lock();
  if (!lock.wall().isEmpty()) lock.enter(QStringLiteral("480219"));
  if (!until([&lock] { return lock.wall().isEmpty() && !lock.isBusy(); }, "an open glass")) return;
  showBook("collect");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("collect-none"));
  const auto missing = season::missingUnits(views);
  std::vector<QString> tags;
  for (const season::MissingUnit& each : missing) tags.push_back(QString::fromStdString(each.unit->serial));
  // All but five of those with athletes, and every second one of the shelf.
  const auto worn = static_cast<std::size_t>(
      std::count_if(missing.begin(), missing.end(), [](const season::MissingUnit& each) { return each.athlete != nullptr; }));
  for (std::size_t i = 0; i < tags.size(); ++i) {
    if (i + 5 >= worn && (i < worn || i % 2 == 0)) continue;
    collect.scan(tags[i]);
    if (i == 40) {
      until(isQuiet, "helmets handed in");
      shoot(QStringLiteral("collect"));
    }
  }
  until(isQuiet, "helmets handed in");
  collect.scan(tags.front());
  until(isQuiet, "a helmet seen again");
  shoot(QStringLiteral("collect-again"));
  collect.scan(QStringLiteral("ZZ-4711"));
  shoot(QStringLiteral("collect-stray"));
  collect.scan(tags[worn - 1]);
  until(isQuiet, "a helmet");
  press("collect-number");
  collect.setQuery(QString::fromStdString(missing[worn - 2].athlete->jersey));
  shoot(QStringLiteral("collect-number"));
  closeSheets();
  showBook("missing");
  shoot(QStringLiteral("missing"));
  press("missing0");
  shoot(QStringLiteral("missing-one"));
  closeSheets();
  showBook("turn");
  shoot(QStringLiteral("turn-open"));
  turn.close();
  until(isQuiet, "a closing");
  shoot(QStringLiteral("turn-closed"));
  go("doors");
  shoot(QStringLiteral("doors-between"));
  go("line");
  shoot(QStringLiteral("line-between"));
  showBook("next");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("next-empty"));
  turn.takeNameOffer();
  turn.takeDaysOffer();
  const QVariantList years = turn.years();
  if (!years.isEmpty()) turn.toggleYear(years.front().toMap().value(QStringLiteral("name")).toString().mid(5));
  shoot(QStringLiteral("next"));
  scrollTo("next-carried");
  shoot(QStringLiteral("next-carried"));
  turn.setDays(turn.end(), turn.start());
  turn.setName(QStringLiteral("2026"));
  shoot(QStringLiteral("next-refused"));
  showBook("past");
  until([&] { return season.past()->progress() < 0; }, "past seasons");
  shoot(QStringLiteral("past"));
  if (season.past()->seasons().isEmpty()) return;
  season.past()->choose(season.past()->seasons().front().toMap().value(QStringLiteral("name")).toString());
  auto* screen = m_composition.view().rootObject()->property("screenItem").value<QQuickItem*>();
  QMetaObject::invokeMethod(screen, "push", Q_ARG(QString, QStringLiteral("past-season")), Q_ARG(QVariant, QVariantMap()));
  shoot(QStringLiteral("past-season"));
  scrollTo("past-pair0");
  shoot(QStringLiteral("past-season-pairs"));
}

}  // namespace snugline::demo
