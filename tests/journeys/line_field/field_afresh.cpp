// SPDX-License-Identifier: Apache-2.0
// A whole fresh app on a copy of the field's Book, held against the one that was walked: its models, and what its pages say.
#include <algorithm>
#include <cstdio>

#include <QQuickItem>
#include <QQuickView>

#include "field.h"
#include "platform/system/file_keys.h"
#include "qml/models/choices.h"
#include "qml/models/shell.h"

namespace snugline::field {

namespace {

void textsIn(const QQuickItem* item, QStringList& texts) {
  if (!item->isVisible()) return;
  const QString text = item->property("text").toString();
  if (!text.isEmpty()) texts << text;
  for (const QQuickItem* child : item->childItems()) textsIn(child, texts);
}

// What the page says once it is drawn.
QStringList textsOn(app::Composition& app, const char* screen) {
  QQuickItem* main = app.view().rootObject();
  QMetaObject::invokeMethod(main, "home", Q_ARG(QString, QLatin1String(screen)));
  app.view().grabWindow();
  QStringList texts;
  textsIn(main, texts);
  texts.sort();
  return texts;
}

}  // namespace

// Where codes are in use a fresh app is locked: then its models alone are held against these.
bool Field::isTrueForAFreshApp() {
  if (!eyes::settle(m_app->desk()) || m_app->shell().weather()->draft()) return true;
  const QTemporaryDir folder;
  const QString copy = eyes::copyOf(m_app->desk(), folder, m_time);
  app::Edges edges{[time = m_time] { return std::make_unique<eyes::MovingClock>(time); },
                   [keys = folder.filePath(QStringLiteral("keys")).toStdString()] { return std::make_unique<platform::FileKeys>(keys); }};
  app::Places places;
  places.book = copy;
  places.ifMissing.name = "Nobody";
  app::Composition fresh(std::move(edges), places);
  const models::Choices& mine = m_app->choices();
  fresh.choices().setMotionReduced(true);
  fresh.choices().setUnits(mine.units());
  fresh.choices().setNamesShort(mine.areNamesShort());
  fresh.choices().setTextPercent(mine.textPercent());
  fresh.choices().setLanguage(mine.language());
  fresh.choices().setSayLanguage(mine.sayLanguage());
  fresh.load();
  fresh.view().resize(m_app->view().size());
  fresh.view().show();
  models::Shell& shell = fresh.shell();
  QStringList found;
  if (!until([&shell] { return shell.isOpen(); })) found << QStringLiteral("a fresh app does not open the copy");
  if (found.isEmpty())
    found << eyes::differences(
        glass(), {&fresh.desk(), &fresh.choices(), shell.weather(), shell.line(), shell.doors(), shell.athlete(), shell.units()});
  const bool isOpenHere = m_app->shell().lock()->wall().isEmpty() && shell.lock()->wall().isEmpty() && shell.startScreen() != "first";
  if (found.isEmpty() && isOpenHere && m_app->desk().person().empty() == fresh.desk().person().empty()) {
    for (const char* screen : {"doors", "line"}) {
      const QStringList here = textsOn(*m_app, screen), there = textsOn(fresh, screen);
      if (here != there)
        found << QStringLiteral("%1 says \"%2\", in a fresh app \"%3\"")
                     .arg(QLatin1String(screen), here.join(QStringLiteral(" | ")), there.join(QStringLiteral(" | ")));
    }
  }
  for (const QString& each : found) std::fprintf(stderr, "Not true: %s\n", qPrintable(each));
  m_untruths += static_cast<int>(found.size());
  return found.isEmpty();
}

}  // namespace snugline::field
