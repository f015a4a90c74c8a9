// SPDX-License-Identifier: Apache-2.0
// Helmets collected in, seasons closed, photos and sheets that replace one another, in a Book: what stands, and stands after a rebuild.
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/acts.h"
#include "core/book/fold.h"

using namespace snugline;
using namespace snugline::test;

namespace {

void checkStands(book::Book& book) {
  const auto dump = must(book.dumpViews());
  CHECK(must(book.rebuild()).wasEqual);
  CHECK(must(book.dumpViews()) == dump);
}
std::string changed(const std::string& sheet, const std::string& name) {
  std::string bytes = sheet;
  const auto at = bytes.find("\"name\":");
  const auto from = bytes.find('"', at + 7) + 1;
  bytes.replace(from, bytes.find('"', from) - from, name);
  return bytes;
}

}  // namespace

TEST_CASE("A helmet collected in leaves its athlete, and one that was lost is found by it") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  put(*book, {{f.unit, book::UnitCollected{"2026", f.athlete, "Shelf 2"}}});
  CHECK(book->views().athlete(f.athlete)->units.empty());
  const season::UnitRecord* unit = book->views().unit(f.unit);
  CHECK(unit->athletes.empty());
  CHECK(unit->place == season::UnitPlace::shelf);
  CHECK(unit->shelf == "Shelf 2");
  REQUIRE(unit->collected);
  CHECK(unit->collected->season == "2026");
  put(*book, {{f.unit, book::UnitMoved{"lost", "", "not handed in"}}});
  CHECK(book->views().unit(f.unit)->place == season::UnitPlace::lost);
  put(*book, {{f.unit, book::UnitCollected{"2026"}}});
  CHECK(book->views().unit(f.unit)->place == season::UnitPlace::shelf);
  checkStands(*book);
}

TEST_CASE("A closed season keeps its days when it is closed again after the next was opened") {
  World world;
  const auto book = world.create();
  const std::string team = book->views().team->id;
  book::PracticeSet days;
  days.seasonStart = world.today().plus(-60);
  days.seasonEnd = world.today();
  put(*book, {{team, days}});
  const std::string named = book->views().team->season;
  put(*book, {{team, book::SeasonClosed{named, world.today(), {}}}});
  book::PracticeSet next;
  next.season = "2031";
  put(*book, {{team, next}});
  put(*book, {{team, book::SeasonClosed{named, world.today().plus(1), {"someone:9"}}}});
  REQUIRE(book->views().team->closedSeasons.size() == 1);
  const season::SeasonRecord& closed = book->views().team->closedSeasons.front();
  CHECK(closed.start == days.seasonStart);
  CHECK(closed.closed == world.today().plus(1));
  CHECK(closed.missing == std::vector<std::string>{"someone:9"});
  CHECK(book->views().team->season == "2031");
  checkStands(*book);
}

TEST_CASE("A sheet that replaces another stands for its helmets, and the first may come back") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  const std::string first = book->views().unit(f.unit)->sheet;
  const std::string firstBytes = book->views().sheet(first)->bytes;
  const std::string secondBytes = changed(firstBytes, "Second printing");
  const std::string second = book::hashOf(secondBytes);
  put(*book, {{"", book::SheetAdopted{secondBytes, first}}});
  CHECK(book->views().unit(f.unit)->sheet == first);
  CHECK(book->views().standingSheet(first) == second);
  CHECK(book->views().sheetOf(*book->views().unit(f.unit))->name == "Second printing");
  put(*book, {{"", book::SheetAdopted{firstBytes, second}}});
  CHECK(book->views().standingSheet(first) == first);
  CHECK(book->views().standingSheet(second) == first);
  checkStands(*book);
}

TEST_CASE("A photo stands with its helmet until its entry is taken back") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  const auto ids = put(*book, {{f.unit, book::PhotoTaken{std::string(64, 'a'), 1000, 640, 480, gear::Point::shell, "", "crack"}}}).ids;
  REQUIRE(book->views().unit(f.unit)->photos.size() == 1);
  CHECK(book->views().unit(f.unit)->photos.front().of == gear::Point::shell);
  checkStands(*book);
  must(book->correct(ids));
  CHECK(book->views().unit(f.unit)->photos.empty());
  checkStands(*book);
}
