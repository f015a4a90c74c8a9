// SPDX-License-Identifier: Apache-2.0
// The athletes' door on the shipping screens: two touches, a stop, and no way out but a code.
#include SNUGLINE_CATCH_HEADER

#include <random>

#include <QQuickItem>
#include <QQuickView>

#include "core/book/code_gate.h"
#include "qml/models/shell.h"
#include "say_steps.h"

using namespace snugline;
using field::enterCode;
using field::Field;
using field::Ground;
using field::iAm;
using field::kCode;
using field::openSay;
using field::type;

namespace {

// Interface principle: a report takes at most two touches after the number (ours).
constexpr int kSayTouches = 2;
constexpr int kWalks = 1000;
constexpr int kTouchesOfAWalk = 6;

std::size_t said(Field& field, const char* jersey) { return field.athlete(jersey)->said.size(); }

}  // namespace

TEST_CASE("Say is not handed out before somebody has a code to come back with") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-say"));
  REQUIRE(field.until([&] { return field.screen() == "people"; }));
  CHECK(field.shows("Set a code first"));
  CHECK(field.app().shell().lock()->wall().isEmpty());
}

TEST_CASE("A report takes two touches after the number, is on disk, and signs for nobody") {
  const Ground ground;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(openSay(field));
    REQUIRE(iAm(field, "88"));
    field.countAnew();
    REQUIRE(field.touch("place-jaw-left"));
    REQUIRE(field.touch("tight"));
    CHECK(field.touches() <= kSayTouches);
    CHECK(field.shows("Your left cheek: tight or pinches"));
    CHECK(field.shows("before the next practice"));
    REQUIRE(field.touch("say-done"));
    CHECK(field.until([&] { return field.app().shell().say()->step() == "number"; }));
    CHECK_FALSE(field.reads("88"));
  }
  Field again(ground.path());
  REQUIRE(again.open());
  REQUIRE(said(again, "88") == 1);
  const season::SaidRecord& kept = again.athlete("88")->said.front();
  CHECK(kept.where == fit::Mark::jaw);
  CHECK(kept.side == fit::Side::left);
  CHECK(kept.feels == fit::Feels::tight);
  bool isSigned = true;
  again.app().desk().history(again.athlete("88")->id, &again.app().view(), [&](const Result<std::vector<book::Fact>>& facts) {
    REQUIRE(facts);
    for (const book::Fact& fact : *facts) {
      if (std::holds_alternative<book::Said>(fact.body)) isSigned = !fact.who.empty();
    }
  });
  CHECK(again.until([&] { return !isSigned; }));
}

TEST_CASE("What was said by mistake is taken back and is no work for anybody") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("broke"));
  CHECK(field.shows("Do not wear this helmet"));
  REQUIRE(field.touch("undo"));
  REQUIRE(field.until([&] { return field.app().shell().say()->step() == "where"; }));
  CHECK(said(field, "88") == 0);
}

TEST_CASE("A number that nobody wears says so; the second digit of one that somebody wears opens the helmet with initials and no name") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(type(field, "9"));
  CHECK(field.shows("Nobody here wears 9"));
  REQUIRE(field.touch("key-clear"));
  REQUIRE(type(field, "8"));
  CHECK_FALSE(field.reads("Nobody here wears"));
  REQUIRE(type(field, "8"));
  CHECK(field.shows("88  B. L."));
  for (const char* name : {"Lindqvist", "Bo", "Okafor", "Dele", "Marsh", "Teo", "Kim", "Parr"}) {
    INFO(name);
    CHECK_FALSE(field.reads(QLatin1String(name)));
  }
  REQUIRE(field.touch("say-not-me"));
  CHECK(field.app().shell().say()->step() == "number");
}

TEST_CASE("A number of one digit is done by a touch, and two with one number choose by their initials") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  const auto add = [&](const book::AthleteAdded& athlete) {
    const std::size_t before = field.views().athletes.size();
    field.app().desk().submit([athlete](const season::Views& views, Instant) { return book::addAthlete(views, athlete); }, nullptr, {});
    REQUIRE(field.until([&] { return field.views().athletes.size() == before + 1; }));
  };
  add({"5", "Quillfeather", "Nico", 2009});
  add({"88", "Larkspur", "Bea", 2009});
  REQUIRE(openSay(field));
  REQUIRE(type(field, "5"));
  CHECK(field.app().shell().say()->step() == "number");
  REQUIRE(field.touch("key-enter"));
  CHECK(field.shows("5  N. Q."));
  REQUIRE(field.touch("say-not-me"));
  REQUIRE(type(field, "88"));
  CHECK(field.shows("Which are you?"));
  CHECK(field.shows("Bo. L."));
  CHECK(field.shows("Be. L."));
  const auto choices = field.app().shell().say()->matches();
  REQUIRE(field.touch(choices.front().toMap().value("text") == "Be. L." ? "0-me" : "1-me"));
  REQUIRE(field.touch("broke"));
  REQUIRE(field.until([&] { return field.app().shell().say()->step() == "said"; }));
  const auto& athletes = field.views().athletes;
  const auto bea = std::find_if(athletes.begin(), athletes.end(), [](const auto& each) { return each.second.given == "Bea"; });
  CHECK(bea->second.said.size() == 1);
}

