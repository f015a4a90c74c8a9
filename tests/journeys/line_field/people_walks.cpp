// SPDX-License-Identifier: Apache-2.0
// The first start, the recovery sheet, the glass from hand to hand, and the yearly warning, by touch.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>

#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickView>

#include "core/book/people.h"
#include "core/ports/memory_ports.h"
#include "platform/system/file_keys.h"
#include "platform/system/system_clock.h"
#include "say_steps.h"

using namespace snugline;
using namespace snugline::field;

namespace {

constexpr const char* kOther = "730145";  // invented

models::RecoveryModel& recovery(Field& field) { return *field.app().shell().recovery(); }
bool write(Field& field, const QString& name, const QString& text) {
  if (!field.until([&] { return field.find(name) != nullptr; })) return false;
  return field.find(name)->setProperty("text", text);
}
bool settled(Field& field) {
  return field.until([&] { return !field.app().shell().lock()->isBusy() && !recovery(field).isBusy(); });
}
bool enter(Field& field, const QString& digits) { return type(field, digits) && field.touch("key-enter") && settled(field); }
bool isAt(Field& field, const char* screen) {
  return field.until([&] { return field.screen() == QLatin1String(screen); });
}

// From an empty Book to the doors, with a code and a sheet; gives the key on it.
QString firstStart(Field& field) {
  if (!isAt(field, "first") || !write(field, "first-name", "Maren Tollgate") || !field.touch("yes") || !field.touch("first-go")) return {};
  if (!field.until([&] { return field.views().people.size() == 1; }) || !enter(field, kCode) || !enter(field, kCode)) return {};
  if (!field.touch("first-go") || !field.until([&] { return recovery(field).step() == "sheet"; })) return {};
  const QString key = recovery(field).key();
  if (!field.touch("first-go") || !isAt(field, "doors")) return {};
  return key.simplified().remove(QLatin1Char(' '));
}

// A second one, of the staff, with a code of their own.
void addOther(Field& field) {
  REQUIRE(field.touch("door-people"));
  REQUIRE(write(field, "new-person", "Silvio Kestrelby"));
  REQUIRE(field.touch("staff"));
  REQUIRE(field.touch("add-person"));
  REQUIRE(field.touch("person-SK"));
  REQUIRE(isAt(field, "code"));
  REQUIRE(enter(field, kOther));
  REQUIRE(enter(field, kOther));
  REQUIRE(isAt(field, "people"));
  field.press(Qt::Key_Escape);
  REQUIRE(isAt(field, "doors"));
}

std::string personOf(Field& field, const char* initials) {
  for (const auto& [id, person] : field.views().people) {
    if (person.initials == initials) return id;
  }
  return {};
}

}  // namespace

TEST_CASE("The first start makes an admin, a code typed twice, and a sheet that holds the key and no athlete") {
  const QTemporaryDir folder;
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  const QString key = firstStart(field);
  REQUIRE(key.size() == 30);
  const season::PersonRecord& person = field.views().people.begin()->second;
  CHECK(person.role == book::kAdmin);
  CHECK(person.code);
  CHECK(field.views().team->recovery->stamp.who == person.id);
  REQUIRE(field.outbox().papers.size() == 1);
  CHECK(field.outbox().papers.begin()->first == "snugline-recovery-2026-10-14.pdf");
  const ports::Paper& paper = field.outbox().papers.begin()->second;
  std::string all = paper.title + paper.subtitle;
  for (const auto& part : paper.parts) all += part.text + '\n';
  CHECK(all.find(book::grouped(key.toStdString())) != std::string::npos);
  CHECK(all.find("Nobody") != std::string::npos);       // the team's name
  CHECK(all.find("14 Oct 2026") != std::string::npos);  // the date
  CHECK(all.find("Under lock and key") != std::string::npos);
  CHECK(recovery(field).key().isEmpty());  // it stands on the glass no more
  CHECK_FALSE(field.reads(key.left(5)));
}

