// SPDX-License-Identifier: Apache-2.0
#include "platform/system/private_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>

namespace snugline::platform {
namespace {

constexpr std::size_t kFileLimit = 4096;  // ours are under 200 bytes; more is another file

bool writeWhole(int file, const std::string& text) {
  std::size_t done = 0;
  while (done < text.size()) {
    const ssize_t n = ::write(file, text.data() + done, text.size() - done);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    done += static_cast<std::size_t>(n);
  }
  return ::fsync(file) == 0;
}

// The new name must be on disk too, else a power cut brings the old file back.
void syncFolder(const std::string& folder) {
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) return;
  ::fsync(file);
  ::close(file);
}

Result<void> makeFolder(const std::string& folder) {
  std::error_code failed;
  const bool isNew = std::filesystem::create_directories(folder, failed);
  if (failed) return fail(ErrorCode::cannotWrite, folder, failed.message());
  if (isNew) std::filesystem::permissions(folder, std::filesystem::perms::owner_all, failed);
  if (failed) return fail(ErrorCode::cannotWrite, folder, failed.message());
  return {};
}

}  // namespace

Result<std::optional<std::string>> readPrivate(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0 && (errno == ENOENT || errno == ENOTDIR)) return std::optional<std::string>();
  if (file < 0) return fail(ErrorCode::noKey, path, std::strerror(errno));
  std::string text(kFileLimit, '\0');
  const ssize_t size = ::read(file, text.data(), text.size());
  const int reason = errno;
  ::close(file);
  if (size < 0) return fail(ErrorCode::noKey, path, std::strerror(reason));
  text.resize(static_cast<std::size_t>(size));
  return std::optional<std::string>(std::move(text));
}

Result<void> replacePrivate(const std::string& path, const std::string& text) {
  const std::string folder = std::filesystem::path(path).parent_path().string();
  if (const Result<void> made = makeFolder(folder); !made) return made;
  // Two processes may write at once; the process number keeps their drafts apart.
  const std::string draft = path + '.' + std::to_string(::getpid()) + ".new";
  const int file = ::open(draft.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (file < 0) return fail(ErrorCode::cannotWrite, draft, std::strerror(errno));
  const bool isWritten = writeWhole(file, text);
  const int reason = errno;
  ::close(file);
  if (!isWritten || ::rename(draft.c_str(), path.c_str()) != 0) {
    const int cause = isWritten ? errno : reason;
    ::unlink(draft.c_str());
    return fail(cause == ENOSPC ? ErrorCode::diskFull : ErrorCode::cannotWrite, path, std::strerror(cause));
  }
  syncFolder(folder);
  return {};
}

}  // namespace snugline::platform
