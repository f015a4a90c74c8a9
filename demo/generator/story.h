// SPDX-License-Identifier: Apache-2.0
// Purpose: the seasons of the demo world, day by day: helmets in, heads taped, first fits, looks, words, faults, repairs; and on the last
// days the scenes that the board shows. Each phase of a day is written in one piece. Thread: one thread.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "demo/generator/check_walk.h"
#include "demo/generator/demo_world.h"
#include "demo/generator/squad.h"

namespace snugline::demo {

class Story {
 public:
  Story(Scribe& scribe, const Options& options);
  // False when it was stopped or something failed (Scribe::error).
  bool tell();
  // When the Book is founded: the spring before the first season.
  [[nodiscard]] static Instant openingOf(const Options& options);

 private:
  struct Repair {
    std::string unit;
    Day sent, back;
  };
  // The season under way is the last one; each spans 16 weeks from a Monday.
  struct Season {
    Day start, end;
    bool isLast = false;
    int year = 2026;
  };

  bool flush();
  [[nodiscard]] Season seasonAt(int index) const;
  [[nodiscard]] Instant at(Day day, int minute, std::size_t turn = 0) const;
  [[nodiscard]] const std::string& someone();
  [[nodiscard]] const season::AthleteRecord& record(const Player& player) const { return m_scribe.views().athletes.at(player.id); }
  [[nodiscard]] const season::UnitRecord* unitOf(const Player& player) const;
  [[nodiscard]] bool isQuiet(Day day) const;  // the last days belong to the scenes

  void found(const Season& first);
  void openSeason(const Season& season);
  void signUp(const Season& season);
  void enter(std::vector<Player*>& entering, Day day);
  void takeHelmetsIn(const Season& season);
  void renewLabels(const Season& season);
  void mendWarningLabels(Day day);
  void tapeHeads(const std::vector<Player*>& players, Day day);
  void handOut(const Season& season, Day day);
  void handBack(Day day);
  void runDay(const Season& season, Day day);

  [[nodiscard]] book::Arrival arrival(const std::string& serial, std::size_t sheet, const std::string& size, const Season& season);
  void takeInNew(std::size_t sheet, const std::string& size, const Season& season, Day day);
  [[nodiscard]] gear::Label freshLabel(const Season& season);
  [[nodiscard]] std::string freeUnitFor(const Player& player);
  bool pairWith(Player& player, Day day, int minute);
  void replaceHelmets(const Season& season, Day day, int minute);
  void fitAll(const std::vector<Player*>& players, Day day, int minute);
  void lookAll(const Season& season, Day day);
  void wordsAfterPractice(Day day);
  void repairs(const Season& season, Day day);
  void noteWeather(Day day);  // story_air.cpp
  void notePlaces(Day day);
  void lineUp(Day day);
  void readAir(const Season& season, Day day);
  [[nodiscard]] const std::string& someoneOf(int week) const { return week % 2 == 0 ? m_trainer : m_aide; }
  [[nodiscard]] CheckPlan fitPlan(const Player& player);
  [[nodiscard]] CheckPlan lookPlan(const Player& player, Day day);
  [[nodiscard]] bool isLookDay(const Season& season, const Player& player, Day day) const;

  void scenesBefore(Day day);  // the labels that two scenes need
  void scenesOn(const Season& season, Day day);
  void scene(const Season& season, Player& player, Day day);
  void say(Player& player, season::SaidRecord said, Instant when);

  Scribe& m_scribe;
  const Options& m_options;
  Dice m_dice;
  NameDeck m_names;
  std::string m_team, m_trainer, m_aide;
  std::vector<std::pair<std::string, std::shared_ptr<const gear::ModelSheet>>> m_sheets;  // hash, sheet
  std::vector<Player> m_players;
  std::map<std::string, int> m_serials;  // by sheet
  std::vector<std::string> m_promised;   // handed out in the piece not yet written
  std::vector<Repair> m_repairs;
  std::size_t m_turn = 0;
  bool m_unitsAreNew = true;  // none taken in yet
};

}  // namespace snugline::demo
