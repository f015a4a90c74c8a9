// SPDX-License-Identifier: Apache-2.0
// Purpose: the one application object of these tests, and waiting in it. Thread: GUI thread.
#pragma once

#include <functional>

#include <QCoreApplication>
#include <QDeadlineTimer>

namespace snugline::test {

inline constexpr int kPatienceMs = 15'000;

inline void application() {
  static int argc = 1;
  static char name[] = "models";
  static char* argv[] = {name, nullptr};
  static QCoreApplication app(argc, argv);
}

inline bool until(const std::function<bool()>& isSo) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 10);
  }
  return true;
}

}  // namespace snugline::test
