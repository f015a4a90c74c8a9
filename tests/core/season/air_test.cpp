// SPDX-License-Identifier: Apache-2.0
// The air on the board: what cold and height do, what is not judged, leaks, the line, and the board judged again.
#include SNUGLINE_CATCH_HEADER
#include "small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

Conditions weather(double celsius, std::optional<double> metres = 0.0) {
  Conditions c;
  c.temperature = Temperature::celsius(celsius);
  if (metres) c.elevation = Elevation::metres(*metres);
  return c;
}

// A helmet with one bladder, allowance 7 kPa and 2 kPa a week, whose marks were last seen at 22 C by the sea.
struct AirWorld : SmallWorld {
  AirWorld() {
    auto sheet = plainSheet();
    sheet.changeAllowance = Pressure{7000};
    sheet.leakPerWeek = Pressure{2000};
    views.sheets["sheet-hash"].sheet = std::make_shared<gear::ModelSheet>(sheet);
    look().climate = climateOf(weather(22));
  }
  EndedCheck& look() { return athlete().checks.back(); }
  void air(Day day, Pressure gauge, AirKind kind = AirKind::set, const Conditions& conditions = weather(22)) {
    AirEvent event;
    event.kind = kind;
    event.isOnHead = false;
    event.gauge = gauge;
    event.climate = climateOf(conditions);
    event.check = "d:1";
    event.stamp = stamp(day);
    addAir(unit(), event);
    settleLeaks(unit());
  }
  // Set before the marks were last seen.
  void setBefore(Pressure gauge, const Conditions& conditions = weather(22)) {
    air(dayOf(2026, 10, 12), gauge, AirKind::set, conditions);
    look().stamp = stamp(dayOf(2026, 10, 12), 850);
    seePoints(dayOf(2026, 10, 12));
  }
  [[nodiscard]] DueRow rowIn(const Conditions& now) const { return rowOf(views, views.athletes.at(athleteId), {kNow}, now); }
};

}  // namespace

TEST_CASE("20 kPa set at 22 C and seen at 2 C by the sea has lost 8.2 kPa, which calls for a look") {
  // By hand, rigid bladder at constant volume (OpenStax, College Physics, 13.3: p2 = p1 T2 / T1) by the sea, 101,325 Pa (U.S. Standard
  // Atmosphere, 1976): (20,000 + 101,325) * 275.15 / 295.15 - 101,325 = 113,103.7 - 101,325 = 11,778.7 Pa; the change is -8,221.3 Pa.
  AirWorld world;
  world.setBefore(Pressure{20000});
  const DueRow row = world.rowIn(weather(2));
  const DueReason* reason = find(row, DueKind::airChanged);
  REQUIRE(reason != nullptr);
  CHECK(reason->air == Pressure{11779});
  CHECK(reason->change == Pressure{-8221});
  CHECK(reason->port == gear::Port::crown);
  CHECK(reason->cause == AirCause::cold);
  CHECK_FALSE(reason->belowZero);
  CHECK(reason->lane == Lane::beforePractice);
  CHECK(reason->dueFrom == kToday);
  CHECK(row.action == RowAction::look);
  CHECK(find(world.rowIn(weather(8)), DueKind::airChanged) == nullptr);  // 5.8 kPa, within the allowance and the band
}

TEST_CASE("Altitude counts in either direction, and with cold both are named") {
  AirWorld world;
  world.setBefore(Pressure{20000});
  const DueRow up = world.rowIn(weather(22, 1609));
  // 83,435.3 Pa at 1609 m (U.S. Standard Atmosphere, 1976): 101,325 - 83,435 = 17,890 Pa more gauge in a rigid bladder.
  REQUIRE(find(up, DueKind::airChanged) != nullptr);
  CHECK(find(up, DueKind::airChanged)->change == Pressure{17890});
  CHECK(find(up, DueKind::airChanged)->cause == AirCause::altitude);
  CHECK(find(world.rowIn(weather(2, 1609)), DueKind::airChanged)->cause == AirCause::both);
  AirWorld high;
  high.setBefore(Pressure{20000}, weather(22, 1609));
  high.look().climate = climateOf(weather(22, 1609));
  const DueRow down = high.rowIn(weather(22, 0));
  REQUIRE(find(down, DueKind::airChanged) != nullptr);
  CHECK(find(down, DueKind::airChanged)->change == Pressure{-17890});
  CHECK(find(down, DueKind::airChanged)->air == Pressure{2110});
}

TEST_CASE("A bladder that would be below zero says that no air is left") {
  // 1 psi at 70 F is -0.185 psi at 30 F: (14.696 + 1) * 489.67 / 529.67 - 14.696.
  AirWorld world;
  world.setBefore(Pressure{6895}, weather((70.0 - 32.0) / 1.8));
  world.look().climate = climateOf(weather((70.0 - 32.0) / 1.8));
  const DueRow row = world.rowIn(weather((30.0 - 32.0) / 1.8));
  REQUIRE(find(row, DueKind::airChanged) != nullptr);
  CHECK(find(row, DueKind::airChanged)->belowZero);
  CHECK(find(row, DueKind::airChanged)->air->psi() == Approx(-0.185).margin(0.001));
}

