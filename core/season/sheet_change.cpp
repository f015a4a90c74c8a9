// SPDX-License-Identifier: Apache-2.0
#include "core/season/sheet_change.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "core/fit/size.h"
#include "core/season/unit_age.h"

namespace snugline::season {

namespace {

using gear::ModelSheet;

bool isOfModel(const Views& views, const UnitRecord& unit, const std::string& standing) {
  return unit.place != UnitPlace::retired && !unit.sheet.empty() && views.standingSheet(unit.sheet) == standing;
}

bool hasSize(const ModelSheet& sheet, const std::string& size) {
  return std::any_of(sheet.sizes.begin(), sheet.sizes.end(), [&](const gear::SizeBand& band) { return band.name == size; });
}

// The records that rows of these units' wearers are made from, and no more of a Book of thousands.
Views around(const Views& views, const std::string& standing) {
  Views part;
  part.team = views.team;
  part.people = views.people;
  part.sheets = views.sheets;
  std::set<std::string> athletes, units;
  for (const auto& [id, unit] : views.units) {
    if (!isOfModel(views, unit, standing)) continue;
    units.insert(id);
    athletes.insert(unit.athletes.begin(), unit.athletes.end());
  }
  // What else they wear, and who else wears that: both are reasons of a row.
  for (const std::string& id : std::set<std::string>(athletes)) {
    const AthleteRecord* athlete = views.athlete(id);
    if (athlete == nullptr) continue;
    units.insert(athlete->units.begin(), athlete->units.end());
    if (const CheckRecord* check = views.openCheck(athlete->openCheck)) part.openChecks.emplace(check->id, *check);
  }
  for (const std::string& id : units) {
    const UnitRecord* unit = views.unit(id);
    if (unit == nullptr) continue;
    athletes.insert(unit->athletes.begin(), unit->athletes.end());
    part.units.emplace(id, *unit);
  }
  for (const std::string& id : athletes)
    if (const AthleteRecord* athlete = views.athlete(id)) part.athletes.emplace(id, *athlete);
  return part;
}

// As folding the replacement would leave it, later than everything else.
void putInPlace(Views& views, const std::string& replaced, const ModelSheet& sheet, Instant now) {
  const Stamp last{now, {}, {}, std::numeric_limits<std::int64_t>::max()};
  views.sheets.at(replaced).replaced = ReplacedRecord{sheet.hash, last};
  if (!views.sheets.contains(sheet.hash)) views.sheets[sheet.hash] = {sheet.hash, std::make_shared<const ModelSheet>(sheet), last};
}

Result<std::optional<double>> oddsIn(const ModelSheet& sheet, const AthleteRecord& athlete, const std::string& size) {
  if (athlete.tapes.empty() || athlete.tapes.back().readings.empty()) return std::optional<double>();
  const auto answer = fit::sizeOf(sheet, athlete.tapes.back().readings);
  if (!answer) return tl::unexpected<Error>(answer.error());
  for (const fit::SizeOdds& each : answer->odds)
    if (each.size == size) return std::optional<double>(each.odds);
  return std::optional<double>();
}

std::vector<gear::Port> portsBetween(const ModelSheet& before, const ModelSheet& after) {
  std::vector<gear::Port> ports;
  for (const gear::Port port : {gear::Port::crown, gear::Port::sides, gear::Port::jawLeft, gear::Port::jawRight}) {
    const gear::AirPort *was = before.airAt(port), *is = after.airAt(port);
    if (was == nullptr && is == nullptr) continue;
    const bool isSame = was != nullptr && is != nullptr && was->start == is->start && was->low == is->low && was->high == is->high;
    if (!isSame) ports.push_back(port);
  }
  return ports;
}

std::optional<Day> firstOf(const std::optional<gear::DaySpan>& span) { return span ? std::optional(span->first) : std::nullopt; }

}  // namespace

std::vector<SizeGone> sizesGone(const Views& views, const std::string& replaced, const ModelSheet& sheet) {
  const std::string& standing = views.standingSheet(replaced);
  std::map<std::string, std::vector<std::string>> gone;
  for (const auto& [id, unit] : views.units)
    if (isOfModel(views, unit, standing) && !hasSize(sheet, unit.size)) gone[unit.size].push_back(id);
  std::vector<SizeGone> list;
  for (auto& [size, units] : gone) {
    std::sort(units.begin(), units.end());
    list.push_back({size, std::move(units)});
  }
  return list;
}

Result<SheetChange> changeOf(const Views& views, const std::string& replaced, const ModelSheet& sheet, BoardTime time,
                             const Conditions& conditions) {
  const std::string standing = views.standingSheet(replaced);
  const ModelSheet* old = views.sheet(standing);
  if (old == nullptr) return fail(ErrorCode::notFound, "sheet " + replaced);
  SheetChange change;
  change.differences = gear::differencesOf(*old, sheet);
  change.sizesGone = sizesGone(views, standing, sheet);
  for (const auto& [id, check] : views.openChecks)
    if (views.standingSheet(check.sheet) == standing) change.openChecks.push_back(id);
  std::sort(change.openChecks.begin(), change.openChecks.end());

  const Views before = around(views, standing);
  Views after = before;
  putInPlace(after, standing, sheet, time.now);
  const std::vector<gear::Port> ports = portsBetween(*old, sheet);
  std::set<std::string> wearers, concerned;
  for (const auto& [id, unit] : before.units) {
    if (!isOfModel(before, unit, standing)) continue;
    ++change.unitCount;
    change.wornCount += unit.athletes.empty() ? 0 : 1;
    wearers.insert(unit.athletes.begin(), unit.athletes.end());
    UnitEffect effect{id, unit.size, unit.athletes, {}, {}, ports, !hasSize(sheet, unit.size)};
    effect.lastGood = {firstOf(lastGoodDay(before, unit)), firstOf(lastGoodDay(after, unit))};
    effect.lastByAge = {firstOf(lastDayByAge(before, unit)), firstOf(lastDayByAge(after, unit))};
    if (!effect.isConcerned()) continue;
    concerned.insert(id);
    change.units.push_back(std::move(effect));
  }
  std::sort(change.units.begin(), change.units.end(),
            [&](const UnitEffect& a, const UnitEffect& b) { return before.unit(a.unit)->serial < before.unit(b.unit)->serial; });

  for (const std::string& id : wearers) {
    const AthleteRecord* athlete = before.athlete(id);
    if (athlete == nullptr || !athlete->isOnRoster) continue;
    AthleteEffect effect;
    effect.athlete = id;
    effect.row = {rowOf(before, *athlete, time, conditions), rowOf(after, *athlete, time, conditions)};
    for (const std::string& worn : athlete->units) {
      const UnitRecord* unit = before.unit(worn);
      if (unit == nullptr || !isOfModel(before, *unit, standing)) continue;
      effect.unit = worn;
      auto was = oddsIn(*old, *athlete, unit->size), is = oddsIn(sheet, *athlete, unit->size);
      if (!was) return tl::unexpected<Error>(was.error());
      if (!is) return tl::unexpected<Error>(is.error());
      effect.odds = {*was, *is};
    }
    if (std::find(change.openChecks.begin(), change.openChecks.end(), athlete->openCheck) != change.openChecks.end())
      effect.openCheck = athlete->openCheck;
    if (effect.row.isChanged() || effect.odds.isChanged() || !effect.openCheck.empty() || concerned.contains(effect.unit))
      change.athletes.push_back(std::move(effect));
  }
  std::sort(change.athletes.begin(), change.athletes.end(), [](const AthleteEffect& a, const AthleteEffect& b) {
    if (a.row.isChanged() != b.row.isChanged()) return a.row.isChanged();
    return ranksBefore(a.row.after, b.row.after);
  });
  return change;
}

}  // namespace snugline::season
