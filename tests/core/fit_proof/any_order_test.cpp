// SPDX-License-Identifier: Apache-2.0
// Any other order. A check that does not follow the guide is a chain of single answers, so it is enough to look at every
// kind of answer on every pattern of marks: what a change disturbs is not current afterwards, and no answer but seeing a
// mark makes a mark current. With that, by induction over the answers, whatever the order, a mark is current only if it was
// seen after the last change that disturbs it; and "fits" reads nothing else of the marks.
#include <algorithm>
#include <cstdio>
#include SNUGLINE_CATCH_HEADER

#include "tests/core/fit_proof/asked_order.h"
#include "tests/core/fit_proof/ledger.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::proof;

namespace {

constexpr unsigned kPatterns = 1U << kMarkCount;

// All marks found alike, current where the pattern has a bit; words ever said as asked.
State patterned(const Ground& ground, unsigned current, Finding finding, std::uint16_t words) {
  State state = ground.start;
  for (std::size_t m = 0; m < kMarkCount; ++m) {
    state.marks[m].finding = finding;
    state.marks[m].isCurrent = (current >> m & 1U) != 0;
  }
  state.wordsEver.bits = words;
  return state;
}

std::vector<std::uint16_t> wordSets() {
  std::vector<std::uint16_t> out{0, 0x1FF};
  for (unsigned m = 0; m < kMarkCount; ++m) out.push_back(static_cast<std::uint16_t>(1U << m));
  return out;
}

struct Expected {
  std::string_view disturbed = ". . . . . . . . .";
  std::uint16_t more = 0;  // marks disturbed besides, as bits
  std::uint16_t seen = 0;  // marks made current
  bool isChange = false;
};

void checkMarks(Count& count, const State& before, const State& after, const Expected& e) {
  ++count.transitions;
  for (std::size_t m = 0; m < kMarkCount; ++m) {
    const bool isSeen = (e.seen >> m & 1U) != 0;
    const bool isLost = isDisturbed(e.disturbed, m) || (e.more >> m & 1U) != 0;
    const bool isCurrent = isSeen || (before.marks[m].isCurrent && !isLost);
    count.expect(after.marks[m].isCurrent == isCurrent, "current after a step: seen, or current before and not disturbed");
    if (!isSeen) count.expect(after.marks[m].finding == before.marks[m].finding, "a finding changes by seeing only");
  }
  count.expect(after.turns == before.turns + (e.isChange ? 1 : 0), "each change is one turn");
}

const std::vector<Finding> kFindings{Finding::snug, Finding::over, Finding::under, Finding::fault};

void proveChanges(const std::string& id) {
  const Ground ground(demoSheet(id));
  Count count;
  for (const std::uint16_t words : wordSets()) {
    for (const Finding finding : kFindings) {
      for (unsigned pattern = 0; pattern < kPatterns; ++pattern) {
        const State before = patterned(ground, pattern, finding, words);
        for (const Adjusted& change : everyChange(ground, before)) {
          const auto after = take(ground.setup, before, change);
          count.expect(after.has_value(), "the change is accepted");
          if (!after) continue;
          checkMarks(count, before, *after, {disturbedBy(change), words, 0, true});
          count.expect(after->words.bits == words, "every word is asked again");
          count.expect(!isFits(ground.setup, *after), "no change ends in fits");
        }
      }
    }
  }
  std::printf("%s: %zu changes on every pattern of marks\n", id.c_str(), count.transitions);
  INFO(count.firstFault);
  CHECK(count.faults == 0);
  CHECK(count.transitions > 0);
}

void proveSeeings(const std::string& id) {
  const Ground ground(demoSheet(id));
  Count count;
  for (const Finding finding : kFindings) {
    for (unsigned pattern = 0; pattern < kPatterns; ++pattern) {
      const State before = patterned(ground, pattern, finding, 0x1FF);
      for (const Mark m : kMarks) {
        for (const MarkSeen& seen : everyFinding(m)) {
          const State after = *take(ground.setup, before, seen);
          checkMarks(count, before, after, {". . . . . . . . .", 0, static_cast<std::uint16_t>(1U << static_cast<unsigned>(m)), false});
          count.expect((after.marks[static_cast<std::size_t>(m)].finding == Finding::snug) == (seen.finding == Finding::snug),
                       "found as said");
        }
      }
      for (const LookView v : kLookViews) {
        std::uint16_t bits = 0;
        for (const Mark m : marksOf(v)) bits = static_cast<std::uint16_t>(bits | 1U << static_cast<unsigned>(m));
        checkMarks(count, before, *take(ground.setup, before, GroupSnug{v}), {". . . . . . . . .", 0, bits, false});
      }
    }
  }
  std::printf("%s: %zu seeings on every pattern of marks\n", id.c_str(), count.transitions);
  INFO(count.firstFault);
  CHECK(count.faults == 0);
}

void proveOthers(const std::string& id) {
  gear::ModelSheet sheet = demoSheet(id);
  sheet.questions.push_back({"sight-lines", "Sight lines free?", "blocked"});
  const Ground ground(sheet);
  Count count;
  for (const Finding finding : kFindings) {
    for (unsigned pattern = 0; pattern < kPatterns; ++pattern) {
      State before = patterned(ground, pattern, finding, 0x155);
      for (const gear::AirPort& port : sheet.air)
        checkMarks(count, before, *take(ground.setup, before, AirRead{port.port, port.low, true}), {". . . . . . . . x", 0, 0, false});
      std::vector<Answer> harmless{HairSeen{true},
                                   HairSeen{false},
                                   ColdSeen{false, true},
                                   Fitted{},
                                   PointsSound{},
                                   Unwell{},
                                   QuestionAnswered{"sight-lines", true},
                                   QuestionAnswered{"sight-lines", false},
                                   AthleteSaid{std::nullopt, Side::both, Feels::broke}};
      for (const gear::Point p : gear::kPoints)
        for (const gear::PointState s : {gear::PointState::sound, gear::PointState::fault, gear::PointState::unseen})
          harmless.push_back(PointSeen{p, s, "x"});
      for (const Answer& answer : harmless) checkMarks(count, before, *take(ground.setup, before, answer), {});
      for (const Feels feels : {Feels::tight, Feels::loose, Feels::broke}) {
        for (const Mark m : kMarks) {
          const auto bit = static_cast<std::uint16_t>(1U << static_cast<unsigned>(m));
          const State after = *take(ground.setup, before, AthleteSaid{m, Side::left, feels});
          checkMarks(count, before, after, {". . . . . . . . .", bit, 0, false});
          count.expect(after.words.has(m) && !isFits(ground.setup, after), "a word is open");
        }
      }
      for (const Feels feels : {Feels::tight, Feels::loose})
        checkMarks(count, before, *take(ground.setup, before, AthleteSaid{std::nullopt, Side::both, feels}),
                   {"x x x x x x x x x", 0, 0, false});
      checkMarks(count, before, *take(ground.setup, before, ColdSeen{true, false}), {"x x x x x x x x x", 0, 0, false});
      before.isHairWet = false;
      checkMarks(count, before, *take(ground.setup, before, HairSeen{true}), {"x x x x x x x x x", 0, 0, false});
    }
  }
  std::printf("%s: %zu other answers on every pattern of marks\n", id.c_str(), count.transitions);
  INFO(count.firstFault);
  CHECK(count.faults == 0);
}

}  // namespace

TEST_CASE("Any order: whatever a change disturbs is not current afterwards, and nothing else moves") {
  for (const std::string& id : kDemoSheets) proveChanges(id);
}
TEST_CASE("Any order: seeing a mark makes that mark current and no other") {
  for (const std::string& id : kDemoSheets) proveSeeings(id);
}
TEST_CASE("Any order: hair, air, points, questions and words make no mark current") {
  for (const std::string& id : kDemoSheets) proveOthers(id);
}
