// SPDX-License-Identifier: Apache-2.0
#include <filesystem>
#include <memory>

#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "platform/system/file_keys.h"
#include "qml/models/desk.h"
#include "tests/qml/models/one_application.h"

using namespace snugline;
using models::Desk;
using test::application;
using test::until;

namespace {

class StandingClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return instantAt(Day{20740}, 840, -300); }
};

struct Room {
  QTemporaryDir folder;
  std::unique_ptr<Desk> desk;

  Room() {
    application();
    open();
  }
  [[nodiscard]] QString path() const { return folder.filePath("team.snugbook"); }
  void open() {
    const std::string keys = folder.filePath("keys").toStdString();
    desk = std::make_unique<Desk>([] { return std::make_unique<StandingClock>(); },
                                  [keys] { return std::make_unique<platform::FileKeys>(keys); });
    book::TeamFounded team;
    team.name = "Room";
    team.season = "2026";
    desk->open(path(), team);
  }
  [[nodiscard]] bool isOpen() const {
    return until([this] { return desk->isOpen(); });
  }
  void add(const char* jersey, const char* family, QObject* context, Desk::Done done) {
    const book::AthleteAdded added{jersey, family, "A", 2009};
    desk->submit([added](const season::Views& views, Instant) { return book::addAthlete(views, added); }, context, std::move(done));
  }
};

}  // namespace

TEST_CASE("a missing Book is founded and a job's facts are in the mirror before done is called") {
  Room room;
  REQUIRE(room.isOpen());
  QObject context;
  std::vector<std::string> order;
  QObject::connect(room.desk.get(), &Desk::changed, &context,
                   [&] { order.emplace_back(room.desk->views().athletes.empty() ? "changed, old" : "changed"); });
  room.add("57", "Okafor", &context, [&](const Result<book::Appended>& outcome) { order.emplace_back(outcome ? "done" : "refused"); });
  REQUIRE(until([&] { return order.size() == 2; }));
  CHECK(order == std::vector<std::string>{"changed", "done"});
  CHECK(room.desk->views().athleteByJersey("57") != nullptr);
}

TEST_CASE("a refused job writes nothing, changes nothing and says why") {
  Room room;
  REQUIRE(room.isOpen());
  QObject context;
  int changes = 0;
  QObject::connect(room.desk.get(), &Desk::changed, &context, [&] { ++changes; });
  std::optional<Error> refused;
  room.add("57", "", &context, [&](const Result<book::Appended>& outcome) { refused = outcome ? Error{} : outcome.error(); });
  REQUIRE(until([&] { return refused.has_value(); }));
  CHECK(refused->code == ErrorCode::outOfRange);
  CHECK(changes == 0);
  CHECK(room.desk->views().athletes.empty());
}

TEST_CASE("jobs run in the order in which they were handed over") {
  Room room;
  REQUIRE(room.isOpen());
  QObject context;
  std::vector<int> done;
  for (int i = 0; i < 5; ++i) {
    room.add(std::to_string(i).c_str(), "Marsh", &context, [&done, i](const Result<book::Appended>&) { done.push_back(i); });
  }
  REQUIRE(until([&] { return done.size() == 5; }));
  CHECK(done == std::vector<int>{0, 1, 2, 3, 4});
}

TEST_CASE("nobody is told when who asked is gone, and the fact is written all the same") {
  Room room;
  REQUIRE(room.isOpen());
  auto context = std::make_unique<QObject>();
  bool isTold = false;
  room.add("4", "Reyes", context.get(), [&](const Result<book::Appended>&) { isTold = true; });
  context.reset();
  REQUIRE(until([&] { return room.desk->views().athleteByJersey("4") != nullptr; }));
  CHECK_FALSE(isTold);
}

TEST_CASE("what was handed over before the desk is closed is on disk when it opens again") {
  Room room;
  REQUIRE(room.isOpen());
  room.add("73", "Tamm", nullptr, {});
  room.desk.reset();
  room.open();
  REQUIRE(room.isOpen());
  CHECK(room.desk->views().athleteByJersey("73") != nullptr);
}

TEST_CASE("a corrected fact is gone from the mirror") {
  Room room;
  REQUIRE(room.isOpen());
  QObject context;
  std::string fact;
  room.add("21", "Boyd", &context,
           [&](const Result<book::Appended>& outcome) { fact = outcome ? outcome->ids.front() : std::string("none"); });
  REQUIRE(until([&] { return !fact.empty(); }));
  bool isDone = false;
  room.desk->correct({fact}, &context, [&](const Result<book::Appended>& outcome) { isDone = outcome.has_value(); });
  REQUIRE(until([&] { return isDone; }));
  CHECK(room.desk->views().athletes.empty());
}

TEST_CASE("a file that is no Book is said to be none, and left as it is") {
  application();
  const QTemporaryDir folder;
  const QString path = folder.filePath("picture.snugbook");
  {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("not a Book, but long enough to be taken for something at first sight");
  }
  const std::string keys = folder.filePath("keys").toStdString();
  Desk desk([] { return std::make_unique<StandingClock>(); }, [keys] { return std::make_unique<platform::FileKeys>(keys); });
  std::optional<Error> failed;
  QObject::connect(&desk, &Desk::failed, &desk, [&](const Error& error) { failed = error; });
  desk.open(path, {});
  REQUIRE(until([&] { return failed.has_value(); }));
  CHECK(failed->code == ErrorCode::notABook);
  CHECK_FALSE(desk.isOpen());
  CHECK(std::filesystem::file_size(path.toStdString()) == 68);
}
