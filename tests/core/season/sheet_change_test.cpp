// SPDX-License-Identifier: Apache-2.0
// Sheets that replace one another: by which one helmets are judged, counted and listed, and whom a change concerns before it is kept.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>
#include <set>

#include "core/season/matching.h"
#include "core/season/notice.h"
#include "core/season/patterns.h"
#include "core/season/plan.h"
#include "core/season/sheet_chain.h"
#include "core/season/sheet_change.h"
#include "core/season/spares.h"
#include "season_world.h"
#include "small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

Stamp later(std::int64_t order) { return {kNow, "d:2", "e:" + std::to_string(order), 1'000'000 + order}; }

gear::ModelSheet named(gear::ModelSheet sheet, const std::string& hash) {
  sheet.hash = hash;
  sheet.bytes = hash;
  return sheet;
}

void replace(Views& views, const std::string& old, const gear::ModelSheet& sheet, std::int64_t order) {
  views.sheets.at(old).replaced = ReplacedRecord{sheet.hash, later(order)};
  if (!views.sheets.contains(sheet.hash)) views.sheets[sheet.hash] = {sheet.hash, std::make_shared<gear::ModelSheet>(sheet), later(order)};
}

SheetChange changed(const SmallWorld& world, const gear::ModelSheet& sheet, const Conditions& conditions = {}) {
  return changeOf(world.views, "sheet-hash", sheet, {kNow}, conditions).value();
}

}  // namespace

TEST_CASE("Of a line of sheets the last one counts, and any of them names it") {
  SmallWorld world;
  replace(world.views, "sheet-hash", named(plainSheet(), "second"), 1);
  replace(world.views, "second", named(plainSheet(), "third"), 2);
  CHECK(isOneModel(world.views, "sheet-hash", "third"));
  CHECK(isOneModel(world.views, "second", "sheet-hash"));
  CHECK_FALSE(isOneModel(world.views, "second", "elsewhere"));
  REQUIRE(standingSheets(world.views).size() == 1);
  CHECK(standingSheets(world.views).front()->hash == "third");
  std::vector<std::string> before;
  for (const SheetRecord* record : sheetsBefore(world.views, "third")) before.push_back(record->hash);
  CHECK(before == std::vector<std::string>{"second", "sheet-hash"});
  CHECK(sheetById(world.views, "alder-a1")->hash == "third");
  CHECK(sheetById(world.views, "nobody") == nullptr);

  world.views.sheets.at("third").replaced = ReplacedRecord{"sheet-hash", later(3)};
  CHECK(isStanding(world.views, "sheet-hash"));
  CHECK(sheetById(world.views, "alder-a1")->hash == "sheet-hash");
  CHECK(sheetsBefore(world.views, "sheet-hash").size() == 2);
}

TEST_CASE("Spares, matching and orders count helmets of every sheet of a line as one model") {
  SeasonWorld world = SeasonWorld::random(11, 40, 50);
  for (auto& [id, unit] : world.views.units) unit.sheet = SeasonWorld::hashOf(0);
  const Views one = world.views;
  gear::ModelSheet sheet = *one.sheet(SeasonWorld::hashOf(0));
  sheet.cautions = "Second printing.";
  replace(world.views, SeasonWorld::hashOf(0), named(sheet, "second"), 1);
  int n = 0;
  for (auto& [id, unit] : world.views.units)
    if (++n % 2 == 0) unit.sheet = "second";  // as helmets that arrived after it

  const MatchAnswer was = matchHelmets(one, {}, world.today).value(), is = matchHelmets(world.views, {}, world.today).value();
  CHECK(is.pairs.size() == was.pairs.size());
  CHECK(is.spareBySize.size() == was.spareBySize.size());
  for (const MatchPair& pair : is.pairs) CHECK(pair.sheet == "second");
  PlanWishes wishes;
  wishes.season = 2026;
  const PlanAnswer plan = planSeason(one, wishes, world.today).value(), planned = planSeason(world.views, wishes, world.today).value();
  REQUIRE(planned.orders.size() == plan.orders.size());
  for (std::size_t i = 0; i < plan.orders.size(); ++i) {
    CHECK(planned.orders[i].sheet == "second");
    CHECK(planned.orders[i].order == plan.orders[i].order);
  }
  CHECK(planned.newSheet == "second");
  wishes.newSheet = SeasonWorld::hashOf(0);  // asked for by the earlier one
  CHECK(planSeason(world.views, wishes, world.today)->newSheet == "second");
  const auto& someone =
      std::find_if(one.athletes.begin(), one.athletes.end(), [](const auto& a) { return !a.second.tapes.empty(); })->first;
  const SpareAnswer before = sparesFor(one, someone, {}, world.today).value(),
                    after = sparesFor(world.views, someone, {}, world.today).value();
  CHECK(after.likelySheet == "second");
  CHECK(after.likelySize == before.likelySize);
  CHECK(after.offers.size() == before.offers.size());
}

