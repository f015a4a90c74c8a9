// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <set>

#include "core/gear/points.h"

using namespace snugline::gear;

TEST_CASE("Every point has a name of its own by which it is found again") {
  std::set<std::string> names;
  for (const Point p : kPoints) {
    names.insert(std::string(code(p)));
    CHECK(pointFromCode(code(p)) == p);
  }
  CHECK(names == std::set<std::string>{"certification", "warning-label", "shell", "hardware", "faceguard", "liner", "chin-strap"});
  CHECK_FALSE(pointFromCode("visor").has_value());
  CHECK_FALSE(pointFromCode("").has_value());
}

TEST_CASE("Label, warning label, shell and faceguard are needed before a unit goes into service") {
  std::set<std::string> needed;
  for (const Point p : kPoints)
    if (isNeededForService(p)) needed.insert(std::string(code(p)));
  CHECK(needed == std::set<std::string>{"certification", "warning-label", "shell", "faceguard"});
}
