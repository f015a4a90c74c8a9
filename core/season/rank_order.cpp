// SPDX-License-Identifier: Apache-2.0
#include "core/season/rank_order.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <numeric>
#include <utility>

namespace snugline::season {

std::vector<std::uint32_t> orderOf(const std::vector<RankKey>& ranks) {
  constexpr std::size_t kFew = 512;  // below, comparing costs less
  std::vector<std::uint32_t> order(ranks.size());
  std::iota(order.begin(), order.end(), 0U);
  if (ranks.size() < kFew) {
    std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) { return ranks[a] < ranks[b]; });
    return order;
  }
  std::vector<std::uint32_t> other(ranks.size());
  constexpr unsigned kByteBits = 8;
  for (const auto field : {&RankKey::n, &RankKey::jersey, &RankKey::major}) {
    std::uint64_t differing = 0;
    for (const RankKey& rank : ranks) differing |= rank.*field ^ ranks.front().*field;
    for (unsigned shift = 0; shift < sizeof differing * kByteBits; shift += kByteBits) {
      if ((differing >> shift & 0xFF) == 0) continue;
      std::array<std::uint32_t, 256> starts{};
      for (const RankKey& rank : ranks) ++starts[rank.*field >> shift & 0xFF];
      std::uint32_t start = 0;
      for (std::uint32_t& each : starts) start += std::exchange(each, start);
      for (const std::uint32_t slot : order) other[starts[ranks[slot].*field >> shift & 0xFF]++] = slot;
      order.swap(other);
    }
  }
  return order;
}

}  // namespace snugline::season
