// SPDX-License-Identifier: Apache-2.0
// Bringing the file up to what is folded: signatures, view rows, the index of touches, cursors, all in one transaction.
#include <algorithm>

#include "core/book/book_body.h"
#include "core/book/fact_json.h"

namespace snugline::book {

bool Book::Body::isAnythingWaiting() const {
  if (tailFacts > 0 || !areViewsWhole) return true;
  return own && devices[own->index].sealedTo < devices[own->index].last;
}

Result<void> Book::Body::seal() {
  if (!own) {
    // Facts left unsigned by a kill are signed only by the identity that wrote them, and only if it is still rightly ours.
    std::string ignored;
    auto known = knownIdentity(&ignored);
    if (!known || !*known) return {};
    own = std::move(**known);
  }
  DeviceEntry& device = devices[own->index];
  if (device.sealedTo >= device.last || mustMint) return {};
  auto chains = database.prepare("SELECT chain FROM facts WHERE seat = ?1");
  if (!chains) return tl::unexpected<Error>(chains.error());
  auto insert = database.prepare("INSERT INTO segments(slot, first, last, chain, signature) VALUES(?1, ?2, ?3, ?4, ?5)");
  if (!insert) return tl::unexpected<Error>(insert.error());
  while (device.sealedTo < device.last) {
    const std::uint64_t first = device.sealedTo + 1;
    const std::uint64_t last = std::min(device.last, device.sealedTo + kSegmentFacts);
    chains->bind(1, seatOf(device.slot, last));
    const auto row = chains->step();
    if (!row) return tl::unexpected<Error>(row.error());
    Chain chain{};
    if (!*row || !fromBytes(chains->bytes(0), chain)) return fail(ErrorCode::damagedBook, path, device.device + ':' + std::to_string(last));
    chains->reset();
    const Signature signature = signSegment(own->key, device.device, first, last, chain);
    insert->bind(1, device.slot).bind(2, static_cast<std::int64_t>(first)).bind(3, static_cast<std::int64_t>(last));
    insert->bindBlob(4, bytesOf(chain)).bindBlob(5, bytesOf(signature));
    if (auto done = insert->run(); !done) return done;
    device.sealedTo = last;
  }
  return {};
}

Result<void> Book::Body::storeViews() {
  if (!isFoldNoted) {
    auto sign = database.prepare("INSERT OR REPLACE INTO meta(key, value) VALUES('folds', ?1)");
    if (!sign) return tl::unexpected<Error>(sign.error());
    sign->bind(1, std::string_view(foldSign()));
    if (auto done = sign->run(); !done) return done;
  }
  auto heard = database.prepare("INSERT OR REPLACE INTO meta(key, value) VALUES('heard', ?1)");
  if (!heard) return tl::unexpected<Error>(heard.error());
  const std::string devicesHeard = devicesText(folded.views);
  heard->bind(1, std::string_view(devicesHeard));
  if (auto done = heard->run(); !done) return done;
  for (const auto& [entity, table] : kViewTables) {
    auto& changed = folded.changed[static_cast<std::size_t>(entity)];
    if (areViewsWhole && changed.empty()) continue;
    auto put = database.prepare(std::string("INSERT OR REPLACE INTO ") + table + "(key, value) VALUES(?1, ?2)");
    if (!put) return tl::unexpected<Error>(put.error());
    if (!areViewsWhole || entity == Entity::team) {
      if (auto done = database.execute((std::string("DELETE FROM ") + table).c_str()); !done) return done;
      Result<void> failed;
      eachRow(folded, entity, [&](const std::string& key, std::string&& row) {
        if (!failed) return;
        put->bind(1, std::string_view(key)).bind(2, std::string_view(row));
        failed = put->run();
      });
      if (!failed) return failed;
      continue;
    }
    auto drop = database.prepare(std::string("DELETE FROM ") + table + " WHERE key = ?1");
    if (!drop) return tl::unexpected<Error>(drop.error());
    std::vector<std::string> keysToWrite(changed.begin(), changed.end());
    std::sort(keysToWrite.begin(), keysToWrite.end());
    for (const std::string& key : keysToWrite) {
      const auto row = rowAt(folded, entity, key);
      if (row) {
        put->bind(1, std::string_view(key)).bind(2, std::string_view(*row));
        if (auto done = put->run(); !done) return done;
      } else {
        drop->bind(1, std::string_view(key));
        if (auto done = drop->run(); !done) return done;
      }
    }
  }
  return {};
}

Result<void> Book::Body::storeTail() {
  if (!areViewsWhole) {
    if (auto done = database.execute("DELETE FROM touches; DELETE FROM corrections; DELETE FROM folded"); !done) return done;
  }
  auto put = database.prepare("INSERT OR REPLACE INTO touches(subject, slot, n, count, ord) VALUES(?1, ?2, ?3, ?4, ?5)");
  if (!put) return tl::unexpected<Error>(put.error());
  std::vector<const std::string*> subjects;
  subjects.reserve(tail.size());
  for (const auto& entry : tail) subjects.push_back(&entry.first);
  std::sort(subjects.begin(), subjects.end(), [](const auto* a, const auto* b) { return *a < *b; });
  for (const std::string* subject : subjects) {
    std::vector<Run>& runs = tail.at(*subject);
    joinRuns(runs);
    for (const Run& run : runs) {
      put->bind(1, std::string_view(*subject)).bind(2, devices[run.device].slot).bind(3, static_cast<std::int64_t>(run.first));
      put->bind(4, static_cast<std::int64_t>(run.count)).bind(5, run.order);
      if (auto done = put->run(); !done) return done;
    }
  }
  auto correct = database.prepare("INSERT OR IGNORE INTO corrections(fact, by) VALUES(?1, ?2)");
  if (!correct) return tl::unexpected<Error>(correct.error());
  for (const auto& [fact, by] : tailCorrections) {
    correct->bind(1, std::string_view(fact)).bind(2, std::string_view(by));
    if (auto done = correct->run(); !done) return done;
  }
  auto cursor = database.prepare("INSERT OR REPLACE INTO folded(slot, n) VALUES(?1, ?2)");
  if (!cursor) return tl::unexpected<Error>(cursor.error());
  auto key = database.prepare("UPDATE devices SET public_key = ?1 WHERE slot = ?2 AND public_key IS NULL");
  if (!key) return tl::unexpected<Error>(key.error());
  for (const DeviceEntry& device : devices) {
    if (device.foldedTo != device.last) {
      cursor->bind(1, device.slot).bind(2, static_cast<std::int64_t>(device.last));
      if (auto done = cursor->run(); !done) return done;
    }
    if (!device.key) continue;
    key->bindBlob(1, bytesOf(*device.key)).bind(2, device.slot);
    if (auto done = key->run(); !done) return done;
  }
  return {};
}

Result<void> Book::Body::checkpoint() {
  if (access == Access::readOnly || !isAnythingWaiting()) return {};
  std::vector<std::uint64_t> sealedBefore;
  for (const DeviceEntry& device : devices) sealedBefore.push_back(device.sealedTo);
  const auto store = [&]() -> Result<void> {
    auto transaction = Transaction::begin(database);
    if (!transaction) return tl::unexpected<Error>(transaction.error());
    if (auto done = seal(); !done) return done;
    if (auto done = storeViews(); !done) return done;
    if (auto done = storeTail(); !done) return done;
    return transaction->commit();
  };
  if (auto done = store(); !done) {
    for (std::size_t i = 0; i < sealedBefore.size(); ++i) devices[i].sealedTo = sealedBefore[i];
    return done;
  }
  for (auto& changed : folded.changed) changed.clear();
  for (DeviceEntry& device : devices) device.foldedTo = device.last;
  tail.clear();
  tailCorrections.clear();
  tailFacts = 0;
  areViewsWhole = isFoldNoted = true;
  if (own) {
    own->identity.notedN = devices[own->index].last;
    own->identity.place = placeMark(path);
    if (auto kept = keys.keep(incarnation, own->identity); !kept) return kept;
  }
  if (auto done = database.emptyWal(); !done) return done;
  return isClosing ? Result<void>() : openWal();
}

Result<void> Book::checkpoint() {
  return guarded(m_body->path, [&] { return m_body->checkpoint(); });
}

bool Book::isCheckpointDue() const {
  if (!m_body->own) return false;
  const DeviceEntry& device = m_body->devices[m_body->own->index];
  return device.last - device.foldedTo >= kFactsBeforeCheckpoint;
}

}  // namespace snugline::book
