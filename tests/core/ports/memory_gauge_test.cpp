// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/ports/memory_gauge.h"

using namespace snugline;
using namespace snugline::ports;

namespace {

struct Heard {
  std::vector<GaugePhase> phases;
  std::vector<std::string> found;
  std::vector<std::uint8_t> bytes;
  GaugeListener listener() {
    return {[this](const GaugeState& state) { phases.push_back(state.phase); },
            [this](const FoundGauge& gauge) { found.push_back(gauge.id); },
            [this](const std::vector<GaugePacket>& packets) {
              for (const GaugePacket& packet : packets) bytes.push_back(packet.bytes.at(0));
            }};
  }
};

}  // namespace

TEST_CASE("A gauge in memory sends its script in order, once it is ready and until it is stopped") {
  MemoryGauge gauge({{"g", 0x2A6D, {1}, {}}, {"g", 0x2A6D, {2}, {}}, {"g", 0x2A6E, {3}, {}}});
  gauge.offer({"a", "Harrow gauge", -50, false, true}, "7");
  Heard heard;
  GaugeListener listener = heard.listener();
  const auto hear = listener.onPackets;
  listener.onPackets = [&](const std::vector<GaugePacket>& packets) {
    hear(packets);
    if (packets.front().bytes.front() == 2) gauge.stop();  // a listener may have had enough while it listens
  };
  gauge.listen(listener);
  CHECK_FALSE(gauge.sendNext());
  REQUIRE(gauge.start({"Harrow gauge", "7"}).has_value());
  CHECK(gauge.state().gauge.toRemember() == RememberedGauge{"Harrow gauge", "7"});
  CHECK(gauge.sendNext());
  CHECK(gauge.sendNext());
  CHECK_FALSE(gauge.sendNext());
  CHECK(heard.bytes == std::vector<std::uint8_t>{1, 2});
  CHECK(heard.phases == std::vector<GaugePhase>{GaugePhase::connecting, GaugePhase::discovering, GaugePhase::subscribing, GaugePhase::ready,
                                                GaugePhase::idle});
}

TEST_CASE("A scan finds what was offered, marks the remembered name, and only what was found can be chosen") {
  MemoryGauge gauge;
  gauge.offer({"a", "One", -50, false, true});
  gauge.offer({"b", "Two", -60, false, true});
  Heard heard;
  bool isMarked = false;
  GaugeListener listener = heard.listener();
  listener.onFound = [&](const FoundGauge& found) {
    heard.found.push_back(found.id);
    if (found.isRemembered) isMarked = found.id == "b";
  };
  gauge.listen(listener);
  REQUIRE(gauge.scan({"Two", ""}).has_value());
  CHECK(heard.found == std::vector<std::string>{"a", "b"});
  CHECK(isMarked);
  CHECK(gauge.choose("c").error().code == ErrorCode::notFound);
  gauge.holdAt(GaugePhase::busy);
  REQUIRE(gauge.choose("b").has_value());
  CHECK(gauge.state().phase == GaugePhase::busy);
  CHECK(gauge.state().step == GaugePhase::subscribing);
}

TEST_CASE("A gauge with another serial number is not the remembered one") {
  MemoryGauge gauge;
  gauge.offer({"a", "One", -50, false, true}, "7");
  gauge.listen({});
  REQUIRE(gauge.start({"One", "8"}).has_value());
  CHECK(gauge.state().phase == GaugePhase::notFound);
}

TEST_CASE("A failing gauge answers every call with its error") {
  FailingGauge away;
  CHECK(away.scan().error().code == ErrorCode::notFound);
  CHECK(away.start({"One", ""}).error().code == ErrorCode::notFound);
  CHECK(away.choose("a").error().code == ErrorCode::notFound);
}

TEST_CASE("The label of a gauge is one printable line, cut between characters") {
  CHECK(GaugeIdentity{"Harrow", "7"}.label() == "Harrow 7");
  CHECK(GaugeIdentity{std::string("Har\0row\n", 8), ""}.label() == "Harrow");
  CHECK(GaugeIdentity{}.label() == "?");
  const std::string wide(127, 'x');
  CHECK(GaugeIdentity{wide + "\xC3\xA9", ""}.label() == wide);
}

TEST_CASE("Failures begin with Bluetooth being off") {
  CHECK_FALSE(isFailure(GaugePhase::ready));
  CHECK(isFailure(GaugePhase::off));
  CHECK(isFailure(GaugePhase::gaveUp));
}
