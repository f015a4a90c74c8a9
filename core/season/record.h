// SPDX-License-Identifier: Apache-2.0
// Purpose: what the log says now, one record per team, person, athlete, unit and check. core/book folds facts into these; the board, the
// screens and the terminal only read them. Ids are the creating fact, "device:n". Records hold integers and text only.
// Thread: plain values; a Views handed to another thread is a copy or const.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/fit/guide.h"
#include "core/gear/certification.h"
#include "core/gear/model_sheet.h"
#include "core/gear/points.h"
#include "core/quantity/time.h"
#include "core/season/air_record.h"
#include "core/season/code_hash.h"
#include "core/season/notice_record.h"
#include "core/season/phone_record.h"
#include "core/season/points_seen.h"
#include "core/season/privacy_record.h"
#include "core/season/stamp.h"
#include "core/season/turn_record.h"

namespace snugline::season {

struct PersonRecord {
  std::string id, name, initials, role;         // role "helper", "staff" or "admin" (core/book/rights.h)
  bool isPractitioner = false;                  // athletic trainer or designated health care professional: a mark beside the role
  std::optional<CodeHash> code = std::nullopt;  // the last one set; without one nobody opens this device as this person
  friend bool operator==(const PersonRecord&, const PersonRecord&) = default;
};
struct SheetRecord {
  std::string hash;
  std::shared_ptr<const gear::ModelSheet> sheet;
  Stamp adopted;
  std::optional<ReplacedRecord> replaced{};  // the last time that it was
};

// A reading that counts no more, and why.
struct AsideReading {
  Length reading;
  std::string name;    // as TapeRecord::names
  std::string reason;  // "misread", "typed", "hair", "other-head", "other"
  Stamp stamp;         // of the setting aside: undone by taking it back
  friend bool operator==(const AsideReading&, const AsideReading&) = default;
};
// A head measured once, by one reading or several.
struct TapeRecord {
  std::vector<Length> readings;      // those that count, in the order read
  Stamp stamp;                       // of the first
  std::vector<std::string> names{};  // of the readings: the fact, '/', the place in it
  std::vector<AsideReading> aside{};
  friend bool operator==(const TapeRecord&, const TapeRecord&) = default;
};
// Whom to call, as the team sets it; in words, since a number may have letters or pauses in it.
struct EmergencyRecord {
  std::string number = "911";
  std::string plan;  // what to do and where, one or two sentences; may be empty
  friend bool operator==(const EmergencyRecord&, const EmergencyRecord&) = default;
};
struct SaidRecord {
  std::string fact;
  Instant at;
  std::string unit;  // worn when it was said; may be empty
  std::optional<fit::Mark> where;
  fit::Side side = fit::Side::both;
  fit::Feels feels = fit::Feels::tight;
  bool isHairChanged = false, isBroken = false, isUnwell = false;
  std::string words;
  bool isAdultTold = false;     // unwell: who said it says that an adult was told
  bool isMistake = false;       // unwell: who said it says that it was touched by mistake; staff ask
  bool isAcknowledged = false;  // unwell: staff have been told; the row stays
  bool isAnswered = false;      // a later check saw the marks concerned, or it was closed
  friend bool operator==(const SaidRecord&, const SaidRecord&) = default;
};
struct TeamRecord {
  std::string id, name, mascot, season;  // season "2026"
  std::optional<Day> seasonStart, seasonEnd;
  int practiceMinute = 930;                                                      // 15:30
  std::array<bool, 7> practiceDays{true, true, true, true, true, false, false};  // Monday first
  std::optional<WeatherRecord> weather;                                          // as last noted
  std::map<std::string, PlaceRecord> places;                                     // by name
  std::optional<WarningRecord> warning;                                          // the yearly warning, when the team has set a text
  std::optional<int> nameYears;                                                  // how long names are shown; nothing: always
  std::vector<LegalHoldRecord> legalHolds;                                       // on everybody, open ones
  std::optional<RecoveryRecord> recovery;                                        // the key on the recovery sheet
  std::vector<NoticeRecord> notices;                                             // oldest first
  std::vector<SeasonRecord> closedSeasons;                                       // oldest first
  std::vector<SaidRecord> unnamed;                                               // hits and feeling bad said without a number, oldest first
  EmergencyRecord emergency;
  friend bool operator==(const TeamRecord&, const TeamRecord&) = default;
};
// The outcome of a check as it was recorded; never worked out again.
struct EndedCheck {
  std::string check, unit;
  fit::CheckKind kind = fit::CheckKind::first;
  fit::Verdict verdict = fit::Verdict::unfinished;
  std::vector<std::string> reasons;  // Reason::codeText()
  std::array<fit::Finding, fit::kMarkCount> strip{};
  bool isHairDry = false;
  bool isForCold = false;  // fits with air added in the cold
  Day dueFrom, dueBy;
  Climate climate;  // in which the marks were seen
  Stamp stamp;
  friend bool operator==(const EndedCheck&, const EndedCheck&) = default;
};
// Seen in a standing line: three marks at a glance, never nine, and no verdict.
struct LineRecord {
  std::string unit;
  fit::Finding brow = fit::Finding::unseen, straps = fit::Finding::unseen, hold = fit::Finding::unseen;
  Climate climate;
  Stamp stamp;
  friend bool operator==(const LineRecord&, const LineRecord&) = default;
};
// The helmet that somebody gave up and got none for; not one that was handed in at the end of a season.
struct HadRecord {
  std::string unit, reason;  // as unit-unpaired says
  Stamp stamp;
  friend bool operator==(const HadRecord&, const HadRecord&) = default;
};
struct AthleteRecord {
  std::string id, jersey, family, given;  // jersey as written: "07", "00"
  std::optional<int> birthYear;
  bool isOnRoster = true;
  Stamp added;
  std::vector<std::string> units;           // paired now; more than one is an open question
  std::string pairedAs;                     // fact of the last pairing
  std::optional<Stamp> paired;              // when that was; a fit counts for this unit only when it is later
  std::optional<HadRecord> had{};           // while there is none now
  std::vector<TapeRecord> tapes;            // oldest first
  std::vector<SaidRecord> said;             // oldest first, answered ones included
  std::optional<Stamp> hairChanged;         // not seen in a fit since
  std::optional<Stamp> partChanged;         // on the unit worn, not seen in a fit since
  fit::MarkSet partMarks;                   // that the changed parts reopened; empty where partChanged says nothing of it: all nine
  std::vector<std::string> changedParts;    // codes of gear::UnitPart or words, of those changes, oldest first
  std::string openCheck;                    // begun and not ended; empty when none
  std::vector<EndedCheck> checks;           // oldest first
  std::vector<LineRecord> lines;            // oldest first
  std::optional<Stamp> left;                // taken off the roster, while they are
  std::vector<SignatureRecord> signatures;  // of the yearly warning, oldest first
  std::vector<LegalHoldRecord> legalHolds;  // on this athlete, open ones
  std::vector<PhoneRecord> phones;          // joined now, oldest first
  std::optional<Day> nameKeptBack;  // since when; never from the Book: set with the names taken out where views are read (privacy.h)
  friend bool operator==(const AthleteRecord&, const AthleteRecord&) = default;
};

enum class UnitPlace : std::uint8_t { shelf, withAthlete, repair, sentOut, retired, lost };
[[nodiscard]] std::string_view code(UnitPlace p);  // "shelf", "with-athlete", "repair", "sent-out", "retired", "lost"
struct HoldRecord {
  std::string fact, reason;  // reason: point code, "label", "fit", "broken", "notice", "other"
  std::string what;          // in the finder's words
  Stamp stamp;
  std::string notice{};  // fact of the maker's notice that it stands for
  friend bool operator==(const HoldRecord&, const HoldRecord&) = default;
};
// Who put it right while it was away (codes of UnitMoved::by).
inline constexpr std::string_view kByUs = "us", kByFirm = "firm", kByRecertifier = "recertifier", kByMaker = "maker";
// The last return from repair or from being sent out.
struct ReturnRecord {
  std::string by;     // one of the above; empty: not said
  std::string done;   // in words
  std::string paper;  // which paper says so; empty: none
  bool isCleaned = false;
  Stamp stamp;
  friend bool operator==(const ReturnRecord&, const ReturnRecord&) = default;
};
struct LabelRecord {
  gear::Label label;
  Stamp stamp;
  friend bool operator==(const LabelRecord&, const LabelRecord&) = default;
};
struct UnitRecord {
  std::string id, serial, tagKey, sheet, size;  // sheet: hash
  std::string made;                             // "2024-01-15" or "2024-01", may be empty
  std::string lot{};                            // as its tag says; may be empty
  std::string shelf{};                          // where it belongs when nobody has it; may be empty
  Stamp received;
  bool isInService = false;
  UnitPlace place = UnitPlace::shelf;
  std::string placeWords;
  std::vector<LabelRecord> labels;  // oldest first; the last one counts
  bool isLabelMissing = false;
  bool isLabelUnreadable = false;  // as last looked at: there is one, and nobody can read it
  bool isLabelDisputed = false;    // two readings that differ, from different devices, unsettled
  SeenPoints points;
  std::vector<HoldRecord> holds;             // open ones
  std::vector<std::string> athletes;         // paired now; more than one is an open question
  bool isInHand = false;                     // paired, and yet in our hands
  std::string keptBy{};                      // who still has it and is not paired with it; empty: nobody
  std::optional<ReturnRecord> returned{};    // the last time that it came back
  std::vector<AirEvent> air;                 // oldest first
  std::uint32_t airFrom = 0;                 // events before this one are of bladders since repaired or replaced
  std::vector<PortAir> ports;                // by gear::Port, worked out from the events; empty before the first
  std::vector<PumpedRecord> pumped;          // what pumps did in its checks, oldest first
  std::optional<CollectedRecord> collected;  // the last time it was handed in at the end of a season
  std::vector<PhotoRecord> photos;           // oldest first
  friend bool operator==(const UnitRecord&, const UnitRecord&) = default;
};

// A check in progress or ended, with the guide's state folded from its answers.
struct AnswerRecord {
  std::string fact;  // what undo names
  fit::Answer answer;
  std::string group;  // set when several share one fact
};
struct CheckRecord {
  std::string id, athlete, unit, sheet;  // sheet: hash
  fit::CheckKind kind = fit::CheckKind::first;
  int rules = fit::kRulesVersion;
  Stamp begun;
  std::optional<Day> certifiedUntil;  // as judged when it began
  bool isLabelMissing = false;
  std::string before;                 // the check that it follows
  std::vector<AnswerRecord> answers;  // in order, corrected ones left out
  fit::State state;                   // fold of answers
  std::optional<EndedCheck> ended;
};

// What was heard of a device: its entry with the latest wall time, and who made it.
struct DeviceRecord {
  Instant latest;
  std::string who;
  friend bool operator==(const DeviceRecord&, const DeviceRecord&) = default;
};

struct Views {
  std::optional<TeamRecord> team;
  std::string ownDevice;                        // this one's name in the Book; empty where it has none yet
  std::map<std::string, DeviceRecord> devices;  // by name, every one that wrote here
  std::map<std::string, PersonRecord> people;
  std::unordered_map<std::string, SheetRecord> sheets;  // by hash
  std::unordered_map<std::string, AthleteRecord> athletes;
  std::unordered_map<std::string, UnitRecord> units;
  std::unordered_map<std::string, CheckRecord> openChecks;  // open ones only; ended ones live in the athlete and the log

  [[nodiscard]] const AthleteRecord* athlete(const std::string& id) const;
  [[nodiscard]] const UnitRecord* unit(const std::string& id) const;
  [[nodiscard]] const CheckRecord* openCheck(const std::string& id) const;
  [[nodiscard]] const gear::ModelSheet* sheet(const std::string& hash) const;
  // The sheet that stands for the one named now: itself, or what replaced it, however often.
  [[nodiscard]] const std::string& standingSheet(const std::string& hash) const;
  [[nodiscard]] const gear::ModelSheet* sheetOf(const UnitRecord& unit) const;          // the standing one
  [[nodiscard]] const AthleteRecord* athleteByJersey(const std::string& jersey) const;  // linear
  [[nodiscard]] const UnitRecord* unitByTag(const std::string& tagKey) const;           // linear; Book keeps an index
};

// Last good day of a unit as a span, nothing when no label is known.
[[nodiscard]] std::optional<gear::DaySpan> lastGoodDay(const Views& views, const UnitRecord& unit);
// The setup of a check as it stands: sheet, kind, label, season end.
[[nodiscard]] Result<fit::Setup> setupOf(const Views& views, const CheckRecord& check, Day today);

}  // namespace snugline::season
