// SPDX-License-Identifier: Apache-2.0
#include "core/air/reading_order.h"

#include <algorithm>
#include <cstddef>

namespace snugline::air {

namespace {

constexpr std::size_t kNobody = SIZE_MAX;

// The heaviest chain that ends at a time no later than a rank.
class GreatestSums {
 public:
  struct Chain {
    std::int64_t weight = 0;
    std::size_t end = kNobody;
  };
  explicit GreatestSums(std::size_t ranks) : m_tree(ranks + 1) {}
  [[nodiscard]] Chain upTo(std::size_t rank) const {
    Chain best;
    for (std::size_t i = rank + 1; i > 0; i -= i & (~i + 1)) best = better(best, m_tree[i]);
    return best;
  }
  void put(std::size_t rank, Chain chain) {
    for (std::size_t i = rank + 1; i < m_tree.size(); i += i & (~i + 1)) m_tree[i] = better(m_tree[i], chain);
  }
  static Chain better(Chain a, Chain b) { return b.weight > a.weight || (b.weight == a.weight && b.end < a.end) ? b : a; }

 private:
  std::vector<Chain> m_tree;
};

}  // namespace

std::vector<bool> inOrder(const std::vector<Stamp>& stamps) {
  const auto earlier = [](const Stamp& a, const Stamp& b) { return a.ms < b.ms; };
  if (std::is_sorted(stamps.begin(), stamps.end(), earlier)) return std::vector<bool>(stamps.size(), true);
  std::vector<std::int64_t> times;
  times.reserve(stamps.size());
  for (const Stamp& s : stamps) times.push_back(s.ms);
  std::sort(times.begin(), times.end());
  times.erase(std::unique(times.begin(), times.end()), times.end());

  GreatestSums sums(times.size());
  std::vector<std::size_t> before(stamps.size(), kNobody);
  for (std::size_t i = 0; i < stamps.size(); ++i) {
    const auto rank = static_cast<std::size_t>(std::lower_bound(times.begin(), times.end(), stamps[i].ms) - times.begin());
    const GreatestSums::Chain chain = sums.upTo(rank);
    before[i] = chain.end;
    sums.put(rank, {chain.weight + stamps[i].weight, i});
  }
  std::vector<bool> isKept(stamps.size(), false);
  for (std::size_t i = sums.upTo(times.size() - 1).end; i != kNobody; i = before[i]) isKept[i] = true;
  return isKept;
}

}  // namespace snugline::air
