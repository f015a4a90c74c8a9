// SPDX-License-Identifier: Apache-2.0
#include "core/season/unit_age.h"

namespace snugline::season {

std::optional<gear::Label> firstCertification(const UnitRecord& unit) {
  const gear::Label* first = nullptr;
  for (const LabelRecord& record : unit.labels) {
    if (record.label.kind != gear::LabelKind::makersMark) continue;
    if (first == nullptr || record.label.year < first->year) first = &record.label;
  }
  return first == nullptr ? std::nullopt : std::optional<gear::Label>(*first);
}

std::optional<gear::DaySpan> lastDayByAge(const Views& views, const UnitRecord& unit) {
  const auto first = firstCertification(unit);
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  if (!first || sheet == nullptr || sheet->ageLimitMonths <= 0) return std::nullopt;
  // The limit as if it were an interval: it ends the day before.
  return gear::lastGoodDay(*first, sheet->ageLimitMonths, std::nullopt, 0);
}

}  // namespace snugline::season
