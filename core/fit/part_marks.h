// SPDX-License-Identifier: Apache-2.0
// Purpose: which marks a replaced part reopens. Pads, bladders and straps: as the same change made in a check (reopens() of guide.h).
// Hardware and the faceguard, which comes off with its hardware: everything (common practice, no source). The warning label: nothing.
// Thread: pure function.
#pragma once

#include "core/fit/marks.h"
#include "core/gear/unit_part.h"

namespace snugline::fit {

[[nodiscard]] MarkSet reopensOf(gear::UnitPart part);

}  // namespace snugline::fit
