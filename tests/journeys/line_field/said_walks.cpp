// SPDX-License-Identifier: Apache-2.0
// What comes of what athletes say: a row with how often before, a look at the marks concerned, the outcome told at the next visit; a hit
// or feeling unwell seen to by staff; and that Say holds nobody's name and gives way to no key.
#include SNUGLINE_CATCH_HEADER

#include <QQuickItem>
#include <QQuickView>
#include <QRegularExpression>

#include "qml/models/choices.h"
#include "qml/models/line_model.h"
#include "say_steps.h"

using namespace snugline;
using field::backToStaff;
using field::Field;
using field::Ground;
using field::iAm;
using field::openSay;
using field::type;

namespace {

// Snug for everything that is still asked, as a careful pair of hands finds it.
bool finishSnug(Field& field) {
  constexpr int kMost = 40;
  for (int i = 0; i < kMost && field.screen() != "verdict"; ++i) {
    const QString stage = field.stage();
    const bool isTouched = stage == "view"     ? field.touch("all-snug")
                           : stage == "points" ? field.touch("all-sound")
                           : stage == "mark"   ? field.touch("snug")
                                               : field.until([&] { return field.screen() == "verdict" || field.stage() != stage; });
    if (!isTouched) {
      UNSCOPED_INFO("stopped at " << field.title().toStdString() << ", " << stage.toStdString());
      return false;
    }
  }
  return field.until([&] { return field.screen() == "verdict"; });
}

bool report(Field& field, const QString& number, const QString& place, const QString& feels) {
  return iAm(field, number) && field.touch("place-" + place) && field.touch(feels) && field.touch("say-done");
}

const season::DueRow& rowOf(Field& field, const std::string& jersey) {
  const auto& rows = field.app().shell().line()->board().rows;
  for (const season::DueRow& row : rows) {
    if (row.jersey == jersey) return row;
  }
  FAIL("no row of " << jersey);
  return rows.front();
}

}  // namespace

TEST_CASE("What was said is the first question of a look, likely advice beside it, and the athlete is told what was done") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(report(field, "88", "jaw-left", "tight"));
  REQUIRE(backToStaff(field));
  REQUIRE(field.touch("door-line"));
  CHECK(field.shows("Says: jaw tight on the left"));
  REQUIRE(field.touch("act-88"));
  REQUIRE(field.until([&] { return field.screen() == "guide"; }));
  CHECK(field.app().shell().guide()->kind() == "Look");
  CHECK(field.shows("Athlete says: jaw tight on the left"));
  CHECK(field.shows("If so: "));
  REQUIRE(field.touch("over"));
  REQUIRE(field.touch("left"));
  CHECK(field.stage() == "advice");
  REQUIRE(field.touch("pumps-2"));
  REQUIRE(finishSnug(field));
  CHECK(field.athlete("88")->said.front().isAnswered);
  REQUIRE(field.touch("next-athlete"));
  REQUIRE(field.until([&] { return field.screen() == "line"; }));
  CHECK_FALSE(field.reads("Says: jaw"));
  field.press(Qt::Key_Escape);
  REQUIRE(field.touch("door-say"));
  REQUIRE(iAm(field, "88"));
  CHECK(field.shows("Your helmet was checked today: less air in the left jaw pad."));
  CHECK_FALSE(field.reads("jaw snug"));
}

TEST_CASE("What came of an athlete's word is told in Spanish where the athlete speaks it, and the staff's screens stay as they were") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(field.touch("say-language"));
  REQUIRE(report(field, "88", "jaw-left", "tight"));
  REQUIRE(backToStaff(field));
  REQUIRE(field.touch("door-line"));
  CHECK(field.shows("Says: jaw tight on the left"));
  REQUIRE(field.touch("act-88"));
  REQUIRE(field.touch("over"));
  REQUIRE(field.touch("left"));
  REQUIRE(field.touch("pumps-2"));
  REQUIRE(finishSnug(field));
  REQUIRE(field.touch("next-athlete"));
  field.press(Qt::Key_Escape);
  REQUIRE(field.touch("door-say"));
  REQUIRE(iAm(field, "88"));
  CHECK(field.shows(QString::fromUtf8("Revisaron tu casco hoy: menos aire en la carrillera izquierda.")));
}

