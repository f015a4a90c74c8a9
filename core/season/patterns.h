// SPDX-License-Identifier: Apache-2.0
// Purpose: what is said again and again: the same place by one athlete, or by several who wear one model. A hint where to look for a
// cause that a change of pads does not reach; it judges equipment, never who said it. What was said about feeling unwell or a hit takes no
// part. Thread: plain values, pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

inline constexpr int kAgainTimes = 3;     // days on which one athlete said the same place (ours)
inline constexpr int kAgainAthletes = 3;  // athletes who said the same place in one model (ours)

// How often the place of this word was said by this athlete up to it, itself included, and on which day first. Counted by days: whoever
// touches a place twice on one visit said it once. Words before `from` (the season's start) are left out. Zero times without a place.
struct SaidBefore {
  int times = 0;
  Day since;
  friend bool operator==(const SaidBefore&, const SaidBefore&) = default;
};
[[nodiscard]] SaidBefore saidBefore(const AthleteRecord& athlete, const SaidRecord& said, std::optional<Day> from);

enum class PatternKind : std::uint8_t { oneAthlete, oneModel };
struct Pattern {
  PatternKind kind = PatternKind::oneAthlete;
  std::string athlete;  // of one athlete
  std::string sheet;    // hash, of one model
  fit::Mark where = fit::Mark::brow;
  fit::Side side = fit::Side::both;  // of one athlete; a model is asked about both its sides at once
  int times = 0;                     // days of one athlete; athletes of one model
  int tight = 0, loose = 0;          // words that said so
  Day first, last;
  bool isOpen = false;                // some of it is not answered yet
  std::vector<std::string> athletes;  // who said it, each once, by jersey
  friend bool operator==(const Pattern&, const Pattern&) = default;
};
// Open ones first, then the most often said, then the last said; then model before athlete, place, id. Athletes off the roster have no
// pattern of their own and count for their model. Words after today are a wrong clock and wait for their day.
[[nodiscard]] std::vector<Pattern> saidAgain(const Views& views, Day today);

}  // namespace snugline::season
