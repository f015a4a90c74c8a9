// SPDX-License-Identifier: Apache-2.0
// Purpose: what the demo's camera sees: a shell on a bench with a crack in it, painted by code, the same each time. No real helmet.
// Thread: GUI thread.
#pragma once

#include "core/ports/photo_port.h"

namespace snugline::demo {

[[nodiscard]] ports::ColourPicture paintedHelmet();

}  // namespace snugline::demo
