// SPDX-License-Identifier: Apache-2.0
// Purpose: when and by whom something was recorded, and which fact says so. Thread: plain values.
#pragma once

#include <cstdint>
#include <string>

#include "core/quantity/time.h"

namespace snugline::season {

struct Stamp {
  Instant at;
  std::string who;         // person id; empty when the Book knew nobody yet
  std::string fact;        // "device:n"
  std::int64_t order = 0;  // Lamport order of that fact; 0 when not kept, then device:n and the wall time decide
  friend bool operator==(const Stamp&, const Stamp&) = default;
};
// Was `a` written down after `b`: by order, else by the counter of the same device, else by wall time.
[[nodiscard]] bool isAfter(const Stamp& a, const Stamp& b);

}  // namespace snugline::season
