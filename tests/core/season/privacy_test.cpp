// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/season/privacy.h"
#include "small_world.h"

using namespace snugline;
using namespace snugline::season;

TEST_CASE("A guardian signs for whoever may still be a minor, and for whoever's birth year is not known") {
  AthleteRecord athlete;
  CHECK(needsGuardian(athlete, kToday));
  athlete.birthYear = 2008;  // 17 or 18 in 2026
  CHECK(needsGuardian(athlete, kToday));
  athlete.birthYear = 2007;
  CHECK_FALSE(needsGuardian(athlete, kToday));
  CHECK(needsGuardian(athlete, dayOf(2025, 12, 31)));
}

TEST_CASE("Who has not signed is counted on the roster only") {
  SmallWorld world;
  world.views.team->season = "2026";
  CHECK(countWarningOpen(world.views, kToday) == 1);
  AthleteRecord& athlete = world.views.athletes.at(world.athleteId);
  athlete.birthYear = 2000;
  world.views.team->warning = WarningRecord{{{"en", "Read.", "h"}}, {"h"}, {}};
  athlete.signatures.push_back({"2026", "h", "en", Signer::athlete, "AM", false, {}});
  CHECK(countWarningOpen(world.views, kToday) == 0);
  athlete.signatures.front().season = "2025";
  CHECK(countWarningOpen(world.views, kToday) == 1);
  athlete.isOnRoster = false;
  CHECK(countWarningOpen(world.views, kToday) == 0);
}

TEST_CASE("The years run from the last entry of any sort, and 29 February ends on 1 March") {
  TeamRecord team;
  team.nameYears = 1;
  AthleteRecord athlete;
  athlete.isOnRoster = false;
  athlete.added.at = at(dayOf(2020, 8, 1));
  athlete.left = Stamp{at(dayOf(2023, 11, 30)), {}, {}, 0};
  TapeRecord tape;
  tape.stamp.at = at(dayOf(2024, 2, 29));
  athlete.tapes = {tape};
  CHECK(nameKeptBackSince(team, athlete, dayOf(2030, 1, 1)) == dayOf(2025, 3, 1));
  SaidRecord said;
  said.at = at(dayOf(2024, 5, 1));
  athlete.said = {said};
  CHECK(nameKeptBackSince(team, athlete, dayOf(2030, 1, 1)) == dayOf(2025, 5, 1));
  CHECK_FALSE(nameKeptBackSince(std::nullopt, athlete, dayOf(2030, 1, 1)));
}
