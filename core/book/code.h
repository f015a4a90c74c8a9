// SPDX-License-Identifier: Apache-2.0
// Purpose: a person's code, six to twelve digits, kept only as its Argon2id hash (RFC 9106; libsodium's crypto_pwhash). The salt is handed
// in: chance is the caller's. The cost stands beside each hash, so that it can go up later and old hashes still be read.
// Errors: outOfRange (too short, too long), notAllowed (rule::kCodeGuessable: one digit repeated, or a straight run), outOfMemory.
// Thread: plain functions; a hash takes some tens of milliseconds and 64 MiB, never on the thread that draws.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/quantity/result.h"
#include "core/season/code_hash.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kCodeGuessable = "code-guessable";
}

inline constexpr std::size_t kCodeLeast = 6;  // digits: a million codes against the growing wait of code_gate.h (ours)
inline constexpr std::size_t kCodeMost = 12;

using season::CodeCost;
using season::CodeHash;
using season::CodeSalt;
// What is read from a Book is not trusted to be cheap: more than this is refused (outOfRange).
inline constexpr CodeCost kCodeCostMost{16, 1048576};
inline constexpr std::uint32_t kCodeMemoryLeastKib = 8;  // of Argon2

// Whether a new code may be taken. An old one is only compared.
[[nodiscard]] Result<void> checkCode(std::string_view digits);
[[nodiscard]] Result<CodeHash> hashCode(std::string_view digits, const CodeSalt& salt, CodeCost cost = {});
// In constant time once hashed. Text that is no code at all is simply not it.
[[nodiscard]] Result<bool> isCode(const CodeHash& kept, std::string_view digits);
// For secrets with rules of their own (recovery.h).
[[nodiscard]] Result<CodeHash> hashSecret(std::string_view secret, const CodeSalt& salt, CodeCost cost);
[[nodiscard]] Result<bool> isSecret(const CodeHash& kept, std::string_view secret);

}  // namespace snugline::book
