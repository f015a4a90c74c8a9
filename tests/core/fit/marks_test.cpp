// SPDX-License-Identifier: Apache-2.0
#include "core/fit/marks.h"

#include <set>
#include SNUGLINE_CATCH_HEADER

using namespace snugline::fit;

TEST_CASE("Every mark, finding, side, way of holding and view reads back from its code") {
  for (const Mark m : kMarks) CHECK(markFromCode(code(m)) == m);
  for (const Finding f : {Finding::unseen, Finding::snug, Finding::over, Finding::under, Finding::fault})
    CHECK(findingFromCode(code(f)) == f);
  for (const Side s : {Side::both, Side::left, Side::right}) CHECK(sideFromCode(code(s)) == s);
  for (const HoldHow h : {HoldHow::unsaid, HoldHow::twist, HoldHow::rock, HoldHow::drop}) CHECK(holdHowFromCode(code(h)) == h);
  for (const LookView v : kLookViews) CHECK(lookViewFromCode(code(v)) == v);
}

TEST_CASE("The words of the marks read as over and under") {
  for (const char* word : {"high", "presses", "tight", "hurts"}) CHECK(findingFromCode(word) == Finding::over);
  for (const char* word : {"low", "gap", "slack", "loose", "slides", "uncovered"}) CHECK(findingFromCode(word) == Finding::under);
}

TEST_CASE("A word that no mark has is not read") {
  CHECK_FALSE(markFromCode("Brow"));
  CHECK_FALSE(markFromCode(""));
  CHECK_FALSE(findingFromCode("fine"));
  CHECK_FALSE(sideFromCode("middle"));
  CHECK_FALSE(holdHowFromCode("shake"));
  CHECK_FALSE(lookViewFromCode("back"));
}

TEST_CASE("The three views of a look hold each of the nine marks once") {
  std::set<Mark> all;
  for (const LookView v : kLookViews)
    for (const Mark m : marksOf(v)) CHECK(all.insert(m).second);
  CHECK(all.size() == kMarkCount);
}

TEST_CASE("Only jaw, sides and ears know left and right") {
  for (const Mark m : kMarks) CHECK(knowsSides(m) == (m == Mark::jaw || m == Mark::sides || m == Mark::ears));
}

TEST_CASE("A set of marks holds what was added and not what was removed") {
  MarkSet set{Mark::brow, Mark::hold};
  CHECK(set.has(Mark::brow));
  CHECK_FALSE(set.has(Mark::jaw));
  set.remove(Mark::brow);
  set.add(Mark::jaw);
  CHECK(set == (MarkSet{Mark::jaw} | MarkSet{Mark::hold}));
}
