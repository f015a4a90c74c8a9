// SPDX-License-Identifier: Apache-2.0
// Purpose: the doors and what waits behind each, in words; and who holds this glass and signs what is recorded on it.
// Errors: a person that cannot be added is `trouble`, one sentence. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "choices.h"
#include "desk.h"
#include "line_model.h"

namespace snugline::models {

class DoorsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString team READ team NOTIFY changed)                // "Harrow Creek High Herons"
  Q_PROPERTY(QString heading READ heading NOTIFY changed)          // "Wed 14 Oct, practice at 15:30"
  Q_PROPERTY(QString lineWaiting READ lineWaiting NOTIFY changed)  // "12 to see before 15:30"
  Q_PROPERTY(QString lineWorst READ lineWorst NOTIFY changed)      // "2 do not wear", empty when none
  Q_PROPERTY(QString sayWaiting READ sayWaiting NOTIFY changed)    // "Helmet bothering you? Show us where.", or how many said something
  Q_PROPERTY(QString dockWaiting READ dockWaiting NOTIFY changed)
  Q_PROPERTY(QString bookWaiting READ bookWaiting NOTIFY changed)
  Q_PROPERTY(QString holder READ holder NOTIFY changed)  // initials, or what to do about it
  Q_PROPERTY(QString holderDetail READ holderDetail NOTIFY changed)
  Q_PROPERTY(QVariantList people READ people NOTIFY changed)  // {id, initials, name, role, roleWords, isPractitioner, isHolder, hasCode}
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  DoorsModel(Desk* desk, Choices* choices, LineModel* line, QObject* parent = nullptr);

  Q_INVOKABLE void choosePerson(const QString& person);
  // Initials are made from the name; role "helper", "staff" or "admin". Signs from now on where codes are not yet used; else gets a code
  // first.
  Q_INVOKABLE void addPerson(const QString& name, const QString& role, bool isPractitioner);
  Q_INVOKABLE void changePerson(const QString& person, const QString& role, bool isPractitioner);

  [[nodiscard]] QString team() const;
  [[nodiscard]] QString heading() const { return m_line->heading(); }
  [[nodiscard]] QString lineWaiting() const;
  [[nodiscard]] QString lineWorst() const;
  [[nodiscard]] QString sayWaiting() const;
  [[nodiscard]] QString dockWaiting() const;
  [[nodiscard]] QString bookWaiting() const;
  [[nodiscard]] QString holder() const;
  [[nodiscard]] QString holderDetail() const;
  [[nodiscard]] QVariantList people() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }

 signals:
  void changed();
  void personAdded();

 private:
  [[nodiscard]] static QString roleWords(const season::PersonRecord& person);
  void takeUpPerson();

  Desk* m_desk;
  Choices* m_choices;
  QString m_trouble;
  LineModel* m_line;
};

}  // namespace snugline::models
