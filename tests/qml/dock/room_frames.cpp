// SPDX-License-Identifier: Apache-2.0
#include "room_frames.h"

#include "room.h"

namespace snugline::tests {

#ifdef SNUGLINE_HAS_FRAMES
namespace {
QVideoFrameFormat::PixelFormat formatNamed(const QString& name) {
  return name == QLatin1String("YUYV")       ? QVideoFrameFormat::Format_YUYV
         : name == QLatin1String("YUV420P")  ? QVideoFrameFormat::Format_YUV420P
         : name == QLatin1String("BGRA8888") ? QVideoFrameFormat::Format_BGRA8888
                                             : QVideoFrameFormat::Format_NV12;
}
}  // namespace

bool Room::haveFrames(bool isWanted) {
  m_areFramesWanted = isWanted;
  return true;
}

std::unique_ptr<ports::TagCamera> Room::makeCamera() {
  if (m_areFramesWanted) {
    m_frames = std::make_unique<PlayedCamera>();
    return std::make_unique<tags::CameraEye>(m_frames->source());
  }
  auto camera = std::make_unique<ports::MemoryCamera>();
  m_camera = camera.get();
  return camera;
}

void Room::pushFrame(const QString& serial, const QString& format, int quarterTurns) {
  FrameLook look;
  look.format = formatNamed(format);
  look.quarterTurns = quarterTurns;
  m_frames->push(frameOf(serial.toStdString(), look));
}

void Room::endFrames() { m_frames->end(); }
#else
bool Room::haveFrames(bool) { return false; }
std::unique_ptr<ports::TagCamera> Room::makeCamera() {
  auto camera = std::make_unique<ports::MemoryCamera>();
  m_camera = camera.get();
  return camera;
}
void Room::pushFrame(const QString&, const QString&, int) {}
void Room::endFrames() {}
#endif

}  // namespace snugline::tests
