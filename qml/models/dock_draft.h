// SPDX-License-Identifier: Apache-2.0
// Purpose: what stands on the dock's table and what was taken in today, as a small JSON file of this device: written whole and renamed
// after every touch, so that a kill loses nothing. No part of the Book; a file that cannot be read counts as an empty table.
// Thread: GUI thread.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "core/book/acts.h"

namespace snugline::models {

enum class DockStage : std::uint8_t { waiting, what, points };

// The last arrival, so that it can be taken back.
struct DockLast {
  std::vector<std::string> facts;  // in the order written
  std::string unit;
  QString words;
};

struct OnTable {
  DockStage stage = DockStage::waiting;
  std::string scan;       // as read
  book::Arrival arrival;  // its tag is parsed again from scan
};

struct DockDraft : OnTable {
  std::vector<OnTable> aside;      // taken off the table unfinished, by another scan
  Day day;                         // of the session
  std::vector<std::string> units;  // taken in on that day, each once, latest last
  std::optional<DockLast> last;
  std::int64_t lastMs = 0;  // when the last one was finished
};

[[nodiscard]] DockDraft readDraft(const QString& path, Day today);
// False when it could not be written; the caller says so.
[[nodiscard]] bool keepDraft(const QString& path, const DockDraft& draft);

}  // namespace snugline::models
