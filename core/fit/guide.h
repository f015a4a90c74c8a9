// SPDX-License-Identifier: Apache-2.0
// Purpose: the guide as a pure function. A check is a setup and a list of answers; take() folds one answer into the state,
// assess() says where the check stands. "Fits" is one predicate over the last findings (isFits), and the next question is
// the first open mark: there is no hand-made state machine and no override.
// Nothing here reads a clock, a file or the Book. Ranges: pumps 1..20, pressures within the quantity's range.
// Errors of take(): unknownPort (a port or part that the sheet lacks), outOfRange, unknownWord. The state is unchanged then.
// Thread: plain values.
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
inline constexpr int kRulesVersion = 1;
inline constexpr Length kBrowTarget{25400};      // 1 in above the eyebrows: ASTM STP1177 (1997); AAP; NATA
inline constexpr int kTurnsPerMark = 3;          // ours
inline constexpr int kTurnsPerCheck = 8;         // ours
inline constexpr int kBreakInFromDays = 1;       // common practice, no source
inline constexpr int kBreakInByDays = 3;         // common practice, no source
inline constexpr int kWeeklyFromDays = 5;        // ours
inline constexpr int kWeeklyByDays = 7;          // common practice, no source

enum class CheckKind : std::uint8_t { first, refit, look };
[[nodiscard]] std::string_view code(CheckKind k);            // "first", "refit", "look"
[[nodiscard]] std::optional<CheckKind> checkKindFromCode(std::string_view);

enum class Deed : std::uint8_t { add, release, swap, reroute, relength };
[[nodiscard]] std::string_view code(Deed d);
[[nodiscard]] std::optional<Deed> deedFromCode(std::string_view);

// ---- answers -------------------------------------------------------------------------------------------------------

struct HairSeen { bool isWet = false; };
// What the unit was set to before the first mark. Missing places stand at the sheet's start.
struct Fitted {
  std::array<std::optional<Pressure>, gear::kPortCount> air;
  std::array<std::optional<Length>, gear::kPartCount> pad;     // jaw-left, jaw-right, crown-pad
  friend bool operator==(const Fitted&, const Fitted&) = default;
};
// For brow a measured gap decides among snug, over and under; fault always stands.
struct MarkSeen {
  Mark mark = Mark::brow;
  Finding finding = Finding::snug;
  Side side = Side::both;
  HoldHow how = HoldHow::unsaid;
  std::optional<Length> gap;
  friend bool operator==(const MarkSeen&, const MarkSeen&) = default;
};
struct GroupSnug { LookView view = LookView::front; };          // one answer for three marks, recorded as such
struct Adjusted {
  Deed deed = Deed::add;
  std::optional<gear::Port> port;
  std::optional<gear::Part> part;
  int pumps = 0;                        // air, counted
  std::optional<Pressure> air;          // air, gauge reading after the change
  std::optional<Length> to;             // pad thickness after a swap
  friend bool operator==(const Adjusted&, const Adjusted&) = default;
};
struct AirRead { gear::Port port = gear::Port::crown; Pressure gauge; bool isOnHead = true; };  // a gauging reopens hold
struct PointSeen { gear::Point point = gear::Point::certification; gear::PointState state = gear::PointState::sound; std::string what; };
struct PointsSound {};                                          // all seven at one touch, recorded as such
struct QuestionAnswered { std::string id; bool isYes = true; };
enum class Feels : std::uint8_t { tight, loose, broke };
[[nodiscard]] std::string_view code(Feels f);
[[nodiscard]] std::optional<Feels> feelsFromCode(std::string_view);  // also hurts, presses, slips, slides, moves
struct AthleteSaid { std::optional<Mark> where; Side side = Side::both; Feels feels = Feels::tight; };
struct Unwell {};                                               // equipment work stops; the trainer is told

using Answer = std::variant<HairSeen, Fitted, MarkSeen, GroupSnug, Adjusted, AirRead, PointSeen, PointsSound,
                            QuestionAnswered, AthleteSaid, Unwell>;

// ---- state ---------------------------------------------------------------------------------------------------------

struct Setup {
  gear::ModelSheet const* sheet = nullptr;   // outlives the state
  CheckKind kind = CheckKind::first;
  Day today;
  std::optional<Day> certifiedUntil;         // last good day (earliest end); missing = not known
  bool isLabelMissing = false;               // seen, and there is none
  std::optional<Day> seasonEnd;
};

struct MarkState {
  Finding finding = Finding::unseen;         // as last seen
  bool isCurrent = false;                    // false once something reopened it
  Side side = Side::both;
  HoldHow how = HoldHow::unsaid;
  std::optional<Length> gap;
  bool isInGroup = false;                    // answered as part of a grouped view
  int turns = 0;                             // changes made for this mark's sake; never reset
  std::uint8_t waysUsed = 0;                 // bit i: way i of a cell was used, see guide.cpp
  friend bool operator==(const MarkState&, const MarkState&) = default;
};