TEST_CASE("A head that is not taped is offered the size before, also from another sheet of the line") {
  SmallWorld world;
  world.athlete().tapes.clear();
  replace(world.views, "sheet-hash", named(plainSheet(), "second"), 1);
  UnitRecord spare = world.unit();
  spare.id = spare.serial = spare.tagKey = "d:21";
  spare.sheet = "second";
  spare.athletes.clear();
  spare.place = UnitPlace::shelf;
  world.views.units[spare.id] = spare;
  CHECK(sparesFor(world.views, world.athleteId, {}, kToday)->offers.size() == 1);
}

TEST_CASE("A notice by any sheet of a line means the helmets of all of them") {
  SmallWorld world;
  replace(world.views, "sheet-hash", named(plainSheet(), "second"), 1);
  NoticeScope scope;
  scope.sheet = "second";
  CHECK(coverOf(world.views, scope).units == std::vector<std::string>{world.unitId});
  world.unit().sheet = "second";
  scope.sheet = "sheet-hash";
  CHECK(coverOf(world.views, scope).units == std::vector<std::string>{world.unitId});
}

TEST_CASE("Words about helmets of one model come together across its sheets") {
  SmallWorld world;
  replace(world.views, "sheet-hash", named(plainSheet(), "second"), 1);
  for (const char* jersey : {"11", "12", "13"}) {
    AthleteRecord athlete = world.athlete();
    athlete.id = std::string("d:9") + jersey;
    athlete.jersey = jersey;
    athlete.units = {"u:" + athlete.id};
    UnitRecord unit = world.unit();
    unit.id = athlete.units.front();
    unit.sheet = jersey == std::string("11") ? "sheet-hash" : "second";
    unit.athletes = {athlete.id};
    SaidRecord said;
    said.fact = athlete.id + ":s";
    said.at = at(dayOf(2026, 10, 13));
    said.unit = unit.id;
    said.where = fit::Mark::jaw;
    athlete.said = {said};
    world.views.units[unit.id] = unit;
    world.views.athletes[athlete.id] = athlete;
  }
  const auto patterns = saidAgain(world.views, kToday);
  REQUIRE(patterns.size() == 1);
  CHECK(patterns.front().sheet == "second");
  CHECK(patterns.front().athletes.size() == 3);
}

TEST_CASE("A sheet that says the same concerns nobody") {
  const SmallWorld world;
  const SheetChange change = changed(world, named(plainSheet(), "second"));
  CHECK(change.differences.empty());
  CHECK(change.athletes.empty());
  CHECK(change.units.empty());
  CHECK(change.unitCount == 1);
  CHECK(change.wornCount == 1);
}

TEST_CASE("A shorter certification shows the label's days and the row before and after") {
  SmallWorld world;
  world.unit().labels = {{{gear::LabelKind::recertification, 2025, std::nullopt, {}}, world.stamp(dayOf(2026, 7, 20))}};
  gear::ModelSheet sheet = named(plainSheet(), "second");
  sheet.certificationMonths = 6;
  const SheetChange change = changed(world, sheet);
  REQUIRE(change.units.size() == 1);
  CHECK(change.units.front().lastGood.before == gear::lastGoodDay(world.unit().labels.back().label, 24, std::nullopt, 0).first);
  CHECK(change.units.front().lastGood.after == gear::lastGoodDay(world.unit().labels.back().label, 6, std::nullopt, 0).first);
  REQUIRE(change.athletes.size() == 1);
  CHECK(change.athletes.front().row.before == world.row());
  CHECK(change.athletes.front().row.after.lane == Lane::doNotWear);
  CHECK(find(change.athletes.front().row.after, DueKind::labelLapsed) != nullptr);
  CHECK(world.row().lane == Lane::nothingDue);  // and nothing was kept
}

TEST_CASE("A narrower band shows the odds of the size worn, and no row changes by it") {
  const SmallWorld world;
  gear::ModelSheet sheet = named(plainSheet(), "second");
  sheet.sizes.front().high = Length::micrometres(561000);
  const SheetChange change = changed(world, sheet);
  REQUIRE(change.athletes.size() == 1);
  CHECK_FALSE(change.athletes.front().row.isChanged());
  REQUIRE(change.athletes.front().odds.before);
  CHECK(*change.athletes.front().odds.after < *change.athletes.front().odds.before);
  CHECK(change.units.empty());
}

