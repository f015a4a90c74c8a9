// SPDX-License-Identifier: Apache-2.0
// Purpose: facts, the only thing that is ever written down. Byte format: BOOK_FORMAT.md. A fact is never edited: a correction is a new
// fact that names the old one. Kinds of a later version are kept and forwarded as they are (Unknown).
// Units stand in the key (gap_um, gauge_pa, at_ms). Errors of the codec: those of strict_json.h, tooLong.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/book/people_facts.h"
#include "core/book/phone_facts.h"
#include "core/book/season_facts.h"
#include "core/fit/guide.h"
#include "core/gear/certification.h"
#include "core/season/record.h"

namespace snugline::book {

inline constexpr std::size_t kFactLimitBytes = 64 * 1024;

struct TeamFounded {
  std::string name, mascot, season, publicKey;
};  // publicKey: 64 hex digits, of the founding device
struct DeviceAdmitted {
  std::string device, publicKey, because;
};  // because: "joined", "restored", "copied"
struct PersonAdded {
  std::string name, initials, role;
  bool isPractitioner = false;
};
struct PersonChanged {
  std::optional<std::string> role;
  std::optional<bool> isPractitioner;
};
struct CodeSet {
  season::CodeHash code;
};  // about the person; the one last in order counts
struct AthleteAdded {
  std::string jersey, family, given;
  std::optional<int> birthYear;
};
struct AthleteChanged {
  std::optional<std::string> jersey, family, given;
  std::optional<int> birthYear;
  std::optional<bool> isOnRoster;
};
struct TapeRead {
  std::vector<Length> readings;
  std::string with{};  // the fact that began measuring this head, where this is another reading of that time
};
struct ReadingSetAside {
  std::string tape;  // the fact that holds the reading
  int place = 0;     // in it
  std::string reason;
};  // about the athlete; taken back by a correction
struct SheetAdopted {
  std::string sheet;
  std::string replaces{};  // hash of the sheet that it stands for from now on
};                         // sheet: the sheet's bytes, exactly
struct UnitReceived {
  std::string serial, tagKey, sheet, size, made;
  std::string lot{};  // as the tag says
};                    // sheet: hash
struct LabelRead {
  std::optional<gear::Label> label;
  bool isUnreadable = false;  // without a label: there is one, and nobody can read it
};                            // nothing of both: looked for and missing
struct PointsSeen {
  std::vector<std::pair<gear::Point, gear::PointFinding>> points;
  bool isGroup = false;
  std::string check;
};  // about the unit; also an answer of the check named
struct UnitHeld {
  std::string reason, what;
  bool isWithAthlete = false;
  std::string notice{};  // fact of the maker's notice
};
struct HoldReleased {
  std::string hold, reason;
};
struct UnitMoved {
  std::string to, where;
  std::string reason{};
  season::ReturnRecord returned{};  // "back" only; its stamp is filled by the fold
};  // "in-service", "repair", "sent-out", "back", "retired", "lost"; "shelf": where it belongs; "in-hand", "with-athlete": who has it now,
    // nothing else changes
struct PartChanged {
  std::string part, what, athlete;
  fit::MarkSet reopens{};  // of the athlete who wears it; empty: all nine, as before parts were told apart
};                         // part: code of gear::UnitPart, or words; athlete: who wears it; may be empty
struct UnitPaired {
  std::string athlete;
};
struct UnitUnpaired {
  std::string athlete, reason;
  bool isStillWith = false;  // they still have it: it is asked for
};
// A word of the athlete that stood unanswered when the check began.
struct WordRef {
  std::string said;
  std::optional<fit::Mark> where;
  fit::Side side = fit::Side::both;
  fit::Feels feels = fit::Feels::tight;
};
struct CheckBegun {
  std::string athlete, unit, sheet, before;
  fit::CheckKind kind = fit::CheckKind::first;
  int rules = fit::kRulesVersion;
  std::optional<Day> certifiedUntil;
  bool isLabelMissing = false;
  std::vector<WordRef> words;
};
struct CheckAnswered {
  std::vector<fit::Answer> answers;
  // Said where an answer is about air; the unit then keeps it too.
  std::string unit{};
  season::Conditions conditions{};
  season::AirSource source{};
};  // one touch: kinds hair-seen, fitted-set, mark-seen, adjusted, air-read, question-answered by its content
struct CheckEnded {
  std::string athlete, unit;
  season::EndedCheck outcome;
  season::Conditions conditions{};             // in which the marks were seen
  std::vector<season::PumpedRecord> pumped{};  // without the check's name
};                                             // about the check; outcome.stamp and outcome.climate are filled by the fold
struct Said {
  season::SaidRecord said;
  std::string check;
  bool isUnnamed = false;  // a hit or feeling bad without a number: about the team
};                         // about the athlete; fact and at are filled by the fold; check: the open one, if any
// What who said unwell says next: that an adult was told, or that it was touched by mistake.
struct SaidFollowed {
  std::string said;
  bool isMistake = false;
  bool isUnnamed = false;
};  // about the athlete or, unnamed, the team
struct SaidAcknowledged {
  std::string said;
  bool isClosed = false;
  std::string outcome;
  bool isUnnamed = false;
};
struct HairChanged {
  std::string words;
};
struct PracticeSet {
  std::optional<Day> seasonStart, seasonEnd;
  std::optional<int> minute;
  std::optional<std::array<bool, 7>> days;
  std::string season;
};
struct WeatherNoted {
  season::Conditions conditions;
};  // about the team
struct PlaceSet {
  std::string place;
  std::optional<Elevation> elevation;  // nothing: the place is given up
};                                     // about the team
struct UnitAirRead {
  gear::Port port = gear::Port::crown;
  Pressure gauge;
  bool isOnHead = false;
  bool isRefill = false;  // air was put in or let out just before
  season::Conditions conditions;
  season::AirSource source;
};  // about the unit, outside a check
struct NoticeIssued {
  std::string text;
  Day day;
  season::NoticeScope scope;
};  // about the team
struct LineSeen {
  std::string unit;
  fit::Finding brow = fit::Finding::snug, straps = fit::Finding::snug, hold = fit::Finding::snug;
  season::Conditions conditions;
};  // about the athlete
struct Corrected {
  std::string fact;
  std::vector<std::string> touches;
};  // takes the named fact out of the fold
struct NoteAdded {
  std::string text;
};
struct Unknown {
  std::string kind;
  std::int64_t version = 0;
};

using Body = std::variant<TeamFounded, DeviceAdmitted, PersonAdded, CodeSet, PersonChanged, AthleteAdded, AthleteChanged, TapeRead,
                          ReadingSetAside, SheetAdopted, UnitReceived, LabelRead, PointsSeen, UnitHeld, HoldReleased, UnitMoved,
                          PartChanged, UnitPaired, UnitUnpaired, CheckBegun, CheckAnswered, CheckEnded, Said, SaidFollowed,
                          SaidAcknowledged, HairChanged, PracticeSet, WeatherNoted, PlaceSet, UnitAirRead, LineSeen, NoticeIssued,
                          RecoverySet, WarningSet, WarningSigned, RetentionSet, EmergencySet, LegalHoldMade, LegalHoldEnded, PhoneJoined,
                          PhoneLeft, SeasonClosed, UnitCollected, PhotoTaken, Corrected, NoteAdded, Unknown>;

// What somebody wants to write down; device, n, order and time are given by the Book.
struct Draft {
  std::string about;  // id of the entity; empty for a fact that creates its entity (its own id stands for it)
  Body body;
};

struct Fact {
  std::string device;
  std::uint64_t n = 0;
  std::int64_t order = 0;  // Lamport
  Instant at;
  std::string who;    // person id, may be empty
  std::string about;  // never empty once decoded: own id for creating facts
  Body body;
  [[nodiscard]] std::string id() const { return device + ':' + std::to_string(n); }
};

[[nodiscard]] std::string_view kindOf(const Body& body);  // "mark-seen"
// One line without the newline.
[[nodiscard]] Result<std::string> encode(const Fact& fact);
[[nodiscard]] Result<Fact> decode(std::string_view line, const std::string& name = "fact");
// Ids of the entities whose records the fact changes, from its content alone.
[[nodiscard]] std::vector<std::string> touches(const Fact& fact);

}  // namespace snugline::book
