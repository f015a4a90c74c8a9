// SPDX-License-Identifier: Apache-2.0
// Purpose: the guide as a pure function. A check is a setup and a list of answers; take() folds one answer into the state,
// assess() says where the check stands. "Fits" is one predicate over the last findings (isFits), and the next question is
// the first open mark: there is no hand-made state machine and no override.
//
// Fits, and only then: every mark's last finding is snug and seen after the last change that reopens it; all seven points
// sound; certifiedUntil known and not before today, label not missing; no word of the athlete open; nothing broken; not
// unwell; every question of the sheet answered yes; hair wet for a first fit or a refit. There is no override.
// Verdicts by precedence, worst first:
//  do-not-wear  a point at fault; label lapsed or missing; a mark at fault (at ears and chin only once every way is used
//               up; hold at fault = it cannot be tried); a mark that is off with no way left (other size or model, with
//               its direction); a question answered no; something broke, said and the points not seen since.
//  adjust       a mark is off and a way is left; or a first fit or refit on dry hair ("dry-hair").
//  unfinished   a mark, point, question, word, the hair or the label's date is open; or unwell (the next step is then stop).
// Ways: a cell of the advice table is a list of ways in their order. A way is left for a mark while the sheet has the port or
// part; the air is not known to stand at or beyond the sheet's limit; the pad has a next step; the check has fewer than
// kTurnsPerCheck turns; and the mark has fewer than kTurnsPerMark turns or never used this way. Where a cell begins with it,
// to reseat comes first and once: until the mark was seen off again it keeps the check open, at the limit of the air and
// after the last turn too. To see that straps are snapped, even and routed is advice and no way.
// Cold (said by ColdSeen): nothing is let out. What presses on a cold helmet is warmed first and that alone; where another
// mark would let air out, warming stands in its place. Air may be added, one pump at a time. What was seen cold says nothing
// of it warm, and the other way about: a change of ColdSeen reopens every mark.
// Turns: a change counts for the first mark that is off (current, not snug) and has it among its ways, else for the first
// mark that is off, else for the check only. Turns are never reset. At eight the check has no way left for anything that is
// off; a mark that is then seen snug is snug all the same.
// Air: with a gauge reading (air) the gauge is known; pumps alone leave it unknown ("limit not measured"), which is no limit.
// The sheet may order the marks: questions, advice, reasons and turns go by that order, the strip keeps its places.
// Reopening: a change reopens reopens(change) and asks every word of the athlete again; a gauging reopens hold; hair that
// was dry and is wet now (first, refit) reopens every mark; "broke" reopens the points. Only seeing a mark makes it current,
// which also answers a word there. A finding said of one side leaves a standing finding of the other side as it is.
// A shell seen at fault stays at fault within the check: a crack is released by repair or retirement only. Other points may
// be seen again once the part was replaced; "all seven sound" at one touch never undoes a fault.
//
// Nothing here reads a clock, a file or the Book. Ranges: pumps 0 (not counted) to 20, pressures within the quantity's range.
// Errors of take(): unknownPort (a port or part that the sheet lacks, named by place), outOfRange, unknownWord (a question
// that the sheet lacks), inconsistent (a deed that does not go with its place), notAllowed (Fitted after the first change).
// The state is unchanged then. Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/fit/marks.h"
#include "core/gear/model_sheet.h"
#include "core/gear/points.h"
#include "core/quantity/time.h"

