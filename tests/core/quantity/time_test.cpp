// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/quantity/time.h"

using namespace snugline;

TEST_CASE("A day is read as ISO 8601 writes it and in no other way") {
  CHECK(parseDay("2026-10-14").value() == dayOf(2026, 10, 14));
  CHECK(parseDay("2024-02-29").value() == dayOf(2024, 2, 29));
  for (const char* text : {"", "2026-10-4", "2026/10/14", "14.10.2026", "2026-13-01", "2026-00-01", "2026-02-29", "2100-02-29",
                           "2026-10-14T00:00", " 2026-10-14", "2026-10-14 ", "20261014", "2026-10-00", "-026-10-14"}) {
    INFO(text);
    const Result<Day> day = parseDay(text, "today");
    REQUIRE_FALSE(day.has_value());
    CHECK(day.error() == Error{ErrorCode::notADate, "today", text});
  }
  CHECK(parseDay("1899-12-31").error().code == ErrorCode::outOfRange);
  CHECK(parseDay("2200-01-01").error().code == ErrorCode::outOfRange);
}

TEST_CASE("Days count from 1970 and know their weekday") {
  CHECK(dayOf(1970, 1, 1).number == 0);
  CHECK(dayOf(2000, 3, 1).number == 11017);
  CHECK(dayOf(1969, 12, 31).number == -1);
  CHECK(weekday(dayOf(2026, 10, 12)) == 0);
  CHECK(weekday(dayOf(2026, 10, 18)) == 6);
  CHECK(weekday(dayOf(1970, 1, 1)) == 3);
  CHECK(daysBetween(dayOf(2024, 2, 28), dayOf(2024, 3, 1)) == 2);
}

TEST_CASE("Months are added by the calendar and end on the last day where there is none") {
  CHECK(addMonths(dayOf(2024, 1, 31), 1) == dayOf(2024, 2, 29));
  CHECK(addMonths(dayOf(2023, 1, 31), 1) == dayOf(2023, 2, 28));
  CHECK(addMonths(dayOf(2024, 2, 29), 24) == dayOf(2026, 2, 28));
  CHECK(addMonths(dayOf(2025, 12, 15), 2) == dayOf(2026, 2, 15));
  CHECK(addMonths(dayOf(2026, 1, 15), -1) == dayOf(2025, 12, 15));
}

TEST_CASE("An instant keeps the day and the minute as the device showed them") {
  const Instant t = parseInstant("2026-10-14T23:30:00-05:00").value();
  CHECK(dayOf(t) == dayOf(2026, 10, 14));
  CHECK(minuteOfDay(t) == 23 * 60 + 30);
  CHECK(t.offsetMinutes == -300);
  CHECK(t.ms == parseInstant("2026-10-15T04:30:00Z").value().ms);
  CHECK(print(t) == "2026-10-14T23:30:00-05:00");
  CHECK(instantAt(dayOf(2026, 10, 14), 23 * 60 + 30, -300) == t);
}

TEST_CASE("Before 1970 the day still begins at midnight") {
  const Instant t = parseInstant("1969-12-31T23:59:59Z").value();
  CHECK(t.ms == -1000);
  CHECK(dayOf(t) == dayOf(1969, 12, 31));
  CHECK(minuteOfDay(t) == 1439);
  CHECK(print(t) == "1969-12-31T23:59:59+00:00");
}

TEST_CASE("An instant is read to the millisecond, with or without seconds") {
  CHECK(parseInstant("2026-10-14T15:30Z").value().ms == parseInstant("2026-10-14T15:30:00.000Z").value().ms);
  CHECK(parseInstant("2026-10-14T15:30:00.25Z").value().ms - parseInstant("2026-10-14T15:30:00Z").value().ms == 250);
  CHECK(parseInstant("2026-10-14T15:30:00.1239999+05:45").value().ms % 1000 == 123);
}

TEST_CASE("An instant without an offset, or with one that no zone has, is refused") {
  for (const char* text : {"", "2026-10-14", "2026-10-14T15:30:00", "2026-10-14T15:30:00+5", "2026-10-14T24:00:00Z", "2026-10-14T15:60:00Z",
                           "2026-10-14T15:30:60Z", "2026-10-14T15:30:00+14:01", "2026-10-14T15:30:00-05:60", "2026-10-14 15:30:00Z",
                           "2026-10-14T15:30:00.Z", "2026-10-14T15:30:00Zulu", "2026-02-30T15:30:00Z"}) {
    INFO(text);
    CHECK(parseInstant(text, "--at").error() == Error{ErrorCode::notADate, "--at", text});
  }
}
