// SPDX-License-Identifier: Apache-2.0
// Purpose: small files of this device that only their user may read: written beside, synced and renamed, so that a power cut leaves
// the old one or the new one. Range: up to 4096 bytes; what is longer is cut and then not understood.
// Errors: noKey (there and not readable), cannotWrite, diskFull; place: the file. Thread: one for each file.
#pragma once

#include <optional>
#include <string>

#include "core/quantity/result.h"

namespace snugline::platform {

[[nodiscard]] Result<std::optional<std::string>> readPrivate(const std::string& path);        // nothing: there is none
[[nodiscard]] Result<void> replacePrivate(const std::string& path, const std::string& text);  // makes the folder too

}  // namespace snugline::platform
