// SPDX-License-Identifier: Apache-2.0
// Purpose: the one main of the Qt Quick tests. Tests fail on any QML warning: each test case calls failOnWarning in init().
#include <QtQuickTest/quicktest.h>
#include <QQmlEngine>

class Setup : public QObject {
  Q_OBJECT
 public slots:
  void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath(QStringLiteral("qrc:/qt/qml")); }
};

QUICK_TEST_MAIN_WITH_SETUP(snugline, Setup)

#include "quick_main.moc"
