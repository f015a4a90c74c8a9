// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

TEST_CASE("A backup comes back as the same facts and the same views, several segments and devices of them") {
  World world;
  const std::string file = world.folder.at("team.backup"), path = world.folder.at("again.book");
  std::string dump;
  std::uint64_t facts = 0;
  {
    const auto book = world.create();
    Fitting f = pairUp(*book, world.today());
    fitWhole(*book, f, world.clock);
    for (int i = 0; i < 600; ++i) put(*book, {{f.unit, book::NoteAdded{std::to_string(i)}}});
    book::Fact other;
    other.device = "aaaaaaaaaaaaa";
    other.n = 1;
    other.order = 9000;
    other.about = f.athlete;
    other.body = book::HairChanged{"short"};
    must(book->receive({*book::encode(other)}));
    dump = must(book->dumpViews());
    facts = must(book->backup(file)).facts;
    CHECK(facts == must(book->info()).facts);
    const auto again = book->backup(file);
    REQUIRE_FALSE(again);
    CHECK(again.error().code == ErrorCode::fileExists);
  }
  CHECK(must(book::Book::restore(file, path, world.keys, world.clock)).facts == facts);
  const auto book = world.open(path);
  CHECK(must(book->dumpViews()) == dump);
  CHECK(must(book->verify()).isOk);
  CHECK(must(book->rebuild()).wasEqual);
  const auto over = book::Book::restore(file, path, world.keys, world.clock);
  REQUIRE_FALSE(over);
  CHECK(over.error().code == ErrorCode::fileExists);
}

TEST_CASE("A backup with any byte changed, or cut short, or more than it says, is refused and nothing is made") {
  World world;
  const std::string file = world.folder.at("team.backup"), path = world.folder.at("again.book");
  {
    const auto book = world.create();
    pairUp(*book, world.today());
    must(book->backup(file));
  }
  const std::string whole = bytesOfFile(file);
  const auto isRefused = [&](const std::string& bytes) {
    writeFile(file, bytes);
    return !book::Book::restore(file, path, world.keys, world.clock) && !std::filesystem::exists(path);
  };
  for (std::size_t i = 0; i < whole.size(); ++i) {
    std::string changed = whole;
    changed[i] = static_cast<char>(changed[i] ^ 1);
    if (!isRefused(changed)) FAIL("byte " << i);
  }
  for (std::size_t size = 0; size < whole.size(); size += 7) {
    if (!isRefused(whole.substr(0, size))) FAIL("cut at " << size);
  }
  CHECK(isRefused(whole + "x"));
  writeFile(file, whole);
  CHECK(book::Book::restore(file, path, world.keys, world.clock).has_value());
}

TEST_CASE("A damaged log is not backed up as if it were whole, and a place that cannot be written to is named") {
  World world;
  const auto book = world.create();
  const auto nowhere = book->backup(world.folder.at("no/such/folder/b"));
  REQUIRE_FALSE(nowhere);
  CHECK(nowhere.error().code == ErrorCode::cannotWrite);
  const auto full = book->backup("/dev/full/b");
  CHECK_FALSE(full);
  CHECK(book::Book::restore(world.folder.at("none"), world.folder.at("x.book"), world.keys, world.clock).error().code ==
        ErrorCode::cannotRead);
}
