// SPDX-License-Identifier: Apache-2.0
#include "core/season/clocks.h"

#include <algorithm>
#include <string_view>

namespace snugline::season {

std::vector<ClockDoubt> clockDoubts(const Views& views, Instant now) {
  std::vector<ClockDoubt> doubts;
  for (const auto& [device, heard] : views.devices) {
    const bool isOwn = device == views.ownDevice;
    if (heard.latest.ms - now.ms > (isOwn ? kOwnClockMs : kOtherClockMs)) doubts.push_back({device, isOwn, heard.latest, heard.who});
  }
  std::stable_partition(doubts.begin(), doubts.end(), [](const ClockDoubt& doubt) { return doubt.isOwn; });
  return doubts;
}

bool isBelieved(const Views& views, Instant at, const std::string& fact, Day today) {
  if (dayOf(at) <= today.plus(kBelievedDaysAhead)) return true;
  return !views.ownDevice.empty() && std::string_view(fact).substr(0, fact.rfind(':')) == views.ownDevice;
}

}  // namespace snugline::season
