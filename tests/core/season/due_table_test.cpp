// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "tests/core/season/small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

// Lane, due from and due by of one reason, in one look.
void checkReason(const DueRow& row, DueKind kind, Lane lane, Day from, Day by) {
  const DueReason* reason = find(row, kind);
  REQUIRE(reason != nullptr);
  CHECK(reason->lane == lane);
  CHECK(print(reason->dueFrom) == print(from));
  CHECK(print(reason->dueBy) == print(by));
}

}  // namespace

TEST_CASE("An athlete with nothing open has nothing due and the next weekly look ahead") {
  const SmallWorld world;
  const DueRow row = world.row();
  CHECK(row.reasons.empty());
  CHECK(row.lane == Lane::nothingDue);
  CHECK(print(row.dueFrom) == "2026-10-17");
  CHECK(print(row.dueBy) == "2026-10-19");
  CHECK(row.action == RowAction::none);
  CHECK(row.strip == allSnug());
}

TEST_CASE("A helmet never fitted on this athlete is not worn") {
  SmallWorld world;
  world.athlete().checks.clear();
  const DueRow row = world.row();
  checkReason(row, DueKind::neverFitted, Lane::doNotWear, dayOf(2026, 8, 1), dayOf(2026, 8, 1));
  CHECK(row.action == RowAction::firstFit);
}

TEST_CASE("A fit before the helmet was handed out anew does not count") {
  SmallWorld world;
  world.athlete().paired = world.stamp(dayOf(2026, 10, 13));
  world.athlete().pairedAs = world.athlete().paired->fact;
  CHECK(find(world.row(), DueKind::neverFitted) != nullptr);
}

TEST_CASE("A fit in another helmet does not count for this one") {
  SmallWorld world;
  for (EndedCheck& check : world.athlete().checks) check.unit = "d:21";
  CHECK(world.row().lane == Lane::doNotWear);
}

TEST_CASE("The break-in look is due from day 1 to day 3 after a fit and late after that") {
  SmallWorld world;
  const Day fit = dayOf(2026, 10, 5);
  world.ended(fit, fit::CheckKind::refit, fit::Verdict::fits);
  world.athlete().checks.erase(world.athlete().checks.begin(), world.athlete().checks.end() - 1);
  CHECK(find(world.rowOn(fit), DueKind::breakIn) == nullptr);
  for (int day = 1; day <= 4; ++day) {
    const DueRow row = world.rowOn(fit.plus(day));
    checkReason(row, DueKind::breakIn, Lane::beforePractice, fit.plus(1), fit.plus(3));
    CHECK(find(row, DueKind::breakIn)->count == day);
    CHECK(find(row, DueKind::breakIn)->isLate == (day > 3));
  }
  world.ended(fit, fit::CheckKind::look, fit::Verdict::fits);
  CHECK(find(world.rowOn(fit.plus(1)), DueKind::breakIn) != nullptr);  // a look on the day of the fit is too early
  world.ended(fit.plus(1), fit::CheckKind::look, fit::Verdict::fits);
  CHECK(find(world.rowOn(fit.plus(2)), DueKind::breakIn) == nullptr);
}

TEST_CASE("The weekly look is due from day 5, by day 7, and goes before practice once late") {
  const SmallWorld world;
  const Day look = dayOf(2026, 10, 12);
  CHECK(find(world.rowOn(look.plus(4)), DueKind::weeklyLook) == nullptr);
  for (int day = 5; day <= 9; ++day) {
    const DueRow row = world.rowOn(look.plus(day));
    checkReason(row, DueKind::weeklyLook, day <= 7 ? Lane::weekly : Lane::beforePractice, look.plus(5), look.plus(7));
    CHECK(find(row, DueKind::weeklyLook)->isLate == (day > 7));
    CHECK(row.action == RowAction::look);
  }
}

