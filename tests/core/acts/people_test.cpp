// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/book/people.h"
#include "core/book/rights.h"

using namespace snugline;
using namespace snugline::book;

namespace {

season::Views staffed() {
  season::Views views;
  views.people["abcdefghijklm:2"] = {"abcdefghijklm:2", "Maren Tollgate", "MT", "admin"};
  return views;
}

}  // namespace

TEST_CASE("The first person of a Book is an admin, whatever was asked") {
  const auto first = addPerson({}, {"Silvio Kestrelby", "SK", "staff"});
  REQUIRE(first);
  CHECK(std::get<PersonAdded>(first->front().body).role == kAdmin);
  const auto second = addPerson(staffed(), {"Silvio Kestrelby", "SK", "staff"});
  REQUIRE(second);
  CHECK(std::get<PersonAdded>(second->front().body).role == kStaff);
}

TEST_CASE("A person without a name, with too many initials or another role is refused and says which") {
  CHECK(addPerson({}, {"", "MT", "admin"}).error().place == "name");
  CHECK(addPerson({}, {"Maren Tollgate", "", "trainer"}).error().place == "initials");
  CHECK(addPerson({}, {"Maren Tollgate", "MTXY", "trainer"}).error().place == "initials");
  CHECK(addPerson({}, {"Maren Tollgate", "MT", "coach"}).error().code == ErrorCode::unknownWord);
  CHECK(addPerson({}, {"Maren\nTollgate", "MT", "admin"}).error().place == "name");
}

TEST_CASE("A code belongs to a person who is there") {
  CHECK(setCode(staffed(), "abcdefghijklm:3", {}).error().code == ErrorCode::notFound);
  const auto drafts = setCode(staffed(), "abcdefghijklm:2", {});
  REQUIRE(drafts);
  CHECK(drafts->front().about == "abcdefghijklm:2");
}

TEST_CASE("Nothing is locked until somebody has a code") {
  season::Views views = staffed();
  CHECK_FALSE(hasCodes(views));
  views.people.begin()->second.code.emplace();
  CHECK(hasCodes(views));
}

TEST_CASE("An admin gives a role and the mark of a health care professional, and the last admin stays one") {
  season::Views views = staffed();
  views.people["abcdefghijklm:3"] = {"abcdefghijklm:3", "Silvio Kestrelby", "SK", "helper"};
  const auto drafts = changePerson(views, "abcdefghijklm:3", {"staff", true});
  REQUIRE(drafts);
  CHECK(std::get<PersonChanged>(drafts->front().body).role == "staff");
  CHECK(std::get<PersonChanged>(drafts->front().body).isPractitioner == true);
  CHECK(changePerson(views, "abcdefghijklm:3", {"helper", false})->empty());
  CHECK(changePerson(views, "abcdefghijklm:3", {"coach", {}}).error().code == ErrorCode::unknownWord);
  CHECK(changePerson(views, "abcdefghijklm:2", {"staff", {}}).error().detail == rule::kLastAdmin);
  CHECK(changePerson(views, "abcdefghijklm:9", {}).error().code == ErrorCode::notFound);
}

TEST_CASE("Whom to call is 911 until the team says otherwise") {
  season::Views views;
  CHECK(setEmergency(views, {"112", ""}).error().code == ErrorCode::notFound);
  views.team.emplace();
  CHECK(views.team->emergency.number == "911");
  CHECK(setEmergency(views, {"911", ""})->empty());
  CHECK(setEmergency(views, {"", "gate 3"}).error().place == "number");
  CHECK(std::get<EmergencySet>(setEmergency(views, {"555 0100", "Gate 3 is unlocked"})->front().body).plan == "Gate 3 is unlocked");
}
