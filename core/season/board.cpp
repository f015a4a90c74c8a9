// SPDX-License-Identifier: Apache-2.0
#include "core/season/board.h"

#include <algorithm>
#include <charconv>
#include <limits>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

constexpr std::int32_t kNoNumber = std::numeric_limits<std::int32_t>::max();

// Number in the upper half, the first characters of the text in the lower, so that a plain comparison ranks.
std::uint64_t jerseyKey(const std::string& jersey) {
  std::int32_t number = 0;
  const auto [end, error] = std::from_chars(jersey.data(), jersey.data() + jersey.size(), number);
  if (error != std::errc{} || end != jersey.data() + jersey.size() || number < 0) number = kNoNumber;
  std::uint32_t text = 0;
  for (std::size_t i = 0; i < sizeof text; ++i) text = text << 8 | (i < jersey.size() ? static_cast<unsigned char>(jersey[i]) : 0U);
  return static_cast<std::uint64_t>(number) << 32 | text;
}

// The n of "device:n"; ids of another form count as 0 and are told apart by their text.
std::uint64_t numberOf(const std::string& id) {
  std::uint64_t n = 0;
  const std::size_t colon = id.rfind(':');
  if (colon != std::string::npos) std::from_chars(id.data() + colon + 1, id.data() + id.size(), n);
  return n;
}

// lane | not on top | not with the athlete | due-by. Days are shifted to stay above zero.
std::uint64_t majorOf(const DueRow& row) {
  const auto day = static_cast<std::uint64_t>(static_cast<std::int64_t>(row.dueBy.number) + (std::int64_t{1} << 31));
  return static_cast<std::uint64_t>(row.lane) << 40 | static_cast<std::uint64_t>(!row.isOnTop) << 35 |
         static_cast<std::uint64_t>(!row.isWithAthlete) << 34 | day;
}

// A RankKey without its text, and where the row stands.
struct SortKey {
  std::uint64_t major, jersey, n;
  std::uint32_t row;
};

// A district's records do not fit a cache, and each row reads some thirty lines of them. Asking for the lines of a few athletes ahead lets
// the waits overlap.
template <typename Record>
void fetch(const Record* record, std::size_t bytes = sizeof(Record)) {
  constexpr std::size_t kLine = 64;
  const auto* start = reinterpret_cast<const char*>(record);
  for (std::size_t at = 0; at < bytes; at += kLine) __builtin_prefetch(start + at);
}

void fetchBlock(const Views& views, const AthleteRecord* const* athletes, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) fetch(athletes[i]);
  for (std::size_t i = 0; i < count; ++i) {
    const AthleteRecord& athlete = *athletes[i];
    if (!athlete.checks.empty()) fetch(&athlete.checks.back());
    if (!athlete.tapes.empty()) fetch(&athlete.tapes.back());
    if (!athlete.units.empty()) fetch(&athlete.units.back());
  }
  for (std::size_t i = 0; i < count; ++i) {
    const AthleteRecord& athlete = *athletes[i];
    if (!athlete.checks.empty()) fetch(athlete.checks.back().unit.data(), 1);
    const UnitRecord* unit = athlete.units.empty() ? nullptr : views.unit(athlete.units.back());
    if (unit == nullptr) continue;
    fetch(unit);
    if (!unit->labels.empty()) fetch(&unit->labels.back());
  }
}

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

bool jerseyBefore(const std::string& a, const std::string& b) { return jerseyKey(a) < jerseyKey(b); }

RankKey rankKeyOf(const DueRow& row) { return {majorOf(row), jerseyKey(row.jersey), numberOf(row.athlete), row.athlete}; }

bool ranksBefore(const DueRow& a, const DueRow& b) {
  const std::uint64_t majorA = majorOf(a), majorB = majorOf(b);
  if (majorA != majorB) return majorA < majorB;
  const std::uint64_t jerseyA = jerseyKey(a.jersey), jerseyB = jerseyKey(b.jersey);
  if (jerseyA != jerseyB) return jerseyA < jerseyB;
  const std::uint64_t nA = numberOf(a.athlete), nB = numberOf(b.athlete);
  return nA != nB ? nA < nB : a.athlete < b.athlete;
}

void Board::build(const Views& views, BoardTime time, const Conditions& conditions) {
  m_time = time;
  m_conditions = conditions;
  m_keys.clear();
  std::vector<const AthleteRecord*> athletes;
  athletes.reserve(views.athletes.size());
  for (const auto& [id, athlete] : views.athletes) {
    if (athlete.isOnRoster) athletes.push_back(&athlete);
  }
  const DueContext context = contextOf(views, time);
  std::vector<SortKey> keys;
  keys.reserve(athletes.size());
  m_rows.resize(athletes.size());
  constexpr std::size_t kAhead = 16;  // rows; measured, more does not help
  for (std::size_t i = 0; i < athletes.size(); ++i) {
    if (i % kAhead == 0) fetchBlock(views, &athletes[i], std::min(kAhead, athletes.size() - i));
    DueRow& row = m_rows[i];
    makeRow(context, *athletes[i], row);
    keys.push_back({majorOf(row), jerseyKey(row.jersey), numberOf(row.athlete), static_cast<std::uint32_t>(i)});
  }
  std::sort(keys.begin(), keys.end(), [this](const SortKey& a, const SortKey& b) {
    if (a.major != b.major) return a.major < b.major;
    if (a.jersey != b.jersey) return a.jersey < b.jersey;
    return a.n != b.n ? a.n < b.n : m_rows[a.row].athlete < m_rows[b.row].athlete;
  });
  // Keys were sorted, rows move once, ring by ring: a row is far larger than its key, and a second array of them larger still.
  for (std::size_t start = 0; start < keys.size(); ++start) {
    if (keys[start].row == start) continue;
    DueRow held = std::move(m_rows[start]);
    std::size_t hole = start;
    while (keys[hole].row != start) {
      const std::size_t from = keys[hole].row;
      m_rows[hole] = std::move(m_rows[from]);
      keys[hole].row = static_cast<std::uint32_t>(hole);
      hole = from;
    }
    m_rows[hole] = std::move(held);
    keys[hole].row = static_cast<std::uint32_t>(hole);
  }
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
      DueRow row;
      makeRow(context, *athlete, row);
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
    DueRow row;
    makeRow(context, *athlete, row);
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
