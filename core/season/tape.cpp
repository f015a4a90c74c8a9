// SPDX-License-Identifier: Apache-2.0
#include "core/season/tape.h"

#include <algorithm>
#include <cstdlib>

namespace snugline::season {

namespace {

constexpr double kDaysOfYear = 365.25;
constexpr std::size_t kFewestForOdd = 3;

Length spreadOf(const std::vector<Length>& readings) {
  if (readings.empty()) return {};
  const auto [least, most] = std::minmax_element(readings.begin(), readings.end());
  return Length{most->um - least->um};
}

}  // namespace

double yearsGrown(const AthleteRecord& athlete, Day from, Day to) {
  const Day through = athlete.birthYear ? std::min(to, dayOf(*athlete.birthYear + kGrowthThroughAge, 12, 31)) : to;
  return std::max(0, daysBetween(from, through)) / kDaysOfYear;
}

const TapeRecord* lastTape(const AthleteRecord& athlete) {
  const auto found = std::find_if(athlete.tapes.rbegin(), athlete.tapes.rend(), [](const TapeRecord& t) { return !t.readings.empty(); });
  return found == athlete.tapes.rend() ? nullptr : &*found;
}

bool isReadingWanted(const TapeRecord& tape) { return spreadOf(tape.readings) > fit::kRetakeSpread; }

std::optional<std::size_t> oddReading(const TapeRecord& tape) {
  if (tape.readings.size() < kFewestForOdd || !isReadingWanted(tape)) return std::nullopt;
  for (std::size_t i = 0; i < tape.readings.size(); ++i) {
    std::vector<Length> rest = tape.readings;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i));
    if (spreadOf(rest) <= fit::kRetakeSpread) return i;
  }
  return std::nullopt;
}

bool isYouth(const AthleteRecord& athlete, Day today) {
  return !athlete.birthYear || civil(today).year - *athlete.birthYear <= kYouthThroughAge;
}

std::optional<Day> tapeStaleFrom(const AthleteRecord& athlete, Day today) {
  const TapeRecord* tape = lastTape(athlete);
  if (tape == nullptr || !isYouth(athlete, today)) return std::nullopt;
  return addMonths(dayOf(tape->stamp.at), kTapeStaleMonths);
}

std::optional<ReadingDoubt> doubtOf(const AthleteRecord& athlete, const TapeRecord& tape, std::size_t place) {
  const Length reading = tape.readings.at(place);
  const Day day = dayOf(tape.stamp.at);
  ReadingDoubt doubt;
  doubt.ofAge = fit::doubt(reading, athlete.birthYear ? std::optional(civil(day).year - *athlete.birthYear) : std::nullopt);
  // Held against the nearest one before it the same time, so that a wrong one does not cast doubt on the next; the first against the last
  // one of the time before.
  std::optional<Length> last;
  if (place > 0) {
    last = *std::min_element(tape.readings.begin(), tape.readings.begin() + static_cast<std::ptrdiff_t>(place),
                             [&](Length a, Length b) { return std::abs(a.um - reading.um) < std::abs(b.um - reading.um); });
    doubt.lastDay = day;
  } else {
    for (const TapeRecord& earlier : athlete.tapes) {
      if (&earlier == &tape) break;
      if (earlier.readings.empty()) continue;
      last = earlier.readings.back();
      doubt.lastDay = dayOf(earlier.stamp.at);
    }
  }
  if (last) {
    const auto grown = static_cast<std::int64_t>(static_cast<double>(kGrowthPerYear.um) * yearsGrown(athlete, doubt.lastDay, day));
    const std::int64_t more = reading.um - last->um;
    if (more > kReadingFar.um + grown || more < -kReadingFar.um) doubt.last = last;
  }
  return doubt.last || doubt.ofAge != fit::HeadDoubt::none ? std::optional(doubt) : std::nullopt;
}

Length readingError(const Views& views) {
  std::vector<fit::TapePair> pairs;
  for (const auto& [id, athlete] : views.athletes)
    for (const TapeRecord& tape : athlete.tapes)
      if (tape.readings.size() > 1) pairs.push_back({tape.readings[0], tape.readings[1]});
  return fit::technicalError(pairs).value_or(fit::kDefaultTem);
}

}  // namespace snugline::season
