// SPDX-License-Identifier: Apache-2.0
// Purpose: a gauge whose Bluetooth is loaded when it is first asked for, so that a start does not pay for it and a machine without Qt
// Bluetooth runs the rest. Errors: notFound where the module is not there or does not load. Thread: as gauge_port.h.
#pragma once

#include <memory>

#include "core/ports/gauge_port.h"

namespace snugline::app {

class LazyGauge final : public ports::PressureGauge {
 public:
  void listen(ports::GaugeListener listener) override;
  [[nodiscard]] Result<void> scan(const ports::RememberedGauge& remembered = {}) override;
  void stopScan() override;
  [[nodiscard]] Result<void> choose(const std::string& id) override;
  [[nodiscard]] Result<void> start(const ports::RememberedGauge& remembered) override;
  void stop() override;

 private:
  [[nodiscard]] Result<void> load();
  ports::GaugeListener m_listener;
  std::unique_ptr<ports::PressureGauge> m_gauge;
};

}  // namespace snugline::app
