// SPDX-License-Identifier: Apache-2.0
// Rosters and shelves of any size from a seed, with heads as boys have them, three invented sheets, worn helmets, lapsed ones, held ones.
// For matching and planning: tests, external checks and benches.
#pragma once

#include <memory>
#include <random>
#include <string>

#include "core/season/record.h"

namespace snugline::season {

struct SeasonWorld {
  Views views;
  std::mt19937_64 chance;
  Day today = dayOf(2026, 6, 1);
  int n = 1000;

  explicit SeasonWorld(std::uint64_t seed) : chance(seed) {
    TeamRecord team;
    team.season = "2026";
    team.seasonStart = dayOf(2026, 8, 3);
    team.seasonEnd = dayOf(2026, 11, 20);
    views.team = team;
    for (int s = 0; s < 3; ++s) addSheet(s);
  }

  static std::string hashOf(int sheet) { return std::string(64, static_cast<char>('a' + sheet)); }
  Stamp stampOn(Day day) {
    ++n;
    return {instantAt(day, 840, -300), "d:2", "d:" + std::to_string(n), n};
  }
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(chance); }
  bool oneIn(int many) { return between(1, many) == 1; }

  void addSheet(int s) {
    gear::ModelSheet sheet;
    sheet.id = std::string(1, static_cast<char>('a' + s)) + "-sheet";
    sheet.name = sheet.id;
    sheet.hash = hashOf(s);
    const std::int64_t shift = s * 7000;
    const char* const names[] = {"XS", "S", "M", "L", "XL"};
    const std::int64_t edges[] = {500'000, 528'000, 551'000, 579'000, 606'000, 650'000};
    for (std::size_t i = 0; i < 5; ++i) sheet.sizes.push_back({names[i], Length{edges[i] + shift}, Length{edges[i + 1] + shift + 2000}});
    sheet.browLow = Length{19000};
    sheet.browHigh = Length{32000};
    sheet.certificationMonths = 24;
    views.sheets[sheet.hash] = {sheet.hash, std::make_shared<gear::ModelSheet>(sheet), {}};
  }

  UnitRecord& addUnit(int sheet, const std::string& size, int labelYear) {
    UnitRecord unit;
    unit.id = "d:" + std::to_string(++n);
    unit.serial = "U" + std::to_string(n);
    unit.tagKey = unit.serial;
    unit.sheet = hashOf(sheet);
    unit.size = size;
    unit.received = stampOn(dayOf(2026, 5, 1));
    unit.isInService = true;
    unit.labels = {{{gear::LabelKind::recertification, labelYear, std::nullopt, {}}, unit.received}};
    for (const gear::Point point : gear::kPoints) unit.points.see(point, {{gear::PointState::sound, {}}, unit.received, false});
    const std::string id = unit.id;
    return views.units.emplace(id, std::move(unit)).first->second;
  }

  AthleteRecord& addAthlete(std::optional<double> headMm, int birthYear = 2010) {
    AthleteRecord athlete;
    athlete.id = "d:" + std::to_string(++n);
    athlete.jersey = std::to_string(n % 1000);
    athlete.family = "Quillbrook";
    athlete.birthYear = birthYear;
    athlete.added = stampOn(dayOf(2026, 5, 2));
    if (headMm) athlete.tapes = {{{Length::millimetres(*headMm), Length::millimetres(*headMm)}, stampOn(dayOf(2026, 5, 20))}};
    const std::string id = athlete.id;
    return views.athletes.emplace(id, std::move(athlete)).first->second;
  }

  void wear(AthleteRecord& athlete, UnitRecord& unit) {
    athlete.units = {unit.id};
    athlete.paired = stampOn(dayOf(2026, 5, 21));
    unit.athletes = {athlete.id};
    unit.place = UnitPlace::withAthlete;
  }
  EndedCheck& ended(AthleteRecord& athlete, const std::string& unit, fit::Verdict verdict) {
    EndedCheck check;
    check.unit = unit;
    check.verdict = verdict;
    check.stamp = stampOn(dayOf(2026, 5, 25));
    check.check = check.stamp.fact;
    athlete.checks.push_back(check);
    return athlete.checks.back();
  }

  // Four in five wear a helmet already; a few helmets are held or lapse, have points unseen or are older; a few heads are not taped or had
  // a helmet that did not fit.
  static SeasonWorld random(std::uint64_t seed, int heads, int helmets) {
    SeasonWorld world(seed);
    std::vector<std::string> shelf;
    const char* const sizes[] = {"XS", "S", "S", "M", "M", "M", "M", "L", "L", "L", "XL"};
    for (int i = 0; i < helmets; ++i) {
      UnitRecord& unit = world.addUnit(world.between(0, 2), sizes[world.between(0, 10)], world.oneIn(25) ? 2023 : 2026);
      if (world.oneIn(30)) unit.holds = {{"d:9", "liner", "torn", unit.received}};
      for (const gear::Point point : gear::kPoints)
        if (world.oneIn(12)) unit.points.forget(point);
      const gear::Label made{gear::LabelKind::makersMark, world.between(2019, 2025), std::nullopt, {}};
      unit.labels.insert(unit.labels.begin(), {made, unit.received});
      shelf.push_back(unit.id);
    }
    std::shuffle(shelf.begin(), shelf.end(), world.chance);
    std::normal_distribution<double> head(565, 17);
    for (int i = 0; i < heads; ++i) {
      const double mm = std::clamp(std::round(head(world.chance)), 510.0, 640.0);
      AthleteRecord& athlete = world.addAthlete(world.oneIn(40) ? std::nullopt : std::optional<double>(mm), world.between(2008, 2012));
      if (i < helmets && !world.oneIn(5)) world.wear(athlete, world.views.units.at(shelf[static_cast<std::size_t>(i)]));
      if (!athlete.units.empty() && world.oneIn(20)) world.ended(athlete, athlete.units.back(), fit::Verdict::doNotWear);
    }
    return world;
  }
};

}  // namespace snugline::season
