// SPDX-License-Identifier: Apache-2.0
// Purpose: the main of the tests of the Line screens: Qt Quick Test with a Ground to stand on.
#include <QtQuickTest/quicktest.h>
#include <QQmlEngine>

#include "ground.h"

class Setup : public QObject {
  Q_OBJECT
 public slots:
  void applicationAvailable() { snugline::app::installWords(); }
  void qmlEngineAvailable(QQmlEngine* engine) {
    engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    qmlRegisterType<snugline::tests::Ground>("Snugline.Ground", 1, 0, "Ground");
  }
};

QUICK_TEST_MAIN_WITH_SETUP(snugline_line, Setup)

#include "line_main.moc"
