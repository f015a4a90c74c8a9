// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <cmath>

#include "core/quantity/quantity.h"

using namespace snugline;

namespace {

template <typename T>
ErrorCode codeOf(const Result<T>& result) {
  REQUIRE_FALSE(result.has_value());
  return result.error().code;
}

}  // namespace

TEST_CASE("A length is read in every unit of the trade, with a point or a comma") {
  CHECK(parseLength("575mm").value().um == 575000);
  CHECK(parseLength("22.5in").value().um == 571500);
  CHECK(parseLength("57,5 cm").value().um == 575000);
  CHECK(parseLength(" 1 ft ").value().um == 304800);
  CHECK(parseLength("0.575m").value().um == 575000);
  CHECK(parseLength("12um").value().um == 12);
  CHECK(parseLength("12\u00B5m").value().um == 12);
  CHECK(parseLength(".5in").value().um == 12700);
  CHECK(parseLength("+25MM").value().um == 25000);
  CHECK(parseLength("25\u00A0mm").value().um == 25000);
}

TEST_CASE("Inches are read as fractions too, as a tape is, and print and reading agree on every sixteenth") {
  CHECK(parseLength("22 5/8in").value().um == 574675);
  CHECK(parseLength(" 22 5/8 IN").value().um == 574675);
  CHECK(parseLength("7/8 in").value().um == 22225);
  CHECK(parseLength("0 1/128in").value().um == 198);
  for (const char* text :
       {"22 8/8in", "22 5/0in", "22 5/129in", "22 /8in", "22 5/in", "22 5/8", "22 5/8mm", "-1/8in", "22-5/8in", "/in", "in"})
    CHECK(codeOf(parseLength(text)) == ErrorCode::notAQuantity);
  CHECK(codeOf(parseLength("394 1/8in")) == ErrorCode::outOfRange);
  for (std::int64_t n = 0; n < 640; ++n) {
    const Length length{(2 * n * 25400 + 16) / 32};
    CHECK(parseLength(print(length, UnitSystem::us)).value() == length);
  }
}

TEST_CASE("A pressure is read as it was typed, below zero too") {
  CHECK(parsePressure("20kPa").value().pa == 20000);
  CHECK(parsePressure("2.5psi").value().pa == 17237);
  CHECK(parsePressure("12.5psig").value().pa == 86184);
  CHECK(parsePressure("-0.185 psi").value().pa == -1276);
  CHECK(parsePressure("\u22121.2kPa").value().pa == -1200);
  CHECK(parsePressure("1013.25hPa").value().pa == 101325);
  CHECK(parsePressure("0.2 bar").value().pa == 20000);
}

TEST_CASE("A pressure that says gauge is refused where absolute is asked for, and the other way round") {
  CHECK(codeOf(parsePressure("14.7psia", "--set")) == ErrorCode::inconsistent);
  CHECK(codeOf(parsePressure("3psig", "--absolute", PressureKind::absolute)) == ErrorCode::inconsistent);
  CHECK(parsePressure("14.7psia", {}, PressureKind::absolute).value().pa == 101353);
  CHECK(parsePressure("14.7psi", {}, PressureKind::absolute).value().pa == 101353);
}

TEST_CASE("A temperature is read in three scales, with or without a degree sign") {
  CHECK(parseTemperature("22C").value().mk == 295150);
  CHECK(parseTemperature("22 \u00B0C").value().mk == 295150);
  CHECK(parseTemperature("71F").value().mk == 294817);
  CHECK(parseTemperature("-40F").value().mk == 233150);
  CHECK(parseTemperature("-40C").value().mk == 233150);
  CHECK(parseTemperature("273.15K").value().mk == 273150);
  CHECK(codeOf(parseTemperature("22\u00B0")) == ErrorCode::notAQuantity);
}

TEST_CASE("An elevation is read in metres, feet and kilometres, below the sea too") {
  CHECK(parseElevation("180m").value().mm == 180000);
  CHECK(parseElevation("590ft").value().mm == 179832);
  CHECK(parseElevation("1.609km").value().mm == 1609000);
  CHECK(parseElevation("-86m").value().mm == -86000);
}

TEST_CASE("A bare number is refused for want of a unit, and the place is named") {
  const Result<Length> bare = parseLength("575", "--tape");
  REQUIRE_FALSE(bare.has_value());
  CHECK(bare.error() == Error{ErrorCode::missingUnit, "--tape", "575"});
  CHECK(codeOf(parsePressure("20")) == ErrorCode::missingUnit);
  CHECK(codeOf(parseTemperature("22 ")) == ErrorCode::missingUnit);
  CHECK(codeOf(parseElevation("180.5")) == ErrorCode::missingUnit);
}

TEST_CASE("What is no quantity is refused") {
  for (const char* text : {"", "mm", "-", ".", "5.mm", "1.2.3mm", "1e3mm", "five mm", "575 mm mm", "575kg", "0x10mm", "5 7 5mm", "--5mm",
                           "1,000.5mm", "nanmm", "infmm", "575mm\x01"}) {
    INFO(text);
    CHECK(codeOf(parseLength(text)) == ErrorCode::notAQuantity);
  }
}

