// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/season/patterns.h"
#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

SaidRecord& say(SmallWorld& world, Day day, fit::Mark where, fit::Side side = fit::Side::both) {
  SaidRecord& said = world.said(day);
  said.where = where;
  said.side = side;
  return said;
}

// Somebody else on the roster in a helmet of the same model.
AthleteRecord& another(SmallWorld& world, const std::string& id, const std::string& jersey) {
  AthleteRecord athlete = world.athlete();
  athlete.id = id;
  athlete.jersey = jersey;
  athlete.said.clear();
  athlete.units = {"u:" + id};
  UnitRecord unit = world.unit();
  unit.id = "u:" + id;
  unit.athletes = {id};
  world.views.units[unit.id] = unit;
  return world.views.athletes[id] = athlete;
}

SaidRecord wordOf(const AthleteRecord& athlete, Day day, fit::Mark where) {
  SaidRecord said;
  said.fact = athlete.id + ":said" + std::to_string(day.number);
  said.at = at(day);
  said.unit = athlete.units.back();
  said.where = where;
  return said;
}

}  // namespace

TEST_CASE("A word says how often its place was said before it, and since when") {
  SmallWorld world;
  say(world, dayOf(2026, 9, 2), fit::Mark::jaw, fit::Side::left).isAnswered = true;
  say(world, dayOf(2026, 9, 20), fit::Mark::jaw, fit::Side::left).isAnswered = true;
  say(world, dayOf(2026, 9, 21), fit::Mark::jaw, fit::Side::right);
  const SaidRecord last = say(world, dayOf(2026, 10, 13), fit::Mark::jaw, fit::Side::left);
  CHECK(saidBefore(world.athlete(), last, {}) == SaidBefore{3, dayOf(2026, 9, 2)});
  CHECK(saidBefore(world.athlete(), world.athlete().said.front(), {}) == SaidBefore{1, dayOf(2026, 9, 2)});
  CHECK(saidBefore(world.athlete(), last, dayOf(2026, 9, 10)) == SaidBefore{2, dayOf(2026, 9, 20)});
}

TEST_CASE("A place touched twice on one day was said once") {
  SmallWorld world;
  say(world, dayOf(2026, 10, 12), fit::Mark::crown);
  say(world, dayOf(2026, 10, 12), fit::Mark::crown);
  const SaidRecord last = say(world, dayOf(2026, 10, 13), fit::Mark::crown);
  CHECK(saidBefore(world.athlete(), last, {}).times == 2);
}

TEST_CASE("The board's row says how often and since when, and says the same place once") {
  SmallWorld world;
  say(world, dayOf(2026, 9, 2), fit::Mark::jaw, fit::Side::left).isAnswered = true;
  say(world, dayOf(2026, 10, 12), fit::Mark::jaw, fit::Side::left).words = "since the bus";
  say(world, dayOf(2026, 10, 13), fit::Mark::jaw, fit::Side::left);
  const DueRow row = world.row();
  REQUIRE(row.reasons.size() == 1);
  const DueReason& reason = row.reasons.front();
  CHECK(reason.kind == DueKind::wordOpen);
  CHECK(reason.count == 3);
  CHECK(reason.day == dayOf(2026, 9, 2));
  CHECK(reason.text == "since the bus");
  CHECK(reason.at == at(dayOf(2026, 10, 13)));
  CHECK(reason.dueFrom == dayOf(2026, 10, 12));
}

TEST_CASE("A place said for the first time says nothing of times") {
  SmallWorld world;
  say(world, dayOf(2026, 10, 13), fit::Mark::jaw, fit::Side::left);
  const DueRow row = world.row();
  CHECK(row.reasons.front().count == 0);
  CHECK_FALSE(row.reasons.front().day.has_value());
}

TEST_CASE("Tight and loose at one place stay two reasons") {
  SmallWorld world;
  say(world, dayOf(2026, 10, 12), fit::Mark::jaw, fit::Side::left);
  say(world, dayOf(2026, 10, 13), fit::Mark::jaw, fit::Side::left).feels = fit::Feels::loose;
  CHECK(world.row().reasons.size() == 2);
}

