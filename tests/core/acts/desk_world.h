// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/book/acts.h"
#include "tests/core/season/small_world.h"

namespace snugline::book {

struct DeskWorld : season::SmallWorld {
  [[nodiscard]] Arrival arrival(const std::string& serial) const {
    Arrival arrival;
    arrival.tag.serial = arrival.tag.key = serial;
    arrival.sheet = "sheet-hash";
    arrival.size = "M";
    arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
    for (gear::PointFinding& finding : arrival.points) finding.state = gear::PointState::sound;
    return arrival;
  }
  // A second helmet on the shelf, ready to wear.
  season::UnitRecord& spare() {
    season::UnitRecord unit = this->unit();
    unit.id = "d:21";
    unit.serial = unit.tagKey = "A1-M-00009";
    unit.athletes.clear();
    unit.place = season::UnitPlace::shelf;
    return views.units["d:21"] = unit;
  }
  season::CheckRecord& openCheck(fit::CheckKind kind) {
    season::CheckRecord check;
    check.id = "d:500";
    check.athlete = athleteId;
    check.unit = unitId;
    check.sheet = "sheet-hash";
    check.kind = kind;
    check.certifiedUntil = dayOf(2027, 12, 31);
    check.begun = stamp(season::kToday, 800);
    const auto setup = season::setupOf(views, check, season::kToday);
    if (setup) check.state = fit::begin(*setup);
    athlete().openCheck = check.id;
    return views.openChecks[check.id] = check;
  }
  // As the Book would fold them.
  void give(const std::vector<fit::Answer>& answers) {
    season::CheckRecord& check = views.openChecks.at("d:500");
    const auto setup = season::setupOf(views, check, season::kToday);
    for (const fit::Answer& each : answers) check.state = fit::take(*setup, check.state, each).value();
  }
  void giveAllSnug() {
    give({fit::HairSeen{true}});
    for (fit::Mark mark : fit::kMarks) give({fit::MarkSeen{mark, fit::Finding::snug, fit::Side::both, fit::HoldHow::unsaid, {}}});
  }
};

inline std::vector<std::string> kinds(const Drafts& drafts) {
  std::vector<std::string> names;
  for (const Draft& draft : drafts) names.emplace_back(kindOf(draft.body));
  return names;
}
// The rule that refused; empty when nothing did.
inline std::string refusal(const Result<Drafts>& drafts) {
  if (drafts) return {};
  return drafts.error().code == ErrorCode::notAllowed ? drafts.error().detail : "another error: " + drafts.error().detail;
}

}  // namespace snugline::book