TEST_CASE("Each range is held at both of its ends") {
  CHECK(parseLength("0mm").value().um == 0);
  CHECK(parseLength("10m").value().um == 10000000);
  CHECK(codeOf(parseLength("-1mm")) == ErrorCode::outOfRange);
  CHECK(codeOf(parseLength("10.000001m")) == ErrorCode::outOfRange);
  CHECK(parsePressure("-200kPa").value().pa == -200000);
  CHECK(codeOf(parsePressure("-200.001kPa")) == ErrorCode::outOfRange);
  CHECK(codeOf(parsePressure("2000001Pa")) == ErrorCode::outOfRange);
  CHECK(parseTemperature("-90C").value().mk == 183150);
  CHECK(codeOf(parseTemperature("90.001C")) == ErrorCode::outOfRange);
  CHECK(codeOf(parseElevation("-431m")) == ErrorCode::outOfRange);
  CHECK(codeOf(parseElevation("9000.001m")) == ErrorCode::outOfRange);
}

TEST_CASE("A number too long for any range is out of range and nothing overflows") {
  CHECK(codeOf(parseLength("999999999999999999999999999999999999999999mm")) == ErrorCode::outOfRange);
  CHECK(codeOf(parsePressure("-99999999999999999999999psi")) == ErrorCode::outOfRange);
  CHECK(parseLength("000000000000000000000000000005mm").value().um == 5000);
  CHECK(parseLength("1.00000000000000000000000000000000000009mm").value().um == 1000);
}

TEST_CASE("An out of range error names what was read and both limits") {
  CHECK(parseLength("11m", "roster.csv:3").error() == Error{ErrorCode::outOfRange, "roster.csv:3", "11m, 0mm, 10000mm"});
  CHECK(parseTemperature("91C").error().detail == "91C, -90C, 90C");
}

TEST_CASE("What is finer than the unit kept is rounded half away from zero") {
  CHECK(parseLength("0.0005mm").value().um == 1);
  CHECK(parseLength("0.0004999mm").value().um == 0);
  CHECK(parsePressure("-0.5Pa").value().pa == -1);
  CHECK(parsePressure("0.5Pa").value().pa == 1);
  CHECK(parsePressure("1.4999Pa").value().pa == 1);
}

TEST_CASE("Quantities print for people in both systems, rounded half away from zero") {
  CHECK(print(Length{25400}, UnitSystem::metric) == "25 mm");
  CHECK(print(Length{25500}, UnitSystem::metric) == "26 mm");
  CHECK(print(Length{25400}, UnitSystem::us) == "1 in");
  CHECK(print(Length{22225}, UnitSystem::us) == "7/8 in");
  CHECK(print(Length{0}, UnitSystem::us) == "0 in");
  CHECK(print(Length{574675}, UnitSystem::us) == "22 5/8 in");
  CHECK(print(Length{1588}, UnitSystem::us) == "1/16 in");
  CHECK(print(Length{561000}, UnitSystem::us) == "22 1/16 in");  // 22.0866
  CHECK(printTape(Length{561000}, UnitSystem::us) == "22 1/8 in");
  CHECK(printTape(Length{558800 + 23813}, UnitSystem::us) == "23 in");  // 22 15/16, rounded up over the whole inch
  CHECK(printTape(Length{561000}, UnitSystem::metric) == "561 mm");
  CHECK(print(Pressure{20000}, UnitSystem::metric) == "20.0 kPa");
  CHECK(print(Pressure{20000}, UnitSystem::us) == "2.90 psi");
  CHECK(print(Pressure{-1276}, UnitSystem::us) == "-0.19 psi");
  CHECK(print(Pressure{-50}, UnitSystem::metric) == "-0.1 kPa");
  CHECK(print(Pressure{-49}, UnitSystem::metric) == "0.0 kPa");
  CHECK(print(Temperature{277150}, UnitSystem::metric) == "4 \u00B0C");
  CHECK(print(Temperature{277150}, UnitSystem::us) == "39 \u00B0F");
  CHECK(print(Temperature{272650}, UnitSystem::metric) == "-1 \u00B0C");
  CHECK(print(Elevation{180000}, UnitSystem::metric) == "180 m");
  CHECK(print(Elevation{180000}, UnitSystem::us) == "591 ft");
}

TEST_CASE("The exact form carries as many places as needed and no more") {
  CHECK(exact(Length{28000}) == "28mm");
  CHECK(exact(Length{575123}) == "575.123mm");
  CHECK(exact(Length{5}) == "0.005mm");
  CHECK(exact(Pressure{-1276}) == "-1276Pa");
  CHECK(exact(Temperature{295150}) == "22C");
  CHECK(exact(Temperature{273140}) == "-0.01C");
  CHECK(exact(Elevation{180000}) == "180m");
  CHECK(exact(Elevation{-86400}) == "-86.4m");
}

TEST_CASE("Decimals at the edge become the nearest whole unit") {
  CHECK(Length::millimetres(25.4).um == 25400);
  CHECK(Pressure::kilopascals(-1.2755).pa == -1276);
  CHECK(Temperature::celsius(21.6667).mk == 294817);
  CHECK(Elevation::metres(1609.344).mm == 1609344);
  CHECK(std::abs(Temperature{294817}.fahrenheit() - 71.0) < 0.001);
  CHECK(std::abs(Length{571500}.inches() - 22.5) < 1e-9);
}
