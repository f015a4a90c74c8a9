// SPDX-License-Identifier: Apache-2.0
// Purpose: ports::PressureGauge over Qt Bluetooth. The state machine (GaugeLink) runs on a thread of its own, because the system's calls
// below Qt wait for answers; what it says comes back on the thread that made this object, in order, at most every 16 ms while packets come.
// All packets are kept (gauge_port.h says the bound), so that what judges steadiness sees each of them.
// Errors: choose: notFound for an id that no scan found. Thread: the one it was made on, with an event loop; on systems that ask people for
// leave to use Bluetooth that must be the main thread.
#pragma once

#include <functional>
#include <memory>
#include <set>

#include <QObject>
#include <QThread>

#include "core/ports/gauge_port.h"
#include "core/ports/ports.h"
#include "platform/bluetooth/gauge_pace.h"

namespace snugline::bluetooth {

class GaugeLink;
class GaugeMailbox;

class BluetoothGauge final : public QObject, public ports::PressureGauge {
 public:
  using MakeClock = std::function<std::unique_ptr<ports::Clock>()>;  // called on this thread, used on the other
  explicit BluetoothGauge(const MakeClock& makeClock, const GaugePace& pace = {});
  ~BluetoothGauge() override;

  void listen(ports::GaugeListener listener) override;
  [[nodiscard]] Result<void> scan(const ports::RememberedGauge& remembered = {}) override;
  void stopScan() override;
  [[nodiscard]] Result<void> choose(const std::string& id) override;
  [[nodiscard]] Result<void> start(const ports::RememberedGauge& remembered) override;
  void stop() override;

 private:
  void deliver();
  void order(std::function<void(GaugeLink&)> what);  // makes the thread at the first call
  void withLeave(std::function<void()> what);        // asks for the system's permission where there is one

  GaugePace m_pace;
  std::unique_ptr<ports::Clock> m_clock;  // until the thread takes it
  ports::GaugeListener m_listener;
  std::set<std::string> m_found;
  std::shared_ptr<GaugeMailbox> m_mailbox;
  std::unique_ptr<QThread> m_thread;
  GaugeLink* m_link = nullptr;  // lives and dies on m_thread
  QObject* m_bell = nullptr;    // beside it
  bool m_isBusy = false;        // something was asked for
};

}  // namespace snugline::bluetooth
