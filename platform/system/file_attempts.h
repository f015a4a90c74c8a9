// SPDX-License-Identifier: Apache-2.0
// Purpose: missed codes of this device, in one small file beside its identities. Errors: those of private_file.h; a file that is there
// and is something else: noKey. Thread: one.
#pragma once

#include <string>

#include "core/ports/ports.h"

namespace snugline::platform {

class FileAttempts final : public ports::Attempts {
 public:
  explicit FileAttempts(std::string folder) : m_folder(std::move(folder)) {}
  [[nodiscard]] Result<ports::MissedCodes> load() override;
  [[nodiscard]] Result<void> keep(const ports::MissedCodes& missed) override;

 private:
  std::string m_folder;
};

}  // namespace snugline::platform
