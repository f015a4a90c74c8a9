// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"

namespace snugline::book {

namespace {

struct Collector {
  const Fact& fact;
  Touches& out;

  void add(Entity entity, const std::string& id) const { out.add(entity, id); }
  void ofTeamOrAthlete(bool isOfTeam) const {
    if (isOfTeam) return out.keep(Entity::team, {std::string(kTeamSubject)});
    add(Entity::athlete, fact.about);
  }
  void operator()(const TeamFounded&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const PracticeSet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const DeviceAdmitted&) const {}
  void operator()(const PersonAdded&) const { add(Entity::person, fact.about); }
  void operator()(const PersonChanged&) const { add(Entity::person, fact.about); }
  void operator()(const CodeSet&) const { add(Entity::person, fact.about); }
  void operator()(const AthleteAdded&) const { add(Entity::athlete, fact.about); }
  void operator()(const AthleteChanged&) const { add(Entity::athlete, fact.about); }
  void operator()(const TapeRead&) const { add(Entity::athlete, fact.about); }
  void operator()(const ReadingSetAside&) const { add(Entity::athlete, fact.about); }
  void operator()(const SheetAdopted& b) const { out.keep(Entity::sheet, {hashOf(b.sheet), b.replaces}); }
  void operator()(const UnitReceived&) const { add(Entity::unit, fact.about); }
  void operator()(const LabelRead&) const { add(Entity::unit, fact.about); }
  void operator()(const PointsSeen& b) const {
    add(Entity::unit, fact.about);
    add(Entity::check, b.check);
  }
  void operator()(const UnitHeld&) const { add(Entity::unit, fact.about); }
  void operator()(const HoldReleased&) const { add(Entity::unit, fact.about); }
  void operator()(const UnitMoved&) const { add(Entity::unit, fact.about); }
  void operator()(const PartChanged& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const UnitPaired& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const UnitUnpaired& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const CheckBegun& b) const {
    add(Entity::check, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const CheckAnswered& b) const {
    add(Entity::check, fact.about);
    add(Entity::unit, b.unit);
  }
  void operator()(const CheckEnded& b) const {
    add(Entity::check, fact.about);
    add(Entity::athlete, b.athlete);
    add(Entity::unit, b.unit);  // its record stays; its history shows the check
  }
  void operator()(const Said& b) const {
    ofTeamOrAthlete(b.isUnnamed);
    if (!b.isUnnamed) add(Entity::check, b.check);
  }
  void operator()(const SaidFollowed& b) const { ofTeamOrAthlete(b.isUnnamed); }
  void operator()(const SaidAcknowledged& b) const { ofTeamOrAthlete(b.isUnnamed); }
  void operator()(const HairChanged&) const { add(Entity::athlete, fact.about); }
  void operator()(const WeatherNoted&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const PlaceSet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const UnitAirRead&) const { add(Entity::unit, fact.about); }
  void operator()(const LineSeen& b) const {
    add(Entity::athlete, fact.about);
    add(Entity::unit, b.unit);  // its record stays; its history shows the line
  }
  void operator()(const RecoverySet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const WarningSet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const WarningSigned&) const { add(Entity::athlete, fact.about); }
  void operator()(const RetentionSet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const EmergencySet&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const LegalHoldMade& b) const { ofTeamOrAthlete(b.isForAll); }
  void operator()(const LegalHoldEnded& b) const { ofTeamOrAthlete(b.isForAll); }
  void operator()(const NoticeIssued&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const PhoneJoined&) const { add(Entity::athlete, fact.about); }
  void operator()(const PhoneLeft&) const { add(Entity::athlete, fact.about); }
  void operator()(const SeasonClosed&) const { out.keep(Entity::team, {std::string(kTeamSubject)}); }
  void operator()(const UnitCollected& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const PhotoTaken&) const { add(Entity::unit, fact.about); }
  void operator()(const Corrected& b) const { out.keep(Entity::other, b.touches); }
  void operator()(const NoteAdded&) const { add(Entity::other, fact.about); }
  void operator()(const Unknown&) const { add(Entity::other, fact.about); }
};

}  // namespace

void Touches::add(Entity entity, const std::string& id) {
  // A fact from elsewhere may name one id twice; it must not count twice.
  const auto same = [&](const Touch& touch) { return *touch.id == id; };
  if (id.empty() || std::any_of(begin(), end(), same)) return;
  m_few[m_count++] = {entity, &id};  // no kind names more than three
}

void Touches::keep(Entity entity, std::vector<std::string> ids) {
  m_kept = std::move(ids);
  m_many.reserve(m_kept.size());
  for (const std::string& id : m_kept) {
    const auto same = [&](const Touch& touch) { return *touch.id == id; };
    if (!id.empty() && std::none_of(m_many.begin(), m_many.end(), same)) m_many.push_back({entity, &id});
  }
}

Touches::Touches(const Fact& fact) { std::visit(Collector{fact, *this}, fact.body); }

std::vector<std::string> touches(const Fact& fact) {
  std::vector<std::string> ids;
  const Touches all(fact);
  for (const Touch& touch : all) ids.push_back(*touch.id);
  return ids;
}

}  // namespace snugline::book
