// SPDX-License-Identifier: Apache-2.0
#include "core/season/board.h"

#include <algorithm>
#include <charconv>
#include <limits>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

constexpr std::int32_t kNoNumber = std::numeric_limits<std::int32_t>::max();

std::int32_t jerseyNumber(const std::string& jersey) {
  std::int32_t number = 0;
  const auto [end, error] = std::from_chars(jersey.data(), jersey.data() + jersey.size(), number);
  return error == std::errc{} && end == jersey.data() + jersey.size() ? number : kNoNumber;
}

// lane | not on top | not with the athlete | due-by, so that a plain comparison ranks. Days are shifted to stay above zero.
std::uint64_t majorOf(const DueRow& row) {
  const auto day = static_cast<std::uint64_t>(static_cast<std::int64_t>(row.dueBy.number) + (std::int64_t{1} << 31));
  return static_cast<std::uint64_t>(row.lane) << 40 | static_cast<std::uint64_t>(!row.isOnTop) << 35 |
         static_cast<std::uint64_t>(!row.isWithAthlete) << 34 | day;
}

struct SortKey {
  std::uint64_t major;
  std::int32_t number;
  std::uint32_t row;
};

}  // namespace

std::string_view code(Lane l) {
  switch (l) {
    case Lane::doNotWear:
      return "do-not-wear";
    case Lane::beforePractice:
      return "before-practice";
    case Lane::weekly:
      return "weekly";
    case Lane::nothingDue:
      return "nothing-due";
  }
  return {};
}

std::string_view code(DueKind k) {
  switch (k) {
    case DueKind::seeAthleteNow:
      return "see-athlete-now";
    case DueKind::noUnit:
      return "no-helmet";
    case DueKind::held:
      return "held";
    case DueKind::unitFault:
      return "unit-fault";
    case DueKind::labelLapsed:
      return "label-lapsed";
    case DueKind::labelMissing:
      return "label-missing";
    case DueKind::labelUnknown:
      return "label-unknown";
    case DueKind::verdictDoNotWear:
      return "verdict-do-not-wear";
    case DueKind::brokeSaid:
      return "broke-said";
    case DueKind::twoAthletes:
      return "two-athletes";
    case DueKind::twoUnits:
      return "two-helmets";
    case DueKind::labelDisputed:
      return "label-disputed";
    case DueKind::unitAway:
      return "helmet-away";
    case DueKind::neverFitted:
      return "never-fitted";
    case DueKind::checkOpen:
      return "check-unfinished";
    case DueKind::adjustOpen:
      return "adjust-open";
    case DueKind::wordOpen:
      return "word-open";
    case DueKind::hairChanged:
      return "hair-changed";
    case DueKind::partChanged:
      return "part-changed";
    case DueKind::airChanged:
      return "air-changed";
    case DueKind::dryHair:
      return "dry-hair";
    case DueKind::breakIn:
      return "break-in-look";
    case DueKind::weeklyLook:
      return "weekly-look";
    case DueKind::pointUnseen:
      return "point-unseen";
    case DueKind::labelLapsing:
      return "label-lapsing";
    case DueKind::tapeStale:
      return "tape-stale";
    case DueKind::neverTaped:
      return "never-taped";
  }
  return {};
}

bool jerseyBefore(const std::string& a, const std::string& b) {
  const std::int32_t numberA = jerseyNumber(a), numberB = jerseyNumber(b);
  return numberA != numberB ? numberA < numberB : a < b;
}

RankKey rankKeyOf(const DueRow& row) { return {majorOf(row), jerseyNumber(row.jersey), row.jersey, row.athlete}; }

bool ranksBefore(const DueRow& a, const DueRow& b) {
  const std::uint64_t majorA = majorOf(a), majorB = majorOf(b);
  if (majorA != majorB) return majorA < majorB;
  if (a.jersey != b.jersey) return jerseyBefore(a.jersey, b.jersey);
  return a.athlete < b.athlete;
}

