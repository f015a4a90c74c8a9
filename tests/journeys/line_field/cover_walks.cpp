// SPDX-License-Identifier: Apache-2.0
// Lock, switch of holder and Say lie over the page: it is out of reach below them, and as it was once they are gone.
#include SNUGLINE_CATCH_HEADER

#include <QAccessible>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickView>

#include "say_steps.h"

using namespace snugline;
using namespace snugline::field;

namespace {

models::LockModel& lock(Field& field) { return *field.app().shell().lock(); }

bool isAt(Field& field, const char* screen) {
  return field.until([&] { return field.screen() == QLatin1String(screen); });
}

// The first one sets a code under People, and stands at the doors again.
bool setCode(Field& field) {
  if (!field.touch("door-people") || !isAt(field, "people") || !field.touch("set-code")) return false;
  if (!enterCode(field, kCode) || !enterCode(field, kCode) || !isAt(field, "people")) return false;
  field.press(Qt::Key_Escape);
  return isAt(field, "doors");
}

bool unlock(Field& field) {
  return isAt(field, "locked") && enterCode(field, kCode) && field.until([&] { return lock(field).wall().isEmpty(); });
}

// Every name that a screen reader can come to.
void namesIn(QAccessibleInterface* spoken, QStringList& names) {
  if (spoken == nullptr || spoken->state().invisible) return;
  names << spoken->text(QAccessible::Name) << spoken->text(QAccessible::Value);
  for (int i = 0; i < spoken->childCount(); ++i) namesIn(spoken->child(i), names);
}
QStringList spokenNames(Field& field) {
  QAccessible::setActive(true);
  QStringList names;
  namesIn(QAccessible::queryAccessibleInterface(&field.app().view()), names);
  return names;
}
bool holds(const QStringList& words, const char* part) {
  return std::any_of(words.begin(), words.end(), [&](const QString& each) { return each.contains(QLatin1String(part)); });
}

bool isIn(const QQuickItem* item, const QQuickItem* outer) {
  for (; item != nullptr; item = item->parentItem()) {
    if (item == outer) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("A lock in the middle of the line keeps whose turn it is, and the walk goes on") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(setCode(field));
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("start-line"));
  REQUIRE(isAt(field, "turn"));
  models::LineModel& line = *field.app().shell().line();
  const QString turn = line.walkRow().value("jersey").toString();
  REQUIRE_FALSE(turn.isEmpty());
  lock(field).lock();
  REQUIRE(isAt(field, "locked"));
  CHECK(line.isWalking());
  REQUIRE(unlock(field));
  REQUIRE(isAt(field, "turn"));
  CHECK(line.walkRow().value("jersey").toString() == turn);
  CHECK_FALSE(field.reads("The line is through"));
  REQUIRE(field.touch("turn-start"));
  CHECK(isAt(field, "guide"));
}

TEST_CASE("What lies under a lock cannot be seen, touched, spoken or reached by keys") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(setCode(field));
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("start-line"));
  REQUIRE(isAt(field, "turn"));
  REQUIRE(field.reads("Next in line"));
  REQUIRE(holds(spokenNames(field), "Next in line"));
  lock(field).lock();
  REQUIRE(isAt(field, "locked"));
  REQUIRE(field.until([&] { return field.find("lock-pad") != nullptr; }));
  CHECK(field.find("turn-start") == nullptr);
  for (const QStringList& words : {spokenNames(field), field.everyWord()}) {
    CHECK_FALSE(holds(words, "Next in line"));
    CHECK_FALSE(holds(words, "Okafor"));
    CHECK_FALSE(holds(words, "Lindqvist"));
  }
  const QQuickItem* wall = field.find("lock-pad");
  while (wall->parentItem() != nullptr && wall->parentItem()->objectName() != QLatin1String("glass")) wall = wall->parentItem();
  const std::size_t answers = field.views().openChecks.size();
  for (int i = 0; i < 40; ++i) {
    field.press(i % 2 == 0 ? Qt::Key_Tab : Qt::Key_Backtab);
    if (i % 5 == 0) field.press(i % 10 == 0 ? Qt::Key_Space : Qt::Key_Escape);
    INFO("key " << i);
    REQUIRE(isIn(field.app().view().activeFocusItem(), wall));
  }
  CHECK(field.views().openChecks.size() == answers);
  CHECK_FALSE(lock(field).wall().isEmpty());
}

