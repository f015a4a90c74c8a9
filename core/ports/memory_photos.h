// SPDX-License-Identifier: Apache-2.0
// Purpose: a camera for pictures in memory, for tests and the demo: what it sees is said by hand. Ownership: the caller's.
// Thread: as photo_port.h.
#pragma once

#include <utility>

#include "core/ports/photo_port.h"

namespace snugline::ports {

class MemoryPhotoCamera final : public PhotoCamera {
 public:
  explicit MemoryPhotoCamera(CameraState whenStarted = CameraState::seeing, ColourPicture seen = {})
      : m_whenStarted(whenStarted), m_seen(std::move(seen)) {}
  void listen(PhotoListener listener) override { m_listener = std::move(listener); }
  [[nodiscard]] Result<void> start() override {
    m_isOn = true;
    if (m_listener.onState) m_listener.onState(m_whenStarted);
    if (!m_seen.rgb.empty() && m_whenStarted == CameraState::seeing) show(m_seen);
    return {};
  }
  void stop() override {
    m_isOn = false;
    if (m_listener.onState) m_listener.onState(CameraState::off);
  }
  [[nodiscard]] Result<ColourPicture> take() override {
    if (!m_isOn || m_seen.rgb.empty()) return fail(ErrorCode::notAllowed, "camera", std::string(kNothingSeen));
    return m_seen;
  }
  [[nodiscard]] bool isOn() const { return m_isOn; }
  void show(const ColourPicture& picture) {
    m_seen = picture;
    if (m_isOn && m_listener.onPicture) m_listener.onPicture(picture);
  }

 private:
  PhotoListener m_listener;
  CameraState m_whenStarted;
  ColourPicture m_seen;
  bool m_isOn = false;
};

}  // namespace snugline::ports
