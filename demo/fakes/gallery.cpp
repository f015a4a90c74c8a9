// SPDX-License-Identifier: Apache-2.0
#include "demo/fakes/gallery.h"

#include <algorithm>
#include <cstdio>
#include <functional>

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QImage>
#include <QQuickItem>
#include <QQuickView>

#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/choices.h"
#include "qml/models/season_model.h"
#include "qml/models/shell.h"

namespace snugline::demo {

namespace {

constexpr int kPatienceMs = 20'000;
constexpr int kSettleRounds = 12;

}  // namespace

bool Gallery::until(const std::function<bool()>& isSo, const char* what) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) {
      std::fprintf(stderr, "Gallery: waited in vain for %s.\n", what);
      return m_isGood = false;
    }
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
  }
  return true;
}

void Gallery::settle() {
  for (int i = 0; i < kSettleRounds; ++i) QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
}

// The screen was asked for, made, and stands in the window.
bool Gallery::isShown(const QString& screen) {
  const QQuickItem* root = m_composition.view().rootObject();
  const auto* item = root->property("screenItem").value<QQuickItem*>();
  return root->property("screen").toString() == screen && item != nullptr && item->isVisible() && item->width() > 0 && item->height() > 0;
}

void Gallery::go(const char* screen, const QString& what) {
  closeSheets();
  m_screen = QLatin1String(screen);
  QMetaObject::invokeMethod(m_composition.view().rootObject(), "home", Q_ARG(QString, QStringLiteral("doors")));
  QMetaObject::invokeMethod(m_composition.view().rootObject(), "go", Q_ARG(QString, QLatin1String(screen)), Q_ARG(QString, what),
                            Q_ARG(bool, false));
  settle();
}

void Gallery::shoot(const QString& name) {
  settle();
  if (name.startsWith(QLatin1String("verdict"))) m_screen = QStringLiteral("verdict");
  if (!isShown(m_screen)) {
    std::fprintf(stderr, "Gallery: the screen \"%s\" is not shown, so there is no picture %s.\n", qPrintable(m_screen), qPrintable(name));
    m_isGood = false;
    return;
  }
  const QString file =
      QStringLiteral("%1x%2-%3-%4.png").arg(m_size.width()).arg(m_size.height()).arg(++m_count, 2, 10, QLatin1Char('0')).arg(name);
  if (!m_composition.view().grabWindow().save(m_folder.filePath(file))) {
    std::fprintf(stderr, "Gallery: cannot write %s.\n", qPrintable(m_folder.filePath(file)));
    m_isGood = false;
  }
}

QString Gallery::athleteWith(const std::function<bool(const season::DueRow&)>& isWanted) const {
  for (const season::DueRow& row : m_composition.shell().line()->board().rows) {
    if (isWanted(row)) return QString::fromStdString(row.athlete);
  }
  return {};
}

void Gallery::answer(const char* name) {
  guide().answer(QLatin1String(name));
  until([this] { return !guide().isBusy(); }, name);
  settle();
}

void Gallery::lineScreens() {
  go("doors");
  shoot(QStringLiteral("doors"));
  go("line");
  shoot(QStringLiteral("line"));
  go("jersey");
  m_composition.shell().line()->setQuery(QStringLiteral("1"));
  shoot(QStringLiteral("jersey"));
  m_composition.shell().line()->startWalk();
  go("turn");
  shoot(QStringLiteral("turn"));
  go("athlete", athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::beforePractice && row.reasons.size() > 1; }));
  shoot(QStringLiteral("athlete"));
  go("athlete", athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::doNotWear; }));
  shoot(QStringLiteral("athlete-do-not-wear"));
  const QString taped = athleteWith([](const season::DueRow& row) { return row.action == season::RowAction::chooseHelmet; });
  go("tape", taped);
  shoot(QStringLiteral("tape"));
  go("swap", taped);
  shoot(QStringLiteral("swap"));
  go("people");
  shoot(QStringLiteral("people"));
}

bool Gallery::begin(season::RowAction action, const char* kind) {
  const QString athlete = athleteWith([action](const season::DueRow& row) {
    return row.action == action && (action != season::RowAction::look || row.lane == season::Lane::beforePractice);  // nothing broken
  });
  if (athlete.isEmpty()) {
    std::fprintf(stderr, "Gallery: nobody on the demo's board is due for a check of the kind \"%s\".\n", kind);
    return m_isGood = false;
  }
  guide().start(athlete, QLatin1String(kind));
  if (!until([this] { return !guide().isBusy(); }, "a check")) return false;
  go("guide");
  return true;
}

