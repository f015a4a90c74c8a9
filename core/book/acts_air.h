// SPDX-License-Identifier: Apache-2.0
// Purpose: what answers and the end of a check take with them of the air; shared by the sources of acts, nobody else. Thread: plain
// functions.
#pragma once

#include "core/book/acts.h"

namespace snugline::book {

// Where an answer is about air: the unit, the weather as noted, and by what it was read. Errors: tooLong, outOfRange (source).
[[nodiscard]] Result<void> carryAir(const season::Views& views, CheckAnswered& body, const std::string& unit, Instant now,
                                    const season::AirSource& source);
// What pumps did in the check: between two gaps of the brow with nothing else changed between them, and between two readings of a port.
[[nodiscard]] std::vector<season::PumpedRecord> pumpedIn(const season::CheckRecord& check);

}  // namespace snugline::book
