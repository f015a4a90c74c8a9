// SPDX-License-Identifier: Apache-2.0
#include "core/gear/points.h"

namespace snugline::gear {

std::string_view code(Point p) {
  switch (p) {
    case Point::certification:
      return "certification";
    case Point::warningLabel:
      return "warning-label";
    case Point::shell:
      return "shell";
    case Point::hardware:
      return "hardware";
    case Point::faceguard:
      return "faceguard";
    case Point::liner:
      return "liner";
    case Point::chinStrap:
      return "chin-strap";
  }
  return {};
}

std::optional<Point> pointFromCode(std::string_view text) {
  for (Point p : kPoints)
    if (code(p) == text) return p;
  return std::nullopt;
}

bool isNeededForService(Point p) {
  switch (p) {
    case Point::certification:
    case Point::warningLabel:
    case Point::shell:
    case Point::faceguard:
      return true;
    case Point::hardware:
    case Point::liner:
    case Point::chinStrap:
      return false;
  }
  return true;
}

}  // namespace snugline::gear
