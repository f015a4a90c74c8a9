// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <QFile>
#include <QTemporaryDir>

#include "field.h"

using namespace snugline;
using field::Field;

namespace {

// Interface principle: a full first fit with nothing wrong at most 16 touches, a look at most 4 after the athlete is chosen (ours).
constexpr int kFirstFitTouches = 16;
constexpr int kLookTouches = 4;

struct Ground {
  QTemporaryDir folder;
  Ground() { field::makeBook(folder.path().toStdString()); }
  [[nodiscard]] std::string path() const { return folder.path().toStdString(); }
};

bool chooseAthlete(Field& field, const char* jersey) {
  const bool isOpen = field.touch("door-line") && field.touch(QStringLiteral("act-") + QLatin1String(jersey));
  return isOpen && field.until([&] { return field.screen() == "guide"; });
}

bool snugFrom(Field& field, int marks) {
  for (int i = 0; i < marks; ++i) {
    if (!field.touch("snug")) {
      UNSCOPED_INFO("stopped at " << field.title().toStdString() << ", " << field.stage().toStdString() << ", mark " << i);
      return false;
    }
  }
  return true;
}

}  // namespace

TEST_CASE("a first fit with nothing wrong is done in at most sixteen touches and fits") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  field.countAnew();
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  CHECK(field.title() == "Brow gap");
  REQUIRE(snugFrom(field, 9));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.touches() <= kFirstFitTouches);
  CHECK(field.shows("Fits"));
  CHECK(field.shows("Next look from tomorrow"));
  REQUIRE(field.athlete("57")->checks.size() == 1);
  CHECK(field.athlete("57")->checks.back().verdict == fit::Verdict::fits);
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK_FALSE(field.reads("Never fitted"));
}

TEST_CASE("a look with nothing wrong is done in four touches after the athlete is chosen") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "88"));
  field.countAnew();
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.touches() <= kLookTouches);
  CHECK(field.athlete("88")->checks.back().verdict == fit::Verdict::fits);
  CHECK(field.athlete("88")->checks.back().kind == fit::CheckKind::look);
}

TEST_CASE("a brow that sits high is advised, reopens its marks, is seen again and fits") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  REQUIRE(field.touch("over"));
  CHECK(field.shows("seat it again"));
  REQUIRE(field.touch("over"));  // seated again, still high
  CHECK(field.stage() == "advice");
  CHECK(field.shows("pumps out of the crown"));
  CHECK(field.shows("Then see again: brow, ears, nape, chin, straps, jaw, crown and hold."));
  REQUIRE(field.touch("pumps-2"));
  CHECK(field.title() == "Brow gap");
  REQUIRE(snugFrom(field, 9));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.athlete("57")->checks.back().verdict == fit::Verdict::fits);
}

TEST_CASE("a brow gap that is dragged is recorded in its number") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  REQUIRE(field.touch("plus"));
  REQUIRE(field.touch("gap"));
  const auto& check = field.views().openChecks.begin()->second;
  REQUIRE(check.state.marks[0].gap.has_value());
  CHECK(*check.state.marks[0].gap > fit::kBrowTarget);
  CHECK(check.state.marks[0].finding == fit::Finding::snug);
  CHECK(field.title() == "Ear openings");
}

TEST_CASE("bare metal on the faceguard ends in do not wear, holds the helmet and stands on the board") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "88"));
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  REQUIRE(field.touch("choice-faceguard"));
  REQUIRE(field.touch("fault"));
  REQUIRE(field.touch("choice-fault-0"));
  CHECK(field.stage() == "advice");
  REQUIRE(field.touch("end"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.shows("Do not wear"));
  const auto* athlete = field.athlete("88");
  CHECK(athlete->checks.back().verdict == fit::Verdict::doNotWear);
  REQUIRE(athlete->units.size() == 1);
  CHECK(field.views().unit(athlete->units.front())->holds.size() == 1);
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK(field.shows("Do not wear, 2"));
  CHECK(field.shows("Held 14:00"));
}

TEST_CASE("undo takes back the last answer, and a verdict together with the answer that brought it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "88"));
  REQUIRE(field.touch("all-snug"));
  CHECK(field.title() == "From the side");
  REQUIRE(field.touch("undo"));
  CHECK(field.title() == "From the front");
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  REQUIRE(field.touch("undo"));
  REQUIRE(field.until([&] { return field.screen() == "guide"; }));
  CHECK(field.title() == "Seven points");
  CHECK(field.athlete("88")->checks.size() == 2);
}

TEST_CASE("a check left open stands on the board and goes on at the same question") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  REQUIRE(snugFrom(field, 3));
  CHECK(field.title() == "Chin cup");
  REQUIRE(field.touch("back"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK(field.shows("Go on"));
  REQUIRE(field.touch("act-57"));
  REQUIRE(field.until([&] { return field.screen() == "guide"; }));
  CHECK(field.title() == "Chin cup");
}

TEST_CASE("a jaw pad that presses on one side is answered with that side") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  REQUIRE(snugFrom(field, 5));
  CHECK(field.title() == "Jaw pads");
  REQUIRE(field.touch("over"));
  CHECK(field.stage() == "side");
  REQUIRE(field.touch("left"));
  const auto& jaw = field.views().openChecks.begin()->second.state.marks[static_cast<std::size_t>(fit::Mark::jaw)];
  CHECK(jaw.finding == fit::Finding::over);
  CHECK(jaw.side == fit::Side::left);
  CHECK(field.shows("left jaw pad"));
}

TEST_CASE("somebody who feels unwell stops the check, and the board says only to see the athlete") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "88"));
  REQUIRE(field.touch("more"));
  REQUIRE(field.touch("unwell"));
  CHECK(field.stage() == "stop");
  REQUIRE(field.touch("end"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK(field.shows("See athlete now"));
}

TEST_CASE("the line is walked one athlete after another") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("start-line"));
  REQUIRE(field.until([&] { return field.screen() == "turn"; }));
  CHECK(field.shows("Marsh"));
  REQUIRE(field.touch("turn-start"));
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "turn"; }));
  CHECK(field.shows("The line is through"));
}

TEST_CASE("a file that is no Book is said to be none on the screen, and stays as it is") {
  const QTemporaryDir folder;
  QFile file(folder.filePath("team.snugbook"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write("a picture, say, but no Book at all") > 0);
  file.close();
  Field field(folder.path().toStdString());
  CHECK_FALSE(field.open());
  CHECK(field.shows("team.snugbook"));
  CHECK(file.size() == 34);
}
