// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/acts.h"
#include "core/book/written.h"
#include "core/season/notice.h"
#include "core/season/sheet_chain.h"
#include "core/season/standing.h"

namespace snugline::book {

namespace {

using season::HoldRecord;
using season::UnitPlace;
using season::UnitRecord;
using season::Views;

constexpr int kLabelYearLowest = 1990, kLabelYearHighest = 2199;  // as gear::Label says
constexpr std::string_view kReasonLabel = "label", kReasonNotice = "notice";

bool isAway(const UnitRecord& unit) {
  switch (unit.place) {
    case UnitPlace::shelf:
    case UnitPlace::withAthlete:
      return false;
    case UnitPlace::repair:
    case UnitPlace::sentOut:
    case UnitPlace::retired:
    case UnitPlace::lost:
      return true;
  }
  return false;
}

bool isHoldReason(const std::string& reason) {
  return gear::pointFromCode(reason).has_value() || reason == kReasonLabel || reason == "fit" || reason == "broken" ||
         reason == kReasonNotice || reason == "other";
}

const HoldRecord* openHold(const UnitRecord& unit, std::string_view reason) {
  const auto it = std::find_if(unit.holds.begin(), unit.holds.end(), [&](const HoldRecord& h) { return h.reason == reason; });
  return it == unit.holds.end() ? nullptr : &*it;
}

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

const UnitRecord* knownUnit(const Views& views, const Arrival& arrival) {
  return arrival.unit.empty() ? views.unitByTag(arrival.tag.key) : views.unit(arrival.unit);
}

std::string lotOf(const gear::Tag& tag) {
  const auto lot = tag.ai.find("10");
  return lot == tag.ai.end() ? std::string() : lot->second;
}

// The unit as it would stand once the arrival is written down.
UnitRecord asArrived(const Views& views, const Arrival& arrival) {
  const UnitRecord* known = knownUnit(views, arrival);
  UnitRecord unit = known != nullptr ? *known : UnitRecord{};
  if (known == nullptr) {
    unit.serial = arrival.tag.serial;
    unit.made = arrival.tag.made;
  }
  if (unit.lot.empty()) unit.lot = lotOf(arrival.tag);
  if (unit.sheet.empty()) {
    unit.sheet = views.standingSheet(arrival.sheet);
    unit.size = arrival.size;
  }
  if (arrival.label || arrival.isLabelMissing || arrival.isLabelUnreadable) {
    unit.isLabelUnreadable = !arrival.label && arrival.isLabelUnreadable;
    unit.isLabelMissing = !arrival.label && !unit.isLabelUnreadable;
    if (arrival.label) unit.labels.push_back({*arrival.label, {}});
  }
  if (isAway(unit)) unit.points = {};  // back from elsewhere: everything is open again
  for (gear::Point point : gear::kPoints) {
    const auto i = static_cast<std::size_t>(point);
    if (arrival.points[i].state != gear::PointState::unseen) unit.points.see(point, {arrival.points[i], {}, arrival.isGroup});
  }
  return unit;
}

// Why a unit cannot go into service, worst first; nothing when it can.
std::vector<std::pair<std::string, std::string>> barsToService(const Views& views, const UnitRecord& unit, Day today) {
  std::vector<std::pair<std::string, std::string>> bars;
  for (gear::Point point : gear::kPoints) {
    const auto& seen = unit.points[static_cast<std::size_t>(point)];
    if (seen && seen->finding.state == gear::PointState::fault) bars.emplace_back(gear::code(point), seen->finding.what);
  }
  if (unit.isLabelMissing || unit.isLabelUnreadable) {
    bars.emplace_back(kReasonLabel, unit.isLabelMissing ? "missing" : "unreadable");
  } else if (const auto span = season::lastGoodDay(views, unit); !span) {
    bars.emplace_back(kReasonLabel, kNotSeenYet);
  } else if (gear::judge(*span, today) != gear::LabelState::good) {
    bars.emplace_back(kReasonLabel, "lapsed");
  }
  for (gear::Point point : gear::kPoints) {
    const auto& seen = unit.points[static_cast<std::size_t>(point)];
    const bool isUnseen = !seen || seen->finding.state == gear::PointState::unseen;
    if (isUnseen && gear::isNeededForService(point)) bars.emplace_back(gear::code(point), kNotSeenYet);
  }
  return bars;
}

// Notices that mean a helmet which comes only now; one that was here was held when the notice came.
std::vector<const season::NoticeRecord*> noticesFor(const Views& views, const UnitRecord& unit) {
  std::vector<const season::NoticeRecord*> found;
  if (!unit.id.empty() || !views.team) return found;
  for (const season::NoticeRecord& notice : views.team->notices) {
    const season::NoticeMatch match = season::matchOf(views, notice.scope, unit);
    const bool isMeant = match == season::NoticeMatch::yes || (match == season::NoticeMatch::unknown && notice.scope.takesUnknown);
    if (isMeant) found.push_back(&notice);
  }
  return found;
}

// A maker's notice is met unit by unit, by somebody who says so; a repair may have been for anything.
bool endsWithRepair(const HoldRecord& hold) { return hold.notice.empty(); }

void unpairAll(Drafts& drafts, const UnitRecord& unit, const std::string& reason) {
  for (const std::string& athlete : unit.athletes) drafts.push_back({unit.id, UnitUnpaired{athlete, reason}});
}

// A crack's hold ends by return from repair or by retirement only.
bool isCrackHold(const HoldRecord& hold) { return hold.reason == gear::code(gear::Point::shell) && hold.what != kNotSeenYet; }

void addBack(Drafts& drafts, const UnitRecord& unit, const std::string& where, const std::string& reason) {
  drafts.push_back({unit.id, UnitMoved{"back", where, reason}});
  if (unit.place == UnitPlace::repair) {
    for (const HoldRecord& open : unit.holds) {
      if (endsWithRepair(open)) drafts.push_back({unit.id, HoldReleased{open.fact, "back from repair"}});
    }
  }
  for (const std::string& athlete : unit.athletes) {
    drafts.push_back({unit.id, UnitUnpaired{athlete, "back"}});
    drafts.push_back({unit.id, UnitPaired{athlete}});
  }
  if (!unit.athletes.empty()) drafts.push_back({unit.id, UnitMoved{"in-hand", {}}});  // paired anew, and with us
}

PointsSeen seenIn(const gear::PointFindings& points, bool isGroup) {
  PointsSeen seen;
  seen.isGroup = isGroup;
  for (gear::Point point : gear::kPoints) {
    const gear::PointFinding& finding = points[static_cast<std::size_t>(point)];
    if (finding.state != gear::PointState::unseen) seen.points.emplace_back(point, finding);
  }
  return seen;
}

Result<void> checkPoints(const gear::PointFindings& points) {
  for (gear::Point point : gear::kPoints) {
    if (auto ok = checkWritten(points[static_cast<std::size_t>(point)].what, 0, kWordsLimit, std::string(gear::code(point))); !ok)
      return ok;
  }
  return {};
}

Result<void> checkArrival(const Views& views, const Arrival& arrival) {
  const UnitRecord* known = knownUnit(views, arrival);
  if (arrival.label) {
    if (auto ok = checkLabel(*arrival.label); !ok) return ok;
  }
  if (auto ok = checkPoints(arrival.points); !ok) return ok;
  if (!arrival.tag.isCheckDigitOk) return fail(ErrorCode::checkDigitWrong, arrival.tag.serial, "01");
  if (known != nullptr) {
    if (known->place == UnitPlace::retired) return fail(ErrorCode::notAllowed, known->serial, std::string(rule::kUnitRetired));
    const bool isOther = !known->sheet.empty() && ((!arrival.sheet.empty() && !season::isOneModel(views, arrival.sheet, known->sheet)) ||
                                                   (!arrival.size.empty() && arrival.size != known->size));
    if (isOther) return fail(ErrorCode::inconsistent, known->serial, "known with another sheet or size: " + known->size);
    if (!known->sheet.empty()) return {};
  }
  if (arrival.tag.key.empty()) return fail(ErrorCode::notATag, "tag", "empty");
  // A bare scan: taken in and held until its model and size are said.
  if (arrival.sheet.empty() && arrival.size.empty()) return {};
  const gear::ModelSheet* sheet = views.sheet(views.standingSheet(arrival.sheet));
  if (sheet == nullptr) return fail(ErrorCode::notFound, "sheet " + arrival.sheet);
  const bool isSize = std::any_of(sheet->sizes.begin(), sheet->sizes.end(), [&](const auto& band) { return band.name == arrival.size; });
  if (!isSize) {
    std::string words;
    for (const auto& band : sheet->sizes) words += (words.empty() ? "" : ", ") + band.name;
    return fail(ErrorCode::unknownWord, "size", arrival.size + "; " + words);
  }
  return {};
}

}  // namespace

Outcome outcomeOf(const Views& views, const Arrival& arrival, Day today) {
  const UnitRecord unit = asArrived(views, arrival);
  const auto bars = barsToService(views, unit, today);
  if (!bars.empty()) return {false, bars.front().first, bars.front().second};
  // A hold for another cause stands until somebody releases it.
  for (const HoldRecord& open : unit.holds) {
    const bool endsNow =
        open.reason == kReasonLabel || open.what == kNotSeenYet || (unit.place == UnitPlace::repair && endsWithRepair(open));
    if (!endsNow) return {false, open.reason, open.what};
  }
  if (const auto notices = noticesFor(views, unit); !notices.empty()) return {false, std::string(kReasonNotice), notices.front()->text};
  return {true, {}, {}};
}

Result<Drafts> takeIn(const Views& views, const Arrival& arrival, Day today) {
  if (auto ok = checkArrival(views, arrival); !ok) return tl::unexpected(ok.error());
  const UnitRecord* known = knownUnit(views, arrival);
  Drafts drafts;
  std::string about = "#0";
  // A list or a draft made before the sheet was replaced still names the one before.
  const std::string& sheet = views.standingSheet(arrival.sheet);
  if (known == nullptr) {
    drafts.push_back({"", UnitReceived{arrival.tag.serial, arrival.tag.key, sheet, arrival.size, arrival.tag.made, lotOf(arrival.tag)}});
  } else {
    about = known->id;
    if (known->sheet.empty() && !arrival.sheet.empty())
      drafts.push_back({about, UnitReceived{known->serial, known->tagKey, sheet, arrival.size, known->made, lotOf(arrival.tag)}});
    if (isAway(*known)) addBack(drafts, *known, {}, {});
  }
  if (arrival.label || arrival.isLabelMissing || arrival.isLabelUnreadable) {
    drafts.push_back({about, LabelRead{arrival.label, !arrival.label && arrival.isLabelUnreadable}});
  }
  if (PointsSeen seen = seenIn(arrival.points, arrival.isGroup); !seen.points.empty()) drafts.push_back({about, std::move(seen)});

  const UnitRecord unit = asArrived(views, arrival);
  const auto bars = barsToService(views, unit, today);
  const auto isBarred = [&](const HoldRecord& h) {
    return std::any_of(bars.begin(), bars.end(), [&](const auto& bar) { return bar.first == h.reason; });
  };
  bool isHeld = !bars.empty();
  for (const HoldRecord& open : unit.holds) {
    if (unit.place == UnitPlace::repair && endsWithRepair(open)) continue;  // released above
    const bool isSettled = (open.reason == kReasonLabel || open.what == kNotSeenYet) && !isBarred(open);
    if (isSettled) {
      drafts.push_back({about, HoldReleased{open.fact, "seen again"}});
    } else {
      isHeld = true;
    }
  }
  for (const auto& [reason, what] : bars) {
    const HoldRecord* open = openHold(unit, reason);
    const bool isNew = open == nullptr || unit.place == UnitPlace::repair || (open->what == kNotSeenYet && what != kNotSeenYet);
    if (isNew) drafts.push_back({about, UnitHeld{reason, what, false}});
  }
  for (const season::NoticeRecord* notice : noticesFor(views, unit)) {
    drafts.push_back({about, UnitHeld{std::string(kReasonNotice), notice->text, false, notice->fact}});
    isHeld = true;
  }
  if (!isHeld && (!unit.isInService || isAway(unit))) drafts.push_back({about, UnitMoved{"in-service", {}}});
  return drafts;
}

Result<Drafts> seePoints(const Views& views, const std::string& id, const gear::PointFindings& points, bool isGroup) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (auto ok = checkPoints(points); !ok) return tl::unexpected(ok.error());
  PointsSeen seen = seenIn(points, isGroup);
  if (seen.points.empty()) return Drafts{};
  Drafts drafts;
  for (const auto& [point, finding] : seen.points) {
    const std::string reason(gear::code(point));
    const HoldRecord* open = openHold(*unit, reason);
    if (finding.state == gear::PointState::fault && (open == nullptr || open->what == kNotSeenYet)) {
      drafts.push_back({id, UnitHeld{reason, finding.what, season::isOut(*unit)}});  // where it is was not said
    } else if (finding.state == gear::PointState::sound && open != nullptr && open->what == kNotSeenYet) {
      drafts.push_back({id, HoldReleased{open->fact, "seen"}});
    }
  }
  drafts.insert(drafts.begin(), Draft{id, std::move(seen)});
  return drafts;
}

