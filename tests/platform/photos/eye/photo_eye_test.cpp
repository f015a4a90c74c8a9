// SPDX-License-Identifier: Apache-2.0
// Frames as a camera hands them over, made into pixels. No real camera is tried here.
#include "platform/photos/photo_eye.h"

#include <array>

#include SNUGLINE_CATCH_HEADER

#include <QGuiApplication>
#include <QVideoFrame>
#include <QVideoFrameFormat>

using namespace snugline;
using namespace snugline::photos;

namespace {

void needApplication() {
  static int argc = 3;
  static char name[] = "eye", option[] = "-platform", value[] = "offscreen";
  static char* argv[] = {name, option, value, nullptr};
  static QGuiApplication application(argc, argv);
}

// Red at the left, blue at the right.
QVideoFrame frameOf(int width, int height) {
  QVideoFrame frame(QVideoFrameFormat(QSize(width, height), QVideoFrameFormat::Format_BGRX8888));
  REQUIRE(frame.map(QVideoFrame::WriteOnly));
  for (int y = 0; y < height; ++y) {
    uchar* row = frame.bits(0) + static_cast<std::ptrdiff_t>(y) * frame.bytesPerLine(0);
    for (int x = 0; x < width; ++x) {
      const bool isLeft = x < width / 2;
      row[x * 4] = isLeft ? 0 : 255;
      row[x * 4 + 1] = 0;
      row[x * 4 + 2] = isLeft ? 255 : 0;
      row[x * 4 + 3] = 255;
    }
  }
  frame.unmap();
  return frame;
}

}  // namespace

TEST_CASE("A frame is taken whole, row after row without gaps, and shown smaller") {
  needApplication();
  const ports::ColourPicture whole = coloursOf(frameOf(1001, 600));  // rows that do not end on a word
  CHECK(whole.width == 1001);
  CHECK(whole.height == 600);
  REQUIRE(whole.rgb.size() == 1001U * 600U * 3U);
  const auto pixel = [&](int x, int y) {
    const auto at = (static_cast<std::size_t>(y) * 1001 + static_cast<std::size_t>(x)) * 3;
    return std::array{whole.rgb[at], whole.rgb[at + 1], whole.rgb[at + 2]};
  };
  CHECK(pixel(3, 599) == std::array<std::uint8_t, 3>{255, 0, 0});
  CHECK(pixel(1000, 0) == std::array<std::uint8_t, 3>{0, 0, 255});
  const ports::ColourPicture small = coloursOf(frameOf(1001, 600), 100);
  CHECK(small.width == 100);
  CHECK(small.rgb.size() == static_cast<std::size_t>(small.width) * static_cast<std::size_t>(small.height) * 3);
  CHECK(coloursOf(QVideoFrame()).rgb.empty());
}

TEST_CASE("An eye that was never opened has nothing to take and may be closed twice") {
  needApplication();
  PhotoEye eye;
  CHECK(eye.take().error().detail == ports::kNothingSeen);
  eye.stop();
  eye.stop();
}
