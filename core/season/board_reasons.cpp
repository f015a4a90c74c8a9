// SPDX-License-Identifier: Apache-2.0
#include "core/season/board_reasons.h"

#include <algorithm>

#include "core/season/patterns.h"
#include "core/season/tape_age.h"

namespace snugline::season {

namespace {

constexpr int kLapsingFromDays = 14;  // ours: two weeks to send a unit out
constexpr int kPointByDays = 7;       // as the weekly look: common practice, no source
constexpr int kTapeByDays = 30;       // ours

class Collector {
 public:
  Collector(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons)
      : m_context(context), m_standing(standing), m_reasons(reasons) {
    m_reasons.clear();
  }

  void unwell();
  void units();
  void pairing();
  void words();
  void changes();
  void fit();
  void points();
  void tape();

 private:
  DueReason& add(DueKind kind, Lane lane, Day from, Day by) {
    DueReason& reason = m_reasons.emplace_back();
    reason.kind = kind;
    reason.lane = lane;
    reason.dueFrom = from;
    reason.dueBy = by;
    return reason;
  }
  // At once: due by the day it was found; a day after today is a wrong clock and reads as today.
  DueReason& addAtOnce(DueKind kind, Day found) {
    const Day day = std::min(found, m_context.today);
    return add(kind, Lane::doNotWear, day, day);
  }
  DueReason& addBeforePractice(DueKind kind, Day found) {
    return add(kind, Lane::beforePractice, std::min(found, m_context.today), m_context.practice);
  }
  static void sign(DueReason& reason, const Stamp& stamp) {
    reason.who = stamp.who;
    reason.at = stamp.at;
  }
  void heldOrAway(const UnitRecord& unit);
  void faults(const UnitRecord& unit);
  void label(const UnitRecord& unit);
  void lastCheck();
  void look();
  [[nodiscard]] bool isWorn(const std::string& unit) const;
  [[nodiscard]] bool arePointsSeenSince(const SaidRecord& said) const;

