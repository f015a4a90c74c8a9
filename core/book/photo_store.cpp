// SPDX-License-Identifier: Apache-2.0
#include "core/book/photo_store.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <utility>

#include "core/book/chain.h"
#include "core/book/fold.h"
#include "core/book/jpeg_shape.h"
#include "core/book/season_facts.h"

namespace snugline::book {

namespace {

constexpr std::string_view kEnding = ".jpg";
constexpr std::string_view kDraft = ".jpg.new-";
constexpr std::size_t kHashLetters = 64;

Error photoWriteError(const std::string& path, int reason) {
  const ErrorCode code = reason == ENOSPC || reason == EDQUOT                     ? ErrorCode::diskFull
                         : reason == EROFS || reason == EACCES || reason == EPERM ? ErrorCode::readOnly
                                                                                  : ErrorCode::cannotWrite;
  return {code, path, std::strerror(reason)};
}

bool isHash(std::string_view text) {
  PublicKey hash{};
  return text.size() == kHashLetters && fromHex(text, hash);
}

// Closed whatever happens; a file that is still a draft goes away with it.
struct HalfFile {
  std::string path;
  int file = -1;
  bool isNamed = false;
  ~HalfFile() {
    if (file >= 0) ::close(file);
    if (!isNamed) ::unlink(path.c_str());
  }
};

// A new name must be on the disk too, before anything relies on it.
Result<void> syncFolder(const std::string& folder, const DiskCalls& disk) {
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) return tl::unexpected<Error>(photoWriteError(folder, errno));
  const int failed = disk.sync(file) == 0 ? 0 : errno;
  ::close(file);
  if (failed != 0) return tl::unexpected<Error>(photoWriteError(folder, failed));
  return {};
}

Result<void> makeFolder(const std::string& folder, const DiskCalls& disk) {
  if (::mkdir(folder.c_str(), 0700) != 0) {
    const int reason = errno;
    struct stat status {};
    if (reason == EEXIST && ::lstat(folder.c_str(), &status) == 0 && S_ISDIR(status.st_mode)) return {};
    return tl::unexpected<Error>(photoWriteError(folder, reason));
  }
  const auto parent = std::filesystem::path(folder).parent_path().string();
  return syncFolder(parent.empty() ? "." : parent, disk);
}

}  // namespace

DiskCalls plainDisk() {
  return {[](int file, const char* bytes, std::size_t count) { return static_cast<std::int64_t>(::write(file, bytes, count)); },
          [](int file) { return ::fsync(file); }, [](const char* from, const char* to) { return std::rename(from, to); }};
}

PhotoStore::PhotoStore(std::string folder, DiskCalls disk) : m_folder(std::move(folder)), m_disk(std::move(disk)) {}

std::string PhotoStore::pathOf(const std::string& hash) const { return m_folder + '/' + hash + std::string(kEnding); }

Result<PhotoStore::Kept> PhotoStore::put(std::string_view jpeg) const {
  if (m_folder.empty()) return fail(ErrorCode::notFound, "photo");
  if (jpeg.size() > static_cast<std::size_t>(kPhotoBytesMost)) {
    return fail(ErrorCode::tooLong, "photo", std::to_string(jpeg.size()) + ", " + std::to_string(kPhotoBytesMost));
  }
  const auto shape = examineJpeg(jpeg);
  if (!shape) return tl::unexpected<Error>(shape.error());
  Kept kept{hashOf(jpeg), static_cast<std::int64_t>(jpeg.size()), shape->width, shape->height, true};
  const std::string path = pathOf(kept.hash);
  if (read(kept.hash)) {
    kept.isNew = false;
    return kept;
  }
  if (auto made = makeFolder(m_folder, m_disk); !made) return tl::unexpected<Error>(made.error());
  HalfFile draft{m_folder + '/' + kept.hash + std::string(kDraft) + std::to_string(::getpid())};
  draft.file = ::open(draft.path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, 0600);
  if (draft.file < 0) return tl::unexpected<Error>(photoWriteError(path, errno));
  while (!jpeg.empty()) {
    const std::int64_t done = m_disk.write(draft.file, jpeg.data(), jpeg.size());
    if (done < 0 && errno == EINTR) continue;
    if (done <= 0) return tl::unexpected<Error>(photoWriteError(path, done < 0 ? errno : EIO));
    jpeg.remove_prefix(static_cast<std::size_t>(done));
  }
  if (m_disk.sync(draft.file) != 0) return tl::unexpected<Error>(photoWriteError(path, errno));
  if (m_disk.rename(draft.path.c_str(), path.c_str()) != 0) return tl::unexpected<Error>(photoWriteError(path, errno));
  draft.isNamed = true;
  if (auto synced = syncFolder(m_folder, m_disk); !synced) {
    ::unlink(path.c_str());  // not known to be on the disk: no fact may name it
    return tl::unexpected<Error>(synced.error());
  }
  return kept;
}

