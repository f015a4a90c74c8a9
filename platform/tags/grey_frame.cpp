// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/grey_frame.h"

#include <QImage>
#include <QVideoFrame>
#include <QVideoFrameFormat>

namespace snugline::tags {

namespace {

bool isBrightnessFirst(QVideoFrameFormat::PixelFormat format) {
  return format == QVideoFrameFormat::Format_NV12 || format == QVideoFrameFormat::Format_NV21 ||
         format == QVideoFrameFormat::Format_YUV420P || format == QVideoFrameFormat::Format_YUV422P ||
         format == QVideoFrameFormat::Format_YV12 || format == QVideoFrameFormat::Format_IMC1 || format == QVideoFrameFormat::Format_IMC2 ||
         format == QVideoFrameFormat::Format_IMC3 || format == QVideoFrameFormat::Format_IMC4 || format == QVideoFrameFormat::Format_Y8;
}

ports::SeenPicture copied(const uchar* bits, int bytesPerLine, int width, int height) {
  ports::SeenPicture picture{width, height, {}};
  picture.grey.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
  for (int y = 0; y < height; ++y) {
    const uchar* row = bits + static_cast<std::ptrdiff_t>(y) * bytesPerLine;
    picture.grey.insert(picture.grey.end(), row, row + width);
  }
  return picture;
}

}  // namespace

std::optional<ports::SeenPicture> greyOf(const QVideoFrame& given) {
  QVideoFrame frame(given);
  if (!frame.isValid() || frame.width() <= 0 || frame.height() <= 0) return std::nullopt;
  if (isBrightnessFirst(frame.pixelFormat())) {
    if (!frame.map(QVideoFrame::ReadOnly)) return std::nullopt;
    const bool isWhole =
        frame.bytesPerLine(0) >= frame.width() && frame.mappedBytes(0) >= frame.bytesPerLine(0) * (frame.height() - 1) + frame.width();
    auto picture = isWhole ? std::optional(copied(frame.bits(0), frame.bytesPerLine(0), frame.width(), frame.height())) : std::nullopt;
    frame.unmap();
    return picture;
  }
  const QImage image = frame.toImage().convertToFormat(QImage::Format_Grayscale8);
  if (image.isNull()) return std::nullopt;
  return copied(image.constBits(), static_cast<int>(image.bytesPerLine()), image.width(), image.height());
}

}  // namespace snugline::tags
