// SPDX-License-Identifier: Apache-2.0
#include "bundled_font.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace snugline::tokens {

QString bundledFamily() {
  static const QString family = [] {
    QFontDatabase::addApplicationFont(QStringLiteral(":/qt/qml/Snugline/Tokens/B612-Bold.otf"));
    const int regular = QFontDatabase::addApplicationFont(QStringLiteral(":/qt/qml/Snugline/Tokens/B612-Regular.otf"));
    const QString name = QFontDatabase::applicationFontFamilies(regular).value(0);
    if (!name.isEmpty()) QGuiApplication::setFont(QFont(name));
    return name;
  }();
  return family;
}

}  // namespace snugline::tokens
