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
  std::vector<std::pair<const std::string, std::vector<Run>>*> subjects;
  subjects.reserve(tail.size());
  for (auto& entry : tail) subjects.push_back(&entry);
  std::sort(subjects.begin(), subjects.end(), [](const auto* a, const auto* b) { return a->first < b->first; });
  auto rows = database.prepare("SELECT subject, slot, n, count, ord FROM touches ORDER BY subject, slot, n");
  if (!rows) return tl::unexpected<Error>(rows.error());
  auto row = rows->step();
  for (auto* entry : subjects) {
    joinRuns(entry->second);
    for (const Run& run : entry->second) {
      // What two checkpoints stored in pieces is one run here.
      std::uint64_t next = run.first;
      std::int64_t order = 0;
      while (row && *row && next < run.first + run.count && rows->bytes(0) == entry->first &&
             rows->integer(1) == devices[run.device].slot && rows->integer(2) == static_cast<std::int64_t>(next) && rows->integer(3) > 0) {
        next += static_cast<std::uint64_t>(rows->integer(3));
        order = rows->integer(4);
        row = rows->step();
      }
      if (!row) return tl::unexpected<Error>(row.error());
      if (next != run.first + run.count || order != run.order) return false;
    }
  }
  if (!row) return tl::unexpected<Error>(row.error());
  return !*row;
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
