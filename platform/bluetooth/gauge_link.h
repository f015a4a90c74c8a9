// SPDX-License-Identifier: Apache-2.0
// Purpose: the state machine behind BluetoothGauge: is Bluetooth there, who is around, which of them is meant, one GaugeSession after the
// other until readings arrive, and again after a loss, with growing pauses and a last attempt. Every step has a time-out (GaugePace).
// A gauge is meant by its id of this run, or by its name and serial number. Of several that fit and cannot be told apart none is taken.
// Errors: states of the port. Thread: one with an event loop; what it calls comes on that thread.
#pragma once

#include <memory>
#include <vector>

#include <QBluetoothDeviceDiscoveryAgent>
#include <QBluetoothDeviceInfo>
#include <QObject>
#include <QTimer>

#include "core/ports/gauge_port.h"
#include "core/ports/ports.h"
#include "platform/bluetooth/gauge_pace.h"
#include "platform/bluetooth/gauge_session.h"

namespace snugline::bluetooth {

class GaugeLink final : public QObject {
 public:
  struct Calls {
    std::function<void(const ports::GaugeState&)> onState;
    std::function<void(const ports::FoundGauge&)> onFound;
    std::function<void(ports::GaugePacket)> onPacket;
  };
  GaugeLink(const GaugePace& pace, std::unique_ptr<ports::Clock> clock, Calls calls);
  ~GaugeLink() override;

  void scan(const ports::RememberedGauge& remembered);
  void stopScan();
  void choose(const std::string& id);
  void start(const ports::RememberedGauge& remembered);
  void stop();

 private:
  enum class Want : std::uint8_t { nothing, list, gauge };
  void reset(Want want);
  void begin();  // looks at the adapter, then seeks; once for each attempt
  void seek();
  void onDevice(const QBluetoothDeviceInfo& device);
  void onAgentError(QBluetoothDeviceDiscoveryAgent::Error error);
  void endSeek();
  void onSeekOver();
  void tryCandidates();
  void openSession(const QBluetoothDeviceInfo& device);
  void closeSession();
  void onEnded(ports::GaugePhase failure, ports::GaugePhase step);
  void failed(ports::GaugePhase failure, ports::GaugePhase step);
  void bluetoothFailed(ports::GaugePhase failure);
  [[nodiscard]] bool fits(const QBluetoothDeviceInfo& device) const;
  void say(ports::GaugePhase phase);
  void send(std::uint16_t uuid, const QByteArray& bytes);

  GaugePace m_pace;
  std::unique_ptr<ports::Clock> m_clock;
  Calls m_calls;
  std::unique_ptr<QBluetoothDeviceDiscoveryAgent> m_agent;
  std::unique_ptr<GaugeSession> m_session;
  QTimer m_timer{this};   // the seek, or the pause
  QTimer m_gather{this};  // others of that name
  Want m_want = Want::nothing;
  ports::RememberedGauge m_remembered;
  std::string m_knownId;
  std::vector<QBluetoothDeviceInfo> m_candidates;
  bool m_hadSeveral = false;  // more than one candidate in this attempt
  ports::GaugeState m_state;
};

[[nodiscard]] std::string idOf(const QBluetoothDeviceInfo& device);  // good for this run only

}  // namespace snugline::bluetooth
