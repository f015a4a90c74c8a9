// SPDX-License-Identifier: Apache-2.0
#include "platform/nfc/qt_nfc_reader.h"

#include <algorithm>
#include <utility>
#include <vector>

#include <QNdefMessage>
#include <QNdefRecord>
#include <QNearFieldManager>
#include <QNearFieldTarget>
#include <QPointer>
#include <QTimer>

namespace snugline::nfc {

namespace {

std::vector<ports::NfcRecord> recordsOf(const QNdefMessage& message) {
  std::vector<ports::NfcRecord> records;
  for (const QNdefRecord& record : message)
    records.push_back({static_cast<std::uint8_t>(record.typeNameFormat()), record.type().toStdString(), record.payload().toStdString()});
  return records;
}

// One tag that is held to the device, from its arrival until it has said all or is gone.
struct Visit {
  QPointer<QNearFieldTarget> tag;
  QNearFieldTarget::RequestId asked;
  bool hasSpoken = false, isOver = false;
};

}  // namespace

struct QtNfcReader::Body : QObject {
  std::chrono::milliseconds patience{};
  ports::NfcListener listener;
  std::unique_ptr<QNearFieldManager> manager;
  std::vector<std::shared_ptr<Visit>> visits;
  bool isOn = false;

  QNearFieldManager& radio() {
    if (!manager) {
      manager = std::make_unique<QNearFieldManager>();
      connect(manager.get(), &QNearFieldManager::targetDetected, this, [this](QNearFieldTarget* tag) { meet(tag); });
      connect(manager.get(), &QNearFieldManager::targetLost, this, [this](QNearFieldTarget* tag) { lose(tag); });
      connect(manager.get(), &QNearFieldManager::targetDetectionStopped, this, [this] { onEnded(); });
      connect(manager.get(), &QNearFieldManager::adapterStateChanged, this, [this] { look(); });
    }
    return *manager;
  }
  void say(ports::NfcState state) const {
    if (listener.onState) listener.onState(state);
  }
  // Waits for tags where the device lets it; a reader that is switched on later begins by itself.
  void look() {
    if (!isOn) return;
    if (!radio().isEnabled()) return say(ports::NfcState::switchedOff);
    say(radio().startTargetDetection(QNearFieldTarget::NdefAccess) ? ports::NfcState::waiting : ports::NfcState::failed);
  }
  void onEnded() {
    if (isOn) say(radio().isEnabled() ? ports::NfcState::failed : ports::NfcState::switchedOff);
  }

  void miss(Visit& visit, ports::NfcMiss why) {
    if (visit.isOver) return;
    visit.isOver = true;
    if (listener.onMiss) listener.onMiss(why);
  }
  void meet(QNearFieldTarget* tag) {
    if (!isOn || tag == nullptr) return;
    auto visit = std::make_shared<Visit>();
    visit->tag = tag;
    visits.push_back(visit);
    if (!tag->hasNdefMessage()) return miss(*visit, ports::NfcMiss::unformatted);
    connect(tag, &QNearFieldTarget::ndefMessageRead, this, [this, visit](const QNdefMessage& message) {
      if (!isOn || visit->isOver) return;
      visit->hasSpoken = true;
      if (listener.onRecords) listener.onRecords(recordsOf(message));
    });
    connect(tag, &QNearFieldTarget::requestCompleted, this, [this, visit](const QNearFieldTarget::RequestId& id) {
      if (!isOn || visit->isOver || (visit->asked.isValid() && id != visit->asked)) return;
      visit->isOver = true;
      if (!visit->hasSpoken && listener.onRecords) listener.onRecords({});
    });
    connect(tag, &QNearFieldTarget::error, this, [this, visit](QNearFieldTarget::Error error) {
      if (!isOn || visit->hasSpoken) return;
      miss(*visit, error == QNearFieldTarget::TargetOutOfRangeError ? ports::NfcMiss::goneTooSoon : ports::NfcMiss::unreadable);
    });
    visit->asked = tag->readNdefMessages();
    if (!visit->asked.isValid()) return miss(*visit, ports::NfcMiss::unreadable);
    QTimer::singleShot(patience, this, [this, visit] {
      if (isOn && !visit->hasSpoken) miss(*visit, ports::NfcMiss::unreadable);
    });
  }
  void lose(QNearFieldTarget* tag) {
    const auto found = std::find_if(visits.begin(), visits.end(), [tag](const auto& visit) { return visit->tag == tag; });
    if (found == visits.end()) return;
    const std::shared_ptr<Visit> visit = *found;
    visits.erase(found);
    if (isOn && !visit->hasSpoken) miss(*visit, ports::NfcMiss::goneTooSoon);
    part(*visit);
  }
  // Qt keeps what it found until the manager goes, unless it is let go here.
  void part(Visit& visit) {
    visit.isOver = true;
    if (!visit.tag) return;
    visit.tag->QObject::disconnect(this);
    visit.tag->deleteLater();
  }
};

QtNfcReader::QtNfcReader(std::chrono::milliseconds patience) : m_body(std::make_unique<Body>()) { m_body->patience = patience; }
QtNfcReader::~QtNfcReader() { stop(); }

bool QtNfcReader::isThere() { return m_body->radio().isSupported(QNearFieldTarget::NdefAccess); }

void QtNfcReader::listen(ports::NfcListener listener) { m_body->listener = std::move(listener); }

Result<void> QtNfcReader::start() {
  if (!isThere()) return fail(ErrorCode::notFound, "NFC");
  if (m_body->isOn) return {};
  m_body->isOn = true;
  m_body->look();
  return {};
}

void QtNfcReader::stop() {
  if (!m_body->isOn) return;
  m_body->isOn = false;
  for (const auto& visit : std::exchange(m_body->visits, {})) m_body->part(*visit);
  m_body->radio().stopTargetDetection();
  m_body->say(ports::NfcState::off);
}

}  // namespace snugline::nfc
