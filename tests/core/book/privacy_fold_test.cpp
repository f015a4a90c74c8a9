// SPDX-License-Identifier: Apache-2.0
// Warning, retention and legal holds in a Book: what is kept, taken back, and read from rows of an older program.
#include <sqlite3.h>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/fold.h"
#include "core/book/people.h"
#include "core/book/privacy_acts.h"
#include "core/season/privacy.h"

using namespace snugline;
using namespace snugline::book;
using namespace snugline::test;

namespace {

const std::vector<WarningSet::Text> kShown{{"en", "No helmet prevents concussion."}, {"es", "Ningún casco previene la conmoción."}};

struct Signed {
  World world;
  std::unique_ptr<Book> book = world.create();
  std::string witness, athlete;
  Signed() {
    witness = put(*book, must(addPerson(book->views(), {"Maren Tollgate", "MT", "admin"}))).ids.front();
    athlete = put(*book, must(addAthlete(book->views(), {"07", "Marrow", "Ash", 2009}))).ids.front();
    book->setPerson(witness);
  }
  Result<Drafts> sign(season::Signer as, const std::string& text, const std::string& language = "en") {
    return signWarning(book->views(), athlete, {text, language, as, "AM", false}, witness, kShown, world.today());
  }
  [[nodiscard]] season::WarningState state() {
    return season::warningState(book->views().team, book->views().athletes.at(athlete), world.today());
  }
  void checkRebuilt() {
    const auto dump = must(book->dumpViews());
    CHECK(must(book->rebuild()).wasEqual);
    CHECK(must(book->dumpViews()) == dump);
  }
};

void change(const std::string& path, const std::string& sql) {
  sqlite3* handle = nullptr;
  REQUIRE(sqlite3_open(path.c_str(), &handle) == SQLITE_OK);
  CHECK(sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK);
  sqlite3_close(handle);
}

}  // namespace

TEST_CASE("The first signature puts the text that was shown into the Book, and names it by its hash") {
  Signed s;
  CHECK_FALSE(s.state().isDone());
  const auto appended = put(*s.book, must(s.sign(season::Signer::athlete, kShown[0].text)));
  CHECK(appended.ids.size() == 2);
  const auto& warning = *s.book->views().team->warning;
  CHECK(warning.texts.size() == 2);
  CHECK(warning.texts[0].hash == hashOf(kShown[0].text));
  const auto& signature = s.book->views().athletes.at(s.athlete).signatures.at(0);
  CHECK(signature.text == warning.texts[0].hash);
  CHECK(signature.stamp.who == s.witness);
  CHECK_FALSE(s.state().isAthleteOpen);
  CHECK(s.state().isGuardianOpen);  // 2009 and 2026: a minor
  // A guardian reads it in Spanish: another text of the same warning.
  const auto second = put(*s.book, must(s.sign(season::Signer::guardian, kShown[1].text, "es")));
  CHECK(second.ids.size() == 1);
  CHECK(s.state().isDone());
  s.checkRebuilt();
}

TEST_CASE("Nobody signs twice, without a witness, without initials, or a text that is not the team's") {
  Signed s;
  CHECK(s.sign(season::Signer::athlete, "Something else.").error().detail == rule::kWarningChanged);
  put(*s.book, must(s.sign(season::Signer::athlete, kShown[0].text)));
  CHECK(s.sign(season::Signer::athlete, kShown[0].text).error().detail == rule::kWarningSigned);
  CHECK(s.sign(season::Signer::guardian, "Something else.").error().detail == rule::kWarningChanged);
  const Signing plain{kShown[0].text, "en", season::Signer::guardian, "RM", true};
  CHECK(signWarning(s.book->views(), s.athlete, plain, "", kShown, s.world.today()).error().detail == rule::kNoWitness);
  Signing bad = plain;
  bad.initials = "";
  CHECK(signWarning(s.book->views(), s.athlete, bad, s.witness, kShown, s.world.today()).error().place == "initials");
  CHECK(signWarning(s.book->views(), "nobody:1", plain, s.witness, kShown, s.world.today()).error().code == ErrorCode::notFound);
}

TEST_CASE("A changed text leaves signatures standing, unless everybody is asked anew") {
  Signed s;
  put(*s.book, must(s.sign(season::Signer::athlete, kShown[0].text)));
  put(*s.book, must(setWarning(s.book->views(), {{"en", "Read the label."}}, false)));
  CHECK_FALSE(s.state().isAthleteOpen);
  CHECK(s.book->views().team->warning->accepted.size() == 3);
  const auto asked = put(*s.book, must(setWarning(s.book->views(), {{"en", "Read the label, all of it."}}, true))).ids.front();
  CHECK(s.state().isAthleteOpen);
  CHECK(s.book->views().team->warning->accepted.size() == 1);
  CHECK(must(setWarning(s.book->views(), {{"en", "Read the label, all of it."}}, false)).empty());
  s.checkRebuilt();
  must(s.book->correct({asked}));
  CHECK_FALSE(s.state().isAthleteOpen);
  put(*s.book, must(setWarning(s.book->views(), {{"en", "Read the label, all of it."}}, true)));
  put(*s.book, must(s.sign(season::Signer::athlete, "Read the label, all of it.")));
  CHECK_FALSE(s.state().isAthleteOpen);
  s.checkRebuilt();
}

