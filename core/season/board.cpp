// SPDX-License-Identifier: Apache-2.0
#include "core/season/board.h"

#include <algorithm>
#include <charconv>
#include <functional>
#include <limits>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>

#include "core/season/board_reasons.h"
#include "core/season/rank_order.h"

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

// What a slot is found by: the number of the id, else its text.
std::uint64_t slotKeyOf(const std::string& id) {
  const std::uint64_t n = numberOf(id);
  return n != 0 ? n : std::hash<std::string>{}(id);
}

constexpr unsigned kLaneShift = 40;

// lane | not on top | not with the athlete | due-by. Days are shifted to stay above zero.
std::uint64_t majorOf(const DueRow& row) {
  const auto day = static_cast<std::uint64_t>(static_cast<std::int64_t>(row.dueBy.number) + (std::int64_t{1} << 31));
  return static_cast<std::uint64_t>(row.lane) << kLaneShift | static_cast<std::uint64_t>(!row.isOnTop) << 35 |
         static_cast<std::uint64_t>(!row.isWithAthlete) << 34 | day;
}

// A district's records do not fit a cache, and each row reads some thirty lines of them. Asking for the lines of a few athletes ahead lets
// the waits overlap.
template <typename Record>
void fetch(const Record* record, std::size_t bytes = sizeof(Record)) {
  constexpr std::size_t kLine = 64;
  const auto* start = reinterpret_cast<const char*>(record);
  for (std::size_t at = 0; at < bytes; at += kLine) __builtin_prefetch(start + at, 0, 2);
}

constexpr std::size_t kAhead = 32;     // athletes; measured, ours
constexpr std::size_t kForTwo = 4000;  // athletes, from which a second thread is worth its start; measured, ours

// Walks the athletes on the roster, the next few ahead of use: the map is a chain, and following it waits for each link in turn.
class Walk {
 public:
  explicit Walk(const Views& views) : m_at(views.athletes.begin()), m_end(views.athletes.end()) {}
  // Finds one more for the next block, while the rows of the present block are made.
  void step() {
    for (; m_at != m_end && m_count < kAhead; ++m_at) {
      const AthleteRecord& athlete = m_at->second;
      fetch(&athlete);
      if (!athlete.isOnRoster) continue;
      m_next[m_count++] = &athlete;
      ++m_at;
      if (m_at != m_end) fetch(&*m_at);
      return;
    }
  }
  std::size_t take(std::array<const AthleteRecord*, kAhead>& block) {
    while (m_count < kAhead && m_at != m_end) step();
    block = m_next;
    m_taken += m_count;
    return std::exchange(m_count, 0);
  }
  [[nodiscard]] std::size_t taken() const { return m_taken; }

 private:
  decltype(Views::athletes)::const_iterator m_at, m_end;
  std::array<const AthleteRecord*, kAhead> m_next{};
  std::size_t m_count = 0, m_taken = 0;
};

