// SPDX-License-Identifier: Apache-2.0
#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/fold.h"
#include "core/book/rights.h"
#include "fact_maker.h"

using namespace snugline;
using namespace snugline::test;

namespace {

// What three devices wrote down, each knowing now and then what the others had.
struct Season {
  std::vector<book::Fact> facts;  // in the order (order, device, n)
  std::map<std::string, std::vector<std::string>> lines;
};

Season seasonOf(std::uint64_t seed, int size, const std::string& team) {
  FactMaker maker(seed);
  maker.team = team;
  const std::vector<std::string> devices{"aaaaaaaaaaaaa", "mmmmmmmmmmmmm", "yyyyyyyyyyyyy"};
  std::map<std::string, std::int64_t> orders, counts;
  maker.sheetBytes = {sheetBytes("alder-a1"), sheetBytes("cedar-c3")};
  maker.sheet = book::hashOf(maker.sheetBytes.front());
  Season made;
  for (int i = 0; i < size; ++i) {
    const std::string device = maker.id(devices);
    if (maker.pick(0, 4) == 0) orders[device] = std::max(orders[device], orders[maker.id(devices)]);
    book::Fact fact;
    fact.device = device;
    fact.n = static_cast<std::uint64_t>(++counts[device]);
    fact.order = ++orders[device] + 1;
    fact.at = {1'792'000'000'000 + maker.pick(0, 1'000'000'000), 0};
    // Athletes and helmets first, so that most of the rest has something to be about.
    static const std::vector<int> kFirst{1, 5, 4, 14};
    const bool isFirst = i < 8;
    if (!isFirst && maker.pick(0, 9) == 0) {
      const auto& named = made.facts[static_cast<std::size_t>(maker.pick(0, static_cast<int>(made.facts.size()) - 1))];
      fact.about = named.about;
      fact.body = book::Corrected{named.id(), book::touches(named)};
    } else {
      auto [about, body] = maker.draft(isFirst ? kFirst[static_cast<std::size_t>(i % 4)] : maker.pick(0, FactMaker::kKinds - 1));
      fact.about = about.empty() ? fact.id() : about;
      fact.body = std::move(body);
    }
    maker.remember(fact);
    made.lines[device].push_back(*book::encode(fact));
    made.facts.push_back(std::move(fact));
  }
  std::sort(made.facts.begin(), made.facts.end(),
            [](const auto& a, const auto& b) { return std::tie(a.order, a.device, a.n) < std::tie(b.order, b.device, b.n); });
  return made;
}

}  // namespace

TEST_CASE("Views kept as facts arrive late, in any order and again are those of a rebuild") {
  CHECK(rc::check([] {
    const auto seed = *rc::gen::arbitrary<std::uint64_t>();
    const int size = *rc::gen::inRange(1, 120);
    World inOrder, anyOrder;
    const auto a = inOrder.create(), b = anyOrder.create();
    const Season season = seasonOf(seed, size, a->views().team->id);

    std::vector<std::string> all;
    for (const auto& fact : season.facts) all.push_back(*book::encode(fact));
    RC_ASSERT(a->receive(all).has_value());

    FactMaker chance(seed + 1);
    std::map<std::string, std::size_t> next;
    auto lines = season.lines;
    while (!lines.empty()) {
      auto it = lines.begin();
      std::advance(it, chance.pick(0, static_cast<int>(lines.size()) - 1));
      std::size_t& at = next[it->first];
      const std::size_t from = chance.toss() ? at : at - std::min<std::size_t>(at, 2);  // some again
      const std::size_t to = std::min(it->second.size(), at + static_cast<std::size_t>(chance.pick(1, 12)));
      RC_ASSERT(b->receive({it->second.begin() + static_cast<std::ptrdiff_t>(from), it->second.begin() + static_cast<std::ptrdiff_t>(to)})
                    .has_value());
      at = to;
      if (at == it->second.size()) lines.erase(it);
      if (chance.pick(0, 3) == 0) RC_ASSERT(b->checkpoint().has_value());
    }
    const auto dumpA = a->dumpViews(), dumpB = b->dumpViews();
    RC_ASSERT(dumpA.has_value());
    RC_ASSERT(*dumpA == *dumpB);
    const auto rebuilt = b->rebuild();
    RC_ASSERT(rebuilt.has_value());
    RC_ASSERT(rebuilt->wasEqual);
    RC_ASSERT(rebuilt->facts == season.facts.size() + 1);
    RC_ASSERT(*b->dumpViews() == *dumpA);
    RC_ASSERT(b->verify()->faults.empty());  // the photos that it names lie nowhere
  }));
}

TEST_CASE("Own facts, undone now and then, and killed between checkpoints, fold to what a rebuild folds") {
  CHECK(rc::check([] {
    FactMaker maker(*rc::gen::arbitrary<std::uint64_t>());
    World world;
    auto book = world.create();
    maker.team = book->views().team->id;
    // Whoever may do everything.
    const std::string signer = put(*book, {{"", book::PersonAdded{"Oda Wexcombe", "OW", "admin", true}}}).ids.front();
    book->setPerson(signer);
    maker.sheetBytes = {sheetBytes("alder-a1")};
    maker.sheet = book::hashOf(maker.sheetBytes.front());
    std::vector<std::string> written;
    const int size = *rc::gen::inRange(1, 80);
    for (int i = 0; i < size; ++i) {
      if (!written.empty() && maker.pick(0, 8) == 0) {
        const book::Fact fact = must(book->fact(maker.id(written)));
        const auto undone = book->append({{fact.about, book::Corrected{fact.id(), book::touches(fact)}}});
        if (!undone && undone.error().detail == book::rule::kStaysSaid) continue;
        RC_ASSERT(undone.has_value());
        written.push_back(undone->ids.front());
      } else {
        auto [about, body] = maker.draft(i < 3 ? std::vector{1, 5, 14}[static_cast<std::size_t>(i)] : maker.pick(0, FactMaker::kKinds - 1));
        const auto added = book->append({{about, std::move(body)}});
        RC_ASSERT(added.has_value());
        written.push_back(added->ids.front());
        maker.remember(*book->fact(added->ids.front()));
      }
      if (maker.pick(0, 10) == 0) {
        book.reset();
        book = world.open();
        book->setPerson(signer);
      }
    }
    const auto dump = book->dumpViews();
    RC_ASSERT(dump.has_value());
    const auto rebuilt = book->rebuild();
    RC_ASSERT(rebuilt.has_value());
    RC_ASSERT(rebuilt->wasEqual);
    RC_ASSERT(*book->dumpViews() == *dump);
    book.reset();
    RC_ASSERT(*world.open()->dumpViews() == *dump);
  }));
}

TEST_CASE("A hold made elsewhere at the same time stands; only a release that names it ends it") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  const auto mine = put(*book, {{f.unit, book::UnitHeld{"shell", "crack", false}}}).ids.front();
  book::Fact other;
  other.device = "aaaaaaaaaaaaa";
  other.n = 1;
  other.order = 1;
  other.about = f.unit;
  other.body = book::UnitHeld{"shell", "crack", false};
  must(book->receive({*book::encode(other)}));
  CHECK(book->views().unit(f.unit)->holds.size() == 1);  // before the unit was received, so it is about nothing yet
  other.n = 2;
  other.order = 50;
  must(book->receive({*book::encode(other)}));
  CHECK(book->views().unit(f.unit)->holds.size() == 2);
  put(*book, {{f.unit, book::HoldReleased{mine, "mended"}}});
  REQUIRE(book->views().unit(f.unit)->holds.size() == 1);
  CHECK(book->views().unit(f.unit)->holds.front().fact == other.id());
}

TEST_CASE("Two readings of one label on two devices are in question until two agree") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  book::Fact other;
  other.device = "aaaaaaaaaaaaa";
  other.n = 1;
  other.order = 100;
  other.about = f.unit;
  other.body = book::LabelRead{gear::Label{gear::LabelKind::recertification, 2025, std::nullopt, {}}};
  must(book->receive({*book::encode(other)}));
  CHECK(book->views().unit(f.unit)->isLabelDisputed);
  CHECK(book->views().unit(f.unit)->labels.back().label.year == 2025);
  const gear::Label read{gear::LabelKind::recertification, 2026, std::nullopt, {}};
  put(*book, {{f.unit, book::LabelRead{read}}});
  CHECK(book->views().unit(f.unit)->isLabelDisputed);
  put(*book, {{f.unit, book::LabelRead{read}}});
  CHECK_FALSE(book->views().unit(f.unit)->isLabelDisputed);
  CHECK(book->views().unit(f.unit)->labels.back().label.year == 2026);
}

