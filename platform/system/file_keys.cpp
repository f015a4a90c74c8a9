// SPDX-License-Identifier: Apache-2.0
#include "platform/system/file_keys.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>
#include <sstream>

#include "platform/system/private_file.h"

namespace snugline::platform {
namespace {

constexpr std::size_t kMarkBytes = 16;  // BOOK_FORMAT: an incarnation mark is 32 hex digits
constexpr const char* kFirstLine = "snugline identity 1";

std::string hex(const std::uint8_t* bytes, std::size_t size) {
  std::string text(size * 2 + 1, '\0');
  sodium_bin2hex(text.data(), text.size(), bytes, size);
  text.pop_back();
  return text;
}

std::string environment(const char* name) {
  const char* const value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

// Four lines: what it is, seed, noted n, place.
std::optional<ports::Identity> read(const std::string& text) {
  std::istringstream lines(text);
  std::string first, seed, noted, place;
  if (!std::getline(lines, first) || !std::getline(lines, seed) || !std::getline(lines, noted)) return std::nullopt;
  std::getline(lines, place);
  ports::Identity identity;
  std::size_t used = 0;
  const bool isSeed = sodium_hex2bin(identity.seed.data(), identity.seed.size(), seed.data(), seed.size(), nullptr, &used, nullptr) == 0 &&
                      used == identity.seed.size() && seed.size() == 2 * identity.seed.size();
  const auto number = std::from_chars(noted.data(), noted.data() + noted.size(), identity.notedN);
  if (first != kFirstLine || !isSeed || number.ec != std::errc() || number.ptr != noted.data() + noted.size()) return std::nullopt;
  identity.place = place;
  return identity;
}

}  // namespace

std::string keysFolder() {
  if (const std::string own = environment("SNUGLINE_KEYS"); !own.empty()) return own;
  if (const std::string data = environment("XDG_DATA_HOME"); !data.empty()) return data + "/snugline/keys";
  const std::string home = environment("HOME");
  return home.empty() ? std::string() : home + "/.local/share/snugline/keys";
}

Result<std::string> FileKeys::pathOf(const std::string& incarnation) const {
  if (m_folder.empty()) return fail(ErrorCode::noKey, "SNUGLINE_KEYS", "no folder for device identities is named and there is no HOME");
  const bool isMark = incarnation.size() == 2 * kMarkBytes && std::all_of(incarnation.begin(), incarnation.end(), [](char c) {
                        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
                      });
  if (!isMark) return fail(ErrorCode::noKey, m_folder, "an incarnation mark is 32 hex digits");
  return m_folder + '/' + incarnation + ".identity";
}

Result<std::optional<ports::Identity>> FileKeys::find(const std::string& incarnation) {
  const Result<std::string> path = pathOf(incarnation);
  if (!path) return tl::unexpected<Error>(path.error());
  const Result<std::optional<std::string>> text = readPrivate(*path);
  if (!text) return tl::unexpected<Error>(text.error());
  if (!*text) return std::optional<ports::Identity>();
  std::optional<ports::Identity> identity = read(**text);
  if (!identity) return fail(ErrorCode::noKey, *path, "not a device identity");
  return identity;
}

Result<void> FileKeys::keep(const std::string& incarnation, const ports::Identity& identity) {
  const Result<std::string> path = pathOf(incarnation);
  if (!path) return tl::unexpected<Error>(path.error());
  if (identity.place.find('\n') != std::string::npos) return fail(ErrorCode::cannotWrite, *path, "a place is one line");
  const std::string text = std::string(kFirstLine) + '\n' + hex(identity.seed.data(), identity.seed.size()) + '\n' +
                           std::to_string(identity.notedN) + '\n' + identity.place + '\n';
  return replacePrivate(*path, text);
}

Result<ports::Seed> FileKeys::freshSeed() {
  if (sodium_init() < 0) return fail(ErrorCode::noKey, "random", "the machine gives no random numbers");
  ports::Seed seed{};
  randombytes_buf(seed.data(), seed.size());
  return seed;
}

Result<std::string> FileKeys::freshMark() {
  if (sodium_init() < 0) return fail(ErrorCode::noKey, "random", "the machine gives no random numbers");
  std::array<std::uint8_t, kMarkBytes> mark{};
  randombytes_buf(mark.data(), mark.size());
  return hex(mark.data(), mark.size());
}

}  // namespace snugline::platform
