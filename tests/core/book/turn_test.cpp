// SPDX-License-Identifier: Apache-2.0
// The turn of a season in a Book: helmets handed in, the season closed and opened again, the next one, what the board says in between, and
// past seasons read from the log.
#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/acts_season.h"
#include "core/book/past_seasons.h"
#include "core/season/board.h"
#include "core/season/standing.h"

using namespace snugline;
using namespace snugline::test;

namespace {

struct Turn {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  Fitting first, second;
  std::string team;

  Turn() {
    team = book->views().team->id;
    book::PracticeSet days;
    days.seasonStart = dayOf(2026, 8, 3);
    days.seasonEnd = dayOf(2026, 11, 20);
    put(*book, {{team, days}});
    first = pairUp(*book, world.today(), "07", "HC-001");
    fitWhole(*book, first, world.clock);
    second = pairUp(*book, world.today(), "12", "HC-002");
    fitWhole(*book, second, world.clock);
    goTo(dayOf(2026, 11, 24));
  }
  void goTo(Day day) { world.clock.set(instantAt(day, 930, -300)); }
  [[nodiscard]] const season::Views& views() const { return book->views(); }
  [[nodiscard]] const season::UnitRecord& unit(const Fitting& f) const { return *views().unit(f.unit); }
  [[nodiscard]] Result<book::Drafts> handIn(const std::string& id, bool isBack = false) {
    const season::ReturnRecord returned{std::string(season::kByRecertifier), "recertified", "list 12", true, {}};
    return book::handIn(views(), {id, {}, isBack ? std::optional(returned) : std::nullopt}, world.clock.now());
  }
  [[nodiscard]] season::DueRow row(const Fitting& f) {
    return season::rowOf(views(), *views().athlete(f.athlete), {world.clock.now()}, {});
  }
  void close() { put(*book, must(book::closeSeason(views(), world.today()))); }
  book::NextSeason next{"2027", dayOf(2027, 8, 2), dayOf(2027, 11, 19), {}};
  [[nodiscard]] std::vector<book::PastSeason> past(std::size_t facts = 1000) {
    book::PastSeasons seasons;
    while (!must(seasons.step(*book, facts))) continue;
    return seasons.seasons();
  }
  void checkStands() {
    const auto dump = must(book->dumpViews());
    CHECK(must(book->rebuild()).wasEqual);
    CHECK(must(book->dumpViews()) == dump);
  }
};

std::vector<season::DueKind> kindsIn(const season::DueRow& row) {
  std::vector<season::DueKind> kinds;
  for (const auto& reason : row.reasons) kinds.push_back(reason.kind);
  return kinds;
}
std::string refusal(const Result<book::Drafts>& drafts) {
  if (drafts) return "nothing refused";
  return drafts.error().code == ErrorCode::notAllowed ? drafts.error().detail : drafts.error().place;
}

}  // namespace

TEST_CASE("A helmet handed in leaves its athlete in one append, and its tag seen twice counts once") {
  Turn turn;
  CHECK(season::turnCount(turn.views()) == season::TurnCount{0, 2, 0, 0, 0});
  const auto once = must(turn.handIn(turn.first.unit));
  CHECK(once.size() == 1);
  put(*turn.book, once);
  CHECK(turn.views().athlete(turn.first.athlete)->units.empty());
  CHECK(season::isCollected(turn.unit(turn.first), "2026"));
  CHECK(must(turn.handIn(turn.first.unit)).empty());
  CHECK(season::turnCount(turn.views()) == season::TurnCount{1, 1, 0, 0, 0});
  const auto missing = season::missingUnits(turn.views());
  REQUIRE(missing.size() == 1);
  CHECK(missing.front().athlete->jersey == "12");
  // Given out again it is to come back again.
  put(*turn.book, must(book::pair(turn.views(), turn.first.athlete, turn.first.unit, turn.world.today())));
  CHECK(season::missingUnits(turn.views()).size() == 2);
  CHECK(must(turn.handIn(turn.first.unit)).size() == 1);
  turn.checkStands();
}

