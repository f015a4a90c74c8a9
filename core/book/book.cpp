// SPDX-License-Identifier: Apache-2.0
#include "core/book/book.h"

#include <sys/stat.h>

#include <algorithm>

#include "core/book/book_body.h"

namespace snugline::book {

namespace {

// Founds the team in a file of its own, so that a Book has its name only once it is whole.
Result<void> found(const std::string& file, const TeamFounded& team, ports::Keys& keys, ports::Clock& clock, const StoreOptions& options) {
  auto seed = keys.freshSeed();
  if (!seed) return tl::unexpected<Error>(seed.error());
  auto mark = keys.freshMark();
  if (!mark) return tl::unexpected<Error>(mark.error());
  auto key = signingKey(*seed);
  if (!key) return tl::unexpected<Error>(key.error());

  Fact fact;
  fact.device = deviceOf(key->publicKey);
  fact.n = 1;
  fact.order = 1;
  fact.at = clock.now();
  fact.about = fact.id();
  TeamFounded founded = team;
  founded.publicKey = hexOf(key->publicKey);
  fact.body = std::move(founded);
  const auto line = encode(fact);
  if (!line) return tl::unexpected<Error>(line.error());
  const Chain chain = chainStep(chainStart(fact.device), *line);

  auto database = createStore(file, options);
  if (!database) return tl::unexpected<Error>(database.error());
  auto transaction = Transaction::begin(*database);
  if (!transaction) return tl::unexpected<Error>(transaction.error());
  auto meta = database->prepare("INSERT INTO meta(key, value) VALUES('incarnation', ?1)");
  if (!meta) return tl::unexpected<Error>(meta.error());
  meta->bind(1, std::string_view(*mark));
  if (auto done = meta->run(); !done) return done;
  auto device = database->prepare("INSERT INTO devices(slot, device, public_key) VALUES(0, ?1, ?2)");
  if (!device) return tl::unexpected<Error>(device.error());
  device->bind(1, std::string_view(fact.device)).bindBlob(2, bytesOf(key->publicKey));
  if (auto done = device->run(); !done) return done;
  auto insert = database->prepare("INSERT INTO facts(seat, ord, line, chain) VALUES(?1, 1, ?2, ?3)");
  if (!insert) return tl::unexpected<Error>(insert.error());
  insert->bind(1, seatOf(0, 1)).bindBlob(2, *line).bindBlob(3, bytesOf(chain));
  if (auto done = insert->run(); !done) return done;
  if (auto done = transaction->commit(); !done) return done;
  if (auto done = database->emptyWal(); !done) return done;
  if (auto kept = keys.keep(*mark, ports::Identity{*seed, 1, placeMark(file)}); !kept) return kept;
  return {};
}

}  // namespace

Book::Book(std::unique_ptr<Body> body) : m_body(std::move(body)) {}

Book::~Book() {
  if (!m_body) return;
  m_body->isClosing = true;
  // Nothing can be told to anybody any more; what was appended is in the log, and the next opening folds the rest.
  (void)guarded(m_body->path, [&] { return m_body->checkpoint(); });
}

Result<std::unique_ptr<Book>> Book::create(const std::string& path, const TeamFounded& team, ports::Keys& keys, ports::Clock& clock,
                                           const StoreOptions& options) {
  return guarded(path, [&]() -> Result<std::unique_ptr<Book>> {
    struct stat status {};
    if (::lstat(path.c_str(), &status) == 0) return fail(ErrorCode::fileExists, path);
    const std::string file = temporaryName(path);
    removeStore(file);
    Result<void> done = found(file, team, keys, clock, options);
    if (done) done = nameFile(file, path);
    if (!done) {
      removeStore(file);
      Error error = done.error();
      if (error.place == file) error.place = path;
      return tl::unexpected<Error>(std::move(error));
    }
    return open(path, Access::readWrite, keys, clock, options);
  });
}

Result<std::unique_ptr<Book>> Book::open(const std::string& path, Access access, ports::Keys& keys, ports::Clock& clock,
                                         const StoreOptions& options) {
  return guarded(path, [&]() -> Result<std::unique_ptr<Book>> {
    if (auto ok = examineFile(path); !ok) return tl::unexpected<Error>(ok.error());
    auto database = openStore(path, access, options);
    if (!database) return tl::unexpected<Error>(database.error());
    auto body = std::make_unique<Body>(keys, clock);
    body->path = path;
    body->access = access;
    body->options = options;
    body->photos = PhotoStore(PhotoStore::beside(path).folder(), options.photoDisk);
    body->database = std::move(*database);
    auto version = body->database.prepare("PRAGMA user_version");
    if (!version) return tl::unexpected<Error>(version.error());
    if (auto row = version->step(); !row) return tl::unexpected<Error>(row.error());
    const auto format = version->integer(0);
    version->reset();
    if (format > kBookFormat) return fail(ErrorCode::newerBook, path, std::to_string(format) + ", " + std::to_string(kBookFormat));
    if (access == Access::readWrite) {
      if (auto done = migrate(body->database, static_cast<int>(format)); !done) return tl::unexpected<Error>(done.error());
    }
    auto mark = body->database.prepare("SELECT value FROM meta WHERE key = 'incarnation'");
    if (!mark) return tl::unexpected<Error>(mark.error());
    const auto row = mark->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (*row) body->incarnation = std::string(mark->bytes(0));
    mark->reset();
    if (auto done = body->prepareStatements(); !done) return tl::unexpected<Error>(done.error());
    if (auto done = body->loadDevices(); !done) return tl::unexpected<Error>(done.error());
    if (auto done = body->loadViews(); !done) return tl::unexpected<Error>(done.error());
    body->nameOwnDevice();
    if (access == Access::readWrite) body->dropTakenBackPhotos();
    return std::unique_ptr<Book>(new Book(std::move(body)));
  });
}

void Book::setPerson(const std::string& who) { m_body->who = who; }
const season::Views& Book::views() const { return m_body->folded.views; }
const PhotoStore& Book::photos() const { return m_body->photos; }

const season::UnitRecord* Book::unitByTag(const std::string& tagKey) const {
  const auto it = m_body->folded.unitsByTag.find(tagKey);
  if (it == m_body->folded.unitsByTag.end() || it->second.empty()) return nullptr;
  return m_body->folded.views.unit(*it->second.begin());
}

Result<std::vector<Fact>> Book::history(const std::string& entity) {
  return guarded(m_body->path, [&]() -> Result<std::vector<Fact>> {
    const auto& team = m_body->folded.views.team;
    return m_body->factsOf(team && team->id == entity ? std::string(kTeamSubject) : entity);
  });
}

Result<Fact> Book::fact(const std::string& id) {
  return guarded(m_body->path, [&]() -> Result<Fact> {
    auto found = m_body->factNamed(id);
    if (!found) return tl::unexpected<Error>(found.error());
    if (!*found) return fail(ErrorCode::notFound, "fact " + id);
    return std::move(**found);
  });
}

Result<InfoAnswer> Book::info() {
  return guarded(m_body->path, [&]() -> Result<InfoAnswer> {
    InfoAnswer answer;
    answer.format = kBookFormat;
    for (const DeviceEntry& device : m_body->devices) {
      answer.facts += device.last;
      answer.devices.push_back({device.device, device.last, device.sealedTo, device.device == m_body->folded.views.ownDevice});
    }
    if (const auto& team = m_body->folded.views.team) {
      answer.team = team->name;
      answer.season = team->season;
    }
    return answer;
  });
}

Result<std::string> Book::dumpViews() {
  return guarded(m_body->path, [&]() -> Result<std::string> {
    if (auto done = m_body->checkpoint(); !done) return tl::unexpected<Error>(done.error());
    std::string dump;
    const auto add = [&](std::string_view table, std::string_view key, std::string_view value) {
      dump.append(table).append(1, '\t').append(key).append(1, '\t').append(value).append(1, '\n');
    };
    for (const auto& [entity, table] : kViewTables) {
      // A Book opened for reading may be ahead of its rows.
      if (m_body->isAnythingWaiting()) {
        eachRow(m_body->folded, entity, [&, name = table](const std::string& key, std::string&& row) { add(name, key, row); });
        continue;
      }
      auto rows = m_body->database.prepare(std::string("SELECT key, value FROM ") + table + " ORDER BY key");
      if (!rows) return tl::unexpected<Error>(rows.error());
      while (true) {
        const auto row = rows->step();
        if (!row) return tl::unexpected<Error>(row.error());
        if (!*row) break;
        add(table, rows->bytes(0), rows->bytes(1));
      }
    }
    return dump;
  });
}

}  // namespace snugline::book
