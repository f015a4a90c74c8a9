// SPDX-License-Identifier: Apache-2.0
#include "platform/system/system_clock.h"

#include <chrono>
#include <ctime>

namespace snugline::platform {

Instant SystemClock::now() {
  const auto sinceEpoch = std::chrono::system_clock::now().time_since_epoch();
  Instant t;
  t.ms = std::chrono::duration_cast<std::chrono::milliseconds>(sinceEpoch).count();
  const auto seconds = static_cast<std::time_t>(t.ms / 1000);
  std::tm local{};
  if (localtime_r(&seconds, &local) != nullptr) t.offsetMinutes = static_cast<std::int32_t>(local.tm_gmtoff / 60);
  return t;
}

}  // namespace snugline::platform
