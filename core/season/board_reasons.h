// SPDX-License-Identifier: Apache-2.0
// Purpose: the due table, one function for each row of it, and how an athlete stands. For the board, and for the acts of core/book.
// Each threshold stands in board_reasons.cpp or core/fit/guide.h with its source beside it. Thread: plain values.
#pragma once

#include <optional>
#include <vector>

#include "core/season/board.h"

namespace snugline::season {

// What every row of one board shares, worked out once.
struct DueContext {
  const Views* views = nullptr;
  Instant now;
  Day today, practice;
  std::optional<Day> seasonStart, seasonEnd;
  const SeasonRecord* between = nullptr;  // the season that was closed, while no other is open
  Climate climate;                        // now; nothing known: the air is not judged
  std::optional<Instant> weatherAt;       // noted; nothing when it was given
};
[[nodiscard]] DueContext contextOf(const Views& views, BoardTime time, const Conditions& conditions = {});

// What is read off an athlete's record before any rule is asked.
struct Standing {
  const AthleteRecord* athlete = nullptr;
  const UnitRecord* unit = nullptr;       // worn now; the last paired one where there are two
  std::vector<const UnitRecord*> others;  // further ones, where there are two
  const CheckRecord* open = nullptr;
  const EndedCheck* last = nullptr;          // in the unit worn since it was paired, not dated after now unless it found something
  const EndedCheck* fit = nullptr;           // the first fit or refit that the break-in counts from
  const EndedCheck* look = nullptr;          // the last check that saw the marks
  const LineRecord* line = nullptr;          // the last time seen in a line in the unit worn, since it was paired
  const EndedCheck* lookAfterFit = nullptr;  // a look on a later day than the fit
};
// worn: the one unit that the athlete is paired with where that is known already, else it is looked for.
[[nodiscard]] Standing standingOf(const DueContext& context, const AthleteRecord& athlete, const UnitRecord* worn = nullptr);

// When the next look is due, apart from anything open: break-in after a fit, else weekly. Nothing when never fitted or out of season.
struct NextLook {
  DueKind kind = DueKind::weeklyLook;
  Day from, by;
};
[[nodiscard]] std::optional<NextLook> nextLook(const DueContext& context, const Standing& standing);

// Fills a row that may have been used before: its memory is kept, so that a board made anew asks for little. watch: filled too where given.
void makeRow(const DueContext& context, const AthleteRecord& athlete, DueRow& row, const UnitRecord* worn = nullptr,
             AirWatch* watch = nullptr);

// In which the marks were last seen in the unit worn; no stamp when never. board_air.cpp.
[[nodiscard]] MarksSeen marksSeen(const Standing& standing);
// The reasons of air and of the line; true when there is air that cannot be judged. board_air.cpp.
[[nodiscard]] bool findAirReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons, AirWatch* watch);

// All reasons, in no order, in place of what was there.
void findReasons(const DueContext& context, const Standing& standing, std::vector<DueReason>& reasons);

// Not dated after now: a wrong clock elsewhere must not make a look count.
[[nodiscard]] inline bool isSeen(const DueContext& context, Instant at) { return at.ms <= context.now.ms; }

}  // namespace snugline::season
