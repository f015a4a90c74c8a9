// SPDX-License-Identifier: Apache-2.0
// The one standing of a helmet, reason by reason. The rules are ours and common practice, no source; labels are judged as
// certification_test checks them against published texts.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>

#include "core/season/standing.h"
#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

UnitStanding standing(const SmallWorld& world, Day today = kToday) {
  return standingOf(world.views, world.views.units.at(world.unitId), today);
}

std::vector<std::string> codes(const UnitStanding& standing) {
  std::vector<std::string> list;
  for (const WhyNot& why : standing.reasons) list.emplace_back(code(why.bar));
  return list;
}
bool offers(const SmallWorld& world, UnitAct act, Day today = kToday) {
  const auto acts = actsOf(world.views, standing(world, today), today);
  return std::find(acts.begin(), acts.end(), act) != acts.end();
}
void fault(SmallWorld& world, gear::Point point, const std::string& what) {
  world.unit().points.see(point, {{gear::PointState::fault, what}, world.stamp(kToday), false});
}
void hold(SmallWorld& world, const std::string& reason, const std::string& what) {
  const Stamp stamp = world.stamp(kToday);
  world.unit().holds.push_back({stamp.fact, reason, what, stamp});
}

}  // namespace

TEST_CASE("A good helmet on its athlete's head stands in service with them and has a plain way back to the shelf") {
  const SmallWorld world;
  const UnitStanding at = standing(world);
  CHECK(at.mayBeWorn());
  CHECK(code(at.state) == "in-service");
  CHECK(code(at.where) == "with-athlete");
  REQUIRE(at.with.size() == 1);
  CHECK(at.with.front()->jersey == "07");
  CHECK(offers(world, UnitAct::toShelf));
  CHECK(offers(world, UnitAct::swapHelmet));
  CHECK_FALSE(offers(world, UnitAct::whereNow));
}

TEST_CASE("A fault keeps a helmet off every head whether or not somebody put it on hold") {
  SmallWorld world;
  fault(world, gear::Point::faceguard, "bare metal");
  const UnitStanding at = standing(world);
  CHECK(code(at.state) == "do-not-wear");
  REQUIRE(codes(at) == std::vector<std::string>{"unit-fault"});
  CHECK(at.reasons.front().point == gear::Point::faceguard);
  CHECK(at.reasons.front().text == "bare metal");
  CHECK(knownCause(at) == HoldCause{"faceguard", "bare metal"});
}

TEST_CASE("A hold for a fault is not released while the point stands at fault, and leaves the helmet on do not wear") {
  SmallWorld world;
  fault(world, gear::Point::faceguard, "bare metal");
  hold(world, "faceguard", "bare metal");
  CHECK(code(standing(world).state) == "on-hold");
  CHECK(whyNotReleased(world.views, world.unit(), world.unit().holds.front(), kToday) == NoRelease::fault);
  CHECK_FALSE(offers(world, UnitAct::release));
  world.unit().holds.clear();  // as a program before this one may have written it
  CHECK(code(standing(world).state) == "do-not-wear");
  hold(world, "faceguard", "bare metal");
  world.unit().points.see(gear::Point::faceguard, {{gear::PointState::sound, {}}, world.stamp(kToday), false});
  CHECK(offers(world, UnitAct::release));
}

TEST_CASE("A hold for a label is not released while the label is lapsed, missing, unreadable or not read") {
  SmallWorld world;
  hold(world, "label", "lapsed");
  const auto why = [&](Day today) { return whyNotReleased(world.views, world.unit(), world.unit().holds.front(), today); };
  CHECK_FALSE(why(kToday));
  CHECK(why(dayOf(2028, 1, 1)) == NoRelease::label);  // judged by the earliest end of 2026 and two years
  world.unit().isLabelUnreadable = true;
  CHECK(why(kToday) == NoRelease::label);
  world.unit().isLabelUnreadable = false;
  world.unit().isLabelMissing = true;
  CHECK(why(kToday) == NoRelease::label);
  world.unit().isLabelMissing = false;
  world.unit().labels.clear();
  CHECK(why(kToday) == NoRelease::label);
}

TEST_CASE("Certification is never drawn sound over a label that is lapsed, missing or unreadable") {
  SmallWorld world;
  const auto certification = [&](Day today) { return standing(world, today).points.front(); };
  CHECK(certification(kToday) == gear::PointState::sound);
  CHECK(certification(dayOf(2028, 1, 1)) == gear::PointState::fault);
  CHECK(codes(standing(world, dayOf(2028, 1, 1))) == std::vector<std::string>{"label-lapsed"});
  world.unit().isLabelUnreadable = true;
  CHECK(certification(kToday) == gear::PointState::fault);
  CHECK(codes(standing(world)) == std::vector<std::string>{"label-unreadable"});
  world.unit().isLabelUnreadable = false;
  world.unit().labels.clear();
  CHECK(certification(kToday) == gear::PointState::unseen);
}

