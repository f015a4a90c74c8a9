// SPDX-License-Identifier: Apache-2.0
// Purpose: what the readings of a head come to: which count, whether one of them is in doubt, from when they are too old to go by, and
// how much one reading errs. A reading that was set aside counts nowhere here. Errors: none. Thread: plain functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/fit/size.h"
#include "core/season/record.h"

namespace snugline::season {

inline constexpr int kTapeStaleMonths = 6;    // ours: heads of this age still grow
inline constexpr int kYouthThroughAge = 18;   // ours: completed in the calendar year; no birth year known counts as youth
inline constexpr Length kReadingFar{10'000};  // ours: farther from the last one of that head is questioned
// Ours, from the medians of Dutch boys at 11 and 18 (R package mice): 35 mm in 7 years.
inline constexpr Length kGrowthPerYear{5000};
inline constexpr int kGrowthThroughAge = 18;  // ours; the medians of soldiers are no larger

// Years in which this head grew between two days; not known when born: all of them.
[[nodiscard]] double yearsGrown(const AthleteRecord& athlete, Day from, Day to);

// The last time that the head was measured and a reading of it counts; nothing where none does.
[[nodiscard]] const TapeRecord* lastTape(const AthleteRecord& athlete);
// Another reading is asked for: those that count lie farther apart than fit::kRetakeSpread. No size is known then.
[[nodiscard]] bool isReadingWanted(const TapeRecord& tape);
// Of three and more, the one without which the rest agree; its place among those that count.
[[nodiscard]] std::optional<std::size_t> oddReading(const TapeRecord& tape);

[[nodiscard]] bool isYouth(const AthleteRecord& athlete, Day today);
// The first day on which the last reading is stale; nothing without one, or for a head that is grown.
[[nodiscard]] std::optional<Day> tapeStaleFrom(const AthleteRecord& athlete, Day today);

// Why a reading is questioned at once.
struct ReadingDoubt {
  std::optional<Length> last;  // farther from this one than kReadingFar, growth since then allowed for
  Day lastDay;
  fit::HeadDoubt ofAge = fit::HeadDoubt::none;  // hardly any head of that age measures so
};
// tape: one of the athlete's; place: of the reading among those of it that count.
[[nodiscard]] std::optional<ReadingDoubt> doubtOf(const AthleteRecord& athlete, const TapeRecord& tape, std::size_t place);

// Error of one reading, from the repeats of every head that were not set aside (fit::technicalError); fit::kDefaultTem until there are
// enough. Linear in tapes.
[[nodiscard]] Length readingError(const Views& views);

}  // namespace snugline::season
