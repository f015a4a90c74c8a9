// SPDX-License-Identifier: Apache-2.0
#include "core/season/standing.h"

#include <algorithm>

namespace snugline::season {

namespace {

constexpr std::string_view kLabelReason = "label", kBrokenReason = "broken", kNotCheckedYet = "not seen";

bool isGone(Where where) { return where == Where::lost || where == Where::retired; }
bool isElsewhere(Where where) { return where == Where::repair || where == Where::sentOut || isGone(where); }

Where whereOf(const UnitRecord& unit) {
  switch (unit.place) {
    case UnitPlace::repair:
      return Where::repair;
    case UnitPlace::sentOut:
      return Where::sentOut;
    case UnitPlace::retired:
      return Where::retired;
    case UnitPlace::lost:
      return Where::lost;
    case UnitPlace::shelf:
    case UnitPlace::withAthlete:
      break;
  }
  return isOut(unit) ? Where::withAthlete : Where::withUs;
}

std::optional<Bar> barOf(Where where) {
  switch (where) {
    case Where::withUs:
    case Where::withAthlete:
      return std::nullopt;
    case Where::repair:
      return Bar::repair;
    case Where::sentOut:
      return Bar::sentOut;
    case Where::lost:
      return Bar::lost;
    case Where::retired:
      return Bar::retired;
  }
  return std::nullopt;
}

bool isBroken(const SaidRecord& said) { return said.isBroken || said.feels == fit::Feels::broke; }

bool areAllCheckedSince(const UnitRecord& unit, const SaidRecord& said) {
  const Stamp saidAt{said.at, {}, said.fact};
  return std::all_of(unit.points.begin(), unit.points.end(), [&](const auto& point) {
    return point && point->finding.state != gear::PointState::unseen && isAfter(point->stamp, saidAt);
  });
}

UnitState stateOf(const UnitStanding& standing) {
  switch (standing.where) {
    case Where::repair:
      return UnitState::repair;
    case Where::sentOut:
      return UnitState::sentOut;
    case Where::lost:
      return UnitState::lost;
    case Where::retired:
      return UnitState::retired;
    case Where::withUs:
    case Where::withAthlete:
      break;
  }
  if (standing.reasons.empty()) return UnitState::inService;
  switch (standing.reasons.front().bar) {
    case Bar::held:
      return UnitState::onHold;
    case Bar::pointUnchecked:
    case Bar::notInService:
      return UnitState::notInService;
    case Bar::retired:
    case Bar::lost:
    case Bar::sentOut:
    case Bar::repair:
    case Bar::fault:
    case Bar::brokeSaid:
    case Bar::labelMissing:
    case Bar::labelUnreadable:
    case Bar::labelDisputed:
    case Bar::labelUnknown:
    case Bar::labelLapsed:
    case Bar::noSheet:
    case Bar::pointsAfterReport:
    case Bar::twoAthletes:
    case Bar::verdict:
      break;
  }
  return UnitState::doNotWear;
}

// What the label alone says against it on that day.
std::optional<Bar> labelBar(const UnitRecord& unit, const std::optional<gear::DaySpan>& lastGood, Day today) {
  if (unit.isLabelUnreadable) return Bar::labelUnreadable;
  if (unit.isLabelMissing) return Bar::labelMissing;
  if (unit.isLabelDisputed) return Bar::labelDisputed;
  if (!lastGood) return Bar::labelUnknown;
  if (gear::judge(*lastGood, today) != gear::LabelState::good) return Bar::labelLapsed;
  return std::nullopt;
}

// Back from who may put a crack right, with paper, and a label that was read after that.
bool isCrackMended(const UnitRecord& unit, const HoldRecord& hold) {
  if (!unit.returned || unit.returned->paper.empty() || !isAfter(unit.returned->stamp, hold.stamp)) return false;
  if (unit.returned->by != kByRecertifier && unit.returned->by != kByMaker) return false;
  if (unit.labels.empty() || unit.isLabelMissing || unit.isLabelUnreadable) return false;
  return isAfter(unit.labels.back().stamp, unit.returned->stamp);
}

class Reasons {
 public:
  Reasons(const Views& views, UnitStanding& standing) : m_views(views), m_standing(standing), m_unit(*standing.unit) {}

