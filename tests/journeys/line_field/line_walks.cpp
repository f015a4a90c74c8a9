// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <QFile>
#include <QTemporaryDir>

#include <cmath>

#include "field.h"
#include "qml/models/guide_model.h"
#include "qml/models/shell.h"

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

TEST_CASE("a finger that drags the front edge on the drawing sets the brow gap, on disk in its number") {
  const Ground ground;
  std::int64_t lowered = 0;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(chooseAthlete(field, "57"));
    REQUIRE(field.touch("wet"));
    REQUIRE(field.touch("set"));
    CHECK(field.title() == "Brow gap");
    REQUIRE(field.touch("plus"));  // a known gap stands where the drawing says
    const double before = field.app().shell().guide()->gapMm();
    REQUIRE(field.dragEdge(12.0));  // up: the gap grows by this many millimetres on the drawing
    const double after = field.app().shell().guide()->gapMm();
    CHECK(after > before + 6.0);
    REQUIRE(field.touch("gap"));
    const auto& mark = field.views().openChecks.begin()->second.state.marks[0];
    REQUIRE(mark.gap.has_value());
    CHECK(std::abs(mark.gap->mm() - after) < 0.001);
    CHECK(mark.finding == fit::Finding::over);  // beyond the sheet's 32 mm
    lowered = mark.gap->um;
  }
  Field again(ground.path());
  REQUIRE(again.open());
  CHECK(again.views().openChecks.begin()->second.state.marks[0].gap->um == lowered);
}

TEST_CASE("the starting air is typed from a gauge in the sheet's order, survives a new start, and is kept in the check") {
  const Ground ground;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(chooseAthlete(field, "57"));
    REQUIRE(field.touch("wet"));
    CHECK(field.shows("1. Crown"));
    REQUIRE(field.touch("choice-air-crown"));
    CHECK(field.stage() == "reading");
    for (const char* key : {"key-3", "key-.", "key-1"}) REQUIRE(field.touch(key));
    CHECK(field.shows("Reads 3.10 psi"));
    REQUIRE(field.touch("record"));
    CHECK(field.title() == "Starting air: sides and back");
  }
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.until([&] { return field.screen() == "guide"; }));
  CHECK(field.title() == "Starting air: sides and back");
  REQUIRE(field.touch("entry-plus"));
  REQUIRE(field.touch("entry-unit"));
  CHECK(field.shows("kPa"));
  REQUIRE(field.touch("record"));
  REQUIRE(field.touch("list"));
  REQUIRE(field.touch("no-gauge"));
  CHECK(field.title() == "Brow gap");
  const fit::State& state = field.views().openChecks.begin()->second.state;
  CHECK(state.fitted.air[0] == parsePressure("3.1psi").value());
  CHECK(state.isGauged[0]);
  CHECK(state.isGauged[1]);
  CHECK_FALSE(state.isGauged[2]);
}

TEST_CASE("without a gauge a first fit takes no touch more") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  field.countAnew();
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("no-gauge"));
  REQUIRE(snugFrom(field, 9));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.touches() <= kFirstFitTouches);
  CHECK(field.athlete("57")->checks.back().verdict == fit::Verdict::fits);
}

TEST_CASE("the gauge is read after the change that was advised, and once more beside the questions") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(chooseAthlete(field, "57"));
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  REQUIRE(field.touch("over"));
  REQUIRE(field.touch("over"));
  REQUIRE(field.touch("gauge"));
  for (const char* key : {"key-2", "key-.", "key-5"}) REQUIRE(field.touch(key));
  REQUIRE(field.touch("pumps-2"));
  const auto state = [&]() -> const fit::State& { return field.views().openChecks.begin()->second.state; };
  CHECK(state().fitted.air[0] == parsePressure("2.5psi").value());
  CHECK(state().pumps[0] == -2);
  CHECK(field.title() == "Brow gap");
  REQUIRE(field.touch("more"));
  REQUIRE(field.touch("read-gauge"));
  REQUIRE(field.touch("choice-port-sides"));
  for (const char* key : {"key-2", "key-.", "key-4"}) REQUIRE(field.touch(key));
  REQUIRE(field.touch("off-head"));
  CHECK(state().fitted.air[1] == parsePressure("2.4psi").value());
  CHECK(field.title() == "Brow gap");
  const auto* read = std::get_if<fit::AirRead>(&field.views().openChecks.begin()->second.answers.back().answer);
  REQUIRE(read != nullptr);
  CHECK_FALSE(read->isOnHead);
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
  REQUIRE(field.touch("red-way"));
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
