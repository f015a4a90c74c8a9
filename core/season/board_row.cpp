// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <tuple>

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

// What a person would do first; the worst reason decides.
RowAction actionFor(DueKind kind, const Standing& standing) {
  switch (kind) {
    case DueKind::withTrainer:
      return RowAction::close;
    case DueKind::seeAthleteNow:
    case DueKind::twoAthletes:
    case DueKind::twoUnits:
    case DueKind::labelDisputed:
    case DueKind::tapeStale:
    case DueKind::neverTaped:
    case DueKind::stillOut:
    case DueKind::keptUnit:
      return RowAction::athlete;
    case DueKind::noUnit:
    case DueKind::held:
    case DueKind::unitFault:
    case DueKind::labelLapsed:
    case DueKind::labelMissing:
    case DueKind::labelUnreadable:
    case DueKind::labelUnknown:
    case DueKind::unitAway:
    case DueKind::noSheet:
    case DueKind::notInService:
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
    case DueKind::pointsAfterHit:
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
  if (worst == RowAction::close) return worst;
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
  row.points = context.standings->of(*standing.unit).points;
}

}  // namespace

Grade gradeOf(const DueReason& reason) {
  switch (reason.kind) {
    case DueKind::seeAthleteNow:
      return Grade::seeNow;
    case DueKind::withTrainer:
      return Grade::withTrainer;
    case DueKind::keptUnit:
      return reason.isWithAthlete ? Grade::stillWorn : Grade::rest;
    case DueKind::held:
      return reason.isWithAthlete ? Grade::stillWorn : Grade::fault;
    case DueKind::brokeSaid:
      return Grade::broke;
    case DueKind::wordOpen:
      return reason.feels == fit::Feels::broke ? Grade::broke : Grade::report;
    case DueKind::hairChanged:
      return Grade::report;
    case DueKind::unitFault:
    case DueKind::labelLapsed:
    case DueKind::labelMissing:
    case DueKind::labelUnreadable:
    case DueKind::labelDisputed:
    case DueKind::verdictDoNotWear:
    case DueKind::twoAthletes:
    case DueKind::twoUnits:
    case DueKind::unitAway:
    case DueKind::pointsAfterHit:
      return Grade::fault;
    case DueKind::lineOff:
      return reason.finding == fit::Finding::fault ? Grade::fault : Grade::rest;
    case DueKind::airLeaking:
      return Grade::leak;
    case DueKind::airChanged:
      return reason.cause == AirCause::refilled ? Grade::rest : Grade::weather;
    case DueKind::noUnit:
    case DueKind::labelUnknown:
    case DueKind::noSheet:
    case DueKind::notInService:
    case DueKind::neverFitted:
    case DueKind::checkOpen:
    case DueKind::adjustOpen:
    case DueKind::partChanged:
    case DueKind::dryHair:
    case DueKind::breakIn:
    case DueKind::weeklyLook:
    case DueKind::pointUnseen:
    case DueKind::labelLapsing:
    case DueKind::tapeStale:
    case DueKind::neverTaped:
    case DueKind::stillOut:
      return reason.isLate ? Grade::late : Grade::rest;
  }
  return Grade::rest;
}

DueContext contextOf(const Views& views, BoardTime time, const Conditions& conditions) {
  DueContext context;
  context.views = &views;
  context.today = dayOf(time.now);
  context.practice = nextPractice(views, time.now);
  const WeatherNow weather = weatherNow(views, time, conditions);
  context.standings.emplace(views, context.today);
  for (const auto& [id, unit] : views.units) {
    if (!unit.keptBy.empty()) context.kept[unit.keptBy].push_back(&unit);
  }
  for (auto& [id, units] : context.kept)
    std::sort(units.begin(), units.end(), [](const UnitRecord* a, const UnitRecord* b) { return a->id < b->id; });
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

Standing standingOf(const DueContext& context, const AthleteRecord& athlete) {
  Standing standing;
  standing.athlete = &athlete;
  for (const std::string& id : athlete.units) {
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
    if (!isOfThisUnit(check)) continue;
    const bool isFinding = check.verdict == fit::Verdict::doNotWear || check.verdict == fit::Verdict::adjust;
    const bool counts = isSeen(context, check.stamp);
    if (standing.last == nullptr && (counts || isFinding)) standing.last = &check;
    if (!counts) continue;
    if (standing.look == nullptr && sawTheMarks(check)) standing.look = &check;
    const bool isFirstFit = check.kind != fit::CheckKind::look && isFit(check);
    if (isFirstFit) standing.fit = &check;
  }
  // Taken over without a recorded first fit: a look that fits has seen all nine marks.
  for (auto it = athlete.checks.rbegin(); it != athlete.checks.rend() && standing.fit == nullptr; ++it) {
    if (isFit(*it) && isSeen(context, it->stamp) && isOfThisUnit(*it)) standing.fit = &*it;
  }
  for (auto it = athlete.lines.rbegin(); it != athlete.lines.rend() && standing.line == nullptr; ++it) {
    const bool isSince =
        (!athlete.paired || isAfter(it->stamp, *athlete.paired)) && (turned == nullptr || isAfter(it->stamp, turned->stamp));
    if (it->unit == standing.unit->id && isSince && isSeen(context, it->stamp)) standing.line = &*it;
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

DueRow makeRow(const DueContext& context, const AthleteRecord& athlete) {
  const Standing standing = standingOf(context, athlete);
  DueRow row;
  row.athlete = athlete.id;
  row.jersey = athlete.jersey;
  row.family = athlete.family;
  row.given = athlete.given;
  if (standing.unit != nullptr) {
    row.unit = standing.unit->id;
    row.serial = standing.unit->serial;
  }
  if (standing.open != nullptr) row.check = standing.open->id;
  findReasons(context, standing, row.reasons);
  row.isAirUnknown = context.between == nullptr && findAirReasons(context, standing, row.reasons);
  for (DueReason& reason : row.reasons) reason.grade = gradeOf(reason);
  if (row.reasons.size() > 1) {
    std::stable_sort(row.reasons.begin(), row.reasons.end(), [](const DueReason& a, const DueReason& b) {
      return std::tie(a.lane, a.grade, a.dueBy, a.kind) < std::tie(b.lane, b.grade, b.dueBy, b.kind);
    });
  }
  if (row.reasons.empty()) {
    const auto next = nextLook(context, standing);
    row.dueFrom = next ? next->from : context.today;
    row.dueBy = next ? next->by : context.today;
  } else {
    row.lane = row.reasons.front().lane;
    row.grade = row.reasons.front().grade;
    row.dueFrom = row.reasons.front().dueFrom;
    row.dueBy = row.reasons.front().dueBy;
    for (const DueReason& reason : row.reasons) {
      if (reason.lane != row.lane) break;
      row.dueFrom = std::min(row.dueFrom, reason.dueFrom);
      row.dueBy = std::min(row.dueBy, reason.dueBy);
    }
  }
  row.action = actionOf(row, standing);
  drawStrip(row, context, standing);
  return row;
}

DueRow rowOf(const Views& views, const AthleteRecord& athlete, BoardTime time, const Conditions& conditions) {
  return makeRow(contextOf(views, time, conditions), athlete);
}

}  // namespace snugline::season
