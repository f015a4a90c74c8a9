// SPDX-License-Identifier: Apache-2.0
#include <sqlite3.h>

#include <iostream>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/chain.h"

using namespace snugline;
using namespace snugline::test;

namespace {

// The file as any SQLite tool would open it.
class Raw {
 public:
  explicit Raw(const std::string& path) {
    if (sqlite3_open_v2(path.c_str(), &m_file, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) throw std::runtime_error("cannot open");
    run("PRAGMA synchronous=OFF");
    run("PRAGMA locking_mode=EXCLUSIVE");
  }
  ~Raw() { sqlite3_close_v2(m_file); }
  Raw(const Raw&) = delete;
  Raw& operator=(const Raw&) = delete;
  void run(const std::string& sql) {
    if (sqlite3_exec(m_file, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) throw std::runtime_error(sqlite3_errmsg(m_file));
  }
  std::vector<std::string> column(const std::string& sql) {
    std::vector<std::string> all;
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_file, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) throw std::runtime_error(sqlite3_errmsg(m_file));
    while (sqlite3_step(statement) == SQLITE_ROW) {
      all.emplace_back(static_cast<const char*>(sqlite3_column_blob(statement, 0)),
                       static_cast<std::size_t>(sqlite3_column_bytes(statement, 0)));
    }
    sqlite3_finalize(statement);
    return all;
  }
  void set(const std::string& sql, const std::string& bytes) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_file, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) throw std::runtime_error(sqlite3_errmsg(m_file));
    sqlite3_bind_blob64(statement, 1, bytes.data(), bytes.size(), SQLITE_STATIC);
    const int code = sqlite3_step(statement);
    sqlite3_finalize(statement);
    if (code != SQLITE_DONE) throw std::runtime_error(sqlite3_errmsg(m_file));
  }

 private:
  sqlite3* m_file = nullptr;
};

struct SmallBook {
  World world;
  std::string device;
  SmallBook() {
    const auto book = world.create();
    Fitting f = pairUp(*book, world.today());
    beginCheck(*book, f, world.today());
    answer(*book, f, seen(fit::Mark::brow), world.today());
    device = must(book->info()).devices.front().device;
  }
  std::vector<book::Fault> faults() { return must(world.open({}, book::Access::readOnly)->verify()).faults; }
};

}  // namespace

TEST_CASE("A whole Book verifies, signed to its end once it is closed") {
  SmallBook small;
  CHECK(small.faults().empty());
  const auto info = must(small.world.open({}, book::Access::readOnly)->info());
  CHECK(info.devices.front().sealedTo == info.devices.front().facts);
  CHECK(info.facts == 10);
}

TEST_CASE("Every single changed byte of a line, a chain or a signature is named by its device and number") {
  SmallBook small;
  int flips = 0;
  const auto flipEach = [&](const std::string& table, const std::string& column, const std::string& where, std::uint64_t n) {
    const std::string whole = Raw(small.world.path).column("SELECT " + column + " FROM " + table + " WHERE " + where).front();
    const std::string update = "UPDATE " + table + " SET " + column + " = ?1 WHERE " + where;
    for (std::size_t i = 0; i < whole.size(); ++i) {
      std::string changed = whole;
      changed[i] = static_cast<char>(changed[i] ^ 0x04);
      Raw(small.world.path).set(update, changed);
      ++flips;
      const auto faults = small.faults();
      if (faults != std::vector<book::Fault>{{small.device, n, "altered"}})
        FAIL(table << ' ' << column << ' ' << n << " byte " << i << ": " << faults.size() << " faults");
    }
    Raw(small.world.path).set(update, whole);
  };
  const auto facts = must(small.world.open({}, book::Access::readOnly)->info()).facts;
  for (std::uint64_t n = 1; n <= facts; ++n) {
    // The sheet's line is long and no other than the rest.
    if (n != 2) flipEach("facts", "line", "seat = " + std::to_string(n), n);
    flipEach("facts", "chain", "seat = " + std::to_string(n), n);
  }
  flipEach("segments", "signature", "first = 1", facts);
  flipEach("segments", "chain", "first = 1", facts);
  std::cout << "bytes changed: " << flips << '\n';
  CHECK(small.faults().empty());
}

TEST_CASE("A line taken out is missing, also at the end; a signature taken out leaves the facts unsigned") {
  SmallBook small;
  const auto facts = must(small.world.open({}, book::Access::readOnly)->info()).facts;
  const std::string bytes = bytesOfFile(small.world.path);
  for (std::uint64_t n = 1; n <= facts; ++n) {
    Raw(small.world.path).run("DELETE FROM facts WHERE seat = " + std::to_string(n));
    CHECK(small.faults() == std::vector<book::Fault>{{small.device, n, "missing"}});
    writeFile(small.world.path, bytes);
  }
  Raw(small.world.path).run("UPDATE segments SET first = 2");
  const auto faults = small.faults();
  REQUIRE(faults.size() == 2);
  CHECK(faults.front() == book::Fault{small.device, 1, "unsigned"});
}

