// SPDX-License-Identifier: Apache-2.0
// Purpose: from when a tape reading is too old to go by. Heads that still grow only. Thread: plain functions.
#pragma once

#include <optional>

#include "core/season/record.h"

namespace snugline::season {

inline constexpr int kTapeStaleMonths = 6;   // ours: heads of this age still grow
inline constexpr int kYouthThroughAge = 18;  // ours: completed in the calendar year; no birth year known counts as youth

[[nodiscard]] inline bool isYouth(const AthleteRecord& athlete, Day today) {
  return !athlete.birthYear || civil(today).year - *athlete.birthYear <= kYouthThroughAge;
}
// The first day on which the last tape reading is stale; nothing without one, or for a head that is grown.
[[nodiscard]] inline std::optional<Day> tapeStaleFrom(const AthleteRecord& athlete, Day today) {
  if (athlete.tapes.empty() || !isYouth(athlete, today)) return std::nullopt;
  return addMonths(dayOf(athlete.tapes.back().stamp.at), kTapeStaleMonths);
}

}  // namespace snugline::season