TEST_CASE("One helmet given to two athletes is open for both") {
  World world;
  const auto book = world.create();
  const Fitting f = pairUp(*book, world.today());
  const auto second = put(*book, must(book::addAthlete(book->views(), {"08", "Reed", "Kit", 2010}))).ids.front();
  book::Fact other;
  other.device = "aaaaaaaaaaaaa";
  other.n = 1;
  other.order = 100;
  other.about = f.unit;
  other.body = book::UnitPaired{second};
  must(book->receive({*book::encode(other)}));
  CHECK(book->views().unit(f.unit)->athletes == std::vector{f.athlete, second});
  CHECK(book->views().athlete(second)->units == std::vector{f.unit});
}

TEST_CASE("A fit answers the words that it knew and leaves those that came meanwhile") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  season::SaidRecord tight;
  tight.where = fit::Mark::jaw;
  const auto before = put(*book, must(book::say(book->views(), f.athlete, tight))).ids.front();
  put(*book, must(book::hairChanged(book->views(), f.athlete, "short")));
  beginCheck(*book, f, world.today());
  // Said on another device while the check was under way.
  book::Fact elsewhere;
  elsewhere.device = "aaaaaaaaaaaaa";
  elsewhere.n = 1;
  elsewhere.order = 100;
  elsewhere.about = f.athlete;
  book::Said said;
  said.said.where = fit::Mark::ears;
  elsewhere.body = said;
  must(book->receive({*book::encode(elsewhere)}));
  answer(*book, f, fit::HairSeen{true}, world.today());
  for (fit::Mark mark : fit::kMarks) answer(*book, f, seen(mark), world.today());
  answer(*book, f, fit::PointsSound{}, world.today());
  put(*book, must(book::endCheck(book->views(), f.check, world.clock.now())));
  const auto* athlete = book->views().athlete(f.athlete);
  CHECK(athlete->checks.back().verdict == fit::Verdict::fits);
  REQUIRE(athlete->said.size() == 2);
  CHECK(athlete->said[0].fact == before);
  CHECK(athlete->said[0].isAnswered);
  CHECK_FALSE(athlete->said[1].isAnswered);
  CHECK_FALSE(athlete->hairChanged);
}