TEST_CASE("No look is due after the season, and no weekly look before it") {
  SmallWorld world;
  CHECK(find(world.rowOn(dayOf(2026, 11, 20)), DueKind::weeklyLook) != nullptr);
  CHECK(find(world.rowOn(dayOf(2026, 11, 21)), DueKind::weeklyLook) == nullptr);
  world.views.team->seasonStart = dayOf(2026, 10, 25);
  CHECK(find(world.rowOn(dayOf(2026, 10, 24)), DueKind::weeklyLook) == nullptr);
  CHECK(find(world.rowOn(dayOf(2026, 10, 25)), DueKind::weeklyLook) != nullptr);
}

TEST_CASE("A point that was never seen is due within a week of the helmet's arrival") {
  SmallWorld world;
  world.unit().points.forget(gear::Point::liner);
  const DueRow row = world.row();
  checkReason(row, DueKind::pointUnseen, Lane::weekly, dayOf(2026, 7, 20), dayOf(2026, 7, 27));
  CHECK(find(row, DueKind::pointUnseen)->point == gear::Point::liner);
  CHECK(find(row, DueKind::pointUnseen)->isLate);
}

TEST_CASE("A point that the last look left out is due within a week of that look") {
  SmallWorld world;
  world.unit().points.see(gear::Point::hardware, {{gear::PointState::sound, {}}, {at(dayOf(2026, 10, 11)), "d:2", "d:90", 90}, true});
  checkReason(world.row(), DueKind::pointUnseen, Lane::weekly, dayOf(2026, 10, 12), dayOf(2026, 10, 19));
}

TEST_CASE("A helmet that was never put in service for want of a needed point is not worn") {
  SmallWorld world;
  world.unit().isInService = false;
  world.unit().points.forget(gear::Point::shell);
  CHECK(find(world.row(), DueKind::pointUnseen)->lane == Lane::doNotWear);
}

TEST_CASE("A held helmet is not worn, and one that the athlete still has comes first in the lane") {
  SmallWorld world;
  world.unit().holds = {{"d:300", "faceguard", "bare metal", world.stamp(dayOf(2026, 10, 13))}};
  world.unit().isInHand = true;
  DueRow inHands = world.row();
  checkReason(inHands, DueKind::held, Lane::doNotWear, dayOf(2026, 10, 13), dayOf(2026, 10, 13));
  CHECK(find(inHands, DueKind::held)->point == gear::Point::faceguard);
  CHECK(find(inHands, DueKind::held)->text == "bare metal");
  CHECK(inHands.action == RowAction::chooseHelmet);
  CHECK(inHands.grade == Grade::fault);
  world.unit().isInHand = false;
  world.unit().holds[0].stamp.at = at(kToday, 800);  // found later, and first all the same
  const DueRow withAthlete = world.row();
  CHECK(withAthlete.grade == Grade::stillWorn);
  CHECK(ranksBefore(withAthlete, inHands));
}

TEST_CASE("A fault of a point keeps the helmet off even when its date lies ahead") {
  SmallWorld world;
  world.unit().points.see(gear::Point::shell, {{gear::PointState::fault, "crack"}, world.stamp(kToday.plus(3)), false});
  const DueRow row = world.row();
  checkReason(row, DueKind::unitFault, Lane::doNotWear, kToday, kToday);
  CHECK(row.points[static_cast<std::size_t>(gear::Point::shell)] == gear::PointState::fault);
}

TEST_CASE("A label year is judged by its earliest end") {
  SmallWorld world;
  world.unit().labels[0].label.year = 2024;  // 1 January 2024 to 31 December 2024: at the earliest good through 2025-12-31
  const DueRow row = world.row();
  checkReason(row, DueKind::labelLapsed, Lane::doNotWear, dayOf(2026, 1, 1), dayOf(2026, 1, 1));
  CHECK(find(row, DueKind::labelLapsed)->day == dayOf(2025, 12, 31));
}

