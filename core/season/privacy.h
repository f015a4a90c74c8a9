// SPDX-License-Identifier: Apache-2.0
// Purpose: who has yet to read and sign the yearly warning, and whose name is kept back. Pure functions of the views and today.
// Ranges: none refused. Thread: plain functions.
#pragma once

#include <optional>

#include "core/season/record.h"

namespace snugline::season {

// Up to this age, in years by the birth year alone, a guardian signs too: somebody born 18 years ago may still be 17.
// The age of majority in most places; value from memory. A birth year that is not known counts as a minor's.
inline constexpr int kGuardianAge = 18;
[[nodiscard]] bool needsGuardian(const AthleteRecord& athlete, Day today);

struct WarningState {
  bool isAthleteOpen = true;
  bool isGuardianOpen = true;
  [[nodiscard]] bool isDone() const { return !isAthleteOpen && !isGuardianOpen; }
};
// For the team's season as it is called now. Nothing counts while the team has set no text.
[[nodiscard]] WarningState warningState(const std::optional<TeamRecord>& team, const AthleteRecord& athlete, Day today);
[[nodiscard]] int countWarningOpen(const Views& views, Day today);  // of athletes on the roster

// The day from which the name is left out of views and reports: the team's number of years after the last entry about an athlete who is
// off the roster. Nothing before that day, without a number of years, and while a legal hold stands.
[[nodiscard]] std::optional<Day> nameKeptBackSince(const std::optional<TeamRecord>& team, const AthleteRecord& athlete, Day today);
// Takes the names out of copies of records that are about to be shown or printed, and says since when (AthleteRecord::nameKeptBack).
void keepNameBack(const std::optional<TeamRecord>& team, AthleteRecord& athlete, Day today);
void keepNamesBack(Views& views, Day today);

}  // namespace snugline::season
