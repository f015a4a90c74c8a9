// SPDX-License-Identifier: Apache-2.0
// Lanes at past times, read from the log, against what the board said when it was that time.
#include SNUGLINE_CATCH_HEADER
#include "core/book/past_lanes.h"
#include "book_world.h"
#include "core/season/board.h"

using namespace snugline;
using namespace snugline::test;

namespace {

constexpr std::int64_t kDayMs = 24LL * 3600 * 1000;

std::vector<season::LaneCount> inSteps(book::Book& book, const std::vector<Instant>& times, std::size_t facts) {
  book::PastLanes lanes(times);
  while (!must(lanes.step(book, facts))) continue;
  return lanes.counts();
}

// Three athletes over four weeks; each is fitted, looked at or held at another time. Says what the board said at each end of a week.
struct Weeks {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  std::vector<Instant> times;
  std::vector<season::LaneCount> seen;
  std::string hold;

  void letPass(std::int64_t ms) { world.clock.set(Instant{world.clock.now().ms + ms, world.clock.now().offsetMinutes}); }
  void endWeek() {
    letPass(7 * kDayMs);
    times.push_back(world.clock.now());
    seen.push_back(season::lanesAt(book->views(), times.back()));
    letPass(1);
  }
  Weeks() {
    Fitting first = pairUp(*book, world.today(), "07", "HC-001");
    fitWhole(*book, first, world.clock);
    endWeek();
    const Fitting second = pairUp(*book, world.today(), "12", "HC-002");
    hold = put(*book, must(book::hold(book->views(), first.unit, "other", "clip is loose", true))).ids.front();
    endWeek();
    put(*book, must(book::addAthlete(book->views(), {"44", "Vale", "Rowan", 2009})));
    put(*book, must(book::unpair(book->views(), second.athlete, second.unit, "too tight")));
    endWeek();
    put(*book, must(book::releaseHold(book->views(), first.unit, hold, "looked at again", world.today())));
    endWeek();
  }
};

}  // namespace

TEST_CASE("Past lanes are what the board said then, however small the steps") {
  Weeks weeks;
  auto all = season::LaneCount{}.helmets;
  for (const season::LaneCount& count : weeks.seen) {
    for (std::size_t lane = 0; lane < all.size(); ++lane) all[lane] += count.helmets[lane];
  }
  CHECK(all[static_cast<std::size_t>(season::Lane::doNotWear)] > 0);  // else there is nothing to tell apart
  CHECK(weeks.seen.back().bare == 2);
  for (const std::size_t facts : {std::size_t{1}, std::size_t{7}, std::size_t{100000}})
    CHECK(inSteps(*weeks.book, weeks.times, facts) == weeks.seen);
}

TEST_CASE("What was taken back since is not counted in past lanes") {
  Weeks weeks;
  takeOut(*weeks.book, weeks.hold);
  const auto counts = inSteps(*weeks.book, weeks.times, 5);
  REQUIRE(counts.size() == weeks.seen.size());
  CHECK(counts.front() == weeks.seen.front());
  const auto held = static_cast<std::size_t>(season::Lane::doNotWear);
  CHECK(counts[1].helmets[held] == weeks.seen[1].helmets[held] - 1);
  CHECK(counts.back() == weeks.seen.back());
}

TEST_CASE("A reading cursor goes through the log once, in order, and says what was taken back") {
  Weeks weeks;
  takeOut(*weeks.book, weeks.hold);
  book::Book::Cursor cursor;
  std::vector<std::string> out;
  std::int64_t order = 0;
  std::uint64_t facts = 0;
  const auto visit = [&](book::Fact&& fact, bool counts) {
    CHECK(fact.order > order);
    order = fact.order;
    ++facts;
    if (!counts) out.push_back(fact.id());
  };
  while (must(weeks.book->read(cursor, 3, visit))) continue;
  CHECK(facts == must(weeks.book->info()).facts);
  CHECK(out == std::vector<std::string>{weeks.hold});
  CHECK_FALSE(must(weeks.book->read(cursor, 3, visit)));
}
