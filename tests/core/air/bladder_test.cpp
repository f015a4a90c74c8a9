// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <cmath>
#include <cstdlib>

#include "core/air/bladder.h"

using namespace snugline;
using namespace snugline::air;

namespace {

std::int64_t within(std::int64_t low, std::int64_t high) { return *rc::gen::inRange<std::int64_t>(low, high + 1); }
Temperature anyTemperature() { return Temperature{within(kTemperatureLow.mk, kTemperatureHigh.mk)}; }
Pressure anyAmbient() { return ambientAt(Elevation{within(kElevationLow.mm, kElevationHigh.mm)}); }
AirState anyAir() { return {Pressure{within(-5'000, 100'000)}, anyTemperature(), anyAmbient()}; }

// A degree Fahrenheit in millikelvin, as parsed.
Temperature fahrenheit(int f) { return parseTemperature(std::to_string(f) + "F").value(); }
Pressure psi(const char* text) { return parsePressure(std::string(text) + "psi").value(); }

gear::AirPort crown() { return {gear::Port::crown, Pressure{20'000}, Pressure{7'000}, Pressure{41'000}}; }

}  // namespace

TEST_CASE("Geometric and geopotential height turn into each other and differ as the standard says") {
  // U.S. Standard Atmosphere, 1976, table I: 5000 m geometric is 4996 m geopotential, 9000 m is 8987 m.
  CHECK(std::abs(geopotentialMetres(5000) - 4996) < 0.5);
  CHECK(std::abs(geopotentialMetres(9000) - 8987) < 0.5);
  CHECK(geopotentialMetres(0) == 0.0);
  CHECK(rc::check("there and back", [] {
    const double z = static_cast<double>(within(-430'000, 9'000'000)) / 1000.0;
    RC_ASSERT(std::abs(geometricMetres(geopotentialMetres(z)) - z) < 1e-6);
  }));
}

TEST_CASE("Air grows thinner with every metre, and the ends of the range hold") {
  CHECK(ambientAt(Elevation{0}) == kStandardAtmosphere);
  CHECK(rc::check("thinner above", [] {
    const std::int64_t low = within(kElevationLow.mm, kElevationHigh.mm - 1000);
    RC_ASSERT(ambientAt(Elevation{low}) > ambientAt(Elevation{low + 1000}));
  }));
  CHECK(ambientAt(Elevation{9'000'001}) == ambientAt(kElevationHigh));
  CHECK(ambientAt(Elevation{-430'001}) == ambientAt(kElevationLow));
}

TEST_CASE("Weather that nobody has seen is refused with the range") {
  CHECK(believed(Temperature::celsius(-60)).has_value());
  CHECK(believed(Temperature::celsius(60)).has_value());
  CHECK(believed(Temperature::celsius(-60.001), "--now").error() == Error{ErrorCode::outOfRange, "--now", "-60.001C, -60C, 60C"});
  CHECK_FALSE(believed(Temperature::celsius(60.001)).has_value());
  CHECK(believed(Elevation::metres(-430)).has_value());
  CHECK_FALSE(believed(Elevation::metres(-430.001)).has_value());
  CHECK_FALSE(believed(Elevation::metres(9000.001)).has_value());
  CHECK_FALSE(believedAmbient(Pressure{29'999}).has_value());
  CHECK_FALSE(believedAmbient(Pressure{112'001}).has_value());
  CHECK(believedGauge(Pressure{-1'000}).has_value());
  CHECK_FALSE(believedGauge(Pressure{-80'000}).has_value());
  CHECK_FALSE(believedGauge(Pressure{498'676}).has_value());
}

TEST_CASE("The barometer comes before the elevation, and neither is nothing") {
  CHECK(ambientOf(Pressure{98'000}, Elevation{0}) == Pressure{98'000});
  CHECK(ambientOf(std::nullopt, Elevation{0}) == kStandardAtmosphere);
  CHECK_FALSE(ambientOf(std::nullopt, std::nullopt).has_value());
}

TEST_CASE("One psi set on a warm day is below zero in frost, three psi are not") {
  const Foresight one = foresee({psi("1"), fahrenheit(70)}, fahrenheit(30), kStandardAtmosphere);
  CHECK(std::abs(one.gauge.psi() - -0.185) < 0.0005);
  CHECK(one.isBelowZero());
  CHECK(causeOf(one) == Cause::cold);
  const Foresight three = foresee({psi("3"), fahrenheit(70)}, fahrenheit(30), kStandardAtmosphere);
  CHECK(std::abs(three.gauge.psi() - 1.664) < 0.0005);
  CHECK_FALSE(three.isBelowZero());
}

TEST_CASE("The two parts of a change add up to it exactly, and the larger one is its cause") {
  CHECK(rc::check("sum", [] {
    const AirState set = anyAir();
    const Foresight f = foresee(set, anyTemperature(), anyAmbient());
    RC_ASSERT(f.byTemperature.pa + f.byElevation.pa == f.change.pa);
    RC_ASSERT(f.held.pa + f.change.pa == f.gauge.pa);
    RC_ASSERT(f.held == set.gauge);
  }));
  const AirState home{Pressure{20'000}, Temperature::celsius(20), kStandardAtmosphere};
  const Pressure mountain = ambientAt(Elevation::metres(1609));
  CHECK(causeOf(foresee(home, home.temperature, mountain)) == Cause::higher);
  CHECK(causeOf(foresee({Pressure{20'000}, home.temperature, mountain}, home.temperature, kStandardAtmosphere)) == Cause::lower);
  CHECK(causeOf(foresee(home, Temperature::celsius(40), kStandardAtmosphere)) == Cause::warm);
  CHECK(causeOf(foresee(home, home.temperature, kStandardAtmosphere)) == Cause::none);
}

TEST_CASE("There and back again is where it began, within rounding") {
  CHECK(rc::check("identity", [] {
    const AirState set = anyAir();
    const Temperature now = anyTemperature();
    const Pressure around = anyAmbient();
    const Foresight there = foresee(set, now, around);
    const Foresight back = foresee({there.gauge, now, around}, set.temperature, set.ambient);
    // Half a pascal of rounding there, stretched by the ratio of temperatures back, and half a pascal again.
    RC_ASSERT(std::abs(back.gauge.pa - set.gauge.pa) <= 2);
    const Foresight soft = foresee({set.gauge, now, around}, set.temperature, set.ambient);
    RC_ASSERT(std::abs(there.volumeRatio * soft.volumeRatio - 1.0) < 1e-9);
  }));
}

TEST_CASE("Colder is never higher, thinner air is never lower") {
  CHECK(rc::check("monotone", [] {
    const AirState set = anyAir();
    const Temperature now{within(kTemperatureLow.mk, kTemperatureHigh.mk - 100)};
    const Pressure around = anyAmbient();
    const Foresight f = foresee(set, now, around);
    RC_ASSERT(foresee(set, Temperature{now.mk + 100}, around).gauge >= f.gauge);
    RC_ASSERT(foresee(set, Temperature{now.mk + 100}, around).volumeRatio > f.volumeRatio);
    RC_ASSERT(foresee(set, now, Pressure{around.pa - 10}).gauge.pa == f.gauge.pa + 10);
    RC_ASSERT(foresee(set, now, Pressure{around.pa - 10}).volumeRatio > f.volumeRatio);
  }));
}

TEST_CASE("Readings of one rigid bladder are carried to the same value whatever the weather") {
  CHECK(rc::check("carried", [] {
    const AirState set = anyAir();
    const Temperature now = anyTemperature();
    const Pressure around = anyAmbient();
    const AirState later{foresee(set, now, around).gauge, now, around};
    RC_ASSERT(std::abs(carriedPascals(set) - carriedPascals(later)) < 1.0);
  }));
  CHECK(carried({Pressure{20'000}, kReferenceTemperature, kStandardAtmosphere}) == Pressure{20'000});
}

TEST_CASE("A port calls when the rigid bound leaves its band or moves by more than the allowance") {
  const Temperature warm = Temperature::celsius(22);
  const auto in = [&](Pressure gauge, double now) {
    return judge(crown(), Pressure{7'000}, {gauge, warm, kStandardAtmosphere}, Temperature::celsius(now), kStandardAtmosphere);
  };
  CHECK_FALSE(in(Pressure{20'000}, 10).calls());
  CHECK(in(Pressure{20'000}, 2).movesTooMuch);
  CHECK_FALSE(in(Pressure{20'000}, 2).leavesBand);
  CHECK(in(Pressure{8'000}, 15).leavesBand);
  CHECK_FALSE(in(Pressure{8'000}, 15).movesTooMuch);
  CHECK_FALSE(in(Pressure{5'000}, 21).leavesBand);  // it lay outside before
  CHECK(in(Pressure{40'000}, 30).leavesBand);
}

TEST_CASE("A port that was never measured is judged by the move alone, from the sheet's start") {
  const Temperature warm = Temperature::celsius(22);
  gear::AirPort low = crown();
  low.start = low.low;
  const SeenAir unmeasured{std::nullopt, warm, kStandardAtmosphere};
  const Judgement j = judge(low, Pressure{7'000}, unmeasured, Temperature::celsius(15), kStandardAtmosphere);
  CHECK_FALSE(j.isMeasured);
  CHECK(j.since.gauge < low.low);
  CHECK_FALSE(j.calls());
  CHECK(judge(low, Pressure{7'000}, unmeasured, Temperature::celsius(0), kStandardAtmosphere).movesTooMuch);
}

TEST_CASE("Seven kilopascals are about 17 degrees or 600 metres for a helmet of the demo") {
  const AirState set{Pressure{20'000}, Temperature::celsius(20), kStandardAtmosphere};
  CHECK(std::abs(foresee(set, Temperature::celsius(3), kStandardAtmosphere).change.pa + 7'000) < 100);
  CHECK(std::abs(foresee(set, set.temperature, ambientAt(Elevation::metres(600))).change.pa - 7'000) < 100);
}
