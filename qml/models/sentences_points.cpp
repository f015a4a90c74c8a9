// SPDX-License-Identifier: Apache-2.0
#include "sentences.h"

namespace snugline::models {

using gear::Part;
using gear::Point;
using gear::Port;

QString MarkWords::point(Point point) {
  switch (point) {
    case Point::certification: return tr("Certification label");
    case Point::warningLabel: return tr("Warning label");
    case Point::shell: return tr("Shell");
    case Point::hardware: return tr("Hardware");
    case Point::faceguard: return tr("Faceguard");
    case Point::liner: return tr("Liner and air");
    case Point::chinStrap: return tr("Chin strap");
  }
  return {};
}

QString MarkWords::pointAsk(Point point) {
  switch (point) {
    case Point::certification: return tr("Is the certification label there and readable?");
    case Point::warningLabel: return tr("Is the warning label outside there and readable?");
    case Point::shell: return tr("Is the shell whole?");
    case Point::hardware: return tr("Are all snaps, clips and screws there and firm?");
    case Point::faceguard: return tr("Is the faceguard whole and coated?");
    case Point::liner: return tr("Are liner and bladders whole?");
    case Point::chinStrap: return tr("Is the chin strap whole?");
  }
  return {};
}

QList<MarkWords::Fault> MarkWords::pointFaults(Point point) {
  const auto fault = [](const char* id, const QString& label, const char* what) { return Fault{QLatin1String(id), label, what}; };
  switch (point) {
    case Point::certification:
      return {fault("label-missing", tr("Label missing"), "label missing"), fault("label-unreadable", tr("Cannot be read"), "label cannot be read")};
    case Point::warningLabel:
      return {fault("label-missing", tr("Label missing"), "warning label missing"),
              fault("label-unreadable", tr("Cannot be read"), "warning label cannot be read"),
              fault("label-covered", tr("Covered by a decal"), "warning label covered")};
    case Point::shell:
      return {fault("crack", tr("Crack"), "crack in the shell"), fault("dent", tr("Dent or deep scratch"), "dent or deep scratch in the shell"),
              fault("added", tr("Something added to it"), "something added to the shell")};
    case Point::hardware:
      return {fault("loose", tr("Loose snap or clip"), "loose snap or clip"), fault("missing", tr("Part missing"), "hardware missing"),
              fault("stuck", tr("Screw does not turn"), "screw does not turn")};
    case Point::faceguard:
      return {fault("bare-metal", tr("Bare metal"), "bare metal on the faceguard"), fault("bent", tr("Bent or cracked bar"), "bent or cracked bar"),
              fault("loose", tr("Loose"), "loose faceguard")};
    case Point::liner:
      return {fault("torn", tr("Pad torn or missing"), "pad torn or missing"), fault("leaks", tr("Does not hold air"), "bladder does not hold air"),
              fault("hard", tr("Hard or flat"), "liner hard or flat")};
    case Point::chinStrap:
      return {fault("worn", tr("Cup worn or torn"), "chin cup worn or torn"), fault("frayed", tr("Strap frayed"), "strap frayed"),
              fault("missing", tr("Snap or strap gone"), "snap or strap gone")};
  }
  return {};
}

QString MarkWords::port(Port port) {
  switch (port) {
    case Port::crown: return tr("crown");
    case Port::sides: return tr("sides and back");
    case Port::jawLeft: return tr("left jaw pad");
    case Port::jawRight: return tr("right jaw pad");
  }
  return {};
}

QString MarkWords::part(Part part) {
  switch (part) {
    case Part::jawLeft: return tr("left jaw pad");
    case Part::jawRight: return tr("right jaw pad");
    case Part::crownPad: return tr("crown pad");
    case Part::straps: return tr("straps");
    case Part::chinCup: return tr("chin cup");
  }
  return {};
}

}  // namespace snugline::models
