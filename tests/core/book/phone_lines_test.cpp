// SPDX-License-Identifier: Apache-2.0
// Lines of an athlete's own phone that come in with those of other devices, not by its own file: held to what a phone may say.
#include SNUGLINE_CATCH_HEADER

#include "book_world.h"
#include "core/book/phone_exchange.h"

using namespace snugline;
using namespace snugline::test;

namespace {

struct Pair {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  Fitting fitting = pairUp(*book, world.today());
  std::string other = put(*book, must(book::addAthlete(book->views(), {"12", "Marsh", "Teo", 2009}))).ids.front();

  book::JoinCode join() {
    std::string own;
    for (const auto& device : must(book->info()).devices)
      if (device.isOwn) own = device.device;
    auto made = must(book::invite(book->views(), fitting.athlete, {1, 2, 3, 4, 5, 6, 7, 8}, own, book->highestOrder()));
    put(*book, made.drafts);
    return made.code;
  }
  static season::SaidRecord jawTight() {
    season::SaidRecord said;
    said.where = fit::Mark::jaw;
    said.side = fit::Side::left;
    return said;
  }
};

}  // namespace

TEST_CASE(
    "Lines of a phone that say more than a phone may are refused by whatever road they come, and nothing that came with them is kept") {
  Pair pair;
  const auto code = pair.join();
  const std::string device = book::deviceOf(must(book::phoneKey(code)).publicKey);
  book::Said own;
  own.said = Pair::jawTight();
  const auto line = [&](std::uint64_t n, const std::string& about, book::Body body, const std::string& who = {}) {
    book::Fact fact;
    fact.device = device;
    fact.n = n;
    fact.order = code.order + 1 + static_cast<std::int64_t>(n);
    fact.about = about;
    fact.who = who;
    fact.body = std::move(body);
    return must(book::encode(fact));
  };
  const std::string good = line(1, pair.fitting.athlete, own);
  book::Said ofHelmet = own, ofCheck = own;
  ofHelmet.said.unit = pair.fitting.unit;
  ofCheck.check = "x:1";
  const std::vector<std::string> bad{line(2, pair.other, own), line(2, pair.fitting.unit, book::UnitHeld{"other", "planted", false}),
                                     line(2, pair.fitting.athlete, ofHelmet), line(2, pair.fitting.athlete, ofCheck),
                                     line(2, pair.fitting.athlete, own, "x:1")};
  const std::string before = must(pair.book->dumpViews());
  const auto facts = must(pair.book->info()).facts;
  const auto isRefused = [&](const std::vector<std::string>& lines) {
    const auto taken = pair.book->receive(lines);
    REQUIRE_FALSE(taken);
    CHECK(taken.error().code == ErrorCode::notAllowed);
    CHECK(taken.error().detail == book::rule::kPhoneOther);
    CHECK(taken.error().place == device + ":2");
    CHECK(must(pair.book->dumpViews()) == before);
    CHECK(must(pair.book->info()).facts == facts);
  };
  for (const std::string& each : bad) isRefused({good, each});

  // Also once it was let go, and after the Book was opened again.
  put(*pair.book, must(book::letGo(pair.book->views(), pair.fitting.athlete)));
  pair.book.reset();
  pair.book = pair.world.open();
  const auto again = pair.book->receive({good, bad.front()});
  REQUIRE_FALSE(again);
  CHECK(again.error().detail == book::rule::kPhoneOther);

  // What it may say still comes in, and another number with the same say is a fork as of any device.
  CHECK(must(pair.book->receive({good})).ids.size() == 1);
  CHECK(pair.book->views().athlete(pair.fitting.athlete)->said.size() == 1);
  const auto fork = pair.book->receive({line(1, pair.other, own)});
  REQUIRE_FALSE(fork);
  CHECK(fork.error().detail == book::rule::kPhoneOther);
}

TEST_CASE("A phone that joins by the same lines that bring what it wrote is held to it, in any order of the lines") {
  Pair pair;
  const auto code = pair.join();
  const std::string device = book::deviceOf(must(book::phoneKey(code)).publicKey);
  std::vector<std::string> staff;
  book::Book::Cursor cursor;
  must(pair.book->read(cursor, 1000, [&](book::Fact&& fact, bool) { staff.push_back(must(book::encode(fact))); }));
  book::Fact planted;
  planted.device = device;
  planted.n = 1;
  planted.order = code.order + 1;
  planted.about = pair.fitting.unit;
  planted.body = book::UnitHeld{"other", "planted", false};
  const std::string bad = must(book::encode(planted));
  for (const bool isFirst : {true, false}) {
    World elsewhere;
    elsewhere.keys = ports::MemoryKeys(9);
    auto book = elsewhere.create();
    const auto facts = must(book->info()).facts;
    std::vector<std::string> lines = staff;
    lines.insert(isFirst ? lines.begin() : lines.end(), bad);
    const auto taken = book->receive(lines);
    REQUIRE_FALSE(taken);
    CHECK(taken.error().detail == book::rule::kPhoneOther);
    CHECK(must(book->info()).facts == facts);
    CHECK(must(book->receive(staff)).ids.size() == staff.size());
    CHECK_FALSE(book->receive({bad}));
  }
}
