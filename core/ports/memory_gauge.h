// SPDX-License-Identifier: Apache-2.0
// Purpose: gauges in memory, for tests, pictures and the demo: one that does what its script or its holder says, and one that fails.
// Nothing here reads a clock, a device or chance. Callbacks come from within the call that causes them. Thread: as gauge_port.h.
#pragma once

#include <deque>
#include <string>
#include <vector>

#include "core/ports/gauge_port.h"

namespace snugline::ports {

// Two ways to use it. By hand: say() sets a state, send() hands packets on, offer() lets a gauge be found. By script: the packets it is
// made with go out one by one with sendNext(), once it is ready. Nothing arrives before scan, choose or start, or after stop.
class MemoryGauge final : public PressureGauge {
 public:
  MemoryGauge() = default;
  explicit MemoryGauge(std::vector<GaugePacket> script) : m_script(script.begin(), script.end()) {}

  void listen(GaugeListener listener) override { m_listener = std::move(listener); }
  [[nodiscard]] Result<void> scan(const RememberedGauge& remembered = {}) override;  // says scanning, then finds all that were offered
  void stopScan() override;
  [[nodiscard]] Result<void> choose(const std::string& id) override;             // goes on to ready, or to the phase of holdAt()
  [[nodiscard]] Result<void> start(const RememberedGauge& remembered) override;  // the same, for an offered one that fits; else notFound
  void stop() override;

  void offer(FoundGauge gauge, std::string serial = {});
  void holdAt(GaugePhase phase) { m_holdAt = phase; }  // where choose and start come to rest
  void say(GaugeState state);
  void say(GaugePhase phase);
  bool send(const std::vector<GaugePacket>& packets);  // false: nobody listens, or it was not started
  bool sendNext();                                     // false also when the script is at its end
  [[nodiscard]] const GaugeState& state() const { return m_state; }
  [[nodiscard]] const RememberedGauge& remembered() const { return m_remembered; }

 private:
  struct Offered {
    FoundGauge gauge;
    std::string serial;
  };
  void goTo(const Offered& offered);
  GaugeListener m_listener;
  std::deque<GaugePacket> m_script;
  std::vector<Offered> m_offered;
  RememberedGauge m_remembered;
  GaugePhase m_holdAt = GaugePhase::ready;
  GaugeState m_state;
  bool m_isStarted = false;
};

class FailingGauge final : public PressureGauge {
 public:
  explicit FailingGauge(Error error = {ErrorCode::notFound, "gauge", {}}) : m_error(std::move(error)) {}
  void listen(GaugeListener) override {}
  [[nodiscard]] Result<void> scan(const RememberedGauge& = {}) override { return tl::unexpected<Error>(m_error); }
  void stopScan() override {}
  [[nodiscard]] Result<void> choose(const std::string&) override { return tl::unexpected<Error>(m_error); }
  [[nodiscard]] Result<void> start(const RememberedGauge&) override { return tl::unexpected<Error>(m_error); }
  void stop() override {}

 private:
  Error m_error;
};

}  // namespace snugline::ports
