// SPDX-License-Identifier: Apache-2.0
// Purpose: a spare for one athlete now: in service, not held, certified today (by the earliest end of its label's span), worn by nobody,
// no fault open, not said to be broken, of a size whose odds for this head are at least kTryOnOdds; a helmet that did not fit this head
// since its last tape is left out. Order: surest size first, then the nearest shelf, then the label that lasts longest, then serial.
// Without a tape the size of the helmet worn last stands in, and the odds are missing; without such a helmet all are offered.
// Everything on the shelf that is not offered is counted by the first reason that keeps it away, so that "none" can say why.
// Complexity: linear in units, and in what was said. Thread: plain functions.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/matching.h"

namespace snugline::season {

struct Spare {
  std::string unit, sheet, size;  // sheet: hash
  std::optional<double> odds;     // nothing where no size is known
  bool isTryOn = false;           // odds below kMatchOdds
  std::string shelf;              // may be empty
  Day lastGood;                   // earliest end of the label's span
  int unseenPoints = 0;           // of the seven
};

// Why a helmet that nobody wears is not offered.
enum class NotOffered : std::uint8_t {
  held,
  away,          // in repair, sent out, or somebody still has it
  notInService,  // taken in and not put in service
  faultOpen,
  brokeSaid,
  label,       // lapsed, may have lapsed, missing, not read or in question
  noSheet,     // its model is not in the Book
  pointsOpen,  // to be checked after a report
  otherSize,   // not for this head
  didNotFit    // tried on this head since its last tape
};
inline constexpr std::size_t kNotOfferedCount = 10;
[[nodiscard]] std::string_view code(NotOffered n);

struct SpareAnswer {
  std::vector<Spare> offers;
  std::array<int, kNotOfferedCount> notOffered{};  // by NotOffered; retired and lost helmets are not counted
  int worn = 0;                                    // by somebody else
  TapeState tape = TapeState::missing;
  std::string likelySheet, likelySize;  // of this head among the models at hand; empty when off every chart
  std::vector<std::string> shelves;     // of the offers, each once, in the order of their names
};
// here: the shelf where one stands; empty when that is not known. Errors: notFound (the athlete), outOfRange (tape).
[[nodiscard]] Result<SpareAnswer> sparesFor(const Views& views, const std::string& athlete, const std::string& here, Day today);
// "Shelf 2" before "Shelf 10".
[[nodiscard]] bool shelfBefore(const std::string& a, const std::string& b);

}  // namespace snugline::season
