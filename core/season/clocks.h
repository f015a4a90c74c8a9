// SPDX-License-Identifier: Apache-2.0
// Purpose: whose clock cannot be right, told from what was recorded and from the time here; and what is not believed for that. Wall times
// are shown and never trusted: a record counts whatever its time says when this device wrote it itself, and else unless its day is beyond
// tomorrow. Thread: plain functions.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

inline constexpr std::int64_t kOtherClockMs = 24LL * 60 * 60 * 1000;  // ours: further ahead than any time zone or mistaken half of the day
inline constexpr std::int64_t kOwnClockMs = 5LL * 60 * 1000;          // ours: what setting a clock by the network may take back
inline constexpr int kBelievedDaysAhead = 1;                          // ours: another device may be past midnight already

// A device with an entry from later than now by more than that.
struct ClockDoubt {
  std::string device;
  bool isOwn = false;
  Instant latest;
  std::string who;  // of that entry; may be empty
  friend bool operator==(const ClockDoubt&, const ClockDoubt&) = default;
};
[[nodiscard]] std::vector<ClockDoubt> clockDoubts(const Views& views, Instant now);  // this device first, then by device

// Whether what was recorded counts as done. fact: "device:n".
[[nodiscard]] bool isBelieved(const Views& views, Instant at, const std::string& fact, Day today);

}  // namespace snugline::season
