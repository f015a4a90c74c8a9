// SPDX-License-Identifier: Apache-2.0
#include "core/season/turn.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

#include "core/season/board.h"

namespace snugline::season {

namespace {

std::string_view seasonOf(const Views& views) { return views.team ? std::string_view(views.team->season) : std::string_view(); }

bool byJersey(const AthleteRecord* a, const AthleteRecord* b) {
  return a->jersey != b->jersey ? jerseyBefore(a->jersey, b->jersey) : a->id < b->id;
}

CarryState stateOf(const UnitRecord& unit) {
  switch (unit.place) {
    case UnitPlace::withAthlete:
      return CarryState::withAthlete;
    case UnitPlace::repair:
      return CarryState::repair;
    case UnitPlace::sentOut:
      return CarryState::sentOut;
    case UnitPlace::lost:
      return CarryState::lost;
    case UnitPlace::shelf:
    case UnitPlace::retired:
      break;
  }
  if (!unit.holds.empty()) return CarryState::held;
  return unit.isInService ? CarryState::ready : CarryState::notInService;
}

}  // namespace

std::string_view code(CarryState s) {
  switch (s) {
    case CarryState::ready:
      return "ready";
    case CarryState::held:
      return "held";
    case CarryState::notInService:
      return "not-in-service";
    case CarryState::withAthlete:
      return "with-athlete";
    case CarryState::repair:
      return "repair";
    case CarryState::sentOut:
      return "sent-out";
    case CarryState::lost:
      return "lost";
  }
  return {};
}

const SeasonRecord* closingOf(const TeamRecord& team, std::string_view season) {
  const auto it =
      std::find_if(team.closedSeasons.begin(), team.closedSeasons.end(), [&](const SeasonRecord& each) { return each.season == season; });
  return it == team.closedSeasons.end() ? nullptr : &*it;
}

const SeasonRecord* between(const Views& views) { return views.team ? closingOf(*views.team, views.team->season) : nullptr; }

const SeasonRecord* lastClosed(const Views& views) {
  return views.team && !views.team->closedSeasons.empty() ? &views.team->closedSeasons.back() : nullptr;
}

bool isCollected(const UnitRecord& unit, std::string_view season) {
  return unit.collected && unit.collected->season == season && unit.athletes.empty() && unit.place != UnitPlace::lost;
}

bool isExpected(const UnitRecord& unit) {
  switch (unit.place) {
    case UnitPlace::shelf:
    case UnitPlace::withAthlete:
      return true;
    case UnitPlace::repair:
    case UnitPlace::sentOut:
    case UnitPlace::retired:
    case UnitPlace::lost:
      return false;
  }
  return false;
}

std::vector<MissingUnit> missingUnits(const Views& views) {
  std::vector<MissingUnit> missing;
  const std::string_view season = seasonOf(views);
  for (const auto& [id, unit] : views.units) {
    if (!isExpected(unit) || isCollected(unit, season)) continue;
    missing.push_back({&unit, views.athlete(unit.athletes.empty() ? unit.keptBy : unit.athletes.back())});
  }
  std::sort(missing.begin(), missing.end(), [](const MissingUnit& a, const MissingUnit& b) {
    const bool hasA = a.athlete != nullptr, hasB = b.athlete != nullptr;
    if (hasA != hasB) return hasA;
    if (hasA && a.athlete != b.athlete) return byJersey(a.athlete, b.athlete);
    return std::tie(a.unit->serial, a.unit->id) < std::tie(b.unit->serial, b.unit->id);
  });
  return missing;
}

TurnCount turnCount(const Views& views) {
  TurnCount count;
  const std::string_view season = seasonOf(views);
  for (const auto& [id, unit] : views.units) {
    if (isCollected(unit, season)) {
      ++count.collected;
    } else if (isExpected(unit)) {
      ++(unit.athletes.empty() && unit.keptBy.empty() ? count.onShelf : count.withAthletes);
    } else if (unit.place == UnitPlace::lost) {
      ++count.lost;
    } else if (unit.place != UnitPlace::retired) {
      ++count.away;
    }
  }
  return count;
}

OpenAtTurn openAtTurn(const Views& views) {
  OpenAtTurn open;
  for (const auto& [id, athlete] : views.athletes) {
    if (!athlete.units.empty()) open.helmets.push_back(&athlete);
    if (!athlete.openCheck.empty()) open.checks.push_back(&athlete);
    const bool isUnanswered =
        std::any_of(athlete.said.begin(), athlete.said.end(), [](const SaidRecord& said) { return !said.isAnswered; });
    if (isUnanswered) open.words.push_back(&athlete);
  }
  for (auto* list : {&open.helmets, &open.checks, &open.words}) std::sort(list->begin(), list->end(), byJersey);
  return open;
}

int Carry::units() const { return std::accumulate(byState.begin(), byState.end(), 0); }

Carry carryOf(const Views& views) {
  Carry carry;
  struct Place {
    std::string name;  // of the sheet
    std::size_t at;    // of the size on it
    std::string sheet, size;
    bool operator<(const Place& o) const { return std::tie(name, at, sheet, size) < std::tie(o.name, o.at, o.sheet, o.size); }
  };
  std::map<Place, int> sizes;
  for (const auto& [id, unit] : views.units) {
    if (unit.place == UnitPlace::retired) continue;
    const CarryState state = stateOf(unit);
    ++carry.byState[static_cast<std::size_t>(state)];
    if (state == CarryState::lost) continue;
    Place place{{}, 0, unit.sheet.empty() ? std::string() : views.standingSheet(unit.sheet), unit.size};
    if (const gear::ModelSheet* sheet = views.sheetOf(unit); sheet != nullptr) {
      place.name = sheet->name;
      const auto band = std::find_if(sheet->sizes.begin(), sheet->sizes.end(), [&](const auto& b) { return b.name == place.size; });
      place.at = static_cast<std::size_t>(band - sheet->sizes.begin());
    }
    ++sizes[place];
  }
  for (const auto& [place, units] : sizes) carry.sizes.push_back({place.sheet, place.size, units});
  return carry;
}

}  // namespace snugline::season
