// SPDX-License-Identifier: Apache-2.0
#include "core/quantity/time.h"

#include <array>
#include <cassert>
#include <chrono>
#include <cstdio>
#include <optional>

namespace snugline {

namespace {

constexpr std::int64_t kMsPerMinute = 60'000;
constexpr std::int64_t kMsPerDay = 86'400'000;
constexpr int kFirstYear = 1900;
constexpr int kLastYear = 2199;
constexpr int kMostOffset = 840;  // no zone lies further than 14 hours from UTC (tz database)

std::chrono::year_month_day ymd(int year, int month, int day) {
  return std::chrono::year(year) / std::chrono::month(static_cast<unsigned>(month)) / std::chrono::day(static_cast<unsigned>(day));
}

Day dayFrom(std::chrono::year_month_day date) {
  return {static_cast<std::int32_t>(std::chrono::sys_days(date).time_since_epoch().count())};
}

std::chrono::year_month_day dateOf(Day d) { return std::chrono::year_month_day(std::chrono::sys_days(std::chrono::days(d.number))); }

std::int64_t floorDiv(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

// Reads exactly `count` digits.
std::optional<int> digits(std::string_view& text, std::size_t count) {
  if (text.size() < count) return std::nullopt;
  int value = 0;
  for (char c : text.substr(0, count)) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + (c - '0');
  }
  text.remove_prefix(count);
  return value;
}

bool skip(std::string_view& text, char c) {
  if (text.empty() || text.front() != c) return false;
  text.remove_prefix(1);
  return true;
}

std::optional<CivilDate> dateAtFront(std::string_view& text) {
  const auto year = digits(text, 4);
  if (!year || !skip(text, '-')) return std::nullopt;
  const auto month = digits(text, 2);
  if (!month || !skip(text, '-')) return std::nullopt;
  const auto day = digits(text, 2);
  if (!day || !isValidDate(*year, *month, *day)) return std::nullopt;
  return CivilDate{*year, *month, *day};
}

// Milliseconds of the day from "15:30", "15:30:00" or "15:30:00.250".
std::optional<std::int64_t> timeAtFront(std::string_view& text) {
  const auto hour = digits(text, 2);
  if (!hour || !skip(text, ':')) return std::nullopt;
  const auto minute = digits(text, 2);
  if (!minute || *hour > 23 || *minute > 59) return std::nullopt;
  std::int64_t ms = (*hour * 60 + *minute) * kMsPerMinute;
  if (!skip(text, ':')) return ms;
  const auto second = digits(text, 2);
  if (!second || *second > 59) return std::nullopt;
  ms += *second * 1000;
  if (!skip(text, '.')) return ms;
  auto digit = digits(text, 1);
  if (!digit) return std::nullopt;
  for (int weight = 100; digit; weight /= 10, digit = digits(text, 1)) ms += *digit * weight;
  return ms;
}

// Minutes east of UTC from "Z" or "-05:00"; the text must end there.
std::optional<std::int32_t> offsetAtEnd(std::string_view text) {
  if (text == "Z") return 0;
  const bool isWest = skip(text, '-');
  if (!isWest && !skip(text, '+')) return std::nullopt;
  const auto hours = digits(text, 2);
  if (!hours || !skip(text, ':')) return std::nullopt;
  const auto minutes = digits(text, 2);
  if (!minutes || *minutes > 59 || !text.empty()) return std::nullopt;
  const int total = *hours * 60 + *minutes;
  if (total > kMostOffset) return std::nullopt;
  return isWest ? -total : total;
}

std::string startOf(std::string_view text) { return std::string(text.substr(0, 60)); }

Result<Day> inRange(CivilDate date, std::string_view text, std::string_view place) {
  if (date.year < kFirstYear || date.year > kLastYear)
    return fail(ErrorCode::outOfRange, std::string(place), startOf(text) + ", 1900-01-01, 2199-12-31");
  return dayOf(date.year, date.month, date.day);
}

}  // namespace

CivilDate civil(Day d) {
  const auto date = dateOf(d);
  return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
          static_cast<int>(static_cast<unsigned>(date.day()))};
}

bool isValidDate(int year, int month, int day) {
  return month >= 1 && month <= 12 && day >= 1 && day <= 31 && year >= 1 && year <= 9999 && ymd(year, month, day).ok();
}

Day dayOf(int year, int month, int day) {
  assert(isValidDate(year, month, day));
  return dayFrom(ymd(year, month, day));
}

Day addMonths(Day d, int months) {
  const std::chrono::year_month_day moved = dateOf(d) + std::chrono::months(months);
  return dayFrom(moved.ok() ? moved : std::chrono::year_month_day(moved.year() / moved.month() / std::chrono::last));
}

int weekday(Day d) { return static_cast<int>(std::chrono::weekday(std::chrono::sys_days(std::chrono::days(d.number))).iso_encoding()) - 1; }

Result<Day> parseDay(std::string_view iso, std::string_view place) {
  std::string_view rest = iso;
  const std::optional<CivilDate> date = dateAtFront(rest);
  if (!date || !rest.empty()) return fail(ErrorCode::notADate, std::string(place), startOf(iso));
  return inRange(*date, iso, place);
}

std::string print(Day d) {
  const CivilDate date = civil(d);
  std::array<char, 40> text{};
  std::snprintf(text.data(), text.size(), "%04d-%02d-%02d", date.year, date.month, date.day);
  return text.data();
}

Day dayOf(Instant t) { return {static_cast<std::int32_t>(floorDiv(t.ms + t.offsetMinutes * kMsPerMinute, kMsPerDay))}; }

int minuteOfDay(Instant t) {
  const std::int64_t local = t.ms + t.offsetMinutes * kMsPerMinute;
  return static_cast<int>((local - floorDiv(local, kMsPerDay) * kMsPerDay) / kMsPerMinute);
}

Instant instantAt(Day d, int minuteOfDay, int offsetMinutes) {
  return {d.number * kMsPerDay + (minuteOfDay - offsetMinutes) * kMsPerMinute, offsetMinutes};
}

Result<Instant> parseInstant(std::string_view iso, std::string_view place) {
  std::string_view rest = iso;
  const std::optional<CivilDate> date = dateAtFront(rest);
  if (!date || !skip(rest, 'T')) return fail(ErrorCode::notADate, std::string(place), startOf(iso));
  const std::optional<std::int64_t> ofDay = timeAtFront(rest);
  if (!ofDay) return fail(ErrorCode::notADate, std::string(place), startOf(iso));
  const std::optional<std::int32_t> offset = offsetAtEnd(rest);
  if (!offset) return fail(ErrorCode::notADate, std::string(place), startOf(iso));
  const Result<Day> day = inRange(*date, iso, place);
  if (!day) return tl::unexpected<Error>(day.error());
  return Instant{day->number * kMsPerDay + *ofDay - *offset * kMsPerMinute, *offset};
}

std::string print(Instant t) {
  const std::int64_t local = t.ms + t.offsetMinutes * kMsPerMinute;
  const std::int64_t second = floorDiv(local - floorDiv(local, kMsPerDay) * kMsPerDay, 1000);
  const int away = t.offsetMinutes < 0 ? -t.offsetMinutes : t.offsetMinutes;
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d%c%02d:%02d", static_cast<int>(second / 3600), static_cast<int>(second / 60 % 60),
                static_cast<int>(second % 60), t.offsetMinutes < 0 ? '-' : '+', away / 60, away % 60);
  return print(dayOf(t)) + text.data();
}

}  // namespace snugline
