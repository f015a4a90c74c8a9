// SPDX-License-Identifier: Apache-2.0
// What no careful hand does: a clock that is set, two fingers at once, a scanner into an open sheet, a tablet turned under a drag. Nothing
// is lost, and nothing counts twice.
#include SNUGLINE_CATCH_HEADER

#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>
#include <QTest>

#include "field.h"
#include "qml/models/shell.h"

using namespace snugline;
using field::Field;

namespace {

struct Ground {
  QTemporaryDir folder;
  Ground() { field::makeBook(folder.path().toStdString()); }
  [[nodiscard]] std::string path() const { return folder.path().toStdString(); }
};

bool beginFit(Field& field) {
  return field.touch("door-line") && field.touch("act-57") && field.touch("wet") && field.touch("set") &&
         field.until([&] { return field.find("snug") != nullptr; });
}

std::size_t answers(const Field& field) {
  std::size_t count = 0;
  for (const auto& [id, check] : field.views().openChecks) count += check.answers.size();
  return count;
}

QPoint middleOf(Field& field, const char* name) {
  field.app().view().grabWindow();
  const QQuickItem* item = field.find(QLatin1String(name));
  return item == nullptr ? QPoint() : item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
}

// A hand scanner: the tag and Enter.
void scan(Field& field, const char* tag) {
  for (const char c : std::string(tag)) QTest::keyClick(&field.app().view(), c);
  QTest::keyClick(&field.app().view(), Qt::Key_Return);
}

const season::UnitRecord* unit(const Field& field, const std::string& serial) {
  for (const auto& [id, record] : field.views().units) {
    if (record.serial == serial) return &record;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("a clock set back or forward a day while a check is open loses no answer, and the check ends and counts once") {
  const std::int64_t way = GENERATE(-eyes::kDayMs, eyes::kDayMs);
  CAPTURE(way);
  const Ground ground;
  Instant end;
  {
    Field field(ground.path());
    field.closeEyes();  // in a copy these entries are another device's, whose clock is doubted; the same Book is opened again below
    REQUIRE(field.open());
    REQUIRE(beginFit(field));
    for (int i = 0; i < 4; ++i) REQUIRE(field.touch("snug"));
    const std::size_t before = answers(field);
    field.time().pass(way);
    field.app().desk().askClock();
    CHECK(answers(field) == before);
    for (int i = 0; i < 5; ++i) REQUIRE(field.touch("snug"));
    REQUIRE(field.touch("all-sound"));
    REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
    REQUIRE(field.athlete("57")->checks.size() == 1);
    CHECK(field.athlete("57")->checks.back().verdict == fit::Verdict::fits);
    REQUIRE(field.touch("next-athlete"));
    CHECK_FALSE(field.reads("Never fitted"));
    end = field.time().now();
  }
  Field again(ground.path(), {}, end);
  again.closeEyes();
  REQUIRE(again.open());
  CHECK(again.athlete("57")->checks.size() == 1);
  REQUIRE(again.touch("door-line"));
  CHECK_FALSE(again.reads("Never fitted"));
}

TEST_CASE("a clock that was a day ahead for one check and is set right does not hide that check") {
  const Ground ground;
  Field field(ground.path());
  field.closeEyes();  // as above
  REQUIRE(field.open());
  field.time().pass(eyes::kDayMs);
  field.app().desk().askClock();
  REQUIRE(beginFit(field));
  for (int i = 0; i < 9; ++i) REQUIRE(field.touch("snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  field.time().pass(-eyes::kDayMs);
  field.app().desk().askClock();
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK_FALSE(field.reads("Never fitted"));  // what this device itself wrote is never later than now
}

TEST_CASE("two fingers on two answers at once give one answer") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(beginFit(field));
  const std::size_t before = answers(field);
  const QPoint snug = middleOf(field, "snug"), over = middleOf(field, "over");
  REQUIRE_FALSE(snug.isNull());
  REQUIRE_FALSE(over.isNull());
  QQuickView* view = &field.app().view();
  field::fingers(*view).press(0, snug, view).press(1, over, view);
  field::fingers(*view).release(0, snug, view).release(1, over, view);
  REQUIRE(eyes::settle(field.app().desk()));
  CHECK(answers(field) <= before + 1);
  CHECK(field.isTrue());
}

TEST_CASE("a second tap in the same moment answers nothing more") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(beginFit(field));
  const std::size_t before = answers(field);
  const QPoint snug = middleOf(field, "snug");
  REQUIRE_FALSE(snug.isNull());
  QQuickView* view = &field.app().view();
  for (int i = 0; i < 2; ++i) {
    field::fingers(*view).press(0, snug, view);
    field::fingers(*view).release(0, snug, view);
  }
  REQUIRE(field.until([&] { return answers(field) > before; }));
  REQUIRE(eyes::settle(field.app().desk()));
  CHECK(answers(field) == before + 1);
  CHECK(field.isTrue());
}

TEST_CASE("two taps that end a check end it once") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-88"));
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  const std::size_t before = field.athlete("88")->checks.size();
  const QPoint sound = middleOf(field, "all-sound");
  REQUIRE_FALSE(sound.isNull());
  QQuickView* view = &field.app().view();
  for (int i = 0; i < 2; ++i) {
    field::fingers(*view).press(0, sound, view);
    field::fingers(*view).release(0, sound, view);
  }
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  REQUIRE(eyes::settle(field.app().desk()));
  CHECK(field.athlete("88")->checks.size() == before + 1);
  CHECK(field.isTrue());
}

TEST_CASE("a scan while a sheet is open over the Dock is neither lost nor taken for a word, and the helmet on the table stays as it is") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-dock"));
  scan(field, "H-0231");
  models::DockModel& dock = *field.app().shell().dock();
  REQUIRE(field.until([&] { return dock.serial() == "H-0231"; }));
  REQUIRE(field.touch("allSound"));
  REQUIRE(field.touch("hold"));
  REQUIRE(field.until([&] { return field.find("holdReasons") != nullptr; }));
  scan(field, "H-0207");
  REQUIRE(eyes::settle(field.app().desk()));
  CHECK(unit(field, "H-0231")->holds.empty());
  CHECK(unit(field, "H-0207")->holds.empty());
  if (field.find("close") != nullptr) {
    REQUIRE(field.touch("close"));
  }
  // The next scan goes where scans go.
  scan(field, "H-0118");
  CHECK(field.until([&] { return dock.serial() == "H-0118"; }));
  CHECK(unit(field, "H-0231")->holds.empty());
  CHECK(field.isTrue());
}

TEST_CASE("a tablet turned while a finger drags the front edge keeps the gap, and it is answered once") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(beginFit(field));
  REQUIRE(field.touch("plus"));
  const std::size_t before = answers(field);
  QQuickView* view = &field.app().view();
  constexpr double kGripMiddle = 110;  // where BrowGrip draws its knob, in its own units
  view->grabWindow();
  const QQuickItem* grip = field.find("browGrip");
  REQUIRE(grip != nullptr);
  const QPoint at = grip->mapToScene(QPointF(kGripMiddle, grip->property("edgeY").toDouble())).toPoint();
  field::fingers(*view).press(0, at, view);
  for (int i = 1; i <= 4; ++i) {
    field::fingers(*view).move(0, at - QPoint(0, 3 * i), view);
    QCoreApplication::processEvents();
  }
  view->resize(view->height(), view->width());
  view->grabWindow();
  field::fingers(*view).move(0, QPoint(at.y(), at.x()), view);
  QCoreApplication::processEvents();
  field::fingers(*view).release(0, QPoint(at.y(), at.x()), view);
  REQUIRE(eyes::settle(field.app().desk()));
  CHECK(answers(field) == before);  // a drag is no answer before it is said to be one
  REQUIRE(field.touch("gap"));
  CHECK(answers(field) == before + 1);
  CHECK(field.views().openChecks.begin()->second.state.marks[0].gap.has_value());
}
