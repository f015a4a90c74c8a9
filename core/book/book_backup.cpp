// SPDX-License-Identifier: Apache-2.0
// A Book into one file and back. What is restored is proved first, and whoever writes into it next is a new device.
#include <sys/stat.h>

#include <algorithm>

#include "core/book/backup_file.h"
#include "core/book/book_body.h"

namespace snugline::book {

namespace {

constexpr std::uint64_t kFactsPerTransaction = 100'000;

struct Piece {
  std::size_t device = 0;
  std::uint64_t first = 0, last = 0;
  bool isSigned = false;
  Signature signature{};
};

// Restored facts go in as they stand; nothing is folded here.
struct Restorer {
  Database& database;
  FactDecoder decoder;
  Statement device, fact, segment;
  std::unordered_map<std::string, std::int64_t> slots;
  std::unordered_map<std::string, std::int64_t> orders;
  std::uint64_t facts = 0, inTransaction = 0;

  Result<void> prepare() {
    const auto make = [&](Statement& statement, const char* sql) -> Result<void> {
      auto prepared = database.prepare(sql);
      if (!prepared) return tl::unexpected<Error>(prepared.error());
      statement = std::move(*prepared);
      return {};
    };
    if (auto ok = make(device, "INSERT INTO devices(slot, device, public_key) VALUES(?1, ?2, ?3)"); !ok) return ok;
    if (auto ok = make(fact, "INSERT INTO facts(seat, ord, line, chain) VALUES(?1, ?2, ?3, ?4)"); !ok) return ok;
    return make(segment, "INSERT INTO segments(slot, first, last, chain, signature) VALUES(?1, ?2, ?3, ?4, ?5)");
  }

  Result<std::int64_t> slotOf(const BackupSegment& from) {
    if (const auto known = slots.find(from.device); known != slots.end()) return known->second;
    const auto slot = static_cast<std::int64_t>(slots.size());
    device.bind(1, slot).bind(2, std::string_view(from.device));
    if (deviceOf(from.key) == from.device) {
      device.bindBlob(3, bytesOf(from.key));
    } else {
      device.bindNothing(3);
    }
    if (auto done = device.run(); !done) return tl::unexpected<Error>(done.error());
    slots.emplace(from.device, slot);
    return slot;
  }

