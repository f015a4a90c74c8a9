// SPDX-License-Identifier: Apache-2.0
#include "core/gear/unit_part.h"

#include "core/gear/model_sheet.h"

namespace snugline::gear {

std::string_view code(UnitPart p) {
  switch (p) {
    case UnitPart::faceguard:
      return "faceguard";
    case UnitPart::chinStrap:
      return "chin-strap";
    case UnitPart::hardware:
      return "hardware";
    case UnitPart::crownPads:
      return "crown-pads";
    case UnitPart::sidePads:
      return "side-pads";
    case UnitPart::jawPads:
      return "jaw-pads";
    case UnitPart::crownBladder:
      return "crown-bladder";
    case UnitPart::sideBladder:
      return "side-bladder";
    case UnitPart::jawBladder:
      return "jaw-bladder";
    case UnitPart::warningLabel:
      return "warning-label";
  }
  return {};
}

std::optional<UnitPart> unitPartFromCode(std::string_view text) {
  for (UnitPart p : kUnitParts)
    if (code(p) == text) return p;
  return std::nullopt;
}

Point pointOf(UnitPart p) {
  switch (p) {
    case UnitPart::faceguard:
      return Point::faceguard;
    case UnitPart::chinStrap:
      return Point::chinStrap;
    case UnitPart::hardware:
      return Point::hardware;
    case UnitPart::crownPads:
    case UnitPart::sidePads:
    case UnitPart::jawPads:
    case UnitPart::crownBladder:
    case UnitPart::sideBladder:
    case UnitPart::jawBladder:
      return Point::liner;
    case UnitPart::warningLabel:
      return Point::warningLabel;
  }
  return Point::liner;
}

bool hasUnitPart(const ModelSheet& sheet, UnitPart p) {
  switch (p) {
    case UnitPart::crownBladder:
      return sheet.hasPort(Port::crown);
    case UnitPart::sideBladder:
      return sheet.hasPort(Port::sides);
    case UnitPart::jawBladder:
      return sheet.hasPort(Port::jawLeft) || sheet.hasPort(Port::jawRight);
    case UnitPart::faceguard:
    case UnitPart::chinStrap:
    case UnitPart::hardware:
    case UnitPart::crownPads:
    case UnitPart::sidePads:
    case UnitPart::jawPads:
    case UnitPart::warningLabel:
      return true;
  }
  return true;
}

}  // namespace snugline::gear
