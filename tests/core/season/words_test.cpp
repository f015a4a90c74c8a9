// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

TEST_CASE("Tight or loose said is seen before practice and shown as a hollow mark") {
  SmallWorld world;
  SaidRecord& said = world.said(dayOf(2026, 10, 13));
  said.where = fit::Mark::jaw;
  said.side = fit::Side::left;
  said.feels = fit::Feels::tight;
  const DueRow row = world.row();
  REQUIRE(find(row, DueKind::wordOpen) != nullptr);
  const DueReason& reason = *find(row, DueKind::wordOpen);
  CHECK(reason.lane == Lane::beforePractice);
  CHECK(reason.dueFrom == dayOf(2026, 10, 13));
  CHECK(reason.dueBy == kToday);
  CHECK(reason.mark == fit::Mark::jaw);
  CHECK(reason.side == fit::Side::left);
  CHECK(row.words.has(fit::Mark::jaw));
  CHECK(row.wordFeels[static_cast<std::size_t>(fit::Mark::jaw)] == fit::Feels::tight);
  CHECK(row.strip[static_cast<std::size_t>(fit::Mark::jaw)] == fit::Finding::snug);  // what staff saw stays
  world.athlete().said.back().isAnswered = true;
  CHECK(world.row().lane == Lane::nothingDue);
}

TEST_CASE("Something that broke keeps the helmet off") {
  SmallWorld world;
  world.said(dayOf(2026, 10, 13)).isBroken = true;
  const DueRow row = world.row();
  REQUIRE(find(row, DueKind::brokeSaid) != nullptr);
  CHECK(row.lane == Lane::doNotWear);
  CHECK(row.reasons[0].dueBy == dayOf(2026, 10, 13));
  world.athlete().said.back().unit = "d:99";  // said of a helmet that is no longer worn
  CHECK(find(world.row(), DueKind::brokeSaid) == nullptr);
  CHECK(find(world.row(), DueKind::wordOpen)->lane == Lane::beforePractice);
}

TEST_CASE("Hair said to have changed is one reason, whoever wrote it down") {
  SmallWorld world;
  world.said(dayOf(2026, 10, 13)).isHairChanged = true;
  CHECK(find(world.row(), DueKind::hairChanged) != nullptr);
  CHECK(world.row().reasons.size() == 1);
  world.athlete().hairChanged = world.stamp(dayOf(2026, 10, 13));
  CHECK(world.row().reasons.size() == 1);
}

TEST_CASE("Unwell comes before everything, with the athletic trainer next, and closed the helmet waits for its seven points") {
  SmallWorld world;
  world.said(dayOf(2026, 10, 13)).isUnwell = true;
  DueRow row = world.row();
  REQUIRE_FALSE(row.reasons.empty());
  CHECK(row.reasons.size() == 1);
  CHECK(row.reasons[0].kind == DueKind::seeAthleteNow);
  CHECK(row.lane == Lane::doNotWear);
  CHECK(row.grade == Grade::seeNow);
  CHECK(row.action == RowAction::athlete);
  CHECK(row.words == fit::MarkSet{});  // nothing of it on the strip

  SmallWorld held;
  held.unit().holds = {{"d:300", "shell", "crack", held.stamp(dayOf(2026, 1, 1))}};
  CHECK(ranksBefore(row, held.row()));

  world.athlete().said.back().isAcknowledged = true;
  row = world.row();
  CHECK(row.lane == Lane::doNotWear);
  CHECK(row.reasons[0].kind == DueKind::withTrainer);
  CHECK(row.grade == Grade::withTrainer);
  CHECK(row.action == RowAction::close);
  CHECK(ranksBefore(row, held.row()));
  CHECK(boardOf(world.views, {kNow}, {}).withTrainerCount == 1);

  world.seePoints(kToday);  // seen, but not closed
  CHECK(find(world.row(), DueKind::withTrainer) != nullptr);
  world.athlete().said.back().isAnswered = true;  // closed, and seen since
  CHECK(world.row().lane == Lane::nothingDue);
}

TEST_CASE("Closing alone does not end it while the points were last seen before it was said") {
  SmallWorld world;
  SaidRecord& said = world.said(dayOf(2026, 10, 13));
  said.isUnwell = said.isAcknowledged = said.isAnswered = true;
  CHECK(world.row().lane == Lane::doNotWear);
  REQUIRE(find(world.row(), DueKind::pointsAfterHit) != nullptr);
  CHECK(world.row().action == RowAction::look);
  world.seePoints(kToday);
  CHECK(world.row().lane == Lane::nothingDue);
}

TEST_CASE("A look that another device dates beyond tomorrow is not done, and one of tomorrow is") {
  SmallWorld world;
  world.athlete().checks.pop_back();  // the look of two days ago
  world.ended(kToday.plus(2), fit::CheckKind::look, fit::Verdict::fits);
  CHECK(find(world.row(), DueKind::breakIn) != nullptr);  // no look since the fit that counts
  world.athlete().checks.back().stamp.at = at(kToday.plus(1));
  CHECK(find(world.row(), DueKind::breakIn) == nullptr);
}

