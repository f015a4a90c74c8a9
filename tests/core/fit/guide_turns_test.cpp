// SPDX-License-Identifier: Apache-2.0
// Turn limits, end stops, limits of air, sides, and what the guide refuses.
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;
using Lines = std::vector<std::string>;

TEST_CASE("Three turns on one mark use a way up, then the next way in the cell is left") {
  Walk w(mixedSheet());
  w.fit().tell(seen(Mark::brow, Finding::over));
  for (int i = 0; i < 3; ++i) {
    CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "release crown", "swap crown-pad 10mm"});
    w.tell(release(Port::crown)).tell(seen(Mark::brow, Finding::over));
  }
  CHECK(w.mark(Mark::brow).turns == 3);
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "swap crown-pad 10mm"});
  CHECK(w.verdict() == Verdict::adjust);
  w.tell(swapTo(Part::crownPad, 10000)).tell(seen(Mark::brow, Finding::over)).tell(seen(Mark::brow, Finding::over));
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.adviceFor(Mark::brow) == Lines{"other-size-up"});
  CHECK(w.hasReason("brow-not-reached"));
}

TEST_CASE("When only reseating is left it is tried once, and then there is no way left") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::brow, Finding::over));
  for (int i = 0; i < 3; ++i) w.tell(release(Port::crown)).tell(seen(Mark::brow, Finding::over));
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat"});
  w.tell(seen(Mark::brow, Finding::over));
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.adviceFor(Mark::brow) == Lines{"other-size-up"});
  CHECK(w.now().reasons.at(0).direction == 1);
}

TEST_CASE("Turns are never reset, also not when the mark was snug in between") {
  Walk w(airSheet());
  w.fit();
  for (int i = 0; i < 3; ++i) {
    w.tell(seen(Mark::brow, Finding::under));
    CHECK(w.verdict() == Verdict::adjust);
    w.tell(add(Port::crown)).allSnug();
    CHECK(w.verdict() == Verdict::fits);
  }
  w.tell(seen(Mark::brow, Finding::under));
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.adviceFor(Mark::brow) == Lines{"other-size-down"});
}

TEST_CASE("The other way of a mark is left after three turns the one way") {
  Walk w(airSheet());
  w.fit();
  for (int i = 0; i < 3; ++i) w.tell(seen(Mark::crown, Finding::under)).tell(add(Port::crown));
  w.tell(seen(Mark::crown, Finding::over));
  CHECK(w.adviceFor(Mark::crown) == Lines{"release crown"});
  w.tell(release(Port::crown)).tell(seen(Mark::crown, Finding::over));
  CHECK(w.adviceFor(Mark::crown) == Lines{"other-size-up"});
}

TEST_CASE("Eight turns in all leave no way for anything that is off, yet snug stays snug") {
  Walk w(airSheet());
  w.fit();
  for (int i = 0; i < 8; ++i) w.tell(i % 2 == 0 ? add(Port::sides) : release(Port::sides));
  CHECK(w.state.turns == 8);
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
  for (const Mark m : kMarks) {
    Walk off(airSheet());
    off.state = w.state;
    off.tell(seen(m, Finding::under));
    CHECK(off.verdict() == Verdict::doNotWear);
    CHECK(off.now().advice.at(0).kind == AdviceKind::otherSize);
  }
}

TEST_CASE("Seven turns in all leave one more") {
  Walk w(airSheet());
  w.fit();
  for (int i = 0; i < 7; ++i) w.tell(add(Port::sides));
  w.allSnug().tell(seen(Mark::chin, Finding::over));
  CHECK(w.verdict() == Verdict::adjust);
  w.tell(relength()).tell(seen(Mark::chin, Finding::over));
  CHECK(w.verdict() == Verdict::doNotWear);
}

TEST_CASE("A turn counts for the first mark that is off and has the change among its ways, else for the first that is off, else for none") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::chin, Finding::over)).tell(seen(Mark::jaw, Finding::over)).tell(seen(Mark::sides, Finding::over));
  w.tell(release(Port::sides));
  CHECK(w.mark(Mark::sides).turns == 1);
  CHECK(w.mark(Mark::chin).turns == 0);
  w.tell(seen(Mark::chin, Finding::over)).tell(add(Port::crown));
  CHECK(w.mark(Mark::chin).turns == 1);
  w.allSnug().tell(add(Port::crown));
  int sum = 0;
  for (const Mark m : kMarks) sum += w.mark(m).turns;
  CHECK(sum == 2);
  CHECK(w.state.turns == 3);
}

