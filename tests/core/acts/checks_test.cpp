// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "tests/core/acts/desk_world.h"

using namespace snugline;
using namespace snugline::book;
using season::kNow;
using season::kToday;

TEST_CASE("A helmet is handed out only in service, unheld, certified and believed whole") {
  const auto why = [](const std::function<void(DeskWorld&)>& spoil) {
    DeskWorld world;
    world.spare();
    spoil(world);
    return refusal(pair(world.views, world.athleteId, "d:21", kToday));
  };
  CHECK(why([](DeskWorld&) {}).empty());
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].holds = {{"d:9", "other", "", {}}}; }) == rule::kUnitHeld);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].place = season::UnitPlace::repair; }) == rule::kUnitAway);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].place = season::UnitPlace::retired; }) == rule::kUnitRetired);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].isInService = false; }) == rule::kNotInService);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].labels[0].label.year = 2024; }) == rule::kLabelLapsed);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].isLabelMissing = true; }) == rule::kLabelMissing);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].isLabelDisputed = true; }) == rule::kLabelDisputed);
  CHECK(why([](DeskWorld& w) { w.views.units["d:21"].labels.clear(); }) == rule::kLabelUnknown);
  CHECK(why([](DeskWorld& w) { w.athlete().isOnRoster = false; }) == rule::kOffRoster);
  CHECK(why([](DeskWorld& w) { w.athlete().openCheck = "d:500"; }) == rule::kCheckOpen);
  CHECK(why([](DeskWorld& w) {
          season::SaidRecord& said = w.said(kToday);
          said.unit = "d:21";
          said.isBroken = true;
        }) == rule::kBrokeSaid);
}

TEST_CASE("Handing out gives back what either had, and a helmet said to be broken is held when it comes off") {
  DeskWorld world;
  world.spare();
  auto drafts = pair(world.views, world.athleteId, "d:21", kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-unpaired", "unit-paired"});
  world.said(kToday).isBroken = true;
  drafts = pair(world.views, world.athleteId, "d:21", kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-held", "unit-unpaired", "unit-paired"});
  world.athlete().said.clear();
  CHECK(pair(world.views, world.athleteId, world.unitId, kToday)->empty());  // as it is already
}

TEST_CASE("A check cannot begin on a held, lapsed or away helmet, without one, or while one is open") {
  const auto why = [](const std::function<void(DeskWorld&)>& spoil) {
    DeskWorld world;
    spoil(world);
    return refusal(beginCheck(world.views, world.athleteId, fit::CheckKind::look, kToday));
  };
  CHECK(why([](DeskWorld&) {}).empty());
  CHECK(why([](DeskWorld& w) { w.unit().holds = {{"d:9", "other", "", {}}}; }) == rule::kUnitHeld);
  CHECK(why([](DeskWorld& w) { w.unit().labels[0].label.year = 2024; }) == rule::kLabelLapsed);
  CHECK(why([](DeskWorld& w) { w.unit().place = season::UnitPlace::sentOut; }) == rule::kUnitAway);
  CHECK(why([](DeskWorld& w) { w.athlete().units.clear(); }) == rule::kNoUnit);
  CHECK(why([](DeskWorld& w) { w.athlete().units.push_back("d:21"); }) == rule::kTwoUnits);
  CHECK(why([](DeskWorld& w) { w.unit().athletes.push_back("d:11"); }) == rule::kTwoAthletes);
  CHECK(why([](DeskWorld& w) { w.openCheck(fit::CheckKind::look); }) == rule::kCheckOpen);
  CHECK(why([](DeskWorld& w) { w.said(kToday).isUnwell = true; }) == rule::kUnwellSaid);
  CHECK(why([](DeskWorld& w) { w.athlete().checks.clear(); }) == rule::kNeverFitted);
}

TEST_CASE("A check names the helmet, the sheet, the check before it, the last good day and the open words") {
  DeskWorld world;
  season::SaidRecord& said = world.said(kToday);
  said.where = fit::Mark::jaw;
  said.side = fit::Side::left;
  const auto drafts = beginCheck(world.views, world.athleteId, fit::CheckKind::look, kToday);
  REQUIRE(drafts);
  const auto& begun = std::get<CheckBegun>(drafts->front().body);
  CHECK(begun.unit == world.unitId);
  CHECK(begun.sheet == "sheet-hash");
  CHECK(begun.before == world.athlete().checks.back().check);
  CHECK(begun.certifiedUntil == dayOf(2027, 12, 31));  // label year 2026, two years, by the earliest end
  CHECK(begun.rules == fit::kRulesVersion);
  REQUIRE(begun.words.size() == 1);
  CHECK(begun.words[0].said == said.fact);
  CHECK(begun.words[0].side == fit::Side::left);
}

TEST_CASE("The kind that is due: first in a new helmet, refit after a cut, dry hair or an open fit, else a look") {
  DeskWorld world;
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::look);
  world.athlete().hairChanged = world.stamp(kToday);
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::refit);
  world.athlete().hairChanged.reset();
  world.ended(kToday, fit::CheckKind::refit, fit::Verdict::adjust, {"dry-hair"}).isHairDry = true;
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::refit);
  world.athlete().checks.back().isHairDry = false;
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::refit);
  world.athlete().checks.back().verdict = fit::Verdict::fits;
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::look);
  world.athlete().checks.clear();
  CHECK(kindDue(world.views, world.athlete()) == fit::CheckKind::first);
}

