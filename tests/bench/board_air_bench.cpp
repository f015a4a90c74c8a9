// SPDX-License-Identifier: Apache-2.0
// The board judged again when the weather changes, as a share of building it anew: when few rows change lane, and on the first cold day,
// when all of them do.
#include <benchmark/benchmark.h>

#include <chrono>
#include <memory>

#include "core/season/board.h"

using namespace snugline;
using namespace snugline::season;

namespace {

const Instant kNow = instantAt(dayOf(2026, 10, 14), 840, -300);

Stamp stampAt(Day day, std::int64_t order) {
  return {instantAt(day, 840, -300), "abcdefghijklm:2", "abcdefghijklm:" + std::to_string(order), order};
}

Conditions weather(double celsius) {
  Conditions c;
  c.temperature = Temperature::celsius(celsius);
  c.elevation = Elevation::metres(180);
  return c;
}

// Four bladders each, set at 22 C at somewhat different pressures; ten looks, the last of them at 16 to 22 C.
Views team(int athletes) {
  gear::ModelSheet model;
  model.hash = std::string(64, 'a');
  model.sizes = {{"M", Length::micrometres(540000), Length::micrometres(580000)}};
  model.air = {{gear::Port::crown, {20000}, {7000}, {41000}},
               {gear::Port::sides, {17000}, {7000}, {34000}},
               {gear::Port::jawLeft, {14000}, {4000}, {28000}},
               {gear::Port::jawRight, {14000}, {4000}, {28000}}};
  model.changeAllowance = Pressure{7000};
  model.leakPerWeek = Pressure{2000};
  model.certificationMonths = 24;
  model.ageLimitMonths = 120;
  Views views;
  TeamRecord about;
  about.seasonStart = dayOf(2026, 8, 3);
  about.seasonEnd = dayOf(2026, 11, 20);
  views.team = about;
  const auto sheet = std::make_shared<gear::ModelSheet>(model);
  views.sheets[sheet->hash] = {sheet->hash, sheet, {}};
  std::int64_t n = 10;
  for (int i = 0; i < athletes; ++i) {
    AthleteRecord athlete;
    athlete.id = "abcdefghijklm:" + std::to_string(++n);
    athlete.jersey = std::to_string(i % 1000);
    athlete.family = "Thistlecroft";
    athlete.birthYear = 2010;
    athlete.tapes = {{{Length::micrometres(560000)}, stampAt(dayOf(2026, 7, 28), ++n)}};
    UnitRecord unit;
    unit.id = "abcdefghijklm:" + std::to_string(++n);
    unit.serial = "A1-M-" + std::to_string(100000 + i);
    unit.sheet = sheet->hash;
    unit.isInService = true;
    unit.place = UnitPlace::withAthlete;
    unit.labels = {{{gear::LabelKind::recertification, 2026, std::nullopt, {}}, stampAt(dayOf(2026, 7, 20), ++n)}};
    unit.athletes = {athlete.id};
    athlete.units = {unit.id};
    athlete.paired = stampAt(dayOf(2026, 8, 1), ++n);
    for (const gear::AirPort& port : model.air) {
      AirEvent event;
      event.port = port.port;
      event.kind = AirKind::set;
      event.gauge = Pressure{port.start.pa + i % 7 * 300};
      event.climate = climateOf(weather(22));
      event.stamp = stampAt(dayOf(2026, 8, 3), ++n);
      addAir(unit, event);
    }
    for (int week = 0; week < 11; ++week) {
      EndedCheck check;
      check.check = "abcdefghijklm:" + std::to_string(++n);
      check.unit = unit.id;
      check.kind = week == 0 ? fit::CheckKind::first : fit::CheckKind::look;
      check.verdict = fit::Verdict::fits;
      check.strip.fill(fit::Finding::snug);
      check.climate = climateOf(weather(week == 10 ? 16 + i % 7 : 22));
      check.stamp = stampAt(dayOf(2026, 8, 3).plus(week * 7 + i % 5 - (week == 10 ? 2 : 0)), ++n);
      athlete.checks.push_back(check);
    }
    for (const gear::Point point : gear::kPoints)
      unit.points.see(point, {{gear::PointState::sound, {}}, stampAt(dayOf(2026, 10, 14), ++n), true});
    views.units.emplace(unit.id, std::move(unit));
    views.athletes.emplace(athlete.id, std::move(athlete));
  }
  return views;
}

// Mild, all within the allowance; from hour to hour one helmet in seven leaves it; cold, all of them do.
enum class Change : std::uint8_t { mild, few, all };

void judgeAgain(benchmark::State& state, Change change) {
  const Views views = team(static_cast<int>(state.range(0)));
  const auto timed = [](const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  };
  const double warmer = change == Change::few ? 5.6 : 20, colder = change == Change::mild ? 15 : change == Change::few ? 4.4 : -10;
  Board board, anew;
  board.build(views, {kNow}, weather(warmer));
  anew.build(views, {kNow}, weather(warmer));
  board.weather(views, weather(warmer));
  double again = 0, build = 0;
  bool isCold = false;
  for (auto _ : state) {
    isCold = !isCold;
    again += timed([&] { board.weather(views, weather(isCold ? colder : warmer)); });
    build += timed([&] { anew.build(views, {kNow}, weather(isCold ? colder : warmer)); });
  }
  if (!(board.rows() == anew.rows())) state.SkipWithError("judged again and built anew differ");
  const auto rounds = static_cast<double>(state.iterations());
  board.weather(views, weather(warmer));
  const int before = board.counts()[1];
  board.weather(views, weather(colder));
  state.counters["rows that change lane"] = board.counts()[1] - before;
  state.counters["ms again"] = again / rounds * 1e3;
  state.counters["ms anew"] = build / rounds * 1e3;
  state.counters["ratio to anew"] = again / build;
}
BENCHMARK_CAPTURE(judgeAgain, mild, Change::mild)->Arg(150)->Arg(100000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(judgeAgain, few, Change::few)->Arg(150)->Arg(100000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(judgeAgain, all, Change::all)->Arg(150)->Arg(100000)->Unit(benchmark::kMillisecond);

}  // namespace
