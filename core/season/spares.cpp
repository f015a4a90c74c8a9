// SPDX-License-Identifier: Apache-2.0
#include "core/season/spares.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/gear/serial_range.h"
#include "core/season/match_table.h"
#include "core/season/standing.h"
#include "core/season/tape.h"

namespace snugline::season {

namespace {

// What keeps a helmet off every head today, or where it is.
std::optional<NotOffered> whyBarred(const UnitStanding& standing) {
  if (standing.where == Where::withAthlete) return NotOffered::away;
  const std::optional<Bar> bar = standing.mainBar();
  if (!bar) return std::nullopt;
  if (isLabelBar(*bar)) return NotOffered::label;
  switch (*bar) {
    case Bar::held:
      return NotOffered::held;
    case Bar::repair:
    case Bar::sentOut:
    case Bar::retired:
    case Bar::lost:
      return NotOffered::away;
    case Bar::fault:
      return NotOffered::faultOpen;
    case Bar::brokeSaid:
      return NotOffered::brokeSaid;
    case Bar::noSheet:
      return NotOffered::noSheet;
    case Bar::pointsAfterReport:
      return NotOffered::pointsOpen;
    case Bar::labelMissing:
    case Bar::labelUnreadable:
    case Bar::labelDisputed:
    case Bar::labelUnknown:
    case Bar::labelLapsed:
    case Bar::pointUnchecked:
    case Bar::notInService:
    case Bar::twoAthletes:
    case Bar::verdict:
      break;
  }
  return NotOffered::notInService;
}

bool isOutOfReach(const UnitRecord& unit) { return unit.place == UnitPlace::retired || unit.place == UnitPlace::lost; }

// Units that this head tried since its last tape, and that could not be brought to fit.
std::set<std::string> triedInVain(const AthleteRecord& athlete) {
  std::set<std::string> units;
  const TapeRecord* tape = lastTape(athlete);
  for (const EndedCheck& check : athlete.checks) {
    const bool isSinceTape = tape == nullptr || isAfter(check.stamp, tape->stamp);
    if (isSinceTape && check.verdict == fit::Verdict::doNotWear) units.insert(check.unit);
  }
  return units;
}

// Odds of each size of each sheet for one head, worked out once a sheet.
class HeadOdds {
 public:
  HeadOdds(const Views& views, const AthleteRecord& athlete) : m_views(views), m_tape(lastTape(athlete)), m_error(readingError(views)) {}

  Result<void> add(const std::string& hash) {
    if (m_bySheet.contains(hash)) return {};
    const gear::ModelSheet* sheet = m_views.sheet(hash);
    auto& odds = m_bySheet[hash];
    if (sheet == nullptr || m_tape == nullptr || isReadingWanted(*m_tape)) return {};
    const auto answer = fit::sizeOf(*sheet, m_tape->readings, m_error);
    if (!answer) return tl::unexpected<Error>(answer.error());
    for (const fit::SizeOdds& each : answer->odds) odds[each.size] = each.odds;
    return {};
  }
  [[nodiscard]] double of(const std::string& sheet, const std::string& size) const {
    const auto it = m_bySheet.find(sheet);
    if (it == m_bySheet.end()) return 0;
    const auto found = it->second.find(size);
    return found == it->second.end() ? 0 : found->second;
  }
  void likeliest(SpareAnswer& answer) const {
    double best = kTryOnOdds;
    for (const auto& [sheet, sizes] : m_bySheet) {
      for (const auto& [size, odds] : sizes) {
        if (odds < best) continue;
        best = odds;
        answer.likelySheet = sheet;
        answer.likelySize = size;
      }
    }
  }

