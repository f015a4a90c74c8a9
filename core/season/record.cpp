// SPDX-License-Identifier: Apache-2.0
#include "core/season/record.h"

#include <algorithm>
#include <charconv>
#include <string_view>

#include "core/season/unit_age.h"

namespace snugline::season {

std::string_view code(UnitPlace p) {
  switch (p) {
    case UnitPlace::shelf:
      return "shelf";
    case UnitPlace::withAthlete:
      return "with-athlete";
    case UnitPlace::repair:
      return "repair";
    case UnitPlace::sentOut:
      return "sent-out";
    case UnitPlace::retired:
      return "retired";
    case UnitPlace::lost:
      return "lost";
  }
  return {};
}

namespace {

template <typename Map>
auto valueAt(const Map& map, const std::string& key) -> const typename Map::mapped_type* {
  const auto it = map.find(key);
  return it == map.end() ? nullptr : &it->second;
}

struct FactName {
  std::string_view device;
  std::uint64_t n = 0;
};
std::optional<FactName> factName(std::string_view id) {
  const auto colon = id.rfind(':');
  if (colon == std::string_view::npos) return std::nullopt;
  FactName name{id.substr(0, colon), 0};
  const auto digits = id.substr(colon + 1);
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), name.n);
  if (error != std::errc{} || end != digits.data() + digits.size()) return std::nullopt;
  return name;
}

}  // namespace

bool isAfter(const Stamp& a, const Stamp& b) {
  if (a.order != 0 && b.order != 0 && a.order != b.order) return a.order > b.order;
  const auto nameA = factName(a.fact);
  const auto nameB = factName(b.fact);
  if (nameA && nameB) {
    if (nameA->device == nameB->device) return nameA->n > nameB->n;
    // Same order on two devices: the device decides, as everywhere in the log.
    if (a.order != 0 && a.order == b.order) return nameA->device > nameB->device;
  }
  return a.at.ms > b.at.ms;
}

const AthleteRecord* Views::athlete(const std::string& id) const { return valueAt(athletes, id); }
const UnitRecord* Views::unit(const std::string& id) const { return valueAt(units, id); }
const CheckRecord* Views::openCheck(const std::string& id) const { return valueAt(openChecks, id); }

const gear::ModelSheet* Views::sheet(const std::string& hash) const {
  const SheetRecord* record = valueAt(sheets, hash);
  return record == nullptr ? nullptr : record->sheet.get();
}
const std::string& Views::standingSheet(const std::string& hash) const {
  const std::string* standing = &hash;
  const Stamp* since = nullptr;
  // A sheet may come back in place of the one that replaced it: only a later replacement goes on, so that this ends.
  for (auto at = sheets.find(hash); at != sheets.end() && at->second.replaced; at = sheets.find(*standing)) {
    const ReplacedRecord& replaced = *at->second.replaced;
    if (since != nullptr && !isAfter(replaced.stamp, *since)) break;
    if (!sheets.contains(replaced.by)) break;
    standing = &replaced.by;
    since = &replaced.stamp;
  }
  return *standing;
}

const gear::ModelSheet* Views::sheetOf(const UnitRecord& unit) const { return sheet(standingSheet(unit.sheet)); }

const AthleteRecord* Views::athleteByJersey(const std::string& jersey) const {
  const AthleteRecord* found = nullptr;
  for (const auto& [id, record] : athletes) {
    if (record.jersey != jersey || !record.isOnRoster) continue;
    if (found == nullptr || record.id < found->id) found = &record;  // the same one on every device
  }
  return found;
}

const UnitRecord* Views::unitByTag(const std::string& tagKey) const {
  const UnitRecord* found = nullptr;
  for (const auto& [id, record] : units) {
    if (record.tagKey != tagKey) continue;
    if (found == nullptr || record.id < found->id) found = &record;
  }
  return found;
}

std::optional<gear::DaySpan> lastGoodDay(const Views& views, const UnitRecord& unit) {
  if (unit.labels.empty() || unit.isLabelMissing || unit.isLabelUnreadable) return std::nullopt;
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  if (sheet == nullptr) return std::nullopt;
  return gear::lastGoodDay(unit.labels.back().label, sheet->certificationMonths, firstCertification(unit), sheet->ageLimitMonths);
}

Result<fit::Setup> setupOf(const Views& views, const CheckRecord& check, Day today) {
  const gear::ModelSheet* sheet = views.sheet(check.sheet);
  if (sheet == nullptr) return fail(ErrorCode::notFound, "sheet " + check.sheet);
  fit::Setup setup;
  setup.sheet = sheet;
  setup.kind = check.kind;
  setup.today = today;
  setup.certifiedUntil = check.certifiedUntil;
  setup.isLabelMissing = check.isLabelMissing;
  if (views.team) setup.seasonEnd = views.team->seasonEnd;
  return setup;
}

}  // namespace snugline::season
