// SPDX-License-Identifier: Apache-2.0
// Purpose: facts about athletes' own phones (PHONE_FORMAT.md). Both are about the athlete. Thread: plain values.
#pragma once

#include <string>

namespace snugline::book {

struct PhoneJoined {
  std::string device, publicKey;  // publicKey: 64 hex digits
};
struct PhoneLeft {
  std::string device;
};

}  // namespace snugline::book
