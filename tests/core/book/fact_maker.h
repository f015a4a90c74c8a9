// SPDX-License-Identifier: Apache-2.0
// Purpose: arbitrary valid facts. With a pool of ids they hang together as a season does; without, ids are free text.
#pragma once

#include <random>
#include <string>
#include <utility>
#include <vector>

#include "core/book/fact.h"

namespace snugline::test {

class FactMaker {
 public:
  static constexpr int kKinds = 43;  // every kind but corrected, which needs a fact to correct
  explicit FactMaker(std::uint64_t seed) : m_chance(seed) {}

  int pick(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_chance); }
  bool toss() { return pick(0, 1) == 1; }
  std::string text() {
    // Quotes, escapes, control characters, two to four byte letters; also nothing at all.
    static const std::vector<std::string> kPieces{"a",    "B",    "7", " ", "\"", "\\", "/",      "\n", "\t",
                                                  "\x01", "\x7f", "é", "ß", "漢", "😀",  "\u2028", "<",  "{}"};
    std::string made;
    for (int i = pick(0, 8); i > 0; --i) made += kPieces[static_cast<std::size_t>(pick(0, static_cast<int>(kPieces.size()) - 1))];
    return made;
  }
  Length length() { return {pick(-5'000, 400'000)}; }
  Pressure pressure() { return {pick(-20'000, 200'000)}; }
  Day day() { return dayOf(2026, 1, 1).plus(pick(-40'000, 60'000)); }
  fit::Side side() { return static_cast<fit::Side>(pick(0, 2)); }
  fit::Mark mark() { return static_cast<fit::Mark>(pick(0, 8)); }
  fit::Finding finding() { return static_cast<fit::Finding>(pick(0, 4)); }
  fit::Feels feels() { return static_cast<fit::Feels>(pick(0, 2)); }
  gear::Point point() { return static_cast<gear::Point>(pick(0, 6)); }
  gear::PointFinding pointFinding() {
    gear::PointFinding made{static_cast<gear::PointState>(pick(0, 2)), {}};
    if (made.state == gear::PointState::fault) made.what = text();
    return made;
  }
  template <typename T>
  std::string id(const std::vector<T>& pool) {
    if (pool.empty()) return "zzzzzzzzzzzzz:" + std::to_string(pick(1, 9));
    return pool[static_cast<std::size_t>(pick(0, static_cast<int>(pool.size()) - 1))];
  }
  gear::Label label() {
    gear::Label made;
    made.kind = toss() ? gear::LabelKind::makersMark : gear::LabelKind::recertification;
    made.year = pick(2020, 2022);
    if (pick(0, 3) == 0) {
      made.fullDate = dayOf(made.year, 3, pick(1, 28));
      made.source = "paper";
    }
    return made;
  }