// Also says which unit each of them wears where it is one, so that no row looks for it again; nothing where it is none or several.
void fetchBlock(const Views& views, const std::array<const AthleteRecord*, kAhead>& athletes, std::size_t count,
                std::array<const UnitRecord*, kAhead>& units) {
  using Bucket = decltype(views.units)::const_local_iterator;
  std::array<Bucket, kAhead> buckets;
  for (std::size_t i = 0; i < count; ++i) {
    const AthleteRecord& athlete = *athletes[i];
    fetch(athlete.id.data(), 1);
    if (!athlete.checks.empty()) fetch(&athlete.checks.back());
    if (!athlete.tapes.empty()) fetch(&athlete.tapes.back());
    if (!athlete.units.empty()) fetch(&athlete.units.back());
  }
  for (std::size_t i = 0; i < count; ++i) {
    if (athletes[i]->units.size() == 1) fetch(athletes[i]->units.back().data(), 1);
  }
  // A look-up in the map waits for its bucket, the node and the node's key in turn; step by step for all of them, the waits overlap.
  for (std::size_t i = 0; i < count; ++i) {
    units[i] = nullptr;
    if (athletes[i]->units.size() != 1 || views.units.empty()) continue;
    const std::size_t bucket = views.units.bucket(athletes[i]->units.back());
    buckets[i] = views.units.begin(bucket);
    if (buckets[i] == views.units.end(bucket)) continue;
    units[i] = &buckets[i]->second;  // supposed
    fetch(&*buckets[i], sizeof *buckets[i]);
  }
  for (std::size_t i = 0; i < count; ++i) {
    const AthleteRecord& athlete = *athletes[i];
    for (std::size_t n = athlete.checks.size(); n-- > 0;) {
      const EndedCheck& check = athlete.checks[n];
      fetch(&check.kind, 1);
    }
    if (units[i] != nullptr) {
      fetch(buckets[i]->first.data(), 1);
      fetch(units[i]->id.data(), 1);
      if (!units[i]->labels.empty()) fetch(&units[i]->labels.back());
      if (!units[i]->ports.empty()) fetch(units[i]->ports.data(), units[i]->ports.size() * sizeof(PortAir));
      if (!units[i]->air.empty()) fetch(&units[i]->air.back());
    }
    if (!athlete.checks.empty()) {
      fetch(athlete.checks.back().unit.data(), 1);
      fetch(athlete.checks.front().unit.data(), 1);
    }
  }
  for (std::size_t i = 0; i < count; ++i) {
    if (units[i] == nullptr) continue;
    const std::string& id = athletes[i]->units.back();
    if (buckets[i]->first != id) units[i] = views.unit(id);  // another one of its bucket
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
    case DueKind::airLeaking:
      return "air-leaking";
    case DueKind::lineOff:
      return "line-off";
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
    case DueKind::stillOut:
      return "still-out";
  }
  return {};
}

bool jerseyBefore(const std::string& a, const std::string& b) { return jerseyKey(a) < jerseyKey(b); }

RankKey rankKeyOf(const DueRow& row) { return {majorOf(row), jerseyKey(row.jersey), numberOf(row.athlete)}; }

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
  m_slots.clear();
  m_free.clear();
  m_counts = {};
  m_weather = season::weatherNow(views, time, conditions);
  m_watches.clear();
  const DueContext context = contextOf(views, time, conditions);
  if (context.climate.isKnown()) m_watches.resize(views.athletes.size());
  m_rows.resize(views.athletes.size());
  m_ranks.resize(views.athletes.size());
  makeRows(views, context);
  for (const RankKey& rank : m_ranks) ++m_counts[rank.major >> kLaneShift];
  rank();
}

// A row depends on no other row, and its slot on the walk alone: the board is the same whoever makes which row.
void Board::makeRows(const Views& views, const DueContext& context) {
  Walk walk(views);
  std::mutex walking;
  const bool isForTwo = views.athletes.size() >= kForTwo;
  const auto make = [&] {
    std::array<const AthleteRecord*, kAhead> block{};
    std::array<const UnitRecord*, kAhead> units{};
    while (true) {
      std::unique_lock lock(walking);
      const std::size_t count = walk.take(block);
      std::size_t slot = walk.taken() - count;
      lock.unlock();
      if (count == 0) return;
      fetchBlock(views, block, count, units);
      for (std::size_t i = 0; i < count; ++i, ++slot) {
        if (!isForTwo) walk.step();
        makeRow(context, *block[i], m_rows[slot], units[i], m_watches.empty() ? nullptr : &m_watches[slot]);
        m_ranks[slot] = rankKeyOf(m_rows[slot]);
      }
    }
  };
  std::thread other;
  if (isForTwo) {
    try {
      other = std::thread(make);
    } catch (const std::system_error&) {  // no thread to be had: this one makes them all
    }
  }
  make();
  if (other.joinable()) other.join();
  m_rows.resize(walk.taken());
  m_ranks.resize(walk.taken());
  if (!m_watches.empty()) m_watches.resize(walk.taken());
}

bool Board::isBefore(std::uint32_t a, std::uint32_t b) const {
  const auto byKey = m_ranks[a] <=> m_ranks[b];
  return byKey != 0 ? byKey < 0 : m_rows[a].athlete < m_rows[b].athlete;
}

