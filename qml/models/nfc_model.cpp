// SPDX-License-Identifier: Apache-2.0
#include "nfc_model.h"

#include <utility>

#include "sentences_gear.h"

namespace snugline::models {

namespace {

gear::NdefFormat formatOf(std::uint8_t bits) {
  return bits <= static_cast<std::uint8_t>(gear::NdefFormat::reserved) ? static_cast<gear::NdefFormat>(bits) : gear::NdefFormat::reserved;
}

}  // namespace

NfcModel::NfcModel(std::unique_ptr<ports::NfcReader> reader, Desk* desk, QObject* parent)
    : QObject(parent), m_reader(std::move(reader)), m_desk(desk) {
  if (!m_reader) return;
  ports::NfcListener listener;
  listener.onRecords = [this](const std::vector<ports::NfcRecord>& records) { take(records); };
  listener.onMiss = [this](ports::NfcMiss miss) {
    m_refusal.reset();
    m_miss = miss;
    emit changed();
  };
  listener.onState = [this](ports::NfcState state) {
    if (m_state == state) return;
    m_state = state;
    emit changed();
  };
  m_reader->listen(std::move(listener));
}

NfcModel::~NfcModel() {
  if (m_isOn) m_reader->stop();
}

bool NfcModel::hasReader() const {
  if (!m_isThere) m_isThere = m_reader && m_reader->isThere();
  return *m_isThere;
}

void NfcModel::start() {
  if (!hasReader() || m_isOn) return;
  m_isOn = true;
  m_gate.forget();
  m_miss.reset();
  m_refusal.reset();
  if (!m_reader->start()) m_state = ports::NfcState::failed;
  emit changed();
}

void NfcModel::stop() {
  if (!m_isOn) return;
  m_isOn = false;
  m_reader->stop();
  m_state = ports::NfcState::off;
  m_miss.reset();
  m_refusal.reset();
  emit changed();
}

void NfcModel::take(const std::vector<ports::NfcRecord>& records) {
  std::vector<gear::NdefRecord> read;
  read.reserve(records.size());
  for (const ports::NfcRecord& record : records) read.push_back({formatOf(record.format), record.type, record.payload});
  auto text = gear::readNdef(read, m_desk->today());
  m_miss.reset();
  m_refusal.reset();
  if (!text) {
    m_refusal = std::move(text.error());
    emit changed();
    return;
  }
  emit changed();
  if (m_gate.isNew(*text, m_desk->now())) emit this->read(models::text(*text));
}

bool NfcModel::isTrouble() const {
  return m_isOn && (m_miss || m_refusal || m_state == ports::NfcState::switchedOff || m_state == ports::NfcState::failed);
}

QString NfcModel::words() const {
  if (!m_isOn) return {};
  switch (m_state) {
    case ports::NfcState::switchedOff:
      return tr("NFC is turned off on this device. Turn it on in its settings, or scan the tag another way.");
    case ports::NfcState::failed:
      return tr("The NFC reader stopped. Turn it off and on again, or scan the tag another way.");
    case ports::NfcState::off:
    case ports::NfcState::waiting:
      break;
  }
  if (m_refusal) return refusalWords(*m_refusal);
  if (m_miss) {
    switch (*m_miss) {
      case ports::NfcMiss::unformatted:
        return tr("This NFC tag was never written. Type the serial from the plate.");
      case ports::NfcMiss::goneTooSoon:
        return tr("The tag went away before it was read. Hold it still for a second.");
      case ports::NfcMiss::unreadable:
        return tr("This NFC tag does not answer. Hold it still once more, or type the serial from the plate.");
    }
  }
  return tr("Hold this device to the tag.");
}

QString NfcModel::refusalWords(const gear::NdefRefusal& refusal) {
  switch (refusal.why) {
    case gear::NdefTrouble::nothing:
      return tr("This NFC tag is empty. Type the serial from the plate.");
    case gear::NdefTrouble::smartPoster:
      return tr("This NFC tag holds an advertisement (a smart poster) and no serial. Type the serial from the plate.");
    case gear::NdefTrouble::otherKind:
      return tr("This NFC tag holds something else than a serial. Type the serial from the plate.");
    case gear::NdefTrouble::notText:
      return tr("The words on this NFC tag are damaged: they are no text. Type the serial from the plate.");
    case gear::NdefTrouble::cutShort:
      return tr("The words on this NFC tag are cut short. Type the serial from the plate.");
    case gear::NdefTrouble::tooLong:
      return tr("The words on this NFC tag are too long for a serial. Type the serial from the plate.");
    case gear::NdefTrouble::notATag:
      return tr("Refused: %1").arg(errorSentence(refusal.error));
  }
  return {};
}

}  // namespace snugline::models
