// SPDX-License-Identifier: Apache-2.0
// Purpose: sheets that replace one another, as one line with one that stands at its end. A unit names the sheet that it came in under; what
// it is judged by is the one that stands for it now.
// Thread: pure functions of const views.
#pragma once

#include <string>
#include <vector>

#include "core/season/record.h"

namespace snugline::season {

[[nodiscard]] bool isStanding(const Views& views, const std::string& hash);
// Both come to the same sheet. Two sheets that the Book does not know are one only by their hash.
[[nodiscard]] bool isOneModel(const Views& views, const std::string& a, const std::string& b);
// Sheets that count now, by name, then hash: what an arrival, a notice or an order can name.
[[nodiscard]] std::vector<const SheetRecord*> standingSheets(const Views& views);
// Those that this one stands for, itself left out; newest replacement first.
[[nodiscard]] std::vector<const SheetRecord*> sheetsBefore(const Views& views, const std::string& standing);
// The sheet that stands for the id: of those that ever had it the last adopted, or what replaced that. Null where none had it.
[[nodiscard]] const SheetRecord* sheetById(const Views& views, const std::string& id);

}  // namespace snugline::season
