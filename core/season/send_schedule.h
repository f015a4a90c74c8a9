// SPDX-License-Identifier: Apache-2.0
// Purpose: when helmets of one kind (sheet and size) go out for recertification, so that on every day enough good ones stay for their
// heads. A helmet is there on a day when it is good on that day, not away, and not before its first day. One that is sent on day s is away
// for `turnaround` days and comes back on s + turnaround; it may lapse before it goes, and then is missing from that day on. Two plans are
// made and the better one is kept (fewer helmet-days missing, then fewer sent in season):
//  - the sparing one sends in season only what heads will miss otherwise, and the rest once the season is over;
//  - the early one sends whatever must be renewed at all, soonest to lapse first, as soon as nobody misses it.
// The early one misses nobody if any plan does, as long as a renewal lasts to the end: all are away equally long, so that whatever may
// go first goes first, at the earliest day, and no other plan has sent more by any day.
// Ranges: turnaround 1 to 366, spans up to kScheduleDays. Errors: outOfRange, outOfMemory. Thread: plain functions.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace snugline::season {

inline constexpr int kScheduleDays = 366 * 4;  // ours: today to the end of the next season, with room

struct SendHelmet {
  Day lastGood;                 // as its label stands, the earliest end
  Day from;                     // here from this day on; today, or when it comes back from where it is
  std::optional<Day> ageLimit;  // no renewal holds longer than this
  bool isRenewable = true;
};
struct HeadSpan {
  Day first, last;
  int heads = 0;
};
struct ScheduleQuestion {
  Day today, end;
  Day seasonEnd;  // of the season that runs, or ran last: what can wait goes after it
  int turnaround = 42;
  std::vector<SendHelmet> helmets;
  std::vector<HeadSpan> heads;          // no two overlap; nobody in between
  int arrivals = 0;                     // new helmets
  Day arriveOn;                         // and when they are here, good to the end
  std::function<Day(Day)> goodThrough;  // back on this day: good through which; does not fall
};
struct SendOut {
  int helmet = 0;
  Day sent, back, goodThrough;
  friend bool operator==(const SendOut&, const SendOut&) = default;
};
struct MissingSpan {
  Day first, last;
  int most = 0;  // helmets missing on the worst day
  friend bool operator==(const MissingSpan&, const MissingSpan&) = default;
};
struct ScheduleAnswer {
  std::vector<SendOut> sent;         // by day, then helmet
  std::vector<MissingSpan> missing;  // empty: nobody is ever without
  long long missingDays = 0;
};
[[nodiscard]] Result<ScheduleAnswer> scheduleSendOuts(const ScheduleQuestion& question);

// Helmets there on each day from today to the end, given what is sent. What the plan is judged by; knows nothing of how it was made.
[[nodiscard]] std::vector<int> helmetsThere(const ScheduleQuestion& question, const std::vector<SendOut>& sent);
[[nodiscard]] int headsOn(const ScheduleQuestion& question, Day day);

}  // namespace snugline::season
