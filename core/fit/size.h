// SPDX-License-Identifier: Apache-2.0
// Purpose: from tape readings to a shell size, with its odds. All rules: mean for two readings, median for three or more;
// spread over 5 mm asks for another; standard error = technical error of measurement / sqrt(k); odds of a size = normal
// mass of its band; overlaps split at their middle; gaps and everything off the chart are "none"; best odds below 0.8 are
// "between sizes" (thresholds: ours). While another reading is asked for no size is guessed. TEM = sqrt(sum d^2 / 2N) over pairs in the
// Book once 20 pairs exist, without those that stand apart; before that 3 mm (value from memory, adjustable).
// Tape: 25.4 mm above the eyebrows, level, round the back (NATA infographic; common practice).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/gear/model_sheet.h"

namespace snugline::fit {

inline constexpr Length kDefaultTem{3000};    // memory
inline constexpr Length kTemLowest{289};      // a tape read to 1 mm is no surer than 1/sqrt(12) mm, whatever the pairs say
inline constexpr Length kTemHighest{30000};   // ours: beyond this it is not a tape reading
inline constexpr Length kRetakeSpread{5000};  // ours
inline constexpr double kBetweenBelow = 0.8;  // ours
inline constexpr int kPairsForOwnTem = 20;    // ours
inline constexpr double kApart = 3;           // standard deviations, judged by the median: Hampel's identifier (memory)
inline constexpr Length kTapeLowest{400000};  // a head outside 400..700 mm is refused as a typing slip (ours)
inline constexpr Length kTapeHighest{700000};

struct SizeOdds {
  std::string size;
  double odds = 0;   // 0..1
  Length low, high;  // band after splitting overlaps
};

struct SizeAnswer {
  std::string size;       // most likely; empty when "none" is the likeliest, and while isRetake
  std::string startWith;  // between sizes: of the two likeliest the one whose printed middle is nearer; else same as size
  Length circumference;
  Length uncertainty;          // one standard error
  std::vector<SizeOdds> odds;  // in the sheet's order; while isRetake as if the readings were right, and not to be shown
  double none = 0;             // off the chart or in a gap; odds and none sum to 1
  bool isBetween = false;      // the best odds, "none" included, are below kBetweenBelow
  bool isRetake = false;       // readings disagree by more than kRetakeSpread
};

// readings: 1..20, each within kTapeLowest..kTapeHighest; tem: kTemLowest..kTemHighest. Errors: outOfRange.
[[nodiscard]] Result<SizeAnswer> sizeOf(const gear::ModelSheet& sheet, const std::vector<Length>& readings, Length tem = kDefaultTem);

// Technical error from pairs of repeated readings of one head, brought into kTemLowest..kTemHighest; nothing below
// kPairsForOwnTem pairs. A pair that lies farther apart than kApart says counts for nothing: one wrong reading is not everybody's error.
struct TapePair {
  Length first, second;
};
[[nodiscard]] std::optional<Length> technicalError(const std::vector<TapePair>& pairs);

// Heads of an age: Dutch boys 1997 to 18, ANSUR II men from 19 on. Middle is the median; below and above it the spread as one standard
// deviation, from the 5th and from the 95th percentile, for heads are not quite even. No table of girls is at hand.
struct HeadsOfAge {
  Length middle, below, above;
};
[[nodiscard]] HeadsOfAge headsOfAge(int ageYears);

// Is this head plausible for this age? Bounds: ANSUR II adults (NATICK/TR-15/007, 2014) and Dutch boys 1997 (R package
// mice), widened to four standard deviations; outside is questioned, never refused. ageYears unknown: adult bounds joined with those of
// age 10.
enum class HeadDoubt : std::uint8_t { none, tooSmall, tooLarge };
[[nodiscard]] HeadDoubt doubt(Length circumference, std::optional<int> ageYears);

}  // namespace snugline::fit
