// SPDX-License-Identifier: Apache-2.0
// Tags against GS1's own worked check digits, and against what zint prints and zxing-cpp reads.
#include "core/gear/tag.h"

#include <algorithm>
#include <random>

#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

namespace {

const Day kToday = dayOf(2026, 10, 14);

}  // namespace

// Sources stand in the last column of data/gs1_check_digits.csv.
TEST_CASE("Check digits agree with the examples that GS1 members work through") {
  for (const auto& row : rowsOf("gs1_check_digits.csv")) {
    INFO(row[0]);
    CHECK(gear::gs1CheckDigit(row[0]) == std::stoi(row[1]));
    // With a leading zero it becomes the number of a trade item, which has the same check digit.
    const std::string item = "0" + row[0] + row[1];
    CHECK(gear::parseTag("01" + item, kToday).value().isCheckDigitOk);
    std::string wrong = item;
    wrong.back() = static_cast<char>('0' + (wrong.back() - '0' + 1) % 10);
    CHECK_FALSE(gear::parseTag("01" + wrong, kToday).value().isCheckDigitOk);
  }
}

// Reference: zint (refuses data that GS1 does not allow, --werror) and zxing-cpp; Debian zint, python3-zxing-cpp, python3-pil.
TEST_CASE("A tag that zint prints and zxing-cpp reads says what was printed") {
  std::mt19937 chance(7);
  const auto below = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(chance); };
  const std::string letters = "ABCXYZabcxyz0123456789-._/";
  std::string input;
  std::vector<std::map<std::string, std::string>> printed;
  for (int i = 0; i < 24; ++i) {
    std::string item;
    for (int d = 0; d < 13; ++d) item += static_cast<char>('0' + below(10));
    item += static_cast<char>('0' + gear::gs1CheckDigit(item));
    std::string serial, batch;
    for (int n = 1 + below(12); n > 0; --n) serial += letters[static_cast<std::size_t>(below(static_cast<int>(letters.size())))];
    for (int n = 1 + below(6); n > 0; --n) batch += letters[static_cast<std::size_t>(below(static_cast<int>(letters.size())))];
    const std::string made = std::string("2") + static_cast<char>('0' + below(6)) + "0" + static_cast<char>('1' + below(9)) + "0" +
                             static_cast<char>('0' + below(10));
    const char* const symbology = i % 3 == 0 ? "71 " : i % 3 == 1 ? "58 " : "16 ";  // Data Matrix, QR, Code 128
    input += symbology;
    input += "[01]" + item + "[21]" + serial + "[10]" + batch + "[11]" + made + "\n";
    printed.push_back({{"01", item}, {"10", batch}, {"11", made}, {"21", serial}});
  }
  const auto lines = ask("/usr/bin/python3 '" + kHere + "scripts/printed_codes.py'", input);
  REQUIRE(lines.size() == printed.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    INFO(lines[i]);
    const Result<gear::Tag> tag = gear::parseTag(lines[i], kToday);
    REQUIRE(tag.has_value());
    CHECK(tag->form == gear::TagForm::gs1);
    CHECK(tag->ai == printed[i]);
    CHECK(tag->isCheckDigitOk);
    CHECK(tag->key == "01" + printed[i].at("01") + "21" + printed[i].at("21"));
  }
}
