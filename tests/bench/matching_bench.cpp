// SPDX-License-Identifier: Apache-2.0
// Matching: a team against its limit, a district against scipy.optimize.linear_sum_assignment in the same run, and how the solver alone
// fares. SciPy is handed the dense table of costs and timed for the assignment alone; ours is the whole answer from the records on.
#include <benchmark/benchmark.h>
#include <unistd.h>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "core/season/match_table.h"
#include "tests/core/season/season_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

constexpr double kTeamLimitMs = 50;  // 150 heads and 180 helmets

template <typename Work>
double milliseconds(const Work& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

void matchTeam(benchmark::State& state) {
  const SeasonWorld world = SeasonWorld::random(3, static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  double spent = 0;
  for (auto _ : state) {
    spent += milliseconds([&] {
      const auto answer = matchHelmets(world.views, {}, world.today);
      if (!answer) state.SkipWithError("no answer");
      benchmark::DoNotOptimize(answer);
    });
  }
  if (state.range(0) == 150) state.counters["of 50 ms"] = spent / static_cast<double>(state.iterations()) / kTeamLimitMs;
}
BENCHMARK(matchTeam)->Args({150, 180})->Args({5000, 6000})->Unit(benchmark::kMillisecond);

// Costs as doubles, row by row; infinite where a pair is not feasible.
void writeTable(const MatchTable& table, const std::string& path) {
  std::ofstream file(path, std::ios::binary);
  std::vector<double> row(table.helmets().size());
  for (int h = 0; h < static_cast<int>(table.heads().size()); ++h) {
    for (std::size_t u = 0; u < row.size(); ++u) {
      const int helmet = static_cast<int>(u);
      const bool isFeasible =
          !table.helmets()[u].bar && !table.isSetAside(h, helmet) && table.oddsOf(h, table.helmets()[u].kind).value_or(0) >= kTryOnOdds;
      row[u] = isFeasible ? table.pairOf(h, helmet).cost : HUGE_VAL;
    }
    file.write(reinterpret_cast<const char*>(row.data()), static_cast<std::streamsize>(row.size() * sizeof(double)));
  }
}

// Seconds, heads served, cost; nothing where SciPy is not there.
std::vector<double> askScipy(const std::string& path, std::size_t heads) {
  const std::string command =
      "/usr/bin/python3 -c \"import numpy,time,sys\nfrom scipy.optimize import linear_sum_assignment\n"
      "c=numpy.fromfile('" +
      path + "').reshape(" + std::to_string(heads) +
      ",-1)\n"
      "f=numpy.isfinite(c);n=(c[f].max()+1)*(c.shape[0]+1);c=numpy.where(f,c,n)\n"
      "t=time.perf_counter();r,k=linear_sum_assignment(c);t=time.perf_counter()-t\n"
      "g=c[r,k]<n\nprint(t,g.sum(),repr(float(c[r,k][g].sum())))\"";
  std::vector<double> answer(3);
  FILE* const pipe = ::popen(command.c_str(), "r");
  const bool isRead = pipe != nullptr && std::fscanf(pipe, "%lf %lf %lf", &answer[0], &answer[1], &answer[2]) == 3;
  if (pipe != nullptr) ::pclose(pipe);
  return isRead ? answer : std::vector<double>{};
}

void districtAgainstScipy(benchmark::State& state) {
  const SeasonWorld world = SeasonWorld::random(3, static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  const auto table = MatchTable::make(world.views, {}, world.today);
  const std::string path = (std::filesystem::temp_directory_path() / ("snugline_costs_" + std::to_string(::getpid()))).string();
  writeTable(*table, path);
  for (auto _ : state) {
    const std::vector<double> scipy = askScipy(path, table->heads().size());
    if (scipy.empty()) {
      state.SkipWithError("SciPy could not be asked");
      break;
    }
    Result<MatchAnswer> answer;
    const double ours = milliseconds([&] { answer = matchHelmets(world.views, {}, world.today); });
    if (!answer || answer->pairs.size() != static_cast<std::size_t>(scipy[1]) || std::abs(answer->cost - scipy[2]) > 1e-9 * scipy[2])
      state.SkipWithError("SciPy answers otherwise");
    state.counters["ours ms"] = ours;
    state.counters["scipy ms"] = scipy[0] * 1e3;
    state.counters["ratio ours to scipy"] = ours / (scipy[0] * 1e3);
    state.counters["served"] = scipy[1];
  }
  std::filesystem::remove(path);
}
BENCHMARK(districtAgainstScipy)->Args({150, 180})->Args({1000, 1200})->Args({5000, 6000})->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
