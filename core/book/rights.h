// SPDX-License-Identifier: Apache-2.0
// Purpose: who may do what. A role and one mark beside it decide; every append of a Book and every correction is asked here, so that no
// screen can forget to. Nobody signed in is whoever holds the file (the terminal, a Book where no code was ever set, the athletes' side):
// refused is only what takes the mark. Errors: notAllowed with a rule below. Thread: plain functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/book/fact.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kNeedsStaff = "needs-staff";
inline constexpr std::string_view kNeedsAdmin = "needs-admin";
inline constexpr std::string_view kNeedsPractitioner = "needs-practitioner";
inline constexpr std::string_view kStaysSaid = "stays-said";  // a hit or feeling bad is never taken back
inline constexpr std::string_view kLastAdmin = "last-admin";  // somebody must be able to give out codes
}  // namespace rule

// anybody: rechecks, line checks, holds, notes and reports, helpers' work. staff: also first fits, swaps, taking in, service, release, and
// having been told of a hit. admin: also codes, people, devices, restoring, how long names are kept. practitioner: the mark "athletic
// trainer or designated health care professional", whatever the role: closing See athlete now.
enum class Right : std::uint8_t { anybody, staff, admin, practitioner };
[[nodiscard]] bool may(const season::Views&, const std::string& person, Right);
[[nodiscard]] Right rightFor(const season::Views&, const Draft&, const std::vector<Draft>& all);  // all: of the same append

[[nodiscard]] Result<void> mayAppend(const season::Views&, const std::string& person, const std::vector<Draft>&);
// One's own entries, and others' by staff; what takes a higher right to write takes it to take back.
[[nodiscard]] Result<void> mayCorrect(const season::Views&, const std::string& person, const Fact&);

}  // namespace snugline::book
