// SPDX-License-Identifier: Apache-2.0
// An athlete's own phone: what it may say reaches the Book once, whole and proved, and nothing else does.
#include <rapidcheck.h>

#include SNUGLINE_CATCH_HEADER

#include "book_world.h"
#include "core/book/phone_exchange.h"
#include "core/season/board.h"

using namespace snugline;
using namespace snugline::test;
using book::Phone;

namespace {

constexpr std::array<std::uint8_t, 16> kSecret{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16};

std::string ownDevice(book::Book& book) {
  for (const auto& device : must(book.info()).devices) {
    if (device.isOwn) return device.device;
  }
  return {};
}

struct Pair {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  Fitting fitting = pairUp(*book, world.today());
  std::string other = put(*book, must(book::addAthlete(book->views(), {"12", "Marsh", "Teo", 2009}))).ids.front();

  Phone join(const std::string& athlete, std::array<std::uint8_t, 16> secret = kSecret) {
    auto made = must(book::invite(book->views(), athlete, secret, ownDevice(*book), book->highestOrder()));
    put(*book, made.drafts);
    return must(Phone::join(made.text));
  }
  Phone join() { return join(fitting.athlete); }
  [[nodiscard]] const std::vector<season::SaidRecord>& said() const { return book->views().athlete(fitting.athlete)->said; }
  // The rule that refused; the Book must be as it was.
  std::string refusal(const std::string& file) {
    const std::string before = must(book->dumpViews());
    const auto facts = must(book->info()).facts;
    const auto taken = book::takeReports(*book, file);
    CHECK_FALSE(taken.has_value());
    CHECK(must(book->dumpViews()) == before);
    CHECK(must(book->info()).facts == facts);
    return taken ? "taken" : taken.error().detail;
  }
};

season::SaidRecord jawTight() {
  season::SaidRecord said;
  said.where = fit::Mark::jaw;
  said.side = fit::Side::left;
  return said;
}

// A file signed with a phone's own key that says what no phone says.
std::string forged(const book::JoinCode& code, const book::Fact& asked, const std::string& athlete) {
  const auto key = must(book::phoneKey(code));
  book::Fact fact = asked;
  fact.device = book::deviceOf(key.publicKey);
  fact.n = 1;
  fact.order = code.order + 1;
  const std::string line = must(book::encode(fact));
  const auto chain = book::chainStep(book::chainStart(fact.device), line);
  const auto signature = book::signSegment(key, fact.device, 1, 1, chain);
  const auto hex = [](std::string_view bytes) {
    std::string text;
    for (const char each : bytes) {
      constexpr char kDigits[] = "0123456789abcdef";
      text += kDigits[static_cast<unsigned char>(each) >> 4];
      text += kDigits[static_cast<unsigned char>(each) & 15];
    }
    return text;
  };
  return R"({"snugline_reports":1,"device":")" + fact.device + R"(","athlete":")" + athlete + R"(","public_key":")" +
         book::hexOf(key.publicKey) + R"(","segments":[{"first":1,"last":1,"chain":")" + hex(book::bytesOf(chain)) + R"(","signature":")" +
         hex(book::bytesOf(signature)) + "\"}]}\n" + line + "\n";
}

}  // namespace

TEST_CASE("A join code comes out of its letters as it went in, also as somebody types it") {
  CHECK(rc::check("join codes", [] {
    book::JoinCode code;
    for (auto& byte : code.secret) byte = *rc::gen::arbitrary<std::uint8_t>();
    book::PublicKey key{};
    key[0] = *rc::gen::arbitrary<std::uint8_t>();
    code.staffDevice = book::deviceOf(key);
    key[1] = *rc::gen::arbitrary<std::uint8_t>();
    code.athlete = book::deviceOf(key) + ':' + std::to_string(*rc::gen::inRange<std::uint64_t>(1, 1ULL << 40));
    code.jersey = *rc::gen::element(std::string(), std::string("7"), std::string("07"), std::string("100"));
    code.order = *rc::gen::inRange<std::int64_t>(0, 1LL << 47);
    const std::string text = must(book::print(code));
    RC_ASSERT(must(book::parseJoin(text)) == code);
    std::string typed;
    for (std::size_t i = text.find(':') + 1; i < text.size(); ++i) {
      if (i % 4 == 0) typed += i % 8 == 0 ? " " : "-";
      typed += static_cast<char>(std::tolower(text[i]));
    }
    RC_ASSERT(must(book::parseJoin(typed)) == code);
  }));
}

TEST_CASE("A join code with one letter wrong, missing or too many is refused") {
  Pair pair;
  const auto made = must(book::invite(pair.book->views(), pair.fitting.athlete, kSecret, ownDevice(*pair.book), 40));
  for (std::size_t i = made.text.find(':') + 1; i < made.text.size(); ++i) {
    std::string wrong = made.text;
    wrong[i] = wrong[i] == 'A' ? 'B' : 'A';
    CHECK_FALSE(book::parseJoin(wrong).has_value());
    wrong = made.text;
    wrong.erase(i, 1);
    CHECK_FALSE(book::parseJoin(wrong).has_value());
  }
  CHECK_FALSE(book::parseJoin(made.text + "A").has_value());
  CHECK_FALSE(book::parseJoin("").has_value());
  CHECK_FALSE(book::parseJoin("https://example.org/1").has_value());
}

TEST_CASE("A join code names no person and no team") {
  Pair pair;
  const std::string file = must(pair.join().file());
  for (const char* name : {"Marrow", "Ash", "Harrow", "Herons"}) CHECK(file.find(name) == std::string::npos);
}

TEST_CASE("What is said on a phone without a network reaches the board by a file, once") {
  Pair pair;
  Phone phone = pair.join();
  CHECK(phone.jersey() == "07");
  must(phone.say(jawTight(), pair.world.clock.now()));
  season::SaidRecord broke;
  broke.isBroken = true;
  broke.feels = fit::Feels::broke;
  broke.words = "snap on the right";
  must(phone.say(broke, pair.world.clock.now()));
  CHECK(phone.waiting() == 2);
  const std::string file = must(phone.reports());
  const auto taken = must(book::takeReports(*pair.book, file));
  CHECK(taken.taken == 2);
  CHECK(taken.athlete == pair.fitting.athlete);
  REQUIRE(pair.said().size() == 2);
  CHECK(pair.said()[0].where == fit::Mark::jaw);
  CHECK(pair.said()[1].words == "snap on the right");
  const auto row = season::rowOf(pair.book->views(), *pair.book->views().athlete(pair.fitting.athlete), {pair.world.clock.now()}, {});
  CHECK(row.words.has(fit::Mark::jaw));

  const std::string before = must(pair.book->dumpViews());
  CHECK(must(book::takeReports(*pair.book, file)).taken == 0);
  CHECK(must(pair.book->dumpViews()) == before);

  must(phone.say(jawTight(), pair.world.clock.now()));
  CHECK(must(book::takeReports(*pair.book, must(phone.reports()))).taken == 1);
  CHECK(pair.said().size() == 3);
}

TEST_CASE("A phone's facts are proved in the Book like any device's, also after it is opened again and made anew") {
  Pair pair;
  Phone phone = pair.join();
  for (int i = 0; i < 300; ++i) must(phone.say(jawTight(), pair.world.clock.now()));
  must(book::takeReports(*pair.book, must(phone.reports())));
  must(pair.book->checkpoint());
  CHECK(must(pair.book->verify()).faults.empty());
  pair.book.reset();
  pair.book = pair.world.open();
  CHECK(must(pair.book->verify()).faults.empty());
  CHECK(pair.said().size() == 300);
  CHECK(must(pair.book->rebuild()).wasEqual);
  bool isSealed = false;
  for (const auto& device : must(pair.book->info()).devices)
    isSealed = isSealed || (device.device == phone.device() && device.sealedTo == 300);
  CHECK(isSealed);
  must(pair.book->backup(pair.world.folder.at("copy.backup")));
  must(book::Book::restore(pair.world.folder.at("copy.backup"), pair.world.folder.at("copy.book"), pair.world.keys, pair.world.clock));
  CHECK(must(pair.world.open(pair.world.folder.at("copy.book"))->verify()).faults.empty());
}

TEST_CASE("A file with one byte changed anywhere is refused as a whole") {
  Pair pair;
  Phone phone = pair.join();
  must(phone.say(jawTight(), pair.world.clock.now()));
  must(phone.say(jawTight(), pair.world.clock.now()));
  const std::string file = must(phone.reports());
  const std::string before = must(pair.book->dumpViews());
  for (std::size_t i = 0; i < file.size(); ++i) {
    std::string wrong = file;
    wrong[i] = static_cast<char>(wrong[i] ^ 1);
    INFO("byte " << i);
    REQUIRE_FALSE(book::takeReports(*pair.book, wrong).has_value());
  }
  for (const std::size_t length : {std::size_t{0}, std::size_t{1}, file.size() / 2, file.size() - 1}) {
    CHECK_FALSE(book::takeReports(*pair.book, file.substr(0, length)).has_value());
  }
  CHECK(must(pair.book->dumpViews()) == before);
  CHECK(pair.said().empty());
}

TEST_CASE("A phone that was never joined, and one that was let go, are refused") {
  Pair pair;
  Phone joined = pair.join();
  must(joined.say(jawTight(), pair.world.clock.now()));
  book::JoinCode made = joined.code();
  made.secret[0] = 99;
  Phone stranger = must(Phone::join(must(book::print(made))));
  must(stranger.say(jawTight(), pair.world.clock.now()));
  CHECK(pair.refusal(must(stranger.reports())) == book::rule::kPhoneNotJoined);
  put(*pair.book, must(book::letGo(pair.book->views(), pair.fitting.athlete)));
  CHECK(pair.refusal(must(joined.reports())) == book::rule::kPhoneNotJoined);
}

TEST_CASE("A new code lets the phone before it go") {
  Pair pair;
  Phone first = pair.join();
  must(first.say(jawTight(), pair.world.clock.now()));
  Phone second = pair.join(pair.fitting.athlete, {9, 9, 9});
  CHECK(pair.book->views().athlete(pair.fitting.athlete)->phones.size() == 1);
  CHECK(pair.refusal(must(first.reports())) == book::rule::kPhoneNotJoined);
  must(second.say(jawTight(), pair.world.clock.now()));
  CHECK(must(book::takeReports(*pair.book, must(second.reports()))).taken == 1);
}

TEST_CASE("A file that names another athlete is refused, in its head or in a fact, signed or not") {
  Pair pair;
  Phone phone = pair.join();
  book::Fact fact;
  fact.at = pair.world.clock.now();
  fact.body = book::Said{jawTight(), {}};
  fact.about = pair.other;
  CHECK(pair.refusal(forged(phone.code(), fact, pair.fitting.athlete)) == book::rule::kPhoneOther);
  CHECK(pair.refusal(forged(phone.code(), fact, pair.other)) == book::rule::kPhoneOther);
  CHECK(pair.book->views().athlete(pair.other)->said.empty());
}

TEST_CASE("A phone that says more than a phone may is refused") {
  Pair pair;
  Phone phone = pair.join();
  book::Fact fact;
  fact.at = pair.world.clock.now();
  fact.about = pair.fitting.athlete;
  const auto check = [&](book::Body body, const std::string& who = {}) {
    fact.body = std::move(body);
    fact.who = who;
    CHECK(pair.refusal(forged(phone.code(), fact, pair.fitting.athlete)) == book::rule::kPhoneOther);
  };
  check(book::AthleteChanged{"99", {}, {}, {}, {}});
  check(book::SaidAcknowledged{"x:1", true, ""});
  check(book::UnitPaired{pair.fitting.athlete});
  check(book::Corrected{pair.fitting.athlete, {pair.fitting.athlete}});
  check(book::Said{jawTight(), "x:1"});
  season::SaidRecord ofUnit = jawTight();
  ofUnit.unit = pair.fitting.unit;
  check(book::Said{ofUnit, {}});
  check(book::Said{jawTight(), {}}, "x:3");
}

TEST_CASE("One code used on two phones is noticed, and the second one's words are not mixed in") {
  Pair pair;
  Phone one = pair.join();
  Phone two = must(Phone::join(must(book::print(one.code()))));
  must(one.say(jawTight(), pair.world.clock.now()));
  season::SaidRecord crown;
  crown.where = fit::Mark::crown;
  must(two.say(crown, pair.world.clock.now()));
  must(book::takeReports(*pair.book, must(one.reports())));
  CHECK(pair.refusal(must(two.reports())) == book::rule::kPhoneTwice);
  CHECK(must(pair.book->verify()).faults.empty());
}

TEST_CASE("The answer tells the phone what is held, when the next look is and what was done, and nothing of anybody else") {
  Pair pair;
  fitWhole(*pair.book, pair.fitting, pair.world.clock);
  Phone phone = pair.join();
  const std::string word = must(phone.say(jawTight(), pair.world.clock.now()));
  must(book::takeReports(*pair.book, must(phone.reports())));
  pair.world.clock.stepDays(1);
  Fitting look = pair.fitting;
  beginCheck(*pair.book, look, pair.world.today(), fit::CheckKind::look);
  answer(*pair.book, look, fit::MarkSeen{fit::Mark::jaw, fit::Finding::over, fit::Side::left, fit::HoldHow::unsaid, {}},
         pair.world.today());
  answer(*pair.book, look, fit::Adjusted{fit::Deed::release, gear::Port::jawLeft, {}, 2, {}, {}}, pair.world.today());
  for (fit::Mark mark : fit::kMarks) answer(*pair.book, look, seen(mark), pair.world.today());
  answer(*pair.book, look, fit::PointsSound{}, pair.world.today());
  for (const auto& question : pair.book->views().sheet(look.sheet)->questions)
    answer(*pair.book, look, fit::QuestionAnswered{question.id, true}, pair.world.today());
  put(*pair.book, must(book::endCheck(pair.book->views(), look.check, pair.world.clock.now())));

  const std::string file = must(book::answersFor(*pair.book, phone.device(), pair.world.clock.now()));
  for (const char* name : {"Marrow", "Ash", "Marsh", "Harrow", "Herons", pair.other.c_str()}) CHECK(file.find(name) == std::string::npos);
  must(phone.takeAnswers(file));
  CHECK(phone.waiting() == 0);
  REQUIRE(phone.answers()->outcomes.size() == 1);
  const book::PhoneOutcome& told = phone.answers()->outcomes.front();
  CHECK(told.outcome.said == word);
  CHECK(told.outcome.found == fit::Finding::snug);
  REQUIRE(told.done.size() == 1);
  CHECK(told.done.front().change.deed == fit::Deed::release);
  CHECK(told.done.front().change.pumps == 2);
  CHECK(phone.said().front().isAnswered);
  CHECK(phone.answers()->dueBy > pair.world.today());
  CHECK(phone.answers()->helmet->hasJawAir);
  // What it says next comes after everything that the Book had.
  must(phone.say(jawTight(), pair.world.clock.now()));
  must(book::takeReports(*pair.book, must(phone.reports())));
  CHECK_FALSE(pair.said().back().isAnswered);
}

TEST_CASE("An answer that was altered, is for another phone, of another Book or older than the last is refused") {
  Pair pair;
  Phone phone = pair.join();
  Phone others = pair.join(pair.other, {7, 7});
  const std::string early = must(book::answersFor(*pair.book, phone.device(), pair.world.clock.now()));
  for (std::size_t i = 0; i < early.size(); ++i) {
    std::string wrong = early;
    wrong[i] = static_cast<char>(wrong[i] ^ 1);
    INFO("byte " << i);
    REQUIRE_FALSE(phone.takeAnswers(wrong).has_value());
  }
  CHECK(others.takeAnswers(early).error().detail == book::rule::kAnswersNotOurs);
  book::JoinCode elsewhere = phone.code();
  elsewhere.staffDevice = others.device();
  Phone there = must(Phone::join(must(book::print(elsewhere))));
  CHECK(there.takeAnswers(early).error().detail == book::rule::kAnswersNotOurs);
  must(phone.say(jawTight(), pair.world.clock.now()));
  must(book::takeReports(*pair.book, must(phone.reports())));
  must(phone.takeAnswers(must(book::answersFor(*pair.book, phone.device(), pair.world.clock.now()))));
  CHECK(phone.takeAnswers(early).error().detail == book::rule::kAnswersOld);
  CHECK(phone.waiting() == 0);
  CHECK(book::answersFor(*pair.book, "aaaaaaaaaaaaa", pair.world.clock.now()).error().code == ErrorCode::unknownDevice);
}

TEST_CASE("The phone's own file brings everything back, and what is in no file yet can be taken back") {
  Pair pair;
  Phone phone = pair.join();
  must(phone.say(jawTight(), pair.world.clock.now()));
  CHECK(phone.canTakeBack());
  phone.takeBack();
  CHECK(phone.said().empty());
  must(phone.say(jawTight(), pair.world.clock.now()));
  const std::string reports = must(phone.reports());
  CHECK_FALSE(phone.canTakeBack());
  must(book::takeReports(*pair.book, reports));
  must(phone.takeAnswers(must(book::answersFor(*pair.book, phone.device(), pair.world.clock.now()))));
  season::SaidRecord hair;
  hair.isHairChanged = true;
  must(phone.say(hair, pair.world.clock.now()));
  Phone again = must(Phone::read(must(phone.file())));
  CHECK(again.device() == phone.device());
  CHECK(again.said() == phone.said());
  CHECK(again.answers() == phone.answers());
  CHECK(again.waiting() == 1);
  CHECK(must(again.reports()) == must(phone.reports()));
  CHECK_FALSE(Phone::read("{}").has_value());
  CHECK_FALSE(again.say({}, pair.world.clock.now()).has_value());
}

TEST_CASE("Whatever words a phone is given are kept as text or refused, and come through the file as they were") {
  CHECK(rc::check("words", [](const std::string& words) {
    static Pair pair;
    static Phone phone = pair.join();
    season::SaidRecord said;
    said.words = words;
    const auto done = phone.say(said, pair.world.clock.now());
    if (!done) return;
    const Phone again = must(Phone::read(must(phone.file())));
    RC_ASSERT(again.said().back().words == words);
  }));
}
