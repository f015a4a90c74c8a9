// SPDX-License-Identifier: Apache-2.0
#include "core/air/gauge_packet.h"

#include <array>
#include <cstdlib>

#include "core/gear/utf8.h"

namespace snugline::air {

namespace {

using Bytes = std::span<const std::uint8_t>;

constexpr std::uint32_t kPressureNotKnown = 0xFFFFFFFF;  // ours: the standard names none, and no air has 429 MPa
constexpr int kCentiAbsoluteZero = -27'315;
constexpr std::uint8_t kUncertaintyNotKnown = 0xFF;  // GATT Specification Supplement, ES Measurement (memory)
constexpr std::size_t kMeasurementBytes = 11;
constexpr std::size_t kHexMost = 2048;  // ours; an attribute holds at most 512 bytes

std::uint32_t littleEndian(Bytes bytes) {
  std::uint32_t value = 0;
  for (std::size_t i = bytes.size(); i > 0; --i) value = (value << 8U) | bytes[i - 1];
  return value;
}

std::string hex4(std::uint16_t value) {
  std::string text;
  for (int shift = 12; shift >= 0; shift -= 4) text += "0123456789ABCDEF"[(value >> static_cast<unsigned>(shift)) & 0xFU];
  return text;
}

std::string bytesText(std::size_t n) { return std::to_string(n) + (n == 1 ? " byte" : " bytes"); }

Result<void> expectLength(std::uint16_t characteristic, Bytes bytes, std::size_t expected) {
  if (bytes.size() == expected) return {};
  return fail(ErrorCode::wrongType, hex4(characteristic), bytesText(expected) + ", and " + std::to_string(bytes.size()) + " came");
}

Result<GaugeValue> pressure(Bytes bytes) {
  GaugeValue v;
  v.kind = GaugeValueKind::pressure;
  v.deciPascals = littleEndian(bytes);
  v.isKnown = v.deciPascals != kPressureNotKnown;
  const auto deci = static_cast<std::int64_t>(v.deciPascals);
  v.isQuestioned = v.isKnown && (deci < kAbsoluteLow.pa * 10 || deci > kAbsoluteHigh.pa * 10);
  return v;
}

Result<GaugeValue> temperature(Bytes bytes) {
  GaugeValue v;
  v.kind = GaugeValueKind::temperature;
  const auto centi = static_cast<std::int16_t>(littleEndian(bytes));
  v.isKnown = centi >= kCentiAbsoluteZero;  // the code for not known, 0x8000, is -327.68
  if (!v.isKnown) return v;
  v.temperature = Temperature::millikelvin(centi * 10 + 273'150);
  v.isQuestioned = !believed(v.temperature).has_value();
  return v;
}

Result<GaugeValue> battery(Bytes bytes) {
  GaugeValue v;
  v.kind = GaugeValueKind::battery;
  v.isKnown = bytes[0] <= 100;
  if (v.isKnown) v.percent = bytes[0];
  return v;
}

Result<GaugeValue> text(std::uint16_t characteristic, GaugeValueKind kind, Bytes bytes) {
  while (!bytes.empty() && bytes.back() == 0) bytes = bytes.first(bytes.size() - 1);
  if (bytes.size() > kGaugeTextMost)
    return fail(ErrorCode::tooLong, hex4(characteristic), std::to_string(bytes.size()) + " bytes, " + std::to_string(kGaugeTextMost));
  GaugeValue v;
  v.kind = kind;
  v.text.assign(bytes.begin(), bytes.end());
  v.isKnown = !v.text.empty();
  if (!gear::isUtf8(v.text)) return fail(ErrorCode::notText, hex4(characteristic), "bytes that are not UTF-8");
  if (!gear::isPrintable(v.text)) return fail(ErrorCode::notText, hex4(characteristic), "control characters");
  return v;
}

template <typename Decode>
Result<GaugeValue> ofLength(std::uint16_t characteristic, Bytes bytes, std::size_t expected, Decode decode) {
  if (const Result<void> length = expectLength(characteristic, bytes, expected); !length) return tl::unexpected<Error>(length.error());
  return decode(bytes);
}

int hexDigit(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

}  // namespace

std::string_view code(GaugeValueKind kind) {
  switch (kind) {
    case GaugeValueKind::pressure:
      return "pressure";
    case GaugeValueKind::temperature:
      return "temperature";
    case GaugeValueKind::battery:
      return "battery";
    case GaugeValueKind::maker:
      return "maker";
    case GaugeValueKind::model:
      return "model";
    case GaugeValueKind::serial:
      return "serial";
  }
  return {};
}

Result<GaugeValue> decodeGauge(std::uint16_t characteristic, Bytes bytes) {
  if (characteristic == kPressureCharacteristic) return ofLength(characteristic, bytes, 4, pressure);
  if (characteristic == kTemperatureCharacteristic) return ofLength(characteristic, bytes, 2, temperature);
  if (characteristic == kBatteryCharacteristic) return ofLength(characteristic, bytes, 1, battery);
  if (characteristic == kMakerCharacteristic) return text(characteristic, GaugeValueKind::maker, bytes);
  if (characteristic == kModelCharacteristic) return text(characteristic, GaugeValueKind::model, bytes);
  if (characteristic == kSerialCharacteristic) return text(characteristic, GaugeValueKind::serial, bytes);
  return fail(ErrorCode::unknownWord, hex4(characteristic), "2A6D, 2A6E, 2A19, 2A29, 2A24 or 2A25");
}

Result<std::vector<std::uint8_t>> bytesFromHex(std::string_view hex, std::string_view place) {
  if (hex.size() > kHexMost)
    return fail(ErrorCode::tooLong, std::string(place), std::to_string(hex.size()) + ", " + std::to_string(kHexMost));
  if (hex.starts_with("0x") || hex.starts_with("0X")) hex.remove_prefix(2);
  std::vector<std::uint8_t> bytes;
  int high = -1;
  for (const char c : hex) {
    const int digit = hexDigit(c);
    const bool isBetween = high < 0 && (c == ' ' || c == ':' || c == '-');
    if (digit < 0 && !isBetween) return fail(ErrorCode::wrongType, std::string(place), "hex digits in pairs, like FD 9D 12 00");
    if (digit < 0) continue;
    if (high >= 0) bytes.push_back(static_cast<std::uint8_t>(high * 16 + digit));
    high = high >= 0 ? -1 : digit;
  }
  if (high >= 0) return fail(ErrorCode::wrongType, std::string(place), "hex digits in pairs, like FD 9D 12 00");
  return bytes;
}

Result<std::uint16_t> characteristicFromText(std::string_view text, std::string_view place) {
  constexpr std::string_view kBase = "-0000-1000-8000-00805f9b34fb";  // Bluetooth Core Specification, base UUID
  std::string plain(text.substr(0, 64));
  for (char& c : plain)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  std::string_view digits = plain;
  if (digits.starts_with("0x")) digits.remove_prefix(2);
  if (digits.size() == 8 + kBase.size() && digits.starts_with("0000") && digits.ends_with(kBase)) digits = digits.substr(4, 4);
  std::uint16_t value = 0;
  for (const char c : digits) {
    if (hexDigit(c) < 0 || digits.size() != 4)
      return fail(ErrorCode::wrongType, std::string(place), "a characteristic of four hex digits, like 2A6D");
    value = static_cast<std::uint16_t>(value * 16 + hexDigit(c));
  }
  if (digits.empty()) return fail(ErrorCode::wrongType, std::string(place), "a characteristic of four hex digits, like 2A6D");
  return value;
}

Result<GaugeMeasurement> decodeMeasurement(Bytes bytes) {
  if (const Result<void> length = expectLength(kMeasurementDescriptor, bytes, kMeasurementBytes); !length)
    return tl::unexpected<Error>(length.error());
  GaugeMeasurement m;  // bytes 0 and 1 are flags, reserved
  m.sampling = bytes[2];
  m.periodSeconds = littleEndian(bytes.subspan(3, 3));
  m.intervalSeconds = littleEndian(bytes.subspan(6, 3));
  m.application = bytes[9];
  if (bytes[10] != kUncertaintyNotKnown) m.uncertaintyHalfPercent = bytes[10];
  return m;
}

ZeroDoubt doubtZero(const GaugeValue& openAir, std::optional<Pressure> expectedAmbient) {
  if (openAir.kind != GaugeValueKind::pressure || !openAir.isKnown) return ZeroDoubt::notPressure;
  if (openAir.isQuestioned) return ZeroDoubt::notBelieved;
  if (!expectedAmbient) {
    const auto deci = static_cast<std::int64_t>(openAir.deciPascals);
    return deci < kBarometerLow.pa * 10 || deci > kBarometerHigh.pa * 10 ? ZeroDoubt::notBelieved : ZeroDoubt::none;
  }
  const std::int64_t away = std::abs(static_cast<std::int64_t>(openAir.deciPascals) - expectedAmbient->pa * 10);
  return away > kZeroWithin.pa * 10 ? ZeroDoubt::farFromAmbient : ZeroDoubt::none;
}

namespace {

std::int64_t wholePascals(std::int64_t deci) { return deci < 0 ? -((-deci + 5) / 10) : (deci + 5) / 10; }

}  // namespace

Pressure GaugeReading::gauge() const {
  return Pressure::pascals(wholePascals(static_cast<std::int64_t>(rawDeciPascals) - static_cast<std::int64_t>(zeroDeciPascals)));
}

Pressure GaugeReading::ambient() const { return Pressure::pascals(wholePascals(zeroDeciPascals)); }

std::optional<GaugeReading> readingOf(const GaugeValue& value, const GaugeValue& zero) {
  const auto counts = [](const GaugeValue& v) { return v.kind == GaugeValueKind::pressure && v.isKnown && !v.isQuestioned; };
  if (!counts(value) || !counts(zero)) return std::nullopt;
  return GaugeReading{value.deciPascals, zero.deciPascals};
}

}  // namespace snugline::air
