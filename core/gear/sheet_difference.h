// SPDX-License-Identifier: Apache-2.0
// Purpose: what is different between two model sheets, as named values: "size M, low end, 550000 -> 548000 um". Two sheets without a
// difference mean the same, whatever their bytes. Complexity: quadratic in the length of the lists, which are short.
// Thread: pure functions.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/gear/sheet_draft.h"

namespace snugline::gear {

enum class SheetField : std::uint8_t {
  id,
  name,
  size,  // item: its name; before or after says that it was or is there
  sizeLow,
  sizeHigh,
  sizeOrder,  // the same sizes in another order
  port,       // item: the port's code
  airStart,
  airLow,
  airHigh,
  pads,      // item: jaw or crown; text: steps joined by ", "
  padSteps,  // as pads, both sheets have some
  padFitted,
  browLow,
  browHigh,
  strapPoints,
  certificationMonths,
  ageLimitMonths,
  changeAllowance,
  leakPerWeek,
  fittingOrder,  // text: codes joined by ", "
  markOrder,     // as fittingOrder
  question,      // item: its id; text: what it asks
  questionIfNo,
  questionOrder,
  cautions
};
[[nodiscard]] std::string_view code(SheetField field);  // "size-low", "air-start", ...
// Of the numbers of a field; nothing where it has none.
[[nodiscard]] std::optional<FigureUnit> unitOf(SheetField field);

struct SheetDifference {
  SheetField field = SheetField::id;
  std::string item;           // which size, port, pad set or question; else empty
  std::string before, after;  // text; empty where it was or is not there
  Figure from, to;            // numbers
  friend bool operator==(const SheetDifference&, const SheetDifference&) = default;
};

// In the order of the file's keys.
[[nodiscard]] std::vector<SheetDifference> differencesOf(const ModelSheet& before, const ModelSheet& after);

}  // namespace snugline::gear
