// SPDX-License-Identifier: Apache-2.0
// Purpose: what whoever is signed in may do (core/book/rights.h), and in words who may where they may not, so that no screen offers what
// the Book would refuse. The words are empty where it is allowed. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "core/book/rights.h"
#include "desk.h"

namespace snugline::models {

class RightsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(bool isStaff READ isStaff NOTIFY changed)
  Q_PROPERTY(bool isAdmin READ isAdmin NOTIFY changed)
  Q_PROPERTY(bool isPractitioner READ isPractitioner NOTIFY changed)
  Q_PROPERTY(QString staffOnly READ staffOnly NOTIFY changed)  // "Staff do this"
  Q_PROPERTY(QString adminOnly READ adminOnly NOTIFY changed)  // "An admin does this: MT"
 public:
  explicit RightsModel(Desk* desk, QObject* parent = nullptr);

  [[nodiscard]] bool isStaff() const { return may(book::Right::staff); }
  [[nodiscard]] bool isAdmin() const { return may(book::Right::admin); }
  [[nodiscard]] bool isPractitioner() const { return may(book::Right::practitioner); }
  [[nodiscard]] QString staffOnly() const { return isStaff() ? QString() : whoMay(m_desk->views(), book::Right::staff); }
  [[nodiscard]] QString adminOnly() const { return isAdmin() ? QString() : whoMay(m_desk->views(), book::Right::admin); }
  // "An admin does this: MT, SK"; with nobody of that kind in the Book, what to do about it.
  [[nodiscard]] static QString whoMay(const season::Views& views, book::Right right);

 signals:
  void changed();

 private:
  [[nodiscard]] bool may(book::Right right) const { return book::may(m_desk->views(), m_desk->person(), right); }

  Desk* m_desk;
};

}  // namespace snugline::models
