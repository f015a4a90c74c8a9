// SPDX-License-Identifier: Apache-2.0
// One athlete in one helmet with nothing due, on Wednesday 2026-10-14 at 14:00, from which each test changes one thing.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/season/board.h"

namespace snugline::season {

inline const Day kToday = dayOf(2026, 10, 14);  // a Wednesday
inline Instant at(Day day, int minute = 840) { return instantAt(day, minute, -300); }
inline const Instant kNow = at(kToday);

inline gear::ModelSheet plainSheet() {
  gear::ModelSheet sheet;
  sheet.id = "alder-a1";
  sheet.name = "Alder A1";
  sheet.hash = "sheet-hash";
  sheet.sizes = {{"M", Length::micrometres(540000), Length::micrometres(580000)}};
  sheet.air = {{gear::Port::crown, {20000}, {5000}, {40000}}};
  sheet.browLow = Length::micrometres(19000);
  sheet.browHigh = Length::micrometres(32000);
  sheet.certificationMonths = 24;
  sheet.ageLimitMonths = 120;
  return sheet;
}

inline std::array<fit::Finding, fit::kMarkCount> allSnug() {
  std::array<fit::Finding, fit::kMarkCount> strip{};
  strip.fill(fit::Finding::snug);
  return strip;
}

struct SmallWorld {
  Views views;
  std::string athleteId = "d:10", unitId = "d:20";
  std::int64_t n = 100;

  SmallWorld() {
    TeamRecord team;
    team.seasonStart = dayOf(2026, 8, 3);
    team.seasonEnd = dayOf(2026, 11, 20);
    views.team = team;
    views.sheets["sheet-hash"] = {"sheet-hash", std::make_shared<gear::ModelSheet>(plainSheet()), {}};
    UnitRecord unit;
    unit.id = unitId;
    unit.serial = "A1-M-00001";
    unit.tagKey = unit.serial;
    unit.sheet = "sheet-hash";
    unit.size = "M";
    unit.received = stamp(dayOf(2026, 7, 20));
    unit.isInService = true;
    unit.place = UnitPlace::withAthlete;
    unit.athletes = {athleteId};
    unit.labels = {{{gear::LabelKind::recertification, 2026, std::nullopt, {}}, stamp(dayOf(2026, 7, 20))}};
    views.units[unitId] = unit;
    AthleteRecord athlete;
    athlete.id = athleteId;
    athlete.jersey = "07";
    athlete.family = "Merriwold";
    athlete.given = "Teo";
    athlete.birthYear = 2010;
    athlete.added = stamp(dayOf(2026, 7, 1));
    athlete.units = {unitId};
    athlete.paired = stamp(dayOf(2026, 8, 1));
    athlete.pairedAs = athlete.paired->fact;
    athlete.tapes = {{{Length::micrometres(560000)}, stamp(dayOf(2026, 7, 28))}};
    views.athletes[athleteId] = athlete;
    ended(dayOf(2026, 8, 3), fit::CheckKind::first, fit::Verdict::fits);
    ended(dayOf(2026, 10, 12), fit::CheckKind::look, fit::Verdict::fits);
    seePoints(dayOf(2026, 10, 12));
  }

  Stamp stamp(Day day, int minute = 840) { return {at(day, minute), "d:2", "d:" + std::to_string(++n), n}; }
  AthleteRecord& athlete() { return views.athletes.at(athleteId); }
  UnitRecord& unit() { return views.units.at(unitId); }

  EndedCheck& ended(Day day, fit::CheckKind kind, fit::Verdict verdict, std::vector<std::string> reasons = {}) {
    EndedCheck check;
    check.check = "d:" + std::to_string(++n);
    check.unit = unitId;
    check.kind = kind;
    check.verdict = verdict;
    check.reasons = std::move(reasons);
    check.strip = allSnug();
    check.stamp = stamp(day);
    athlete().checks.push_back(check);
    return athlete().checks.back();
  }
  void seePoints(Day day) {
    for (gear::Point point : gear::kPoints) unit().points.see(point, {{gear::PointState::sound, {}}, stamp(day), true});
  }
  SaidRecord& said(Day day) {
    SaidRecord record;
    const Stamp when = stamp(day);
    record.fact = when.fact;
    record.at = when.at;
    record.unit = unitId;
    athlete().said.push_back(record);
    return athlete().said.back();
  }
  [[nodiscard]] DueRow row(Instant now = kNow) const { return rowOf(views, views.athletes.at(athleteId), {now}, {}); }
  [[nodiscard]] DueRow rowOn(Day day, int minute = 840) const { return row(at(day, minute)); }
};

inline const DueReason* find(const DueRow& row, DueKind kind) {
  for (const DueReason& reason : row.reasons) {
    if (reason.kind == kind) return &reason;
  }
  return nullptr;
}

}  // namespace snugline::season