TEST_CASE("The same place on three days of the season is a pattern of its athlete") {
  SmallWorld world;
  say(world, dayOf(2026, 7, 30), fit::Mark::jaw, fit::Side::left);  // before the season
  say(world, dayOf(2026, 9, 2), fit::Mark::jaw, fit::Side::left).isAnswered = true;
  say(world, dayOf(2026, 9, 9), fit::Mark::jaw, fit::Side::left).isAnswered = true;
  CHECK(saidAgain(world.views, kToday).empty());
  SaidRecord& third = say(world, dayOf(2026, 9, 16), fit::Mark::jaw, fit::Side::left);
  third.feels = fit::Feels::loose;
  third.isAnswered = true;
  const auto patterns = saidAgain(world.views, kToday);
  REQUIRE(patterns.size() == 1);
  const Pattern& pattern = patterns.front();
  CHECK(pattern.kind == PatternKind::oneAthlete);
  CHECK(pattern.athlete == world.athleteId);
  CHECK(pattern.where == fit::Mark::jaw);
  CHECK(pattern.side == fit::Side::left);
  CHECK(pattern.times == 3);
  CHECK(pattern.tight == 2);
  CHECK(pattern.loose == 1);
  CHECK(pattern.first == dayOf(2026, 9, 2));
  CHECK(pattern.last == dayOf(2026, 9, 16));
  CHECK_FALSE(pattern.isOpen);
}

TEST_CASE("Three athletes with one place in one model are a pattern of the model, whichever side they say") {
  SmallWorld world;
  say(world, dayOf(2026, 9, 2), fit::Mark::ears, fit::Side::left);
  AthleteRecord& second = another(world, "d:11", "3");
  second.said = {wordOf(second, dayOf(2026, 9, 3), fit::Mark::ears), wordOf(second, dayOf(2026, 9, 4), fit::Mark::ears)};
  CHECK(saidAgain(world.views, kToday).empty());
  AthleteRecord& third = another(world, "d:12", "40");
  third.said = {wordOf(third, dayOf(2026, 9, 5), fit::Mark::ears)};
  third.isOnRoster = false;  // has left, the helmet has not
  const auto patterns = saidAgain(world.views, kToday);
  REQUIRE(patterns.size() == 1);
  CHECK(patterns.front().kind == PatternKind::oneModel);
  CHECK(patterns.front().sheet == "sheet-hash");
  CHECK(patterns.front().times == 3);
  CHECK(patterns.front().tight == 4);
  CHECK(patterns.front().athletes == std::vector<std::string>{"d:11", world.athleteId, "d:12"});
}

TEST_CASE("What was said about a hit or feeling unwell is in no pattern") {
  SmallWorld world;
  for (int day = 1; day <= 4; ++day) say(world, dayOf(2026, 9, day), fit::Mark::crown).isUnwell = true;
  CHECK(saidAgain(world.views, kToday).empty());
  CHECK(saidBefore(world.athlete(), world.athlete().said.back(), {}) == SaidBefore{});
}

TEST_CASE("A word dated after today waits for its day") {
  SmallWorld world;
  for (int day = 12; day <= 15; ++day) say(world, dayOf(2026, 10, day), fit::Mark::crown);
  CHECK(saidAgain(world.views, kToday).front().times == 3);
  CHECK(saidAgain(world.views, dayOf(2026, 10, 13)).empty());
}

TEST_CASE("Patterns with something open come first, then the most often said") {
  SmallWorld world;
  for (int day = 1; day <= 5; ++day) say(world, dayOf(2026, 9, day), fit::Mark::crown).isAnswered = true;
  for (int day = 1; day <= 4; ++day) say(world, dayOf(2026, 9, day), fit::Mark::brow).isAnswered = true;
  for (int day = 1; day <= 3; ++day) say(world, dayOf(2026, 9, day), fit::Mark::nape);
  const auto patterns = saidAgain(world.views, kToday);
  REQUIRE(patterns.size() == 3);
  CHECK(patterns[0].where == fit::Mark::nape);
  CHECK(patterns[1].where == fit::Mark::crown);
  CHECK(patterns[2].where == fit::Mark::brow);
}
