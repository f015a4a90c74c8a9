// SPDX-License-Identifier: Apache-2.0
// What the room knows of photos: pictures as cameras write them, and what is stored of them.
#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QImage>

#include "core/book/jpeg_shape.h"
#include "core/ports/memory_ports.h"
#include "platform/system/file_keys.h"
#include "qml/models/sentences_gear.h"
#include "room.h"
#include "tests/core/book/photo_bytes.h"

namespace snugline::tests {

namespace {
constexpr auto kBook = "room.snug";

// Exif 2.32 (CIPA DC-008-2019, 4.6.4): Make in words, Orientation 6: what is seen at the right belongs at the top.
std::string exifTurned() {
  using std::string_view_literals::operator""sv;
  std::string tiff("II\x2A\0\x08\0\0\0"sv);
  tiff += "\2\0\x0F\1\2\0\x10\0\0\0\x26\0\0\0\x12\1\3\0\1\0\0\0\6\0\0\0\0\0\0\0"sv;
  tiff += "Maker of camera\0"sv;
  return test::jpegSegment(0xE1, std::string("Exif\0\0", 6) + tiff);
}
}  // namespace

QString Room::writeCameraPicture(const QString& name, int width, int height) {
  QImage picture(width, height, QImage::Format_RGB32);
  picture.fill(QColor(230, 228, 220));
  for (int y = 0; y < height / 2; ++y) {
    for (int x = 0; x < width / 2; ++x) picture.setPixelColor(x, y, QColor(20, 40, 60));
  }
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!picture.save(&buffer, "JPEG", 95)) qFatal("cannot write a JPEG");
  bytes.insert(2, QByteArray::fromStdString(exifTurned() + test::exifWithPlace() + test::jpegSegment(0xFE, "behind the gym")));
  return write(name, bytes);
}

QStringList Room::photoFiles() const {
  const QDir folder(inFolder(QLatin1String(kBook)) + QStringLiteral(".photos"));
  QStringList files;
  for (const QString& name : folder.entryList(QDir::Files)) files << folder.filePath(name);
  return files;
}

bool Room::holdsBytes(const QString& file, const QString& bytes) const {
  QFile in(file);
  return in.open(QIODevice::ReadOnly) && in.readAll().contains(bytes.toLatin1());
}

QSize Room::plainSize(const QString& file) const {
  QFile in(file);
  if (!in.open(QIODevice::ReadOnly)) return {};
  const auto shape = book::examineJpeg(in.readAll().toStdString());
  return shape ? QSize(shape->width, shape->height) : QSize();
}

void Room::spoil(const QString& file) {
  QFile out(file);
  if (!out.open(QIODevice::ReadWrite) || !out.seek(out.size() - 3)) qFatal("cannot spoil %s", qPrintable(file));
  const char byte = static_cast<char>(out.peek(1).at(0) ^ 1);
  out.write(&byte, 1);
}

void Room::showHelmet() {
  ports::ColourPicture seen{320, 240, {}};
  for (int i = 0; i < 320 * 240; ++i) {
    for (const int part : {40, 70, 90}) seen.rgb.push_back(static_cast<std::uint8_t>(part));
  }
  m_photoCamera->show(seen);
}

QStringList Room::openedPapers() const {
  QStringList list;
  for (const std::string& place : m_outbox->opened) list.append(QString::fromStdString(place));
  return list;
}

QStringList Room::printed() const {
  QStringList parts;
  if (m_outbox->papers.empty()) return parts;
  for (const ports::PaperPart& part : m_outbox->papers.rbegin()->second.parts) {
    const bool isPicture = part.kind == ports::PaperPart::Kind::picture && !part.picture.empty();
    parts << (isPicture ? QStringLiteral("picture: ") : QStringLiteral("words: ")) + models::text(part.text);
  }
  return parts;
}

QString Room::verified() {
  platform::FileKeys keys(models::utf8(inFolder(QStringLiteral("keys"))));
  const std::unique_ptr<ports::Clock> clock = std::make_unique<eyes::MovingClock>(m_time);
  const auto book = book::Book::open(models::utf8(inFolder(QLatin1String(kBook))), book::Access::readOnly, keys, *clock);
  if (!book) return models::errorSentence(book.error());
  const auto answer = (*book)->verify();
  if (!answer) return models::errorSentence(answer.error());
  if (answer->isOk) return QStringLiteral("ok, %1 photos").arg(answer->photos);
  QStringList faults;
  for (const auto& fault : answer->photoFaults) {
    faults << QStringLiteral("%1 %2").arg(models::text(fault.what), models::text((*book)->views().unit(fault.unit)->serial));
  }
  return faults.join(QLatin1Char(';'));
}

}  // namespace snugline::tests
