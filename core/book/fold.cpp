// SPDX-License-Identifier: Apache-2.0
#include "core/book/fold.h"

#include <sodium.h>

#include "core/season/season_air.h"

namespace snugline::book {

season::Stamp stampOf(const Fact& fact) { return {fact.at, fact.who, fact.id(), fact.order}; }

std::string hashOf(std::string_view bytes) {
  constexpr std::size_t kHashBytes = 32;
  unsigned char hash[kHashBytes];
  crypto_generichash(hash, kHashBytes, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), nullptr, 0);
  std::string hex(2 * kHashBytes + 1, '\0');
  sodium_bin2hex(hex.data(), hex.size(), hash, kHashBytes);
  hex.pop_back();
  return hex;
}

void Folded::take(const Fact& fact, Entity entity, const std::string& id) {
  switch (entity) {
    case Entity::team:
      return takeTeam(fact);
    case Entity::person:
      return takePerson(fact);
    case Entity::sheet:
      return takeSheet(fact, id);
    case Entity::athlete:
      return takeAthlete(fact, id);
    case Entity::unit:
      return takeUnit(fact, id);
    case Entity::check:
      return takeCheck(fact, id);
    case Entity::other:
      return;
  }
}

void Folded::take(const Fact& fact) {
  const Touches all(fact);
  for (const Touch& touch : all) take(fact, touch.entity, *touch.id);
  settle();
}

void Folded::takeTeam(const Fact& fact) {
  if (const auto* founded = std::get_if<TeamFounded>(&fact.body)) {
    if (views.team) return;  // the first in order stands
    season::TeamRecord team;
    team.id = fact.id();
    team.name = founded->name;
    team.mascot = founded->mascot;
    team.season = founded->season;
    views.team = std::move(team);
  } else if (const auto* set = std::get_if<PracticeSet>(&fact.body)) {
    if (!views.team || views.team->id != fact.about) return;
    if (set->seasonStart) views.team->seasonStart = set->seasonStart;
    if (set->seasonEnd) views.team->seasonEnd = set->seasonEnd;
    if (set->minute) views.team->practiceMinute = *set->minute;
    if (set->days) views.team->practiceDays = *set->days;
    if (!set->season.empty()) views.team->season = set->season;
  } else if (views.team && views.team->id == fact.about) {
    foldWeather(*views.team, fact);
    foldPrivacy(*views.team, fact);
    foldUnnamed(*views.team, fact);
    foldNotice(*views.team, fact);
    foldSeason(*views.team, fact);
  }
  changed[static_cast<std::size_t>(Entity::team)].insert(std::string(kTeamSubject));
}

void Folded::takePerson(const Fact& fact) {
  if (const auto* set = std::get_if<CodeSet>(&fact.body)) {
    const auto person = views.people.find(fact.about);
    if (person == views.people.end()) return;
    person->second.code = set->code;
  } else if (const auto* change = std::get_if<PersonChanged>(&fact.body)) {
    const auto person = views.people.find(fact.about);
    if (person == views.people.end()) return;
    if (change->role) person->second.role = *change->role;
    if (change->isPractitioner) person->second.isPractitioner = *change->isPractitioner;
  } else {
    const auto* added = std::get_if<PersonAdded>(&fact.body);
    if (added == nullptr || fact.about != fact.id()) return;
    views.people[fact.about] = {fact.about, added->name, added->initials, added->role, added->isPractitioner};
  }
  changed[static_cast<std::size_t>(Entity::person)].insert(fact.about);
}

void Folded::takeSheet(const Fact& fact, const std::string& hash) {
  const auto* adopted = std::get_if<SheetAdopted>(&fact.body);
  if (adopted == nullptr) return;
  if (const auto known = views.sheets.find(hash); known != views.sheets.end()) {
    if (adopted->replaces != hash) return;  // adopted once more
    const std::string by = hashOf(adopted->sheet);
    if (by == hash) return;
    known->second.replaced = season::ReplacedRecord{by, stampOf(fact)};
    changed[static_cast<std::size_t>(Entity::sheet)].insert(hash);
    return;
  }
  if (adopted->replaces == hash) return;  // of a sheet that nobody has shown here
  auto sheet = gear::parseSheet(adopted->sheet, fact.id());
  if (!sheet) return;  // a sheet of a later format: kept in the log, not used here
  views.sheets[hash] = {hash, std::make_shared<const gear::ModelSheet>(std::move(*sheet)), stampOf(fact)};
  changed[static_cast<std::size_t>(Entity::sheet)].insert(hash);
  restate(hash);
}

void Folded::takeAthlete(const Fact& fact, const std::string& id) {
  auto it = views.athletes.find(id);
  if (it == views.athletes.end()) {
    if (!std::holds_alternative<AthleteAdded>(fact.body) || fact.id() != id) return;
    it = views.athletes.try_emplace(id).first;
    it->second.id = id;
  }
  foldAthlete(it->second, athleteNotes[id], fact);
  changed[static_cast<std::size_t>(Entity::athlete)].insert(id);
}

void Folded::takeUnit(const Fact& fact, const std::string& id) {
  auto it = views.units.find(id);
  if (it == views.units.end()) {
    const auto* received = std::get_if<UnitReceived>(&fact.body);
    if (received == nullptr || fact.id() != id) return;
    it = views.units.try_emplace(id).first;
    it->second.id = id;
    unitsByTag[received->tagKey].insert(id);
  }
  foldUnit(it->second, unitNotes[id], fact);
  if (std::holds_alternative<CheckAnswered>(fact.body) || std::holds_alternative<UnitAirRead>(fact.body)) m_unsettled.insert(id);
  changed[static_cast<std::size_t>(Entity::unit)].insert(id);
}

void Folded::settle() {
  for (const std::string& id : m_unsettled) {
    if (const auto it = views.units.find(id); it != views.units.end()) season::settleLeaks(it->second);
  }
  m_unsettled.clear();
}

void Folded::forget(Entity entity, const std::string& id) {
  switch (entity) {
    case Entity::team:
      views.team.reset();
      break;
    case Entity::person:
      views.people.erase(id);
      break;
    case Entity::sheet:
      views.sheets.erase(id);
      break;
    case Entity::athlete:
      views.athletes.erase(id);
      athleteNotes.erase(id);
      break;
    case Entity::unit: {
      const auto it = views.units.find(id);
      if (it != views.units.end()) {
        const auto tag = unitsByTag.find(it->second.tagKey);
        if (tag != unitsByTag.end() && tag->second.erase(id) > 0 && tag->second.empty()) unitsByTag.erase(tag);
        views.units.erase(it);
      }
      unitNotes.erase(id);
      break;
    }
    case Entity::check:
      views.openChecks.erase(id);
      checkNotes.erase(id);
      break;
    case Entity::other:
      return;
  }
  changed[static_cast<std::size_t>(entity)].insert(id);
}

}  // namespace snugline::book
