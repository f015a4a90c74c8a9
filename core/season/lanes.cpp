// SPDX-License-Identifier: Apache-2.0
#include "core/season/lanes.h"

#include <algorithm>

namespace snugline::season {

namespace {
constexpr int kWeek = 7;
}

LaneCount lanesAt(const Views& views, Instant at) {
  const Board board = boardOf(views, {at}, {});
  LaneCount count;
  count.at = at;
  for (const DueRow& row : board.rows) {
    if (row.unit.empty()) {
      ++count.bare;
    } else {
      ++count.helmets[static_cast<std::size_t>(row.lane)];
    }
  }
  return count;
}

std::vector<Instant> laneTimes(const TeamRecord& team, Instant now) {
  const Day today = dayOf(now);
  const bool isOver = team.seasonEnd && *team.seasonEnd < today;
  const Day last = isOver ? *team.seasonEnd : today;
  Day first = team.seasonStart && *team.seasonStart <= last ? *team.seasonStart : last.plus(-kWeek * kLaneWeeks + 1);
  first = std::max(first, last.plus(-kWeek * (kLaneWeeksMost - 1)));
  std::vector<Instant> times;
  for (Day monday = first.plus(-weekday(first)); monday <= last; monday = monday.plus(kWeek)) {
    std::optional<Day> practice;
    for (int i = 0; i < kWeek; ++i) {
      const Day day = monday.plus(i);
      const bool isPractice = team.practiceDays[static_cast<std::size_t>(i)];
      if (isPractice && day >= first && day <= last) practice = day;
    }
    const bool hasDays = std::find(team.practiceDays.begin(), team.practiceDays.end(), true) != team.practiceDays.end();
    if (!hasDays) practice = std::min(monday.plus(kWeek - 1), last);
    if (!practice) continue;
    const Instant at = instantAt(*practice, team.practiceMinute, now.offsetMinutes);
    if (at.ms < now.ms) times.push_back(at);
  }
  if (!isOver) times.push_back(now);
  return times;
}

}  // namespace snugline::season
