// SPDX-License-Identifier: Apache-2.0
// Purpose: one connection with one gauge, from connecting to its loss: asks what it offers, reads who it is, subscribes, hands on raw
// bytes. It is made anew for each attempt, because Qt's controller and services keep what the last connection left in them. What a gauge
// must offer: the Environmental Sensing service with one pressure. Temperature, battery and Device Information are taken where they are
// there and never missed. Nothing is handed on before the subscription is confirmed. Values are read one by one when they are wanted, never
// by the system's own reading of everything, which would stop at the first value that is refused. Errors: ended() says which, once, and
// nothing comes after it. Thread: the one it was made on, with an event loop.
#pragma once

#include <deque>
#include <functional>
#include <memory>
#include <vector>

#include <QBluetoothDeviceInfo>
#include <QLowEnergyController>
#include <QLowEnergyService>
#include <QObject>
#include <QTimer>

#include "core/ports/gauge_port.h"
#include "platform/bluetooth/gauge_pace.h"

namespace snugline::bluetooth {

class GaugeSession final : public QObject {
 public:
  struct Calls {
    std::function<void(ports::GaugePhase step)> onStep;       // connecting to subscribing
    std::function<bool(const std::string& serial)> isWanted;  // false: another gauge of that name
    std::function<void(bool isPolled)> onReady;
    std::function<void(std::uint16_t uuid, const QByteArray& bytes)> onValue;
    std::function<void(ports::GaugePhase failure, ports::GaugePhase step)> ended;  // idle: not the wanted gauge
  };
  GaugeSession(const QBluetoothDeviceInfo& device, const GaugePace& pace, Calls calls);
  ~GaugeSession() override;
  void begin();

 private:
  using Question = std::function<void()>;
  void enter(ports::GaugePhase step);
  void end(ports::GaugePhase failure);
  void ask(Question question) { m_questions.push_back(std::move(question)); }
  void askNext();  // the question before was answered
  void onServices();
  void addService(QBluetoothUuid::ServiceClassUuid uuid);
  void onServiceState(QLowEnergyService* service, QLowEnergyService::ServiceState state);
  void onServiceError(QLowEnergyService* service, QLowEnergyService::ServiceError error);
  void onRead(const QLowEnergyCharacteristic& characteristic, const QByteArray& value);
  void onChanged(const QLowEnergyCharacteristic& characteristic, const QByteArray& value);
  void onDetails();
  void checkSerial();
  void pickPressure();
  void subscribe();
  void becomeReady();
  void readSide(QLowEnergyService* service, const QLowEnergyCharacteristic& characteristic);
  void follow(QLowEnergyService* service, QBluetoothUuid::CharacteristicType type);
  void readPressure();
  [[nodiscard]] QLowEnergyService* service(QBluetoothUuid::ServiceClassUuid uuid) const;

  GaugePace m_pace;
  Calls m_calls;
  std::unique_ptr<QLowEnergyController> m_controller;
  std::vector<std::unique_ptr<QLowEnergyService>> m_services;
  std::deque<Question> m_questions;
  QLowEnergyCharacteristic m_pressure;
  std::vector<QByteArray> m_measurements;                     // 0x290C of each pressure, in their order
  std::vector<std::pair<std::uint16_t, QByteArray>> m_early;  // read before we were ready
  std::string m_serial;
  QTimer m_patience, m_poll, m_slowPoll, m_silence;
  ports::GaugePhase m_step = ports::GaugePhase::idle;
  bool m_isAsking = false, m_isVital = false, m_isPolled = false, m_isEnded = false;
};

}  // namespace snugline::bluetooth
