// SPDX-License-Identifier: Apache-2.0
// Each veto by itself turns every position that fits into one that does not: points, label, words, hair, questions, unwell.
#include <cstdio>
#include SNUGLINE_CATCH_HEADER

#include "tests/core/fit_proof/asked_order.h"
#include "tests/core/fit_proof/ledger.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::proof;

namespace {

struct Veto {
  Setup setup;
  State state;
  std::string name;
};

// Every position with all nine marks snug: all turns, air at its limits or not, each pad at each of its steps.
template <typename Call>
void forAllSnug(const Ground& ground, const Call& call) {
  std::vector<State> all{ground.start};
  for (const Mark m : kMarks)
    for (State& s : all) s = *take(ground.setup, s, MarkSeen{m, Finding::snug, Side::both, HoldHow::unsaid, std::nullopt});
  const auto spread = [&](const auto& values, const auto& set) {
    std::vector<State> next;
    for (const State& s : all)
      for (const auto& v : values) {
        next.push_back(s);
        set(next.back(), v);
      }
    all = std::move(next);
  };
  for (const gear::AirPort& port : ground.sheet.air)
    spread(std::vector<std::optional<Pressure>>{std::nullopt, port.low, port.high},
           [&](State& s, const auto& v) { s.fitted.air[static_cast<std::size_t>(port.port)] = v; });
  for (const gear::Part part : {gear::Part::jawLeft, gear::Part::jawRight, gear::Part::crownPad})
    if (const gear::PadSet* pads = ground.sheet.padsAt(part); pads != nullptr)
      spread(pads->steps, [&](State& s, Length v) { s.fitted.pad[static_cast<std::size_t>(part)] = v; });
  for (int turns = 0; turns <= kTurnsPerCheck; ++turns)
    for (State s : all) {
      s.turns = turns;
      call(s);
    }
}

std::vector<Veto> vetoes(const Ground& ground, const State& good) {
  std::vector<Veto> out;
  const auto add = [&](std::string name) -> Veto& {
    out.push_back({ground.setup, good, std::move(name)});
    return out.back();
  };
  const auto told = [&](std::string name, const Answer& answer) {
    Veto& v = add(std::move(name));
    v.state = *take(v.setup, good, answer);
  };
  for (const gear::Point p : gear::kPoints) {
    told("point fault", PointSeen{p, gear::PointState::fault, "x"});
    told("point unseen", PointSeen{p, gear::PointState::unseen, {}});
  }
  add("label lapsed").setup.certifiedUntil = ground.setup.today.plus(-1);
  add("label unknown").setup.certifiedUntil.reset();
  add("label missing").setup.isLabelMissing = true;
  for (const Mark m : kMarks) {
    for (const Feels f : {Feels::tight, Feels::loose, Feels::broke}) told("word", AthleteSaid{m, Side::both, f});
    for (const MarkSeen& seen : everyFinding(m))
      if (seen.finding != Finding::snug) told("mark off", seen);
    add("mark reopened").state.marks[static_cast<std::size_t>(m)].isCurrent = false;
    add("mark never seen").state.marks[static_cast<std::size_t>(m)] = MarkState{};
  }
  told("word with no place", AthleteSaid{std::nullopt, Side::both, Feels::tight});
  told("broken", AthleteSaid{std::nullopt, Side::both, Feels::broke});
  told("dry hair", HairSeen{false});
  add("hair not asked").state.isHairWet.reset();
  told("question no", QuestionAnswered{"sight-lines", false});
  add("question open").state.questions.clear();
  told("unwell", Unwell{});
  return out;
}

void prove(const std::string& id) {
  gear::ModelSheet sheet = demoSheet(id);
  sheet.questions.push_back({"sight-lines", "Sight lines free?", "blocked"});
  const Ground ground(sheet);
  std::size_t positions = 0, judged = 0, faults = 0;
  std::string firstFault;
  forAllSnug(ground, [&](const State& good) {
    ++positions;
    if (assess(ground.setup, good).verdict != Verdict::fits || !isFitsByFields(ground.setup, good))
      firstFault = "fits without a veto", ++faults;
    for (const Veto& v : vetoes(ground, good)) {
      ++judged;
      const Verdict verdict = assess(v.setup, v.state).verdict;
      if (verdict == Verdict::fits || isFits(v.setup, v.state) || isFitsByFields(v.setup, v.state)) firstFault = v.name, ++faults;
    }
  });
  std::printf("%s: %zu positions that fit, %zu single vetoes, none of which fits\n", id.c_str(), positions, judged);
  INFO(firstFault);
  CHECK(faults == 0);
  CHECK(positions > 0);
}

}  // namespace

TEST_CASE("Each veto alone takes fits away from every position that fits on Alder A1") { prove("alder-a1"); }
TEST_CASE("Each veto alone takes fits away from every position that fits on Brant B2") { prove("brant-b2"); }
TEST_CASE("Each veto alone takes fits away from every position that fits on Cedar C3") { prove("cedar-c3"); }
