// SPDX-License-Identifier: Apache-2.0
// The plan of a season: its calendar, its batches, its orders and the arithmetic behind them.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>
#include <cmath>
#include <set>

#include "core/season/demand.h"
#include "core/season/plan.h"
#include "tests/core/season/season_world.h"

using namespace snugline;
using namespace snugline::season;
using Catch::Detail::Approx;

namespace {

PlanAnswer plan(const SeasonWorld& world, PlanWishes wishes = {}) {
  if (wishes.season == 0) wishes.season = 2026;
  const auto answer = planSeason(world.views, wishes, world.today);
  REQUIRE(answer.has_value());
  return *answer;
}

const Order* orderOf(const PlanAnswer& answer, const std::string& size, int sheet = 0) {
  for (const Order& order : answer.orders)
    if (order.size == size && order.sheet == SeasonWorld::hashOf(sheet)) return &order;
  return nullptr;
}

}  // namespace

TEST_CASE("Demand of equal heads is binomial, of newcomers Poisson, and of both their sum") {
  Demand heads;
  for (int i = 0; i < 10; ++i) heads.addHead(0.3);
  double sum = 0, chance = std::pow(0.7, 10);
  for (int n = 0; n <= 10; ++n) {
    sum += chance;
    CHECK(heads.atMost(n) == Approx(sum));
    chance *= 0.3 / 0.7 * (10 - n) / (n + 1);
  }
  Demand both = heads;
  both.addNewcomers(2.5);
  CHECK(both.expected() == Approx(5.5));
  CHECK(both.atMost(0) == Approx(std::pow(0.7, 10) * std::exp(-2.5)));
  CHECK(both.atMost(100) == Approx(1));
}

TEST_CASE("Enough is the least number that covers as asked") {
  for (const double cover : {0.5, 0.8, 0.95, 0.999}) {
    Demand demand;
    for (int i = 0; i < 400; ++i) demand.addHead(0.001 * i);
    demand.addNewcomers(700);
    const int enough = demand.enoughFor(cover);
    CHECK(demand.atMost(enough) >= cover);
    CHECK(demand.atMost(enough - 1) < cover);
  }
  CHECK(Demand().enoughFor(0.95) == 0);
}

TEST_CASE("Very many heads lose nothing that matters") {
  Demand demand;
  for (int i = 0; i < 20000; ++i) demand.addHead(0.5);
  CHECK(demand.atMost(20000) == Approx(1).epsilon(1e-12));
  CHECK(demand.atMost(10000) == Approx(0.5 + 0.5 * 0.005641879).epsilon(1e-6));  // half of the middle one, 1/sqrt(pi n / 2)
}

TEST_CASE("Who returns for sure in a size that cannot change needs exactly one helmet") {
  SeasonWorld world(1);
  for (int i = 0; i < 6; ++i) {
    AthleteRecord& athlete = world.addAthlete(565, 1998);
    world.wear(athlete, world.addUnit(0, "M", 2026));
  }
  PlanWishes wishes;
  wishes.returning = 1;
  wishes.newcomers = 0;
  wishes.lastAge = 99;
  PlanAnswer answer = plan(world, wishes);
  const Order* medium = orderOf(answer, "M");
  REQUIRE(medium != nullptr);
  CHECK(medium->enough == 6);
  CHECK(medium->good == 6);
  CHECK(medium->order == 0);
  world.views.units.begin()->second.place = UnitPlace::lost;
  answer = plan(world, wishes);
  CHECK(orderOf(answer, "M")->order == 1);
}

TEST_CASE("Heads past the last age do not return, and young heads grow") {
  SeasonWorld world(1);
  world.addAthlete(565, 2008);  // 19 in 2027
  AthleteRecord& young = world.addAthlete(577, 2014);
  world.wear(young, world.addUnit(0, "M", 2026));
  PlanWishes wishes;
  wishes.returning = 1;
  wishes.newcomers = 0;
  const PlanAnswer answer = plan(world, wishes);
  CHECK(answer.leaving == 1);
  CHECK(answer.expectedReturning == Approx(1));
  CHECK(orderOf(answer, "L")->returning > 0.7);  // 577 mm now, 7 mm more in the middle of the next season
  CHECK(orderOf(answer, "M")->returning < 0.3);
}

TEST_CASE("Without a number newcomers are as many as leave") {
  const SeasonWorld world = SeasonWorld::random(3, 80, 90);
  const PlanAnswer answer = plan(world);
  CHECK(answer.expectedNewcomers + answer.expectedReturning == Approx(80));
}

