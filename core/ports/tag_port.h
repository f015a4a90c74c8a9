// SPDX-License-Identifier: Apache-2.0
// Purpose: the interfaces to what reads tags, a camera and an NFC reader, and to a printer's sheet of labels. No rules behind them: a text
// is handed on as it was read (GS1 data with its symbology prefix, so that parseTag knows it), an NFC tag as its records' bytes
// (core/gear/ndef.h reads them); the same tag as often as it is seen.
// Errors: start fails only where there is nothing to call (notFound: none in this program); what happens later is a state.
// Thread: each call from one thread, which has an event loop; every callback comes on that thread, none after stop() has returned.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::ports {

enum class CameraState : std::uint8_t {
  off,
  starting,
  seeing,        // pictures come
  noCamera,      // the device has none, or none is plugged in
  noPermission,  // the person or the system forbids it
  busy,          // another program has it
  failed         // it stopped by itself
};
// What the camera sees, small and grey, for showing: width * height bytes, row by row, black 0.
struct SeenPicture {
  int width = 0, height = 0;
  std::vector<std::uint8_t> grey;
};
struct CameraListener {
  std::function<void(const std::string& text)> onText;
  std::function<void()> onUnreadable;  // a tag stands there and cannot be read: damaged, dirty or not sharp
  std::function<void(CameraState)> onState;
  std::function<void(const SeenPicture&)> onPicture;  // some fifteen times a second
};
class TagCamera {
 public:
  virtual ~TagCamera() = default;
  virtual void listen(CameraListener listener) = 0;
  [[nodiscard]] virtual Result<void> start() = 0;
  virtual void stop() = 0;
};

enum class NfcState : std::uint8_t {
  off,
  waiting,      // for a tag to be held to the device
  switchedOff,  // in the settings of the device
  failed        // it did not begin, or it stopped by itself
};
// Why a tag that was held to the device gave no records.
enum class NfcMiss : std::uint8_t {
  unformatted,  // it holds no message, or one that cannot be taken apart
  goneTooSoon,  // taken away while it was read
  unreadable    // it answered with an error, or not in time
};
// One record of a message as the tag holds it. format: the three bits of its type name format.
struct NfcRecord {
  std::uint8_t format = 0;
  std::string type, payload;  // bytes
};
struct NfcListener {
  std::function<void(const std::vector<NfcRecord>&)> onRecords;  // of one message; empty where it has none
  std::function<void(NfcMiss)> onMiss;
  std::function<void(NfcState)> onState;
};
class NfcReader {
 public:
  virtual ~NfcReader() = default;
  // Whether this device can read NFC tags at all. Asked before anything is offered.
  [[nodiscard]] virtual bool isThere() = 0;
  virtual void listen(NfcListener listener) = 0;
  [[nodiscard]] virtual Result<void> start() = 0;
  virtual void stop() = 0;
};

// A sheet of labels to print: each with its serial as a Data Matrix and in letters. Errors: fileExists, cannotWrite, diskFull, notFound (no
// printing in this program), tooLong (a serial that no label holds).
class LabelSheets {
 public:
  virtual ~LabelSheets() = default;
  // PDF at path; title stands at the foot of each page. Answers the number of pages.
  [[nodiscard]] virtual Result<int> write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) = 0;
};

}  // namespace snugline::ports
