// SPDX-License-Identifier: Apache-2.0
// Purpose: a device's camera for pictures of gear, over Qt Multimedia: what it sees is shown small, the frame seen last is taken whole.
// Nothing is kept here. Errors: as photo_port.h; a device without a camera says noCamera. Thread: GUI thread.
#pragma once

#include <memory>

#include <QObject>

#include "core/ports/photo_port.h"

class QVideoFrame;

namespace snugline::photos {

// The frame's pixels, turned as the frame says; widest 0: as large as it is. No pixels: an empty picture.
[[nodiscard]] ports::ColourPicture coloursOf(const QVideoFrame& frame, int widest = 0);

class PhotoEye final : public ports::PhotoCamera {
 public:
  PhotoEye();
  ~PhotoEye() override;
  void listen(ports::PhotoListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;
  [[nodiscard]] Result<ports::ColourPicture> take() override;

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::photos
