// SPDX-License-Identifier: Apache-2.0
// Purpose: the key on the recovery sheet, for when every code is forgotten: six groups of five digits. Four of each group are chance (24
// digits, 79 bits), the fifth is a check digit over the group and its place, so that a mistyped digit, two neighbours exchanged or two
// groups exchanged are named before anything is tried. Digits only: they are typed on the same large keypad as a code.
// The Book holds only the key's Argon2id hash. Chance is the caller's.
// Errors: outOfRange (place "recovery-key"; detail "length" or "group N"). Thread: as code.h; hashing never on the thread that draws.
#pragma once

#include <string>
#include <string_view>

#include "core/book/acts.h"
#include "core/book/code.h"
#include "core/ports/ports.h"

namespace snugline::book {

inline constexpr std::size_t kRecoveryGroups = 6;
inline constexpr std::size_t kRecoveryGroupDigits = 5;
inline constexpr std::size_t kRecoveryDigits = kRecoveryGroups * kRecoveryGroupDigits;

// 30 digits without blanks. Seeds are asked for until there is chance enough. Errors: those of Keys.
[[nodiscard]] Result<std::string> makeRecoveryKey(ports::Keys& chance);
// As it is printed: "48021 73014 ...".
[[nodiscard]] std::string grouped(std::string_view key);
// As it was typed, blanks and hyphens let be; gives the 30 digits.
[[nodiscard]] Result<std::string> readRecoveryKey(std::string_view typed);
[[nodiscard]] Result<CodeHash> hashRecoveryKey(std::string_view key, const CodeSalt& salt, CodeCost cost = {});
[[nodiscard]] Result<bool> isRecoveryKey(const CodeHash& kept, std::string_view key);

// A new sheet: the ones before it are void.
[[nodiscard]] Result<Drafts> setRecovery(const season::Views&, const CodeHash& key);
// The key was right: an admin gets a code, and the key gives way to another in the same breath. notAllowed (kNeedsAdmin) for others.
[[nodiscard]] Result<Drafts> recover(const season::Views&, const std::string& admin, const CodeHash& code, const CodeHash& nextKey);

}  // namespace snugline::book
