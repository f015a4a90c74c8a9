// SPDX-License-Identifier: Apache-2.0
#include "core/fit/guide_table.h"

#include <algorithm>

namespace snugline::fit {

namespace {

using gear::ModelSheet;
using gear::Part;
using gear::Port;

// The table. Read each cell from the left: the first way that is left is the one to try.
constexpr CellRow kBrowOver[] = {{Row::reseat},   {Row::jawOut, When::jawPresses}, {Row::sidesOut, When::sidesPress},
                                 {Row::crownOut}, {Row::crownPadThinner},          {Row::sizeUp}};
constexpr CellRow kBrowUnder[] = {{Row::crownIn}, {Row::crownPadThicker}, {Row::sizeDown}};
constexpr CellRow kHoldUnit[] = {{Row::holdUnit}};
constexpr CellRow kEarsFault[] = {{Row::even}, {Row::jawMatched}, {Row::sidesIn}, {Row::sidesOut}, {Row::sizeByPressure}};
constexpr CellRow kNapeOver[] = {{Row::crownIn}, {Row::crownPadThicker, When::noCrownAir}, {Row::otherModel}};
constexpr CellRow kNapeUnder[] = {{Row::crownOut}, {Row::crownPadThinner, When::noCrownAir}, {Row::sizeUp}, {Row::otherModel}};
constexpr CellRow kChinOver[] = {{Row::lengthen}, {Row::sizeUp}};
constexpr CellRow kChinUnder[] = {{Row::shorten}, {Row::sizeDown}};
constexpr CellRow kChinFault[] = {{Row::even}, {Row::chinCup}, {Row::replacePart}};
constexpr CellRow kStrapsOver[] = {{Row::lengthen}, {Row::sizeUp}};
constexpr CellRow kStrapsUnder[] = {{Row::reroute}, {Row::shorten}, {Row::sizeDown}};
constexpr CellRow kReplacePart[] = {{Row::replacePart}};
constexpr CellRow kJawOver[] = {{Row::jawOut}, {Row::sizeUp}};
constexpr CellRow kJawUnder[] = {{Row::jawIn}, {Row::sizeDown}};
constexpr CellRow kCrownOver[] = {{Row::crownOut}, {Row::crownPadThinner, When::noCrownAir}, {Row::sizeUp}};
constexpr CellRow kCrownUnder[] = {{Row::crownIn}, {Row::crownPadThicker}, {Row::sizeDown}};
constexpr CellRow kSidesOver[] = {{Row::sidesOut}, {Row::sizeUp}};
constexpr CellRow kSidesUnder[] = {{Row::sidesIn}, {Row::sizeDown}};
constexpr CellRow kHoldOver[] = {{Row::sidesOut}, {Row::sizeUp}};
constexpr CellRow kHoldUnder[] = {{Row::seeStraps},
                                  {Row::reroute},
                                  {Row::even},
                                  {Row::jawIn, When::inTwist},
                                  {Row::sidesIn, When::inTwist},
                                  {Row::sidesIn, When::inRock},
                                  {Row::crownIn, When::inDrop},
                                  {Row::crownPadThicker, When::inDropNoCrownAir},
                                  {Row::sizeDown}};
constexpr CellRow kHoldFault[] = {{Row::tryAgain}};

std::span<const CellRow> pick(Finding finding, std::span<const CellRow> over, std::span<const CellRow> under,
                              std::span<const CellRow> fault) {
  switch (finding) {
    case Finding::over:
      return over;
    case Finding::under:
      return under;
    case Finding::fault:
      return fault;
    case Finding::unseen:
    case Finding::snug:
      break;
  }
  return {};
}

bool isPressing(const State& state, Mark mark) {
  const MarkState& m = state.marks[static_cast<std::size_t>(mark)];
  return m.isCurrent && (m.finding == Finding::over || m.standing == Finding::over);
}

bool applies(When when, const ModelSheet& sheet, const State& state, HoldHow how) {
  switch (when) {
    case When::always:
      return true;
    case When::jawPresses:
      return isPressing(state, Mark::jaw);
    case When::sidesPress:
      return isPressing(state, Mark::sides);
    case When::noCrownAir:
      return !sheet.hasPort(Port::crown);
    case When::inTwist:
      return how == HoldHow::twist || how == HoldHow::unsaid;
    case When::inRock:
      return how == HoldHow::rock;  // not said: the twist's row has the same way already
    case When::inDrop:
      return how == HoldHow::drop || how == HoldHow::unsaid;
    case When::inDropNoCrownAir:
      return !sheet.hasPort(Port::crown) && (how == HoldHow::drop || how == HoldHow::unsaid);
  }
  return false;
}

// Two entries at least: one entry cannot be swapped for another.
bool hasSteps(const ModelSheet& sheet, Part part) {
  const gear::PadSet* pads = sheet.padsAt(part);
  return pads != nullptr && pads->steps.size() >= 2;
}

void addJaw(CellWays& ways, const ModelSheet& sheet, std::size_t row, Side side, bool isOut) {
  if (side != Side::right) {
    if (sheet.hasPort(Port::jawLeft)) ways.add(isOut ? Way::jawLeftAirOut : Way::jawLeftAirIn, row);
    if (hasSteps(sheet, Part::jawLeft)) ways.add(isOut ? Way::jawLeftPadThinner : Way::jawLeftPadThicker, row);
  }
  if (side != Side::left) {
    if (sheet.hasPort(Port::jawRight)) ways.add(isOut ? Way::jawRightAirOut : Way::jawRightAirIn, row);
    if (hasSteps(sheet, Part::jawRight)) ways.add(isOut ? Way::jawRightPadThinner : Way::jawRightPadThicker, row);
  }
}

void expand(CellWays& ways, const ModelSheet& sheet, Row what, std::size_t row, Side side) {
  switch (what) {
    case Row::crownOut:
      if (sheet.hasPort(Port::crown)) ways.add(Way::crownAirOut, row);
      return;
    case Row::crownIn:
      if (sheet.hasPort(Port::crown)) ways.add(Way::crownAirIn, row);
      return;
    case Row::crownPadThinner:
      if (hasSteps(sheet, Part::crownPad)) ways.add(Way::crownPadThinner, row);
      return;
    case Row::crownPadThicker:
      if (hasSteps(sheet, Part::crownPad)) ways.add(Way::crownPadThicker, row);
      return;
    case Row::sidesOut:
      if (sheet.hasPort(Port::sides)) ways.add(Way::sidesAirOut, row);
      return;
    case Row::sidesIn:
      if (sheet.hasPort(Port::sides)) ways.add(Way::sidesAirIn, row);
      return;
    case Row::jawOut:
      return addJaw(ways, sheet, row, side, true);
    case Row::jawIn:
      return addJaw(ways, sheet, row, side, false);
    case Row::jawMatched:
      if (hasSteps(sheet, Part::jawLeft)) ways.add(Way::jawPadsMatched, row);
      return;
    case Row::reroute:
      return ways.add(Way::reroute, row);
    case Row::lengthen:
      return ways.add(Way::lengthen, row);
    case Row::shorten:
      return ways.add(Way::shorten, row);
    case Row::even:
      return ways.add(Way::even, row);
    case Row::chinCup:
      return ways.add(Way::chinCup, row);
    case Row::reseat:
    case Row::seeStraps:
    case Row::sizeUp:
    case Row::sizeDown:
    case Row::sizeByPressure:
    case Row::otherModel:
    case Row::holdUnit:
    case Row::replacePart:
    case Row::tryAgain:
      return;
  }
}

// What a way does, apart from straps: which place, and whether it adds (thicker) or takes away.
struct Place {
  std::optional<Port> port;
  std::optional<Part> part;
  bool isMore = false;
};
Place placeOf(Way way) {
  switch (way) {
    case Way::crownAirOut:
      return {Port::crown, std::nullopt, false};
    case Way::crownAirIn:
      return {Port::crown, std::nullopt, true};
    case Way::sidesAirOut:
      return {Port::sides, std::nullopt, false};
    case Way::sidesAirIn:
      return {Port::sides, std::nullopt, true};
    case Way::jawLeftAirOut:
      return {Port::jawLeft, std::nullopt, false};
    case Way::jawLeftAirIn:
      return {Port::jawLeft, std::nullopt, true};
    case Way::jawRightAirOut:
      return {Port::jawRight, std::nullopt, false};
    case Way::jawRightAirIn:
      return {Port::jawRight, std::nullopt, true};
    case Way::crownPadThinner:
      return {std::nullopt, Part::crownPad, false};
    case Way::crownPadThicker:
      return {std::nullopt, Part::crownPad, true};
    case Way::jawLeftPadThinner:
      return {std::nullopt, Part::jawLeft, false};
    case Way::jawLeftPadThicker:
      return {std::nullopt, Part::jawLeft, true};
    case Way::jawRightPadThinner:
      return {std::nullopt, Part::jawRight, false};
    case Way::jawRightPadThicker:
      return {std::nullopt, Part::jawRight, true};
    case Way::jawPadsMatched:
    case Way::reroute:
    case Way::lengthen:
    case Way::shorten:
    case Way::even:
    case Way::chinCup:
      break;
  }
  return {};
}

std::optional<Length> padAt(const State& state, Part part) { return state.fitted.pad[static_cast<std::size_t>(part)]; }

// The next thickness of the sheet from where the pad stands now; nothing at the end stop.
std::optional<Length> nextStep(const ModelSheet& sheet, const State& state, Part part, bool isThicker) {
  const gear::PadSet* pads = sheet.padsAt(part);
  const std::optional<Length> now = padAt(state, part);
  if (pads == nullptr || !now) return std::nullopt;
  std::optional<Length> found;
  for (const Length step : pads->steps) {
    if (isThicker && step > *now) return step;
    if (!isThicker && step < *now) found = step;
  }
  return found;
}

}  // namespace

std::span<const CellRow> cell(Mark mark, Finding finding) {
  switch (mark) {
    case Mark::brow:
      return pick(finding, kBrowOver, kBrowUnder, kHoldUnit);
    case Mark::ears:
      return pick(finding, kBrowOver, kBrowUnder, kEarsFault);
    case Mark::nape:
      return pick(finding, kNapeOver, kNapeUnder, kHoldUnit);
    case Mark::chin:
      return pick(finding, kChinOver, kChinUnder, kChinFault);
    case Mark::straps:
      return pick(finding, kStrapsOver, kStrapsUnder, kReplacePart);
    case Mark::jaw:
      return pick(finding, kJawOver, kJawUnder, kReplacePart);
    case Mark::crown:
      return pick(finding, kCrownOver, kCrownUnder, kHoldUnit);
    case Mark::sides:
      return pick(finding, kSidesOver, kSidesUnder, kHoldUnit);
    case Mark::hold:
      return pick(finding, kHoldOver, kHoldUnder, kHoldFault);
  }
  return {};
}

bool isOff(const MarkState& mark) { return mark.isCurrent && mark.finding != Finding::snug && mark.finding != Finding::unseen; }

bool isFaultAtOnce(Mark mark, Finding finding) { return finding == Finding::fault && mark != Mark::ears && mark != Mark::chin; }

CellWays waysOf(const ModelSheet& sheet, const State& state, Mark mark) {
  CellWays ways;
  const MarkState& m = state.marks[static_cast<std::size_t>(mark)];
  if (!isOff(m)) return ways;
  const std::span<const CellRow> rows = cell(mark, m.finding);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!applies(rows[i].when, sheet, state, m.how)) continue;
    // For the sake of another mark both jaw pads count, unless only one side of the jaw presses.
    Side side = Side::both;
    if (mark == Mark::jaw) side = m.side;
    if (rows[i].when == When::jawPresses) side = state.marks[static_cast<std::size_t>(Mark::jaw)].side;
    expand(ways, sheet, rows[i].row, i, side);
  }
  return ways;
}

