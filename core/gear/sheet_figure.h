// SPDX-License-Identifier: Apache-2.0
// Purpose: the numbers of a model sheet as people write them: in their own units, exact to the whole unit beneath, which is what is kept.
// Errors: those of quantity.h; notAQuantity also for a number that is not whole where whole ones count. Thread: pure functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/gear/sheet_draft.h"

namespace snugline::gear {

// "550", "550.5 mm", "21.65", "21 5/8", "21 5/8 in": a unit of its own wins over the system's. Rounded half away from zero, once.
[[nodiscard]] Result<std::int64_t> readFigure(std::string_view text, FigureUnit unit, UnitSystem system);
// "549.91 mm", "21.654 in", "20.34 kPa", "2.95 psi", "24": metric in full, US to 0.001 in and 0.01 psi.
[[nodiscard]] std::string printFigure(std::int64_t value, FigureUnit unit, UnitSystem system);
// Whether the print says all that is kept.
[[nodiscard]] bool isPrintedWhole(std::int64_t value, FigureUnit unit, UnitSystem system);

// What a touch adds or takes, small one first: 1 and 5 mm or 1/8 and 1/2 in; 1 and 5 kPa or 0.1 and 1 psi; 1 and 12 months.
struct FigureStep {
  std::string text;  // "1 mm", "1/8 in"
  int wholes = 0;    // of the unit's smallest step
};
[[nodiscard]] std::vector<FigureStep> figureSteps(FigureUnit unit, UnitSystem system);
// So many smallest steps on from a value, never beyond the range; a value on the scale of psi stays on it. From nothing: `from`, where
// there is a place to begin (the end of the size before, the target); else the step counts from nought.
[[nodiscard]] std::int64_t stepFigure(const Figure& value, int wholes, const FigureRange& range, UnitSystem system, const Figure& from);

}  // namespace snugline::gear
