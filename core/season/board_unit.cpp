// SPDX-License-Identifier: Apache-2.0
// The board's reasons of the helmet: as its standing says (standing.h), each fault once, and those that an athlete still has without being
// paired with them.
#include <algorithm>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

constexpr int kLapsingFromDays = 14;  // ours: two weeks to send a unit out

class UnitReasons {
 public:
  UnitReasons(const DueContext& context, const AthleteRecord& athlete, std::vector<DueReason>& reasons)
      : m_context(context), m_athlete(athlete), m_reasons(reasons) {}

  void worn(const UnitRecord& unit);
  void kept(const UnitRecord& unit);

 private:
  DueReason& add(DueKind kind, const Stamp& stamp = {}) {
    DueReason& reason = m_reasons.emplace_back();
    reason.kind = kind;
    reason.lane = Lane::doNotWear;
    // At once: due by the day it was found; a day after today is a wrong clock and reads as today.
    reason.dueFrom = reason.dueBy = stamp.fact.empty() ? m_context.today : std::min(dayOf(stamp.at), m_context.today);
    reason.who = stamp.who;
    if (!stamp.fact.empty()) reason.at = stamp.at;
    return reason;
  }
  void why(const UnitStanding& standing, const WhyNot& why);
  void lapsing(const UnitStanding& standing);

  const DueContext& m_context;
  const AthleteRecord& m_athlete;
  std::vector<DueReason>& m_reasons;
};

// What a hold says is not said once more by the finding that it was made for, nor by what follows from it.
bool isSaidByHold(const UnitStanding& standing, const WhyNot& why) {
  return std::any_of(standing.reasons.begin(), standing.reasons.end(), [&](const WhyNot& hold) {
    if (hold.bar != Bar::held) return false;
    switch (why.bar) {
      case Bar::fault:
      case Bar::pointUnchecked:
        return hold.point == why.point;
      case Bar::labelMissing:
      case Bar::labelUnreadable:
      case Bar::labelLapsed:
        return hold.reason == "label" || hold.point == gear::Point::certification;
      case Bar::verdict:
        // A verdict puts its holds in the same moment as itself; one that was there already may say the same.
        return hold.stamp.at == why.stamp.at || (hold.point && why.text == std::string(gear::code(*hold.point)) + "-fault");
      case Bar::notInService:
        return true;
      case Bar::retired:
      case Bar::lost:
      case Bar::sentOut:
      case Bar::repair:
      case Bar::held:
      case Bar::brokeSaid:
      case Bar::labelDisputed:
      case Bar::labelUnknown:
      case Bar::noSheet:
      case Bar::pointsAfterReport:
      case Bar::twoAthletes:
        break;
    }
    return false;
  });
}

