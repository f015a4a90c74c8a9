// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <cmath>
#include <cstdlib>

#include "core/quantity/quantity.h"
#include "core/quantity/time.h"

using namespace snugline;

namespace {

std::int64_t within(std::int64_t low, std::int64_t high) { return *rc::gen::inRange<std::int64_t>(low, high + 1); }

}  // namespace

TEST_CASE("Whatever is written exactly is read back as it was") {
  CHECK(rc::check("length", [] {
    const Length v{within(0, 10'000'000)};
    RC_ASSERT(parseLength(exact(v)).value() == v);
  }));
  CHECK(rc::check("pressure", [] {
    const Pressure v{within(-200'000, 2'000'000)};
    RC_ASSERT(parsePressure(exact(v)).value() == v);
  }));
  CHECK(rc::check("temperature", [] {
    const Temperature v{within(183'150, 363'150)};
    RC_ASSERT(parseTemperature(exact(v)).value() == v);
  }));
  CHECK(rc::check("elevation", [] {
    const Elevation v{within(-430'000, 9'000'000)};
    RC_ASSERT(parseElevation(exact(v)).value() == v);
  }));
}

TEST_CASE("What is printed is never further from the value than half of the last place") {
  CHECK(rc::check("length", [] {
    const Length v{within(0, 10'000'000)};
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::metric).c_str()) - v.mm()) <= 0.5 + 1e-9);
    const auto us = parseLength(print(v, UnitSystem::us), {});  // to the sixteenth of an inch, read back to the micrometre
    RC_ASSERT(us.has_value());
    RC_ASSERT(std::abs(us->inches() - v.inches()) <= 1.0 / 32 + 1e-4);
  }));
  CHECK(rc::check("pressure", [] {
    const Pressure v{within(-200'000, 2'000'000)};
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::metric).c_str()) - v.kpa()) <= 0.05 + 1e-9);
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::us).c_str()) - v.psi()) <= 0.005 + 1e-9);
  }));
  CHECK(rc::check("temperature", [] {
    const Temperature v{within(183'150, 363'150)};
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::metric).c_str()) - v.celsius()) <= 0.5 + 1e-9);
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::us).c_str()) - v.fahrenheit()) <= 0.5 + 1e-9);
  }));
  CHECK(rc::check("elevation", [] {
    const Elevation v{within(-430'000, 9'000'000)};
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::metric).c_str()) - v.metres()) <= 0.5 + 1e-9);
    RC_ASSERT(std::abs(std::atof(print(v, UnitSystem::us).c_str()) - v.feet()) <= 0.5 + 1e-9);
  }));
}

TEST_CASE("A decimal comma reads like a decimal point") {
  CHECK(rc::check("length", [] {
    const std::string whole = std::to_string(within(0, 9'999)), part = std::to_string(within(0, 999'999));
    RC_ASSERT(parseLength(whole + "," + part + "mm").value() == parseLength(whole + "." + part + " mm").value());
  }));
}

TEST_CASE("Bytes of any kind are read or refused, never more") {
  CHECK(rc::check("any text", [](const std::string& text) {
    const auto length = parseLength(text);
    RC_ASSERT(length.has_value() || length.error().code != ErrorCode::internal);
    const auto pressure = parsePressure(text);
    RC_ASSERT(!pressure.has_value() || (pressure->pa >= -200'000 && pressure->pa <= 2'000'000));
    RC_ASSERT(!parseDay(text).has_value() || print(*parseDay(text)) == text);
  }));
}

TEST_CASE("Days and instants are read back as they were printed") {
  CHECK(rc::check("day", [] {
    const Day d{static_cast<std::int32_t>(within(dayOf(1900, 1, 1).number, dayOf(2199, 12, 31).number))};
    RC_ASSERT(parseDay(print(d)).value() == d);
    const CivilDate date = civil(d);
    RC_ASSERT(dayOf(date.year, date.month, date.day) == d);
  }));
  CHECK(rc::check("instant", [] {
    const Instant t{within(-2'000'000'000, 6'000'000'000) * 1000, static_cast<std::int32_t>(within(-840, 840))};
    RC_ASSERT(parseInstant(print(t)).value() == t);
    RC_ASSERT(minuteOfDay(t) >= 0);
    RC_ASSERT(minuteOfDay(t) < 1440);
    RC_ASSERT(dayOf(instantAt(dayOf(t), minuteOfDay(t), t.offsetMinutes)) == dayOf(t));
  }));
}

TEST_CASE("Adding months never leaves the month that was asked for") {
  CHECK(rc::check("months", [] {
    const Day d{static_cast<std::int32_t>(within(0, 60'000))};
    const int months = static_cast<int>(within(-240, 240));
    const CivilDate from = civil(d), to = civil(addMonths(d, months));
    RC_ASSERT((to.year * 12 + to.month) == (from.year * 12 + from.month + months));
    RC_ASSERT(to.day <= from.day);
    RC_ASSERT(to.day == from.day || !isValidDate(to.year, to.month, from.day));
  }));
}
