// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include <algorithm>

#include "book_world.h"
#include "core/book/whole_record.h"

using namespace snugline;
using namespace snugline::book;
using namespace snugline::test;

namespace {

bool holds(const std::vector<Fact>& facts, std::string_view kind) {
  return std::any_of(facts.begin(), facts.end(), [&](const Fact& fact) { return kindOf(fact.body) == kind; });
}

}  // namespace

TEST_CASE("The whole record holds every answer of the athlete's checks, in order and once") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  const std::string other = put(*book, must(addAthlete(book->views(), {"12", "Kestrel", "Bo", 2010}))).ids.front();
  fitWhole(*book, f, world.clock);
  const auto facts = must(wholeRecord(*book, f.athlete));
  for (const char* kind : {"athlete-added", "unit-paired", "check-begun", "hair-seen", "mark-seen", "check-ended"})
    CHECK(holds(facts, kind));
  for (std::size_t i = 1; i < facts.size(); ++i) CHECK(facts[i - 1].order < facts[i].order);
  CHECK(must(wholeRecord(*book, other)).size() == 1);
}

TEST_CASE("What somebody said about how they feel stays out of exports, and the rest stays in") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  season::SaidRecord tight, unwell;
  tight.where = fit::Mark::jaw;
  unwell.isUnwell = true;
  put(*book, must(say(book->views(), f.athlete, tight)));
  const std::string hit = put(*book, must(say(book->views(), f.athlete, unwell))).ids.front();
  put(*book, must(followSaid(book->views(), f.athlete, hit, false)));
  book->setPerson(put(*book, {{"", PersonAdded{"Oda Wexcombe", "OW", "admin", true}}}).ids.front());
  put(*book, must(acknowledge(book->views(), f.athlete, hit, true, "")));
  const auto all = must(wholeRecord(*book, f.athlete));
  const auto out = forExport(all);
  CHECK(out.size() == all.size() - 3);
  CHECK(holds(out, "said"));
  CHECK_FALSE(holds(out, "said-followed"));
  CHECK_FALSE(holds(out, "said-acknowledged"));
}

TEST_CASE("A name kept back is in none of the facts handed out") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  AthleteChanged renamed;
  renamed.family = "Marrowby";
  put(*book, must(changeAthlete(book->views(), f.athlete, renamed)));
  auto facts = must(wholeRecord(*book, f.athlete));
  keepNameBack(facts, f.athlete);
  for (const Fact& fact : facts) {
    const std::string line = must(encode(fact));
    CHECK(line.find("Marrow") == std::string::npos);
    CHECK(line.find("Ash") == std::string::npos);
  }
}
