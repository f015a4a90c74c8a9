// SPDX-License-Identifier: Apache-2.0
#include "core/season/matching.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <new>
#include <set>

#include "core/season/assignment.h"
#include "core/season/match_table.h"

namespace snugline::season {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

std::int64_t whole(double cost) { return std::llround(cost * static_cast<double>(kCostUnit)); }

// Who is paired before anything is weighed: wishes first, then whoever keeps what is worn.
struct Fixed {
  std::map<int, int> helmetOf, headOf;
  std::vector<RefusedPin> refused;
};

Result<Fixed> fix(const MatchTable& table, const MatchWishes& wishes) {
  Fixed fixed;
  for (const auto& [athlete, unit] : wishes.pins) {
    const int head = table.headAt(athlete), helmet = table.helmetAt(unit);
    if (head < 0) return fail(ErrorCode::notFound, athlete);
    if (helmet < 0) return fail(ErrorCode::notFound, unit);
    const auto isExcluded = std::find(wishes.exclusions.begin(), wishes.exclusions.end(), std::pair(athlete, unit));
    if (isExcluded != wishes.exclusions.end()) return fail(ErrorCode::inconsistent, athlete, "pinned to " + unit + " and kept from it");
    if (const auto it = fixed.helmetOf.find(head); it != fixed.helmetOf.end() && it->second != helmet)
      return fail(ErrorCode::inconsistent, athlete, "pinned to two helmets");
    if (const auto it = fixed.headOf.find(helmet); it != fixed.headOf.end() && it->second != head)
      return fail(ErrorCode::inconsistent, unit, "pinned to two athletes");
    if (const auto bar = table.helmets()[at(helmet)].bar) {
      fixed.refused.push_back({athlete, unit, bar});
      continue;
    }
    fixed.helmetOf[head] = helmet;
    fixed.headOf[helmet] = head;
  }
  if (!wishes.keepsWorn) return fixed;
  for (std::size_t i = 0; i < table.heads().size(); ++i) {
    const MatchHead& head = table.heads()[i];
    const bool isWorn = head.last >= 0 && !head.athlete->units.empty();
    if (!isWorn || fixed.helmetOf.contains(static_cast<int>(i)) || fixed.headOf.contains(head.last)) continue;
    const auto odds = table.oddsOf(static_cast<int>(i), table.helmets()[at(head.last)].kind);
    if (odds && *odds < kMatchOdds) continue;
    fixed.helmetOf[static_cast<int>(i)] = head.last;
    fixed.headOf[head.last] = static_cast<int>(i);
  }
  return fixed;
}

// A pair is a bid for a kind plus the helmet's standing, or a bid for one helmet alone: the last one, and any that somebody is kept from.
AssignmentProblem problemOf(const MatchTable& table, const Fixed& fixed) {
  AssignmentProblem problem;
  problem.heads = static_cast<int>(table.heads().size());
  problem.kinds = static_cast<int>(table.kinds().size());
  std::set<int> alone;
  for (const auto& [helmet, head] : table.setAside()) alone.insert(helmet);
  std::vector<std::vector<int>> aloneOfKind(table.kinds().size());
  const auto isOpen = [&](int helmet) { return table.helmets()[at(helmet)].bar == std::nullopt && !fixed.headOf.contains(helmet); };
  for (std::size_t i = 0; i < table.helmets().size(); ++i) {
    const MatchHelmet& helmet = table.helmets()[i];
    const bool isAlone = alone.contains(static_cast<int>(i));
    AssignmentProblem::Helmet entry;
    if (isOpen(static_cast<int>(i))) {
      if (isAlone) aloneOfKind[at(helmet.kind)].push_back(static_cast<int>(i));
      const double standing = kTermCosts[at(static_cast<int>(CostTerm::wornByOther))] * (helmet.lastOf.empty() ? 0 : 1) +
                              kTermCosts[at(static_cast<int>(CostTerm::unseenPoints))] * helmet.unseenPoints +
                              kTermCosts[at(static_cast<int>(CostTerm::age))] * helmet.years;
      entry = {isAlone ? -1 : helmet.kind, whole(standing)};
    }
    problem.helmets.push_back(entry);
  }
  for (std::size_t i = 0; i < table.heads().size(); ++i) {
    const int head = static_cast<int>(i);
    if (fixed.helmetOf.contains(head)) continue;
    const MatchHead& h = table.heads()[i];
    const bool hasOwn = h.last >= 0 && isOpen(h.last);
    for (const auto& [kind, odds] : h.odds) {
      double cost = std::max(0.0, -std::log(odds)) + (odds < kMatchOdds ? kTermCosts[at(static_cast<int>(CostTerm::tryOn))] : 0.0);
      if (h.last >= 0) cost += kTermCosts[at(static_cast<int>(CostTerm::otherHelmet))];
      if (kind == h.failedKind) cost += kTermCosts[at(static_cast<int>(CostTerm::kindFailed))];
      problem.kindBids.push_back({head, kind, whole(cost)});
      for (const int helmet : aloneOfKind[at(kind)])
        if (helmet != h.last && !table.isSetAside(head, helmet))
          problem.helmetBids.push_back({head, helmet, whole(table.pairOf(head, helmet).cost)});
      if (hasOwn && table.helmets()[at(h.last)].kind == kind)
        problem.helmetBids.push_back({head, h.last, whole(table.pairOf(head, h.last).cost)});
    }
  }
  return problem;
}

UnmatchedHead unmatched(const MatchTable& table, int head) {
  const MatchHead& h = table.heads()[at(head)];
  UnmatchedHead answer{h.athlete->id, NoHelmet::neverTaped, h.likelySheet, h.likelySize, h.tape};
  if (!isSizeKnown(h.tape)) return answer;
  answer.why = NoHelmet::offChart;
  if (!h.isOnAChart) return answer;
  bool isThere = false, isOpen = false;
  for (std::size_t i = 0; i < table.helmets().size(); ++i) {
    const MatchHelmet& helmet = table.helmets()[i];
    if (helmet.bar || table.oddsOf(head, helmet.kind).value_or(0) < kTryOnOdds) continue;
    isThere = true;
    isOpen = isOpen || !table.isSetAside(head, static_cast<int>(i));
  }
  answer.why = isOpen ? NoHelmet::allTaken : isThere ? NoHelmet::setAside : NoHelmet::noneAtHand;
  return answer;
}

void count(std::vector<SizeCount>& counts, const MatchTable& table, const std::vector<int>& byKind, int offChart) {
  for (std::size_t i = 0; i < byKind.size(); ++i)
    if (byKind[i] > 0) counts.push_back({table.kinds()[i].sheet, table.kinds()[i].size, byKind[i]});
  if (offChart > 0) counts.push_back({{}, {}, offChart});
}

int kindOf(const MatchTable& table, const UnmatchedHead& head) {
  for (std::size_t i = 0; i < table.kinds().size(); ++i)
    if (table.kinds()[i].sheet == head.sheet && table.kinds()[i].size == head.size) return static_cast<int>(i);
  return -1;
}

MatchAnswer answerOf(const MatchTable& table, const Fixed& fixed, const std::vector<int>& helmetOf) {
  MatchAnswer answer;
  answer.through = table.through();
  answer.isSeasonEndKnown = table.isSeasonEndKnown();
  answer.refusedPins = fixed.refused;
  std::vector<bool> isGiven(table.helmets().size(), false);
  std::vector<int> shortBy(table.kinds().size(), 0), spareBy(table.kinds().size(), 0);
  int offChart = 0;
  for (std::size_t i = 0; i < helmetOf.size(); ++i) {
    const auto pin = fixed.helmetOf.find(static_cast<int>(i));
    const int helmet = pin == fixed.helmetOf.end() ? helmetOf[i] : pin->second;
    if (helmet < 0) {
      answer.unmatched.push_back(unmatched(table, static_cast<int>(i)));
      const UnmatchedHead& head = answer.unmatched.back();
      if (const int kind = kindOf(table, head); kind >= 0) {
        ++shortBy[at(kind)];
      } else {
        offChart += head.why == NoHelmet::offChart ? 1 : 0;
      }
      continue;
    }
    isGiven[at(helmet)] = true;
    answer.pairs.push_back(table.pairOf(static_cast<int>(i), helmet));
    answer.pairs.back().isPinned = pin != fixed.helmetOf.end();
    answer.cost += answer.pairs.back().cost;
  }
  for (std::size_t i = 0; i < isGiven.size(); ++i) {
    const MatchHelmet& helmet = table.helmets()[i];
    if (!helmet.bar && !isGiven[i]) {
      answer.spares.push_back(helmet.unit->id);
      ++spareBy[at(helmet.kind)];
    } else if (helmet.bar && helmet.bar != Bar::retired && helmet.bar != Bar::lost) {
      answer.barred.push_back({helmet.unit->id, helmet.bar});
    }
  }
  count(answer.shortBySize, table, shortBy, offChart);
  count(answer.spareBySize, table, spareBy, 0);
  return answer;
}

}  // namespace

