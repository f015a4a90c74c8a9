// SPDX-License-Identifier: Apache-2.0
// Purpose: the clock of this machine: UTC milliseconds and the offset that its zone shows now. Range: as the system says.
// Errors: none; a zone that cannot be read shows offset 0. Thread: any.
#pragma once

#include "core/ports/ports.h"

namespace snugline::platform {

class SystemClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override;
};

}  // namespace snugline::platform
