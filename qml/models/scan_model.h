// SPDX-License-Identifier: Apache-2.0
// Purpose: the camera of the Dock as the screen sees it: whether it is on, what it sees, what it says when it sees nothing; each tag once
// (core/gear/tag_gate.h); and the sheet of labels with serials of our own (core/gear/own_serial.h). What a tag means is the Dock's.
// Errors: a camera or a sheet that cannot be had is a sentence, and the typed field goes on working. Thread: GUI thread.
#pragma once

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QString>

#include "core/gear/tag_gate.h"
#include "core/ports/outbox.h"
#include "core/ports/tag_port.h"
#include "desk.h"
#include "nfc_model.h"

namespace snugline::models {

class Choices;

// Any may be null: then there is none in this program.
struct TagEdges {
  std::unique_ptr<ports::TagCamera> camera{};
  std::unique_ptr<ports::LabelSheets> sheets{};
  std::unique_ptr<ports::NfcReader> nfc{};
  std::shared_ptr<ports::Outbox> outbox{};  // opens the sheet of labels
};

class ScanModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of Shell")
  Q_PROPERTY(bool hasCamera READ hasCamera CONSTANT)        // there is something to turn on
  Q_PROPERTY(bool isOn READ isOn NOTIFY changed)            // it was turned on, whether it sees or not
  Q_PROPERTY(bool isSeeing READ isSeeing NOTIFY changed)    // pictures come
  Q_PROPERTY(QString words READ words NOTIFY changed)       // one sentence: what to do, or why it sees nothing
  Q_PROPERTY(bool isTrouble READ isTrouble NOTIFY changed)  // the sentence is about something that does not work
  Q_PROPERTY(snugline::models::NfcModel* nfc READ nfc CONSTANT)
  Q_PROPERTY(bool hasSheets READ hasSheets CONSTANT)
  Q_PROPERTY(QString nextSerial READ nextSerial NOTIFY changed)  // the first of the next sheet
  Q_PROPERTY(QString sheetWords READ sheetWords NOTIFY changed)  // where the last sheet lies, or why there is none
  Q_PROPERTY(bool isSheetTrouble READ isSheetTrouble NOTIFY changed)
 public:
  ScanModel(TagEdges edges, Desk* desk, Choices* choices, QObject* parent = nullptr);
  ~ScanModel() override;

  Q_INVOKABLE void start();
  Q_INVOKABLE void stop();
  // A PDF of so many labels in the folder of documents; each serial is given once, whether it is stuck on or not.
  Q_INVOKABLE void writeSheet(int labels);

  [[nodiscard]] bool hasCamera() const { return m_edges.camera != nullptr; }
  [[nodiscard]] bool isOn() const { return m_isOn; }
  [[nodiscard]] bool isSeeing() const { return m_state == ports::CameraState::seeing; }
  [[nodiscard]] QString words() const;
  [[nodiscard]] bool isTrouble() const;
  [[nodiscard]] const QImage& picture() const { return m_picture; }  // small and grey; for TagPicture
  [[nodiscard]] NfcModel* nfc() const { return m_nfc; }
  [[nodiscard]] bool hasSheets() const { return m_edges.sheets != nullptr; }
  [[nodiscard]] QString nextSerial() const;
  [[nodiscard]] QString sheetWords() const { return m_sheetWords; }
  [[nodiscard]] bool isSheetTrouble() const { return m_isSheetTrouble; }
  void setSheetFolder(const QString& folder) { m_sheetFolder = folder; }

 signals:
  void changed();
  void pictureChanged();
  void read(const QString& text);  // a tag, once, from the camera or by NFC

 private:
  void show(const ports::SeenPicture& picture);
  [[nodiscard]] std::uint32_t lastGiven() const;

  TagEdges m_edges;
  Desk* m_desk;
  Choices* m_choices;
  NfcModel* m_nfc;
  gear::TagGate m_gate;
  QImage m_picture;
  ports::CameraState m_state = ports::CameraState::off;
  bool m_isOn = false;
  bool m_isMissing = false;  // there is nothing to call
  bool m_isUnreadable = false;
  std::int64_t m_unreadableFromMs = 0, m_unreadableMs = 0;
  QString m_sheetFolder, m_sheetWords;
  bool m_isSheetTrouble = false;
};

}  // namespace snugline::models
