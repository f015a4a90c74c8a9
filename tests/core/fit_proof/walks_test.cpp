// SPDX-License-Identifier: Apache-2.0
// Random walks: answers of every kind in any order against the ledger, and checks that follow the guide to their end.
#include <rapidcheck.h>
#include <algorithm>
#include <cstdio>
#include SNUGLINE_CATCH_HEADER

#include "tests/core/fit_proof/asked_order.h"
#include "tests/core/fit_proof/ledger.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::proof;

namespace {

using Dice = std::vector<std::uint32_t>;

rc::Gen<Dice> dice(std::size_t count) {
  return rc::gen::resize(rc::kNominalSize, rc::gen::container<Dice>(count, rc::gen::inRange<std::uint32_t>(0, 1U << 30U)));
}

// Draws choices out of one number.
class Draw {
 public:
  explicit Draw(std::uint32_t n) : m_n(n) {}
  std::size_t below(std::size_t limit) {
    const std::size_t v = m_n % limit;
    m_n = m_n / static_cast<std::uint32_t>(limit) * 2654435761U + 40503U;
    return v;
  }
  template <typename T>
  T of(const std::vector<T>& all) {
    return all[below(all.size())];
  }

 private:
  std::uint32_t m_n;
};

MarkSeen drawnMark(Draw& draw) {
  const auto all = everyFinding(kMarks[draw.below(kMarkCount)]);
  // Snug more often than not, so that walks come to fits at all.
  MarkSeen seen = draw.below(4) == 0 ? draw.of(all) : all.front();
  if (seen.mark == Mark::brow && draw.below(3) == 0) seen.gap = Length{static_cast<std::int64_t>(draw.below(40000))};
  return seen;
}

Answer drawn(const Ground& ground, const State& state, std::uint32_t number) {
  Draw draw(number);
  switch (draw.below(40)) {
    case 0:
      return HairSeen{draw.below(4) != 0};
    case 1:
      return PointsSound{};
    case 2:
      return PointSeen{
          gear::kPoints[draw.below(gear::kPointCount)],
          draw.of<gear::PointState>({gear::PointState::sound, gear::PointState::sound, gear::PointState::fault, gear::PointState::unseen}),
          "x"};
    case 3:
      return QuestionAnswered{"sight-lines", draw.below(4) != 0};
    case 4:
      return AthleteSaid{draw.below(8) == 0 ? std::optional<Mark>() : kMarks[draw.below(kMarkCount)], Side::both,
                         draw.of<Feels>({Feels::tight, Feels::loose, Feels::broke})};
    case 5:
      return draw.below(60) == 0 ? Answer(Unwell{}) : Answer(PointsSound{});
    case 6:
    case 7:
      return draw.of(everyChange(ground, state));
    case 8:
      return AirRead{draw.of<gear::Port>({gear::Port::crown, gear::Port::sides, gear::Port::jawLeft}), Pressure{15000}, true};
    case 9:
      return draw.below(2) == 0 ? Answer(Fitted{}) : Answer(ColdSeen{draw.below(2) == 0, false});
    case 10:
    case 11:
    case 12:
      return GroupSnug{draw.of<LookView>({LookView::front, LookView::side, LookView::hold})};
    default:
      return drawnMark(draw);
  }
}

Setup drawnSetup(const Ground& ground, Draw& draw) {
  Setup setup = ground.setup;
  setup.kind = draw.of<CheckKind>({CheckKind::first, CheckKind::refit, CheckKind::look});
  const std::size_t label = draw.below(8);
  if (label == 0) setup.certifiedUntil.reset();
  if (label == 1) setup.certifiedUntil = setup.today.plus(-1);
  if (label == 2) setup.isLabelMissing = true;
  if (label == 3) setup.certifiedUntil = setup.today;
  return setup;
}

bool agrees(const Ledger& ledger, const State& state, const Assessment& now) {
  for (std::size_t m = 0; m < kMarkCount; ++m) {
    if ((now.strip[m] != Finding::unseen) != ledger.isSeenSinceDisturbed(m)) return false;
    if ((now.strip[m] == Finding::snug) != ledger.isSnug(m)) return false;
  }
  return state.turns >= 0;
}

}  // namespace

