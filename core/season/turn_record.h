// SPDX-License-Identifier: Apache-2.0
// Purpose: what the record keeps of seasons that were closed, of helmets collected in and of photos of faults. Records hold integers and
// text only. Thread: plain values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/gear/points.h"
#include "core/quantity/time.h"
#include "core/season/stamp.h"

namespace snugline::season {

struct SeasonRecord {
  std::string season;                // "2026"
  std::optional<Day> start, end;     // as they stood when it was closed
  Day closed;                        // the day it was closed
  std::vector<std::string> missing;  // units not collected by then
  Stamp stamp;
  friend bool operator==(const SeasonRecord&, const SeasonRecord&) = default;
};
// A helmet handed in at the end of a season.
struct CollectedRecord {
  std::string season;
  Stamp stamp;
  friend bool operator==(const CollectedRecord&, const CollectedRecord&) = default;
};
// A picture of gear, kept beside the Book under the hash of its bytes.
struct PhotoRecord {
  std::string fact;
  std::string photo;              // BLAKE2b-256 of the file's bytes, hex
  std::int64_t bytes = 0;         // length of the file
  int width = 0, height = 0;      // pixels
  std::optional<gear::Point> of;  // the point that it shows; nothing: of the unit
  std::string hold;               // fact of the hold that it stands for; may be empty
  std::string what;               // in the words of who took it
  Stamp stamp;
  friend bool operator==(const PhotoRecord&, const PhotoRecord&) = default;
};
// The last time that a sheet was given a successor.
struct ReplacedRecord {
  std::string by;  // hash of the sheet that counts from then on
  Stamp stamp;
  friend bool operator==(const ReplacedRecord&, const ReplacedRecord&) = default;
};

}  // namespace snugline::season
