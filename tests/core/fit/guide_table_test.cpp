// SPDX-License-Identifier: Apache-2.0
// Each cell of the advice table on a sheet with air, on one with air and pads, and on one with pads only.
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;
using Lines = std::vector<std::string>;

namespace {
Lines advice(gear::ModelSheet sheet, const MarkSeen& off) {
  Walk w(std::move(sheet));
  w.fit().tell(off);
  return w.adviceFor(off.mark);
}
}  // namespace

TEST_CASE("Brow or ears over: reseat, crown air out, thinner crown pad") {
  for (const Mark m : {Mark::brow, Mark::ears}) {
    CHECK(advice(airSheet(), seen(m, Finding::over)) == Lines{"reseat", "release crown"});
    CHECK(advice(mixedSheet(), seen(m, Finding::over)) == Lines{"reseat", "release crown", "swap crown-pad 10mm"});
    CHECK(advice(padSheet(), seen(m, Finding::over)) == Lines{"reseat", "swap crown-pad 10mm"});
    CHECK(advice(bareSheet("bare"), seen(m, Finding::over)) == Lines{"reseat"});
  }
}

TEST_CASE("Brow over: jaw or sides are released first while they press") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::jaw, Finding::over, Side::left)).tell(seen(Mark::sides, Finding::over)).tell(seen(Mark::brow, Finding::over));
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "release jaw-left", "release sides", "release crown"});
  w.tell(seen(Mark::jaw, Finding::under)).tell(seen(Mark::sides, Finding::snug));
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "release crown"});
  Walk pads(padSheet());
  pads.fit().tell(seen(Mark::jaw, Finding::over)).tell(seen(Mark::brow, Finding::over));
  CHECK(pads.adviceFor(Mark::brow) == Lines{"reseat", "swap jaw-left 22mm", "swap jaw-right 22mm", "swap crown-pad 10mm"});
}

TEST_CASE("A jaw that pressed before it was reopened no longer counts as pressing") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::jaw, Finding::over)).tell(release(Port::jawLeft)).tell(seen(Mark::brow, Finding::over));
  CHECK(w.adviceFor(Mark::brow) == Lines{"reseat", "release crown"});
}

TEST_CASE("Brow or ears under: crown air in, thicker crown pad") {
  for (const Mark m : {Mark::brow, Mark::ears}) {
    CHECK(advice(airSheet(), seen(m, Finding::under)) == Lines{"add crown"});
    CHECK(advice(mixedSheet(), seen(m, Finding::under)) == Lines{"add crown", "swap crown-pad 16mm"});
    CHECK(advice(padSheet(), seen(m, Finding::under)) == Lines{"swap crown-pad 16mm"});
    CHECK(advice(bareSheet("bare"), seen(m, Finding::under)) == Lines{"other-size-down"});
  }
}

TEST_CASE("Ears ahead, behind or turned: even straps, jaw pads a handed pair, back air, then another size") {
  CHECK(advice(airSheet(), seen(Mark::ears, Finding::fault)) == Lines{"relength straps even", "add sides", "release sides"});
  CHECK(advice(padSheet(), seen(Mark::ears, Finding::fault)) == Lines{"relength straps even"});
  Walk w(padSheet());
  w.fit().tell(swapTo(Part::jawRight, 28000)).allSnug().tell(seen(Mark::ears, Finding::fault));
  CHECK(w.adviceFor(Mark::ears) == Lines{"relength straps even", "swap jaw-left 28mm"});
  w.tell(swapTo(Part::jawLeft, 28000)).tell(seen(Mark::ears, Finding::fault));
  CHECK(w.adviceFor(Mark::ears) == Lines{"relength straps even"});
  w.tell(relength()).tell(seen(Mark::ears, Finding::fault));
  w.tell(relength()).tell(seen(Mark::ears, Finding::fault));
  CHECK(w.adviceFor(Mark::ears) == Lines{"other-size-down"});
  w.tell(seen(Mark::crown, Finding::over));
  CHECK(w.adviceFor(Mark::ears) == Lines{"other-size-up"});
}

