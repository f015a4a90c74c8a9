// SPDX-License-Identifier: Apache-2.0
#include "core/book/acts_dock.h"

#include <algorithm>

#include "core/book/acts_checks.h"
#include "core/book/written.h"
#include "core/fit/part_marks.h"
#include "core/gear/serial_range.h"
#include "core/season/standing.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::UnitRecord;
using season::Views;

constexpr int kYearLowest = 1990, kYearHighest = 2199;  // as gear::Label says

Result<void> checkYear(std::optional<int> year) {
  if (!year || (*year >= kYearLowest && *year <= kYearHighest)) return {};
  return fail(ErrorCode::outOfRange, "year",
              std::to_string(*year) + ", " + std::to_string(kYearLowest) + ", " + std::to_string(kYearHighest));
}

Result<void> checkScope(const Views& views, const season::NoticeScope& scope) {
  if (scope.isEmpty()) return fail(ErrorCode::notAllowed, "notice", std::string(rule::kNothingSaid));
  if (!scope.sheet.empty() && views.sheet(scope.sheet) == nullptr) return fail(ErrorCode::notFound, "sheet " + scope.sheet);
  for (const auto& year : {scope.yearFrom, scope.yearTo}) {
    if (auto ok = checkYear(year); !ok) return ok;
  }
  if (scope.yearFrom && scope.yearTo && *scope.yearFrom > *scope.yearTo)
    return fail(ErrorCode::inconsistent, "year", std::to_string(*scope.yearTo) + " comes before " + std::to_string(*scope.yearFrom));
  for (const std::string* words : {&scope.lot, &scope.serialFrom, &scope.serialTo}) {
    if (auto ok = checkWritten(*words, 0, kNameLimit, "notice"); !ok) return ok;
  }
  return gear::checkSerialRange(scope.serialFrom, scope.serialTo);
}

bool isSameText(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

// The same hold said twice in one act is one hold.
bool isHeldIn(const Drafts& drafts, const std::string& unit, const std::string& reason) {
  return std::any_of(drafts.begin(), drafts.end(), [&](const Draft& draft) {
    const auto* held = std::get_if<UnitHeld>(&draft.body);
    return held != nullptr && draft.about == unit && held->reason == reason;
  });
}

// The same unpairing said twice in one act is one, and where the helmet is now is as said last.
bool saysUnpairing(Drafts& drafts, const Draft& draft) {
  const auto* unpaired = std::get_if<UnitUnpaired>(&draft.body);
  if (unpaired == nullptr) return false;
  for (Draft& other : drafts) {
    auto* before = std::get_if<UnitUnpaired>(&other.body);
    if (before == nullptr || other.about != draft.about || before->athlete != unpaired->athlete) continue;
    before->isStillWith = unpaired->isStillWith;
    return true;
  }
  return false;
}

void addEach(Drafts& drafts, Drafts&& more) {
  for (Draft& draft : more) {
    const auto* held = std::get_if<UnitHeld>(&draft.body);
    if (held != nullptr && isHeldIn(drafts, draft.about, held->reason)) continue;
    if (!saysUnpairing(drafts, draft)) drafts.push_back(std::move(draft));
  }
}

// For what the old helmet goes on hold; nothing where it is held already or good.
std::optional<season::HoldCause> causeOf(const Views& views, const UnitRecord& old, const Swap& swap, Day today) {
  if (!swap.reason.empty()) return season::HoldCause{swap.reason, swap.what};
  if (!old.holds.empty()) return std::nullopt;
  const season::UnitStanding standing = season::standingOf(views, old, today);
  if (const auto known = season::knownCause(standing)) return known;
  if (swap.isOldGood) return std::nullopt;
  return season::HoldCause{};  // refused by hold(): nobody said why
}

}  // namespace

