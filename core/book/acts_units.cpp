// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/acts.h"
#include "core/book/acts_units.h"
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

const HoldRecord* openHold(const UnitRecord& unit, std::string_view reason) {
  const auto it = std::find_if(unit.holds.begin(), unit.holds.end(), [&](const HoldRecord& h) { return h.reason == reason; });
  return it == unit.holds.end() ? nullptr : &*it;
}

const UnitRecord* knownUnit(const Views& views, const Arrival& arrival) {
  return arrival.unit.empty() ? views.unitByTag(arrival.tag.key) : views.unit(arrival.unit);
}

std::string lotOf(const gear::Tag& tag) {
  const auto lot = tag.ai.find("10");
  return lot == tag.ai.end() ? std::string() : lot->second;
}

// The unit as it would stand once the arrival is written down, holds that end by its return left out.
UnitRecord asArrived(const Views& views, const Arrival& arrival, Day today) {
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
  if (isAway(unit)) {
    const bool isMended = isAtWork(unit);
    unit = asReturned(unit, arrival.returned.value_or(season::ReturnRecord{}));
    if (isMended) std::erase_if(unit.holds, [&](const HoldRecord& open) { return endsWithReturn(views, unit, open, today); });
  }
  if (arrival.label || arrival.isLabelMissing || arrival.isLabelUnreadable) addLabel(unit, arrival.label, arrival.isLabelUnreadable);
  for (gear::Point point : gear::kPoints) {
    const auto i = static_cast<std::size_t>(point);
    if (arrival.points[i].state != gear::PointState::unseen) unit.points.see(point, {arrival.points[i], kLatest, arrival.isGroup});
  }
  return unit;
}

std::string_view wordOf(season::Bar bar) {
  if (bar == season::Bar::labelMissing) return "missing";
  if (bar == season::Bar::labelUnreadable) return "unreadable";
  if (bar == season::Bar::labelLapsed) return "lapsed";
  return kNotSeenYet;
}

// Why a unit cannot go into service, worst first, as reasons and words of holds; nothing when it can. Open holds are another matter.
std::vector<std::pair<std::string, std::string>> barsToService(const Views& views, UnitRecord unit, Day today) {
  std::vector<std::pair<std::string, std::string>> bars;
  unit.isInService = false;  // what service needs is asked again
  for (const season::WhyNot& why : season::standingOf(views, unit, today).reasons) {
    if (why.bar == season::Bar::fault) bars.emplace_back(gear::code(*why.point), why.text);
    if (why.bar == season::Bar::brokeSaid) bars.emplace_back(kReasonBroken, why.text);
    if (why.bar == season::Bar::labelDisputed) continue;  // two readings are settled by a third
    if (season::isLabelBar(why.bar)) bars.emplace_back(kReasonLabel, wordOf(why.bar));
    if (why.bar == season::Bar::pointUnchecked) bars.emplace_back(gear::code(*why.point), kNotSeenYet);
  }
  return bars;
}

// Ends with this arrival: what waited for a label or a look, and a crack that came back mended with a label read now.
bool isSettled(const Views& views, const UnitRecord& unit, const HoldRecord& open, Day today) {
  if (open.reason == kReasonLabel || open.what == kNotSeenYet) return true;
  return isCrackHold(open) && !season::whyNotReleased(views, unit, open, today);
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
    if (isAtWork(*known)) {
      if (!arrival.returned) return fail(ErrorCode::notAllowed, known->serial, std::string(rule::kReturnUnsaid));
      if (auto ok = checkReturn(*arrival.returned); !ok) return ok;
    }
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

bool isCrackHold(const HoldRecord& hold) { return hold.reason == gear::code(gear::Point::shell) && hold.what != kNotSeenYet; }

void addLabel(UnitRecord& unit, const std::optional<gear::Label>& label, bool isUnreadable) {
  unit.isLabelUnreadable = !label && isUnreadable;
  unit.isLabelMissing = !label && !isUnreadable;
  if (label) unit.labels.push_back({*label, kLatest});
}

Outcome outcomeOf(const Views& views, const Arrival& arrival, Day today) {
  const UnitRecord unit = asArrived(views, arrival, today);
  const auto bars = barsToService(views, unit, today);
  if (!bars.empty()) return {false, bars.front().first, bars.front().second};
  // A hold for another cause stands until somebody releases it.
  for (const HoldRecord& open : unit.holds) {
    if (!isSettled(views, unit, open, today)) return {false, open.reason, open.what};
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
    if (isAway(*known)) addBack(drafts, views, *known, arrival.returned.value_or(season::ReturnRecord{}), {}, {}, today);
    if (!known->keptBy.empty()) drafts.push_back({about, UnitMoved{"in-hand", {}}});  // it is on the table
  }
  if (arrival.label || arrival.isLabelMissing || arrival.isLabelUnreadable) {
    drafts.push_back({about, LabelRead{arrival.label, !arrival.label && arrival.isLabelUnreadable}});
  }
  if (PointsSeen seen = seenIn(arrival.points, arrival.isGroup); !seen.points.empty()) drafts.push_back({about, std::move(seen)});

  const UnitRecord unit = asArrived(views, arrival, today);
  const auto bars = barsToService(views, unit, today);
  const auto isBarred = [&](const HoldRecord& h) {
    return std::any_of(bars.begin(), bars.end(), [&](const auto& bar) { return bar.first == h.reason; });
  };
  bool isHeld = !bars.empty();
  for (const HoldRecord& open : unit.holds) {
    if (isSettled(views, unit, open, today) && !isBarred(open)) {
      drafts.push_back({about, HoldReleased{open.fact, "seen again"}});
    } else {
      isHeld = true;
    }
  }
  for (const auto& [reason, what] : bars) {
    const HoldRecord* open = openHold(unit, reason);
    const bool isNew = open == nullptr || (open->what == kNotSeenYet && what != kNotSeenYet);
    if (isNew) drafts.push_back({about, UnitHeld{reason, what, false}});
  }
  for (const season::NoticeRecord* notice : noticesFor(views, unit)) {
    drafts.push_back({about, UnitHeld{std::string(kReasonNotice), notice->text, false, notice->fact}});
    isHeld = true;
  }
  if (!isHeld && (!unit.isInService || (known != nullptr && isAway(*known)))) drafts.push_back({about, UnitMoved{"in-service", {}}});
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

}  // namespace snugline::book
