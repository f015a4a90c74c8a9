// SPDX-License-Identifier: Apache-2.0
// The board made whole, as after every entry: as a share of its limit, and how its cost grows.
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
  sheet.air = {{gear::Port::crown, {20000}, {7000}, {41000}},
               {gear::Port::sides, {17000}, {7000}, {34000}},
               {gear::Port::jawLeft, {14000}, {4000}, {28000}},
               {gear::Port::jawRight, {14000}, {4000}, {28000}}};
  sheet.changeAllowance = Pressure{7000};
  sheet.leakPerWeek = Pressure{2000};
  sheet.certificationMonths = 24;
  sheet.ageLimitMonths = 120;
  return sheet;
}

Stamp stampAt(Day day, std::int64_t order) {
  return {instantAt(day, 840, -300), "abcdefghijklm:2", "abcdefghijklm:" + std::to_string(order), order};
}

// Each athlete with ten looks behind and four bladders set at 22 C, one in five with something open, in ids as the Book makes them.
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
    for (const gear::AirPort& port : sheet->air) {
      AirEvent event;
      event.port = port.port;
      event.kind = AirKind::set;
      event.gauge = port.start;
      event.climate.temperatureMk = static_cast<std::int32_t>(Temperature::celsius(22).mk);
      event.stamp = stampAt(dayOf(2026, 8, 3), ++n);
      addAir(unit, event);
    }
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

Conditions weather(double celsius) {
  Conditions c;
  c.temperature = Temperature::celsius(celsius);
  c.elevation = Elevation::metres(180);
  return c;
}

double secondsOf(const Views& views, const Conditions& conditions, int rounds) {
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < rounds; ++i) benchmark::DoNotOptimize(boardOf(views, {kNow}, conditions).rows.size());
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count() / rounds;
}

// Ours: a whole board after every touch must not be felt. Twice as many athletes may cost twice as much, and what leaving the caches costs.
constexpr int kTeam = 150, kMany = 2000;
constexpr double kTeamLimitMs = 0.2, kManyLimitMs = 5, kGrowthLimit = 2.5;

// On a day when no air moved, and on the first cold one, when everybody's did.
void boardWhole(benchmark::State& state, double celsius) {
  const Views few = team(kTeam), many = team(kMany);
  const Conditions now = weather(celsius);
  for (auto _ : state) {
    const double inTeam = secondsOf(few, now, 400), inMany = secondsOf(many, now, 20);
    const double growth = inMany / kMany / (inTeam / kTeam);
    state.counters["ms for 150"] = inTeam * 1e3;
    state.counters["ms for 2000"] = inMany * 1e3;
    state.counters["150 to limit"] = inTeam * 1e3 / kTeamLimitMs;
    state.counters["2000 to limit"] = inMany * 1e3 / kManyLimitMs;
    state.counters["growth a row"] = growth;
    state.counters["growth to limit"] = growth / kGrowthLimit;
  }
  state.counters["before practice of 2000"] = boardOf(many, {kNow}, now).counts[1];
}
BENCHMARK_CAPTURE(boardWhole, mild, 21.0)->Iterations(5)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(boardWhole, cold, -10.0)->Iterations(5)->Unit(benchmark::kMillisecond);

}  // namespace
