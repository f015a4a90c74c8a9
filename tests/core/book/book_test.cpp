// SPDX-License-Identifier: Apache-2.0
#include "core/book/book.h"

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

TEST_CASE("A new Book has its team, refuses its name to a second one and opens again") {
  World world;
  {
    const auto book = world.create();
    REQUIRE(book->views().team);
    CHECK(book->views().team->name == "Harrow Creek High");
  }
  const auto again = world.tryCreate();
  REQUIRE_FALSE(again);
  CHECK(again.error().code == ErrorCode::fileExists);
  CHECK(world.open()->views().team->mascot == "Herons");
}

TEST_CASE("A whole first fit is folded at once and read again from the file") {
  World world;
  Fitting f;
  std::string dump;
  {
    const auto book = world.create();
    f = pairUp(*book, world.today());
    CHECK(book->views().athlete(f.athlete)->units == std::vector{f.unit});
    CHECK(book->unitByTag("HC-001")->id == f.unit);
    beginCheck(*book, f, world.today());
    answer(*book, f, fit::HairSeen{true}, world.today());
    REQUIRE(book->views().openCheck(f.check));
    CHECK(book->views().openCheck(f.check)->state.isHairWet == true);
    CHECK(book->views().athlete(f.athlete)->openCheck == f.check);
    for (fit::Mark mark : fit::kMarks) answer(*book, f, seen(mark), world.today());
    answer(*book, f, fit::PointsSound{}, world.today());
    put(*book, must(book::endCheck(book->views(), f.check, world.clock.now())));
    CHECK(book->views().openChecks.empty());
    dump = must(book->dumpViews());
  }
  const auto book = world.open();
  CHECK(must(book->dumpViews()) == dump);
  const auto* athlete = book->views().athlete(f.athlete);
  REQUIRE(athlete->checks.size() == 1);
  CHECK(athlete->checks.front().verdict == fit::Verdict::fits);
  CHECK(athlete->openCheck.empty());
  CHECK(must(book->history(f.check)).size() == 13);
}

TEST_CASE("Undo takes the last answer out of an open check and can itself be undone") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  beginCheck(*book, f, world.today());
  answer(*book, f, fit::HairSeen{true}, world.today());
  answer(*book, f, seen(fit::Mark::brow, fit::Finding::over), world.today());
  const auto before = *book->views().openCheck(f.check);
  const std::string fact = before.answers.back().fact;
  const auto corrected = must(book->correct({fact}));
  CHECK(book->views().openCheck(f.check)->answers.size() == 1);
  CHECK(book->views().openCheck(f.check)->state.marks[0].finding == fit::Finding::unseen);
  must(book->correct(corrected.ids));
  CHECK(book->views().openCheck(f.check)->answers.size() == 2);
  CHECK(book->views().openCheck(f.check)->state == before.state);
}
