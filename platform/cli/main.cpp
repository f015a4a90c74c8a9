// SPDX-License-Identifier: Apache-2.0
// Purpose: the same core from a terminal. Exit 0 done, 1 the answer is no, 2 bad input with one line on standard error.
#include <cstdio>
#include <exception>
#include <filesystem>
#include <string>

#include "platform/cli/requests.h"
#include "platform/cli/words.h"
#include "platform/system/file_keys.h"
#include "platform/system/system_clock.h"

namespace {

using namespace snugline;

int refuse(const std::string& line) {
  std::fputs((cli::oneLine(line) + '\n').c_str(), stderr);
  return cli::kBadInput;
}

// What could not be written has not been said: a full disk behind standard output is an error like any other.
int say(const std::string& text, int exitCode) {
  const bool isWritten = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  return isWritten ? exitCode : refuse("snug: standard output: the answer could not be written; expected room for it");
}

int run(int argc, char** argv) {
  const cli::Parsed parsed = cli::parseOptions(argc, argv);
  if (!parsed.error.empty()) return refuse(parsed.error);
  if (!parsed.run) return say(parsed.out, parsed.exitCode);
  platform::SystemClock clock;
  platform::FileKeys keys(platform::keysFolder());
  std::error_code ignored;
  cli::Outside outside{clock, keys, std::filesystem::read_symlink("/proc/self/exe", ignored).parent_path().string()};
  const Result<cli::Reply> reply = parsed.run(outside);
  if (!reply) return refuse("snug: " + cli::sentence(reply.error()));
  return say(parsed.isJson ? reply->json + '\n' : reply->text, reply->exitCode);
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run(argc, argv);
  } catch (const std::exception& e) {
    return refuse(std::string("snug: internal fault: ") + e.what());
  } catch (...) {
    return refuse("snug: internal fault of an unknown kind");
  }
}
