// SPDX-License-Identifier: Apache-2.0
// Purpose: a camera for pictures of gear whose library is loaded when it is first turned on. Errors: notFound where the module is not there
// or does not load. Thread: as photo_port.h.
#pragma once

#include <memory>

#include "core/ports/photo_port.h"

namespace snugline::app {

class LazyPhotoCamera final : public ports::PhotoCamera {
 public:
  void listen(ports::PhotoListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;
  [[nodiscard]] Result<ports::ColourPicture> take() override;

 private:
  ports::PhotoListener m_listener;
  std::unique_ptr<ports::PhotoCamera> m_camera;
};

}  // namespace snugline::app