  season::Conditions conditions() {
    season::Conditions made;
    if (toss()) made.temperature = Temperature{pick(213'150, 333'150)};
    if (toss()) made.elevation = Elevation{pick(-430'000, 9'000'000)};
    if (pick(0, 3) == 0) made.ambient = Pressure{pick(30'000, 112'000)};
    if (toss()) made.whereabouts = static_cast<season::Whereabouts>(pick(0, 2));
    if (toss()) made.place = "place " + std::to_string(pick(1, 3));
    return made;
  }
  season::AirSource source() {
    season::AirSource made;
    if (toss()) made.gauge = text();
    if (pick(0, 3) == 0) made.rawDeciPascal = pick(900'000, 1'400'000);
    if (pick(0, 3) == 0) made.zeroDeciPascal = pick(900'000, 1'100'000);
    if (pick(0, 3) == 0) made.sensor = Temperature{pick(213'150, 333'150)};
    return made;
  }
  fit::MarkSet marks() {
    fit::MarkSet made;
    for (int i = pick(1, 4); i > 0; --i) made.add(mark());
    return made;
  }
  gear::Port port() { return static_cast<gear::Port>(pick(0, 3)); }
  season::PumpedRecord pumped() {
    season::PumpedRecord made;
    made.port = port();
    made.pumps = pick(1, 3) * (toss() ? 1 : -1);
    if (toss()) made.gapBefore = made.gapAfter = length();
    if (toss()) made.airBefore = made.airAfter = pressure();
    return made;
  }

  fit::Answer answer() {
    switch (pick(0, 11)) {
      case 0:
        return fit::HairSeen{toss()};
      case 10:
        return fit::ColdSeen{toss(), toss()};
      case 1: {
        fit::Fitted made;
        for (auto& air : made.air)
          if (toss()) air = pressure();
        for (auto& pad : made.pad)
          if (toss()) pad = length();
        return made;
      }
      case 2:
        return fit::GroupSnug{static_cast<fit::LookView>(pick(0, 2))};
      case 3: {
        fit::Adjusted made;
        made.deed = static_cast<fit::Deed>(pick(0, 4));
        if (toss()) made.port = static_cast<gear::Port>(pick(0, 3));
        if (toss()) made.part = static_cast<gear::Part>(pick(0, 4));
        made.pumps = pick(0, 3);
        if (toss()) made.air = pressure();
        if (toss()) made.to = length();
        return made;
      }
      case 4: {
        fit::AirRead made;
        made.port = static_cast<gear::Port>(pick(0, 3));
        made.gauge = pressure();
        made.isOnHead = toss();
        return made;
      }
      case 5: {
        const auto found = pointFinding();
        return fit::PointSeen{point(), found.state, found.what};
      }
      case 6:
        return fit::PointsSound{};
      case 7:
        return fit::QuestionAnswered{text(), toss()};
      case 8:
        return fit::AthleteSaid{toss() ? std::optional(mark()) : std::nullopt, side(), feels()};
      case 9:
        return fit::Unwell{};
      default:
        break;
    }
    fit::MarkSeen made;
    made.mark = mark();
    made.finding = finding();
    made.side = side();
    made.how = static_cast<fit::HoldHow>(pick(0, 3));
    if (toss()) made.gap = length();
    return made;
  }

  season::CodeHash code() {
    season::CodeHash made;
    made.cost = {static_cast<std::uint32_t>(pick(1, 4)), static_cast<std::uint32_t>(pick(8, 65536))};
    for (auto& byte : made.salt) byte = static_cast<std::uint8_t>(pick(0, 255));
    for (auto& byte : made.hash) byte = static_cast<std::uint8_t>(pick(0, 255));
    return made;
  }

  std::vector<std::string> people, athletes, tapes, units, checks, said, holds, legalHolds, notices;
  std::string sheet = "0";
  std::vector<std::string> sheetBytes;

  // about is where the fact belongs; empty for one that creates its entity.
  std::pair<std::string, book::Body> draft(int kind) {
    using namespace book;
    switch (kind) {
      case 0:
        if (toss() && !people.empty()) return {id(people), CodeSet{code()}};
        return {"", PersonAdded{text(), text(), toss() ? "helper" : "staff", toss()}};
      case 1:
        return {"", AthleteAdded{std::to_string(pick(0, 99)), text(), text(), toss() ? std::optional(pick(2005, 2012)) : std::nullopt}};
      case 2: {
        AthleteChanged made;
        if (toss()) made.jersey = std::to_string(pick(0, 99));
        if (toss()) made.family = text();
        if (toss()) made.given = text();
        if (toss()) made.birthYear = pick(2005, 2012);
        if (toss()) made.isOnRoster = toss();
        return {id(athletes), made};
      }
      case 3: {
        if (!tapes.empty() && pick(0, 3) == 0) return {id(athletes), ReadingSetAside{id(tapes), pick(0, 3), toss() ? "misread" : "typed"}};
        TapeRead made;
        for (int i = pick(0, 4); i > 0; --i) made.readings.push_back(length());
        if (!tapes.empty() && toss()) made.with = id(tapes);
        return {id(athletes), made};
      }
      case 4:
        return {"", SheetAdopted{sheetBytes.empty() ? text() : id(sheetBytes), toss() ? sheet : ""}};
      case 5:
        return {"", UnitReceived{text(), "tag-" + std::to_string(pick(1, 5)), sheet, "M", toss() ? "2024-01" : "", toss() ? "L7" : ""}};
      case 6: {
        LabelRead made{toss() ? std::optional(label()) : std::nullopt};
        made.isUnreadable = !made.label && toss();
        return {id(units), made};
      }
      case 7: {
        PointsSeen made;
        if (toss()) {
          for (gear::Point each : gear::kPoints) made.points.push_back({each, {gear::PointState::sound, {}}});
          made.isGroup = true;
        } else {
          for (int i = pick(1, 3); i > 0; --i) made.points.push_back({point(), pointFinding()});
        }
        if (toss()) made.check = id(checks);
        return {id(units), made};
      }
      case 8:
        return {id(units), UnitHeld{"shell", text(), toss(), pick(0, 3) == 0 ? id(notices) : ""}};
      case 9:
        return {id(units), HoldReleased{id(holds), text()}};
      case 10: {
        static const std::vector<std::string> kTo{"in-service", "repair", "sent-out", "back",         "retired",
                                                  "lost",       "shelf",  "in-hand",  "with-athlete", "elsewhere"};
        UnitMoved made{id(kTo), text(), toss() ? text() : ""};
        if (toss()) made.returned = {std::string(season::kByMaker), text(), text(), toss(), {}};
        return {id(units), made};
      }
      case 11:
        return {id(units),
                PartChanged{toss() ? "jaw-pads" : "liner", text(), toss() ? id(athletes) : "", toss() ? marks() : fit::MarkSet{}}};
      case 12:
        return {id(units), UnitPaired{id(athletes)}};
      case 13:
        return {id(units), UnitUnpaired{id(athletes), text(), toss()}};
      case 14: {
        CheckBegun made;
        made.athlete = id(athletes);
        made.unit = id(units);
        made.sheet = sheet;
        if (toss()) made.before = id(checks);
        made.kind = static_cast<fit::CheckKind>(pick(0, 2));
        if (toss()) made.certifiedUntil = day();
        made.isLabelMissing = toss();
        for (int i = pick(0, 2); i > 0; --i)
          made.words.push_back({id(said), toss() ? std::optional(mark()) : std::nullopt, side(), feels()});
        return {"", made};
      }
      case 15:
      case 16:
      case 17: {
        CheckAnswered made;
        for (int i = kind == 17 ? pick(0, 3) : 1; i > 0; --i) made.answers.push_back(answer());
        const auto kindNow = book::kindOf(Body{made});
        const bool isOfAir = kindNow == "air-read" || kindNow == "adjusted" || kindNow == "fitting-set" || kindNow == "check-answered";
        if (isOfAir && pick(0, 3) != 0) {
          made.unit = id(units);
          made.conditions = conditions();
          made.source = source();
        }
        return {id(checks), made};
      }
      case 18: {
        CheckEnded made;
        made.athlete = id(athletes);
        made.unit = made.outcome.unit = id(units);
        made.outcome.kind = static_cast<fit::CheckKind>(pick(0, 2));
        made.outcome.verdict = static_cast<fit::Verdict>(pick(0, 3));
        for (int i = pick(0, 2); i > 0; --i) made.outcome.reasons.push_back(toss() ? "jaw-said" : text());
        for (auto& each : made.outcome.strip) each = pick(0, 5) == 0 ? finding() : fit::Finding::snug;
        made.outcome.isHairDry = toss();
        made.outcome.isForCold = toss();
        made.outcome.dueFrom = day();
        made.outcome.dueBy = day();
        if (toss()) made.conditions = conditions();
        for (int i = pick(-2, 2); i > 0; --i) made.pumped.push_back(pumped());
        return {id(checks), made};
      }
      case 19: {
        Said made;
        if (toss()) made.said.unit = id(units);
        if (toss()) made.said.where = mark();
        made.said.side = side();
        made.said.feels = feels();
        made.said.isHairChanged = pick(0, 4) == 0;
        made.said.isBroken = pick(0, 4) == 0;
        made.said.isUnwell = pick(0, 4) == 0;
        made.isUnnamed = made.said.isUnwell && toss();
        made.said.words = text();
        if (toss()) made.check = id(checks);
        return {made.isUnnamed ? team : id(athletes), made};
      }
      case 20:
        if (pick(0, 3) == 0) return {team, SaidAcknowledged{id(said), toss(), text(), true}};
        return {id(athletes), SaidAcknowledged{id(said), toss(), text()}};
      case 21:
        return {id(athletes), HairChanged{text()}};
      case 22: {
        PracticeSet made;
        if (toss()) made.seasonStart = day();
        if (toss()) made.seasonEnd = day();
        if (toss()) made.minute = pick(0, 1439);
        if (toss()) made.days = {toss(), toss(), toss(), toss(), toss(), toss(), toss()};
        if (toss()) made.season = "2027";
        return {team, made};
      }
      case 23:
        return {team, WeatherNoted{conditions()}};
      case 24:
        return {team, PlaceSet{"place " + std::to_string(pick(1, 3)),
                               pick(0, 2) == 0 ? std::nullopt : std::optional(Elevation{pick(0, 3'000'000)})}};
      case 25:
        return {id(units), UnitAirRead{port(), Pressure{pick(-20'000, 200'000)}, toss(), toss(), conditions(), source()}};
      case 26:
        return {id(athletes), LineSeen{id(units), finding(), finding(), finding(), conditions()}};
      case 27:
        return {team, RecoverySet{code()}};
      case 28: {
        WarningSet made;
        made.texts.push_back({"en", "read this" + text()});
        if (toss()) made.texts.push_back({"es", "leer" + text()});
        made.asksAnew = pick(0, 2) == 0;
        return {team, made};
      }
      case 29:
        return {id(athletes), WarningSigned{"2026", std::string(64, toss() ? 'a' : '0'), toss() ? "en" : "es",
                                            toss() ? season::Signer::athlete : season::Signer::guardian, text(), toss()}};
      case 30:
        return {team, RetentionSet{toss() ? std::optional(pick(1, 50)) : std::nullopt}};
      case 31: {
        const bool isForAll = toss();
        return {isForAll ? team : id(athletes), LegalHoldMade{isForAll, text()}};
      }
      case 32: {
        const bool isForAll = toss();
        return {isForAll ? team : id(athletes), LegalHoldEnded{isForAll, id(legalHolds), text()}};
      }
      case 33: {
        NoticeIssued made{text(), day(), {}};
        if (toss()) made.scope.sheet = sheet;
        if (toss()) made.scope.yearFrom = pick(2015, 2020);
        if (toss()) made.scope.yearTo = pick(2020, 2026);
        if (toss()) made.scope.lot = "L7";
        if (toss()) made.scope.serialFrom = "A-1";
        if (toss()) made.scope.serialTo = "A-9";
        made.scope.takesUnknown = toss();
        return {team, made};
      }
      case 34:
        return {id(athletes),
                PhoneJoined{"abcdefghijkl" + std::string(1, static_cast<char>('a' + pick(0, 3))), std::string(64, toss() ? 'a' : '0')}};
      case 35:
        return {id(athletes), PhoneLeft{"abcdefghijkl" + std::string(1, static_cast<char>('a' + pick(0, 3)))}};
      case 36: {
        SeasonClosed made{std::to_string(pick(2024, 2026)), day()};
        for (int i = pick(0, 3); i > 0; --i) made.missing.push_back(id(units));
        return {team, made};
      }
      case 37:
        return {id(units), UnitCollected{"2026", toss() ? id(athletes) : "", toss() ? text() : ""}};
      case 38: {
        PhotoTaken made{std::string(64, toss() ? 'a' : '0'), pick(1, 90'000), pick(1, 1600), pick(1, 1600)};
        if (toss()) made.of = point();
        if (toss()) made.hold = id(holds);
        if (toss()) made.what = text();
        return {id(units), made};
      }
      case 39: {
        PersonChanged made;
        if (toss()) made.role = toss() ? "admin" : "staff";
        if (toss()) made.isPractitioner = toss();
        return {id(people), made};
      }
      case 40:
        return {team, EmergencySet{text(), text()}};
      case 41: {
        const bool isUnnamed = toss();
        return {isUnnamed ? team : id(athletes), SaidFollowed{id(said), toss(), isUnnamed}};
      }
      default:
        return {id(athletes), NoteAdded{text()}};
    }
  }
  std::string team = "zzzzzzzzzzzzz:1";
  // What later facts may name.
  void remember(const book::Fact& fact) {
    const std::string made = fact.id();
    if (std::holds_alternative<book::PersonAdded>(fact.body)) people.push_back(made);
    if (std::holds_alternative<book::AthleteAdded>(fact.body)) athletes.push_back(made);
    if (std::holds_alternative<book::TapeRead>(fact.body)) tapes.push_back(made);
    if (std::holds_alternative<book::UnitReceived>(fact.body)) units.push_back(made);
    if (std::holds_alternative<book::CheckBegun>(fact.body)) checks.push_back(made);
    if (std::holds_alternative<book::Said>(fact.body)) said.push_back(made);
    if (std::holds_alternative<book::UnitHeld>(fact.body)) holds.push_back(made);
    if (std::holds_alternative<book::LegalHoldMade>(fact.body)) legalHolds.push_back(made);
    if (std::holds_alternative<book::NoticeIssued>(fact.body)) notices.push_back(made);
  }

 private:
  std::mt19937_64 m_chance;
};

}  // namespace snugline::test
