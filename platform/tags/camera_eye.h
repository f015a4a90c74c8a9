// SPDX-License-Identifier: Apache-2.0
// Purpose: a device's camera as a tag reader, over Qt Multimedia: its frames go to a TagWatcher and nowhere else; nothing is kept.
// A camera whose pictures stop coming, whether it says so or not, has failed.
// Errors: as tag_port.h; a device without a camera says noCamera. Thread: GUI thread.
#pragma once

#include <chrono>
#include <functional>
#include <memory>

#include <QObject>

#include "core/ports/tag_port.h"
#include "platform/tags/frame_source.h"

namespace snugline::tags {

// How long nothing may be seen. Ours: a slow camera needs a few seconds for its first picture.
struct EyePatience {
  std::chrono::milliseconds forFirst{10'000}, forNext{3'000};
};

class CameraEye final : public ports::TagCamera {
 public:
  using MakeSource = std::function<std::unique_ptr<FrameSource>()>;  // nothing made: no camera
  explicit CameraEye(MakeSource makeSource = cameraOfDevice, EyePatience patience = {});
  ~CameraEye() override;
  void listen(ports::CameraListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::tags