TEST_CASE("Unwell is closed by whoever has the mark and by no check") {
  World world;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  season::SaidRecord unwell;
  unwell.isUnwell = true;
  const auto said = put(*book, must(book::say(book->views(), f.athlete, unwell))).ids.front();
  put(*book, must(book::acknowledge(book->views(), f.athlete, said, false, "told")));
  fitWhole(*book, f, world.clock);
  CHECK(book->views().athlete(f.athlete)->said.front().isAcknowledged);
  CHECK_FALSE(book->views().athlete(f.athlete)->said.front().isAnswered);
  CHECK(book->append(must(book::acknowledge(book->views(), f.athlete, said, true, ""))).error().detail == book::rule::kNeedsPractitioner);
  book->setPerson(put(*book, {{"", book::PersonAdded{"Oda Wexcombe", "OW", "admin", true}}}).ids.front());
  put(*book, must(book::acknowledge(book->views(), f.athlete, said, true, "")));
  CHECK(book->views().athlete(f.athlete)->said.front().isAnswered);
}

TEST_CASE("A check whose sheet comes later takes its state when it comes") {
  World world, other;
  const auto book = world.create();
  Fitting f = pairUp(*book, world.today());
  beginCheck(*book, f, world.today());
  answer(*book, f, fit::HairSeen{true}, world.today());
  std::vector<std::string> sheet, rest;
  for (const std::string& entity : {f.sheet, f.athlete, f.unit, f.check}) {
    for (const auto& fact : must(book->history(entity))) {
      const std::string line = *book::encode(fact);
      auto& list = entity == f.sheet ? sheet : rest;
      if (std::find(list.begin(), list.end(), line) == list.end()) list.push_back(line);
    }
  }
  // Given on by a third device, which numbers them anew.
  const auto renumbered = [](std::vector<std::string> lines, const std::string& device) {
    std::vector<std::string> made;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      auto fact = *book::decode(lines[i]);
      fact.device = device;
      fact.n = i + 1;
      made.push_back(*book::encode(fact));
    }
    return made;
  };
  book::Folded folded;
  for (const auto& line : rest) folded.take(*book::decode(line));
  REQUIRE(folded.views.openChecks.contains(f.check));
  CHECK(folded.views.openChecks.at(f.check).state == fit::State{});
  for (const auto& line : renumbered(sheet, "aaaaaaaaaaaaa")) folded.take(*book::decode(line));
  CHECK(folded.views.openChecks.at(f.check).state == book->views().openCheck(f.check)->state);
}

