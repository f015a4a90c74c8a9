// SPDX-License-Identifier: Apache-2.0
// Purpose: the yearly warning: its text, set by the team; read and signed on a page that the athlete holds, which only a staff code ends;
// who has yet to sign. Whoever enters that code is the witness and signs for it. Without codes the one who holds the glass is the witness.
// While the page is open nothing of another athlete is in a property.
// Errors: one sentence in `trouble`. Ownership: as made. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantMap>

#include "core/book/privacy_acts.h"
#include "lock_model.h"

namespace snugline::models {

class WarningModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString step READ step NOTIFY changed)  // "read", "witness"
  Q_PROPERTY(QString jersey READ jersey NOTIFY changed)
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
  Q_PROPERTY(QString text READ text NOTIFY changed)
  Q_PROPERTY(bool asGuardian READ asGuardian NOTIFY changed)
  Q_PROPERTY(bool needsCode READ needsCode NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(int openCount READ openCount NOTIFY changed)          // athletes on the roster who have yet to sign, or whose guardian has
  Q_PROPERTY(QString openWords READ openWords NOTIFY changed)      // empty when all have
  Q_PROPERTY(QString englishText READ englishText NOTIFY changed)  // as set, else the plain ones of this program
  Q_PROPERTY(QString spanishText READ spanishText NOTIFY changed)
  Q_PROPERTY(QString setWords READ setWords NOTIFY changed)  // since when, by whom, or that it is the plain one
  Q_PROPERTY(QString place READ place NOTIFY changed)        // of the form to sign at home
  Q_PROPERTY(int textMost READ textMost CONSTANT)
 public:
  WarningModel(Desk* desk, Choices* choices, LockModel* lock, QObject* parent = nullptr);

  // {text, detail, isOpen, athleteOpen, guardianOpen, guardianNeeded} of one athlete, for the athlete's page.
  Q_INVOKABLE QVariantMap stateOf(const QString& athlete) const;
  Q_INVOKABLE void open(const QString& athlete, bool asGuardian);  // hands the glass over
  Q_INVOKABLE void sign(const QString& initials);
  Q_INVOKABLE void again();      // back to reading
  Q_INVOKABLE void witnessed();  // where nobody has a code
  Q_INVOKABLE void leave();      // without signing
  Q_INVOKABLE void signedOnPaper(const QString& athlete, bool asGuardian, const QString& initials);
  Q_INVOKABLE void setTexts(const QString& english, const QString& spanish, bool asksAnew);
  Q_INVOKABLE void printForm();
  Q_INVOKABLE void forgetTrouble();

  [[nodiscard]] QString step() const { return m_step; }
  [[nodiscard]] QString jersey() const;
  [[nodiscard]] QString language() const;
  void setLanguage(const QString& language);
  [[nodiscard]] QString text() const;
  [[nodiscard]] bool asGuardian() const { return m_as == season::Signer::guardian; }
  [[nodiscard]] bool needsCode() const { return m_lock->hasCodes(); }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] int openCount() const;
  [[nodiscard]] QString openWords() const;
  [[nodiscard]] QString englishText() const { return QString::fromStdString(textIn("en")); }
  [[nodiscard]] QString spanishText() const { return QString::fromStdString(textIn("es")); }
  [[nodiscard]] QString setWords() const;
  [[nodiscard]] QString place() const { return m_place; }
  [[nodiscard]] int textMost() const { return static_cast<int>(book::kWarningTextMost); }

 signals:
  void changed();
  void kept();      // a text, or a signature on paper, is on disk
  void finished();  // signed and witnessed, on disk: the staff's side again

 private:
  [[nodiscard]] std::string textIn(const std::string& language) const;
  void say(const QString& trouble);
  void onOpened();
  void keep(const std::string& athlete, const book::Signing& signing);

  Desk* m_desk;
  Choices* m_choices;
  LockModel* m_lock;
  std::vector<book::WarningSet::Text> m_plain;  // of this program
  QString m_step = QStringLiteral("read");
  QString m_trouble, m_initials, m_place;
  std::string m_athlete;
  season::Signer m_as = season::Signer::athlete;
  bool m_isBusy = false, m_isOut = false;
};

}  // namespace snugline::models
