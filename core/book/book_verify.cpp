// SPDX-License-Identifier: Apache-2.0
// Proving the log: chain, order, signatures, gaps, device by device.
#include <algorithm>

#include "core/book/book_body.h"

namespace snugline::book {

namespace {

constexpr std::uint64_t kProgressEvery = 4096;
constexpr std::uint64_t kMostMissing = 1000;  // of one gap; the count of facts says the rest

void addFault(std::vector<Fault>& faults, const std::string& device, std::uint64_t n, const char* what) {
  const auto same = [&](const Fault& f) { return f.device == device && f.n == n; };
  if (std::none_of(faults.begin(), faults.end(), same)) faults.push_back({device, n, what});
}

void addMissing(std::vector<Fault>& faults, const std::string& device, std::uint64_t from, std::uint64_t to) {
  for (std::uint64_t n = from; n <= to && n < from + kMostMissing; ++n) addFault(faults, device, n, "missing");
}

}  // namespace

Result<std::vector<Book::Body::StoredSegment>> Book::Body::segmentsOf(const DeviceEntry& device) {
  auto rows = database.prepare("SELECT first, last, chain, signature FROM segments WHERE slot = ?1 ORDER BY first");
  if (!rows) return tl::unexpected<Error>(rows.error());
  rows->bind(1, device.slot);
  std::vector<StoredSegment> segments;
  while (true) {
    const auto row = rows->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
    StoredSegment segment;
    segment.first = static_cast<std::uint64_t>(rows->integer(0));
    segment.last = static_cast<std::uint64_t>(rows->integer(1));
    const bool isChain = fromBytes(rows->bytes(2), segment.chain);
    segment.isWhole = fromBytes(rows->bytes(3), segment.signature) && isChain;
    segments.push_back(segment);
  }
  return segments;
}

Result<std::uint64_t> Book::Body::verifyDevice(const DeviceEntry& device, std::vector<Fault>& all,
                                               const std::function<bool(std::uint64_t)>& progress, std::uint64_t doneBefore) {
  std::vector<Fault> faults;
  const auto segments = segmentsOf(device);
  if (!segments) return tl::unexpected<Error>(segments.error());
  const bool isKeyRight = device.key && deviceOf(*device.key) == device.device;
  std::size_t segment = 0;
  std::uint64_t signedTo = 0;
  for (const StoredSegment& each : *segments) {
    if (each.first != signedTo + 1 || each.last < each.first) addFault(faults, device.device, signedTo + 1, "unsigned");
    const bool isHeld =
        each.isWhole && isKeyRight && isSignedBy(*device.key, each.signature, device.device, each.first, each.last, each.chain);
    if (!isHeld) addFault(faults, device.device, each.last, isKeyRight ? "altered" : "unsigned");
    signedTo = std::max(signedTo, each.last);
  }

  auto rows = database.prepare("SELECT seat, ord, line, chain FROM facts WHERE seat > ?1 AND seat < ?2 ORDER BY seat");
  if (!rows) return tl::unexpected<Error>(rows.error());
  rows->bind(1, seatOf(device.slot, 0)).bind(2, seatOf(device.slot + 1, 0));
  std::uint64_t expected = 1, count = 0;
  std::int64_t lastOrder = 0;
  // What the next link may stand on: the stored chain, and after a fault also the one worked out.
  std::vector<Chain> bases{chainStart(device.device)};
  while (true) {
    const auto row = rows->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
    ++count;
    const auto n = static_cast<std::uint64_t>(rows->integer(0) - seatOf(device.slot, 0));
    const std::string_view line = rows->bytes(2);
    Chain stored{};
    const bool isChain = fromBytes(rows->bytes(3), stored);
    const bool isAfterGap = n != expected;
    if (isAfterGap) addMissing(faults, device.device, expected, n - 1);
    const auto fits = [&](const Chain& base) { return isChain && chainStep(base, line) == stored; };
    if (isAfterGap || std::any_of(bases.begin(), bases.end(), fits)) {
      bases = {stored};
    } else {
      addFault(faults, device.device, n, "altered");
      const Chain computed = chainStep(bases.front(), line);
      bases = {computed, stored};
    }
    const auto fact = decoder.decode(line, device.device);
    if (!fact) {
      addFault(faults, device.device, n, "unreadable");
    } else if (fact->device != device.device || fact->n != n || fact->order != rows->integer(1) || fact->order <= lastOrder) {
      addFault(faults, device.device, n, "altered");
    }
    lastOrder = rows->integer(1);
    while (segment < segments->size() && (*segments)[segment].last < n) ++segment;
    if (segment < segments->size() && (*segments)[segment].last == n && (*segments)[segment].chain != stored) {
      addFault(faults, device.device, n, "altered");
    }
    expected = n + 1;
    if (progress && count % kProgressEvery == 0 && !progress(doneBefore + count)) return fail(ErrorCode::notAllowed, path, "stopped");
  }
  // Signed or folded once, and not here any more.
  const std::uint64_t known = std::max(signedTo, device.foldedTo);
  if (known >= expected) addMissing(faults, device.device, expected, known);
  std::sort(faults.begin(), faults.end(), [](const Fault& a, const Fault& b) { return a.n < b.n; });
  all.insert(all.end(), faults.begin(), faults.end());
  return count;
}

Result<VerifyAnswer> Book::verify(const std::function<bool(std::uint64_t done)>& progress) {
  return guarded(m_body->path, [&]() -> Result<VerifyAnswer> {
    Body& body = *m_body;
    VerifyAnswer answer;
    for (const DeviceEntry& device : body.devices) {
      const auto count = body.verifyDevice(device, answer.faults, progress, answer.facts);
      if (!count) return tl::unexpected<Error>(count.error());
      answer.facts += *count;
    }
    auto forks = body.database.prepare("SELECT d.device, k.n FROM forks k JOIN devices d ON d.slot = k.slot ORDER BY d.device, k.n");
    if (!forks) return tl::unexpected<Error>(forks.error());
    while (true) {
      const auto row = forks->step();
      if (!row) return tl::unexpected<Error>(row.error());
      if (!*row) break;
      answer.faults.push_back({std::string(forks->bytes(0)), static_cast<std::uint64_t>(forks->integer(1)), "forked"});
    }
    auto total = body.database.prepare("SELECT count(*) FROM facts");
    if (!total) return tl::unexpected<Error>(total.error());
    if (const auto row = total->step(); !row) return tl::unexpected<Error>(row.error());
    // Facts in the place of no device.
    if (static_cast<std::uint64_t>(total->integer(0)) != answer.facts) answer.faults.push_back({"", 0, "altered"});
    body.provePhotos(answer);
    answer.isOk = answer.faults.empty() && answer.photoFaults.empty();
    return answer;
  });
}

}  // namespace snugline::book
