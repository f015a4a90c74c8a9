// SPDX-License-Identifier: Apache-2.0
// Purpose: SQLite without exceptions: a connection, prepared statements, a transaction that rolls back unless committed, and the one place
// where SQLite's codes become ours. Thread: confined to the Book's thread.
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline::book {

class Statement {
 public:
  Statement() = default;
  Statement& bind(int index, std::int64_t value);
  Statement& bind(int index, std::string_view text);       // valid until the next step
  Statement& bindBlob(int index, std::string_view bytes);  // valid until the next step
  Statement& bindNothing(int index);
  [[nodiscard]] std::int64_t integer(int column) const { return sqlite3_column_int64(m_statement.get(), column); }
  [[nodiscard]] std::string_view bytes(int column) const;  // valid until the next step
  // One row: true. Done: false.
  [[nodiscard]] Result<bool> step();
  [[nodiscard]] Result<void> run();  // steps to the end and resets
  void reset();

 private:
  friend class Database;
  struct Finish {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
  };
  std::unique_ptr<sqlite3_stmt, Finish> m_statement;
  std::string m_place;
};

class Database {
 public:
  // flags: SQLITE_OPEN_...; vfs empty for the ordinary one.
  [[nodiscard]] static Result<Database> open(const std::string& path, int flags, const std::string& vfs);
  [[nodiscard]] Result<void> execute(const char* sql);
  [[nodiscard]] Result<Statement> prepare(std::string_view sql);
  [[nodiscard]] sqlite3* get() const { return m_connection.get(); }
  [[nodiscard]] const std::string& path() const { return m_path; }
  // Moves the WAL into the file and empties it.
  [[nodiscard]] Result<void> emptyWal();
  void close() { m_connection.reset(); }

 private:
  struct Close {
    void operator()(sqlite3* connection) const { sqlite3_close_v2(connection); }
  };
  std::unique_ptr<sqlite3, Close> m_connection;
  std::string m_path;
};

// Rolls back when it goes out of scope uncommitted.
class Transaction {
 public:
  [[nodiscard]] static Result<Transaction> begin(Database& database);
  [[nodiscard]] Result<void> commit();
  ~Transaction();
  Transaction(Transaction&& other) noexcept : m_database(other.m_database) { other.m_database = nullptr; }
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  Transaction& operator=(Transaction&&) = delete;

 private:
  explicit Transaction(Database& database) : m_database(&database) {}
  Database* m_database;
};

[[nodiscard]] Error errorOf(sqlite3* connection, const std::string& place);
[[nodiscard]] Error errorOf(int code, const std::string& place, const std::string& words);

}  // namespace snugline::book
