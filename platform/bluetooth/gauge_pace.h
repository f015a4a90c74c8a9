// SPDX-License-Identifier: Apache-2.0
// Purpose: how long each step with a gauge may take, and how often it is tried. All ours, chosen from what people wait for with a helmet in
// their hands; a system's own time-outs are longer. Handed in, so that tests run through a minute in a second. Thread: plain values.
#pragma once

#include <chrono>

namespace snugline::bluetooth {

struct GaugePace {
  using Ms = std::chrono::milliseconds;
  Ms scan{20'000};         // a scan for the list
  Ms seek{12'000};         // looking for one gauge
  Ms gather{1'500};        // after the first of that name: is there another one alike?
  Ms connect{15'000};      // connected, and the system knows its services
  Ms answer{8'000};        // one question: a service, a value, a subscription
  Ms backOffFirst{1'000};  // before the second attempt; doubled each time
  Ms backOffMost{15'000};
  Ms adapterAgain{3'000};  // Bluetooth off or missing: look again
  Ms poll{500};            // a gauge that cannot send is asked this often
  Ms slowPoll{30'000};     // battery and temperature that cannot be sent
  Ms silence{10'000};      // a gauge that sends and is silent this long is asked once, to see whether it is there
  int attemptsMost = 8;    // about three minutes in all
  [[nodiscard]] static GaugePace scaled(int divisor) {
    GaugePace pace;
    for (Ms* time : {&pace.scan, &pace.seek, &pace.gather, &pace.connect, &pace.answer, &pace.backOffFirst, &pace.backOffMost,
                     &pace.adapterAgain, &pace.poll, &pace.slowPoll, &pace.silence}) {
      *time /= divisor;
    }
    return pace;
  }
};
inline constexpr std::chrono::milliseconds kFrame{16};  // packets are handed on at most this often
inline constexpr std::size_t kPacketsInOneCall = 4096;  // more: the oldest are dropped (four seconds at 1 kHz)

}  // namespace snugline::bluetooth