TEST_CASE("Handing in ends the check that is open in the helmet and takes its holds into our hands") {
  Turn turn;
  beginCheck(*turn.book, turn.first, turn.world.today(), fit::CheckKind::look);
  put(*turn.book, must(book::hold(turn.views(), turn.first.unit, "other", "clip is loose", true)));
  season::SaidRecord said;
  said.unit = turn.second.unit;
  said.isBroken = true;
  said.feels = fit::Feels::broke;
  put(*turn.book, must(book::say(turn.views(), turn.second.athlete, said)));
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  put(*turn.book, must(turn.handIn(turn.second.unit)));
  CHECK(turn.views().athlete(turn.first.athlete)->openCheck.empty());
  CHECK(turn.views().athlete(turn.first.athlete)->checks.back().verdict == fit::Verdict::unfinished);
  REQUIRE(turn.unit(turn.first).holds.size() == 1);
  CHECK_FALSE(season::isOut(turn.unit(turn.first)));
  CHECK(turn.unit(turn.first).holds.front().what == "clip is loose");
  REQUIRE(turn.unit(turn.second).holds.size() == 1);
  CHECK(turn.unit(turn.second).holds.front().reason == "broken");
  turn.checkStands();
}

TEST_CASE("A helmet that is away is asked about, a lost one comes to light, a retired one is refused") {
  Turn turn;
  put(*turn.book, must(book::move(turn.views(), turn.first.unit, "sent-out", "recertification")));
  CHECK(season::turnCount(turn.views()) == season::TurnCount{0, 1, 0, 1, 0});
  CHECK(refusal(turn.handIn(turn.first.unit)) == book::rule::kReturnUnsaid);
  put(*turn.book, must(turn.handIn(turn.first.unit, true)));
  CHECK(turn.unit(turn.first).place == season::UnitPlace::shelf);
  CHECK_FALSE(turn.unit(turn.first).isInService);  // back: everything is open again
  CHECK(season::isCollected(turn.unit(turn.first), "2026"));
  put(*turn.book, must(book::move(turn.views(), turn.second.unit, "lost", {}, "not handed in")));
  CHECK(season::missingUnits(turn.views()).empty());
  CHECK(season::turnCount(turn.views()).lost == 1);
  put(*turn.book, must(turn.handIn(turn.second.unit)));
  CHECK(turn.unit(turn.second).place == season::UnitPlace::shelf);
  put(*turn.book, must(book::move(turn.views(), turn.second.unit, "retired", {})));
  CHECK(refusal(turn.handIn(turn.second.unit)) == book::rule::kUnitRetired);
  CHECK(refusal(turn.handIn("nobody:1")) == "unit nobody:1");
  CHECK(refusal(book::handIn(turn.views(), {turn.first.unit, std::string(81, 'x')}, turn.world.clock.now())) == "where");
}

TEST_CASE("A tag that the Book does not know can be handed in as a helmet on hold") {
  Turn turn;
  const auto tag = must(gear::parseTag("XX-77", turn.world.today()));
  const auto ids = put(*turn.book, must(book::handInNew(turn.views(), tag, turn.world.today()))).ids;
  const season::UnitRecord* unit = turn.views().unit(ids.front());
  REQUIRE(unit != nullptr);
  CHECK(season::isCollected(*unit, "2026"));
  CHECK_FALSE(unit->holds.empty());
  CHECK(refusal(book::handInNew(turn.views(), tag, turn.world.today())) == "XX-77");
}

TEST_CASE("Closing names what is missing, cannot be done twice, and a correction opens the season again") {
  Turn turn;
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  CHECK(book::closingFact(turn.views()).error().detail == book::rule::kSeasonOpen);
  turn.close();
  const season::SeasonRecord* closed = season::between(turn.views());
  REQUIRE(closed != nullptr);
  CHECK(closed->missing == std::vector<std::string>{turn.second.unit});
  CHECK(closed->start == dayOf(2026, 8, 3));
  CHECK(closed->closed == dayOf(2026, 11, 24));
  CHECK(refusal(book::closeSeason(turn.views(), turn.world.today())) == book::rule::kAlreadyClosed);
  must(turn.book->correct({must(book::closingFact(turn.views()))}));
  CHECK(season::between(turn.views()) == nullptr);
  CHECK(season::isCollected(turn.unit(turn.first), "2026"));
  turn.checkStands();
}

