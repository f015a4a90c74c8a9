// SPDX-License-Identifier: Apache-2.0
// Purpose: who is due and why. A row is a pure function of (views, today, now, conditions); worst lane wins, then earliest
// due-by, then jersey. Reasons carry data, the words are made at the screen. Each threshold is named with its
// source in board_reasons.cpp, or as common practice.
// Between two seasons (turn.h) no look, tape, hair or air is due and nobody is asked for a helmet: whoever still has one stands under
// Do not wear until it is handed in, and what a helmet or a word calls for stays. Checks from before the last closing count for nothing, so
// whoever kept a helmet over needs a first fit in the new season like everybody else.
// Complexity: build is linear in athletes (keys of a few bytes are sorted digit by digit); update makes only the rows named and finds their
// old and new places by binary search; between the two places four bytes a row move up or down by one, the rows themselves stay.
// Thread: plain values.
#pragma once

#include <algorithm>
#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/record.h"
#include "core/season/season_air.h"
#include "core/season/slot_index.h"

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
  std::optional<Pressure> change;  // of gauge pressure; negative: lost
  std::optional<Pressure> air;     // gauge foreseen now, as a rigid bladder; nothing where it was never measured
  std::optional<gear::Port> port;
  fit::MarkSet marks;  // to be seen again
  AirCause cause = AirCause::none;
  bool belowZero = false;  // no air left to hold it, as a rigid bladder
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

// What a row is ranked by, small enough to sort many. Last comes the athlete's id, its number first and then (not kept here) its text, so
// that the order is total.
struct RankKey {
  std::uint64_t major = 0;   // lane, on top, with athlete, due-by
  std::uint64_t jersey = 0;  // number, then text
  std::uint64_t n = 0;       // of the id
  friend auto operator<=>(const RankKey&, const RankKey&) = default;
};
[[nodiscard]] RankKey rankKeyOf(const DueRow& row);

// The rows of a board as ranked. Looks into the board: good until its next build or update.
class RankedRows {
 public:
  class Iterator {
   public:
    using iterator_category = std::random_access_iterator_tag;
    using value_type = DueRow;
    using difference_type = std::ptrdiff_t;
    using pointer = const DueRow*;
    using reference = const DueRow&;
    Iterator() = default;
    Iterator(const DueRow* rows, const std::uint32_t* at) : m_rows(rows), m_at(at) {}
    reference operator*() const { return m_rows[*m_at]; }
    pointer operator->() const { return m_rows + *m_at; }
    reference operator[](difference_type n) const { return m_rows[m_at[n]]; }
    Iterator& operator++() { return ++m_at, *this; }
    Iterator operator++(int) { return {m_rows, m_at++}; }
    Iterator& operator--() { return --m_at, *this; }
    Iterator operator--(int) { return {m_rows, m_at--}; }
    Iterator& operator+=(difference_type n) { return m_at += n, *this; }
    Iterator& operator-=(difference_type n) { return m_at -= n, *this; }
    friend Iterator operator+(Iterator it, difference_type n) { return it += n; }
    friend Iterator operator+(difference_type n, Iterator it) { return it += n; }
    friend Iterator operator-(Iterator it, difference_type n) { return it -= n; }
    friend difference_type operator-(Iterator a, Iterator b) { return a.m_at - b.m_at; }
    friend bool operator==(Iterator a, Iterator b) { return a.m_at == b.m_at; }
    friend auto operator<=>(Iterator a, Iterator b) { return a.m_at <=> b.m_at; }

   private:
    const DueRow* m_rows = nullptr;
    const std::uint32_t* m_at = nullptr;
  };
  using value_type = DueRow;
  using const_iterator = Iterator;

  RankedRows(const std::vector<DueRow>& rows, const std::vector<std::uint32_t>& order) : m_rows(rows.data()), m_order(order) {}
  [[nodiscard]] std::size_t size() const { return m_order.size(); }
  [[nodiscard]] bool empty() const { return m_order.empty(); }
  [[nodiscard]] const DueRow& operator[](std::size_t place) const { return m_rows[m_order[place]]; }
  [[nodiscard]] const DueRow& front() const { return (*this)[0]; }
  [[nodiscard]] const DueRow& back() const { return (*this)[size() - 1]; }
  [[nodiscard]] Iterator begin() const { return {m_rows, m_order.data()}; }
  [[nodiscard]] Iterator end() const { return {m_rows, m_order.data() + m_order.size()}; }
  friend bool operator==(const RankedRows& a, const RankedRows& b) { return std::equal(a.begin(), a.end(), b.begin(), b.end()); }

 private:
  const DueRow* m_rows;
  std::span<const std::uint32_t> m_order;
};

struct DueContext;  // board_reasons.h

class Board {
 public:
  // Athletes on the roster only. Where there are thousands, a second thread makes some of the rows and ends before this returns.
  void build(const Views& views, BoardTime time, const Conditions& conditions);
  // Rows of these athletes are made anew and put in their place; others are not touched, but for their air where the Book noted other
  // weather since. Time and conditions as at build.
  void update(const Views& views, const std::vector<std::string>& athletes);
  // The weather changed and nothing else did since build or update: rows whose air it concerns are made anew, and ranked.
  void weather(const Views& views, const Conditions& conditions);
  // Conditions that the rows were judged by: as given, and where nothing was given as last noted in the Book.
  [[nodiscard]] const WeatherNow& weatherNow() const { return m_weather; }
  [[nodiscard]] int airUnknownCount() const;  // helmets worn whose air cannot be judged (DueRow::isAirUnknown)
  [[nodiscard]] RankedRows rows() const { return {m_rows, m_order}; }
  // Place of an athlete's row, or nothing. Binary search once update was called, else one look along the rows.
  [[nodiscard]] std::optional<std::size_t> placeOf(const std::string& athlete) const;
  [[nodiscard]] std::array<int, 4> counts() const;

 private:
  void rank();
  void watch(const Views& views, std::uint32_t slot);  // board_air.cpp
  void indexSlots();
  void makeRows(const Views& views, const DueContext& context);
  [[nodiscard]] std::optional<std::uint32_t> slotOf(const std::string& athlete) const;
  [[nodiscard]] bool isBefore(std::uint32_t a, std::uint32_t b) const;
  [[nodiscard]] std::ptrdiff_t placeOfSlot(std::uint32_t slot) const;

  // A row stays in its slot while it is ranked anew: a row is large, its slot's number is small.
  std::vector<DueRow> m_rows;          // by slot, in no order
  std::vector<RankKey> m_ranks;        // by slot
  std::vector<std::uint32_t> m_order;  // slots as ranked
  std::vector<std::uint32_t> m_free;   // slots that were given up
  SlotIndex m_slots;                   // by athlete; filled at the first update
  std::array<int, 4> m_counts{};
  BoardTime m_time;
  Conditions m_conditions;  // as given
  WeatherNow m_weather;
  std::vector<AirWatch> m_watches;  // by slot; empty until there is weather
};

}  // namespace snugline::season
