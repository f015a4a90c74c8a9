// SPDX-License-Identifier: Apache-2.0
#include "core/gear/sheet_reader.h"

#include <algorithm>

#include "core/gear/points.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

using json::Node;

// Ranges of the format, as MODEL_SHEET.md states them. They keep slips of the keyboard out (ours); only the certification
// interval, the straps and the brow target come from elsewhere, and are named in the header.
constexpr std::int64_t kFormat = 1;
constexpr std::size_t kIdLength = 40;
constexpr std::size_t kNameLength = 60;
constexpr std::size_t kSizeNameLength = 12;
constexpr std::size_t kSentenceLength = 300;
constexpr std::size_t kCautionsLength = 2000;
constexpr std::size_t kSizeCount = 20;
constexpr std::size_t kStepCount = 20;
constexpr std::size_t kQuestionCount = 12;
constexpr std::int64_t kHeadLow = 300'000, kHeadHigh = 800'000;
constexpr std::int64_t kPadLow = 1'000, kPadHigh = 100'000;
constexpr std::int64_t kBrowHigh = 100'000;
constexpr std::int64_t kBrowTarget = 25'400;  // 1 in above the eyebrows: ASTM STP1177 (1997); AAP; NATA
constexpr std::int64_t kAirHigh = 200'000;
constexpr std::int64_t kAllowanceHigh = 100'000;
constexpr std::int64_t kCertificationMost = 60;
constexpr std::int64_t kAgeMost = 240;
constexpr std::int64_t kStrapsFew = 4, kStrapsMany = 6;

// Names that the guide's steps, marks and openings already have; a question under one of them could not be told apart.
constexpr std::array<std::string_view, 13> kTaken{"stop", "hair",   "fitted", "done",  "brow",  "ears", "nape",
                                                  "chin", "straps", "jaw",    "crown", "sides", "hold"};

tl::unexpected<Error> passOn(const Error& error) { return tl::unexpected<Error>(error); }

Result<std::string> textOf(const Node& node, std::size_t least, std::size_t most) {
  Result<std::string> text = node.asString();
  if (!text) return text;
  const std::size_t length = codePoints(*text);
  if (length < least || length > most)
    return node.error(ErrorCode::outOfRange,
                      std::to_string(length) + " characters, " + std::to_string(least) + ", " + std::to_string(most));
  // A blank name would be an empty button.
  if (!isPrintable(*text) || (least > 0 && text->find_first_not_of(' ') == std::string::npos))
    return node.error(ErrorCode::wrongType, "printable text");
  return text;
}

