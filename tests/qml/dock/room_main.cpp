// SPDX-License-Identifier: Apache-2.0
// Purpose: the main of the tests that need a Book: Qt Quick Test with the Room to play in.
#include <QtQuickTest/quicktest.h>
#include <QQmlEngine>

#include "room.h"

class Setup : public QObject {
  Q_OBJECT
 public slots:
  void qmlEngineAvailable(QQmlEngine* engine) {
    engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    qmlRegisterType<snugline::tests::Room>("Snugline.Room", 1, 0, "Room");
  }
};

QUICK_TEST_MAIN_WITH_SETUP(snugline_room, Setup)

#include "room_main.moc"
