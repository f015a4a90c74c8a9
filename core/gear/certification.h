// SPDX-License-Identifier: Apache-2.0
// Purpose: until when a helmet's certification holds. A recertification label gives only a year (NOCSAE, Recertification
// page; ND004), so the truth is a span of days; it is judged by the earliest end unless a full date with its source is known.
// Interval: stated by the helmet's maker (NOCSAE ND001 6.1.1, in force 2017). Age limit: ten years from first
// certification, at exactly ten the stricter text counts (NAERA rule as given in NOCSAE Q&A; NAERA policy 2012).
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/quantity/time.h"

namespace snugline::gear {

struct ModelSheet;

enum class LabelKind : std::uint8_t { makersMark, recertification };

// What was read on the unit: a year, or a full date from paperwork with its source named.
struct Label {
  LabelKind kind = LabelKind::recertification;
  int year = 0;                 // 1990..2199
  std::optional<Day> fullDate;  // only from the firm's paperwork
  std::string source;           // where the full date stands; empty when fullDate is missing
  friend bool operator==(const Label&, const Label&) = default;
};

struct DaySpan {
  Day first, last;
  [[nodiscard]] bool isOneDay() const { return first == last; }
  friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

// Days on which the certification may have been given: the whole year, or the one day.
[[nodiscard]] DaySpan certifiedOn(const Label& label);

// Last good day, as a span: certified on D with interval m months holds through addMonths(D, m) - 1 day.
// Where the age limit (months from the first certification, 0 = none) comes earlier, it cuts the span: the limit day
// itself is no longer good (at exactly ten years the stricter text counts).
[[nodiscard]] DaySpan lastGoodDay(const Label& label, int intervalMonths, std::optional<Label> firstCertification, int ageLimitMonths);

enum class LabelState : std::uint8_t { unknown, good, mayHaveLapsed, lapsed };
// good: today <= earliest end. mayHaveLapsed: between earliest and latest end (judged as lapsed, shown as a span).
[[nodiscard]] LabelState judge(DaySpan lastGood, Day today);

}  // namespace snugline::gear
