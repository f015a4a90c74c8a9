// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "core/book/code_gate.h"
#include "platform/system/file_attempts.h"

using namespace snugline;
using namespace snugline::platform;

namespace {

struct Folder {
  std::string path;
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "snugline-attempts-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    path = name + "/keys";
  }
  ~Folder() { std::filesystem::remove_all(std::filesystem::path(path).parent_path()); }
  [[nodiscard]] std::string file() const { return path + "/missed-codes"; }
};

}  // namespace

TEST_CASE("Missed codes are found again by the next start, readable by their user alone") {
  const Folder folder;
  CHECK(*FileAttempts(folder.path).load() == ports::MissedCodes{});
  REQUIRE(FileAttempts(folder.path).keep({4, 29'000}));
  CHECK(*FileAttempts(folder.path).load() == ports::MissedCodes{4, 29'000});
  struct stat about {};
  REQUIRE(::stat(folder.file().c_str(), &about) == 0);
  CHECK((about.st_mode & 0777) == 0600);
}

TEST_CASE("A file that is no count of missed codes keeps the gate shut for the longest wait") {
  const Folder folder;
  std::filesystem::create_directories(folder.path);
  for (const std::string text :
       {"", "snugline missed codes 1\n", "snugline missed codes 1\nmany\n0\n", "{}", "snugline missed codes 2\n0\n0\n"}) {
    INFO(text);
    std::ofstream(folder.file(), std::ios::trunc) << text;
    REQUIRE_FALSE(FileAttempts(folder.path).load());
    FileAttempts attempts(folder.path);
    CHECK(book::CodeGate(attempts).waitMs() == book::kWaitMostMs);
  }
}

TEST_CASE("Missed codes that cannot be kept say which file it is about") {
  const Folder folder;
  std::filesystem::create_directories(std::filesystem::path(folder.path).parent_path());
  std::ofstream(folder.path) << "a file where the folder should be";
  const auto kept = FileAttempts(folder.path).keep({1, 0});
  REQUIRE_FALSE(kept);
  CHECK(kept.error().place.find(folder.path) == 0);
  CHECK_FALSE(FileAttempts("").keep({1, 0}));
}