TEST_CASE("With every code forgotten the key lets one admin in once, and the next sheet takes its place") {
  const QTemporaryDir folder;
  QString key, next;
  {
    Field field(folder.path().toStdString());
    REQUIRE(field.open());
    key = firstStart(field);
    REQUIRE(key.size() == 30);
  }
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(isAt(field, "locked"));
  REQUIRE(field.touch("lock-recovery"));
  QString mistyped = key;
  mistyped[7] = mistyped[7] == QLatin1Char('0') ? QLatin1Char('1') : QLatin1Char('0');
  REQUIRE(enter(field, mistyped));
  CHECK(field.shows("Group 2 has a mistyped digit"));
  CHECK(field.app().shell().lock()->gate()->misses() == 0);  // no try was spent on it
  REQUIRE(field.touch("key-clear"));
  REQUIRE(enter(field, key));
  CHECK(field.shows("New code for MT"));
  CHECK(field.app().desk().person().empty());
  REQUIRE(enter(field, kOther));
  REQUIRE(enter(field, kOther));
  REQUIRE(field.until([&] { return recovery(field).step() == "sheet"; }));
  next = recovery(field).key().remove(QLatin1Char(' '));
  CHECK(next != key);
  CHECK(field.screen() == "locked");
  REQUIRE(field.touch("recovery-kept"));
  REQUIRE(isAt(field, "doors"));
  CHECK(field.app().desk().person() == personOf(field, "MT"));
  CHECK(field.views().team->recovery->stamp.who == personOf(field, "MT"));
  CHECK(field.outbox().papers.size() == 1);
  field.app().shell().lock()->lock();
  REQUIRE(field.touch("lock-recovery"));
  REQUIRE(enter(field, key));
  CHECK(field.shows("not the key of the sheet made last"));
  REQUIRE(field.touch("key-clear"));
  REQUIRE(enter(field, next));
  CHECK(field.shows("New code for MT"));
}

TEST_CASE("Wrong keys make one wait like wrong codes, together with them, and a restart ends nothing") {
  const QTemporaryDir folder;
  ports::MemoryKeys chance(77);
  const QString wrong = QString::fromStdString(book::makeRecoveryKey(chance).value());
  {
    Field field(folder.path().toStdString());
    REQUIRE(field.open());
    REQUIRE(firstStart(field).size() == 30);
    field.app().shell().lock()->lock();
    REQUIRE(enter(field, "111119"));
    REQUIRE(field.touch("lock-recovery"));
    for (int i = 0; i < 2; ++i) {
      if (i > 0) REQUIRE(field.touch("key-clear"));
      REQUIRE(enter(field, wrong));
    }
    CHECK(field.shows("then try again"));
    CHECK_FALSE(field.find("key-4")->isEnabled());
  }
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(isAt(field, "locked"));
  CHECK(field.shows("then try again"));
}

TEST_CASE("A Book without a recovery sheet says so, and opens nothing") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(field.touch("say-staff"));
  REQUIRE(field.touch("lock-recovery"));
  CHECK(field.shows("No recovery sheet was ever made"));
  CHECK(field.find("key-1") == nullptr);
  field.press(Qt::Key_Escape);
  CHECK(field.find("lock-pad") != nullptr);
}

TEST_CASE("One touch from a page leads to the pad, the other one's code takes the glass, and the page is the same") {
  const QTemporaryDir folder;
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(firstStart(field).size() == 30);
  addOther(field);
  for (const char* door : {"door-line", "door-dock", "door-book"}) {
    INFO(door);
    REQUIRE(field.touch(QLatin1String(door)));
    REQUIRE(field.until([&] { return field.screen() != "doors"; }));
    const QString screen = field.screen();
    const QQuickItem* page = field.find("bearer");
    REQUIRE(page != nullptr);
    field.countAnew();
    REQUIRE(field.touch("bearer"));
    REQUIRE(isAt(field, "switch"));
    CHECK(field.touches() == 1);
    const bool isMaren = field.app().desk().person() == personOf(field, "MT");
    REQUIRE(enter(field, isMaren ? kOther : kCode));
    REQUIRE(field.until([&] { return field.screen() == screen; }));
    CHECK(field.app().desk().person() == personOf(field, isMaren ? "SK" : "MT"));
    CHECK(field.find("bearer") == page);  // not made anew
    // Whoever changes their mind is where they were, and who signed still does.
    REQUIRE(field.touch("bearer"));
    REQUIRE(isAt(field, "switch"));
    field.press(Qt::Key_Escape);
    REQUIRE(field.until([&] { return field.screen() == screen; }));
    CHECK(field.app().desk().person() == personOf(field, isMaren ? "SK" : "MT"));
    field.press(Qt::Key_Escape);
    REQUIRE(isAt(field, "doors"));
  }
}

