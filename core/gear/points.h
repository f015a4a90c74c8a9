// SPDX-License-Identifier: Apache-2.0
// Purpose: the seven points of a helmet itself, seen at intake and weekly. Source of the list: common practice, no source.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace snugline::gear {

enum class Point : std::uint8_t { certification, warningLabel, shell, hardware, faceguard, liner, chinStrap };
inline constexpr std::size_t kPointCount = 7;
inline constexpr std::array<Point, kPointCount> kPoints{Point::certification, Point::warningLabel, Point::shell,    Point::hardware,
                                                        Point::faceguard,     Point::liner,        Point::chinStrap};

enum class PointState : std::uint8_t { unseen, sound, fault };

// A point as last seen. `what` is the fault in the finder's words; empty unless state is fault.
struct PointFinding {
  PointState state = PointState::unseen;
  std::string what;
  friend bool operator==(const PointFinding&, const PointFinding&) = default;
};
using PointFindings = std::array<PointFinding, kPointCount>;

[[nodiscard]] std::string_view code(Point p);  // "warning-label"
[[nodiscard]] std::optional<Point> pointFromCode(std::string_view);

// Points without which a unit cannot go into service unseen (common practice, no source): recert label, warning label, shell, faceguard.
[[nodiscard]] bool isNeededForService(Point p);

}  // namespace snugline::gear
