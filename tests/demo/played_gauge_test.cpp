// SPDX-License-Identifier: Apache-2.0
// The gauge of the demo is found, can be zeroed in open air and read on two bladders within one round. The bytes: Bluetooth SIG, Pressure
// 0x2A6D, uint32 of 0.1 Pa, low byte first.
#include SNUGLINE_CATCH_HEADER

#include "demo/fakes/played_gauge.h"
#include "core/air/steady.h"

using namespace snugline;
using namespace snugline::demo;

TEST_CASE("The demo's gauge is found when it is looked for, and stands still in open air and on two bladders") {
  PlayedGauge gauge;
  std::vector<std::string> found;
  std::vector<ports::GaugePacket> packets;
  ports::GaugeListener listener;
  listener.onFound = [&](const ports::FoundGauge& one) { found.push_back(one.id); };
  listener.onPackets = [&](const std::vector<ports::GaugePacket>& some) { packets.insert(packets.end(), some.begin(), some.end()); };
  gauge.listen(listener);
  CHECK_FALSE(gauge.play(0.0, {}));  // nobody asked for it
  REQUIRE(gauge.scan({}));
  REQUIRE(found.size() == 1);
  REQUIRE(gauge.choose(found.front()));
  air::SteadyReading reading;
  int openAir = 0, crown = 0, sides = 0;
  for (int tenth = 0; tenth < static_cast<int>(kRoundSeconds * 10); ++tenth) {
    const Instant at{1'000'000 + tenth * 100, 0};
    REQUIRE(gauge.play(tenth / 10.0, at));
    const std::vector<std::uint8_t>& bytes = packets.back().bytes;
    REQUIRE(bytes.size() == 4);
    const std::uint32_t raw = bytes[0] | (static_cast<std::uint32_t>(bytes[1]) << 8U) | (static_cast<std::uint32_t>(bytes[2]) << 16U) |
                              (static_cast<std::uint32_t>(bytes[3]) << 24U);
    reading.add(at, Pressure{raw / 10});
    if (!reading.isSteady()) continue;
    openAir += raw == 1'013'250 ? 1 : 0;
    crown += raw == 1'213'250 ? 1 : 0;
    sides += raw == 1'153'250 ? 1 : 0;
  }
  CHECK(openAir >= 50);  // tenths of a second: long enough to touch "zero"
  CHECK(crown >= 80);
  CHECK(sides >= 80);
}
