// SPDX-License-Identifier: Apache-2.0
// Purpose: the staff's side of athletes' own phones: a code for one athlete, letting a phone go, and taking in the file that a phone wrote;
// the answer for it is written beside it. The code stands on the glass only until the page is left. Errors: one sentence in `refusal`.
// Ownership: the Shell's. Thread: GUI thread only; files are read and written on the Book's thread.
#pragma once

#include <functional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>

#include "choices.h"
#include "desk.h"
#include "sentences.h"

namespace snugline::models {

// Rows of a square code, "1" dark, without a margin; empty when it cannot be drawn.
using DrawCode = std::function<QStringList(const QString& text)>;

class PhonesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString who READ who NOTIFY changed)      // "88 Lindqvist"
  Q_PROPERTY(QString state READ state NOTIFY changed)  // "A phone joined 14 Oct", or that none has
  Q_PROPERTY(bool hasPhone READ hasPhone NOTIFY changed)
  Q_PROPERTY(QString code READ code NOTIFY changed)  // in groups of four, to be typed; empty while none is shown
  Q_PROPERTY(QStringList matrix READ matrix NOTIFY changed)
  Q_PROPERTY(QString remark READ remark NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QString joinedWords READ joinedWords NOTIFY changed)  // how many have a phone of their own
 public:
  PhonesModel(Desk* desk, Choices* choices, Desk::MakeKeys makeKeys, DrawCode drawCode, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& athlete);
  Q_INVOKABLE void close();  // no code on the glass any more
  Q_INVOKABLE void invite();
  Q_INVOKABLE void letGo();
  Q_INVOKABLE void takeIn(const QString& file);

  [[nodiscard]] QString who() const;
  [[nodiscard]] QString state() const;
  [[nodiscard]] bool hasPhone() const;
  [[nodiscard]] QString code() const;
  [[nodiscard]] QStringList matrix() const { return m_matrix; }
  [[nodiscard]] QString remark() const { return m_remark; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] QString joinedWords() const;

 signals:
  void changed();

 private:
  [[nodiscard]] const season::AthleteRecord* record() const;
  void work(Desk::Work work, std::function<void(const book::Appended&)> then);

  Desk* m_desk;
  Choices* m_choices;
  Desk::MakeKeys m_makeKeys;
  DrawCode m_drawCode;
  std::string m_athlete;
  QString m_code, m_remark, m_refusal;
  QStringList m_matrix;
  bool m_isBusy = false;
};

}  // namespace snugline::models
