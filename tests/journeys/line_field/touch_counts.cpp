// SPDX-License-Identifier: Apache-2.0
// Touches of the jobs that are done most, counted on the real screens and printed. The limits are ours.
#include SNUGLINE_CATCH_HEADER

#include <cstdio>

#include <QTemporaryDir>
#include <QTest>

#include <QQuickView>

#include "field.h"
#include "qml/models/shell.h"
#include "say_steps.h"

using namespace snugline;
using field::Field;

namespace {

constexpr int kFirstFit = 14;  // after the athlete is chosen
constexpr int kRecheck = 4;
constexpr int kKnownHelmet = 2;  // after the scan
constexpr int kNewAlike = 2;     // a new helmet, of the model and size of the one before
constexpr int kReport = 2;       // after the number
constexpr int kSwap = 5;         // from the athlete's row to the spare on the head: why, and where the old one is
constexpr int kLineCheck = 8;    // of fifty, nothing off, from the board: screens of eight to twelve

// True within the limit. The figure is printed either way.
bool isWithin(const char* job, const Field& field, int limit) {
  std::printf("touches: %s %d, at most %d\n", job, field.touches(), limit);
  return field.touches() <= limit;
}

void scan(Field& field, const char* tag) {
  for (const char c : std::string(tag)) QTest::keyClick(&field.app().view(), c);
  QTest::keyClick(&field.app().view(), Qt::Key_Return);
}

const season::UnitRecord* unit(const Field& field, const std::string& serial) {
  for (const auto& [id, record] : field.views().units) {
    if (record.serial == serial) return &record;
  }
  return nullptr;
}

// A helmet on the shelf, sound and in date, of the size that everybody here wears.
bool addSpare(Field& field, const std::string& serial) {
  bool isDone = false;
  field.app().desk().submit(
      [serial](const season::Views& views, Instant at) -> Result<book::Drafts> {
        auto tag = gear::parseTag(serial, dayOf(at));
        if (!tag) return tl::unexpected<Error>(tag.error());
        book::Arrival arrival;
        arrival.tag = *tag;
        arrival.sheet = views.sheets.begin()->first;
        arrival.size = "L";
        arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
        for (auto& point : arrival.points) point.state = gear::PointState::sound;
        return book::takeIn(views, arrival, dayOf(at));
      },
      &field.app().shell(), [&isDone](const Result<book::Appended>& outcome) { isDone = outcome.has_value(); });
  return field.until([&isDone] { return isDone; });
}

}  // namespace

TEST_CASE("touches of a first fit with nothing wrong") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-57"));
  field.countAnew();
  REQUIRE(field.touch("wet"));
  REQUIRE(field.touch("set"));
  for (int i = 0; i < 9; ++i) REQUIRE(field.touch("snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.athlete("57")->checks.back().verdict == fit::Verdict::fits);
  CHECK(isWithin("first fit", field, kFirstFit));
}

TEST_CASE("touches of a recheck with nothing wrong") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-88"));
  field.countAnew();
  for (int i = 0; i < 3; ++i) REQUIRE(field.touch("all-snug"));
  REQUIRE(field.touch("all-sound"));
  REQUIRE(field.until([&] { return field.screen() == "verdict"; }));
  CHECK(field.athlete("88")->checks.back().verdict == fit::Verdict::fits);
  CHECK(isWithin("recheck", field, kRecheck));
}

TEST_CASE("touches of a known helmet at the Dock") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-dock"));
  scan(field, "H-0231");
  models::DockModel& dock = *field.app().shell().dock();
  REQUIRE(field.until([&] { return dock.serial() == "H-0231"; }));
  field.countAnew();
  REQUIRE(field.touch("allSound"));
  REQUIRE(field.touch("inService"));
  REQUIRE(field.until([&] { return dock.count() == 1; }));
  CHECK(unit(field, "H-0231")->isInService);
  CHECK(isWithin("known helmet", field, kKnownHelmet));
}

TEST_CASE("touches of a new helmet of the model and size of the one before") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-dock"));
  models::DockModel& dock = *field.app().shell().dock();
  scan(field, "N-0001");
  REQUIRE(field.touch(QString::fromStdString(field.views().sheets.begin()->first)));
  for (const char* name : {"M", "2026", "allSound", "inService"}) REQUIRE(field.touch(QLatin1String(name)));
  REQUIRE(field.until([&] { return dock.count() == 1; }));
  scan(field, "N-0002");
  REQUIRE(field.until([&] { return dock.serial() == "N-0002"; }));
  field.countAnew();
  const bool isTwoInOne = field.find("lastSound") == nullptr;  // the model as before, then all seven sound and in service
  REQUIRE(field.touch(isTwoInOne ? "last" : "lastSound"));
  REQUIRE(field.touch(isTwoInOne ? "allSoundInService" : "inService"));
  REQUIRE(field.until([&] { return dock.count() == 2; }));
  CHECK(unit(field, "N-0002")->isInService);
  CHECK(unit(field, "N-0002")->size == "M");
  CHECK(isWithin("new helmet alike", field, kNewAlike));
}

TEST_CASE("touches of a swap on the sideline") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(addSpare(field, "S-0001"));
  REQUIRE(field.touch("door-line"));
  field.countAnew();
  REQUIRE(field.touch("row-88"));
  REQUIRE(field.touch("choose"));
  REQUIRE(field.touch("chin-strap"));
  if (field.find("hands") != nullptr) {
    REQUIRE(field.touch("hands"));  // where the old one is now
  }
  REQUIRE(field.touch("spare-S-0001"));
  REQUIRE(field.until([&] { return unit(field, "S-0001")->athletes.size() == 1; }));
  CHECK(isWithin("swap", field, kSwap));
}

TEST_CASE("touches of a report after the number") {
  const field::Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field::openSay(field));
  REQUIRE(field::iAm(field, "88"));
  field.countAnew();
  REQUIRE(field.touch("place-jaw-left"));
  REQUIRE(field.touch("tight"));
  REQUIRE(field.until([&] { return field.athlete("88")->said.size() == 1; }));
  CHECK(isWithin("report", field, kReport));
}

TEST_CASE("touches of a line check of fifty on the first cold day, with nothing off") {
  const QTemporaryDir folder;
  std::vector<std::string> jerseys;
  for (int i = 10; i < 60; ++i) jerseys.push_back(std::to_string(i));
  field::makeColdBook(folder.path().toStdString(), jerseys);
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  models::Shell& shell = field.app().shell();
  REQUIRE(shell.weather()->typeTemperature(QStringLiteral("20")));  // degrees Fahrenheit
  shell.weather()->flush();
  REQUIRE(field.until([&] { return !shell.weather()->draft() && shell.line()->beforePractice() == 50; }));
  REQUIRE(field.touch("door-line"));
  field.countAnew();
  REQUIRE(field.touch("line-check"));
  while (!shell.lineCheck()->isThrough()) REQUIRE(field.touch("line-all"));
  REQUIRE(field.until([&] { return shell.line()->beforePractice() == 0; }));
  CHECK(isWithin("line check of fifty", field, kLineCheck));
}
