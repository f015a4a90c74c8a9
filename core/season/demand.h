// SPDX-License-Identifier: Apache-2.0
// Purpose: how many heads of one size next season may bring, as a distribution: each returning head comes with its own chance, newcomers
// come as a Poisson number. The newsvendor quantile: the fewest helmets that are enough with at least the chosen cover (for that size).
// Exact sums, kept where they matter: what lies beyond is below kDemandDust in all. Thread: plain values.
#pragma once

#include <cstddef>
#include <vector>

namespace snugline::season {

inline constexpr double kDemandDust = 1e-13;  // ours

class Demand {
 public:
  void addHead(double chance);         // 0..1
  void addNewcomers(double expected);  // >= 0, Poisson
  [[nodiscard]] double expected() const { return m_expected; }
  [[nodiscard]] double atMost(int heads) const;     // chance that no more than this many come
  [[nodiscard]] int enoughFor(double cover) const;  // cover in (0, 1)

 private:
  void trim();
  std::vector<double> m_chances{1.0};  // of m_least, m_least + 1, …
  std::size_t m_least = 0;
  double m_expected = 0;
};

}  // namespace snugline::season
