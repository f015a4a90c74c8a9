// SPDX-License-Identifier: Apache-2.0
// Taking back: whole acts in one append, and nothing that something rests on (ours).
#include SNUGLINE_CATCH_HEADER

#include "core/book/undo.h"
#include "book_world.h"
#include "core/book/acts_dock.h"
#include "core/book/fold.h"

using namespace snugline;
using namespace snugline::test;

namespace {

// Two athletes; the first wears a helmet, a spare stands on the shelf. Each act comes a minute after the one before.
struct Room {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  Fitting first = pairUp(*book, world.today());
  std::string spare;

  Room() {
    book::Arrival arrival;
    arrival.tag = must(gear::parseTag("HC-002", world.today()));
    arrival.sheet = first.sheet;
    arrival.size = book->views().unit(first.unit)->size;
    arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
    for (auto& point : arrival.points) point.state = gear::PointState::sound;
    arrival.isGroup = true;
    spare = act(book::takeIn(book->views(), arrival, world.today())).ids.front();
  }
  book::Appended act(Result<book::Drafts>&& drafts) {
    world.clock.stepMs(60'000);
    return put(*book, must(std::move(drafts)));
  }
  book::Appended swap() { return act(book::swapHelmet(book->views(), {first.athlete, spare, "shell", "", false}, world.clock.now())); }
  // What refuses: the kind of the later fact.
  std::string restsOn(const std::vector<std::string>& facts) {
    const auto outcome = book->correct(facts);
    if (outcome) return "nothing";
    CHECK(outcome.error().code == ErrorCode::notAllowed);
    CHECK(outcome.error().detail == book::rule::kRestsOnIt);
    return outcome.error().place;
  }
  std::string dump() { return must(book->dumpViews()); }
};

}  // namespace

TEST_CASE("A swap is taken back whole in one append: nobody is left with two helmets, or with none") {
  Room room;
  const std::string before = room.dump();
  const book::Appended swapped = room.swap();
  REQUIRE(swapped.ids.size() > 3);
  CHECK(room.book->views().athlete(room.first.athlete)->units == std::vector{room.spare});
  const book::Appended undone = must(room.book->correct(swapped.ids));
  CHECK(undone.ids.size() == swapped.ids.size());
  CHECK(room.dump() == before);
  CHECK(must(room.book->rebuild()).wasEqual);
  CHECK(room.dump() == before);
}

TEST_CASE("Half of a swap is not taken back, nor a swap that another followed") {
  Room room;
  const book::Appended swapped = room.swap();
  CHECK(room.restsOn({swapped.ids.front()}) != "nothing");
  answer(*room.book, {{}, {}, {}, room.book->views().athlete(room.first.athlete)->openCheck}, fit::HairSeen{true}, room.world.today());
  const std::string before = room.dump();
  CHECK(room.restsOn(swapped.ids) == "hair-seen");
  CHECK(room.dump() == before);
}

TEST_CASE("What was taken back already is passed over, so that an undo cut short is finished by undoing again") {
  Room room;
  const std::string before = room.dump();
  const book::Appended swapped = room.swap();
  must(room.book->correct({swapped.ids.back()}));
  must(room.book->correct(swapped.ids));
  CHECK(room.dump() == before);
  CHECK(must(room.book->correct(swapped.ids)).ids.empty());
}

TEST_CASE("One id that nobody knows, and nothing of the list is taken back") {
  Room room;
  const book::Appended swapped = room.swap();
  const std::string before = room.dump();
  CHECK(room.book->correct({swapped.ids.back(), "zzzzzzzzzzzzz:1"}).error().code == ErrorCode::notFound);
  CHECK(room.dump() == before);
}

TEST_CASE("An athlete goes with the roster that brought him, but not once he was measured or has a helmet") {
  Room room;
  const auto added = put(*room.book, {{"", book::AthleteAdded{"44", "Boyd", "Kit", 2009}}, {"", book::AthleteAdded{"45", "Tamm", "", {}}}});
  const std::string boyd = added.ids.front();
  const std::string before = room.dump();
  const auto measured = room.act(book::readTape(room.book->views(), boyd, {Length::millimetres(575)}));
  CHECK(room.restsOn(added.ids) == "tape-read");
  must(room.book->correct(measured.ids));
  CHECK(room.dump() == before);
  must(room.book->correct(added.ids));
  CHECK(room.book->views().athlete(boyd) == nullptr);
}

TEST_CASE("The last reading of a tape is taken back and the readings before it stand again") {
  Room room;
  const auto one = room.act(book::readTape(room.book->views(), room.first.athlete, {Length::millimetres(575)}));
  const std::string before = room.dump();
  const auto two = room.act(book::readTape(room.book->views(), room.first.athlete, {Length::millimetres(540)}, one.ids.front()));
  REQUIRE(two.ids.size() == 1);
  REQUIRE(room.book->views().athlete(room.first.athlete)->tapes.size() == 1);
  CHECK(room.book->views().athlete(room.first.athlete)->tapes.back().readings.size() == 2);
  must(room.book->correct(two.ids));
  CHECK(room.book->views().athlete(room.first.athlete)->tapes.back().readings == std::vector{Length::millimetres(575)});
  CHECK(room.dump() == before);
  CHECK(must(room.book->rebuild()).wasEqual);
}

TEST_CASE("A hold is taken back while the helmet stands where it stood, and not once it went on; released before, it stays gone") {
  Room room;
  const auto held = room.act(book::hold(room.book->views(), room.spare, "shell", "crack", false));
  const auto moved = room.act(book::move(room.book->views(), room.spare, "repair", "Bench", "crack"));
  CHECK(room.restsOn(held.ids) == "unit-moved");
  must(room.book->correct(moved.ids));
  must(room.book->correct(held.ids));
  CHECK(room.book->views().unit(room.spare)->holds.empty());
  const auto strap = room.act(book::hold(room.book->views(), room.spare, "other", "lent out", false));
  room.act(book::releaseHold(room.book->views(), room.spare, strap.ids.front(), "replaced", room.world.today()));
  must(room.book->correct(strap.ids));
  CHECK(room.book->views().unit(room.spare)->holds.empty());
  CHECK(must(room.book->rebuild()).wasEqual);
}

TEST_CASE("An ended check opens again by undo, but not beside a check begun since") {
  Room room;
  beginCheck(*room.book, room.first, room.world.today());
  answer(*room.book, room.first, fit::HairSeen{true}, room.world.today());
  const std::string before = room.dump();
  const auto ended = room.act(book::endCheck(room.book->views(), room.first.check, room.world.clock.now()));
  must(room.book->correct(ended.ids));
  CHECK(room.dump() == before);
  const auto again = room.act(book::endCheck(room.book->views(), room.first.check, room.world.clock.now()));
  const std::string old = room.first.check;
  beginCheck(*room.book, room.first, room.world.today());
  CHECK(room.restsOn(again.ids) == "check-begun");
  CHECK(room.book->views().athlete(room.first.athlete)->openCheck != old);
}

TEST_CASE("A model sheet is taken back until a helmet was taken in under it") {
  Room room;
  std::string bytes = sheetBytes("brant-b2");
  const auto adopted = put(*room.book, {{"", book::SheetAdopted{bytes, {}}}});
  const std::string hash = book::hashOf(bytes);
  const auto taken = put(*room.book, {{"", book::UnitReceived{"B-1", "plain:B-1", hash, "M", ""}}});
  CHECK(room.restsOn(adopted.ids) == "unit-received");
  must(room.book->correct(taken.ids));
  must(room.book->correct(adopted.ids));
  CHECK(room.book->views().sheet(hash) == nullptr);
}

TEST_CASE("A change that waits while another is taken back stands: only what rests on it holds an act") {
  Room room;
  const auto renamed = put(*room.book, {{room.first.athlete, book::AthleteChanged{"08", {}, {}, {}, {}}}});
  room.act(book::readTape(room.book->views(), room.first.athlete, {Length::millimetres(575)}));
  must(room.book->correct(renamed.ids));
  CHECK(room.book->views().athlete(room.first.athlete)->jersey == "07");
  CHECK(room.book->views().athlete(room.first.athlete)->tapes.size() == 1);
}
