// SPDX-License-Identifier: Apache-2.0
#include <map>
#include <random>

#include SNUGLINE_CATCH_HEADER
#include "core/season/slot_index.h"

using namespace snugline::season;

TEST_CASE("An index of slots finds what a map finds, through puts and drops, growth and shared keys") {
  std::mt19937 random(20261125);
  // 300 athletes share 40 keys, one of them zero; an athlete stands in the slot of its number.
  const auto keyOf = [](std::uint32_t athlete) { return std::uint64_t{athlete % 40} << (athlete % 2 == 0 ? 0 : 32); };
  SlotIndex index;
  std::map<std::uint32_t, bool> isIn;
  for (int step = 0; step < 20000; ++step) {
    const auto athlete = static_cast<std::uint32_t>(random() % 300);
    if (isIn[athlete]) {
      index.drop(keyOf(athlete), athlete);
    } else {
      index.put(keyOf(athlete), athlete);
    }
    isIn[athlete] = !isIn[athlete];
    const auto asked = static_cast<std::uint32_t>(random() % 300);
    const auto found = index.find(keyOf(asked), [&](std::uint32_t slot) { return slot == asked; });
    REQUIRE(found.has_value() == isIn[asked]);
    if (found) REQUIRE(*found == asked);
  }
  std::size_t count = 0;
  for (const auto& [athlete, isThere] : isIn) count += isThere ? 1 : 0;
  CHECK(index.size() == count);
  index.clear();
  CHECK(index.size() == 0);
  CHECK_FALSE(index.find(0, [](std::uint32_t) { return true; }));
}

TEST_CASE("An empty index of slots finds and drops nothing") {
  SlotIndex index;
  CHECK_FALSE(index.find(7, [](std::uint32_t) { return true; }));
  index.drop(7, 0);
  index.reserve(1000);
  CHECK_FALSE(index.find(7, [](std::uint32_t) { return true; }));
  CHECK(index.size() == 0);
}
