// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "core/gear/model_sheet.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

const std::string kSheets = std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/";
const std::string kAsk = std::string(SNUGLINE_SOURCE_DIR) + "/tests/core/gear/data/ask-q4.json";

ModelSheet read(const std::string& path) {
  Result<ModelSheet> sheet = readSheetFile(path);
  if (!sheet) FAIL(sheet.error().place + ": " + sheet.error().detail);
  return *sheet;
}

std::string textOf(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

}  // namespace

TEST_CASE("Alder A1 has air everywhere and no pads to swap") {
  const ModelSheet sheet = read(kSheets + "alder-a1.json");
  CHECK(sheet.id == "alder-a1");
  CHECK(sheet.name == "Alder A1");
  for (const Port p : {Port::crown, Port::sides, Port::jawLeft, Port::jawRight}) CHECK(sheet.hasPort(p));
  CHECK_FALSE(sheet.hasPart(Part::jawLeft));
  CHECK_FALSE(sheet.hasPart(Part::crownPad));
  CHECK(sheet.hasPart(Part::straps));
  CHECK(sheet.hasPart(Part::chinCup));
  CHECK(sheet.padsAt(Part::chinCup) == nullptr);
  CHECK(sheet.airAt(Port::crown)->start == Pressure{20000});
}

TEST_CASE("Brant B2 has air at crown and sides, and jaw pads from 22 to 35 mm") {
  const ModelSheet sheet = read(kSheets + "brant-b2.json");
  CHECK(sheet.hasPort(Port::crown));
  CHECK(sheet.hasPort(Port::sides));
  CHECK_FALSE(sheet.hasPort(Port::jawLeft));
  CHECK(sheet.airAt(Port::jawRight) == nullptr);
  REQUIRE(sheet.padsAt(Part::jawRight) != nullptr);
  CHECK(sheet.padsAt(Part::jawRight)->steps.front() == Length{22000});
  CHECK(sheet.padsAt(Part::jawRight)->steps.back() == Length{35000});
  CHECK(sheet.padsAt(Part::jawLeft)->steps.at(sheet.jawPads->fitted) == Length{25000});
  CHECK(sheet.hasPart(Part::crownPad));
  CHECK(sheet.fittingOrder == std::vector<Port>{Port::sides, Port::crown});
}

TEST_CASE("Cedar C3 has no air and says nothing about air") {
  const ModelSheet sheet = read(kSheets + "cedar-c3.json");
  CHECK(sheet.air.empty());
  CHECK(sheet.fittingOrder.empty());
  CHECK(sheet.leakPerWeek == Pressure{0});
  CHECK(sheet.changeAllowance == Pressure{0});
  CHECK(sheet.hasPart(Part::jawLeft));
  CHECK(sheet.hasPart(Part::crownPad));
}

TEST_CASE("The demo sheets agree on what they share, ask no questions and cover heads of 510 to 630 mm") {
  bool hasOverlap = false, hasGap = false;
  for (const char* name : {"alder-a1", "brant-b2", "cedar-c3"}) {
    const ModelSheet sheet = read(kSheets + name + ".json");
    INFO(name);
    CHECK(sheet.id == name);
    CHECK(sheet.questions.empty());
    CHECK(sheet.browLow == Length{19000});
    CHECK(sheet.browHigh == Length{32000});
    CHECK(sheet.certificationMonths == 24);
    CHECK(sheet.ageLimitMonths == 120);
    CHECK_FALSE(sheet.cautions.empty());
    CHECK(sheet.sizes.front().low <= Length{510000});
    CHECK(sheet.sizes.back().high >= Length{630000});
    if (!sheet.air.empty()) CHECK(sheet.changeAllowance == Pressure{7000});
    if (!sheet.air.empty()) CHECK(sheet.leakPerWeek == Pressure{2000});
    for (std::size_t i = 1; i < sheet.sizes.size(); ++i) {
      hasOverlap = hasOverlap || sheet.sizes[i].low < sheet.sizes[i - 1].high;
      hasGap = hasGap || sheet.sizes[i].low > sheet.sizes[i - 1].high;
    }
  }
  CHECK(hasOverlap);
  CHECK(hasGap);
}

TEST_CASE("A sheet with its own questions keeps them in their order") {
  const ModelSheet sheet = read(kAsk);
  REQUIRE(sheet.questions.size() == 2);
  CHECK(sheet.questions[0].id == "faceguard-distance");
  CHECK(sheet.questions[1].ifNo == "The faceguard stands in the line of sight.");
  CHECK(sheet.cautions.empty());
  CHECK(sheet.ageLimitMonths == 0);
}

TEST_CASE("A sheet is known by the hash of its bytes and keeps them") {
  const std::string bytes = textOf(kAsk);
  const ModelSheet sheet = parseSheet(bytes, "ask").value();
  CHECK(sheet.bytes == bytes);
  CHECK(sheet.hash.size() == 64);
  const ModelSheet other = parseSheet(bytes + "\n", "ask").value();
  CHECK(other.hash != sheet.hash);
  CHECK(other.sizes.size() == sheet.sizes.size());
  // As `b2sum -l 256` of GNU coreutils 9.1 gives it for this file.
  CHECK(sheet.hash == "de05824ac2b76edd9a0656ac4656377e8c4174f30ebe3adcf461b69953168627");
}

TEST_CASE("The example in the format's own description is a sheet") {
  const std::string page = textOf(std::string(SNUGLINE_SOURCE_DIR) + "/core/gear/MODEL_SHEET.md");
  const std::size_t from = page.find("```json\n") + 8;
  REQUIRE(from > 8);
  const Result<ModelSheet> sheet = parseSheet(page.substr(from, page.find("```", from) - from), "MODEL_SHEET.md");
  REQUIRE(sheet.has_value());
  CHECK(sheet->id == "example");
}

TEST_CASE("Ports and parts have names by which they are found again") {
  for (const Port p : {Port::crown, Port::sides, Port::jawLeft, Port::jawRight}) CHECK(portFromCode(code(p)) == p);
  for (const Part p : {Part::jawLeft, Part::jawRight, Part::crownPad, Part::straps, Part::chinCup}) CHECK(partFromCode(code(p)) == p);
  CHECK(code(Port::jawLeft) == "jaw-left");
  CHECK(code(Part::crownPad) == "crown-pad");
  CHECK_FALSE(portFromCode("front").has_value());
  CHECK_FALSE(partFromCode("crown").has_value());
}

TEST_CASE("A file that is missing, a folder, a picture or far too long is refused by its name") {
  CHECK(readSheetFile("/no/such/sheet.json").error().code == ErrorCode::cannotRead);
  CHECK(readSheetFile("/no/such/sheet.json").error().place == "/no/such/sheet.json");
  CHECK(readSheetFile(SNUGLINE_SOURCE_DIR).error().code == ErrorCode::cannotRead);
  const std::string picture = std::string(SNUGLINE_BINARY_DIR) + "/picture.json";
  std::ofstream(picture, std::ios::binary) << std::string("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16);
  CHECK(readSheetFile(picture).error() == Error{ErrorCode::notText, picture, {}});
  std::ofstream(picture, std::ios::binary) << std::string(kSheetLimitBytes + 1, ' ');
  CHECK(readSheetFile(picture).error().code == ErrorCode::tooLong);
  std::remove(picture.c_str());
  CHECK(parseSheet(std::string(kSheetLimitBytes + 1, ' '), "long").error().code == ErrorCode::tooLong);
}
