// SPDX-License-Identifier: Apache-2.0
// Labels read, holds and their ends, where a helmet is and where it goes.
#include <algorithm>

#include "core/book/acts.h"
#include "core/book/acts_checks.h"
#include "core/book/acts_units.h"
#include "core/book/written.h"
#include "core/season/standing.h"

namespace snugline::book {

namespace {

using season::HoldRecord;
using season::NoRelease;
using season::UnitPlace;
using season::UnitRecord;
using season::Views;

constexpr int kLabelYearLowest = 1990, kLabelYearHighest = 2199;  // as gear::Label says

bool isHoldReason(const std::string& reason) {
  return gear::pointFromCode(reason).has_value() || reason == kReasonLabel || reason == "fit" || reason == "broken" ||
         reason == kReasonNotice || reason == "other";
}

void unpairAll(Drafts& drafts, const UnitRecord& unit, const std::string& reason) {
  for (const std::string& athlete : unit.athletes) drafts.push_back({unit.id, UnitUnpaired{athlete, reason}});
}

tl::unexpected<Error> refuse(const UnitRecord& unit, std::string_view name) {
  return fail(ErrorCode::notAllowed, unit.serial, std::string(name));
}

}  // namespace

bool isAway(const UnitRecord& unit) { return unit.place != UnitPlace::shelf && unit.place != UnitPlace::withAthlete; }
bool isAtWork(const UnitRecord& unit) { return unit.place == UnitPlace::repair || unit.place == UnitPlace::sentOut; }

Result<void> checkLabel(const gear::Label& label) {
  if (label.year < kLabelYearLowest || label.year > kLabelYearHighest) {
    return fail(ErrorCode::outOfRange, "label year",
                std::to_string(label.year) + ", " + std::to_string(kLabelYearLowest) + ", " + std::to_string(kLabelYearHighest));
  }
  if (label.fullDate && civil(*label.fullDate).year != label.year) {
    return fail(ErrorCode::inconsistent, "label date", print(*label.fullDate) + " is not in " + std::to_string(label.year));
  }
  // A full date counts for more than the label itself, so it must say where it stands.
  return checkWritten(label.source, label.fullDate ? 1 : 0, kNameLimit, "label source");
}

Result<void> checkReturn(const season::ReturnRecord& returned) {
  const bool isByUs = returned.by == season::kByUs;
  const bool isKnown = isByUs || returned.by == season::kByFirm || returned.by == season::kByRecertifier || returned.by == season::kByMaker;
  if (!isKnown) return fail(ErrorCode::unknownWord, "by", returned.by + "; us, firm, recertifier, maker");
  if (auto ok = checkWritten(returned.done, 1, kWordsLimit, "done"); !ok) return ok;
  return checkWritten(returned.paper, isByUs ? 0 : 1, kWordsLimit, "paper");
}

UnitRecord asReturned(const UnitRecord& unit, const season::ReturnRecord& returned) {
  UnitRecord back = unit;
  back.points = {};
  back.returned = returned;
  back.returned->stamp = kLatest;
  back.place = unit.athletes.empty() ? UnitPlace::shelf : UnitPlace::withAthlete;
  return back;
}

bool endsWithReturn(const Views& views, const UnitRecord& back, const HoldRecord& hold, Day today) {
  // A maker's notice is met helmet by helmet, by somebody who says so; a repair may have been for anything.
  return hold.notice.empty() && !season::whyNotReleased(views, back, hold, today);
}

void addBack(Drafts& drafts, const Views& views, const UnitRecord& unit, const season::ReturnRecord& returned, const std::string& where,
             const std::string& reason, Day today) {
  drafts.push_back({unit.id, UnitMoved{"back", where, reason, returned}});
  const UnitRecord back = asReturned(unit, returned);
  for (const HoldRecord& open : unit.holds) {
    if (isAtWork(unit) && endsWithReturn(views, back, open, today)) drafts.push_back({unit.id, HoldReleased{open.fact, "back"}});
  }
  for (const std::string& athlete : unit.athletes) {
    drafts.push_back({unit.id, UnitUnpaired{athlete, "back"}});
    drafts.push_back({unit.id, UnitPaired{athlete}});
  }
  if (!unit.athletes.empty()) drafts.push_back({unit.id, UnitMoved{"in-hand", {}}});  // paired anew, and with us
}

tl::unexpected<Error> refusedBy(const UnitRecord& unit, const season::WhyNot& why) {
  using season::Bar;
  switch (why.bar) {
    case Bar::retired:
      return refuse(unit, rule::kUnitRetired);
    case Bar::lost:
    case Bar::sentOut:
    case Bar::repair:
      return refuse(unit, rule::kUnitAway);
    case Bar::held:
      return refuse(unit, rule::kUnitHeld);
    case Bar::fault:
      return fail(ErrorCode::notAllowed, std::string(gear::code(*why.point)), std::string(rule::kPointFault));
    case Bar::brokeSaid:
      return refuse(unit, rule::kBrokeSaid);
    case Bar::labelMissing:
      return refuse(unit, rule::kLabelMissing);
    case Bar::labelUnreadable:
      return refuse(unit, rule::kLabelUnreadable);
    case Bar::labelDisputed:
      return refuse(unit, rule::kLabelDisputed);
    case Bar::labelUnknown:
      return refuse(unit, rule::kLabelUnknown);
    case Bar::labelLapsed:
      return refuse(unit, rule::kLabelLapsed);
    case Bar::noSheet:
      return fail(ErrorCode::notFound, "sheet " + unit.sheet);
    case Bar::pointsAfterReport:
      return refuse(unit, rule::kPointsAfterReport);
    case Bar::pointUnchecked:
      return fail(ErrorCode::notAllowed, std::string(gear::code(*why.point)), std::string(rule::kPointUnseen));
    case Bar::notInService:
      return refuse(unit, rule::kNotInService);
    case Bar::twoAthletes:
      return refuse(unit, rule::kTwoAthletes);
    case Bar::verdict:
      return refuse(unit, rule::kNeverFitted);
  }
  return refuse(unit, rule::kNotInService);
}

Result<Drafts> readLabel(const Views& views, const std::string& id, const std::optional<gear::Label>& label, Day today, bool isUnreadable) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (label) {
    if (auto ok = checkLabel(*label); !ok) return tl::unexpected(ok.error());
  }
  Drafts drafts{{id, LabelRead{label, !label && isUnreadable}}};
  if (!label) return drafts;
  // What waited for a good label, and a crack that came back mended, end with it.
  UnitRecord read = *unit;
  addLabel(read, label, false);
  for (const HoldRecord& open : unit->holds) {
    const bool waits = open.reason == kReasonLabel || (isCrackHold(open) && unit->returned);
    if (waits && !season::whyNotReleased(views, read, open, today)) drafts.push_back({id, HoldReleased{open.fact, "label read"}});
  }
  return drafts;
}

