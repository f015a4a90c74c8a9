// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "tests/core/acts/desk_world.h"

using namespace snugline;
using namespace snugline::book;
using season::kToday;

TEST_CASE("A clean arrival is received, its label and points are written, and it goes into service") {
  DeskWorld world;
  const auto drafts = takeIn(world.views, world.arrival("A1-M-00002"), kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-received", "label-read", "point-seen", "unit-moved"});
  CHECK(drafts->at(0).about.empty());
  for (std::size_t i = 1; i < drafts->size(); ++i) CHECK(drafts->at(i).about == "#0");
  CHECK(outcomeOf(world.views, world.arrival("A1-M-00002"), kToday).isInService);
}

TEST_CASE("An arrival with a lapsed or missing label, a fault or a needed point unseen is held and says why") {
  struct Bar {
    std::string name, reason, what;
    std::function<void(Arrival&)> spoil;
  };
  const std::vector<Bar> bars{
      {"lapsed", "label", "lapsed", [](Arrival& a) { a.label->year = 2024; }},
      {"missing", "label", "missing", [](Arrival& a) { a.label.reset(), a.isLabelMissing = true; }},
      {"not read", "label", "not seen", [](Arrival& a) { a.label.reset(); }},
      {"fault", "shell", "crack",
       [](Arrival& a) {
         a.points[2] = {gear::PointState::fault, "crack"};
       }},
      {"unseen", "faceguard", "not seen", [](Arrival& a) { a.points[4] = {}; }},
  };
  for (const Bar& bar : bars) {
    INFO(bar.name);
    const DeskWorld world;
    Arrival arrival = world.arrival("A1-M-00003");
    bar.spoil(arrival);
    const Outcome outcome = outcomeOf(world.views, arrival, kToday);
    CHECK_FALSE(outcome.isInService);
    CHECK(outcome.reason == bar.reason);
    CHECK(outcome.what == bar.what);
    const auto drafts = takeIn(world.views, arrival, kToday);
    REQUIRE(drafts);
    REQUIRE(kinds(*drafts).back() == "unit-held");
    CHECK(std::get<UnitHeld>(drafts->back().body).reason == bar.reason);
  }
}

TEST_CASE("A point that service does not need may stay unseen at intake") {
  const DeskWorld world;
  Arrival arrival = world.arrival("A1-M-00004");
  arrival.points[static_cast<std::size_t>(gear::Point::liner)] = {};
  CHECK(outcomeOf(world.views, arrival, kToday).isInService);
}

TEST_CASE("An arrival with an unknown sheet, a size the sheet lacks or a misread number is refused") {
  const DeskWorld world;
  Arrival arrival = world.arrival("A1-M-00005");
  arrival.sheet = "nobody";
  CHECK(takeIn(world.views, arrival, kToday).error().code == ErrorCode::notFound);
  arrival = world.arrival("A1-M-00005");
  arrival.size = "XXL";
  CHECK(takeIn(world.views, arrival, kToday).error().code == ErrorCode::unknownWord);
  arrival = world.arrival("A1-M-00005");
  arrival.tag.isCheckDigitOk = false;
  CHECK(takeIn(world.views, arrival, kToday).error().code == ErrorCode::checkDigitWrong);
  arrival = world.arrival("A1-M-00005");
  arrival.label->fullDate = dayOf(2025, 3, 1);  // not in 2026
  CHECK(takeIn(world.views, arrival, kToday).error().code == ErrorCode::inconsistent);
}

TEST_CASE("A known helmet seen again writes what was seen, and a fault holds it") {
  DeskWorld world;
  Arrival arrival = world.arrival(world.unit().serial);
  auto drafts = takeIn(world.views, arrival, kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"label-read", "point-seen"});
  arrival.points[4] = {gear::PointState::fault, "bare metal"};
  drafts = takeIn(world.views, arrival, kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"label-read", "point-seen", "unit-held"});
}

TEST_CASE("A hold for what was not seen ends when it is seen sound; another cause stands") {
  DeskWorld world;
  world.unit().isInService = false;
  world.unit().holds = {{"d:9", "faceguard", std::string(kNotSeenYet), {}}};
  auto drafts = takeIn(world.views, world.arrival(world.unit().serial), kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"label-read", "point-seen", "hold-released", "unit-moved"});
  CHECK(std::get<HoldReleased>(drafts->at(2).body).hold == "d:9");
  world.unit().holds[0].what = "bare metal";
  drafts = takeIn(world.views, world.arrival(world.unit().serial), kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"label-read", "point-seen"});
  CHECK_FALSE(outcomeOf(world.views, world.arrival(world.unit().serial), kToday).isInService);
}

