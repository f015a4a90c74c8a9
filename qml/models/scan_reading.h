// SPDX-License-Identifier: Apache-2.0
// Purpose: what a scanner, a camera or a person typed, as a tag, or as a sentence why it is none. The same at the Dock and where helmets
// are handed in. Thread: GUI thread.
#pragma once

#include <optional>
#include <string>

#include <QString>

#include "core/gear/tag.h"

namespace snugline::models {

struct ScanReading {
  std::string read;              // as sent, without what a scanner wraps around it
  std::optional<gear::Tag> tag;  // nothing: refusal says why
  QString refusal;
  QString doubt;      // with a tag: to be asked about where the Book does not know it
  std::string meant;  // with a refusal or a doubt: what the scanner seems to have sent
};
[[nodiscard]] ScanReading readScan(const QString& scanned, Day today);
// Control characters as blanks.
[[nodiscard]] QString readableScan(std::string_view text);

}  // namespace snugline::models
