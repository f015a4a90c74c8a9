// SPDX-License-Identifier: Apache-2.0
// Purpose: what a test of a Line screen stands on: the field's Book of three athletes in a folder of its own, and the shell of the
// shipping composition on it, with a clock that moves at every touch. The screens are made by the test. After every act they are looked at
// with fresh eyes (tests/eyes): what is not true is a warning, and a test of screens fails on one. Thread: GUI thread.
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QString>
#include <QTemporaryDir>

#include "fresh_eyes.h"
#include "platform/app/composition.h"
#include "qml/models/shell.h"

namespace snugline::tests {

class Ground : public QObject {
  Q_OBJECT
  Q_PROPERTY(snugline::models::Shell* shell READ shell NOTIFY begun)
 public:
  ~Ground() override;
  [[nodiscard]] models::Shell* shell() const { return m_app ? &m_app->shell() : nullptr; }

  // A fresh Book; sheet: of demo/data, worn by everybody in it.
  Q_INVOKABLE bool begin(const QString& sheet = QStringLiteral("sheets/alder-a1.json"));
  Q_INVOKABLE void end();
  Q_INVOKABLE [[nodiscard]] QString athlete(const QString& jersey) const;
  Q_INVOKABLE bool settled();  // waits until nothing is on its way to the disk
  Q_INVOKABLE void answer(const QString& name);
  // A helmet on the shelf, of the size that everybody here wears; fault: of its faceguard, so that it is held.
  Q_INVOKABLE bool addSpare(const QString& serial, const QString& fault = {});
  Q_INVOKABLE [[nodiscard]] QString wornBy(const QString& jersey) const;  // serial
  Q_INVOKABLE [[nodiscard]] int holdsOf(const QString& serial) const;

 signals:
  void begun();

 private:
  void look();
  std::shared_ptr<eyes::MovingTime> m_time;
  std::unique_ptr<eyes::Hand> m_hand;
  bool m_isStirred = false;
  std::unique_ptr<QTemporaryDir> m_folder;
  std::unique_ptr<app::Composition> m_app;
};

}  // namespace snugline::tests
