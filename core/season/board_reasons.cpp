// SPDX-License-Identifier: Apache-2.0
#include "core/season/board_reasons.h"

#include <algorithm>

#include "core/season/patterns.h"
#include "core/season/tape.h"
#include "core/season/turn.h"

namespace snugline::season {

namespace {

constexpr int kTapeByDays = 30;  // ours

bool isAway(UnitPlace place) { return place != UnitPlace::shelf && place != UnitPlace::withAthlete; }

// What became of the last helmet of somebody who has none.
std::string whyGone(const Views& views, const AthleteRecord& athlete) {
  const UnitRecord* unit = views.unit(athlete.had->unit);
  if (unit == nullptr) return {};
  if (!unit->holds.empty()) return "held";
  if (isAway(unit->place)) return std::string(code(unit->place));
  if (!unit->athletes.empty()) return "given";
  const EndedCheck* last = athlete.checks.empty() ? nullptr : &athlete.checks.back();
  const bool isUnfit = last != nullptr && last->unit == unit->id && last->verdict == fit::Verdict::doNotWear;
  return isUnfit ? athlete.had->reason : std::string(code(unit->place));
}

class Collector {
 public:
  Collector(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons)
      : m_context(context), m_standing(standing), m_reasons(reasons) {}

  void unwell();
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
  void lastCheck();
  void look();
  [[nodiscard]] bool isWorn(const std::string& unit) const;

  const DueContext& m_context;
  const Standing& m_standing;
  std::vector<DueReason>& m_reasons;
};

bool Collector::isWorn(const std::string& unit) const {
  const auto& units = m_standing.athlete->units;
  return unit.empty() || std::find(units.begin(), units.end(), unit) != units.end();
}

// Said: on top. Acknowledged: stays there until it is closed. What the helmet worn then needs after that, its standing says.
void Collector::unwell() {
  for (const SaidRecord& said : m_standing.athlete->said) {
    if (!said.isUnwell || said.isAnswered) continue;
    const DueKind kind = said.isAcknowledged ? DueKind::withTrainer : DueKind::seeAthleteNow;
    if (std::any_of(m_reasons.begin(), m_reasons.end(), [&](const DueReason& r) { return r.kind == kind; })) continue;
    addAtOnce(kind, dayOf(said.at)).at = said.at;
  }
}

void Collector::pairing() {
  const AthleteRecord& athlete = *m_standing.athlete;
  const Day since = athlete.paired ? dayOf(athlete.paired->at) : m_context.today;
  if (m_context.between != nullptr) {
    if (athlete.units.empty()) return;
    addAtOnce(DueKind::stillOut, m_context.between->closed).text = m_context.between->season;
  }
  if (athlete.units.empty()) {
    const SeasonRecord* turned = lastClosed(*m_context.views);
    const bool hadOne = athlete.had && (turned == nullptr || isAfter(athlete.had->stamp, turned->stamp));
    if (!hadOne) {
      add(DueKind::noUnit, Lane::noHelmet, std::min(dayOf(athlete.added.at), m_context.today), m_context.practice);
      return;
    }
    DueReason& reason = addAtOnce(DueKind::noUnit, dayOf(athlete.had->stamp.at));
    reason.text = whyGone(*m_context.views, athlete);
    sign(reason, athlete.had->stamp);
    return;
  }
  if (athlete.units.size() > 1) addAtOnce(DueKind::twoUnits, since).count = static_cast<int>(athlete.units.size());
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
    case fit::Verdict::doNotWear:  // as the standing of the helmet says
      break;
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

// Seen at intake and weekly. What a helmet needs before it may be worn at all, its standing says.
void Collector::points() {
  const UnitRecord* unit = m_standing.unit;
  if (unit == nullptr) return;
  const EndedCheck* look = m_standing.look;
  for (gear::Point point : gear::kPoints) {
    const auto& seen = unit->points[static_cast<std::size_t>(point)];
    const gear::PointState state = seen ? seen->finding.state : gear::PointState::unseen;
    if (state == gear::PointState::fault) continue;
    Day since = dayOf(unit->received.at);
    if (state == gear::PointState::sound) {
      // A check left open calls for all of it again and says so itself.
      if (look == nullptr || look->verdict != fit::Verdict::fits) continue;
      since = dayOf(look->stamp.at);
      if (dayOf(seen->stamp.at) >= since || isAfter(seen->stamp, Stamp{{}, {}, look->check})) continue;
    } else if (!unit->isInService && gear::isNeededForService(point)) {
      continue;
    }
    since = std::min(since, m_context.today);
    DueReason& reason = add(DueKind::pointUnseen, Lane::weekly, since, since.plus(kPointByDays));
    reason.point = point;
    reason.isLate = m_context.today > reason.dueBy;
  }
}

void Collector::tape() {
  const AthleteRecord& athlete = *m_standing.athlete;
  const TapeRecord* last = nullptr;
  for (const TapeRecord& tape : athlete.tapes) {
    if (!tape.readings.empty() && isSeen(m_context, tape.stamp) && (last == nullptr || dayOf(tape.stamp.at) >= dayOf(last->stamp.at))) {
      last = &tape;
    }
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
  findUnitReasons(context, standing, reasons);
  collect.words();
  if (context.between != nullptr) return;  // the next first fit sees to the rest
  collect.changes();
  collect.fit();
  collect.points();
  collect.tape();
}

}  // namespace snugline::season
