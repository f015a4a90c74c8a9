// SPDX-License-Identifier: Apache-2.0
// Purpose: a bench with a played Bluetooth service and a real BluetoothGauge in front of it; what the gauge says is kept in order.
// Waiting is for something to be so, with a patience that only a failure uses up. Thread: one.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QProcess>

#include "core/ports/memory_ports.h"
#include "platform/bluetooth/bluetooth_gauge.h"

namespace snugline::bluetooth {

class Bench {
 public:
  explicit Bench(const std::vector<std::string>& scene = {"adapter on"}, const GaugePace& pace = GaugePace::scaled(20));
  ~Bench();
  Bench(const Bench&) = delete;
  Bench& operator=(const Bench&) = delete;

  void play(const std::string& line);  // returns when the service has done it
  [[nodiscard]] bool until(const std::function<bool()>& isSo);
  [[nodiscard]] bool untilPhase(ports::GaugePhase phase);  // the newest state is of that phase
  [[nodiscard]] std::size_t countOf(ports::GaugePhase phase) const;
  [[nodiscard]] bool has(std::uint16_t characteristic, const std::vector<std::uint8_t>& bytes) const;
  [[nodiscard]] const ports::GaugeState& last() const { return states.back(); }
  [[nodiscard]] std::string idOf(const std::string& name) const;

  std::vector<ports::GaugeState> states;
  std::vector<ports::FoundGauge> found;
  std::vector<ports::GaugePacket> packets;
  std::size_t calls = 0;  // of onPackets
  std::function<void()> onCall;

 private:
  int m_argc = 1;
  char m_name[6] = "bench";
  char* m_argv[2] = {m_name, nullptr};
  std::unique_ptr<QCoreApplication> m_app;  // where the test has none of its own, as one with a window has
  QProcess m_service;

 public:
  BluetoothGauge gauge;
};

}  // namespace snugline::bluetooth