bool hasRoom(const ModelSheet& sheet, const State& state, Way way) {
  const Place place = placeOf(way);
  if (place.port) {
    const gear::AirPort* port = sheet.airAt(*place.port);
    if (port == nullptr) return false;
    const std::optional<Pressure> now = state.fitted.air[static_cast<std::size_t>(*place.port)];
    return !now || (place.isMore ? *now < port->high : *now > port->low);
  }
  if (place.part) return nextStep(sheet, state, *place.part, place.isMore).has_value();
  if (way == Way::jawPadsMatched) return hasSteps(sheet, Part::jawLeft) && padAt(state, Part::jawLeft) != padAt(state, Part::jawRight);
  return true;
}

bool isLeftWarm(const ModelSheet& sheet, const State& state, Mark mark, Way way) {
  const MarkState& m = state.marks[static_cast<std::size_t>(mark)];
  if (state.turns >= kTurnsPerCheck || !hasRoom(sheet, state, way)) return false;
  return m.turns < kTurnsPerMark || ((m.waysUsed >> static_cast<unsigned>(way)) & 1U) == 0;
}

bool isLeft(const ModelSheet& sheet, const State& state, Mark mark, Way way) {
  const Place place = placeOf(way);
  const bool isKeptIn = state.isCold && ((place.port && !place.isMore) || isColdPress(state, mark));
  return !isKeptIn && isLeftWarm(sheet, state, mark, way);
}

