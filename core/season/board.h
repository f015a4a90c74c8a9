// SPDX-License-Identifier: Apache-2.0
// Purpose: who is due and why. A row is a pure function of (views, today, now, conditions); worst lane wins, then the gravest grade in it,
// then earliest due-by, then number and name. Reasons carry data, the words are made at the screen. Each threshold is named with its
// source in board_reasons.cpp, or as common practice.
// Between two seasons (turn.h) no look, tape, hair or air is due and nobody is asked for a helmet: whoever still has one stands under
// Do not wear until it is handed in, and what a helmet or a word calls for stays. Checks from before the last closing count for nothing, so
// whoever kept a helmet over needs a first fit in the new season like everybody else.
// A board is made whole each time it is asked for and keeps nothing: what it shows cannot be of an earlier moment.
// Complexity: linear in athletes, and a sort. Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/clocks.h"
#include "core/season/record.h"
#include "core/season/season_air.h"

namespace snugline::season {

enum class Lane : std::uint8_t { doNotWear, beforePractice, noHelmet, weekly, nothingDue };
inline constexpr std::size_t kLaneCount = 5;
[[nodiscard]] std::string_view code(Lane l);  // "do-not-wear", "before-practice", "no-helmet", "weekly", "nothing-due"

enum class DueKind : std::uint8_t {
  seeAthleteNow,   // unwell or hit said
  withTrainer,     // that, and the athletic trainer knows; until it is closed
  pointsAfterHit,  // that, and closed; the seven points of the helmet worn then were not all checked since
  noUnit,     // never had a helmet; or had one and has none: text says what became of it, "held", "repair", "sent-out", "retired", "lost",
              // "given", "shelf", or the code of the verdict's reason that it was taken off for
  held,       // text: reason in words
  unitFault,  // point, text
  labelLapsed,  // day: last good day
  labelMissing,
  labelUnreadable,
  labelUnknown,      // no label read yet
  verdictDoNotWear,  // text: first reason code
  brokeSaid,
  twoAthletes,  // text: the other's jersey
  twoUnits,
  labelDisputed,
  unitAway,      // in repair, sent out, retired, lost; text: place
  noSheet,       // its model or size is not known
  notInService,  // and nothing else is wrong with it
  keptUnit,      // text: serial of a helmet that is not theirs any more and that they still have
  neverFitted,
  checkOpen,   // mark: next question
  adjustOpen,  // mark, finding of the first that is off
  wordOpen,    // mark, side, feels, text; said before: count (times, this one included), day (since when)
  hairChanged,
  partChanged,  // marks: reopened; text: codes of gear::UnitPart or words, joined by ", "
  airChanged,   // weather moved the air since the marks were last seen: port (the worst), change, air, cause, belowZero; count: ports
                // concerned
  airLeaking,   // port, change: a week at 20 C; count: readings
  lineOff,      // mark, finding: seen off in a standing line
  dryHair,
  breakIn,       // count: day n of 3; late after 3
  weeklyLook,    // count: days since the last look
  pointUnseen,   // point
  labelLapsing,  // day: last good day
  tapeStale,     // count: months
  neverTaped,
  stillOut  // no season is open and the helmet was not handed in; text: the season that was closed
};
[[nodiscard]] std::string_view code(DueKind k);  // "see-athlete-now", "never-fitted", "break-in-look", "weekly-look", …

// Who comes first within a lane, and which reason within a row. Up to reports a reason is never left to "and 1 more".
enum class Grade : std::uint8_t {
  seeNow,
  withTrainer,
  stillWorn,  // on hold or pulled, and still with an athlete
  broke,
  fault,  // of the helmet, its label or its papers, or of the fit as it was found
  leak,
  report,  // of the athlete
  late,
  rest,
  weather
};

struct DueReason {
  DueKind kind = DueKind::neverFitted;
  Lane lane = Lane::nothingDue;
  Grade grade = Grade::rest;
  Day dueFrom, dueBy;
  bool isLate = false;
  std::optional<fit::Mark> mark;
  std::optional<gear::Point> point;
  fit::Finding finding = fit::Finding::unseen;
  fit::Side side = fit::Side::both;
  fit::Feels feels = fit::Feels::tight;
  std::optional<Day> day;
  std::optional<Pressure> change;  // of gauge pressure; negative: lost
  std::optional<Pressure> air;     // gauge foreseen now, as a rigid bladder; nothing where it was never measured
  std::optional<gear::Port> port;
  fit::MarkSet marks;  // to be seen again
  AirCause cause = AirCause::none;
  bool belowZero = false;      // no air left to hold it, as a rigid bladder
  bool isWithAthlete = false;  // of a hold, or of a helmet that nobody may wear: the athlete still has it
  int count = 0;
  std::string text;
  std::string who;  // person id of who recorded it, where it matters
  std::optional<Instant> at;
  friend bool operator==(const DueReason&, const DueReason&) = default;
};

// What the guide would do if this row were opened now.
enum class RowAction : std::uint8_t { none, firstFit, refit, look, resume, chooseHelmet, athlete, close };

struct DueRow {
  std::string athlete, unit, check;  // check: the open one
  std::string jersey, family, given, serial;
  Lane lane = Lane::nothingDue;
  std::vector<DueReason> reasons;  // worst first
  Day dueFrom, dueBy;
  Grade grade = Grade::rest;  // the gravest of a reason in this lane
  RowAction action = RowAction::none;
  std::array<fit::Finding, fit::kMarkCount> strip{};
  fit::MarkSet words;  // hollow bars: the athlete's word, not yet seen by staff
  std::array<fit::Feels, fit::kMarkCount> wordFeels{};
  std::array<gear::PointState, gear::kPointCount> points{};
  bool isAirUnknown = false;  // has air, and weather is noted now, but none was when it was set: nothing is judged
  friend bool operator==(const DueRow&, const DueRow&) = default;
};

struct BoardTime {
  Instant now;  // today is dayOf(now)
};

// Weather that counts now: each part as given, else as the Book last noted it, however long ago.
struct WeatherNow {
  Conditions conditions;
  std::optional<Instant> notedAt;  // of the parts that the Book gave; nothing when all were given or none is known
  bool isOld = false;              // noted more than a day before now: still counts, and is shown as such
  friend bool operator==(const WeatherNow&, const WeatherNow&) = default;
};
inline constexpr std::int64_t kWeatherFreshMs = 24LL * 60 * 60 * 1000;  // ours
[[nodiscard]] WeatherNow weatherNow(const Views& views, BoardTime time, const Conditions& given);

// Next practice at or after now by the team's schedule (its day); today when none is set.
[[nodiscard]] Day nextPractice(const Views& views, Instant now);

[[nodiscard]] DueRow rowOf(const Views& views, const AthleteRecord& athlete, BoardTime time, const Conditions& conditions);
[[nodiscard]] bool ranksBefore(const DueRow& a, const DueRow& b);
// By number, then by text ("07" before "7"); no number comes last.
[[nodiscard]] bool jerseyBefore(const std::string& a, const std::string& b);

struct Board {
  std::vector<DueRow> rows;  // athletes on the roster, as ranked
  WeatherNow weather;        // that the rows were judged by: as given, and where nothing was given as last noted in the Book
  std::array<int, kLaneCount> counts{};
  int foldedCount = 0;             // rows at the end of Lane::beforePractice that are there for the weather alone, where they are one group
  int withTrainerCount = 0;        // rows of which nobody has to see anything: Grade::withTrainer
  int airUnknown = 0;              // helmets worn whose air cannot be judged (DueRow::isAirUnknown)
  std::vector<ClockDoubt> clocks;  // devices whose clock is far off
  [[nodiscard]] const DueRow* row(const std::string& athlete) const;  // linear; null when there is none
  friend bool operator==(const Board&, const Board&) = default;
};
// More rows than this in the lane for the weather alone are shown as one group (ours).
inline constexpr int kWeatherRowsMost = 10;
[[nodiscard]] Board boardOf(const Views& views, BoardTime time, const Conditions& conditions);

}  // namespace snugline::season
