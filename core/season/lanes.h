// SPDX-License-Identifier: Apache-2.0
// Purpose: how many helmets stood in which lane of the board, at one time and at one practice of each week of a season. Counts of
// equipment, never of people's doings. Thread: pure functions.
#pragma once

#include <array>
#include <vector>

#include "core/season/board.h"

namespace snugline::season {

struct LaneCount {
  Instant at;
  std::array<int, kLaneCount> helmets{};  // by Lane: helmets with an athlete of the roster, in the lane of that athlete's row
  int bare = 0;                           // athletes of the roster without a helmet
  friend bool operator==(const LaneCount&, const LaneCount&) = default;
};
// The board at that time, under the weather that these views noted last.
[[nodiscard]] LaneCount lanesAt(const Views& views, Instant at);

// Begin of the last practice of each week (Monday to Sunday) from the first day of the season until now or its last day; every seventh day
// where no practice days are set. Without a first day: the last kLaneWeeks weeks. At most kLaneWeeksMost, the newest. Times have the
// offset of `now`, and the last one is now itself while the season lasts.
inline constexpr int kLaneWeeks = 16;      // ours: about a season
inline constexpr int kLaneWeeksMost = 60;  // ours
[[nodiscard]] std::vector<Instant> laneTimes(const TeamRecord& team, Instant now);

}  // namespace snugline::season
