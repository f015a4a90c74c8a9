// SPDX-License-Identifier: Apache-2.0
// Purpose: heads to helmets for a whole roster: first as many heads as can be, then the least cost. A pair is feasible when
// nothing keeps the helmet off every head on the day asked (standing.h), and its size odds for this
// head are at least kMatchOdds; from kTryOnOdds up it is a pair to try on. Cost = -log(odds) + terms from one table (kTermCosts).
// Every pair carries its terms; whoever gets none carries why, and so does a helmet that cannot be given.
// Pins are a person's decision: they may go against the odds or a missing tape, never against service or certification.
// Ranges: up to kAssignmentMost heads or helmets. Errors: notFound (a wish names nobody), inconsistent (wishes that contradict each
// other), outOfRange, outOfMemory, internal. Thread: plain functions of what is handed in.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/fit/size.h"
#include "core/season/record.h"
#include "core/season/standing.h"

namespace snugline::season {

inline constexpr double kMatchOdds = 0.4;  // ours
inline constexpr double kTryOnOdds = 0.2;  // ours

enum class CostTerm : std::uint8_t {
  size,          // -log(odds)
  tryOn,         // odds below kMatchOdds
  otherHelmet,   // the head's last helmet could be had, and this is another
  wornByOther,   // the last helmet of somebody else on the roster
  kindFailed,    // the last check in this model and size ended with do not wear
  unseenPoints,  // each of the seven points not seen on this helmet
  age            // each full year since its first known label
};
inline constexpr std::size_t kCostTermCount = 7;
[[nodiscard]] std::string_view code(CostTerm t);  // "size", "try-on", "other-helmet", "worn-by-other", "kind-failed", …

// The one table of what a term costs, in units of -log(odds): log 2 = 0.69 is what falling from sure to even odds costs. All ours.
inline constexpr std::array<double, kCostTermCount> kTermCosts{
    1.0,    // size: times -log(odds)
    1.0,    // tryOn: on top, a helmet that may well not fit
    0.35,   // otherHelmet: a new first fit; odds of 0.7 and the known one are kept
    0.10,   // wornByOther: one more athlete to move
    0.70,   // kindFailed
    0.02,   // unseenPoints, each
    0.01};  // age, each year

// open: another reading is asked for, so that no size is known.
enum class TapeState : std::uint8_t { fresh, stale, open, missing };
[[nodiscard]] constexpr bool isSizeKnown(TapeState s) { return s == TapeState::fresh || s == TapeState::stale; }
[[nodiscard]] std::string_view code(TapeState s);  // "fresh", "stale", "open", "missing"

struct PairTerm {
  CostTerm term = CostTerm::size;
  int count = 1;
  double cost = 0;
};
struct MatchPair {
  std::string athlete, unit;
  std::string sheet, size;     // sheet: hash
  std::optional<double> odds;  // nothing without a tape (pinned or kept only)
  double cost = 0;             // sum of the terms
  std::vector<PairTerm> terms;
  TapeState tape = TapeState::missing;
  bool isTryOn = false;
  bool isLastHelmet = false;
  bool isPinned = false;  // by a wish, or kept by keepsWorn
};

enum class NoHelmet : std::uint8_t {
  neverTaped,
  offChart,    // no sheet of the helmets at hand has a size with odds of at least kTryOnOdds
  noneAtHand,  // there is such a size, and not one helmet of it can be given
  allTaken,    // there are such helmets, and fewer than heads for them
  setAside     // only helmets that were excluded, or that did not fit this head before
};
[[nodiscard]] std::string_view code(NoHelmet n);  // "never-taped", "off-chart", "none-at-hand", "all-taken", "set-aside"

struct UnmatchedHead {
  std::string athlete;
  NoHelmet why = NoHelmet::neverTaped;
  std::string sheet, size;  // the likeliest; size empty off every chart or without a tape
  TapeState tape = TapeState::missing;
};
struct SizeCount {
  std::string sheet, size;  // sheet: hash
  int count = 0;
  friend bool operator==(const SizeCount&, const SizeCount&) = default;
};
struct BarredUnit {
  std::string unit;
  std::optional<Bar> bar{};
};
struct RefusedPin {
  std::string athlete, unit;
  std::optional<Bar> bar{};
};

struct MatchWishes {
  std::vector<std::pair<std::string, std::string>> pins, exclusions;  // athlete, unit
  bool keepsWorn = false;      // whoever wears a helmet that can be given keeps it, unless it is a try-on
  std::optional<Day> through;  // certified through; the season's end when missing
  Length tem = fit::kDefaultTem;
};
struct MatchAnswer {
  Day through;
  bool isSeasonEndKnown = true;                     // false: no day was asked and no season end lies ahead, so that `through` is today
  std::vector<MatchPair> pairs;                     // by athlete's id
  std::vector<UnmatchedHead> unmatched;             // by athlete's id
  std::vector<std::string> spares;                  // units that could be given and were not, by id
  std::vector<BarredUnit> barred;                   // neither retired nor lost, by id
  std::vector<RefusedPin> refusedPins;              // the head was matched freely
  std::vector<SizeCount> shortBySize, spareBySize;  // by sheet, then in the chart's order; short: unmatched heads by likeliest size
  double cost = 0;
};
[[nodiscard]] Result<MatchAnswer> matchHelmets(const Views& views, const MatchWishes& wishes, Day today);

// What a pair would cost, whether it was chosen or not; the bar where it is not feasible at all.
struct PairAnswer {
  std::optional<MatchPair> pair;
  std::optional<Bar> bar{};
  bool isSetAside = false;  // excluded, or did not fit this head since its last tape
  bool isBelowOdds = false;
};
[[nodiscard]] Result<PairAnswer> explainPair(const Views& views, const MatchWishes& wishes, Day today, const std::string& athlete,
                                             const std::string& unit);

}  // namespace snugline::season
