// SPDX-License-Identifier: Apache-2.0
#include "platform/bluetooth/gauge_session.h"

#include <QBluetoothUuid>

#include <algorithm>

namespace snugline::bluetooth {

using ports::GaugePhase;
using Service = QBluetoothUuid::ServiceClassUuid;
using Characteristic = QBluetoothUuid::CharacteristicType;
using Descriptor = QBluetoothUuid::DescriptorType;

namespace {

std::uint16_t shortOf(const QBluetoothUuid& uuid) {
  bool isShort = false;
  const quint16 value = uuid.toUInt16(&isShort);
  return isShort ? value : std::uint16_t{0};
}
std::uint16_t shortOf(Characteristic type) { return static_cast<std::uint16_t>(type); }

bool canSend(const QLowEnergyCharacteristic& characteristic) {
  return (characteristic.properties() & (QLowEnergyCharacteristic::Notify | QLowEnergyCharacteristic::Indicate)) != 0 &&
         characteristic.clientCharacteristicConfiguration().isValid();
}
bool canBeRead(const QLowEnergyCharacteristic& characteristic) {
  return characteristic.properties().testFlag(QLowEnergyCharacteristic::Read);
}
QByteArray sendingOn(const QLowEnergyCharacteristic& characteristic) {
  return characteristic.properties().testFlag(QLowEnergyCharacteristic::Notify) ? QLowEnergyCharacteristic::CCCDEnableNotification
                                                                                : QLowEnergyCharacteristic::CCCDEnableIndication;
}

}  // namespace

GaugeSession::GaugeSession(const QBluetoothDeviceInfo& device, const GaugePace& pace, Calls calls)
    : m_pace(pace), m_calls(std::move(calls)), m_controller(QLowEnergyController::createCentral(device)) {
  m_patience.setSingleShot(true);
  m_silence.setSingleShot(true);
  m_poll.setInterval(pace.poll);
  m_slowPoll.setInterval(pace.slowPoll);
  m_silence.setInterval(pace.silence);
  connect(&m_patience, &QTimer::timeout, this, [this] {
    // A side question that nobody answers is let go; the answer that readings rest on is not.
    if (m_step == GaugePhase::ready && m_isAsking && !m_isVital) return askNext();
    end(m_step == GaugePhase::ready ? GaugePhase::lost : GaugePhase::timedOut);
  });
  connect(&m_poll, &QTimer::timeout, this, &GaugeSession::readPressure);
  connect(&m_silence, &QTimer::timeout, this, &GaugeSession::readPressure);
  connect(m_controller.get(), &QLowEnergyController::connected, this, [this] {
    enter(GaugePhase::discovering);
    m_controller->discoverServices();
  });
  connect(m_controller.get(), &QLowEnergyController::discoveryFinished, this, &GaugeSession::onServices);
  connect(m_controller.get(), &QLowEnergyController::disconnected, this,
          [this] { end(m_step == GaugePhase::connecting ? GaugePhase::busy : GaugePhase::lost); });
  connect(m_controller.get(), &QLowEnergyController::errorOccurred, this, [this](QLowEnergyController::Error error) {
    if (error == QLowEnergyController::UnknownRemoteDeviceError && m_step == GaugePhase::connecting) return end(GaugePhase::notFound);
    end(m_step == GaugePhase::connecting ? GaugePhase::busy : GaugePhase::lost);
  });
}

GaugeSession::~GaugeSession() {
  m_isEnded = true;
  for (const auto& one : m_services) one->disconnect(this);
  m_controller->disconnect(this);
}

void GaugeSession::begin() {
  enter(GaugePhase::connecting);
  m_patience.start(m_pace.connect);
  m_controller->connectToDevice();
}

void GaugeSession::enter(GaugePhase step) {
  if (m_isEnded) return;
  m_step = step;
  m_patience.start(m_pace.answer);
  m_calls.onStep(step);
}

void GaugeSession::end(GaugePhase failure) {
  if (m_isEnded) return;
  m_isEnded = true;
  for (QTimer* timer : {&m_patience, &m_poll, &m_slowPoll, &m_silence}) timer->stop();
  m_questions.clear();
  m_calls.ended(failure, m_step);
}

void GaugeSession::askNext() {
  m_isAsking = m_isVital = false;
  m_patience.stop();
  if (m_isEnded || m_questions.empty()) return;
  const Question question = std::move(m_questions.front());
  m_questions.pop_front();
  m_isAsking = true;
  m_patience.start(m_pace.answer);
  question();
}

QLowEnergyService* GaugeSession::service(Service uuid) const {
  for (const auto& one : m_services) {
    if (one->serviceUuid() == QBluetoothUuid(uuid)) return one.get();
  }
  return nullptr;
}

void GaugeSession::onServices() {
  if (m_isEnded) return;
  if (!m_controller->services().contains(QBluetoothUuid(Service::EnvironmentalSensing))) return end(GaugePhase::wrongService);
  for (const Service uuid : {Service::DeviceInformation, Service::EnvironmentalSensing, Service::BatteryService}) addService(uuid);
  ask([this] { onDetails(); });
  askNext();
}

void GaugeSession::addService(Service uuid) {
  std::unique_ptr<QLowEnergyService> made(m_controller->createServiceObject(QBluetoothUuid(uuid)));
  if (!made) return;
  QLowEnergyService* one = made.get();
  connect(one, &QLowEnergyService::stateChanged, this, [this, one](QLowEnergyService::ServiceState state) { onServiceState(one, state); });
  connect(one, &QLowEnergyService::errorOccurred, this, [this, one](QLowEnergyService::ServiceError error) { onServiceError(one, error); });
  connect(one, &QLowEnergyService::characteristicRead, this, &GaugeSession::onRead);
  connect(one, &QLowEnergyService::characteristicChanged, this, &GaugeSession::onChanged);
  connect(one, &QLowEnergyService::descriptorRead, this, [this](const QLowEnergyDescriptor& descriptor, const QByteArray& value) {
    if (shortOf(descriptor.uuid()) == static_cast<std::uint16_t>(Descriptor::EnvironmentalSensingMeasurement))
      m_measurements.push_back(value);
    askNext();
  });
  connect(one, &QLowEnergyService::descriptorWritten, this, [this](const QLowEnergyDescriptor& descriptor, const QByteArray&) {
    if (m_step == GaugePhase::subscribing && descriptor == m_pressure.clientCharacteristicConfiguration()) return becomeReady();
    askNext();
  });
  m_services.push_back(std::move(made));
  ask([one] { one->discoverDetails(QLowEnergyService::SkipValueDiscovery); });
}

void GaugeSession::onServiceState(QLowEnergyService*, QLowEnergyService::ServiceState state) {
  if (state == QLowEnergyService::RemoteServiceDiscovered && m_step == GaugePhase::discovering) askNext();
}

// A refusal that readings do not rest on is passed over.
void GaugeSession::onServiceError(QLowEnergyService* one, QLowEnergyService::ServiceError error) {
  if (m_isEnded || error == QLowEnergyService::NoError || !m_isAsking) return;
  if (!m_isVital || one->serviceUuid() != QBluetoothUuid(Service::EnvironmentalSensing)) return askNext();
  if (error == QLowEnergyService::DescriptorWriteError && canBeRead(m_pressure)) {  // it does not send after all
    m_isPolled = true;
    return becomeReady();
  }
  end(GaugePhase::readError);
}

void GaugeSession::onDetails() {
  QLowEnergyService* about = service(Service::DeviceInformation);
  for (const Characteristic type :
       {Characteristic::SerialNumberString, Characteristic::ManufacturerNameString, Characteristic::ModelNumberString}) {
    if (about != nullptr) readSide(about, about->characteristic(QBluetoothUuid(type)));
  }
  ask([this] { checkSerial(); });
  askNext();
}

void GaugeSession::readSide(QLowEnergyService* one, const QLowEnergyCharacteristic& characteristic) {
  if (!characteristic.isValid() || !canBeRead(characteristic)) return;
  ask([one, characteristic] { one->readCharacteristic(characteristic); });
}

void GaugeSession::checkSerial() {
  if (!m_calls.isWanted(m_serial)) return end(GaugePhase::idle);
  pickPressure();
}

// Several pressures are told apart by their measurement descriptors or not at all; then the first is taken, as the gauge lists it.
void GaugeSession::pickPressure() {
  QLowEnergyService* sensing = service(Service::EnvironmentalSensing);
  QList<QLowEnergyCharacteristic> pressures;
  for (const QLowEnergyCharacteristic& one : sensing == nullptr ? QList<QLowEnergyCharacteristic>() : sensing->characteristics()) {
    if (shortOf(one.uuid()) == shortOf(Characteristic::Pressure)) pressures.append(one);
  }
  if (pressures.isEmpty()) return end(GaugePhase::wrongService);
  m_pressure = pressures.first();
  if (!canBeRead(m_pressure) && !canSend(m_pressure)) return end(GaugePhase::wrongService);
  std::size_t described = 0;
  for (const QLowEnergyCharacteristic& one : pressures) {
    const QLowEnergyDescriptor measurement = one.descriptor(QBluetoothUuid(Descriptor::EnvironmentalSensingMeasurement));
    if (!measurement.isValid()) continue;
    ++described;
    ask([sensing, measurement] { sensing->readDescriptor(measurement); });
  }
  const auto count = static_cast<std::size_t>(pressures.size());
  if (count > 1 && described != count) return end(GaugePhase::duplicateCharacteristics);
  ask([this, count] {
    std::vector<QByteArray> different = m_measurements;
    std::sort(different.begin(), different.end());
    different.erase(std::unique(different.begin(), different.end()), different.end());
    if (count > 1 && different.size() != count) return end(GaugePhase::duplicateCharacteristics);
    subscribe();
  });
  askNext();
}

void GaugeSession::subscribe() {
  QLowEnergyService* sensing = service(Service::EnvironmentalSensing);
  enter(GaugePhase::subscribing);
  if (canBeRead(m_pressure)) {
    ask([this, sensing] {
      m_isVital = true;
      sensing->readCharacteristic(m_pressure);
    });
  }
  ask([this, sensing] {
    m_isVital = true;
    m_isPolled = !canSend(m_pressure);
    if (m_isPolled) return becomeReady();
    sensing->writeDescriptor(m_pressure.clientCharacteristicConfiguration(), sendingOn(m_pressure));
  });
  askNext();
}

void GaugeSession::becomeReady() {
  if (m_isEnded) return;
  m_step = GaugePhase::ready;
  m_calls.onReady(m_isPolled);
  if (!m_measurements.empty())
    m_calls.onValue(static_cast<std::uint16_t>(Descriptor::EnvironmentalSensingMeasurement), m_measurements.front());
  for (const auto& [uuid, bytes] : m_early) m_calls.onValue(uuid, bytes);
  m_early.clear();
  follow(service(Service::EnvironmentalSensing), Characteristic::Temperature);
  follow(service(Service::BatteryService), Characteristic::BatteryLevel);
  if (m_isPolled)
    m_poll.start();
  else
    m_silence.start();
  m_slowPoll.start();
  askNext();
}

// Battery and temperature: read once, then sent where the gauge can, else asked for now and then.
void GaugeSession::follow(QLowEnergyService* one, Characteristic type) {
  if (one == nullptr) return;
  const QLowEnergyCharacteristic characteristic = one->characteristic(QBluetoothUuid(type));
  if (!characteristic.isValid()) return;
  readSide(one, characteristic);
  if (canSend(characteristic)) {
    ask([one, characteristic] { one->writeDescriptor(characteristic.clientCharacteristicConfiguration(), sendingOn(characteristic)); });
    return;
  }
  connect(&m_slowPoll, &QTimer::timeout, this, [this, one, characteristic] {
    readSide(one, characteristic);
    if (!m_isAsking) askNext();
  });
}

// Asked again only when the last answer has come, so that a slow gauge is not buried in questions.
void GaugeSession::readPressure() {
  if (m_isEnded) return;
  if (!canBeRead(m_pressure)) return;  // it sends only; a loss of the connection shows by itself
  if (m_isAsking || !m_questions.empty()) {
    if (!m_isPolled) m_silence.start();
    return;
  }
  QLowEnergyService* sensing = service(Service::EnvironmentalSensing);
  ask([this, sensing] {
    m_isVital = true;
    sensing->readCharacteristic(m_pressure);
  });
  askNext();
}

void GaugeSession::onRead(const QLowEnergyCharacteristic& characteristic, const QByteArray& value) {
  if (m_isEnded) return;
  const std::uint16_t uuid = shortOf(characteristic.uuid());
  if (uuid == shortOf(Characteristic::SerialNumberString)) m_serial = value.toStdString();
  if (m_step == GaugePhase::ready) {
    m_calls.onValue(uuid, value);
    if (!m_isPolled) m_silence.start();
  } else {
    m_early.emplace_back(uuid, value);
  }
  askNext();
}

void GaugeSession::onChanged(const QLowEnergyCharacteristic& characteristic, const QByteArray& value) {
  if (m_isEnded || m_step != GaugePhase::ready) return;  // nobody asked for it yet
  const std::uint16_t uuid = shortOf(characteristic.uuid());
  if (uuid == shortOf(Characteristic::Pressure)) {
    if (m_isPolled || characteristic != m_pressure) return;
    m_silence.start();
  }
  m_calls.onValue(uuid, value);
}

}  // namespace snugline::bluetooth