Result<std::string> PhotoStore::read(const std::string& hash) const {
  const std::string path = pathOf(hash);
  const auto altered = [&] { return fail(ErrorCode::notAllowed, path, std::string(rule::kPhotoAltered)); };
  if (m_folder.empty() || !isHash(hash)) return fail(ErrorCode::notAllowed, path, std::string(rule::kPhotoMissing));
  // A link, a pipe or a folder in its place is not the file; opening must not wait for anybody.
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
  if (file < 0 && (errno == ENOENT || errno == ENOTDIR)) return fail(ErrorCode::notAllowed, path, std::string(rule::kPhotoMissing));
  if (file < 0 && errno == ELOOP) return altered();
  if (file < 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  HalfFile closed{{}, file, true};
  struct stat status {};
  if (::fstat(file, &status) != 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  if (!S_ISREG(status.st_mode) || status.st_size > kPhotoBytesMost) return altered();
  std::string bytes(static_cast<std::size_t>(status.st_size), '\0');
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t got = ::read(file, bytes.data() + done, bytes.size() - done);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
    if (got == 0) break;
    done += static_cast<std::size_t>(got);
  }
  bytes.resize(done);
  if (hashOf(bytes) != hash) return altered();
  return bytes;
}

Result<void> PhotoStore::remove(const std::string& hash) const {
  if (m_folder.empty() || !isHash(hash)) return {};
  const std::string path = pathOf(hash);
  if (::unlink(path.c_str()) == 0) return syncFolder(m_folder, m_disk);
  if (errno == ENOENT || errno == ENOTDIR) return {};
  return tl::unexpected<Error>(photoWriteError(path, errno));
}

Result<std::vector<std::string>> PhotoStore::list() const {
  std::vector<std::string> hashes;
  std::error_code failed;
  std::filesystem::directory_iterator each(m_folder, failed);
  if (failed == std::errc::no_such_file_or_directory) return hashes;
  for (const std::filesystem::directory_iterator end; !failed && each != end; each.increment(failed)) {
    const std::string name = each->path().filename().string();
    if (name.size() != kHashLetters + kEnding.size() || name.substr(kHashLetters) != kEnding) continue;
    if (isHash(name.substr(0, kHashLetters))) hashes.push_back(name.substr(0, kHashLetters));
  }
  if (failed) return fail(ErrorCode::cannotRead, m_folder, failed.message());
  std::sort(hashes.begin(), hashes.end());
  return hashes;
}

void PhotoStore::removeDrafts() const {
  std::error_code failed;
  std::filesystem::directory_iterator each(m_folder, failed);
  for (const std::filesystem::directory_iterator end; !failed && each != end; each.increment(failed)) {
    const std::string name = each->path().filename().string();
    if (name.size() > kHashLetters && name.compare(kHashLetters, kDraft.size(), kDraft) == 0) ::unlink(each->path().c_str());
  }
}

void PhotoStore::removeFolderIfBare() const { ::rmdir(m_folder.c_str()); }

}  // namespace snugline::book