TEST_CASE("A new season asks anew") {
  Signed s;
  put(*s.book, must(s.sign(season::Signer::athlete, kShown[0].text)));
  PracticeSet next;
  next.season = "2027";
  put(*s.book, {{s.book->views().team->id, next}});
  CHECK(s.state().isAthleteOpen);
}

TEST_CASE("A text too long, empty, in no language of ours or twice in one is refused") {
  Signed s;
  const auto set = [&](std::vector<WarningSet::Text> texts) { return setWarning(s.book->views(), texts, false); };
  CHECK(set({{"en", std::string(kWarningTextMost + 1, 'x')}}).error().place == "warning");
  CHECK(set({{"en", " \n "}}).error().place == "warning");
  CHECK(set({{"fr", "Lisez."}}).error().code == ErrorCode::unknownWord);
  CHECK(set({{"en", "a"}, {"en", "b"}}).error().code == ErrorCode::inconsistent);
  CHECK(set({}).error().place == "warning");
  // Two languages of four bytes a character, as long as may be, still fit into a fact.
  std::string wide;
  for (std::size_t i = 0; i < kWarningTextMost; ++i) wide += "\xF0\x9F\x98\x80";
  put(*s.book, must(set({{"en", wide}, {"es", wide + ""}})));
  CHECK(s.book->views().team->warning->texts.size() == 2);
}

TEST_CASE("A name is kept back so many years after the last entry, and never under a legal hold") {
  Signed s;
  const auto since = [&](Day today) {
    return season::nameKeptBackSince(s.book->views().team, s.book->views().athletes.at(s.athlete), today);
  };
  const Day late = dayOf(2040, 1, 1);
  put(*s.book, must(setRetention(s.book->views(), 7)));
  CHECK_FALSE(since(late));  // still on the roster
  AthleteChanged off;
  off.isOnRoster = false;
  put(*s.book, must(changeAthlete(s.book->views(), s.athlete, off)));
  CHECK(since(late) == dayOf(2033, 10, 14));
  CHECK_FALSE(since(dayOf(2033, 10, 13)));
  CHECK(since(dayOf(2033, 10, 14)));
  const auto own = put(*s.book, must(makeLegalHold(s.book->views(), s.athlete, "Letter of 12 October"))).ids.front();
  CHECK_FALSE(since(late));
  const auto all = put(*s.book, must(makeLegalHold(s.book->views(), "", "District counsel"))).ids.front();
  s.checkRebuilt();
  put(*s.book, must(endLegalHold(s.book->views(), s.athlete, own, "Settled")));
  CHECK_FALSE(since(late));
  CHECK(endLegalHold(s.book->views(), s.athlete, all, "Settled").error().code == ErrorCode::notFound);
  put(*s.book, must(endLegalHold(s.book->views(), "", all, "Settled")));
  CHECK(since(late) == dayOf(2033, 10, 14));
  season::Views shown = s.book->views();
  season::keepNamesBack(shown, late);
  CHECK(shown.athletes.at(s.athlete).family.empty());
  CHECK(shown.athletes.at(s.athlete).given.empty());
  CHECK(shown.athletes.at(s.athlete).nameKeptBack == dayOf(2033, 10, 14));
  CHECK(s.book->views().athletes.at(s.athlete).family == "Marrow");  // the Book still holds it
  put(*s.book, must(setRetention(s.book->views(), std::nullopt)));
  CHECK_FALSE(since(late));
  AthleteChanged on;
  on.isOnRoster = true;
  put(*s.book, must(changeAthlete(s.book->views(), s.athlete, on)));
  CHECK_FALSE(s.book->views().athletes.at(s.athlete).left);
  s.checkRebuilt();
}

TEST_CASE("Years out of range and a hold without a reason are refused") {
  Signed s;
  CHECK(setRetention(s.book->views(), 0).error().place == "years");
  CHECK(setRetention(s.book->views(), kRetentionYearsMost + 1).error().place == "years");
  CHECK(must(setRetention(s.book->views(), std::nullopt)).empty());
  CHECK(makeLegalHold(s.book->views(), s.athlete, "").error().place == "reason");
  CHECK(makeLegalHold(s.book->views(), "nobody:1", "why").error().code == ErrorCode::notFound);
}

TEST_CASE("Rows stored by a program that did not keep when an athlete left are made anew") {
  Signed s;
  AthleteChanged off;
  off.isOnRoster = false;
  put(*s.book, must(changeAthlete(s.book->views(), s.athlete, off)));
  const auto dump = must(s.book->dumpViews());
  s.book.reset();
  change(s.world.path, "UPDATE view_athletes SET value = json_remove(value, '$.left')");
  s.book = s.world.open();
  CHECK(s.book->views().athletes.at(s.athlete).left);
  CHECK(must(s.book->dumpViews()) == dump);
}
