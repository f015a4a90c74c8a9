// SPDX-License-Identifier: Apache-2.0
// Purpose: what the parts of a season's plan share: its calendar, the sizes it speaks of, and the heads that want them.
// Thread: plain values; look into the views.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/season/demand.h"
#include "core/season/plan.h"

namespace snugline::season {

struct PlanKind {
  std::string sheet, size;
  const gear::ModelSheet* model = nullptr;
  std::vector<SendHelmet> helmets;  // ours that can be reckoned with
  std::vector<std::string> units;   // their ids
  int notCounted = 0;
  int wornNow = 0;  // heads of this season
  Demand next;
  double returning = 0, newcomers = 0;
};

// Sizes by sheet, then in the chart's order.
class PlanKinds {
 public:
  void addSheet(const std::string& hash, const gear::ModelSheet* sheet);
  [[nodiscard]] PlanKind* find(const std::string& sheet, const std::string& size);
  [[nodiscard]] std::vector<PlanKind>& all() { return m_kinds; }
  [[nodiscard]] int firstOf(const std::string& sheet) const;  // -1 unknown
  [[nodiscard]] const gear::ModelSheet* sheet(const std::string& hash) const;

 private:
  std::vector<PlanKind> m_kinds;
  std::map<std::string, std::pair<int, const gear::ModelSheet*>> m_sheets;  // hash -> first kind
};

// Fills in who wears what now, and next season's demand of every size.
[[nodiscard]] Result<void> addHeads(const Views& views, const PlanWishes& wishes, PlanKinds& kinds, PlanAnswer& answer);

}  // namespace snugline::season
