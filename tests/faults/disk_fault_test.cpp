// SPDX-License-Identifier: Apache-2.0
#include <iostream>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "fault_vfs.h"

using namespace snugline;
using namespace snugline::test;

namespace {

struct Trouble {
  FaultVfs::Deed deed;
  int code;
  ErrorCode said;
};
constexpr Trouble kTroubles[] = {{FaultVfs::Deed::write, SQLITE_FULL, ErrorCode::diskFull},
                                 {FaultVfs::Deed::write, SQLITE_IOERR_WRITE, ErrorCode::cannotWrite},
                                 {FaultVfs::Deed::sync, SQLITE_IOERR_FSYNC, ErrorCode::cannotWrite}};

book::Drafts threeNotes(const std::string& words) {
  return {{"x:1", book::NoteAdded{words + "1"}}, {"x:1", book::NoteAdded{words + "2"}}, {"x:2", book::NoteAdded{words + "3"}}};
}

}  // namespace

TEST_CASE("An append that a failing disk stops is there whole or not at all, and the views say the same") {
  int failures = 0;
  for (const Trouble& trouble : kTroubles) {
    for (const bool isForGood : {false, true}) {
      bool hasFailed = true;
      for (int k = 1; hasFailed; ++k) {
        World world;
        FaultVfs vfs("snugline-append");
        world.create().reset();
        bool isThere = false;
        std::string dump;
        {
          const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()}));
          const Fitting f = pairUp(*book, world.today());
          dump = must(book->dumpViews());
          vfs.failAt(trouble.deed, k, trouble.code, isForGood);
          book::Drafts drafts = threeNotes("n");
          drafts.push_back({f.unit, book::UnitHeld{"shell", "crack", false}});
          const auto added = book->append(std::move(drafts));
          hasFailed = vfs.hasFailed();
          isThere = added.has_value();
          CHECK(isThere == !hasFailed);
          if (!added) {
            ++failures;
            CHECK(added.error().code == trouble.said);
            CHECK(book->views().unit(f.unit)->holds.empty());
          }
          if (!isForGood) {
            // The disk came back: the same Book goes on.
            vfs.heal();
            CHECK(put(*book, {{"x:9", book::NoteAdded{"after"}}}).ids.size() == 1);
          }
        }
        vfs.heal();
        const auto book = world.open();
        const auto found = must(book->history("x:1")).size();
        // A sync that failed may still have left everything on the disk; half of it never.
        CHECK((found == 0 || found == 2));
        if (isThere) CHECK(found == 2);
        CHECK(must(book->history("x:2")).size() == found / 2);
        if (!isForGood) CHECK(must(book->history("x:9")).size() == 1);
        CHECK(must(book->verify()).isOk);
        CHECK(must(book->rebuild()).wasEqual);
      }
    }
  }
  std::cout << "appends stopped by the disk: " << failures << '\n';
  CHECK(failures >= 10);
}

TEST_CASE("A checkpoint that a failing disk stops loses no fact and leaves a Book that opens") {
  int failures = 0;
  for (const Trouble& trouble : kTroubles) {
    bool hasFailed = true;
    for (int k = 1; hasFailed && k < 200; ++k) {
      World world;
      FaultVfs vfs("snugline-checkpoint");
      world.create().reset();
      std::string dump;
      {
        const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()}));
        pairUp(*book, world.today());
        vfs.failAt(trouble.deed, k, trouble.code, true);
        const auto done = book->checkpoint();
        hasFailed = vfs.hasFailed();
        if (hasFailed) ++failures;
        CHECK(done.has_value() == !hasFailed);
      }
      vfs.heal();
      const auto book = world.open();
      CHECK(book->views().athletes.size() == 1);
      CHECK(book->views().units.size() == 1);
      CHECK(must(book->rebuild()).wasEqual);
      const auto verified = must(book->verify());
      CHECK(verified.isOk);
      CHECK(verified.facts == 8);
    }
  }
  CHECK(failures >= 10);
}

TEST_CASE("A Book that cannot be founded leaves no file behind") {
  for (const Trouble& trouble : kTroubles) {
    bool hasFailed = true;
    for (int k = 1; hasFailed && k < 400; ++k) {
      World world;
      FaultVfs vfs("snugline-found");
      vfs.failAt(trouble.deed, k, trouble.code, true);
      const auto made = book::Book::create(world.path, {"Team", "", "2026", ""}, world.keys, world.clock, {vfs.name()});
      hasFailed = vfs.hasFailed();
      CHECK(made.has_value() == !hasFailed);
      if (made) continue;
      CHECK(made.error().place == world.path);
      CHECK(std::filesystem::is_empty(world.folder.path()));
    }
  }
}

TEST_CASE("A Book in a folder that cannot be written to is refused for writing and can still be read") {
  World world;
  std::string dump;
  {
    const auto book = world.create();
    pairUp(*book, world.today());
    dump = must(book->dumpViews());
  }
  FaultVfs vfs("snugline-readonly");
  vfs.refuseWal();
  const auto written = book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()});
  REQUIRE_FALSE(written);
  CHECK(written.error().code == ErrorCode::readOnly);
  CHECK(written.error().place == world.path);
  const auto book = must(book::Book::open(world.path, book::Access::readOnly, world.keys, world.clock, {vfs.name()}));
  CHECK(must(book->dumpViews()) == dump);
  CHECK(must(book->verify()).isOk);
  CHECK(book->append({{"x:1", book::NoteAdded{"n"}}}).error().code == ErrorCode::readOnly);
}
