// SPDX-License-Identifier: Apache-2.0
// Purpose: the backup file's bytes (BOOK_FORMAT.md, Backup file): written beside under another name, synced, then named; read whole and
// proved before anything is done with it. Errors: fileExists, diskFull, cannotWrite, cannotRead, notABook, damagedBook, badSignature,
// brokenChain. Thread: plain values.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/book/chain.h"

namespace snugline::book {

struct BackupSegment {
  std::string device;
  PublicKey key{};  // zeros if not known
  std::uint64_t first = 0, last = 0;
  Chain chain{};  // at last
  bool isSigned = false;
  Signature signature{};
  std::string lines;  // each followed by a line feed
};

class BackupWriter {
 public:
  [[nodiscard]] static Result<BackupWriter> create(const std::string& path, std::uint32_t segments);
  [[nodiscard]] Result<void> add(const BackupSegment& segment);
  [[nodiscard]] Result<void> finish();  // synced and named
  BackupWriter(BackupWriter&& other) noexcept;
  BackupWriter(const BackupWriter&) = delete;
  BackupWriter& operator=(const BackupWriter&) = delete;
  BackupWriter& operator=(BackupWriter&&) = delete;
  ~BackupWriter();  // an unfinished one is removed

 private:
  BackupWriter() = default;
  [[nodiscard]] Result<void> write(std::string_view bytes);
  struct Hash;
  std::string m_path, m_draft;
  int m_file = -1;
  std::unique_ptr<Hash> m_hash;
};

// Segments in the order of the file, each proved: hash of the file, chain from the device's segment before, signature where there is one.
[[nodiscard]] Result<void> readBackup(const std::string& path, const std::function<Result<void>(const BackupSegment&)>& visit);

}  // namespace snugline::book