void Gallery::fitScreens() {
  if (!begin(season::RowAction::firstFit, "first")) return;
  shoot(QStringLiteral("fit-hair"));
  answer("wet");
  if (guide().stage() == QLatin1String("fitted")) {
    shoot(QStringLiteral("fit-starting-air"));
    guide().choose(guide().choices().first().toMap().value(QStringLiteral("name")).toString());
    if (guide().stage() == QLatin1String("reading")) {
      shoot(QStringLiteral("fit-gauge"));
      guide().stepEntry(1);
      shoot(QStringLiteral("fit-gauge-read"));
      answer("record");
      shoot(QStringLiteral("fit-gauge-next"));
      if (guide().stage() == QLatin1String("reading")) answer("list");
      shoot(QStringLiteral("fit-starting-air-read"));
    }
    for (const QVariant& place : guide().choices()) {
      const QString name = place.toMap().value(QStringLiteral("name")).toString();
      if (!name.startsWith(QLatin1String("pad-"))) continue;
      guide().choose(name);
      shoot(QStringLiteral("fit-pad"));
      guide().stepBack();
      break;
    }
    answer("set");
  }
  shoot(QStringLiteral("fit-brow"));
  guide().moveGap(38.0);
  shoot(QStringLiteral("fit-brow-dragged"));
  answer("gap");
  shoot(QStringLiteral("fit-brow-seat-again"));
  answer("over");
  shoot(QStringLiteral("fit-advice"));
  if (guide().canReadGauge()) {
    guide().openGauge();
    guide().typeEntry(QStringLiteral("2.5"));
    shoot(QStringLiteral("fit-advice-gauge"));
  }
  answer(guide().answers().size() > 1 ? "pumps-2" : "done");
  guide().readGauge();
  if (guide().stage() == QLatin1String("gauge-port")) {
    shoot(QStringLiteral("gauge-port"));
    guide().choose(guide().choices().first().toMap().value(QStringLiteral("name")).toString());
    guide().typeEntry(QStringLiteral("2.5"));
    shoot(QStringLiteral("gauge"));
    guide().stepBack();
    guide().stepBack();
    guide().stepBack();
  }
  answer("snug");
  answer("snug");
  shoot(QStringLiteral("fit-nape"));
  answer("snug");
  shoot(QStringLiteral("fit-chin"));
  answer("snug");
  shoot(QStringLiteral("fit-straps"));
  answer("snug");
  shoot(QStringLiteral("fit-jaw"));
  answer("over");
  shoot(QStringLiteral("fit-jaw-side"));
  guide().stepBack();
  guide().openStep(QStringLiteral("hold"));
  shoot(QStringLiteral("fit-hold"));
  guide().openStep(QStringLiteral("chin"));
  guide().openBroken();
  shoot(QStringLiteral("fit-chin-broken"));
  guide().sayUnwell();
  until([this] { return !guide().isBusy(); }, "the stop page");
  shoot(QStringLiteral("stop"));
  guide().undo();
  until([this] { return !guide().isBusy(); }, "undo");
  guide().endHere();
  until([this] { return !guide().isBusy(); }, "the end");
  shoot(QStringLiteral("verdict-open"));
}

void Gallery::lookScreens() {
  if (!begin(season::RowAction::look, "look")) return;
  shoot(QStringLiteral("look-front"));
  answer("all-snug");
  shoot(QStringLiteral("look-side"));
  answer("all-snug");
  shoot(QStringLiteral("look-hold"));
  answer("all-snug");
  shoot(QStringLiteral("look-points"));
  guide().choose(QStringLiteral("faceguard"));
  shoot(QStringLiteral("point"));
  answer("fault");
  shoot(QStringLiteral("point-fault"));
  guide().stepBack();
  guide().stepBack();
  answer("all-sound");
  shoot(QStringLiteral("verdict-fits"));
  if (!begin(season::RowAction::look, "look")) return;
  for (int i = 0; i < 3; ++i) answer("all-snug");
  guide().choose(QStringLiteral("faceguard"));
  answer("fault");
  guide().choose(QStringLiteral("fault-0"));
  until([this] { return !guide().isBusy(); }, "a fault");
  shoot(QStringLiteral("fault-found"));
  answer("end");
  shoot(QStringLiteral("verdict-do-not-wear"));
}