TEST_CASE("Another air band names its port, and whoever the cold would now call for") {
  SmallWorld world;
  Conditions warm, cold;
  warm.temperature = Temperature::celsius(22);
  cold.temperature = Temperature::celsius(4);
  world.athlete().checks.back().climate = climateOf(warm);
  gear::ModelSheet old = plainSheet();
  old.changeAllowance = {20000};
  old.leakPerWeek = {2000};
  world.views.sheets["sheet-hash"].sheet = std::make_shared<gear::ModelSheet>(old);
  gear::ModelSheet sheet = named(old, "second");
  sheet.changeAllowance = {3000};
  SheetChange change = changed(world, sheet, cold);
  REQUIRE(change.athletes.size() == 1);
  CHECK(find(change.athletes.front().row.before, DueKind::airChanged) == nullptr);
  CHECK(find(change.athletes.front().row.after, DueKind::airChanged) != nullptr);
  CHECK(change.units.empty());
  sheet.air.front().low = {15000};
  change = changed(world, sheet, cold);
  REQUIRE(change.units.size() == 1);
  CHECK(change.units.front().ports == std::vector<gear::Port>{gear::Port::crown});
}

TEST_CASE("A size that helmets have and the new chart lacks is named with its helmets, retired ones left out") {
  SmallWorld world;
  UnitRecord retired = world.unit();
  retired.id = "d:30";
  retired.size = "XS";
  retired.place = UnitPlace::retired;
  world.views.units[retired.id] = retired;
  gear::ModelSheet sheet = named(plainSheet(), "second");
  sheet.sizes.front().name = "Medium";
  const SheetChange change = changed(world, sheet);
  REQUIRE(change.sizesGone.size() == 1);
  CHECK(change.sizesGone.front().size == "M");
  CHECK(change.sizesGone.front().units == std::vector<std::string>{world.unitId});
  REQUIRE(change.units.size() == 1);
  CHECK(change.units.front().isSizeGone);
  CHECK(change.athletes.front().odds.after == std::nullopt);
}

TEST_CASE("A check that is open is named, and stays with the sheet it began with") {
  SmallWorld world;
  CheckRecord check;
  check.id = "d:500";
  check.athlete = world.athleteId;
  check.unit = world.unitId;
  check.sheet = "sheet-hash";
  check.kind = fit::CheckKind::look;
  check.begun = world.stamp(kToday, 800);
  world.athlete().openCheck = check.id;
  world.views.openChecks[check.id] = check;
  gear::ModelSheet sheet = named(plainSheet(), "second");
  sheet.strapPoints = 6;
  const SheetChange change = changed(world, sheet);
  CHECK(change.openChecks == std::vector<std::string>{"d:500"});
  REQUIRE(change.athletes.size() == 1);
  CHECK(change.athletes.front().openCheck == "d:500");
  replace(world.views, "sheet-hash", sheet, 1);
  CHECK(setupOf(world.views, world.views.openChecks.at("d:500"), kToday)->sheet->strapPoints == 4);
}

TEST_CASE("The rows named are exactly those that the whole board changes") {
  for (const std::uint64_t seed : {1U, 2U, 3U, 4U, 5U}) {
    SeasonWorld world = SeasonWorld::random(seed, 120, 150);
    world.views.team->seasonStart = dayOf(2026, 4, 1);
    const BoardTime time{instantAt(world.today, 840, -300)};
    gear::ModelSheet sheet = named(*world.views.sheet(SeasonWorld::hashOf(1)), "second");
    sheet.certificationMonths = 4;
    sheet.ageLimitMonths = 50;
    const SheetChange change = changeOf(world.views, SeasonWorld::hashOf(1), sheet, time, {}).value();
    Views after = world.views;
    replace(after, SeasonWorld::hashOf(1), sheet, 1);
    std::set<std::string> byBoard, named;
    for (const auto& [id, athlete] : world.views.athletes)
      if (rowOf(world.views, athlete, time, {}) != rowOf(after, after.athletes.at(id), time, {})) byBoard.insert(id);
    for (const AthleteEffect& effect : change.athletes)
      if (effect.row.isChanged()) named.insert(effect.athlete);
    CHECK(named == byBoard);
    CHECK(byBoard.size() > 5);
    for (const AthleteEffect& effect : change.athletes)
      CHECK(effect.row.after == rowOf(after, after.athletes.at(effect.athlete), time, {}));
  }
}
