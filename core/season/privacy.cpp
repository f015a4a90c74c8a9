// SPDX-License-Identifier: Apache-2.0
#include "core/season/privacy.h"

#include <algorithm>

namespace snugline::season {

namespace {

// The same day so many years on; 29 February becomes 1 March where there is none.
Day yearsAfter(Day day, int years) {
  const CivilDate date = civil(day);
  const Day same = dayOf(date.year + years, date.month, 1).plus(date.day - 1);
  return same;
}

Day lastEntry(const AthleteRecord& athlete) {
  Day last = dayOf(athlete.added.at);
  const auto later = [&last](const Stamp& stamp) { last = std::max(last, dayOf(stamp.at)); };
  if (athlete.left) later(*athlete.left);
  for (const TapeRecord& each : athlete.tapes) later(each.stamp);
  for (const EndedCheck& each : athlete.checks) later(each.stamp);
  for (const LineRecord& each : athlete.lines) later(each.stamp);
  for (const SignatureRecord& each : athlete.signatures) later(each.stamp);
  for (const SaidRecord& each : athlete.said) last = std::max(last, dayOf(each.at));
  return last;
}

}  // namespace

bool needsGuardian(const AthleteRecord& athlete, Day today) {
  return !athlete.birthYear || civil(today).year - *athlete.birthYear <= kGuardianAge;
}

WarningState warningState(const std::optional<TeamRecord>& team, const AthleteRecord& athlete, Day today) {
  WarningState state;
  state.isGuardianOpen = needsGuardian(athlete, today);
  if (!team || !team->warning) return state;
  const auto& accepted = team->warning->accepted;
  for (const SignatureRecord& signature : athlete.signatures) {
    if (signature.season != team->season || !std::binary_search(accepted.begin(), accepted.end(), signature.text)) continue;
    switch (signature.as) {
      case Signer::athlete:
        state.isAthleteOpen = false;
        break;
      case Signer::guardian:
        state.isGuardianOpen = false;
        break;
    }
  }
  return state;
}

int countWarningOpen(const Views& views, Day today) {
  int count = 0;
  for (const auto& [id, athlete] : views.athletes) {
    if (athlete.isOnRoster && !warningState(views.team, athlete, today).isDone()) ++count;
  }
  return count;
}

std::optional<Day> nameKeptBackSince(const std::optional<TeamRecord>& team, const AthleteRecord& athlete, Day today) {
  if (athlete.isOnRoster || !team || !team->nameYears) return std::nullopt;
  if (!team->legalHolds.empty() || !athlete.legalHolds.empty()) return std::nullopt;
  const Day since = yearsAfter(lastEntry(athlete), *team->nameYears);
  return since <= today ? std::optional(since) : std::nullopt;
}

void keepNameBack(const std::optional<TeamRecord>& team, AthleteRecord& athlete, Day today) {
  athlete.nameKeptBack = nameKeptBackSince(team, athlete, today);
  if (!athlete.nameKeptBack) return;
  athlete.family.clear();
  athlete.given.clear();
}

void keepNamesBack(Views& views, Day today) {
  if (!views.team || !views.team->nameYears) return;
  for (auto& [id, athlete] : views.athletes) keepNameBack(views.team, athlete, today);
}

}  // namespace snugline::season
