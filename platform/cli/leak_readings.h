// SPDX-License-Identifier: Apache-2.0
// Purpose: readings of one bladder from a spreadsheet's file, for `snug leak`. Columns in any order, named in the first row: time; kpa or
// psi; celsius or fahrenheit; elevation_m, elevation_ft or ambient_kpa (absolute, a barometer's); and where wanted refill and on_head, 0 or
// 1. Other columns are let be. Comma, semicolon or tab; decimal point or comma; encodings as for rosters.
// A cell that cannot be read or believed refuses the whole file: nothing is guessed. Errors: those of the roster's reader, of quantities
// and times, missingKey for a column that is not there; the place is the file, its line and the column. Thread: one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/air/leak.h"

namespace snugline::cli {

inline constexpr std::size_t kReadingsLimitBytes = 4 * 1024 * 1024;  // ours; ten thousand readings are under one

struct ReadingsFile {
  std::vector<air::LeakReading> readings;
  std::vector<std::size_t> lines;  // of each reading
};
[[nodiscard]] Result<ReadingsFile> parseReadings(std::string_view bytes, const std::string& file);

}  // namespace snugline::cli