TEST_CASE("Two people cannot have one code") {
  const QTemporaryDir folder;
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(firstStart(field).size() == 30);
  REQUIRE(field.touch("door-people"));
  REQUIRE(write(field, "new-person", "Silvio Kestrelby"));
  REQUIRE(field.touch("staff"));
  REQUIRE(field.touch("add-person"));
  REQUIRE(field.touch("person-SK"));
  REQUIRE(enter(field, kCode));
  REQUIRE(enter(field, kCode));
  CHECK(field.shows("cannot be taken"));
  CHECK_FALSE(field.views().people.at(personOf(field, "SK")).code);
}

TEST_CASE("The glass locks when nobody touches it and when the device sleeps, and opens where it was") {
  const QTemporaryDir folder;
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(firstStart(field).size() == 30);
  REQUIRE(field.touch("door-dock"));
  REQUIRE(isAt(field, "dock"));
  field.app().shell().lock()->setIdleTime(1);
  REQUIRE(isAt(field, "locked"));
  CHECK(field.app().desk().person().empty());
  field.app().shell().lock()->setIdleTime(600'000);
  REQUIRE(enter(field, kCode));
  REQUIRE(isAt(field, "dock"));
  emit qGuiApp->applicationStateChanged(Qt::ApplicationSuspended);
  REQUIRE(isAt(field, "locked"));
  REQUIRE(enter(field, kCode));
  REQUIRE(isAt(field, "dock"));
}

TEST_CASE("A key on the glass goes away with a lock") {
  const QTemporaryDir folder;
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(firstStart(field).size() == 30);
  REQUIRE(field.touch("door-people"));
  REQUIRE(field.touch("recovery-sheet"));
  REQUIRE(field.touch("recovery-make"));
  REQUIRE(field.until([&] { return recovery(field).step() == "sheet"; }));
  field.app().shell().lock()->lock();
  REQUIRE(isAt(field, "locked"));
  CHECK(recovery(field).key().isEmpty());
  CHECK(field.find("lock-pad") != nullptr);
}

TEST_CASE("The warning is read to its end and signed by the athlete, and counts by the code of whoever saw it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(backToStaff(field));
  const std::string athlete = field.athlete("88")->id;
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("athletes"));
  CHECK(field.shows("have yet to sign"));
  QMetaObject::invokeMethod(field.app().view().rootObject(), "go", Q_ARG(QString, "athlete"),
                            Q_ARG(QString, QString::fromStdString(athlete)), Q_ARG(bool, false));
  REQUIRE(field.until([&] { return field.find("sign-athlete") != nullptr; }));
  field.app().shell().warning()->open(QString::fromStdString(athlete), false);
  REQUIRE(isAt(field, "sign"));
  CHECK(field.app().desk().person().empty());
  CHECK(field.shows("No helmet prevents concussion"));
  for (const char* name : {"Lindqvist", "Bo", "Okafor", "Dele", "Marsh", "Teo"}) CHECK_FALSE(field.reads(QLatin1String(name)));
  field.press(Qt::Key_Escape);
  field.press(Qt::Key_Back);
  CHECK(field.screen() == "sign");
  REQUIRE(field.touch("sign-language"));
  CHECK(field.shows(QString::fromUtf8("Ningún casco previene")));
  // Not before it was read to the end.
  if (QQuickItem* area = field.find("warning-text"); field.find("sign-initials") == nullptr) {
    for (QQuickItem* up = area; up != nullptr; up = up->parentItem()) {
      if (!up->property("contentY").isValid() || !up->property("interactive").toBool()) continue;
      up->setProperty("contentY", up->property("contentHeight").toDouble() - up->height());
      break;
    }
  }
  REQUIRE(write(field, "sign-initials", "bl"));
  REQUIRE(field.touch("sign-read"));
  REQUIRE(field.until([&] { return field.app().shell().warning()->step() == "witness"; }));
  REQUIRE(enter(field, "111119"));
  CHECK(field.screen() == "sign");
  CHECK(field.athlete("88")->signatures.empty());
  REQUIRE(enter(field, kCode));
  REQUIRE(field.until([&] { return field.athlete("88")->signatures.size() == 1; }));
  const season::SignatureRecord& signature = field.athlete("88")->signatures.front();
  CHECK(signature.initials == "BL");
  CHECK(signature.language == "es");
  CHECK(signature.stamp.who == personOf(field, "KP"));
  CHECK(field.views().team->warning->texts.size() == 2);
  REQUIRE(isAt(field, "athlete"));
}

