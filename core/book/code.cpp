// SPDX-License-Identifier: Apache-2.0
#include "core/book/code.h"

#include <sodium.h>

#include <algorithm>
#include <string>

namespace snugline::book {

namespace {

bool isDigits(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// The same step from each digit to the next: 000000, 123456, 654321, 024680.
bool isRun(std::string_view digits) {
  const int step = (digits[1] - digits[0] + 10) % 10;
  for (std::size_t i = 1; i < digits.size(); ++i) {
    if ((digits[i] - digits[i - 1] + 10) % 10 != step) return false;
  }
  return true;
}

Result<CodeHash> hashed(std::string_view digits, const CodeSalt& salt, CodeCost cost) {
  static_assert(std::tuple_size_v<CodeSalt> == crypto_pwhash_argon2id_SALTBYTES);
  const bool isDear = cost.passes > kCodeCostMost.passes || cost.memoryKib > kCodeCostMost.memoryKib;
  if (isDear || cost.passes < crypto_pwhash_argon2id_OPSLIMIT_MIN || cost.memoryKib < kCodeMemoryLeastKib)
    return fail(ErrorCode::outOfRange, "code-cost");
  if (sodium_init() < 0) return fail(ErrorCode::internal, "libsodium");
  CodeHash made{cost, salt, {}};
  const int done = crypto_pwhash(made.hash.data(), made.hash.size(), digits.data(), digits.size(), salt.data(), cost.passes,
                                 std::size_t{cost.memoryKib} * 1024, crypto_pwhash_ALG_ARGON2ID13);
  if (done != 0) return fail(ErrorCode::outOfMemory, "code");
  return made;
}

}  // namespace

Result<void> checkCode(std::string_view digits) {
  if (!isDigits(digits)) return fail(ErrorCode::outOfRange, "code", "digits only");
  if (digits.size() < kCodeLeast || digits.size() > kCodeMost) {
    return fail(ErrorCode::outOfRange, "code",
                std::to_string(digits.size()) + ", " + std::to_string(kCodeLeast) + ", " + std::to_string(kCodeMost));
  }
  if (isRun(digits)) return fail(ErrorCode::notAllowed, "code", std::string(rule::kCodeGuessable));
  return {};
}

Result<CodeHash> hashCode(std::string_view digits, const CodeSalt& salt, CodeCost cost) {
  if (auto ok = checkCode(digits); !ok) return tl::unexpected<Error>(ok.error());
  return hashed(digits, salt, cost);
}

Result<bool> isCode(const CodeHash& kept, std::string_view digits) {
  if (!isDigits(digits) || digits.size() < kCodeLeast || digits.size() > kCodeMost) return false;
  return isSecret(kept, digits);
}

Result<CodeHash> hashSecret(std::string_view secret, const CodeSalt& salt, CodeCost cost) { return hashed(secret, salt, cost); }

Result<bool> isSecret(const CodeHash& kept, std::string_view secret) {
  const Result<CodeHash> tried = hashed(secret, kept.salt, kept.cost);
  if (!tried) return tl::unexpected<Error>(tried.error());
  return sodium_memcmp(tried->hash.data(), kept.hash.data(), kept.hash.size()) == 0;
}

}  // namespace snugline::book