Result<std::string> idOf(const Node& node) {
  Result<std::string> id = textOf(node, 1, kIdLength);
  if (!id) return id;
  const bool isId =
      std::all_of(id->begin(), id->end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
  if (!isId) return node.error(ErrorCode::wrongType, "letters a to z, digits and -");
  return id;
}

Result<std::vector<Node>> itemsOf(const Node& node, std::size_t least, std::size_t most) {
  if (!node.isArray()) return node.error(node.exists() ? ErrorCode::wrongType : ErrorCode::missingKey, node.exists() ? "a list" : "");
  std::vector<Node> items = node.items();
  if (items.size() < least || items.size() > most)
    return node.error(ErrorCode::outOfRange,
                      std::to_string(items.size()) + " entries, " + std::to_string(least) + ", " + std::to_string(most));
  return items;
}

Result<Port> portOf(const Node& node) {
  const Result<std::string> word = node.asString();
  if (!word) return passOn(word.error());
  const std::optional<Port> port = portFromCode(*word);
  if (!port) return node.error(ErrorCode::unknownWord, mendedUtf8(*word).substr(0, kNameLength) + "; crown, sides, jaw-left, jaw-right");
  return *port;
}

Result<void> readSizes(const Node& root, ModelSheet& sheet) {
  const Result<std::vector<Node>> items = itemsOf(root.at("sizes"), 1, kSizeCount);
  if (!items) return passOn(items.error());
  for (const Node& item : *items) {
    if (const Result<void> known = item.onlyKeys({"name", "low_um", "high_um"}); !known) return known;
    const Result<std::string> name = textOf(item.at("name"), 1, kSizeNameLength);
    if (!name) return passOn(name.error());
    const Result<std::int64_t> low = item.integer("low_um", kHeadLow, kHeadHigh);
    if (!low) return passOn(low.error());
    const Result<std::int64_t> high = item.integer("high_um", kHeadLow, kHeadHigh);
    if (!high) return passOn(high.error());
    const std::vector<SizeBand>& before = sheet.sizes;
    if (*name == "none") return item.at("name").error(ErrorCode::inconsistent, "\"none\" means off the chart");
    if (std::any_of(before.begin(), before.end(), [&](const SizeBand& b) { return b.name == *name; }))
      return item.at("name").error(ErrorCode::inconsistent, "two bands have this name");
    if (*high <= *low) return item.at("high_um").error(ErrorCode::inconsistent, "the band ends where it begins or before");
    if (!before.empty() && *low <= before.back().low.um)
      return item.at("low_um").error(ErrorCode::inconsistent, "begins no higher than the band before it");
    if (!before.empty() && *high <= before.back().high.um)
      return item.at("high_um").error(ErrorCode::inconsistent, "ends no higher than the band before it");
    if (before.size() > 1 && *low <= before[before.size() - 2].high.um)
      return item.at("low_um").error(ErrorCode::inconsistent, "reaches into the band before its neighbour");
    sheet.sizes.push_back({*name, Length{*low}, Length{*high}});
  }
  return {};
}

Result<void> readAir(const Node& root, ModelSheet& sheet) {
  const Node list = root.at("air");
  if (!list.exists()) return {};
  const Result<std::vector<Node>> items = itemsOf(list, 0, kPortCount);
  if (!items) return passOn(items.error());
  for (const Node& item : *items) {
    if (const Result<void> known = item.onlyKeys({"port", "start_pa", "low_pa", "high_pa"}); !known) return known;
    const Result<Port> port = portOf(item.at("port"));
    if (!port) return passOn(port.error());
    if (sheet.hasPort(*port)) return item.at("port").error(ErrorCode::inconsistent, "the port is listed twice");
    const Result<std::int64_t> low = item.integer("low_pa", 0, kAirHigh);
    if (!low) return passOn(low.error());
    const Result<std::int64_t> high = item.integer("high_pa", 0, kAirHigh);
    if (!high) return passOn(high.error());
    const Result<std::int64_t> start = item.integer("start_pa", 0, kAirHigh);
    if (!start) return passOn(start.error());
    if (*high <= *low) return item.at("high_pa").error(ErrorCode::inconsistent, "the band ends where it begins or before");
    if (*start < *low || *start > *high)
      return item.at("start_pa").error(ErrorCode::inconsistent, "outside the band from low_pa to high_pa");
    sheet.air.push_back({*port, Pressure{*start}, Pressure{*low}, Pressure{*high}});
  }
  if (sheet.hasPort(Port::jawLeft) != sheet.hasPort(Port::jawRight))
    return list.error(ErrorCode::inconsistent, "jaw-left and jaw-right come as a pair");
  return {};
}

Result<std::optional<PadSet>> padsOf(const Node& node) {
  if (!node.exists()) return std::optional<PadSet>();
  if (const Result<void> known = node.onlyKeys({"steps_um", "fitted_um"}); !known) return passOn(known.error());
  const Result<std::vector<Node>> items = itemsOf(node.at("steps_um"), 1, kStepCount);
  if (!items) return passOn(items.error());
  PadSet pads;
  for (const Node& item : *items) {
    const Result<std::int64_t> step = item.asInteger(kPadLow, kPadHigh);
    if (!step) return passOn(step.error());
    if (!pads.steps.empty() && *step <= pads.steps.back().um)
      return item.error(ErrorCode::inconsistent, "no thicker than the step before it");
    pads.steps.push_back(Length{*step});
  }
  const Result<std::int64_t> fitted = node.integer("fitted_um", kPadLow, kPadHigh);
  if (!fitted) return passOn(fitted.error());
  const auto found = std::find(pads.steps.begin(), pads.steps.end(), Length{*fitted});
  if (found == pads.steps.end()) return node.at("fitted_um").error(ErrorCode::inconsistent, "not among steps_um");
  pads.fitted = static_cast<std::size_t>(found - pads.steps.begin());
  return std::optional<PadSet>(std::move(pads));
}

Result<void> readPads(const Node& root, ModelSheet& sheet) {
  Result<std::optional<PadSet>> jaw = padsOf(root.at("jaw_pads"));
  if (!jaw) return passOn(jaw.error());
  Result<std::optional<PadSet>> crown = padsOf(root.at("crown_pads"));
  if (!crown) return passOn(crown.error());
  if (*jaw && sheet.hasPort(Port::jawLeft))
    return root.at("jaw_pads").error(ErrorCode::inconsistent, "the jaw has air ports; it has air or pads by thickness, not both");
  sheet.jawPads = std::move(*jaw);
  sheet.crownPads = std::move(*crown);
  return {};
}

Result<void> readBrow(const Node& root, ModelSheet& sheet) {
  const Result<std::int64_t> low = root.integer("brow_low_um", 0, kBrowHigh);
  if (!low) return passOn(low.error());
  const Result<std::int64_t> high = root.integer("brow_high_um", 0, kBrowHigh);
  if (!high) return passOn(high.error());
  if (*high <= *low) return root.at("brow_high_um").error(ErrorCode::inconsistent, "no higher than brow_low_um");
  if (*low > kBrowTarget) return root.at("brow_low_um").error(ErrorCode::inconsistent, "above the target, 25400");
  if (*high < kBrowTarget) return root.at("brow_high_um").error(ErrorCode::inconsistent, "below the target, 25400");
  sheet.browLow = Length{*low};
  sheet.browHigh = Length{*high};
  return {};
}

Result<void> readIntervals(const Node& root, ModelSheet& sheet) {
  const Result<std::int64_t> straps = root.integer("strap_points", kStrapsFew, kStrapsMany);
  if (!straps) return passOn(straps.error());
  if (*straps != kStrapsFew && *straps != kStrapsMany) return root.at("strap_points").error(ErrorCode::inconsistent, "neither 4 nor 6");
  const Result<std::int64_t> certification = root.integer("certification_months", 1, kCertificationMost);
  if (!certification) return passOn(certification.error());
  const Result<std::int64_t> age = root.integer("age_limit_months", 0, kAgeMost);
  if (!age) return passOn(age.error());
  sheet.strapPoints = static_cast<int>(*straps);
  sheet.certificationMonths = static_cast<int>(*certification);
  sheet.ageLimitMonths = static_cast<int>(*age);
  return {};
}

// What only air needs: asked for where there is air, refused where there is none.
Result<void> readAirRules(const Node& root, ModelSheet& sheet) {
  if (sheet.air.empty()) {
    for (std::string_view key : {"change_allowance_pa", "leak_per_week_pa"})
      if (const Node node = root.at(key); node.exists()) return node.error(ErrorCode::inconsistent, "the sheet has no air");
    const Node order = root.at("fitting_order");
    if (order.exists() && !order.items().empty()) return order.error(ErrorCode::inconsistent, "the sheet has no air");
    if (order.exists() && !order.isArray()) return order.error(ErrorCode::wrongType, "a list");
    return {};
  }
  const Result<std::int64_t> change = root.integer("change_allowance_pa", 1, kAllowanceHigh);
  if (!change) return passOn(change.error());
  const Result<std::int64_t> leak = root.integer("leak_per_week_pa", 1, kAllowanceHigh);
  if (!leak) return passOn(leak.error());
  const Node order = root.at("fitting_order");
  const Result<std::vector<Node>> items = itemsOf(order, 1, kPortCount);
  if (!items) return passOn(items.error());
  for (const Node& item : *items) {
    const Result<Port> port = portOf(item);
    if (!port) return passOn(port.error());
    if (!sheet.hasPort(*port)) return item.error(ErrorCode::inconsistent, "a port without air");
    if (std::count(sheet.fittingOrder.begin(), sheet.fittingOrder.end(), *port) > 0)
      return item.error(ErrorCode::inconsistent, "the port is listed twice");
    sheet.fittingOrder.push_back(*port);
  }
  if (sheet.fittingOrder.size() != sheet.air.size()) return order.error(ErrorCode::inconsistent, "a port of air is left out");
  sheet.changeAllowance = Pressure{*change};
  sheet.leakPerWeek = Pressure{*leak};
  return {};
}

Result<void> readQuestions(const Node& root, ModelSheet& sheet) {
  const Node list = root.at("questions");
  if (!list.exists()) return {};
  const Result<std::vector<Node>> items = itemsOf(list, 0, kQuestionCount);
  if (!items) return passOn(items.error());
  for (const Node& item : *items) {
    if (const Result<void> known = item.onlyKeys({"id", "ask", "if_no"}); !known) return known;
    const Result<std::string> id = idOf(item.at("id"));
    if (!id) return passOn(id.error());
    if (std::find(kTaken.begin(), kTaken.end(), *id) != kTaken.end() || pointFromCode(*id))
      return item.at("id").error(ErrorCode::inconsistent, "a mark, a point or a step has this name");
    if (std::any_of(sheet.questions.begin(), sheet.questions.end(), [&](const Question& q) { return q.id == *id; }))
      return item.at("id").error(ErrorCode::inconsistent, "two questions have this id");
    const Result<std::string> ask = textOf(item.at("ask"), 1, kSentenceLength);
    if (!ask) return passOn(ask.error());
    const Result<std::string> ifNo = textOf(item.at("if_no"), 1, kSentenceLength);
    if (!ifNo) return passOn(ifNo.error());
    sheet.questions.push_back({*id, *ask, *ifNo});
  }
  return {};
}

Result<void> readNames(const Node& root, ModelSheet& sheet) {
  const Result<std::string> id = idOf(root.at("id"));
  if (!id) return passOn(id.error());
  const Result<std::string> name = textOf(root.at("name"), 1, kNameLength);
  if (!name) return passOn(name.error());
  sheet.id = *id;
  sheet.name = *name;
  const Node cautions = root.at("cautions");
  if (!cautions.exists()) return {};
  const Result<std::string> text = textOf(cautions, 0, kCautionsLength);
  if (!text) return passOn(text.error());
  sheet.cautions = *text;
  return {};
}

}  // namespace

Result<ModelSheet> readSheet(const Node& root) {
  if (!root.isObject()) return root.error(ErrorCode::wrongType, "an object");
  // The format comes first: keys of a later one are not misspelt keys of this one.
  if (const Result<std::int64_t> format = root.integer("format", kFormat, kFormat); !format) return passOn(format.error());
  const Result<void> known = root.onlyKeys({"format", "id", "name", "sizes", "air", "jaw_pads", "crown_pads", "brow_low_um", "brow_high_um",
                                            "strap_points", "certification_months", "age_limit_months", "change_allowance_pa",
                                            "leak_per_week_pa", "fitting_order", "questions", "cautions"});
  if (!known) return passOn(known.error());
  ModelSheet sheet;
  for (Result<void> (*read)(const Node&, ModelSheet&) :
       {readNames, readSizes, readAir, readPads, readBrow, readIntervals, readAirRules, readQuestions})
    if (const Result<void> done = read(root, sheet); !done) return passOn(done.error());
  return sheet;
}

}  // namespace snugline::gear
