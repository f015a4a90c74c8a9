// SPDX-License-Identifier: Apache-2.0
// Purpose: kills the app at the Dock after every touch of two arrivals and starts it again: no answer is lost and none is taken twice.
#include <sys/wait.h>
#include <unistd.h>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <string>

#include SNUGLINE_CATCH_HEADER

namespace {
constexpr int kTouches = 12;

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

TEST_CASE("killed after any touch at the Dock, the app starts again with every answer", "[journey]") {
  const int dieAt = GENERATE(range(1, kTouches + 1));
  CAPTURE(dieAt);
  const std::string folder =
      (std::filesystem::temp_directory_path() / ("snugline-kill-" + std::to_string(::getpid()) + "-" + std::to_string(dieAt))).string();
  std::filesystem::create_directories(folder);
  const int first = live(folder, dieAt, false);
  CHECK((WIFSIGNALED(first) && WTERMSIG(first) == SIGKILL));
  const int second = live(folder, dieAt, true);
  CHECK((WIFEXITED(second) && WEXITSTATUS(second) == 0));
  std::filesystem::remove_all(folder);
}