struct State {
  std::array<MarkState, kMarkCount> marks;
  gear::PointFindings points;
  std::optional<bool> isHairWet;
  bool isFittedSet = false;
  Fitted fitted;                             // as it stands now, where known
  std::array<int, gear::kPortCount> pumps{}; // net pumps since the start, + in, - out
  std::array<bool, gear::kPortCount> isGauged{};
  int turns = 0;
  MarkSet words;                             // the athlete's word, not answered since
  MarkSet wordsEver;                         // every change reopens these
  std::array<Feels, kMarkCount> wordFeels{};
  bool isBroken = false;                     // "something broke" said and no point of the unit seen since
  bool isUnwell = false;
  std::vector<std::pair<std::string, bool>> questions;   // answered ones
  friend bool operator==(const State&, const State&) = default;
};

[[nodiscard]] State begin(const Setup& setup);
[[nodiscard]] Result<State> take(const Setup& setup, const State& state, const Answer& answer);

// What a change reopens, before the athlete's word is added (RULES, Fit, Reopens).
[[nodiscard]] MarkSet reopens(const Adjusted& change);

// ---- assessment ----------------------------------------------------------------------------------------------------

enum class Verdict : std::uint8_t { unfinished, fits, adjust, doNotWear };
[[nodiscard]] std::string_view code(Verdict v);              // "unfinished", "fits", "adjust", "do-not-wear"
[[nodiscard]] std::optional<Verdict> verdictFromCode(std::string_view);

enum class ReasonKind : std::uint8_t {
  pointFault,        // point
  labelLapsed,       // certification lapsed
  labelMissing,
  labelUnknown,      // no date known: leaves unfinished
  markFault,         // mark: a part that must be put right before it is worn
  cannotTry,         // hold cannot be tried
  notReached,        // mark: every way is used up; other size or model
  markOff,           // mark, finding: can be put right now
  dryHair,           // code "dry-hair"
  veto,              // question
  markOpen,          // mark: not seen, or reopened and not seen again
  pointOpen,         // point
  questionOpen,      // question
  wordOpen,          // mark: athlete's word not answered
  broken,            // athlete said that something broke
  unwell
};
struct Reason {
  ReasonKind kind = ReasonKind::markOpen;
  std::optional<Mark> mark;
  std::optional<gear::Point> point;
  Finding finding = Finding::unseen;
  Side side = Side::both;
  std::string text;                          // question id, or the finder's words
  [[nodiscard]] std::string codeText() const;   // "dry-hair", "brow-over", "faceguard-fault", "label-lapsed", "crown-open", …
  friend bool operator==(const Reason&, const Reason&) = default;
};

// What to do next for a mark that is off, first way first.
enum class AdviceKind : std::uint8_t { reseat, change, check, replacePart, otherSize, otherModel, holdUnit };
struct Advice {
  AdviceKind kind = AdviceKind::reseat;
  Mark mark = Mark::brow;                    // for whose sake
  std::optional<Deed> deed;                  // kind change
  std::optional<gear::Port> port;
  std::optional<gear::Part> part;
  int pumpsLow = 0, pumpsHigh = 0;           // air: 1 to 3
  std::optional<Length> to;                  // pad: the next step of the sheet
  int direction = 0;                         // otherSize: +1 up, -1 down
  MarkSet reopens;
  std::uint8_t way = 0;                      // index in the cell
  [[nodiscard]] std::string doText() const;  // "add", "release", "swap", "reroute", "relength", "reseat", "check", "replace", "other-size-up", "other-size-down", "other-model", "hold"
  friend bool operator==(const Advice&, const Advice&) = default;
};

enum class StepKind : std::uint8_t { stop, hair, fitted, mark, question, point, done };
struct Step {
  StepKind kind = StepKind::done;
  std::optional<Mark> mark;
  std::optional<gear::Point> point;
  std::string question;
  [[nodiscard]] std::string codeText() const;   // "stop", "hair", "brow", "warning-label", question id, "done"
  friend bool operator==(const Step&, const Step&) = default;
};

struct Assessment {
  Verdict verdict = Verdict::unfinished;
  std::vector<Reason> reasons;               // worst first, then in the order of marks and points
  std::vector<Step> open;                    // every open mark, question and point
  Step next;
  std::vector<Advice> advice;                // ways for the first mark that is off, then for the others in order
  std::array<Finding, kMarkCount> strip{};   // unseen where reopened
  Day dueFrom, dueBy;                        // of the next look; dueBy never after certifiedUntil
};
[[nodiscard]] Assessment assess(const Setup& setup, const State& state);

// The one predicate of "fits". assess() says Fits exactly when this holds; the proof in tests recomputes it on its own.
[[nodiscard]] bool isFits(const Setup& setup, const State& state);

}  // namespace snugline::fit