Result<Drafts> readLabel(const Views& views, const std::string& unit, const std::optional<gear::Label>& label, bool isUnreadable) {
  if (views.unit(unit) == nullptr) return fail(ErrorCode::notFound, "unit " + unit);
  if (label) {
    if (auto ok = checkLabel(*label); !ok) return tl::unexpected(ok.error());
  }
  return Drafts{{unit, LabelRead{label, !label && isUnreadable}}};
}

Result<Drafts> whereNow(const Views& views, const std::string& id, bool isWithAthlete) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (isAway(*unit)) return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kUnitAway));
  if (isWithAthlete && unit->athletes.empty() && unit->keptBy.empty())
    return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kNobodyHasIt));
  if (season::isOut(*unit) == isWithAthlete) return Drafts{};
  return Drafts{{id, UnitMoved{isWithAthlete ? "with-athlete" : "in-hand", {}}}};
}

Result<Drafts> hold(const Views& views, const std::string& id, const std::string& reason, const std::string& what, bool isWithAthlete) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (!isHoldReason(reason)) return fail(ErrorCode::unknownWord, "reason", reason + "; a point, label, fit, broken, other");
  if (auto ok = checkWritten(what, 0, kWordsLimit, "what"); !ok) return tl::unexpected(ok.error());
  Drafts drafts;
  for (const HoldRecord& open : unit->holds) {
    if (open.reason != reason || open.what != what) continue;
    return whereNow(views, id, isWithAthlete);  // the same hold, elsewhere
  }
  drafts.insert(drafts.begin(), Draft{id, UnitHeld{reason, what, isWithAthlete}});
  // Whoever holds a helmet for one of its points has seen that point at fault: the strip must not go on showing it sound.
  if (const auto point = gear::pointFromCode(reason); point && what != kNotSeenYet) {
    const auto& seen = unit->points[static_cast<std::size_t>(*point)];
    const gear::PointFinding fault{gear::PointState::fault, what};
    if (!seen || seen->finding != fault) drafts.push_back({id, PointsSeen{{{*point, fault}}, false, {}}});
  }
  return drafts;
}

