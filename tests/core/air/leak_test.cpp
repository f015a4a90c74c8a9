// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "core/air/leak.h"
#include "core/air/reading_order.h"

using namespace snugline;
using namespace snugline::air;

namespace {

constexpr std::int64_t kWeekMs = 7LL * 24 * 3600 * 1000;
constexpr std::int64_t kStartMs = 1'788'000'000'000;

LeakReading reading(double week, double kpa) {
  return {Instant{kStartMs + std::llround(week * static_cast<double>(kWeekMs)), -300}, Pressure::kilopascals(kpa), kReferenceTemperature};
}
LeakReading refill(double week, double kpa) {
  LeakReading r = reading(week, kpa);
  r.isRefill = true;
  return r;
}
std::vector<LeakReading> losing(double perWeek, int count) {
  std::vector<LeakReading> readings;
  for (int i = 0; i < count; ++i) readings.push_back(reading(i, 20.0 + perWeek * i));
  return readings;
}
std::vector<LeftOut> reasons(const Leak& leak) {
  std::vector<LeftOut> out;
  for (const LeftOutReading& l : leak.leftOut) out.push_back(l.why);
  return out;
}

}  // namespace

TEST_CASE("A steady loss is found to the pascal and called leaking beyond the allowance only") {
  const Leak leak = leakOf(losing(-1.0, 8));
  CHECK(std::abs(leak.paPerWeek + 1000) < 1e-6);
  CHECK(leak.hasInterval);
  CHECK(leak.isLeaking);
  CHECK(leak.used == 8);
  CHECK(leak.runs.size() == 1);
  CHECK_FALSE(leakOf(losing(-1.0, 8), Pressure{2'000}).isLeaking);
  CHECK_FALSE(leakOf(losing(1.0, 8)).isLeaking);
  CHECK_FALSE(leakOf(losing(-0.5, 8)).isLeaking);  // exactly the allowance is allowed
}

TEST_CASE("Nothing is called leaking before five readings of one run") {
  for (int n = 2; n <= 4; ++n) {
    const Leak leak = leakOf(losing(-3.0, n));
    INFO(n);
    CHECK(leak.hasSlope);
    CHECK_FALSE(leak.hasInterval);
    CHECK_FALSE(leak.isLeaking);
  }
  CHECK(leakOf(losing(-3.0, 5)).isLeaking);
}

TEST_CASE("Cold and altitude alone are no leak") {
  std::vector<LeakReading> readings;
  for (int week = 0; week < 10; ++week) {
    LeakReading r = reading(week, 0);
    r.temperature = Temperature::celsius(25.0 - 3.0 * week);
    r.ambient = ambientAt(Elevation::metres(week % 2 == 0 ? 0 : 1609));
    r.gauge = foresee({Pressure{20'000}, Temperature::celsius(25), kStandardAtmosphere}, r.temperature, r.ambient).gauge;
    readings.push_back(r);
  }
  CHECK(readings[8].gauge.pa < 14'000);
  const Leak leak = leakOf(readings);
  CHECK(std::abs(leak.paPerWeek) < 1.0);
  CHECK_FALSE(leak.isLeaking);
}

TEST_CASE("A refill starts a new run, so that what was put in hides no loss") {
  std::vector<LeakReading> readings;
  for (int run = 0; run < 3; ++run)
    for (int i = 0; i < 4; ++i) readings.push_back(i == 0 ? refill(run * 4, 20) : reading(run * 4 + i, 20.0 - i));
  const Leak leak = leakOf(readings);
  CHECK(leak.runs.size() == 3);
  CHECK(std::abs(leak.paPerWeek + 1000) < 1e-6);
  CHECK(leak.hasInterval);
  CHECK(leak.isLeaking);
  CHECK(leak.leftOut.empty());
}

TEST_CASE("Readings on a head and off it are never compared with each other") {
  std::vector<LeakReading> readings;
  for (int i = 0; i < 6; ++i) {
    LeakReading r = reading(i, i % 2 == 0 ? 20.0 : 30.0);
    r.isOnHead = i % 2 == 1;
    readings.push_back(r);
  }
  const Leak leak = leakOf(readings);
  CHECK(leak.runs.size() == 2);
  CHECK(leak.paPerWeek == 0);
  CHECK(leak.runs[1].isOnHead);
}

TEST_CASE("Readings that contradict the order are left out and said") {
  auto readings = losing(-1.0, 6);
  readings.insert(readings.begin() + 4, reading(0.5, 90));
  Leak leak = leakOf(readings);
  CHECK(leak.leftOut == std::vector<LeftOutReading>{{4, LeftOut::notInOrder}});
  CHECK(std::abs(leak.paPerWeek + 1000) < 1e-6);

  readings[3].isRefill = true;
  leak = leakOf(readings);
  CHECK(leak.leftOut == std::vector<LeftOutReading>{{4, LeftOut::beforeRefill}});

  // One reading far in the future costs itself and not all that follow.
  readings = losing(-1.0, 6);
  readings.insert(readings.begin() + 2, reading(5'000, 20));
  CHECK(leakOf(readings).leftOut == std::vector<LeftOutReading>{{2, LeftOut::notInOrder}});
}

TEST_CASE("A refill stays where it contradicts one reading, and parts the runs even when it is left out itself") {
  const std::vector<LeakReading> contradicted{reading(0, 20), reading(1, 19), refill(5, 25), reading(3, 18), reading(6, 24)};
  CHECK(leakOf(contradicted).leftOut == std::vector<LeftOutReading>{{3, LeftOut::beforeRefill}});

  std::vector<LeakReading> misdated{reading(0, 20), reading(1, 19), refill(900, 25), reading(3, 25), reading(4, 24), reading(5, 23)};
  Leak leak = leakOf(misdated);
  CHECK(reasons(leak) == std::vector<LeftOut>{LeftOut::notInOrder});
  CHECK(leak.runs.size() == 2);
  CHECK(std::abs(leak.paPerWeek + 1000) < 1e-6);
}

TEST_CASE("What cannot be believed or compared is left out with its reason") {
  auto readings = losing(-1.0, 5);
  readings[1].temperature = Temperature::celsius(80);
  readings[2].gauge = Pressure{900'000};
  readings[3].ambient = Pressure{10'000};
  CHECK(reasons(leakOf(readings)) == std::vector<LeftOut>(3, LeftOut::notBelieved));
  const Leak alone = leakOf(std::vector<LeakReading>{reading(0, 20), refill(1, 20)});
  CHECK(reasons(alone) == std::vector<LeftOut>(2, LeftOut::onlyOne));
  CHECK_FALSE(alone.hasSlope);
  CHECK(leakOf(std::vector<LeakReading>{}).used == 0);
  // Below zero gauge is a reading like any other.
  CHECK(leakOf(std::vector<LeakReading>{reading(0, -1), reading(1, -2)}).used == 2);
}

TEST_CASE("Readings at one instant make no slope between them") {
  const Leak leak = leakOf(std::vector<LeakReading>{reading(1, 20), reading(1, 30)});
  CHECK_FALSE(leak.hasSlope);
  CHECK_FALSE(leak.isLeaking);
  CHECK(leak.used == 2);
}

TEST_CASE("The line of a run goes through its medians") {
  const Leak leak = leakOf(losing(-1.0, 5));
  REQUIRE(leak.runs.size() == 1);
  CHECK(leak.runs[0].medianAt == reading(2, 0).at);
  CHECK(std::abs(leak.runs[0].medianPa - 18'000) < 1e-6);
  CHECK(leak.readings.size() == 5);
}

TEST_CASE("Of too many readings the latest count, and many slopes give what few would") {
  std::vector<Point> many;
  std::uint32_t state = 7;
  for (int i = 0; i < 1'600; ++i) {  // 1.28 million slopes: counted, not kept
    state = state * 1'664'525U + 1'013'904'223U;
    many.push_back({i / 7.0, 20'000 - 40.0 * i + static_cast<double>(state >> 20U)});
  }
  std::vector<double> slopes;
  for (std::size_t i = 0; i < many.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) slopes.push_back((many[i].pa - many[j].pa) / (many[i].week - many[j].week));
  REQUIRE(slopes.size() > kSlopesKept);
  std::sort(slopes.begin(), slopes.end());
  const std::vector<std::vector<Point>> runs{many};
  const Slope slope = theilSen(runs);
  CHECK(slope.perWeek == (slopes[slopes.size() / 2 - 1] + slopes[slopes.size() / 2]) / 2.0);
  CHECK(std::binary_search(slopes.begin(), slopes.end(), slope.low));
  CHECK(std::binary_search(slopes.begin(), slopes.end(), slope.high));
  CHECK(slope.low < slope.perWeek);
  CHECK(slope.perWeek < slope.high);
}

TEST_CASE("Moving all readings in time or pressure moves no slope, and a turned sign turns it") {
  CHECK(rc::check("invariance", [] {
    const auto n = *rc::gen::inRange(2, 12);
    std::vector<Point> run, turned, moved;
    double week = 0;
    for (int i = 0; i < n; ++i) {
      week += *rc::gen::inRange(0, 4);
      const double pa = *rc::gen::inRange(-50, 50);
      run.push_back({week, pa});
      turned.push_back({week, -pa});
      moved.push_back({week + 1024, pa + 4096});
    }
    const auto slopeOf = [](const std::vector<Point>& points) { return theilSen(std::vector<std::vector<Point>>{points}); };
    const Slope a = slopeOf(run), b = slopeOf(turned), c = slopeOf(moved);
    RC_ASSERT(a.hasSlope == b.hasSlope);
    RC_ASSERT(a.hasInterval == b.hasInterval);
    RC_ASSERT(a.perWeek == -b.perWeek);
    RC_ASSERT(a.perWeek == c.perWeek && a.low == c.low && a.high == c.high);
    RC_ASSERT(!a.hasSlope || (a.low <= a.perWeek && a.perWeek <= a.high));
  }));
}

TEST_CASE("The fewest readings are left out, checked against every choice") {
  CHECK(rc::check("order", [] {
    const auto n = static_cast<unsigned>(*rc::gen::inRange(0, 9));
    std::vector<Stamp> stamps;
    for (unsigned i = 0; i < n; ++i) stamps.push_back({*rc::gen::inRange(0, 6), *rc::gen::inRange(1, 3)});
    const std::vector<bool> kept = inOrder(stamps);
    const auto weightOf = [&](unsigned mask) {
      int weight = 0;
      std::int64_t last = -1;
      for (unsigned i = 0; i < n; ++i) {
        if ((mask >> i & 1U) == 0) continue;
        if (stamps[i].ms < last) return -1;
        last = stamps[i].ms;
        weight += stamps[i].weight;
      }
      return weight;
    };
    unsigned ours = 0;
    for (unsigned i = 0; i < n; ++i) ours |= kept[i] ? 1U << i : 0U;
    int best = 0;
    for (unsigned mask = 0; mask < (1U << n); ++mask) best = std::max(best, weightOf(mask));
    RC_ASSERT(weightOf(ours) == best);
  }));
}

TEST_CASE("Readings of any kind are used or left out, and each is counted once") {
  CHECK(rc::check("any", [] {
    std::vector<LeakReading> readings;
    const auto n = *rc::gen::inRange(0, 25);
    for (int i = 0; i < n; ++i)
      readings.push_back({Instant{*rc::gen::inRange<std::int64_t>(0, 20) * kWeekMs, 0},
                          Pressure{*rc::gen::inRange<std::int64_t>(-200'000, 2'000'000)},
                          Temperature{*rc::gen::inRange<std::int64_t>(-1, 400'000)}, Pressure{*rc::gen::inRange<std::int64_t>(-1, 200'000)},
                          *rc::gen::inRange(0, 5) == 0, *rc::gen::arbitrary<bool>()});
    const Leak leak = leakOf(readings);
    RC_ASSERT(leak.used + leak.leftOut.size() == readings.size());
    RC_ASSERT(leak.readings.size() == leak.used);
    RC_ASSERT(std::isfinite(leak.paPerWeek) && std::isfinite(leak.low) && std::isfinite(leak.high));
  }));
}
