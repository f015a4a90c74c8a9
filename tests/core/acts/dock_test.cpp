// SPDX-License-Identifier: Apache-2.0
// A maker's notice, a swap on the sideline, parts and moves, and which helmet a tag means.
#include SNUGLINE_CATCH_HEADER
#include "core/book/acts_dock.h"
#include "core/fit/part_marks.h"
#include "core/season/spares.h"
#include "desk_world.h"

using namespace snugline;
using namespace snugline::book;

namespace {

gear::Tag plain(const std::string& serial) {
  gear::Tag tag;
  tag.serial = tag.key = serial;
  return tag;
}
NoticeIssued notice() {
  NoticeIssued made{"chin strap clips may open", season::kToday.plus(-1), {}};
  made.scope.serialFrom = "A1-M-00001";
  made.scope.serialTo = "A1-M-00005";
  return made;
}
// internal: it was not refused at all.
ErrorCode refusedAs(const Result<Drafts>& drafts) { return drafts ? ErrorCode::internal : drafts.error().code; }

}  // namespace

TEST_CASE("A notice holds every helmet it means in one act, the worn one where it is") {
  DeskWorld world;
  world.spare();
  const auto drafts = issueNotice(world.views, notice(), season::kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"notice-issued", "unit-held"});
  const auto& held = std::get<UnitHeld>((*drafts)[1].body);
  CHECK((*drafts)[1].about == world.unitId);
  CHECK(held.isWithAthlete);
  CHECK(held.reason == "notice");
  CHECK(held.what == "chin strap clips may open");
  CHECK(held.notice == "#0");
}

TEST_CASE("A notice that says nothing, runs backwards or comes from tomorrow is refused") {
  const DeskWorld world;
  NoticeIssued made = notice();
  made.scope = {};
  CHECK(refusal(issueNotice(world.views, made, season::kToday)) == rule::kNothingSaid);
  made = notice();
  made.day = season::kToday.plus(1);
  CHECK(refusedAs(issueNotice(world.views, made, season::kToday)) == ErrorCode::outOfRange);
  made = notice();
  made.scope.yearFrom = 2025;
  made.scope.yearTo = 2024;
  CHECK(refusedAs(issueNotice(world.views, made, season::kToday)) == ErrorCode::inconsistent);
  made = notice();
  made.scope.serialTo = "B9";
  CHECK(refusedAs(issueNotice(world.views, made, season::kToday)) == ErrorCode::inconsistent);
  made = notice();
  made.text.clear();
  CHECK(refusedAs(issueNotice(world.views, made, season::kToday)) == ErrorCode::outOfRange);
  made = notice();
  made.scope.sheet = "nobody's";
  CHECK(refusedAs(issueNotice(world.views, made, season::kToday)) == ErrorCode::notFound);
}

TEST_CASE("A helmet whose year or lot is not known is counted apart, and held only when that is asked") {
  DeskWorld world;
  season::UnitRecord& other = world.spare();
  other.made = "2024-03";
  other.lot = "l7";
  season::NoticeScope scope;
  scope.yearFrom = scope.yearTo = 2024;
  season::NoticeCover cover = season::coverOf(world.views, scope);
  CHECK(cover.units == std::vector<std::string>{"d:21"});
  CHECK(cover.unknown == std::vector<std::string>{world.unitId});
  CHECK(cover.worn.empty());
  scope.lot = "L7";
  scope.takesUnknown = true;
  cover = season::coverOf(world.views, scope);
  CHECK(cover.units == std::vector<std::string>{world.unitId, "d:21"});
  CHECK(cover.worn == std::vector<std::string>{world.unitId});
  world.unit().labels = {{{gear::LabelKind::makersMark, 2021, std::nullopt, {}}, world.stamp(season::kToday)}};
  CHECK(season::coverOf(world.views, scope).units == std::vector<std::string>{"d:21"});
}

TEST_CASE("A retired or lost helmet is meant by no notice") {
  DeskWorld world;
  world.unit().place = season::UnitPlace::lost;
  CHECK(season::coverOf(world.views, notice().scope).units.empty());
}

