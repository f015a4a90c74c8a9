// SPDX-License-Identifier: Apache-2.0
// Writing facts down: who this device is, one transaction, one sync, then the views.
#include <algorithm>

#include "core/book/book_body.h"
#include "core/book/draft_names.h"
#include "core/book/rights.h"

namespace snugline::book {

namespace {

constexpr std::size_t kTailFactsMost = 200'000;  // a bulk append keeps this much of the index in memory before it stores it

}  // namespace

Result<std::optional<Book::Body::Own>> Book::Body::knownIdentity(std::string* because) {
  if (incarnation.empty()) {
    *because = "restored";
    return std::optional<Own>();
  }
  auto found = keys.find(incarnation);
  if (!found) return tl::unexpected<Error>(found.error());
  *because = "copied";
  if (!*found || (*found)->place != placeMark(path)) return std::optional<Own>();
  Own known;
  known.identity = **found;
  auto key = signingKey(known.identity.seed);
  if (!key) return tl::unexpected<Error>(key.error());
  known.key = *key;
  const std::string device = deviceOf(known.key.publicKey);
  const auto entry = byDevice.find(device);
  *because = "restored";
  if (mustMint || entry == byDevice.end() || devices[entry->second].last < known.identity.notedN) return std::optional<Own>();
  known.index = entry->second;
  return std::optional<Own>(std::move(known));
}

Result<void> Book::Body::openWal() {
  // The first write after the WAL was emptied syncs its header too; let that not be an answer's. A row that stays as it is would not be
  // written, so it counts.
  auto touch = database.prepare("UPDATE meta SET value = CAST(value AS INTEGER) + 1 WHERE key = 'wal'");
  if (!touch) return tl::unexpected<Error>(touch.error());
  return touch->run();
}

Result<void> Book::Body::mint(const std::string& because) {
  auto seed = keys.freshSeed();
  if (!seed) return tl::unexpected<Error>(seed.error());
  auto mark = keys.freshMark();
  if (!mark) return tl::unexpected<Error>(mark.error());
  auto key = signingKey(*seed);
  if (!key) return tl::unexpected<Error>(key.error());
  Own minted{0, *key, ports::Identity{*seed, 0, placeMark(path)}};
  // Kept before the Book says it: a key without a Book does no harm, a Book without its key must mint again.
  if (auto kept = keys.keep(*mark, minted.identity); !kept) return kept;

  const auto write = [&]() -> Result<Fact> {
    auto transaction = Transaction::begin(database);
    if (!transaction) return tl::unexpected<Error>(transaction.error());
    auto set = database.prepare("INSERT OR REPLACE INTO meta(key, value) VALUES('incarnation', ?1)");
    if (!set) return tl::unexpected<Error>(set.error());
    set->bind(1, std::string_view(*mark));
    if (auto done = set->run(); !done) return tl::unexpected<Error>(done.error());
    auto entry = deviceFor(deviceOf(key->publicKey));
    if (!entry) return tl::unexpected<Error>(entry.error());
    Fact fact;
    fact.device = (*entry)->device;
    fact.n = (*entry)->last + 1;
    fact.order = highestOrder + 1;
    fact.at = clock.now();
    fact.who = who;
    fact.about = folded.views.team ? folded.views.team->id : fact.id();
    fact.body = DeviceAdmitted{fact.device, hexOf(key->publicKey), because};
    const auto line = encode(fact);
    if (!line) return tl::unexpected<Error>(line.error());
    const Chain chain = chainStep((*entry)->chain, *line);
    if (auto done = storeLine(**entry, fact.n, fact.order, *line, chain); !done) return tl::unexpected<Error>(done.error());
    auto keyed = database.prepare("UPDATE devices SET public_key = ?1 WHERE slot = ?2");
    if (!keyed) return tl::unexpected<Error>(keyed.error());
    keyed->bindBlob(1, bytesOf(key->publicKey)).bind(2, (*entry)->slot);
    if (auto done = keyed->run(); !done) return tl::unexpected<Error>(done.error());
    if (auto done = transaction->commit(); !done) return tl::unexpected<Error>(done.error());
    (*entry)->last = fact.n;
    (*entry)->lastOrder = fact.order;
    (*entry)->chain = chain;
    return fact;
  };
  const std::size_t before = devices.size();
  auto fact = write();
  if (!fact) {
    if (devices.size() > before) {
      byDevice.erase(devices.back().device);
      devices.pop_back();
    }
    return tl::unexpected<Error>(fact.error());
  }
  incarnation = *mark;
  mustMint = false;
  highestOrder = fact->order;
  minted.index = byDevice.at(fact->device);
  own = std::move(minted);
  nameOwnDevice();
  return foldIn(*fact, {fact->order, own->index, fact->n});
}

Result<void> Book::Body::prepareWriting() {
  if (own && !mustMint) return {};
  own.reset();
  std::string because;
  auto known = knownIdentity(&because);
  if (!known) return tl::unexpected<Error>(known.error());
  if (auto opened = openWal(); !opened) return opened;
  if (!*known) return mint(because);
  own = std::move(**known);
  nameOwnDevice();
  return {};
}

void Book::Body::nameOwnDevice() {
  std::string ignored;
  const auto known = own ? Result<std::optional<Own>>(own) : knownIdentity(&ignored);
  folded.views.ownDevice = known && *known ? devices[(*known)->index].device : std::string();
}

Result<std::vector<Fact>> Book::Body::write(std::vector<Timed> drafts) {
  if (access == Access::readOnly) return fail(ErrorCode::readOnly, path);
  if (drafts.empty()) return std::vector<Fact>();
  if (auto ready = prepareWriting(); !ready) return tl::unexpected<Error>(ready.error());

  struct Lined {
    std::string line;
    Chain chain;
  };
  const DeviceEntry before = devices[own->index];
  std::vector<Fact> facts;
  std::vector<Lined> lines;
  std::vector<std::string> ids;
  facts.reserve(drafts.size());
  lines.reserve(drafts.size());
  ids.reserve(drafts.size());
  std::int64_t order = highestOrder;
  Chain chain = before.chain;
  for (Timed& timed : drafts) {
    Fact fact;
    fact.device = before.device;
    fact.n = before.last + facts.size() + 1;
    fact.order = ++order;
    fact.at = timed.at;
    fact.who = *timed.who;
    if (auto named = resolveNames(timed.draft.about, timed.draft.body, ids); !named) return tl::unexpected<Error>(named.error());
    fact.about = timed.draft.about.empty() ? fact.id() : std::move(timed.draft.about);
    fact.body = std::move(timed.draft.body);
    auto line = encode(fact);
    if (!line) return tl::unexpected<Error>(line.error());
    // Folded is what was read back, so that a rebuild can come to nothing else; and nothing unreadable gets into the log.
    auto readBack = decoder.decode(*line, fact.id());
    if (!readBack) return tl::unexpected<Error>(readBack.error());
    chain = chainStep(chain, *line);
    lines.push_back({std::move(*line), chain});
    ids.push_back(fact.id());
    facts.push_back(std::move(*readBack));
  }

  auto transaction = Transaction::begin(database);
  if (!transaction) return tl::unexpected<Error>(transaction.error());
  for (std::size_t i = 0; i < facts.size(); ++i) {
    if (auto done = storeLine(before, facts[i].n, facts[i].order, lines[i].line, lines[i].chain); !done)
      return tl::unexpected<Error>(done.error());
  }
  if (auto done = transaction->commit(); !done) return tl::unexpected<Error>(done.error());

  DeviceEntry& entry = devices[own->index];
  entry.last = facts.back().n;
  entry.lastOrder = facts.back().order;
  entry.chain = chain;
  highestOrder = order;
  for (const Fact& fact : facts) {
    if (auto done = foldIn(fact, {fact.order, own->index, fact.n}); !done) return tl::unexpected<Error>(done.error());
  }
  return facts;
}

Appended Book::Body::appendedOf(const std::vector<Fact>& facts) const {
  Appended answer;
  for (const Fact& fact : facts) {
    answer.ids.push_back(fact.id());
    const Touches all(fact);
    for (const Touch& touch : all) {
      // What was taken back may have been the team's: a closed season, its days.
      const bool isTeam = touch.entity == Entity::team || *touch.id == kTeamSubject;
      const std::string& subject = isTeam && folded.views.team ? folded.views.team->id : *touch.id;
      if (std::find(answer.touched.begin(), answer.touched.end(), subject) == answer.touched.end()) answer.touched.push_back(subject);
    }
  }
  return answer;
}

Result<Appended> Book::append(std::vector<Draft> drafts) {
  return guarded(m_body->path, [&]() -> Result<Appended> {
    Body& body = *m_body;
    std::vector<Body::Timed> timed;
    timed.reserve(drafts.size());
    const Instant now = body.clock.now();
    if (auto ok = mayAppend(views(), body.who, drafts); !ok) return tl::unexpected<Error>(ok.error());
    for (Draft& draft : drafts) timed.push_back({std::move(draft), now, &body.who});
    auto facts = body.write(std::move(timed));
    if (!facts) return tl::unexpected<Error>(facts.error());
    Appended answer = body.appendedOf(*facts);
    // Only for callers that never ask isCheckpointDue; what was appended stands whatever comes of it.
    if (body.own && body.devices[body.own->index].last - body.devices[body.own->index].foldedTo > kFactsBeforeForcedCheckpoint) {
      (void)body.checkpoint();
    }
    return answer;
  });
}

Result<std::vector<std::string>> Book::appendBulk(std::vector<BulkDraft> drafts) {
  return guarded(m_body->path, [&]() -> Result<std::vector<std::string>> {
    std::vector<Body::Timed> timed;
    timed.reserve(drafts.size());
    for (BulkDraft& each : drafts) timed.push_back({std::move(each.draft), each.at, &each.who});
    const auto facts = m_body->write(std::move(timed));
    if (!facts) return tl::unexpected<Error>(facts.error());
    std::vector<std::string> ids;
    ids.reserve(facts->size());
    for (const Fact& fact : *facts) ids.push_back(fact.id());
    if (m_body->tailFacts > kTailFactsMost) {
      if (auto done = m_body->checkpoint(); !done) return tl::unexpected<Error>(done.error());
    }
    return ids;
  });
}

}  // namespace snugline::book
