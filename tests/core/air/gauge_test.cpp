// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <cmath>

#include "core/air/gauge_packet.h"
#include "core/gear/utf8.h"

using namespace snugline;
using namespace snugline::air;

namespace {

using Bytes = std::vector<std::uint8_t>;

Bytes le32(std::uint32_t v) {
  return {static_cast<std::uint8_t>(v), static_cast<std::uint8_t>(v >> 8U), static_cast<std::uint8_t>(v >> 16U),
          static_cast<std::uint8_t>(v >> 24U)};
}
Bytes le16(int v) { return {static_cast<std::uint8_t>(v & 0xFF), static_cast<std::uint8_t>((v >> 8) & 0xFF)}; }
Bytes bytesOf(std::string_view text) { return {text.begin(), text.end()}; }
GaugeValue pressureOf(std::uint32_t raw) { return decodeGauge(kPressureCharacteristic, le32(raw)).value(); }

}  // namespace

TEST_CASE("Three psi over one atmosphere come as raw 1220093") {
  const GaugeValue v = decodeGauge(kPressureCharacteristic, Bytes{0xFD, 0x9D, 0x12, 0x00}).value();
  CHECK(v.kind == GaugeValueKind::pressure);
  CHECK(v.isKnown);
  CHECK_FALSE(v.isQuestioned);
  CHECK(v.deciPascals == 1'220'093);
  const auto reading = readingOf(v, pressureOf(1'013'250));
  REQUIRE(reading.has_value());
  CHECK(reading->gauge() == Pressure{20'684});
  CHECK(std::abs(reading->gauge().psi() - 3.0) < 0.0001);
  CHECK(*reading == GaugeReading{1'220'093, 1'013'250});
  CHECK(reading->ambient() == kStandardAtmosphere);
}

TEST_CASE("Values that the gauge does not know are not known, and absurd ones are questioned") {
  CHECK_FALSE(pressureOf(0xFFFFFFFF).isKnown);
  CHECK_FALSE(pressureOf(0xFFFFFFFF).isQuestioned);
  CHECK(pressureOf(0).isQuestioned);
  CHECK(pressureOf(299'999).isQuestioned);
  CHECK_FALSE(pressureOf(300'000).isQuestioned);
  CHECK_FALSE(pressureOf(6'000'000).isQuestioned);
  CHECK(pressureOf(6'000'001).isQuestioned);
  CHECK(pressureOf(0xFFFFFFFE).isQuestioned);

  const auto temperature = [](int centi) { return decodeGauge(kTemperatureCharacteristic, le16(centi)).value(); };
  CHECK_FALSE(temperature(0x8000).isKnown);
  CHECK_FALSE(temperature(-27'316).isKnown);
  CHECK(temperature(-27'315).isQuestioned);
  CHECK(temperature(2'215).temperature == Temperature::celsius(22.15));
  CHECK(temperature(-512).temperature == Temperature::celsius(-5.12));
  CHECK_FALSE(temperature(6'000).isQuestioned);
  CHECK(temperature(6'001).isQuestioned);
  CHECK(temperature(-6'001).isQuestioned);

  const auto battery = [](std::uint8_t percent) { return decodeGauge(kBatteryCharacteristic, Bytes{percent}).value(); };
  CHECK(battery(0).isKnown);
  CHECK(battery(100).percent == 100);
  CHECK_FALSE(battery(101).isKnown);
  CHECK_FALSE(battery(255).isKnown);
}

TEST_CASE("A value of the wrong length is refused, saying what came and what was expected") {
  CHECK(decodeGauge(kPressureCharacteristic, Bytes(3)).error() == Error{ErrorCode::wrongType, "2A6D", "4 bytes, and 3 came"});
  CHECK(decodeGauge(kPressureCharacteristic, Bytes(40)).error() == Error{ErrorCode::wrongType, "2A6D", "4 bytes, and 40 came"});
  CHECK(decodeGauge(kPressureCharacteristic, Bytes{}).error() == Error{ErrorCode::wrongType, "2A6D", "4 bytes, and 0 came"});
  CHECK(decodeGauge(kTemperatureCharacteristic, Bytes(4)).error().detail == "2 bytes, and 4 came");
  CHECK(decodeGauge(kBatteryCharacteristic, Bytes(2)).error().detail == "1 byte, and 2 came");
  CHECK(decodeMeasurement(Bytes(10)).error() == Error{ErrorCode::wrongType, "290C", "11 bytes, and 10 came"});
  CHECK(decodeGauge(0x2A6F, Bytes(2)).error().code == ErrorCode::unknownWord);
}

TEST_CASE("Texts of a gauge are kept as printable text or refused") {
  const auto model = [](std::string_view text) { return decodeGauge(kModelCharacteristic, bytesOf(text)); };
  CHECK(model("Alder Gauge 3").value().text == "Alder Gauge 3");
  CHECK(model(std::string_view("G3\0\0\0", 5)).value().text == "G3");
  CHECK(model("J\u00E4ger").value().text == "J\u00E4ger");
  CHECK_FALSE(model("").value().isKnown);
  CHECK_FALSE(model(std::string_view("\0\0", 2)).value().isKnown);
  CHECK(model("two\nlines").error().code == ErrorCode::notText);
  CHECK(model(std::string_view("a\0b", 3)).error().code == ErrorCode::notText);
  CHECK(model("\xff\xfe").error().code == ErrorCode::notText);
  CHECK(model("\xc2\x85").error().code == ErrorCode::notText);
  CHECK(model(std::string(kGaugeTextMost, 'x')).has_value());
  CHECK(model(std::string(kGaugeTextMost + 1, 'x')).error().code == ErrorCode::tooLong);
}

TEST_CASE("Bytes of any kind are decoded or refused, never more") {
  CHECK(rc::check("values", [](const Bytes& bytes) {
    for (const std::uint16_t c : {kPressureCharacteristic, kTemperatureCharacteristic, kBatteryCharacteristic, kMakerCharacteristic,
                                  kModelCharacteristic, kSerialCharacteristic, std::uint16_t{0x2A00}}) {
      const auto v = decodeGauge(c, bytes);
      if (!v) {
        RC_ASSERT(v.error().code != ErrorCode::internal);
        RC_ASSERT(v.error().place.size() == 4U);
        continue;
      }
      RC_ASSERT(gear::isPrintable(v->text));
      RC_ASSERT(v->percent >= 0 && v->percent <= 100);
      RC_ASSERT(v->isKnown || !v->isQuestioned);
    }
    RC_ASSERT(decodeMeasurement(bytes).has_value() == (bytes.size() == 11));
  }));
  CHECK(rc::check("text for hex", [](const std::string& text) {
    const auto bytes = bytesFromHex(text);
    RC_ASSERT(!bytes || bytes->size() <= text.size() / 2);
    RC_ASSERT(characteristicFromText(text).has_value() || characteristicFromText(text).error().code == ErrorCode::wrongType);
  }));
}

TEST_CASE("Every raw value comes back as it was sent") {
  CHECK(rc::check("pressure", [](std::uint32_t raw) { RC_ASSERT(pressureOf(raw).deciPascals == raw); }));
  CHECK(rc::check("gauge", [] {
    const auto zero = *rc::gen::inRange<std::uint32_t>(600'000, 1'080'000), raw = *rc::gen::inRange<std::uint32_t>(300'000, 6'000'001);
    const auto r = readingOf(pressureOf(raw), pressureOf(zero));
    RC_ASSERT(r.has_value());
    const double exact = (static_cast<double>(raw) - static_cast<double>(zero)) / 10.0;
    RC_ASSERT(std::abs(static_cast<double>(r->gauge().pa) - exact) <= 0.5 + 1e-9);
  }));
}

TEST_CASE("A zero is questioned far from the air that is expected here") {
  CHECK(doubtZero(pressureOf(1'013'250), kStandardAtmosphere) == ZeroDoubt::none);
  CHECK(doubtZero(pressureOf(1'013'250 - 150'000), kStandardAtmosphere) == ZeroDoubt::none);
  CHECK(doubtZero(pressureOf(1'013'250 - 150'001), kStandardAtmosphere) == ZeroDoubt::farFromAmbient);
  CHECK(doubtZero(pressureOf(1'220'093), kStandardAtmosphere) == ZeroDoubt::farFromAmbient);  // the needle was in a bladder
  CHECK(doubtZero(pressureOf(834'353), ambientAt(Elevation::metres(1609))) == ZeroDoubt::none);
  CHECK(doubtZero(pressureOf(834'353), std::nullopt) == ZeroDoubt::none);
  CHECK(doubtZero(pressureOf(1'220'093), std::nullopt) == ZeroDoubt::notBelieved);
  CHECK(doubtZero(pressureOf(0), kStandardAtmosphere) == ZeroDoubt::notBelieved);
  CHECK(doubtZero(pressureOf(0xFFFFFFFF), kStandardAtmosphere) == ZeroDoubt::notPressure);
  CHECK(doubtZero(decodeGauge(kBatteryCharacteristic, Bytes{80}).value(), kStandardAtmosphere) == ZeroDoubt::notPressure);
  CHECK_FALSE(readingOf(pressureOf(1'220'093), pressureOf(0xFFFFFFFF)).has_value());
  CHECK_FALSE(readingOf(pressureOf(0), pressureOf(1'013'250)).has_value());
}

TEST_CASE("Hex is read as people paste it and refused when it is none") {
  const Bytes expected{0xFD, 0x9D, 0x12, 0x00};
  for (const char* text : {"FD9D1200", "fd9d1200", "0xFD9D1200", "FD 9D 12 00", "fd:9d:12:00", "FD-9D-12-00"}) {
    INFO(text);
    CHECK(bytesFromHex(text).value() == expected);
  }
  for (const char* text : {"F", "FD9", "FG", "F D", "FD,9D", "\xff\xff"}) {
    INFO(text);
    CHECK_FALSE(bytesFromHex(text).has_value());
  }
  for (const char* text : {"2A6D", "0x2a6d", "00002a6d-0000-1000-8000-00805f9b34fb"}) CHECK(characteristicFromText(text).value() == 0x2A6D);
  for (const char* text : {"", "2A6", "2A6DD", "2A6G", "0x", "10002a6d-0000-1000-8000-00805f9b34fb"})
    CHECK_FALSE(characteristicFromText(text).has_value());
}

TEST_CASE("The measurement descriptor tells what a characteristic measures and how well") {
  const GaugeMeasurement m = decodeMeasurement(Bytes{0, 0, 1, 2, 0, 0, 3, 1, 0, 1, 4}).value();
  CHECK(m == GaugeMeasurement{1, 2, 259, 1, 4});
  CHECK_FALSE(decodeMeasurement(Bytes{0, 0, 1, 2, 0, 0, 3, 1, 0, 1, 255}).value().uncertaintyHalfPercent.has_value());
}
