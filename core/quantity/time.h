// SPDX-License-Identifier: Apache-2.0
// Purpose: civil days and instants. Core knows no time zones: an instant carries the offset as seen on the device.
// Days are proleptic Gregorian, range 1900-01-01 to 2199-12-31 when parsed. Today and now are always handed in.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline {

// Days since 1970-01-01.
struct Day {
  std::int32_t number = 0;
  friend auto operator<=>(const Day&, const Day&) = default;
  [[nodiscard]] constexpr Day plus(int days) const { return {number + days}; }
};
[[nodiscard]] constexpr int daysBetween(Day from, Day to) { return to.number - from.number; }

struct CivilDate {
  int year = 1970, month = 1, day = 1;
  friend bool operator==(const CivilDate&, const CivilDate&) = default;
};
[[nodiscard]] CivilDate civil(Day d);
[[nodiscard]] Day dayOf(int year, int month, int day);  // asserts a valid date
[[nodiscard]] bool isValidDate(int year, int month, int day);
[[nodiscard]] Day addMonths(Day d, int months);                                         // clamps to the month's last day
[[nodiscard]] int weekday(Day d);                                                       // 0 Monday .. 6 Sunday
[[nodiscard]] Result<Day> parseDay(std::string_view iso, std::string_view place = {});  // "2026-10-14"
[[nodiscard]] std::string print(Day d);                                                 // "2026-10-14"

// Milliseconds since the epoch, UTC, with the offset that the device showed (minutes east of UTC, -840 to 840).
struct Instant {
  std::int64_t ms = 0;
  std::int32_t offsetMinutes = 0;
  friend bool operator==(const Instant&, const Instant&) = default;
};
[[nodiscard]] Day dayOf(Instant t);        // civil day as seen
[[nodiscard]] int minuteOfDay(Instant t);  // 0..1439 as seen
[[nodiscard]] Instant instantAt(Day d, int minuteOfDay, int offsetMinutes);
[[nodiscard]] Result<Instant> parseInstant(std::string_view iso,
                                           std::string_view place = {});  // "2026-10-14T15:30:00-05:00", offset or Z required
[[nodiscard]] std::string print(Instant t);                               // ISO 8601 with the offset, seconds

}  // namespace snugline