TEST_CASE("A label that lapses within the season is said weekly from 14 days before, due by its last good day") {
  SmallWorld world;
  // Certified on 2024-11-10: good through 2026-11-09, lapsed on 2026-11-10.
  world.unit().labels[0].label = {gear::LabelKind::recertification, 2024, dayOf(2024, 11, 10), "invoice 12"};
  const Day lapse = dayOf(2026, 11, 10);
  CHECK(find(world.rowOn(lapse.plus(-15)), DueKind::labelLapsing) == nullptr);
  checkReason(world.rowOn(lapse.plus(-14)), DueKind::labelLapsing, Lane::weekly, lapse.plus(-14), lapse.plus(-1));
  CHECK(find(world.rowOn(lapse.plus(-1)), DueKind::labelLapsing) != nullptr);
  CHECK(find(world.rowOn(lapse.plus(-1)), DueKind::labelLapsed) == nullptr);
  checkReason(world.rowOn(lapse), DueKind::labelLapsed, Lane::doNotWear, lapse, lapse);
}

TEST_CASE("A label that outlasts the season is not said to lapse") {
  SmallWorld world;
  world.unit().labels[0].label = {gear::LabelKind::recertification, 2024, dayOf(2024, 11, 21), "invoice 12"};
  CHECK(find(world.rowOn(dayOf(2026, 11, 19)), DueKind::labelLapsing) == nullptr);
  world.unit().labels[0].label.fullDate = dayOf(2024, 11, 20);  // lapses on the season's last day
  CHECK(find(world.rowOn(dayOf(2026, 11, 19)), DueKind::labelLapsing) != nullptr);
}

TEST_CASE("A label that is missing, in question or not known keeps the helmet off") {
  SmallWorld world;
  world.unit().isLabelDisputed = true;
  CHECK(find(world.row(), DueKind::labelDisputed)->lane == Lane::doNotWear);
  world.unit().isLabelDisputed = false;
  world.unit().isLabelMissing = true;
  CHECK(find(world.row(), DueKind::labelMissing)->lane == Lane::doNotWear);
  world.unit().isLabelMissing = false;
  world.unit().labels.clear();
  CHECK(find(world.row(), DueKind::labelUnknown)->lane == Lane::doNotWear);
}

TEST_CASE("Two athletes on one helmet and two helmets on one athlete are open questions") {
  SmallWorld world;
  AthleteRecord other = world.athlete();
  other.id = "d:11";
  other.jersey = "23";
  world.views.athletes["d:11"] = other;
  world.unit().athletes = {world.athleteId, "d:11"};
  DueRow row = world.row();
  checkReason(row, DueKind::twoAthletes, Lane::doNotWear, dayOf(2026, 8, 1), dayOf(2026, 8, 1));
  CHECK(find(row, DueKind::twoAthletes)->text == "23");
  CHECK(row.action == RowAction::athlete);
  UnitRecord second = world.unit();
  second.id = "d:21";
  second.athletes = {world.athleteId};
  world.views.units["d:21"] = second;
  world.unit().athletes = {world.athleteId};
  world.athlete().units = {world.unitId, "d:21"};
  row = world.row();
  CHECK(find(row, DueKind::twoUnits)->lane == Lane::doNotWear);
  CHECK(row.unit == "d:21");
}

TEST_CASE("Who never had a helmet stands in a lane of their own, by the next practice") {
  SmallWorld world;
  world.athlete().units.clear();
  const DueRow row = world.row();
  checkReason(row, DueKind::noUnit, Lane::noHelmet, dayOf(2026, 7, 1), kToday);
  CHECK(row.lane == Lane::noHelmet);
  CHECK(row.action == RowAction::chooseHelmet);
}

TEST_CASE("Who had a helmet and has none stays under do not wear, and is told what became of it") {
  SmallWorld world;
  world.athlete().units.clear();
  world.unit().athletes.clear();
  world.unit().place = UnitPlace::shelf;
  world.athlete().had = HadRecord{world.unitId, "other helmet", world.stamp(dayOf(2026, 10, 13))};
  checkReason(world.row(), DueKind::noUnit, Lane::doNotWear, dayOf(2026, 10, 13), dayOf(2026, 10, 13));
  CHECK(find(world.row(), DueKind::noUnit)->text == "shelf");
  world.unit().athletes = {"d:11"};
  CHECK(find(world.row(), DueKind::noUnit)->text == "given");
  world.unit().place = UnitPlace::repair;
  CHECK(find(world.row(), DueKind::noUnit)->text == "repair");
  world.unit().holds = {{"d:300", "shell", "crack", world.stamp(dayOf(2026, 10, 13))}};
  CHECK(find(world.row(), DueKind::noUnit)->text == "held");
  // Taken off because the fit could not be reached, and good otherwise.
  world.unit().holds.clear();
  world.unit().athletes.clear();
  world.unit().place = UnitPlace::shelf;
  world.ended(dayOf(2026, 10, 13), fit::CheckKind::refit, fit::Verdict::doNotWear, {"brow-over"});
  world.athlete().had->reason = "brow-over";
  CHECK(find(world.row(), DueKind::noUnit)->text == "brow-over");
}

