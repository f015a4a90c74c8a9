// SPDX-License-Identifier: Apache-2.0
// The Season by touch: heads to helmets with a pair set aside and pinned, and the plan with another cover.
#include SNUGLINE_CATCH_HEADER

#include <QTemporaryDir>

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
