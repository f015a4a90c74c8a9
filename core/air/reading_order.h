// SPDX-License-Identifier: Apache-2.0
// Purpose: which readings to keep so that the rest is in order of time: the heaviest non-decreasing subsequence, found in
// O(n log n) with a tree of greatest sums (Fenwick 1994). For core/air's own sources. Thread: pure function.
#pragma once

#include <cstdint>
#include <vector>

namespace snugline::air {

struct Stamp {
  std::int64_t ms = 0;
  int weight = 1;  // above zero
};
// For each stamp whether it is kept. Equal weights: what was written first stays.
[[nodiscard]] std::vector<bool> inOrder(const std::vector<Stamp>& stamps);

}  // namespace snugline::air
