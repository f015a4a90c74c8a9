// SPDX-License-Identifier: Apache-2.0
// Plain pictures out of frames and files; what stands in the stored file is looked at by test_photo_road.py with another library.
#include "platform/photos/photo_maker.h"

#include SNUGLINE_CATCH_HEADER

#include <QColorSpace>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QTemporaryDir>

#include "core/book/jpeg_shape.h"

using namespace snugline;
using namespace snugline::photos;

namespace {

void needApplication() {
  static int argc = 3;
  static char name[] = "photos", option[] = "-platform", value[] = "offscreen";
  static char* argv[] = {name, option, value, nullptr};
  static QGuiApplication application(argc, argv);
}
struct Bench {
  Bench() { needApplication(); }
  QTemporaryDir folder;
  PlainPhotoMaker maker;
  [[nodiscard]] std::string path(const char* name) const { return folder.filePath(QLatin1String(name)).toStdString(); }
  [[nodiscard]] Result<std::string> of(const QByteArray& bytes) {
    QFile file(folder.filePath(QStringLiteral("in")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    return maker.fromFile(file.fileName().toStdString());
  }
};
QImage decoded(const Result<std::string>& jpeg) {
  REQUIRE(jpeg);
  return QImage::fromData(QByteArray::fromStdString(*jpeg), "jpeg");
}

}  // namespace

TEST_CASE("A frame of the camera becomes a plain JPEG with its colours, no larger than is kept") {
  Bench bench;
  ports::ColourPicture seen{2400, 900, {}};
  for (int i = 0; i < 2400 * 900; ++i) seen.rgb.insert(seen.rgb.end(), {200, 40, 30});
  const auto jpeg = bench.maker.fromPicture(seen);
  REQUIRE(jpeg);
  const auto shape = book::examineJpeg(*jpeg);
  REQUIRE(shape);
  CHECK(*shape == book::JpegShape{1600, 600});
  const QColor colour = decoded(jpeg).pixelColor(800, 300);
  CHECK(std::abs(colour.red() - 200) < 6);
  CHECK(std::abs(colour.green() - 40) < 6);
  seen.rgb.pop_back();
  CHECK(bench.maker.fromPicture(seen).error().detail == ports::kNothingSeen);
  CHECK(bench.maker.fromPicture({}).error().detail == ports::kNothingSeen);
}

TEST_CASE("What shows through is white, and a picture of one pixel is one") {
  Bench bench;
  QImage clear(300, 200, QImage::Format_ARGB32);
  clear.fill(Qt::transparent);
  clear.setText(QStringLiteral("Comment"), QStringLiteral("behind the gym"));
  clear.setColorSpace(QColorSpace(QColorSpace::DisplayP3));
  REQUIRE(clear.save(QString::fromStdString(bench.path("clear.png"))));
  const auto jpeg = bench.maker.fromFile(bench.path("clear.png"));
  REQUIRE(jpeg);
  CHECK(book::examineJpeg(*jpeg).has_value());
  CHECK(jpeg->find("gym") == std::string::npos);
  CHECK(decoded(jpeg).pixelColor(10, 10) == QColor(Qt::white));
  QImage one(1, 1, QImage::Format_RGB32);
  one.fill(Qt::black);
  REQUIRE(one.save(QString::fromStdString(bench.path("one.png"))));
  CHECK(decoded(bench.maker.fromFile(bench.path("one.png"))).size() == QSize(1, 1));
}

TEST_CASE("A very long and narrow picture keeps at least one pixel of width") {
  Bench bench;
  QImage narrow(1, 9000, QImage::Format_RGB32);
  narrow.fill(Qt::black);
  REQUIRE(narrow.save(QString::fromStdString(bench.path("narrow.png"))));
  CHECK(decoded(bench.maker.fromFile(bench.path("narrow.png"))).size() == QSize(1, 1600));
}

TEST_CASE("What is no picture that is read here is refused by its bytes, not by its name") {
  Bench bench;
  for (const char* bytes : {"", "hello", "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>", "%PDF-1.7", "GIF89a"}) {
    INFO(bytes);
    CHECK(bench.of(bytes).error().detail == ports::kNotAPicture);
  }
  CHECK(bench.of("\xFF\xD8\xFF").error().detail == ports::kPictureDamaged);
  CHECK(bench.maker.fromFile(bench.path("none.jpg")).error().code == ErrorCode::cannotRead);
  CHECK(bench.maker.fromFile(bench.folder.path().toStdString()).error().detail == ports::kNotAPicture);
}
