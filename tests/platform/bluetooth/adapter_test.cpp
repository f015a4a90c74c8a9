// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "bench.h"

using namespace snugline;
using namespace snugline::bluetooth;
using ports::GaugePhase;

TEST_CASE("Bluetooth that is off is said, and once it is on the gauge is found without being asked for again") {
  Bench bench({"adapter off", "gauge AA:00:00:00:00:01 Kit serial=7"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::off));
  CHECK(bench.last().willRetry);
  bench.play("adapter on");
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  CHECK(bench.countOf(GaugePhase::off) == 1);
}

TEST_CASE("A machine without an adapter says so, and takes one that is plugged in") {
  Bench bench({"gauge AA:00:00:00:00:01 Kit serial=7"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::noAdapter));
  bench.play("adapter on");
  CHECK(bench.untilPhase(GaugePhase::ready));
}

TEST_CASE("Bluetooth that is switched off under a connection is said, not the loss that follows from it") {
  Bench bench({"adapter on", "gauge AA:00:00:00:00:01 Kit serial=7"});
  REQUIRE(bench.gauge.start({"Kit", "7"}).has_value());
  REQUIRE(bench.untilPhase(GaugePhase::ready));
  bench.play("adapter off");
  bench.play("drop AA:00:00:00:00:01");
  REQUIRE(bench.untilPhase(GaugePhase::off));
  bench.play("adapter on");
  CHECK(bench.untilPhase(GaugePhase::ready));
}

TEST_CASE("A scan ends by itself when its time is over") {
  Bench bench;
  REQUIRE(bench.gauge.scan().has_value());
  REQUIRE(bench.untilPhase(GaugePhase::scanning));
  CHECK(bench.untilPhase(GaugePhase::idle));
}
