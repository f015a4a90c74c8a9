// SPDX-License-Identifier: Apache-2.0
// Purpose: an NFC reader in memory, for tests and the demo: which tag is held to it is said by hand. Ownership: the caller's.
// Thread: as tag_port.h.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/ports/tag_port.h"

namespace snugline::ports {

class MemoryNfc final : public NfcReader {
 public:
  explicit MemoryNfc(bool isThere = true, NfcState whenStarted = NfcState::waiting) : m_isThere(isThere), m_whenStarted(whenStarted) {}
  [[nodiscard]] bool isThere() override { return m_isThere; }
  void listen(NfcListener listener) override { m_listener = std::move(listener); }
  [[nodiscard]] Result<void> start() override {
    if (!m_isThere) return fail(ErrorCode::notFound, "NFC");
    m_isOn = true;
    say(m_whenStarted);
    return {};
  }
  void stop() override {
    m_isOn = false;
    if (m_listener.onState) m_listener.onState(NfcState::off);
  }
  [[nodiscard]] bool isOn() const { return m_isOn; }
  void say(NfcState state) {
    if (m_isOn && m_listener.onState) m_listener.onState(state);
  }
  void hold(const std::vector<NfcRecord>& tag) {
    if (m_isOn && m_listener.onRecords) m_listener.onRecords(tag);
  }
  void hold(NfcMiss tag) {
    if (m_isOn && m_listener.onMiss) m_listener.onMiss(tag);
  }

 private:
  NfcListener m_listener;
  bool m_isThere = true;
  NfcState m_whenStarted;
  bool m_isOn = false;
};

}  // namespace snugline::ports
