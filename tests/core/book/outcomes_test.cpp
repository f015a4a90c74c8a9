// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/book/outcomes.h"
#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::book;
using season::SmallWorld;

namespace {

// Facts of one check, in order.
struct History {
  std::vector<Fact> facts;
  std::string put(Body body) {
    Fact fact;
    fact.device = "d";
    fact.n = facts.size() + 1;
    fact.order = static_cast<std::int64_t>(fact.n);
    fact.body = std::move(body);
    facts.push_back(fact);
    return fact.id();
  }
  std::string answer(fit::Answer one) { return put(CheckAnswered{{std::move(one)}}); }
  std::string found(fit::Mark mark, fit::Finding finding) {
    return answer(fit::MarkSeen{mark, finding, fit::Side::both, fit::HoldHow::unsaid, {}});
  }
};

fit::Adjusted swap(gear::Part part, Length to) { return {fit::Deed::swap, {}, part, 0, {}, to}; }
fit::Adjusted pumped(fit::Deed deed, int pumps) { return {deed, gear::Port::crown, {}, pumps, {}, {}}; }

}  // namespace

TEST_CASE("A word's outcome is the first check after it that saw its place") {
  SmallWorld world;
  season::SaidRecord& said = world.said(dayOf(2026, 10, 12));
  said.where = fit::Mark::jaw;
  said.side = fit::Side::left;
  said.isAnswered = true;
  const std::string fact = said.fact;
  world.ended(dayOf(2026, 10, 12), fit::CheckKind::look, fit::Verdict::unfinished).strip = {};
  const std::string check = world.ended(dayOf(2026, 10, 13), fit::CheckKind::look, fit::Verdict::fits).check;
  world.ended(dayOf(2026, 10, 14), fit::CheckKind::look, fit::Verdict::fits);
  const auto outcomes = outcomesOf(world.athlete());
  REQUIRE(outcomes.size() == 1);
  CHECK(outcomes.front().said == fact);
  CHECK(outcomes.front().check == check);
  CHECK(outcomes.front().found == fit::Finding::snug);
  CHECK(outcomes.front().verdict == fit::Verdict::fits);
  CHECK(outcomes.front().seenAt == season::at(dayOf(2026, 10, 13)));
  CHECK_FALSE(outcomes.front().isOtherHelmet);
}

TEST_CASE("A word not answered yet, and one about feeling unwell, have no outcome") {
  SmallWorld world;
  world.said(dayOf(2026, 10, 12)).where = fit::Mark::jaw;
  season::SaidRecord& unwell = world.said(dayOf(2026, 10, 12));
  unwell.isUnwell = unwell.isAnswered = true;
  CHECK(outcomesOf(world.athlete()).empty());
}

TEST_CASE("Another helmet since then is said") {
  SmallWorld world;
  season::SaidRecord& said = world.said(dayOf(2026, 10, 12));
  said.where = fit::Mark::jaw;
  said.unit = "d:21";
  said.isAnswered = true;
  CHECK(outcomesOf(world.athlete()).front().isOtherHelmet);
}

TEST_CASE("A jaw pad swapped because the jaw pressed was swapped for a thinner one") {
  History history;
  history.found(fit::Mark::jaw, fit::Finding::over);
  history.answer(swap(gear::Part::jawLeft, Length::millimetres(25)));
  const auto done = doneIn(history.facts);
  REQUIRE(done.size() == 1);
  CHECK(done.front().direction == -1);
  CHECK(done.front().change.to == Length::millimetres(25));
}

TEST_CASE("A crown pad swapped because the nape was dug into was swapped for a thicker one") {
  History history;
  history.found(fit::Mark::nape, fit::Finding::over);
  history.answer(swap(gear::Part::crownPad, Length::millimetres(20)));
  CHECK(doneIn(history.facts).front().direction == 1);
}

TEST_CASE("Straps set for the chin's sake have a direction, evened for the ears' sake they have none") {
  History history;
  history.found(fit::Mark::chin, fit::Finding::over);
  history.answer(fit::Adjusted{fit::Deed::relength, {}, gear::Part::straps, 0, {}, {}});
  CHECK(doneIn(history.facts).front().direction == 1);
  history.found(fit::Mark::hold, fit::Finding::under);
  history.answer(fit::Adjusted{fit::Deed::relength, {}, gear::Part::straps, 0, {}, {}});
  REQUIRE(doneIn(history.facts).size() == 1);
  CHECK(doneIn(history.facts).front().direction == 0);
}

TEST_CASE("Pumps of one bladder are added up, and what was let out again was not done") {
  History history;
  history.found(fit::Mark::crown, fit::Finding::under);
  history.answer(pumped(fit::Deed::add, 3));
  history.answer(pumped(fit::Deed::release, 1));
  const auto done = doneIn(history.facts);
  REQUIRE(done.size() == 1);
  CHECK(done.front().change.deed == fit::Deed::add);
  CHECK(done.front().change.pumps == 2);
  history.answer(pumped(fit::Deed::release, 2));
  CHECK(doneIn(history.facts).empty());
}

TEST_CASE("What was taken back was not done, and taking back the taking back does it again") {
  History history;
  const std::string change = history.answer(pumped(fit::Deed::add, 2));
  const std::string correction = history.put(Corrected{change, {}});
  CHECK(doneIn(history.facts).empty());
  history.put(Corrected{correction, {}});
  CHECK(doneIn(history.facts).size() == 1);
}
