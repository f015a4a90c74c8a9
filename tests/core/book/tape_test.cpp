// SPDX-License-Identifier: Apache-2.0
// Readings of a head through a whole Book: which belong together, which is questioned, what was set aside and counts again.
#include SNUGLINE_CATCH_HEADER
#include "core/season/tape.h"
#include "core/season/match_table.h"
#include "core/season/spares.h"
#include "tests/core/book/book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

struct HeadWorld : World {
  std::unique_ptr<book::Book> book = create();
  Fitting f = pairUp(*book, today());

  std::string read(double mm, const std::string& with = {}) {
    return put(*book, must(book::readTape(book->views(), f.athlete, {Length::millimetres(mm)}, with))).ids.front();
  }
  std::string setAside(const std::string& reading, const std::string& reason = "misread") {
    return put(*book, must(book::setReadingAside(book->views(), f.athlete, reading, reason))).ids.front();
  }
  [[nodiscard]] const season::AthleteRecord& athlete() const { return *book->views().athlete(f.athlete); }
  [[nodiscard]] const season::TapeRecord& tape() const { return athlete().tapes.back(); }
  [[nodiscard]] std::optional<season::ReadingDoubt> doubt() const { return season::doubtOf(athlete(), tape(), tape().readings.size() - 1); }
};

std::vector<Length> mm(std::initializer_list<double> all) {
  std::vector<Length> out;
  for (const double v : all) out.push_back(Length::millimetres(v));
  return out;
}

}  // namespace

TEST_CASE("Readings of one time belong together, each in a fact of its own") {
  HeadWorld world;
  const std::string first = world.read(560);
  world.read(562, first);
  CHECK(world.athlete().tapes.size() == 1);
  CHECK(world.tape().readings == mm({560, 562}));
  CHECK(world.tape().stamp.fact == first);
  world.read(561);
  CHECK(world.athlete().tapes.size() == 2);
}

TEST_CASE("A reading set aside counts for nothing, says why, and counts again when that is taken back") {
  HeadWorld world;
  const std::string first = world.read(560);
  const std::string second = world.read(590, first);
  world.read(561, first);
  CHECK(season::isReadingWanted(world.tape()));
  CHECK(season::oddReading(world.tape()) == 1U);
  const std::string aside = world.setAside(world.tape().names.at(1), "typed");
  CHECK(world.tape().readings == mm({560, 561}));
  REQUIRE(world.tape().aside.size() == 1);
  CHECK(world.tape().aside.front().reading == Length::millimetres(590));
  CHECK(world.tape().aside.front().reason == "typed");
  CHECK_FALSE(season::isReadingWanted(world.tape()));
  const season::AthleteRecord before = world.athlete();
  world.book.reset();
  world.book = world.open();
  CHECK(world.athlete() == before);
  must(world.book->correct({aside}));
  CHECK(world.tape().readings == mm({560, 590, 561}));
  CHECK(world.tape().aside.empty());
}

TEST_CASE("Only a reading that is there can be set aside, and only for a reason that is known") {
  HeadWorld world;
  world.read(560);
  const std::string name = world.tape().names.front();
  CHECK(book::setReadingAside(world.book->views(), world.f.athlete, "d:1/0", "misread").error().code == ErrorCode::notFound);
  CHECK(book::setReadingAside(world.book->views(), world.f.athlete, name, "because").error().code == ErrorCode::unknownWord);
  world.setAside(name);
  CHECK(book::setReadingAside(world.book->views(), world.f.athlete, name, "misread").error().code == ErrorCode::notFound);
  CHECK(season::lastTape(world.athlete()) == nullptr);
  CHECK(season::tapeState(world.athlete(), world.today()) == season::TapeState::missing);
}

TEST_CASE("While another reading is asked for the head has no size for anybody, and afterwards it has") {
  HeadWorld world;
  const std::string first = world.read(560);
  world.read(570, first);
  CHECK(season::tapeState(world.athlete(), world.today()) == season::TapeState::open);
  const auto spares = must(season::sparesFor(world.book->views(), world.f.athlete, {}, world.today()));
  CHECK(spares.tape == season::TapeState::open);
  for (const season::Spare& each : spares.offers) CHECK_FALSE(each.odds.has_value());
  world.read(561, first);
  world.setAside(world.tape().names.at(1));
  CHECK(season::tapeState(world.athlete(), world.today()) == season::TapeState::fresh);
}

TEST_CASE("A reading more than 10 mm from the last one of that head is questioned at once, whether long ago or a moment") {
  HeadWorld world;
  world.read(560);
  CHECK_FALSE(world.doubt());
  const std::string again = world.read(571);
  REQUIRE(world.doubt());
  CHECK(world.doubt()->last == Length::millimetres(560));
  world.read(559, again);
  REQUIRE(world.doubt());
  CHECK(world.doubt()->last == Length::millimetres(571));
  world.read(570, again);  // near the first one of this time, whatever lies between
  CHECK_FALSE(world.doubt());
  world.read(549);
  CHECK(world.doubt());
}

// Growth: Fourth Dutch growth study 1997, boys (R package mice): medians at 11 and 18 lie 35 mm apart. By hand: 17 and 18 in the years
// to come, so that from October 2026 to October 2027 one year of 5 mm is allowed for, and a head never shrinks.
TEST_CASE("What a head of that age grows meanwhile is allowed for, and only upwards") {
  HeadWorld world;
  world.read(560);
  world.clock.stepDays(365);
  world.read(574.9);
  CHECK_FALSE(world.doubt());
  HeadWorld more;
  more.read(560);
  more.clock.stepDays(365);
  more.read(575.5);
  CHECK(more.doubt());
  HeadWorld less;
  less.read(560);
  less.clock.stepDays(365);
  less.read(549.5);
  CHECK(less.doubt());
}

// R package mice, `boys`: one boy of 14.53 years has 65.0 cm.
TEST_CASE("A head that hardly anybody of that age has is questioned though it is the first reading") {
  HeadWorld world;
  world.read(650);
  REQUIRE(world.doubt());
  CHECK(world.doubt()->ofAge == fit::HeadDoubt::tooLarge);
  CHECK_FALSE(world.doubt()->last);
}

TEST_CASE("Repeats that were set aside change nobody's error") {
  HeadWorld world;
  for (int i = 0; i < 20; ++i) {
    const std::string first = world.read(560);
    world.read(564, first);
  }
  CHECK(season::readingError(world.book->views()) == Length{2828});
  const std::string first = world.read(560);
  world.read(569, first);
  CHECK(season::readingError(world.book->views()) > Length{2900});
  world.setAside(world.tape().names.at(1));
  CHECK(season::readingError(world.book->views()) == Length{2828});
}
