// SPDX-License-Identifier: Apache-2.0
#include "platform/system/file_attempts.h"

#include <sstream>

#include "platform/system/private_file.h"

namespace snugline::platform {
namespace {

constexpr const char* kFirstLine = "snugline missed codes 1";
constexpr const char* kFile = "/missed-codes";

}  // namespace

Result<ports::MissedCodes> FileAttempts::load() {
  if (m_folder.empty()) return fail(ErrorCode::noKey, "SNUGLINE_KEYS", "no folder for device identities is named and there is no HOME");
  const std::string path = m_folder + kFile;
  const Result<std::optional<std::string>> text = readPrivate(path);
  if (!text) return tl::unexpected<Error>(text.error());
  if (!*text) return ports::MissedCodes{};
  std::istringstream lines(**text);
  std::string first;
  ports::MissedCodes missed;
  std::getline(lines, first);
  if (first != kFirstLine || !(lines >> missed.misses >> missed.waitLeftMs))
    return fail(ErrorCode::noKey, path, "not a count of missed codes");
  return missed;
}

Result<void> FileAttempts::keep(const ports::MissedCodes& missed) {
  if (m_folder.empty()) return fail(ErrorCode::noKey, "SNUGLINE_KEYS", "no folder for device identities is named and there is no HOME");
  return replacePrivate(m_folder + kFile,
                        std::string(kFirstLine) + '\n' + std::to_string(missed.misses) + '\n' + std::to_string(missed.waitLeftMs) + '\n');
}

}  // namespace snugline::platform
