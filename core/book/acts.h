// SPDX-License-Identifier: Apache-2.0
// Purpose: the jobs of the people, as drafts of facts. Pure: read the views, say what to write down, write nothing. Screens and the
// terminal both come through here, so that a rule stands once. Errors: notFound, notAllowed (detail names the rule), outOfRange,
// and those of fit::take. Thread: plain functions.
#pragma once

#include <string>
#include <vector>

#include "core/book/fact.h"
#include "core/gear/tag.h"
#include "core/gear/unit_part.h"
#include "core/season/air_record.h"
#include "core/season/record.h"

namespace snugline::book {

using Drafts = std::vector<Draft>;

// Names of the rules that refuse (Error::detail of notAllowed), for the screen to put into words.
namespace rule {
inline constexpr std::string_view kUnitHeld = "unit-held";
inline constexpr std::string_view kUnitAway = "unit-away";
inline constexpr std::string_view kUnitRetired = "unit-retired";
inline constexpr std::string_view kNotInService = "not-in-service";
inline constexpr std::string_view kLabelLapsed = "label-lapsed";
inline constexpr std::string_view kLabelMissing = "label-missing";
inline constexpr std::string_view kLabelUnknown = "label-unknown";
inline constexpr std::string_view kLabelUnreadable = "label-unreadable";
inline constexpr std::string_view kLabelDisputed = "label-disputed";
inline constexpr std::string_view kPointUnseen = "point-unseen";  // place: the point
inline constexpr std::string_view kPointFault = "point-fault";    // place: the point
inline constexpr std::string_view kBrokeSaid = "broke-said";
inline constexpr std::string_view kUnwellSaid = "unwell-said";
inline constexpr std::string_view kLabelNotGood = "label-not-good";            // a hold for a label that is lapsed, missing, not read
inline constexpr std::string_view kPointsAfterReport = "points-after-report";  // to be checked after a report
inline constexpr std::string_view kReturnUnsaid = "return-unsaid";             // back from repair, and nobody said what was done
inline constexpr std::string_view kNotAway = "not-away";
inline constexpr std::string_view kNobodyHasIt = "nobody-has-it";
inline constexpr std::string_view kReportOpen = "report-open";
inline constexpr std::string_view kNoUnit = "no-helmet";
inline constexpr std::string_view kTwoUnits = "two-helmets";
inline constexpr std::string_view kTwoAthletes = "two-athletes";
inline constexpr std::string_view kNeverFitted = "never-fitted";  // a look before any fit
inline constexpr std::string_view kCheckOpen = "check-open";
inline constexpr std::string_view kCrackHold = "crack-hold";  // ends by return from the recertifying firm or the maker, or by retirement
inline constexpr std::string_view kAlreadyClosed = "already-closed";
inline constexpr std::string_view kNothingSaid = "nothing-said";
inline constexpr std::string_view kOffRoster = "off-roster";
inline constexpr std::string_view kBeforeRefill = "before-refill";    // a reading dated before the last refill
inline constexpr std::string_view kBeforeReading = "before-reading";  // a reading dated before the last one
}  // namespace rule

// What a hold says when a point that service needs was not seen at intake; such a hold ends when it is seen.
inline constexpr std::string_view kNotSeenYet = "not seen";
inline constexpr std::size_t kNameLimit = 80;    // characters
inline constexpr std::size_t kWordsLimit = 500;  // characters

// --- athletes. jersey: 0..3 characters of digits as written ("07"); family 1..80 characters, given 0..80; birth year 1900..2199.
// Two athletes may share a number; the roster questions it. Nothing to change drafts nothing.
[[nodiscard]] Result<Drafts> addAthlete(const season::Views&, const AthleteAdded&);
[[nodiscard]] Result<Drafts> changeAthlete(const season::Views&, const std::string& athlete, const AthleteChanged&);
// with: the fact that began measuring this head (TapeRecord::stamp), for another reading of the same time; else empty.
[[nodiscard]] Result<Drafts> readTape(const season::Views&, const std::string& athlete, const std::vector<Length>& readings,
                                      const std::string& with = {});
// reading: its name (TapeRecord::names); reason: a code of season::AsideReading. Undone by taking the fact back.
[[nodiscard]] Result<Drafts> setReadingAside(const season::Views&, const std::string& athlete, const std::string& reading,
                                             const std::string& reason);

// --- units
struct Arrival {
  gear::Tag tag;
  std::string unit{};  // id: which one, where the tag alone does not say; else empty
  std::string sheet;   // hash of an adopted sheet
  std::string size;    // of that sheet
  std::optional<gear::Label> label;
  bool isLabelMissing = false;
  bool isLabelUnreadable = false;                  // there is one, and nobody can read it
  gear::PointFindings points;                      // as seen now; unseen ones stay unseen
  bool isGroup = false;                            // all sound at one touch
  std::optional<season::ReturnRecord> returned{};  // asked where it was in repair or sent out
};
// Not known yet: received, label, points, and in service or held. Known: label and points seen again.
[[nodiscard]] Result<Drafts> takeIn(const season::Views&, const Arrival&, Day today);
// What would come of it: in service, or held and why (reason codes as in HoldRecord).
struct Outcome {
  bool isInService = false;
  std::string reason, what;
};
[[nodiscard]] Outcome outcomeOf(const season::Views&, const Arrival&, Day today);
[[nodiscard]] Result<Drafts> adoptSheet(const season::Views&, const gear::ModelSheet&);
[[nodiscard]] Result<Drafts> seePoints(const season::Views&, const std::string& unit, const gear::PointFindings&, bool isGroup);
// Nothing: looked for and missing; or, isUnreadable, there is one that nobody can read.
// A good label ends the holds that waited for it, and a crack's where the helmet came back mended (comeBack).
[[nodiscard]] Result<Drafts> readLabel(const season::Views&, const std::string& unit, const std::optional<gear::Label>&, Day today,
                                       bool isUnreadable = false);
[[nodiscard]] Result<Drafts> hold(const season::Views&, const std::string& unit, const std::string& reason, const std::string& what,
                                  bool isWithAthlete);
// Where a helmet is now: in our hands, or with who is paired with it. Nothing new drafts nothing.
[[nodiscard]] Result<Drafts> whereNow(const season::Views&, const std::string& unit, bool isWithAthlete);
// Refused while what it stands for is open (season::whyNotReleased): kCrackHold, kPointFault, kLabelNotGood.
[[nodiscard]] Result<Drafts> releaseHold(const season::Views&, const std::string& unit, const std::string& hold, const std::string& why,
                                         Day today);
// Refused by whatever else keeps it off every head (core/season/standing.h).
[[nodiscard]] Result<Drafts> putInService(const season::Views&, const std::string& unit, Day today);
// Back from repair or from being sent out: by whom, what was done (1..kWordsLimit characters), on which paper (wanted unless it was us),
// and whether it was cleaned. Everything is unchecked again and out of service; whoever is paired with it is paired anew and needs a first
// fit. Ends every hold but those of a maker's notice, of a crack and of a label that is not good: a label read afterwards ends these where
// it is good, the crack's only if the recertifying firm or the maker mended it. Refused: kNotAway, kUnitRetired.
[[nodiscard]] Result<Drafts> comeBack(const season::Views&, const std::string& unit, const season::ReturnRecord&, Day today);
// to: repair, sent-out, retired, lost; found: a lost one, everything is unchecked again; shelf says where it belongs and changes nothing
// else. reason: why, in words. Sent out, retired and lost also unpair; retired releases every hold.
[[nodiscard]] Result<Drafts> move(const season::Views&, const std::string& unit, const std::string& to, const std::string& where,
                                  const std::string& reason = {});
// Taken from whoever has it, paired or not: back with us. A check that was open in it ends as it stands; said to be broken, it is held.
[[nodiscard]] Result<Drafts> toShelf(const season::Views&, const std::string& unit, Instant now);
// A part of the unit was replaced; whoever wears it is seen before practice.
[[nodiscard]] Result<Drafts> changePart(const season::Views&, const std::string& unit, const std::string& part, const std::string& what);
// One of the parts that are known: says which marks it reopens (core/fit/part_marks.h). Errors also: unknownPort (a bladder that the
// model has not).
[[nodiscard]] Result<Drafts> changePart(const season::Views&, const std::string& unit, gear::UnitPart part, const std::string& what);
// Only a unit that nothing keeps off every head (core/season/standing.h). Unpairs what either had; isOldWithAthlete: the athlete still has
// the old one, so that it is asked for.
[[nodiscard]] Result<Drafts> pair(const season::Views&, const std::string& athlete, const std::string& unit, Day today,
                                  bool isOldWithAthlete = false);
// Given back without another in its place. Errors: notFound also when the two are not paired.
[[nodiscard]] Result<Drafts> unpair(const season::Views&, const std::string& athlete, const std::string& unit, const std::string& why);

// --- checks
// first when never fitted in this unit (or after repair), else look; refit on request. Refused: no unit, held, label lapsed, one open.
[[nodiscard]] Result<Drafts> beginCheck(const season::Views&, const std::string& athlete, fit::CheckKind kind, Day today);
[[nodiscard]] fit::CheckKind kindDue(const season::Views&, const season::AthleteRecord&);
// One touch. Answers that the guide refuses are refused here and nothing is drafted. Points become facts about the unit.
// Answers about air carry the weather as noted (weatherFor) and, for readings, by what they were read.
[[nodiscard]] Result<Drafts> answer(const season::Views&, const std::string& check, const std::vector<fit::Answer>& answers, Instant now,
                                    const season::AirSource& source = {});
// Ends the check with the verdict as it stands; do-not-wear also holds the unit (reason from the first cause) unless it is only that
// another size or model is needed: then it is unpaired. unfinished and adjust stay open on the board.
[[nodiscard]] Result<Drafts> endCheck(const season::Views&, const std::string& check, Instant now);

// --- air. Temperature -60 to 60 C, elevation -430 to 9000 m, barometer as core/air/atmosphere.h, gauge -20 to 200 kPa: beyond that
// outOfRange with place "temperature", "elevation", "ambient", "gauge" and detail "value, lowest, highest" (mK, mm, Pa).
// Weather that facts carry: the team's last, unless it was noted more than a day before or after now; then none.
[[nodiscard]] season::Conditions weatherFor(const season::Views&, Instant now);
// What the weather says of a check's helmet, where that is news to the check: the next answer takes it along (answer()). Nothing once
// a person said whether the helmet is cold.
[[nodiscard]] std::optional<fit::ColdSeen> coldNow(const season::Views&, const season::CheckRecord& check, Instant now);
// One touch on the weather chip. Nothing said is refused (notAllowed, kNothingSaid). Elevation left out at a known place is that place's.
[[nodiscard]] Result<Drafts> noteWeather(const season::Views&, const season::Conditions&);
// Travel presets. Name 1..80 characters. removePlace: notFound when it is no preset.
[[nodiscard]] Result<Drafts> setPlace(const season::Views&, const std::string& place, Elevation elevation);
[[nodiscard]] Result<Drafts> removePlace(const season::Views&, const std::string& place);
// A reading outside a check, taken at `now`. Refused: a port that the sheet lacks (unknownPort), a unit that is away or retired, a time
// before the port's last refill (kBeforeRefill) or last reading (kBeforeReading): ask for the clock, or leave it.
struct AirReading {
  gear::Port port = gear::Port::crown;
  Pressure gauge;
  bool isOnHead = false;
  bool isRefill = false;  // filled just before it was read; the marks are to be seen again
  season::AirSource source;
};
[[nodiscard]] Result<Drafts> readAir(const season::Views&, const std::string& unit, const AirReading&, Instant now);
// A standing line: everybody in it once, and what was off. All in one list for one append. Refused as a whole, naming the athlete's number:
// nobody (kNothingSaid), named twice or an exception who is not in the line (inconsistent), no helmet or two, helmet held, away or its
// label lapsed, never fitted (kNeverFitted), a check open (kCheckOpen), a report not answered (kReportOpen), a hit or feeling bad not
// closed (kUnwellSaid).
struct LineException {
  std::string athlete;
  fit::Mark mark = fit::Mark::straps;  // brow, straps or hold
  fit::Finding finding = fit::Finding::under;
};
// How a line of so many is walked: screens of at most kLineScreenMost, as even as can be, so that from 16 on each has 8 or more.
inline constexpr int kLineScreenMost = 12;  // ours: what one looks along at once, and what fits one screen
[[nodiscard]] std::vector<int> lineScreens(int athletes);
[[nodiscard]] Result<Drafts> lineCheck(const season::Views&, const std::vector<std::string>& seen, const std::vector<LineException>&,
                                       Instant now);

// --- what was said
[[nodiscard]] Result<Drafts> say(const season::Views&, const std::string& athlete, const season::SaidRecord&);
// A hit or feeling bad, said at a tablet before any number: about the team.
[[nodiscard]] Result<Drafts> sayUnnamed(const season::Views&);
// What who said a hit or feeling bad says next. Below, an empty athlete means what was said without a number.
[[nodiscard]] Result<Drafts> followSaid(const season::Views&, const std::string& athlete, const std::string& said, bool isMistake);
[[nodiscard]] Result<Drafts> acknowledge(const season::Views&, const std::string& athlete, const std::string& said, bool isClosed,
                                         const std::string& outcome);
[[nodiscard]] Result<Drafts> hairChanged(const season::Views&, const std::string& athlete, const std::string& words);

}  // namespace snugline::book
