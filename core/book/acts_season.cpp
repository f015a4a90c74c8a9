// SPDX-License-Identifier: Apache-2.0
#include "core/book/acts_season.h"

#include <algorithm>
#include <set>

#include "core/book/acts_units.h"
#include "core/book/written.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::UnitPlace;
using season::UnitRecord;
using season::Views;

bool isSameName(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

Result<void> checkDays(const season::SeasonRecord& before, const NextSeason& next) {
  if (!next.start) return fail(ErrorCode::missingKey, "season start");
  if (!next.end) return fail(ErrorCode::missingKey, "season end");
  if (*next.end <= *next.start)
    return fail(ErrorCode::inconsistent, "season end", print(*next.end) + " does not come after " + print(*next.start));
  if (const int days = daysBetween(*next.start, *next.end); days > kSeasonDaysMost)
    return fail(ErrorCode::outOfRange, "season days", std::to_string(days) + ", 1, " + std::to_string(kSeasonDaysMost));
  const Day last = before.end ? std::min(*before.end, before.closed) : before.closed;
  if (*next.start <= last) return fail(ErrorCode::inconsistent, "season start", print(*next.start) + " does not come after " + print(last));
  return {};
}

}  // namespace

void endOpenChecks(const Views& views, const UnitRecord& unit, Instant now, Drafts& drafts) {
  for (const std::string& id : unit.athletes) {
    const AthleteRecord* athlete = views.athlete(id);
    if (athlete == nullptr || athlete->openCheck.empty()) continue;
    const season::CheckRecord* check = views.openCheck(athlete->openCheck);
    if (check == nullptr || check->unit != unit.id) continue;
    // A check of a sheet that this program cannot read stays open: that is no reason to leave the helmet out.
    if (auto ended = endCheck(views, check->id, now)) {
      for (Draft& draft : *ended) drafts.push_back(std::move(draft));
    }
  }
}

void holdIfBroken(const Views& views, const UnitRecord& unit, Drafts& drafts) {
  const bool isHeld = std::any_of(unit.holds.begin(), unit.holds.end(), [](const auto& open) { return open.reason == kReasonBroken; });
  const season::UnitStanding standing = season::standingOf(views, unit, {});
  const season::WhyNot* broke = standing.why(season::Bar::brokeSaid);
  if (!isHeld && broke != nullptr) drafts.push_back({unit.id, UnitHeld{std::string(kReasonBroken), broke->text, false}});
}

Result<Drafts> handIn(const Views& views, const HandIn& act, Instant now) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  const UnitRecord* unit = views.unit(act.unit);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + act.unit);
  if (auto ok = checkWritten(act.where, 0, kNameLimit, "where"); !ok) return tl::unexpected(ok.error());
  if (unit->place == UnitPlace::retired) return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kUnitRetired));
  if (season::isCollected(*unit, views.team->season)) return Drafts{};
  Drafts drafts;
  if (unit->place == UnitPlace::repair || unit->place == UnitPlace::sentOut) {
    if (!act.returned) return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kReturnUnsaid));
    auto back = comeBack(views, unit->id, *act.returned, dayOf(now));
    if (!back) return back;
    drafts = std::move(*back);
  }
  endOpenChecks(views, *unit, now, drafts);
  holdIfBroken(views, *unit, drafts);
  std::string from;
  for (const std::string& athlete : unit->athletes) {
    if (!from.empty()) drafts.push_back({unit->id, UnitUnpaired{from, "handed in"}});
    from = athlete;
  }
  drafts.push_back({unit->id, UnitCollected{views.team->season, from, act.where}});
  return drafts;
}

Result<Drafts> handInNew(const Views& views, const gear::Tag& tag, Day today) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  Arrival arrival;
  arrival.tag = tag;
  if (views.unitByTag(tag.key) != nullptr) return fail(ErrorCode::inconsistent, tag.serial, "known already");
  auto drafts = takeIn(views, arrival, today);
  if (!drafts) return drafts;
  drafts->push_back({"#0", UnitCollected{views.team->season}});
  return drafts;
}

Result<Drafts> closeSeason(const Views& views, Day today) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (season::between(views) != nullptr) return fail(ErrorCode::notAllowed, views.team->season, std::string(rule::kAlreadyClosed));
  SeasonClosed closed{views.team->season, today, {}};
  const auto missing = season::missingUnits(views);
  if (missing.size() > kMissingMost)
    return fail(ErrorCode::outOfRange, "missing helmets", std::to_string(missing.size()) + ", 0, " + std::to_string(kMissingMost));
  for (const season::MissingUnit& each : missing) closed.missing.push_back(each.unit->id);
  return Drafts{{views.team->id, std::move(closed)}};
}

Result<std::string> closingFact(const Views& views) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  const season::SeasonRecord* closing = season::between(views);
  if (closing == nullptr) return fail(ErrorCode::notAllowed, views.team->season, std::string(rule::kSeasonOpen));
  return closing->stamp.fact;
}

Result<Drafts> openSeason(const Views& views, const NextSeason& next) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  const season::SeasonRecord* before = season::between(views);
  if (before == nullptr) return fail(ErrorCode::notAllowed, views.team->season, std::string(rule::kSeasonOpen));
  const std::string name(trimmed(next.name));
  if (auto ok = checkWritten(name, 1, kNameLimit, "season"); !ok) return tl::unexpected(ok.error());
  const bool isTaken = std::any_of(views.team->closedSeasons.begin(), views.team->closedSeasons.end(),
                                   [&](const season::SeasonRecord& closed) { return isSameName(closed.season, name); });
  if (isTaken) return fail(ErrorCode::notAllowed, name, std::string(rule::kSeasonTaken));
  if (auto ok = checkDays(*before, next); !ok) return tl::unexpected(ok.error());
  PracticeSet set;
  set.season = name;
  set.seasonStart = next.start;
  set.seasonEnd = next.end;
  Drafts drafts{{views.team->id, set}};
  for (const std::string& id : std::set<std::string>(next.leaving.begin(), next.leaving.end())) {
    const AthleteRecord* athlete = views.athlete(id);
    if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + id);
    if (!athlete->isOnRoster) continue;
    AthleteChanged changed;
    changed.isOnRoster = false;
    drafts.push_back({id, changed});
  }
  return drafts;
}

}  // namespace snugline::book
