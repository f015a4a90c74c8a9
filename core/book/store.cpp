// SPDX-License-Identifier: Apache-2.0
#include "core/book/store.h"

#include <cerrno>
#include <cstring>

namespace snugline::book {

Error errorOf(int code, const std::string& place, const std::string& words) {
  switch (code & 0xff) {
    case SQLITE_FULL:
      return {ErrorCode::diskFull, place, words};
    case SQLITE_READONLY:
    case SQLITE_PERM:
      return {ErrorCode::readOnly, place, words};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return {ErrorCode::bookInUse, place, words};
    case SQLITE_CORRUPT:
      return {ErrorCode::damagedBook, place, words};
    case SQLITE_NOTADB:
      return {ErrorCode::notABook, place, words};
    case SQLITE_NOMEM:
      return {ErrorCode::outOfMemory, place, words};
    case SQLITE_CANTOPEN:
      return {ErrorCode::cannotRead, place, words};
    case SQLITE_IOERR: {
      // A short read inside the file means that its end is missing.
      if (code == SQLITE_IOERR_SHORT_READ) return {ErrorCode::damagedBook, place, words};
      if (code == SQLITE_IOERR_READ) return {ErrorCode::cannotRead, place, words};
      return {ErrorCode::cannotWrite, place, words};
    }
    case SQLITE_ERROR:  // our statements are right: a table or column is not there
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
      return {ErrorCode::damagedBook, place, words};
    default:  // not an enum: SQLite's own numbers
      return {ErrorCode::internal, place, words};
  }
}

Error errorOf(sqlite3* connection, const std::string& place) {
  if (connection == nullptr) return {ErrorCode::outOfMemory, place, {}};
  const int code = sqlite3_extended_errcode(connection);
  Error error = errorOf(code, place, sqlite3_errmsg(connection));
  // The system knows better why writing stopped.
  if (error.code == ErrorCode::cannotWrite && sqlite3_system_errno(connection) == ENOSPC) error.code = ErrorCode::diskFull;
  if (error.code == ErrorCode::cannotWrite && sqlite3_system_errno(connection) == EDQUOT) error.code = ErrorCode::diskFull;
  return error;
}

Statement& Statement::bind(int index, std::int64_t value) {
  sqlite3_bind_int64(m_statement.get(), index, value);
  return *this;
}
Statement& Statement::bind(int index, std::string_view text) {
  // An empty view may have no address, and no address would bind NULL.
  sqlite3_bind_text64(m_statement.get(), index, text.empty() ? "" : text.data(), text.size(), SQLITE_STATIC, SQLITE_UTF8);
  return *this;
}
Statement& Statement::bindBlob(int index, std::string_view bytes) {
  sqlite3_bind_blob64(m_statement.get(), index, bytes.empty() ? "" : bytes.data(), bytes.size(), SQLITE_STATIC);
  return *this;
}

Statement& Statement::bindNothing(int index) {
  sqlite3_bind_null(m_statement.get(), index);
  return *this;
}

std::string_view Statement::bytes(int column) const {
  const void* data = sqlite3_column_blob(m_statement.get(), column);
  const int size = sqlite3_column_bytes(m_statement.get(), column);
  return data == nullptr ? std::string_view() : std::string_view(static_cast<const char*>(data), static_cast<std::size_t>(size));
}

Result<bool> Statement::step() {
  const int code = sqlite3_step(m_statement.get());
  if (code == SQLITE_ROW) return true;
  if (code == SQLITE_DONE) return false;
  Error error = errorOf(sqlite3_db_handle(m_statement.get()), m_place);
  sqlite3_reset(m_statement.get());
  return tl::unexpected<Error>(std::move(error));
}

Result<void> Statement::run() {
  while (true) {
    const auto row = step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
  }
  reset();
  return {};
}

void Statement::reset() { sqlite3_reset(m_statement.get()); }

Result<Database> Database::open(const std::string& path, int flags, const std::string& vfs) {
  Database database;
  database.m_path = path;
  sqlite3* connection = nullptr;
  const int code =
      sqlite3_open_v2(path.c_str(), &connection, flags | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, vfs.empty() ? nullptr : vfs.c_str());
  database.m_connection.reset(connection);
  if (code == SQLITE_OK) return database;
  Error error = errorOf(connection, path);
  const int reason = connection == nullptr ? 0 : sqlite3_system_errno(connection);
  if (error.code == ErrorCode::cannotRead) {
    const bool isWriting = (flags & SQLITE_OPEN_CREATE) != 0;
    if (reason == ENOSPC)
      error.code = ErrorCode::diskFull;
    else if (reason == EROFS || reason == EACCES || reason == EPERM)
      error.code = ErrorCode::readOnly;
    else if (isWriting)
      error.code = ErrorCode::cannotWrite;
    if (reason != 0) error.detail = std::strerror(reason);
  }
  return tl::unexpected<Error>(std::move(error));
}

Result<void> Database::execute(const char* sql) {
  if (sqlite3_exec(get(), sql, nullptr, nullptr, nullptr) == SQLITE_OK) return {};
  return tl::unexpected<Error>(errorOf(get(), m_path));
}

Result<Statement> Database::prepare(std::string_view sql) {
  Statement statement;
  statement.m_place = m_path;
  sqlite3_stmt* raw = nullptr;
  const int code = sqlite3_prepare_v3(get(), sql.data(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT, &raw, nullptr);
  statement.m_statement.reset(raw);
  if (code == SQLITE_OK) return statement;
  return tl::unexpected<Error>(errorOf(get(), m_path));
}

Result<void> Database::emptyWal() {
  const int code = sqlite3_wal_checkpoint_v2(get(), nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
  if (code == SQLITE_OK) return {};
  return tl::unexpected<Error>(errorOf(get(), m_path));
}

Result<Transaction> Transaction::begin(Database& database) {
  if (auto begun = database.execute("BEGIN IMMEDIATE"); !begun) return tl::unexpected<Error>(begun.error());
  return Transaction(database);
}

Result<void> Transaction::commit() {
  if (auto done = m_database->execute("COMMIT"); !done) return done;
  m_database = nullptr;
  return {};
}

Transaction::~Transaction() {
  // Some failures have rolled back already; then there is nothing to do.
  if (m_database != nullptr && sqlite3_get_autocommit(m_database->get()) == 0)
    sqlite3_exec(m_database->get(), "ROLLBACK", nullptr, nullptr, nullptr);
}

}  // namespace snugline::book
