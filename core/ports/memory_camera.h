// SPDX-License-Identifier: Apache-2.0
// Purpose: a camera and a printer's sheet in memory, for tests and the demo: what it sees is said by hand. Ownership: the caller's.
// Thread: as tag_port.h.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/ports/tag_port.h"

namespace snugline::ports {

class MemoryCamera final : public TagCamera {
 public:
  explicit MemoryCamera(CameraState whenStarted = CameraState::seeing) : m_whenStarted(whenStarted) {}
  void listen(CameraListener listener) override { m_listener = std::move(listener); }
  [[nodiscard]] Result<void> start() override {
    m_isOn = true;
    say(m_whenStarted);
    return {};
  }
  void stop() override {
    m_isOn = false;
    if (m_listener.onState) m_listener.onState(CameraState::off);
  }
  [[nodiscard]] bool isOn() const { return m_isOn; }
  void say(CameraState state) {
    if (m_isOn && m_listener.onState) m_listener.onState(state);
  }
  void show(const std::string& text) {
    if (m_isOn && m_listener.onText) m_listener.onText(text);
  }
  void showDamaged() {
    if (m_isOn && m_listener.onUnreadable) m_listener.onUnreadable();
  }
  void show(const SeenPicture& picture) {
    if (m_isOn && m_listener.onPicture) m_listener.onPicture(picture);
  }

 private:
  CameraListener m_listener;
  CameraState m_whenStarted;
  bool m_isOn = false;
};

// Keeps what it was asked to write.
class MemoryLabelSheets final : public LabelSheets {
 public:
  [[nodiscard]] Result<int> write(const std::string& path, const std::vector<std::string>& serials, const std::string&) override {
    m_path = path;
    m_serials = serials;
    return 1;
  }
  [[nodiscard]] const std::string& path() const { return m_path; }
  [[nodiscard]] const std::vector<std::string>& serials() const { return m_serials; }

 private:
  std::string m_path;
  std::vector<std::string> m_serials;
};

}  // namespace snugline::ports
