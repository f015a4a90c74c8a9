// SPDX-License-Identifier: Apache-2.0
// Purpose: the turn of a season: which helmets are to be handed in and which are, what is still open when it is closed, what is carried
// over, and the time between a season that was closed and the next. The season that a team names is closed from the moment it is written
// so until another is opened; in between no look is due, and nobody is asked for a helmet (board.h).
// Complexity: linear in units or athletes. Thread: pure functions.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

// How that season was closed; nothing while it was not.
[[nodiscard]] const SeasonRecord* closingOf(const TeamRecord& team, std::string_view season);
// The closing of the season that the team names: nothing while it runs, so what is not nothing is the time between two seasons.
[[nodiscard]] const SeasonRecord* between(const Views& views);
// The last season that was closed. A check counts for the season it was made in: none from before this is a fit now.
[[nodiscard]] const SeasonRecord* lastClosed(const Views& views);

// Handed in for that season, and with nobody since. Lost again: no.
[[nodiscard]] bool isCollected(const UnitRecord& unit, std::string_view season);
// To be handed in at the end of a season: on the shelf or with an athlete, so not in repair, sent out, retired or lost.
[[nodiscard]] bool isExpected(const UnitRecord& unit);

struct MissingUnit {
  const UnitRecord* unit = nullptr;
  const AthleteRecord* athlete = nullptr;  // who has it, the last paired one where there are two; nothing: it should be on the shelf
};
// Expected and not collected: those with athletes first, by jersey, then by serial.
[[nodiscard]] std::vector<MissingUnit> missingUnits(const Views& views);

struct TurnCount {
  int collected = 0;     // of all
  int withAthletes = 0;  // missing, somebody has it
  int onShelf = 0;       // missing, nobody has it
  int away = 0;          // in repair or sent out, and not collected
  int lost = 0;
  friend bool operator==(const TurnCount&, const TurnCount&) = default;
};
[[nodiscard]] TurnCount turnCount(const Views& views);

// What else a closing leaves as it is; by jersey. Athletes off the roster count too.
struct OpenAtTurn {
  std::vector<const AthleteRecord*> helmets;  // still have one, or more
  std::vector<const AthleteRecord*> checks;   // a check was begun and not ended
  std::vector<const AthleteRecord*> words;    // said something that nobody has seen to
};
[[nodiscard]] OpenAtTurn openAtTurn(const Views& views);

// Helmets that go over into the next season, by how they stand. Retired ones do not.
enum class CarryState : std::uint8_t { ready, held, notInService, withAthlete, repair, sentOut, lost };
inline constexpr std::size_t kCarryStateCount = 7;
[[nodiscard]] std::string_view code(CarryState s);
struct CarrySize {
  std::string sheet, size;  // sheet: hash of the one that counts; both empty where they were never said
  int units = 0;
  friend bool operator==(const CarrySize&, const CarrySize&) = default;
};
struct Carry {
  std::array<int, kCarryStateCount> byState{};
  std::vector<CarrySize> sizes;  // lost ones left out; by name of the sheet, then in the order of its sizes
  [[nodiscard]] int units() const;
};
[[nodiscard]] Carry carryOf(const Views& views);

}  // namespace snugline::season
