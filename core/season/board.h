// SPDX-License-Identifier: Apache-2.0
// Purpose: who is due and why. A row is a pure function of (views, today, now, conditions); worst lane wins, then earliest
// due-by, then jersey. Reasons carry data, the words are made at the screen. Source of the table: RULES of this project;
// each threshold is named in board.cpp with its source.
// Complexity: build is linear in athletes (plus one sort of small keys); update makes only the rows named and finds their old and new
// places by binary search; the rows between the two places move up or down by one.
// Thread: plain values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

enum class Lane : std::uint8_t { doNotWear, beforePractice, weekly, nothingDue };
[[nodiscard]] std::string_view code(Lane l);  // "do-not-wear", "before-practice", "weekly", "nothing-due"

enum class DueKind : std::uint8_t {
  seeAthleteNow,  // unwell or hit said
  noUnit,         // nobody has paired a helmet yet
  held,           // text: reason in words
  unitFault,      // point, text
  labelLapsed,    // day: last good day
  labelMissing,
  labelUnknown,      // no label read yet
  verdictDoNotWear,  // text: first reason code
  brokeSaid,
  twoAthletes,  // text: the other's jersey
  twoUnits,
  labelDisputed,
  unitAway,  // in repair, sent out, retired, lost; text: place
  neverFitted,
  checkOpen,   // mark: next question
  adjustOpen,  // mark, finding of the first that is off
  wordOpen,    // mark, side, feels
  hairChanged,
  partChanged,
  airChanged,  // weather; change (seam: filled once core/air exists)
  dryHair,
  breakIn,       // count: day n of 3; late after 3
  weeklyLook,    // count: days since the last look
  pointUnseen,   // point
  labelLapsing,  // day: last good day
  tapeStale,     // count: months
  neverTaped
};
[[nodiscard]] std::string_view code(DueKind k);  // "see-athlete-now", "never-fitted", "break-in-look", "weekly-look", …

struct DueReason {
  DueKind kind = DueKind::neverFitted;
  Lane lane = Lane::nothingDue;
  Day dueFrom, dueBy;
  bool isLate = false;
  std::optional<fit::Mark> mark;
  std::optional<gear::Point> point;
  fit::Finding finding = fit::Finding::unseen;
  fit::Side side = fit::Side::both;
  fit::Feels feels = fit::Feels::tight;
  std::optional<Day> day;
  std::optional<Pressure> change;
  int count = 0;
  std::string text;
  std::string who;  // person id of who recorded it, where it matters
  std::optional<Instant> at;
  friend bool operator==(const DueReason&, const DueReason&) = default;
};

// What the guide would do if this row were opened now.
enum class RowAction : std::uint8_t { none, firstFit, refit, look, resume, chooseHelmet, athlete };

struct DueRow {
  std::string athlete, unit, check;  // check: the open one
  std::string jersey, family, given, serial;
  Lane lane = Lane::nothingDue;
  std::vector<DueReason> reasons;  // worst first
  Day dueFrom, dueBy;
  bool isWithAthlete = false;  // a held helmet that the athlete still has: first in its lane
  bool isOnTop = false;        // unwell or hit said and not yet acknowledged: before everything else
  RowAction action = RowAction::none;
  std::array<fit::Finding, fit::kMarkCount> strip{};
  fit::MarkSet words;  // hollow bars: the athlete's word, not yet seen by staff
  std::array<fit::Feels, fit::kMarkCount> wordFeels{};
  std::array<gear::PointState, gear::kPointCount> points{};
  friend bool operator==(const DueRow&, const DueRow&) = default;
};

// Weather and place as noted; a seam until core/air exists: nothing here changes a row yet.
struct Conditions {
  std::optional<Temperature> temperature;
  std::optional<Elevation> elevation;
};

struct BoardTime {
  Instant now;  // today is dayOf(now)
};

// Next practice at or after now by the team's schedule (its day); today when none is set.
[[nodiscard]] Day nextPractice(const Views& views, Instant now);

[[nodiscard]] DueRow rowOf(const Views& views, const AthleteRecord& athlete, BoardTime time, const Conditions& conditions);
[[nodiscard]] bool ranksBefore(const DueRow& a, const DueRow& b);
// By number, then by text ("07" before "7"); no number comes last.
[[nodiscard]] bool jerseyBefore(const std::string& a, const std::string& b);

// What a row is ranked by, small enough to sort many. Last comes the athlete's id, its number first, so that the order is total.
struct RankKey {
  std::uint64_t major = 0;   // lane, on top, with athlete, due-by
  std::uint64_t jersey = 0;  // number, then text
  std::uint64_t n = 0;       // of the id
  std::string athlete;
  friend auto operator<=>(const RankKey&, const RankKey&) = default;
};
[[nodiscard]] RankKey rankKeyOf(const DueRow& row);

class Board {
 public:
  // Athletes on the roster only.
  void build(const Views& views, BoardTime time, const Conditions& conditions);
  // Rows of these athletes are made anew and put in their place; others are not touched. Time and conditions as at build.
  void update(const Views& views, const std::vector<std::string>& athletes);
  [[nodiscard]] const std::vector<DueRow>& rows() const { return m_rows; }
  // Place of an athlete's row, or nothing. Binary search.
  [[nodiscard]] std::optional<std::size_t> placeOf(const std::string& athlete) const;
  [[nodiscard]] std::array<int, 4> counts() const;

 private:
  void indexKeys();

  std::vector<DueRow> m_rows;                       // ranked
  std::unordered_map<std::string, RankKey> m_keys;  // by athlete, as ranked; filled at the first update
  BoardTime m_time;
  Conditions m_conditions;
};

}  // namespace snugline::season
