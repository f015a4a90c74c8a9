// SPDX-License-Identifier: Apache-2.0
// Purpose: a device's camera as a tag reader, over Qt Multimedia: its pictures go to a TagWatcher and nowhere else; nothing is kept.
// Prefers the camera at the back and a picture about 1280 wide, which a tag at arm's length fills well enough.
// Errors: as tag_port.h; a device without a camera says noCamera. Thread: GUI thread.
#pragma once

#include <memory>

#include <QObject>

#include "core/ports/tag_port.h"

namespace snugline::tags {

class CameraEye final : public ports::TagCamera {
 public:
  CameraEye();
  ~CameraEye() override;
  void listen(ports::CameraListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::tags
