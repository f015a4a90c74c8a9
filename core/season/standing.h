// SPDX-License-Identifier: Apache-2.0
// Purpose: the one standing of a helmet: where it is and with whom, whether it may be worn, each reason why not, and which acts lead out.
// Every page, paper and terminal answer about a helmet is made from this, so that none says what another denies; the acts of core/book
// refuse by the same reasons. An athlete's standing is the row of the board (board.h), whose helmet is judged here too.
// What is recorded counts, whatever a clock elsewhere said; only a label is judged by the day that is handed in.
// Sources of the rules: labels NOCSAE (core/gear/certification.h); a crack, two athletes on one helmet, a fault, a report: common practice,
// no source. Complexity: Standings is linear in what was said; each helmet then costs what is open on it. Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

// Why a helmet may not be worn, worst first.
enum class Bar : std::uint8_t {
  retired,
  lost,
  sentOut,
  repair,
  held,               // hold, reason, text, stamp
  fault,              // point, text, stamp
  brokeSaid,          // athlete, text, stamp: something broke, said and not looked at since
  labelMissing,       // looked for, and there is none
  labelUnreadable,    // there is one that nobody can read
  labelDisputed,      // two readings that differ
  labelUnknown,       // never read
  labelLapsed,        // day: last good day, by the earliest end
  noSheet,            // its model or size is not known to the Book
  pointsAfterReport,  // athlete, stamp: a report calls for its seven points, and they were not all checked since
  pointUnchecked,     // point: needed for service, on a helmet that is not in service
  notInService,
  twoAthletes,  // athlete: the one paired last
  verdict       // athlete, text (first reason code), stamp: the last check of who wears it ended do not wear
};
[[nodiscard]] std::string_view code(Bar bar);  // "held", "fault", "broke-said", "label-lapsed", …
// Says something of the head it is on, and nothing that keeps it off another.
[[nodiscard]] inline bool isOfWearer(Bar bar) { return bar == Bar::twoAthletes || bar == Bar::verdict; }
[[nodiscard]] bool isLabelBar(Bar bar);
[[nodiscard]] inline std::string_view code(const std::optional<Bar>& bar) { return bar ? code(*bar) : "none"; }

struct WhyNot;
// Which strip holds the reason: the seven points, else the nine marks.
[[nodiscard]] bool isOfPoints(const WhyNot& why);
[[nodiscard]] bool isReasonOfPoints(std::string_view reasonCode);  // of a check, as EndedCheck keeps it: "faceguard-fault", "brow-over"

struct WhyNot {
  Bar bar = Bar::notInService;
  std::optional<gear::Point> point;  // of a fault, an unchecked point, or a hold for one
  std::optional<Day> day;
  std::string hold, reason;  // fact and reason code of a hold
  std::string text;          // in the finder's words, as stored
  std::string athlete;       // id
  Stamp stamp;
  friend bool operator==(const WhyNot&, const WhyNot&) = default;
};

enum class UnitState : std::uint8_t { inService, notInService, doNotWear, onHold, repair, sentOut, lost, retired };
// "in-service", "not-in-service", "do-not-wear", "on-hold", "repair", "sent-out", "lost", "retired"
[[nodiscard]] std::string_view code(UnitState state);

enum class Where : std::uint8_t { withUs, withAthlete, repair, sentOut, lost, retired };
[[nodiscard]] std::string_view code(Where where);  // "with-us", "with-athlete", "repair", "sent-out", "lost", "retired"

// What a person may do about it now. release: one of the holds at least. whereNow: say that we have it in hand.
enum class UnitAct : std::uint8_t {
  whereNow,
  swapHelmet,  // for who has it: the same act as on the athlete's page
  hold,
  release,
  checkPoints,
  readLabel,
  inService,
  giveTo,   // to an athlete
  toShelf,  // from who has it, good or not
  repair,
  sendOut,
  back,
  lost,
  retire
};
// "where-now", "swap-helmet", "hold", "release", "check-points", "read-label", "in-service", "give-to", "to-shelf", "repair", "send-out", …
[[nodiscard]] std::string_view code(UnitAct act);

struct UnitStanding {
  const UnitRecord* unit = nullptr;
  UnitState state = UnitState::inService;
  Where where = Where::withUs;
  std::vector<const AthleteRecord*> with;                    // who has it; paired or not (UnitRecord::keptBy); empty: nobody
  std::vector<WhyNot> reasons;                               // worst first; empty: it may be worn
  std::array<gear::PointState, gear::kPointCount> points{};  // as drawn: certification is sound only where the label is good
  std::optional<gear::DaySpan> lastGood;                     // of its label
  [[nodiscard]] bool mayBeWorn() const { return reasons.empty(); }
  [[nodiscard]] const WhyNot* why(Bar bar) const;
  // What keeps it off every head, whoever wears it now; nothing: it could be given.
  [[nodiscard]] const WhyNot* offEveryHead() const;
  // The same in a word: a label only where nothing else does, and one word for a helmet that is not in service.
  [[nodiscard]] std::optional<Bar> mainBar() const;
  [[nodiscard]] int uncheckedPoints() const;
};

// Standings of many helmets on one day; looks into the views, which must live as long.
class Standings {
 public:
  Standings(const Views& views, Day today);
  [[nodiscard]] UnitStanding of(const UnitRecord& unit) const;

 private:
  struct Report {
    const AthleteRecord* athlete;
    const SaidRecord* said;
  };
  const Views& m_views;
  Day m_today;
  std::unordered_map<std::string, std::vector<Report>> m_reports;  // by unit: something broke, or a report that calls for its points
};
[[nodiscard]] UnitStanding standingOf(const Views& views, const UnitRecord& unit, Day today);

// In the order in which a person would do them.
[[nodiscard]] std::vector<UnitAct> actsOf(const Views& views, const UnitStanding& standing, Day today);

// Why a hold does not end by somebody's word alone.
enum class NoRelease : std::uint8_t {
  crack,  // ends by return from the recertifying firm or the maker with paper, and a label read after that; or by retirement
  fault,  // the point that it stands for was last checked at fault
  label   // the label is not good today
};
[[nodiscard]] std::optional<NoRelease> whyNotReleased(const Views& views, const UnitRecord& unit, const HoldRecord& hold, Day today);

// A reason for a hold that the records know already, so that nobody is asked: code as in HoldRecord, and words.
struct HoldCause {
  std::string reason, what;
  friend bool operator==(const HoldCause&, const HoldCause&) = default;
};
[[nodiscard]] std::optional<HoldCause> knownCause(const UnitStanding& standing);

// Somebody has it on a head or in a bag: paired and not in our hands, or kept.
[[nodiscard]] bool isOut(const UnitRecord& unit);
// Helmets that an athlete still has without being paired with them, by id: to be asked for until somebody has them in hand. Linear in
// units.
[[nodiscard]] std::vector<const UnitRecord*> keptBy(const Views& views, const std::string& athlete);

}  // namespace snugline::season