TEST_CASE("A port that was never measured is judged by its move from the sheet's start alone, and has no pressure to show") {
  AirWorld world;
  const DueRow row = world.rowIn(weather(2));
  REQUIRE(find(row, DueKind::airChanged) != nullptr);
  CHECK(find(row, DueKind::airChanged)->change == Pressure{-8221});
  CHECK_FALSE(find(row, DueKind::airChanged)->air);
}

TEST_CASE("Air set when no weather was noted is not judged, and counted") {
  AirWorld world;
  world.look().climate = {};
  world.setBefore(Pressure{20000}, {});
  const DueRow row = world.rowIn(weather(-20));
  CHECK(find(row, DueKind::airChanged) == nullptr);
  CHECK(row.isAirUnknown);
  CHECK(boardOf(world.views, {kNow}, weather(-20)).airUnknown == 1);
  CHECK_FALSE(world.row().isAirUnknown);  // no weather now: there is nothing to judge by
}

TEST_CASE("A look in the cold, by a check or in a line, answers for the air as it then stood") {
  AirWorld world;
  world.setBefore(Pressure{20000});
  REQUIRE(find(world.rowIn(weather(2)), DueKind::airChanged) != nullptr);
  LineRecord line;
  line.unit = world.unitId;
  line.brow = line.straps = line.hold = fit::Finding::snug;
  line.climate = climateOf(weather(2));
  line.stamp = world.stamp(dayOf(2026, 10, 13));
  world.athlete().lines.push_back(line);
  CHECK(find(world.rowIn(weather(2)), DueKind::airChanged) == nullptr);
  CHECK(find(world.rowIn(weather(22)), DueKind::airChanged)->cause == AirCause::warm);  // and back again it moves as far
}

TEST_CASE("What was seen off in a line is due until a check saw it, and a fault is not worn") {
  AirWorld world;
  LineRecord line;
  line.unit = world.unitId;
  line.brow = line.hold = fit::Finding::snug;
  line.straps = fit::Finding::under;
  line.stamp = world.stamp(dayOf(2026, 10, 13));
  world.athlete().lines.push_back(line);
  const DueRow row = world.row();
  REQUIRE(find(row, DueKind::lineOff) != nullptr);
  CHECK(find(row, DueKind::lineOff)->mark == fit::Mark::straps);
  CHECK(find(row, DueKind::lineOff)->lane == Lane::beforePractice);
  world.athlete().lines.back().straps = fit::Finding::fault;
  CHECK(world.row().lane == Lane::doNotWear);
  world.ended(dayOf(2026, 10, 14), fit::CheckKind::look, fit::Verdict::fits);
  CHECK(find(world.rowOn(kToday, 900), DueKind::lineOff) == nullptr);
}

TEST_CASE("Five readings that fall by more than the allowance say a leak; a refill starts anew") {
  AirWorld world;
  for (int week = 0; week < 5; ++week)
    world.air(dayOf(2026, 9, 7).plus(7 * week), Pressure{30000 - 3000 * week}, week == 0 ? AirKind::set : AirKind::read);
  const DueRow row = world.row();
  REQUIRE(find(row, DueKind::airLeaking) != nullptr);
  CHECK(find(row, DueKind::airLeaking)->change->pa < -2000);
  CHECK(find(row, DueKind::airLeaking)->count == 5);
  CHECK(find(row, DueKind::airLeaking)->lane == Lane::beforePractice);
  forgetAir(world.unit());  // back from repair
  CHECK(find(world.row(), DueKind::airLeaking) == nullptr);
}

TEST_CASE("A helmet filled outside a check is seen before practice") {
  AirWorld world;
  world.setBefore(Pressure{20000});
  world.air(dayOf(2026, 10, 13), Pressure{26000});
  CHECK(find(world.row(), DueKind::airChanged) == nullptr);  // within a check
  world.unit().air.back().check.clear();
  REQUIRE(find(world.row(), DueKind::airChanged) != nullptr);
  CHECK(find(world.row(), DueKind::airChanged)->cause == AirCause::refilled);
}

TEST_CASE("The Book's own weather counts where none is given, and is said to be old after a day") {
  AirWorld world;
  world.setBefore(Pressure{20000});
  world.views.team->weather = WeatherRecord{weather(2), world.stamp(kToday, 600)};
  const DueRow row = world.row();
  REQUIRE(find(row, DueKind::airChanged) != nullptr);
  CHECK(find(row, DueKind::airChanged)->at == at(kToday, 600));
  CHECK(find(world.rowIn(weather(22)), DueKind::airChanged) == nullptr);
  CHECK_FALSE(weatherNow(world.views, {kNow}, {}).isOld);
  CHECK(weatherNow(world.views, {at(kToday.plus(1), 601)}, {}).isOld);
  CHECK_FALSE(weatherNow(world.views, {at(kToday.plus(1), 601)}, weather(5)).notedAt);
}
