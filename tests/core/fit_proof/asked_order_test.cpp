// SPDX-License-Identifier: Apache-2.0
// Every check in the order in which the guide asks, for each demo sheet: the next mark found in every way, then every way
// that is advised, air counted or read at the limit, up to the last turn.
#include <cstdio>
#include <unordered_set>
#include SNUGLINE_CATCH_HEADER

#include "tests/core/fit_proof/ledger.h"
#include "tests/core/fit_proof/positions.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::proof;

namespace {

struct Count {
  std::size_t positions = 0, transitions = 0, judged = 0, fits = 0, adjust = 0, doNotWear = 0, unfinished = 0, faults = 0;
  std::string firstFault;
  void expect(bool isTrue, const char* what) {
    if (isTrue) return;
    if (faults++ == 0) firstFault = what;
  }
};

// What a step may change: a seeing makes its own mark current and no other; a change only takes away.
void checkStep(Count& count, const State& before, const State& after, const Answer& answer) {
  const auto* seen = std::get_if<MarkSeen>(&answer);
  const auto* change = std::get_if<Adjusted>(&answer);
  for (std::size_t m = 0; m < kMarkCount; ++m) {
    const bool isSeenNow = seen != nullptr && static_cast<std::size_t>(seen->mark) == m;
    if (isSeenNow) {
      count.expect(after.marks[m].isCurrent, "a mark seen is current");
    } else if (change != nullptr && isDisturbed(disturbedBy(*change), m)) {
      count.expect(!after.marks[m].isCurrent, "a mark disturbed is not current");
    } else {
      count.expect(after.marks[m].isCurrent == before.marks[m].isCurrent &&
                       (!after.marks[m].isCurrent || after.marks[m].finding == before.marks[m].finding),
                   "a mark neither seen nor disturbed stays as it was");
    }
  }
  count.expect(after.turns == before.turns + (change != nullptr ? 1 : 0), "turns grow by one with each change and with nothing else");
}

// Strictly falls with each change and with each open mark seen: at most 89 such steps from begin to the end.
int stepsLeft(const State& state) { return (kTurnsPerCheck - state.turns) * 10 + static_cast<int>(kMarkCount) - currentCount(state); }

void judge(Count& count, const Ground& ground, const State& state, const Assessment& base) {
  const Assessment now = assess(ground.setup, state);
  ++count.judged;
  count.expect((now.verdict == Verdict::fits) == isFitsByFields(ground.setup, state), "fits exactly by the predicate");
  count.expect(isFits(ground.setup, state) == (now.verdict == Verdict::fits), "one predicate of fits");
  bool isAnyOff = false;
  for (const MarkState& m : state.marks) isAnyOff = isAnyOff || isOffNow(m);
  std::size_t ways = 0, ends = 0;
  for (const Advice& a : now.advice) {
    if (a.kind == AdviceKind::change) ++ways;
    if (a.kind != AdviceKind::change && a.kind != AdviceKind::reseat) ++ends;
    if (a.kind != AdviceKind::change) continue;
    bool isOffered = false;
    for (const Advice& b : base.advice) isOffered = isOffered || b == a;
    count.expect(isOffered, "counters only take ways away");
  }
  count.expect(!isAnyOff || ways + ends > 0, "a mark that is off always has advice");
  count.expect(now.verdict != Verdict::adjust || ways > 0, "adjust always has a way");
  count.expect(now.verdict != Verdict::adjust || state.turns < kTurnsPerCheck, "no adjusting beyond the last turn");
  count.expect(isAnyOff == (now.verdict == Verdict::adjust || now.verdict == Verdict::doNotWear), "something off is adjust or do not wear");
  count.expect(base.verdict != Verdict::doNotWear || now.verdict == Verdict::doNotWear, "counters never soften a verdict");
  if (now.verdict == Verdict::unfinished) {
    const bool isOpenMark = now.next.kind == StepKind::mark && !state.marks[static_cast<std::size_t>(*now.next.mark)].isCurrent;
    count.expect(isOpenMark, "unfinished asks for a mark that is open");
  }
  if (now.verdict == Verdict::fits)
    count.expect(now.next.kind == StepKind::done && now.open.empty() && now.reasons.empty(), "fits asks nothing more");
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
    forCounters(ground, state, every, [&](const State& s) { judge(count, ground, s, base); });
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
    for (const MarkSeen& seen : everyFinding(*base.next.mark)) go(state, seen);
    for (const Advice& a : base.advice)
      if (a.kind == AdviceKind::change)
        for (const Adjusted& change : everyOutcome(ground, a)) go(state, change);
  }
  count.positions = found.size();
  return found;
}

void print(const std::string& sheet, const Count& c) {
  std::printf("%s: %zu positions, %zu transitions, %zu judged with counters; fits %zu, adjust %zu, do-not-wear %zu, unfinished %zu\n",
              sheet.c_str(), c.positions, c.transitions, c.judged, c.fits, c.adjust, c.doNotWear, c.unfinished);
  std::fflush(stdout);
}

void prove(const std::string& id, bool every) {
  const Ground ground(demoSheet(id));
  Count count;
  walkAskedOrder(ground, count, every);
  print(id, count);
  INFO(count.firstFault);
  CHECK(count.faults == 0);
  CHECK(count.fits > 0);
  CHECK(count.doNotWear > 0);
  CHECK(count.adjust > 0);
}

}  // namespace

TEST_CASE("Asked order on Alder A1: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove("alder-a1", false);
}
TEST_CASE("Asked order on Brant B2: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove("brant-b2", false);
}
TEST_CASE("Asked order on Cedar C3: no path to fits against the predicate, every state leads to a verdict, every check ends") {
  prove("cedar-c3", false);
}
