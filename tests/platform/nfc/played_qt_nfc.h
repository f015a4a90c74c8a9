// SPDX-License-Identifier: Apache-2.0
// Purpose: a played Qt Nfc. QNearFieldManager and QNearFieldTarget are declared by Qt's own headers and defined here, so that the reader of
// the app, compiled as it is, meets tags that a test holds to it; messages and records are Qt's. Qt's Linux build has no reader that could
// be played from outside (its libQt6Nfc of 6.4 links neither a bus nor a smart card service).
// Thread: one thread.
#pragma once

#include <QNdefMessage>
#include <QNearFieldManager>
#include <QNearFieldTarget>

namespace snugline::tests {

// The device: what the next managers find.
struct PlayedDevice {
  bool isSupported = true, isEnabled = true, starts = true;
  int started = 0, stopped = 0;          // how often detection was
  QNearFieldManager* manager = nullptr;  // the one that is there
  int targets = 0;                       // alive
};
PlayedDevice& device();

enum class Answer { message, nothing, refusesToBegin, outOfRange, garbled, silence };

// Holds a tag to the device; the tag is Qt's afterwards.
QNearFieldTarget* holdTag(bool isFormatted, Answer answer, const QList<QNdefMessage>& messages = {});
void takeAway(QNearFieldTarget* tag);
void switchTo(bool isEnabled);
void endDetection();  // as iOS does by itself

}  // namespace snugline::tests