  const DueContext& m_context;
  const Standing& m_standing;
  std::vector<DueReason>& m_reasons;
};

bool Collector::isWorn(const std::string& unit) const {
  const auto& units = m_standing.athlete->units;
  return unit.empty() || std::find(units.begin(), units.end(), unit) != units.end();
}

bool Collector::arePointsSeenSince(const SaidRecord& said) const {
  const UnitRecord* unit = said.unit.empty() ? m_standing.unit : m_context.views->unit(said.unit);
  if (unit == nullptr || unit->place == UnitPlace::retired || unit->place == UnitPlace::lost) return true;
  const Stamp saidAt{said.at, {}, said.fact};
  return std::all_of(unit->points.begin(), unit->points.end(), [&](const auto& point) {
    return point && point->finding.state != gear::PointState::unseen && isSeen(m_context, point->stamp.at) && isAfter(point->stamp, saidAt);
  });
}

// Not acknowledged: on top. Acknowledged: stays until it is closed and the unit has been looked over since.
void Collector::unwell() {
  for (const SaidRecord& said : m_standing.athlete->said) {
    if (!said.isUnwell) continue;
    const bool isClosed = said.isAnswered;
    if (isClosed && arePointsSeenSince(said)) continue;
    const Day day = dayOf(said.at);
    DueReason& reason =
        said.isAcknowledged || isClosed ? addBeforePractice(DueKind::seeAthleteNow, day) : addAtOnce(DueKind::seeAthleteNow, day);
    reason.at = said.at;
  }
}

void Collector::heldOrAway(const UnitRecord& unit) {
  for (const HoldRecord& hold : unit.holds) {
    DueReason& reason = addAtOnce(DueKind::held, dayOf(hold.stamp.at));
    reason.point = gear::pointFromCode(hold.reason);
    reason.text = hold.what.empty() ? hold.reason : hold.what;
    sign(reason, hold.stamp);
  }
  std::string_view away;
  switch (unit.place) {
    case UnitPlace::shelf:
    case UnitPlace::withAthlete:
      return;
    case UnitPlace::repair:
      away = "repair";
      break;
    case UnitPlace::sentOut:
      away = "sent-out";
      break;
    case UnitPlace::retired:
      away = "retired";
      break;
    case UnitPlace::lost:
      away = "lost";
      break;
  }
  addAtOnce(DueKind::unitAway, m_context.today).text = away;
}

void Collector::faults(const UnitRecord& unit) {
  for (gear::Point point : gear::kPoints) {
    if (unit.points.glance(point).state != gear::PointState::fault) continue;
    const auto& seen = unit.points[static_cast<std::size_t>(point)];
    DueReason& reason = addAtOnce(DueKind::unitFault, dayOf(seen->stamp.at));
    reason.point = point;
    reason.text = seen->finding.what;
    sign(reason, seen->stamp);
  }
}

// A label year is a span; it is judged by the earliest end (NOCSAE, Recertification page; ND004).
void Collector::label(const UnitRecord& unit) {
  const Day today = m_context.today;
  if (unit.isLabelMissing) {
    addAtOnce(DueKind::labelMissing, today);
    return;
  }
  if (unit.isLabelDisputed) addAtOnce(DueKind::labelDisputed, unit.labels.empty() ? today : dayOf(unit.labels.back().stamp.at));
  const auto span = lastGoodDay(*m_context.views, unit);
  if (!span) {
    addAtOnce(DueKind::labelUnknown, dayOf(unit.received.at));
    return;
  }
  const Day lastGood = span->first;
  const Day lapse = lastGood.plus(1);
  if (today >= lapse) {
    addAtOnce(DueKind::labelLapsed, lapse).day = lastGood;
    return;
  }
  const bool isBeforeSeasonEnd = !m_context.seasonEnd || lapse <= *m_context.seasonEnd;
  const Day from = lapse.plus(-kLapsingFromDays);
  if (isBeforeSeasonEnd && today >= from) add(DueKind::labelLapsing, Lane::weekly, from, lastGood).day = lastGood;
}

void Collector::units() {
  const auto judge = [this](const UnitRecord& unit) {
    heldOrAway(unit);
    faults(unit);
    label(unit);
  };
  if (m_standing.unit != nullptr) judge(*m_standing.unit);
  for (const UnitRecord* unit : m_standing.others) judge(*unit);
}

void Collector::pairing() {
  const AthleteRecord& athlete = *m_standing.athlete;
  const Day since = athlete.paired ? dayOf(athlete.paired->at) : m_context.today;
  if (m_context.between != nullptr) {
    if (athlete.units.empty()) return;
    addAtOnce(DueKind::stillOut, m_context.between->closed).text = m_context.between->season;
  }
  if (athlete.units.empty()) {
    addAtOnce(DueKind::noUnit, dayOf(athlete.added.at));
    return;
  }
  if (athlete.units.size() > 1) addAtOnce(DueKind::twoUnits, since).count = static_cast<int>(athlete.units.size());
  const auto askOthers = [&](const UnitRecord& unit) {
    if (unit.athletes.size() < 2) return;
    DueReason& reason = addAtOnce(DueKind::twoAthletes, since);
    for (const std::string& other : unit.athletes) {
      const AthleteRecord* record = other == athlete.id ? nullptr : m_context.views->athlete(other);
      if (record == nullptr) continue;
      if (!reason.text.empty()) reason.text += ", ";
      reason.text += record->jersey;
    }
  };
  if (m_standing.unit != nullptr) askOthers(*m_standing.unit);
  for (const UnitRecord* unit : m_standing.others) askOthers(*unit);
}

void Collector::words() {
  for (const SaidRecord& said : m_standing.athlete->said) {
    if (said.isAnswered || said.isUnwell) continue;
    const bool isBroken = said.isBroken || said.feels == fit::Feels::broke;
    if (said.isHairChanged && !said.where && !isBroken) {
      if (m_standing.athlete->hairChanged || m_context.between != nullptr) continue;  // one reason for one cut
      addBeforePractice(DueKind::hairChanged, dayOf(said.at)).at = said.at;
      continue;
    }
    // A word about a helmet that is no longer worn is not lost, but it is no reason to take the present one off.
    const bool isAtOnce = isBroken && isWorn(said.unit);
    const fit::Feels feels = isBroken ? fit::Feels::broke : said.feels;
    // The same said again while it waits is one reason with its last words; how often stands beside it.
    const auto again = std::find_if(m_reasons.begin(), m_reasons.end(), [&](const DueReason& r) {
      return r.kind == DueKind::wordOpen && !isAtOnce && said.where && r.mark == said.where && r.side == said.side && r.feels == feels;
    });
    DueReason& reason = again != m_reasons.end() ? *again
                        : isAtOnce               ? addAtOnce(DueKind::brokeSaid, dayOf(said.at))
                                                 : addBeforePractice(DueKind::wordOpen, dayOf(said.at));
    reason.mark = said.where;
    reason.side = said.side;
    reason.feels = feels;
    if (!said.words.empty()) reason.text = said.words;
    reason.at = said.at;
    if (const SaidBefore before = saidBefore(*m_standing.athlete, said, m_context.seasonStart); before.times > 1) {
      reason.count = before.times;
      reason.day = before.since;
    }
  }
}

void Collector::changes() {
  const AthleteRecord& athlete = *m_standing.athlete;
  if (athlete.hairChanged) sign(addBeforePractice(DueKind::hairChanged, dayOf(athlete.hairChanged->at)), *athlete.hairChanged);
  if (!athlete.partChanged || m_standing.unit == nullptr) return;
  DueReason& reason = addBeforePractice(DueKind::partChanged, dayOf(athlete.partChanged->at));
  sign(reason, *athlete.partChanged);
  reason.marks = athlete.partMarks;
  for (const std::string& part : athlete.changedParts) reason.text += (reason.text.empty() ? "" : ", ") + part;
}

// The verdict as it was recorded, until another check in this unit says otherwise.
void Collector::lastCheck() {
  const EndedCheck* last = m_standing.last;
  if (last == nullptr) return;
  const Day day = dayOf(last->stamp.at);
  const auto firstWith = [&](auto isWanted) -> std::optional<fit::Mark> {
    for (fit::Mark mark : fit::kMarks) {
      if (isWanted(last->strip[static_cast<std::size_t>(mark)])) return mark;
    }
    return std::nullopt;
  };
  switch (last->verdict) {
    case fit::Verdict::fits:
      break;
    case fit::Verdict::doNotWear: {
      DueReason& reason = addAtOnce(DueKind::verdictDoNotWear, day);
      if (!last->reasons.empty()) reason.text = last->reasons.front();
      sign(reason, last->stamp);
      break;
    }
    case fit::Verdict::adjust: {
      const bool isOnlyHair =
          last->isHairDry && std::all_of(last->reasons.begin(), last->reasons.end(), [](const auto& r) { return r == "dry-hair"; });
      if (isOnlyHair) break;
      DueReason& reason = addBeforePractice(DueKind::adjustOpen, day);
      reason.mark = firstWith([](fit::Finding f) { return f != fit::Finding::snug && f != fit::Finding::unseen; });
      if (reason.mark) reason.finding = last->strip[static_cast<std::size_t>(*reason.mark)];
      if (!last->reasons.empty()) reason.text = last->reasons.front();
      sign(reason, last->stamp);
      break;
    }
    case fit::Verdict::unfinished: {
      if (m_standing.open != nullptr) break;  // taken up again
      DueReason& reason = addBeforePractice(DueKind::checkOpen, day);
      reason.mark = firstWith([](fit::Finding f) { return f == fit::Finding::unseen; });
      sign(reason, last->stamp);
      break;
    }
  }
  // Wet, as worn in play: Nationwide Children's; common practice. A look may be dry.
  const EndedCheck* fitted = m_standing.fit;
  if (fitted != nullptr && fitted->isHairDry && last->verdict != fit::Verdict::doNotWear) {
    DueReason& reason = add(DueKind::dryHair, Lane::beforePractice, m_context.practice, m_context.practice);
    sign(reason, fitted->stamp);
  }
}

void Collector::look() {
  const auto next = nextLook(m_context, m_standing);
  if (!next || m_context.today < next->from) return;
  const bool isLate = m_context.today > next->by;
  if (next->kind == DueKind::breakIn) {
    DueReason& reason = add(DueKind::breakIn, Lane::beforePractice, next->from, next->by);
    reason.count = daysBetween(dayOf(m_standing.fit->stamp.at), m_context.today);
    reason.isLate = isLate;
    return;
  }
  DueReason& reason = add(DueKind::weeklyLook, isLate ? Lane::beforePractice : Lane::weekly, next->from, next->by);
  reason.count = daysBetween(dayOf(m_standing.look->stamp.at), m_context.today);
  reason.isLate = isLate;
}

void Collector::fit() {
  if (m_standing.open != nullptr) {
    DueReason& reason = addBeforePractice(DueKind::checkOpen, dayOf(m_standing.open->begun.at));
    if (const auto setup = setupOf(*m_context.views, *m_standing.open, m_context.today)) {
      const fit::Step next = fit::assess(*setup, m_standing.open->state).next;
      reason.mark = next.mark;
      reason.point = next.point;
      reason.text = next.codeText();
    }
    sign(reason, m_standing.open->begun);
  }
  if (m_standing.unit == nullptr) return;
  lastCheck();
  if (m_standing.fit == nullptr) {
    const AthleteRecord& athlete = *m_standing.athlete;
    addAtOnce(DueKind::neverFitted, athlete.paired ? dayOf(athlete.paired->at) : m_context.today);
    return;
  }
  look();
}

// Seen at intake and weekly. A unit that was never put in service for want of one of the four must not be worn.
void Collector::points() {
  const UnitRecord* unit = m_standing.unit;
  if (unit == nullptr) return;
  for (gear::Point point : gear::kPoints) {
    const auto& seen = unit->points.glance(point);
    Day since = dayOf(unit->received.at);
    if (seen.state == gear::PointState::fault) continue;
    if (seen.state == gear::PointState::sound && isSeen(m_context, seen.at())) {
      const EndedCheck* look = m_standing.look;
      // A check left open calls for all of it again and says so itself.
      if (look == nullptr || look->verdict != fit::Verdict::fits) continue;
      const Day lookDay = dayOf(look->stamp.at);
      const auto isWrittenAfter = [&] { return isAfter(unit->points[static_cast<std::size_t>(point)]->stamp, Stamp{{}, {}, look->check}); };
      if (dayOf(seen.at()) >= lookDay || isWrittenAfter()) continue;
      since = lookDay;
    }
    const bool isBarred = !unit->isInService && gear::isNeededForService(point);
    DueReason& reason = isBarred ? addAtOnce(DueKind::pointUnseen, since)
                                 : add(DueKind::pointUnseen, Lane::weekly, std::min(since, m_context.today),
                                       std::min(since, m_context.today).plus(kPointByDays));
    reason.point = point;
    reason.isLate = !isBarred && m_context.today > reason.dueBy;
  }
}

void Collector::tape() {
  const AthleteRecord& athlete = *m_standing.athlete;
  const TapeRecord* last = nullptr;
  for (const TapeRecord& tape : athlete.tapes) {
    if (isSeen(m_context, tape.stamp.at) && (last == nullptr || dayOf(tape.stamp.at) >= dayOf(last->stamp.at))) last = &tape;
  }
  const Day today = m_context.today;
  if (last == nullptr) {
    const Day from = std::min(dayOf(athlete.added.at), today);
    add(DueKind::neverTaped, Lane::weekly, from, from.plus(kTapeByDays)).isLate = today > from.plus(kTapeByDays);
    return;
  }
  const Day read = dayOf(last->stamp.at);
  const Day stale = addMonths(read, kTapeStaleMonths);
  if (!isYouth(athlete, today) || today < stale) return;
  DueReason& reason = add(DueKind::tapeStale, Lane::weekly, stale, stale.plus(kTapeByDays));
  int months = kTapeStaleMonths;
  while (addMonths(read, months + 1) <= today) ++months;
  reason.count = months;
  reason.isLate = today > reason.dueBy;
}

}  // namespace

void findReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons) {
  Collector collect(context, standing, reasons);
  collect.unwell();
  collect.pairing();
  collect.units();
  collect.words();
  if (context.between != nullptr) return;  // the next first fit sees to the rest
  collect.changes();
  collect.fit();
  collect.points();
  collect.tape();
}

}  // namespace snugline::season
