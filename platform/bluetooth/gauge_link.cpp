// SPDX-License-Identifier: Apache-2.0
#include "platform/bluetooth/gauge_link.h"

#include <QBluetoothLocalDevice>
#include <QBluetoothUuid>

#include <algorithm>

namespace snugline::bluetooth {

using ports::GaugePhase;
using Agent = QBluetoothDeviceDiscoveryAgent;

namespace {

// What is kept passes through a settings file as text: control characters do not survive it, and neither do blanks at the ends.
std::string plain(const std::string& text) {
  constexpr unsigned char kFirstPrintable = 0x20, kDelete = 0x7F;
  std::string kept;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= kFirstPrintable && byte != kDelete) kept += c;
  }
  const auto first = kept.find_first_not_of(' ');
  return first == std::string::npos ? std::string() : kept.substr(first, kept.find_last_not_of(' ') - first + 1);
}

bool saysPressure(const QBluetoothDeviceInfo& device) {
  return device.serviceUuids().contains(QBluetoothUuid(QBluetoothUuid::ServiceClassUuid::EnvironmentalSensing));
}

// idle: Bluetooth is there and on.
GaugePhase adapterPhase() {
#ifndef Q_OS_DARWIN  // there the search itself says it
  const QList<QBluetoothHostInfo> adapters = QBluetoothLocalDevice::allDevices();
  if (adapters.isEmpty()) return GaugePhase::noAdapter;
  const QBluetoothLocalDevice adapter(adapters.first().address());
  if (!adapter.isValid()) return GaugePhase::noAdapter;
  if (adapter.hostMode() == QBluetoothLocalDevice::HostPoweredOff) return GaugePhase::off;
#endif
  return GaugePhase::idle;
}

bool isFinal(GaugePhase phase) {
  return phase == GaugePhase::several || phase == GaugePhase::wrongService || phase == GaugePhase::duplicateCharacteristics;
}

}  // namespace

std::string idOf(const QBluetoothDeviceInfo& device) {
  return (device.address().isNull() ? device.deviceUuid().toString() : device.address().toString()).toStdString();
}

GaugeLink::GaugeLink(const GaugePace& pace, std::unique_ptr<ports::Clock> clock, Calls calls)
    : m_pace(pace), m_clock(std::move(clock)), m_calls(std::move(calls)) {
  m_timer.setSingleShot(true);
  m_gather.setSingleShot(true);
  m_gather.setInterval(pace.gather);
  connect(&m_gather, &QTimer::timeout, this, &GaugeLink::onSeekOver);
}

GaugeLink::~GaugeLink() {
  endSeek();
  m_session.reset();
}

void GaugeLink::reset(Want want) {
  m_want = want;
  m_timer.stop();
  endSeek();
  closeSession();
  m_state = {};
  m_state.attempt = want == Want::gauge ? 1 : 0;
  m_state.attemptsMost = want == Want::gauge ? m_pace.attemptsMost : 0;
}

void GaugeLink::scan(const ports::RememberedGauge& remembered) {
  reset(Want::list);
  m_remembered = remembered;
  begin();
}

void GaugeLink::stopScan() {
  if (m_want == Want::list) stop();
}

void GaugeLink::choose(const std::string& id) {
  reset(Want::gauge);
  m_knownId = id;
  m_remembered = {};
  begin();
}

void GaugeLink::start(const ports::RememberedGauge& remembered) {
  reset(Want::gauge);
  m_knownId.clear();
  m_remembered = remembered;
  m_state.gauge = {remembered.name, remembered.serial};
  begin();
}

void GaugeLink::stop() {
  reset(Want::nothing);
  m_calls.onState(m_state);
}

void GaugeLink::begin() {
  m_timer.disconnect(this);
  const GaugePhase phase = adapterPhase();
  if (phase != GaugePhase::idle) return bluetoothFailed(phase);
  seek();
}

