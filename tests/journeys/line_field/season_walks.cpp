// SPDX-License-Identifier: Apache-2.0
// The Season by touch: heads to helmets with a pair set aside and pinned, and the plan with another cover.
#include SNUGLINE_CATCH_HEADER

#include <QTemporaryDir>

#include "core/season/board.h"
#include "field.h"
#include "qml/models/choices.h"
#include "qml/models/season_model.h"
#include "qml/models/shell.h"

using namespace snugline;
using field::Field;

TEST_CASE("A pair is opened to its cost, set aside, and comes back when the wish is taken back") {
  const QTemporaryDir folder;
  field::makeBook(folder.path().toStdString());
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("season"));
  REQUIRE(field.touch("matching"));
  CHECK(field.shows("3 of 3 heads have a helmet that can be given."));
  CHECK(field.shows("As now, 3"));
  REQUIRE(field.touch("match-57"));
  CHECK(field.shows("What this pair costs"));
  REQUIRE(field.touch("set-aside"));
  // Each of the other two keeps what is worn, so that nothing is left for this head.
  CHECK(field.shows("2 of 3 heads have a helmet that can be given."));
  CHECK(field.shows("Fewer helmets than heads of size L"));
  CHECK(field.shows("Set aside: Okafor, Dele, H-0231"));
  REQUIRE(field.touch("aside-0"));
  CHECK(field.shows("3 of 3 heads"));
  REQUIRE(field.touch("match-88"));
  REQUIRE(field.touch("pin"));
  CHECK(field.shows("Pinned: Lindqvist, Bo, H-0207"));
  REQUIRE(field.touch("anew"));
  CHECK(field.shows("3 of 3 heads"));
  CHECK_FALSE(field.app().shell().season()->matching()->keepsWorn());
  // The page writes nothing down.
  CHECK(field.athlete("88")->units.size() == 1);
}

TEST_CASE("The plan says what to order with its reckoning, and a greater cover never orders less") {
  const QTemporaryDir folder;
  field::makeBook(folder.path().toStdString());
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("season"));
  REQUIRE(field.touch("plan"));
  CHECK(field.shows("This season 2026, the next 2027"));
  const models::PlanModel& plan = *field.app().shell().season()->plan();
  const auto enough = [&plan] {
    double sum = 0;
    for (const QVariant& row : plan.sizes()) sum += row.toMap().value("parts").toList().front().toMap().value("value").toDouble();
    return sum;
  };
  REQUIRE(field.touch("80"));
  const double some = enough();
  REQUIRE(field.touch("99"));
  CHECK(enough() > some);
  CHECK(some > 0);
  CHECK(field.shows("asked 99 %"));
  CHECK(plan.months().size() == 18);
  CHECK(plan.months().front().toMap().value("parts").toList().front().toMap().value("value") == 3.0);
}

TEST_CASE("Lanes week by week: today's column is what the Line shows, and a week before is a touch away") {
  const QTemporaryDir folder;
  field::makeBook(folder.path().toStdString());
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("season"));
  REQUIRE(field.touch("lanes"));
  CHECK(field.shows("Today"));
  const models::LanesModel& lanes = *field.app().shell().season()->lanes();
  std::map<std::string, int> expected;
  const season::Board board = season::boardOf(field.views(), {field::now()}, {});
  for (const season::DueRow& row : board.rows) ++expected[std::string(season::code(row.lane))];
  REQUIRE(expected.size() > 1);  // else any column would do
  const auto figure = [&lanes](const std::string& name) {
    for (const QVariant& row : lanes.figures()) {
      if (row.toMap().value("name").toString().toStdString() == name) return row.toMap().value("count").toString().toInt();
    }
    return -1;
  };
  for (const auto& [lane, count] : expected) CHECK(figure(lane) == count);
  CHECK(figure("bare") == 0);
  const int last = lanes.chosen();
  REQUIRE(last > 0);
  REQUIRE(field.touch("minus"));
  CHECK(field.until([&] { return lanes.chosen() == last - 1; }));
  CHECK(field.shows("Practice of"));
  CHECK(lanes.columns().size() == last + 1);
  CHECK_FALSE(field.reads("Reading the log"));
}

TEST_CASE("the helmet of an athlete leads to its page, and back to the athlete") {
  const QTemporaryDir folder;
  field::makeBook(folder.path().toStdString());
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("row-88"));
  REQUIRE(field.until([&] { return field.screen() == "athlete"; }));
  const std::string serial = field.views().unit(field.athlete("88")->units.front())->serial;
  REQUIRE(field.touch("open-helmet"));
  CHECK(field.screen() == "book");
  CHECK(field.until([&] { return field.find("moveCard") != nullptr; }));
  CHECK(field.shows(QString::fromStdString(serial)));
  REQUIRE(field.touch("back"));
  CHECK(field.until([&] { return field.screen() == "athlete"; }));
}
