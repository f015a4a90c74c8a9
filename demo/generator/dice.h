// SPDX-License-Identifier: Apache-2.0
// Purpose: chance that falls the same way everywhere for the same seed. The standard library's distributions differ from one library to
// the next, so only whole numbers are used here. Generator: SplitMix64 (Steele, Lea, Flood, 2014).
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace snugline::demo {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : m_state(seed) {}
  std::uint64_t next() {
    m_state += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31);
  }
  // 0 .. count - 1; the bias is far below anything that a demo shows.
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
  int between(int low, int high) { return low + static_cast<int>(below(static_cast<std::size_t>(high - low + 1))); }
  bool isOneIn(std::size_t count) { return below(count) == 0; }
  bool isPercent(int percent) { return below(100) < static_cast<std::size_t>(percent); }
  // About normal with mean 0 and the given spread: twelve even throws.
  int nearNormal(int spread) {
    std::int64_t sum = 0;
    for (int i = 0; i < 12; ++i) sum += static_cast<std::int64_t>(below(10001)) - 5000;
    const std::int64_t scaled = sum * spread;
    return static_cast<int>((scaled + (scaled < 0 ? -5000 : 5000)) / 10000);
  }
  template <typename T>
  void shuffle(std::vector<T>& items) {
    for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[below(i)]);
  }
  template <typename Range>
  const auto& oneOf(const Range& items) {
    return items[below(items.size())];
  }

 private:
  std::uint64_t m_state;
};

}  // namespace snugline::demo
