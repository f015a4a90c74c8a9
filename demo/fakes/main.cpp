// SPDX-License-Identifier: Apache-2.0
// The demo: the shipping app on the demo team's Book, its clock at the demo day. With --gallery it writes pictures of its screens.
#include <cstdio>

#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QQuickView>
#include <QSize>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>

#include "core/book/book.h"
#include "core/ports/memory_gauge.h"
#include "core/ports/memory_nfc.h"
#include "core/ports/memory_photos.h"
#include "demo/fakes/demo_clock.h"
#include "demo/fakes/gallery.h"
#include "demo/fakes/painted_helmet.h"
#include "demo/fakes/played_gauge.h"
#include "demo/generator/demo_world.h"
#include "platform/app/composition.h"
#include "platform/photos/photo_maker.h"
#include "platform/printing/folder_outbox.h"
#include "platform/system/file_attempts.h"
#include "platform/system/file_keys.h"
#include "qml/models/choices.h"

namespace {

using namespace snugline;

// The identity of whoever wrote the demo's history is not kept: the app that opens the Book is another device, as it would be.
Result<std::uint64_t> makeBook(const QString& path, const demo::Options& options) {
  const QTemporaryDir keysFolder;
  platform::FileKeys keys(keysFolder.path().toStdString());
  return demo::makeDemo(path.toStdString(), options, keys);
}

// The demo's hour, or that of the last entry of its Book. A Book that cannot be read is the app's to tell.
Instant lastHour(const std::string& path, const std::string& keysFolder, Instant hour) {
  platform::FileKeys keys(keysFolder);
  demo::DemoClock clock({hour, true});
  const auto opened = book::Book::open(path, book::Access::readOnly, keys, clock);
  return opened ? demo::goOnFrom(hour, (*opened)->views()) : hour;
}

// How the pictures are to look; the program itself keeps its choices in a file.
struct Look {
  QString theme = QStringLiteral("day");
  int textPercent = 100;
  QString language = QStringLiteral("en");
};

constexpr int kPlayMs = 100;

// The demo in a folder of its own: its Book made when missing, its clock at the demo day (standing still for pictures).
class DemoApp {
 public:
  DemoApp(const QDir& folder, const QString& book, const QString& choices, bool isClockStill, bool isEmpty = false) {
    const demo::Options options;
    app::Places places;
    places.book = book;
    places.choices = choices;
    if (isEmpty) places.phone = folder.filePath(QStringLiteral("own-phone"));
    places.ifMissing.name = "Demo";
    places.ifMissing.season = "2026";
    if (!isEmpty && !QFile::exists(places.book) && !makeBook(places.book, options)) {
      std::fprintf(stderr, "The demo's Book could not be made at %s.\n", qPrintable(places.book));
      return;
    }
    const std::string keys = folder.filePath(QStringLiteral("keys")).toStdString();
    const demo::DemoStart start{isClockStill ? demo::nowOf(options) : lastHour(places.book.toStdString(), keys, demo::nowOf(options)),
                                isClockStill};
    app::Edges edges{[start] { return std::make_unique<demo::DemoClock>(start); },
                     [keys] { return std::make_unique<platform::FileKeys>(keys); },
                     std::make_shared<platform::FileAttempts>(keys),
                     [this, isClockStill]() -> std::unique_ptr<ports::PressureGauge> {
                       if (!isClockStill) return playedGauge();
                       auto gauge = std::make_unique<ports::MemoryGauge>();
                       m_gauge = gauge.get();
                       return gauge;
                     },
                     {},
                     {},
                     isClockStill ? std::shared_ptr<ports::Outbox>(std::make_shared<ports::MemoryOutbox>())
                                  : std::make_shared<platform::FolderOutbox>(folder.filePath(QStringLiteral("papers"))),
                     [] { return std::make_unique<ports::MemoryPhotoCamera>(ports::CameraState::seeing, demo::paintedHelmet()); },
                     [] { return std::make_unique<photos::PlainPhotoMaker>(); },
                     // For the pictures a device that reads NFC tags; for people what there is on most desks.
                     [isClockStill] { return std::make_unique<ports::MemoryNfc>(isClockStill); }};
    m_composition = std::make_unique<app::Composition>(std::move(edges), places);
    m_composition->load();
    if (m_composition->view().rootObject() == nullptr) {
      std::fprintf(stderr, "The screens did not load.\n");
      m_composition.reset();
    }
  }
  [[nodiscard]] app::Composition* composition() { return m_composition.get(); }  // null: said on stderr why
  [[nodiscard]] ports::MemoryGauge& gauge() { return *m_gauge; }                 // of the composition, for pictures

