// SPDX-License-Identifier: Apache-2.0
// What an athlete's phone wrote, into the log with the segments that prove it; and words signed by this device for a phone to believe.
#include <algorithm>

#include <sodium.h>

#include "core/book/book_body.h"

namespace snugline::book {

// Where the chain of the log and the phone's go together; what does not fit is left out and stays an unsigned tail.
Result<void> Book::Body::storePhoneSegments(DeviceEntry& device, const std::vector<PhoneSegment>& segments) {
  auto chains = database.prepare("SELECT chain FROM facts WHERE seat = ?1");
  if (!chains) return tl::unexpected<Error>(chains.error());
  auto insert = database.prepare("INSERT INTO segments(slot, first, last, chain, signature) VALUES(?1, ?2, ?3, ?4, ?5)");
  if (!insert) return tl::unexpected<Error>(insert.error());
  auto transaction = Transaction::begin(database);
  if (!transaction) return tl::unexpected<Error>(transaction.error());
  std::uint64_t sealedTo = device.sealedTo;
  for (const PhoneSegment& each : segments) {
    if (each.first != sealedTo + 1 || each.last > device.last) continue;
    chains->bind(1, seatOf(device.slot, each.last));
    const auto row = chains->step();
    if (!row) return tl::unexpected<Error>(row.error());
    Chain chain{};
    const bool isSame = *row && fromBytes(chains->bytes(0), chain) && chain == each.chain;
    chains->reset();
    if (!isSame) break;
    insert->bind(1, device.slot).bind(2, static_cast<std::int64_t>(each.first)).bind(3, static_cast<std::int64_t>(each.last));
    insert->bindBlob(4, bytesOf(each.chain)).bindBlob(5, bytesOf(each.signature));
    if (auto done = insert->run(); !done) return done;
    sealedTo = each.last;
  }
  if (auto done = transaction->commit(); !done) return done;
  device.sealedTo = sealedTo;
  return {};
}

Result<Appended> Book::receivePhone(const PhoneReports& reports) {
  return guarded(m_body->path, [&]() -> Result<Appended> {
    Body& body = *m_body;
    if (body.access == Access::readOnly) return fail(ErrorCode::readOnly, body.path);
    const auto known = body.byDevice.find(reports.device);
    const DeviceEntry* held = known == body.byDevice.end() ? nullptr : &body.devices[known->second];
    for (std::uint64_t n = 1; held != nullptr && n <= std::min<std::uint64_t>(held->last, reports.lines.size()); ++n) {
      body.readLine.bind(1, seatOf(held->slot, n));
      const auto row = body.readLine.step();
      if (!row) return tl::unexpected<Error>(row.error());
      const bool isSame = *row && body.readLine.bytes(0) == reports.lines[n - 1];
      body.readLine.reset();
      if (!isSame) return fail(ErrorCode::notAllowed, reports.device + ':' + std::to_string(n), std::string(rule::kPhoneTwice));
    }
    auto appended = receive(reports.lines);
    if (!appended) return appended;
    const auto place = body.byDevice.find(reports.device);
    if (place == body.byDevice.end()) return appended;  // nothing was said yet
    DeviceEntry& device = body.devices[place->second];
    device.key = reports.publicKey;  // its joining was noted before its first fact was here
    if (auto done = body.storePhoneSegments(device, reports.segments); !done) return tl::unexpected<Error>(done.error());
    return appended;
  });
}

std::int64_t Book::highestOrder() const { return m_body->highestOrder; }

Result<SignedWords> Book::signWords(std::string_view words) {
  return guarded(m_body->path, [&]() -> Result<SignedWords> {
    Body& body = *m_body;
    if (body.access == Access::readOnly) return fail(ErrorCode::readOnly, body.path);
    if (auto ready = body.prepareWriting(); !ready) return tl::unexpected<Error>(ready.error());
    SignedWords made;
    made.publicKey = body.own->key.publicKey;
    crypto_sign_detached(made.signature.data(), nullptr, reinterpret_cast<const unsigned char*>(words.data()), words.size(),
                         body.own->key.secret.data());
    return made;
  });
}

}  // namespace snugline::book
