// SPDX-License-Identifier: Apache-2.0
// One step of the guide: an answer folded into the state and the state assessed, as after each touch.
#include <benchmark/benchmark.h>

#include "core/fit/guide.h"

using namespace snugline;
using namespace snugline::fit;

namespace {

gear::ModelSheet sheetWithAirAndPads() {
  gear::ModelSheet sheet;
  sheet.id = "bench";
  sheet.air = {{gear::Port::crown, Pressure{20000}, Pressure{7000}, Pressure{41000}},
               {gear::Port::sides, Pressure{17000}, Pressure{7000}, Pressure{34000}}};
  sheet.jawPads = gear::PadSet{{Length{22000}, Length{25000}, Length{28000}}, 1};
  sheet.crownPads = gear::PadSet{{Length{16000}, Length{19000}, Length{22000}}, 1};
  sheet.browLow = Length{19000};
  sheet.browHigh = Length{32000};
  return sheet;
}

MarkSeen seen(Mark mark, Finding finding) { return {mark, finding, Side::both, HoldHow::unsaid, std::nullopt}; }

// A first fit with two adjustments: what is taken and assessed again and again.
std::vector<Answer> wholeFit() {
  std::vector<Answer> out{HairSeen{true}, seen(Mark::brow, Finding::over),
                          Adjusted{Deed::release, gear::Port::crown, std::nullopt, 1, std::nullopt, std::nullopt}};
  for (const Mark m : {Mark::brow, Mark::ears, Mark::nape, Mark::chin, Mark::straps}) out.push_back(seen(m, Finding::snug));
  out.push_back(seen(Mark::jaw, Finding::under));
  out.push_back(Adjusted{Deed::swap, std::nullopt, gear::Part::jawLeft, 0, std::nullopt, Length{28000}});
  for (const Mark m : kMarks) out.push_back(seen(m, Finding::snug));
  out.push_back(PointsSound{});
  return out;
}

void guideStep(benchmark::State& bench) {
  const gear::ModelSheet sheet = sheetWithAirAndPads();
  Setup setup;
  setup.sheet = &sheet;
  setup.today = Day{20000};
  setup.certifiedUntil = Day{20300};
  const std::vector<Answer> answers = wholeFit();
  std::size_t i = 0;
  State state = begin(setup);
  for (auto step : bench) {
    state = *take(setup, state, answers[i]);
    benchmark::DoNotOptimize(assess(setup, state));
    if (++i == answers.size()) {
      i = 0;
      state = begin(setup);
    }
  }
}
BENCHMARK(guideStep)->Name("guide step: take and assess");

void guideWholeFit(benchmark::State& bench) {
  const gear::ModelSheet sheet = sheetWithAirAndPads();
  Setup setup;
  setup.sheet = &sheet;
  setup.today = Day{20000};
  setup.certifiedUntil = Day{20300};
  const std::vector<Answer> answers = wholeFit();
  for (auto run : bench) {
    State state = begin(setup);
    for (const Answer& answer : answers) state = *take(setup, state, answer);
    const Assessment end = assess(setup, state);
    if (end.verdict != Verdict::fits) bench.SkipWithError("the fit did not come to fits");
  }
}
BENCHMARK(guideWholeFit)->Name("guide: fold a whole first fit, then assess");

}  // namespace
