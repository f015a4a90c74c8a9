// SPDX-License-Identifier: Apache-2.0
// Purpose: one life of the app for the kill journey: makes so many touches of the plan, says where it stands, and is killed or ends.
// Arguments: folder, number of touches, "die" | "live", "air" where that plan is meant. Output: "stage|title|answers on disk".
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "field.h"

namespace {

// A first fit with a brow that sits high once, from the doors to the seven points.
constexpr const char* kPlan[] = {"door-line", "act-57", "wet",  "set",  "over", "over", "pumps-1", "snug",
                                 "snug",      "snug",   "snug", "snug", "snug", "snug", "snug",    "snug"};

// The starting air of one bladder from a gauge: what is typed counts from its record on.
constexpr const char* kAirPlan[] = {"door-line", "act-57", "wet",    "choice-air-crown", "key-3",
                                    "key-.",     "key-1",  "record", "entry-plus",       "record"};

void say(snugline::field::Field& field) {
  std::size_t answers = 0;
  for (const auto& [id, check] : field.views().openChecks) answers += check.answers.size();
  std::printf("%s|%s|%zu\n", qPrintable(field.stage()), qPrintable(field.title()), answers);
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 4) return 2;
  const bool isAir = argc == 5 && std::string(argv[4]) == "air";
  snugline::field::Field field(argv[1]);
  field.closeEyes();
  if (!field.open()) return 3;
  const int touches = std::atoi(argv[2]);
  const std::string end = argv[3];
  for (int i = 0; i < touches; ++i) {
    if (!field.touch(QLatin1String(isAir ? kAirPlan[i] : kPlan[i]))) return 4;
  }
  if (touches > 1 && !field.until([&] { return field.screen() == "guide"; })) return 5;
  say(field);
  if (end == "die") std::raise(SIGKILL);
  return 0;
}
