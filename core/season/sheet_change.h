// SPDX-License-Identifier: Apache-2.0
// Purpose: whom a change of model sheet concerns, worked out before anything is kept: the due board's own code on the same records with the
// new sheet in the old one's place. Checks that are open go on by the sheet that they began with.
// Complexity: linear in units and athletes; rows are made twice for those who wear such a helmet. Thread: pure functions of const views.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/gear/sheet_difference.h"
#include "core/season/board.h"

namespace snugline::season {

template <typename T>
struct BeforeAfter {
  T before, after;
  [[nodiscard]] bool isChanged() const { return before != after; }
  friend bool operator==(const BeforeAfter&, const BeforeAfter&) = default;
};

struct AthleteEffect {
  std::string athlete, unit;
  BeforeAfter<DueRow> row;
  BeforeAfter<std::optional<double>> odds;  // of the size worn, by the last tape; nothing without one or where the chart lacks it
  std::string openCheck;                    // goes on by the old sheet
};
// A helmet of the model, worn or not, that is not retired.
struct UnitEffect {
  std::string unit, size;
  std::vector<std::string> athletes;
  BeforeAfter<std::optional<Day>> lastGood, lastByAge;  // earliest last good day; by the age limit alone
  std::vector<gear::Port> ports;                        // whose start or band differs, or that come or go
  bool isSizeGone = false;                              // the new chart lacks its size
  [[nodiscard]] bool isConcerned() const { return lastGood.isChanged() || lastByAge.isChanged() || !ports.empty() || isSizeGone; }
};
struct SizeGone {
  std::string size;
  std::vector<std::string> units;
};

struct SheetChange {
  std::vector<gear::SheetDifference> differences;
  std::vector<AthleteEffect> athletes;       // concerned: worst row after the change first, then by jersey
  std::vector<UnitEffect> units;             // concerned, by serial
  std::vector<SizeGone> sizesGone;           // that helmets have; such a change is not kept
  std::vector<std::string> openChecks;       // begun on the old sheet or one before it, whoever else is concerned
  std::size_t unitCount = 0, wornCount = 0;  // helmets of the model, retired ones left out; of those worn
};

// Sizes that helmets of this model have and the sheet lacks; retired helmets are past it.
[[nodiscard]] std::vector<SizeGone> sizesGone(const Views& views, const std::string& replaced, const gear::ModelSheet& sheet);
// Errors: notFound (the Book has no such sheet), those of fit::sizeOf.
[[nodiscard]] Result<SheetChange> changeOf(const Views& views, const std::string& replaced, const gear::ModelSheet& sheet, BoardTime time,
                                           const Conditions& conditions);

}  // namespace snugline::season