std::string_view code(CostTerm t) {
  switch (t) {
    case CostTerm::size:
      return "size";
    case CostTerm::tryOn:
      return "try-on";
    case CostTerm::otherHelmet:
      return "other-helmet";
    case CostTerm::wornByOther:
      return "worn-by-other";
    case CostTerm::kindFailed:
      return "kind-failed";
    case CostTerm::unseenPoints:
      return "unseen-points";
    case CostTerm::age:
      return "age";
  }
  return {};
}

std::string_view code(TapeState s) {
  switch (s) {
    case TapeState::fresh:
      return "fresh";
    case TapeState::stale:
      return "stale";
    case TapeState::open:
      return "open";
    case TapeState::missing:
      return "missing";
  }
  return {};
}

std::string_view code(NoHelmet n) {
  switch (n) {
    case NoHelmet::neverTaped:
      return "never-taped";
    case NoHelmet::offChart:
      return "off-chart";
    case NoHelmet::noneAtHand:
      return "none-at-hand";
    case NoHelmet::allTaken:
      return "all-taken";
    case NoHelmet::setAside:
      return "set-aside";
  }
  return {};
}

Result<MatchAnswer> matchHelmets(const Views& views, const MatchWishes& wishes, Day today) try {
  const Result<MatchTable> table = MatchTable::make(views, wishes, today);
  if (!table) return tl::unexpected<Error>(table.error());
  const Result<Fixed> fixed = fix(*table, wishes);
  if (!fixed) return tl::unexpected<Error>(fixed.error());
  const auto helmetOf = assign(problemOf(*table, *fixed));
  if (!helmetOf) return tl::unexpected<Error>(helmetOf.error());
  return answerOf(*table, *fixed, *helmetOf);
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

Result<PairAnswer> explainPair(const Views& views, const MatchWishes& wishes, Day today, const std::string& athlete,
                               const std::string& unit) try {
  const Result<MatchTable> table = MatchTable::make(views, wishes, today);
  if (!table) return tl::unexpected<Error>(table.error());
  const int head = table->headAt(athlete), helmet = table->helmetAt(unit);
  if (head < 0) return fail(ErrorCode::notFound, athlete);
  if (helmet < 0) return fail(ErrorCode::notFound, unit);
  PairAnswer answer;
  answer.bar = table->helmets()[at(helmet)].bar;
  answer.isSetAside = table->isSetAside(head, helmet);
  answer.pair = table->pairOf(head, helmet);
  answer.isBelowOdds = answer.pair->odds.value_or(0) < kTryOnOdds;
  return answer;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

}  // namespace snugline::season