Result<Drafts> issueNotice(const Views& views, const NoticeIssued& notice, Day today) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (auto ok = checkWritten(notice.text, 1, kWordsLimit, "notice"); !ok) return tl::unexpected(ok.error());
  if (notice.day > today) return fail(ErrorCode::outOfRange, "notice day", print(notice.day) + " is after " + print(today));
  if (auto ok = checkScope(views, notice.scope); !ok) return tl::unexpected(ok.error());
  Drafts drafts{{views.team->id, notice}};
  for (const std::string& id : season::coverOf(views, notice.scope).units) {
    drafts.push_back({id, UnitHeld{"notice", notice.text, season::isOut(*views.unit(id)), "#0"}});
  }
  return drafts;
}

Result<Drafts> swapHelmet(const Views& views, const Swap& swap, Instant now) {
  const AthleteRecord* athlete = views.athlete(swap.athlete);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + swap.athlete);
  const UnitRecord* unit = views.unit(swap.unit);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + swap.unit);
  const auto begun = begunIn(views, *athlete, *unit, fit::CheckKind::first);
  if (!begun) return tl::unexpected(begun.error());
  Drafts drafts;
  if (!athlete->openCheck.empty()) {
    auto ended = endCheck(views, athlete->openCheck, now);
    if (!ended) return ended;
    drafts = std::move(*ended);
  }
  for (const std::string& old : athlete->units) {
    if (old == swap.unit) return fail(ErrorCode::inconsistent, unit->serial, "the helmet that is worn");
    const UnitRecord* worn = views.unit(old);
    if (worn == nullptr) continue;
    const auto cause = causeOf(views, *worn, swap, dayOf(now));
    if (!cause) continue;
    auto held = hold(views, old, cause->reason, cause->what, swap.isOldWithAthlete);
    if (!held) return held;
    addEach(drafts, std::move(*held));
  }
  auto paired = pairDrafts(views, swap.athlete, swap.unit, dayOf(now), swap.isOldWithAthlete);
  if (!paired) return paired;
  addEach(drafts, std::move(*paired));
  drafts.push_back({"", *begun});
  return drafts;
}

Result<Drafts> changePart(const Views& views, const std::string& id, const std::string& part, const std::string& what) {
  const UnitRecord* unit = views.unit(id);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + id);
  if (auto ok = checkWritten(part, 1, kNameLimit, "part"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(what, 0, kWordsLimit, "what"); !ok) return tl::unexpected(ok.error());
  return Drafts{{id, PartChanged{part, what, unit->athletes.empty() ? std::string() : unit->athletes.back()}}};
}

Result<Drafts> changePart(const Views& views, const std::string& id, gear::UnitPart part, const std::string& what) {
  auto drafts = changePart(views, id, std::string(gear::code(part)), what);
  if (!drafts) return drafts;
  const UnitRecord& unit = *views.unit(id);
  if (const gear::ModelSheet* sheet = views.sheetOf(unit); sheet != nullptr && !gear::hasUnitPart(*sheet, part)) {
    return fail(ErrorCode::unknownPort, std::string(gear::code(part)), sheet->name);
  }
  auto& changed = std::get<PartChanged>(drafts->front().body);
  changed.reopens = fit::reopensOf(part);
  if (changed.reopens == fit::MarkSet{}) changed.athlete.clear();  // nothing of the fit is disturbed
  return drafts;
}

TagMeaning meaningOf(const Views& views, const gear::Tag& tag) {
  TagMeaning meaning;
  for (const auto& [id, unit] : views.units) {
    if (unit.tagKey == tag.key) meaning.units.push_back(id);
  }
  if (meaning.units.empty() && tag.form == gear::TagForm::plain) {
    for (const auto& [id, unit] : views.units) {
      if (!unit.serial.empty() && isSameText(unit.serial, tag.serial)) meaning.units.push_back(id);
    }
    meaning.isBySerial = !meaning.units.empty();
  }
  std::sort(meaning.units.begin(), meaning.units.end());
  return meaning;
}

}  // namespace snugline::book
