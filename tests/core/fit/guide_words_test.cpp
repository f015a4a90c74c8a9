// SPDX-License-Identifier: Apache-2.0
// What the athlete says.
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;
using Lines = std::vector<std::string>;

TEST_CASE("A word about a mark opens it until the mark is seen again") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{Mark::jaw, Side::left, Feels::tight});
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.reasons() == Lines{"jaw-said"});
  CHECK(w.now().reasons.at(0).side == Side::left);
  CHECK(w.now().strip[static_cast<std::size_t>(Mark::jaw)] == Finding::unseen);
  CHECK(w.next() == "jaw");
  w.tell(seen(Mark::jaw, Finding::snug));
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("A word that proves right becomes work") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{Mark::jaw, Side::left, Feels::tight}).tell(seen(Mark::jaw, Finding::over, Side::left));
  CHECK(w.verdict() == Verdict::adjust);
  CHECK(w.adviceFor(Mark::jaw) == Lines{"release jaw-left"});
  w.tell(release(Port::jawLeft));
  CHECK(w.hasReason("jaw-said"));
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Every change asks every word again, wherever it was") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{Mark::sides, Side::both, Feels::loose}).tell(AthleteSaid{Mark::ears, Side::right, Feels::tight});
  w.allSnug();
  REQUIRE(w.verdict() == Verdict::fits);
  w.tell(reroute());
  CHECK(w.hasReason("sides-said"));
  CHECK(w.hasReason("ears-said"));
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Advice says that a change asks the word again") {
  Walk w(airSheet());
  w.fit()
      .tell(AthleteSaid{Mark::sides, Side::both, Feels::loose})
      .tell(seen(Mark::sides, Finding::snug))
      .tell(seen(Mark::chin, Finding::over));
  CHECK(w.now().advice.at(0).reopens == (reopens(relength()) | MarkSet{Mark::sides}));
}

TEST_CASE("A word with no place is asked again at every mark") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{std::nullopt, Side::both, Feels::loose});
  CHECK(w.current() == MarkSet{});
  CHECK(w.verdict() == Verdict::unfinished);
  w.allSnug();
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Something broke: do not wear until all seven points were seen again") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{std::nullopt, Side::both, Feels::broke});
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons().at(0) == "broken");
  for (const Point p : gear::kPoints) {
    CHECK(w.verdict() == Verdict::doNotWear);
    w.tell(PointSeen{p, PointState::sound, {}});
  }
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("Something broke at a place: the points and the mark there are open") {
  Walk w(airSheet());
  w.fit().tell(AthleteSaid{Mark::straps, Side::both, Feels::broke}).tell(PointsSound{});
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.reasons() == Lines{"straps-said"});
  w.tell(seen(Mark::straps, Finding::snug));
  CHECK(w.verdict() == Verdict::fits);
}

TEST_CASE("A fault stays a fault when something broke") {
  Walk w(airSheet());
  w.fit()
      .tell(PointSeen{Point::liner, PointState::fault, "leaks"})
      .tell(AthleteSaid{std::nullopt, Side::both, Feels::broke})
      .tell(PointsSound{});
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons() == Lines{"liner-fault"});
}

TEST_CASE("A view seen snug answers the words about its marks") {
  Walk w(airSheet(), CheckKind::look);
  w.tell(AthleteSaid{Mark::jaw, Side::left, Feels::tight}).tell(PointsSound{});
  for (const LookView v : kLookViews) w.tell(GroupSnug{v});
  CHECK(w.verdict() == Verdict::fits);
}
