// SPDX-License-Identifier: Apache-2.0
// Purpose: counts that people look at over weeks: open faults by part, marks that a first fit and the looks after it found off, and how
// soon after a first fit the first look came. Counts of equipment and of looks, never of people's doings. Thread: pure functions.
#pragma once

#include <array>
#include <optional>

#include "core/season/record.h"

namespace snugline::season {

// Helmets neither retired nor lost of which the point was last seen so, by gear::Point.
struct PointCount {
  int sound = 0, fault = 0, unseen = 0;
  friend bool operator==(const PointCount&, const PointCount&) = default;
};
[[nodiscard]] std::array<PointCount, gear::kPointCount> pointsOver(const Views& views);

// First fits and refits since `from`, by how many days later the same athlete's next look in the same helmet ended: 0, 1, 2, 3, more; or
// none yet. One that was fitted anew, or given another helmet, before any look is not counted: nobody owed a look any more.
inline constexpr std::size_t kLookDays = 5;  // the last stands for more
struct FirstLooks {
  std::array<int, kLookDays> after{};
  int waiting = 0;
  friend bool operator==(const FirstLooks&, const FirstLooks&) = default;
};
[[nodiscard]] FirstLooks firstLooks(const Views& views, std::optional<Day> from);

}  // namespace snugline::season