void Board::build(const Views& views, BoardTime time, const Conditions& conditions) {
  m_time = time;
  m_conditions = conditions;
  m_keys.clear();
  m_rows.clear();
  m_rows.reserve(views.athletes.size());
  const DueContext context = contextOf(views, time);
  std::vector<SortKey> keys;
  keys.reserve(views.athletes.size());
  for (const auto& [id, athlete] : views.athletes) {
    if (!athlete.isOnRoster) continue;
    const DueRow& row = m_rows.emplace_back(rowOf(context, athlete));
    keys.push_back({majorOf(row), jerseyNumber(row.jersey), static_cast<std::uint32_t>(m_rows.size() - 1)});
  }
  // Keys are sorted, rows move once: a row is far larger than its key.
  std::sort(keys.begin(), keys.end(), [this](const SortKey& a, const SortKey& b) {
    if (a.major != b.major) return a.major < b.major;
    if (a.number != b.number) return a.number < b.number;
    const DueRow &rowA = m_rows[a.row], &rowB = m_rows[b.row];
    return rowA.jersey != rowB.jersey ? rowA.jersey < rowB.jersey : rowA.athlete < rowB.athlete;
  });
  std::vector<DueRow> ranked;
  ranked.reserve(m_rows.size());
  for (const SortKey& key : keys) ranked.push_back(std::move(m_rows[key.row]));
  m_rows = std::move(ranked);
}

void Board::indexKeys() {
  if (m_keys.size() == m_rows.size()) return;
  m_keys.clear();
  m_keys.reserve(m_rows.size());
  for (const DueRow& row : m_rows) m_keys.emplace(row.athlete, rankKeyOf(row));
}

std::optional<std::size_t> Board::placeOf(const std::string& athlete) const {
  const auto known = m_keys.find(athlete);
  if (known == m_keys.end()) {
    // Not indexed yet (no update since build).
    const auto it = std::find_if(m_rows.begin(), m_rows.end(), [&](const DueRow& row) { return row.athlete == athlete; });
    return it == m_rows.end() ? std::nullopt : std::optional<std::size_t>(static_cast<std::size_t>(it - m_rows.begin()));
  }
  const auto it = std::lower_bound(m_rows.begin(), m_rows.end(), known->second,
                                   [](const DueRow& row, const RankKey& key) { return rankKeyOf(row) < key; });
  return static_cast<std::size_t>(it - m_rows.begin());
}

void Board::update(const Views& views, const std::vector<std::string>& athletes) {
  indexKeys();
  const DueContext context = contextOf(views, m_time);
  const auto before = [](const DueRow& a, const DueRow& b) { return ranksBefore(a, b); };
  for (const std::string& id : athletes) {
    const AthleteRecord* athlete = views.athlete(id);
    const bool isWanted = athlete != nullptr && athlete->isOnRoster;
    const auto known = m_keys.find(id);
    if (known == m_keys.end()) {
      if (!isWanted) continue;
      DueRow row = rowOf(context, *athlete);
      m_keys.emplace(id, rankKeyOf(row));
      m_rows.insert(std::upper_bound(m_rows.begin(), m_rows.end(), row, before), std::move(row));
      continue;
    }
    const auto old = m_rows.begin() + static_cast<std::ptrdiff_t>(*placeOf(id));
    if (!isWanted) {
      m_keys.erase(known);
      m_rows.erase(old);
      continue;
    }
    DueRow row = rowOf(context, *athlete);
    RankKey key = rankKeyOf(row);
    if (key == known->second) {
      *old = std::move(row);
      continue;
    }
    if (key < known->second) {
      const auto place = std::upper_bound(m_rows.begin(), old, row, before);
      std::move_backward(place, old, std::next(old));
      *place = std::move(row);
    } else {
      const auto place = std::upper_bound(std::next(old), m_rows.end(), row, before);
      std::move(std::next(old), place, old);
      *std::prev(place) = std::move(row);
    }
    known->second = std::move(key);
  }
}

std::array<int, 4> Board::counts() const {
  std::array<int, 4> counts{};
  for (const DueRow& row : m_rows) ++counts[static_cast<std::size_t>(row.lane)];
  return counts;
}

}  // namespace snugline::season