TEST_CASE("A helmet back from repair loses its holds, and whoever wears it needs a first fit") {
  DeskWorld world;
  world.unit().place = season::UnitPlace::repair;
  world.unit().isInService = false;
  world.unit().holds = {{"d:9", "faceguard", "bare metal", {}}};
  Arrival arrival = world.arrival(world.unit().serial);
  CHECK(refusal(takeIn(world.views, arrival, kToday)) == rule::kReturnUnsaid);
  arrival.returned = season::ReturnRecord{std::string(season::kByUs), "new faceguard", "", true, {}};
  const auto drafts = takeIn(world.views, arrival, kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-moved", "hold-released", "unit-unpaired", "unit-paired", "unit-moved",
                                                   "label-read", "point-seen", "unit-moved"});
  CHECK(std::get<UnitMoved>(drafts->front().body).to == "back");
  CHECK(std::get<UnitMoved>(drafts->back().body).to == "in-service");
}

TEST_CASE("A retired helmet is not taken in or moved again") {
  DeskWorld world;
  world.unit().place = season::UnitPlace::retired;
  CHECK(refusal(takeIn(world.views, world.arrival(world.unit().serial), kToday)) == rule::kUnitRetired);
  CHECK(refusal(move(world.views, world.unitId, "found", "")) == rule::kUnitRetired);
  CHECK(refusal(comeBack(world.views, world.unitId, {std::string(season::kByUs), "x", "", true, {}}, kToday)) == rule::kUnitRetired);
}

TEST_CASE("A crack's hold is released by nobody's word") {
  DeskWorld world;
  world.unit().holds = {{"d:9", "shell", "crack", {}}};
  CHECK(refusal(releaseHold(world.views, world.unitId, "d:9", "looks fine", kToday)) == rule::kCrackHold);
  CHECK(releaseHold(world.views, world.unitId, "d:8", "x", kToday).error().code == ErrorCode::notFound);
  world.unit().holds[0].reason = "faceguard";
  REQUIRE(releaseHold(world.views, world.unitId, "d:9", "replaced", kToday));
  CHECK(releaseHold(world.views, world.unitId, "d:9", "", kToday).error().code == ErrorCode::outOfRange);
  world.unit().holds[0].reason = "shell";
  const auto retired = move(world.views, world.unitId, "retired", "");
  REQUIRE(retired);
  CHECK(kinds(*retired) == std::vector<std::string>{"unit-unpaired", "unit-moved", "hold-released"});
}

TEST_CASE("Nothing goes into service held, away, unseen, at fault or without a label") {
  const auto why = [](const std::function<void(season::UnitRecord&)>& spoil) {
    DeskWorld world;
    spoil(world.unit());
    world.unit().isInService = false;
    return refusal(putInService(world.views, world.unitId, kToday));
  };
  CHECK(why([](auto& u) { u.holds = {{"d:9", "other", "", {}}}; }) == rule::kUnitHeld);
  CHECK(why([](auto& u) { u.place = season::UnitPlace::sentOut; }) == rule::kUnitAway);
  CHECK(why([](auto& u) { u.points.forget(gear::Point::warningLabel); }) == rule::kPointUnseen);
  CHECK(why([](auto& u) { u.points.see(gear::Point::liner, {{gear::PointState::fault, {}}, {}, false}); }) == rule::kPointFault);
  CHECK(why([](auto& u) { u.isLabelMissing = true; }) == rule::kLabelMissing);
  CHECK(why([](auto& u) { u.isLabelDisputed = true; }) == rule::kLabelDisputed);
  CHECK(why([](auto& u) { u.labels.clear(); }) == rule::kLabelUnknown);
  CHECK(why([](auto& u) { u.isLabelUnreadable = true; }) == rule::kLabelUnreadable);
  CHECK(why([](auto& u) { u.labels = {{{gear::LabelKind::recertification, 2023, std::nullopt, {}}, {}}}; }) == rule::kLabelLapsed);
  CHECK(why([](auto& u) { u.points.forget(gear::Point::liner); }).empty());
  const DeskWorld world;
  CHECK(move(world.views, world.unitId, "moon", "").error().code == ErrorCode::unknownWord);
}

TEST_CASE("A hold asks for a known reason, is not written twice and can change hands") {
  DeskWorld world;
  CHECK(hold(world.views, world.unitId, "ugly", "", false).error().code == ErrorCode::unknownWord);
  CHECK(kinds(*hold(world.views, world.unitId, "hardware", "screw gone", true)) == std::vector<std::string>{"unit-held", "point-seen"});
  world.unit().holds = {{"d:9", "hardware", "screw gone", {}}};
  CHECK(hold(world.views, world.unitId, "hardware", "screw gone", true)->empty());
  CHECK(kinds(*hold(world.views, world.unitId, "hardware", "screw gone", false)) == std::vector<std::string>{"unit-moved"});
}

TEST_CASE("Points seen at fault hold the helmet") {
  const DeskWorld world;
  gear::PointFindings points{};
  points[3] = {gear::PointState::fault, "clip loose"};
  const auto drafts = seePoints(world.views, world.unitId, points, false);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"point-seen", "unit-held"});
  CHECK(seePoints(world.views, world.unitId, {}, false)->empty());
}

TEST_CASE("A part changed names whoever wears the helmet") {
  const DeskWorld world;
  const auto drafts = changePart(world.views, world.unitId, "chin strap", "worn");
  REQUIRE(drafts);
  CHECK(std::get<PartChanged>(drafts->front().body).athlete == world.athleteId);
}
