// SPDX-License-Identifier: Apache-2.0
// Every way in which a sheet can be wrong is named by the path of the value. Each case changes one place of a good sheet.
#include SNUGLINE_CATCH_HEADER

#include <fstream>
#include <sstream>

#include "core/gear/model_sheet.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

std::string goodSheet() {
  std::ifstream file(std::string(SNUGLINE_SOURCE_DIR) + "/tests/core/gear/data/ask-q4.json", std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

struct Slip {
  const char* from;
  const char* to;
  ErrorCode code;
  const char* path;
};

void expect(const Slip& slip) {
  std::string text = goodSheet();
  const std::size_t at = text.find(slip.from);
  INFO(slip.from << " -> " << slip.to);
  REQUIRE(at != std::string::npos);
  text.replace(at, std::string(slip.from).size(), slip.to);
  const Result<ModelSheet> sheet = parseSheet(text, "s");
  REQUIRE_FALSE(sheet.has_value());
  INFO(sheet.error().detail);
  CHECK(sheet.error().place == std::string("s#") + slip.path);
  CHECK(static_cast<int>(sheet.error().code) == static_cast<int>(slip.code));
}

}  // namespace

TEST_CASE("The sheet that the slips are made in is good by itself") { CHECK(parseSheet(goodSheet(), "s").has_value()); }

TEST_CASE("A slip in the size chart is named by its path") {
  for (const Slip& slip : std::initializer_list<Slip>{
           {"\"low_um\": 520000", "\"low_um\": -520000", ErrorCode::outOfRange, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": 52000", ErrorCode::outOfRange, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": 520000.5", ErrorCode::wrongType, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": 5.2e5", ErrorCode::wrongType, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": \"520000\"", ErrorCode::wrongType, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": null", ErrorCode::wrongType, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_um\": 18446744073709551615", ErrorCode::outOfRange, "/sizes/0/low_um"},
           {"\"low_um\": 520000", "\"low_mm\": 520", ErrorCode::unknownKey, "/sizes/0/low_mm"},
           {"\"low_um\": 520000, ", "", ErrorCode::missingKey, "/sizes/0/low_um"},
           {"\"high_um\": 610000", "\"high_um\": 555000", ErrorCode::inconsistent, "/sizes/1/high_um"},
           {"\"high_um\": 560000", "\"high_um\": 620000", ErrorCode::inconsistent, "/sizes/1/high_um"},
           {"\"low_um\": 555000", "\"low_um\": 510000", ErrorCode::inconsistent, "/sizes/1/low_um"},
           {"\"name\": \"L\"", "\"name\": \"S\"", ErrorCode::inconsistent, "/sizes/1/name"},
           {"\"name\": \"L\"", "\"name\": \"none\"", ErrorCode::inconsistent, "/sizes/1/name"},
           {"\"name\": \"L\"", "\"name\": \"\"", ErrorCode::outOfRange, "/sizes/1/name"},
           {"\"name\": \"L\"", "\"name\": \"  \"", ErrorCode::wrongType, "/sizes/1/name"},
           {"\"name\": \"L\"", "\"name\": \"L\\u0007\"", ErrorCode::wrongType, "/sizes/1/name"},
           {"\"name\": \"L\"", "\"name\": 5", ErrorCode::wrongType, "/sizes/1/name"},
           {"{ \"name\": \"S\", \"low_um\": 520000, \"high_um\": 560000 },", "7,", ErrorCode::wrongType, "/sizes/0"},
           {"\"sizes\"", "\"size\"", ErrorCode::unknownKey, "/size"}})
    expect(slip);
}

TEST_CASE("A third band that reaches into the first is refused") {
  expect({"{ \"name\": \"L\", \"low_um\": 555000, \"high_um\": 610000 }",
          "{ \"name\": \"M\", \"low_um\": 545000, \"high_um\": 580000 }, { \"name\": \"L\", \"low_um\": 560000, \"high_um\": 610000 }",
          ErrorCode::inconsistent, "/sizes/2/low_um"});
}

TEST_CASE("A slip in the air is named by its path") {
  for (const Slip& slip :
       std::initializer_list<Slip>{{"\"start_pa\": 20000", "\"start_pa\": 45000", ErrorCode::inconsistent, "/air/0/start_pa"},
                                   {"\"start_pa\": 20000", "\"start_pa\": 6999", ErrorCode::inconsistent, "/air/0/start_pa"},
                                   {"\"low_pa\": 7000", "\"low_pa\": -1", ErrorCode::outOfRange, "/air/0/low_pa"},
                                   {"\"high_pa\": 40000", "\"high_pa\": 7000", ErrorCode::inconsistent, "/air/0/high_pa"},
                                   {"\"port\": \"crown\"", "\"port\": \"front\"", ErrorCode::unknownWord, "/air/0/port"},
                                   {"\"port\": \"crown\"", "\"port\": \"jaw-left\"", ErrorCode::inconsistent, "/air"},
                                   {"\"port\": \"crown\", ", "", ErrorCode::missingKey, "/air/0/port"},
                                   {"[{ \"port\"", "[{ \"port\": \"crown\", \"start_pa\": 2, \"low_pa\": 1, \"high_pa\": 3 }, { \"port\"",
                                    ErrorCode::inconsistent, "/air/1/port"},
                                   {"[\"crown\"]", "[]", ErrorCode::outOfRange, "/fitting_order"},
                                   {"[\"crown\"]", "[\"sides\"]", ErrorCode::inconsistent, "/fitting_order/0"},
                                   {"[\"crown\"]", "[\"crown\", \"crown\"]", ErrorCode::inconsistent, "/fitting_order/1"},
                                   {"[\"crown\"]", "[\"top\"]", ErrorCode::unknownWord, "/fitting_order/0"},
                                   {"\"fitting_order\": [\"crown\"],", "", ErrorCode::missingKey, "/fitting_order"},
                                   {"\"leak_per_week_pa\": 2000,", "", ErrorCode::missingKey, "/leak_per_week_pa"},
                                   {"\"leak_per_week_pa\": 2000", "\"leak_per_week_pa\": 0", ErrorCode::outOfRange, "/leak_per_week_pa"},
                                   {"\"change_allowance_pa\": 7000,", "", ErrorCode::missingKey, "/change_allowance_pa"},
                                   {"\"air\": [{ \"port\": \"crown\", \"start_pa\": 20000, \"low_pa\": 7000, \"high_pa\": 40000 }],", "",
                                    ErrorCode::inconsistent, "/change_allowance_pa"}})
    expect(slip);
}

TEST_CASE("A slip in the order of the marks is named by its path") {
  for (const Slip& slip : std::initializer_list<Slip>{
           {"\"fitting_order\"", "\"mark_order\": [], \"fitting_order\"", ErrorCode::outOfRange, "/mark_order"},
           {"\"fitting_order\"", "\"mark_order\": [\"brow\"], \"fitting_order\"", ErrorCode::outOfRange, "/mark_order"},
           {"\"fitting_order\"", "\"mark_order\": [\"brow\", \"top\"], \"fitting_order\"", ErrorCode::unknownWord, "/mark_order/1"},
           {"\"fitting_order\"", "\"mark_order\": [7], \"fitting_order\"", ErrorCode::wrongType, "/mark_order/0"},
           {"\"fitting_order\"",
            "\"mark_order\": [\"brow\", \"ears\", \"nape\", \"chin\", \"straps\", \"jaw\", \"crown\", \"sides\", \"brow\"], "
            "\"fitting_order\"",
            ErrorCode::inconsistent, "/mark_order/8"}})
    expect(slip);
}

TEST_CASE("A port of air that the fitting order leaves out is named") {
  expect({"[{ \"port\"", "[{ \"port\": \"sides\", \"start_pa\": 2, \"low_pa\": 1, \"high_pa\": 3 }, { \"port\"", ErrorCode::inconsistent,
          "/fitting_order"});
}

TEST_CASE("A slip in the pads is named by its path") {
  for (const Slip& slip :
       std::initializer_list<Slip>{{"[25000]", "[25000, 22000]", ErrorCode::inconsistent, "/jaw_pads/steps_um/1"},
                                   {"[25000]", "[25000, 25000]", ErrorCode::inconsistent, "/jaw_pads/steps_um/1"},
                                   {"[25000]", "[-25000]", ErrorCode::outOfRange, "/jaw_pads/steps_um/0"},
                                   {"[25000]", "[25]", ErrorCode::outOfRange, "/jaw_pads/steps_um/0"},
                                   {"[25000]", "[]", ErrorCode::outOfRange, "/jaw_pads/steps_um"},
                                   {"[25000]", "25000", ErrorCode::wrongType, "/jaw_pads/steps_um"},
                                   {"\"fitted_um\": 25000", "\"fitted_um\": 24000", ErrorCode::inconsistent, "/jaw_pads/fitted_um"},
                                   {", \"fitted_um\": 25000", "", ErrorCode::missingKey, "/jaw_pads/fitted_um"},
                                   {"\"steps_um\"", "\"steps\"", ErrorCode::unknownKey, "/jaw_pads/steps"}})
    expect(slip);
}

TEST_CASE("Jaw pads by thickness beside air in the jaw are refused") {
  expect({"[{ \"port\"",
          "[{ \"port\": \"jaw-left\", \"start_pa\": 2, \"low_pa\": 1, \"high_pa\": 3 }, { \"port\": \"jaw-right\", \"start_pa\": 2, "
          "\"low_pa\": 1, \"high_pa\": 3 }, { \"port\"",
          ErrorCode::inconsistent, "/jaw_pads"});
}

TEST_CASE("A slip in limits and intervals is named by its path") {
  for (const Slip& slip : std::initializer_list<Slip>{
           {"\"brow_low_um\": 19000", "\"brow_low_um\": 26000", ErrorCode::inconsistent, "/brow_low_um"},
           {"\"brow_high_um\": 32000", "\"brow_high_um\": 25000", ErrorCode::inconsistent, "/brow_high_um"},
           {"\"brow_high_um\": 32000", "\"brow_high_um\": 19000", ErrorCode::inconsistent, "/brow_high_um"},
           {"\"brow_low_um\": 19000", "\"brow_low_um\": -1", ErrorCode::outOfRange, "/brow_low_um"},
           {"\"strap_points\": 4", "\"strap_points\": 5", ErrorCode::inconsistent, "/strap_points"},
           {"\"strap_points\": 4", "\"strap_points\": 2", ErrorCode::outOfRange, "/strap_points"},
           {"\"certification_months\": 24,", "", ErrorCode::missingKey, "/certification_months"},
           {"\"certification_months\": 24", "\"certification_months\": 0", ErrorCode::outOfRange, "/certification_months"},
           {"\"certification_months\": 24", "\"certification_months\": 61", ErrorCode::outOfRange, "/certification_months"},
           {"\"age_limit_months\": 0", "\"age_limit_months\": -1", ErrorCode::outOfRange, "/age_limit_months"},
           {"\"age_limit_months\": 0", "\"age_limit_months\": true", ErrorCode::wrongType, "/age_limit_months"}})
    expect(slip);
}

TEST_CASE("A slip in names and questions is named by its path") {
  for (const Slip& slip : std::initializer_list<Slip>{
           {"\"format\": 1", "\"format\": 2", ErrorCode::outOfRange, "/format"},
           {"\"format\": 1,", "", ErrorCode::missingKey, "/format"},
           {"\"id\": \"ask-q4\"", "\"id\": \"Ask Q4\"", ErrorCode::wrongType, "/id"},
           {"\"id\": \"ask-q4\"", "\"id\": \"\"", ErrorCode::outOfRange, "/id"},
           {"\"name\": \"Ask Q4\"", "\"name\": []", ErrorCode::wrongType, "/name"},
           {"\"sight-lines\"", "\"faceguard-distance\"", ErrorCode::inconsistent, "/questions/1/id"},
           {"\"sight-lines\"", "\"brow\"", ErrorCode::inconsistent, "/questions/1/id"},
           {"\"sight-lines\"", "\"faceguard\"", ErrorCode::inconsistent, "/questions/1/id"},
           {"\"sight-lines\"", "\"sight lines\"", ErrorCode::wrongType, "/questions/1/id"},
           {"\"if_no\"", "\"ifno\"", ErrorCode::unknownKey, "/questions/0/ifno"},
           {"\"ask\": \"Do", "\"ask\": \"\\nDo", ErrorCode::wrongType, "/questions/0/ask"},
           {"\"strap_points\"", "\"cautions\": 5, \"strap_points\"", ErrorCode::wrongType, "/cautions"},
           {"\"strap_points\"", "\"a/b~c\": 5, \"strap_points\"", ErrorCode::unknownKey, "/a~1b~0c"},
           {"\"strap_points\"", "\"id\": \"twice\", \"strap_points\"", ErrorCode::duplicateKey, "/id"},
           {"\"port\": \"crown\"", "\"port\": \"crown\", \"port\": \"crown\"", ErrorCode::duplicateKey, "/air/0/port"}})
    expect(slip);
}

TEST_CASE("A sheet that is another kind of JSON is refused at its root") {
  for (const char* text : {"[]", "5", "\"sheet\"", "null"}) {
    const Result<ModelSheet> sheet = parseSheet(text, "s");
    CHECK(sheet.error() == Error{ErrorCode::wrongType, "s#/", "an object"});
  }
}

TEST_CASE("A sheet cut short anywhere is refused and names itself") {
  const std::string good = goodSheet();
  const std::size_t end = good.rfind('}');
  for (std::size_t length = 0; length <= end; ++length) {
    const Result<ModelSheet> sheet = parseSheet(std::string_view(good).substr(0, length), "s");
    REQUIRE_FALSE(sheet.has_value());
    REQUIRE(sheet.error().code == ErrorCode::notJson);
    REQUIRE(sheet.error().place == "s");
  }
}

TEST_CASE("A sheet with any one byte changed is read or refused with a place") {
  const std::string good = goodSheet();
  for (std::size_t i = 0; i < good.size(); ++i)
    for (const char c : {'\0', '"', '}', '9', '-', '\xff', '\n'}) {
      std::string bad = good;
      bad[i] = c;
      const Result<ModelSheet> sheet = parseSheet(bad, "s");
      if (!sheet) REQUIRE(sheet.error().place.starts_with("s"));
      if (c == '\0') REQUIRE_FALSE(sheet.has_value());
    }
}
