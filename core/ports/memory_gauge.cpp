// SPDX-License-Identifier: Apache-2.0
#include "core/ports/memory_gauge.h"

#include <algorithm>

namespace snugline::ports {

namespace {
constexpr std::size_t kLabelMost = 128;  // bytes, as many as core/air takes for a text of a gauge
constexpr unsigned char kFirstPrintable = 0x20, kDelete = 0x7F;
constexpr unsigned char kTopTwoBits = 0xC0, kContinuation = 0x80;  // of a UTF-8 byte
}  // namespace

std::string GaugeIdentity::label() const {
  std::string text;
  for (const std::string* part : {&name, &serial}) {
    if (!text.empty() && !part->empty()) text += ' ';
    for (const char c : *part) {
      const auto byte = static_cast<unsigned char>(c);
      if (byte >= kFirstPrintable && byte != kDelete) text += c;
    }
  }
  if (text.size() > kLabelMost) {
    std::size_t end = kLabelMost;  // never within a character
    while (end > 0 && (static_cast<unsigned char>(text[end]) & kTopTwoBits) == kContinuation) --end;
    text.resize(end);
  }
  return text.empty() ? "?" : text;
}

bool isFailure(GaugePhase phase) { return phase >= GaugePhase::off; }

Result<void> MemoryGauge::scan(const RememberedGauge& remembered) {
  m_remembered = remembered;
  m_isStarted = true;
  say(GaugePhase::scanning);
  const std::vector<Offered> offered = m_offered;  // a listener may offer or stop
  for (const Offered& one : offered) {
    if (!m_isStarted || !m_listener.onFound) break;
    FoundGauge found = one.gauge;
    found.isRemembered = !remembered.name.empty() && found.name == remembered.name;
    m_listener.onFound(found);
  }
  return {};
}

void MemoryGauge::stopScan() {
  if (m_state.phase == GaugePhase::scanning) stop();
}

Result<void> MemoryGauge::choose(const std::string& id) {
  const auto found = std::find_if(m_offered.begin(), m_offered.end(), [&](const Offered& one) { return one.gauge.id == id; });
  if (found == m_offered.end()) return fail(ErrorCode::notFound, id);
  m_isStarted = true;
  goTo(*found);
  return {};
}

Result<void> MemoryGauge::start(const RememberedGauge& remembered) {
  m_remembered = remembered;
  m_isStarted = true;
  for (const Offered& one : m_offered) {
    if (one.gauge.name != remembered.name || (!remembered.serial.empty() && one.serial != remembered.serial)) continue;
    goTo(one);
    return {};
  }
  m_state.gauge = {remembered.name, remembered.serial};
  say(GaugePhase::notFound);
  return {};
}

void MemoryGauge::goTo(const Offered& offered) {
  m_state = {};
  m_state.gauge = {offered.gauge.name, offered.serial};
  m_state.attempt = 1;
  m_state.attemptsMost = 1;
  for (const GaugePhase phase : {GaugePhase::connecting, GaugePhase::discovering, GaugePhase::subscribing, m_holdAt}) {
    if (!m_isStarted) return;
    if (phase == m_holdAt || !isFailure(phase)) say(phase);
    if (phase == m_holdAt) return;
  }
}

void MemoryGauge::stop() {
  if (!m_isStarted) return;
  m_isStarted = false;
  m_state = {};
  if (m_listener.onState) m_listener.onState(m_state);
}

void MemoryGauge::offer(FoundGauge gauge, std::string serial) { m_offered.push_back({std::move(gauge), std::move(serial)}); }

void MemoryGauge::say(GaugeState state) {
  m_state = std::move(state);
  if (m_isStarted && m_listener.onState) m_listener.onState(m_state);
}

void MemoryGauge::say(GaugePhase phase) {
  GaugeState next = m_state;
  if (isFailure(phase) && !isFailure(m_state.phase)) next.step = m_state.phase;
  next.phase = next.cause = phase;
  say(std::move(next));
}

// The listener may call stop() from within, so that it is held until it returns.
bool MemoryGauge::send(const std::vector<GaugePacket>& packets) {
  if (!m_isStarted || m_state.phase != GaugePhase::ready || !m_listener.onPackets) return false;
  const auto onPackets = m_listener.onPackets;
  onPackets(packets);
  return true;
}

bool MemoryGauge::sendNext() {
  if (m_script.empty() || !m_isStarted || m_state.phase != GaugePhase::ready || !m_listener.onPackets) return false;
  const GaugePacket next = m_script.front();
  m_script.pop_front();
  return send({next});
}

}  // namespace snugline::ports
