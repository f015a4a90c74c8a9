// SPDX-License-Identifier: Apache-2.0
// What was chosen for the next season outlasts the program, and a draft of another turn is nobody's.
#include <memory>

#include <QFile>
#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "core/season/turn.h"
#include "platform/system/file_keys.h"
#include "qml/models/choices.h"
#include "qml/models/turn_model.h"
#include "tests/qml/models/one_application.h"

using namespace snugline;
using test::until;

namespace {

Day today = dayOf(2026, 11, 27);

class SetClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return instantAt(today, 840, -300); }
};

struct Room {
  QTemporaryDir folder;
  std::unique_ptr<models::Choices> choices;
  std::unique_ptr<models::Desk> desk;
  std::unique_ptr<models::TurnModel> turn;

  Room() {
    test::application();
    begin();
  }
  ~Room() { end(); }
  void begin() {
    choices = std::make_unique<models::Choices>(folder.filePath("choices.ini"));
    const std::string keys = folder.filePath("keys").toStdString();
    desk = std::make_unique<models::Desk>([] { return std::make_unique<SetClock>(); },
                                          [keys] { return std::make_unique<platform::FileKeys>(keys); });
    turn = std::make_unique<models::TurnModel>(desk.get(), choices.get());
    book::TeamFounded team;
    team.name = "Room";
    team.season = "2026";
    desk->open(folder.filePath("team.snugbook"), team);
    REQUIRE(until([this] { return desk->isOpen(); }));
  }
  void end() {
    turn.reset();
    desk.reset();
    choices.reset();
  }
  void add(const char* jersey, int birthYear) {
    bool isDone = false;
    const book::AthleteAdded added{jersey, "Family", "A", birthYear};
    desk->submit([added](const season::Views& views, Instant) { return book::addAthlete(views, added); }, turn.get(),
                 [&](const Result<book::Appended>&) { isDone = true; });
    REQUIRE(until([&] { return isDone; }));
  }
  void close() {
    turn->close();
    REQUIRE(until([this] { return turn->isBetween() && !turn->isBusy(); }));
  }
  [[nodiscard]] QString draft() const { return folder.filePath("next_season.json"); }
};

}  // namespace

TEST_CASE("the next season's name, days and who leaves outlast the program, until the season is opened") {
  Room room;
  room.add("07", 2008);
  room.add("12", 2009);
  room.close();
  CHECK(room.turn->nameOffer() == "2027");
  CHECK(room.turn->daysOffer().isEmpty());  // the days of 2026 were never set
  room.turn->setName("2027");
  room.turn->setDays("2027-08-02", "2027-11-19");
  room.turn->toggleYear("2008");
  CHECK(room.turn->canOpen());
  room.end();
  room.begin();
  CHECK(room.turn->name() == "2027");
  CHECK(room.turn->start() == "2027-08-02");
  CHECK(room.turn->canOpen());
  const QVariantList roster = room.turn->roster();
  REQUIRE(roster.size() == 2);
  CHECK(roster[0].toMap()["number"] == "07");  // the eldest first
  CHECK(roster[0].toMap()["isLeaving"].toBool());
  CHECK_FALSE(roster[1].toMap()["isLeaving"].toBool());
  room.turn->openNext();
  REQUIRE(until([&] { return !room.turn->isBetween() && !room.turn->isBusy(); }));
  CHECK_FALSE(QFile::exists(room.draft()));
  CHECK(room.turn->name().isEmpty());
}

TEST_CASE("the last day of a season is known, and before it closing is no main act") {
  Room room;
  CHECK_FALSE(room.turn->isLastDay());  // no last day is set
  room.close();
  room.turn->setName("2027");
  room.turn->setDays("2027-08-02", "2027-11-19");
  room.turn->openNext();
  REQUIRE(until([&] { return !room.turn->isBetween() && !room.turn->isBusy(); }));
  const Day before = today;
  for (const auto& [day, isLast] : {std::pair{18, false}, std::pair{19, true}, std::pair{27, true}}) {
    today = dayOf(2027, 11, day);
    CHECK(room.turn->isLastDay() == isLast);
  }
  today = before;
}

TEST_CASE("a draft of another turn, or one that cannot be read, is left out") {
  Room room;
  room.close();
  for (const char* bytes : {R"({"after":"2019","name":"2020"})", "{", "[1,2]", R"({"after":"2026","name":7,"leaving":{"a":1}})"}) {
    room.end();
    QFile file(room.draft());
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    room.begin();
    CHECK(room.turn->name().isEmpty());
    CHECK_FALSE(room.turn->canOpen());
  }
}

TEST_CASE("a year is taken whole and put back whole, and nobody leaves before somebody says so") {
  Room room;
  room.add("07", 2008);
  room.add("09", 2008);
  room.add("12", 2010);
  room.close();
  const auto leaving = [&] {
    int count = 0;
    for (const QVariant& row : room.turn->roster()) count += row.toMap()["isLeaving"].toBool() ? 1 : 0;
    return count;
  };
  CHECK(leaving() == 0);
  room.turn->toggleYear("2008");
  CHECK(leaving() == 2);
  room.turn->toggle(room.turn->roster().front().toMap()["athlete"].toString());
  CHECK(leaving() == 1);
  room.turn->toggleYear("2008");
  CHECK(leaving() == 2);
  room.turn->toggleYear("2008");
  CHECK(leaving() == 0);
}
