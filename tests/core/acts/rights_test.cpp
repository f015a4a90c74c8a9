// SPDX-License-Identifier: Apache-2.0
// Who may do what is ours; the table stands in core/book/rights.h.
#include SNUGLINE_CATCH_HEADER

#include "core/book/rights.h"
#include "core/book/people.h"
#include "tests/core/acts/desk_world.h"
#include "tests/core/book/book_world.h"

using namespace snugline;
using namespace snugline::book;
using season::kToday;

namespace {

constexpr const char* kHelping = "d:71";
constexpr const char* kServing = "d:72";
constexpr const char* kRunning = "d:73";
constexpr const char* kTreating = "d:74";  // a helper with the mark

struct StaffedWorld : DeskWorld {
  StaffedWorld() {
    views.people[kHelping] = {kHelping, "Ida Fernhollow", "IF", "helper"};
    views.people[kServing] = {kServing, "Silvio Kestrelby", "SK", "staff"};
    views.people[kRunning] = {kRunning, "Maren Tollgate", "MT", "admin"};
    views.people[kTreating] = {kTreating, "Oda Wexcombe", "OW", "helper", true};
  }
  // Who of the four may, by their initials' first letters.
  [[nodiscard]] std::string whoMay(const Drafts& drafts) const {
    std::string who;
    for (const char* person : {kHelping, kServing, kRunning, kTreating}) {
      if (mayAppend(views, person, drafts)) who += views.people.at(person).initials.front();
    }
    return who;
  }
  [[nodiscard]] std::string whoMay(const Result<Drafts>& drafts) const {
    return drafts ? whoMay(*drafts) : "refused: " + drafts.error().detail;
  }
};

}  // namespace

TEST_CASE("A helper rechecks, walks the line and puts on hold; first fits, swaps, service and release are for staff") {
  StaffedWorld world;
  CHECK(world.whoMay(hold(world.views, world.unitId, "shell", "crack", true)) == "ISMO");
  const auto whoMayBegin = [&](fit::CheckKind kind) {
    CheckBegun begun;
    begun.athlete = world.athleteId;
    begun.kind = kind;
    return world.whoMay(Drafts{{"", begun}});
  };
  CHECK(whoMayBegin(fit::CheckKind::look) == "ISMO");
  CHECK(whoMayBegin(fit::CheckKind::first) == "SM");
  CHECK(whoMayBegin(fit::CheckKind::refit) == "SM");
  LineSeen seen;
  seen.unit = world.unitId;
  CHECK(world.whoMay(Drafts{{world.athleteId, seen}}) == "ISMO");
  const std::string spare = world.spare().id;
  CHECK(world.whoMay(pair(world.views, world.athleteId, spare, kToday)) == "SM");
  CHECK(world.whoMay(takeIn(world.views, world.arrival("A1-M-00077"), kToday)) == "SM");
  CHECK(world.whoMay(Drafts{{world.unitId, HoldReleased{"d:300", "looked at"}}}) == "SM");
  CHECK(world.whoMay(Drafts{{world.unitId, UnitMoved{"in-service", ""}}}) == "SM");
}

TEST_CASE("What a check or a hold writes beside itself takes no more than the check or the hold") {
  StaffedWorld world;
  CheckEnded ended;
  ended.athlete = world.athleteId;
  ended.unit = world.unitId;
  ended.outcome.kind = fit::CheckKind::look;
  CHECK(world.whoMay(Drafts{{"d:500", ended}, {world.unitId, UnitUnpaired{world.athleteId, "other size"}}}) == "ISMO");
  CHECK(world.whoMay(Drafts{{world.unitId, UnitUnpaired{world.athleteId, "given back"}}}) == "SM");
  CHECK(world.whoMay(Drafts{{world.unitId, HoldReleased{"d:300", "in our hands"}}, {world.unitId, UnitHeld{"shell", "crack"}}}) == "ISMO");
  world.openCheck(fit::CheckKind::first);
  CHECK(world.whoMay(answer(world.views, "d:500", {fit::HairSeen{true}}, instantAt(kToday, 800, -300))) == "SM");
}

TEST_CASE("Staff have been told of a hit; only who has the mark closes it, and nobody without a name does") {
  StaffedWorld world;
  const std::string fact = world.said(kToday).fact;
  CHECK(world.whoMay(acknowledge(world.views, world.athleteId, fact, true, {})) == "SM");
  world.athlete().said.back().isUnwell = true;
  CHECK(world.whoMay(acknowledge(world.views, world.athleteId, fact, false, {})) == "SM");
  const auto close = acknowledge(world.views, world.athleteId, fact, true, {});
  CHECK(world.whoMay(close) == "O");
  const auto refusedTo = [&](const char* person) { return mayAppend(world.views, person, *close).error().detail; };
  CHECK(refusedTo(kRunning) == rule::kNeedsPractitioner);
  CHECK(refusedTo("") == rule::kNeedsPractitioner);
  world.athlete().said.back().isMistake = true;  // staff ask, and what they hear ends it
  CHECK(world.whoMay(acknowledge(world.views, world.athleteId, fact, true, {})) == "SM");
}

TEST_CASE("Codes, people and how long names are kept are an admin's; one's own code is one's own") {
  StaffedWorld world;
  world.views.team->id = "d:1";
  world.views.people[kRunning].code.emplace();
  CHECK(world.whoMay(addPerson(world.views, {"Ada Merle", "AM", "staff"})) == "M");
  CHECK(world.whoMay(changePerson(world.views, kServing, {"admin", {}})) == "M");
  CHECK(world.whoMay(setCode(world.views, kHelping, {})) == "IM");
  CHECK(world.whoMay(Drafts{{"d:1", RetentionSet{3}}}) == "M");
  CHECK(world.whoMay(setEmergency(world.views, {"555 0100", ""})) == "SM");
  world.views.people[kRunning].code.reset();  // else nobody could let an admin in
  CHECK(world.whoMay(setCode(world.views, kRunning, {})) == "ISMO");
}

TEST_CASE("An entry is taken back by who wrote it or by staff, and a hit said by nobody") {
  StaffedWorld world;
  Fact held;
  held.device = "d";
  held.n = 600;
  held.who = kHelping;
  held.about = world.unitId;
  held.body = UnitHeld{"shell", "crack"};
  CHECK(mayCorrect(world.views, kHelping, held));
  CHECK(mayCorrect(world.views, kServing, held));
  CHECK(mayCorrect(world.views, kTreating, held).error().detail == rule::kNeedsStaff);
  Fact hit = held;
  Said said;
  said.said.isUnwell = true;
  hit.body = said;
  CHECK(mayCorrect(world.views, kHelping, hit).error().detail == rule::kStaysSaid);
  CHECK(mayCorrect(world.views, kRunning, hit).error().detail == rule::kStaysSaid);
}

TEST_CASE("A Book refuses an act above the role of whoever is signed in, and writes nothing") {
  test::World world;
  const auto book = world.create();
  test::put(*book, test::must(addPerson(book->views(), {"Maren Tollgate", "MT", "admin"})));
  const std::string helper = test::put(*book, test::must(addPerson(book->views(), {"Ida Fernhollow", "IF", "helper"}))).ids.front();
  book->setPerson(helper);
  const std::string before = test::must(book->dumpViews());
  const auto refused = book->append(test::must(addAthlete(book->views(), {"46", "Brindlecote", "Ash", 2009})));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == ErrorCode::notAllowed);
  CHECK(refused.error().detail == rule::kNeedsStaff);
  CHECK(test::must(book->dumpViews()) == before);
}
