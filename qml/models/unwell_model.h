// SPDX-License-Identifier: Apache-2.0
// Purpose: what staff do about an athlete who said a hit or feeling unwell: the trainer was told, and later a trainer closes it. It records
// who did so and when, nothing medical, and no step of it judges the athlete: who may play is a licensed practitioner's matter. The row on
// the board stays until it is closed and the seven points of the helmet have been seen since (core/season). Errors: `trouble`, one
// sentence. Thread: GUI thread only.
#pragma once

#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "choices.h"
#include "desk.h"

namespace snugline::models {

class UnwellModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString words READ words NOTIFY changed)    // what stands, empty where nothing does
  Q_PROPERTY(QString action READ action NOTIFY changed)  // what can be done now, on the button; empty where nothing can
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  UnwellModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& athlete);
  Q_INVOKABLE void act();

  [[nodiscard]] QString words() const;
  [[nodiscard]] QString action() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }

 signals:
  void changed();

 private:
  [[nodiscard]] const season::SaidRecord* said() const;  // the oldest that is not closed
  [[nodiscard]] bool isTrainer() const;

  Desk* m_desk;
  std::string m_athlete;
  QString m_trouble;
  bool m_isBusy = false;
};

}  // namespace snugline::models