TEST_CASE("A line rewritten with its whole chain is given away by the signature") {
  SmallBook small;
  {
    Raw raw(small.world.path);
    const auto lines = raw.column("SELECT line FROM facts ORDER BY seat");
    auto chain = book::chainStart(small.device);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      std::string line = lines[i];
      if (i == 2) line.replace(line.find("Marrow"), 6, "Narrow");
      chain = book::chainStep(chain, line);
      raw.set("UPDATE facts SET line = ?1 WHERE seat = " + std::to_string(i + 1), line);
      raw.set("UPDATE facts SET chain = ?1 WHERE seat = " + std::to_string(i + 1), std::string(book::bytesOf(chain)));
    }
    raw.set("UPDATE segments SET chain = ?1", std::string(book::bytesOf(chain)));
  }
  CHECK(small.faults() == std::vector<book::Fault>{{small.device, 10, "altered"}});
}

TEST_CASE("A changed view is noticed by a rebuild and put right") {
  SmallBook small;
  const std::string before = must(small.world.open()->dumpViews());
  Raw(small.world.path).run("UPDATE view_athletes SET value = replace(value, 'Marrow', 'Narrow')");
  {
    const auto book = small.world.open();
    CHECK_FALSE(must(book->rebuild()).wasEqual);
    CHECK(must(book->dumpViews()) == before);
  }
  CHECK(must(small.world.open()->rebuild()).wasEqual);
  Raw(small.world.path).run("UPDATE view_athletes SET value = '{\"x\":1}'; DELETE FROM touches");
  const auto book = small.world.open();  // a row that cannot be read: made anew
  CHECK(must(book->dumpViews()) == before);
  CHECK(must(book->rebuild()).wasEqual);
}

TEST_CASE("Views that a program with other kinds has made are made anew when the Book is opened, and then kept") {
  SmallBook small;
  const std::string before = must(small.world.open()->dumpViews());
  // As a program would leave it that knew fewer kinds: what it could not read is not in its views.
  for (const char* sign : {"UPDATE meta SET value = 'mark-seen 1, fold 1' WHERE key = 'folds'", "DELETE FROM meta WHERE key = 'folds'"}) {
    Raw(small.world.path).run(std::string(sign) + "; UPDATE view_athletes SET value = replace(value, 'Marrow', 'Narrow')");
    CHECK(must(small.world.open({}, book::Access::readOnly)->dumpViews()) == before);
    CHECK(must(small.world.open()->dumpViews()) == before);
    CHECK(must(small.world.open()->rebuild()).wasEqual);
  }
  // The same sign: the stored ones are taken.
  Raw(small.world.path).run("UPDATE view_athletes SET value = replace(value, 'Marrow', 'Narrow')");
  CHECK(must(small.world.open()->dumpViews()) != before);
}

TEST_CASE("A Book cut short anywhere is refused with its name and not touched") {
  SmallBook small;
  const std::string whole = bytesOfFile(small.world.path);
  for (std::size_t size = 0; size < whole.size(); size += size < 120 ? 1 : 509) {
    writeFile(small.world.path, whole.substr(0, size));
    const auto opened = small.world.tryOpen();
    if (opened) FAIL("opened at " << size);
    const bool isNamed = opened.error().place == small.world.path;
    const bool isCode = opened.error().code == ErrorCode::damagedBook || (size == 0 && opened.error().code == ErrorCode::notABook);
    if (!isNamed || !isCode) FAIL("at " << size << " code " << static_cast<int>(opened.error().code));
    if (bytesOfFile(small.world.path) != whole.substr(0, size)) FAIL("touched at " << size);
  }
}

TEST_CASE("A Book with any byte of its pages changed never goes unnoticed in its facts, and never stops the program") {
  SmallBook small;
  const std::string whole = bytesOfFile(small.world.path);
  int refused = 0, named = 0, unhurt = 0;
  for (std::size_t at = 0; at < whole.size(); at += 37) {
    std::string changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ 0x10);
    writeFile(small.world.path, changed);
    const auto opened = small.world.tryOpen({}, book::Access::readOnly);
    if (!opened) {
      ++refused;
      if (bytesOfFile(small.world.path) != changed) FAIL("a refused Book was touched at " << at);
      continue;
    }
    const auto verified = (*opened)->verify();
    if (!verified) {
      ++refused;
    } else if (!verified->isOk) {
      ++named;
    } else {
      ++unhurt;
      if (verified->facts != 10) FAIL("facts lost in silence at " << at);
    }
  }
  std::cout << "changed files: refused " << refused << ", named " << named << ", facts unhurt " << unhurt << '\n';
  CHECK(named > 0);
}