TEST_CASE("Half-written words of a form and the place in the Book outlive a lock, another holder and Say") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(setCode(field));
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("athletes"));
  REQUIRE(field.touch("add"));
  REQUIRE(field.until([&] { return field.find("family") != nullptr; }));
  REQUIRE(field.find("family")->setProperty("text", "Hollin"));
  REQUIRE(field.touch("given"));
  lock(field).lock();
  REQUIRE(isAt(field, "locked"));
  CHECK_FALSE(holds(field.everyWord(), "Hollin"));
  REQUIRE(field.touch("lock-say"));
  REQUIRE(isAt(field, "say"));
  REQUIRE(field.touch("say-staff"));
  REQUIRE(unlock(field));
  REQUIRE(isAt(field, "book"));
  REQUIRE(field.until([&] { return field.find("family") != nullptr; }));
  CHECK(field.find("family")->property("text").toString() == "Hollin");
  CHECK(isIn(field.app().view().activeFocusItem(), field.find("given")));  // the next letter goes on where the last one went
  REQUIRE(field.touch("bearer"));
  REQUIRE(isAt(field, "switch"));
  CHECK_FALSE(holds(spokenNames(field), "Hollin"));
  field.press(Qt::Key_Escape);
  REQUIRE(isAt(field, "book"));
  CHECK(field.find("family")->property("text").toString() == "Hollin");
}

TEST_CASE("A pull sheet goes with the page below a lock, and comes back with what was touched in it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(setCode(field));
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("weather"));
  REQUIRE(field.until([&] { return field.find("temperature") != nullptr; }));
  lock(field).lock();
  REQUIRE(isAt(field, "locked"));
  CHECK(field.until([&] { return field.find("temperature") == nullptr; }));
  CHECK_FALSE(holds(spokenNames(field), "Weather where the helmets are"));
  REQUIRE(unlock(field));
  CHECK(field.until([&] { return field.find("temperature") != nullptr; }));
}

TEST_CASE("A device that goes to sleep in the middle of a check wakes at the same question with what was touched") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(setCode(field));
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(isAt(field, "guide"));
  REQUIRE(field.touch("more"));
  REQUIRE(field.until([&] { return field.find("leave-open") != nullptr; }));
  const QString stage = field.stage();
  emit application().applicationStateChanged(Qt::ApplicationSuspended);
  REQUIRE(isAt(field, "locked"));
  CHECK(field.until([&] { return field.find("leave-open") == nullptr; }));
  emit application().applicationStateChanged(Qt::ApplicationActive);
  REQUIRE(unlock(field));
  REQUIRE(isAt(field, "guide"));
  CHECK(field.stage() == stage);
  CHECK(field.until([&] { return field.find("leave-open") != nullptr; }));
}

TEST_CASE("With nobody signed in the verdict asks who, and the check is kept until somebody says so") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  field.app().desk().setPerson({});
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-88"));
  REQUIRE(isAt(field, "guide"));
  REQUIRE(field.touch("more"));
  REQUIRE(field.touch("end-here"));
  REQUIRE(field.until([&] { return field.stage() == "who"; }));
  CHECK(field.shows("Who signs this check?"));
  CHECK(field.views().openChecks.size() == 1);
  REQUIRE(field.touch("undo"));
  CHECK(field.stage() != "who");
  REQUIRE(field.touch("more"));
  REQUIRE(field.touch("end-here"));
  REQUIRE(field.touch("who"));
  REQUIRE(isAt(field, "people"));
  REQUIRE(field.touch("person-KP"));
  REQUIRE(isAt(field, "verdict"));
  CHECK(field.views().openChecks.empty());
  CHECK(field.athlete("88")->checks.back().stamp.who == field.views().people.begin()->first);
  CHECK(field.reads("KP"));
}
