// SPDX-License-Identifier: Apache-2.0
#include "tests/core/fit_proof/asked_order.h"

#include "tests/core/fit_proof/ledger.h"

namespace snugline::fit::proof {

namespace {

// What a step may change: a seeing makes its own mark current and no other; a change only takes away.
void checkStep(Count& count, const State& before, const State& after, const Answer& answer) {
  const auto* seen = std::get_if<MarkSeen>(&answer);
  const auto* change = std::get_if<Adjusted>(&answer);
  const bool isWarmed = std::holds_alternative<ColdSeen>(answer);
  for (std::size_t m = 0; m < kMarkCount; ++m) {
    const bool isSeenNow = seen != nullptr && static_cast<std::size_t>(seen->mark) == m;
    if (isSeenNow) {
      count.expect(after.marks[m].isCurrent, "a mark seen is current");
    } else if (isWarmed || (change != nullptr && isDisturbed(disturbedBy(*change), m))) {
      count.expect(!after.marks[m].isCurrent, "a mark disturbed is not current");
    } else {
      count.expect(after.marks[m].isCurrent == before.marks[m].isCurrent &&
                       (!after.marks[m].isCurrent || after.marks[m].finding == before.marks[m].finding),
                   "a mark neither seen nor disturbed stays as it was");
    }
  }
  count.expect(after.turns == before.turns + (change != nullptr ? 1 : 0), "turns grow by one with each change and with nothing else");
}

void judgeOne(Count& count, const Ground& ground, const State& state, const Assessment& base) {
  const Assessment now = assess(ground.setup, state);
  ++count.judged;
  count.expect((now.verdict == Verdict::fits) == isFitsByFields(ground.setup, state), "fits exactly by the predicate");
  count.expect(isFits(ground.setup, state) == (now.verdict == Verdict::fits), "one predicate of fits");
  bool isAnyOff = false;
  for (const MarkState& m : state.marks) isAnyOff = isAnyOff || isOffNow(m);
  std::size_t ways = 0, ends = 0, first = 0;
  for (const Advice& a : now.advice) {
    const bool isFirst = a.kind == AdviceKind::reseat || a.kind == AdviceKind::warm;
    if (a.kind == AdviceKind::change) ++ways;
    if (isFirst) ++first;
    if (a.kind != AdviceKind::change && !isFirst) ++ends;
    count.expect(!state.isCold || a.deed != Deed::release, "no air is let out in the cold");
    count.expect(!state.isCold || a.deed != Deed::add || a.pumpsHigh == 1, "air is added one pump at a time in the cold");
    count.expect(state.isCold || a.kind != AdviceKind::warm, "only what is cold is warmed");
    if (a.kind != AdviceKind::change) continue;
    bool isOffered = false;
    for (const Advice& b : base.advice) isOffered = isOffered || b == a;
    count.expect(isOffered, "counters only take ways away");
  }
  count.expect(!isAnyOff || ways + ends + first > 0, "a mark that is off always has advice");
  count.expect(now.verdict != Verdict::adjust || ways + first > 0, "adjust always has a way");
  count.expect(now.verdict != Verdict::adjust || state.turns < kTurnsPerCheck || first > 0,
               "beyond the last turn only reseating and warming are left");
  count.expect(isAnyOff == (now.verdict == Verdict::adjust || now.verdict == Verdict::doNotWear), "something off is adjust or do not wear");
  count.expect(base.verdict != Verdict::doNotWear || now.verdict == Verdict::doNotWear, "counters never soften a verdict");
  if (now.verdict == Verdict::unfinished) {
    const bool isOpenMark = now.next.kind == StepKind::mark && !state.marks[static_cast<std::size_t>(*now.next.mark)].isCurrent;
    count.expect(isOpenMark, "unfinished asks for a mark that is open");
  }
  if (now.verdict == Verdict::fits)
    count.expect(now.next.kind == StepKind::done && now.open.empty() && now.reasons.empty(), "fits asks nothing more");
}

// Every step that the guide asks or advises here.
template <typename Go>
void forAsked(const Ground& ground, const State& state, const Assessment& base, const Go& go) {
  for (const MarkSeen& seen : everyFinding(*base.next.mark)) go(state, seen);
  for (const Advice& a : base.advice) {
    if (a.kind == AdviceKind::warm) go(state, ColdSeen{false, true});
    if (a.kind == AdviceKind::change)
      for (const Adjusted& change : everyOutcome(ground, a)) go(state, change);
  }
}

bool isSame(const Assessment& a, const Assessment& b) {
  return a.verdict == b.verdict && a.reasons == b.reasons && a.open == b.open && a.next == b.next && a.advice == b.advice &&
         a.strip == b.strip;
}

// A real state as text: its key and the counters of its marks.
std::string realKey(const Ground& ground, const State& state) {
  const Key key = keyOf(ground, state);
  std::string out(reinterpret_cast<const char*>(&key), sizeof key);
  for (const MarkState& m : state.marks) {
    out.push_back(static_cast<char>(m.turns));
    out.append(reinterpret_cast<const char*>(&m.waysUsed), sizeof m.waysUsed);
  }
  return out;
}

}  // namespace

int stepsLeft(const State& state) {
  int left = (kTurnsPerCheck - state.turns + (state.isCold ? 1 : 0)) * kStepsOfTurn;
  for (const MarkState& m : state.marks) left += !m.isCurrent ? kStepsOfMark : !isOffNow(m) ? 0 : m.isSeenAgain ? 1 : 2;
  return left;
}

// Every position reached in the asked order, in the order found.
std::vector<Key> walkAskedOrder(const Ground& ground, Count& count, bool every) {
  std::unordered_set<Key, KeyHash> known;
  std::vector<Key> found{keyOf(ground, ground.start)};
  known.insert(found.front());
  const auto go = [&](const State& before, const Answer& answer) {
    ++count.transitions;
    const auto after = take(ground.setup, before, answer);
    count.expect(after.has_value(), "what the guide asks or advises is accepted");
    if (!after) return;
    checkStep(count, before, *after, answer);
    const auto* seen = std::get_if<MarkSeen>(&answer);
    const bool isSeenAgain = seen != nullptr && before.marks[static_cast<std::size_t>(seen->mark)].isCurrent;
    count.expect(isSeenAgain || stepsLeft(*after) < stepsLeft(before), "every step but seeing the same mark again leads on");
    count.expect(stepsLeft(*after) <= stepsLeft(before), "no step leads back");
    const Key key = keyOf(ground, *after);
    if (known.insert(key).second) found.push_back(key);
  };
  for (std::size_t i = 0; i < found.size(); ++i) {
    const State state = stateOf(ground, found[i]);
    const Assessment base = assess(ground.setup, state);
    forCounters(ground, state, every, [&](const State& s) { judgeOne(count, ground, s, base); });
    switch (base.verdict) {
      case Verdict::fits:
        ++count.fits;
        continue;
      case Verdict::doNotWear:
        ++count.doNotWear;
        continue;
      case Verdict::adjust:
        ++count.adjust;
        break;
      case Verdict::unfinished:
        ++count.unfinished;
        break;
    }
    count.expect(base.next.kind == StepKind::mark, "the next question is a mark");
    forAsked(ground, state, base, go);
  }
  count.positions = found.size();
  return found;
}

std::size_t walkReal(const Ground& ground, Count& count, const std::vector<Key>& positions, int turns) {
  const std::unordered_set<Key, KeyHash> covered(positions.begin(), positions.end());
  std::unordered_set<std::string> known{realKey(ground, ground.start)};
  std::vector<State> front{ground.start};
  while (!front.empty()) {
    std::vector<State> next;
    for (const State& state : front) {
      const Assessment now = assess(ground.setup, state);
      const State bare = stateOf(ground, keyOf(ground, state));
      judgeOne(count, ground, state, assess(ground.setup, bare));
      count.expect(covered.count(keyOf(ground, state)) == 1, "a real state is among the positions");
      if (now.verdict == Verdict::fits || now.verdict == Verdict::doNotWear) continue;
      forAsked(ground, state, now, [&](const State& before, const Answer& answer) {
        if (std::holds_alternative<Adjusted>(answer) && before.turns >= turns) return;
        const auto after = take(ground.setup, before, answer);
        count.expect(after.has_value(), "what the guide asks or advises is accepted");
        if (after && known.insert(realKey(ground, *after)).second) next.push_back(*after);
      });
    }
    front = std::move(next);
  }
  return known.size();
}

void checkCounters(const Ground& ground, Count& count, const std::vector<Key>& positions, std::size_t every) {
  for (std::size_t i = 0; i < positions.size(); i += every) {
    const State bare = stateOf(ground, positions[i]);
    count.expect(keyOf(ground, bare) == positions[i], "a key says all of its position");
    const Assessment base = assess(ground.setup, bare);
    State scrambled = bare, worn = bare;
    for (std::size_t m = 0; m < kMarkCount; ++m) {
      MarkState& counted = isOffNow(bare.marks[m]) ? worn.marks[m] : scrambled.marks[m];
      counted.turns = static_cast<int>((i + m) % 9);
      counted.waysUsed = static_cast<std::uint32_t>((i * 2654435761U) ^ (m * 40503U));
    }
    count.expect(isSame(assess(ground.setup, scrambled), base), "counters of marks that are not off are not read");
    if (base.verdict == Verdict::fits || base.verdict == Verdict::doNotWear) continue;
    forAsked(ground, bare, base, [&](const State& before, const Answer& answer) {
      const auto plain = take(ground.setup, before, answer);
      const auto fromScrambled = take(ground.setup, scrambled, answer);
      const auto fromWorn = take(ground.setup, worn, answer);
      const bool isSameStep = plain && fromScrambled && fromWorn && keyOf(ground, *plain) == keyOf(ground, *fromScrambled) &&
                              keyOf(ground, *plain) == keyOf(ground, *fromWorn);
      count.expect(isSameStep, "no counter decides what a step leads to");
    });
  }
}

}  // namespace snugline::fit::proof
