// SPDX-License-Identifier: Apache-2.0
// Purpose: the real Outbox: files into one folder, made when missing; written beside and renamed; opened by the program that the system
// has for them. Errors and thread: as the port.
#pragma once

#include <functional>

#include <QString>

#include "core/ports/outbox.h"

namespace snugline::platform {

class FolderOutbox final : public ports::Outbox {
 public:
  using Opener = std::function<bool(const QString& path)>;
  explicit FolderOutbox(QString folder, Opener opener = openBySystem) : m_folder(std::move(folder)), m_opener(std::move(opener)) {}
  [[nodiscard]] Result<std::string> keep(const std::string& name, const std::string& bytes) override;
  [[nodiscard]] Result<std::string> print(const std::string& name, const ports::Paper& paper) override;
  bool open(const std::string& place) override { return m_opener(QString::fromStdString(place)); }

 private:
  static bool openBySystem(const QString& path);
  [[nodiscard]] Result<QString> freeName(const std::string& name) const;
  QString m_folder;
  Opener m_opener;
};

}  // namespace snugline::platform
