// SPDX-License-Identifier: Apache-2.0
// Purpose: a disk between SQLite and the real one that counts and, when told, fails: at the k-th write or sync, once or from then on.
// It offers no shared memory, so a Book that needed any would not open. Thread: one test, one thread.
#pragma once

#include <sqlite3.h>

#include <optional>
#include <string>

namespace snugline::test {

class FaultVfs {
 public:
  explicit FaultVfs(std::string name);
  ~FaultVfs();
  FaultVfs(const FaultVfs&) = delete;
  FaultVfs& operator=(const FaultVfs&) = delete;
  [[nodiscard]] const std::string& name() const { return m_name; }

  struct Counts {
    int walSyncs = 0, fileSyncs = 0;  // of the WAL, of the database file
    int walPages = 0, filePages = 0;  // frames written to the WAL, pages to the file
    [[nodiscard]] int syncs() const { return walSyncs + fileSyncs; }
  };
  void startCounting() { m_counts = {}; }
  [[nodiscard]] const Counts& counts() const { return m_counts; }

  enum class Deed { write, sync };
  // The k-th deed from now on fails with code (1 = the next one); isForGood: all later writes and syncs too.
  void failAt(Deed deed, int k, int code, bool isForGood);
  void heal() { m_plan.reset(); }
  // As in a folder that cannot be written to: no file can be made beside the Book.
  void refuseWal() { m_isWalRefused = true; }
  [[nodiscard]] bool hasFailed() const { return m_hasFailed; }

 private:
  friend struct FaultFile;
  [[nodiscard]] int outcomeOf(Deed deed);
  struct Plan {
    Deed deed = Deed::write;
    int left = 0, code = 0;
    bool isForGood = false;
  };
  std::string m_name;
  sqlite3_vfs m_vfs{};
  sqlite3_vfs* m_real = nullptr;
  Counts m_counts;
  std::optional<Plan> m_plan;
  bool m_hasFailed = false;
  bool m_isWalRefused = false;
};

}  // namespace snugline::test