TEST_CASE("Between two seasons nobody is asked for a helmet and no look is due, and a helmet still out stays visible") {
  Turn turn;
  turn.goTo(dayOf(2026, 11, 18));  // in season, weeks after the fit
  CHECK_FALSE(kindsIn(turn.row(turn.second)).empty());
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  CHECK(kindsIn(turn.row(turn.first)) == std::vector{season::DueKind::noUnit, season::DueKind::neverTaped});
  turn.close();
  turn.goTo(dayOf(2027, 4, 1));
  CHECK(turn.row(turn.first).reasons.empty());
  CHECK(turn.row(turn.first).lane == season::Lane::nothingDue);
  const season::DueRow out = turn.row(turn.second);
  REQUIRE(kindsIn(out) == std::vector{season::DueKind::stillOut});
  CHECK(out.lane == season::Lane::doNotWear);
  CHECK(out.reasons.front().text == "2026");
  // What the helmet itself calls for stays, and so does a word.
  put(*turn.book, must(book::hold(turn.views(), turn.second.unit, "shell", "crack", true)));
  CHECK(turn.row(turn.second).grade == season::Grade::stillWorn);
  season::SaidRecord said;
  said.where = fit::Mark::jaw;
  put(*turn.book, must(book::say(turn.views(), turn.first.athlete, said)));
  CHECK(kindsIn(turn.row(turn.first)) == std::vector{season::DueKind::wordOpen});
  CHECK(turn.row(turn.first).action == season::RowAction::athlete);  // there is nothing on the head to look at
}

TEST_CASE("In the next season every fit starts anew, also of a helmet that was kept over") {
  Turn turn;
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  turn.close();
  put(*turn.book, must(book::openSeason(turn.views(), turn.next)));
  CHECK(turn.views().team->season == "2027");
  CHECK(season::between(turn.views()) == nullptr);
  turn.goTo(dayOf(2027, 8, 3));
  put(*turn.book, must(book::readLabel(turn.views(), turn.first.unit, gear::Label{gear::LabelKind::recertification, 2027, std::nullopt, {}},
                                       turn.world.today())));
  put(*turn.book, must(book::pair(turn.views(), turn.first.athlete, turn.first.unit, turn.world.today())));
  for (const Fitting& f : {turn.first, turn.second}) {
    const auto kinds = kindsIn(turn.row(f));
    CHECK(std::find(kinds.begin(), kinds.end(), season::DueKind::neverFitted) != kinds.end());
    CHECK(book::kindDue(turn.views(), *turn.views().athlete(f.athlete)) == fit::CheckKind::first);
  }
  fitWhole(*turn.book, turn.first, turn.world.clock);
  const auto kinds = kindsIn(turn.row(turn.first));
  CHECK(std::find(kinds.begin(), kinds.end(), season::DueKind::neverFitted) == kinds.end());
  CHECK(season::missingUnits(turn.views()).size() == 2);  // of 2027: both are to come back again
  turn.checkStands();
}

TEST_CASE("The next season needs a name of its own and days in their order, and is opened with who leaves in one act") {
  Turn turn;
  CHECK(refusal(book::openSeason(turn.views(), turn.next)) == book::rule::kSeasonOpen);
  turn.close();
  const auto refuse = [&](auto change) {
    book::NextSeason next = turn.next;
    change(next);
    return refusal(book::openSeason(turn.views(), next));
  };
  CHECK(refuse([](auto& n) { n.name = "  "; }) == "season");
  CHECK(refuse([](auto& n) { n.name = std::string(81, '7'); }) == "season");
  CHECK(refuse([](auto& n) { n.name = " 2026 "; }) == book::rule::kSeasonTaken);
  CHECK(refuse([](auto& n) { std::swap(n.start, n.end); }) == "season end");
  CHECK(refuse([](auto& n) { n.end = n.start; }) == "season end");
  CHECK(refuse([](auto& n) { n.start.reset(); }) == "season start");
  CHECK(refuse([](auto& n) { n.end.reset(); }) == "season end");
  CHECK(refuse([](auto& n) { n.end = dayOf(2029, 11, 19); }) == "season days");
  CHECK(refuse([](auto& n) { n.start = dayOf(2026, 11, 20); }) == "season start");
  CHECK(refuse([](auto& n) { n.leaving = {"nobody:1"}; }) == "athlete nobody:1");
  turn.next.leaving = {turn.first.athlete, turn.first.athlete};
  const auto drafts = must(book::openSeason(turn.views(), turn.next));
  CHECK(drafts.size() == 2);
  const auto opened = put(*turn.book, drafts);
  CHECK_FALSE(turn.views().athlete(turn.first.athlete)->isOnRoster);
  CHECK(turn.views().team->seasonStart == dayOf(2027, 8, 2));
  must(turn.book->correct(opened.ids));
  CHECK(turn.views().team->season == "2026");
  CHECK(turn.views().athlete(turn.first.athlete)->isOnRoster);
  CHECK(season::between(turn.views()) != nullptr);
  // A name that was used two seasons ago is taken too.
  put(*turn.book, must(book::openSeason(turn.views(), turn.next)));
  turn.goTo(dayOf(2027, 11, 25));
  turn.close();
  CHECK(refuse([](auto& n) { n = {"2026", dayOf(2028, 8, 2), dayOf(2028, 11, 19), {}}; }) == book::rule::kSeasonTaken);
}