TEST_CASE("The red way shows the stop screen, names nobody, and stands first on the board from its first touch") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("red-way"));
  CHECK(field.shows("Tell the athletic trainer now."));
  CHECK(field.shows("Not here? Tell a coach or any adult now."));
  CHECK(field.shows("Emergency: call 911"));
  CHECK_FALSE(field.reads("88"));
  REQUIRE(field.until([&] { return said(field, "88") == 1; }));
  CHECK(field.athlete("88")->said.front().isUnwell);
  CHECK_FALSE(field.athlete("88")->said.front().isAdultTold);
  const season::DueRow& first = field.app().shell().line()->board().rows.front();
  CHECK(first.jersey == "88");
  CHECK(first.reasons.front().kind == season::DueKind::seeAthleteNow);
  REQUIRE(field.touch("say-told"));
  REQUIRE(field.until([&] { return field.athlete("88")->said.front().isAdultTold; }));
  CHECK(field.app().shell().say()->step() == "number");
}

TEST_CASE("The red way of the number pad is kept for the team, whoever it was") {
  const Ground ground;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(openSay(field));
    REQUIRE(field.touch("red-way"));
    REQUIRE(field.until([&] { return field.views().team->unnamed.size() == 1; }));
    REQUIRE(field.touch("say-told"));
    REQUIRE(field.until([&] { return field.views().team->unnamed.front().isAdultTold; }));
    // The Line says so, on top, and leads to it.
    REQUIRE(backToStaff(field));
    REQUIRE(field.touch("door-line"));
    CHECK(field.shows("A player at this tablet"));
    REQUIRE(field.touch("notice-act"));
    CHECK(field.until([&] { return field.screen() == "unnamed"; }));
  }
  Field again(ground.path());
  REQUIRE(again.open());
  REQUIRE(again.views().team->unnamed.size() == 1);
  CHECK(again.views().team->unnamed.front().isUnwell);
  CHECK_FALSE(again.views().team->unnamed.front().isAcknowledged);
}

TEST_CASE("The red way touched by mistake stays for staff to ask, and the report goes on") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("red-way"));
  REQUIRE(field.touch("say-mistake"));
  REQUIRE(field.until([&] { return said(field, "88") == 1 && field.athlete("88")->said.front().isMistake; }));
  CHECK_FALSE(field.athlete("88")->said.front().isAnswered);
  CHECK(field.app().shell().line()->board().rows.front().jersey == "88");
  CHECK(field.app().shell().say()->step() == "where");
  REQUIRE(field.touch("place-crown"));
  CHECK(field.shows("The top of your head"));
  REQUIRE(field.touch("loose"));
  CHECK(field.until([&] { return said(field, "88") == 2; }));
}

TEST_CASE("The red way stands on every page of Say") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  CHECK(field.find("red-way") != nullptr);
  REQUIRE(iAm(field, "88"));
  CHECK(field.find("red-way") != nullptr);
  REQUIRE(field.touch("words"));
  CHECK(field.until([&] { return field.find("red-way") != nullptr; }));
  field.app().shell().say()->keepWords("rubs");
  REQUIRE(field.touch("place-crown"));
  REQUIRE(field.touch("tight"));
  REQUIRE(field.until([&] { return field.app().shell().say()->step() == "said"; }));
  CHECK(field.until([&] { return field.find("red-way") != nullptr; }));
}

TEST_CASE("What was typed is reported when the one who typed it walks away") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("words"));
  models::SayModel& say = *field.app().shell().say();
  say.typeWords("rubs behind the ear");
  say.setQuietTime(1, 1);
  REQUIRE(field.until([&] { return said(field, "88") == 1; }));
  CHECK(field.athlete("88")->said.front().words == "rubs behind the ear");
  CHECK(say.step() == "number");
  CHECK_FALSE(field.reads("rubs behind the ear"));
}

TEST_CASE("Whoever types a number on the shared tablet is not shown what was reported before") {
  const Ground ground;
  field::sayEarlier(ground.path(), "88", fit::Mark::jaw, fit::Side::left, {1});
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  CHECK(field.app().shell().say()->findings().isEmpty());
  CHECK(field.app().shell().say()->seen().isEmpty());
}