TEST_CASE("A place said on other days before says so on its row, and stands in the Season") {
  const Ground ground;
  field::sayEarlier(ground.path(), "88", fit::Mark::jaw, fit::Side::left, {7, 3});
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(report(field, "88", "jaw-left", "tight"));
  REQUIRE(backToStaff(field));
  REQUIRE(field.touch("door-line"));
  CHECK(field.shows("third time since 7 Oct"));
  field.press(Qt::Key_Escape);
  REQUIRE(field.touch("door-book"));
  CHECK(field.shows("1 place said again and again"));
  REQUIRE(field.touch("season"));
  CHECK(field.shows("88 Lindqvist: jaw on the left"));
  CHECK(field.shows("Said on 3 days, 7 Oct to 14 Oct: tight 3 times. Not all of it is seen yet"));
  REQUIRE(field.touch("again-0"));
  CHECK(field.until([&] { return field.screen() == "athlete"; }));
}

TEST_CASE("A season with nothing said again and again says so plainly") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-book"));
  CHECK(field.shows("Nothing said again and again"));
  REQUIRE(field.touch("season"));
  CHECK(field.shows("Nothing so far."));
}

TEST_CASE("Staff have been told of a hit, who has the mark closes it, and the row stays until the seven points were checked since") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("red-way"));
  REQUIRE(field.touch("say-told"));
  REQUIRE(backToStaff(field));
  REQUIRE(field.touch("door-line"));
  CHECK(rowOf(field, "88").grade == season::Grade::seeNow);
  REQUIRE(field.touch("row-88"));
  CHECK(field.shows("See the athlete now"));
  CHECK(field.shows("The athlete says that an adult was told"));
  REQUIRE(field.touch("told"));
  REQUIRE(field.until([&] { return field.athlete("88")->said.front().isAcknowledged; }));
  CHECK(field.shows("Back only with written permission from a licensed health care professional"));
  CHECK(rowOf(field, "88").reasons.front().kind == season::DueKind::withTrainer);
  CHECK(rowOf(field, "88").lane == season::Lane::doNotWear);
  REQUIRE(field.touch("close"));
  REQUIRE(field.until([&] { return field.athlete("88")->said.front().isAnswered; }));
  CHECK(rowOf(field, "88").reasons.front().kind == season::DueKind::pointsAfterHit);
  CHECK(rowOf(field, "88").lane == season::Lane::doNotWear);
}

TEST_CASE("Who has not the mark reads who closes a hit, and the Book refuses it from them") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  const std::string keeper = field.app().desk().views().people.begin()->first;
  field.app().desk().setPerson(keeper);
  field.app().shell().doors()->changePerson(QString::fromStdString(keeper), "admin", false);
  REQUIRE(field.until([&] { return !field.views().people.at(keeper).isPractitioner; }));
  REQUIRE(openSay(field));
  REQUIRE(iAm(field, "88"));
  REQUIRE(field.touch("red-way"));
  REQUIRE(field.touch("say-told"));
  REQUIRE(backToStaff(field));
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("row-88"));
  REQUIRE(field.touch("told"));
  REQUIRE(field.until([&] { return field.athlete("88")->said.front().isAcknowledged; }));
  CHECK(field.shows("An athletic trainer or designated health care professional does this"));
  REQUIRE(field.until([&] { return field.find("close") != nullptr; }));
  CHECK_FALSE(field.find("close")->isEnabled());
  field.app().shell().unwell()->act("close");
  CHECK(field.shows("An athletic trainer or designated health care professional closes this"));
  CHECK_FALSE(field.athlete("88")->said.front().isAnswered);
}