Result<Drafts> releaseHold(const Views& views, const std::string& id, const std::string& holdFact, const std::string& why) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  const auto it = std::find_if(unit->holds.begin(), unit->holds.end(), [&](const HoldRecord& h) { return h.fact == holdFact; });
  if (it == unit->holds.end()) return fail(ErrorCode::notFound, "hold " + holdFact);
  if (isCrackHold(*it)) return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kCrackHold));
  if (auto ok = checkWritten(why, 1, kWordsLimit, "why"); !ok) return tl::unexpected(ok.error());
  return Drafts{{id, HoldReleased{holdFact, why}}};
}

Result<Drafts> move(const Views& views, const std::string& id, const std::string& to, const std::string& where, const std::string& reason) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (auto ok = checkWritten(where, 0, kNameLimit, "where"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(reason, 0, kWordsLimit, "reason"); !ok) return tl::unexpected(ok.error());
  const auto refuse = [&](std::string_view name) { return fail(ErrorCode::notAllowed, unit->serial, std::string(name)); };
  if (unit->place == UnitPlace::retired) return refuse(rule::kUnitRetired);
  Drafts drafts;
  if (to == "in-service") {
    if (isAway(*unit)) return refuse(rule::kUnitAway);
    if (!unit->holds.empty()) return refuse(rule::kUnitHeld);
    if (unit->isLabelMissing) return refuse(rule::kLabelMissing);
    if (unit->isLabelUnreadable) return refuse(rule::kLabelUnreadable);
    if (unit->isLabelDisputed) return refuse(rule::kLabelDisputed);
    if (unit->labels.empty()) return refuse(rule::kLabelUnknown);
    for (gear::Point point : gear::kPoints) {
      const auto& seen = unit->points[static_cast<std::size_t>(point)];
      if (seen && seen->finding.state == gear::PointState::fault) {
        return fail(ErrorCode::notAllowed, std::string(gear::code(point)), std::string(rule::kPointFault));
      }
      const bool isSound = seen && seen->finding.state == gear::PointState::sound;
      if (!isSound && gear::isNeededForService(point)) {
        return fail(ErrorCode::notAllowed, std::string(gear::code(point)), std::string(rule::kPointUnseen));
      }
    }
    drafts.push_back({id, UnitMoved{to, where, reason}});
  } else if (to == "back") {
    addBack(drafts, *unit, where, reason);
  } else if (to == "repair" || to == "shelf") {
    drafts.push_back({id, UnitMoved{to, where, reason}});
  } else if (to == "sent-out" || to == "lost" || to == "retired") {
    unpairAll(drafts, *unit, to);
    drafts.push_back({id, UnitMoved{to, where, reason}});
    if (to == "retired") {
      for (const HoldRecord& open : unit->holds) drafts.push_back({id, HoldReleased{open.fact, to}});
    }
  } else {
    return fail(ErrorCode::unknownWord, "to", to + "; in-service, repair, sent-out, back, retired, lost, shelf");
  }
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
