// SPDX-License-Identifier: Apache-2.0
// Purpose: the wall between the athletes' side and the staff's: locked or not, who opens it, codes set and tried. Where nobody has a code
// nothing is ever locked. A code is hashed on a thread of its own (some tens of milliseconds, 64 MiB); misses and waits are
// core/book/code_gate.h's. A device that slept, or that nobody touched for Choices::lockMinutes, locks.
// While locked nobody signs: what is recorded on the athletes' side carries no person.
// Errors: one sentence in `trouble`. Ownership: as made; the Desk and Choices outlive it. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>

#include <functional>
#include <memory>

#include "choices.h"
#include "core/book/code_gate.h"
#include "core/ports/outbox.h"
#include "core/ports/ports.h"
#include "desk.h"

namespace snugline::models {

// What the lock needs of the outside. Left empty (tests of other screens): misses kept in memory, salts from a made-up chance.
struct LockEdges {
  std::shared_ptr<ports::Attempts> attempts;
  Desk::MakeKeys makeKeys;  // for salts only
  book::CodeCost cost;
  std::shared_ptr<ports::Outbox> outbox = nullptr;  // none: papers stay in memory
};

class LockModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString wall READ wall NOTIFY
                 changed)  // "" staff's side, "say" athletes' side, "sign" an athlete reads and signs, "locked" asks for a code
  Q_PROPERTY(bool hasCodes READ hasCodes NOTIFY changed)
  Q_PROPERTY(QString waiting READ waiting NOTIFY changed)  // "Wait 0:27, then try again", empty when none
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QString person READ person NOTIFY changed)         // who is asked for a code, or sets one: initials and name
  Q_PROPERTY(bool isSetting READ isSetting NOTIFY changed)      // a code is being set, else tried
  Q_PROPERTY(bool isRepeating READ isRepeating NOTIFY changed)  // the new code once more
  Q_PROPERTY(int leastDigits READ leastDigits CONSTANT)
  Q_PROPERTY(int mostDigits READ mostDigits CONSTANT)
 public:
  LockModel(Desk* desk, Choices* choices, LockEdges edges, QObject* parent = nullptr);

  Q_INVOKABLE void touched();   // somebody is there
  Q_INVOKABLE void lock();      // asks for a code from now on, where anybody has one
  Q_INVOKABLE bool openSay();   // hands the glass to the athletes; false where nobody has a code
  Q_INVOKABLE void leaveSay();  // asks for a code
  // Hands the glass over for one page, to read and sign; where nobody has a code, takeBack gives it back to whoever held it.
  void handOver();
  void takeBack();
  // Staff's side: another person takes the glass (their code is asked), or sets a code for the first time or anew.
  Q_INVOKABLE void ask(const QString& person);
  Q_INVOKABLE void enter(const QString& digits);  // tries, or sets, as isSetting says
  Q_INVOKABLE void forget();                      // the person asked for goes away again

  [[nodiscard]] QString wall() const { return m_wall; }
  [[nodiscard]] bool hasCodes() const;
  [[nodiscard]] QString waiting() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] QString person() const;
  [[nodiscard]] bool isSetting() const { return m_isSetting; }
  [[nodiscard]] bool isRepeating() const { return !m_first.isEmpty(); }
  [[nodiscard]] int leastDigits() const { return static_cast<int>(book::kCodeLeast); }
  [[nodiscard]] int mostDigits() const { return static_cast<int>(book::kCodeMost); }
  // Whether this person may be given a code by whoever holds the glass: oneself, or anybody by an admin; anybody while there is no code
  // yet, or no admin with one.
  [[nodiscard]] bool maySetCode(const std::string& person) const;
  void setIdleTime(int ms);  // for tests that do not wait

  [[nodiscard]] static QString codeRefused(const QString& digits);  // why a new code cannot be taken; empty when it can
  // For the recovery sheet: the same count of misses, the same thread for hashing.
  [[nodiscard]] std::shared_ptr<book::CodeGate> gate();
  [[nodiscard]] const LockEdges& edges() const { return m_edges; }
  void work(std::function<std::function<void()>()> job);
  void takeUp(const std::string& person);  // holds the glass from now on

 signals:
  void changed();
  void opened();   // the code was right: the staff's side
  void codeSet();  // a new code is on disk

 private:
  void onOpened();
  void beat();
  void tryCode(const QString& digits);
  void setCode(const QString& digits);
  void keepCode(const season::CodeHash& code);
  void say(const QString& trouble);

  Desk* m_desk;
  Choices* m_choices;
  LockEdges m_edges;
  std::shared_ptr<book::CodeGate> m_gate;  // used by one job at a time, and here only while there is none
  QTimer m_idle, m_beat;
  QElapsedTimer m_sinceBeat;
  qint64 m_wallBeatMs = 0;
  QString m_wall, m_trouble, m_first;
  std::string m_person;
  std::string m_before;  // who held the glass before it was handed over
  int m_idleMs = 0;      // instead of Choices::lockMinutes, when set
  bool m_isBusy = false, m_isSetting = false;
};

}  // namespace snugline::models
