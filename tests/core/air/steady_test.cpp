// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <vector>

#include "core/air/steady.h"

using namespace snugline;
using namespace snugline::air;

namespace {

constexpr std::int64_t kStart = 1'788'000'000'000;
void feed(SteadyReading& s, std::int64_t ms, std::int64_t pa) { s.add(Instant{kStart + ms, 0}, Pressure{pa}); }

}  // namespace

TEST_CASE("A reading is steady once a whole second lies within the limit, and not before") {
  SteadyReading s;
  CHECK_FALSE(s.latest().has_value());
  for (int ms = 0; ms < 1000; ms += 100) {
    feed(s, ms, 20'000 + (ms / 100 % 2) * 200);
    CHECK(s.trend() == Trend::unknown);
  }
  feed(s, 1000, 20'000);
  CHECK(s.isSteady());
  CHECK(s.latest() == Pressure{20'000});
  feed(s, 1100, 20'201);
  CHECK_FALSE(s.isSteady());
}

TEST_CASE("What moved more than a second ago no longer counts") {
  SteadyReading s;
  feed(s, 0, 50'000);
  for (int ms = 100; ms <= 1000; ms += 100) feed(s, ms, 20'000);
  CHECK(s.trend() == Trend::falling);
  feed(s, 1100, 20'000);
  CHECK(s.isSteady());
}

TEST_CASE("Pumping reads as rising, bleeding as falling, to and fro as neither") {
  SteadyReading up, down, shaken;
  for (int ms = 0; ms <= 2000; ms += 50) {
    feed(up, ms, 10'000 + ms);
    feed(down, ms, 10'000 - ms);
    feed(shaken, ms, ms % 100 == 0 ? 10'000 : 12'000);
  }
  CHECK(up.trend() == Trend::rising);
  CHECK(down.trend() == Trend::falling);
  CHECK(shaken.trend() == Trend::unknown);
}

TEST_CASE("The gauge's own uncertainty is the limit, within reason") {
  CHECK(SteadyReading(Pressure{50}).within() == Pressure{50});
  CHECK(SteadyReading(Pressure{0}).within() == kSteadyWithin);
  CHECK(SteadyReading(Pressure{12'000}).within() == kSteadyWithinMost);
  SteadyReading s(Pressure{50});
  for (int ms = 0; ms <= 1000; ms += 500) feed(s, ms, 20'000 + ms / 10);
  CHECK_FALSE(s.isSteady());
}

TEST_CASE("A gap or a clock that jumps starts the second over; small steps back do not") {
  SteadyReading s;
  for (int ms = 0; ms <= 1000; ms += 100) feed(s, ms, 20'000);
  REQUIRE(s.isSteady());
  feed(s, 980, 20'010);
  CHECK(s.isSteady());
  CHECK(s.latest() == Pressure{20'010});
  feed(s, 1000, 20'010);
  CHECK(s.isSteady());
  feed(s, 61'000, 20'000);  // a minute away
  CHECK_FALSE(s.isSteady());
  feed(s, 62'000, 20'000);
  CHECK(s.isSteady());
  feed(s, -3'600'000, 20'000);  // the clock was set back by an hour
  CHECK_FALSE(s.isSteady());
  s.startOver();
  CHECK_FALSE(s.latest().has_value());
}

TEST_CASE("A gauge that sends every two seconds becomes steady too") {
  SteadyReading s;
  feed(s, 0, 20'000);
  feed(s, 2000, 20'100);
  CHECK(s.isSteady());
  feed(s, 4000, 20'400);
  CHECK(s.trend() == Trend::rising);
}

TEST_CASE("A thousand samples a second are judged as the plain list of them would be") {
  CHECK(rc::check("reference", [] {
    SteadyReading s;
    std::vector<std::pair<std::int64_t, std::int64_t>> all;
    std::int64_t ms = 0, pa = 20'000;
    const auto n = *rc::gen::inRange(1, 400);
    const auto most = *rc::gen::element(3, 40, 900);
    for (int i = 0; i < n; ++i) {
      ms += *rc::gen::inRange(0, most) * 10;  // whole slots, so that no slot mixes the second's end with what is older
      pa += *rc::gen::inRange(-60, 61);
      all.emplace_back(ms, pa);
      feed(s, ms, pa);
    }
    // The plain rule, from the latest gap on: everything from the last sample at least a second old.
    std::size_t from = 0;
    for (std::size_t i = 1; i < all.size(); ++i)
      if (all[i].first - all[i - 1].first > kSteadyGapMostMs) from = i;
    std::size_t anchor = all.size();
    for (std::size_t i = from; i < all.size(); ++i)
      if (all[i].first <= ms - kSteadySpanMs) anchor = i;
    bool isSteady = anchor < all.size();
    if (isSteady) {
      while (anchor > from && all[anchor - 1].first == all[anchor].first) --anchor;
      const auto [low, high] = std::minmax_element(all.begin() + static_cast<std::ptrdiff_t>(anchor), all.end(),
                                                   [](const auto& a, const auto& b) { return a.second < b.second; });
      isSteady = high->second - low->second <= kSteadyWithin.pa;
    }
    RC_ASSERT(s.isSteady() == isSteady);
  }));
}
