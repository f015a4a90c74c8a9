// SPDX-License-Identifier: Apache-2.0
// Facts of other devices, late and in any order: stored as they came, then folded as if they had always been there.
#include <algorithm>

#include "core/book/book_body.h"
#include "core/book/phone_exchange.h"

namespace snugline::book {

Result<void> Book::Body::loadPhones() {
  if (phones) return {};
  std::unordered_map<std::string, std::string> read;
  auto joins = database.prepare("SELECT line FROM facts WHERE instr(line, CAST('\"phone-joined\"' AS BLOB)) > 0");
  if (!joins) return tl::unexpected<Error>(joins.error());
  while (true) {
    const auto row = joins->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
    const auto fact = decoder.decode(joins->bytes(0), "fact");
    if (!fact) continue;  // verify names it
    if (const auto* joined = std::get_if<PhoneJoined>(&fact->body)) read.emplace(joined->device, fact->about);
  }
  phones = std::move(read);
  return {};
}

Result<std::vector<Fact>> Book::Body::storeReceived(const std::vector<std::string>& lines) {
  std::vector<Fact> facts;
  auto fork = database.prepare("INSERT OR IGNORE INTO forks(slot, n, line) VALUES(?1, ?2, ?3)");
  if (!fork) return tl::unexpected<Error>(fork.error());
  std::string ignored;
  const auto known = own ? Result<std::optional<Own>>(own) : knownIdentity(&ignored);
  if (!known) return tl::unexpected<Error>(known.error());
  const std::string ours = *known ? devices[(*known)->index].device : std::string();
  bool isOursAhead = false;
  if (auto loaded = loadPhones(); !loaded) return tl::unexpected<Error>(loaded.error());
  // A phone that joins in one of these lines is held to what it may say in all of them.
  auto joinedPhones = *phones;
  std::vector<Fact> read;
  for (const std::string& line : lines) {
    auto fact = decoder.decode(line, "fact");
    if (!fact) return tl::unexpected<Error>(fact.error());
    if (const auto* joined = std::get_if<PhoneJoined>(&fact->body)) joinedPhones.emplace(joined->device, fact->about);
    read.push_back(std::move(*fact));
  }
  const auto isAllowed = [&](const Fact& fact) {
    const auto phone = joinedPhones.find(fact.device);
    return phone == joinedPhones.end() || isItsOwnToSay(fact, phone->second);
  };

  auto transaction = Transaction::begin(database);
  if (!transaction) return tl::unexpected<Error>(transaction.error());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::string& line = lines[i];
    Fact* fact = &read[i];
    auto found = deviceFor(fact->device);
    if (!found) return tl::unexpected<Error>(found.error());
    DeviceEntry& device = **found;
    if (fact->n <= device.last || device.isForked) {
      bool isKnown = false;
      if (fact->n <= device.last) {
        readLine.bind(1, seatOf(device.slot, fact->n));
        const auto row = readLine.step();
        if (!row) return tl::unexpected<Error>(row.error());
        isKnown = *row && readLine.bytes(0) == line;
        readLine.reset();
      }
      if (isKnown) continue;
      if (!isAllowed(*fact)) return fail(ErrorCode::notAllowed, fact->id(), std::string(rule::kPhoneOther));
      // The same number with other words, or what follows such a line: kept apart and shown, never dropped.
      fork->bind(1, device.slot).bind(2, static_cast<std::int64_t>(fact->n)).bindBlob(3, line);
      if (auto done = fork->run(); !done) return tl::unexpected<Error>(done.error());
      device.isForked = true;
      continue;
    }
    if (!isAllowed(*fact)) return fail(ErrorCode::notAllowed, fact->id(), std::string(rule::kPhoneOther));
    if (fact->n != device.last + 1) return fail(ErrorCode::brokenChain, fact->id(), std::to_string(device.last));
    if (fact->order <= device.lastOrder) return fail(ErrorCode::inconsistent, fact->id(), "order");
    device.chain = chainStep(device.chain, line);
    if (auto done = storeLine(device, fact->n, fact->order, line, device.chain); !done) return tl::unexpected<Error>(done.error());
    device.last = fact->n;
    device.lastOrder = fact->order;
    highestOrder = std::max(highestOrder, fact->order);
    isOursAhead = isOursAhead || fact->device == ours;
    facts.push_back(std::move(*fact));
  }
  if (isOursAhead) {
    // Somebody else writes under our name. The mark goes with the facts, so that a kill cannot make us forget it.
    if (auto done = database.execute("DELETE FROM meta WHERE key = 'incarnation'"); !done) return tl::unexpected<Error>(done.error());
  }
  if (auto done = transaction->commit(); !done) return tl::unexpected<Error>(done.error());
  if (isOursAhead) {
    incarnation.clear();
    own.reset();
    mustMint = true;
    nameOwnDevice();
  }
  return facts;
}

Result<Appended> Book::receive(const std::vector<std::string>& lines) {
  return guarded(m_body->path, [&]() -> Result<Appended> {
    Body& body = *m_body;
    if (body.access == Access::readOnly) return fail(ErrorCode::readOnly, body.path);
    const auto devicesBefore = body.devices;
    const auto namesBefore = body.byDevice;
    const auto orderBefore = body.highestOrder;
    const auto facts = body.storeReceived(lines);
    if (!facts) {
      body.devices = devicesBefore;
      body.byDevice = namesBefore;
      body.highestOrder = orderBefore;
      return tl::unexpected<Error>(facts.error());
    }
    Body::Deferred deferred;
    for (const Fact& fact : *facts) {
      const Place place{fact.order, body.byDevice.at(fact.device), fact.n};
      if (auto done = body.foldIn(fact, place, &deferred); !done) return tl::unexpected<Error>(done.error());
    }
    if (auto done = body.foldDeferred(deferred); !done) return tl::unexpected<Error>(done.error());
    return body.appendedOf(*facts);
  });
}

}  // namespace snugline::book
