// SPDX-License-Identifier: Apache-2.0
#include "core/book/past_seasons.h"

#include <algorithm>

namespace snugline::book {

namespace {

bool isInHands(const std::string& to) { return to == "in-service" || to == "back" || to == "repair" || to == "sent-out" || to == "shelf"; }

}  // namespace

int PastSeason::athletes() const {
  std::set<std::string_view> all;
  for (const PastPair& pair : pairs) all.insert(pair.athlete);
  return static_cast<int>(all.size());
}

int PastSeason::helmets() const {
  std::set<std::string_view> all;
  for (const PastPair& pair : pairs) all.insert(pair.unit);
  return static_cast<int>(all.size());
}

struct PastSeasons::Taker {
  PastSeasons& to;
  const Fact& fact;
  Day day;

  void operator()(const TeamFounded& b) const {
    if (to.m_seasons.empty()) to.open(b.season, day);  // the first in order stands
  }
  void operator()(const PracticeSet& b) const {
    PastSeason* season = to.named();
    if (!b.season.empty() && (season == nullptr || season->season != b.season)) {
      to.open(b.season, day);
      season = to.named();
    }
    if (season == nullptr || !season->closing.empty()) return;
    if (b.seasonStart) season->start = b.seasonStart;
    if (b.seasonEnd) season->end = b.seasonEnd;
  }
  void operator()(const SeasonClosed& b) const { to.close(fact, b); }
  void operator()(const UnitPaired& b) const {
    to.turnUp(fact.about, day);
    to.giveOut(b.athlete, fact.about, day);
  }
  void operator()(const UnitUnpaired& b) const { to.takeBack(b.athlete, fact.about, day, false); }
  void operator()(const UnitCollected& b) const {
    to.turnUp(fact.about, day);
    if (!b.athlete.empty()) to.takeBack(b.athlete, fact.about, day, true);
    if (PastSeason* season = to.now(); season != nullptr && season->season == b.season && to.m_in.insert(fact.about).second)
      ++season->handedIn;
  }
  void operator()(const UnitReceived&) const {
    PastSeason* season = to.now();
    if (season != nullptr && fact.about == fact.id()) ++season->received;
  }
  void operator()(const LabelRead&) const { to.turnUp(fact.about, day); }
  void operator()(const UnitAirRead&) const { to.turnUp(fact.about, day); }
  void operator()(const PointsSeen& b) const {
    to.turnUp(fact.about, day);
    PastSeason* season = to.now();
    if (season == nullptr) return;
    for (const auto& [point, finding] : b.points) season->faults += finding.state == gear::PointState::fault ? 1 : 0;
  }
  void operator()(const UnitHeld&) const {
    if (PastSeason* season = to.now()) ++season->holds;
  }
  void operator()(const UnitMoved& b) const {
    if (isInHands(b.to)) to.turnUp(fact.about, day);
    PastSeason* season = to.now();
    if (season == nullptr) return;
    season->retired += b.to == "retired" ? 1 : 0;
    season->lost += b.to == "lost" ? 1 : 0;
  }
  void operator()(const CheckBegun& b) const { to.turnUp(b.unit, day); }
  void operator()(const CheckEnded& b) const {
    PastSeason* season = to.now();
    if (season == nullptr) return;
    const fit::Verdict verdict = b.outcome.verdict;
    auto& ended = to.m_ended[fact.about];
    PastPair* pair = to.pairOf(b.athlete, b.unit, day);
    if (ended) {
      --season->outcomes[static_cast<std::size_t>(*ended)];
    } else {
      ++pair->checks;
    }
    ++season->outcomes[static_cast<std::size_t>(verdict)];
    if (!pair->first) pair->first = verdict;
    pair->last = verdict;
    ended = verdict;
  }
  void operator()(const LineSeen& b) const {
    to.turnUp(b.unit, day);
    PastSeason* season = to.now();
    if (season == nullptr) return;
    ++season->lineSeen;
    ++to.pairOf(fact.about, b.unit, day)->lines;
  }
  void operator()(const Said& b) const {
    // How somebody feels stays out of every count.
    PastSeason* season = to.now();
    if (season != nullptr && !b.said.isUnwell) ++season->words;
  }

