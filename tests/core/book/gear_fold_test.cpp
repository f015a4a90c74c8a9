// SPDX-License-Identifier: Apache-2.0
// Notices, parts, shelves and swaps in a Book: what is kept, taken back, and stands after the Book was closed and rebuilt.
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/acts_dock.h"
#include "core/season/notice.h"

using namespace snugline;
using namespace snugline::test;

namespace {

book::NoticeIssued noticeFor(const std::string& sheet, Day day) {
  book::NoticeIssued made{"clips may open in the cold", day, {}};
  made.scope.sheet = sheet;
  return made;
}
void checkStands(book::Book& book) {
  const auto dump = must(book.dumpViews());
  CHECK(must(book.rebuild()).wasEqual);
  CHECK(must(book.dumpViews()) == dump);
}

}  // namespace

TEST_CASE("A notice holds its helmets until each is released by name, and undoing it releases none by itself") {
  World world;
  auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  const std::string sheet = book->views().unit(f.unit)->sheet;
  const auto ids = put(*book, must(book::issueNotice(book->views(), noticeFor(sheet, world.today()), world.today()))).ids;
  REQUIRE(book->views().team->notices.size() == 1);
  const season::NoticeRecord notice = book->views().team->notices.front();
  CHECK(notice.fact == ids.front());
  REQUIRE(book->views().unit(f.unit)->holds.size() == 1);
  const season::HoldRecord hold = book->views().unit(f.unit)->holds.front();
  CHECK(hold.notice == notice.fact);
  CHECK(season::noticeOf(book->views(), hold) != nullptr);
  CHECK(season::progressOf(book->views(), notice).worn == 1);
  checkStands(*book);
  put(*book, must(book::releaseHold(book->views(), f.unit, hold.fact, "clips replaced", world.today())));
  CHECK(book->views().unit(f.unit)->holds.empty());
  CHECK(season::progressOf(book->views(), notice).held == 0);
  takeOut(*book, ids.front());
  CHECK(book->views().team->notices.empty());
  checkStands(*book);
}

TEST_CASE("Notice, lot, shelf and new parts stand after the Book was closed and opened") {
  World world;
  std::string dump;
  {
    const auto book = world.create();
    const Fitting f = pairUp(*book, world.today());
    put(*book, must(book::changePart(book->views(), f.unit, gear::UnitPart::chinStrap, "new one")));
    put(*book, must(book::changePart(book->views(), f.unit, gear::UnitPart::jawBladder, "")));
    put(*book, must(book::move(book->views(), f.unit, "shelf", "Shelf 3")));
    const std::string sheet = book->views().unit(f.unit)->sheet;
    put(*book, must(book::issueNotice(book->views(), noticeFor(sheet, world.today()), world.today())));
    const season::AthleteRecord& athlete = *book->views().athlete(f.athlete);
    CHECK(athlete.changedParts == std::vector<std::string>{"chin-strap", "jaw-bladder"});
    CHECK(athlete.partMarks.has(fit::Mark::nape));  // of the strap
    CHECK(athlete.partMarks.has(fit::Mark::ears));  // of the jaw
    CHECK_FALSE(athlete.partMarks.has(fit::Mark::sides));
    CHECK(book->views().unit(f.unit)->shelf == "Shelf 3");
    dump = must(book->dumpViews());
  }
  const auto book = world.open();
  CHECK(must(book->dumpViews()) == dump);
  checkStands(*book);
}

TEST_CASE("A part changed before parts were told apart keeps all nine marks open, whatever comes after it") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  put(*book, must(book::changePart(book->views(), f.unit, std::string("chin strap"), "worn")));
  put(*book, must(book::changePart(book->views(), f.unit, gear::UnitPart::jawPads, "")));
  const season::AthleteRecord& athlete = *book->views().athlete(f.athlete);
  CHECK(athlete.partChanged);
  CHECK(athlete.partMarks == fit::MarkSet{});
}

TEST_CASE("A swap is one append that leads into the nine marks of the new helmet") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  book::Arrival arrival;
  arrival.tag = must(gear::parseTag("A1-M-00002", world.today()));
  arrival.sheet = book->views().unit(f.unit)->sheet;
  arrival.size = book->views().unit(f.unit)->size;
  arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
  for (auto& point : arrival.points) point.state = gear::PointState::sound;
  const std::string spare = put(*book, must(book::takeIn(book->views(), arrival, world.today()))).ids.front();
  const auto done =
      put(*book, must(book::swapHelmet(book->views(), {f.athlete, spare, "chin-strap", "snap gone", false}, world.clock.now())));
  const season::AthleteRecord& athlete = *book->views().athlete(f.athlete);
  CHECK(athlete.units == std::vector<std::string>{spare});
  CHECK(athlete.openCheck == done.ids.back());
  CHECK(book->views().unit(f.unit)->holds.size() == 1);
  CHECK(book->views().unit(f.unit)->athletes.empty());
  REQUIRE(book->views().openCheck(athlete.openCheck) != nullptr);
  CHECK(book->views().openCheck(athlete.openCheck)->kind == fit::CheckKind::first);
  checkStands(*book);
}
