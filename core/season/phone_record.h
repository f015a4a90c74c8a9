// SPDX-License-Identifier: Apache-2.0
// Purpose: an athlete's own phone as the Book knows it. Thread: plain values.
#pragma once

#include <string>

#include "core/season/stamp.h"

namespace snugline::season {

struct PhoneRecord {
  std::string device, publicKey;  // 13 letters; 64 hex digits
  Stamp joined;
  friend bool operator==(const PhoneRecord&, const PhoneRecord&) = default;
};

}  // namespace snugline::season
