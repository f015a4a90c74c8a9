// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

std::string own(book::Book& book) {
  for (const auto& device : must(book.info()).devices) {
    if (device.isOwn) return device.device;
  }
  return {};
}
book::Drafts note(const std::string& about) { return {{about, book::NoteAdded{"n"}}}; }
// Why the writer of this fact was admitted: its own first fact says so.
std::string because(book::Book& book, const std::string& id) {
  const std::string device = id.substr(0, id.find(':'));
  const auto first = must(book.fact(device + ":1"));
  return std::get<book::DeviceAdmitted>(first.body).because;
}

}  // namespace

TEST_CASE("Opening writes nothing, and the same device goes on under its name") {
  World world;
  world.create().reset();
  const std::string bytes = bytesOfFile(world.path);
  world.open().reset();
  CHECK(bytesOfFile(world.path) == bytes);
  const auto book = world.open();
  const std::string device = own(*book);
  CHECK_FALSE(device.empty());
  CHECK(put(*book, note("x:1")).ids.front() == device + ":2");
}

TEST_CASE("A copied Book gets a new identity at its first write, and so does the second copy") {
  World world;
  std::string first;
  {
    const auto book = world.create();
    first = own(*book);
    put(*book, note("x:1"));
  }
  const std::string copy = world.folder.at("copy.book");
  std::filesystem::copy_file(world.path, copy);
  std::string second;
  {
    const auto book = world.open(copy);
    CHECK(own(*book).empty());
    const auto id = put(*book, note("x:1")).ids.front();
    second = own(*book);
    CHECK(second != first);
    CHECK(id == second + ":2");
    CHECK(because(*book, id) == "copied");
    CHECK(must(book->verify()).isOk);
  }
  CHECK(own(*world.open(copy)) == second);
  CHECK(own(*world.open()) == first);  // where it always was
}

TEST_CASE("A Book whose key is not on this device gets a new identity") {
  World world;
  const auto first = own(*world.create());
  world.keys.forget();
  const auto book = world.open();
  const auto id = put(*book, note("x:1")).ids.front();
  CHECK(own(*book) != first);
  CHECK(because(*book, id) == "copied");
}

TEST_CASE("An older file put back in the same place gets a new identity") {
  World world;
  const std::string first = own(*world.create());
  const std::string old = bytesOfFile(world.path);
  {
    const auto book = world.open();
    put(*book, note("x:1"));
  }
  writeFile(world.path, old);  // the same inode, fewer facts
  const auto book = world.open();
  const auto id = put(*book, note("x:2")).ids.front();
  CHECK(own(*book) != first);
  CHECK(because(*book, id) == "restored");
}

TEST_CASE("A restored Book has no incarnation, and its first writer is new") {
  World world;
  std::string first;
  {
    const auto book = world.create();
    first = own(*book);
    put(*book, note("x:1"));
    must(book->backup(world.folder.at("b.snug")));
  }
  const std::string path = world.folder.at("restored.book");
  CHECK(must(book::Book::restore(world.folder.at("b.snug"), path, world.keys, world.clock)).facts == 2);
  const auto book = world.open(path);
  CHECK(own(*book).empty());
  const auto id = put(*book, note("x:2")).ids.front();
  CHECK(own(*book) != first);
  CHECK(because(*book, id) == "restored");
  CHECK(must(book->history("x:1")).size() == 1);
}

TEST_CASE("A device that hears its own facts from elsewhere writes on under a new name, also after a kill") {
  World world;
  const auto book = world.create();
  const std::string first = own(*book);
  book::Fact mine;
  mine.device = first;
  mine.n = 2;
  mine.order = 9;
  mine.about = "x:1";
  mine.body = book::NoteAdded{"from my twin"};
  must(book->receive({*book::encode(mine)}));
  const auto id = put(*book, note("x:1")).ids.front();
  CHECK(own(*book) != first);
  CHECK(because(*book, id) == "restored");
  const auto facts = must(book->history("x:1"));
  REQUIRE(facts.size() == 2);
  CHECK(facts[1].order > facts[0].order);
}

TEST_CASE("Without a key nothing is written and the error says so") {
  World world;
  world.create().reset();
  ports::FailingKeys keys;
  const auto book = must(book::Book::open(world.path, book::Access::readWrite, keys, world.clock));
  const auto added = book->append(note("x:1"));
  REQUIRE_FALSE(added);
  CHECK(added.error().code == ErrorCode::noKey);
  CHECK(must(book->verify()).facts == 1);
}
