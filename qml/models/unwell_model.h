// SPDX-License-Identifier: Apache-2.0
// Purpose: what staff do about a hit or feeling bad that was said: they have been told, they ask where it was said to be touched by
// mistake, and somebody with the mark closes it. It records who did so and when, nothing medical, and never that anybody may play. The row
// on the board stays until it is closed and the seven points of the helmet have been seen since (core/season).
// Errors: `trouble`, one sentence. Thread: GUI thread only.
#pragma once

#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "choices.h"
#include "desk.h"

namespace snugline::models {

class UnwellModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString who READ who NOTIFY changed)         // "A player at this tablet, 2:10 PM"; empty of an athlete with a number
  Q_PROPERTY(QString words READ words NOTIFY changed)     // what stands, empty where nothing does
  Q_PROPERTY(QVariantList acts READ acts NOTIFY changed)  // {name, text, detail, enabled}: what can be done now, or who can
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString waitingAbout READ waitingAbout NOTIFY changed)  // said without a number and not closed, the oldest; empty: none
  Q_PROPERTY(QString waitingWords READ waitingWords NOTIFY changed)
 public:
  UnwellModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  // An athlete, or what was said without a number, by its fact.
  Q_INVOKABLE void open(const QString& about);
  Q_INVOKABLE void act(const QString& name);  // "told", "mistake", "close"
  Q_INVOKABLE bool isUnnamed(const QString& about) const;

  [[nodiscard]] QString who() const;
  [[nodiscard]] QString words() const;
  [[nodiscard]] QVariantList acts() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] static QString unnamedWords(Instant at, Day today);

  [[nodiscard]] QString waitingAbout() const;
  [[nodiscard]] QString waitingWords() const;

 signals:
  void changed();

 private:
  [[nodiscard]] const season::SaidRecord* unnamed(const std::string& fact) const;
  [[nodiscard]] const season::SaidRecord* said() const;  // the oldest that is not closed

  Desk* m_desk;
  std::string m_about;
  QString m_trouble;
  bool m_isBusy = false;
};

}  // namespace snugline::models
