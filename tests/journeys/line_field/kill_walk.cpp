// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <csignal>
#include <cstdio>
#include <string>

#include <sys/wait.h>

#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "field.h"

namespace {

constexpr int kFirstQuestion = 2;  // touches of the plan until the first question shows
constexpr int kLastQuestion = 16;  // until the seven points

// What one life of the app said, and how it ended.
std::string live(const std::string& folder, int touches, const char* end, int& status, const char* plan = "") {
  const std::string command = std::string(SNUGLINE_KILL_CHILD) + " " + folder + " " + std::to_string(touches) + " " + end + " " + plan;
  FILE* child = ::popen(command.c_str(), "r");
  std::string said;
  std::array<char, 256> part{};
  while (child != nullptr && std::fgets(part.data(), static_cast<int>(part.size()), child) != nullptr) said += part.data();
  status = child == nullptr ? -1 : ::pclose(child);
  return said;
}

}  // namespace

TEST_CASE("killed at any question of a first fit, the app starts again at the same question with every answer") {
  for (int touches = kFirstQuestion; touches <= kLastQuestion; ++touches) {
    const QTemporaryDir folder;
    const std::string path = folder.path().toStdString();
    snugline::field::makeBook(path);
    int status = 0;
    const std::string before = live(path, touches, "die", status);
    CAPTURE(touches, before);
    REQUIRE_FALSE(before.empty());
    // The shell reports a killed child as 128 + 9.
    CHECK((WIFSIGNALED(status) || WEXITSTATUS(status) == 128 + SIGKILL));
    CHECK(live(path, 0, "live", status) == before);
    CHECK(status == 0);
  }
}

TEST_CASE("killed after a gauge was read at one bladder, the app starts again at the next one") {
  for (const int touches : {8, 10}) {
    const QTemporaryDir folder;
    const std::string path = folder.path().toStdString();
    snugline::field::makeBook(path);
    int status = 0;
    const std::string before = live(path, touches, "die", status, "air");
    CAPTURE(touches, before);
    CHECK(before.find(touches == 8 ? "reading|Starting air: sides and back|2" : "reading|Starting air: left jaw pad|3") == 0);
    CHECK(live(path, 0, "live", status) == before);
    CHECK(status == 0);
  }
}
