// SPDX-License-Identifier: Apache-2.0
// Purpose: parts of the acts on checks that a swap needs too; shared by the sources of acts, nobody else. Errors: as pair and beginCheck.
// Thread: plain functions.
#pragma once

#include "core/book/acts.h"

namespace snugline::book {

// As pair(), whatever check the athlete has open: the caller ends it in the same act.
[[nodiscard]] Result<Drafts> pairDrafts(const season::Views& views, const std::string& athlete, const std::string& unit, Day today,
                                        bool isOldWithAthlete = false);
// The beginning of a check in a unit that the athlete wears, or is given in the same act.
[[nodiscard]] Result<CheckBegun> begunIn(const season::Views& views, const season::AthleteRecord& athlete, const season::UnitRecord& unit,
                                         fit::CheckKind kind);

}  // namespace snugline::book
