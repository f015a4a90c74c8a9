// SPDX-License-Identifier: Apache-2.0
#include "core/fit/part_marks.h"

#include "core/fit/guide.h"

namespace snugline::fit {

namespace {

MarkSet ofPort(gear::Port port) {
  Adjusted change;
  change.deed = Deed::add;
  change.port = port;
  return reopens(change);
}
MarkSet ofPart(gear::Part part, Deed deed) {
  Adjusted change;
  change.deed = deed;
  change.part = part;
  return reopens(change);
}
MarkSet everything() {
  MarkSet all;
  for (const Mark mark : kMarks) all.add(mark);
  return all;
}

}  // namespace

MarkSet reopensOf(gear::UnitPart part) {
  switch (part) {
    case gear::UnitPart::faceguard:
    case gear::UnitPart::hardware:
      return everything();
    case gear::UnitPart::chinStrap:
      return ofPart(gear::Part::straps, Deed::relength);
    case gear::UnitPart::crownPads:
      return ofPart(gear::Part::crownPad, Deed::swap);
    case gear::UnitPart::jawPads:
      return ofPart(gear::Part::jawLeft, Deed::swap) | ofPart(gear::Part::jawRight, Deed::swap);
    case gear::UnitPart::crownBladder:
      return ofPort(gear::Port::crown);
    case gear::UnitPart::sidePads:
    case gear::UnitPart::sideBladder:
      return ofPort(gear::Port::sides);
    case gear::UnitPart::jawBladder:
      return ofPort(gear::Port::jawLeft) | ofPort(gear::Port::jawRight);
    case gear::UnitPart::warningLabel:
      return {};
  }
  return everything();
}

}  // namespace snugline::fit