TEST_CASE("A fault stands once, whether a hold, the finding or the verdict says it") {
  SmallWorld world;
  const Stamp found = world.stamp(kToday);
  world.ended(kToday, fit::CheckKind::look, fit::Verdict::doNotWear, {"shell-fault"}).stamp = found;
  world.unit().points.see(gear::Point::shell, {{gear::PointState::fault, "crack"}, found, false});
  CHECK(world.row().reasons.size() == 2);
  world.unit().holds = {{"d:300", "shell", "crack", found}};
  REQUIRE(world.row().reasons.size() == 1);
  CHECK(world.row().reasons.front().kind == DueKind::held);
  // A fault of another point is another fault.
  world.unit().points.see(gear::Point::liner, {{gear::PointState::fault, "torn"}, found, false});
  CHECK(world.row().reasons.size() == 2);
}

TEST_CASE("An old helmet that is on hold and still with an athlete comes before all that is in our hands") {
  SmallWorld world;
  UnitRecord old = world.unit();
  old.id = "d:21";
  old.serial = "A1-M-00002";
  old.athletes.clear();
  old.keptBy = world.athleteId;
  world.views.units["d:21"] = old;
  checkReason(world.row(), DueKind::keptUnit, Lane::weekly, kToday, kToday.plus(7));
  world.views.units["d:21"].holds = {{"d:300", "shell", "crack", world.stamp(dayOf(2026, 10, 13))}};
  const DueRow row = world.row();
  checkReason(row, DueKind::keptUnit, Lane::doNotWear, kToday, kToday);
  CHECK(row.grade == Grade::stillWorn);
  CHECK(find(row, DueKind::keptUnit)->text == "A1-M-00002");
  world.views.units["d:21"].keptBy.clear();
  CHECK(world.row().reasons.empty());
}

TEST_CASE("A helmet that is away keeps the athlete out of it") {
  for (const auto& [place, word] : {std::pair{UnitPlace::repair, "repair"},
                                    {UnitPlace::sentOut, "sent-out"},
                                    {UnitPlace::retired, "retired"},
                                    {UnitPlace::lost, "lost"}}) {
    SmallWorld world;
    world.unit().place = place;
    REQUIRE(find(world.row(), DueKind::unitAway) != nullptr);
    CHECK(find(world.row(), DueKind::unitAway)->text == word);
    CHECK(world.row().lane == Lane::doNotWear);
  }
}

TEST_CASE("Hair that changed and a part that changed are seen before practice") {
  SmallWorld world;
  world.athlete().hairChanged = world.stamp(dayOf(2026, 10, 13));
  checkReason(world.row(), DueKind::hairChanged, Lane::beforePractice, dayOf(2026, 10, 13), kToday);
  CHECK(world.row().action == RowAction::refit);
  world.athlete().hairChanged.reset();
  world.athlete().partChanged = world.stamp(dayOf(2026, 10, 13));
  checkReason(world.row(), DueKind::partChanged, Lane::beforePractice, dayOf(2026, 10, 13), kToday);
  CHECK(world.row().action == RowAction::look);
}

TEST_CASE("A verdict to not wear stands until another check in this helmet") {
  SmallWorld world;
  world.ended(dayOf(2026, 10, 13), fit::CheckKind::look, fit::Verdict::doNotWear, {"brow-over"});
  checkReason(world.row(), DueKind::verdictDoNotWear, Lane::doNotWear, dayOf(2026, 10, 13), dayOf(2026, 10, 13));
  CHECK(find(world.row(), DueKind::verdictDoNotWear)->text == "brow-over");
  world.ended(kToday, fit::CheckKind::refit, fit::Verdict::fits);
  CHECK(find(world.row(), DueKind::verdictDoNotWear) == nullptr);
}

