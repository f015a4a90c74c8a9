// SPDX-License-Identifier: Apache-2.0
#include "core/season/match_table.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string_view>

#include "core/season/tape.h"

namespace snugline::season {

namespace {

constexpr double kOddsFloor = 1e-9;  // ours: what a pinned pair off the chart is reckoned with, so that its cost is a number

std::uint64_t numberOf(std::string_view id) {
  const auto colon = id.rfind(':');
  std::uint64_t n = 0;
  if (colon != std::string_view::npos) std::from_chars(id.data() + colon + 1, id.data() + id.size(), n);
  return n;
}

bool isAway(const UnitRecord& unit) { return unit.place == UnitPlace::retired || unit.place == UnitPlace::lost; }

int fullYears(Day from, Day to) {
  int years = 0;
  while (addMonths(from, 12 * (years + 1)) <= to) ++years;
  return years;
}

int yearsSinceFirstLabel(const UnitRecord& unit, Day today) {
  std::optional<Day> first;
  for (const LabelRecord& record : unit.labels) {
    const Day day = gear::certifiedOn(record.label).first;
    if (!first || day < *first) first = day;
  }
  return first && *first < today ? fullYears(*first, today) : 0;
}

template <typename Records>
auto inOrder(const Records& records) {
  std::vector<const typename Records::mapped_type*> found;
  found.reserve(records.size());
  for (const auto& [id, record] : records) found.push_back(&record);
  std::sort(found.begin(), found.end(), [](const auto* a, const auto* b) { return idBefore(a->id, b->id); });
  return found;
}

int at(const std::unordered_map<std::string, int>& places, const std::string& id) {
  const auto it = places.find(id);
  return it == places.end() ? -1 : it->second;
}

}  // namespace

bool idBefore(const std::string& a, const std::string& b) {
  const std::uint64_t na = numberOf(a), nb = numberOf(b);
  return na != nb ? na < nb : a < b;
}

std::string lastHelmetOf(const AthleteRecord& athlete) {
  if (!athlete.units.empty()) return athlete.units.back();
  return athlete.checks.empty() ? std::string{} : athlete.checks.back().unit;
}

TapeState tapeState(const AthleteRecord& athlete, Day today) {
  const TapeRecord* tape = lastTape(athlete);
  if (tape == nullptr) return TapeState::missing;
  if (isReadingWanted(*tape)) return TapeState::open;
  const auto stale = tapeStaleFrom(athlete, today);
  return stale && *stale <= today ? TapeState::stale : TapeState::fresh;
}

Result<MatchTable> MatchTable::make(const Views& views, const MatchWishes& wishes, Day today) {
  if (wishes.tem < fit::kTemLowest || wishes.tem > fit::kTemHighest)
    return fail(ErrorCode::outOfRange, "tem", exact(wishes.tem) + ", " + exact(fit::kTemLowest) + ", " + exact(fit::kTemHighest));
  MatchTable table;
  const std::optional<Day> end = views.team ? views.team->seasonEnd : std::nullopt;
  table.m_isSeasonEndKnown = wishes.through.has_value() || (end && *end >= today);
  table.m_through = wishes.through ? *wishes.through : table.m_isSeasonEndKnown ? *end : today;
  table.addHelmets(views, today);
  table.addHeads(views, wishes, today);
  table.addLast();
  if (auto made = table.addExclusions(wishes); !made) return tl::unexpected<Error>(made.error());
  return table;
}

void MatchTable::addHelmets(const Views& views, Day today) {
  const auto units = inOrder(views.units);
  std::set<std::string> hashes;
  for (const UnitRecord* unit : units)
    if (!isAway(*unit) && views.sheetOf(*unit) != nullptr) hashes.insert(views.standingSheet(unit->sheet));
  for (const std::string& hash : hashes) m_sheets.emplace_back(hash, views.sheet(hash));
  // By the sheet's id, so that the order is one that people know; by hash where two sheets in use have the same.
  std::stable_sort(m_sheets.begin(), m_sheets.end(), [](const auto& a, const auto& b) { return a.second->id < b.second->id; });
  std::unordered_map<std::string, int> firstKind;
  for (const auto& [hash, sheet] : m_sheets) {
    firstKind[hash] = static_cast<int>(m_kinds.size());
    for (std::size_t i = 0; i < sheet->sizes.size(); ++i) m_kinds.push_back({hash, sheet->sizes[i].name, static_cast<int>(i)});
  }
  const Standings standings(views, m_through);
  for (const UnitRecord* unit : units) {
    const UnitStanding standing = standings.of(*unit);
    MatchHelmet helmet{unit, standing.mainBar(), -1, standing.uncheckedPoints(), 0, {}};
    if (const auto first = firstKind.find(views.standingSheet(unit->sheet)); first != firstKind.end()) {
      const auto& sizes = views.sheet(first->first)->sizes;
      for (std::size_t i = 0; i < sizes.size(); ++i)
        if (sizes[i].name == unit->size) helmet.kind = first->second + static_cast<int>(i);
    }
    helmet.years = yearsSinceFirstLabel(*unit, today);
    m_helmetAt.emplace(unit->id, static_cast<int>(m_helmets.size()));
    m_helmets.push_back(std::move(helmet));
  }
}

void MatchTable::addHeads(const Views& views, const MatchWishes& wishes, Day today) {
  for (const AthleteRecord* athlete : inOrder(views.athletes)) {
    if (!athlete->isOnRoster) continue;
    MatchHead head;
    head.athlete = athlete;
    head.tape = tapeState(*athlete, today);
    m_allOdds.emplace_back();
    if (isSizeKnown(head.tape)) addOdds(head, wishes.tem);
    m_headAt.emplace(athlete->id, static_cast<int>(m_heads.size()));
    m_heads.push_back(std::move(head));
  }
}

void MatchTable::addOdds(MatchHead& head, Length tem) {
  double likeliest = 0;
  int kind = 0;
  for (const auto& [hash, sheet] : m_sheets) {
    const auto answer = fit::sizeOf(*sheet, lastTape(*head.athlete)->readings, tem);
    for (std::size_t i = 0; i < sheet->sizes.size(); ++i, ++kind) {
      const double odds = answer ? answer->odds[i].odds : 0;
      m_allOdds.back().emplace_back(kind, odds);
      if (odds >= kTryOnOdds) head.odds.emplace_back(kind, odds);
      head.isOnAChart = head.isOnAChart || odds >= kTryOnOdds;
      if (odds > likeliest) {
        likeliest = odds;
        head.likelySheet = hash;
        head.likelySize = odds >= kTryOnOdds ? sheet->sizes[i].name : std::string{};
      }
    }
  }
}

void MatchTable::addLast() {
  for (std::size_t i = 0; i < m_heads.size(); ++i) {
    MatchHead& head = m_heads[i];
    const int helmet = at(m_helmetAt, lastHelmetOf(*head.athlete));
    const EndedCheck* last = head.athlete->checks.empty() ? nullptr : &head.athlete->checks.back();
    // A helmet that did not fit is not offered to the same head again until a new tape says that the head is another.
    if (last != nullptr && last->verdict == fit::Verdict::doNotWear &&
        (lastTape(*head.athlete) == nullptr || !isAfter(lastTape(*head.athlete)->stamp, last->stamp))) {
      const int failed = at(m_helmetAt, last->unit);
      if (failed >= 0) {
        head.failedKind = m_helmets[static_cast<std::size_t>(failed)].kind;
        m_setAside.insert({failed, static_cast<int>(i)});
      }
    }
    if (helmet < 0) continue;
    m_helmets[static_cast<std::size_t>(helmet)].lastOf.push_back(static_cast<int>(i));
    const MatchHelmet& its = m_helmets[static_cast<std::size_t>(helmet)];
    const bool isToHand = !its.bar && oddsOf(static_cast<int>(i), its.kind).value_or(1) >= kTryOnOdds;
    if (isToHand && !isSetAside(static_cast<int>(i), helmet)) head.last = helmet;
  }
}

Result<void> MatchTable::addExclusions(const MatchWishes& wishes) {
  for (const auto& [athlete, unit] : wishes.exclusions) {
    const int head = headAt(athlete), helmet = helmetAt(unit);
    if (head < 0) return fail(ErrorCode::notFound, athlete);
    if (helmet < 0) return fail(ErrorCode::notFound, unit);
    m_setAside.insert({helmet, head});
    if (m_heads[static_cast<std::size_t>(head)].last == helmet) m_heads[static_cast<std::size_t>(head)].last = -1;
  }
  return {};
}

int MatchTable::headAt(const std::string& athlete) const { return at(m_headAt, athlete); }
int MatchTable::helmetAt(const std::string& unit) const { return at(m_helmetAt, unit); }

std::optional<double> MatchTable::oddsOf(int head, int kind) const {
  const auto& odds = m_allOdds[static_cast<std::size_t>(head)];
  if (odds.empty() || kind < 0) return std::nullopt;
  return odds[static_cast<std::size_t>(kind)].second;
}

MatchPair MatchTable::pairOf(int head, int helmet) const {
  const MatchHead& h = m_heads[static_cast<std::size_t>(head)];
  const MatchHelmet& u = m_helmets[static_cast<std::size_t>(helmet)];
  MatchPair pair;
  pair.athlete = h.athlete->id;
  pair.unit = u.unit->id;
  pair.sheet = u.kind < 0 ? u.unit->sheet : m_kinds[static_cast<std::size_t>(u.kind)].sheet;
  pair.size = u.unit->size;
  pair.tape = h.tape;
  pair.odds = oddsOf(head, u.kind);
  pair.isTryOn = pair.odds && *pair.odds < kMatchOdds;
  pair.isLastHelmet = std::find(u.lastOf.begin(), u.lastOf.end(), head) != u.lastOf.end();
  const auto add = [&](CostTerm term, int count, double times = 1) {
    if (count <= 0) return;
    const double cost = kTermCosts[static_cast<std::size_t>(term)] * count * times;
    pair.terms.push_back({term, count, cost});
    pair.cost += cost;
  };
  if (pair.odds) add(CostTerm::size, 1, std::max(0.0, -std::log(std::max(*pair.odds, kOddsFloor))));
  add(CostTerm::tryOn, pair.isTryOn ? 1 : 0);
  add(CostTerm::otherHelmet, h.last >= 0 && h.last != helmet ? 1 : 0);
  add(CostTerm::wornByOther, !u.lastOf.empty() && !pair.isLastHelmet ? 1 : 0);
  add(CostTerm::kindFailed, h.failedKind >= 0 && h.failedKind == u.kind ? 1 : 0);
  add(CostTerm::unseenPoints, u.unseenPoints);
  add(CostTerm::age, u.years);
  return pair;
}

}  // namespace snugline::season
