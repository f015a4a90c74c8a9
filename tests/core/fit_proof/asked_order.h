// SPDX-License-Identifier: Apache-2.0
// Purpose: walks through all checks in the order in which the guide asks: the next mark found in every way, then every way
// that is advised, air counted or read at the limit, up to the last turn. What is expected of every step is counted here.
#pragma once

#include <string>
#include <unordered_set>
#include <vector>

#include "tests/core/fit_proof/positions.h"

namespace snugline::fit::proof {

struct Count {
  std::size_t positions = 0, transitions = 0, judged = 0, fits = 0, adjust = 0, doNotWear = 0, unfinished = 0, faults = 0;
  std::string firstFault;
  void expect(bool isTrue, const char* what) {
    if (isTrue) return;
    if (faults++ == 0) firstFault = what;
  }
};

// Strictly falls with each change, with warming, with each open mark seen and with the first time that one is seen off again: at most
// kStepsMost such steps from begin to the end, kStepsMost and kStepsOfTurn where it begins cold.
inline constexpr int kStepsOfMark = 3, kStepsOfTurn = kStepsOfMark * static_cast<int>(kMarkCount) + 1;
inline constexpr int kStepsMost = kTurnsPerCheck * kStepsOfTurn + kStepsOfMark * static_cast<int>(kMarkCount);
[[nodiscard]] int stepsLeft(const State& state);

// Every position reached in the asked order, in the order found.
[[nodiscard]] std::vector<Key> walkAskedOrder(const Ground& ground, Count& count, bool every);

// The same with real states, their counters and all, up to so many turns. Returns how many states there are; counts a
// fault for each whose key is not among the positions.
[[nodiscard]] std::size_t walkReal(const Ground& ground, Count& count, const std::vector<Key>& positions, int turns);

// That counters of marks that are not off are read by nobody, and that no counter decides what a step leads to.
void checkCounters(const Ground& ground, Count& count, const std::vector<Key>& positions, std::size_t every);

}  // namespace snugline::fit::proof
