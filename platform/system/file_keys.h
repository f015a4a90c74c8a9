// SPDX-License-Identifier: Apache-2.0
// Purpose: device identities in a folder of the user's, one small file for each Book, found by the Book's incarnation mark and readable
// by the user alone. They lie outside the Book, so that a copied or restored Book does not carry them along.
// Errors: noKey (a file that is there and cannot be read, or no random numbers), cannotWrite. Thread: one.
#pragma once

#include <string>

#include "core/ports/ports.h"

namespace snugline::platform {

// SNUGLINE_KEYS, else XDG_DATA_HOME/snugline/keys, else ~/.local/share/snugline/keys. Empty when the machine names no home.
[[nodiscard]] std::string keysFolder();

class FileKeys final : public ports::Keys {
 public:
  explicit FileKeys(std::string folder) : m_folder(std::move(folder)) {}
  [[nodiscard]] Result<std::optional<ports::Identity>> find(const std::string& incarnation) override;
  [[nodiscard]] Result<void> keep(const std::string& incarnation, const ports::Identity& identity) override;
  [[nodiscard]] Result<ports::Seed> freshSeed() override;
  [[nodiscard]] Result<std::string> freshMark() override;

 private:
  [[nodiscard]] Result<std::string> pathOf(const std::string& incarnation) const;
  std::string m_folder;
};

}  // namespace snugline::platform
