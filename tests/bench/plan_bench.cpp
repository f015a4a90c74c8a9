// SPDX-License-Identifier: Apache-2.0
// The plan of a season for a team and for a hundred thousand helmets, against its limit, and how its cost grows.
#include <benchmark/benchmark.h>

#include <chrono>

#include "core/season/plan.h"
#include "tests/core/season/season_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

constexpr double kLimitSeconds = 2;  // ours, for 100,000 helmets and 90,000 heads

double secondsOf(const SeasonWorld& world) {
  PlanWishes wishes;
  wishes.season = 2026;
  const auto start = std::chrono::steady_clock::now();
  const auto plan = planSeason(world.views, wishes, dayOf(2026, 10, 14));
  benchmark::DoNotOptimize(plan);
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void planTeam(benchmark::State& state) {
  const SeasonWorld world = SeasonWorld::random(3, 150, 180);
  for (auto _ : state) benchmark::DoNotOptimize(secondsOf(world));
}
BENCHMARK(planTeam)->Unit(benchmark::kMillisecond);

void planHundredThousand(benchmark::State& state) {
  const SeasonWorld tenth = SeasonWorld::random(3, 9000, 10000), whole = SeasonWorld::random(3, 90000, 100000);
  for (auto _ : state) {
    const double small = secondsOf(tenth), large = secondsOf(whole);
    state.counters["of the limit"] = large / kLimitSeconds;
    state.counters["ms for 10000"] = small * 1e3;
    state.counters["ms for 100000"] = large * 1e3;
    state.counters["ratio a helmet"] = large / small / 10;
  }
}
BENCHMARK(planHundredThousand)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
