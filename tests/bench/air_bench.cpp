// SPDX-License-Identifier: Apache-2.0
// Air: packets of a gauge decoded, and the leak of one helmet after ten seasons. Each says how it stands to a stated limit, both measured
// in the same run: a ratio above one is below the limit's speed.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

#include "core/air/gauge_packet.h"
#include "core/air/leak.h"
#include "core/air/steady.h"

using namespace snugline;
using namespace snugline::air;

namespace {

// A gauge may send a thousand values a second; decoding and judging them may take a thousandth of the time (ours).
constexpr double kPacketsPerSecondLeast = 1'000'000;
// The leak of one helmet may take a quarter of the 16 ms that a screen has for one picture (ours).
constexpr double kLeakSecondsMost = 0.004;

double secondsSince(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void packets(benchmark::State& bench) {
  std::vector<std::vector<std::uint8_t>> values;
  for (unsigned i = 0; i < 1'024; ++i) {
    const std::uint32_t raw = 1'220'000 + i % 200;
    values.push_back({static_cast<std::uint8_t>(raw), static_cast<std::uint8_t>(raw >> 8U), static_cast<std::uint8_t>(raw >> 16U),
                      static_cast<std::uint8_t>(raw >> 24U)});
  }
  SteadyReading steady;
  std::int64_t ms = 0;
  const auto start = std::chrono::steady_clock::now();
  for (auto step : bench) {
    const Result<GaugeValue> v = decodeGauge(kPressureCharacteristic, values[static_cast<std::size_t>(ms) % values.size()]);
    steady.add(Instant{ms++, 0}, Pressure::pascals(static_cast<std::int64_t>(v->deciPascals) / 10));
    benchmark::DoNotOptimize(steady.trend());
  }
  const double spent = secondsSince(start) / static_cast<double>(std::max<std::int64_t>(ms, 1));
  bench.counters["packets per second"] = 1 / spent;
  bench.counters["ratio to the limit"] = spent * kPacketsPerSecondLeast;
}
BENCHMARK(packets)->Name("air: decode a packet and judge whether it is steady");

// Ten seasons of 16 weekly readings, refilled every `refillEvery` weeks; some on the head.
std::vector<LeakReading> tenSeasons(int refillEvery) {
  std::vector<LeakReading> readings;
  for (int season = 0; season < 10; ++season)
    for (int week = 0; week < 16; ++week) {
      LeakReading r;
      r.at.ms = (static_cast<std::int64_t>(season) * 52 + week) * 7 * 24 * 3600 * 1000;
      r.gauge = Pressure{20'000 - week % refillEvery * 300 + (season * 37 + week * 101) % 400};
      r.temperature = Temperature::celsius(28.0 - week);
      r.isRefill = week % refillEvery == 0 && refillEvery < 200;
      r.isOnHead = week % 5 == 4;
      readings.push_back(r);
    }
  return readings;
}

void leak(benchmark::State& bench) {
  const std::vector<LeakReading> readings = tenSeasons(static_cast<int>(bench.range(0)));
  std::int64_t runs = 0;
  const auto start = std::chrono::steady_clock::now();
  for (auto step : bench) {
    const Leak answer = leakOf(readings);
    if (answer.used == 0) bench.SkipWithError("no reading was used");
    benchmark::DoNotOptimize(answer.paPerWeek);
    ++runs;
  }
  bench.counters["ratio to the limit"] = secondsSince(start) / static_cast<double>(std::max<std::int64_t>(runs, 1)) / kLeakSecondsMost;
}
// Refilled every fourth week, once a season, and never, which is the most pairs.
BENCHMARK(leak)->Name("air: leak of a helmet after ten seasons, by weeks to a refill")->Arg(4)->Arg(16)->Arg(1'000);

}  // namespace
