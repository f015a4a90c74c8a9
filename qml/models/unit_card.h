// SPDX-License-Identifier: Apache-2.0
// Purpose: the card of one helmet as a paper: label, points, holds, its photos (each proved), what was done. Names no athlete.
// Errors: a sentence in `refusal`. Thread: GUI thread.
#pragma once

#include <memory>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "core/ports/outbox.h"

namespace snugline::models {

class Desk;

class UnitCard : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of Shell")
  Q_PROPERTY(QString unitId READ unitId NOTIFY changed)    // printed last
  Q_PROPERTY(QString place READ place NOTIFY changed)      // where it stands
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)  // why there is none
 public:
  // outbox may be null: then nothing is printed in this program.
  UnitCard(Desk* desk, std::shared_ptr<ports::Outbox> outbox, QObject* parent = nullptr);

  [[nodiscard]] QString unitId() const { return m_unit; }
  [[nodiscard]] QString place() const { return m_place; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  Q_INVOKABLE void print(const QString& unit);
  Q_INVOKABLE void forget();

 signals:
  void changed();

 private:
  Desk* m_desk;
  std::shared_ptr<ports::Outbox> m_outbox;
  QString m_unit, m_place, m_refusal;
};

}  // namespace snugline::models