bool isReseatLeft(const State& state, Mark mark) {
  const MarkState& m = state.marks[static_cast<std::size_t>(mark)];
  if (!isOff(m) || m.isSeenAgain) return false;
  const std::span<const CellRow> rows = cell(mark, m.finding);
  return !rows.empty() && rows.front().row == Row::reseat;
}

bool isColdPress(const State& state, Mark mark) {
  const bool canPress = mark == Mark::jaw || mark == Mark::crown || mark == Mark::sides || mark == Mark::hold;
  return state.isCold && canPress && isOff(state.marks[static_cast<std::size_t>(mark)]) &&
         state.marks[static_cast<std::size_t>(mark)].finding == Finding::over;
}

bool isWarmLeft(const ModelSheet& sheet, const State& state, Mark mark) {
  if (!state.isCold) return false;
  if (isColdPress(state, mark)) return true;
  const CellWays ways = waysOf(sheet, state, mark);
  return std::any_of(ways.begin(), ways.end(),
                     [&](const CellWay& w) { return !isLeft(sheet, state, mark, w.way) && isLeftWarm(sheet, state, mark, w.way); });
}

bool isSuchChange(const State& state, Way way, const Adjusted& change) {
  const Place place = placeOf(way);
  if (place.port) return change.port == place.port && change.deed == (place.isMore ? Deed::add : Deed::release);
  if (place.part) {
    if (change.deed != Deed::swap || change.part != place.part) return false;
    const std::optional<Length> now = padAt(state, *place.part);
    return !change.to || !now || (place.isMore ? *change.to > *now : *change.to < *now);
  }
  switch (way) {
    case Way::jawPadsMatched: {
      if (change.deed != Deed::swap || (change.part != Part::jawLeft && change.part != Part::jawRight)) return false;
      const Part other = change.part == Part::jawLeft ? Part::jawRight : Part::jawLeft;
      return !change.to || change.to == padAt(state, other);
    }
    case Way::reroute:
      return change.deed == Deed::reroute;
    case Way::lengthen:
    case Way::shorten:
    case Way::even:
      return change.deed == Deed::relength;
    case Way::chinCup:
      return change.deed == Deed::swap && change.part == Part::chinCup;
    case Way::crownAirOut:
    case Way::crownAirIn:
    case Way::crownPadThinner:
    case Way::crownPadThicker:
    case Way::sidesAirOut:
    case Way::sidesAirIn:
    case Way::jawLeftAirOut:
    case Way::jawLeftAirIn:
    case Way::jawRightAirOut:
    case Way::jawRightAirIn:
    case Way::jawLeftPadThinner:
    case Way::jawLeftPadThicker:
    case Way::jawRightPadThinner:
    case Way::jawRightPadThicker:
      break;
  }
  return false;
}

