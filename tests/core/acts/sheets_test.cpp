// SPDX-License-Identifier: Apache-2.0
// Model sheets adopted, replaced and put back, and what is written down under a sheet that was replaced.
#include "core/book/acts_sheets.h"

#include SNUGLINE_CATCH_HEADER
#include "core/book/roster.h"
#include "core/gear/sheet_draft.h"
#include "desk_world.h"

using namespace snugline;
using namespace snugline::book;

namespace {

gear::SheetDraft plainDraft() {
  gear::SheetDraft draft = gear::draftOf(season::plainSheet());
  draft.changeAllowance = 7000;
  draft.leakPerWeek = 2000;
  draft.order = {gear::Port::crown};
  return draft;
}

struct SheetWorld : DeskWorld {
  // The world's sheet as a file says it, so that its hash is that of its bytes.
  SheetWorld() { stand(gear::sheetFrom(plainDraft()).value()); }
  void stand(const gear::ModelSheet& sheet) {
    views.sheets.clear();
    views.sheets[sheet.hash] = {sheet.hash, std::make_shared<gear::ModelSheet>(sheet), stamp(season::kToday)};
    for (auto& [id, unit] : views.units) unit.sheet = sheet.hash;
    first = sheet.hash;
  }
  gear::ModelSheet changed(std::int64_t months = 12) {
    gear::SheetDraft draft = plainDraft();
    draft.certificationMonths = months;
    return gear::sheetFrom(draft).value();
  }
  // As the Book folds them.
  void fold(const Drafts& drafts) {
    for (const Draft& draft : drafts) {
      const auto& adopted = std::get<SheetAdopted>(draft.body);
      const auto sheet = gear::parseSheet(adopted.sheet, "s").value();
      const season::Stamp when = stamp(season::kToday, 850);
      if (!adopted.replaces.empty()) views.sheets.at(adopted.replaces).replaced = season::ReplacedRecord{sheet.hash, when};
      if (!views.sheets.contains(sheet.hash)) views.sheets[sheet.hash] = {sheet.hash, std::make_shared<gear::ModelSheet>(sheet), when};
    }
  }
  std::string first;
};

}  // namespace

TEST_CASE("A sheet is replaced in one act, put back in another, and both stay known") {
  SheetWorld world;
  const gear::ModelSheet sheet = world.changed();
  const auto drafts = replaceSheet(world.views, world.first, sheet);
  REQUIRE(drafts);
  REQUIRE(kinds(*drafts) == std::vector<std::string>{"sheet-adopted"});
  CHECK(std::get<SheetAdopted>(drafts->front().body).replaces == world.first);
  CHECK(std::get<SheetAdopted>(drafts->front().body).sheet == sheet.bytes);
  world.fold(*drafts);
  CHECK(world.views.sheetOf(world.unit())->certificationMonths == 12);

  const auto back = replaceSheet(world.views, sheet.hash, *world.views.sheet(world.first));
  REQUIRE(back);
  REQUIRE(back->size() == 1);
  world.fold(*back);
  CHECK(world.views.sheetOf(world.unit())->certificationMonths == 24);
  world.fold(replaceSheet(world.views, world.first, sheet).value());  // and forth
  CHECK(world.views.sheetOf(world.unit())->certificationMonths == 12);
}

TEST_CASE("A replacement that means the same writes nothing, whatever its bytes") {
  SheetWorld world;
  const gear::ModelSheet same = gear::parseSheet(world.views.sheet(world.first)->bytes + "\n", "s").value();
  CHECK(same.hash != world.first);
  CHECK(replaceSheet(world.views, world.first, same)->empty());
}

