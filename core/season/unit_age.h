// SPDX-License-Identifier: Apache-2.0
// Purpose: how old a helmet may become. The certification that an age limit counts from is the earliest maker's mark known; a maker's mark
// stands on the unit for life. The limit is the sheet's (core/gear/certification.h for its source). Thread: plain functions.
#pragma once

#include <optional>

#include "core/season/record.h"

namespace snugline::season {

[[nodiscard]] std::optional<gear::Label> firstCertification(const UnitRecord& unit);
// Last day before the age limit, as a span; nothing where no maker's mark was read or the sheet states no limit.
[[nodiscard]] std::optional<gear::DaySpan> lastDayByAge(const Views& views, const UnitRecord& unit);

}  // namespace snugline::season