TEST_CASE("Whoever does not sign gives the glass back to a code, and nothing is written") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(backToStaff(field));
  models::WarningModel& warning = *field.app().shell().warning();
  warning.open(QString::fromStdString(field.athlete("88")->id), true);
  REQUIRE(isAt(field, "sign"));
  REQUIRE(field.touch("sign-leave"));
  REQUIRE(isAt(field, "locked"));
  REQUIRE(enter(field, kCode));
  REQUIRE(isAt(field, "doors"));
  CHECK(field.athlete("88")->signatures.empty());
  CHECK_FALSE(field.views().team->warning);
  // A pause does the same.
  warning.open(QString::fromStdString(field.athlete("88")->id), true);
  warning.sign("RL");
  field.app().shell().lock()->setIdleTime(1);
  REQUIRE(isAt(field, "locked"));
  field.app().shell().lock()->setIdleTime(600'000);
  REQUIRE(enter(field, kCode));
  REQUIRE(isAt(field, "doors"));
  CHECK(field.athlete("88")->signatures.empty());
}

TEST_CASE("Once codes are in use every fact of the staff names who it is by") {
  const Ground ground;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(openSay(field));
    REQUIRE(iAm(field, "88"));
    REQUIRE(field.touch("place-jaw-left"));
    REQUIRE(field.touch("tight"));
    REQUIRE(field.touch("say-done"));
    REQUIRE(backToStaff(field));
    field.app().shell().warning()->signedOnPaper(QString::fromStdString(field.athlete("88")->id), true, "RL");
    field.app().shell().warning()->setTexts("Read the label.", {}, true);
    field.app().shell().privacy()->setYears(5);
    REQUIRE(field.until([&] { return !field.app().shell().privacy()->isBusy(); }));
    field.app().shell().privacy()->hold(QString::fromStdString(field.athlete("57")->id), "Letter");
    field.app().shell().recovery()->make();
    REQUIRE(field.until([&] { return recovery(field).step() == "sheet"; }));
    field.app().shell().guide()->start(QString::fromStdString(field.athlete("88")->id), "look");
    REQUIRE(field.until([&] { return !field.athlete("88")->openCheck.empty(); }));
    REQUIRE(settled(field));
  }
  platform::FileKeys keys(ground.path() + "/keys");
  platform::SystemClock clock;
  auto book = book::Book::open(ground.path() + "/team.snugbook", book::Access::readOnly, keys, clock);
  REQUIRE(book);
  std::vector<std::string> subjects{"team"};
  for (const auto& [id, athlete] : (*book)->views().athletes) subjects.push_back(id);
  for (const auto& [id, unit] : (*book)->views().units) subjects.push_back(id);
  for (const auto& [id, person] : (*book)->views().people) subjects.push_back(id);
  for (const auto& [id, check] : (*book)->views().openChecks) subjects.push_back(id);
  std::int64_t codesFrom = 0;
  std::vector<book::Fact> all;
  for (const std::string& subject : subjects) {
    const auto facts = (*book)->history(subject);
    REQUIRE(facts);
    for (const book::Fact& fact : *facts) {
      if (std::holds_alternative<book::CodeSet>(fact.body) && (codesFrom == 0 || fact.order < codesFrom)) codesFrom = fact.order;
      all.push_back(fact);
    }
  }
  REQUIRE(codesFrom > 0);
  std::size_t seen = 0;
  for (const book::Fact& fact : all) {
    if (fact.order <= codesFrom) continue;
    INFO(book::kindOf(fact.body));
    // Athletes sign nothing.
    CHECK(fact.who.empty() == std::holds_alternative<book::Said>(fact.body));
    ++seen;
  }
  CHECK(seen >= 7);
}
