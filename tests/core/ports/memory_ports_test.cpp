// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/ports/memory_ports.h"

using namespace snugline;
using namespace snugline::ports;

TEST_CASE("The clock in memory stands still until it is stepped") {
  MemoryClock clock(parseInstant("2026-10-14T15:30:00-05:00").value());
  CHECK(clock.now() == clock.now());
  clock.stepMs(1500);
  CHECK(clock.now().ms == parseInstant("2026-10-14T15:30:01.5-05:00").value().ms);
  clock.stepDays(-1);
  CHECK(dayOf(clock.now()) == dayOf(2026, 10, 13));
  CHECK(clock.now().offsetMinutes == -300);
  clock.set(Instant{5, 60});
  CHECK(clock.now() == Instant{5, 60});
}

TEST_CASE("A failing clock shows a day on which no season was") {
  FailingClock clock;
  CHECK(dayOf(clock.now()) == dayOf(1970, 1, 1));
}

TEST_CASE("Keys in memory find what was kept, under its own mark only") {
  MemoryKeys keys;
  const std::string one = keys.freshMark().value(), other = keys.freshMark().value();
  CHECK(one.size() == 32);
  CHECK(one.find_first_not_of("0123456789abcdef") == std::string::npos);
  CHECK(one != other);
  CHECK_FALSE(keys.find(one).value().has_value());
  const Identity identity{keys.freshSeed().value(), 7, "device 1 inode 2"};
  REQUIRE(keys.keep(one, identity).has_value());
  REQUIRE(keys.find(one).value().has_value());
  CHECK(keys.find(one).value()->seed == identity.seed);
  CHECK(keys.find(one).value()->notedN == 7);
  CHECK(keys.find(one).value()->place == "device 1 inode 2");
  CHECK_FALSE(keys.find(other).value().has_value());
  keys.forget();
  CHECK(keys.size() == 0);
}

TEST_CASE("Keys in memory repeat themselves for the same number and differ for another") {
  MemoryKeys a(5), b(5), c(6);
  const Seed seed = a.freshSeed().value();
  CHECK(seed == b.freshSeed().value());
  CHECK(seed != c.freshSeed().value());
  CHECK(seed != a.freshSeed().value());
}

TEST_CASE("Failing keys answer every question with their error") {
  const Error error{ErrorCode::cannotWrite, "/keys", "read-only"};
  FailingKeys keys(error);
  CHECK(keys.find("m").error() == error);
  CHECK(keys.keep("m", {}).error() == error);
  CHECK(keys.freshSeed().error() == error);
  CHECK(keys.freshMark().error() == error);
}

TEST_CASE("A scripted reader hands over what was scanned, and a failing one cannot be started") {
  ScriptedTagReader reader({"A", "B"});
  std::string got;
  REQUIRE(reader.start([&](const std::string& text) { got += text; }).has_value());
  while (reader.sendNext()) {
  }
  CHECK(got == "AB");
  FailingTagReader gone;
  CHECK(gone.start([&](const std::string&) { got = "called"; }).error().code == ErrorCode::notFound);
  CHECK(got == "AB");
}

TEST_CASE("A link leads along its road, and a broken one fails after what went through") {
  MemoryPeerLink link;
  link.lay("hub", [](const MemoryPeerLink::Bytes& request) {
    MemoryPeerLink::Bytes answer = request;
    answer.push_back(9);
    return Result<MemoryPeerLink::Bytes>(answer);
  });
  CHECK(link.call("hub", {1}).value() == MemoryPeerLink::Bytes{1, 9});
  CHECK(link.call("nowhere", {1}).error() == Error{ErrorCode::notFound, "nowhere", {}});
  const Error cut{ErrorCode::cannotRead, "hub", "broken off"};
  FailingPeerLink broken(link, 1, cut);
  CHECK(broken.call("hub", {2}).value() == MemoryPeerLink::Bytes{2, 9});
  CHECK(broken.call("hub", {3}).error() == cut);
  CHECK(link.calls() == 3);
  FailingPeerLink never;
  CHECK(never.call("hub", {4}).error().code == ErrorCode::cannotRead);
}
