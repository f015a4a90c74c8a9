// SPDX-License-Identifier: Apache-2.0
// The board's reasons of air: weather and height, leaks, what was seen off in a line.
#include <algorithm>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

// Filled by hand outside a check after the marks were last seen: they may sit otherwise now.
const AirEvent* refilledSince(const UnitRecord& unit, const Stamp& seen) {
  for (std::size_t i = unit.air.size(); i > unit.airFrom; --i) {
    const AirEvent& event = unit.air[i - 1];
    if (!isAfter(event.stamp, seen)) return nullptr;
    if (event.kind != AirKind::read && event.check.empty()) return &event;
  }
  return nullptr;
}

}  // namespace

WeatherNow weatherNow(const Views& views, BoardTime time, const Conditions& given) {
  WeatherNow now{given, std::nullopt, false};
  if (!views.team || !views.team->weather) return now;
  const WeatherRecord& noted = *views.team->weather;
  const auto take = [&](auto& part, const auto& from) {
    if (part || !from) return;
    part = from;
    now.notedAt = noted.stamp.at;
  };
  take(now.conditions.temperature, noted.conditions.temperature);
  if (!now.conditions.ambient && !now.conditions.elevation) {  // one of them given says where we are
    take(now.conditions.elevation, noted.conditions.elevation);
    take(now.conditions.ambient, noted.conditions.ambient);
  }
  // Says nothing of the numbers, so that what was given still counts as given.
  if (!now.conditions.whereabouts) now.conditions.whereabouts = noted.conditions.whereabouts;
  if (now.conditions.place.empty()) now.conditions.place = noted.conditions.place;
  now.isOld = now.notedAt && time.now.ms - now.notedAt->ms > kWeatherFreshMs;
  return now;
}

MarksSeen marksSeen(const Standing& standing) {
  const EndedCheck* look = standing.look;
  const LineRecord* line = standing.line;
  if (line != nullptr && (look == nullptr || isAfter(line->stamp, look->stamp))) return {line->climate, &line->stamp};
  if (look != nullptr) return {look->climate, &look->stamp, look->isForCold};
  return {};
}

bool findAirReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons) {
  const auto add = [&](DueKind kind, Lane lane, Day from) -> DueReason& {
    DueReason& reason = reasons.emplace_back();
    reason.kind = kind;
    reason.lane = lane;
    reason.dueFrom = std::min(from, context.today);
    reason.dueBy = lane == Lane::doNotWear ? reason.dueFrom : context.practice;
    return reason;
  };
  if (standing.unit == nullptr) return false;
  const LineRecord* line = standing.line;
  if (line != nullptr && (standing.look == nullptr || isAfter(line->stamp, standing.look->stamp))) {
    const std::array<std::pair<fit::Mark, fit::Finding>, 3> seen{
        {{fit::Mark::brow, line->brow}, {fit::Mark::straps, line->straps}, {fit::Mark::hold, line->hold}}};
    for (const auto& [mark, finding] : seen) {
      if (finding == fit::Finding::snug || finding == fit::Finding::unseen) continue;
      // A strap or snap gone, a shell that cannot be tried: not worn until it was seen to, as in a check.
      const Lane lane = finding == fit::Finding::fault ? Lane::doNotWear : Lane::beforePractice;
      DueReason& reason = add(DueKind::lineOff, lane, dayOf(line->stamp.at));
      reason.mark = mark;
      reason.finding = finding;
      reason.who = line->stamp.who;
      reason.at = line->stamp.at;
    }
  }
  const UnitRecord& unit = *standing.unit;
  const MarksSeen seen = marksSeen(standing);
  const gear::ModelSheet* sheet = context.views->sheetOf(unit);
  if (!unit.ports.empty()) {
    for (std::size_t i = 0; i < unit.ports.size() && sheet != nullptr; ++i) {
      const PortAir& port = unit.ports[i];
      if (!sheet->hasPort(static_cast<gear::Port>(i))) continue;  // read while another sheet stood
      if (port.leakCount == 0 || sheet->leakPerWeek.pa <= 0 || port.leakHighPa >= -sheet->leakPerWeek.pa) continue;
      DueReason& reason = add(DueKind::airLeaking, Lane::beforePractice, context.today);
      reason.port = static_cast<gear::Port>(i);
      reason.change = Pressure{port.leakPa};
      reason.count = port.leakCount;
    }
    const AirEvent* refilled = seen.stamp == nullptr ? nullptr : refilledSince(unit, *seen.stamp);
    if (refilled != nullptr) {
      DueReason& reason = add(DueKind::airChanged, Lane::beforePractice, dayOf(refilled->stamp.at));
      reason.cause = AirCause::refilled;
      reason.port = refilled->port;
      reason.air = refilled->gauge;
      reason.who = refilled->stamp.who;
      reason.at = refilled->stamp.at;
    }
  }
  // Judged where the marks were seen once: before that everything is open anyhow.
  if (!context.climate.isKnown() || sheet == nullptr || seen.stamp == nullptr) return false;
  const AirFinding found = findAir(watchOf(unit, *sheet, seen), context.climate);
  if (found.count != 0) {
    DueReason& reason = add(DueKind::airChanged, Lane::beforePractice, context.today);
    reason.port = found.port;
    reason.change = found.change;
    reason.air = found.air;
    reason.belowZero = found.isBelowZero;
    reason.cause = found.cause;
    reason.count = found.count;
    reason.at = context.weatherAt;
  }
  return found.isUnknown;
}

}  // namespace snugline::season