void UnitReasons::why(const UnitStanding& standing, const WhyNot& why) {
  if (isSaidByHold(standing, why)) return;
  switch (why.bar) {
    case Bar::retired:
    case Bar::lost:
    case Bar::sentOut:
    case Bar::repair:
      add(DueKind::unitAway).text = code(why.bar);
      return;
    case Bar::held: {
      DueReason& reason = add(DueKind::held, why.stamp);
      reason.point = why.point;
      reason.text = why.text.empty() ? why.reason : why.text;
      reason.isWithAthlete = standing.where == Where::withAthlete;
      return;
    }
    case Bar::fault: {
      DueReason& reason = add(DueKind::unitFault, why.stamp);
      reason.point = why.point;
      reason.text = why.text;
      return;
    }
    case Bar::brokeSaid:  // what this athlete said stands among the reports, with the place
      if (why.athlete != m_athlete.id) add(DueKind::brokeSaid, why.stamp).text = why.text;
      return;
    case Bar::labelMissing:
      add(DueKind::labelMissing);
      return;
    case Bar::labelUnreadable:
      add(DueKind::labelUnreadable);
      return;
    case Bar::labelDisputed:
      add(DueKind::labelDisputed, standing.unit->labels.empty() ? Stamp{} : standing.unit->labels.back().stamp);
      return;
    case Bar::labelUnknown:
      add(DueKind::labelUnknown, standing.unit->received);
      return;
    case Bar::labelLapsed: {
      DueReason& reason = add(DueKind::labelLapsed);
      reason.day = why.day;
      if (why.day) reason.dueFrom = reason.dueBy = why.day->plus(1);
      return;
    }
    case Bar::noSheet:
      add(DueKind::noSheet);
      return;
    case Bar::pointsAfterReport: {
      const auto isOfSame = [](const DueReason& r) {
        return r.kind == DueKind::seeAthleteNow || r.kind == DueKind::withTrainer || r.kind == DueKind::pointsAfterHit;
      };
      if (std::none_of(m_reasons.begin(), m_reasons.end(), isOfSame)) add(DueKind::pointsAfterHit, why.stamp);
      return;
    }
    case Bar::pointUnchecked:
      add(DueKind::pointUnseen, standing.unit->received).point = why.point;
      return;
    case Bar::notInService:
      if (standing.why(Bar::pointUnchecked) == nullptr) add(DueKind::notInService);
      return;
    case Bar::twoAthletes: {
      DueReason& reason = add(DueKind::twoAthletes, m_athlete.paired.value_or(Stamp{}));
      for (const std::string& other : standing.unit->athletes) {
        const AthleteRecord* record = other == m_athlete.id ? nullptr : m_context.views->athlete(other);
        if (record != nullptr) reason.text += (reason.text.empty() ? "" : ", ") + record->jersey;
      }
      return;
    }
    case Bar::verdict:
      if (why.athlete == m_athlete.id) add(DueKind::verdictDoNotWear, why.stamp).text = why.text;
      return;
  }
}

void UnitReasons::worn(const UnitRecord& unit) {
  const UnitStanding standing = m_context.standings->of(unit);
  for (const WhyNot& each : standing.reasons) why(standing, each);
  lapsing(standing);
}

// A label year is a span; it is judged by the earliest end (NOCSAE, Recertification page; ND004).
void UnitReasons::lapsing(const UnitStanding& standing) {
  const bool isLabelBarred =
      std::any_of(standing.reasons.begin(), standing.reasons.end(), [](const WhyNot& r) { return isLabelBar(r.bar); });
  if (isLabelBarred || !standing.lastGood) return;
  const Day lastGood = standing.lastGood->first, lapse = lastGood.plus(1), from = lapse.plus(-kLapsingFromDays);
  if (m_context.today < from || (m_context.seasonEnd && lapse > *m_context.seasonEnd)) return;
  DueReason& reason = add(DueKind::labelLapsing);
  reason.lane = Lane::weekly;
  reason.day = reason.dueBy = lastGood;
  reason.dueFrom = from;
}

// Not this athlete's any more, and not in our hands: asked for until somebody has it. One that nobody may wear comes first of all.
void UnitReasons::kept(const UnitRecord& unit) {
  const UnitStanding standing = m_context.standings->of(unit);
  DueReason& reason = add(DueKind::keptUnit);
  reason.text = unit.serial;
  reason.isWithAthlete = standing.offEveryHead() != nullptr;
  if (!reason.isWithAthlete) {
    reason.lane = Lane::weekly;
    reason.dueBy = m_context.today.plus(kPointByDays);
  }
}

}  // namespace

void findUnitReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons) {
  UnitReasons find(context, *standing.athlete, reasons);
  if (standing.unit != nullptr) find.worn(*standing.unit);
  for (const UnitRecord* unit : standing.others) find.worn(*unit);
  const auto kept = context.kept.find(standing.athlete->id);
  if (kept == context.kept.end()) return;
  for (const UnitRecord* unit : kept->second) find.kept(*unit);
}

}  // namespace snugline::season