 private:
  // Plays on while somebody listens to it.
  std::unique_ptr<ports::PressureGauge> playedGauge() {
    auto gauge = std::make_unique<demo::PlayedGauge>();
    QObject::connect(&m_play, &QTimer::timeout, &m_play, [this, played = gauge.get()] {
      const bool isHeard = played->play(static_cast<double>(m_since.elapsed()) / 1000.0, m_composition->desk().now());
      if (!isHeard) m_since.restart();
    });
    m_since.start();
    m_play.start(kPlayMs);
    return gauge;
  }

  QTimer m_play;
  QElapsedTimer m_since;
  std::unique_ptr<app::Composition> m_composition;
  ports::MemoryGauge* m_gauge = nullptr;
};

// Each size begins from a fresh Book, so that every size shows the same flow.
// only: a part of the walk, or all of it.
bool writePictures(const QString& target, const QList<QSize>& sizes, const Look& look, const QString& only) {
  bool isGood = true;
  const QString first = QStringLiteral("first");  // needs a Book with nobody in it
  for (const QSize size : sizes) {
    for (const bool isEmpty : {false, true}) {
      if (!only.isEmpty() && isEmpty != (only == first)) continue;
      const QTemporaryDir passing;
      const QDir folder(passing.path());
      DemoApp demo(folder, folder.filePath(QStringLiteral("harrow-creek.snugbook")), {}, true, isEmpty);
      if (demo.composition() == nullptr) return false;
      demo.composition()->choices().setTheme(look.theme);
      demo.composition()->choices().setTextPercent(look.textPercent);
      demo.composition()->choices().setLanguage(look.language);
      demo.composition()->choices().setSayLanguage(look.language);
      const QTemporaryDir pocketFolder;
      const QDir inPocket(pocketFolder.path());
      std::unique_ptr<DemoApp> pocket;
      if (!isEmpty && (only.isEmpty() || only == QLatin1String("phone")))
        pocket = std::make_unique<DemoApp>(inPocket, inPocket.filePath(QStringLiteral("own.snugbook")), QString(), true, true);
      if (pocket && pocket->composition() != nullptr) {
        pocket->composition()->choices().setTheme(look.theme);
        pocket->composition()->choices().setTextPercent(look.textPercent);
        pocket->composition()->choices().setLanguage(look.language);
        pocket->composition()->choices().setSayLanguage(look.language);
      }
      isGood = demo::writeGallery(*demo.composition(), demo.gauge(), target, size, isEmpty ? first : only,
                                  pocket ? pocket->composition() : nullptr) &&
               isGood;
    }
  }
  return isGood;
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
  const QCommandLineOption size(QStringLiteral("size"), QCoreApplication::translate("demo", "Only pictures of this size, as 390x844."),
                                QStringLiteral("size"));
  const QCommandLineOption theme(QStringLiteral("theme"), QCoreApplication::translate("demo", "Pictures in day, sun or night."),
                                 QStringLiteral("theme"), Look().theme);
  const QCommandLineOption text(QStringLiteral("text"), QCoreApplication::translate("demo", "Text size of the pictures in percent."),
                                QStringLiteral("percent"), QString::number(Look().textPercent));
  const QCommandLineOption language(QStringLiteral("language"), QCoreApplication::translate("demo", "Language of the pictures, en or es."),
                                    QStringLiteral("language"), Look().language);
  const QCommandLineOption only(
      QStringLiteral("only"),
      QCoreApplication::translate("demo", "Only the pictures of people, gear, photos, dock, sheets, phone, or first."),
      QStringLiteral("part"));
  parser.addOptions({only, gallery, book, size, theme, text, language});
  parser.process(application);

  if (parser.isSet(gallery)) {
    QList<QSize> sizes{QSize(390, 844), QSize(834, 1194), QSize(1194, 834)};
    if (parser.isSet(size)) {
      const QStringList sides = parser.value(size).split(QLatin1Char('x'));
      sizes = {QSize(sides.value(0).toInt(), sides.value(1).toInt())};
      if (sizes.first().isEmpty()) {
        std::fprintf(stderr, "\"%s\" is no size; write 390x844.\n", qPrintable(parser.value(size)));
        return 2;
      }
    }
    return writePictures(parser.value(gallery), sizes, {parser.value(theme), parser.value(text).toInt(), parser.value(language)},
                         parser.value(only))
               ? 0
               : 1;
  }
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/snugline-demo"));
  folder.mkpath(QStringLiteral("."));
  DemoApp demo(folder, parser.isSet(book) ? parser.value(book) : folder.filePath(QStringLiteral("harrow-creek.snugbook")),
               folder.filePath(QStringLiteral("choices.ini")), false);
  if (demo.composition() == nullptr) return 1;
  demo.composition()->view().resize(834, 1194);
  demo.composition()->view().show();
  return QGuiApplication::exec();
}