namespace snugline::fit {

// Names the rules that a check was judged by; goes up when any rule of the guide changes.
inline constexpr int kRulesVersion = 2;
inline constexpr Length kBrowTarget{25400};  // 1 in above the eyebrows: ASTM STP1177 (1997); AAP; NATA
inline constexpr int kTurnsPerMark = 3;      // ours
inline constexpr int kTurnsPerCheck = 8;     // ours
inline constexpr int kBreakInFromDays = 1;   // common practice, no source
inline constexpr int kBreakInByDays = 3;     // common practice, no source
inline constexpr int kWeeklyFromDays = 5;    // ours
inline constexpr int kWeeklyByDays = 7;      // common practice, no source
inline constexpr int kPumpsLow = 1;          // air per step, common practice, no source
inline constexpr int kPumpsHigh = 3;
inline constexpr int kPumpsMost = 20;      // in one answer: more is a slip of the finger (ours)
inline constexpr Length kGapMost{150000};  // a brow gap beyond 150 mm is a slip of the finger (ours)

enum class CheckKind : std::uint8_t { first, refit, look };
[[nodiscard]] std::string_view code(CheckKind k);  // "first", "refit", "look"
[[nodiscard]] std::optional<CheckKind> checkKindFromCode(std::string_view);

enum class Deed : std::uint8_t { add, release, swap, reroute, relength };
[[nodiscard]] std::string_view code(Deed d);
[[nodiscard]] std::optional<Deed> deedFromCode(std::string_view);

// ---- answers -------------------------------------------------------------------------------------------------------

struct HairSeen {
  bool isWet = false;
};
// Is the helmet cold, by the weather where the helmets are (season_air.h), or as said by whoever warmed it?
struct ColdSeen {
  bool isCold = false;
  bool isSaid = false;  // by a person: the weather does not speak against it within this check
};
// What the unit was set to before the first change. Missing places stand at the sheet's start.
struct Fitted {
  std::array<std::optional<Pressure>, gear::kPortCount> air;
  std::array<std::optional<Length>, gear::kPartCount> pad;  // jaw-left, jaw-right, crown-pad
  friend bool operator==(const Fitted&, const Fitted&) = default;
};
// For brow a measured gap decides among snug, over and under; fault always stands. side is kept where knowsSides(mark).
struct MarkSeen {
  Mark mark = Mark::brow;
  Finding finding = Finding::snug;
  Side side = Side::both;
  HoldHow how = HoldHow::unsaid;
  std::optional<Length> gap;
  friend bool operator==(const MarkSeen&, const MarkSeen&) = default;
};
struct GroupSnug {
  LookView view = LookView::front;
};  // one answer for three marks, recorded as such
struct Adjusted {
  Deed deed = Deed::add;
  std::optional<gear::Port> port;
  std::optional<gear::Part> part;
  int pumps = 0;                // air, counted
  std::optional<Pressure> air;  // air, gauge reading after the change
  std::optional<Length> to;     // pad thickness after a swap; missing: a pad moves one step the way its mark asks
  friend bool operator==(const Adjusted&, const Adjusted&) = default;
};
struct AirRead {
  gear::Port port = gear::Port::crown;
  Pressure gauge;
  bool isOnHead = true;
};  // a gauging reopens hold
struct PointSeen {
  gear::Point point = gear::Point::certification;
  gear::PointState state = gear::PointState::sound;
  std::string what;
};
struct PointsSound {};  // all seven at one touch, recorded as such
struct QuestionAnswered {
  std::string id;
  bool isYes = true;
};
enum class Feels : std::uint8_t { tight, loose, broke };
[[nodiscard]] std::string_view code(Feels f);
[[nodiscard]] std::optional<Feels> feelsFromCode(std::string_view);  // also hurts, presses, slips, slides, moves
// Without a place a word is asked again at every mark.
struct AthleteSaid {
  std::optional<Mark> where;
  Side side = Side::both;
  Feels feels = Feels::tight;
};
struct Unwell {};  // equipment work stops; the athletic trainer is told

using Answer = std::variant<HairSeen, ColdSeen, Fitted, MarkSeen, GroupSnug, Adjusted, AirRead, PointSeen, PointsSound, QuestionAnswered,
                            AthleteSaid, Unwell>;

// ---- state ---------------------------------------------------------------------------------------------------------

struct Setup {
  gear::ModelSheet const* sheet = nullptr;  // outlives the state
  CheckKind kind = CheckKind::first;
  Day today;
  std::optional<Day> certifiedUntil;  // last good day (earliest end); missing = not known
  bool isLabelMissing = false;        // seen, and there is none
  std::optional<Day> seasonEnd;
  bool asksFitted = false;  // ask for Fitted after the hair where the sheet has air; never needed for fits
};

struct MarkState {
  Finding finding = Finding::unseen;  // as last seen
  bool isCurrent = false;             // false once something reopened it
  Side side = Side::both;
  Finding standing = Finding::unseen;  // off finding of the other side, said before and still standing; equal with side both
  HoldHow how = HoldHow::unsaid;
  std::optional<Length> gap;
  bool isInGroup = false;      // answered as part of a grouped view
  bool isSeenAgain = false;    // off, and found off once more since: seating it anew was tried
  int turns = 0;               // changes made for this mark's sake; never reset
  std::uint32_t waysUsed = 0;  // bit i: way i of guide_table.h was used for this mark's sake
  friend bool operator==(const MarkState&, const MarkState&) = default;
};

struct State {
  std::array<MarkState, kMarkCount> marks;
  gear::PointFindings points;
  std::optional<bool> isHairWet;
  bool isCold = false;
  bool isAirAddedCold = false;  // what fits then, fits for this cold
  bool isFittedSet = false;
  Fitted fitted;                                  // as it stands now; air is missing where only pumps were counted since
  std::array<int, gear::kPortCount> pumps{};      // net pumps since the start, + in, - out
  std::array<bool, gear::kPortCount> isGauged{};  // the value in fitted was read from a gauge
  int turns = 0;
  MarkSet words;      // the athlete's word, not answered since
  MarkSet wordsEver;  // every change reopens these
  std::array<Feels, kMarkCount> wordFeels{};
  std::array<Side, kMarkCount> wordSides{};
  bool isBroken = false;  // "something broke" said and not all points of the unit seen since
  bool isUnwell = false;
  std::vector<std::pair<std::string, bool>> questions;  // answered ones
  friend bool operator==(const State&, const State&) = default;
};

// What a measured gap comes to, both ends of the sheet's band included.
[[nodiscard]] Finding browFinding(const gear::ModelSheet& sheet, Length gap);

// In which this sheet has the marks checked.
[[nodiscard]] std::array<Mark, kMarkCount> marksInOrder(const gear::ModelSheet& sheet);

[[nodiscard]] State begin(const Setup& setup);
[[nodiscard]] Result<State> take(const Setup& setup, const State& state, const Answer& answer);

// What a change reopens, before the athlete's word is added.
[[nodiscard]] MarkSet reopens(const Adjusted& change);

// ---- assessment ----------------------------------------------------------------------------------------------------

enum class Verdict : std::uint8_t { unfinished, fits, adjust, doNotWear };
[[nodiscard]] std::string_view code(Verdict v);  // "unfinished", "fits", "adjust", "do-not-wear"
[[nodiscard]] std::optional<Verdict> verdictFromCode(std::string_view);

enum class ReasonKind : std::uint8_t {
  pointFault,   // point
  labelLapsed,  // certification lapsed
  labelMissing,
  labelUnknown,  // no date known: leaves unfinished
  markFault,     // mark: a part that must be put right before it is worn
  cannotTry,     // hold cannot be tried
  notReached,    // mark: every way is used up; other size or model
  markOff,       // mark, finding: can be put right now
  dryHair,       // code "dry-hair"
  veto,          // question answered no
  hairOpen,      // first or refit: not said whether the hair is wet
  markOpen,      // mark: not seen, or reopened and not seen again
  pointOpen,     // point
  questionOpen,  // question
  wordOpen,      // mark: athlete's word not answered
  broken,        // athlete said that something broke
  unwell
};
struct Reason {
  ReasonKind kind = ReasonKind::markOpen;
  std::optional<Mark> mark;
  std::optional<gear::Point> point;
  Finding finding = Finding::unseen;
  Side side = Side::both;
  int direction = 0;  // notReached: +1 next size up, -1 next size down, 0 other model
  std::string text;   // question id, or the finder's words
  // "unwell", "broken", "faceguard-fault", "label-lapsed", "label-missing", "label-unknown", "brow-fault", "hold-not-tried",
  // "brow-not-reached", "brow-over", "dry-hair", "<question>-no", "hair-open", "crown-open", "shell-open",
  // "<question>-open", "jaw-said".
  [[nodiscard]] std::string codeText() const;
  friend bool operator==(const Reason&, const Reason&) = default;
};

// What to do next for a mark that is off, first way first.
enum class AdviceKind : std::uint8_t { reseat, warm, change, check, replacePart, otherSize, otherModel, holdUnit };
struct Advice {
  AdviceKind kind = AdviceKind::reseat;
  Mark mark = Mark::brow;    // for whose sake
  std::optional<Deed> deed;  // kind change
  std::optional<gear::Port> port;
  std::optional<gear::Part> part;
  int pumpsLow = 0, pumpsHigh = 0;   // air: 1 to 3; 1 in the cold
  std::optional<Length> to;          // pad: the next step of the sheet
  int direction = 0;                 // otherSize: +1 up, -1 down; pad: +1 thicker, -1 thinner; relength: +1 longer, -1 shorter, 0 even
  std::optional<gear::Point> point;  // holdUnit, replacePart: for a point's sake (mark says nothing then)
  MarkSet reopens;                   // the athlete's word included
  std::uint8_t way = 0;              // index in the cell
  [[nodiscard]] std::string doText() const;  // "add", "release", "swap", "reroute", "relength", "reseat", "warm", "check", "replace",
                                             // "other-size-up", "other-size-down", "other-model", "hold"
  [[nodiscard]] std::string amountText()
      const;  // "1-3 pumps", "1 pump", the exact thickness ("28mm"), "longer", "shorter", "even"; else empty
  friend bool operator==(const Advice&, const Advice&) = default;
};

enum class StepKind : std::uint8_t { stop, hair, fitted, mark, question, point, done };
struct Step {
  StepKind kind = StepKind::done;
  std::optional<Mark> mark;
  std::optional<gear::Point> point;
  std::string question;
  [[nodiscard]] std::string codeText() const;  // "stop", "hair", "fitted", "brow", "warning-label", question id, "done"
  friend bool operator==(const Step&, const Step&) = default;
};

struct Assessment {
  Verdict verdict = Verdict::unfinished;
  std::vector<Reason> reasons;  // worst first, then in the order of marks and points
  std::vector<Step> open;       // hair, every open mark (off ones too), question and point, in the order asked
  Step next;
  std::vector<Advice> advice;               // ways for the first mark that is off, then for the others in order
  std::array<Finding, kMarkCount> strip{};  // unseen where reopened
  Day dueFrom, dueBy;                       // of the next look; after fits never later than certifiedUntil; else today
  bool isForCold = false;                   // fits with air added in the cold: to be seen again when it is warmer
};
[[nodiscard]] Assessment assess(const Setup& setup, const State& state);

// The one predicate of "fits". assess() says Fits exactly when this holds; the proof in tests recomputes it on its own.
[[nodiscard]] bool isFits(const Setup& setup, const State& state);

}  // namespace snugline::fit
