// SPDX-License-Identifier: Apache-2.0
// Purpose: one life of the app for the undo journey. Arguments: folder, "swap-and-die" (swaps a helmet, says what undo would take back, and
// is killed) or "undo" (touches it; says whose helmet it is now, how many holds it has and how many checks stand open).
#include <csignal>
#include <cstdio>
#include <string>

#include "undo_steps.h"

int main(int argc, char** argv) {
  if (argc < 3) return 2;
  snugline::field::Field field(argv[1]);
  if (!field.open()) return 3;
  const std::string what = argv[2];
  if (what == "swap-and-die") {
    if (!snugline::field::addSpare(field) || !field.touch("door-line") || !field.touch("row-57")) return 4;
    if (!snugline::field::swapForSpare(field)) return 5;
    std::printf("%s\n", qPrintable(field.app().shell().guide()->undoWords()));
    std::fflush(stdout);
    std::raise(SIGKILL);
  }
  // The open check is taken up; its first question stands.
  if (!field.until([&] { return field.screen() == "guide"; }) || !field.touch("undo")) return 7;
  if (!field.until([&] { return field.views().openChecks.empty(); })) return 8;
  const std::string serial = snugline::field::serialOf(field, "57");
  if (serial.empty()) return 9;
  std::printf("%s|%zu|%zu\n", serial.c_str(), field.views().unit(field.athlete("57")->units.front())->holds.size(),
              field.views().openChecks.size());
  return 0;
}
