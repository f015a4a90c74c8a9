// SPDX-License-Identifier: Apache-2.0
// Purpose: how long names are shown, legal holds, and one athlete's whole record, shown and handed out. What somebody said about how they
// feel is in none of it. Files are named by day and number, never by a name. Errors: one sentence in `trouble`. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include <vector>

#include "lock_model.h"

namespace snugline::models {

class PrivacyModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(int years READ years NOTIFY changed)                   // that names are shown; 0: always
  Q_PROPERTY(QString yearsWords READ yearsWords NOTIFY changed)     // how many are kept back now
  Q_PROPERTY(QVariantList teamHolds READ teamHolds NOTIFY changed)  // {id, text, detail}
  Q_PROPERTY(QVariantList athleteHolds READ athleteHolds NOTIFY changed)
  Q_PROPERTY(bool mayChange READ mayChange NOTIFY changed)        // an admin holds the glass
  Q_PROPERTY(QString title READ title NOTIFY changed)             // of the record: jersey and name, or that it is kept back
  Q_PROPERTY(QString nameWords READ nameWords NOTIFY changed)     // since when a name is kept back; else empty
  Q_PROPERTY(QVariantList lines READ lines NOTIFY recordChanged)  // {when, who, text}, newest first
  Q_PROPERTY(QString place READ place NOTIFY changed)             // where what was handed out stands
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
 public:
  PrivacyModel(Desk* desk, Choices* choices, LockModel* lock, QObject* parent = nullptr);

  Q_INVOKABLE void setYears(int years);
  Q_INVOKABLE void hold(const QString& athlete, const QString& reason);  // athlete empty: everybody
  Q_INVOKABLE void endHold(const QString& athlete, const QString& hold, const QString& reason);
  Q_INVOKABLE void open(const QString& athlete);
  Q_INVOKABLE void handOut(const QString& form);  // "pdf", "csv", "json"
  Q_INVOKABLE void forgetTrouble();

  [[nodiscard]] int years() const;
  [[nodiscard]] QString yearsWords() const;
  [[nodiscard]] QVariantList teamHolds() const;
  [[nodiscard]] QVariantList athleteHolds() const;
  [[nodiscard]] bool mayChange() const;
  [[nodiscard]] QString title() const;
  [[nodiscard]] QString nameWords() const;
  [[nodiscard]] QVariantList lines() const { return m_lines; }
  [[nodiscard]] QString place() const { return m_place; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void recordChanged();

 private:
  [[nodiscard]] const season::AthleteRecord* record() const;
  [[nodiscard]] QVariantList holdsOf(const std::vector<season::LegalHoldRecord>& holds) const;
  void read();
  void write(Desk::Job job);
  void say(const QString& trouble);
  [[nodiscard]] std::string bytesOf(const QString& form) const;

  Desk* m_desk;
  Choices* m_choices;
  LockModel* m_lock;
  std::string m_athlete;
  std::vector<book::Fact> m_facts;
  QVariantList m_lines;
  QString m_trouble, m_place;
  bool m_isBusy = false;
};

}  // namespace snugline::models
