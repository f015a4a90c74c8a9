// SPDX-License-Identifier: Apache-2.0
// Purpose: the bare arithmetic of matching: heads to helmets at the least cost, as a flow. Helmets of one kind (sheet and size) cost a head
// the same but for their condition, so that a head bids for kinds and not for helmets; bids for one helmet alone stand beside those.
// First as many heads as can be, then the least sum. Costs are whole billionths, so that nothing depends on rounding; equal sums are
// settled by the order in which heads and helmets are handed in, and the same question has the same answer on every device.
// Solver: LEMON's network simplex. Measured against scipy.optimize.linear_sum_assignment: tests/external, tests/bench.
// Ranges: costs 0 to kCostHighest, counts up to kAssignmentMost. Thread: plain function.
#pragma once

#include <cstdint>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::season {

inline constexpr std::int64_t kCostUnit = 1'000'000'000;        // one unit of cost, in billionths
inline constexpr std::int64_t kCostHighest = 1000 * kCostUnit;  // ours: room for any table of terms
inline constexpr int kAssignmentMost = 100'000;                 // heads or helmets; keeps every sum within 64 bits

struct AssignmentProblem {
  struct Helmet {
    int kind = -1;              // whose bidders may get it; -1: only those with a bid of their own for it
    std::int64_t standing = 0;  // on top of a bid for its kind
  };
  struct Bid {
    int head = 0;
    int target = 0;  // kind, or helmet
    std::int64_t cost = 0;
  };
  int heads = 0;
  int kinds = 0;
  std::vector<Helmet> helmets;
  std::vector<Bid> kindBids;    // at most one for a head and kind
  std::vector<Bid> helmetBids;  // all of the cost in it; below what the same head pays for that helmet by its kind
};

// The helmet of each head, -1 for none. Errors: outOfRange, outOfMemory, internal.
[[nodiscard]] Result<std::vector<int>> assign(const AssignmentProblem& problem);

}  // namespace snugline::season
