// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/book/people.h"

using namespace snugline;
using namespace snugline::book;

namespace {

season::Views staffed() {
  season::Views views;
  views.people["abcdefghijklm:2"] = {"abcdefghijklm:2", "Maren Tollgate", "MT", "trainer"};
  return views;
}

}  // namespace

TEST_CASE("The first person of a Book is a trainer, whatever was asked") {
  const auto first = addPerson({}, {"Silvio Kestrelby", "SK", "staff"});
  REQUIRE(first);
  CHECK(std::get<PersonAdded>(first->front().body).role == kTrainer);
  const auto second = addPerson(staffed(), {"Silvio Kestrelby", "SK", "staff"});
  REQUIRE(second);
  CHECK(std::get<PersonAdded>(second->front().body).role == kStaff);
}

TEST_CASE("A person without a name, with too many initials or another role is refused and says which") {
  CHECK(addPerson({}, {"", "MT", "trainer"}).error().place == "name");
  CHECK(addPerson({}, {"Maren Tollgate", "", "trainer"}).error().place == "initials");
  CHECK(addPerson({}, {"Maren Tollgate", "MTXY", "trainer"}).error().place == "initials");
  CHECK(addPerson({}, {"Maren Tollgate", "MT", "coach"}).error().code == ErrorCode::unknownWord);
  CHECK(addPerson({}, {"Maren\nTollgate", "MT", "trainer"}).error().place == "name");
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
