// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/gear/certification.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

Label yearLabel(int year) { return {LabelKind::recertification, year, std::nullopt, {}}; }
Label dated(int year, int month, int day) { return {LabelKind::recertification, year, dayOf(year, month, day), "invoice 12"}; }

}  // namespace

TEST_CASE("A label with a year alone is a span of all its days") {
  CHECK(certifiedOn(yearLabel(2024)) == DaySpan{dayOf(2024, 1, 1), dayOf(2024, 12, 31)});
  CHECK_FALSE(certifiedOn(yearLabel(2024)).isOneDay());
}

TEST_CASE("A full date from the firm's paperwork is one day") {
  CHECK(certifiedOn(dated(2024, 3, 5)) == DaySpan{dayOf(2024, 3, 5), dayOf(2024, 3, 5)});
  CHECK(certifiedOn(dated(2024, 3, 5)).isOneDay());
}

TEST_CASE("A term of two years ends on the day before, two years later") {
  CHECK(lastGoodDay(dated(2024, 3, 5), 24, std::nullopt, 120) == DaySpan{dayOf(2026, 3, 4), dayOf(2026, 3, 4)});
  CHECK(lastGoodDay(yearLabel(2024), 24, std::nullopt, 120) == DaySpan{dayOf(2025, 12, 31), dayOf(2026, 12, 30)});
  CHECK(lastGoodDay(dated(2024, 2, 29), 24, std::nullopt, 120).first == dayOf(2026, 2, 27));
}

TEST_CASE("The age limit cuts the term, and the day of exactly ten years is no longer good") {
  const Label now = dated(2025, 6, 1);
  const Label first = dated(2016, 10, 14);
  CHECK(lastGoodDay(now, 24, first, 120) == DaySpan{dayOf(2026, 10, 13), dayOf(2026, 10, 13)});
  CHECK(lastGoodDay(now, 24, first, 0) == DaySpan{dayOf(2027, 5, 31), dayOf(2027, 5, 31)});
  CHECK(lastGoodDay(now, 24, dated(2020, 1, 1), 120).first == dayOf(2027, 5, 31));
  CHECK(lastGoodDay(now, 24, std::nullopt, 120).first == dayOf(2027, 5, 31));
}

TEST_CASE("Two labels with years only cut each end of the span by itself") {
  CHECK(lastGoodDay(yearLabel(2025), 24, yearLabel(2016), 120) == DaySpan{dayOf(2025, 12, 31), dayOf(2026, 12, 30)});
  CHECK(lastGoodDay(yearLabel(2025), 24, dated(2016, 7, 1), 120) == DaySpan{dayOf(2026, 6, 30), dayOf(2026, 6, 30)});
}

TEST_CASE("A label is good to its earliest end, may have lapsed to its latest, and then has") {
  const DaySpan span{dayOf(2025, 12, 31), dayOf(2026, 12, 30)};
  CHECK(judge(span, dayOf(2025, 12, 31)) == LabelState::good);
  CHECK(judge(span, dayOf(2026, 1, 1)) == LabelState::mayHaveLapsed);
  CHECK(judge(span, dayOf(2026, 12, 30)) == LabelState::mayHaveLapsed);
  CHECK(judge(span, dayOf(2026, 12, 31)) == LabelState::lapsed);
  const DaySpan day{dayOf(2026, 3, 4), dayOf(2026, 3, 4)};
  CHECK(judge(day, dayOf(2026, 3, 4)) == LabelState::good);
  CHECK(judge(day, dayOf(2026, 3, 5)) == LabelState::lapsed);
}
