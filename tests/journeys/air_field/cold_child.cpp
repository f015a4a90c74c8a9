// SPDX-License-Identifier: Apache-2.0
// Purpose: one life of the app on the first cold day: the chip is changed, the line is checked with one exception, and the app is killed.
// Argument: folder. Exit codes below 128 name the step that did not come.
#include <csignal>

#include "field.h"
#include "qml/models/shell.h"

namespace {

using snugline::field::Field;

constexpr int kTouchesDown = 9;  // of 5 F: from 70 to 25

bool makeItCold(Field& field) {
  if (!field.touch("door-line") || !field.touch("weather") || !field.touch("outside")) return false;
  for (int i = 0; i < kTouchesDown; ++i) {
    if (!field.touch("step-5")) return false;
  }
  return field.shows("25") && field.touch("close");
}

bool checkTheLine(Field& field) {
  if (!field.touch("line-check") || !field.until([&] { return field.screen() == "line-check"; })) return false;
  if (!field.touch("tile-57") || !field.touch("straps-under") || !field.touch("close")) return false;
  return field.touch("line-all") && field.until([&] { return !field.app().shell().lineCheck()->doneWords().isEmpty(); });
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  Field field(argv[1]);
  field.closeEyes();
  if (!field.open()) return 3;
  if (!makeItCold(field)) return 4;
  if (!field.until([&] { return field.app().shell().line()->beforePractice() == 6; })) return 5;
  if (!field.shows("down at 25")) return 6;
  if (!checkTheLine(field)) return 7;
  if (!field.until([&] { return field.app().shell().line()->beforePractice() == 1; })) return 8;
  std::raise(SIGKILL);
  return 0;
}
