// SPDX-License-Identifier: Apache-2.0
#include "core/season/demand.h"

#include <algorithm>
#include <cmath>

namespace snugline::season {

namespace {

// One head adds at most this much to what is left out, so that a hundred thousand of them stay below kDemandDust.
constexpr double kDustOfOne = kDemandDust / 1e6;

}  // namespace

void Demand::addHead(double chance) {
  if (!(chance > 0)) return;
  chance = std::min(chance, 1.0);
  m_expected += chance;
  m_chances.push_back(0.0);
  for (std::size_t i = m_chances.size() - 1; i > 0; --i) m_chances[i] = m_chances[i] * (1 - chance) + m_chances[i - 1] * chance;
  m_chances[0] *= 1 - chance;
  trim();
}

void Demand::addNewcomers(double expected) {
  if (!(expected > 0)) return;
  m_expected += expected;
  // Poisson from its middle outwards, in logarithms, so that a large mean does not underflow.
  const auto chanceOf = [&](double n) { return std::exp(n * std::log(expected) - expected - std::lgamma(n + 1)); };
  auto low = static_cast<std::size_t>(expected), high = low;
  while (low > 0 && chanceOf(static_cast<double>(low - 1)) > kDustOfOne) --low;
  while (chanceOf(static_cast<double>(high + 1)) > kDustOfOne) ++high;
  std::vector<double> sum(m_chances.size() + high - low, 0.0);
  for (std::size_t n = low; n <= high; ++n) {
    const double chance = chanceOf(static_cast<double>(n));
    for (std::size_t i = 0; i < m_chances.size(); ++i) sum[i + n - low] += m_chances[i] * chance;
  }
  m_chances = std::move(sum);
  m_least += low;
  trim();
}

void Demand::trim() {
  while (m_chances.size() > 1 && m_chances.back() < kDustOfOne) m_chances.pop_back();
  std::size_t dust = 0;
  while (dust + 1 < m_chances.size() && m_chances[dust] < kDustOfOne) ++dust;
  if (dust == 0) return;
  m_chances.erase(m_chances.begin(), m_chances.begin() + static_cast<std::ptrdiff_t>(dust));
  m_least += dust;
}

double Demand::atMost(int heads) const {
  double sum = 0;
  for (std::size_t i = 0; i < m_chances.size() && static_cast<double>(m_least + i) <= heads; ++i) sum += m_chances[i];
  return std::min(sum, 1.0);
}

int Demand::enoughFor(double cover) const {
  double sum = 0;
  for (std::size_t i = 0; i < m_chances.size(); ++i) {
    sum += m_chances[i];
    if (sum >= cover - kDemandDust) return static_cast<int>(m_least + i);
  }
  return static_cast<int>(m_least + m_chances.size() - 1);
}

}  // namespace snugline::season
