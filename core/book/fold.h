// SPDX-License-Identifier: Apache-2.0
// Purpose: facts into records. Each record depends only on the facts that touch it, in their order, so that folding one entity anew from
// its facts gives what folding everything gives (BOOK_FORMAT.md, Views). Thread: plain values, confined to the Book's thread.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "core/book/fact.h"
#include "core/season/record.h"

namespace snugline::book {

enum class Entity : std::uint8_t { team, person, sheet, athlete, unit, check, other };
inline constexpr std::size_t kEntityCount = 7;
inline constexpr std::string_view kTeamSubject = "team";  // the team is one, whichever fact founded it

struct Touch {
  Entity entity = Entity::other;
  const std::string* id = nullptr;  // lives as long as the fact and the list
};
// The entities that a fact changes or belongs to, from its content alone; a correction touches what it lists. A rebuild asks this of
// every fact, so that the usual few come without an allocation.
class Touches {
 public:
  [[nodiscard]] const Touch* begin() const { return m_many.empty() ? m_few.data() : m_many.data(); }
  [[nodiscard]] const Touch* end() const { return begin() + (m_many.empty() ? m_count : m_many.size()); }
  void add(Entity entity, const std::string& id);          // id lives in the fact
  void keep(Entity entity, std::vector<std::string> ids);  // ids that the fact does not hold as they are
  explicit Touches(const Fact& fact);
  Touches(Touches&&) = delete;  // it points into itself
  Touches& operator=(Touches&&) = delete;

 private:
  std::array<Touch, 3> m_few{};
  std::size_t m_count = 0;
  std::vector<std::string> m_kept;
  std::vector<Touch> m_many;
};

// What the fold must remember beside the record.
struct AthleteNotes {
  struct Pairing {
    std::string unit;
    season::Stamp stamp;
    friend bool operator==(const Pairing&, const Pairing&) = default;
  };
  struct OpenCheck {
    std::string check, unit, hairFact, partFact;  // what had changed when it began
    std::uint64_t saidBefore = 0;                 // words of the athlete recorded before it began
    std::vector<std::string> words;               // those that it names
    friend bool operator==(const OpenCheck&, const OpenCheck&) = default;
  };
  std::vector<Pairing> pairings;
  std::vector<OpenCheck> open;
  std::map<std::string, std::string> saidIn;  // word -> the check it was said in
  std::string partUnit;                       // unit that partChanged is about
  friend bool operator==(const AthleteNotes&, const AthleteNotes&) = default;
};
struct UnitNotes {
  struct Reading {
    std::string fact;
    std::optional<gear::Label> label;  // nothing: looked for and missing
    friend bool operator==(const Reading&, const Reading&) = default;
  };
  std::vector<Reading> readings;  // since the unit last came back
  friend bool operator==(const UnitNotes&, const UnitNotes&) = default;
};
struct CheckNotes {
  std::vector<WordRef> words;
};

struct Folded {
  season::Views views;
  std::unordered_map<std::string, AthleteNotes> athleteNotes;
  std::unordered_map<std::string, UnitNotes> unitNotes;
  std::unordered_map<std::string, CheckNotes> checkNotes;
  std::unordered_map<std::string, std::set<std::string>> unitsByTag;
  std::array<std::unordered_set<std::string>, kEntityCount> changed;  // by entity, since somebody cleared it

  // Folds the fact into one entity it touches. Corrections are the caller's: they fold as nothing here.
  void take(const Fact& fact, Entity entity, const std::string& id);
  void take(const Fact& fact);  // into all of them
  // Forgets one entity, so that its facts can be folded again.
  void forget(Entity entity, const std::string& id);
  // After its facts or its sheet changed by other ways than take(): state of open checks on that sheet.
  void restate(const std::string& sheetHash);
  void restate(season::CheckRecord& check) const;
  // Once after a fold: the leaks of units whose air was read. Whoever takes facts entity by entity asks for it when done.
  void settle();

 private:
  std::unordered_set<std::string> m_unsettled;  // units
  void takeTeam(const Fact& fact);
  void takePerson(const Fact& fact);
  void takeSheet(const Fact& fact, const std::string& hash);
  void takeAthlete(const Fact& fact, const std::string& id);
  void takeUnit(const Fact& fact, const std::string& id);
  void takeCheck(const Fact& fact, const std::string& id);
};

[[nodiscard]] season::Stamp stampOf(const Fact& fact);
void foldAthlete(season::AthleteRecord& record, AthleteNotes& notes, const Fact& fact);  // fold_athlete.cpp
void foldUnit(season::UnitRecord& record, UnitNotes& notes, const Fact& fact);           // fold_unit.cpp
// What facts say of a unit's air: fold_air.cpp.
void foldAir(season::UnitRecord& record, const Fact& fact, const CheckAnswered& body);
void foldAir(season::UnitRecord& record, const Fact& fact, const UnitAirRead& body);
void foldPumped(season::UnitRecord& record, const Fact& fact, const CheckEnded& body);
void foldWeather(season::TeamRecord& record, const Fact& fact);
// fold_people.cpp: recovery key, warning, how long names are shown, whom to call; what is said without a number, and what follows it.
void foldHold(std::vector<season::LegalHoldRecord>& holds, const Fact& fact, const LegalHoldMade& body);
void foldHold(std::vector<season::LegalHoldRecord>& holds, const LegalHoldEnded& body);
void foldPrivacy(season::TeamRecord& record, const Fact& fact);
void foldUnnamed(season::TeamRecord& record, const Fact& fact);
void follow(std::vector<season::SaidRecord>& all, const SaidFollowed& body);
void acknowledge(std::vector<season::SaidRecord>& all, const SaidAcknowledged& body);
void foldNotice(season::TeamRecord& record, const Fact& fact);  // fact_gear.cpp
// fact_season.cpp
void foldSeason(season::TeamRecord& record, const Fact& fact);
void foldCollected(season::UnitRecord& record, const Fact& fact, const UnitCollected& body);
void foldPhoto(season::UnitRecord& record, const Fact& fact, const PhotoTaken& body);
// The answers of a fact in a check, as the guide takes them. Nothing when it holds none.
[[nodiscard]] std::vector<fit::Answer> answersIn(const Fact& fact);  // fold_check.cpp
[[nodiscard]] std::string hashOf(std::string_view bytes);            // BLAKE2b-256, hex

}  // namespace snugline::book
