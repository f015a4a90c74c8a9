// SPDX-License-Identifier: Apache-2.0
// Purpose: which helmets a maker's notice means. The year made is what the tag says, else the year of the maker's mark. A helmet of which
// the year or the lot is asked and not known is neither meant nor left out: it is counted apart, so that somebody looks at it.
// Retired and lost helmets are not meant. Complexity: linear in units. Thread: plain functions.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

enum class NoticeMatch : std::uint8_t { no, yes, unknown };
[[nodiscard]] NoticeMatch matchOf(const Views& views, const NoticeScope& scope, const UnitRecord& unit);
[[nodiscard]] std::optional<int> yearMade(const UnitRecord& unit);

// What a notice would do, before it is kept. Units by id.
struct NoticeCover {
  std::vector<std::string> units;    // would be held
  std::vector<std::string> worn;     // of those: somebody wears them
  std::vector<std::string> unknown;  // year or lot not known; among units where the scope takes them
};
[[nodiscard]] NoticeCover coverOf(const Views& views, const NoticeScope& scope);
// The notice that a hold stands for; nothing where the Book does not have it (yet).
[[nodiscard]] const NoticeRecord* noticeOf(const Views& views, const HoldRecord& hold);
// How a notice goes on: its helmets that are still held, of all it held.
struct NoticeProgress {
  int held = 0, worn = 0;
};
[[nodiscard]] NoticeProgress progressOf(const Views& views, const NoticeRecord& notice);

}  // namespace snugline::season