void Gallery::otherScreens() {
  dockScreens();
  go("book");
  shoot(QStringLiteral("book"));
  showBook("season");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("season"));
  scrollTo("look-bars");
  shoot(QStringLiteral("season-charts"));
  showBook("matching");
  shoot(QStringLiteral("matching"));
  const QVariantList matched = m_composition.shell().season()->matching()->rows();
  const auto pair = std::find_if(matched.begin(), matched.end(),
                                 [](const QVariant& row) { return row.toMap().value(QStringLiteral("kind")) == QLatin1String("pair"); });
  if (pair != matched.end()) {
    press(pair->toMap().value(QStringLiteral("name")).toByteArray().constData());
    shoot(QStringLiteral("matching-pair"));
    press("set-aside");
    shoot(QStringLiteral("matching-aside"));
  }
  showBook("plan");
  shoot(QStringLiteral("plan"));
  scrollTo("month-bars");
  shoot(QStringLiteral("plan-charts"));
  showBook("lanes");
  until([this] { return !m_composition.shell().season()->lanes()->columns().isEmpty(); }, "the lanes of past weeks");
  shoot(QStringLiteral("lanes"));
  showBook("settings");
  shoot(QStringLiteral("settings"));
}

// An invented code for whoever comes first, as they would set it.
bool Gallery::setCode() {
  models::LockModel& lock = *m_composition.shell().lock();
  go("code", QString::fromStdString(m_composition.desk().views().people.begin()->first));
  shoot(QStringLiteral("code-new"));
  lock.enter(QStringLiteral("480219"));
  lock.enter(QStringLiteral("480219"));
  return until([&lock] { return lock.hasCodes() && !lock.isBusy(); }, "a code");
}

void Gallery::sayScreens() {
  go("people", QStringLiteral("say"));
  shoot(QStringLiteral("say-needs-a-code"));
  if (!setCode()) return;
  models::SayModel& say = *m_composition.shell().say();
  const QString athlete = athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::weekly; });
  QMetaObject::invokeMethod(m_composition.view().rootObject(), "openSay");
  m_screen = QStringLiteral("say");
  shoot(QStringLiteral("say-number"));
  say.setNumber(QString::fromStdString(m_composition.desk().views().athlete(athlete.toStdString())->jersey));
  if (say.step() == QLatin1String("number")) say.enterNumber();
  shoot(QStringLiteral("say-where"));
  say.touchPlace(QStringLiteral("jaw-left"));
  shoot(QStringLiteral("say-place"));
  say.feels(QStringLiteral("tight"));
  until([&say] { return !say.isBusy(); }, "what was said");
  shoot(QStringLiteral("say-said"));
  say.another();
  say.openWords();
  shoot(QStringLiteral("say-words"));
  say.backToWhere();
  say.unwell();
  shoot(QStringLiteral("say-stop"));
  m_composition.shell().lock()->leaveSay();
  m_screen = QStringLiteral("locked");
  shoot(QStringLiteral("locked"));
}

bool Gallery::walk(const QString& only) {
  m_composition.choices().setMotionReduced(true);
  m_composition.view().resize(m_size);
  m_composition.view().show();
  if (!until([this] { return m_composition.shell().isOpen() || !m_composition.shell().failure().isEmpty(); }, "the Book")) return false;
  if (!m_composition.shell().isOpen()) {
    std::fprintf(stderr, "Gallery: %s\n", qPrintable(m_composition.shell().failure()));
    return false;
  }
  if (!m_composition.desk().views().people.empty()) m_composition.desk().setPerson(m_composition.desk().views().people.begin()->first);
  settle();
  if (only == QLatin1String("first")) firstScreens();
  if (only == QLatin1String("people")) peopleScreens();
  if (only == QLatin1String("gear")) gearScreens();
  if (only == QLatin1String("dock")) dockScreens();
  if (only == QLatin1String("sheets")) sheetScreens();
  if (only == QLatin1String("phone")) phoneScreens();
  if (only == QLatin1String("photos")) photoScreens();
  if (only == QLatin1String("season")) seasonScreens();
  if (!only.isEmpty()) return m_isGood;
  lineScreens();
  fitScreens();
  lookScreens();
  airScreens();
  gaugeScreens();
  otherScreens();
  gearScreens();
  photoScreens();
  sheetScreens();
  phoneScreens();
  sayScreens();
  peopleScreens();
  seasonScreens();  // last: whoever had a helmet has handed it in
  return m_isGood;
}

bool writeGallery(app::Composition& composition, ports::MemoryGauge& gauge, const QString& folder, QSize size, const QString& only,
                  app::Composition* pocket) {
  const QDir target(folder);
  if (!target.mkpath(QStringLiteral("."))) {
    std::fprintf(stderr, "Gallery: cannot make the folder %s.\n", qPrintable(folder));
    return false;
  }
  return Gallery(composition, gauge, pocket, target, size).walk(only);
}

}  // namespace snugline::demo
