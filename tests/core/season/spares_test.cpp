// SPDX-License-Identifier: Apache-2.0
// A spare for one athlete: what is offered, in which order, and what is not and why.
#include SNUGLINE_CATCH_HEADER
#include "core/season/spares.h"
#include "small_world.h"

using namespace snugline;
using namespace snugline::season;

namespace {

// Sizes M 540 to 580 and L 575 to 620 mm; the athlete's head is 560 mm.
struct ShelfWorld : SmallWorld {
  ShelfWorld() {
    gear::ModelSheet sheet = plainSheet();
    sheet.sizes.push_back({"L", Length::micrometres(575000), Length::micrometres(620000)});
    views.sheets["sheet-hash"].sheet = std::make_shared<gear::ModelSheet>(sheet);
  }
  UnitRecord& add(const std::string& serial, const std::string& size, const std::string& shelf = {}) {
    UnitRecord made = unit();
    made.id = "d:" + std::to_string(1000 + views.units.size());
    made.serial = made.tagKey = serial;
    made.size = size;
    made.shelf = shelf;
    made.athletes.clear();
    made.place = UnitPlace::shelf;
    return views.units[made.id] = made;
  }
  [[nodiscard]] SpareAnswer spares(const std::string& here = {}) const { return sparesFor(views, athleteId, here, kToday).value(); }
  [[nodiscard]] std::vector<std::string> serials(const std::string& here = {}) const {
    std::vector<std::string> found;
    for (const Spare& spare : spares(here).offers) found.push_back(views.unit(spare.unit)->serial);
    return found;
  }
  [[nodiscard]] int count(NotOffered why) const { return spares().notOffered[static_cast<std::size_t>(why)]; }
};

}  // namespace

TEST_CASE("The surest size comes first, then the shelf where one stands, then shelves by name") {
  ShelfWorld world;
  world.athlete().tapes.back().readings = {Length::micrometres(577000)};  // nearer to M than to L, and L is tried on
  world.add("a", "L", "Shelf 1");
  world.add("b", "M", "Shelf 10");
  world.add("c", "M", "Shelf 2");
  world.add("d", "M");
  CHECK(world.serials() == std::vector<std::string>{"c", "b", "d", "a"});
  CHECK(world.serials("Shelf 10") == std::vector<std::string>{"b", "c", "d", "a"});
  CHECK(world.spares().shelves == std::vector<std::string>{"Shelf 1", "Shelf 2", "Shelf 10"});
  CHECK(world.spares().likelySize == "M");
}

TEST_CASE("Of equal helmets the one whose label lasts longest comes first") {
  ShelfWorld world;
  world.add("a", "M").labels = {{{gear::LabelKind::recertification, 2025, std::nullopt, {}}, world.stamp(kToday)}};
  world.add("b", "M");
  CHECK(world.serials() == std::vector<std::string>{"b", "a"});
}

TEST_CASE("A helmet that is held, away, out of service, at fault, said broken or lapsed is never offered, and is counted") {
  ShelfWorld world;
  world.add("held", "M").holds = {{"d:30", "shell", "crack", world.stamp(kToday)}};
  world.add("away", "M").place = UnitPlace::repair;
  world.add("new", "M").isInService = false;
  world.add("fault", "M").points.see(gear::Point::faceguard, {{gear::PointState::fault, "bare metal"}, world.stamp(kToday), false});
  world.add("lapsed", "M").labels = {{{gear::LabelKind::recertification, 2024, std::nullopt, {}}, world.stamp(kToday)}};
  world.add("missing", "M").isLabelMissing = true;
  world.add("gone", "M").place = UnitPlace::retired;
  world.add("large", "L");
  SaidRecord broke;
  broke.unit = world.add("broken", "M").id;
  broke.isBroken = true;
  broke.at = kNow;
  broke.fact = "d:900";
  world.athlete().said.push_back(broke);
  CHECK(world.serials().empty());
  CHECK(world.count(NotOffered::held) == 1);
  CHECK(world.count(NotOffered::away) == 1);
  CHECK(world.count(NotOffered::notInService) == 1);
  CHECK(world.count(NotOffered::faultOpen) == 1);
  CHECK(world.count(NotOffered::label) == 2);  // 2024 with two years: the earliest end of the span is over
  CHECK(world.count(NotOffered::otherSize) == 1);
  CHECK(world.count(NotOffered::brokeSaid) == 1);
  CHECK(world.spares().worn == 0);  // the athlete's own does not count
}

TEST_CASE("A helmet that somebody else wears is counted as worn") {
  ShelfWorld world;
  world.add("his", "M").athletes = {"d:11"};
  CHECK(world.serials().empty());
  CHECK(world.spares().worn == 1);
}

TEST_CASE("A helmet tried in vain since the last tape is left out until the head is taped again") {
  ShelfWorld world;
  const std::string tried = world.add("tried", "M").id;
  world.ended(kToday, fit::CheckKind::first, fit::Verdict::doNotWear, {"not-reached"}).unit = tried;
  CHECK(world.serials().empty());
  CHECK(world.count(NotOffered::didNotFit) == 1);
  world.athlete().tapes.push_back({{Length::micrometres(561000)}, world.stamp(kToday)});
  CHECK(world.serials() == std::vector<std::string>{"tried"});
}

TEST_CASE("Without a tape the size of the helmet worn last stands in, with no odds said") {
  ShelfWorld world;
  world.athlete().tapes.clear();
  world.add("large", "L");
  world.add("medium", "M");
  CHECK(world.serials() == std::vector<std::string>{"medium"});
  CHECK_FALSE(world.spares().offers.front().odds);
  CHECK(world.spares().tape == TapeState::missing);
  CHECK(world.spares().likelySize == "M");
}

TEST_CASE("A head off every chart is offered nothing and told no size") {
  ShelfWorld world;
  world.athlete().tapes.back().readings = {Length::micrometres(660000)};
  world.add("large", "L");
  CHECK(world.serials().empty());
  CHECK(world.spares().likelySize.empty());
  CHECK(world.count(NotOffered::otherSize) == 1);
}

TEST_CASE("Nobody's spares are not found") {
  CHECK(sparesFor(ShelfWorld().views, "d:404", {}, kToday).error().code == ErrorCode::notFound);
}

TEST_CASE("Marks that a new part disturbs are unseen on the row until a check has seen them") {
  SmallWorld world;
  world.athlete().partChanged = world.stamp(kToday);
  world.athlete().partMarks = {fit::Mark::jaw, fit::Mark::chin};
  world.athlete().changedParts = {"jaw-pads"};
  const DueRow row = world.row();
  const DueReason* reason = find(row, DueKind::partChanged);
  REQUIRE(reason != nullptr);
  CHECK(reason->marks == fit::MarkSet{fit::Mark::jaw, fit::Mark::chin});
  CHECK(reason->text == "jaw-pads");
  CHECK(row.strip[static_cast<std::size_t>(fit::Mark::jaw)] == fit::Finding::unseen);
  CHECK(row.strip[static_cast<std::size_t>(fit::Mark::brow)] == fit::Finding::snug);
}
