// SPDX-License-Identifier: Apache-2.0
#include <sodium.h>

#include "core/book/code.h"
#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

constexpr std::string_view kKdf = "argon2id";

template <std::size_t Size>
std::string hexOf(const std::array<std::uint8_t, Size>& bytes) {
  std::string text(2 * Size + 1, '\0');
  sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
  text.pop_back();
  return text;
}

// Lower case only: a fact is written in one way.
template <std::size_t Size>
void readHex(ObjectReader& in, std::string_view key, std::array<std::uint8_t, Size>& bytes) {
  const std::string text = in.text(key);
  std::size_t used = 0;
  const bool isHex = sodium_hex2bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, &used, nullptr) == 0;
  if (!isHex || used != Size || hexOf(bytes) != text) in.fail(ErrorCode::wrongType, key, std::to_string(2 * Size) + " hex digits");
}

}  // namespace

void writeCode(LineWriter& out, const season::CodeHash& code) {
  out.key("kdf").string(kKdf).key("passes").integer(code.cost.passes).key("memory_kib").integer(code.cost.memoryKib);
  out.key("salt").string(hexOf(code.salt)).key("hash").string(hexOf(code.hash));
}

season::CodeHash readCode(ObjectReader& in) {
  season::CodeHash code;
  if (in.text("kdf") != kKdf) in.fail(ErrorCode::unknownWord, "kdf");
  code.cost.passes = static_cast<std::uint32_t>(in.integer("passes", 1, kCodeCostMost.passes));
  code.cost.memoryKib = static_cast<std::uint32_t>(in.integer("memory_kib", kCodeMemoryLeastKib, kCodeCostMost.memoryKib));
  readHex(in, "salt", code.salt);
  readHex(in, "hash", code.hash);
  return code;
}

}  // namespace snugline::book
