// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/season/board_reasons.h"
#include "core/season/turn.h"

namespace snugline::season {

namespace {

constexpr int kDaysInWeek = 7;

bool sawTheMarks(const EndedCheck& check) { return check.verdict != fit::Verdict::unfinished; }

bool isFit(const EndedCheck& check) {
  switch (check.verdict) {
    case fit::Verdict::fits:
      return true;  // a look that fits has seen all nine marks
    case fit::Verdict::adjust:
      return check.kind != fit::CheckKind::look;  // the fit stands open and is said so
    case fit::Verdict::doNotWear:
    case fit::Verdict::unfinished:
      return false;
  }
  return false;
}

bool isRankedOnTop(const DueRow& row) {
  return std::any_of(row.reasons.begin(), row.reasons.end(),
                     [](const DueReason& r) { return r.kind == DueKind::seeAthleteNow && r.lane == Lane::doNotWear; });
}

// What a person would do first; the worst reason decides.
RowAction actionFor(DueKind kind, const Standing& standing) {
  switch (kind) {
    case DueKind::seeAthleteNow:
    case DueKind::twoAthletes:
    case DueKind::twoUnits:
    case DueKind::labelDisputed:
    case DueKind::tapeStale:
    case DueKind::neverTaped:
    case DueKind::stillOut:
      return RowAction::athlete;
    case DueKind::noUnit:
    case DueKind::held:
    case DueKind::unitFault:
    case DueKind::labelLapsed:
    case DueKind::labelMissing:
    case DueKind::labelUnknown:
    case DueKind::unitAway:
    case DueKind::verdictDoNotWear:
      return RowAction::chooseHelmet;
    case DueKind::neverFitted:
      return RowAction::firstFit;
    case DueKind::checkOpen:
      return standing.last != nullptr && standing.last->kind != fit::CheckKind::look ? RowAction::refit : RowAction::look;
    case DueKind::adjustOpen:
      return standing.last != nullptr && standing.last->kind == fit::CheckKind::look ? RowAction::look : RowAction::refit;
    case DueKind::hairChanged:
    case DueKind::dryHair:
      return RowAction::refit;
    case DueKind::brokeSaid:
    case DueKind::wordOpen:
    case DueKind::partChanged:
    case DueKind::airChanged:
    case DueKind::airLeaking:
    case DueKind::lineOff:
    case DueKind::breakIn:
    case DueKind::weeklyLook:
    case DueKind::pointUnseen:
    case DueKind::labelLapsing:
      return RowAction::look;
  }
  return RowAction::none;
}

RowAction actionOf(const DueRow& row, const Standing& standing) {
  if (row.reasons.empty()) return RowAction::none;
  const RowAction worst = actionFor(row.reasons.front().kind, standing);
  // Between two seasons: there is nothing on the head to look at.
  if (standing.unit == nullptr && worst != RowAction::chooseHelmet) return RowAction::athlete;
  if (worst == RowAction::chooseHelmet || worst == RowAction::athlete || standing.unit == nullptr) return worst;
  if (standing.open != nullptr) return RowAction::resume;
  if (standing.fit == nullptr) return RowAction::firstFit;
  const bool isRefit = std::any_of(row.reasons.begin(), row.reasons.end(),
                                   [&](const DueReason& r) { return actionFor(r.kind, standing) == RowAction::refit; });
  return isRefit ? RowAction::refit : worst;
}

void drawStrip(DueRow& row, const DueContext& context, const Standing& standing) {
  if (standing.open != nullptr) {
    for (std::size_t i = 0; i < fit::kMarkCount; ++i) {
      const fit::MarkState& mark = standing.open->state.marks[i];
      row.strip[i] = mark.isCurrent ? mark.finding : fit::Finding::unseen;
    }
  } else if (standing.last != nullptr) {
    row.strip = standing.last->strip;
    // What a new part disturbs is not seen until a check that began after it has seen it.
    const AthleteRecord& athlete = *standing.athlete;
    const bool isSince = athlete.partChanged && isAfter(*athlete.partChanged, standing.last->stamp);
    for (const fit::Mark mark : fit::kMarks) {
      if (isSince && athlete.partMarks.has(mark)) row.strip[static_cast<std::size_t>(mark)] = fit::Finding::unseen;
    }
  }
  for (const SaidRecord& said : standing.athlete->said) {
    if (said.isAnswered || said.isUnwell || !said.where) continue;
    row.words.add(*said.where);
    row.wordFeels[static_cast<std::size_t>(*said.where)] = said.isBroken ? fit::Feels::broke : said.feels;
  }
  if (standing.unit == nullptr) return;
  for (std::size_t i = 0; i < gear::kPointCount; ++i) {
    const auto& seen = standing.unit->points.glance(gear::kPoints[i]);
    const bool counts = seen.state == gear::PointState::fault || isSeen(context, seen.at());
    row.points[i] = counts ? seen.state : gear::PointState::unseen;
  }
}

}  // namespace

DueContext contextOf(const Views& views, BoardTime time, const Conditions& conditions) {
  DueContext context;
  context.views = &views;
  context.now = time.now;
  context.today = dayOf(time.now);
  context.practice = nextPractice(views, time.now);
  const WeatherNow weather = weatherNow(views, time, conditions);
  context.climate = climateOf(weather.conditions);
  context.weatherAt = weather.notedAt;
  if (views.team) {
    context.seasonStart = views.team->seasonStart;
    context.seasonEnd = views.team->seasonEnd;
    context.between = between(views);
  }
  return context;
}

Day nextPractice(const Views& views, Instant now) {
  const Day today = dayOf(now);
  if (!views.team) return today;
  const TeamRecord& team = *views.team;
  Day day = minuteOfDay(now) <= team.practiceMinute ? today : today.plus(1);
  if (team.seasonStart && day < *team.seasonStart) day = *team.seasonStart;
  for (int i = 0; i < kDaysInWeek; ++i, day = day.plus(1)) {
    if (team.practiceDays[static_cast<std::size_t>(weekday(day))]) return day;
  }
  return today;  // no day of the week is set
}

Standing standingOf(const DueContext& context, const AthleteRecord& athlete, const UnitRecord* worn) {
  Standing standing;
  standing.athlete = &athlete;
  standing.unit = worn;
  for (const std::string& id : athlete.units) {
    if (worn != nullptr) break;
    const UnitRecord* unit = context.views->unit(id);
    if (unit == nullptr) continue;
    if (standing.unit != nullptr) standing.others.push_back(standing.unit);
    standing.unit = unit;
  }
  if (!athlete.openCheck.empty()) standing.open = context.views->openCheck(athlete.openCheck);
  if (standing.unit == nullptr) return standing;

  const SeasonRecord* turned = lastClosed(*context.views);
  const auto isOfThisUnit = [&](const EndedCheck& check) {
    if (check.unit != standing.unit->id) return false;
    if (turned != nullptr && !isAfter(check.stamp, turned->stamp)) return false;
    if (athlete.paired) return isAfter(check.stamp, *athlete.paired);
    return athlete.pairedAs.empty() || isAfter(check.stamp, Stamp{{}, {}, athlete.pairedAs});
  };
  // Newest first; nothing before the last fit matters.
  for (auto it = athlete.checks.rbegin(); it != athlete.checks.rend() && standing.fit == nullptr; ++it) {
    const EndedCheck& check = *it;
    // Once the newest are known only a fit matters; asking a look for its unit would read a line of memory for nothing.
    const bool isFitOnly = standing.last != nullptr && standing.look != nullptr;
    if (isFitOnly && check.kind == fit::CheckKind::look) continue;
    if (!isOfThisUnit(check)) continue;
    const bool isFinding = check.verdict == fit::Verdict::doNotWear || check.verdict == fit::Verdict::adjust;
    const bool counts = isSeen(context, check.stamp.at);
    if (standing.last == nullptr && (counts || isFinding)) standing.last = &check;
    if (!counts) continue;
    if (standing.look == nullptr && sawTheMarks(check)) standing.look = &check;
    const bool isFirstFit = check.kind != fit::CheckKind::look && isFit(check);
    if (isFirstFit) standing.fit = &check;
  }
  // Taken over without a recorded first fit: a look that fits has seen all nine marks.
  for (auto it = athlete.checks.rbegin(); it != athlete.checks.rend() && standing.fit == nullptr; ++it) {
    if (isFit(*it) && isSeen(context, it->stamp.at) && isOfThisUnit(*it)) standing.fit = &*it;
  }
  for (auto it = athlete.lines.rbegin(); it != athlete.lines.rend() && standing.line == nullptr; ++it) {
    const bool isSince =
        (!athlete.paired || isAfter(it->stamp, *athlete.paired)) && (turned == nullptr || isAfter(it->stamp, turned->stamp));
    if (it->unit == standing.unit->id && isSince && isSeen(context, it->stamp.at)) standing.line = &*it;
  }
  if (standing.fit != nullptr && standing.look != nullptr && dayOf(standing.look->stamp.at) > dayOf(standing.fit->stamp.at)) {
    standing.lookAfterFit = standing.look;
  }
  return standing;
}

std::optional<NextLook> nextLook(const DueContext& context, const Standing& standing) {
  if (context.between != nullptr || standing.fit == nullptr || standing.look == nullptr) return std::nullopt;
  if (context.seasonEnd && context.today > *context.seasonEnd) return std::nullopt;
  if (standing.lookAfterFit == nullptr) {
    const Day fitted = dayOf(standing.fit->stamp.at);
    return NextLook{DueKind::breakIn, fitted.plus(fit::kBreakInFromDays), fitted.plus(fit::kBreakInByDays)};
  }
  if (context.seasonStart && context.today < *context.seasonStart) return std::nullopt;
  const Day seen = dayOf(standing.look->stamp.at);
  return NextLook{DueKind::weeklyLook, seen.plus(fit::kWeeklyFromDays), seen.plus(fit::kWeeklyByDays)};
}

void makeRow(const DueContext& context, const AthleteRecord& athlete, DueRow& row, const UnitRecord* worn, AirWatch* watch) {
  const Standing standing = standingOf(context, athlete, worn);
  row.athlete = athlete.id;
  row.jersey = athlete.jersey;
  row.family = athlete.family;
  row.given = athlete.given;
  row.unit.clear();
  row.serial.clear();
  row.check.clear();
  if (standing.unit != nullptr) {
    row.unit = standing.unit->id;
    row.serial = standing.unit->serial;
  }
  if (standing.open != nullptr) row.check = standing.open->id;
  row.lane = Lane::nothingDue;
  row.strip = {};
  row.words = {};
  row.wordFeels = {};
  row.points = {};
  findReasons(context, standing, row.reasons);
  row.isAirUnknown = context.between == nullptr && findAirReasons(context, standing, row.reasons, watch);
  if (context.between != nullptr && watch != nullptr) *watch = {};
  if (row.reasons.size() > 1) {
    std::stable_sort(row.reasons.begin(), row.reasons.end(), [](const DueReason& a, const DueReason& b) {
      if (a.lane != b.lane) return a.lane < b.lane;
      const bool aOnTop = a.kind == DueKind::seeAthleteNow, bOnTop = b.kind == DueKind::seeAthleteNow;
      if (aOnTop != bOnTop) return aOnTop;
      if (a.dueBy != b.dueBy) return a.dueBy < b.dueBy;
      return a.kind < b.kind;
    });
  }
  if (row.reasons.empty()) {
    const auto next = nextLook(context, standing);
    row.dueFrom = next ? next->from : context.today;
    row.dueBy = next ? next->by : context.today;
  } else {
    row.lane = row.reasons.front().lane;
    row.dueFrom = row.reasons.front().dueFrom;
    row.dueBy = row.reasons.front().dueBy;
    for (const DueReason& reason : row.reasons) {
      if (reason.lane != row.lane) break;
      row.dueFrom = std::min(row.dueFrom, reason.dueFrom);
      row.dueBy = std::min(row.dueBy, reason.dueBy);
    }
  }
  const auto isOut = [](const UnitRecord& unit) { return !unit.holds.empty() && !unit.isInHand; };
  row.isWithAthlete = (standing.unit != nullptr && isOut(*standing.unit)) ||
                      std::any_of(standing.others.begin(), standing.others.end(), [&](const UnitRecord* unit) { return isOut(*unit); });
  row.isOnTop = isRankedOnTop(row);
  row.action = actionOf(row, standing);
  drawStrip(row, context, standing);
}

DueRow rowOf(const Views& views, const AthleteRecord& athlete, BoardTime time, const Conditions& conditions) {
  DueRow row;
  makeRow(contextOf(views, time, conditions), athlete, row);
  return row;
}

}  // namespace snugline::season
