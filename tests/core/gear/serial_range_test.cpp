// SPDX-License-Identifier: Apache-2.0
// Serials from one to another, and the parts of a helmet.
#include SNUGLINE_CATCH_HEADER
#include <rapidcheck.h>

#include "core/gear/model_sheet.h"
#include "core/gear/serial_range.h"
#include "core/gear/unit_part.h"

using namespace snugline;
using namespace snugline::gear;

TEST_CASE("Serials that are alike are ordered by their numbers, whatever their zeros and letters") {
  CHECK(compareSerials("KX-0410", "kx-1200") == -1);
  CHECK(*compareSerials("KX-1200", "KX-410") > 0);
  CHECK(compareSerials("KX-0410", "KX-410") == 0);
  CHECK(*compareSerials("24-00099-A", "24-00100-A") < 0);
  CHECK(*compareSerials("23-99999-A", "24-00001-A") < 0);
  CHECK(*compareSerials("99999999999999999998", "99999999999999999999") < 0);  // longer than any machine's number
}

TEST_CASE("Serials that are not alike cannot be compared") {
  CHECK_FALSE(compareSerials("KX-0410", "KY-0410"));
  CHECK_FALSE(compareSerials("KX-0410", "KX-0410-B"));
  CHECK_FALSE(compareSerials("410", "KX"));
  CHECK_FALSE(compareSerials("", "1"));
}

TEST_CASE("Both ends belong to a range, and an end that is not said is open") {
  CHECK(isWithinSerials("KX-0410", "KX-0410", "KX-0500"));
  CHECK(isWithinSerials("KX-0500", "KX-0410", "KX-0500"));
  CHECK_FALSE(isWithinSerials("KX-0501", "KX-0410", "KX-0500"));
  CHECK_FALSE(isWithinSerials("KX-0409", "KX-0410", ""));
  CHECK(isWithinSerials("KX-9999", "KX-0410", ""));
  CHECK(isWithinSerials("KX-0001", "", "KX-0500"));
  CHECK_FALSE(isWithinSerials("LX-0450", "KX-0410", "KX-0500"));
}

TEST_CASE("A range that runs backwards or has ends that are not alike is refused") {
  CHECK(checkSerialRange("A1", "A2"));
  CHECK(checkSerialRange("A1", ""));
  CHECK(checkSerialRange("A2", "A1").error().code == ErrorCode::inconsistent);
  CHECK(checkSerialRange("A1", "B2").error().code == ErrorCode::inconsistent);
}

TEST_CASE("Numbers within one pattern are ordered as numbers are") {
  CHECK(rc::check("as numbers", [](std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    const auto name = [](std::uint32_t n) { return "HC-" + std::to_string(n) + "-x"; };
    const auto order = compareSerials(name(a), name(b));
    RC_ASSERT(order.has_value());
    RC_ASSERT((*order < 0) == (a < b) && (*order == 0) == (a == b));
    RC_ASSERT(isWithinSerials(name(c), name(a), name(b)) == (a <= c && c <= b));
  }));
}

TEST_CASE("Each part has a code of its own and belongs to one of the seven points") {
  for (const UnitPart part : kUnitParts) CHECK(unitPartFromCode(code(part)) == part);
  CHECK_FALSE(unitPartFromCode("visor"));
  CHECK(pointOf(UnitPart::jawBladder) == Point::liner);
  ModelSheet foam;
  CHECK_FALSE(hasUnitPart(foam, UnitPart::crownBladder));
  CHECK(hasUnitPart(foam, UnitPart::crownPads));
  foam.air = {{Port::jawLeft, {}, {}, {}}};
  CHECK(hasUnitPart(foam, UnitPart::jawBladder));
}
