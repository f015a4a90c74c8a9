// SPDX-License-Identifier: Apache-2.0
// Views made anew from the log, and compared with those that were kept.
#include <algorithm>

#include "core/book/book_body.h"

namespace snugline::book {

Result<bool> Book::Body::areRowsAsFolded() {
  for (const auto& [entity, table] : kViewTables) {
    auto rows = database.prepare(std::string("SELECT key, value FROM ") + table + " ORDER BY key");
    if (!rows) return tl::unexpected<Error>(rows.error());
    bool isEqual = true;
    Result<void> failed;
    eachRow(folded, entity, [&](const std::string& key, std::string&& row) {
      if (!isEqual || !failed) return;
      const auto stored = rows->step();
      if (!stored) {
        failed = tl::unexpected<Error>(stored.error());
        return;
      }
      isEqual = *stored && rows->bytes(0) == key && rows->bytes(1) == row;
    });
    if (!failed) return tl::unexpected<Error>(failed.error());
    if (!isEqual) return false;
    const auto more = rows->step();
    if (!more) return tl::unexpected<Error>(more.error());
    if (*more) return false;
  }
  return true;
}

Result<bool> Book::Body::areTouchesAsFolded() {
  std::vector<const std::pair<const std::string, std::vector<Place>>*> subjects;
  subjects.reserve(tail.size());
  for (const auto& entry : tail) subjects.push_back(&entry);
  std::sort(subjects.begin(), subjects.end(), [](const auto* a, const auto* b) { return a->first < b->first; });
  auto rows = database.prepare("SELECT subject, ord, slot, n FROM touches ORDER BY subject, ord, slot, n");
  if (!rows) return tl::unexpected<Error>(rows.error());
  for (const auto* entry : subjects) {
    std::vector<Place> places = entry->second;
    std::sort(places.begin(), places.end(), [&](const Place& a, const Place& b) {
      if (a.order != b.order) return a.order < b.order;
      return std::pair(devices[a.device].slot, a.n) < std::pair(devices[b.device].slot, b.n);
    });
    for (const Place& place : places) {
      const auto stored = rows->step();
      if (!stored) return tl::unexpected<Error>(stored.error());
      const bool isSame = *stored && rows->bytes(0) == entry->first && rows->integer(1) == place.order &&
                          rows->integer(2) == devices[place.device].slot && rows->integer(3) == static_cast<std::int64_t>(place.n);
      if (!isSame) return false;
    }
  }
  const auto more = rows->step();
  if (!more) return tl::unexpected<Error>(more.error());
  return !*more;
}

Result<Book::RebuildAnswer> Book::rebuild() {
  return guarded(m_body->path, [&]() -> Result<RebuildAnswer> {
    Body& body = *m_body;
    if (body.access == Access::readOnly) return fail(ErrorCode::readOnly, body.path);
    if (auto done = body.checkpoint(); !done) return tl::unexpected<Error>(done.error());
    // Kept until the new ones stand, so that a log that does not hold leaves the Book as it was.
    auto keptFolded = std::move(body.folded);
    auto keptCorrections = std::move(body.corrections);
    auto keptDevices = body.devices;
    const auto keptHighest = body.highestFolded;
    const auto facts = body.foldAll(true);
    if (!facts) {
      body.folded = std::move(keptFolded);
      body.corrections = std::move(keptCorrections);
      body.devices = std::move(keptDevices);
      body.highestFolded = keptHighest;
      body.tail.clear();
      body.tailCorrections.clear();
      body.tailFacts = 0;
      body.areViewsWhole = true;
      return tl::unexpected<Error>(facts.error());
    }
    RebuildAnswer answer;
    answer.facts = *facts;
    const auto areRows = body.areRowsAsFolded();
    if (!areRows) return tl::unexpected<Error>(areRows.error());
    const auto areTouches = body.areTouchesAsFolded();
    if (!areTouches) return tl::unexpected<Error>(areTouches.error());
    answer.wasEqual = *areRows && *areTouches;
    if (answer.wasEqual) {
      // What is stored is what would be stored.
      for (auto& changed : body.folded.changed) changed.clear();
      for (DeviceEntry& device : body.devices) device.foldedTo = device.last;
      body.tail.clear();
      body.tailCorrections.clear();
      body.tailFacts = 0;
      body.areViewsWhole = true;
      return answer;
    }
    if (auto done = body.checkpoint(); !done) return tl::unexpected<Error>(done.error());
    return answer;
  });
}

}  // namespace snugline::book