  WhyNot& add(Bar bar) {
    WhyNot& why = m_standing.reasons.emplace_back();
    why.bar = bar;
    return why;
  }
  void holds() {
    for (const HoldRecord& hold : m_unit.holds) {
      WhyNot& why = add(Bar::held);
      why.hold = hold.fact;
      why.reason = hold.reason;
      why.point = gear::pointFromCode(hold.reason);
      why.text = hold.what;
      why.stamp = hold.stamp;
    }
  }
  void faults() {
    for (gear::Point point : gear::kPoints) {
      if (m_unit.points.glance(point).state != gear::PointState::fault) continue;
      const auto& seen = m_unit.points[static_cast<std::size_t>(point)];
      WhyNot& why = add(Bar::fault);
      why.point = point;
      why.text = seen->finding.what;
      why.stamp = seen->stamp;
    }
  }
  void said(const AthleteRecord& athlete, const SaidRecord& said, Bar bar) {
    WhyNot& why = add(bar);
    why.athlete = athlete.id;
    why.text = bar == Bar::brokeSaid ? said.words : std::string();
    why.stamp = {said.at, {}, said.fact};
  }
  void service() {
    if (m_unit.isInService) return;
    for (gear::Point point : gear::kPoints) {
      const bool isUnchecked = m_unit.points.glance(point).state == gear::PointState::unseen;
      if (isUnchecked && gear::isNeededForService(point)) add(Bar::pointUnchecked).point = point;
    }
    add(Bar::notInService);
  }
  void wearers() {
    if (m_unit.athletes.size() > 1) add(Bar::twoAthletes).athlete = m_unit.athletes.back();
    for (const std::string& id : m_unit.athletes) {
      const AthleteRecord* athlete = m_views.athlete(id);
      if (athlete == nullptr) continue;
      const auto last = std::find_if(athlete->checks.rbegin(), athlete->checks.rend(), [&](const EndedCheck& check) {
        return check.unit == m_unit.id && (!athlete->paired || isAfter(check.stamp, *athlete->paired));
      });
      if (last == athlete->checks.rend() || last->verdict != fit::Verdict::doNotWear) continue;
      WhyNot& why = add(Bar::verdict);
      why.athlete = id;
      if (!last->reasons.empty()) why.text = last->reasons.front();
      why.stamp = last->stamp;
    }
  }

