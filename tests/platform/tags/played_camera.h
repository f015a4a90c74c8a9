// SPDX-License-Identifier: Apache-2.0
// Purpose: a camera without a lens: frames as a camera's driver hands them over (format, stride, turned, mirrored), pushed by hand into the
// sink that the app's eye gives. Thread: GUI thread.
#pragma once

#include <functional>
#include <memory>
#include <string>

#include <QVideoFrame>
#include <QVideoFrameFormat>

#include "core/ports/tag_port.h"
#include "platform/tags/camera_eye.h"

namespace snugline::tests {

struct FrameLook {
  QVideoFrameFormat::PixelFormat format = QVideoFrameFormat::Format_NV12;
  int width = 1278, height = 720;  // no round number: lines are padded
  int quarterTurns = 0;            // the sensor stands so: the frame says how to turn it, and its pixels lie the other way
  bool isMirrored = false;         // to be shown mirrored; its pixels are not
  bool isDamaged = false;          // its frame stands, two in five of the squares inside are wrong
};
// A label of our own on grey, a little right of the middle.
[[nodiscard]] QVideoFrame frameOf(const std::string& serial, const FrameLook& look = {});

class PlayedCamera {
 public:
  [[nodiscard]] tags::CameraEye::MakeSource source();  // for one eye, which may start it more than once
  bool isThere = true;
  bool isForbidden = false;
  [[nodiscard]] bool isOn() const { return m_sink != nullptr; }
  void push(const QVideoFrame& frame);
  void end();  // as when it is unplugged

 private:
  class Source;
  QVideoSink* m_sink = nullptr;
  std::function<void(tags::SourceEnd)> m_onEnd;
};

}  // namespace snugline::tests
