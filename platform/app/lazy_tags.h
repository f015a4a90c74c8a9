// SPDX-License-Identifier: Apache-2.0
// Purpose: a camera, an NFC reader and a sheet of labels whose libraries are loaded when they are first asked for, so that a start does not
// pay for Qt Multimedia, Qt Nfc and zxing-cpp and a machine without them runs the rest. Errors: notFound where the module is not there or
// does not load. Thread: as tag_port.h.
#pragma once

#include <memory>

#include "core/ports/tag_port.h"

namespace snugline::app {

class LazyCamera final : public ports::TagCamera {
 public:
  void listen(ports::CameraListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;

 private:
  ports::CameraListener m_listener;
  std::unique_ptr<ports::TagCamera> m_camera;
};

// Without its module there is no reader.
class LazyNfc final : public ports::NfcReader {
 public:
  [[nodiscard]] bool isThere() override;
  void listen(ports::NfcListener listener) override;
  [[nodiscard]] Result<void> start() override;
  void stop() override;

 private:
  Result<void> load();

  ports::NfcListener m_listener;
  std::unique_ptr<ports::NfcReader> m_reader;
};

class LazyLabelSheets final : public ports::LabelSheets {
 public:
  [[nodiscard]] Result<int> write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) override;

 private:
  std::unique_ptr<ports::LabelSheets> m_sheets;
};

}  // namespace snugline::app
