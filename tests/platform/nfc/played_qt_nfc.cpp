// SPDX-License-Identifier: Apache-2.0
#include "tests/platform/nfc/played_qt_nfc.h"

#include <QSharedData>
#include <QTimer>

using snugline::tests::Answer;
using snugline::tests::device;

QT_BEGIN_NAMESPACE

class QNearFieldManagerPrivate {};

class QNearFieldTargetPrivate {
 public:
  bool isFormatted = true;
  Answer answer = Answer::message;
  QList<QNdefMessage> messages;
};

class QNearFieldTarget::RequestIdPrivate : public QSharedData {};

QNearFieldManager::QNearFieldManager(QObject* parent) : QObject(parent), d_ptr(new QNearFieldManagerPrivate) { device().manager = this; }
QNearFieldManager::QNearFieldManager(QNearFieldManagerPrivate* backend, QObject* parent) : QObject(parent), d_ptr(backend) {}
QNearFieldManager::~QNearFieldManager() {
  if (device().manager == this) device().manager = nullptr;
  delete d_ptr;
}
bool QNearFieldManager::isEnabled() const { return device().isEnabled; }
bool QNearFieldManager::isSupported(QNearFieldTarget::AccessMethod method) const {
  return device().isSupported && (method & QNearFieldTarget::NdefAccess) != 0;
}
bool QNearFieldManager::startTargetDetection(QNearFieldTarget::AccessMethod) {
  if (!device().starts) return false;
  ++device().started;
  return true;
}
void QNearFieldManager::stopTargetDetection(const QString&) {
  ++device().stopped;
  emit targetDetectionStopped();
}
void QNearFieldManager::setUserInformation(const QString&) {}

QNearFieldTarget::RequestId::RequestId() = default;
QNearFieldTarget::RequestId::RequestId(const RequestId& other) = default;
QNearFieldTarget::RequestId::RequestId(RequestIdPrivate* p) : d(p) {}
QNearFieldTarget::RequestId::~RequestId() = default;
bool QNearFieldTarget::RequestId::isValid() const { return d.constData() != nullptr; }
int QNearFieldTarget::RequestId::refCount() const { return d ? d->ref.loadRelaxed() : 0; }
bool QNearFieldTarget::RequestId::operator<(const RequestId& other) const { return d.constData() < other.d.constData(); }
bool QNearFieldTarget::RequestId::operator==(const RequestId& other) const { return d.constData() == other.d.constData(); }
bool QNearFieldTarget::RequestId::operator!=(const RequestId& other) const { return !(*this == other); }
QNearFieldTarget::RequestId& QNearFieldTarget::RequestId::operator=(const RequestId& other) = default;

QNearFieldTarget::QNearFieldTarget(QObject* parent) : QNearFieldTarget(new QNearFieldTargetPrivate, parent) {}
QNearFieldTarget::QNearFieldTarget(QNearFieldTargetPrivate* backend, QObject* parent) : QObject(parent), d_ptr(backend) {
  ++device().targets;
}
QNearFieldTarget::~QNearFieldTarget() {
  --device().targets;
  delete d_ptr;
}
QByteArray QNearFieldTarget::uid() const { return QByteArrayLiteral("\x04\x01\x02"); }
QNearFieldTarget::Type QNearFieldTarget::type() const { return NfcTagType2; }
QNearFieldTarget::AccessMethods QNearFieldTarget::accessMethods() const { return NdefAccess; }
bool QNearFieldTarget::disconnect() { return true; }
bool QNearFieldTarget::hasNdefMessage() { return d_ptr->isFormatted; }
int QNearFieldTarget::maxCommandLength() const { return 0; }
bool QNearFieldTarget::waitForRequestCompleted(const RequestId&, int) { return false; }
QVariant QNearFieldTarget::requestResponse(const RequestId&) const { return {}; }
QNearFieldTarget::RequestId QNearFieldTarget::sendCommand(const QByteArray&) { return {}; }
QNearFieldTarget::RequestId QNearFieldTarget::writeNdefMessages(const QList<QNdefMessage>&) { return {}; }
// As Qt's readers do, the answer comes later.
QNearFieldTarget::RequestId QNearFieldTarget::readNdefMessages() {
  if (d_ptr->answer == Answer::refusesToBegin) return {};
  const RequestId id(new RequestIdPrivate);
  QTimer::singleShot(0, this, [this, id] {
    switch (d_ptr->answer) {
      case Answer::message:
        for (const QNdefMessage& message : std::as_const(d_ptr->messages)) emit ndefMessageRead(message);
        emit requestCompleted(id);
        return;
      case Answer::nothing:
        emit requestCompleted(id);
        return;
      case Answer::outOfRange:
        emit error(TargetOutOfRangeError, id);
        return;
      case Answer::garbled:
        emit error(NdefReadError, id);
        return;
      case Answer::refusesToBegin:
      case Answer::silence:
        return;
    }
  });
  return id;
}

namespace {

// Only what derives from it may give a target its backend.
class PlayedTarget final : public QNearFieldTarget {
 public:
  PlayedTarget(QNearFieldTargetPrivate* backend, QObject* parent) : QNearFieldTarget(backend, parent) {}
};

}  // namespace

QT_END_NAMESPACE

namespace snugline::tests {

PlayedDevice& device() {
  static PlayedDevice one;
  return one;
}

QNearFieldTarget* holdTag(bool isFormatted, Answer answer, const QList<QNdefMessage>& messages) {
  auto* backend = new QNearFieldTargetPrivate;
  backend->isFormatted = isFormatted;
  backend->answer = answer;
  backend->messages = messages;
  auto* tag = new PlayedTarget(backend, device().manager);
  emit device().manager->targetDetected(tag);
  return tag;
}

void takeAway(QNearFieldTarget* tag) { emit device().manager->targetLost(tag); }

void switchTo(bool isEnabled) {
  device().isEnabled = isEnabled;
  emit device().manager->adapterStateChanged(isEnabled ? QNearFieldManager::AdapterState::Online
                                                       : QNearFieldManager::AdapterState::Offline);
}

void endDetection() { emit device().manager->targetDetectionStopped(); }

}  // namespace snugline::tests