TEST_CASE("A helmet that arrives after the notice is held when it is taken in") {
  DeskWorld world;
  const NoticeIssued issued = notice();
  world.views.team->notices.push_back({"d:90", issued.text, issued.day, issued.scope, world.stamp(season::kToday)});
  const Arrival meant = world.arrival("A1-M-00004");
  const Outcome outcome = outcomeOf(world.views, meant, season::kToday);
  CHECK_FALSE(outcome.isInService);
  CHECK(outcome.reason == "notice");
  const auto drafts = takeIn(world.views, meant, season::kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-received", "label-read", "point-seen", "unit-held"});
  CHECK(std::get<UnitHeld>(drafts->back().body).notice == "d:90");
  CHECK(outcomeOf(world.views, world.arrival("A1-M-00006"), season::kToday).isInService);
}

TEST_CASE("Coming back from a repair releases other holds and leaves the one of a notice") {
  DeskWorld world;
  world.unit().place = season::UnitPlace::repair;
  world.unit().holds = {{"d:30", "faceguard", "bare metal", world.stamp(season::kToday)},
                        {"d:31", "notice", "clips", world.stamp(season::kToday), "d:90"}};
  const auto drafts = comeBack(world.views, world.unitId, {std::string(season::kByUs), "new faceguard", "", true, {}}, season::kToday);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-moved", "hold-released", "unit-unpaired", "unit-paired", "unit-moved"});
  CHECK(std::get<UnitMoved>(drafts->front().body).returned.done == "new faceguard");
  CHECK(std::get<HoldReleased>((*drafts)[1].body).hold == "d:30");
  CHECK_FALSE(outcomeOf(world.views, world.arrival("A1-M-00001"), season::kToday).isInService);
}

TEST_CASE("A return says by whom, what was done and, unless it was us, on which paper") {
  DeskWorld world;
  const auto back = [&](const std::string& by, const std::string& done, const std::string& paper) {
    return comeBack(world.views, world.unitId, {by, done, paper, false, {}}, season::kToday);
  };
  CHECK(refusal(back("us", "clips", "")) == rule::kNotAway);
  world.unit().place = season::UnitPlace::repair;
  CHECK(refusedAs(back("", "clips", "note")) == ErrorCode::unknownWord);
  CHECK(refusedAs(back("us", "", "")) == ErrorCode::outOfRange);
  CHECK(refusedAs(back("recertifier", "recertified", "")) == ErrorCode::outOfRange);
  CHECK(back("us", "clips", "").has_value());
  CHECK(back("recertifier", "recertified", "list 12").has_value());
}

TEST_CASE("A crack's hold outlives every return but that of who may mend it, and ends with the label read after") {
  DeskWorld world;
  world.unit().place = season::UnitPlace::sentOut;
  world.unit().holds = {{"d:9", "shell", "crack", world.stamp(season::kToday.plus(-9))}};
  const auto releases = [](const Result<Drafts>& drafts) {
    REQUIRE(drafts);
    const auto all = kinds(*drafts);
    return std::find(all.begin(), all.end(), "hold-released") != all.end();
  };
  for (const std::string_view by : {season::kByUs, season::kByFirm, season::kByRecertifier, season::kByMaker})
    CHECK_FALSE(releases(comeBack(world.views, world.unitId, {std::string(by), "new shell", "list 12", true, {}}, season::kToday)));
  const gear::Label label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
  world.unit().place = season::UnitPlace::shelf;
  for (const std::string_view by : {season::kByUs, season::kByFirm, season::kByRecertifier, season::kByMaker}) {
    world.unit().returned = season::ReturnRecord{std::string(by), "new shell", "list 12", true, world.stamp(season::kToday)};
    const bool isMended = by == season::kByRecertifier || by == season::kByMaker;
    CHECK(releases(readLabel(world.views, world.unitId, label, season::kToday)) == isMended);
    CHECK_FALSE(releases(readLabel(world.views, world.unitId, std::nullopt, season::kToday)));
    CHECK_FALSE(releases(readLabel(world.views, world.unitId, std::nullopt, season::kToday, true)));
  }
}

TEST_CASE("A shelf is noted without anything else changing") {
  const DeskWorld world;
  const auto drafts = move(world.views, world.unitId, "shelf", "Shelf 3");
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-moved"});
  CHECK(std::get<UnitMoved>(drafts->front().body).where == "Shelf 3");
}

TEST_CASE("The tag's lot comes into the Book with the helmet") {
  const DeskWorld world;
  Arrival arrival = world.arrival("00417");
  arrival.tag.form = gear::TagForm::gs1;
  arrival.tag.ai = {{"01", "07300011000017"}, {"10", "L7"}, {"21", "00417"}};
  const auto drafts = takeIn(world.views, arrival, season::kToday);
  REQUIRE(drafts);
  CHECK(std::get<UnitReceived>(drafts->front().body).lot == "L7");
}

TEST_CASE("A new part reopens the marks that the same change in a check reopens; hardware and faceguard all nine") {
  const DeskWorld world;
  const auto reopened = [&](gear::UnitPart part) {
    const auto drafts = changePart(world.views, world.unitId, part, "");
    REQUIRE(drafts);
    return std::get<PartChanged>(drafts->front().body);
  };
  fit::MarkSet all;
  for (const fit::Mark mark : fit::kMarks) all.add(mark);
  CHECK(reopened(gear::UnitPart::faceguard).reopens == all);
  CHECK(reopened(gear::UnitPart::hardware).reopens == all);
  using fit::Mark;
  CHECK(reopened(gear::UnitPart::chinStrap).reopens ==
        fit::MarkSet{Mark::brow, Mark::nape, Mark::chin, Mark::straps, Mark::crown, Mark::hold});
  CHECK(reopened(gear::UnitPart::crownBladder).reopens ==
        fit::MarkSet{Mark::brow, Mark::ears, Mark::nape, Mark::chin, Mark::straps, Mark::jaw, Mark::crown, Mark::hold});
  CHECK(reopened(gear::UnitPart::sidePads).reopens == fit::MarkSet{Mark::brow, Mark::ears, Mark::nape, Mark::jaw, Mark::sides, Mark::hold});
  CHECK(reopened(gear::UnitPart::jawPads).reopens == fit::MarkSet{Mark::brow, Mark::ears, Mark::chin, Mark::straps, Mark::jaw, Mark::hold});
  CHECK(reopened(gear::UnitPart::jawPads).athlete == world.athleteId);
  CHECK(reopened(gear::UnitPart::warningLabel).athlete.empty());
  CHECK(refusedAs(changePart(world.views, world.unitId, gear::UnitPart::sideBladder, "")) == ErrorCode::unknownPort);  // its model has none
}

TEST_CASE("A swap holds the old helmet, gives the spare and begins the first fit in one act") {
  DeskWorld world;
  world.spare();
  const auto drafts = swapHelmet(world.views, {world.athleteId, "d:21", "chin-strap", "snap torn off", false}, season::kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-held", "point-seen", "unit-unpaired", "unit-paired", "check-begun"});
  CHECK(drafts->front().about == world.unitId);
  const auto& begun = std::get<CheckBegun>(drafts->back().body);
  CHECK(begun.unit == "d:21");
  CHECK(begun.kind == fit::CheckKind::first);
}

TEST_CASE("A swap ends an open check as it stands") {
  DeskWorld world;
  world.spare();
  world.openCheck(fit::CheckKind::look);
  const auto drafts = swapHelmet(world.views, {world.athleteId, "d:21", "broken", "strap", false}, season::kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"check-ended", "unit-held", "unit-unpaired", "unit-paired", "check-begun"});
  CHECK(std::get<CheckEnded>(drafts->front().body).outcome.verdict == fit::Verdict::unfinished);
}

TEST_CASE("A helmet that is on hold already needs no other reason to be swapped, and one that is not does") {
  DeskWorld world;
  world.spare();
  CHECK(refusedAs(swapHelmet(world.views, {world.athleteId, "d:21", "", "", false}, season::kNow)) == ErrorCode::unknownWord);
  world.unit().holds = {{"d:30", "shell", "crack", world.stamp(season::kToday)}};
  const auto drafts = swapHelmet(world.views, {world.athleteId, "d:21", "", "", false}, season::kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-unpaired", "unit-paired", "check-begun"});
}

TEST_CASE("What the records know against the old helmet is not asked again in a swap, and a good one goes back to the shelf") {
  DeskWorld world;
  world.spare();
  Swap swap{world.athleteId, "d:21"};
  swap.isOldGood = true;
  auto drafts = swapHelmet(world.views, swap, season::kNow);
  REQUIRE(drafts);
  CHECK(kinds(*drafts) == std::vector<std::string>{"unit-unpaired", "unit-paired", "check-begun"});
  world.unit().points.see(gear::Point::faceguard, {{gear::PointState::fault, "bare metal"}, world.stamp(season::kToday), false});
  drafts = swapHelmet(world.views, swap, season::kNow);
  REQUIRE(drafts);
  REQUIRE(kinds(*drafts) == std::vector<std::string>{"unit-held", "unit-unpaired", "unit-paired", "check-begun"});
  CHECK(std::get<UnitHeld>(drafts->front().body).reason == "faceguard");
  CHECK(std::get<UnitHeld>(drafts->front().body).what == "bare metal");
}

TEST_CASE("A swap says where the old helmet is, and one that stays with its athlete keeps their name") {
  DeskWorld world;
  world.spare();
  for (const bool isStillWith : {false, true}) {
    const auto drafts = swapHelmet(world.views, {world.athleteId, "d:21", "other", "", isStillWith}, season::kNow);
    REQUIRE(drafts);
    REQUIRE(kinds(*drafts) == std::vector<std::string>{"unit-held", "unit-unpaired", "unit-paired", "check-begun"});
    CHECK(std::get<UnitHeld>(drafts->front().body).isWithAthlete == isStillWith);
    CHECK(std::get<UnitUnpaired>((*drafts)[1].body).isStillWith == isStillWith);
  }
}

TEST_CASE("A swap never gives a helmet that is held or lapsed, and waits for whoever is unwell") {
  DeskWorld world;
  season::UnitRecord& spare = world.spare();
  spare.holds = {{"d:30", "shell", "crack", world.stamp(season::kToday)}};
  const Swap swap{world.athleteId, "d:21", "broken", "", false};
  CHECK(refusal(swapHelmet(world.views, swap, season::kNow)) == rule::kUnitHeld);
  spare.holds.clear();
  spare.labels = {{{gear::LabelKind::recertification, 2023, std::nullopt, {}}, world.stamp(season::kToday)}};
  CHECK(refusal(swapHelmet(world.views, swap, season::kNow)) == rule::kLabelLapsed);
  spare.labels = world.unit().labels;
  world.said(season::kToday).isUnwell = true;
  CHECK(refusal(swapHelmet(world.views, swap, season::kNow)) == rule::kUnwellSaid);
}

TEST_CASE("A typed serial means the helmets whose tags end in it, and the whole tag means one") {
  DeskWorld world;
  season::UnitRecord& a = world.spare();
  a.tagKey = "010730001100001721KX-7";
  a.serial = "KX-7";
  season::UnitRecord b = a;
  b.id = "d:22";
  b.tagKey = "010890400021000321KX-7";
  world.views.units["d:22"] = b;
  TagMeaning meaning = meaningOf(world.views, plain("kx-7"));
  CHECK(meaning.units == std::vector<std::string>{"d:21", "d:22"});
  CHECK(meaning.isBySerial);
  gear::Tag whole = plain(a.tagKey);
  whole.form = gear::TagForm::gs1;
  meaning = meaningOf(world.views, whole);
  CHECK(meaning.units == std::vector<std::string>{"d:21"});
  CHECK_FALSE(meaning.isBySerial);
  CHECK(meaningOf(world.views, plain("KX-8")).units.empty());
  // Chosen by hand, that one is taken in again, whichever the tag alone would mean.
  Arrival arrival = world.arrival("KX-7");
  arrival.unit = "d:22";
  arrival.sheet = arrival.size = "";
  const auto drafts = takeIn(world.views, arrival, season::kToday);
  REQUIRE(drafts);
  for (const Draft& draft : *drafts) CHECK(draft.about == "d:22");
}
