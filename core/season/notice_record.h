// SPDX-License-Identifier: Apache-2.0
// Purpose: what a maker's notice says and which helmets it means. Records hold integers and text only. Thread: plain values.
#pragma once

#include <optional>
#include <string>

#include "core/quantity/time.h"
#include "core/season/stamp.h"

namespace snugline::season {

// Every part that is said must hold; at least one is said.
struct NoticeScope {
  std::string sheet;                    // hash of a model sheet
  std::optional<int> yearFrom, yearTo;  // year made, both ends belong to it
  std::string lot;                      // as the tag says it (identifier 10), case does not count
  std::string serialFrom, serialTo;     // core/gear/serial_range.h; either may be open
  bool takesUnknown = false;            // also helmets of which the year made or the lot is not known
  [[nodiscard]] bool isEmpty() const {
    return sheet.empty() && !yearFrom && !yearTo && lot.empty() && serialFrom.empty() && serialTo.empty();
  }
  friend bool operator==(const NoticeScope&, const NoticeScope&) = default;
};
struct NoticeRecord {
  std::string fact;
  std::string text;  // in the maker's words
  Day day;           // of the notice itself
  NoticeScope scope;
  Stamp stamp;
  friend bool operator==(const NoticeRecord&, const NoticeRecord&) = default;
};

}  // namespace snugline::season
