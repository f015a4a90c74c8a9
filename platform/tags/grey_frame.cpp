// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/grey_frame.h"

#include <cstdint>
#include <vector>

#include <QImage>
#include <QVideoFrame>
#include <QVideoFrameFormat>

namespace snugline::tags {

namespace {

using Format = QVideoFrameFormat::PixelFormat;

bool isBrightnessFirst(Format format) {
  return format == QVideoFrameFormat::Format_NV12 || format == QVideoFrameFormat::Format_NV21 ||
         format == QVideoFrameFormat::Format_YUV420P || format == QVideoFrameFormat::Format_YUV422P ||
         format == QVideoFrameFormat::Format_YV12 || format == QVideoFrameFormat::Format_IMC1 || format == QVideoFrameFormat::Format_IMC2 ||
         format == QVideoFrameFormat::Format_IMC3 || format == QVideoFrameFormat::Format_IMC4 || format == QVideoFrameFormat::Format_Y8;
}

// Where red, green and blue stand in four bytes, or brightness in pairs of bytes.
struct Packing {
  int red = -1, green = -1, blue = -1;
  int brightness = -1;
};
std::optional<Packing> packingOf(Format format) {
  if (format == QVideoFrameFormat::Format_BGRA8888 || format == QVideoFrameFormat::Format_BGRX8888 ||
      format == QVideoFrameFormat::Format_BGRA8888_Premultiplied)
    return Packing{2, 1, 0};
  if (format == QVideoFrameFormat::Format_RGBA8888 || format == QVideoFrameFormat::Format_RGBX8888) return Packing{0, 1, 2};
  if (format == QVideoFrameFormat::Format_ARGB8888 || format == QVideoFrameFormat::Format_XRGB8888 ||
      format == QVideoFrameFormat::Format_ARGB8888_Premultiplied)
    return Packing{1, 2, 3};
  if (format == QVideoFrameFormat::Format_ABGR8888 || format == QVideoFrameFormat::Format_XBGR8888) return Packing{3, 2, 1};
  if (format == QVideoFrameFormat::Format_YUYV) return Packing{-1, -1, -1, 0};
  if (format == QVideoFrameFormat::Format_UYVY) return Packing{-1, -1, -1, 1};
  return std::nullopt;
}

constexpr unsigned kRedShare = 77, kGreenShare = 150, kBlueShare = 29;  // of 256: 0.299, 0.587, 0.114 (ITU-R BT.601)

void greyLine(const std::uint8_t* from, std::uint8_t* to, int width, const Packing& packing) {
  if (packing.brightness >= 0) {
    from += packing.brightness;
    for (int x = 0; x < width; ++x) to[x] = from[2 * x];
    return;
  }
  const std::uint8_t *red = from + packing.red, *green = from + packing.green, *blue = from + packing.blue;
  for (int x = 0; x < width; ++x)
    to[x] = static_cast<std::uint8_t>((kRedShare * red[4 * x] + kGreenShare * green[4 * x] + kBlueShare * blue[4 * x]) >> 8U);
}

int quarterTurns(const QVideoFrame& frame) {
#if QT_VERSION >= QT_VERSION_CHECK(6, 7, 0)
  return static_cast<int>(frame.rotation()) / 90;
#else
  return static_cast<int>(frame.rotationAngle()) / 90;
#endif
}

// The frame stays mapped as long as somebody looks at it.
std::shared_ptr<QVideoFrame> mapped(const QVideoFrame& given) {
  auto frame = std::make_unique<QVideoFrame>(given);
  if (!frame->map(QVideoFrame::ReadOnly)) return nullptr;
  return {frame.release(), [](QVideoFrame* held) {
            held->unmap();
            delete held;
          }};
}

bool isWhole(const QVideoFrame& frame, int bytesPerPixel) {
  const int line = frame.width() * bytesPerPixel;
  return frame.bits(0) != nullptr && frame.bytesPerLine(0) >= line &&
         frame.mappedBytes(0) >= frame.bytesPerLine(0) * (frame.height() - 1) + line;
}

}  // namespace

std::optional<TakenFrame> greyOf(const QVideoFrame& given) {
  if (!given.isValid() || given.width() <= 0 || given.height() <= 0) return std::nullopt;
  TakenFrame taken;
  taken.quarterTurns = quarterTurns(given);
  taken.isMirrored = given.mirrored();
  const int width = given.width(), height = given.height();
  const Format format = given.pixelFormat();
  const auto packing = packingOf(format);
  if (!packing && !isBrightnessFirst(format)) {
    // Qt's own conversion turns and mirrors; what it made of the frame is shown as it is.
    const QImage image = given.toImage().convertToFormat(QImage::Format_Grayscale8);
    if (image.isNull()) return std::nullopt;
    const auto held = std::make_shared<QImage>(image);
    return TakenFrame{{held->constBits(), held->width(), held->height(), static_cast<int>(held->bytesPerLine())}, held};
  }
  const auto frame = mapped(given);
  if (!frame) return std::nullopt;
  if (!packing) {
    if (!isWhole(*frame, 1)) return std::nullopt;
    taken.grey = {frame->bits(0), width, height, frame->bytesPerLine(0)};
    taken.holder = frame;
    return taken;
  }
  if (!isWhole(*frame, packing->brightness >= 0 ? 2 : 4)) return std::nullopt;
  const auto pixels = std::make_shared<std::vector<std::uint8_t>>(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
  for (int y = 0; y < height; ++y)
    greyLine(frame->bits(0) + static_cast<std::ptrdiff_t>(y) * frame->bytesPerLine(0),
             pixels->data() + static_cast<std::ptrdiff_t>(y) * width, width, *packing);
  taken.grey = {pixels->data(), width, height, width};
  taken.holder = pixels;
  return taken;
}

}  // namespace snugline::tags
