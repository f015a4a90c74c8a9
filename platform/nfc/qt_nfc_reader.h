// SPDX-License-Identifier: Apache-2.0
// Purpose: a device's NFC reader over Qt Nfc: the records of a tag's message are handed on as bytes and read nowhere here.
// A tag must answer within `patience`. NFC needs no permission asked of a person; the program's manifest names it where a system wants
// that. Qt's Linux build of 6.4 has no reader behind it: there isThere() is false. Errors: as tag_port.h; start on a device without NFC is
// notFound. Thread: GUI thread.
#pragma once

#include <chrono>
#include <memory>

#include <QObject>

#include "core/ports/tag_port.h"

namespace snugline::nfc {

inline constexpr std::chrono::milliseconds kAnswerWithin{2000};  // ours: a tag of a few hundred bytes takes a tenth of that

class QtNfcReader final : public ports::NfcReader {
 public:
  explicit QtNfcReader(std::chrono::milliseconds patience = kAnswerWithin);
  ~QtNfcReader() override;
  [[nodiscard]] bool isThere() override;
  void listen(ports::NfcListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::nfc
