// SPDX-License-Identifier: Apache-2.0
// Purpose: the device's NFC reader as the screen sees it: whether there is one, whether it waits for a tag, what it says of the last tag
// that could not be read. What a tag holds is read by gear::readNdef; each tag once (core/gear/tag_gate.h); what it means is the Dock's.
// Errors: a reader or a tag that does not work is a sentence. Thread: GUI thread.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "core/gear/ndef.h"
#include "core/gear/tag_gate.h"
#include "core/ports/tag_port.h"
#include "desk.h"

namespace snugline::models {

class NfcModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of ScanModel")
  Q_PROPERTY(bool hasReader READ hasReader CONSTANT)        // asked of the device when it is first read
  Q_PROPERTY(bool isOn READ isOn NOTIFY changed)            // it was turned on, whether it works or not
  Q_PROPERTY(QString words READ words NOTIFY changed)       // one sentence: what to do, or what does not work
  Q_PROPERTY(bool isTrouble READ isTrouble NOTIFY changed)  // the sentence is about something that does not work
 public:
  // The reader may be null: then there is none in this program.
  NfcModel(std::unique_ptr<ports::NfcReader> reader, Desk* desk, QObject* parent = nullptr);
  ~NfcModel() override;

  Q_INVOKABLE void start();
  Q_INVOKABLE void stop();

  [[nodiscard]] bool hasReader() const;
  [[nodiscard]] bool isOn() const { return m_isOn; }
  [[nodiscard]] QString words() const;
  [[nodiscard]] bool isTrouble() const;

 signals:
  void changed();
  void read(const QString& text);  // a tag, once

 private:
  void take(const std::vector<ports::NfcRecord>& records);
  [[nodiscard]] static QString refusalWords(const gear::NdefRefusal& refusal);

  std::unique_ptr<ports::NfcReader> m_reader;
  Desk* m_desk;
  gear::TagGate m_gate;
  mutable std::optional<bool> m_isThere;
  ports::NfcState m_state = ports::NfcState::off;
  bool m_isOn = false;
  std::optional<ports::NfcMiss> m_miss;  // of the last tag
  std::optional<gear::NdefRefusal> m_refusal;
};

}  // namespace snugline::models
