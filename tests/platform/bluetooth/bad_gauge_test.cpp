// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "bench.h"

using namespace snugline;
using namespace snugline::bluetooth;
using ports::GaugePhase;

namespace {

// Starts with the gauge "Kit", which is as the words say, and waits for a phase.
void startWith(Bench& bench, const std::string& words, GaugePhase phase) {
  bench.play("gauge AA:00:00:00:00:01 Kit serial=7 " + words);
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(phase));
}

GaugePace fewAttempts() {
  GaugePace pace = GaugePace::scaled(20);
  pace.attemptsMost = 2;
  return pace;
}

}  // namespace

TEST_CASE("A connection that drops while readings arrive is made again by itself") {
  Bench bench;
  startWith(bench, "", GaugePhase::ready);
  bench.play("send AA:00:00:00:00:01 01000000");
  REQUIRE(bench.until([&] { return bench.has(0x2A6D, {1, 0, 0, 0}); }));
  bench.play("drop AA:00:00:00:00:01");
  REQUIRE(bench.until([&] { return bench.countOf(GaugePhase::lost) == 1; }));
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.last().attempt == 1);
  bench.play("send AA:00:00:00:00:01 02000000");
  CHECK(bench.until([&] { return bench.has(0x2A6D, {2, 0, 0, 0}); }));
}

TEST_CASE("A gauge that is gone for a minute and comes back under another address is found again") {
  Bench bench;
  startWith(bench, "", GaugePhase::ready);
  bench.play("remove AA:00:00:00:00:01");
  // Searching and pausing for more than a minute of the pace as people have it: lost, then not found three times.
  REQUIRE(bench.until([&] { return bench.countOf(GaugePhase::notFound) == 3; }));
  CHECK(bench.countOf(GaugePhase::lost) == 1);
  CHECK(bench.last().willRetry);
  bench.play("gauge BB:00:00:00:00:01 Kit serial=7");
  CHECK(bench.untilPhase(GaugePhase::ready));
}

TEST_CASE("A gauge whose services never come runs out of time, attempt by attempt, until no more is tried") {
  Bench bench({"adapter on"}, fewAttempts());
  startWith(bench, "silent", GaugePhase::gaveUp);
  CHECK(bench.countOf(GaugePhase::timedOut) == 1);
  CHECK(bench.last().cause == GaugePhase::timedOut);
  CHECK(bench.last().step == GaugePhase::connecting);
  CHECK(bench.last().attempt == 2);
  CHECK_FALSE(bench.last().willRetry);
}

TEST_CASE("A refused reading is said and tried again") {
  Bench bench({"adapter on"}, fewAttempts());
  startWith(bench, "refuses", GaugePhase::gaveUp);
  CHECK(bench.countOf(GaugePhase::readError) == 1);
  CHECK(bench.last().cause == GaugePhase::readError);
  CHECK(bench.packets.empty());
}

TEST_CASE("A gauge that takes no connection is said to be busy") {
  Bench bench({"adapter on"}, fewAttempts());
  startWith(bench, "busy", GaugePhase::gaveUp);
  CHECK(bench.countOf(GaugePhase::busy) == 1);
  CHECK(bench.last().cause == GaugePhase::busy);
  bench.play("gauge AA:00:00:00:00:01 Kit serial=7");
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());  // asked anew, it is tried anew
  CHECK(bench.untilPhase(GaugePhase::ready));
}

TEST_CASE("A device without the service is not tried twice") {
  Bench bench;
  startWith(bench, "service=1809", GaugePhase::wrongService);
  CHECK_FALSE(bench.last().willRetry);
}

TEST_CASE("Two pressures that nothing tells apart are refused") {
  const std::string twins = GENERATE("twins=bare", "twins=alike");
  Bench bench;
  startWith(bench, twins, GaugePhase::duplicateCharacteristics);
  CHECK_FALSE(bench.last().willRetry);
  CHECK(bench.packets.empty());
}

TEST_CASE("Of two gauges of one name the one with the remembered serial number is taken") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7", "gauge AA:00:00:00:00:02 Kit serial=8"});
  REQUIRE(bench.gauge.start({"Kit", "8"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.last().gauge.serial == "8");
}

TEST_CASE("Of two gauges of one name and no serial number kept none is taken before somebody chooses") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7", "gauge AA:00:00:00:00:02 Kit serial=8"});
  REQUIRE(bench.gauge.start({"Kit", ""}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::several));
  REQUIRE(bench.gauge.scan().has_value());
  REQUIRE(bench.until([&] { return bench.found.size() >= 2; }));
  REQUIRE(bench.gauge.choose("AA:00:00:00:00:02").has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.last().gauge.serial == "8");
}

TEST_CASE("A gauge of the remembered name with another serial number is left alone") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=9"}, fewAttempts());
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::gaveUp));
  CHECK(bench.last().cause == GaugePhase::notFound);
  CHECK(bench.packets.empty());
}

TEST_CASE("Only what a scan found can be chosen") {
  Bench bench;
  const auto chosen = bench.gauge.choose("AA:00:00:00:00:01");
  REQUIRE_FALSE(chosen.has_value());
  CHECK(chosen.error().code == ErrorCode::notFound);
}
