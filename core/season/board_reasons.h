// SPDX-License-Identifier: Apache-2.0
// Purpose: the due table, one function for each row of it, and how an athlete stands. For the board, and for the acts of core/book.
// Each threshold stands in board_reasons.cpp or core/fit/guide.h with its source beside it. Thread: plain values.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/season/board.h"
#include "core/season/standing.h"

namespace snugline::season {

// What every row of one board shares, worked out once.
struct DueContext {
  const Views* views = nullptr;
  Day today, practice;
  std::optional<Day> seasonStart, seasonEnd;
  const SeasonRecord* between = nullptr;                                 // the season that was closed, while no other is open
  Climate climate;                                                       // now; nothing known: the air is not judged
  std::optional<Instant> weatherAt;                                      // noted; nothing when it was given
  std::optional<Standings> standings;                                    // of helmets
  std::unordered_map<std::string, std::vector<const UnitRecord*>> kept;  // by athlete: helmets not theirs that they still have
};
[[nodiscard]] DueContext contextOf(const Views& views, BoardTime time, const Conditions& conditions = {});

// What is read off an athlete's record before any rule is asked.
struct Standing {
  const AthleteRecord* athlete = nullptr;
  const UnitRecord* unit = nullptr;       // worn now; the last paired one where there are two
  std::vector<const UnitRecord*> others;  // further ones, where there are two
  const CheckRecord* open = nullptr;
  const EndedCheck* last = nullptr;          // in the unit worn since it was paired, and counts or found something
  const EndedCheck* fit = nullptr;           // the first fit or refit that the break-in counts from
  const EndedCheck* look = nullptr;          // the last check that saw the marks
  const LineRecord* line = nullptr;          // the last time seen in a line in the unit worn, since it was paired
  const EndedCheck* lookAfterFit = nullptr;  // a look on a later day than the fit
};
[[nodiscard]] Standing standingOf(const DueContext& context, const AthleteRecord& athlete);

// When the next look is due, apart from anything open: break-in after a fit, else weekly. Nothing when never fitted or out of season.
struct NextLook {
  DueKind kind = DueKind::weeklyLook;
  Day from, by;
};
[[nodiscard]] std::optional<NextLook> nextLook(const DueContext& context, const Standing& standing);

[[nodiscard]] DueRow makeRow(const DueContext& context, const AthleteRecord& athlete);

// In which the marks were last seen in the unit worn; no stamp when never. board_air.cpp.
[[nodiscard]] MarksSeen marksSeen(const Standing& standing);
// The reasons of air and of the line; true when there is air that cannot be judged. board_air.cpp.
[[nodiscard]] bool findAirReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons);

// Those of the helmets. board_unit.cpp.
void findUnitReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons);
inline constexpr int kPointByDays = 7;  // as the weekly look: common practice, no source
[[nodiscard]] Grade gradeOf(const DueReason& reason);
// All reasons, in no order, each fault once.
void findReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons);

// A wrong clock elsewhere must not make a look count (clocks.h).
[[nodiscard]] inline bool isSeen(const DueContext& context, const Stamp& stamp) {
  return isBelieved(*context.views, stamp.at, stamp.fact, context.today);
}

}  // namespace snugline::season
