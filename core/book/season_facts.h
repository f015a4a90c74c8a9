// SPDX-License-Identifier: Apache-2.0
// Purpose: bodies of facts about the turn of a season and photos of faults (BOOK_FORMAT.md). Part of fact.h. Thread: plain values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/gear/points.h"
#include "core/quantity/time.h"

namespace snugline::book {

inline constexpr std::int64_t kPhotoBytesMost = 4 * 1024 * 1024;
inline constexpr int kPhotoSideMost = 16384;  // pixels

struct SeasonClosed {
  std::string season;
  Day day;
  std::vector<std::string> missing{};  // units not collected
};                                     // about the team; the last one of a season counts
struct UnitCollected {
  std::string season;
  std::string athlete{};  // from whom; empty: found without anybody
  std::string where{};    // the shelf it went to
};
struct PhotoTaken {
  std::string photo;  // BLAKE2b-256 of the file's bytes, 64 hex digits
  std::int64_t bytes = 0;
  int width = 0, height = 0;
  std::optional<gear::Point> of{};
  std::string hold{}, what{};
};  // about the unit

}  // namespace snugline::book
