// SPDX-License-Identifier: Apache-2.0
// The board while the app stays open and the clock goes on: what was done is gone from it at once, and the days bring what they bring.
#include SNUGLINE_CATCH_HEADER

#include <QTemporaryDir>

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

// The lane in which the open Line shows that number; empty where it shows no row of it.
QString laneOf(Field& field, const QString& jersey) {
  const models::LineModel& line = *field.app().shell().line();
  for (int i = 0; i < line.rowCount(); ++i) {
    const QModelIndex at = line.index(i);
    if (line.data(at, models::LineModel::kindRole) == "row" && line.data(at, models::LineModel::jerseyRole) == jersey)
      return line.data(at, models::LineModel::laneRole).toString();
  }
  return {};
}

bool fitFirst(Field& field, const char* jersey) {
  if (!field.touch(QStringLiteral("act-") + QLatin1String(jersey)) || !field.touch("wet") || !field.touch("set")) return false;
  for (int i = 0; i < 9; ++i) {
    if (!field.touch("snug")) return false;
  }
  return field.touch("all-sound") && field.until([&] { return field.screen() == "verdict"; });
}

bool recheck(Field& field, const char* jersey) {
  if (!field.touch(QStringLiteral("act-") + QLatin1String(jersey))) return false;
  for (int i = 0; i < 3; ++i) {
    if (!field.touch("all-snug")) return false;
  }
  return field.touch("all-sound") && field.until([&] { return field.screen() == "verdict"; });
}

}  // namespace

TEST_CASE("a row is gone from the Line and from the doors as soon as the fit is done, while the app stays open") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  models::LineModel& line = *field.app().shell().line();
  CHECK(laneOf(field, "57") == "do-not-wear");
  const int before = line.doNotWear();
  REQUIRE(field.touch("door-line"));
  REQUIRE(fitFirst(field, "57"));
  CHECK(line.doNotWear() == before - 1);
  CHECK(laneOf(field, "57").isEmpty());  // under Nothing due, which is folded
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK(field.find("act-57") == nullptr);
  CHECK_FALSE(field.reads("Never fitted"));
}

TEST_CASE("everybody who is due is worked off one after another until nobody is left, and the door says so") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(fitFirst(field, "57"));
  REQUIRE(field.touch("next-athlete"));
  for (const char* jersey : {"88", "12"}) {
    CAPTURE(jersey);
    REQUIRE(recheck(field, jersey));
    REQUIRE(field.touch("next-athlete"));
    REQUIRE(field.until([&] { return field.screen() == "line"; }));
    CHECK(laneOf(field, jersey).isEmpty());
  }
  const models::LineModel& line = *field.app().shell().line();
  CHECK(line.doNotWear() + line.beforePractice() == 0);
  CHECK(line.walkWords().isEmpty());
}

TEST_CASE("days that pass with the app open bring the rechecks of those days") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(fitFirst(field, "57"));
  REQUIRE(field.touch("next-athlete"));
  CHECK(laneOf(field, "57").isEmpty());
  REQUIRE(field.passDays(1));
  CHECK(laneOf(field, "57") == "before-practice");
  for (int day = 2; day <= 9; ++day) {
    CAPTURE(day);
    REQUIRE(field.passDays(1));
  }
  CHECK(laneOf(field, "57") == "before-practice");
}

TEST_CASE("a check taken back puts the row where it was, and done again it is gone again") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  const QString before = laneOf(field, "88");
  REQUIRE_FALSE(before.isEmpty());
  REQUIRE(recheck(field, "88"));
  CHECK(laneOf(field, "88").isEmpty());
  REQUIRE(field.touch("undo"));
  REQUIRE(field.until([&] { return field.screen() == "guide"; }));
  CHECK_FALSE(laneOf(field, "88").isEmpty());
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(laneOf(field, "88").isEmpty());
}