TEST_CASE("Nape digs in: crown air in, else another model") {
  CHECK(advice(airSheet(), seen(Mark::nape, Finding::over)) == Lines{"add crown"});
  CHECK(advice(mixedSheet(), seen(Mark::nape, Finding::over)) == Lines{"add crown"});
  CHECK(advice(padSheet(), seen(Mark::nape, Finding::over)) == Lines{"swap crown-pad 16mm"});
  CHECK(advice(bareSheet("bare"), seen(Mark::nape, Finding::over)) == Lines{"other-model"});
}

TEST_CASE("Nape bare: crown air out, then the next size up or a deeper model") {
  CHECK(advice(airSheet(), seen(Mark::nape, Finding::under)) == Lines{"release crown"});
  CHECK(advice(padSheet(), seen(Mark::nape, Finding::under)) == Lines{"swap crown-pad 10mm"});
  CHECK(advice(bareSheet("bare"), seen(Mark::nape, Finding::under)) == Lines{"other-size-up", "other-model"});
}

TEST_CASE("Chin: straps longer or shorter, even when off centre, then a new cup") {
  CHECK(advice(airSheet(), seen(Mark::chin, Finding::over)) == Lines{"relength straps longer"});
  CHECK(advice(padSheet(), seen(Mark::chin, Finding::under)) == Lines{"relength straps shorter"});
  CHECK(advice(airSheet(), seen(Mark::chin, Finding::fault)) == Lines{"relength straps even", "swap chin-cup"});
}

TEST_CASE("Straps: longer when tight, rerouted and then shorter when slack or outside the bars") {
  CHECK(advice(airSheet(), seen(Mark::straps, Finding::over)) == Lines{"relength straps longer"});
  CHECK(advice(airSheet(), seen(Mark::straps, Finding::under)) == Lines{"reroute straps", "relength straps shorter"});
}

TEST_CASE("Jaw: air or pad, each side on its own") {
  CHECK(advice(airSheet(), seen(Mark::jaw, Finding::over)) == Lines{"release jaw-left", "release jaw-right"});
  CHECK(advice(airSheet(), seen(Mark::jaw, Finding::over, Side::left)) == Lines{"release jaw-left"});
  CHECK(advice(airSheet(), seen(Mark::jaw, Finding::under, Side::right)) == Lines{"add jaw-right"});
  CHECK(advice(padSheet(), seen(Mark::jaw, Finding::over, Side::right)) == Lines{"swap jaw-right 22mm"});
  CHECK(advice(mixedSheet(), seen(Mark::jaw, Finding::under)) == Lines{"swap jaw-left 28mm", "swap jaw-right 28mm"});
  CHECK(advice(bareSheet("bare"), seen(Mark::jaw, Finding::over)) == Lines{"other-size-up"});
  CHECK(advice(bareSheet("bare"), seen(Mark::jaw, Finding::under)) == Lines{"other-size-down"});
}

TEST_CASE("Crown: air out when it presses, air in and then a thicker pad at a gap") {
  CHECK(advice(airSheet(), seen(Mark::crown, Finding::over)) == Lines{"release crown"});
  CHECK(advice(mixedSheet(), seen(Mark::crown, Finding::over)) == Lines{"release crown"});
  CHECK(advice(padSheet(), seen(Mark::crown, Finding::over)) == Lines{"swap crown-pad 10mm"});
  CHECK(advice(airSheet(), seen(Mark::crown, Finding::under)) == Lines{"add crown"});
  CHECK(advice(mixedSheet(), seen(Mark::crown, Finding::under)) == Lines{"add crown", "swap crown-pad 16mm"});
  CHECK(advice(bareSheet("bare"), seen(Mark::crown, Finding::over)) == Lines{"other-size-up"});
}

