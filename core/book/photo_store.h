// SPDX-License-Identifier: Apache-2.0
// Purpose: pictures of gear as files beside the Book, each named by the hash of its bytes (BOOK_FORMAT.md, Photos). Nothing is written by
// halves, nothing is kept that says where or with what it was taken, and nothing is handed out that is not what was taken.
// Range: 1..kPhotoBytesMost bytes. Thread: a plain value; reading is right from any thread, writing is one thread's.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kPhotoAltered = "photo-altered";  // not the bytes that were kept
inline constexpr std::string_view kPhotoMissing = "photo-missing";  // the file is not there
}  // namespace rule

// What writing goes through, so that tests can have a disk that is full. Each answers as the call of its name, with errno.
struct DiskCalls {
  std::function<std::int64_t(int file, const char* bytes, std::size_t count)> write;
  std::function<int(int file)> sync;
  std::function<int(const char* from, const char* to)> rename;
};
[[nodiscard]] DiskCalls plainDisk();

class PhotoStore {
 public:
  PhotoStore() = default;  // of no Book: everything is notFound
  explicit PhotoStore(std::string folder, DiskCalls disk = plainDisk());
  [[nodiscard]] static PhotoStore beside(const std::string& file) { return PhotoStore(file + ".photos"); }
  [[nodiscard]] const std::string& folder() const { return m_folder; }
  [[nodiscard]] std::string pathOf(const std::string& hash) const;

  struct Kept {
    std::string hash;
    std::int64_t bytes = 0;
    int width = 0, height = 0;
    bool isNew = false;  // false: the same bytes were there
  };
  // On the disk, folder and all, when it returns. Errors: those of examineJpeg, tooLong, diskFull, readOnly, cannotWrite.
  [[nodiscard]] Result<Kept> put(std::string_view jpeg) const;
  // Errors: notAllowed with kPhotoMissing or kPhotoAltered, cannotRead; place: the file.
  [[nodiscard]] Result<std::string> read(const std::string& hash) const;
  // Gone already is fine. Errors: readOnly, cannotWrite.
  [[nodiscard]] Result<void> remove(const std::string& hash) const;
  // Hashes of the files that lie there, in order; no folder: none.
  [[nodiscard]] Result<std::vector<std::string>> list() const;
  void removeDrafts() const;  // what a killed put left
  void removeFolderIfBare() const;

 private:
  std::string m_folder;
  DiskCalls m_disk;
};

}  // namespace snugline::book