Result<Drafts> whereNow(const Views& views, const std::string& id, bool isWithAthlete) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (isAway(*unit)) return refuse(*unit, rule::kUnitAway);
  if (isWithAthlete && unit->athletes.empty() && unit->keptBy.empty()) return refuse(*unit, rule::kNobodyHasIt);
  if (season::isOut(*unit) == isWithAthlete) return Drafts{};
  return Drafts{{id, UnitMoved{isWithAthlete ? "with-athlete" : "in-hand", {}}}};
}

Result<Drafts> hold(const Views& views, const std::string& id, const std::string& reason, const std::string& what, bool isWithAthlete) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (!isHoldReason(reason)) return fail(ErrorCode::unknownWord, "reason", reason + "; a point, label, fit, broken, other");
  if (auto ok = checkWritten(what, 0, kWordsLimit, "what"); !ok) return tl::unexpected(ok.error());
  for (const HoldRecord& open : unit->holds) {
    if (open.reason == reason && open.what == what) return whereNow(views, id, isWithAthlete);  // the same hold, elsewhere
  }
  Drafts drafts{{id, UnitHeld{reason, what, isWithAthlete}}};
  // Whoever holds a helmet for one of its points has seen that point at fault: the strip must not go on showing it sound.
  if (const auto point = gear::pointFromCode(reason); point && what != kNotSeenYet) {
    const auto& seen = unit->points[static_cast<std::size_t>(*point)];
    const gear::PointFinding fault{gear::PointState::fault, what};
    if (!seen || seen->finding != fault) drafts.push_back({id, PointsSeen{{{*point, fault}}, false, {}}});
  }
  return drafts;
}

