// SPDX-License-Identifier: Apache-2.0
// Purpose: does a bladder lose air. Each reading is carried to 20 C as a rigid bladder, minus one standard atmosphere (bladder.h); the
// slope is the median of the slopes of all pairs of readings (Theil 1950, Sen 1968), with Sen's 95 % interval by ranks.
// A refill starts a new run, and readings on a head and off are runs of their own: pairs are made within a run only. Slopes of all runs
// are pooled, and the variance of the rank statistic is summed over them, as in the seasonal slope of Hirsch, Slack and Smith (1982).
// For one run the answer is that of scipy.stats.theilslopes.
// The interval needs its ranks to exist: five readings where there is one run. Without it nothing is called leaking.
// Units: Pa a week, negative when air is lost. Readings below zero gauge are used. Time O(n^2). Memory: slopes are kept up to
// kSlopesKept; beyond that they are worked out anew for each of four passes that count them by 16 bits, and need 256 KiB of counters
// for each rank sought. At most kReadingsMost readings; the oldest beyond that are left out and said so.
// Errors: none; what cannot be used is left out with its reason. Thread: pure functions.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/air/bladder.h"
#include "core/quantity/time.h"

namespace snugline::air {

struct LeakReading {
  Instant at;
  Pressure gauge;
  Temperature temperature;
  Pressure ambient = kStandardAtmosphere;  // absolute
  bool isRefill = false;                   // air was put in or let out just before this reading; never guessed
  bool isOnHead = false;
};

inline constexpr Pressure kLeakAllowanceUnsaid{500};   // a week, where no sheet is named (ours)
inline constexpr std::size_t kReadingsMost = 10'000;   // a reading a day for 27 years (ours)
inline constexpr std::size_t kSlopesKept = 1'000'000;  // 8 MB (ours)

enum class LeftOut : std::uint8_t {
  notInOrder,    // older than a reading before it
  beforeRefill,  // older than the last refill before it
  notBelieved,   // temperature, ambient or pressure outside what is believed
  onlyOne,       // alone in its run: there is nothing to compare it with
  beyondTheMost  // older than the latest kReadingsMost
};
[[nodiscard]] std::string_view code(LeftOut why);  // "not-in-order", "before-refill", "not-believed", "only-one", "too-many"

struct LeftOutReading {
  std::size_t index = 0;  // in the readings handed in
  LeftOut why = LeftOut::notInOrder;
  friend bool operator==(const LeftOutReading&, const LeftOutReading&) = default;
};

// For a plot: a reading as carried, and the run that it belongs to.
struct CarriedReading {
  std::size_t index = 0;
  Instant at;
  double pa = 0;        // carried gauge
  std::size_t run = 0;  // in Leak::runs
};
// The line through a run: medianPa + paPerWeek * (weeks since medianAt); its band with low and high in place of paPerWeek.
struct LeakRun {
  std::size_t count = 0;
  bool isOnHead = false;
  Instant medianAt;
  double medianPa = 0;
};

struct Leak {
  bool hasSlope = false;     // at least one pair
  bool hasInterval = false;  // the 95 % ranks exist; without them low and high are only the lowest and highest slope
  double paPerWeek = 0, low = 0, high = 0;
  bool isLeaking = false;  // hasInterval and high < -allowance
  std::size_t used = 0;
  std::vector<LeftOutReading> leftOut;  // by index
  std::vector<CarriedReading> readings;
  std::vector<LeakRun> runs;
};

// Readings in the order in which they were written down. Where times contradict that order, the fewest are left out that leave the
// rest in order, a refill counting twice. A refill that is left out still parts the runs.
[[nodiscard]] Leak leakOf(std::span<const LeakReading> readings, Pressure allowancePerWeek = kLeakAllowanceUnsaid);

// The number alone, for runs that are sorted already; what the board asks for each unit. x in weeks, y in Pa.
struct Point {
  double week = 0, pa = 0;
};
struct Slope {
  bool hasSlope = false, hasInterval = false;
  double perWeek = 0, low = 0, high = 0;
};
[[nodiscard]] Slope theilSen(std::span<const std::vector<Point>> runs);

}  // namespace snugline::air
