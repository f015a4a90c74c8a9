// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "core/book/book.h"
#include "core/ports/memory_ports.h"
#include "core/season/board.h"
#include "demo/generator/demo_world.h"
#include "demo/generator/names.h"
#include "demo/generator/squad.h"

using namespace snugline;

namespace {

// One demo Book in a folder of its own.
struct DemoBook {
  std::filesystem::path folder;
  std::string path;
  demo::Options options;
  ports::MemoryKeys keys;
  ports::MemoryClock clock;
  std::uint64_t facts = 0;
  std::unique_ptr<book::Book> book;

  explicit DemoBook(demo::Options wanted) : options(std::move(wanted)), clock(demo::nowOf(options)) {
    std::string name = (std::filesystem::temp_directory_path() / "snugline-demo-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    folder = name;
    path = (folder / "demo.book").string();
    const auto made = demo::makeDemo(path, options, keys);
    if (!made) FAIL(made.error().place + ": " + made.error().detail);
    facts = *made;
  }
  ~DemoBook() {
    book.reset();
    std::error_code ignored;
    std::filesystem::remove_all(folder, ignored);
  }
  DemoBook(const DemoBook&) = delete;
  DemoBook& operator=(const DemoBook&) = delete;

  book::Book& open() {
    auto opened = book::Book::open(path, book::Access::readWrite, keys, clock);
    REQUIRE(opened);
    book = std::move(*opened);
    return *book;
  }
  [[nodiscard]] std::string bytes() const {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
  }
};

demo::Options optionsOf(int athletes, int seasons, std::uint64_t seed) {
  demo::Options options;
  options.athletes = athletes;
  options.seasons = seasons;
  options.seed = seed;
  return options;
}

// The check again, from its facts alone.
void replay(book::Book& book, const season::EndedCheck& recorded) {
  const auto facts = book.history(recorded.check);
  REQUIRE(facts);
  fit::Setup setup;
  fit::State state;
  bool isEnded = false;
  const auto take = [&](const fit::Answer& answer) {
    auto next = fit::take(setup, state, answer);
    REQUIRE(next);
    state = std::move(*next);
  };
  for (const book::Fact& fact : *facts) {
    if (const auto* begun = std::get_if<book::CheckBegun>(&fact.body)) {
      setup.sheet = book.views().sheet(begun->sheet);
      REQUIRE(setup.sheet != nullptr);
      setup.kind = begun->kind;
      setup.certifiedUntil = begun->certifiedUntil;
      setup.isLabelMissing = begun->isLabelMissing;
      setup.today = dayOf(fact.at);
      setup.seasonEnd = book.views().team->seasonEnd;
      state = fit::begin(setup);
      for (const book::WordRef& word : begun->words) take(fit::AthleteSaid{word.where, word.side, word.feels});
    } else if (const auto* answered = std::get_if<book::CheckAnswered>(&fact.body)) {
      for (const fit::Answer& answer : answered->answers) take(answer);
    } else if (const auto* seen = std::get_if<book::PointsSeen>(&fact.body)) {
      if (seen->check != recorded.check) continue;
      for (const auto& [point, finding] : seen->points) take(fit::PointSeen{point, finding.state, finding.what});
    } else if (std::holds_alternative<book::CheckEnded>(fact.body)) {
      isEnded = true;
    }
  }
  REQUIRE(isEnded);
  const fit::Assessment now = fit::assess(setup, state);
  CHECK(now.verdict == recorded.verdict);
  CHECK(now.strip == recorded.strip);
  std::vector<std::string> reasons;
  for (const fit::Reason& reason : now.reasons) reasons.push_back(reason.codeText());
  CHECK(reasons == recorded.reasons);
  CHECK(fit::isFits(setup, state) == (recorded.verdict == fit::Verdict::fits));
}

}  // namespace

TEST_CASE("The demo's team is Harrow Creek High with 64 athletes, 78 helmets and three sheets") {
  DemoBook demo(optionsOf(64, 1, 1));
  book::Book& book = demo.open();
  const season::Views& views = book.views();
  REQUIRE(views.team);
  CHECK(views.team->name == "Harrow Creek High");
  CHECK(views.team->mascot == "Herons");
  CHECK(views.team->season == "2026");
  CHECK(views.athletes.size() == 64);
  CHECK(views.units.size() == 78);
  CHECK(views.sheets.size() == 3);
  std::set<std::string> jerseys, names;
  int withNought = 0, withFullDate = 0, taken = 0;
  for (const auto& [id, athlete] : views.athletes) {
    jerseys.insert(athlete.jersey);
    names.insert(athlete.family);
    withNought += athlete.jersey.size() == 2 && athlete.jersey[0] == '0';
    CHECK_FALSE(athlete.tapes.empty());
    taken += !athlete.units.empty();
  }
  CHECK(jerseys.size() == 64);
  CHECK(names.size() == 64);
  CHECK(withNought == 10);
  CHECK(taken == 64);
  for (const auto& [id, unit] : views.units) {
    const bool isFull = !unit.labels.empty() && unit.labels.back().label.fullDate;
    withFullDate += isFull;
    if (isFull) CHECK_FALSE(unit.labels.back().label.source.empty());
  }
  CHECK(withFullDate >= 18);
  CHECK(withFullDate <= 34);

  const season::Board board = season::boardOf(views, {demo::nowOf(demo.options)}, {});
  const auto count = [&](season::Lane lane) { return board.counts[static_cast<std::size_t>(lane)]; };
  INFO(count(season::Lane::doNotWear) << ' ' << count(season::Lane::beforePractice) << ' ' << count(season::Lane::weekly));
  CHECK((count(season::Lane::doNotWear) >= 3 && count(season::Lane::doNotWear) <= 5));
  CHECK((count(season::Lane::beforePractice) >= 10 && count(season::Lane::beforePractice) <= 16));
  CHECK((count(season::Lane::weekly) >= 12 && count(season::Lane::weekly) <= 18));
  CHECK(count(season::Lane::nothingDue) >= 25);
  std::set<season::DueKind> kinds;
  for (const season::DueRow& row : board.rows) {
    for (const season::DueReason& reason : row.reasons) kinds.insert(reason.kind);
  }
  for (const auto kind : {season::DueKind::withTrainer, season::DueKind::held, season::DueKind::labelLapsed, season::DueKind::brokeSaid,
                          season::DueKind::neverFitted, season::DueKind::checkOpen, season::DueKind::adjustOpen, season::DueKind::wordOpen,
                          season::DueKind::hairChanged, season::DueKind::partChanged, season::DueKind::dryHair, season::DueKind::breakIn,
                          season::DueKind::weeklyLook, season::DueKind::labelLapsing, season::DueKind::tapeStale}) {
    INFO(season::code(kind));
    CHECK(kinds.contains(kind));
  }
  CHECK(views.openChecks.size() == 2);
}

TEST_CASE("Every verdict of the demo is the guide's own") {
  DemoBook demo(optionsOf(40, 1, 3));
  book::Book& book = demo.open();
  std::size_t checks = 0, adjusted = 0;
  for (const auto& [id, athlete] : book.views().athletes) {
    for (const season::EndedCheck& check : athlete.checks) {
      INFO(check.check);
      replay(book, check);
      ++checks;
      adjusted += check.verdict != fit::Verdict::fits;
    }
  }
  CHECK(checks > 400);
  CHECK(adjusted > 0);
}

TEST_CASE("The demo's Book verifies, and its views are those of its log") {
  DemoBook demo(optionsOf(20, 2, 5));
  book::Book& book = demo.open();
  const auto verified = book.verify();
  REQUIRE(verified);
  CHECK(verified->isOk);
  CHECK(verified->facts == demo.facts);
  const auto rebuilt = book.rebuild();
  REQUIRE(rebuilt);
  CHECK(rebuilt->wasEqual);
}

TEST_CASE("The same seed makes the same bytes, another seed another Book") {
  const DemoBook one(optionsOf(12, 1, 7)), same(optionsOf(12, 1, 7)), other(optionsOf(12, 1, 8));
  CHECK(one.bytes() == same.bytes());
  CHECK(one.bytes() != other.bytes());
}

TEST_CASE("A small squad still shows every lane, one athlete alone makes a Book, and seeds do not matter for that") {
  for (std::uint64_t seed = 1; seed <= 5; ++seed) {
    DemoBook demo(optionsOf(12, 1, seed));
    const season::Board board = season::boardOf(demo.open().views(), {demo::nowOf(demo.options)}, {});
    for (const season::Lane lane : {season::Lane::doNotWear, season::Lane::beforePractice, season::Lane::weekly, season::Lane::nothingDue})
      CHECK(board.counts[static_cast<std::size_t>(lane)] > 0);
  }
  DemoBook alone(optionsOf(1, 1, 2));
  CHECK(alone.open().views().athletes.size() == 1);
}

TEST_CASE("What is asked beyond measure is refused, and stopping leaves nothing behind") {
  ports::MemoryKeys keys;
  CHECK(demo::makeDemo("/nonexistent/demo.book", optionsOf(0, 1, 1), keys).error().code == ErrorCode::outOfRange);
  CHECK(demo::makeDemo("/nonexistent/demo.book", optionsOf(4, 21, 1), keys).error().code == ErrorCode::outOfRange);
  const auto path = std::filesystem::temp_directory_path() / ("snugline-stopped-" + std::to_string(getpid()) + ".book");
  demo::Options options = optionsOf(4, 1, 1);
  options.progress = [](double) { return false; };
  CHECK_FALSE(demo::makeDemo(path.string(), options, keys));
  CHECK_FALSE(std::filesystem::exists(path));
}

TEST_CASE("Names are dealt without repeats and tape readings err by about three millimetres") {
  CHECK(std::set<std::string_view>(demo::kFamilyNames.begin(), demo::kFamilyNames.end()).size() == demo::kFamilyNames.size());
  CHECK(std::set<std::string_view>(demo::kGivenNames.begin(), demo::kGivenNames.end()).size() == demo::kGivenNames.size());
  demo::Dice dice(11);
  double squares = 0;
  constexpr int kPairs = 4000;
  for (int i = 0; i < kPairs; ++i) {
    const auto readings = demo::tapeReadings(dice, 560);
    const double difference = readings[0].mm() - readings[1].mm();
    squares += difference * difference;
  }
  const double tem = std::sqrt(squares / (2 * kPairs));  // as fit::technicalError
  CHECK(tem > 2.6);
  CHECK(tem < 3.4);
}

TEST_CASE("A cast for any number of athletes leaves some with nothing due") {
  for (std::size_t count : {1U, 2U, 5U, 29U, 64U, 2000U}) {
    const auto scenes = demo::castScenes(count);
    CHECK(scenes.size() == count);
    if (count >= 2) CHECK(std::count(scenes.begin(), scenes.end(), demo::Scene::nothing) >= static_cast<std::ptrdiff_t>(count / 4));
  }
}