TEST_CASE("Answers of one touch are one fact; points and words are facts about helmet and athlete") {
  DeskWorld world;
  world.openCheck(fit::CheckKind::look);
  auto drafts = answer(world.views, "d:500", {fit::GroupSnug{fit::LookView::front}}, kNow);
  REQUIRE(drafts);
  CHECK(drafts->size() == 1);
  CHECK(drafts->front().about == "d:500");
  drafts = answer(world.views, "d:500", {fit::PointsSound{}}, kNow);
  REQUIRE(drafts);
  CHECK(drafts->front().about == world.unitId);
  const auto& seen = std::get<PointsSeen>(drafts->front().body);
  CHECK(seen.points.size() == gear::kPointCount);
  CHECK(seen.isGroup);
  CHECK(seen.check == "d:500");
  drafts = answer(world.views, "d:500", {fit::AthleteSaid{fit::Mark::crown, fit::Side::both, fit::Feels::tight}, fit::Unwell{}}, kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"said", "said"});
  CHECK(drafts->front().about == world.athleteId);
  CHECK(std::get<Said>(drafts->front().body).check == "d:500");
}

TEST_CASE("An answer that the guide refuses drafts nothing") {
  DeskWorld world;
  world.openCheck(fit::CheckKind::look);
  fit::Adjusted change;
  change.deed = fit::Deed::add;
  change.port = gear::Port::jawLeft;  // this sheet has no air there
  change.pumps = 1;
  const auto drafts = answer(world.views, "d:500", {fit::GroupSnug{fit::LookView::front}, change}, kNow);
  REQUIRE_FALSE(drafts);
  CHECK(drafts.error().code == ErrorCode::unknownPort);
  CHECK(answer(world.views, "d:404", {}, kNow).error().code == ErrorCode::notFound);
}

TEST_CASE("A check with everything snug and sound ends in fits, and only then") {
  DeskWorld world;
  world.openCheck(fit::CheckKind::first);
  auto drafts = endCheck(world.views, "d:500", kNow);
  REQUIRE(drafts);
  CHECK(std::get<CheckEnded>(drafts->front().body).outcome.verdict == fit::Verdict::unfinished);
  world.giveAllSnug();
  world.give({fit::PointsSound{}});
  drafts = endCheck(world.views, "d:500", kNow);
  REQUIRE(drafts);
  CHECK(drafts->size() == 1);
  const auto& outcome = std::get<CheckEnded>(drafts->front().body).outcome;
  CHECK(outcome.verdict == fit::Verdict::fits);
  CHECK(outcome.reasons.empty());
  CHECK(outcome.strip == season::allSnug());
  CHECK_FALSE(outcome.isHairDry);
}

TEST_CASE("A fault found in a check holds the helmet for that point") {
  DeskWorld world;
  world.openCheck(fit::CheckKind::look);
  world.giveAllSnug();
  world.give({fit::PointsSound{}, fit::PointSeen{gear::Point::faceguard, gear::PointState::fault, "bare metal"}});
  const auto drafts = endCheck(world.views, "d:500", kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"check-ended", "unit-held"});
  const auto& held = std::get<UnitHeld>(drafts->back().body);
  CHECK(held.reason == "faceguard");
  CHECK(held.what == "bare metal");
}

TEST_CASE("A fit that only another size can reach gives the helmet back and holds nothing") {
  DeskWorld world;
  world.openCheck(fit::CheckKind::first);
  world.giveAllSnug();
  world.give({fit::PointsSound{}});
  // The brow stays high until no way is left.
  for (int i = 0; i < 12; ++i) {
    const auto setup = season::setupOf(world.views, world.views.openChecks.at("d:500"), kToday);
    world.give({fit::MarkSeen{fit::Mark::brow, fit::Finding::over, fit::Side::both, fit::HoldHow::unsaid, {}}});
    const auto now = fit::assess(*setup, world.views.openChecks.at("d:500").state);
    if (now.verdict == fit::Verdict::doNotWear) break;
    for (const fit::Advice& advice : now.advice) {
      if (advice.kind != fit::AdviceKind::change) continue;
      fit::Adjusted change;
      change.deed = *advice.deed;
      change.port = advice.port;
      change.part = advice.part;
      change.to = advice.to;
      change.pumps = advice.port ? 1 : 0;
      world.give({change});
      break;
    }
  }
  const auto drafts = endCheck(world.views, "d:500", kNow);
  REQUIRE(drafts);
  CHECK(std::get<CheckEnded>(drafts->front().body).outcome.verdict == fit::Verdict::doNotWear);
  CHECK(kinds(*drafts) == std::vector<std::string>{"check-ended", "unit-unpaired"});
}

TEST_CASE("A first fit on dry hair is recorded as such, a look is not") {
  for (const auto kind : {fit::CheckKind::first, fit::CheckKind::look}) {
    DeskWorld world;
    world.openCheck(kind);
    world.giveAllSnug();
    world.give({fit::HairSeen{false}, fit::PointsSound{}});
    const auto drafts = endCheck(world.views, "d:500", kNow);
    REQUIRE(drafts);
    const auto& outcome = std::get<CheckEnded>(drafts->front().body).outcome;
    CHECK(outcome.isHairDry == (kind == fit::CheckKind::first));
    CHECK(outcome.verdict == (kind == fit::CheckKind::first ? fit::Verdict::adjust : fit::Verdict::fits));
  }
}
