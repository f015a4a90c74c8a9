// SPDX-License-Identifier: Apache-2.0
// Purpose: the recovery sheet: made by an admin, and used once when every code is forgotten. Its key stands on paper and, until `finish`,
// on this glass; the Book holds its hash. Misses and waits are the codes' own (LockModel::gate). Errors: one sentence in `trouble`.
// Ownership: as made; Desk and lock outlive it. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>

#include "core/book/recovery.h"
#include "lock_model.h"

namespace snugline::models {

class RecoveryModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  // "" nothing, "none" no sheet was ever made, "key", "who", "code", "again", "sheet" the key is shown
  Q_PROPERTY(QString step READ step NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString waiting READ waiting NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QVariantList admins READ admins NOTIFY changed)  // {id, initials}, once the key was right
  Q_PROPERTY(QString person READ person NOTIFY changed)       // initials
  Q_PROPERTY(QString key READ key NOTIFY changed)             // in its groups
  Q_PROPERTY(QString place READ place NOTIFY changed)         // where the sheet to print stands; empty when it could not be written
  Q_PROPERTY(QString made READ made NOTIFY changed)           // "Made 14 Oct by MT"; empty when there is none
  Q_PROPERTY(bool mayMake READ mayMake NOTIFY changed)        // an admin holds the glass
  Q_PROPERTY(int keyDigits READ keyDigits CONSTANT)
 public:
  RecoveryModel(Desk* desk, LockModel* lock, QObject* parent = nullptr);

  Q_INVOKABLE void begin();  // on the wall: somebody forgot every code
  Q_INVOKABLE void enterKey(const QString& digits);
  Q_INVOKABLE void choose(const QString& admin);
  Q_INVOKABLE void enterCode(const QString& digits);  // twice
  Q_INVOKABLE void make();                            // staff's side, by an admin: the sheets before are void
  Q_INVOKABLE void finish();                          // the key was written down or printed; it is shown no more
  Q_INVOKABLE void leave();

  [[nodiscard]] QString step() const { return m_step; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] QString waiting() const { return m_lock->waiting(); }
  [[nodiscard]] bool isBusy() const { return m_isBusy || m_lock->isBusy(); }
  [[nodiscard]] QVariantList admins() const;
  [[nodiscard]] QString person() const;
  [[nodiscard]] QString key() const { return m_key; }
  [[nodiscard]] QString place() const { return m_place; }
  [[nodiscard]] QString made() const;
  [[nodiscard]] bool mayMake() const;
  [[nodiscard]] int keyDigits() const { return static_cast<int>(book::kRecoveryDigits); }

 signals:
  void changed();

 private:
  struct Fresh {
    std::string key;
    book::CodeHash keyHash, codeHash;
  };
  void say(const QString& trouble);
  void go(const QString& step);
  void makeFresh(const std::string& code, std::function<void(const Fresh&)> then);  // code empty: only a key
  void shown(const Fresh& fresh);

  Desk* m_desk;
  LockModel* m_lock;
  QTimer m_walkedAway;
  QString m_step, m_trouble, m_key, m_place, m_first;
  std::string m_person;
  bool m_isBusy = false, m_isKeyRight = false, m_isOnWall = false;
};

}  // namespace snugline::models
