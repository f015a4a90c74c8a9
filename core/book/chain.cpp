// SPDX-License-Identifier: Apache-2.0
#include "core/book/chain.h"

#include <sodium.h>

namespace snugline::book {

namespace {

constexpr std::string_view kDomain = "snugline segment 1\n";
constexpr std::size_t kIdBytes = 8;

const unsigned char* raw(std::string_view bytes) { return reinterpret_cast<const unsigned char*>(bytes.data()); }

std::string message(std::string_view device, std::uint64_t first, std::uint64_t last, const Chain& chain) {
  std::string text(kDomain);
  text += device;
  for (std::uint64_t number : {first, last}) {
    for (int shift = 0; shift < 64; shift += 8) text += static_cast<char>((number >> shift) & 0xff);
  }
  text += bytesOf(chain);
  return text;
}

}  // namespace

Result<SigningKey> signingKey(const ports::Seed& seed) {
  if (sodium_init() < 0) return fail(ErrorCode::noKey, "random");
  SigningKey key;
  crypto_sign_seed_keypair(key.publicKey.data(), key.secret.data(), seed.data());
  return key;
}

std::string deviceOf(const PublicKey& key) {
  constexpr char kLetters[] = "abcdefghijklmnopqrstuvwxyz234567";
  Chain hash{};
  crypto_generichash(hash.data(), hash.size(), key.data(), key.size(), nullptr, 0);
  std::string device;
  unsigned bits = 0, held = 0;
  for (std::size_t i = 0; i < kIdBytes; ++i) {
    held = (held << 8) | hash[i];
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      device += kLetters[(held >> bits) & 31];
    }
  }
  device += kLetters[(held << (5 - bits)) & 31];
  return device;
}

Chain chainStart(std::string_view device) {
  Chain chain{};
  crypto_generichash(chain.data(), chain.size(), raw(device), device.size(), nullptr, 0);
  return chain;
}

Chain chainStep(const Chain& before, std::string_view line) {
  crypto_generichash_state state;
  crypto_generichash_init(&state, nullptr, 0, before.size());
  crypto_generichash_update(&state, before.data(), before.size());
  crypto_generichash_update(&state, raw(line), line.size());
  Chain chain{};
  crypto_generichash_final(&state, chain.data(), chain.size());
  return chain;
}

Signature signSegment(const SigningKey& key, std::string_view device, std::uint64_t first, std::uint64_t last, const Chain& chain) {
  const std::string text = message(device, first, last, chain);
  Signature signature{};
  crypto_sign_detached(signature.data(), nullptr, raw(text), text.size(), key.secret.data());
  return signature;
}

bool isSignedBy(const PublicKey& key, const Signature& signature, std::string_view device, std::uint64_t first, std::uint64_t last,
                const Chain& chain) {
  const std::string text = message(device, first, last, chain);
  return crypto_sign_verify_detached(signature.data(), raw(text), text.size(), key.data()) == 0;
}

std::string hexOf(const PublicKey& key) {
  std::string hex(2 * key.size() + 1, '\0');
  sodium_bin2hex(hex.data(), hex.size(), key.data(), key.size());
  hex.pop_back();
  return hex;
}

bool fromHex(std::string_view hex, PublicKey& key) {
  std::size_t used = 0;
  return hex.size() == 2 * key.size() && sodium_hex2bin(key.data(), key.size(), hex.data(), hex.size(), nullptr, &used, nullptr) == 0 &&
         used == key.size();
}

}  // namespace snugline::book
