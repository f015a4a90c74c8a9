// SPDX-License-Identifier: Apache-2.0
#include "platform/photos/photo_maker.h"

#include <algorithm>
#include <array>

#include <QBuffer>
#include <QByteArray>
#include <QColorSpace>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

namespace snugline::photos {

namespace {

constexpr std::array kQualities{80, 65, 50, 35};         // the next lower one only where the file would be too large
constexpr qsizetype kResultMost = 4 * 1024 * 1024;       // as the Book takes it
constexpr int kMegabytesMost = 256;                      // that reading one picture may take; ours
constexpr const char* kPngEnd = "IEND\xAE\x42\x60\x82";  // the last chunk with its check, ISO/IEC 15948, 11.2.5
constexpr int kDotsPerMetre = 2835;                      // 72 to the inch: says nothing of the device

// By the bytes themselves, never by the name; formats that can name other files (SVG, say) are not among them.
QByteArray formatOf(const QByteArray& bytes) {
  if (bytes.startsWith("\xFF\xD8\xFF")) return "jpeg";
  if (bytes.startsWith("\x89PNG\r\n\x1a\n")) return "png";
  if (bytes.startsWith("BM")) return "bmp";
  if (bytes.startsWith("RIFF") && bytes.mid(8, 4) == "WEBP") return "webp";
  const QByteArray brand = bytes.mid(4, 8);
  if (brand == "ftypheic" || brand == "ftypheix" || brand == "ftypmif1") return "heic";
  return {};
}

// The end of the picture is there (ITU-T T.81, B.1.1.3): the reader itself would show a picture that was cut short, grey where it ends. The
// small copy that Exif holds lies in a segment and is passed over; what some cameras put behind the end does not matter here.
bool isJpegWhole(const QByteArray& bytes) {
  qsizetype at = 2;
  while (at + 3 < bytes.size()) {
    const auto byte = [&](qsizetype place) { return static_cast<unsigned char>(bytes[place]); };
    if (byte(at) != 0xFF) return false;
    const unsigned sort = byte(at + 1);
    if (sort == 0xDA) return bytes.indexOf("\xFF\xD9", at + 2) >= 0;
    at += sort == 0xFF ? 1 : 2 + (byte(at + 2) << 8 | byte(at + 3));
  }
  return false;
}

Result<std::string> plainJpeg(const QImage& source) {
  QImage pixels = source;
  if (pixels.colorSpace().isValid() && pixels.colorSpace() != QColorSpace(QColorSpace::SRgb)) {
    pixels.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
  }
  QSize size = pixels.size();
  if (std::max(size.width(), size.height()) > kLongestSide) size.scale(kLongestSide, kLongestSide, Qt::KeepAspectRatio);
  size = size.expandedTo(QSize(1, 1));
  if (size != pixels.size()) pixels = pixels.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
  // A new picture, painted: texts, profile and resolution of the old one stay behind.
  QImage plain(size, QImage::Format_RGB32);
  if (plain.isNull()) return fail(ErrorCode::outOfMemory, "photo");
  plain.fill(Qt::white);
  {
    QPainter painter(&plain);
    painter.drawImage(QPoint(0, 0), pixels);
  }
  plain.setDotsPerMeterX(kDotsPerMetre);
  plain.setDotsPerMeterY(kDotsPerMetre);
  for (const int quality : kQualities) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return fail(ErrorCode::internal, "photo");
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(quality);
    if (!writer.write(plain)) return fail(ErrorCode::internal, "photo", writer.errorString().toStdString());
    if (bytes.size() <= kResultMost) return bytes.toStdString();
  }
  return fail(ErrorCode::tooLong, "photo");
}

}  // namespace

Result<std::string> PlainPhotoMaker::fromFile(const std::string& path) {
  const QString name = QString::fromStdString(path);
  if (const QFileInfo entry(name); entry.exists() && !entry.isFile())
    return fail(ErrorCode::notAllowed, path, std::string(ports::kNotAPicture));
  QFile file(name);
  if (!file.open(QIODevice::ReadOnly)) return fail(ErrorCode::cannotRead, path, file.errorString().toStdString());
  if (file.size() > kFileMost) return fail(ErrorCode::tooLong, path, std::to_string(file.size()) + ", " + std::to_string(kFileMost));
  QByteArray bytes = file.read(kFileMost);
  if (file.error() != QFileDevice::NoError) return fail(ErrorCode::cannotRead, path, file.errorString().toStdString());
  const QByteArray format = formatOf(bytes);
  if (format.isEmpty() || !QImageReader::supportedImageFormats().contains(format)) {
    return fail(ErrorCode::notAllowed, path, std::string(ports::kNotAPicture));
  }
  const auto damaged = [&] { return fail(ErrorCode::notAllowed, path, std::string(ports::kPictureDamaged)); };
  if (format == "jpeg" && !isJpegWhole(bytes)) return damaged();
  if (format == "png" && !bytes.contains(kPngEnd)) return damaged();
  QBuffer buffer(&bytes);
  if (!buffer.open(QIODevice::ReadOnly)) return fail(ErrorCode::internal, path);
  QImageReader::setAllocationLimit(kMegabytesMost);
  QImageReader reader(&buffer, format);
  reader.setAutoDetectImageFormat(false);
  reader.setAutoTransform(true);
  const QSize size = reader.size();
  if (!size.isValid() || size.isEmpty()) return damaged();
  if (size.width() > kSourceSideMost || size.height() > kSourceSideMost) {
    return fail(ErrorCode::outOfRange, path,
                std::to_string(size.width()) + "x" + std::to_string(size.height()) + ", 1, " + std::to_string(kSourceSideMost));
  }
  // Smaller while it is decoded, where the format can: less memory than the whole would take. Twice as large as kept, so that scaling stays
  // smooth.
  if (std::max(size.width(), size.height()) > 2 * kLongestSide) {
    reader.setScaledSize(size.scaled(2 * kLongestSide, 2 * kLongestSide, Qt::KeepAspectRatio).expandedTo(QSize(1, 1)));
  }
  const QImage image = reader.read();
  if (image.isNull()) return damaged();
  return plainJpeg(image);
}

Result<std::string> PlainPhotoMaker::fromPicture(const ports::ColourPicture& picture) {
  const auto pixels = static_cast<std::size_t>(std::max(picture.width, 0)) * static_cast<std::size_t>(std::max(picture.height, 0));
  if (pixels == 0 || picture.rgb.size() != pixels * 3) return fail(ErrorCode::notAllowed, "camera", std::string(ports::kNothingSeen));
  const QImage seen(picture.rgb.data(), picture.width, picture.height, static_cast<qsizetype>(picture.width) * 3, QImage::Format_RGB888);
  return plainJpeg(seen);
}

}  // namespace snugline::photos
