// SPDX-License-Identifier: Apache-2.0
// Purpose: a roster file before and while it is taken in: what would be added, changed, left, questioned and refused, line by line, and
// then the one act that writes it. Reading again changes nothing. Thread: GUI thread. Errors: a sentence in `refusal`.
#pragma once

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/roster.h"
#include "qml/models/last_act.h"

namespace snugline::models {

class RosterImport : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of RosterModel")
  Q_PROPERTY(bool isRead READ isRead NOTIFY changed)  // a file was read and waits to be taken in
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QString file READ file NOTIFY changed)            // name without its folder
  Q_PROPERTY(QString formWords READ formWords NOTIFY changed)  // "UTF-8, semicolons"
  Q_PROPERTY(int added READ added NOTIFY changed)
  Q_PROPERTY(int altered READ altered NOTIFY changed)
  Q_PROPERTY(int unchanged READ unchanged NOTIFY changed)
  Q_PROPERTY(int questioned READ questioned NOTIFY changed)
  Q_PROPERTY(int unanswered READ unanswered NOTIFY changed)  // of the questions
  Q_PROPERTY(int refused READ refused NOTIFY changed)
  // {line, kind, who, why, question, answers: [{name, text, chosen}]}; kind: refused, questioned, added, changed
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString outcome READ outcome NOTIFY changed)      // after it was taken in
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what undo takes back: of the whole roster, also one athlete

 public:
  RosterImport(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] bool isRead() const { return m_isRead; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] QString file() const { return m_file; }
  [[nodiscard]] QString formWords() const;
  [[nodiscard]] int added() const { return static_cast<int>(m_plan.added); }
  [[nodiscard]] int altered() const { return static_cast<int>(m_plan.changed); }
  [[nodiscard]] int unchanged() const { return static_cast<int>(m_plan.unchanged); }
  [[nodiscard]] int questioned() const { return static_cast<int>(m_plan.questioned.size()); }
  [[nodiscard]] int unanswered() const;
  [[nodiscard]] int refused() const { return static_cast<int>(m_plan.refused.size()); }
  [[nodiscard]] QVariantList rows() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString outcome() const { return m_outcome; }
  [[nodiscard]] QString lastWords() const { return m_last.words(); }

  Q_INVOKABLE void read(const QString& pathOrUrl);
  Q_INVOKABLE void answer(const QString& question, const QString& name);  // "as-written" or "left-out"
  Q_INVOKABLE void takeIn();
  Q_INVOKABLE void putAside();
  Q_INVOKABLE void undo();
  void did(const book::Appended& appended, const QString& words) { m_last.did(appended.ids, words); }

 signals:
  void changed();
  void taken();  // on disk

 private:
  Desk* m_desk;
  LastAct m_last;
  book::RosterRead m_rosterRead;
  book::RowAnswers m_answers;
  book::RosterPlan m_plan;
  bool m_isRead = false, m_isBusy = false;
  QString m_file, m_refusal, m_outcome;
};

}  // namespace snugline::models