TEST_CASE("A crack's hold ends by return from who may mend it, with paper and a label read after that, and by nothing less") {
  SmallWorld world;
  hold(world, "shell", "crack");
  const auto why = [&] { return whyNotReleased(world.views, world.unit(), world.unit().holds.front(), kToday); };
  CHECK(why() == NoRelease::crack);
  world.unit().points = {};
  world.unit().returned = ReturnRecord{std::string(kByUs), "glued", "our note", true, world.stamp(kToday)};
  world.unit().labels.push_back({{gear::LabelKind::recertification, 2026, std::nullopt, {}}, world.stamp(kToday)});
  CHECK(why() == NoRelease::crack);
  world.unit().returned = ReturnRecord{std::string(kByRecertifier), "new shell", "", true, world.stamp(kToday)};
  CHECK(why() == NoRelease::crack);
  world.unit().returned = ReturnRecord{std::string(kByRecertifier), "new shell", "list 12", true, world.stamp(kToday)};
  CHECK(why() == NoRelease::crack);  // the label was read before it came back
  world.unit().labels.push_back({{gear::LabelKind::recertification, 2026, std::nullopt, {}}, world.stamp(kToday)});
  CHECK_FALSE(why());
}

TEST_CASE("A helmet that its athlete says broke is off every head until it was looked at") {
  SmallWorld world;
  SaidRecord& said = world.said(kToday);
  said.feels = fit::Feels::broke;
  said.words = "clip flew off";
  const UnitStanding at = standing(world);
  REQUIRE(codes(at) == std::vector<std::string>{"broke-said"});
  CHECK(at.reasons.front().athlete == world.athleteId);
  CHECK(at.offEveryHead() != nullptr);
  CHECK(knownCause(at) == HoldCause{"broken", "clip flew off"});
  said.isAnswered = true;
  CHECK(standing(world).mayBeWorn());
}

TEST_CASE("A held helmet that was swapped and stayed with the athlete names them until somebody has it in hand") {
  SmallWorld world;
  hold(world, "shell", "crack");
  world.athlete().units.clear();
  world.unit().athletes.clear();
  world.unit().place = UnitPlace::shelf;
  world.unit().keptBy = world.athleteId;
  const UnitStanding at = standing(world);
  CHECK(code(at.state) == "on-hold");
  CHECK(code(at.where) == "with-athlete");
  REQUIRE(at.with.size() == 1);
  CHECK(at.with.front()->id == world.athleteId);
  CHECK(offers(world, UnitAct::whereNow));
  REQUIRE(keptBy(world.views, world.athleteId).size() == 1);
  world.unit().keptBy.clear();
  CHECK(code(standing(world).where) == "with-us");
  CHECK(standing(world).with.empty());
  CHECK_FALSE(offers(world, UnitAct::whereNow));
}

TEST_CASE("A report that calls for the seven points keeps the helmet off until all seven were checked since") {
  SmallWorld world;
  world.said(kToday).isUnwell = true;
  CHECK(codes(standing(world)) == std::vector<std::string>{"points-after-report"});
  world.seePoints(kToday.plus(1));
  CHECK(standing(world).mayBeWorn());
}

TEST_CASE("A helmet that is not in service says which points are open, and goes into service once they are checked") {
  SmallWorld world;
  world.unit().isInService = false;
  world.unit().points.forget(gear::Point::shell);
  world.unit().points.forget(gear::Point::chinStrap);
  CHECK(codes(standing(world)) == std::vector<std::string>{"point-unchecked", "not-in-service"});
  CHECK(code(standing(world).state) == "not-in-service");
  CHECK(standing(world).uncheckedPoints() == 2);
  CHECK_FALSE(offers(world, UnitAct::inService));
  world.seePoints(kToday);
  CHECK(codes(standing(world)) == std::vector<std::string>{"not-in-service"});
  CHECK(offers(world, UnitAct::inService));
}

TEST_CASE("Two athletes and a verdict say something of the head, and keep the helmet off no other") {
  SmallWorld world;
  world.ended(kToday, fit::CheckKind::look, fit::Verdict::doNotWear, {"brow-not-reached"});
  const UnitStanding at = standing(world);
  CHECK(codes(at) == std::vector<std::string>{"verdict-do-not-wear"});
  CHECK(at.reasons.front().text == "brow-not-reached");
  CHECK(at.offEveryHead() == nullptr);
  world.unit().athletes.push_back("d:77");
  CHECK(codes(standing(world)) == std::vector<std::string>{"two-athletes", "verdict-do-not-wear"});
}

TEST_CASE("A helmet that is away offers only to come back or to be retired, and a retired one nothing") {
  SmallWorld world;
  for (const UnitPlace place : {UnitPlace::repair, UnitPlace::sentOut, UnitPlace::lost}) {
    world.unit().place = place;
    CHECK(actsOf(world.views, standing(world), kToday) == std::vector{UnitAct::back, UnitAct::retire});
    CHECK_FALSE(standing(world).mayBeWorn());
  }
  world.unit().place = UnitPlace::retired;
  CHECK(actsOf(world.views, standing(world), kToday).empty());
  CHECK(code(standing(world).state) == "retired");
}
