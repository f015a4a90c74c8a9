// SPDX-License-Identifier: Apache-2.0
// Purpose: staff and their codes, as drafts of facts, like acts.h. Staff are people with a code; athletes have none and sign nothing.
// Errors: notFound, outOfRange (place: what), unknownWord (role). Thread: plain functions.
#pragma once

#include <string>

#include "core/book/acts.h"
#include "core/book/code.h"

namespace snugline::book {

inline constexpr std::size_t kInitialsMost = 3;
inline constexpr std::string_view kTrainer = "trainer";
inline constexpr std::string_view kStaff = "staff";

// name 1 to 80 characters, initials 1 to 3, role kTrainer or kStaff. The first person of a Book is a trainer whatever was asked: somebody
// must be able to give out codes.
[[nodiscard]] Result<Drafts> addPerson(const season::Views&, const PersonAdded&);
// The hash of a code that checkCode took; made by hashCode.
[[nodiscard]] Result<Drafts> setCode(const season::Views&, const std::string& person, const season::CodeHash&);

[[nodiscard]] bool isTrainer(const season::Views&, const std::string& person);

// Whether anybody can open a locked device. Until then nothing is locked.
[[nodiscard]] bool hasCodes(const season::Views&);

}  // namespace snugline::book
