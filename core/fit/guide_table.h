// SPDX-License-Identifier: Apache-2.0
// Purpose: the advice table of the guide as data, and what its rows come to on one sheet. For the guide's own sources only.
// A cell belongs to a mark and a finding and lists rows in the order in which they are tried; a row comes to none, one or
// two ways on a given sheet (left and right jaw). The order of the rows is common practice, no published source.
// Thread: plain values and constants.
#pragma once

#include <array>
#include <cstdint>
#include <span>

#include "core/fit/guide.h"

namespace snugline::fit {

// One kind of change that can be made for the sake of a mark. The number is the bit in MarkState::waysUsed.
enum class Way : std::uint8_t {
  crownAirOut,
  crownAirIn,
  crownPadThinner,
  crownPadThicker,
  sidesAirOut,
  sidesAirIn,
  jawLeftAirOut,
  jawLeftAirIn,
  jawRightAirOut,
  jawRightAirIn,
  jawLeftPadThinner,
  jawLeftPadThicker,
  jawRightPadThinner,
  jawRightPadThicker,
  jawPadsMatched,  // one pad brought to the thickness of the other: a handed pair
  reroute,
  lengthen,
  shorten,
  even,
  chinCup
};
inline constexpr std::size_t kWayCount = 20;

enum class Row : std::uint8_t {
  reseat,     // advice, no way
  seeStraps,  // advice, no way: snapped, even, routed
  crownOut,
  crownIn,
  crownPadThinner,
  crownPadThicker,
  sidesOut,
  sidesIn,
  jawOut,  // air or thinner pad, each side on its own
  jawIn,
  jawMatched,
  reroute,
  lengthen,
  shorten,
  even,
  chinCup,
  // Ends of a cell, when no way is left.
  sizeUp,
  sizeDown,
  sizeByPressure,  // up while jaw, crown or sides press, else down
  otherModel,
  holdUnit,
  replacePart,
  tryAgain
};

enum class When : std::uint8_t {
  always,
  jawPresses,
  sidesPress,
  noCrownAir,  // sheets without crown air go straight to pads
  inTwist,     // as seen in the hold, or not said
  inRock,
  inDrop,
  inDropNoCrownAir
};

struct CellRow {
  Row row = Row::reseat;
  When when = When::always;
};

// Empty for unseen and snug.
[[nodiscard]] std::span<const CellRow> cell(Mark mark, Finding finding);

struct CellWay {
  Way way = Way::even;
  std::uint8_t row = 0;  // index in the cell
};
struct CellWays {
  std::array<CellWay, 10> items{};
  std::size_t count = 0;
  [[nodiscard]] const CellWay* begin() const { return items.data(); }
  [[nodiscard]] const CellWay* end() const { return items.data() + count; }
  void add(Way way, std::size_t row) { items[count++] = {way, static_cast<std::uint8_t>(row)}; }
};

[[nodiscard]] bool isOff(const MarkState& mark);  // current and not snug
// A fault that must be put right before the helmet is worn; at ears and chin a fault has ways first.
[[nodiscard]] bool isFaultAtOnce(Mark mark, Finding finding);

// Ways of the mark's cell that the sheet knows, room or not. Nothing unless the mark is off.
[[nodiscard]] CellWays waysOf(const gear::ModelSheet& sheet, const State& state, Mark mark);
[[nodiscard]] bool hasRoom(const gear::ModelSheet& sheet, const State& state, Way way);
[[nodiscard]] bool isLeft(const gear::ModelSheet& sheet, const State& state, Mark mark, Way way);
// As isLeft, were the helmet warm.
[[nodiscard]] bool isLeftWarm(const gear::ModelSheet& sheet, const State& state, Mark mark, Way way);
// The cell begins with reseating, and the mark was not seen off again yet.
[[nodiscard]] bool isReseatLeft(const State& state, Mark mark);
// Pads and bladders press on a cold helmet: warmed first, whatever else there is (practice, no source).
[[nodiscard]] bool isColdPress(const State& state, Mark mark);
// Warming is the way now: what presses on a cold helmet, and any mark for which only the cold keeps the air in.
[[nodiscard]] bool isWarmLeft(const gear::ModelSheet& sheet, const State& state, Mark mark);
[[nodiscard]] bool isSuchChange(const State& state, Way way, const Adjusted& change);
// The change that a way asks for, as it would be recorded; pads name the next step of the sheet.
[[nodiscard]] Adjusted changeOf(const gear::ModelSheet& sheet, const State& state, Way way);
[[nodiscard]] int directionOf(Way way);  // as in Advice

}  // namespace snugline::fit
