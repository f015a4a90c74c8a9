// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;

namespace {
constexpr MarkSet kCrown{Mark::brow, Mark::ears, Mark::nape, Mark::chin, Mark::straps, Mark::jaw, Mark::crown, Mark::hold};
constexpr MarkSet kSides{Mark::brow, Mark::ears, Mark::nape, Mark::jaw, Mark::sides, Mark::hold};
constexpr MarkSet kJaw{Mark::brow, Mark::ears, Mark::chin, Mark::straps, Mark::jaw, Mark::hold};
constexpr MarkSet kStraps{Mark::brow, Mark::nape, Mark::chin, Mark::straps, Mark::crown, Mark::hold};

MarkSet without(MarkSet all, MarkSet gone) {
  for (const Mark m : kMarks)
    if (gone.has(m)) all.remove(m);
  return all;
}
constexpr MarkSet kAll{Mark::brow, Mark::ears, Mark::nape, Mark::chin, Mark::straps, Mark::jaw, Mark::crown, Mark::sides, Mark::hold};

void checkReopens(gear::ModelSheet sheet, const Adjusted& change, MarkSet set) {
  Walk w(std::move(sheet));
  w.fit();
  REQUIRE(w.verdict() == Verdict::fits);
  CHECK(reopens(change) == set);
  w.tell(change);
  CHECK(w.current() == without(kAll, set));
  CHECK(w.verdict() == Verdict::unfinished);
  for (const Mark m : kMarks) CHECK((w.now().strip[static_cast<std::size_t>(m)] == Finding::unseen) == set.has(m));
}
}  // namespace

TEST_CASE("Crown air reopens everything but the sides") {
  checkReopens(airSheet(), add(Port::crown), kCrown);
  checkReopens(airSheet(), release(Port::crown), kCrown);
}
TEST_CASE("A crown pad reopens what crown air reopens") { checkReopens(padSheet(), swapTo(Part::crownPad, 16000), kCrown); }
TEST_CASE("Side air reopens brow, ears, nape, jaw, sides and hold") {
  checkReopens(airSheet(), add(Port::sides), kSides);
  checkReopens(airSheet(), release(Port::sides), kSides);
}
TEST_CASE("Jaw air reopens brow, ears, chin, straps, jaw and hold") {
  checkReopens(airSheet(), add(Port::jawLeft), kJaw);
  checkReopens(airSheet(), release(Port::jawRight), kJaw);
}
TEST_CASE("A jaw pad reopens what jaw air reopens") {
  checkReopens(padSheet(), swapTo(Part::jawLeft, 28000), kJaw);
  checkReopens(mixedSheet(), swapTo(Part::jawRight, 22000), kJaw);
}
TEST_CASE("Straps reopen brow, nape, chin, straps, crown and hold") {
  checkReopens(airSheet(), reroute(), kStraps);
  checkReopens(padSheet(), relength(), kStraps);
  Adjusted unplaced = reroute();
  unplaced.part.reset();
  checkReopens(airSheet(), unplaced, kStraps);
}
TEST_CASE("A new chin cup or new straps reopen what the straps reopen") {
  checkReopens(airSheet(), swap(Part::chinCup), kStraps);
  checkReopens(airSheet(), swap(Part::straps), kStraps);
}
TEST_CASE("A pad replaced by one of the same thickness reopens its marks too") {
  checkReopens(padSheet(), swapTo(Part::jawLeft, 25000), kJaw);
}

TEST_CASE("A gauging reopens hold and nothing else") {
  Walk w(airSheet());
  w.fit().tell(AirRead{Port::crown, Pressure{15000}, true});
  CHECK(w.current() == without(kAll, MarkSet{Mark::hold}));
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.next() == "hold");
  w.tell(seen(Mark::hold, Finding::snug));
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Hair that was dry and is wet now reopens every mark of a first fit") {
  Walk w(airSheet());
  w.tell(HairSeen{false}).tell(PointsSound{}).allSnug();
  CHECK(w.verdict() == Verdict::adjust);
  w.tell(HairSeen{true});
  CHECK(w.current() == MarkSet{});
  CHECK(w.verdict() == Verdict::unfinished);
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Hair said wet twice reopens nothing") {
  Walk w(airSheet());
  w.fit().tell(HairSeen{true});
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("A change reopens the mark of the athlete's word as well, and asks the word again") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{Mark::sides, Side::left, Feels::tight});
  w.tell(seen(Mark::sides, Finding::snug));
  REQUIRE(w.verdict() == Verdict::fits);
  w.tell(reroute());
  CHECK(w.current() == without(kAll, kStraps | MarkSet{Mark::sides}));
  CHECK(w.hasReason("sides-said"));
}

TEST_CASE("What is reopened is not forgotten but has to be seen again") {
  Walk w(airSheet());
  w.fit().tell(seen(Mark::brow, Finding::over)).tell(release(Port::crown));
  CHECK(w.mark(Mark::brow).finding == Finding::over);
  CHECK_FALSE(w.mark(Mark::brow).isCurrent);
  CHECK(w.verdict() == Verdict::unfinished);
}
