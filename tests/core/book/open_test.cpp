// SPDX-License-Identifier: Apache-2.0
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

ErrorCode codeOf(const Result<std::unique_ptr<book::Book>>& opened) { return opened ? ErrorCode::internal : opened.error().code; }

void runSql(const std::string& path, const std::string& sql) {
  sqlite3* file = nullptr;
  if (sqlite3_open(path.c_str(), &file) != SQLITE_OK) throw std::runtime_error("cannot open");
  const int code = sqlite3_exec(file, sql.c_str(), nullptr, nullptr, nullptr);
  sqlite3_close(file);
  if (code != SQLITE_OK) throw std::runtime_error("cannot run " + sql);
}

}  // namespace

TEST_CASE("What is not a Book is refused by name and left as it was") {
  World world;
  CHECK(codeOf(world.tryOpen()) == ErrorCode::cannotRead);
  CHECK(codeOf(world.tryOpen(world.folder.path())) == ErrorCode::cannotRead);
  for (const std::string& bytes :
       {std::string("\x89PNG\r\n\x1a\n and so on, long enough to look like a file of some size"), std::string(), std::string(4096, '\0')}) {
    writeFile(world.path, bytes);
    const auto opened = world.tryOpen();
    CHECK(codeOf(opened) == ErrorCode::notABook);
    CHECK(opened.error().place == world.path);
    CHECK(bytesOfFile(world.path) == bytes);
  }
  const std::string foreign = world.folder.at("foreign.db");
  runSql(foreign, "CREATE TABLE t(x); INSERT INTO t VALUES(1)");
  const std::string before = bytesOfFile(foreign);
  CHECK(codeOf(world.tryOpen(foreign)) == ErrorCode::notABook);
  CHECK(bytesOfFile(foreign) == before);
  CHECK_FALSE(std::filesystem::exists(foreign + "-wal"));
}

TEST_CASE("A Book of a newer format is refused with both versions and left as it was") {
  World world;
  world.create().reset();
  runSql(world.path, "PRAGMA user_version=2");
  const std::string before = bytesOfFile(world.path);
  const auto opened = world.tryOpen();
  CHECK(codeOf(opened) == ErrorCode::newerBook);
  CHECK(opened.error().detail == "2, 1");
  CHECK(bytesOfFile(world.path) == before);
}

TEST_CASE("A Book that lacks a table is damaged") {
  World world;
  world.create().reset();
  runSql(world.path, "DROP TABLE segments");
  CHECK(codeOf(world.tryOpen()) == ErrorCode::damagedBook);
}

TEST_CASE("A second opener is refused, in the same process and in another one") {
  World world;
  const auto book = world.create();
  CHECK(codeOf(world.tryOpen()) == ErrorCode::bookInUse);
  CHECK(codeOf(world.tryOpen({}, book::Access::readOnly)) == ErrorCode::bookInUse);
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) _exit(codeOf(world.tryOpen()) == ErrorCode::bookInUse ? 0 : 1);
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  CHECK(status == 0);
  put(*book, {{"x:1", book::NoteAdded{"the first one goes on"}}});
}

TEST_CASE("A Book opened for reading writes nothing and refuses to") {
  World world;
  world.create().reset();
  const std::string before = bytesOfFile(world.path);
  {
    const auto book = world.open({}, book::Access::readOnly);
    CHECK(book->views().team->name == "Harrow Creek High");
    const auto added = book->append({{"x:1", book::NoteAdded{"n"}}});
    REQUIRE_FALSE(added);
    CHECK(added.error().code == ErrorCode::readOnly);
    CHECK_FALSE(book->rebuild());
    CHECK_FALSE(must(book->dumpViews()).empty());
  }
  CHECK(bytesOfFile(world.path) == before);
}

TEST_CASE("A place that cannot be written to is named and nothing is left there") {
  World world;
  const auto nowhere = world.tryCreate(world.folder.at("no/such/folder/team.book"));
  REQUIRE_FALSE(nowhere);
  CHECK((nowhere.error().code == ErrorCode::cannotWrite || nowhere.error().code == ErrorCode::cannotRead));
  const auto kernel = world.tryCreate("/proc/team.book");
  REQUIRE_FALSE(kernel);
  CHECK(kernel.error().place == "/proc/team.book");
}

TEST_CASE("A draft that names no earlier one of its call, or writes what cannot be read back, is refused whole") {
  World world;
  const auto book = world.create();
  const auto dump = must(book->dumpViews());
  const auto unnamed = book->append({{"", book::AthleteAdded{"1", "A", "", {}}}, {"#1", book::TapeRead{{Length{570'000}}}}});
  REQUIRE_FALSE(unnamed);
  CHECK(unnamed.error().code == ErrorCode::notFound);
  const auto strange = book->append({{"", book::AthleteAdded{"1", "A", "", {}}},
                                     {"#0", book::LabelRead{gear::Label{gear::LabelKind::makersMark, 2026, Day{900'000}, {}}}}});
  CHECK_FALSE(strange);
  CHECK(must(book->info()).facts == 1);
  CHECK(must(book->dumpViews()) == dump);
  const auto named = put(*book, {{"", book::AthleteAdded{"1", "A", "", {}}}, {"#0", book::TapeRead{{Length{570'000}}}}});
  CHECK(book->views().athlete(named.ids.front())->tapes.size() == 1);
}

TEST_CASE("Founding facts cannot be corrected, and what is not there cannot either") {
  World world;
  const auto book = world.create();
  const auto founding = book->correct({book->views().team->id});
  REQUIRE_FALSE(founding);
  CHECK(founding.error().code == ErrorCode::notAllowed);
  CHECK(book->correct({"zzzzzzzzzzzzz:1"}).error().code == ErrorCode::notFound);
  CHECK(book->correct({"nonsense"}).error().code == ErrorCode::notFound);
}

TEST_CASE("The same keys and times give the same Book, draft by draft or in bulk") {
  std::vector<std::string> dumps;
  for (const bool isBulk : {false, true}) {
    World world;
    const auto book = world.create();
    book::Drafts drafts{
        {"", book::AthleteAdded{"1", "A", "", {}}}, {"#0", book::TapeRead{{Length{570'000}}}}, {"#0", book::HairChanged{"x"}}};
    if (isBulk) {
      std::vector<book::BulkDraft> bulk;
      for (auto& draft : drafts) bulk.push_back({draft, world.clock.now(), ""});
      CHECK(must(book->appendBulk(bulk)).size() == 3);
    } else {
      put(*book, drafts);
    }
    dumps.push_back(must(book->dumpViews()));
  }
  CHECK(dumps[0] == dumps[1]);
}

TEST_CASE("A Book that was closed opens from its stored views, people with and without a code included, and folds no log again") {
  World world;
  {
    const auto book = world.create();
    const std::string first = put(*book, {{"", book::PersonAdded{"Maren Tollgate", "MT", "admin"}}}).ids.front();
    put(*book, {{"", book::PersonAdded{"Silvio Kestrelby", "SK", "staff"}}});
    put(*book, {{first, book::CodeSet{}}});
  }
  runSql(world.path, "UPDATE view_people SET value = replace(value, 'Kestrelby', 'Westerley')");
  const auto book = world.open();  // what nobody wrote shows that the views were read and not made anew
  bool isStored = false;
  for (const auto& [id, person] : book->views().people) isStored = isStored || person.name == "Silvio Westerley";
  CHECK(isStored);
}
