// SPDX-License-Identifier: Apache-2.0
// Purpose: a maker's notice: what it says, which helmets it means, what that would hold (before it is kept), and the notices kept with what
// they still hold. Which helmets are meant is core's (core/season/notice.h). Errors: a refused act is `refusal`. Thread: GUI thread.
#pragma once

#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/fact.h"
#include "qml/models/desk.h"
#include "qml/models/last_act.h"

namespace snugline::models {

class Choices;

class NoticeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of UnitsModel")
  Q_PROPERTY(QVariantList sheets READ sheets NOTIFY changed)     // {name, text, chosen}
  Q_PROPERTY(QString preview READ preview NOTIFY changed)        // "14 helmets, 9 on heads"; empty until something narrows it
  Q_PROPERTY(QString scopeWords READ scopeWords NOTIFY changed)  // "Alder A1, made 2024"
  Q_PROPERTY(QString notKnown READ notKnown NOTIFY changed)      // helmets of which it cannot be told; empty for none
  Q_PROPERTY(bool takesUnknown READ takesUnknown NOTIFY changed)
  Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed)         // text, day and scope are said
  Q_PROPERTY(QVariantList meant READ meant NOTIFY changed)     // {unit, title, detail, isWorn}: first those on heads
  Q_PROPERTY(QVariantList kept READ kept NOTIFY changed)       // {notice, words, scope, state, units, isOpen}, latest first
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what undo takes back
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
 public:
  NoticeModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void begin();                           // an empty notice, dated today
  Q_INVOKABLE void chooseSheet(const QString& hash);  // again: any sheet
  Q_INVOKABLE void setText(const QString& words);
  Q_INVOKABLE void setDay(const QString& isoDay);  // 2026-10-14
  Q_INVOKABLE void setYears(const QString& from, const QString& to);
  Q_INVOKABLE void setLot(const QString& lot);
  Q_INVOKABLE void setSerials(const QString& from, const QString& to);
  Q_INVOKABLE void setTakesUnknown(bool takes);
  Q_INVOKABLE void keep();  // `written` follows, or `refusal`
  Q_INVOKABLE void undo() { m_last.undo(); }

  [[nodiscard]] QVariantList sheets() const;
  [[nodiscard]] QString preview() const;
  [[nodiscard]] QString scopeWords() const;
  [[nodiscard]] QString notKnown() const;
  [[nodiscard]] bool takesUnknown() const { return m_notice.scope.takesUnknown; }
  [[nodiscard]] bool canKeep() const;
  [[nodiscard]] QVariantList meant() const;
  [[nodiscard]] QVariantList kept() const;
  [[nodiscard]] QString lastWords() const { return m_last.words(); }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void written();

 private:
  Desk* m_desk;
  const Choices* m_choices;
  book::NoticeIssued m_notice;
  bool m_isDayGood = true;
  bool m_areYearsGood = true;
  LastAct m_last;
  QString m_refusal;
  bool m_isBusy = false;
};

}  // namespace snugline::models
