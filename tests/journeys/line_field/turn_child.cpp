// SPDX-License-Identifier: Apache-2.0
// Purpose: one life of the app where helmets are handed in, for the kill journey: types so many tags, each with Enter as a hand scanner
// does, and is killed as soon as the last one was typed, wherever its write stands. Arguments: folder, number of tags.
#include <csignal>
#include <cstdlib>
#include <string>

#include <QQuickView>
#include <QTest>

#include "field.h"
#include "qml/models/season_model.h"
#include "qml/models/shell.h"

int main(int argc, char** argv) {
  if (argc != 3) return 2;
  snugline::field::Field field(argv[1]);
  field.closeEyes();
  if (!field.open()) return 3;
  for (const char* name : {"door-book", "season", "collect"}) {
    if (!field.touch(QLatin1String(name))) return 4;
  }
  if (!field.until([&] { return field.find("scan") != nullptr; })) return 5;
  const int tags = std::atoi(argv[2]);
  auto& collect = *field.app().shell().season()->collect();
  for (int i = 1; i <= tags; ++i) {
    const std::string number = std::to_string(i);
    for (const char c : "T-" + std::string(4 - number.size(), '0') + number) QTest::keyClick(&field.app().view(), c);
    QTest::keyClick(&field.app().view(), Qt::Key_Return);
    if (i == tags) std::raise(SIGKILL);
    if (!field.until([&] { return !collect.isBusy(); })) return 6;
  }
  return 7;
}
