// SPDX-License-Identifier: Apache-2.0
// Cold: what presses is warmed first and nothing is let out; air is added one pump at a time and fits for that cold. And what comes
// before everything else where the brow sits high: seating it anew.
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;
using Lines = std::vector<std::string>;

namespace {

Walk& chill(Walk& walk) { return walk.tell(ColdSeen{true, false}); }
const ColdSeen kWarmed{false, true};

}  // namespace

TEST_CASE("A cold helmet that presses is warmed first: no air is let out and no pad is made thinner") {
  for (const Mark m : {Mark::jaw, Mark::crown, Mark::sides, Mark::hold}) {
    for (const gear::ModelSheet& sheet : {airSheet(), mixedSheet(), padSheet(), bareSheet("bare")}) {
      INFO(code(m) << " on " << sheet.id);
      Walk w(sheet);
      chill(w).fit().tell(seen(m, Finding::over));
      CHECK(w.adviceFor(m) == Lines{"warm"});
      CHECK(w.verdict() == Verdict::adjust);
      w.tell(kWarmed);
      CHECK(w.current() == MarkSet{});
      CHECK(w.verdict() == Verdict::unfinished);
    }
  }
}

TEST_CASE("Once it is warm and presses still, the air goes out") {
  Walk w(airSheet(), CheckKind::look);
  chill(w).tell(AthleteSaid{Mark::jaw, Side::left, Feels::tight}).tell(seen(Mark::jaw, Finding::over, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"warm"});
  w.tell(kWarmed);
  CHECK(w.state.words.has(Mark::jaw));
  w.tell(seen(Mark::jaw, Finding::over, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"release jaw-left"});
}

TEST_CASE("Where only the air that the cold keeps in would help, warming stands in its place") {
  Walk w(mixedSheet());
  chill(w).fit().tell(seen(Mark::brow, Finding::over));
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "warm", "swap crown-pad 10mm"});
  Walk air(airSheet());
  chill(air).fit().tell(seen(Mark::nape, Finding::under));
  CHECK(air.adviceFor(Mark::nape) == Lines{"warm"});
  CHECK(air.verdict() == Verdict::adjust);
  Walk empty(airSheet());
  chill(empty).fit().tell(releaseTo(Port::crown, 7000)).allSnug().tell(seen(Mark::nape, Finding::under));
  CHECK(empty.adviceFor(Mark::nape) == Lines{"other-size-up", "other-model"});
}

TEST_CASE("A cold helmet that is loose gets air one pump at a time, and then fits for this cold") {
  Walk w(airSheet(), CheckKind::look);
  chill(w).fit().tell(seen(Mark::sides, Finding::under));
  const Advice first = w.now().advice.at(0);
  CHECK(first.doText() == "add");
  CHECK(first.amountText() == "1 pump");
  w.tell(add(Port::sides)).allSnug();
  CHECK(w.verdict() == Verdict::fits);
  CHECK(w.now().isForCold);
  Walk warm(airSheet(), CheckKind::look);
  warm.fit().tell(seen(Mark::sides, Finding::under));
  CHECK(warm.now().advice.at(0).amountText() == "1-3 pumps");
  warm.tell(add(Port::sides)).allSnug();
  CHECK_FALSE(warm.now().isForCold);
}

TEST_CASE("What was warmed since fits for any weather, whatever was added in the cold") {
  Walk w(airSheet(), CheckKind::look);
  chill(w).fit().tell(seen(Mark::sides, Finding::under)).tell(add(Port::sides)).tell(kWarmed).allSnug();
  CHECK(w.verdict() == Verdict::fits);
  CHECK_FALSE(w.now().isForCold);
}

TEST_CASE("A cold helmet on which everything is snug and nothing was changed fits as any other") {
  Walk w(airSheet(), CheckKind::look);
  chill(w).fit();
  CHECK(w.verdict() == Verdict::fits);
  CHECK_FALSE(w.now().isForCold);
}

TEST_CASE("Brow or ears high with the crown at its limit: reseat first, then the next way, then do not wear") {
  for (const Mark m : {Mark::brow, Mark::ears}) {
    Walk w(airSheet());
    w.fit().tell(releaseTo(Port::crown, 7000)).allSnug().tell(seen(m, Finding::over));
    CHECK(w.adviceFor(m) == Lines{"reseat"});
    CHECK(w.verdict() == Verdict::adjust);
    w.tell(seen(m, Finding::over));
    CHECK(w.adviceFor(m) == Lines{"other-size-up"});
    CHECK(w.verdict() == Verdict::doNotWear);
    Walk pads(mixedSheet());
    pads.fit().tell(releaseTo(Port::crown, 7000)).allSnug().tell(seen(m, Finding::over));
    CHECK(pads.adviceFor(m) == Lines{"reseat", "swap crown-pad 10mm"});
    pads.tell(seen(m, Finding::over));
    CHECK(pads.adviceFor(m) == Lines{"swap crown-pad 10mm"});
  }
}

TEST_CASE("A sheet may order the marks: it orders what is asked and advised, and the strip keeps its places") {
  gear::ModelSheet sheet = airSheet();
  sheet.markOrder = {6, 7, 8, 5, 4, 3, 2, 1, 0};
  Walk w(sheet, CheckKind::look);
  CHECK(w.next() == "crown");
  w.tell(seen(Mark::brow, Finding::under)).tell(seen(Mark::crown, Finding::under));
  CHECK(w.now().strip.at(0) == Finding::under);
  CHECK(w.now().strip.at(6) == Finding::under);
  CHECK(w.now().advice.at(0).mark == Mark::crown);
  CHECK(w.next() == "crown");
}