TEST_CASE("A helmet whose age limit comes before the next season ends is ordered anew and in no batch") {
  SeasonWorld world(1);
  UnitRecord& unit = world.addUnit(0, "M", 2026);
  unit.labels.insert(unit.labels.begin(), {{gear::LabelKind::makersMark, 2017, std::nullopt, {}}, unit.received});
  const std::string id = unit.id;
  AthleteRecord& athlete = world.addAthlete(565, 1998);
  world.wear(athlete, unit);
  PlanWishes wishes;
  wishes.returning = 1;
  wishes.newcomers = 0;
  wishes.lastAge = 99;
  const PlanAnswer answer = plan(world, wishes);
  REQUIRE(answer.lapsing.size() == 1);
  CHECK_FALSE(answer.lapsing[0].isRenewable);
  CHECK(answer.lapsing[0].lastGood.first == dayOf(2026, 12, 31));
  CHECK(answer.batches.empty());
  CHECK(orderOf(answer, "M")->order == 1);
}

TEST_CASE("Lapses are told by when they come, with their span") {
  SeasonWorld world(1);
  world.addUnit(0, "M", 2023);  // earliest end 2024-12-31
  UnitRecord& dated = world.addUnit(0, "M", 2024);
  dated.labels.back().label.fullDate = dayOf(2024, 9, 1);
  world.addUnit(0, "M", 2025);  // earliest end 2026-12-31
  UnitRecord& late = world.addUnit(0, "M", 2025);
  late.labels.back().label.fullDate = dayOf(2025, 10, 2);
  world.addUnit(0, "M", 2026);
  const PlanAnswer answer = plan(world);
  REQUIRE(answer.lapsing.size() == 4);
  CHECK(answer.lapsing[0].when == LapseWhen::before);
  CHECK(answer.lapsing[0].lastGood == gear::DaySpan{dayOf(2024, 12, 31), dayOf(2025, 12, 30)});
  CHECK(answer.lapsing[1].when == LapseWhen::thisSeason);
  CHECK(answer.lapsing[2].when == LapseWhen::betweenSeasons);
  CHECK(answer.lapsing[3].when == LapseWhen::nextSeason);
  CHECK(answer.lapsing[3].lastGood.isOneDay());
}

TEST_CASE("No helmet goes out twice, none that is held goes at all, and every size of a random year has what it needs or says so") {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    SeasonWorld world = SeasonWorld::random(seed, 150, 180);
    world.today = seed % 2 == 0 ? dayOf(2026, 10, 14) : dayOf(2026, 6, 1);
    const PlanAnswer answer = plan(world);
    std::set<std::string> sent;
    for (const Batch& batch : answer.batches) {
      CHECK(batch.send >= world.today);
      CHECK(batch.back == batch.send.plus(kTurnaroundDays));
      int count = 0;
      for (const SizeCount& size : batch.sizes) count += size.count;
      CHECK(count == static_cast<int>(batch.units.size()));
      for (const std::string& unit : batch.units) {
        CHECK(sent.insert(unit).second);
        CHECK(world.views.unit(unit)->holds.empty());
      }
    }
    for (const SizeMissing& missing : answer.missing) CHECK(missing.first < answer.nextStart);  // orders cover the next season
    for (const Order& order : answer.orders) {
      CHECK(order.order == std::max(0, order.enough - order.good));
      CHECK(order.covered >= kCover);
    }
  }
}

TEST_CASE("A wish outside its range is refused by its name") {
  const SeasonWorld world(1);
  const auto placeOf = [&](auto change) {
    PlanWishes wishes;
    wishes.season = 2026;
    change(wishes);
    const auto answer = planSeason(world.views, wishes, world.today);
    REQUIRE_FALSE(answer.has_value());
    CHECK(answer.error().code == ErrorCode::outOfRange);
    return answer.error().place;
  };
  CHECK(placeOf([](PlanWishes& w) { w.season = 26; }) == "season");
  CHECK(placeOf([](PlanWishes& w) { w.season = 2035; }) == "season");
  CHECK(placeOf([](PlanWishes& w) { w.turnaround = 0; }) == "turnaround");
  CHECK(placeOf([](PlanWishes& w) { w.cover = 1; }) == "cover");
  CHECK(placeOf([](PlanWishes& w) { w.returning = 1.1; }) == "returning");
  CHECK(placeOf([](PlanWishes& w) { w.newcomers = -1; }) == "newcomers");
}

TEST_CASE("An empty Book has a plan, and it asks for nothing") {
  Views views;
  PlanWishes wishes;
  wishes.season = 2026;
  const auto answer = planSeason(views, wishes, dayOf(2026, 6, 1));
  REQUIRE(answer.has_value());
  CHECK(answer->areDatesAssumed);
  CHECK(answer->orders.empty());
  CHECK(answer->batches.empty());
}
