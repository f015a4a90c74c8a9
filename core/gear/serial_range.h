// SPDX-License-Identifier: Apache-2.0
// Purpose: serials from one to another, as a maker's notice names them. Two serials can be compared when they are alike but for their
// numbers ("KX-0410" and "KX-1200"): then the numbers decide, the first one first. Case and leading zeros do not count. Ours.
// Errors of checkSerialRange: inconsistent where the two ends are not alike, or the last comes before the first. Thread: pure functions.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline::gear {

// Negative, zero or positive; nothing where the two are not alike.
[[nodiscard]] std::optional<int> compareSerials(std::string_view a, std::string_view b);
// An end that is empty is open. Not alike with an end: not within.
[[nodiscard]] bool isWithinSerials(std::string_view serial, std::string_view from, std::string_view to);
[[nodiscard]] Result<void> checkSerialRange(std::string_view from, std::string_view to);

}  // namespace snugline::gear