Adjusted changeOf(const ModelSheet& sheet, const State& state, Way way) {
  Adjusted change;
  const Place place = placeOf(way);
  if (place.port) {
    change.deed = place.isMore ? Deed::add : Deed::release;
    change.port = place.port;
    change.pumps = kPumpsLow;
  } else if (place.part) {
    change.deed = Deed::swap;
    change.part = place.part;
    change.to = nextStep(sheet, state, *place.part, place.isMore);
  } else if (way == Way::jawPadsMatched) {
    // The thinner pad is brought up: a pad that was too thin turns the shell towards its side.
    const bool isLeftThinner = padAt(state, Part::jawLeft) < padAt(state, Part::jawRight);
    change.deed = Deed::swap;
    change.part = isLeftThinner ? Part::jawLeft : Part::jawRight;
    change.to = padAt(state, isLeftThinner ? Part::jawRight : Part::jawLeft);
  } else if (way == Way::chinCup) {
    change.deed = Deed::swap;
    change.part = Part::chinCup;
  } else {
    change.deed = way == Way::reroute ? Deed::reroute : Deed::relength;
    change.part = Part::straps;
  }
  return change;
}

int directionOf(Way way) {
  const Place place = placeOf(way);
  if (place.part) return place.isMore ? 1 : -1;
  if (way == Way::lengthen) return 1;
  if (way == Way::shorten) return -1;
  return 0;
}

}  // namespace snugline::fit