TEST_CASE("Air known to stand at the sheet's limit is no way, beyond it neither") {
  for (const std::int64_t pa : {28000, 30000}) {
    Walk w(airSheet());
    w.fit().tell(addTo(Port::crown, pa)).allSnug().tell(seen(Mark::crown, Finding::under));
    CHECK(w.adviceFor(Mark::crown) == Lines{"other-size-down"});
    w.tell(seen(Mark::crown, Finding::over));
    CHECK(w.adviceFor(Mark::crown) == Lines{"release crown"});
  }
  for (const std::int64_t pa : {7000, 0, -500}) {
    Walk w(airSheet());
    w.fit().tell(releaseTo(Port::crown, pa)).allSnug().tell(seen(Mark::crown, Finding::over));
    CHECK(w.adviceFor(Mark::crown) == Lines{"other-size-up"});
  }
}

TEST_CASE("Pumps alone leave the gauge unknown, which is no limit, and fits is reached with no gauge") {
  Walk w(airSheet());
  w.fit().tell(addTo(Port::crown, 28000)).tell(release(Port::crown, 2)).allSnug();
  CHECK_FALSE(w.state.fitted.air[0]);
  CHECK_FALSE(w.state.isGauged[0]);
  CHECK(w.state.pumps[0] == -1);
  CHECK(w.verdict() == Verdict::fits);
  w.tell(seen(Mark::crown, Finding::under));
  CHECK(w.adviceFor(Mark::crown) == Lines{"add crown"});
  w.tell(AirRead{Port::crown, Pressure{28000}, false});
  CHECK(w.adviceFor(Mark::crown) == Lines{"other-size-down"});
}

TEST_CASE("Air stands at the sheet's start until it is fitted otherwise") {
  gear::ModelSheet sheet = airSheet();
  sheet.air[0].start = sheet.air[0].high;
  Walk w(sheet);
  w.fit().tell(seen(Mark::crown, Finding::under));
  CHECK(w.verdict() == Verdict::doNotWear);
  Walk fitted(sheet);
  Fitted f;
  f.air[0] = Pressure{20000};
  fitted.tell(f).fit().tell(seen(Mark::crown, Finding::under));
  CHECK(fitted.verdict() == Verdict::adjust);
  CHECK(fitted.state.isGauged[0]);
  CHECK(fitted.state.isFittedSet);
}

TEST_CASE("A pad at its end stop is no way") {
  Walk w(padSheet());
  w.fit().tell(swapTo(Part::jawLeft, 28000)).allSnug().tell(seen(Mark::jaw, Finding::under, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"other-size-down"});
  w.tell(seen(Mark::jaw, Finding::under));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"swap jaw-right 28mm"});
}

TEST_CASE("A pad as fitted, also between the steps of the sheet, decides its next step") {
  Walk w(padSheet());
  Fitted f;
  f.pad[0] = Length{23500};
  f.pad[1] = Length{22000};
  w.tell(f).fit().tell(seen(Mark::jaw, Finding::over));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"swap jaw-left 22mm"});
  w.tell(seen(Mark::jaw, Finding::under));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"swap jaw-left 25mm", "swap jaw-right 25mm"});
}

TEST_CASE("A pad swapped with no thickness said moves one step the way that its mark asked for") {
  Walk w(padSheet());
  w.fit().tell(seen(Mark::jaw, Finding::under, Side::right)).tell(swap(Part::jawRight));
  CHECK(w.state.fitted.pad[1] == Length{28000});
  CHECK(w.state.fitted.pad[0] == Length{25000});
  w.allSnug().tell(swap(Part::jawRight));
  CHECK(w.state.fitted.pad[1] == Length{28000});
  w.allSnug().tell(seen(Mark::ears, Finding::fault)).tell(swap(Part::jawLeft));
  CHECK(w.state.fitted.pad[0] == Length{28000});
}

TEST_CASE("A pad of one thickness cannot be swapped for another") {
  gear::ModelSheet sheet = padSheet();
  sheet.jawPads = gear::PadSet{{Length{25000}}, 0};
  Walk w(sheet);
  w.fit().tell(seen(Mark::jaw, Finding::over));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"other-size-up"});
}