TEST_CASE("The first screen of Say changes the language at once, keeps it, and leaves the staff theirs") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  CHECK(field.reads("Your jersey number"));
  REQUIRE(field.touch("say-language"));
  CHECK(field.app().shell().say()->language() == "es");
  CHECK(field.shows("English"));
  REQUIRE(iAm(field, "88"));
  field.app().shell().say()->begin();
  CHECK(field.app().shell().say()->language() == "es");
  REQUIRE(backToStaff(field));
  CHECK(field.app().choices().language() == "en");
  CHECK(field.reads("Line"));
  REQUIRE(field.touch("door-say"));
  CHECK(field.shows("English"));
}

TEST_CASE("No key of the device leads out of Say, at any step") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  models::SayModel& say = *field.app().shell().say();
  struct Press {
    int key, modifiers;
  };
  std::vector<Press> presses{{Qt::Key_Escape, 0},
                             {Qt::Key_Back, 0},
                             {Qt::Key_Home, 0},
                             {Qt::Key_HomePage, 0},
                             {Qt::Key_Menu, 0},
                             {Qt::Key_Search, 0},
                             {Qt::Key_Left, Qt::AltModifier},
                             {Qt::Key_Right, Qt::AltModifier},
                             {Qt::Key_Home, Qt::AltModifier},
                             {Qt::Key_Tab, Qt::ControlModifier},
                             {Qt::Key_Tab, Qt::AltModifier},
                             {Qt::Key_W, Qt::ControlModifier},
                             {Qt::Key_Q, Qt::ControlModifier},
                             {Qt::Key_L, Qt::ControlModifier},
                             {Qt::Key_Backspace, 0}};
  for (int key = Qt::Key_F1; key <= Qt::Key_F12; ++key) presses.push_back({key, 0});
  for (const char* step : {"number", "where", "words", "said", "stop"}) {
    for (const Press& press : presses) {
      say.begin();
      if (step != std::string("number")) {
        say.setNumber("88");
      }
      if (step == std::string("words")) say.openWords();
      if (step == std::string("stop")) say.unwell();
      if (step == std::string("said")) {
        say.touchPlace("crown");
        say.feels("tight");
      }
      REQUIRE(field.until([&] { return !say.isBusy(); }));
      INFO(step << ", key " << press.key << ", with " << press.modifiers);
      REQUIRE(say.step() == step);
      field.press(press.key, press.modifiers);
      REQUIRE(field.screen() == "say");
      REQUIRE(field.app().desk().person().empty());
    }
  }
  REQUIRE(field.touch("say-told"));
  CHECK(say.step() == "number");
}

TEST_CASE("Nothing that Say puts on the glass or speaks is a name") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(openSay(field));
  models::SayModel& say = *field.app().shell().say();
  QStringList names;
  for (const auto& [id, athlete] : field.views().athletes) {
    names << QString::fromStdString(athlete.family) << QString::fromStdString(athlete.given);
  }
  names << "Kim"
        << "Parr";
  const auto check = [&](const char* step) {
    field.app().view().grabWindow();
    REQUIRE(say.step() == step);
    const QStringList words = field.everyWord();
    CHECK(words.size() > 20);
    for (const QString& name : names) {
      INFO(step << ", " << name.toStdString());
      // As a word of its own: "Bo" is no part of "Book".
      const QRegularExpression whole("\\b" + QRegularExpression::escape(name) + "\\b");
      CHECK(words.filter(whole).isEmpty());
    }
  };
  check("number");
  REQUIRE(iAm(field, "88"));
  check("where");
  REQUIRE(field.touch("words"));
  check("words");
  say.keepWords("rubs");
  REQUIRE(field.touch("place-crown"));
  REQUIRE(field.touch("tight"));
  REQUIRE(field.until([&] { return say.step() == "said"; }));
  check("said");
  REQUIRE(field.touch("say-done"));
  REQUIRE(iAm(field, "57"));
  REQUIRE(field.touch("red-way"));
  check("stop");
}
