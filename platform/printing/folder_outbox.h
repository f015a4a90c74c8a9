// SPDX-License-Identifier: Apache-2.0
// Purpose: the real Outbox: files into one folder, made when missing; written beside and renamed. Errors and thread: as the port.
#pragma once

#include <QString>

#include "core/ports/outbox.h"

namespace snugline::platform {

class FolderOutbox final : public ports::Outbox {
 public:
  explicit FolderOutbox(QString folder) : m_folder(std::move(folder)) {}
  [[nodiscard]] Result<std::string> keep(const std::string& name, const std::string& bytes) override;
  [[nodiscard]] Result<std::string> print(const std::string& name, const ports::Paper& paper) override;

 private:
  [[nodiscard]] Result<QString> freeName(const std::string& name) const;
  QString m_folder;
};

}  // namespace snugline::platform
