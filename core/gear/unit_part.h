// SPDX-License-Identifier: Apache-2.0
// Purpose: the parts of a helmet that are replaced in the equipment room. Which marks of a fit a new one reopens: core/fit/part_marks.h.
// Source of the list: common practice, no source. Thread: pure functions.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/gear/points.h"

namespace snugline::gear {

struct ModelSheet;

enum class UnitPart : std::uint8_t {
  faceguard,
  chinStrap,  // cup and straps
  hardware,   // snaps, clips, screws
  crownPads,
  sidePads,
  jawPads,
  crownBladder,
  sideBladder,
  jawBladder,
  warningLabel
};
inline constexpr std::array<UnitPart, 10> kUnitParts{
    UnitPart::faceguard, UnitPart::chinStrap,    UnitPart::hardware,    UnitPart::crownPads,  UnitPart::sidePads,
    UnitPart::jawPads,   UnitPart::crownBladder, UnitPart::sideBladder, UnitPart::jawBladder, UnitPart::warningLabel};
[[nodiscard]] std::string_view code(UnitPart p);  // "faceguard", "chin-strap", …
[[nodiscard]] std::optional<UnitPart> unitPartFromCode(std::string_view);
// The one of the seven points that the part belongs to.
[[nodiscard]] Point pointOf(UnitPart p);
// Bladders where the sheet has that port; everything else on any helmet.
[[nodiscard]] bool hasUnitPart(const ModelSheet& sheet, UnitPart p);

}  // namespace snugline::gear