// A search for each attempt: the system forgets gauges that it has not heard for a while, and a random address may be another by now.
void GaugeLink::seek() {
  m_candidates.clear();
  m_hadSeveral = false;
  say(GaugePhase::scanning);
  m_agent = std::make_unique<Agent>();
  m_agent->setLowEnergyDiscoveryTimeout(0);  // until it is stopped
  connect(m_agent.get(), &Agent::deviceDiscovered, this, &GaugeLink::onDevice);
  connect(m_agent.get(), &Agent::deviceUpdated, this, [this](const QBluetoothDeviceInfo& device) { onDevice(device); });
  connect(m_agent.get(), &Agent::errorOccurred, this, &GaugeLink::onAgentError);
  connect(&m_timer, &QTimer::timeout, this, &GaugeLink::onSeekOver);
  m_timer.start(m_want == Want::list ? m_pace.scan : m_pace.seek);
  m_agent->start(Agent::LowEnergyMethod);
}

void GaugeLink::endSeek() {
  m_gather.stop();
  m_timer.stop();
  m_timer.disconnect(this);
  if (!m_agent) return;
  m_agent->disconnect(this);
  m_agent->stop();
  m_agent.release()->deleteLater();  // it may be the one that is calling
}

bool GaugeLink::fits(const QBluetoothDeviceInfo& device) const {
  const std::string id = idOf(device);
  if (!m_knownId.empty() && id == m_knownId) return true;
  const std::string name = plain(m_remembered.name);
  if (name.empty()) return m_knownId.empty() && saysPressure(device);
  return plain(device.name().toStdString()) == name;
}

void GaugeLink::onDevice(const QBluetoothDeviceInfo& device) {
  if (!m_agent || device.coreConfigurations() == QBluetoothDeviceInfo::BaseRateCoreConfiguration) return;
  if (m_want == Want::list) {
    const std::string name = device.name().toStdString();
    const bool isRemembered = !m_remembered.name.empty() && plain(name) == plain(m_remembered.name);
    m_calls.onFound({idOf(device), name, device.rssi(), isRemembered, saysPressure(device)});
    return;
  }
  if (!fits(device)) return;
  if (idOf(device) == m_knownId) {
    m_candidates = {device};
    return onSeekOver();
  }
  const auto same = std::find_if(m_candidates.begin(), m_candidates.end(), [&](const auto& one) { return idOf(one) == idOf(device); });
  if (same == m_candidates.end())
    m_candidates.push_back(device);
  else
    *same = device;
  if (!m_gather.isActive()) m_gather.start();
}

void GaugeLink::onAgentError(Agent::Error error) {
  GaugePhase phase = GaugePhase::noAdapter;
  if (error == Agent::PoweredOffError) phase = GaugePhase::off;
  if (error == Agent::LocationServiceTurnedOffError) phase = GaugePhase::locationOff;
  if (error == Agent::MissingPermissionsError) phase = GaugePhase::noPermission;
  endSeek();
  bluetoothFailed(phase);
}

void GaugeLink::onSeekOver() {
  endSeek();
  if (m_want == Want::list) return stop();
  if (m_candidates.empty()) return failed(GaugePhase::notFound, GaugePhase::scanning);
  m_hadSeveral = m_candidates.size() > 1;
  if (m_hadSeveral && plain(m_remembered.serial).empty()) return failed(GaugePhase::several, GaugePhase::scanning);
  // The nearest first; 0 is a strength that was not said.
  std::stable_sort(m_candidates.begin(), m_candidates.end(), [](const auto& a, const auto& b) {
    const int nearA = a.rssi() == 0 ? -1000 : a.rssi(), nearB = b.rssi() == 0 ? -1000 : b.rssi();
    return nearA > nearB;
  });
  tryCandidates();
}

void GaugeLink::tryCandidates() {
  if (m_candidates.empty()) return failed(GaugePhase::notFound, GaugePhase::discovering);
  const QBluetoothDeviceInfo device = m_candidates.front();
  m_candidates.erase(m_candidates.begin());
  openSession(device);
}

