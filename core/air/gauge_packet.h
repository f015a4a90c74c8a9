// SPDX-License-Identifier: Apache-2.0
// Purpose: what the bytes of a Bluetooth gauge say, and gauge pressure from them. Sources: Bluetooth SIG, GATT Specification Supplement
// (characteristics Pressure 0x2A6D uint32 of 0.1 Pa, Temperature 0x2A6E sint16 of 0.01 C with 0x8000 not known, Battery Level 0x2A19 uint8
// of percent, and the texts of Device Information); Environmental Sensing Service 1.0 (descriptor ES Measurement 0x290C). Little-endian.
// The standard has no gauge pressure: pressure is absolute, so the open air is read first (the zero) and taken away; both raw values are
// kept. 3 psi gauge at one atmosphere is 122,009.3 Pa, raw 1220093.
// Errors: wrongType for a wrong length ("4 bytes, and 3 came"), unknownWord for a characteristic we do not read, tooLong and notText for
// texts; the place is the characteristic's number, "2A6D". Never more than that, whatever the bytes. Thread: pure functions.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/air/atmosphere.h"
#include "core/quantity/quantity.h"

namespace snugline::air {

inline constexpr std::uint16_t kEnvironmentalSensing = 0x181A, kDeviceInformation = 0x180A, kBatteryService = 0x180F;
inline constexpr std::uint16_t kPressureCharacteristic = 0x2A6D, kTemperatureCharacteristic = 0x2A6E, kBatteryCharacteristic = 0x2A19;
inline constexpr std::uint16_t kMakerCharacteristic = 0x2A29, kModelCharacteristic = 0x2A24, kSerialCharacteristic = 0x2A25;
inline constexpr std::uint16_t kMeasurementDescriptor = 0x290C;
inline constexpr std::size_t kGaugeTextMost = 128;  // bytes (ours; an attribute holds at most 512)

enum class GaugeValueKind : std::uint8_t { pressure, temperature, battery, maker, model, serial };
[[nodiscard]] std::string_view code(GaugeValueKind kind);  // "pressure", "temperature", "battery", "maker", "model", "serial"

struct GaugeValue {
  GaugeValueKind kind = GaugeValueKind::pressure;
  bool isKnown = false;       // the gauge says a value; the rest counts only then
  bool isQuestioned = false;  // known, but not believed: pressure outside 30 to 600 kPa absolute, temperature beyond 60 C of frost or heat
  std::uint32_t deciPascals = 0;  // absolute, 0.1 Pa, as sent; also where not known
  Temperature temperature;
  int percent = 0;
  std::string text;  // printable UTF-8; NUL bytes at its end are padding and are dropped
  friend bool operator==(const GaugeValue&, const GaugeValue&) = default;
};
// Not known: pressure 0xFFFFFFFF, temperature 0x8000 or below absolute zero, battery above 100, an empty text.
[[nodiscard]] Result<GaugeValue> decodeGauge(std::uint16_t characteristic, std::span<const std::uint8_t> bytes);

// "FD 9D 12 00" as people paste it: pairs of hex digits, with or without 0x in front, blanks, colons or hyphens between.
[[nodiscard]] Result<std::vector<std::uint8_t>> bytesFromHex(std::string_view hex, std::string_view place = {});
// "2A6D", "0x2a6d", and the long form 00002a6d-0000-1000-8000-00805f9b34fb.
[[nodiscard]] Result<std::uint16_t> characteristicFromText(std::string_view text, std::string_view place = {});

// ES Measurement, which tells repeated characteristics apart. 11 bytes.
struct GaugeMeasurement {
  std::uint8_t sampling = 0;                  // how the gauge makes one value of many
  std::uint32_t periodSeconds = 0;            // 0: not in use
  std::uint32_t intervalSeconds = 0;          // 0: not in use
  std::uint8_t application = 0;               // 0 unsaid, 1 air, 2 water, 3 barometric ... (memory)
  std::optional<int> uncertaintyHalfPercent;  // of the value, in steps of half a percent
  friend bool operator==(const GaugeMeasurement&, const GaugeMeasurement&) = default;
};
[[nodiscard]] Result<GaugeMeasurement> decodeMeasurement(std::span<const std::uint8_t> bytes);

// Open air as the gauge reads it. Further than this from the ambient pressure expected where we are, the zero is questioned: the needle was
// in a bladder, or the elevation is wrong (15 kPa, ours: weather moves it by 5 and 300 m by 4).
inline constexpr Pressure kZeroWithin{15'000};
enum class ZeroDoubt : std::uint8_t { none, notPressure, notBelieved, farFromAmbient };
// expected: from a barometer or the elevation; without it only belief at all is asked for.
[[nodiscard]] ZeroDoubt doubtZero(const GaugeValue& openAir, std::optional<Pressure> expectedAmbient);

// A reading with both raw values, as recorded.
struct GaugeReading {
  std::uint32_t rawDeciPascals = 0;
  std::uint32_t zeroDeciPascals = 0;
  [[nodiscard]] Pressure gauge() const;    // raw - zero, whole Pa, rounded half away from zero; may be below zero
  [[nodiscard]] Pressure ambient() const;  // the zero: open air where the gauge is
  friend bool operator==(const GaugeReading&, const GaugeReading&) = default;
};
// Nothing without a value or a zero that counts: not known or not believed.
[[nodiscard]] std::optional<GaugeReading> readingOf(const GaugeValue& pressure, const GaugeValue& zero);

}  // namespace snugline::air
