// SPDX-License-Identifier: Apache-2.0
// Purpose: the doors and what waits behind each, in words. Thread: GUI thread only.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "desk.h"
#include "line_model.h"

namespace snugline::models {

class DoorsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString team READ team NOTIFY changed)                 // "Harrow Creek High Herons"
  Q_PROPERTY(QString heading READ heading NOTIFY changed)           // "Wed 14 Oct, practice at 15:30"
  Q_PROPERTY(QString lineWaiting READ lineWaiting NOTIFY changed)   // "12 to see before 15:30"
  Q_PROPERTY(QString lineWorst READ lineWorst NOTIFY changed)       // "2 do not wear", empty when none
  Q_PROPERTY(QString dockWaiting READ dockWaiting NOTIFY changed)
  Q_PROPERTY(QString bookWaiting READ bookWaiting NOTIFY changed)
 public:
  DoorsModel(Desk* desk, LineModel* line, QObject* parent = nullptr);

  [[nodiscard]] QString team() const;
  [[nodiscard]] QString heading() const { return m_line->heading(); }
  [[nodiscard]] QString lineWaiting() const;
  [[nodiscard]] QString lineWorst() const;
  [[nodiscard]] QString dockWaiting() const;
  [[nodiscard]] QString bookWaiting() const;

 signals:
  void changed();

 private:
  Desk* m_desk;
  LineModel* m_line;
};

}  // namespace snugline::models
