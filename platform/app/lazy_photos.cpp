// SPDX-License-Identifier: Apache-2.0
#include "lazy_photos.h"

#include "lazy_module.h"

namespace snugline::app {

void LazyPhotoCamera::listen(ports::PhotoListener listener) {
  m_listener = std::move(listener);
  if (m_camera) m_camera->listen(m_listener);
}

Result<void> LazyPhotoCamera::start() {
  if (!m_camera) {
    auto made = makeFromModule<ports::PhotoCamera>("snugline_photos", "snuglineMakePhotoCamera");
    if (!made) return tl::unexpected<Error>(made.error());
    m_camera = std::move(*made);
    m_camera->listen(m_listener);
  }
  return m_camera->start();
}

void LazyPhotoCamera::stop() {
  if (m_camera) m_camera->stop();
}

Result<ports::ColourPicture> LazyPhotoCamera::take() {
  if (!m_camera) return fail(ErrorCode::notAllowed, "camera", std::string(ports::kNothingSeen));
  return m_camera->take();
}

}  // namespace snugline::app
