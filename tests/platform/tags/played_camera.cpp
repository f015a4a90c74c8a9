// SPDX-License-Identifier: Apache-2.0
#include "tests/platform/tags/played_camera.h"

#include <array>
#include <utility>
#include <vector>

#include <QVideoSink>

#include "platform/tags/label_sheet.h"

namespace snugline::tests {

namespace {

constexpr int kModule = 9, kQuiet = 2;
constexpr int kDark = 40, kLight = 220, kGround = 150;

// As it is to be seen: upright.
int brightnessAt(const tags::MatrixCode& code, const FrameLook& look, int wide, int high, int x, int y) {
  const int left = wide / 2 - code.width * kModule / 2 + 30, top = high / 2 - code.height * kModule / 2 - 10;
  const auto cell = [](int at, int from) { return at < from ? -1 - (from - at - 1) / kModule : (at - from) / kModule; };
  const int column = cell(x, left), row = cell(y, top);
  if (column < -kQuiet || row < -kQuiet || column >= code.width + kQuiet || row >= code.height + kQuiet) return kGround;
  if (column < 0 || row < 0 || column >= code.width || row >= code.height) return kLight;
  const bool isInside = column > 0 && column < code.width - 1 && row > 0 && row < code.height - 1;
  if (look.isDamaged && isInside && (7 * column + 3 * row) % 5 < 2)
    return code.dark[static_cast<std::size_t>(row * code.width + column)] ? kLight : kDark;
  return code.dark[static_cast<std::size_t>(row * code.width + column)] ? kDark : kLight;
}

struct Packed {
  QVideoFrameFormat::PixelFormat format;
  std::array<int, 4> channels;  // of each byte: 0 red, 1 green, 2 blue, 3 nothing
};
constexpr std::array<Packed, 6> kPacked{{{QVideoFrameFormat::Format_BGRA8888, {2, 1, 0, 3}},
                                         {QVideoFrameFormat::Format_BGRX8888, {2, 1, 0, 3}},
                                         {QVideoFrameFormat::Format_RGBA8888, {0, 1, 2, 3}},
                                         {QVideoFrameFormat::Format_ARGB8888, {3, 0, 1, 2}},
                                         {QVideoFrameFormat::Format_XRGB8888, {3, 0, 1, 2}},
                                         {QVideoFrameFormat::Format_ABGR8888, {3, 2, 1, 0}}}};

}  // namespace

QVideoFrame frameOf(const std::string& serial, const FrameLook& look) {
  const tags::MatrixCode code = tags::matrixOf(serial);
  const bool isSideways = look.quarterTurns % 2 != 0;
  const int wide = isSideways ? look.height : look.width, high = isSideways ? look.width : look.height;  // as it is to be seen
  QVideoFrame frame(QVideoFrameFormat(QSize(look.width, look.height), look.format));
  if (!frame.map(QVideoFrame::WriteOnly)) return {};
  // Noise where nobody should look: behind the lines and in the other planes.
  for (int plane = 0; plane < frame.planeCount(); ++plane)
    for (int i = 0; i < frame.mappedBytes(plane); ++i) frame.bits(plane)[i] = static_cast<uchar>(i * 37 + plane * 11);
  for (int y = 0; y < look.height; ++y) {
    uchar* line = frame.bits(0) + static_cast<std::ptrdiff_t>(y) * frame.bytesPerLine(0);
    for (int x = 0; x < look.width; ++x) {
      // Turned clockwise by so many quarters, the sensor's pixel comes to stand here.
      const int turns = look.quarterTurns % 4;
      const int column = turns == 0 ? x : turns == 1 ? look.height - 1 - y : turns == 2 ? look.width - 1 - x : y;
      const int row = turns == 0 ? y : turns == 1 ? x : turns == 2 ? look.height - 1 - y : look.width - 1 - x;
      const auto value = static_cast<uchar>(brightnessAt(code, look, wide, high, column, row));
      if (look.format == QVideoFrameFormat::Format_YUYV || look.format == QVideoFrameFormat::Format_UYVY) {
        line[2 * x + (look.format == QVideoFrameFormat::Format_UYVY ? 1 : 0)] = value;
        continue;
      }
      bool isPacked = false;
      for (const Packed& packed : kPacked) {
        if (packed.format != look.format) continue;
        isPacked = true;
        for (int byte = 0; byte < 4; ++byte) line[4 * x + byte] = packed.channels[static_cast<std::size_t>(byte)] == 3 ? 7 : value;
      }
      if (!isPacked) line[x] = value;
    }
  }
  frame.unmap();
#if QT_VERSION >= QT_VERSION_CHECK(6, 7, 0)
  frame.setRotation(static_cast<QtVideo::Rotation>(look.quarterTurns * 90));
#else
  frame.setRotationAngle(static_cast<QVideoFrame::RotationAngle>(look.quarterTurns * 90));
#endif
  frame.setMirrored(look.isMirrored);
  return frame;
}

class PlayedCamera::Source final : public tags::FrameSource {
 public:
  explicit Source(PlayedCamera* camera) : m_camera(camera) {}
  ~Source() override {
    m_camera->m_sink = nullptr;
    m_camera->m_onEnd = nullptr;
  }
  void begin(QVideoSink& sink, std::function<void(tags::SourceEnd)> onEnd) override {
    if (m_camera->isForbidden) return onEnd(tags::SourceEnd::noPermission);
    m_camera->m_sink = &sink;
    m_camera->m_onEnd = std::move(onEnd);
  }

 private:
  PlayedCamera* m_camera;
};

tags::CameraEye::MakeSource PlayedCamera::source() {
  return [this]() -> std::unique_ptr<tags::FrameSource> { return isThere ? std::make_unique<Source>(this) : nullptr; };
}

void PlayedCamera::push(const QVideoFrame& frame) {
  if (m_sink != nullptr) m_sink->setVideoFrame(frame);
}

void PlayedCamera::end() {
  if (m_onEnd) m_onEnd(tags::SourceEnd::failed);
}

}  // namespace snugline::tests
