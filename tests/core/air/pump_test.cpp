// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "core/air/pump_response.h"

using namespace snugline;
using namespace snugline::air;

TEST_CASE("Before anything was seen a pump does what the prior says") {
  const PumpResponse r = respond(kBrowPrior, {});
  CHECK(r.mean == kBrowPrior.mean);
  CHECK(r.sd == kBrowPrior.sd);
  CHECK(r.count == 0);
  for (const gear::Port p : {gear::Port::crown, gear::Port::sides, gear::Port::jawLeft, gear::Port::jawRight}) CHECK(airPrior(p).mean > 0);
}

TEST_CASE("Many steps outweigh the prior, and each makes it more certain") {
  PumpEvidence evidence;
  double sd = kBrowPrior.sd;
  for (int i = 0; i < 200; ++i) {
    REQUIRE(evidence.add(i % 2 == 0 ? 1 : -2, i % 2 == 0 ? 4'000 : -8'000));
    const PumpResponse r = respond(kBrowPrior, evidence);
    CHECK(r.sd < sd);
    sd = r.sd;
  }
  CHECK(std::abs(respond(kBrowPrior, evidence).mean - 4'000) < 20);
}

TEST_CASE("Taking a step away again leaves exactly what was there, in any order") {
  CHECK(rc::check("exact", [] {
    std::vector<std::pair<int, std::int64_t>> steps;
    const auto n = *rc::gen::inRange(1, 30);
    for (int i = 0; i < n; ++i)
      steps.emplace_back(*rc::gen::suchThat(rc::gen::inRange(-50, 51), [](int p) { return p != 0; }),
                         *rc::gen::inRange<std::int64_t>(-30'000, 30'000));
    PumpEvidence first;
    RC_ASSERT(first.add(2, 5'000));
    PumpEvidence evidence = first;
    for (const auto& [pumps, change] : steps) RC_ASSERT(evidence.add(pumps, change));
    std::reverse(steps.begin(), steps.end());
    for (const auto& [pumps, change] : steps) RC_ASSERT(evidence.remove(pumps, change));
    RC_ASSERT(evidence == first);
  }));
}

TEST_CASE("A step without pumps or beyond belief teaches nothing") {
  PumpEvidence evidence;
  CHECK_FALSE(evidence.add(0, 1'000));
  CHECK_FALSE(evidence.add(51, 1'000));
  CHECK_FALSE(evidence.add(1, 2'000'001));
  CHECK_FALSE(evidence.remove(1, 1'000));
  CHECK(evidence == PumpEvidence{});
}

TEST_CASE("About so many pumps, with the sign of the change and an interval round it") {
  const PumpResponse r{2'500, 250, 20};
  CHECK(pumpsFor(r, 5'000) == PumpCount{2, 1, 3});
  CHECK(pumpsFor(r, -5'000) == PumpCount{-2, -1, -3});
  CHECK(pumpsFor(r, 100) == PumpCount{1, 1, 1});
  CHECK(pumpsFor(r, 0) == PumpCount{0, 0, 0});
  CHECK_FALSE(pumpsFor({2'500, 1'500, 0}, 5'000)->high.has_value());
  CHECK_FALSE(pumpsFor({-100, 50, 9}, 5'000).has_value());
  CHECK_FALSE(pumpsFor({1, 0.1, 9}, 50'000).has_value());
}

TEST_CASE("The number asked for lies within its interval and grows with the change") {
  CHECK(rc::check("monotone", [] {
    const PumpResponse r{static_cast<double>(*rc::gen::inRange(500, 5'000)), static_cast<double>(*rc::gen::inRange(1, 2'000)), 3};
    const auto change = *rc::gen::inRange<std::int64_t>(1, 20'000);
    const auto n = pumpsFor(r, change), more = pumpsFor(r, change + 2'000), back = pumpsFor(r, -change);
    RC_ASSERT(n && more && back);
    RC_ASSERT(n->low >= 1 && n->low <= n->about);
    RC_ASSERT(!n->high || *n->high >= n->about);
    RC_ASSERT(more->about >= n->about);
    RC_ASSERT(back->about == -n->about && back->low == -n->low);
  }));
}
