// SPDX-License-Identifier: Apache-2.0
#include "core/season/notice.h"

#include <algorithm>
#include <charconv>

#include "core/gear/serial_range.h"
#include "core/season/sheet_chain.h"

namespace snugline::season {

namespace {

constexpr std::size_t kYearDigits = 4;

bool isSameWord(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

bool isGone(const UnitRecord& unit) { return unit.place == UnitPlace::retired || unit.place == UnitPlace::lost; }

}  // namespace

std::optional<int> yearMade(const UnitRecord& unit) {
  int year = 0;
  if (unit.made.size() >= kYearDigits) {
    const char* end = unit.made.data() + kYearDigits;
    if (const auto read = std::from_chars(unit.made.data(), end, year); read.ec == std::errc{} && read.ptr == end) return year;
  }
  std::optional<int> mark;
  for (const LabelRecord& each : unit.labels) {
    if (each.label.kind == gear::LabelKind::makersMark && (!mark || each.label.year < *mark)) mark = each.label.year;
  }
  return mark;
}

NoticeMatch matchOf(const Views& views, const NoticeScope& scope, const UnitRecord& unit) {
  if (scope.isEmpty() || isGone(unit)) return NoticeMatch::no;
  if (!scope.sheet.empty() && !isOneModel(views, unit.sheet, scope.sheet)) return NoticeMatch::no;
  const bool isBySerial = !scope.serialFrom.empty() || !scope.serialTo.empty();
  if (isBySerial && !gear::isWithinSerials(unit.serial, scope.serialFrom, scope.serialTo)) return NoticeMatch::no;
  bool isUnknown = false;
  if (scope.yearFrom || scope.yearTo) {
    const auto year = yearMade(unit);
    if (!year) {
      isUnknown = true;
    } else if ((scope.yearFrom && *year < *scope.yearFrom) || (scope.yearTo && *year > *scope.yearTo)) {
      return NoticeMatch::no;
    }
  }
  if (!scope.lot.empty()) {
    if (unit.lot.empty()) {
      isUnknown = true;
    } else if (!isSameWord(unit.lot, scope.lot)) {
      return NoticeMatch::no;
    }
  }
  return isUnknown ? NoticeMatch::unknown : NoticeMatch::yes;
}

NoticeCover coverOf(const Views& views, const NoticeScope& scope) {
  NoticeCover cover;
  for (const auto& [id, unit] : views.units) {
    const NoticeMatch match = matchOf(views, scope, unit);
    if (match == NoticeMatch::no) continue;
    if (match == NoticeMatch::unknown) {
      cover.unknown.push_back(id);
      if (!scope.takesUnknown) continue;
    }
    cover.units.push_back(id);
    if (!unit.athletes.empty()) cover.worn.push_back(id);
  }
  for (auto* list : {&cover.units, &cover.worn, &cover.unknown}) std::sort(list->begin(), list->end());
  return cover;
}

const NoticeRecord* noticeOf(const Views& views, const HoldRecord& hold) {
  if (!views.team || hold.notice.empty()) return nullptr;
  const auto& all = views.team->notices;
  const auto it = std::find_if(all.begin(), all.end(), [&](const NoticeRecord& n) { return n.fact == hold.notice; });
  return it == all.end() ? nullptr : &*it;
}

NoticeProgress progressOf(const Views& views, const NoticeRecord& notice) {
  NoticeProgress progress;
  for (const auto& [id, unit] : views.units) {
    const bool isHeld = std::any_of(unit.holds.begin(), unit.holds.end(), [&](const HoldRecord& h) { return h.notice == notice.fact; });
    if (!isHeld) continue;
    ++progress.held;
    if (!unit.athletes.empty()) ++progress.worn;
  }
  return progress;
}

}  // namespace snugline::season
