// SPDX-License-Identifier: Apache-2.0
// The file: what it must look like before it is touched, how it is opened, its tables and its migrations.
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <queue>

#include "core/book/book_body.h"

namespace snugline::book {

namespace {

constexpr std::size_t kHeaderBytes = 100;  // of an SQLite file
constexpr std::string_view kSqliteMagic("SQLite format 3\0", 16);

// One migration a version; each runs in one transaction together with the stamp.
constexpr const char* kTables = R"(
CREATE TABLE meta(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
INSERT INTO meta VALUES('wal', '0');
CREATE TABLE devices(slot INTEGER PRIMARY KEY, device TEXT NOT NULL UNIQUE, public_key BLOB) STRICT;
CREATE TABLE facts(seat INTEGER PRIMARY KEY, ord INTEGER NOT NULL, line BLOB NOT NULL, chain BLOB NOT NULL) STRICT;
CREATE TABLE segments(slot INTEGER NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL, chain BLOB NOT NULL,
  signature BLOB NOT NULL, PRIMARY KEY(slot, first)) STRICT, WITHOUT ROWID;
CREATE TABLE forks(slot INTEGER NOT NULL, n INTEGER NOT NULL, line BLOB NOT NULL, PRIMARY KEY(slot, n, line)) STRICT, WITHOUT ROWID;
CREATE TABLE folded(slot INTEGER PRIMARY KEY, n INTEGER NOT NULL) STRICT;
CREATE TABLE touches(subject TEXT NOT NULL, slot INTEGER NOT NULL, n INTEGER NOT NULL, count INTEGER NOT NULL, ord INTEGER NOT NULL,
  PRIMARY KEY(subject, slot, n)) STRICT, WITHOUT ROWID;
CREATE TABLE corrections(fact TEXT NOT NULL, by TEXT NOT NULL, PRIMARY KEY(fact, by)) STRICT, WITHOUT ROWID;
CREATE TABLE view_team(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE view_people(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE view_sheets(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE view_athletes(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE view_units(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE view_checks(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
)";
constexpr std::array<const char*, kBookFormat> kMigrations{kTables};

std::uint32_t bigEndian(const unsigned char* bytes, int count) {
  std::uint32_t value = 0;
  for (int i = 0; i < count; ++i) value = (value << 8) | bytes[i];
  return value;
}

Result<void> configure(Database& database) {
  // Exclusive before anything is read: then the WAL needs no shared memory and a second opener is refused.
  for (const char* sql : {"PRAGMA locking_mode=EXCLUSIVE", "PRAGMA synchronous=FULL", "PRAGMA fullfsync=ON",
                          "PRAGMA checkpoint_fullfsync=ON", "PRAGMA wal_autocheckpoint=0", "PRAGMA temp_store=MEMORY",
                          "PRAGMA trusted_schema=OFF", "PRAGMA cache_size=-16384", "PRAGMA foreign_keys=OFF"}) {
    if (auto done = database.execute(sql); !done) return done;
  }
  return {};
}

std::string uriOf(const std::string& path) {
  std::string uri = "file:";
  constexpr char kHex[] = "0123456789ABCDEF";
  for (const char c : path) {
    const auto byte = static_cast<unsigned char>(c);
    const bool isPlain = std::isalnum(byte) != 0 || c == '/' || c == '.' || c == '-' || c == '_';
    if (isPlain) {
      uri += c;
    } else {
      uri += '%';
      uri += kHex[byte >> 4];
      uri += kHex[byte & 15];
    }
  }
  return uri + "?immutable=1";
}

}  // namespace

Result<void> examineFile(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  struct stat status {};
  unsigned char header[kHeaderBytes] = {};
  const bool isFile = ::fstat(file, &status) == 0 && S_ISREG(status.st_mode);
  const ssize_t got = isFile ? ::read(file, header, sizeof header) : -1;
  ::close(file);
  if (!isFile) return fail(ErrorCode::cannotRead, path, "not a file");
  if (got < 0) return fail(ErrorCode::cannotRead, path, "reading stopped");
  const std::size_t length = std::min(static_cast<std::size_t>(got), kSqliteMagic.size());
  if (length == 0 || std::memcmp(header, kSqliteMagic.data(), length) != 0) return fail(ErrorCode::notABook, path);
  if (static_cast<std::size_t>(got) < kHeaderBytes) return fail(ErrorCode::damagedBook, path, "cut short in its header");
  if (bigEndian(header + 68, 4) != kApplicationId) return fail(ErrorCode::notABook, path);
  const std::uint32_t version = bigEndian(header + 60, 4);
  if (version > static_cast<std::uint32_t>(kBookFormat)) {
    return fail(ErrorCode::newerBook, path, std::to_string(version) + ", " + std::to_string(kBookFormat));
  }
  if (version == 0) return fail(ErrorCode::damagedBook, path, "no version");
  const std::uint64_t pageSize = bigEndian(header + 16, 2) == 1 ? 65536 : bigEndian(header + 16, 2);
  const std::uint64_t needed = pageSize * bigEndian(header + 28, 4);
  struct stat wal {};
  const bool isWal = ::stat((path + "-wal").c_str(), &wal) == 0 && wal.st_size > 0;
  if (static_cast<std::uint64_t>(status.st_size) < needed && !isWal) {
    return fail(ErrorCode::damagedBook, path, "cut short: " + std::to_string(status.st_size) + " of " + std::to_string(needed) + " bytes");
  }
  return {};
}

Result<Database> openStore(const std::string& path, Access access, const StoreOptions& options) {
  const auto touch = [](Database& database) -> Result<void> {
    if (auto done = configure(database); !done) return done;
    // The first read takes the lock and opens the WAL.
    auto read = database.prepare("SELECT count(*) FROM sqlite_schema");
    if (!read) return tl::unexpected<Error>(read.error());
    return read->run();
  };
  auto database = Database::open(path, SQLITE_OPEN_READWRITE, options.vfs);
  if (database) {
    const bool isReadOnly = sqlite3_db_readonly(database->get(), "main") == 1;
    Result<void> touched = isReadOnly ? Result<void>(fail(ErrorCode::readOnly, path)) : touch(*database);
    if (touched) {
      if (access == Access::readOnly) {
        if (auto done = database->execute("PRAGMA query_only=ON"); !done) return tl::unexpected<Error>(done.error());
      }
      return database;
    }
    Error error = touched.error();
    // The file is there and readable, so what cannot be opened is the WAL beside it.
    if (error.code == ErrorCode::cannotRead) error = {ErrorCode::readOnly, path, error.detail};
    if (error.code != ErrorCode::readOnly || access == Access::readWrite) return tl::unexpected<Error>(std::move(error));
  } else if (access == Access::readWrite || database.error().code != ErrorCode::readOnly) {
    return database;
  }
  // A Book on a card that cannot be written can still be read, unless facts wait beside it.
  struct stat wal {};
  if (::stat((path + "-wal").c_str(), &wal) == 0 && wal.st_size > 0) return fail(ErrorCode::readOnly, path, "facts wait beside the file");
  database = Database::open(uriOf(path), SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, options.vfs);
  if (!database) return database;
  if (auto touched = touch(*database); !touched) return tl::unexpected<Error>(touched.error());
  return database;
}

Result<void> migrate(Database& database, int from) {
  if (from == kBookFormat) return {};
  auto transaction = Transaction::begin(database);
  if (!transaction) return tl::unexpected<Error>(transaction.error());
  for (int version = from; version < kBookFormat; ++version) {
    if (auto done = database.execute(kMigrations[static_cast<std::size_t>(version)]); !done) return done;
  }
  const std::string stamp =
      "PRAGMA user_version=" + std::to_string(kBookFormat) + ";PRAGMA application_id=" + std::to_string(kApplicationId);
  if (auto done = database.execute(stamp.c_str()); !done) return done;
  return transaction->commit();
}

Result<Database> createStore(const std::string& path, const StoreOptions& options) {
  auto database = Database::open(path, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, options.vfs);
  if (!database) return database;
  if (auto done = database->execute("PRAGMA page_size=4096"); !done) return tl::unexpected<Error>(done.error());
  if (auto done = configure(*database); !done) return tl::unexpected<Error>(done.error());
  if (auto done = database->execute("PRAGMA journal_mode=WAL"); !done) return tl::unexpected<Error>(done.error());
  if (auto done = migrate(*database, 0); !done) return tl::unexpected<Error>(done.error());
  return database;
}

std::string placeMark(const std::string& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0) return {};
  return std::to_string(status.st_dev) + ':' + std::to_string(status.st_ino);
}

std::string temporaryName(const std::string& path) { return path + ".new-" + std::to_string(::getpid()); }

void removeStore(const std::string& path) {
  for (const char* end : {"", "-wal", "-shm", "-journal"}) ::unlink((path + end).c_str());
}

Result<void> nameFile(const std::string& from, const std::string& to) {
  if (::link(from.c_str(), to.c_str()) != 0) {
    const int reason = errno;
    if (reason == EEXIST) return fail(ErrorCode::fileExists, to);
    // Some cards know no second names; then the gap between looking and renaming has to do.
    if (::access(to.c_str(), F_OK) == 0) return fail(ErrorCode::fileExists, to);
    if (::rename(from.c_str(), to.c_str()) != 0) {
      const ErrorCode code = errno == ENOSPC ? ErrorCode::diskFull : errno == EROFS ? ErrorCode::readOnly : ErrorCode::cannotWrite;
      return fail(code, to, std::strerror(errno));
    }
  } else {
    ::unlink(from.c_str());
  }
  const auto slash = to.rfind('/');
  const std::string folder = slash == std::string::npos ? "." : slash == 0 ? "/" : to.substr(0, slash);
  const int directory = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (directory >= 0) {
    ::fsync(directory);
    ::close(directory);
  }
  return {};
}

Result<void> Book::Body::prepareStatements() {
  const auto prepare = [&](Statement& statement, const char* sql) -> Result<void> {
    auto prepared = database.prepare(sql);
    if (!prepared) return tl::unexpected<Error>(prepared.error());
    statement = std::move(*prepared);
    return {};
  };
  if (auto ok = prepare(insertFact, "INSERT INTO facts(seat, ord, line, chain) VALUES(?1, ?2, ?3, ?4)"); !ok) return ok;
  if (auto ok = prepare(readLine, "SELECT line FROM facts WHERE seat = ?1"); !ok) return ok;
  if (auto ok = prepare(readRange, "SELECT seat, line FROM facts WHERE seat >= ?1 AND seat < ?2"); !ok) return ok;
  return prepare(readTouches, "SELECT slot, n, count, ord FROM touches WHERE subject = ?1");
}

Result<void> Book::Body::loadDevices() {
  devices.clear();
  byDevice.clear();
  auto list = database.prepare(
      "SELECT d.slot, d.device, d.public_key, (SELECT max(s.last) FROM segments s WHERE s.slot = d.slot), (SELECT f.n FROM folded f WHERE "
      "f.slot = "
      "d.slot), EXISTS(SELECT 1 FROM forks k WHERE k.slot = d.slot) FROM devices d ORDER BY d.slot");
  if (!list) return tl::unexpected<Error>(list.error());
  auto last = database.prepare("SELECT seat, ord, chain FROM facts WHERE seat > ?1 AND seat < ?2 ORDER BY seat DESC LIMIT 1");
  if (!last) return tl::unexpected<Error>(last.error());
  while (true) {
    const auto row = list->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
    DeviceEntry entry;
    entry.slot = list->integer(0);
    entry.device = std::string(list->bytes(1));
    PublicKey key{};
    if (fromBytes(list->bytes(2), key)) entry.key = key;
    entry.sealedTo = static_cast<std::uint64_t>(list->integer(3));
    entry.foldedTo = static_cast<std::uint64_t>(list->integer(4));
    entry.isForked = list->integer(5) != 0;
    entry.chain = chainStart(entry.device);
    last->bind(1, seatOf(entry.slot, 0)).bind(2, seatOf(entry.slot + 1, 0));
    const auto found = last->step();
    if (!found) return tl::unexpected<Error>(found.error());
    if (*found) {
      entry.last = static_cast<std::uint64_t>(last->integer(0) - seatOf(entry.slot, 0));
      entry.lastOrder = last->integer(1);
      if (!fromBytes(last->bytes(2), entry.chain)) entry.chain = {};  // damaged; verify says which
      highestOrder = std::max(highestOrder, entry.lastOrder);
    }
    last->reset();
    byDevice.emplace(entry.device, devices.size());
    devices.push_back(std::move(entry));
  }
  return {};
}

Result<DeviceEntry*> Book::Body::deviceFor(const std::string& device) {
  if (const auto known = byDevice.find(device); known != byDevice.end()) return &devices[known->second];
  DeviceEntry entry;
  for (const DeviceEntry& each : devices) entry.slot = std::max(entry.slot, each.slot + 1);
  entry.device = device;
  entry.chain = chainStart(device);
  auto insert = database.prepare("INSERT INTO devices(slot, device) VALUES(?1, ?2)");
  if (!insert) return tl::unexpected<Error>(insert.error());
  insert->bind(1, entry.slot).bind(2, entry.device);
  if (auto done = insert->run(); !done) return tl::unexpected<Error>(done.error());
  byDevice.emplace(device, devices.size());
  devices.push_back(std::move(entry));
  return &devices.back();
}

Result<void> Book::Body::storeLine(const DeviceEntry& device, std::uint64_t n, std::int64_t order, std::string_view line,
                                   const Chain& chain) {
  insertFact.bind(1, seatOf(device.slot, n)).bind(2, order).bindBlob(3, line).bindBlob(4, bytesOf(chain));
  return insertFact.run();
}

bool Book::Body::isBefore(const Place& a, const Place& b) const {
  if (a.order != b.order) return a.order < b.order;
  if (a.device != b.device) return devices[a.device].device < devices[b.device].device;
  return a.n < b.n;
}

Result<void> Book::Body::walk(const std::vector<std::uint64_t>& from,
                              const std::function<Result<void>(const Place&, std::string_view, std::string_view)>& visit) {
  // One cursor a device, each in its own order; the smallest goes first.
  std::vector<Statement> cursors(devices.size());
  std::vector<Place> heads;
  const auto advance = [&](std::size_t device) -> Result<void> {
    const auto row = cursors[device].step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (*row)
      heads.push_back(
          {cursors[device].integer(1), device, static_cast<std::uint64_t>(cursors[device].integer(0) - seatOf(devices[device].slot, 0))});
    return {};
  };
  for (std::size_t i = 0; i < devices.size(); ++i) {
    auto cursor = database.prepare("SELECT seat, ord, line, chain FROM facts WHERE seat > ?1 AND seat < ?2 ORDER BY seat");
    if (!cursor) return tl::unexpected<Error>(cursor.error());
    cursors[i] = std::move(*cursor);
    cursors[i].bind(1, seatOf(devices[i].slot, i < from.size() ? from[i] : 0)).bind(2, seatOf(devices[i].slot + 1, 0));
    if (auto ok = advance(i); !ok) return ok;
  }
  while (!heads.empty()) {
    const auto least = std::min_element(heads.begin(), heads.end(), [&](const Place& a, const Place& b) { return isBefore(a, b); });
    const Place place = *least;
    heads.erase(least);
    if (auto ok = visit(place, cursors[place.device].bytes(2), cursors[place.device].bytes(3)); !ok) return ok;
    if (auto ok = advance(place.device); !ok) return ok;
  }
  return {};
}

}  // namespace snugline::book
