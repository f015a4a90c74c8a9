// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <numeric>

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

TEST_CASE("Worst lane wins, then the gravest grade, then due-by, then number, then name") {
  const auto rowOf = [](Lane lane, Grade grade, int dueIn, const std::string& jersey = {}, const std::string& family = {}) {
    DueRow row;
    row.lane = lane;
    row.grade = grade;
    row.dueBy = kToday.plus(dueIn);
    row.jersey = jersey;
    row.family = family;
    return row;
  };
  const std::vector<DueRow> ranked{rowOf(Lane::doNotWear, Grade::seeNow, 0),
                                   rowOf(Lane::doNotWear, Grade::withTrainer, 0),
                                   rowOf(Lane::doNotWear, Grade::stillWorn, 0),
                                   rowOf(Lane::doNotWear, Grade::broke, 0),
                                   rowOf(Lane::doNotWear, Grade::fault, 0),
                                   rowOf(Lane::doNotWear, Grade::rest, -5),
                                   rowOf(Lane::beforePractice, Grade::leak, 0),
                                   rowOf(Lane::beforePractice, Grade::report, 0),
                                   rowOf(Lane::beforePractice, Grade::late, -3),
                                   rowOf(Lane::beforePractice, Grade::rest, -9),
                                   rowOf(Lane::beforePractice, Grade::rest, 0, "07"),
                                   rowOf(Lane::beforePractice, Grade::rest, 0, "12", "Merriwold"),
                                   rowOf(Lane::beforePractice, Grade::rest, 0, "12", "Okafor"),
                                   rowOf(Lane::beforePractice, Grade::weather, -9),
                                   rowOf(Lane::noHelmet, Grade::rest, 0),
                                   rowOf(Lane::weekly, Grade::rest, 0)};
  std::vector<DueRow> rows(ranked.rbegin(), ranked.rend());
  std::sort(rows.begin(), rows.end(), ranksBefore);
  CHECK(rows == ranked);
}

TEST_CASE("A board is ranked, holds everyone on the roster once, and counts its lanes") {
  const bool isTrue = rc::check("ranked and complete", [] {
    const SmallWorld world = crowd(*rc::gen::inRange(0, 30));
    const Board board = boardOf(world.views, {kNow}, {});
    const auto& rows = board.rows;
    RC_ASSERT(std::is_sorted(rows.begin(), rows.end(), ranksBefore));
    for (std::size_t i = 1; i < rows.size(); ++i) RC_ASSERT(!ranksBefore(rows[i], rows[i - 1]));
    std::size_t onRoster = 0;
    for (const auto& [id, athlete] : world.views.athletes) {
      if (!athlete.isOnRoster) continue;
      ++onRoster;
      const DueRow* row = board.row(id);
      RC_ASSERT(row != nullptr);
      RC_ASSERT(*row == rowOf(world.views, athlete, {kNow}, {}));
    }
    RC_ASSERT(rows.size() == onRoster);
    RC_ASSERT(static_cast<std::size_t>(std::accumulate(board.counts.begin(), board.counts.end(), 0)) == onRoster);
  });
  CHECK(isTrue);
}

TEST_CASE("Athletes with one number and one name are told apart by their ids, whatever order they are held in") {
  SmallWorld world;
  AthleteRecord athlete = world.athlete();
  athlete.units.clear();
  world.views.athletes.clear();
  for (int i = 0; i < 200; ++i) {
    for (const char* device : {"b:", "a:"}) {
      athlete.id = device + std::to_string(i);
      athlete.jersey = i % 7 == 0 ? "0" + std::to_string(i % 40) : std::to_string(i % 40);
      world.views.athletes[athlete.id] = athlete;
    }
  }
  const Board board = boardOf(world.views, {kNow}, {});
  REQUIRE(board.rows.size() == 400);
  for (std::size_t i = 1; i < board.rows.size(); ++i) {
    INFO(board.rows[i].athlete);
    CHECK(ranksBefore(board.rows[i - 1], board.rows[i]));
  }
}

TEST_CASE("Weather that puts more than ten into the lane is one group at its end, and ten are not") {
  SmallWorld world;
  auto sheet = plainSheet();
  sheet.changeAllowance = Pressure{7000};
  world.views.sheets["sheet-hash"].sheet = std::make_shared<gear::ModelSheet>(sheet);
  const AthleteRecord athlete = world.athlete();
  UnitRecord unit = world.unit();
  AirEvent event;
  event.port = gear::Port::crown;
  event.kind = AirKind::set;
  event.gauge = Pressure{20000};
  event.climate = climateOf({Temperature::celsius(22), Elevation{}, std::nullopt, std::nullopt, {}});
  event.check = "d:1";
  event.stamp = world.stamp(dayOf(2026, 10, 12));
  addAir(unit, event);
  world.views.athletes.clear();
  world.views.units.clear();
  const auto add = [&](int i) {
    AthleteRecord a = athlete;
    UnitRecord u = unit;
    a.id = "a:" + std::to_string(i);
    u.id = "u:" + std::to_string(i);
    a.jersey = std::to_string(i);
    a.units = {u.id};
    u.athletes = {a.id};
    for (EndedCheck& check : a.checks) check.unit = u.id;
    if (i == 99) a.hairChanged = world.stamp(dayOf(2026, 10, 13));
    world.views.athletes[a.id] = a;
    world.views.units[u.id] = u;
  };
  const Conditions cold{Temperature::celsius(-10), Elevation{}, std::nullopt, std::nullopt, {}};
  add(99);  // for the cold and for something else
  for (int i = 0; i < kWeatherRowsMost; ++i) add(i);
  CHECK(boardOf(world.views, {kNow}, cold).counts[1] == 11);
  CHECK(boardOf(world.views, {kNow}, cold).foldedCount == 0);
  add(kWeatherRowsMost);
  const Board board = boardOf(world.views, {kNow}, cold);
  CHECK(board.foldedCount == 11);
  CHECK(board.rows.front().jersey == "99");
}