TEST_CASE("A check left with something to adjust or unfinished is taken up before practice") {
  SmallWorld world;
  EndedCheck& check = world.ended(dayOf(2026, 10, 13), fit::CheckKind::look, fit::Verdict::adjust, {"jaw-under"});
  check.strip[static_cast<std::size_t>(fit::Mark::jaw)] = fit::Finding::under;
  DueRow row = world.row();
  checkReason(row, DueKind::adjustOpen, Lane::beforePractice, dayOf(2026, 10, 13), kToday);
  CHECK(find(row, DueKind::adjustOpen)->mark == fit::Mark::jaw);
  CHECK(find(row, DueKind::adjustOpen)->finding == fit::Finding::under);
  world.athlete().checks.back().verdict = fit::Verdict::unfinished;
  world.athlete().checks.back().strip[static_cast<std::size_t>(fit::Mark::sides)] = fit::Finding::unseen;
  row = world.row();
  checkReason(row, DueKind::checkOpen, Lane::beforePractice, dayOf(2026, 10, 13), kToday);
  CHECK(find(row, DueKind::checkOpen)->mark == fit::Mark::sides);
}

TEST_CASE("A fit on dry hair is due at the next practice and nothing else is said of it") {
  SmallWorld world;
  world.ended(dayOf(2026, 10, 13), fit::CheckKind::refit, fit::Verdict::adjust, {"dry-hair"}).isHairDry = true;
  const DueRow row = world.row();
  checkReason(row, DueKind::dryHair, Lane::beforePractice, kToday, kToday);
  CHECK(find(row, DueKind::adjustOpen) == nullptr);
  CHECK(row.action == RowAction::refit);
  checkReason(world.row(at(kToday, 1000)), DueKind::dryHair, Lane::beforePractice, kToday.plus(1), kToday.plus(1));
}

TEST_CASE("A young head is taped again after six months, within thirty days") {
  SmallWorld world;
  world.athlete().tapes[0].stamp.at = at(dayOf(2026, 4, 14));
  CHECK(find(world.rowOn(dayOf(2026, 10, 13)), DueKind::tapeStale) == nullptr);
  checkReason(world.row(), DueKind::tapeStale, Lane::weekly, kToday, kToday.plus(30));
  CHECK(find(world.row(), DueKind::tapeStale)->count == 6);
  CHECK_FALSE(find(world.rowOn(kToday.plus(30)), DueKind::tapeStale)->isLate);
  CHECK(find(world.rowOn(kToday.plus(31)), DueKind::tapeStale)->isLate);
  world.athlete().birthYear = 2007;  // nineteen: grown
  CHECK(find(world.row(), DueKind::tapeStale) == nullptr);
}

TEST_CASE("A head never taped is due weekly") {
  SmallWorld world;
  world.athlete().tapes.clear();
  checkReason(world.row(), DueKind::neverTaped, Lane::weekly, dayOf(2026, 7, 1), dayOf(2026, 7, 31));
  CHECK(world.row().action == RowAction::athlete);
}

TEST_CASE("The next practice is the next day of the schedule, today until it has begun") {
  const SmallWorld world;
  CHECK(nextPractice(world.views, at(kToday, 930)) == kToday);
  CHECK(nextPractice(world.views, at(kToday, 931)) == kToday.plus(1));
  CHECK(nextPractice(world.views, at(dayOf(2026, 10, 16), 931)) == dayOf(2026, 10, 19));  // Friday evening: Monday
  CHECK(nextPractice(world.views, at(dayOf(2026, 7, 1))) == dayOf(2026, 8, 3));           // before the season: its first day
  Views empty;
  CHECK(nextPractice(empty, kNow) == kToday);
  Views never = world.views;
  never.team->practiceDays.fill(false);
  CHECK(nextPractice(never, kNow) == kToday);
}
