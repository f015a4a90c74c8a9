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
    CHECK(field.shows("Left cheek: hurts or presses"));
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

TEST_CASE("A number that nobody wears says so, and one that somebody wears shows one letter and no name") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(type(field, "8"));
  CHECK(field.shows("Nobody here wears 8"));
  REQUIRE(type(field, "8"));
  CHECK(field.shows("That is me: B."));
  for (const char* name : {"Lindqvist", "Bo", "Okafor", "Dele", "Marsh", "Teo", "Kim", "Parr"}) {
    INFO(name);
    CHECK_FALSE(field.reads(QLatin1String(name)));
  }
}

TEST_CASE("A hit or feeling unwell shows the stop screen, names nobody, and stands first on the board") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("say-unwell"));
  CHECK(field.shows("Tell the trainer now"));
  CHECK_FALSE(field.reads("88"));
  REQUIRE(field.until([&] { return said(field, "88") == 1; }));
  CHECK(field.athlete("88")->said.front().isUnwell);
  const season::DueRow& first = field.app().shell().line()->board().rows().front();
  CHECK(first.jersey == "88");
  CHECK(first.reasons.front().kind == season::DueKind::seeAthleteNow);
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