TEST_CASE("A finding said of one side leaves the other side's standing") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::jaw, Finding::over, Side::left)).tell(seen(Mark::jaw, Finding::snug, Side::right));
  CHECK(w.verdict() == Verdict::adjust);
  w.tell(seen(Mark::jaw, Finding::snug, Side::left));
  CHECK(w.verdict() == Verdict::fits);
  w.tell(seen(Mark::jaw, Finding::over, Side::left)).tell(seen(Mark::jaw, Finding::over, Side::right));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"release jaw-left", "release jaw-right"});
  w.tell(seen(Mark::jaw, Finding::snug, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"release jaw-right"});
  w.tell(seen(Mark::jaw, Finding::under, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"add jaw-left"});
  w.tell(seen(Mark::jaw, Finding::snug, Side::left));
  CHECK(w.adviceFor(Mark::jaw) == Lines{"release jaw-right"});
  w.tell(seen(Mark::jaw, Finding::fault, Side::right)).tell(seen(Mark::jaw, Finding::over, Side::left));
  CHECK(w.verdict() == Verdict::doNotWear);
  w.tell(seen(Mark::jaw, Finding::snug));
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("A change lets the standing finding of the other side go, for the whole mark is open again") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::jaw, Finding::over, Side::left)).tell(seen(Mark::jaw, Finding::under, Side::right)).tell(add(Port::jawRight));
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("A port or part that the sheet lacks is refused by name and changes nothing") {
  Walk w(padSheet());
  w.fit();
  const auto refused = take(w.setup, w.state, add(Port::crown));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == ErrorCode::unknownPort);
  CHECK(refused.error().place == "crown");
  CHECK(w.refusal(AirRead{Port::sides, Pressure{9000}, true}) == ErrorCode::unknownPort);
  Walk air(airSheet());
  CHECK(air.refusal(swapTo(Part::jawLeft, 25000)) == ErrorCode::unknownPort);
  CHECK(air.refusal(swapTo(Part::crownPad, 25000)) == ErrorCode::unknownPort);
  Fitted pad;
  pad.pad[0] = Length{25000};
  CHECK(air.refusal(pad) == ErrorCode::unknownPort);
  Fitted crown;
  crown.air[0] = Pressure{14000};
  CHECK(w.refusal(crown) == ErrorCode::unknownPort);
}

TEST_CASE("A deed that does not go with its place is refused") {
  Walk w(mixedSheet());
  Adjusted c = reroute();
  c.part.reset();
  c.port = Port::crown;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = relength();
  c.part = Part::chinCup;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = relength();
  c.pumps = 1;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = add(Port::crown);
  c.port.reset();
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c.part = Part::jawLeft;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c.port = Port::crown;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = add(Port::crown);
  c.to = Length{25000};
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = swap(Part::jawLeft);
  c.part.reset();
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = swapTo(Part::chinCup, 25000);
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
  c = swap(Part::jawLeft);
  c.pumps = 1;
  CHECK(w.refusal(c) == ErrorCode::inconsistent);
}

TEST_CASE("Amounts out of range are refused") {
  Walk w(mixedSheet());
  CHECK(w.refusal(add(Port::crown, 21)) == ErrorCode::outOfRange);
  CHECK(w.refusal(add(Port::crown, -1)) == ErrorCode::outOfRange);
  CHECK_FALSE(w.refusal(add(Port::crown, 20)));
  CHECK_FALSE(w.refusal(add(Port::crown, 0)));
  CHECK(w.refusal(addTo(Port::crown, 300001)) == ErrorCode::outOfRange);
  CHECK(w.refusal(releaseTo(Port::crown, -100001)) == ErrorCode::outOfRange);
  CHECK(w.refusal(AirRead{Port::crown, Pressure{300001}, true}) == ErrorCode::outOfRange);
  CHECK(w.refusal(swapTo(Part::jawLeft, 21999)) == ErrorCode::outOfRange);
  CHECK(w.refusal(swapTo(Part::jawLeft, 28001)) == ErrorCode::outOfRange);
  CHECK(w.refusal(browAt(150001)) == ErrorCode::outOfRange);
  CHECK(w.refusal(browAt(-1)) == ErrorCode::outOfRange);
  Fitted f;
  f.air[0] = Pressure{300001};
  CHECK(w.refusal(f) == ErrorCode::outOfRange);
  f = Fitted{};
  f.pad[0] = Length{30000};
  CHECK(w.refusal(f) == ErrorCode::outOfRange);
}

TEST_CASE("A finding that cannot be is refused, and so is fitted air after the first change") {
  Walk w(airSheet());
  CHECK(w.refusal(seen(Mark::brow, Finding::unseen)) == ErrorCode::unknownWord);
  MarkSeen odd = browAt(25000);
  odd.mark = Mark::jaw;
  CHECK(w.refusal(odd) == ErrorCode::inconsistent);
  odd = slides(HoldHow::twist);
  odd.mark = Mark::crown;
  CHECK(w.refusal(odd) == ErrorCode::inconsistent);
  CHECK_FALSE(w.refusal(Fitted{}));
  w.tell(reroute());
  CHECK(w.refusal(Fitted{}) == ErrorCode::notAllowed);
}

TEST_CASE("A side said of a mark that knows no sides is let go") {
  Walk w(airSheet());
  w.tell(seen(Mark::brow, Finding::over, Side::left));
  CHECK(w.mark(Mark::brow).side == Side::both);
}
