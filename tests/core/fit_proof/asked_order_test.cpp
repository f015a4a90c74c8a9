// SPDX-License-Identifier: Apache-2.0
// Every check in the order in which the guide asks, for each demo sheet. See positions.h for the reduction.
#include "tests/core/fit_proof/asked_order.h"

#include <algorithm>
#include <cstdio>
#include SNUGLINE_CATCH_HEADER

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::proof;

namespace {

constexpr std::size_t kCountersAt = 16;  // one position in sixteen, all of them in the long count

void prove(const gear::ModelSheet& sheet, bool isLong, bool isCold = false) {
  const Ground ground(sheet, isCold);
  const std::string id = sheet.id + (isCold ? ", cold" : "");
  Count count;
  const std::vector<Key> positions = walkAskedOrder(ground, count, isLong);
  std::printf(
      "%s: %zu positions, %zu transitions, %zu judged with counters; fits %zu, adjust %zu, do-not-wear %zu, unfinished %zu; at most %d "
      "steps\n",
      id.c_str(), count.positions, count.transitions, count.judged, count.fits, count.adjust, count.doNotWear, count.unfinished,
      stepsLeft(ground.start));
  checkCounters(ground, count, positions, isLong ? 1 : kCountersAt);
  const int turns = isLong ? 3 : 2;
  const std::size_t real = walkReal(ground, count, positions, turns);
  std::printf("%s: %zu real states up to %d turns, all among the positions\n", id.c_str(), real, turns);
  std::fflush(stdout);
  INFO(count.firstFault);
  CHECK(count.faults == 0);
  CHECK(count.fits > 0);
  CHECK(count.doNotWear > 0);
  CHECK(count.adjust > 0);
  CHECK(real > 0);
}

}  // namespace

TEST_CASE("Asked order on Alder A1: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove(demoSheet("alder-a1"), false);
}
TEST_CASE("Asked order on Brant B2: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove(demoSheet("brant-b2"), false);
}
TEST_CASE("Asked order on Cedar C3: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove(demoSheet("cedar-c3"), false);
}

TEST_CASE("In the cold no air is let out, nothing fits against the predicate, and every check ends, on every demo sheet") {
  for (const std::string& id : kDemoSheets) prove(demoSheet(id), false, true);
}
TEST_CASE("Whatever the order in which a sheet has its marks checked, nothing fits against the predicate and every check ends") {
  gear::ModelSheet backwards = demoSheet("alder-a1");
  std::reverse(backwards.markOrder.begin(), backwards.markOrder.end());
  prove(backwards, false);
  gear::ModelSheet handsFirst = demoSheet("cedar-c3");
  handsFirst.markOrder = {6, 7, 8, 0, 3, 1, 2, 4, 5};
  prove(handsFirst, false);
  prove(handsFirst, false, true);
}

TEST_CASE("Long count on Alder A1: every subset of used ways, real states up to three turns", "[.full]") {
  prove(demoSheet("alder-a1"), true);
}
TEST_CASE("Long count on Brant B2: every subset of used ways, real states up to three turns", "[.full]") {
  prove(demoSheet("brant-b2"), true);
}
TEST_CASE("Long count on Cedar C3: every subset of used ways, real states up to three turns", "[.full]") {
  prove(demoSheet("cedar-c3"), true);
}
