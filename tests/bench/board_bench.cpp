// SPDX-License-Identifier: Apache-2.0
// The board: built for a team and for a district, brought up to date for one athlete, and how its cost grows.
#include <benchmark/benchmark.h>

#include <chrono>
#include <memory>

#include "core/season/board.h"

using namespace snugline;
using namespace snugline::season;

namespace {

const Instant kNow = instantAt(dayOf(2026, 10, 14), 840, -300);

gear::ModelSheet plainSheet() {
  gear::ModelSheet sheet;
  sheet.hash = std::string(64, 'a');
  sheet.sizes = {{"M", Length::micrometres(540000), Length::micrometres(580000)}};
  sheet.browLow = Length::micrometres(19000);
  sheet.browHigh = Length::micrometres(32000);
  sheet.certificationMonths = 24;
  sheet.ageLimitMonths = 120;
  return sheet;
}

Stamp stampAt(Day day, std::int64_t order) {
  return {instantAt(day, 840, -300), "abcdefghijklm:2", "abcdefghijklm:" + std::to_string(order), order};
}

// Each athlete with ten looks behind, one in five with something open, in ids as the Book makes them.
Views team(int athletes) {
  Views views;
  TeamRecord about;
  about.seasonStart = dayOf(2026, 8, 3);
  about.seasonEnd = dayOf(2026, 11, 20);
  views.team = about;
  const auto sheet = std::make_shared<gear::ModelSheet>(plainSheet());
  views.sheets[sheet->hash] = {sheet->hash, sheet, {}};
  std::int64_t n = 10;
  for (int i = 0; i < athletes; ++i) {
    AthleteRecord athlete;
    athlete.id = "abcdefghijklm:" + std::to_string(++n);
    athlete.jersey = std::to_string(i % 1000);
    athlete.family = "Thistlecroft";
    athlete.given = "Imanol";
    athlete.birthYear = 2010;
    athlete.added = stampAt(dayOf(2026, 7, 1), n);
    athlete.tapes = {{{Length::micrometres(560000)}, stampAt(dayOf(2026, 7, 28), ++n)}};
    UnitRecord unit;
    unit.id = "abcdefghijklm:" + std::to_string(++n);
    unit.serial = "A1-M-" + std::to_string(100000 + i);
    unit.sheet = sheet->hash;
    unit.received = stampAt(dayOf(2026, 7, 20), n);
    unit.isInService = true;
    unit.place = UnitPlace::withAthlete;
    unit.labels = {{{gear::LabelKind::recertification, 2026, std::nullopt, {}}, stampAt(dayOf(2026, 7, 20), ++n)}};
    unit.athletes = {athlete.id};
    athlete.units = {unit.id};
    athlete.paired = stampAt(dayOf(2026, 8, 1), ++n);
    for (int week = 0; week < 11; ++week) {
      EndedCheck check;
      check.check = "abcdefghijklm:" + std::to_string(++n);
      check.unit = unit.id;
      check.kind = week == 0 ? fit::CheckKind::first : fit::CheckKind::look;
      check.verdict = fit::Verdict::fits;
      check.strip.fill(fit::Finding::snug);
      check.stamp = stampAt(dayOf(2026, 8, 3).plus(week * 7 + i % 5 - (week == 10 ? 2 : 0)), ++n);
      athlete.checks.push_back(check);
    }
    for (gear::Point point : gear::kPoints)
      unit.points.see(point, {{gear::PointState::sound, {}}, stampAt(dayOf(2026, 10, 14), ++n), true});
    if (i % 20 == 0) unit.holds = {{"abcdefghijklm:" + std::to_string(++n), "liner", "does not hold air", stampAt(dayOf(2026, 10, 13), n)}};
    if (i % 10 == 3) athlete.hairChanged = stampAt(dayOf(2026, 10, 13), ++n);
    if (i % 15 == 4) {
      SaidRecord said;
      said.fact = "abcdefghijklm:" + std::to_string(++n);
      said.at = instantAt(dayOf(2026, 10, 13), 1080, -300);
      said.unit = unit.id;
      said.where = fit::Mark::jaw;
      athlete.said = {said};
    }
    views.units.emplace(unit.id, std::move(unit));
    views.athletes.emplace(athlete.id, std::move(athlete));
  }
  return views;
}

void buildBoard(benchmark::State& state) {
  const Views views = team(static_cast<int>(state.range(0)));
  Board board;
  for (auto _ : state) {
    board.build(views, {kNow}, {});
    benchmark::DoNotOptimize(board.rows().size());
  }
  const auto lanes = board.counts();
  state.counters["do-not-wear"] = lanes[0];
  state.counters["nothing-due"] = lanes[3];
  state.counters["per row"] =
      benchmark::Counter(static_cast<double>(state.range(0)), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
// Thousands are made by two threads: what counts is the clock on the wall; the CPU column is of both together.
BENCHMARK(buildBoard)->Arg(150)->Arg(1000)->Arg(10000)->Arg(100000)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();

// The same with a model sheet that was replaced twice: every row follows the line to the sheet that counts.
void buildBoardReplaced(benchmark::State& state) {
  Views views = team(static_cast<int>(state.range(0)));
  const std::string first = views.sheets.begin()->first;
  const auto sheet = views.sheets.begin()->second.sheet;
  const std::string second(64, 'b'), third(64, 'c');
  views.sheets.at(first).replaced = ReplacedRecord{second, stampAt(dayOf(2026, 9, 1), 1'000'001)};
  views.sheets[second] = {second, sheet, {}, ReplacedRecord{third, stampAt(dayOf(2026, 9, 2), 1'000'002)}};
  views.sheets[third] = {third, sheet, {}};
  Board board;
  for (auto _ : state) {
    board.build(views, {kNow}, {});
    benchmark::DoNotOptimize(board.rows().size());
  }
}
BENCHMARK(buildBoardReplaced)->Arg(150)->Arg(100000)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();

// One athlete goes back and forth between two lanes.
void updateOne(benchmark::State& state) {
  Views views = team(static_cast<int>(state.range(0)));
  Board board;
  board.build(views, {kNow}, {});
  const std::string id = board.rows()[board.rows().size() / 2].athlete;
  const Stamp changed = stampAt(dayOf(2026, 10, 14), 1);
  board.update(views, {id});  // the keys are laid once
  for (auto _ : state) {
    auto& hair = views.athletes.at(id).hairChanged;
    if (hair) {
      hair.reset();
    } else {
      hair = changed;
    }
    board.update(views, {id});
  }
}
BENCHMARK(updateOne)->Arg(150)->Arg(10000)->Arg(100000)->Unit(benchmark::kMicrosecond);

// The first update after a build also lays the index of slots.
void updateFirst(benchmark::State& state) {
  const Views views = team(static_cast<int>(state.range(0)));
  Board board;
  board.build(views, {kNow}, {});
  const std::string id = board.rows()[board.rows().size() / 2].athlete;
  for (auto _ : state) {
    state.PauseTiming();
    board.build(views, {kNow}, {});
    state.ResumeTiming();
    board.update(views, {id});
  }
}
BENCHMARK(updateFirst)->Arg(150)->Arg(100000)->Iterations(10)->Unit(benchmark::kMicrosecond);

// Cost of a row in a district over the cost of a row in a tenth of it: 1 is linear growth. Both lie outside the caches; a squad of 1000
// lies inside, and what leaving them costs is told apart.
void growth(benchmark::State& state) {
  const Views squad = team(1000), tenth = team(10000), district = team(100000);
  const auto perRow = [](const Views& views, int rounds) {
    Board board;
    board.build(views, {kNow}, {});
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < rounds; ++i) board.build(views, {kNow}, {});
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    return spent.count() / rounds / static_cast<double>(board.rows().size());
  };
  for (auto _ : state) {
    const double inSquad = perRow(squad, 200), inTenth = perRow(tenth, 20), inDistrict = perRow(district, 2);
    state.counters["ns a row of 1000"] = inSquad * 1e9;
    state.counters["ns a row of 10000"] = inTenth * 1e9;
    state.counters["ns a row of 100000"] = inDistrict * 1e9;
    state.counters["ratio 100000 to 10000"] = inDistrict / inTenth;
    state.counters["ratio 10000 to 1000"] = inTenth / inSquad;
  }
}
BENCHMARK(growth)->Iterations(3)->Unit(benchmark::kMillisecond);

}  // namespace