TEST_CASE("Sides: air out or in, without air another size") {
  CHECK(advice(airSheet(), seen(Mark::sides, Finding::over)) == Lines{"release sides"});
  CHECK(advice(airSheet(), seen(Mark::sides, Finding::under, Side::left)) == Lines{"add sides"});
  CHECK(advice(padSheet(), seen(Mark::sides, Finding::over)) == Lines{"other-size-up"});
  CHECK(advice(padSheet(), seen(Mark::sides, Finding::under)) == Lines{"other-size-down"});
}

TEST_CASE("Hold hurts in the twist: side and back air out, without air the next size up") {
  CHECK(advice(airSheet(), seen(Mark::hold, Finding::over)) == Lines{"release sides"});
  CHECK(advice(padSheet(), seen(Mark::hold, Finding::over)) == Lines{"other-size-up"});
}

TEST_CASE("Hold slides: straps first, then as it slides") {
  const Lines straps{"check straps", "reroute straps", "relength straps even"};
  const auto with = [&](const Lines& more) {
    Lines all = straps;
    all.insert(all.end(), more.begin(), more.end());
    return all;
  };
  CHECK(advice(airSheet(), slides(HoldHow::twist)) == with({"add jaw-left", "add jaw-right", "add sides"}));
  CHECK(advice(airSheet(), slides(HoldHow::rock)) == with({"add sides"}));
  CHECK(advice(airSheet(), slides(HoldHow::drop)) == with({"add crown"}));
  CHECK(advice(airSheet(), slides(HoldHow::unsaid)) == with({"add jaw-left", "add jaw-right", "add sides", "add crown"}));
  CHECK(advice(mixedSheet(), slides(HoldHow::twist)) == with({"swap jaw-left 28mm", "swap jaw-right 28mm", "add sides"}));
  CHECK(advice(padSheet(), slides(HoldHow::rock)) == straps);
  CHECK(advice(padSheet(), slides(HoldHow::drop)) == with({"swap crown-pad 16mm"}));
}

TEST_CASE("A fault at brow, nape, crown or sides holds the unit, and at straps and jaw the part is replaced") {
  for (const Mark m : {Mark::brow, Mark::nape, Mark::crown, Mark::sides})
    CHECK(advice(airSheet(), seen(m, Finding::fault)) == Lines{"hold"});
  CHECK(advice(airSheet(), seen(Mark::straps, Finding::fault)) == Lines{"replace straps"});
  CHECK(advice(airSheet(), seen(Mark::jaw, Finding::fault)) == Lines{"replace jaw-left", "replace jaw-right"});
  CHECK(advice(airSheet(), seen(Mark::jaw, Finding::fault, Side::right)) == Lines{"replace jaw-right"});
  CHECK(advice(airSheet(), seen(Mark::hold, Finding::fault)) == Lines{"check"});
}

TEST_CASE("Each advice names what it reopens, its pumps and its place in the cell") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::brow, Finding::over));
  const auto all = w.now().advice;
  REQUIRE(all.size() == 2);
  CHECK(all[0].way == 0);
  CHECK(all[0].reopens == MarkSet{});
  CHECK(all[1].kind == AdviceKind::change);
  CHECK(all[1].way == 3);
  CHECK(all[1].pumpsLow == 1);
  CHECK(all[1].pumpsHigh == 3);
  CHECK(all[1].amountText() == "1-3 pumps");
  CHECK(all[1].reopens == reopens(release(Port::crown)));
}

TEST_CASE("Advice comes for the first mark that is off, then for the others in order") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::jaw, Finding::under, Side::left)).tell(seen(Mark::chin, Finding::over));
  std::vector<Mark> order;
  for (const Advice& a : w.now().advice) order.push_back(a.mark);
  CHECK(order == std::vector<Mark>{Mark::chin, Mark::jaw});
}

TEST_CASE("Snug and unseen marks get no advice") {
  Walk w(airSheet());
  CHECK(w.now().advice.empty());
  w.fit();
  CHECK(w.now().advice.empty());
}