 private:
  const Views& m_views;
  UnitStanding& m_standing;
  const UnitRecord& m_unit;
};

}  // namespace

bool isOut(const UnitRecord& unit) {
  const bool isHere = unit.place == UnitPlace::shelf || unit.place == UnitPlace::withAthlete;
  return isHere && (!unit.keptBy.empty() || (!unit.athletes.empty() && !unit.isInHand));
}

bool isReasonOfPoints(std::string_view reasonCode) {
  constexpr std::string_view kFault = "-fault", kLabel = "label-";
  if (reasonCode == kBrokenReason || reasonCode.starts_with(kLabel)) return true;
  return reasonCode.ends_with(kFault) && gear::pointFromCode(reasonCode.substr(0, reasonCode.size() - kFault.size()));
}

bool isOfPoints(const WhyNot& why) {
  if (why.bar == Bar::held) return why.reason != "fit";
  if (why.bar == Bar::verdict) return isReasonOfPoints(why.text);
  return why.bar != Bar::twoAthletes;
}

const WhyNot* UnitStanding::why(Bar bar) const {
  const auto found = std::find_if(reasons.begin(), reasons.end(), [&](const WhyNot& each) { return each.bar == bar; });
  return found == reasons.end() ? nullptr : &*found;
}

const WhyNot* UnitStanding::offEveryHead() const {
  const auto found = std::find_if(reasons.begin(), reasons.end(), [](const WhyNot& each) { return !isOfWearer(each.bar); });
  return found == reasons.end() ? nullptr : &*found;
}

std::optional<Bar> UnitStanding::mainBar() const {
  std::optional<Bar> label;
  for (const WhyNot& each : reasons) {
    if (isOfWearer(each.bar)) continue;
    if (each.bar == Bar::pointUnchecked) return Bar::notInService;
    if (!isLabelBar(each.bar)) return each.bar;
    label = each.bar;
  }
  return label;
}

int UnitStanding::uncheckedPoints() const { return static_cast<int>(std::count(points.begin(), points.end(), gear::PointState::unseen)); }

Standings::Standings(const Views& views, Day today) : m_views(views), m_today(today) {
  for (const auto& [id, athlete] : views.athletes) {
    for (const SaidRecord& said : athlete.said) {
      if (said.unit.empty()) continue;
      if (said.isUnwell || (!said.isAnswered && isBroken(said))) m_reports[said.unit].push_back({&athlete, &said});
    }
  }
}

UnitStanding Standings::of(const UnitRecord& unit) const {
  UnitStanding standing;
  standing.unit = &unit;
  standing.where = whereOf(unit);
  if (standing.where == Where::withAthlete) {
    if (!unit.isInHand) {
      for (const std::string& id : unit.athletes) {
        if (const AthleteRecord* athlete = m_views.athlete(id)) standing.with.push_back(athlete);
      }
    }
    const AthleteRecord* keeper = unit.keptBy.empty() ? nullptr : m_views.athlete(unit.keptBy);
    if (keeper != nullptr) standing.with.push_back(keeper);
  }
  for (gear::Point point : gear::kPoints) standing.points[static_cast<std::size_t>(point)] = unit.points.glance(point).state;
  standing.lastGood = lastGoodDay(m_views, unit);

  Reasons reasons(m_views, standing);
  if (const auto away = barOf(standing.where)) reasons.add(*away);
  reasons.holds();
  reasons.faults();
  const auto reports = m_reports.find(unit.id);
  const auto addReports = [&](Bar bar) {
    if (reports == m_reports.end()) return;
    for (const Report& report : reports->second) {
      const bool isOfBar = bar == (report.said->isUnwell ? Bar::pointsAfterReport : Bar::brokeSaid);
      if (isOfBar && !areAllCheckedSince(unit, *report.said)) reasons.said(*report.athlete, *report.said, bar);
    }
  };
  addReports(Bar::brokeSaid);
  const auto label = labelBar(unit, standing.lastGood, m_today);
  if (label) {
    WhyNot& why = reasons.add(*label);
    if (*label == Bar::labelLapsed) why.day = standing.lastGood->first;
  }
  // A label that nobody read yet is open; any other that is not good is a fault of the point, whatever was once seen of it.
  auto& certification = standing.points[static_cast<std::size_t>(gear::Point::certification)];
  if (label && certification != gear::PointState::fault) {
    certification = *label == Bar::labelUnknown ? gear::PointState::unseen : gear::PointState::fault;
  }
  const gear::ModelSheet* sheet = m_views.sheetOf(unit);
  const bool isSize =
      sheet != nullptr && std::any_of(sheet->sizes.begin(), sheet->sizes.end(), [&](const auto& band) { return band.name == unit.size; });
  if (!isSize) reasons.add(Bar::noSheet);
  addReports(Bar::pointsAfterReport);
  reasons.service();
  reasons.wearers();
  standing.state = stateOf(standing);
  return standing;
}

UnitStanding standingOf(const Views& views, const UnitRecord& unit, Day today) { return Standings(views, today).of(unit); }

std::optional<NoRelease> whyNotReleased(const Views& views, const UnitRecord& unit, const HoldRecord& hold, Day today) {
  const auto point = gear::pointFromCode(hold.reason);
  if (point == gear::Point::shell && hold.what != kNotCheckedYet && !isCrackMended(unit, hold)) return NoRelease::crack;
  if (point && unit.points.glance(*point).state == gear::PointState::fault) return NoRelease::fault;
  const bool isOfLabel = hold.reason == kLabelReason || point == gear::Point::certification;
  if (isOfLabel && labelBar(unit, lastGoodDay(views, unit), today)) return NoRelease::label;
  return std::nullopt;
}

std::vector<UnitAct> actsOf(const Views& views, const UnitStanding& standing, Day today) {
  const UnitRecord& unit = *standing.unit;
  std::vector<UnitAct> acts;
  if (standing.where == Where::retired) return acts;
  if (isElsewhere(standing.where)) return {UnitAct::back, UnitAct::retire};
  const bool isOut = standing.where == Where::withAthlete;
  const bool isAsked = isOut && (!unit.keptBy.empty() || standing.offEveryHead() != nullptr);
  if (isAsked) acts.push_back(UnitAct::whereNow);
  if (!unit.athletes.empty()) acts.push_back(UnitAct::swapHelmet);
  const auto isReleasable = [&](const HoldRecord& hold) { return !whyNotReleased(views, unit, hold, today); };
  if (std::any_of(unit.holds.begin(), unit.holds.end(), isReleasable)) acts.push_back(UnitAct::release);
  const bool isAnyOpen = std::any_of(unit.points.begin(), unit.points.end(),
                                     [](const auto& point) { return !point || point->finding.state != gear::PointState::sound; });
  if (isAnyOpen || standing.why(Bar::brokeSaid) != nullptr || standing.why(Bar::pointsAfterReport) != nullptr) {
    acts.push_back(UnitAct::checkPoints);
  }
  const bool isLabelOpen = std::any_of(standing.reasons.begin(), standing.reasons.end(), [](const auto& r) { return isLabelBar(r.bar); });
  if (isLabelOpen) acts.push_back(UnitAct::readLabel);
  const WhyNot* bar = standing.offEveryHead();
  if (bar != nullptr && bar->bar == Bar::notInService) acts.push_back(UnitAct::inService);
  if (bar == nullptr && unit.athletes.empty() && !isOut) acts.push_back(UnitAct::giveTo);
  if (!unit.athletes.empty() || isOut) acts.push_back(UnitAct::toShelf);
  acts.insert(acts.end(), {UnitAct::hold, UnitAct::repair, UnitAct::sendOut, UnitAct::lost, UnitAct::retire});
  return acts;
}

std::optional<HoldCause> knownCause(const UnitStanding& standing) {
  for (const WhyNot& why : standing.reasons) {
    if (why.bar == Bar::fault) return HoldCause{std::string(gear::code(*why.point)), why.text};
    if (why.bar == Bar::brokeSaid) return HoldCause{std::string(kBrokenReason), why.text};
    if (why.bar == Bar::labelLapsed) return HoldCause{std::string(kLabelReason), "lapsed"};
    if (why.bar == Bar::labelMissing) return HoldCause{std::string(kLabelReason), "missing"};
    if (why.bar == Bar::labelUnreadable) return HoldCause{std::string(kLabelReason), "unreadable"};
  }
  return std::nullopt;
}

std::vector<const UnitRecord*> keptBy(const Views& views, const std::string& athlete) {
  std::vector<const UnitRecord*> units;
  for (const auto& [id, unit] : views.units) {
    if (unit.keptBy == athlete) units.push_back(&unit);
  }
  std::sort(units.begin(), units.end(), [](const UnitRecord* a, const UnitRecord* b) { return a->id < b->id; });
  return units;
}

}  // namespace snugline::season
