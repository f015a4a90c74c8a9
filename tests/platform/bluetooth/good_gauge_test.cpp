// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "bench.h"

using namespace snugline;
using namespace snugline::bluetooth;
using ports::GaugePhase;

namespace {
constexpr std::uint16_t kPressure = 0x2A6D, kTemperature = 0x2A6E, kBattery = 0x2A19, kSerial = 0x2A25, kMeasurement = 0x290C;
const std::vector<std::uint8_t> kOpenAir{0x84, 0x5D, 0x0F, 0x00};
}  // namespace

TEST_CASE("A gauge is found, chosen, read, and says who it is, how warm it is and how full its battery is") {
  Bench bench({"adapter on",
               "gauge AA:00:00:00:00:01 Bench_gauge serial=0142 battery=54 temperature=6C07 measurement=0102030405060708090A0B",
               "gauge AA:00:00:00:00:02 Loud_speaker service=1812"});
  REQUIRE(bench.gauge.scan({"Bench gauge", ""}).has_value());
  REQUIRE(bench.until([&] { return !bench.idOf("Bench gauge").empty() && !bench.idOf("Loud speaker").empty(); }));
  for (const ports::FoundGauge& one : bench.found) {
    CHECK(one.saysPressure == (one.name == "Bench gauge"));
    CHECK(one.isRemembered == (one.name == "Bench gauge"));
    CHECK(one.rssi == -50);
  }
  REQUIRE(bench.gauge.choose(bench.idOf("Bench gauge")).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.last().gauge.toRemember() == ports::RememberedGauge{"Bench gauge", "0142"});
  CHECK_FALSE(bench.last().isPolled);
  REQUIRE(bench.until([&] { return bench.has(kTemperature, {0x6C, 0x07}) && bench.has(kBattery, {0x54}); }));
  CHECK(bench.has(kPressure, kOpenAir));
  CHECK(bench.has(kSerial, {'0', '1', '4', '2'}));
  CHECK(bench.has(kMeasurement, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}));
  bench.play("send AA:00:00:00:00:01 FD9D1200");
  REQUIRE(bench.until([&] { return bench.has(kPressure, {0xFD, 0x9D, 0x12, 0x00}); }));
  CHECK(bench.packets.back().gauge == "Bench gauge 0142");
  CHECK(bench.packets.back().at == Instant{1'000, 0});
}

TEST_CASE("A remembered gauge is connected without asking, and nothing is heard after a stop") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  bench.gauge.stop();
  CHECK(bench.last().phase == GaugePhase::idle);
  const std::size_t states = bench.states.size(), packets = bench.packets.size();
  bench.play("send AA:00:00:00:00:01 01020304");
  bench.play("drop AA:00:00:00:00:01");
  REQUIRE(bench.gauge.scan().has_value());
  REQUIRE(bench.until([&] { return bench.states.size() > states; }));
  CHECK(bench.states.at(states).phase == GaugePhase::scanning);
  CHECK(bench.packets.size() == packets);
}

TEST_CASE("What a gauge sends before it was asked to is not taken for a reading") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7 early"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  bench.play("send AA:00:00:00:00:01 01000000");
  REQUIRE(bench.until([&] { return bench.has(kPressure, {1, 0, 0, 0}); }));
  CHECK(bench.has(kPressure, kOpenAir));
  CHECK_FALSE(bench.has(kPressure, {0xEF, 0xBE, 0xAD, 0xDE}));
}

TEST_CASE("A gauge that cannot send is asked again and again") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7 flags=read"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.last().isPolled);
  bench.play("value AA:00:00:00:00:01 0A000000");
  CHECK(bench.until([&] { return bench.has(kPressure, {0x0A, 0, 0, 0}); }));
}

TEST_CASE("A gauge that only sends needs no reading") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit flags=notify"});
  REQUIRE(bench.gauge.start({"Kit", ""}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  bench.play("send AA:00:00:00:00:01 0B000000");
  CHECK(bench.until([&] { return bench.has(kPressure, {0x0B, 0, 0, 0}); }));
}

TEST_CASE("Absurd values are handed on byte by byte as they came") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7 battery=FF"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  bench.play("send AA:00:00:00:00:01 010203");
  bench.play("send AA:00:00:00:00:01 FFFFFFFF");
  bench.play("send AA:00:00:00:00:01 " + std::string(80, 'A'));
  CHECK(bench.until([&] { return bench.has(kPressure, std::vector<std::uint8_t>(40, 0xAA)); }));
  CHECK(bench.has(kPressure, {1, 2, 3}));
  CHECK(bench.has(kPressure, {0xFF, 0xFF, 0xFF, 0xFF}));
  CHECK(bench.last().phase == GaugePhase::ready);
}