TEST_CASE("Something broke says in brick not to wear the helmet") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("broke"));
  REQUIRE(field.shows("Do not wear this helmet. Hand it to staff now."));
  CHECK(field.find("say-next")->property("tone") == "stop");
}

TEST_CASE("Say leads to the staff's side by a code only, and whoever has it signs") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  CHECK(field.app().desk().person().empty());
  field.press(Qt::Key_Escape);
  field.press(Qt::Key_Back);
  CHECK(field.screen() == "say");
  REQUIRE(field.touch("say-staff"));
  REQUIRE(field.until([&] { return field.screen() == "locked"; }));
  REQUIRE(enterCode(field, "111119"));
  CHECK(field.screen() == "locked");
  CHECK(field.shows("That is not the code"));
  REQUIRE(enterCode(field, kCode));
  REQUIRE(field.until([&] { return field.screen() == "doors"; }));
  CHECK_FALSE(field.app().desk().person().empty());
}

TEST_CASE("Missed codes make one wait, and starting the app anew does not end it") {
  const Ground ground;
  {
    Field field(ground.path());
    REQUIRE(field.open());
    REQUIRE(openSay(field));
    REQUIRE(field.touch("say-staff"));
    for (int i = 0; i < 3; ++i) REQUIRE(enterCode(field, "111119"));
    CHECK(field.shows("then try again"));
  }
  Field again(ground.path());
  REQUIRE(again.open());
  CHECK(again.screen() == "locked");
  CHECK(again.shows("then try again"));
  CHECK_FALSE(again.find("key-4")->isEnabled());
}

TEST_CASE("Whoever leaves before it is on disk has said it all the same, and the next one is not shown it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  models::SayModel& say = *field.app().shell().say();
  say.touchPlace("jaw-left");
  say.feels("tight");
  REQUIRE(say.isBusy());
  say.begin();
  REQUIRE(field.until([&] { return !say.isBusy(); }));
  CHECK(said(field, "88") == 1);
  CHECK(say.step() == "number");
  CHECK(say.said().isEmpty());
}

TEST_CASE("Say clears itself when nobody touches it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  models::SayModel& say = *field.app().shell().say();
  say.setQuietTime(1, 1);
  CHECK(field.until([&] { return say.step() == "number"; }));
  CHECK(say.number().isEmpty());
  CHECK(say.jersey().isEmpty());
}

TEST_CASE("Whatever is pasted as own words is kept as one line of text and hurts nothing") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  models::SayModel& say = *field.app().shell().say();
  const QString family = QString::fromUtf8("\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x91\xA7");
  const QStringList hostile{family, QString::fromUtf8("\xD9\x85\xD8\xB1\xD8\xAD\xD8\xA8\xD8\xA7 abc"), QString(10'000, QLatin1Char('x')),
                            QStringLiteral("one\ntwo\x01three\x7F"), QStringLiteral("=HYPERLINK(\"x\")<b>&amp;</b>")};
  for (const QString& words : hostile) {
    REQUIRE(iAm(field, "88"));
    const std::size_t before = said(field, "88");
    say.openWords();
    say.keepWords(words);
    REQUIRE(field.touch("place-jaw-left"));
    REQUIRE(field.touch("loose"));
    REQUIRE(field.until([&] { return say.step() == "said"; }));
    REQUIRE(said(field, "88") == before + 1);
    const QString kept = QString::fromStdString(field.athlete("88")->said.back().words);
    CHECK(kept.size() <= 1000);
    CHECK_FALSE(kept.contains(QLatin1Char('\n')));
    CHECK(kept.left(3) == words.left(3));
    REQUIRE(field.touch("say-done"));
  }
}

TEST_CASE("A thousand walks of random touches never reach the staff's side or another's name") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  std::mt19937 chance(20261014);
  std::uniform_real_distribution<double> share(0.0, 1.0);
  for (int walk = 0; walk < kWalks; ++walk) {
    for (int i = 0; i < kTouchesOfAWalk; ++i) {
      field.touchAt(share(chance), share(chance));
      if (chance() % 16 == 0) field.press(chance() % 2 == 0 ? Qt::Key_Escape : Qt::Key_Back);
    }
    INFO("walk " << walk << ", screen " << field.screen().toStdString());
    const bool isOutside = field.screen() == "say" || field.screen() == "locked";
    REQUIRE(isOutside);
    REQUIRE(field.app().desk().person().empty());
    REQUIRE_FALSE(field.reads("Lindqvist"));
    REQUIRE_FALSE(field.reads("Okafor"));
  }
  CHECK(field.touches() >= kWalks * kTouchesOfAWalk);
}