TEST_CASE("Random answers in any order never come to fits against the ledger, and always where the ledger says fits") {
  std::size_t fits = 0, answers = 0;
  for (const std::string& id : kDemoSheets) {
    gear::ModelSheet sheet = demoSheet(id);
    sheet.questions.push_back({"sight-lines", "Sight lines free?", "blocked"});
    const Ground ground(sheet);
    CHECK(rc::check("the guide and the ledger agree after every answer", [&]() {
      const Dice rolls = *dice(300);
      Draw first(rolls.front());
      const Setup setup = drawnSetup(ground, first);
      State state = begin(setup);
      Ledger ledger(setup);
      for (const std::uint32_t roll : rolls) {
        const Answer answer = drawn(ground, state, roll);
        const auto next = take(setup, state, answer);
        if (!next) continue;
        state = *next;
        ledger.write(answer);
        ++answers;
        const Assessment now = assess(setup, state);
        RC_ASSERT((now.verdict == Verdict::fits) == ledger.isFits());
        RC_ASSERT(isFitsByFields(setup, state) == ledger.isFits());
        RC_ASSERT(agrees(ledger, state, now));
        fits += now.verdict == Verdict::fits ? 1 : 0;
      }
    }));
  }
  std::printf("random walks: %zu answers, fits %zu times, each time by the ledger too\n", answers, fits);
  CHECK(fits > 0);
}

TEST_CASE("A check that follows the guide, whatever is found, warm or cold, ends in fits or do not wear") {
  std::size_t fits = 0, walks = 0, longest = 0;
  for (const std::string& id : kDemoSheets) {
    const Ground ground(demoSheet(id));
    CHECK(rc::check("the check ends", [&]() {
      const Dice rolls = *dice(200);
      State state = ground.start;
      if (rolls.front() % 2 == 0) state = *take(ground.setup, state, ColdSeen{true, false});
      const int most = stepsLeft(state);
      std::size_t steps = 0;
      Verdict verdict = Verdict::unfinished;
      for (const std::uint32_t roll : rolls) {
        Draw draw(roll);
        const Assessment now = assess(ground.setup, state);
        verdict = now.verdict;
        if (verdict == Verdict::fits || verdict == Verdict::doNotWear) break;
        std::vector<Answer> ways;
        for (const Advice& a : now.advice) {
          if (a.kind == AdviceKind::change)
            for (const Adjusted& c : everyOutcome(ground, a)) ways.push_back(c);
          if (a.kind == AdviceKind::warm) ways.push_back(ColdSeen{false, true});
          if (a.kind == AdviceKind::reseat)
            for (const MarkSeen& seen : everyFinding(a.mark)) ways.push_back(seen);
        }
        if (verdict == Verdict::unfinished) {
          const auto all = everyFinding(*now.next.mark);
          ways.push_back(draw.below(10) == 0 ? all[1 + draw.below(all.size() - 1)] : all.front());
        }
        const auto next = take(ground.setup, state, draw.of(ways));
        RC_ASSERT(next.has_value());
        RC_ASSERT(stepsLeft(*next) < stepsLeft(state));
        state = *next;
        ++steps;
      }
      RC_ASSERT(verdict == Verdict::fits || verdict == Verdict::doNotWear);
      RC_ASSERT(steps <= static_cast<std::size_t>(most));
      RC_ASSERT(most <= kStepsMost + kStepsOfTurn);
      ++walks;
      longest = std::max(longest, steps);
      fits += verdict == Verdict::fits ? 1 : 0;
    }));
  }
  std::printf("guided walks: %zu, fits %zu times, the longest %zu steps\n", walks, fits, longest);
  CHECK(fits > 0);
  CHECK(fits < walks);
}