TEST_CASE("A line of an unknown kind is kept byte for byte and folded as nothing") {
  World world;
  const auto book = world.create();
  const auto before = must(book->dumpViews());
  const std::string line =
      R"({"device":"aaaaaaaaaaaaa","n":1,"order":5,"at_ms":0,"offset_min":0,"who":"","kind":"helmet-dreamt","v":3,"about":"x:1", "body":{ "z":1 }})";
  must(book->receive({line}));
  CHECK(must(book->dumpViews()) == before);
  CHECK(std::get<book::Unknown>(must(book->history("x:1")).front().body).kind == "helmet-dreamt");
  must(book->backup(world.folder.at("b.snug")));
  must(book::Book::restore(world.folder.at("b.snug"), world.folder.at("c.book"), world.keys, world.clock));
  CHECK(bytesOfFile(world.folder.at("c.book")).find(line) != std::string::npos);
}

TEST_CASE("A line that contradicts one already held is set apart and shown") {
  World world;
  const auto book = world.create();
  const auto lineOf = [](int n, const std::string& text) {
    return R"({"device":"aaaaaaaaaaaaa","n":)" + std::to_string(n) + R"(,"order":)" + std::to_string(n + 4) +
           R"(,"at_ms":0,"offset_min":0,"who":"","kind":"note-added","v":1,"about":"x:1","body":{"text":")" + text + "\"}}";
  };
  must(book->receive({lineOf(1, "a"), lineOf(2, "b")}));
  must(book->receive({lineOf(1, "a"), lineOf(2, "other"), lineOf(3, "after the other")}));
  CHECK(must(book->history("x:1")).size() == 2);
  const auto verified = must(book->verify());
  CHECK(verified.faults == std::vector<book::Fault>{{"aaaaaaaaaaaaa", 2, "forked"}, {"aaaaaaaaaaaaa", 3, "forked"}});
  const auto gap = book->receive(
      {R"({"device":"bbbbbbbbbbbbb","n":2,"order":9,"at_ms":0,"offset_min":0,"who":"","kind":"note-added","v":1,"about":"x:1","body":{"text":""}})"});
  REQUIRE_FALSE(gap);
  CHECK(gap.error().code == ErrorCode::brokenChain);
  CHECK(must(book->info()).devices.size() == 2);
}
