// SPDX-License-Identifier: Apache-2.0
#include "core/season/charts.h"

#include <algorithm>

namespace snugline::season {

std::array<PointCount, gear::kPointCount> pointsOver(const Views& views) {
  std::array<PointCount, gear::kPointCount> counts{};
  for (const auto& [id, unit] : views.units) {
    if (unit.place == UnitPlace::retired || unit.place == UnitPlace::lost) continue;
    for (std::size_t i = 0; i < gear::kPointCount; ++i) {
      const gear::PointState state = unit.points[i] ? unit.points[i]->finding.state : gear::PointState::unseen;
      switch (state) {
        case gear::PointState::unseen:
          ++counts[i].unseen;
          break;
        case gear::PointState::sound:
          ++counts[i].sound;
          break;
        case gear::PointState::fault:
          ++counts[i].fault;
          break;
      }
    }
  }
  return counts;
}

FirstLooks firstLooks(const Views& views, std::optional<Day> from) {
  FirstLooks looks;
  for (const auto& [id, athlete] : views.athletes) {
    const auto& checks = athlete.checks;
    for (std::size_t i = 0; i < checks.size(); ++i) {
      const EndedCheck& fit = checks[i];
      const Day day = dayOf(fit.stamp.at);
      if (fit.kind == fit::CheckKind::look || (from && day < *from)) continue;
      if (i + 1 < checks.size()) {
        const EndedCheck& next = checks[i + 1];
        if (next.kind != fit::CheckKind::look || next.unit != fit.unit) continue;
        const int days = std::max(0, daysBetween(day, dayOf(next.stamp.at)));
        ++looks.after[std::min(static_cast<std::size_t>(days), kLookDays - 1)];
      } else if (athlete.isOnRoster && std::find(athlete.units.begin(), athlete.units.end(), fit.unit) != athlete.units.end()) {
        ++looks.waiting;
      }
    }
  }
  return looks;
}

}  // namespace snugline::season
