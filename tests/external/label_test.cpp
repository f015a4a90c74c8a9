// SPDX-License-Identifier: Apache-2.0
// A recertification label carries the firm and the year only (NOCSAE, Recertification page; ND004), so the last good day is a span.
#include "core/gear/certification.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

// Reference: scripts/label_spans.py walks every day of the year in Python's calendar.
TEST_CASE("The span of a label's last good day holds every day of its year on which it may have been given") {
  std::string input;
  for (int year = 1996; year <= 2032; ++year)
    for (const int months : {12, 24, 36, 60}) input += std::to_string(year) + " " + std::to_string(months) + "\n";
  const auto lines = ask("/usr/bin/python3 '" + kHere + "scripts/label_spans.py'", input);
  const auto cases = split(input, '\n');
  REQUIRE(lines.size() == cases.size());
  for (std::size_t i = 0; i < cases.size(); ++i) {
    INFO(cases[i]);
    const auto asked = split(cases[i], ' ');
    const gear::Label label{gear::LabelKind::recertification, std::stoi(asked[0]), std::nullopt, {}};
    const gear::DaySpan span = gear::lastGoodDay(label, std::stoi(asked[1]), std::nullopt, 0);
    CHECK(print(span.first) + " " + print(span.last) == lines[i]);
    CHECK_FALSE(span.isOneDay());
  }
}