  Result<void> take(const BackupSegment& from, Chain& chain) {
    const auto slot = slotOf(from);
    if (!slot) return tl::unexpected<Error>(slot.error());
    std::string_view rest = from.lines;
    std::uint64_t n = from.first;
    for (; !rest.empty(); ++n) {
      const std::size_t end = rest.find('\n');
      const std::string_view line = rest.substr(0, end);
      rest.remove_prefix(end + 1);
      const std::string name = from.device + ':' + std::to_string(n);
      const auto read = decoder.decode(line, name);
      if (!read) return tl::unexpected<Error>(read.error());
      std::int64_t& order = orders[from.device];
      if (read->device != from.device || read->n != n || read->order <= order)
        return fail(ErrorCode::inconsistent, name, "device, n or order");
      order = read->order;
      chain = chainStep(chain, line);
      fact.bind(1, seatOf(*slot, n)).bind(2, read->order).bindBlob(3, line).bindBlob(4, bytesOf(chain));
      if (auto done = fact.run(); !done) return done;
      ++facts;
      ++inTransaction;
    }
    if (!from.isSigned) return {};
    segment.bind(1, *slot).bind(2, static_cast<std::int64_t>(from.first)).bind(3, static_cast<std::int64_t>(from.last));
    segment.bindBlob(4, bytesOf(from.chain)).bindBlob(5, bytesOf(from.signature));
    return segment.run();
  }
};

Result<std::uint64_t> restoreLog(const std::string& backupPath, Database& database) {
  Restorer restorer{database, {}, {}, {}, {}, {}, {}};
  if (auto ok = restorer.prepare(); !ok) return tl::unexpected<Error>(ok.error());
  std::unordered_map<std::string, Chain> chains;
  if (auto begun = database.execute("BEGIN IMMEDIATE"); !begun) return tl::unexpected<Error>(begun.error());
  const auto done = readBackup(backupPath, [&](const BackupSegment& segment) -> Result<void> {
    const auto chain = chains.try_emplace(segment.device, chainStart(segment.device)).first;
    if (auto taken = restorer.take(segment, chain->second); !taken) return taken;
    if (restorer.inTransaction < kFactsPerTransaction) return {};
    restorer.inTransaction = 0;
    return database.execute("COMMIT; PRAGMA wal_checkpoint(TRUNCATE); BEGIN IMMEDIATE");
  });
  if (!done) return tl::unexpected<Error>(done.error());
  if (auto committed = database.execute("COMMIT"); !committed) return tl::unexpected<Error>(committed.error());
  return restorer.facts;
}

}  // namespace

Result<CopyAnswer> Book::backup(const std::string& path) {
  return guarded(path, [&]() -> Result<CopyAnswer> {
    Body& body = *m_body;
    if (auto done = body.checkpoint(); !done) return tl::unexpected<Error>(done.error());
    std::vector<std::size_t> order(body.devices.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return body.devices[a].device < body.devices[b].device; });
    std::vector<Piece> pieces;
    for (const std::size_t i : order) {
      const auto segments = body.segmentsOf(body.devices[i]);
      if (!segments) return tl::unexpected<Error>(segments.error());
      std::uint64_t to = 0;
      for (const auto& segment : *segments) {
        if (segment.first != to + 1) break;
        pieces.push_back({i, segment.first, segment.last, true, segment.signature});
        to = segment.last;
      }
      for (; to < body.devices[i].last; to = pieces.back().last) {
        pieces.push_back({i, to + 1, std::min(body.devices[i].last, to + kSegmentFacts), false, {}});
      }
    }
    auto writer = BackupWriter::create(path, static_cast<std::uint32_t>(pieces.size()));
    if (!writer) return tl::unexpected<Error>(writer.error());
    auto rows = body.database.prepare("SELECT line, chain FROM facts WHERE seat >= ?1 AND seat <= ?2 ORDER BY seat");
    if (!rows) return tl::unexpected<Error>(rows.error());
    CopyAnswer answer;
    std::unordered_map<std::size_t, Chain> chains;
    for (const Piece& piece : pieces) {
      const DeviceEntry& device = body.devices[piece.device];
      BackupSegment segment;
      segment.device = device.device;
      if (device.key) segment.key = *device.key;
      segment.first = piece.first;
      segment.last = piece.last;
      segment.isSigned = piece.isSigned;
      segment.signature = piece.signature;
      Chain& chain = chains.try_emplace(piece.device, chainStart(device.device)).first->second;
      rows->bind(1, seatOf(device.slot, piece.first)).bind(2, seatOf(device.slot, piece.last));
      std::uint64_t n = piece.first;
      while (true) {
        const auto row = rows->step();
        if (!row) return tl::unexpected<Error>(row.error());
        if (!*row) break;
        chain = chainStep(chain, rows->bytes(0));
        // A damaged log is not copied as if it were whole.
        if (bytesOf(chain) != rows->bytes(1)) return fail(ErrorCode::brokenChain, device.device + ':' + std::to_string(n));
        segment.lines.append(rows->bytes(0)).append(1, '\n');
        ++n;
      }
      rows->reset();
      if (n != piece.last + 1) return fail(ErrorCode::brokenChain, device.device + ':' + std::to_string(n));
      answer.facts += piece.last - piece.first + 1;
      segment.chain = chain;
      if (auto done = writer->add(segment); !done) return tl::unexpected<Error>(done.error());
    }
    const PhotoStore photos(PhotoStore::beside(path).folder(), body.options.photoDisk);
    std::vector<std::string> made;
    auto done = copyPhotos(body.folded.views, body.photos, photos, answer, made);
    if (done) done = writer->finish();
    if (!done) {
      takeAway(photos, made);
      return tl::unexpected<Error>(done.error());
    }
    return answer;
  });
}

Result<CopyAnswer> Book::restore(const std::string& backupPath, const std::string& bookPath, ports::Keys& keys, ports::Clock& clock) {
  return guarded(bookPath, [&]() -> Result<CopyAnswer> {
    struct stat status {};
    if (::lstat(bookPath.c_str(), &status) == 0) return fail(ErrorCode::fileExists, bookPath);
    // Proved whole before a file is made.
    if (auto proved = readBackup(backupPath, [](const BackupSegment&) { return Result<void>(); }); !proved) {
      return tl::unexpected<Error>(proved.error());
    }
    const std::string draft = temporaryName(bookPath);
    removeStore(draft);
    const PhotoStore photos = PhotoStore::beside(bookPath);
    std::vector<std::string> made;
    const auto make = [&]() -> Result<CopyAnswer> {
      CopyAnswer copied;
      {
        auto database = createStore(draft, {});
        if (!database) return tl::unexpected<Error>(database.error());
        const auto facts = restoreLog(backupPath, *database);
        if (!facts) return tl::unexpected<Error>(facts.error());
        copied.facts = *facts;
        if (auto emptied = database->emptyWal(); !emptied) return tl::unexpected<Error>(emptied.error());
      }
      {
        auto book = open(draft, Access::readWrite, keys, clock);
        if (!book) return tl::unexpected<Error>(book.error());
        if (auto stored = (*book)->checkpoint(); !stored) return tl::unexpected<Error>(stored.error());
        const auto brought = copyPhotos((*book)->views(), PhotoStore::beside(backupPath), photos, copied, made);
        if (!brought) return tl::unexpected<Error>(brought.error());
      }
      if (auto named = nameFile(draft, bookPath); !named) return tl::unexpected<Error>(named.error());
      return copied;
    };
    auto answer = make();
    if (!answer) {
      takeAway(photos, made);
      removeStore(draft);
      Error error = answer.error();
      if (error.place == draft) error.place = bookPath;
      return tl::unexpected<Error>(std::move(error));
    }
    return answer;
  });
}

}  // namespace snugline::book
