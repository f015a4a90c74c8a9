// SPDX-License-Identifier: Apache-2.0
// The app: the real clock, this device's identity, a window.
#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QQuickView>
#include <QStandardPaths>

#include "composition.h"
#include "lazy_gauge.h"
#include "lazy_photos.h"
#include "lazy_tags.h"
#include "platform/photos/photo_maker.h"
#include "platform/printing/folder_outbox.h"
#include "platform/system/file_attempts.h"
#include "platform/system/file_keys.h"
#include "platform/system/system_clock.h"

namespace {

using snugline::platform::FileKeys;
using snugline::platform::SystemClock;

snugline::app::Edges realEdges() {
  return {[] { return std::make_unique<SystemClock>(); },
          [] { return std::make_unique<FileKeys>(snugline::platform::keysFolder()); },
          std::make_shared<snugline::platform::FileAttempts>(snugline::platform::keysFolder()),
          [] { return std::make_unique<snugline::app::LazyGauge>(); },
          [] { return std::make_unique<snugline::app::LazyCamera>(); },
          [] { return std::make_unique<snugline::app::LazyLabelSheets>(); },
          std::make_shared<snugline::platform::FolderOutbox>(
              QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath(QStringLiteral("Snugline"))),
          [] { return std::make_unique<snugline::app::LazyPhotoCamera>(); },
          [] { return std::make_unique<snugline::photos::PlainPhotoMaker>(); },
          [] { return std::make_unique<snugline::app::LazyNfc>(); }};
}

QString dataFile(const QString& name) {
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
  folder.mkpath(QStringLiteral("."));
  return folder.filePath(name);
}

}  // namespace

int main(int argc, char** argv) {
  snugline::app::prepare();
  QGuiApplication app(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("snugline"));
  QCoreApplication::setApplicationVersion(QStringLiteral(SNUGLINE_VERSION));
  snugline::app::installWords();

  QCommandLineParser parser;
  parser.addHelpOption();
  parser.addVersionOption();
  const QCommandLineOption book(QStringLiteral("book"), QCoreApplication::translate("main", "The team's Book; made when missing."),
                                QStringLiteral("file"));
  const QCommandLineOption team(QStringLiteral("team"), QCoreApplication::translate("main", "Name of the team of a new Book."),
                                QStringLiteral("name"));
  parser.addOptions({book, team});
  parser.process(app);

  snugline::app::Places places;
  places.book = parser.isSet(book) ? parser.value(book) : dataFile(QStringLiteral("team.snugbook"));
  places.choices = dataFile(QStringLiteral("choices.ini"));
  places.phone = dataFile(QStringLiteral("phone.json"));
  places.ifMissing.name =
      parser.isSet(team) ? parser.value(team).toStdString() : QCoreApplication::translate("main", "Our team").toStdString();
  places.ifMissing.season = std::to_string(snugline::civil(snugline::dayOf(SystemClock().now())).year);

  snugline::app::Composition composition(realEdges(), places);
  composition.load();
  composition.view().resize(834, 1194);
  composition.view().show();
  return QGuiApplication::exec();
}
