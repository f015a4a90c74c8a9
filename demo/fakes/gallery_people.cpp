// SPDX-License-Identifier: Apache-2.0
// Pictures of people, codes, the yearly warning and privacy.
#include <algorithm>

#include <QQuickItem>
#include <QQuickView>

#include "demo/fakes/gallery_walk.h"

namespace snugline::demo {

void Gallery::firstScreens() {
  m_screen = QStringLiteral("first");
  shoot(QStringLiteral("first-name"));
  m_composition.shell().doors()->addPerson(QStringLiteral("Maren Tollgate"), QStringLiteral("admin"), true);
  if (!until([this] { return m_composition.desk().views().people.size() == 1; }, "the first admin")) return;
  shoot(QStringLiteral("first-code"));
  models::LockModel& lock = *m_composition.shell().lock();
  lock.enter(QStringLiteral("480219"));
  lock.enter(QStringLiteral("480219"));
  if (!until([&lock] { return lock.hasCodes() && !lock.isBusy(); }, "a code")) return;
  shoot(QStringLiteral("first-sheet"));
  makeSheet();
  shoot(QStringLiteral("first-made"));
}

void Gallery::makeSheet() {
  models::RecoveryModel& recovery = *m_composition.shell().recovery();
  recovery.make();
  until([&recovery] { return recovery.step() == QLatin1String("sheet"); }, "a recovery sheet");
}

void Gallery::peopleScreens() {
  models::LockModel& lock = *m_composition.shell().lock();
  if (!lock.hasCodes() && !setCode()) return;
  if (!lock.wall().isEmpty()) lock.enter(QStringLiteral("480219"));
  if (!until([&lock] { return lock.wall().isEmpty() && !lock.isBusy(); }, "an open glass")) return;
  go("people");
  shoot(QStringLiteral("people-codes"));
  go("recovery");
  shoot(QStringLiteral("recovery"));
  makeSheet();
  shoot(QStringLiteral("recovery-made"));
  const QString athlete = athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::weekly; });
  go("athlete", athlete);
  scrollTo("sign-athlete");
  shoot(QStringLiteral("athlete-warning"));
  m_composition.view().rootObject()->setProperty("isSwitching", true);
  m_screen = QStringLiteral("switch");
  shoot(QStringLiteral("switch-holder"));
  m_composition.view().rootObject()->setProperty("isSwitching", false);
  m_composition.shell().warning()->open(athlete, false);
  m_screen = QStringLiteral("sign");
  shoot(QStringLiteral("sign-read"));
  scrollTo("sign-end");
  shoot(QStringLiteral("sign-read-end"));
  m_composition.shell().warning()->sign(QStringLiteral("DL"));
  shoot(QStringLiteral("sign-witness"));
  m_composition.shell().lock()->enter(QStringLiteral("480219"));
  until([this] { return m_composition.shell().lock()->wall().isEmpty(); }, "the witness");
  m_screen = QStringLiteral("athlete");
  settle();
  scrollTo("sign-guardian");
  shoot(QStringLiteral("athlete-signed"));
  go("record", athlete);
  until([this] { return !m_composition.shell().privacy()->lines().isEmpty(); }, "the record");
  m_composition.shell().privacy()->handOut(QStringLiteral("pdf"));
  shoot(QStringLiteral("record"));
  go("privacy");
  m_composition.shell().privacy()->setYears(5);
  models::PrivacyModel& privacy = *m_composition.shell().privacy();
  until([&privacy] { return !privacy.isBusy(); }, "years");
  privacy.hold({}, QStringLiteral("Letter of the district's counsel, 12 October"));
  until([&privacy] { return !privacy.isBusy(); }, "a legal hold");
  scrollTo("legal-hold");
  shoot(QStringLiteral("privacy"));
  go("warning-text");
  shoot(QStringLiteral("warning-text"));
  showBook("athletes");
  m_screen = QStringLiteral("book");
  press("only-unsigned");
  shoot(QStringLiteral("athletes-unsigned"));
  showBook("settings");
  scrollTo("settings-privacy");
  shoot(QStringLiteral("settings-team"));
  m_composition.shell().lock()->lock();
  m_screen = QStringLiteral("locked");
  shoot(QStringLiteral("locked-recovery"));
  m_composition.shell().recovery()->begin();
  shoot(QStringLiteral("recovery-key"));
  m_composition.shell().recovery()->enterKey(QStringLiteral("123"));
  shoot(QStringLiteral("recovery-mistyped"));
  m_composition.shell().recovery()->leave();
}

}  // namespace snugline::demo
