// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>

#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

// A random record, with every row of the table within reach.
void disturb(SmallWorld& world, const std::string& athleteId, const std::string& unitId) {
  AthleteRecord& athlete = world.views.athletes.at(athleteId);
  UnitRecord& unit = world.views.units.at(unitId);
  const auto day = [] { return kToday.plus(-*rc::gen::inRange(-2, 20)); };
  const auto flip = [](int percent) { return *rc::gen::inRange(0, 100) < percent; };
  if (flip(8)) unit.holds = {{"h:1", "shell", "crack", world.stamp(day())}};
  if (flip(5)) unit.isLabelMissing = true;
  if (flip(10)) unit.labels[0].label = {gear::LabelKind::recertification, 2024, day().plus(-730), "x"};
  if (flip(10)) unit.points.forget(gear::kPoints[*rc::gen::inRange<std::size_t>(0, 7)]);
  if (flip(10)) athlete.hairChanged = world.stamp(day());
  if (flip(5)) athlete.units.clear();
  if (flip(5)) athlete.tapes.clear();
  if (flip(5)) athlete.isOnRoster = false;
  if (flip(20)) {
    SaidRecord said;
    said.fact = "s:" + std::to_string(++world.n);
    said.at = at(day());
    said.isUnwell = flip(30);
    said.isBroken = flip(20);
    said.isAcknowledged = flip(50);
    said.isAnswered = flip(20);
    said.where = fit::kMarks[*rc::gen::inRange<std::size_t>(0, 9)];
    athlete.said.push_back(said);
  }
  for (EndedCheck& check : athlete.checks) check.stamp.at = at(day());
  athlete.checks.back().verdict =
      *rc::gen::element(fit::Verdict::fits, fit::Verdict::fits, fit::Verdict::adjust, fit::Verdict::doNotWear, fit::Verdict::unfinished);
}

SmallWorld crowd(int count) {
  SmallWorld world;
  const AthleteRecord athlete = world.athlete();
  const UnitRecord unit = world.unit();
  world.views.athletes.clear();
  world.views.units.clear();
  for (int i = 0; i < count; ++i) {
    AthleteRecord a = athlete;
    UnitRecord u = unit;
    a.id = "a:" + std::to_string(i);
    u.id = "u:" + std::to_string(i);
    a.units = {u.id};
    u.athletes = {a.id};
    for (EndedCheck& check : a.checks) check.unit = u.id;
    a.jersey = std::to_string(*rc::gen::inRange(0, 12));
    if (*rc::gen::inRange(0, 3) == 0) a.jersey.insert(0, 1, '0');
    world.views.athletes[a.id] = a;
    world.views.units[u.id] = u;
    disturb(world, a.id, u.id);
  }
  return world;
}

}  // namespace

TEST_CASE("Jerseys rank by number and then by text, and none comes last") {
  CHECK(jerseyBefore("9", "10"));
  CHECK(jerseyBefore("07", "7"));
  CHECK(jerseyBefore("0", "00"));
  CHECK_FALSE(jerseyBefore("7", "07"));
  CHECK(jerseyBefore("99", ""));
  CHECK_FALSE(jerseyBefore("5", "5"));
}

TEST_CASE("Worst lane wins, then the helmet still with the athlete, then due-by, then jersey") {
  DueRow worn, held, late, soon, seven;
  worn.lane = held.lane = Lane::doNotWear;
  held.isWithAthlete = true;
  worn.dueBy = kToday.plus(-5);
  held.dueBy = kToday;
  late.lane = soon.lane = seven.lane = Lane::beforePractice;
  late.dueBy = kToday.plus(-1);
  soon.dueBy = seven.dueBy = kToday;
  soon.jersey = "12";
  seven.jersey = "07";
  std::vector<DueRow> rows{soon, worn, seven, late, held};
  std::sort(rows.begin(), rows.end(), ranksBefore);
  CHECK(rows == std::vector<DueRow>{held, worn, late, seven, soon});
}

TEST_CASE("A board is ranked, holds everyone on the roster once, and counts its lanes") {
  const bool isTrue = rc::check("ranked and complete", [] {
    const SmallWorld world = crowd(*rc::gen::inRange(0, 30));
    Board board;
    board.build(world.views, {kNow}, {});
    const auto& rows = board.rows();
    RC_ASSERT(std::is_sorted(rows.begin(), rows.end(), ranksBefore));
    for (std::size_t i = 1; i < rows.size(); ++i) RC_ASSERT(!ranksBefore(rows[i], rows[i - 1]));
    std::size_t onRoster = 0;
    for (const auto& [id, athlete] : world.views.athletes) {
      if (!athlete.isOnRoster) continue;
      ++onRoster;
      const auto place = board.placeOf(id);
      RC_ASSERT(place.has_value());
      RC_ASSERT(rows[*place] == rowOf(world.views, athlete, {kNow}, {}));
    }
    RC_ASSERT(rows.size() == onRoster);
    const auto counts = board.counts();
    RC_ASSERT(static_cast<std::size_t>(counts[0] + counts[1] + counts[2] + counts[3]) == onRoster);
  });
  CHECK(isTrue);
}

