// SPDX-License-Identifier: Apache-2.0
// Purpose: the ranges of a model sheet, as MODEL_SHEET.md states them, for the reader and the rules of a draft. They keep slips of the
// keyboard out (ours); only the certification interval, the straps and the brow target come from elsewhere, and are named there.
// Thread: constants.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "core/gear/sheet_draft.h"

namespace snugline::gear {

namespace limits {

inline constexpr Figure kFormat = 1;
inline constexpr std::size_t kIdLength = 40;
inline constexpr std::size_t kNameLength = 60;
inline constexpr std::size_t kSizeNameLength = 12;
inline constexpr std::size_t kSentenceLength = 300;
inline constexpr std::size_t kCautionsLength = 2000;
inline constexpr std::size_t kSizeCount = 20;
inline constexpr std::size_t kStepCount = 20;
inline constexpr std::size_t kQuestionCount = 12;
inline constexpr std::int64_t kBrowTarget = 25'400;  // 1 in above the eyebrows: ASTM STP1177 (1997); AAP; NATA
inline constexpr std::int64_t kStrapsFew = 4, kStrapsMany = 6;

struct Range {
  std::string_view key;
  FigureUnit unit;
  std::int64_t lowest, highest;
};
inline constexpr std::array<Range, 14> kRanges{{{"low_um", FigureUnit::um, 300'000, 800'000},
                                                {"high_um", FigureUnit::um, 300'000, 800'000},
                                                {"start_pa", FigureUnit::pa, 0, 200'000},
                                                {"low_pa", FigureUnit::pa, 0, 200'000},
                                                {"high_pa", FigureUnit::pa, 0, 200'000},
                                                {"steps_um", FigureUnit::um, 1'000, 100'000},
                                                {"fitted_um", FigureUnit::um, 1'000, 100'000},
                                                {"brow_low_um", FigureUnit::um, 0, 100'000},
                                                {"brow_high_um", FigureUnit::um, 0, 100'000},
                                                {"strap_points", FigureUnit::points, kStrapsFew, kStrapsMany},
                                                {"certification_months", FigureUnit::months, 1, 60},
                                                {"age_limit_months", FigureUnit::months, 0, 240},
                                                {"change_allowance_pa", FigureUnit::pa, 1, 100'000},
                                                {"leak_per_week_pa", FigureUnit::pa, 1, 100'000}}};

// Names that the guide's steps, marks and openings already have; a question under one of them could not be told apart.
inline constexpr std::array<std::string_view, 13> kTaken{"stop", "hair",   "fitted", "done",  "brow",  "ears", "nape",
                                                         "chin", "straps", "jaw",    "crown", "sides", "hold"};

}  // namespace limits
}  // namespace snugline::gear