void Board::rank() {
  m_order = orderOf(m_ranks);
  const auto isBeforeThat = [this](std::uint32_t a, std::uint32_t b) { return isBefore(a, b); };
  // Equal keys, as of two devices that counted to the same number, are told apart by the text of the id.
  for (auto start = m_order.begin(); start != m_order.end();) {
    auto end = std::next(start);
    while (end != m_order.end() && m_ranks[*end] == m_ranks[*start]) ++end;
    if (std::distance(start, end) > 1) std::sort(start, end, isBeforeThat);
    start = end;
  }
}

void Board::indexSlots() {
  if (m_slots.size() == m_order.size()) return;
  m_slots.clear();
  m_slots.reserve(m_rows.size());
  // The number of an id lies in its key; the text is asked only where the id has none.
  for (const std::uint32_t slot : m_order) m_slots.put(m_ranks[slot].n != 0 ? m_ranks[slot].n : slotKeyOf(m_rows[slot].athlete), slot);
}

std::optional<std::uint32_t> Board::slotOf(const std::string& athlete) const {
  return m_slots.find(slotKeyOf(athlete), [&](std::uint32_t slot) { return m_rows[slot].athlete == athlete; });
}

std::ptrdiff_t Board::placeOfSlot(std::uint32_t slot) const {
  const auto it =
      std::lower_bound(m_order.begin(), m_order.end(), slot, [this](std::uint32_t a, std::uint32_t b) { return isBefore(a, b); });
  return std::distance(m_order.begin(), it);
}

std::optional<std::size_t> Board::placeOf(const std::string& athlete) const {
  if (const auto known = slotOf(athlete)) return static_cast<std::size_t>(placeOfSlot(*known));
  // Not indexed yet (no update since build).
  const auto it = std::find_if(m_order.begin(), m_order.end(), [&](std::uint32_t slot) { return m_rows[slot].athlete == athlete; });
  return it == m_order.end() ? std::nullopt : std::optional<std::size_t>(static_cast<std::size_t>(it - m_order.begin()));
}

void Board::update(const Views& views, const std::vector<std::string>& athletes) {
  indexSlots();
  if (season::weatherNow(views, m_time, m_conditions) != m_weather) weather(views, m_conditions);
  const DueContext context = contextOf(views, m_time, m_conditions);
  const auto laneOf = [this](std::uint32_t slot) -> int& { return m_counts[static_cast<std::size_t>(m_rows[slot].lane)]; };
  for (const std::string& id : athletes) {
    const AthleteRecord* athlete = views.athlete(id);
    const bool isWanted = athlete != nullptr && athlete->isOnRoster;
    const auto known = slotOf(id);
    if (!known) {
      if (!isWanted) continue;
      if (m_free.empty()) {
        m_free.push_back(static_cast<std::uint32_t>(m_rows.size()));
        m_rows.emplace_back();
        m_ranks.emplace_back();
      }
      const std::uint32_t slot = m_free.back();
      m_free.pop_back();
      makeRow(context, *athlete, m_rows[slot]);
      watch(views, slot);
      m_ranks[slot] = rankKeyOf(m_rows[slot]);
      m_order.insert(m_order.begin() + placeOfSlot(slot), slot);
      m_slots.put(slotKeyOf(id), slot);
      ++laneOf(slot);
      continue;
    }
    const std::uint32_t slot = *known;
    const auto old = m_order.begin() + placeOfSlot(slot);
    --laneOf(slot);
    if (!isWanted) {
      m_order.erase(old);
      m_free.push_back(slot);
      m_slots.drop(slotKeyOf(id), slot);
      if (!m_watches.empty()) m_watches[slot] = {};
      continue;
    }
    makeRow(context, *athlete, m_rows[slot]);
    watch(views, slot);
    ++laneOf(slot);
    const RankKey key = rankKeyOf(m_rows[slot]);
    if (key == m_ranks[slot]) continue;
    const bool isUp = key < m_ranks[slot];
    m_ranks[slot] = key;
    const auto isBeforeThat = [this](std::uint32_t a, std::uint32_t b) { return isBefore(a, b); };
    if (isUp) {
      std::rotate(std::lower_bound(m_order.begin(), old, slot, isBeforeThat), old, std::next(old));
    } else {
      std::rotate(old, std::next(old), std::lower_bound(std::next(old), m_order.end(), slot, isBeforeThat));
    }
  }
}

std::array<int, 4> Board::counts() const { return m_counts; }

}  // namespace snugline::season
