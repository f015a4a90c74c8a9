// SPDX-License-Identifier: Apache-2.0
// The demo: the shipping app on the demo team's Book, its clock at the demo day. With --gallery it writes pictures of its screens.
#include <cstdio>

#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQuickView>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "demo/fakes/demo_clock.h"
#include "demo/fakes/gallery.h"
#include "demo/generator/demo_world.h"
#include "platform/app/composition.h"
#include "platform/system/file_keys.h"

namespace {

using namespace snugline;

// The identity of whoever wrote the demo's history is not kept: the app that opens the Book is another device, as it would be.
Result<std::uint64_t> makeBook(const QString& path, const demo::Options& options) {
  const QTemporaryDir keysFolder;
  platform::FileKeys keys(keysFolder.path().toStdString());
  return demo::makeDemo(path.toStdString(), options, keys);
}

}  // namespace

int main(int argc, char** argv) {
  app::prepare();
  QGuiApplication application(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("snugline-demo"));
  app::installWords();

  QCommandLineParser parser;
  parser.addHelpOption();
  const QCommandLineOption gallery(QStringLiteral("gallery"), QCoreApplication::translate("demo", "Write pictures of the screens and end."),
                                   QStringLiteral("folder"));
  const QCommandLineOption book(QStringLiteral("book"), QCoreApplication::translate("demo", "The demo's Book; made when missing."),
                                QStringLiteral("file"));
  parser.addOptions({gallery, book});
  parser.process(application);

  const QTemporaryDir passing;
  const bool isGallery = parser.isSet(gallery);
  const QDir folder(isGallery ? passing.path()
                              : QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/snugline-demo"));
  folder.mkpath(QStringLiteral("."));

  const demo::Options options;
  app::Places places;
  places.book = parser.isSet(book) ? parser.value(book) : folder.filePath(QStringLiteral("harrow-creek.snugbook"));
  places.choices = isGallery ? QString() : folder.filePath(QStringLiteral("choices.ini"));
  places.ifMissing.name = "Demo";
  places.ifMissing.season = "2026";
  if (!QFile::exists(places.book)) {
    if (const auto made = makeBook(places.book, options); !made) {
      std::fprintf(stderr, "The demo's Book could not be made at %s.\n", qPrintable(places.book));
      return 1;
    }
  }
  const std::string keys = folder.filePath(QStringLiteral("keys")).toStdString();
  app::Edges edges{[options, isGallery] { return std::make_unique<demo::DemoClock>(demo::nowOf(options), isGallery); },
                   [keys] { return std::make_unique<platform::FileKeys>(keys); }};
  app::Composition composition(std::move(edges), places);
  composition.load();
  if (isGallery) return demo::writeGallery(composition, parser.value(gallery)) ? 0 : 1;
  composition.view().resize(834, 1194);
  composition.view().show();
  return QGuiApplication::exec();
}
