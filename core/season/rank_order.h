// SPDX-License-Identifier: Apache-2.0
// Purpose: the order of rank keys. Least digit first, a byte at a time, bytes that are the same in all keys left out: linear, and it keeps
// the order of equal keys. Thread: plain values.
#pragma once

#include <cstdint>
#include <vector>

#include "core/season/board.h"

namespace snugline::season {

// Places of the keys, the first in rank first.
[[nodiscard]] std::vector<std::uint32_t> orderOf(const std::vector<RankKey>& ranks);

}  // namespace snugline::season
