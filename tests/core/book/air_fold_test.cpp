// SPDX-License-Identifier: Apache-2.0
// Weather, places and air in a Book: what is carried, kept, taken back, and read from lines of both versions.
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

season::Conditions weather(double celsius) {
  season::Conditions c;
  c.temperature = Temperature::celsius(celsius);
  c.elevation = Elevation::metres(180);
  c.whereabouts = season::Whereabouts::outside;
  c.place = "home field";
  return c;
}

std::string lineOf(const std::string& kind, int version, const std::string& body) {
  return R"({"device":"aaaaaaaaaaaaa","n":1,"order":5,"at_ms":0,"offset_min":0,"who":"","kind":")" + kind + R"(","v":)" +
         std::to_string(version) + R"(,"about":"x:1","body":)" + body + "}";
}
ErrorCode codeOf(const std::string& line) {
  const auto fact = book::decode(line);
  return fact ? ErrorCode::internal : fact.error().code;
}

}  // namespace

TEST_CASE("Weather is kept as last noted, and by place and whereabouts; a preset stays until it is given up") {
  World world;
  const auto book = world.create();
  put(*book, must(book::setPlace(book->views(), "high field", Elevation::metres(1609))));
  put(*book, must(book::noteWeather(book->views(), weather(14))));
  season::Conditions away;
  away.temperature = Temperature::celsius(3);
  away.whereabouts = season::Whereabouts::truck;
  away.place = "high field";
  put(*book, must(book::noteWeather(book->views(), away)));
  const season::TeamRecord& team = *book->views().team;
  REQUIRE(team.weather);
  CHECK(team.weather->conditions.elevation == Elevation::metres(1609));  // the place's own
  CHECK(team.places.at("home field").temperatures[1] == Temperature::celsius(14));
  CHECK(team.places.at("high field").temperatures[2] == Temperature::celsius(3));
  CHECK(team.places.at("high field").isPreset);
  const auto gone = put(*book, must(book::removePlace(book->views(), "high field"))).ids.front();
  CHECK_FALSE(book->views().team->places.contains("high field"));
  must(book->correct({gone}));
  CHECK(book->views().team->places.contains("high field"));
  const auto dump = must(book->dumpViews());
  CHECK(must(book->rebuild()).wasEqual);
  CHECK(must(book->dumpViews()) == dump);
}

TEST_CASE("An answer about air carries the weather to the unit, and taking it back takes its event away") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  put(*book, must(book::noteWeather(book->views(), weather(14))));
  beginCheck(*book, f, world.today());
  season::AirSource source;
  source.gauge = "Bench gauge";
  source.rawDeciPascal = 1'190'000;
  const fit::AirRead read{gear::Port::crown, Pressure{18000}, true};
  const auto ids = put(*book, must(book::answer(book->views(), f.check, {read}, world.clock.now(), source))).ids;
  answer(*book, f, seen(fit::Mark::straps), world.today());
  const season::UnitRecord* unit = book->views().unit(f.unit);
  REQUIRE(unit->air.size() == 1);
  CHECK(unit->air.front().gauge == Pressure{18000});
  CHECK(unit->air.front().source == source);
  CHECK(unit->air.front().climate.temperatureMk == 287150);
  CHECK(unit->air.front().climate.ambientPa == 99181);  // 180 m, U.S. Standard Atmosphere, 1976
  CHECK(unit->air.front().check == f.check);
  CHECK(unit->ports.at(0).isMeasured);
  takeOut(*book, ids.front());
  CHECK(book->views().unit(f.unit)->air.empty());
  CHECK(book->views().unit(f.unit)->ports.empty());
  CHECK(must(book->rebuild()).wasEqual);
}

