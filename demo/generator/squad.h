// SPDX-License-Identifier: Apache-2.0
// Purpose: who plays in the demo, and what nobody in it knows: the true size of each head. Thread: one thread.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/gear/model_sheet.h"
#include "core/quantity/time.h"
#include "demo/generator/dice.h"

namespace snugline::demo {

// What stands out about an athlete on the day that the demo ends; most have nothing.
enum class Scene : std::uint8_t {
  nothing,
  recent,  // looked at five to seven days ago: weekly look
  heldWithAthlete,
  labelLapsed,
  neverFitted,
  brokeSaid,
  unwellSaid,
  tightSaid,
  looseSaid,
  hairCut,
  partChanged,
  checkBrokenOff,  // yesterday
  checkUnderWay,   // today
  adjustOpen,
  dryHair,
  fittedYesterday,  // in another helmet: break-in look
  fittedBefore,     // the day before yesterday
  lookMissed,       // absent last week: late
  labelLapsing,
  tapeStale
};

struct Player {
  std::string id, jersey, family, given;
  int birthYear = 2010;
  int headMm = 560;
  std::size_t sheet = 0;  // which of the demo's sheets they like best
  Scene scene = Scene::nothing;
  int lookAge = 1;            // days between the last weekly look and the demo's today
  std::optional<Day> lookOn;  // an extra look that something called for
  bool isRefitDue = false;
  std::optional<Day> fitted;
};

// Scenes for this many athletes; about as many of each as a real week has.
[[nodiscard]] std::vector<Scene> castScenes(std::size_t athletes);
// Names are dealt from a shuffled deck, so that a squad of up to 96 has no name twice, given or family.
class NameDeck {
 public:
  explicit NameDeck(Dice& dice);
  void deal(Player& player);

 private:
  std::vector<std::string_view> m_given, m_family;
  std::size_t m_dealt = 0;
};
[[nodiscard]] Player newPlayer(Dice& dice, NameDeck& names, const std::string& jersey, int seasonYear, bool isNewcomer);
// "00", "01" to "09", then two and three digits.
[[nodiscard]] std::vector<std::string> jerseysFor(Dice& dice, std::size_t count);
// Readings as a fitter would write them: whole millimetres, off by about 3 mm (technical error of measurement), a third when two disagree.
[[nodiscard]] std::vector<Length> tapeReadings(Dice& dice, int headMm);
// The band that holds the head, else the nearest.
[[nodiscard]] const gear::SizeBand& bandFor(const gear::ModelSheet& sheet, Length head);

}  // namespace snugline::demo
