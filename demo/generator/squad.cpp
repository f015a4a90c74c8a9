// SPDX-License-Identifier: Apache-2.0
#include "demo/generator/squad.h"

#include <algorithm>
#include <cstdlib>

#include "core/fit/size.h"
#include "demo/generator/names.h"

namespace snugline::demo {

namespace {

// About the Dutch boys of 14 to 17 (R package mice) and young men of ANSUR II: means 557 to 567 mm, spread 16 mm.
constexpr int kHeadMeanAt14 = 556, kHeadMeanStep = 3, kHeadSpread = 15;
constexpr int kTapeError = 3;  // mm, one reading
constexpr int kRetakeMm = 5;   // as fit::kRetakeSpread

struct Part {
  Scene scene;
  std::size_t per64;
  bool isAlways;  // one even in a small squad, so that every lane has a row
};
constexpr std::array<Part, 19> kCast{{{Scene::labelLapsed, 1, true},
                                      {Scene::tightSaid, 1, true},
                                      {Scene::tapeStale, 3, true},
                                      {Scene::brokeSaid, 1, false},
                                      {Scene::hairCut, 1, false},
                                      {Scene::recent, 10, false},
                                      {Scene::heldWithAthlete, 1, false},
                                      {Scene::checkBrokenOff, 1, false},
                                      {Scene::labelLapsing, 2, false},
                                      {Scene::neverFitted, 1, false},
                                      {Scene::checkUnderWay, 1, false},
                                      {Scene::adjustOpen, 1, false},
                                      {Scene::unwellSaid, 1, false},
                                      {Scene::dryHair, 1, false},
                                      {Scene::fittedYesterday, 1, false},
                                      {Scene::lookMissed, 2, false},
                                      {Scene::looseSaid, 1, false},
                                      {Scene::partChanged, 1, false},
                                      {Scene::fittedBefore, 1, false}}};

}  // namespace

std::vector<Scene> castScenes(std::size_t athletes) {
  constexpr std::size_t kFull = 64, kWhole = 30;
  std::vector<Scene> scenes;
  for (const Part& part : kCast) {
    std::size_t count = (part.per64 * athletes + kFull / 2) / kFull;
    if (count == 0 && (part.isAlways || athletes >= kWhole)) count = 1;
    scenes.insert(scenes.end(), count, part.scene);
  }
  const std::size_t most = athletes - athletes / 4;  // some have nothing due
  if (scenes.size() > most) scenes.resize(most);
  scenes.resize(athletes, Scene::nothing);
  return scenes;
}

std::vector<std::string> jerseysFor(Dice& dice, std::size_t count) {
  std::vector<std::string> jerseys{"00", "01", "02", "03", "04", "05", "06", "07", "08", "09"};
  std::vector<std::string> rest;
  for (int number = 10; number < 100; ++number) rest.push_back(std::to_string(number));
  dice.shuffle(rest);
  jerseys.insert(jerseys.end(), rest.begin(), rest.end());
  // Beyond a hundred people numbers repeat, as they do where a whole district shares one Book.
  for (int number = 100; jerseys.size() < count; number = number == 999 ? 10 : number + 1) jerseys.push_back(std::to_string(number));
  jerseys.resize(count);
  return jerseys;
}

NameDeck::NameDeck(Dice& dice) : m_given(kGivenNames.begin(), kGivenNames.end()), m_family(kFamilyNames.begin(), kFamilyNames.end()) {
  dice.shuffle(m_given);
  dice.shuffle(m_family);
}

void NameDeck::deal(Player& player) {
  player.given = m_given[m_dealt % m_given.size()];
  // One step further on each round of the deck, so that pairs do not come round again for long.
  player.family = m_family[(m_dealt + m_dealt / m_family.size()) % m_family.size()];
  ++m_dealt;
}

Player newPlayer(Dice& dice, NameDeck& names, const std::string& jersey, int seasonYear, bool isNewcomer) {
  Player player;
  player.jersey = jersey;
  names.deal(player);
  const int age = isNewcomer ? dice.between(14, 15) : dice.between(14, 18);
  player.birthYear = seasonYear - age;
  player.headMm = kHeadMeanAt14 + (age - 14) * kHeadMeanStep + dice.nearNormal(kHeadSpread);
  const std::size_t throwOf20 = dice.below(20);
  player.sheet = throwOf20 < 9 ? 0 : throwOf20 < 16 ? 1 : 2;
  return player;
}

std::vector<Length> tapeReadings(Dice& dice, int headMm) {
  const auto read = [&] { return headMm + dice.nearNormal(kTapeError); };
  std::vector<int> mm{read(), read()};
  if (std::abs(mm[0] - mm[1]) > kRetakeMm) mm.push_back(read());
  std::vector<Length> readings;
  for (int value : mm) readings.push_back(Length::micrometres(std::int64_t{value} * 1000));
  return readings;
}

const gear::SizeBand& bandFor(const gear::ModelSheet& sheet, Length head) {
  const auto distance = [&](const gear::SizeBand& band) { return std::abs((band.low.um + band.high.um) / 2 - head.um); };
  const gear::SizeBand* best = &sheet.sizes.front();
  for (const gear::SizeBand& band : sheet.sizes) {
    if (distance(band) < distance(*best)) best = &band;
  }
  return *best;
}

}  // namespace snugline::demo
