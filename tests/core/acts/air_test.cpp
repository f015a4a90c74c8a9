// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include <numeric>

#include "desk_world.h"

using namespace snugline;
using namespace snugline::book;
using season::kNow;

namespace {

season::Conditions weather(double celsius) {
  season::Conditions c;
  c.temperature = Temperature::celsius(celsius);
  return c;
}
void note(season::SmallWorld& world, Instant at) {
  season::Stamp stamp{at, {}, "d:77", 77};
  world.views.team->weather = season::WeatherRecord{weather(4), stamp};
}

}  // namespace

TEST_CASE("Weather beyond what is believed is refused with its place and range, and saying nothing is no weather") {
  DeskWorld world;
  season::Conditions c;
  CHECK(refusal(noteWeather(world.views, c)) == rule::kNothingSaid);
  c.temperature = Temperature::celsius(-61);
  CHECK(noteWeather(world.views, c).error().code == ErrorCode::outOfRange);
  CHECK(noteWeather(world.views, c).error().place == "temperature");
  c.temperature = Temperature::celsius(61);
  CHECK(noteWeather(world.views, c).error().code == ErrorCode::outOfRange);
  c.temperature = Temperature::celsius(-60);
  CHECK(noteWeather(world.views, c));
  c.elevation = Elevation::metres(9001);
  CHECK(noteWeather(world.views, c).error().place == "elevation");
  c.elevation = Elevation::metres(-431);
  CHECK(noteWeather(world.views, c).error().code == ErrorCode::outOfRange);
  CHECK(setPlace(world.views, "high field", Elevation::metres(9001)).error().code == ErrorCode::outOfRange);
  CHECK(removePlace(world.views, "nowhere").error().code == ErrorCode::notFound);
}

TEST_CASE("Weather noted more than a day away is not carried") {
  DeskWorld world;
  note(world, season::at(season::kToday.plus(-1), 840));
  CHECK(weatherFor(world.views, kNow).temperature == Temperature::celsius(4));
  note(world, season::at(season::kToday.plus(-1), 839));
  CHECK(weatherFor(world.views, kNow).isEmpty());
}

TEST_CASE("A reading dated before the last one or the last refill is refused; so are a port that is not there and a wild pressure") {
  DeskWorld world;
  note(world, kNow);
  const AirReading reading{gear::Port::crown, Pressure{18000}, false, false, {}};
  const auto first = readAir(world.views, world.unitId, reading, kNow);
  REQUIRE(first);
  CHECK(std::get<UnitAirRead>(first->front().body).conditions.temperature == Temperature::celsius(4));
  season::AirEvent event;
  event.gauge = Pressure{18000};
  event.stamp = world.stamp(season::kToday, 841);
  season::addAir(world.unit(), event);
  CHECK(refusal(readAir(world.views, world.unitId, reading, kNow)) == rule::kBeforeReading);
  world.unit().air.back().kind = season::AirKind::set;
  CHECK(refusal(readAir(world.views, world.unitId, reading, kNow)) == rule::kBeforeRefill);
  CHECK(readAir(world.views, world.unitId, reading, season::at(season::kToday, 842)));
  CHECK(readAir(world.views, world.unitId, {gear::Port::sides, Pressure{18000}, false, false, {}}, kNow).error().code ==
        ErrorCode::unknownPort);
  CHECK(readAir(world.views, world.unitId, {gear::Port::crown, Pressure{200001}, false, false, {}}, kNow).error().code ==
        ErrorCode::outOfRange);
  world.unit().place = season::UnitPlace::repair;
  CHECK(refusal(readAir(world.views, world.unitId, reading, kNow)) == rule::kUnitAway);
}

TEST_CASE("A line is three marks for each athlete in it, with the weather, and is refused as a whole") {
  DeskWorld world;
  note(world, kNow);
  const auto drafts = lineCheck(world.views, {world.athleteId}, {{world.athleteId, fit::Mark::straps, fit::Finding::under}}, kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"line-seen"});
  const auto& body = std::get<LineSeen>(drafts->front().body);
  CHECK(body.unit == world.unitId);
  CHECK(body.brow == fit::Finding::snug);
  CHECK(body.straps == fit::Finding::under);
  CHECK(body.conditions.temperature == Temperature::celsius(4));
  CHECK(refusal(lineCheck(world.views, {}, {}, kNow)) == rule::kNothingSaid);
  CHECK(lineCheck(world.views, {world.athleteId, world.athleteId}, {}, kNow).error().code == ErrorCode::inconsistent);
  CHECK(lineCheck(world.views, {world.athleteId}, {{"d:404"}}, kNow).error().code == ErrorCode::inconsistent);
  CHECK(lineCheck(world.views, {world.athleteId}, {{world.athleteId, fit::Mark::jaw}}, kNow).error().code == ErrorCode::inconsistent);
  world.unit().holds.push_back({});
  CHECK(refusal(lineCheck(world.views, {world.athleteId}, {}, kNow)) == rule::kUnitHeld);
  world.unit().holds.clear();
  world.athlete().checks.clear();
  CHECK(refusal(lineCheck(world.views, {world.athleteId}, {}, kNow)) == rule::kNeverFitted);
}

TEST_CASE("Whoever has a report, an open check or a hit is not in the line, also when the athletic trainer knows") {
  DeskWorld world;
  const auto why = [&] { return refusal(lineCheck(world.views, {world.athleteId}, {}, kNow)); };
  season::SaidRecord& said = world.said(season::kToday);
  said.where = fit::Mark::jaw;
  CHECK(why() == rule::kReportOpen);
  said.isUnwell = true;
  CHECK(why() == rule::kUnwellSaid);
  said.isAcknowledged = true;
  CHECK(why() == rule::kUnwellSaid);
  said.isAnswered = true;
  CHECK(lineCheck(world.views, {world.athleteId}, {}, kNow));
  world.athlete().openCheck = "d:500";
  CHECK(why() == rule::kCheckOpen);
}

TEST_CASE("A line is walked in screens of at most twelve, of eight or more from sixteen on") {
  CHECK(lineScreens(0).empty());
  CHECK(lineScreens(7) == std::vector{7});
  CHECK(lineScreens(13) == std::vector{7, 6});
  CHECK(lineScreens(50) == std::vector{10, 10, 10, 10, 10});
  for (int athletes = 1; athletes <= 200; ++athletes) {
    const auto screens = lineScreens(athletes);
    CHECK(std::accumulate(screens.begin(), screens.end(), 0) == athletes);
    for (const int size : screens) CHECK((size <= kLineScreenMost && (athletes < 16 || size >= 8)));
  }
}