void GaugeLink::openSession(const QBluetoothDeviceInfo& device) {
  closeSession();
  m_state.gauge = {device.name().toStdString(), plain(m_remembered.serial)};
  GaugeSession::Calls calls;
  calls.onStep = [this](GaugePhase step) { say(step); };
  calls.isWanted = [this](const std::string& serial) {
    if (!plain(m_remembered.serial).empty() && plain(serial) != plain(m_remembered.serial)) return false;
    m_state.gauge.serial = plain(serial);
    return true;
  };
  calls.onReady = [this, device](bool isPolled) {
    m_knownId = idOf(device);
    m_remembered = m_state.gauge.toRemember();
    m_state.attempt = 1;
    m_state.isPolled = isPolled;
    say(GaugePhase::ready);
  };
  calls.onValue = [this](std::uint16_t uuid, const QByteArray& bytes) { send(uuid, bytes); };
  calls.ended = [this](GaugePhase failure, GaugePhase step) { onEnded(failure, step); };
  m_session = std::make_unique<GaugeSession>(device, m_pace, std::move(calls));
  m_session->begin();
}

void GaugeLink::closeSession() {
  if (m_session) m_session.release()->deleteLater();  // it may be the one that is calling
}

void GaugeLink::onEnded(GaugePhase failure, GaugePhase step) {
  closeSession();
  if (failure == GaugePhase::idle) {
    // Another gauge of that name. Where it was the id of this run, that id belongs to somebody else now.
    m_knownId.clear();
    return tryCandidates();
  }
  // With others left to try, one that does not answer is passed over.
  if (!m_candidates.empty() && step != GaugePhase::ready) return tryCandidates();
  failed(failure, step);
}

void GaugeLink::failed(GaugePhase failure, GaugePhase step) {
  closeSession();
  m_state.step = step;
  m_state.isPolled = false;
  if (failure != GaugePhase::several) {
    const GaugePhase bluetooth = adapterPhase();  // switched off while we were at it
    if (bluetooth != GaugePhase::idle) return bluetoothFailed(bluetooth);
  }
  const bool isLast = m_state.attempt >= m_state.attemptsMost && step != GaugePhase::ready;
  m_state.willRetry = !isFinal(failure) && !isLast;
  m_state.cause = failure;
  m_state.phase = isLast && !isFinal(failure) ? GaugePhase::gaveUp : failure;
  m_calls.onState(m_state);
  if (!m_state.willRetry || m_want != Want::gauge) return;
  GaugePace::Ms pause = m_pace.backOffFirst;
  for (int i = 1; i < m_state.attempt && pause < m_pace.backOffMost; ++i) pause *= 2;
  m_timer.disconnect(this);
  connect(&m_timer, &QTimer::timeout, this, [this] {
    ++m_state.attempt;
    begin();
  });
  m_timer.start(std::min(pause, m_pace.backOffMost));
}

void GaugeLink::bluetoothFailed(GaugePhase failure) {
  const bool isNews = m_state.phase != failure;
  m_state.phase = m_state.cause = failure;
  m_state.willRetry = true;
  m_state.isPolled = false;
  if (isNews) m_calls.onState(m_state);
  m_timer.disconnect(this);
  connect(&m_timer, &QTimer::timeout, this, &GaugeLink::begin);
  m_timer.start(m_pace.adapterAgain);
}

void GaugeLink::say(GaugePhase phase) {
  m_state.phase = m_state.step = m_state.cause = phase;
  m_state.willRetry = false;
  m_calls.onState(m_state);
}

void GaugeLink::send(std::uint16_t uuid, const QByteArray& bytes) {
  if (uuid == 0) return;
  m_calls.onPacket({m_state.gauge.label(), uuid, {bytes.begin(), bytes.end()}, m_clock->now()});
}

}  // namespace snugline::bluetooth