  // Facts that say nothing of a season.
  void operator()(const DeviceAdmitted&) const {}
  void operator()(const PersonAdded&) const {}
  void operator()(const PersonChanged&) const {}
  void operator()(const CodeSet&) const {}
  void operator()(const AthleteAdded&) const {}
  void operator()(const AthleteChanged&) const {}
  void operator()(const TapeRead&) const {}
  void operator()(const ReadingSetAside&) const {}
  void operator()(const SheetAdopted&) const {}
  void operator()(const HoldReleased&) const {}
  void operator()(const PartChanged&) const {}
  void operator()(const CheckAnswered&) const {}
  void operator()(const SaidFollowed&) const {}
  void operator()(const SaidAcknowledged&) const {}
  void operator()(const HairChanged&) const {}
  void operator()(const WeatherNoted&) const {}
  void operator()(const PlaceSet&) const {}
  void operator()(const RecoverySet&) const {}
  void operator()(const WarningSet&) const {}
  void operator()(const WarningSigned&) const {}
  void operator()(const RetentionSet&) const {}
  void operator()(const EmergencySet&) const {}
  void operator()(const LegalHoldMade&) const {}
  void operator()(const LegalHoldEnded&) const {}
  void operator()(const NoticeIssued&) const {}
  void operator()(const PhoneJoined&) const {}
  void operator()(const PhoneLeft&) const {}
  void operator()(const PhotoTaken&) const {}
  void operator()(const Corrected&) const {}
  void operator()(const NoteAdded&) const {}
  void operator()(const Unknown&) const {}
};

Result<bool> PastSeasons::step(Book& book, std::size_t facts) {
  const auto isMore = book.read(m_cursor, facts, [this](Fact&& fact, bool counts) {
    if (counts) std::visit(Taker{*this, fact, dayOf(fact.at)}, fact.body);
  });
  if (!isMore) return tl::unexpected<Error>(isMore.error());
  return !*isMore;
}

PastSeason* PastSeasons::named() { return m_at < m_seasons.size() ? &m_seasons[m_at] : nullptr; }

PastSeason* PastSeasons::now() {
  PastSeason* season = named();
  return season != nullptr && season->isOpen ? season : nullptr;
}

void PastSeasons::open(const std::string& name, Day day) {
  if (PastSeason* before = now()) before->isOpen = false;
  const auto known = std::find_if(m_seasons.begin(), m_seasons.end(), [&](const PastSeason& each) { return each.season == name; });
  m_at = static_cast<std::size_t>(known - m_seasons.begin());
  if (known == m_seasons.end()) {
    m_seasons.emplace_back();
    m_seasons.back().season = name;
  }
  m_pairs.clear();
  m_ended.clear();
  m_in.clear();
  PastSeason& season = m_seasons[m_at];
  season.isOpen = season.closing.empty();
  for (std::size_t i = 0; i < season.pairs.size(); ++i) m_pairs[{season.pairs[i].athlete, season.pairs[i].unit}] = i;
  if (!season.isOpen) return;
  for (const auto& [athlete, unit] : m_out) pairOf(athlete, unit, day)->to.reset();  // kept over
}

void PastSeasons::close(const Fact& fact, const SeasonClosed& closed) {
  const auto at = std::find_if(m_seasons.begin(), m_seasons.end(), [&](const PastSeason& each) { return each.season == closed.season; });
  if (at == m_seasons.end()) return;
  const auto index = static_cast<std::size_t>(at - m_seasons.begin());
  at->closed = closed.day;
  at->closing = fact.id();
  at->isOpen = false;
  at->missing.clear();
  std::erase_if(m_missing, [&](const auto& each) { return each.second.first == index; });
  std::unordered_map<std::string_view, std::string_view> having;
  for (const auto& [athlete, unit] : m_out) having[unit] = athlete;
  for (const std::string& unit : closed.missing) {
    PastMissing missing{unit, {}, std::nullopt};
    if (const auto out = having.find(unit); out != having.end()) missing.athlete = out->second;
    m_missing.emplace(unit, std::pair(index, at->missing.size()));
    at->missing.push_back(std::move(missing));
  }
}

PastPair* PastSeasons::pairOf(const std::string& athlete, const std::string& unit, Day day) {
  PastSeason& season = m_seasons[m_at];
  const auto [it, isNew] = m_pairs.try_emplace({athlete, unit}, season.pairs.size());
  if (isNew) {
    season.pairs.emplace_back();
    season.pairs.back().athlete = athlete;
    season.pairs.back().unit = unit;
    season.pairs.back().from = day;
  }
  return &season.pairs[it->second];
}

void PastSeasons::giveOut(const std::string& athlete, const std::string& unit, Day day) {
  m_out.emplace(athlete, unit);
  if (now() == nullptr) return;
  PastPair* pair = pairOf(athlete, unit, day);
  pair->to.reset();
  pair->isHandedIn = false;
}

void PastSeasons::takeBack(const std::string& athlete, const std::string& unit, Day day, bool isHandedIn) {
  const bool wasOut = m_out.erase({athlete, unit}) > 0;
  if (!wasOut || now() == nullptr) return;
  PastPair* pair = pairOf(athlete, unit, day);
  pair->to = day;
  pair->isHandedIn = isHandedIn;
}

void PastSeasons::turnUp(const std::string& unit, Day day) {
  const auto [first, last] = m_missing.equal_range(unit);
  for (auto it = first; it != last; ++it) {
    auto& missing = m_seasons[it->second.first].missing[it->second.second];
    if (!missing.turnedUp) missing.turnedUp = day;
  }
}

}  // namespace snugline::book