 private:
  const Views& m_views;
  const TapeRecord* m_tape;
  Length m_error;
  std::map<std::string, std::map<std::string, double>> m_bySheet;
};

}  // namespace

std::string_view code(NotOffered n) {
  switch (n) {
    case NotOffered::held:
      return "held";
    case NotOffered::away:
      return "away";
    case NotOffered::notInService:
      return "not-in-service";
    case NotOffered::faultOpen:
      return "fault-open";
    case NotOffered::brokeSaid:
      return "broke-said";
    case NotOffered::label:
      return "label";
    case NotOffered::noSheet:
      return "no-sheet";
    case NotOffered::pointsOpen:
      return "points-open";
    case NotOffered::otherSize:
      return "other-size";
    case NotOffered::didNotFit:
      return "did-not-fit";
  }
  return {};
}

bool shelfBefore(const std::string& a, const std::string& b) {
  if (const auto order = gear::compareSerials(a, b); order && *order != 0) return *order < 0;
  return a < b;
}

Result<SpareAnswer> sparesFor(const Views& views, const std::string& athleteId, const std::string& here, Day today) {
  const AthleteRecord* athlete = views.athlete(athleteId);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + athleteId);
  SpareAnswer answer;
  answer.tape = tapeState(*athlete, today);
  HeadOdds odds(views, *athlete);
  for (const auto& [id, unit] : views.units) {
    if (isOutOfReach(unit)) continue;
    if (auto ok = odds.add(views.standingSheet(unit.sheet)); !ok) return tl::unexpected<Error>(ok.error());
  }
  odds.likeliest(answer);
  const UnitRecord* last = views.unit(lastHelmetOf(*athlete));
  if (!isSizeKnown(answer.tape) && last != nullptr) {
    answer.likelySheet = views.standingSheet(last->sheet);
    answer.likelySize = last->size;
  }
  const Standings standings(views, today);
  const std::set<std::string> tried = triedInVain(*athlete);
  for (const auto& [id, unit] : views.units) {
    if (isOutOfReach(unit)) continue;
    if (!unit.athletes.empty()) {
      if (std::find(unit.athletes.begin(), unit.athletes.end(), athleteId) == unit.athletes.end()) ++answer.worn;
      continue;
    }
    const UnitStanding standing = standings.of(unit);
    std::optional<NotOffered> why = whyBarred(standing);
    if (!why && tried.contains(id)) why = NotOffered::didNotFit;
    Spare spare{id, views.standingSheet(unit.sheet), unit.size, std::nullopt, false, unit.shelf, {}, standing.uncheckedPoints()};
    if (!isSizeKnown(answer.tape)) {
      if (!why && (last == nullptr ? answer.tape != TapeState::missing : spare.sheet != answer.likelySheet || unit.size != last->size))
        why = NotOffered::otherSize;
    } else {
      spare.odds = odds.of(spare.sheet, unit.size);
      spare.isTryOn = *spare.odds < kMatchOdds;
      if (!why && *spare.odds < kTryOnOdds) why = NotOffered::otherSize;
    }
    if (why) {
      ++answer.notOffered[static_cast<std::size_t>(*why)];
      continue;
    }
    if (standing.lastGood) spare.lastGood = standing.lastGood->first;
    answer.offers.push_back(std::move(spare));
  }
  const auto serialOf = [&](const Spare& s) -> const std::string& { return views.unit(s.unit)->serial; };
  std::sort(answer.offers.begin(), answer.offers.end(), [&](const Spare& a, const Spare& b) {
    if (a.odds != b.odds) return a.odds > b.odds;
    const bool isHereA = !here.empty() && a.shelf == here, isHereB = !here.empty() && b.shelf == here;
    if (isHereA != isHereB) return isHereA;
    if (a.shelf.empty() != b.shelf.empty()) return b.shelf.empty();
    if (a.shelf != b.shelf) return shelfBefore(a.shelf, b.shelf);
    if (a.lastGood != b.lastGood) return a.lastGood > b.lastGood;
    return serialOf(a) != serialOf(b) ? serialOf(a) < serialOf(b) : a.unit < b.unit;
  });
  for (const Spare& spare : answer.offers) {
    const bool isNew = std::find(answer.shelves.begin(), answer.shelves.end(), spare.shelf) == answer.shelves.end();
    if (!spare.shelf.empty() && isNew) answer.shelves.push_back(spare.shelf);
  }
  std::sort(answer.shelves.begin(), answer.shelves.end(), shelfBefore);
  return answer;
}

}  // namespace snugline::season
