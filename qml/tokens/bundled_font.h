// SPDX-License-Identifier: Apache-2.0
// Purpose: the font of every screen, which lies in the program: registered once, before the first text, and made the application's own,
// so that no font of the system is opened for a text that gets ours a moment later. Errors: a cut that cannot be read leaves the
// system's font, as Qt does. Thread: GUI thread, after the application object.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

namespace snugline::tokens {

// Its family name. The first call registers it.
[[nodiscard]] QString bundledFamily();

class BundledFont : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(QString family READ family CONSTANT FINAL)
 public:
  using QObject::QObject;
  [[nodiscard]] QString family() const { return bundledFamily(); }
};

}  // namespace snugline::tokens
