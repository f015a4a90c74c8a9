// SPDX-License-Identifier: Apache-2.0
// The slope of all pairs and its interval by ranks, in the same order of operations as scipy.stats.theilslopes of SciPy 1.10, so that the
// answers agree to the last bits and not only nearly.
#include <algorithm>
#include <array>
#include <bit>
#include <cmath>

#include "core/air/leak.h"

namespace snugline::air {

namespace {

using Runs = std::span<const std::vector<Point>>;

constexpr double kTwoSided95 = 1.959963984540054;  // standard normal quantile of 0.975

template <typename Visit>
void eachSlope(Runs runs, Visit visit) {
  for (const auto& run : runs) {
    for (std::size_t i = 0; i < run.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        const double weeks = run[i].week - run[j].week;
        if (weeks > 0) {
          visit((run[i].pa - run[j].pa) / weeks);
        } else if (weeks < 0) {
          visit((run[j].pa - run[i].pa) / -weeks);
        }
      }
    }
  }
}

// Times of equal values: k (k-1) (2k+5) summed over groups.
double tieTerm(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  double sum = 0;
  for (std::size_t from = 0; from < values.size();) {
    std::size_t to = from;
    while (to < values.size() && values[to] == values[from]) ++to;
    const auto k = static_cast<double>(to - from);
    sum += k * (k - 1) * (2 * k + 5);
    from = to;
  }
  return sum;
}

// Sen (1968), equation 2.6, for one run; Hirsch, Slack and Smith (1982) sum it over seasons, here over runs.
double variance(const std::vector<Point>& run) {
  std::vector<double> weeks, pascals;
  weeks.reserve(run.size());
  pascals.reserve(run.size());
  for (const Point& p : run) {
    weeks.push_back(p.week);
    pascals.push_back(p.pa);
  }
  const auto n = static_cast<double>(run.size());
  return (n * (n - 1) * (2 * n + 5) - tieTerm(std::move(weeks)) - tieTerm(std::move(pascals))) / 18.0;
}

// Slopes by rank. Few are kept and sorted as far as needed; many are counted by 16 bits at a time, highest first.
class Ranked {
 public:
  Ranked(Runs runs, std::size_t count) : m_runs(runs), m_count(count) {
    if (count > kSlopesKept) return;
    m_slopes.reserve(count);
    eachSlope(runs, [this](double s) { m_slopes.push_back(s); });
  }

  double at(std::size_t rank) {
    if (m_count > kSlopesKept) return counted(rank);
    const auto place = m_slopes.begin() + static_cast<std::ptrdiff_t>(rank);
    std::nth_element(m_slopes.begin(), place, m_slopes.end());
    return *place;
  }

 private:
  static constexpr unsigned kStepBits = 16;
  // Doubles in the order of their values, as whole numbers (IEEE 754: sign and magnitude).
  static std::uint64_t key(double v) {
    const auto bits = std::bit_cast<std::uint64_t>(v);
    return (bits >> 63U) != 0 ? ~bits : bits | (std::uint64_t{1} << 63U);
  }
  static double value(std::uint64_t k) { return std::bit_cast<double>((k >> 63U) != 0 ? k & ~(std::uint64_t{1} << 63U) : ~k); }

  double counted(std::size_t rank) const {
    std::uint64_t prefix = 0;
    for (unsigned shift = 64 - kStepBits;; shift -= kStepBits) {
      std::vector<std::uint32_t> counters(std::size_t{1} << kStepBits, 0);
      const bool isFirst = shift == 64 - kStepBits;
      eachSlope(m_runs, [&](double s) {
        const std::uint64_t k = key(s);
        if (isFirst || (k >> (shift + kStepBits)) == prefix) ++counters[(k >> shift) & 0xFFFFU];
      });
      std::uint64_t digit = 0;
      while (rank >= counters[digit]) rank -= counters[digit++];
      prefix = (prefix << kStepBits) | digit;
      if (shift == 0) return value(prefix);
    }
  }

  Runs m_runs;
  std::size_t m_count;
  std::vector<double> m_slopes;
};

}  // namespace

Slope theilSen(Runs runs) {
  std::size_t count = 0;
  double spread = 0;
  eachSlope(runs, [&](double) { ++count; });
  for (const auto& run : runs) spread += variance(run);
  Slope slope;
  slope.hasSlope = count > 0;
  if (count == 0) return slope;

  Ranked ranked(runs, count);
  slope.perWeek = count % 2 == 1 ? ranked.at(count / 2) : (ranked.at(count / 2 - 1) + ranked.at(count / 2)) / 2.0;
  const auto n = static_cast<double>(count);
  const double reach = kTwoSided95 * std::sqrt(std::max(spread, 0.0));
  // Halves go to the even neighbour, as in NumPy; the mode of rounding is never changed here.
  const double upper = std::nearbyint((n + reach) / 2.0);
  const double lower = std::nearbyint((n - reach) / 2.0) - 1;
  slope.hasInterval = spread >= 0 && lower >= 0 && upper <= n - 1;
  slope.low = ranked.at(static_cast<std::size_t>(std::max(lower, 0.0)));
  slope.high = ranked.at(static_cast<std::size_t>(std::min(upper, n - 1)));
  return slope;
}

}  // namespace snugline::air
