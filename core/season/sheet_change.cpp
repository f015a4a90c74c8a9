// SPDX-License-Identifier: Apache-2.0
#include "core/season/sheet_change.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "core/season/board_reasons.h"
#include "core/season/tape.h"
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

// As folding the replacement would leave it, later than everything else.
void putInPlace(Views& views, const std::string& replaced, const ModelSheet& sheet, Instant now) {
  const Stamp last{now, {}, {}, std::numeric_limits<std::int64_t>::max()};
  views.sheets.at(replaced).replaced = ReplacedRecord{sheet.hash, last};
  if (!views.sheets.contains(sheet.hash)) views.sheets[sheet.hash] = {sheet.hash, std::make_shared<const ModelSheet>(sheet), last};
}

Result<std::optional<double>> oddsIn(const ModelSheet& sheet, const AthleteRecord& athlete, const std::string& size) {
  const TapeRecord* tape = lastTape(athlete);
  if (tape == nullptr || isReadingWanted(*tape)) return std::optional<double>();
  const auto answer = fit::sizeOf(sheet, tape->readings);
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

  const Views& before = views;
  Views after = views;
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

  const DueContext was = contextOf(before, time, conditions), is = contextOf(after, time, conditions);
  for (const std::string& id : wearers) {
    const AthleteRecord* athlete = before.athlete(id);
    if (athlete == nullptr || !athlete->isOnRoster) continue;
    AthleteEffect effect;
    effect.athlete = id;
    effect.row = {makeRow(was, *athlete), makeRow(is, *athlete)};
    for (const std::string& worn : athlete->units) {
      const UnitRecord* unit = before.unit(worn);
      if (unit == nullptr || !isOfModel(before, *unit, standing)) continue;
      effect.unit = worn;
      auto oddsBefore = oddsIn(*old, *athlete, unit->size), oddsAfter = oddsIn(sheet, *athlete, unit->size);
      if (!oddsBefore) return tl::unexpected<Error>(oddsBefore.error());
      if (!oddsAfter) return tl::unexpected<Error>(oddsAfter.error());
      effect.odds = {*oddsBefore, *oddsAfter};
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
