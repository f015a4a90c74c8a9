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

TEST_CASE("Unwell comes before everything, and stays until it is closed and the seven points were seen since") {
  SmallWorld world;
  world.said(dayOf(2026, 10, 13)).isUnwell = true;
  DueRow row = world.row();
  REQUIRE_FALSE(row.reasons.empty());
  CHECK(row.reasons[0].kind == DueKind::seeAthleteNow);
  CHECK(row.lane == Lane::doNotWear);
  CHECK(row.isOnTop);
  CHECK(row.action == RowAction::athlete);
  CHECK(row.words == fit::MarkSet{});  // nothing of it on the strip

  SmallWorld held;
  held.unit().holds = {{"d:300", "shell", "crack", held.stamp(dayOf(2026, 1, 1))}};
  CHECK(ranksBefore(row, held.row()));

  world.athlete().said.back().isAcknowledged = true;
  row = world.row();
  CHECK(row.lane == Lane::beforePractice);
  CHECK_FALSE(row.isOnTop);
  CHECK(find(row, DueKind::seeAthleteNow)->dueBy == kToday);

  world.seePoints(kToday);  // seen, but not closed
  CHECK(find(world.row(), DueKind::seeAthleteNow) != nullptr);
  world.athlete().said.back().isAnswered = true;  // closed, and seen since
  CHECK(world.row().lane == Lane::nothingDue);
}

TEST_CASE("Closing alone does not end it while the points were last seen before it was said") {
  SmallWorld world;
  SaidRecord& said = world.said(dayOf(2026, 10, 13));
  said.isUnwell = said.isAcknowledged = said.isAnswered = true;
  CHECK(world.row().lane == Lane::beforePractice);
  world.seePoints(kToday.plus(1));  // dated after now: not seen
  CHECK(find(world.row(), DueKind::seeAthleteNow) != nullptr);
  world.seePoints(kToday);
  CHECK(find(world.row(), DueKind::seeAthleteNow) == nullptr);
}

TEST_CASE("A look dated after now counts as unseen") {
  SmallWorld world;
  world.athlete().checks.pop_back();  // the look of two days ago
  world.ended(kToday.plus(2), fit::CheckKind::look, fit::Verdict::fits);
  const DueRow row = world.row();
  CHECK(find(row, DueKind::breakIn) != nullptr);  // no look since the fit that counts
  world.seePoints(kToday.plus(2));
  CHECK(find(world.row(), DueKind::pointUnseen) != nullptr);
  CHECK(world.row().points[0] == gear::PointState::unseen);
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

TEST_CASE("Every reason is kept, worst lane first, then earliest due-by") {
  SmallWorld world;
  world.unit().holds = {{"d:300", "liner", "does not hold air", world.stamp(dayOf(2026, 10, 12))}};
  world.said(dayOf(2026, 10, 13)).where = fit::Mark::crown;
  world.athlete().tapes.clear();
  world.ended(dayOf(2026, 10, 10), fit::CheckKind::look, fit::Verdict::doNotWear, {"liner-fault"});
  const DueRow row = world.row();
  REQUIRE(row.reasons.size() == 4);
  CHECK(row.reasons[0].kind == DueKind::verdictDoNotWear);
  CHECK(row.reasons[1].kind == DueKind::held);
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
