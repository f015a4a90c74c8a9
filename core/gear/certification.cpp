// SPDX-License-Identifier: Apache-2.0
#include "core/gear/certification.h"

#include <algorithm>

namespace snugline::gear {

namespace {

// A term of m months that begins on D ends the day before the same day m months later.
DaySpan lastDays(DaySpan begins, int months) { return {addMonths(begins.first, months).plus(-1), addMonths(begins.last, months).plus(-1)}; }

}  // namespace

DaySpan certifiedOn(const Label& label) {
  if (label.fullDate) return {*label.fullDate, *label.fullDate};
  return {dayOf(label.year, 1, 1), dayOf(label.year, 12, 31)};
}

DaySpan lastGoodDay(const Label& label, int intervalMonths, std::optional<Label> firstCertification, int ageLimitMonths) {
  DaySpan good = lastDays(certifiedOn(label), intervalMonths);
  if (!firstCertification || ageLimitMonths <= 0) return good;
  const DaySpan age = lastDays(certifiedOn(*firstCertification), ageLimitMonths);
  return {std::min(good.first, age.first), std::min(good.last, age.last)};
}

LabelState judge(DaySpan lastGood, Day today) {
  if (today <= lastGood.first) return LabelState::good;
  return today <= lastGood.last ? LabelState::mayHaveLapsed : LabelState::lapsed;
}

}  // namespace snugline::gear