TEST_CASE("Two sheets that count never share an id, unless one replaces the other") {
  SheetWorld world;
  CHECK(refusal(adoptSheet(world.views, world.changed())) == rule::kSheetIdTaken);
  CHECK(adoptSheet(world.views, *world.views.sheet(world.first))->empty());
  gear::SheetDraft other = plainDraft();
  other.id = "elder-e5";
  const gear::ModelSheet elder = gear::sheetFrom(other).value();
  const auto adopted = adoptSheet(world.views, elder);
  REQUIRE(adopted);
  world.fold(*adopted);
  CHECK(refusal(replaceSheet(world.views, elder.hash, world.changed())) == rule::kSheetIdTaken);
  CHECK(refusal(replaceSheet(world.views, elder.hash, *world.views.sheet(world.first))) == rule::kSheetIdTaken);
  world.fold(replaceSheet(world.views, world.first, world.changed()).value());
  other.id = "alder-a1";
  other.name = "Another Alder";
  CHECK(refusal(adoptSheet(world.views, gear::sheetFrom(other).value())) == rule::kSheetIdTaken);
}

TEST_CASE("A sheet that somebody replaced meanwhile, or that nobody knows, is not replaced") {
  SheetWorld world;
  world.fold(replaceSheet(world.views, world.first, world.changed()).value());
  CHECK(refusal(replaceSheet(world.views, world.first, world.changed(18))) == rule::kSheetReplaced);
  CHECK(replaceSheet(world.views, "nobody", world.changed()).error().code == ErrorCode::notFound);
}

TEST_CASE("A size that helmets have does not go, and goes once they are retired") {
  SheetWorld world;
  gear::SheetDraft draft = plainDraft();
  draft.sizes = {{"L", 575'000, 610'000}};
  const gear::ModelSheet sheet = gear::sheetFrom(draft).value();
  const auto refused = replaceSheet(world.views, world.first, sheet);
  CHECK(refusal(refused) == rule::kSizeInUse);
  CHECK(refused.error().place == "M");
  world.unit().place = season::UnitPlace::retired;
  CHECK(replaceSheet(world.views, world.first, sheet).has_value());
}

TEST_CASE("A check begins on the sheet that counts, and one that is open goes on by its own") {
  SheetWorld world;
  world.openCheck(fit::CheckKind::look).sheet = world.first;
  gear::SheetDraft draft = plainDraft();
  draft.questions = {{"sight", "Does the athlete see past the faceguard?", "It stands in the line of sight."}};
  const gear::ModelSheet sheet = gear::sheetFrom(draft).value();
  world.fold(replaceSheet(world.views, world.first, sheet).value());
  CHECK(season::setupOf(world.views, world.views.openChecks.at("d:500"), season::kToday)->sheet->questions.empty());
  CHECK(answer(world.views, "d:500", {fit::HairSeen{true}}, season::kNow).has_value());
  CHECK_FALSE(answer(world.views, "d:500", {fit::QuestionAnswered{"sight", true}}, season::kNow).has_value());

  world.views.openChecks.clear();
  world.athlete().openCheck.clear();
  const auto begun = beginCheck(world.views, world.athleteId, fit::CheckKind::look, season::kToday);
  REQUIRE(begun);
  CHECK(std::get<CheckBegun>(begun->front().body).sheet == sheet.hash);
}

TEST_CASE("An arrival that names a replaced sheet is written under the one that counts, whether drafted or listed") {
  SheetWorld world;
  const gear::ModelSheet sheet = world.changed();
  world.fold(replaceSheet(world.views, world.first, sheet).value());
  Arrival arrival = world.arrival("A1-M-00042");
  arrival.sheet = world.first;
  const auto taken = takeIn(world.views, arrival, season::kToday);
  REQUIRE(taken);
  CHECK(std::get<UnitReceived>(taken->front().body).sheet == sheet.hash);
  // A known helmet named with either sheet of its line is no contradiction.
  Arrival known = world.arrival(world.unit().serial);
  known.sheet = sheet.hash;
  CHECK(takeIn(world.views, known, season::kToday).has_value());
  const auto listed = planTakeIn(world.views, "A1-M-00043,alder-a1,M,2026,ok\n", "list.csv", season::kToday);
  REQUIRE(listed);
  REQUIRE(listed->refused.empty());
  CHECK(std::get<UnitReceived>(listed->drafts.front().body).sheet == sheet.hash);
}
