// SPDX-License-Identifier: Apache-2.0
// Purpose: what matching knows of every head and helmet, worked out once: kinds (sheet and size), odds, last helmets, bars.
// Heads and helmets stand in the order of their ids. Looks into the views: good as long as they are. Thread: plain values.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/season/matching.h"

namespace snugline::season {

// Is the tape reading too old to go by: the board's rule for athletes who still grow.
[[nodiscard]] TapeState tapeState(const AthleteRecord& athlete, Day today);
// By number of the id, then by text, as facts were written.
[[nodiscard]] bool idBefore(const std::string& a, const std::string& b);
// The unit an athlete wears, else the one of the last check; empty when none.
[[nodiscard]] std::string lastHelmetOf(const AthleteRecord& athlete);

struct MatchKind {
  std::string sheet, size;
  int place = 0;  // in the chart
};
struct MatchHelmet {
  const UnitRecord* unit = nullptr;
  std::optional<Bar> bar{};
  int kind = -1;
  int unseenPoints = 0, years = 0;
  std::vector<int> lastOf;  // heads
};
struct MatchHead {
  const AthleteRecord* athlete = nullptr;
  TapeState tape = TapeState::missing;
  std::vector<std::pair<int, double>> odds;  // kind, odds of at least kTryOnOdds
  int last = -1;                             // helmet; -1 none, or not to be given
  int failedKind = -1;
  std::string likelySheet, likelySize;
  bool isOnAChart = false;  // some size of a sheet at hand reaches kTryOnOdds
};

class MatchTable {
 public:
  [[nodiscard]] static Result<MatchTable> make(const Views& views, const MatchWishes& wishes, Day today);

  [[nodiscard]] const std::vector<MatchHead>& heads() const { return m_heads; }
  [[nodiscard]] const std::vector<MatchHelmet>& helmets() const { return m_helmets; }
  [[nodiscard]] const std::vector<MatchKind>& kinds() const { return m_kinds; }
  [[nodiscard]] Day through() const { return m_through; }
  [[nodiscard]] bool isSeasonEndKnown() const { return m_isSeasonEndKnown; }
  [[nodiscard]] int headAt(const std::string& athlete) const;
  [[nodiscard]] int helmetAt(const std::string& unit) const;
  [[nodiscard]] bool isSetAside(int head, int helmet) const { return m_setAside.contains({helmet, head}); }
  [[nodiscard]] const std::set<std::pair<int, int>>& setAside() const { return m_setAside; }  // helmet, head

  [[nodiscard]] std::optional<double> oddsOf(int head, int kind) const;
  // The pair with its terms; odds as they are, however low.
  [[nodiscard]] MatchPair pairOf(int head, int helmet) const;

 private:
  void addHelmets(const Views& views, Day today);
  void addHeads(const Views& views, const MatchWishes& wishes, Day today);
  void addOdds(MatchHead& head, Length tem);
  void addLast();
  [[nodiscard]] Result<void> addExclusions(const MatchWishes& wishes);

  std::vector<MatchHead> m_heads;
  std::vector<MatchHelmet> m_helmets;
  std::vector<MatchKind> m_kinds;  // by sheet, then in the chart's order
  std::vector<std::pair<std::string, const gear::ModelSheet*>> m_sheets;
  std::unordered_map<std::string, int> m_headAt, m_helmetAt;
  std::set<std::pair<int, int>> m_setAside;
  std::vector<std::vector<std::pair<int, double>>> m_allOdds;  // by head: every kind, small odds too
  Day m_through;
  bool m_isSeasonEndKnown = true;
};

}  // namespace snugline::season
