// SPDX-License-Identifier: Apache-2.0
// The board's reasons of air: weather and height, leaks, what was seen off in a line; and the board judged again when the weather changes.
#include <algorithm>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

void fill(DueReason& reason, const AirFinding& found) {
  reason.port = found.port;
  reason.change = found.change;
  reason.air = found.air;
  reason.belowZero = found.isBelowZero;
  reason.cause = found.cause;
  reason.count = found.count;
}

bool isOfWeather(const DueReason& reason) { return reason.kind == DueKind::airChanged && reason.cause != AirCause::refilled; }

// Judged where the marks were seen once: before that everything is open anyhow.
AirWatch watchFor(const Views& views, const Standing& standing) {
  if (standing.unit == nullptr) return {};
  const gear::ModelSheet* sheet = views.sheetOf(*standing.unit);
  const MarksSeen seen = marksSeen(standing);
  if (sheet == nullptr || sheet->air.empty() || seen.stamp == nullptr) return {};
  return watchOf(*standing.unit, *sheet, seen);
}

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
  if (look != nullptr) return {look->climate, &look->stamp};
  return {};
}

bool findAirReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons, AirWatch* watch) {
  const auto add = [&](DueKind kind, Lane lane, Day from) -> DueReason& {
    DueReason& reason = reasons.emplace_back();
    reason.kind = kind;
    reason.lane = lane;
    reason.dueFrom = std::min(from, context.today);
    reason.dueBy = lane == Lane::doNotWear ? reason.dueFrom : context.practice;
    return reason;
  };
  if (watch != nullptr) *watch = {};
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
  if (!unit.ports.empty()) {
    const gear::ModelSheet* sheet = context.views->sheetOf(unit);
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
  if (!context.climate.isKnown() && watch == nullptr) return false;
  const AirWatch now = watchFor(*context.views, standing);
  if (watch != nullptr) *watch = now;
  const AirFinding found = findAir(now, context.climate);
  if (found.count != 0) {
    DueReason& reason = add(DueKind::airChanged, Lane::beforePractice, context.today);
    fill(reason, found);
    reason.at = context.weatherAt;
  }
  return found.isUnknown;
}

void Board::watch(const Views& views, std::uint32_t slot) {
  if (m_watches.empty()) return;
  m_watches.resize(m_rows.size());
  m_watches[slot] = {};
  const AthleteRecord* athlete = views.athlete(m_rows[slot].athlete);
  if (athlete == nullptr) return;
  DueContext context;
  context.views = &views;
  context.now = m_time.now;
  m_watches[slot] = watchFor(views, standingOf(context, *athlete));
}

// Only rows that get the reason or lose it are made anew; where it stays, its amounts are put in place, which moves no row.
void Board::weather(const Views& views, const Conditions& conditions) {
  m_conditions = conditions;
  m_weather = season::weatherNow(views, m_time, conditions);
  const DueContext context = contextOf(views, m_time, conditions);
  if (m_watches.empty() && !m_rows.empty()) {
    m_watches.resize(m_rows.size());
    for (const std::uint32_t slot : m_order) watch(views, slot);
  }
  // The first cold day: most rows are other rows then, and walking through all of them costs less than finding them one by one. Some of
  // them, evenly chosen, say whether it is such a day; the rows come out the same either way.
  constexpr std::size_t kAsked = 256, kMany = 3;  // a third, as measured
  const std::size_t step = m_order.size() / kAsked + 1;
  std::size_t asked = 0, others = 0;
  for (std::size_t place = 0; place < m_order.size(); place += step, ++asked) {
    const std::uint32_t slot = m_order[place];
    const bool has = std::any_of(m_rows[slot].reasons.begin(), m_rows[slot].reasons.end(), isOfWeather);
    if (has != (findAir(m_watches[slot], context.climate).count != 0)) ++others;
  }
  if (others * kMany > asked) return build(views, m_time, conditions);
  bool isRankOpen = false;
  for (const std::uint32_t slot : m_order) {
    const AirFinding found = findAir(m_watches[slot], context.climate);
    DueRow& row = m_rows[slot];
    row.isAirUnknown = found.isUnknown;
    const auto reason = std::find_if(row.reasons.begin(), row.reasons.end(), isOfWeather);
    const bool has = reason != row.reasons.end();
    if (!has && found.count == 0) continue;
    if (has && found.count != 0) {
      fill(*reason, found);
      reason->at = context.weatherAt;
      continue;
    }
    const AthleteRecord* athlete = views.athlete(row.athlete);
    if (athlete == nullptr) continue;
    --m_counts[static_cast<std::size_t>(row.lane)];
    makeRow(context, *athlete, row);
    ++m_counts[static_cast<std::size_t>(row.lane)];
    const RankKey key = rankKeyOf(row);
    isRankOpen = isRankOpen || key != m_ranks[slot];
    m_ranks[slot] = key;
  }
  if (isRankOpen) rank();
}

int Board::airUnknownCount() const {
  return static_cast<int>(std::count_if(m_order.begin(), m_order.end(), [&](std::uint32_t slot) { return m_rows[slot].isAirUnknown; }));
}

}  // namespace snugline::season