Result<Drafts> releaseHold(const Views& views, const std::string& id, const std::string& holdFact, const std::string& why, Day today) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  const auto it = std::find_if(unit->holds.begin(), unit->holds.end(), [&](const HoldRecord& h) { return h.fact == holdFact; });
  if (it == unit->holds.end()) return fail(ErrorCode::notFound, "hold " + holdFact);
  if (const auto bar = season::whyNotReleased(views, *unit, *it, today)) {
    switch (*bar) {
      case NoRelease::crack:
        return refuse(*unit, rule::kCrackHold);
      case NoRelease::fault:
        return fail(ErrorCode::notAllowed, it->reason, std::string(rule::kPointFault));
      case NoRelease::label:
        return refuse(*unit, rule::kLabelNotGood);
    }
  }
  if (auto ok = checkWritten(why, 1, kWordsLimit, "why"); !ok) return tl::unexpected(ok.error());
  return Drafts{{id, HoldReleased{holdFact, why}}};
}

Result<Drafts> putInService(const Views& views, const std::string& id, Day today) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  const season::UnitStanding standing = season::standingOf(views, *unit, today);
  const season::WhyNot* why = standing.offEveryHead();
  if (why != nullptr && why->bar != season::Bar::notInService) return refusedBy(*unit, *why);
  return unit->isInService ? Drafts{} : Drafts{{id, UnitMoved{"in-service", {}}}};
}

Result<Drafts> comeBack(const Views& views, const std::string& id, const season::ReturnRecord& returned, Day today) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (!isAtWork(*unit)) return refuse(*unit, unit->place == UnitPlace::retired ? rule::kUnitRetired : rule::kNotAway);
  if (auto ok = checkReturn(returned); !ok) return tl::unexpected(ok.error());
  Drafts drafts;
  addBack(drafts, views, *unit, returned, {}, {}, today);
  return drafts;
}

Result<Drafts> move(const Views& views, const std::string& id, const std::string& to, const std::string& where, const std::string& reason) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (auto ok = checkWritten(where, 0, kNameLimit, "where"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(reason, 0, kWordsLimit, "reason"); !ok) return tl::unexpected(ok.error());
  if (unit->place == UnitPlace::retired) return refuse(*unit, rule::kUnitRetired);
  Drafts drafts;
  if (to == "found") {
    if (unit->place != UnitPlace::lost) return refuse(*unit, rule::kNotAway);
    addBack(drafts, views, *unit, {}, where, reason, {});
  } else if (to == "repair" || to == "shelf") {
    drafts.push_back({id, UnitMoved{to, where, reason}});
  } else if (to == "sent-out" || to == "lost" || to == "retired") {
    unpairAll(drafts, *unit, to);
    drafts.push_back({id, UnitMoved{to, where, reason}});
    if (to == "retired") {
      for (const HoldRecord& open : unit->holds) drafts.push_back({id, HoldReleased{open.fact, to}});
    }
  } else {
    return fail(ErrorCode::unknownWord, "to", to + "; repair, sent-out, found, retired, lost, shelf");
  }
  return drafts;
}

Result<Drafts> toShelf(const Views& views, const std::string& id, Instant now) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (isAway(*unit)) return refuse(*unit, rule::kUnitAway);
  if (unit->athletes.empty() && unit->keptBy.empty()) return refuse(*unit, rule::kNobodyHasIt);
  Drafts drafts;
  endOpenChecks(views, *unit, now, drafts);
  holdIfBroken(views, *unit, drafts);
  unpairAll(drafts, *unit, "given back");
  if (!unit->keptBy.empty()) drafts.push_back({id, UnitMoved{"in-hand", {}}});
  return drafts;
}

Result<Drafts> unpair(const Views& views, const std::string& athlete, const std::string& id, const std::string& why) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  const bool isPaired = std::find(unit->athletes.begin(), unit->athletes.end(), athlete) != unit->athletes.end();
  if (!isPaired) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (auto ok = checkWritten(why, 0, kWordsLimit, "why"); !ok) return tl::unexpected(ok.error());
  return Drafts{{id, UnitUnpaired{athlete, why}}};
}

}  // namespace snugline::book