TEST_CASE("What is carried over is counted by state and by size, and what is open at the close is named") {
  Turn turn;
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  beginCheck(*turn.book, turn.second, turn.world.today(), fit::CheckKind::look);
  season::SaidRecord said;
  said.where = fit::Mark::jaw;
  put(*turn.book, must(book::say(turn.views(), turn.first.athlete, said)));
  const season::OpenAtTurn open = season::openAtTurn(turn.views());
  REQUIRE(open.helmets.size() == 1);
  CHECK(open.helmets.front()->jersey == "12");
  CHECK(open.checks == open.helmets);
  REQUIRE(open.words.size() == 1);
  CHECK(open.words.front()->jersey == "07");
  const season::Carry carry = season::carryOf(turn.views());
  CHECK(carry.units() == 2);
  CHECK(carry.byState[static_cast<std::size_t>(season::CarryState::ready)] == 1);
  CHECK(carry.byState[static_cast<std::size_t>(season::CarryState::withAthlete)] == 1);
  REQUIRE(carry.sizes.size() == 1);
  CHECK(carry.sizes.front().units == 2);
  put(*turn.book, must(book::move(turn.views(), turn.first.unit, "retired", {})));
  put(*turn.book, must(book::move(turn.views(), turn.second.unit, "lost", {})));
  CHECK(season::carryOf(turn.views()).units() == 1);
  CHECK(season::carryOf(turn.views()).sizes.empty());
}

TEST_CASE("Past seasons tell who had which helmet, what was missing and whether it turned up, however small the steps") {
  Turn turn;
  put(*turn.book, must(turn.handIn(turn.first.unit)));
  turn.close();
  turn.goTo(dayOf(2027, 1, 12));
  put(*turn.book, must(turn.handIn(turn.second.unit)));  // turns up in winter
  put(*turn.book, must(book::openSeason(turn.views(), turn.next)));
  turn.goTo(dayOf(2027, 8, 3));
  put(*turn.book, must(book::pair(turn.views(), turn.second.athlete, turn.first.unit, turn.world.today())));
  for (const std::size_t facts : {std::size_t{1}, std::size_t{7}, std::size_t{10000}}) {
    const auto past = turn.past(facts);
    REQUIRE(past.size() == 2);
    const book::PastSeason& old = past.front();
    CHECK(old.season == "2026");
    CHECK(old.closed == dayOf(2026, 11, 24));
    CHECK_FALSE(old.isOpen);
    CHECK(old.athletes() == 2);
    CHECK(old.helmets() == 2);
    CHECK(old.outcomes[static_cast<std::size_t>(fit::Verdict::fits)] == 2);
    CHECK(old.handedIn == 1);
    REQUIRE(old.pairs.size() == 2);
    CHECK(old.pairs[0].isHandedIn);
    CHECK(old.pairs[0].to == dayOf(2026, 11, 24));
    CHECK(old.pairs[0].checks == 1);
    CHECK_FALSE(old.pairs[1].to);
    REQUIRE(old.missing.size() == 1);
    CHECK(old.missing.front().unit == turn.second.unit);
    CHECK(old.missing.front().athlete == turn.second.athlete);
    CHECK(old.missing.front().turnedUp == dayOf(2027, 1, 12));
    CHECK(past.back().isOpen);
    CHECK_FALSE(past.back().closed);
    REQUIRE(past.back().pairs.size() == 1);
    CHECK(past.back().pairs.front().unit == turn.first.unit);
    CHECK(past.back().pairs.front().checks == 0);
  }
}

TEST_CASE("A closing taken back is no closing, and a helmet kept over belongs to both seasons") {
  Turn turn;
  turn.close();
  must(turn.book->correct({must(book::closingFact(turn.views()))}));
  CHECK(turn.past().front().isOpen);
  turn.close();
  put(*turn.book, must(book::openSeason(turn.views(), turn.next)));
  const auto past = turn.past();
  REQUIRE(past.size() == 2);
  CHECK(past[0].pairs.size() == 2);
  CHECK(past[1].pairs.size() == 2);
  CHECK(past[0].missing.size() == 2);
  CHECK_FALSE(past[0].missing.front().turnedUp);
}
