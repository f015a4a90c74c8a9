// SPDX-License-Identifier: Apache-2.0
// Purpose: staff, their roles and codes, and whom to call, as drafts of facts, like acts.h. Staff are people with a code; athletes have
// none and sign nothing. Errors: notFound, outOfRange (place: what), unknownWord (role). Thread: plain functions.
#pragma once

#include <string>

#include "core/book/acts.h"
#include "core/book/code.h"

namespace snugline::book {

inline constexpr std::size_t kInitialsMost = 3;
inline constexpr std::size_t kNumberMost = 40, kPlanMost = 200;  // characters

// name 1 to 80 characters, initials 1 to 3, a role. The first person of a Book is an admin whatever was asked: somebody must be able to
// give out codes. Who may do what: rights.h, asked by the Book.
[[nodiscard]] Result<Drafts> addPerson(const season::Views&, const PersonAdded&);
// Another role, the mark given or taken. Nothing to change drafts nothing; the last admin stays one (kLastAdmin).
[[nodiscard]] Result<Drafts> changePerson(const season::Views&, const std::string& person, const PersonChanged&);
// Whom to call: number 1 to 40 characters, plan 0 to 200. The same again drafts nothing.
[[nodiscard]] Result<Drafts> setEmergency(const season::Views&, const EmergencySet&);
// The hash of a code that checkCode took; made by hashCode.
[[nodiscard]] Result<Drafts> setCode(const season::Views&, const std::string& person, const season::CodeHash&);

// Whether anybody can open a locked device. Until then nothing is locked.
[[nodiscard]] bool hasCodes(const season::Views&);

}  // namespace snugline::book
