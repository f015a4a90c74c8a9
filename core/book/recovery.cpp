// SPDX-License-Identifier: Apache-2.0
#include "core/book/recovery.h"

#include <algorithm>
#include <array>

#include "core/book/people.h"
#include "core/book/rights.h"

namespace snugline::book {

namespace {

constexpr std::string_view kPlace = "recovery-key";

// A totally anti-symmetric quasigroup of order 10 (H. M. Damm, dissertation, Marburg 2004; the table from memory, what it must do is
// tested).
constexpr std::array<std::array<std::uint8_t, 10>, 10> kTable{{{0, 3, 1, 7, 5, 9, 8, 6, 4, 2},
                                                               {7, 0, 9, 2, 1, 5, 4, 8, 6, 3},
                                                               {4, 2, 0, 6, 8, 7, 1, 3, 5, 9},
                                                               {1, 7, 5, 0, 9, 8, 3, 4, 2, 6},
                                                               {6, 1, 2, 3, 0, 4, 5, 9, 7, 8},
                                                               {3, 6, 7, 4, 2, 0, 9, 5, 8, 1},
                                                               {5, 8, 6, 9, 7, 2, 0, 1, 3, 4},
                                                               {8, 9, 4, 5, 3, 6, 2, 0, 1, 7},
                                                               {9, 4, 3, 8, 6, 1, 7, 2, 0, 5},
                                                               {2, 5, 8, 1, 4, 3, 6, 7, 9, 0}}};

// The group's place is the first digit that counts, so that a group in another's place does not check.
char checkDigit(std::size_t group, std::string_view digits) {
  std::size_t state = kTable[0][group];
  for (const char digit : digits) state = kTable[state][static_cast<std::size_t>(digit - '0')];
  return static_cast<char>('0' + state);
}

}  // namespace

Result<std::string> makeRecoveryKey(ports::Keys& chance) {
  constexpr std::uint8_t kEven = 250;  // bytes from here on would make the low digits likelier
  std::string key;
  std::size_t group = 0;
  std::string digits;
  while (group < kRecoveryGroups) {
    const auto seed = chance.freshSeed();
    if (!seed) return tl::unexpected<Error>(seed.error());
    for (const std::uint8_t byte : *seed) {
      if (byte >= kEven || group == kRecoveryGroups) continue;
      digits += static_cast<char>('0' + byte % 10);
      if (digits.size() + 1 < kRecoveryGroupDigits) continue;
      key += digits;
      key += checkDigit(group++, digits);
      digits.clear();
    }
  }
  return key;
}

std::string grouped(std::string_view key) {
  std::string text;
  for (std::size_t i = 0; i < key.size(); ++i) {
    if (i != 0 && i % kRecoveryGroupDigits == 0) text += ' ';
    text += key[i];
  }
  return text;
}

Result<std::string> readRecoveryKey(std::string_view typed) {
  std::string key;
  for (const char c : typed) {
    if (c == ' ' || c == '-') continue;
    if (c < '0' || c > '9') return fail(ErrorCode::outOfRange, std::string(kPlace), "length");
    key += c;
  }
  if (key.size() != kRecoveryDigits) return fail(ErrorCode::outOfRange, std::string(kPlace), "length");
  for (std::size_t group = 0; group < kRecoveryGroups; ++group) {
    const std::string_view digits = std::string_view(key).substr(group * kRecoveryGroupDigits, kRecoveryGroupDigits);
    if (checkDigit(group, digits.substr(0, kRecoveryGroupDigits - 1)) != digits.back())
      return fail(ErrorCode::outOfRange, std::string(kPlace), "group " + std::to_string(group + 1));
  }
  return key;
}

Result<CodeHash> hashRecoveryKey(std::string_view key, const CodeSalt& salt, CodeCost cost) {
  if (const auto ok = readRecoveryKey(key); !ok) return tl::unexpected<Error>(ok.error());
  return hashSecret(key, salt, cost);
}

Result<bool> isRecoveryKey(const CodeHash& kept, std::string_view key) {
  if (!readRecoveryKey(key)) return false;
  return isSecret(kept, key);
}

Result<Drafts> setRecovery(const season::Views& views, const CodeHash& key) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  return Drafts{{views.team->id, RecoverySet{key}}};
}

Result<Drafts> recover(const season::Views& views, const std::string& admin, const CodeHash& code, const CodeHash& nextKey) {
  const auto person = views.people.find(admin);
  if (person == views.people.end()) return fail(ErrorCode::notFound, "person " + admin);
  if (person->second.role != kAdmin) return fail(ErrorCode::notAllowed, admin, std::string(rule::kNeedsAdmin));
  auto drafts = setRecovery(views, nextKey);
  if (drafts) drafts->push_back({admin, CodeSet{code}});
  return drafts;
}

}  // namespace snugline::book
