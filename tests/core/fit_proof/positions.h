// SPDX-License-Identifier: Apache-2.0
// Purpose: a check's state as one small key, for walking all of them.
//
// The reduction, and why it loses nothing:
//  1. A mark that is not current is written as unseen. Neither take() nor assess() reads what a mark that is not current was
//     found to be (seeing replaces it; off, pressing and strip all ask for current first). gap and isInGroup are never read.
//  2. Air is written as at the low limit, at the high limit, or room: only "known and at or beyond the limit" is ever asked.
//  3. Turns of a mark and the ways used for it are read only while that mark is off, and only to take ways away from it. The
//     key leaves them out. Instead each position is judged with several such counters put in: none; three turns with no way
//     used, with every way used, and with all but one, for each mark that is off. Real counters lie among those or offer a
//     set of ways between them, so the walk (which follows every way that none takes away) meets every real check and more.
//     The test "counters of marks" below checks that nothing but the ways offered depends on them.
//  4. Whether a mark was seen off again is written for brow and ears only: nothing else begins with reseating.
//  5. Cold is one bit; whether air was added in it decides a flag beside fits and no step.
//  6. The turns of the check stay in the key as they are, 0 to 8.
// The long count ([.full]) puts in every subset of used ways, and walks real states with real counters.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/fit/guide.h"

namespace snugline::fit::proof {

struct Key {
  std::uint64_t low = 0, high = 0;
  friend bool operator==(const Key&, const Key&) = default;
};
struct KeyHash {
  std::size_t operator()(const Key& k) const {
    std::uint64_t h = k.low * 0x9E3779B97F4A7C15ULL ^ (k.high + 0x7F4A7C159E3779B9ULL) * 0xBF58476D1CE4E5B9ULL;
    return static_cast<std::size_t>(h ^ (h >> 29U));
  }
};

// A demo sheet, read from its file.
[[nodiscard]] gear::ModelSheet demoSheet(const std::string& id);
inline const std::vector<std::string> kDemoSheets{"alder-a1", "brant-b2", "cedar-c3"};

// First fit on wet hair, warm or cold, label good, all points sound, all questions yes: marks alone decide.
struct Ground {
  gear::ModelSheet sheet;
  Setup setup;
  State start;
  explicit Ground(gear::ModelSheet s, bool isCold = false);
  Ground(const Ground&) = delete;
  Ground& operator=(const Ground&) = delete;
};

[[nodiscard]] Key keyOf(const Ground& ground, const State& state);
[[nodiscard]] State stateOf(const Ground& ground, Key key);

// Every way in which a mark can be found.
[[nodiscard]] std::vector<MarkSeen> everyFinding(Mark mark);
// The change that an advice asks for, with the air counted only and with the gauge at the limit.
[[nodiscard]] std::vector<Adjusted> everyOutcome(const Ground& ground, const Advice& advice);
// Every change that the sheet knows, whether advised or not.
[[nodiscard]] std::vector<Adjusted> everyChange(const Ground& ground, const State& state);

[[nodiscard]] inline bool isOffNow(const MarkState& m) { return m.isCurrent && m.finding != Finding::snug; }
[[nodiscard]] inline int currentCount(const State& state) {
  int n = 0;
  for (const MarkState& m : state.marks) n += m.isCurrent ? 1 : 0;
  return n;
}

// Calls with counters put into the marks that are off; every: all subsets of the ways offered.
void forCounters(const Ground& ground, const State& base, bool every, const std::function<void(const State&)>& call);

}  // namespace snugline::fit::proof
