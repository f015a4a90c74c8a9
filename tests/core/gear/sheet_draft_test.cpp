// SPDX-License-Identifier: Apache-2.0
// A sheet while it is written: what it says is what its file says, and every fault is named at once. Ranges: those printed in
// core/gear/MODEL_SHEET.md.
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "core/gear/sheet_difference.h"
#include "core/gear/sheet_draft.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

const std::string kSheets = std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/";

ModelSheet read(const std::string& name) {
  Result<ModelSheet> sheet = readSheetFile(kSheets + name);
  if (!sheet) FAIL(sheet.error().place + ": " + sheet.error().detail);
  return *sheet;
}

const SheetFault* at(const std::vector<SheetFault>& faults, const std::string& path) {
  const auto found = std::find_if(faults.begin(), faults.end(), [&](const SheetFault& fault) { return fault.path == path; });
  return found == faults.end() ? nullptr : &*found;
}
std::vector<std::string> pathsOf(const std::vector<SheetFault>& faults) {
  std::vector<std::string> paths;
  for (const SheetFault& fault : faults) paths.push_back(fault.path);
  return paths;
}

// Brant has air at crown and sides and jaw pads; with crown pads and a question it has a value at every kind of path.
SheetDraft full() {
  SheetDraft draft = draftOf(read("brant-b2.json"));
  draft.crownPads = PadsDraft{{10'000, 12'000}, 12'000};
  draft.questions = {{"sight", "Does the athlete see past the faceguard?", "The faceguard stands in the line of sight."}};
  draft.cautions = "Pump with the needle wet.";
  return draft;
}

std::int64_t between(std::int64_t low, std::int64_t high) { return *rc::gen::inRange<std::int64_t>(low, high + 1); }
std::string word() {
  return *rc::gen::nonEmpty(
      rc::gen::container<std::string>(rc::gen::oneOf(rc::gen::inRange('a', '{'), rc::gen::just('"'), rc::gen::just('\\'))));
}

// Any sheet that the format takes.
SheetDraft anySheet() {
  SheetDraft draft;
  draft.id = "s" + std::to_string(between(0, 99999));
  draft.name = word().substr(0, 60);
  std::int64_t low = between(300'000, 340'000), high = low + between(1, 30'000), highBefore = 0;
  for (std::int64_t i = 0, count = between(1, 12); i < count; ++i) {
    draft.sizes.push_back({"S" + std::to_string(i), low, high});
    low = std::max(low, highBefore) + between(1, 10'000);
    highBefore = high;
    high = std::max(low, high) + between(1, 20'000);
  }
  for (const Port port : {Port::crown, Port::sides, Port::jawLeft})
    if (between(0, 1) == 1) addPort(draft, port);
  for (PortDraft& air : draft.air) {
    air.low = between(0, 100'000);
    air.high = *air.low + between(1, 100'000);
    air.start = between(*air.low, *air.high);
  }
  if (!draft.air.empty()) {
    draft.changeAllowance = between(1, 100'000);
    draft.leakPerWeek = between(1, 100'000);
    std::reverse(draft.order.begin(), draft.order.end());
  }
  if (between(0, 1) == 1) {
    draft.markOrder.assign(kMarkCodes.begin(), kMarkCodes.end());
    std::rotate(draft.markOrder.begin(), draft.markOrder.begin() + between(1, 8), draft.markOrder.end());
  }
  const auto pads = [] {
    PadsDraft made;
    std::int64_t thick = between(1'000, 5'000);
    for (std::int64_t i = 0, count = between(1, 8); i < count; ++i, thick += between(1, 9'000)) made.steps.emplace_back(thick);
    made.fitted = made.steps[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(made.steps.size()) - 1))];
    return made;
  };
  if (!draft.hasPort(Port::jawLeft) && between(0, 1) == 1) draft.jawPads = pads();
  if (between(0, 1) == 1) draft.crownPads = pads();
  draft.browLow = between(0, 25'399);
  draft.browHigh = between(25'400, 100'000);
  draft.strapPoints = between(0, 1) == 1 ? 4 : 6;
  draft.certificationMonths = between(1, 60);
  draft.ageLimitMonths = between(0, 240);
  for (std::int64_t i = 0, count = between(0, 3); i < count; ++i)
    draft.questions.push_back({"q" + std::to_string(i), word().substr(0, 300), word().substr(0, 300)});
  if (between(0, 1) == 1) draft.cautions = word().substr(0, 2000);
  return draft;
}

}  // namespace

TEST_CASE("A sheet written down and read again is the same sheet") {
  rc::check("draft, bytes, sheet, draft", [] {
    const SheetDraft draft = anySheet();
    RC_ASSERT(pathsOf(faultsOf(draft)).empty());
    const std::string bytes = bytesOf(draft);
    const auto sheet = parseSheet(bytes, "s");
    RC_ASSERT(sheet.has_value());
    RC_ASSERT(draftOf(*sheet) == draft);
    RC_ASSERT(bytesOf(draftOf(*sheet)) == bytes);
    RC_ASSERT(sheetFrom(draft)->hash == sheet->hash);
    RC_ASSERT(differencesOf(*sheet, *sheet).empty());
  });
}

TEST_CASE("A half written sheet comes back from its file as far as it went") {
  rc::check("with values missing or out of range", [] {
    SheetDraft draft = anySheet();
    for (const char* path : {"/sizes/0/low_um", "/brow_low_um", "/strap_points", "/certification_months", "/age_limit_months"}) {
      const std::int64_t throwOf4 = between(0, 3);
      if (throwOf4 == 0) figureAt(draft, path)->reset();
      if (throwOf4 == 1) *figureAt(draft, path) = between(-1'000'000, 1'000'000);
    }
    if (between(0, 1) == 1) draft.sizes.push_back({"", {}, {}});
    if (between(0, 3) == 0) draft.id.clear();
    const auto read = readDraft(bytesOf(draft), "s");
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->draft == draft);
    RC_ASSERT(pathsOf(read->faults).empty() == pathsOf(faultsOf(draft)).empty());
    RC_ASSERT(parseSheet(bytesOf(draft), "s").has_value() == read->faults.empty());
  });
}

TEST_CASE("The demo's sheets mean the same once they are written in our order") {
  for (const char* name : {"alder-a1.json", "brant-b2.json", "cedar-c3.json"}) {
    const ModelSheet sheet = read(name);
    CAPTURE(name);
    CHECK(differencesOf(sheet, parseSheet(bytesOf(draftOf(sheet)), "s").value()).empty());
  }
}

TEST_CASE("Every number is refused one beyond either end and taken at it") {
  struct Edge {
    const char* path;
    std::int64_t lowest, highest;
  };
  for (const Edge& edge : std::initializer_list<Edge>{{"/sizes/0/low_um", 300'000, 800'000},
                                                      {"/sizes/1/high_um", 300'000, 800'000},
                                                      {"/air/0/start_pa", 0, 200'000},
                                                      {"/air/0/low_pa", 0, 200'000},
                                                      {"/air/1/high_pa", 0, 200'000},
                                                      {"/jaw_pads/steps_um/0", 1'000, 100'000},
                                                      {"/jaw_pads/fitted_um", 1'000, 100'000},
                                                      {"/crown_pads/steps_um/1", 1'000, 100'000},
                                                      {"/brow_low_um", 0, 100'000},
                                                      {"/brow_high_um", 0, 100'000},
                                                      {"/strap_points", 4, 6},
                                                      {"/certification_months", 1, 60},
                                                      {"/age_limit_months", 0, 240},
                                                      {"/change_allowance_pa", 1, 100'000},
                                                      {"/leak_per_week_pa", 1, 100'000}}) {
    CAPTURE(edge.path);
    const auto isOutOfRange = [&](std::int64_t value) {
      SheetDraft draft = full();
      Figure* figure = figureAt(draft, edge.path);
      REQUIRE(figure != nullptr);
      *figure = value;
      const std::vector<SheetFault> faults = faultsOf(draft);
      const SheetFault* fault = at(faults, edge.path);
      const bool isRange = fault != nullptr && fault->rule == SheetRule::range;
      if (isRange) CHECK((fault->lowest == edge.lowest && fault->highest == edge.highest));
      return isRange;
    };
    CHECK(isOutOfRange(edge.lowest - 1));
    CHECK_FALSE(isOutOfRange(edge.lowest));
    CHECK_FALSE(isOutOfRange(edge.highest));
    CHECK(isOutOfRange(edge.highest + 1));
    SheetDraft draft = full();
    figureAt(draft, edge.path)->reset();
    REQUIRE(at(faultsOf(draft), edge.path) != nullptr);
    CHECK(at(faultsOf(draft), edge.path)->rule == SheetRule::missing);
  }
}

TEST_CASE("Every text is refused one character beyond its length and taken at it") {
  struct Edge {
    const char* path;
    std::size_t longest;
    bool mayBeEmpty;
  };
  for (const Edge& edge : std::initializer_list<Edge>{{"/id", 40, false},
                                                      {"/name", 60, false},
                                                      {"/sizes/0/name", 12, false},
                                                      {"/questions/0/id", 40, false},
                                                      {"/questions/0/ask", 300, false},
                                                      {"/questions/0/if_no", 300, false},
                                                      {"/cautions", 2000, true}}) {
    CAPTURE(edge.path);
    const auto ruleOf = [&](const std::string& text) -> std::optional<SheetRule> {
      SheetDraft draft = full();
      REQUIRE(textAt(draft, edge.path) != nullptr);
      *textAt(draft, edge.path) = text;
      const auto faults = faultsOf(draft);
      const SheetFault* fault = at(faults, edge.path);
      return fault == nullptr ? std::nullopt : std::optional(fault->rule);
    };
    CHECK_FALSE(ruleOf(std::string(edge.longest, 'x')));
    CHECK(ruleOf(std::string(edge.longest + 1, 'x')) == SheetRule::characters);
    CHECK(ruleOf("").has_value() == !edge.mayBeEmpty);
    CHECK(ruleOf("a\tb") == SheetRule::printable);
  }
}

TEST_CASE("Values that contradict one another are named where the slip is likeliest") {
  struct Slip {
    void (*make)(SheetDraft&);
    const char* path;
    SheetRule rule;
  };
  const std::initializer_list<Slip> slips{
      {[](SheetDraft& d) { d.sizes[0].high = d.sizes[0].low; }, "/sizes/0/high_um", SheetRule::bandEnds},
      {[](SheetDraft& d) { d.sizes[1].low = d.sizes[0].low; }, "/sizes/1/low_um", SheetRule::bandBegins},
      {[](SheetDraft& d) { d.sizes[0].high = d.sizes[1].high; }, "/sizes/1/high_um", SheetRule::bandEndsTooLow},
      {[](SheetDraft& d) { d.sizes[0].high = d.sizes[2].low; }, "/sizes/2/low_um", SheetRule::bandReachesOver},
      {[](SheetDraft& d) { d.sizes[1].name = d.sizes[0].name; }, "/sizes/1/name", SheetRule::sizeTwice},
      {[](SheetDraft& d) { d.sizes[0].name = "none"; }, "/sizes/0/name", SheetRule::sizeNone},
      {[](SheetDraft& d) { d.air[1].port = d.air[0].port; }, "/air/1/port", SheetRule::portTwice},
      {[](SheetDraft& d) { d.air[0].high = d.air[0].low; }, "/air/0/high_pa", SheetRule::bandEnds},
      {[](SheetDraft& d) { d.air[0].start = *d.air[0].low - 1; }, "/air/0/start_pa", SheetRule::startOutside},
      {[](SheetDraft& d) { d.air[0].start = *d.air[0].high + 1; }, "/air/0/start_pa", SheetRule::startOutside},
      {[](SheetDraft& d) {
         d.air.push_back({Port::jawLeft, 2, 1, 3});
       },
       "/air", SheetRule::jawPair},
      {[](SheetDraft& d) { d.jawPads->steps[1] = d.jawPads->steps[0]; }, "/jaw_pads/steps_um/1", SheetRule::stepNotThicker},
      {[](SheetDraft& d) { d.jawPads->fitted = 99'999; }, "/jaw_pads/fitted_um", SheetRule::fittedNoStep},
      {[](SheetDraft& d) { addPort(d, Port::jawRight); }, "/jaw_pads", SheetRule::padsBesideAir},
      {[](SheetDraft& d) { d.browHigh = d.browLow; }, "/brow_high_um", SheetRule::browEnds},
      {[](SheetDraft& d) { d.browLow = 25'401; }, "/brow_low_um", SheetRule::browAboveTarget},
      {[](SheetDraft& d) { d.browHigh = 25'399; }, "/brow_high_um", SheetRule::browBelowTarget},
      {[](SheetDraft& d) { d.strapPoints = 5; }, "/strap_points", SheetRule::strapCount},
      {[](SheetDraft& d) { d.air.clear(); }, "/fitting_order", SheetRule::noAir},
      {[](SheetDraft& d) { d.order[0] = Port::jawLeft; }, "/fitting_order/0", SheetRule::orderNoPort},
      {[](SheetDraft& d) { d.order[1] = d.order[0]; }, "/fitting_order/1", SheetRule::orderTwice},
      {[](SheetDraft& d) { d.order.pop_back(); }, "/fitting_order", SheetRule::orderLeavesOut},
      {[](SheetDraft& d) { d.markOrder = {"brow"}; }, "/mark_order", SheetRule::entries},
      {[](SheetDraft& d) { d.markOrder.assign(9, "jaw"); }, "/mark_order/1", SheetRule::orderTwice},
      {[](SheetDraft& d) { d.questions[0].id = "brow"; }, "/questions/0/id", SheetRule::questionTaken},
      {[](SheetDraft& d) { d.questions[0].id = "Sight"; }, "/questions/0/id", SheetRule::idLetters},
      {[](SheetDraft& d) { d.questions.push_back(d.questions[0]); }, "/questions/1/id", SheetRule::questionTwice},
      {[](SheetDraft& d) { d.sizes.clear(); }, "/sizes", SheetRule::missing},
      {[](SheetDraft& d) { d.sizes.resize(21); }, "/sizes", SheetRule::entries},
      {[](SheetDraft& d) { d.questions.resize(13); }, "/questions", SheetRule::entries},
  };
  REQUIRE(faultsOf(full()).empty());
  for (const Slip& slip : slips) {
    SheetDraft draft = full();
    slip.make(draft);
    CAPTURE(slip.path);
    const auto faults = faultsOf(draft);
    REQUIRE(at(faults, slip.path) != nullptr);
    CHECK(at(faults, slip.path)->rule == slip.rule);
    CHECK_FALSE(parseSheet(bytesOf(draft), "s").has_value());
  }
}

TEST_CASE("A model of which nobody said whether it has air or pads is not whole until somebody does") {
  SheetDraft draft = draftOf(read("cedar-c3.json"));
  draft.jawPads.reset();
  draft.crownPads.reset();
  REQUIRE(faultsOf(draft).empty());
  draft.unsaid = {true, true, true};
  CHECK(pathsOf(faultsOf(draft)) == std::vector<std::string>{"/air", "/jaw_pads", "/crown_pads"});
  CHECK_FALSE(sheetFrom(draft).has_value());
  for (const SheetFault& fault : faultsOf(draft)) CHECK(fault.rule == SheetRule::missing);
  draft.unsaid = {false, true, false};
  CHECK(pathsOf(faultsOf(draft)) == std::vector<std::string>{"/jaw_pads"});
  addPort(draft, Port::jawLeft);  // a jaw with air has no pads by thickness
  CHECK(at(faultsOf(draft), "/jaw_pads") == nullptr);
  CHECK(faultsOf(draftOf(read("cedar-c3.json"))).empty());  // a file that leaves them out says that there are none
}

TEST_CASE("A file with several faults names them all, each once") {
  const std::string text = R"({"format": 1, "id": "Two Words", "name": 5, "colour": "red",
    "sizes": [{"name": "S", "low_um": 52, "high_um": 560000}, 7, {"name": "S", "low_um": "x", "high_um": 590000.5}],
    "air": [{"port": "top", "start_pa": 1, "low_pa": 2, "high_pa": 3}],
    "brow_low_um": 19000, "strap_points": 5, "certification_months": 24, "age_limit_months": 300,
    "change_allowance_pa": 1, "leak_per_week_pa": 18446744073709551615, "fitting_order": ["top"]})";
  const auto read = readDraft(text, "two.json");
  REQUIRE(read.has_value());
  auto paths = pathsOf(read->faults);
  std::sort(paths.begin(), paths.end());
  CHECK(paths == std::vector<std::string>{"/age_limit_months", "/air/0/port", "/air/0/start_pa", "/brow_high_um", "/colour",
                                          "/fitting_order/0", "/id", "/leak_per_week_pa", "/name", "/sizes/0/low_um", "/sizes/1",
                                          "/sizes/2/high_um", "/sizes/2/low_um", "/sizes/2/name", "/strap_points"});
  const auto whole = parseSheet(text, "two.json");
  REQUIRE_FALSE(whole.has_value());
  CHECK(whole.error().place == "two.json#" + read->faults.front().path);
}

TEST_CASE("A hostile file says a bounded number of faults, and where it is no sheet at all says so") {
  std::string sizes = R"({"format": 1, "sizes": [7)";
  while (sizes.size() < 40'000) sizes += ",7";
  const auto many = readDraft(sizes + "]}", "s");
  REQUIRE(many.has_value());
  CHECK(many->faults.size() < 300);
  std::string keys = R"({"format": 1)";
  for (int i = 0; keys.size() < 40'000; ++i) keys += ",\"k" + std::to_string(i) + "\":0";
  const auto unknown = readDraft(keys + "}", "s");
  REQUIRE(unknown.has_value());
  CHECK(unknown->faults.size() < 300);
  CHECK(readDraft("{", "s").error().code == ErrorCode::notJson);
  CHECK(readDraft("[]", "s").error().code == ErrorCode::wrongType);
  CHECK(readDraft(R"({"format": 2})", "s").error().place == "s#/format");
  CHECK(readDraft(std::string(60'000, ' '), "s").error().code == ErrorCode::tooLong);
}

TEST_CASE("Air comes and goes with all that only air needs") {
  SheetDraft draft = full();
  draft.jawPads.reset();
  addPort(draft, Port::jawLeft);
  CHECK(draft.hasPort(Port::jawRight));
  CHECK(draft.order.size() == 4);
  removePort(draft, Port::jawRight);
  CHECK_FALSE(draft.hasPort(Port::jawLeft));
  CHECK(faultsOf(draft).empty());
  removePort(draft, Port::crown);
  CHECK(faultsOf(draft).empty());
  removePort(draft, Port::sides);
  CHECK(draft.air.empty());
  CHECK(faultsOf(draft).empty());
}

TEST_CASE("The pad as delivered stays the same pad while its thickness is corrected") {
  PadsDraft pads{{22'000, 25'000}, 25'000};
  setStep(pads, 1, 26'000);
  CHECK(pads.fitted == 26'000);
  setStep(pads, 1, std::nullopt);
  setStep(pads, 1, 27'000);
  CHECK(pads.fitted == 27'000);
  setStep(pads, 0, 21'000);
  CHECK(pads.fitted == 27'000);
}

TEST_CASE("Each change of a sheet is one named difference") {
  struct Change {
    void (*make)(SheetDraft&);
    std::vector<SheetDifference> differences;
  };
  const SheetDraft draft = full();
  const ModelSheet before = sheetFrom(draft).value();
  const std::string first = draft.sizes[0].name;
  const std::int64_t low = *draft.sizes[0].low;
  const std::vector<Change> changes{
      {[](SheetDraft& d) { d.name = "Brant B3"; }, {{SheetField::name, "", draft.name, "Brant B3", {}, {}}}},
      {[](SheetDraft& d) { *d.sizes[0].low -= 2'000; }, {{SheetField::sizeLow, first, "", "", low, low - 2'000}}},
      {[](SheetDraft& d) { d.air[0].start = *d.air[0].start + 100; },
       {{SheetField::airStart, "crown", "", "", draft.air[0].start, *draft.air[0].start + 100}}},
      {[](SheetDraft& d) { d.crownPads->steps.emplace_back(15'000); },
       {{SheetField::padSteps, "crown", "10000, 12000", "10000, 12000, 15000", {}, {}}}},
      {[](SheetDraft& d) { d.crownPads.reset(); },
       {{SheetField::pads, "crown", "10000, 12000", "", {}, {}}, {SheetField::padFitted, "crown", "", "", 12'000, {}}}},
      {[](SheetDraft& d) { d.certificationMonths = 12; }, {{SheetField::certificationMonths, "", "", "", draft.certificationMonths, 12}}},
      {[](SheetDraft& d) { std::swap(d.order[0], d.order[1]); }, {{SheetField::fittingOrder, "", "sides, crown", "crown, sides", {}, {}}}},
      {[](SheetDraft& d) { d.markOrder = {"ears", "brow", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"}; },
       {{SheetField::markOrder,
         "",
         "brow, ears, nape, chin, straps, jaw, crown, sides, hold",
         "ears, brow, nape, chin, straps, jaw, crown, sides, hold",
         {},
         {}}}},
      {[](SheetDraft& d) { d.questions[0].ifNo = "Turned."; },
       {{SheetField::questionIfNo, "sight", "The faceguard stands in the line of sight.", "Turned.", {}, {}}}},
      {[](SheetDraft& d) { d.cautions.clear(); }, {{SheetField::cautions, "", "Pump with the needle wet.", "", {}, {}}}}};
  for (const Change& change : changes) {
    SheetDraft changed = draft;
    change.make(changed);
    const auto after = sheetFrom(changed);
    REQUIRE(after.has_value());
    CAPTURE(code(change.differences.front().field));
    CHECK(differencesOf(before, *after) == change.differences);
    CHECK(differencesOf(*after, before).size() == change.differences.size());
    CHECK(after->hash != before.hash);
  }
}

TEST_CASE("A size renamed is one gone and one new, with its ends") {
  const ModelSheet before = read("alder-a1.json");
  SheetDraft draft = draftOf(before);
  draft.sizes[0].name = "Smallest";
  const auto differences = differencesOf(before, sheetFrom(draft).value());
  REQUIRE(differences.size() == 6);
  CHECK(differences[0] == SheetDifference{SheetField::size, before.sizes[0].name, before.sizes[0].name, "", {}, {}});
  CHECK(differences[3] == SheetDifference{SheetField::size, "Smallest", "", "Smallest", {}, {}});
}