TEST_CASE("Records of air stand after the Book was closed and opened as before") {
  World world;
  Fitting f;
  season::UnitRecord before;
  {
    const auto book = world.create();
    f = pairUp(*book, world.today());
    put(*book, must(book::noteWeather(book->views(), weather(14))));
    fitWhole(*book, f, world.clock);
    for (int i = 0; i < 6; ++i) {
      world.clock.set(Instant{world.clock.now().ms + 7LL * 24 * 3600 * 1000, -300});
      put(*book, must(book::noteWeather(book->views(), weather(14 - i))));
      const book::AirReading reading{gear::Port::crown, Pressure{30000 - 4000 * i}, false, false, {}};
      put(*book, must(book::readAir(book->views(), f.unit, reading, world.clock.now())));
    }
    put(*book, must(book::lineCheck(book->views(), {f.athlete}, {{f.athlete, fit::Mark::straps, fit::Finding::under}}, world.clock.now())));
    before = *book->views().unit(f.unit);
    CHECK(before.ports.at(0).leakCount == 6);
    CHECK(before.ports.at(0).leakHighPa < -2000);
  }
  const auto book = world.open();
  CHECK(*book->views().unit(f.unit) == before);
  REQUIRE(book->views().athlete(f.athlete)->lines.size() == 1);
  CHECK(book->views().athlete(f.athlete)->lines.front().straps == fit::Finding::under);
  CHECK(must(book->rebuild()).wasEqual);
  CHECK(*book->views().unit(f.unit) == before);
}

TEST_CASE("What pumps did in a check is recorded with its end") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  beginCheck(*book, f, world.today());
  answer(*book, f, fit::HairSeen{true}, world.today());
  fit::MarkSeen brow = seen(fit::Mark::brow, fit::Finding::over);
  brow.gap = Length::millimetres(38);
  answer(*book, f, brow, world.today());
  answer(*book, f, fit::AirRead{gear::Port::crown, Pressure{26000}, true}, world.today());
  fit::Adjusted out;
  out.deed = fit::Deed::release;
  out.port = gear::Port::crown;
  out.pumps = 2;
  out.air = Pressure{20000};
  answer(*book, f, out, world.today());
  brow = seen(fit::Mark::brow);
  brow.gap = Length::millimetres(32);
  answer(*book, f, brow, world.today());
  put(*book, must(book::endCheck(book->views(), f.check, world.clock.now())));
  const auto& pumped = book->views().unit(f.unit)->pumped;
  REQUIRE(pumped.size() == 2);
  CHECK(pumped[0] == season::PumpedRecord{f.check, gear::Port::crown, -2, {}, {}, Pressure{26000}, Pressure{20000}});
  CHECK(pumped[1] == season::PumpedRecord{f.check, gear::Port::crown, -2, Length::millimetres(38), Length::millimetres(32), {}, {}});
  CHECK(must(book->rebuild()).wasEqual);
}

TEST_CASE("Version 2 stands only where it is needed, and a version that does not go with its keys is refused") {
  const std::string plain = R"("answers":[{"air":"crown","gauge_pa":20000,"on_head":true}])";
  CHECK(book::decode(lineOf("air-read", 1, "{" + plain + "}")));
  CHECK(book::decode(lineOf("air-read", 2, "{" + plain + R"(,"unit":"d:2"})")));
  CHECK(codeOf(lineOf("air-read", 1, "{" + plain + R"(,"unit":"d:2"})")) == ErrorCode::inconsistent);
  CHECK(codeOf(lineOf("air-read", 2, "{" + plain + "}")) == ErrorCode::inconsistent);
  CHECK(codeOf(lineOf("air-read", 2, "{" + plain + R"(,"conditions":{}})")) == ErrorCode::missingKey);
  CHECK(std::holds_alternative<book::Unknown>(book::decode(lineOf("air-read", 3, "{}"))->body));
  CHECK(std::holds_alternative<book::Unknown>(book::decode(lineOf("weather-noted", 2, "{}"))->body));
}

TEST_CASE("Weather that cannot be is refused when it arrives") {
  CHECK(codeOf(lineOf("weather-noted", 1, R"({"temperature_mk":213149})")) == ErrorCode::outOfRange);
  CHECK(codeOf(lineOf("weather-noted", 1, R"({"temperature_mk":333151})")) == ErrorCode::outOfRange);
  CHECK(codeOf(lineOf("weather-noted", 1, R"({"elevation_mm":-430001})")) == ErrorCode::outOfRange);
  CHECK(codeOf(lineOf("weather-noted", 1, R"({"elevation_mm":9000001})")) == ErrorCode::outOfRange);
  CHECK(codeOf(lineOf("unit-air-read", 1, R"({"port":"crown","gauge_pa":200001})")) == ErrorCode::outOfRange);
  CHECK(codeOf(lineOf("unit-air-read", 1, R"({"port":"nose","gauge_pa":20000})")) == ErrorCode::unknownWord);
  CHECK(codeOf(lineOf("place-set", 1, R"({"place":""})")) == ErrorCode::outOfRange);
}
