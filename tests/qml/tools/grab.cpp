// SPDX-License-Identifier: Apache-2.0
// Purpose: draws one QML file at one size into a PNG, so that a change to a part can be looked at.
// Usage: qml_grab file.qml out.png width height [property=value ...]; SNUGLINE_GRAB_AFTER_MS (400); QT_QPA_PLATFORM=offscreen
// QT_QUICK_BACKEND=software. Exit 1 on any QML warning.
#include <cstdio>

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QTimer>

namespace {
int g_warnings = 0;
void count(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtWarningMsg || type == QtCriticalMsg) ++g_warnings;
  std::fprintf(stderr, "%s\n", qPrintable(text));
}
}  // namespace

int main(int argc, char** argv) {
  qInstallMessageHandler(count);
  const QGuiApplication app(argc, argv);
  const QStringList arguments = QCoreApplication::arguments();
  if (arguments.size() < 5) {
    std::fprintf(stderr, "usage: qml_grab file.qml out.png width height [property=value ...]\n");
    return 2;
  }
  QQuickView view;
  view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
  QVariantMap initial;
  for (const QString& pair : arguments.mid(5)) {
    const qsizetype at = pair.indexOf(QLatin1Char('='));
    const QString value = pair.mid(at + 1);
    bool isNumber = false;
    const double number = value.toDouble(&isNumber);
    initial.insert(pair.left(at), value == QLatin1String("true") ? QVariant(true) : isNumber ? QVariant(number) : QVariant(value));
  }
  view.setInitialProperties(initial);
  view.setResizeMode(QQuickView::SizeRootObjectToView);
  view.resize(arguments.at(3).toInt(), arguments.at(4).toInt());
  view.setSource(QUrl::fromLocalFile(arguments.at(1)));
  if (view.status() != QQuickView::Ready) return 1;
  view.show();
  bool saved = false;
  QTimer::singleShot(
      qEnvironmentVariableIntValue("SNUGLINE_GRAB_AFTER_MS") > 0 ? qEnvironmentVariableIntValue("SNUGLINE_GRAB_AFTER_MS") : 400, &view,
      [&] {
        saved = view.grabWindow().save(arguments.at(2));
        QCoreApplication::quit();
      });
  const int code = QCoreApplication::exec();
  return code != 0 || !saved || g_warnings > 0 ? 1 : 0;
}
