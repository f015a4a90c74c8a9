// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/season/charts.h"
#include "core/season/lanes.h"
#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {
EndedCheck check(fit::CheckKind kind, Day day, const std::string& unit) {
  EndedCheck ended;
  ended.kind = kind;
  ended.unit = unit;
  ended.stamp.at = at(day);
  return ended;
}
}  // namespace

TEST_CASE("Points are counted as last seen over all helmets but those retired or lost") {
  SmallWorld world;
  UnitRecord base = world.unit();
  base.points = {};
  world.views.units.clear();
  const auto add = [&](const char* id, std::optional<gear::PointState> shell, UnitPlace place = UnitPlace::shelf) {
    UnitRecord unit = base;
    unit.id = id;
    unit.place = place;
    if (shell) unit.points.see(gear::Point::shell, {{*shell, {}}, {}, false});
    world.views.units[id] = unit;
  };
  add("a", gear::PointState::sound);
  add("b", gear::PointState::fault, UnitPlace::repair);
  add("c", std::nullopt, UnitPlace::withAthlete);
  add("d", gear::PointState::fault, UnitPlace::retired);
  add("e", gear::PointState::fault, UnitPlace::lost);
  const auto counts = pointsOver(world.views);
  CHECK(counts[static_cast<std::size_t>(gear::Point::shell)] == PointCount{1, 1, 1});
  CHECK(counts[static_cast<std::size_t>(gear::Point::warningLabel)] == PointCount{0, 0, 3});
}

TEST_CASE("A first look is counted by its days after the fit, and only in the helmet that was fitted") {
  SmallWorld world;
  AthleteRecord& athlete = world.athlete();
  const std::string unit = world.unit().id;
  const Day day{20700};
  using fit::CheckKind;
  athlete.checks = {check(CheckKind::first, day.plus(-60), unit), check(CheckKind::look, day.plus(-59), unit),  // before the season
                    check(CheckKind::first, day, unit),           check(CheckKind::look, day.plus(2), unit),
                    check(CheckKind::refit, day.plus(3), unit),   check(CheckKind::refit, day.plus(4), unit),  // fitted anew first
                    check(CheckKind::look, day.plus(13), unit),   check(CheckKind::first, day.plus(20), "other")};
  FirstLooks expected;
  expected.after = {0, 0, 1, 0, 1};
  CHECK(firstLooks(world.views, day) == expected);  // the other helmet is not worn
  athlete.units = {"other"};
  expected.waiting = 1;
  CHECK(firstLooks(world.views, day) == expected);
  athlete.isOnRoster = false;
  expected.waiting = 0;
  CHECK(firstLooks(world.views, day) == expected);
  expected.after[1] = 1;
  CHECK(firstLooks(world.views, std::nullopt) == expected);
}

TEST_CASE("Lanes are counted at the last practice of each week, and now, of the season alone") {
  TeamRecord team;
  team.practiceDays = {true, false, true, false, false, false, false};  // Monday, Wednesday
  team.practiceMinute = 930;
  const Day monday = dayOf(2026, 8, 3);  // a Monday, by the calendar
  REQUIRE(weekday(monday) == 0);
  team.seasonStart = monday.plus(1);
  team.seasonEnd = monday.plus(40);
  const auto times = [&](Day day, int minute) {
    std::vector<std::string> said;
    for (const Instant& each : laneTimes(team, instantAt(day, minute, -300))) said.push_back(print(each));
    return said;
  };
  using Said = std::vector<std::string>;
  CHECK(times(monday.plus(9), 900) == Said{"2026-08-05T15:30:00-05:00", "2026-08-12T15:00:00-05:00"});  // before the second Wednesday's
  CHECK(times(monday.plus(10), 900) == Said{"2026-08-05T15:30:00-05:00", "2026-08-12T15:30:00-05:00", "2026-08-13T15:00:00-05:00"});
  // The last day is a Saturday; after it, now is not counted any more.
  const Said over = times(monday.plus(60), 900);
  REQUIRE(over.size() == 6);
  CHECK(over.back() == "2026-09-09T15:30:00-05:00");
  team.practiceDays = {};
  CHECK(times(monday.plus(60), 900).front() == "2026-08-09T15:30:00-05:00");
  team.seasonStart.reset();
  team.seasonEnd.reset();
  CHECK(static_cast<int>(times(monday, 900).size()) == kLaneWeeks + 1);
  team.seasonStart = monday.plus(-3000);
  CHECK(static_cast<int>(times(monday, 900).size()) <= kLaneWeeksMost + 1);
}
