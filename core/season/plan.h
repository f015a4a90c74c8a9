// SPDX-License-Identifier: Apache-2.0
// Purpose: the year in helmets: what lapses when, what goes out for recertification and in which batches, and what to order for the next
// season. Nothing is kept and nothing is spent: an answer to the wishes handed in, with the assumptions in figures beside it.
// Orders: next season's heads of a size = returning heads (each with its chance to return times its size odds, the tape grown to the middle
// of that season) + newcomers; enough = newsvendor quantile at the chosen cover, for each size on its own; order = enough - good ones.
// A head stays with the model it wears; heads without a helmet and newcomers go by one model, named or the most frequent.
// Renewals are reckoned as the trade marks them: a label with the year in which the helmet comes back, judged by its earliest end.
// Ranges: those beside each wish. Errors: outOfRange (place: the wish), notFound (sheet), outOfMemory, internal. Thread: plain functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/fit/size.h"
#include "core/season/matching.h"
#include "core/season/send_schedule.h"
#include "core/season/tape.h"

namespace snugline::season {

inline constexpr int kTurnaroundDays = 42;    // ours: six weeks
inline constexpr double kCover = 0.95;        // ours
inline constexpr double kReturning = 0.85;    // ours
inline constexpr int kNewcomerAge = 14;       // ours: first year of high school
inline constexpr int kLastAge = 18;           // ours: last year of high school
inline constexpr Length kGrowthSpread{4000};  // ours: standard deviation, for each year grown
inline constexpr int kSeasonStartMonth = 8;   // ours, with kSeasonEndMonth: where the Book does not say, 1 August to 30 November
inline constexpr int kSeasonEndMonth = 11;

struct PlanWishes {
  int season = 0;                    // the season that runs or ran last, 1990..2198; orders are for the next
  int turnaround = kTurnaroundDays;  // days, 1..366
  double cover = kCover;             // 0.5..0.9999, for each size
  double returning = kReturning;     // 0..1, chance of each head not past lastAge
  std::optional<double> newcomers;   // 0..100000 expected; missing: as many as are expected to leave
  int newcomerAge = kNewcomerAge;    // 5..60
  int lastAge = kLastAge;            // 5..99, reached in the year of the next season
  std::string newSheet;              // hash; empty: the model of most helmets
  Length tem = fit::kDefaultTem;
};

enum class LapseWhen : std::uint8_t { before, thisSeason, betweenSeasons, nextSeason };
[[nodiscard]] std::string_view code(LapseWhen w);  // "before", "this-season", "between-seasons", "next-season"
struct Lapsing {
  std::string unit, sheet, size;
  gear::DaySpan lastGood;
  LapseWhen when = LapseWhen::before;  // before: today it is no longer good
  bool isRenewable = true;             // false: its age limit comes before the end of the next season
  std::optional<Bar> bar{};            // what else keeps it: held, sent out, ...; such a unit is in no batch
};

struct Batch {
  Day send, back;
  std::vector<std::string> units;  // by id
  std::vector<SizeCount> sizes;
};
struct SizeMissing {
  std::string sheet, size;
  Day first, last;
  int most = 0;
};
struct Order {
  std::string sheet, size;
  double returning = 0, newcomers = 0;  // heads expected
  int enough = 0;                       // helmets that cover them
  int good = 0;                         // of ours, through the next season, once renewed
  int notCounted = 0;                   // held, in repair, out of service or without a known label: may be good by then
  int order = 0;
  double covered = 0;  // chance that enough is enough
};

struct PlanAnswer {
  int season = 0, nextSeason = 0;
  Day today, start, end, nextStart, nextEnd;
  std::vector<Lapsing> lapsing;                                       // by earliest day, then id; through the end of the next season
  std::vector<Batch> batches;                                         // by day
  std::vector<SizeMissing> missing;                                   // what no plan can prevent, once orders are here
  std::vector<Order> orders;                                          // every size that anybody may need or that is there; order may be 0
  double expectedReturning = 0, expectedNewcomers = 0, offChart = 0;  // heads
  int leaving = 0, untaped = 0, staleTapes = 0, unknownBirthYears = 0;
  std::string newSheet;  // hash
  bool areDatesAssumed = false;
};
[[nodiscard]] Result<PlanAnswer> planSeason(const Views& views, const PlanWishes& wishes, Day today);

}  // namespace snugline::season
