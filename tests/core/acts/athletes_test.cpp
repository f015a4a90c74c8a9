// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "tests/core/acts/desk_world.h"

#include "core/book/written.h"

using namespace snugline;
using namespace snugline::book;
using season::kToday;

TEST_CASE("An athlete has a jersey of up to three digits, a family name and a plausible year") {
  const season::Views views;
  CHECK(addAthlete(views, {"07", "Wexcombe", "Ari", 2010}));
  CHECK(addAthlete(views, {"", "Wexcombe", "", std::nullopt}));
  CHECK(addAthlete(views, {"1234", "Wexcombe", "Ari", 2010}).error().place == "jersey");
  CHECK(addAthlete(views, {"7a", "Wexcombe", "Ari", 2010}).error().place == "jersey");
  CHECK(addAthlete(views, {"7", "", "Ari", 2010}).error().place == "family name");
  CHECK(addAthlete(views, {"7", std::string(81, 'x'), "Ari", 2010}).error().place == "family name");
  CHECK(addAthlete(views, {"7", "Wex\ncombe", "Ari", 2010}).error().place == "family name");
  CHECK(addAthlete(views, {"7", "Wexcombe", "\xff", 2010}).error().place == "given name");
  CHECK(addAthlete(views, {"7", "Wexcombe", "Ari", 1850}).error().place == "birth year");
}

TEST_CASE("Length is counted in characters, not bytes") {
  std::string name;
  for (int i = 0; i < 80; ++i) name += "ñ";
  CHECK(addAthlete({}, {"7", name, "Ari", 2010}));
  CHECK(addAthlete({}, {"7", name + "ñ", "Ari", 2010}).error().code == ErrorCode::outOfRange);
  CHECK_FALSE(printableLength("\xed\xa0\x80").has_value());  // half of a surrogate pair
  CHECK_FALSE(printableLength("\xc0\xaf").has_value());      // an overlong slash
  CHECK(printableLength("日本") == 2U);
}

TEST_CASE("A change says only what changes, and nothing when nothing does") {
  DeskWorld world;
  CHECK(changeAthlete(world.views, world.athleteId, {"07", "Merriwold", "Teo", 2010, true})->empty());
  const auto drafts = changeAthlete(world.views, world.athleteId, {"07", "Merriwold", "Teodor", 2010, true});
  REQUIRE(drafts);
  const auto& change = std::get<AthleteChanged>(drafts->front().body);
  CHECK(change.given == "Teodor");
  CHECK_FALSE(change.jersey.has_value());
  CHECK(changeAthlete(world.views, "d:404", {}).error().code == ErrorCode::notFound);
}

TEST_CASE("A tape reading lies between 400 and 700 mm") {
  const DeskWorld world;
  const auto mm = [](int v) { return Length::micrometres(std::int64_t{v} * 1000); };
  CHECK(readTape(world.views, world.athleteId, {mm(400), mm(700)}));
  CHECK(readTape(world.views, world.athleteId, {mm(399)}).error().code == ErrorCode::outOfRange);
  CHECK(readTape(world.views, world.athleteId, {mm(701)}).error().code == ErrorCode::outOfRange);
  CHECK(readTape(world.views, world.athleteId, {}).error().code == ErrorCode::outOfRange);
  CHECK(readTape(world.views, world.athleteId, std::vector<Length>(21, mm(560))).error().code == ErrorCode::outOfRange);
}

TEST_CASE("What is said names the helmet worn and the open check, and nothing said is refused") {
  DeskWorld world;
  season::SaidRecord said;
  CHECK(refusal(say(world.views, world.athleteId, said)) == rule::kNothingSaid);
  said.where = fit::Mark::brow;
  said.side = fit::Side::left;  // the brow knows no sides
  world.openCheck(fit::CheckKind::look);
  const auto drafts = say(world.views, world.athleteId, said);
  REQUIRE(drafts);
  const auto& record = std::get<Said>(drafts->front().body);
  CHECK(record.said.unit == world.unitId);
  CHECK(record.said.side == fit::Side::both);
  CHECK(record.check == "d:500");
}

TEST_CASE("A word is acknowledged once, closed once, and not found where it was never said") {
  DeskWorld world;
  const std::string fact = world.said(kToday).fact;
  world.athlete().said.back().isUnwell = true;
  REQUIRE(acknowledge(world.views, world.athleteId, fact, false, ""));
  world.athlete().said.back().isAcknowledged = true;
  CHECK(acknowledge(world.views, world.athleteId, fact, false, "")->empty());
  CHECK(kinds(*acknowledge(world.views, world.athleteId, fact, true, "back by the book")) == std::vector<std::string>{"said-acknowledged"});
  world.athlete().said.back().isAnswered = true;
  CHECK(refusal(acknowledge(world.views, world.athleteId, fact, true, "")) == rule::kAlreadyClosed);
  CHECK(acknowledge(world.views, world.athleteId, "d:404", true, "").error().code == ErrorCode::notFound);
}

TEST_CASE("A hit said without a number is about the team, and a mistaken touch leaves it standing") {
  DeskWorld world;
  world.views.team->id = "d:1";
  const auto drafts = sayUnnamed(world.views);
  REQUIRE(drafts);
  CHECK(drafts->front().about == "d:1");
  CHECK(std::get<Said>(drafts->front().body).isUnnamed);
  season::SaidRecord said;
  said.fact = "d:900";
  said.isUnwell = true;
  world.views.team->unnamed.push_back(said);
  const auto mistake = followSaid(world.views, {}, "d:900", true);
  REQUIRE(mistake);
  CHECK(mistake->front().about == "d:1");
  CHECK(kinds(*mistake) == std::vector<std::string>{"said-followed"});
  CHECK(std::get<SaidAcknowledged>(acknowledge(world.views, {}, "d:900", false, {})->front().body).isUnnamed);
  CHECK(followSaid(world.views, world.athleteId, "d:900", false).error().code == ErrorCode::notFound);
}

TEST_CASE("Only what was said of a hit is followed by an adult told or a touch by mistake, each once") {
  DeskWorld world;
  const std::string fact = world.said(kToday).fact;
  CHECK(followSaid(world.views, world.athleteId, fact, false).error().code == ErrorCode::inconsistent);
  world.athlete().said.back().isUnwell = true;
  REQUIRE(followSaid(world.views, world.athleteId, fact, false));
  world.athlete().said.back().isAdultTold = true;
  CHECK(followSaid(world.views, world.athleteId, fact, false)->empty());
  CHECK(followSaid(world.views, world.athleteId, fact, true)->size() == 1);
}