// Thousands are made by two threads, of which no row may tell which of them made it, nor that another row came before.
TEST_CASE("A district's rows are those that each athlete has alone, in rank order, also when the board is built again") {
  SmallWorld world;
  const AthleteRecord athlete = world.athlete();
  const UnitRecord unit = world.unit();
  world.views.athletes.clear();
  world.views.units.clear();
  constexpr int kDistrict = 6007;  // not a multiple of anything that is walked
  std::size_t onRoster = 0;
  for (int i = 0; i < kDistrict; ++i) {
    AthleteRecord a = athlete;
    UnitRecord u = unit;
    a.id = "abcdefghijklm:" + std::to_string(i + 1);
    u.id = "abcdefghijklm:" + std::to_string(kDistrict + i + 1);
    a.jersey = std::to_string(i % 100);
    a.units = {u.id};
    u.athletes = {a.id};
    for (EndedCheck& check : a.checks) check.unit = u.id;
    if (i % 7 == 2) a.units.clear();
    if (i % 11 == 3) a.isOnRoster = false;
    if (i % 13 == 4) a.hairChanged = world.stamp(kToday.plus(-1));
    if (i % 17 == 5) u.holds = {{"h:" + std::to_string(i), "shell", "crack along the edge", world.stamp(kToday.plus(-1))}};
    if (i % 19 == 6) a.checks.back().verdict = fit::Verdict::adjust;
    onRoster += a.isOnRoster ? 1U : 0U;
    world.views.athletes[a.id] = a;
    world.views.units[u.id] = u;
  }
  const Conditions cold{Temperature::celsius(-4.0), Elevation{}, std::nullopt, Whereabouts::outside, {}};
  Board board;
  for (const Conditions& conditions : {Conditions{}, cold, cold}) {
    board.build(world.views, {kNow}, conditions);
    const auto rows = board.rows();
    REQUIRE(rows.size() == onRoster);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      INFO(rows[i].athlete);
      REQUIRE(rows[i] == rowOf(world.views, *world.views.athlete(rows[i].athlete), {kNow}, conditions));
      REQUIRE((i == 0 || ranksBefore(rows[i - 1], rows[i])));
    }
    const auto counts = board.counts();
    CHECK(static_cast<std::size_t>(counts[0] + counts[1] + counts[2] + counts[3]) == onRoster);
  }
}

// Hundreds are sorted digit by digit, a few by comparing; ids of two devices that counted to the same number differ in their text only.
TEST_CASE("A large board is ranked as a small one is, with the same numbers on two devices") {
  SmallWorld world;
  AthleteRecord athlete = world.athlete();
  athlete.units.clear();
  world.views.athletes.clear();
  constexpr int kMany = 700;
  for (int i = 0; i < kMany; ++i) {
    for (const char* device : {"b:", "a:"}) {
      athlete.id = device + std::to_string(i);
      athlete.jersey = i % 7 == 0 ? "0" + std::to_string(i % 40) : std::to_string(i % 40);
      athlete.added = Stamp{at(kToday.plus(-(i % 300))), {}, {}};
      world.views.athletes[athlete.id] = athlete;
    }
  }
  Board board;
  board.build(world.views, {kNow}, {});
  const auto rows = board.rows();
  REQUIRE(rows.size() == 2 * kMany);
  for (std::size_t i = 1; i < rows.size(); ++i) {
    INFO(rows[i].athlete);
    CHECK(ranksBefore(rows[i - 1], rows[i]));
  }
}

TEST_CASE("A board brought up to date equals a board built anew, for any change") {
  const bool isTrue = rc::check("update == build", [] {
    SmallWorld world = crowd(*rc::gen::inRange(1, 25));
    Board board;
    board.build(world.views, {kNow}, {});
    for (int round = 0; round < 6; ++round) {
      std::vector<std::string> changed;
      for (int i = 0; i < *rc::gen::inRange(1, 5); ++i) {
        const std::string number = std::to_string(*rc::gen::inRange(0, 27));  // some are nobody
        const std::string id = "a:" + number;
        changed.push_back(id);
        if (!world.views.athletes.contains(id)) continue;
        if (*rc::gen::inRange(0, 8) == 0) {
          world.views.athletes.erase(id);
          continue;
        }
        AthleteRecord& athlete = world.views.athletes.at(id);
        athlete.isOnRoster = true;
        disturb(world, id, "u:" + number);
      }
      board.update(world.views, changed);
      Board fresh;
      fresh.build(world.views, {kNow}, {});
      RC_ASSERT(board.rows() == fresh.rows());
      RC_ASSERT(board.counts() == fresh.counts());
    }
  });
  CHECK(isTrue);
}

TEST_CASE("Somebody who joins takes a place and somebody who leaves gives it up") {
  SmallWorld world;
  Board board;
  board.build(world.views, {kNow}, {});
  REQUIRE(board.rows().size() == 1);
  AthleteRecord joined = world.athlete();
  joined.id = "d:77";
  joined.units.clear();
  world.views.athletes["d:77"] = joined;
  board.update(world.views, {"d:77"});
  REQUIRE(board.rows().size() == 2);
  CHECK(board.rows()[0].athlete == "d:77");
  world.athlete().isOnRoster = false;
  board.update(world.views, {world.athleteId});
  REQUIRE(board.rows().size() == 1);
  CHECK_FALSE(board.placeOf(world.athleteId).has_value());
}