TEST_CASE("What this device wrote itself counts at once, however far its clock was set back since") {
  SmallWorld world;
  world.athlete().checks.pop_back();
  world.ended(kToday.plus(40), fit::CheckKind::look, fit::Verdict::fits);
  world.views.ownDevice = "d";
  CHECK(find(world.row(), DueKind::breakIn) == nullptr);
  world.views.ownDevice = "e";
  CHECK(find(world.row(), DueKind::breakIn) != nullptr);
}

TEST_CASE("A clock is doubted where another device is more than a day ahead, or this one has gone back by more than five minutes") {
  SmallWorld world;
  world.views.ownDevice = "me";
  const auto ahead = [](std::int64_t ms) { return Instant{kNow.ms + ms, kNow.offsetMinutes}; };
  constexpr std::int64_t kMinute = 60'000, kDay = 24 * 60 * kMinute;
  world.views.devices = {{"a", {ahead(kDay), {}}}, {"me", {ahead(5 * kMinute), {}}}};
  CHECK(boardOf(world.views, {kNow}, {}).clocks.empty());
  world.views.devices = {{"a", {ahead(kDay + 1), "d:2"}}, {"me", {ahead(5 * kMinute + 1), {}}}, {"z", {ahead(-400 * kDay), {}}}};
  const auto doubts = boardOf(world.views, {kNow}, {}).clocks;
  CHECK(doubts == std::vector<ClockDoubt>{{"me", true, ahead(5 * kMinute + 1), {}}, {"a", false, ahead(kDay + 1), "d:2"}});
}

TEST_CASE("A finding dated after now stands all the same") {
  SmallWorld world;
  world.ended(kToday.plus(2), fit::CheckKind::look, fit::Verdict::doNotWear, {"hold-fault"});
  CHECK(world.row().lane == Lane::doNotWear);
}

TEST_CASE("An open check shows the question it stopped at and what was seen so far") {
  SmallWorld world;
  CheckRecord check;
  check.id = "d:500";
  check.athlete = world.athleteId;
  check.unit = world.unitId;
  check.sheet = "sheet-hash";
  check.kind = fit::CheckKind::look;
  check.certifiedUntil = dayOf(2027, 12, 31);
  check.begun = world.stamp(kToday, 800);
  world.views.openChecks["d:500"] = check;
  CheckRecord& open = world.views.openChecks["d:500"];
  const auto setup = setupOf(world.views, open, kToday);
  REQUIRE(setup);
  open.state = fit::begin(*setup);
  const auto next =
      fit::take(*setup, open.state, fit::MarkSeen{fit::Mark::brow, fit::Finding::over, fit::Side::both, fit::HoldHow::unsaid, {}});
  REQUIRE(next);
  open.state = *next;
  world.athlete().openCheck = "d:500";
  const DueRow row = world.row();
  CHECK(row.check == "d:500");
  CHECK(row.action == RowAction::resume);
  CHECK(row.lane == Lane::beforePractice);
  CHECK(row.strip[0] == fit::Finding::over);
  CHECK(row.strip[1] == fit::Finding::unseen);
  CHECK(find(row, DueKind::checkOpen)->text == fit::assess(*setup, open.state).next.codeText());
}

TEST_CASE("Every reason is kept, worst lane first, then the gravest") {
  SmallWorld world;
  world.unit().holds = {{"d:300", "liner", "does not hold air", world.stamp(dayOf(2026, 10, 12))}};
  world.said(dayOf(2026, 10, 13)).where = fit::Mark::crown;
  world.athlete().tapes.clear();
  world.ended(dayOf(2026, 10, 10), fit::CheckKind::look, fit::Verdict::doNotWear, {"brow-over"});
  const DueRow row = world.row();
  REQUIRE(row.reasons.size() == 4);
  CHECK(row.reasons[0].kind == DueKind::held);  // still with the athlete
  CHECK(row.reasons[1].kind == DueKind::verdictDoNotWear);
  CHECK(row.reasons[2].kind == DueKind::wordOpen);
  CHECK(row.reasons[3].kind == DueKind::neverTaped);
  CHECK(row.lane == Lane::doNotWear);
  CHECK(row.dueBy == dayOf(2026, 10, 10));
}

TEST_CASE("What came later is told by cause, not by the clock on the wall") {
  Stamp early{at(kToday, 900), {}, "a:7", 0}, late{at(kToday, 600), {}, "a:8", 0};
  CHECK(isAfter(late, early));  // one device: its counter
  CHECK_FALSE(isAfter(early, late));
  early.fact = "b:70";
  CHECK(isAfter(early, late));  // two devices, no order kept: the wall time
  early.order = 4;
  late.order = 5;
  CHECK(isAfter(late, early));  // the order, where both have it
}
