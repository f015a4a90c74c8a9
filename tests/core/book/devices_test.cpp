// SPDX-License-Identifier: Apache-2.0
// What a Book knows of the devices that wrote in it, from which the board tells whose clock is far off.
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

void addSomebody(book::Book& book, const std::string& jersey) {
  put(book, must(book::addAthlete(book.views(), {jersey, "Marrow", "Ash", 2009})));
}

}  // namespace

TEST_CASE("The latest wall time of each device outlasts a restart, a clock that was set back, and a rebuild") {
  World world;
  const Instant ahead = instantAt(dayOf(2026, 10, 16), 600, -300);
  std::string device;
  {
    const auto book = world.create();
    world.clock.set(ahead);
    addSomebody(*book, "07");
    world.clock.set(instantAt(dayOf(2026, 10, 14), 930, -300));
    addSomebody(*book, "12");
    device = book->views().ownDevice;
    REQUIRE_FALSE(device.empty());
    REQUIRE(book->views().devices.size() == 1);
    CHECK(book->views().devices.at(device).latest == ahead);
  }
  const auto again = world.open();
  CHECK(again->views().ownDevice == device);  // known before it writes anything
  CHECK(again->views().devices.at(device).latest == ahead);
  CHECK(must(again->rebuild()).wasEqual);
  CHECK(again->views().ownDevice == device);
  CHECK(again->views().devices.at(device).latest == ahead);
}

TEST_CASE("A Book that was restored elsewhere is another device's until it writes, and knows both after that") {
  World world;
  const std::string copy = world.folder.at("copy.book");
  std::string device;
  {
    const auto book = world.create();
    addSomebody(*book, "07");
    device = book->views().ownDevice;
    must(book->backup(world.folder.at("backup")));
  }
  must(book::Book::restore(world.folder.at("backup"), copy, world.keys, world.clock));
  const auto restored = world.open(copy);
  CHECK(restored->views().ownDevice.empty());
  CHECK(restored->views().devices.size() == 1);
  addSomebody(*restored, "12");
  CHECK_FALSE(restored->views().ownDevice.empty());
  CHECK(restored->views().ownDevice != device);
  CHECK(restored->views().devices.size() == 2);
}

TEST_CASE("Who gave a helmet up and got none is known from the Book, until they get one or hand one in") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  CHECK_FALSE(book->views().athlete(f.athlete)->had);
  put(*book, {{f.unit, book::UnitUnpaired{f.athlete, "too small"}}});
  const auto had = book->views().athlete(f.athlete)->had;
  REQUIRE(had);
  CHECK(had->unit == f.unit);
  CHECK(had->reason == "too small");
  const auto dump = must(book->dumpViews());
  CHECK(must(book->rebuild()).wasEqual);
  CHECK(must(book->dumpViews()) == dump);
  put(*book, must(book::pair(book->views(), f.athlete, f.unit, world.today())));
  CHECK_FALSE(book->views().athlete(f.athlete)->had);
}
