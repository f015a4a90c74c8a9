// SPDX-License-Identifier: Apache-2.0
// Purpose: kills the app while a model sheet is written, once it is kept and once the old one is put back, and starts it again: what was
// written is there, what was kept counts, and a check that was open goes on by the sheet it began with.
#include <sys/wait.h>
#include <unistd.h>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <string>

#include SNUGLINE_CATCH_HEADER

namespace {
constexpr int kDeaths = 3;

// Runs the walk in a process of its own; its wait status.
int live(const std::string& folder, int dieAt, bool isSecond) {
  const pid_t child = ::fork();
  if (child == 0) {
    ::setenv("SNUGLINE_ROOM", folder.c_str(), 1);
    ::setenv("SNUGLINE_DIE_AT", std::to_string(dieAt).c_str(), 1);
    ::setenv("SNUGLINE_SECOND_LIFE", isSecond ? "1" : "0", 1);
    ::setenv("QT_QUICK_BACKEND", "software", 1);
    ::execl(SNUGLINE_ROOM_PROGRAM, SNUGLINE_ROOM_PROGRAM, "-platform", "offscreen", "-silent", "-input", SNUGLINE_KILL_WALK, nullptr);
    ::_exit(127);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return status;
}
}  // namespace

TEST_CASE("killed while a model sheet changes, the app starts again where it was", "[journey]") {
  const int dieAt = GENERATE(range(1, kDeaths + 1));
  CAPTURE(dieAt);
  const std::string folder =
      (std::filesystem::temp_directory_path() / ("snugline-sheet-" + std::to_string(::getpid()) + "-" + std::to_string(dieAt))).string();
  std::filesystem::create_directories(folder);
  const int first = live(folder, dieAt, false);
  CHECK((WIFSIGNALED(first) && WTERMSIG(first) == SIGKILL));
  const int second = live(folder, dieAt, true);
  CHECK((WIFEXITED(second) && WEXITSTATUS(second) == 0));
  std::filesystem::remove_all(folder);
}
