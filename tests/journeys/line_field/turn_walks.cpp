// SPDX-License-Identifier: Apache-2.0
// The turn of a season by touch and by scanner: helmets handed in, missing ones lost, the season closed, taken back, closed again, the next
// one opened, the past one read; and what is left after a kill in the middle of it.
#include SNUGLINE_CATCH_HEADER

#include <csignal>
#include <cstdlib>

#include <sys/wait.h>

#include <QMetaObject>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>
#include <QTest>

#include "core/season/turn.h"
#include "field.h"
#include "qml/models/season_model.h"
#include "qml/models/shell.h"

using namespace snugline;
using field::Field;

namespace {

bool goTo(Field& field, std::initializer_list<const char*> names) {
  for (const char* name : names) {
    if (!field.touch(QLatin1String(name))) return false;
  }
  return true;
}
// As a hand scanner types: the tag and Enter.
void type(Field& field, const std::string& tag) {
  for (const char c : tag) QTest::keyClick(&field.app().view(), c);
  QTest::keyClick(&field.app().view(), Qt::Key_Return);
}
// As the camera reads.
void show(Field& field, const std::string& tag) {
  QMetaObject::invokeMethod(field.app().shell().scan(), "read", Q_ARG(QString, QString::fromStdString(tag)));
}
models::CollectModel& collect(Field& field) { return *field.app().shell().season()->collect(); }
models::TurnModel& turn(Field& field) { return *field.app().shell().season()->turn(); }
season::TurnCount count(Field& field) { return season::turnCount(field.views()); }
const season::UnitRecord* unit(Field& field, const std::string& serial) {
  for (const auto& [id, record] : field.views().units) {
    if (record.serial == serial) return &record;
  }
  return nullptr;
}
// On the roster or off it.
const season::AthleteRecord* who(Field& field, const std::string& jersey) {
  for (const auto& [id, record] : field.views().athletes) {
    if (record.jersey == jersey) return &record;
  }
  return nullptr;
}
std::string serialOf(int i) {
  const std::string number = std::to_string(i);
  return "T-" + std::string(4 - number.size(), '0') + number;
}

}  // namespace

TEST_CASE("Helmets are handed in one after another: each says whose it was, and a number does where a tag cannot be read") {
  const QTemporaryDir folder;
  field::makeBook(folder.path().toStdString());
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(goTo(field, {"door-book", "season", "collect"}));
  CHECK(field.shows("0 of 3 handed in"));
  type(field, "H-0231");
  CHECK(field.shows("It was with 57 Okafor, Dele"));
  CHECK(field.shows("1 of 3 handed in"));
  CHECK(field.athlete("57")->units.empty());
  // Seen again at once: what is shown stays, and it counts once.
  type(field, "H-0231");
  REQUIRE(field.until([&] { return !collect(field).isBusy(); }));
  CHECK(field.reads("1 of 3 handed in"));
  CHECK(field.reads("It was with 57 Okafor, Dele"));
  REQUIRE(field.touch("collect-number"));
  const auto keyAt = [&](bool isMatched) {
    REQUIRE(field.until([&] { return (field.find("match0") != nullptr) == isMatched; }));
    return field.find("key-8")->mapToScene({0, 0});
  };
  REQUIRE(field.touch("key-8"));
  const QPointF before = keyAt(true);
  REQUIRE(field.touch("key-erase"));
  CHECK(keyAt(false) == before);  // whoever a number means stands below the keys
  REQUIRE(field.touch("key-8"));
  CHECK(keyAt(true) == before);
  REQUIRE(field.touch("match0"));
  CHECK(field.shows("2 of 3 handed in"));
  REQUIRE(field.touch("close"));
  CHECK(field.athlete("88")->units.empty());
  // Another one in between, then the first again: now it says that it is in.
  type(field, "H-0231");
  CHECK(field.shows("In already since"));
  CHECK(count(field).collected == 2);
  // A number typed where a tag belongs is asked about.
  type(field, "12");
  CHECK(field.shows("12 may mean these"));
  REQUIRE(field.touch("collect-asked0"));
  CHECK(field.shows("3 of 3 handed in"));
  REQUIRE(field.touch("undo"));
  CHECK(field.shows("2 of 3 handed in"));
  CHECK(field.athlete("12")->units.size() == 1);
}

TEST_CASE("A tag that nobody knows, a refused one and a helmet that was away are said and do not stop the line") {
  const QTemporaryDir folder;
  field::makeSquad(folder.path().toStdString(), 4, 2);
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(goTo(field, {"door-book", "season", "collect"}));
  type(field, "QQ-999");
  CHECK(field.shows("QQ-999 is not in the Book"));
  type(field, "T-0001");
  CHECK(field.shows("1 of 4 handed in"));
  CHECK_FALSE(field.reads("QQ-999 is not in the Book"));
  CHECK(field.reads("In no Book and put aside: QQ-999"));
  type(field, "]d2zz");
  CHECK(field.shows("Refused"));
  REQUIRE(field.touch("collect-aside"));
  // Sent out and scanned: it is asked, and one touch says that it is back.
  const std::string away = unit(field, "S-0001")->id;
  bool isMoved = false;
  field.app().desk().submit([away](const season::Views& views, Instant) { return book::move(views, away, "sent-out", "the firm"); },
                            &field.app().shell(), [&](const Result<book::Appended>& outcome) { isMoved = outcome.has_value(); });
  REQUIRE(field.until([&] { return isMoved; }));
  CHECK(count(field).away == 1);
  type(field, "S-0001");
  CHECK(field.shows("stands in the Book as away"));
  CHECK(count(field).collected == 1);
  type(field, "T-0002");
  CHECK(field.shows("2 of 4 handed in"));
  type(field, "S-0001");
  REQUIRE(field.shows("Is it back?"));
  REQUIRE(field.touch("notice-act"));
  for (const char* answer : {"by-us", "hardware replaced", "cleaned-yes", "return-save"}) REQUIRE(field.touch(QLatin1String(answer)));
  CHECK(field.until([&] { return count(field).collected == 3; }));
  CHECK(unit(field, "S-0001")->place == season::UnitPlace::shelf);
  // The stranger is ours after all: on hold until its model is said.
  type(field, "QQ-999");
  REQUIRE(field.shows("QQ-999 is not in the Book"));
  REQUIRE(field.touch("notice-act"));
  CHECK(field.until([&] { return unit(field, "QQ-999") != nullptr; }));
  CHECK_FALSE(unit(field, "QQ-999")->holds.empty());
}

TEST_CASE("Two hundred helmets, each seen twice in the same second, are two hundred, and one can be put on hold as it comes") {
  const QTemporaryDir folder;
  constexpr int kAll = 200;
  field::makeSquad(folder.path().toStdString(), kAll, 0);
  Field field(folder.path().toStdString());
  REQUIRE(field.open());
  REQUIRE(goTo(field, {"door-book", "season", "collect"}));
  for (int i = 1; i <= kAll; ++i) {
    show(field, serialOf(i));
    show(field, serialOf(i));
  }
  REQUIRE(field.shows("200 of 200 handed in"));
  CHECK(count(field) == season::TurnCount{kAll, 0, 0, 0, 0});
  CHECK(field.shows("None is missing"));
  std::uint64_t facts = 0;
  bool isRead = false;
  field.app().desk().read(
      [&facts](book::Book& book) -> Result<bool> {
        book::Book::Cursor cursor;
        return book.read(cursor, 1'000'000,
                         [&](book::Fact&& fact, bool) { facts += std::holds_alternative<book::UnitCollected>(fact.body) ? 1 : 0; });
      },
      &field.app().shell(), [&](const Result<bool>&) { isRead = true; });
  REQUIRE(field.until([&] { return isRead; }));
  CHECK(facts == kAll);
  REQUIRE(goTo(field, {"collect-hold", "to be cleaned", "hands"}));
  CHECK(field.until([&] { return !unit(field, "T-0200")->holds.empty(); }));
  CHECK(field.shows("On hold"));
  REQUIRE(field.touch("undo"));
  CHECK(field.until([&] { return unit(field, "T-0200")->holds.empty(); }));
}

TEST_CASE("Killed in the middle of handing in, what was in is in, the last one wholly or not at all, and the count goes on") {
  for (const int tags : {1, 3, 6}) {
    const QTemporaryDir folder;
    const std::string path = folder.path().toStdString();
    field::makeSquad(path, 8, 0);
    const int status = std::system((std::string(SNUGLINE_TURN_CHILD) + " " + path + " " + std::to_string(tags)).c_str());
    CAPTURE(tags, status);
    REQUIRE((WIFSIGNALED(status) || WEXITSTATUS(status) == 128 + SIGKILL));
    Field field(path);
    REQUIRE(field.open());
    REQUIRE(goTo(field, {"door-book", "season", "collect"}));
    const int in = count(field).collected;
    CHECK((in == tags || in == tags - 1));
    CHECK(field.shows(QStringLiteral("%1 of 8 handed in").arg(in)));
    for (int i = 1; i <= 8; ++i) {
      const season::UnitRecord* helmet = unit(field, serialOf(i));
      CHECK(season::isCollected(*helmet, "2026") == helmet->athletes.empty());
    }
    // What was handed in before the kill can still be taken back.
    if (in > 0) {
      REQUIRE(field.touch("undo"));
      CHECK(field.until([&] { return count(field).collected == in - 1; }));
      CHECK(unit(field, serialOf(in))->athletes.size() == 1);
    }
    for (int i = 1; i <= 8; ++i) show(field, serialOf(i));
    CHECK(field.shows("8 of 8 handed in"));
  }
}

TEST_CASE(
    "A season is closed with what is missing, taken back, closed again, and the next one opened with who leaves; the past one is read") {
  const QTemporaryDir folder;
  const std::string path = folder.path().toStdString();
  field::makeSquad(path, 6, 2);
  {
    Field field(path);
    REQUIRE(field.open());
    REQUIRE(goTo(field, {"door-book", "season", "collect"}));
    for (int i = 1; i <= 4; ++i) show(field, serialOf(i));
    show(field, "S-0001");
    REQUIRE(field.shows("4 of 6 handed in"));
    REQUIRE(goTo(field, {"collect-missing", "missing0"}));
    CHECK(field.shows("T-0005"));
    REQUIRE(field.touch("not handed in"));
    CHECK(field.until([&] { return unit(field, "T-0005")->place == season::UnitPlace::lost; }));
    CHECK(field.athlete("5")->units.empty());
    CHECK(field.shows("2 still missing, 1 with athletes"));
    REQUIRE(goTo(field, {"back", "back", "turn"}));
    CHECK(field.shows("2 helmets not handed in, 1 with athletes"));
    REQUIRE(field.touch("turn-close"));
    CHECK(field.shows("No season is open"));
    REQUIRE(field.touch("undo"));
    CHECK(field.until([&] { return season::between(field.views()) == nullptr; }));
    REQUIRE(field.touch("turn-close"));
    CHECK(field.until([&] { return season::between(field.views()) != nullptr; }));
  }
  Field field(path);
  REQUIRE(field.open());
  CHECK(field.shows("Season 2026 is closed"));
  REQUIRE(field.touch("door-line"));
  CHECK(field.shows("Season 2026 is closed and no other is open"));
  CHECK(field.shows("Family6"));  // never put in service, which is said first
  CHECK_FALSE(field.reads("No helmet yet"));
  REQUIRE(goTo(field, {"back", "door-book", "season", "turn"}));
  // After a restart the closing can still be taken back.
  REQUIRE(field.touch("turn-reopen"));
  CHECK(field.until([&] { return season::between(field.views()) == nullptr; }));
  REQUIRE(field.touch("turn-close"));
  REQUIRE(field.until([&] { return season::between(field.views()) != nullptr; }));
  REQUIRE(field.touch("turn-next"));
  CHECK_FALSE(turn(field).canOpen());
  REQUIRE(field.touch("offer-name"));
  turn(field).setDays("2027-11-19", "2027-08-02");
  CHECK(field.shows("The last day must come after the first"));
  CHECK_FALSE(turn(field).canOpen());
  turn(field).setDays("2026-08-02", "2026-11-19");
  CHECK(field.shows("The first day must come after"));
  turn(field).setDays("2027-8-2", "2027-11-19");
  CHECK_FALSE(turn(field).canOpen());
  turn(field).setName("2026");
  turn(field).setDays("2027-08-02", "2027-11-19");
  CHECK(field.shows("There was a season 2026 already"));
  CHECK_FALSE(turn(field).canOpen());
  turn(field).setName("2027");
  CHECK(turn(field).rosterWords().contains("all stay"));
  REQUIRE(field.touch("year-2008"));
  CHECK(field.shows("6 on the roster, 1 leaves"));
  REQUIRE(field.touch("leave-1"));
  CHECK(field.shows("6 on the roster, 2 leave"));
  REQUIRE(field.touch("next-open"));
  REQUIRE(field.until([&] { return field.views().team->season == "2027"; }));
  CHECK_FALSE(who(field, "4")->isOnRoster);
  CHECK_FALSE(who(field, "1")->isOnRoster);
  CHECK(who(field, "6")->isOnRoster);
  REQUIRE(field.touch("undo"));
  CHECK(field.until([&] { return field.views().team->season == "2026" && who(field, "1")->isOnRoster; }));
  REQUIRE(goTo(field, {"back", "past", "past-2026"}));
  CHECK(field.shows("Missing at the close, 2"));
  CHECK(field.shows("not seen since"));
  REQUIRE(field.touch("past-csv"));
  REQUIRE(field.until([&] { return field.outbox().files.contains("snugline-season-2026.csv"); }));
  const std::string table = field.outbox().files.at("snugline-season-2026.csv");
  CHECK(table.find("\"Family1\"") != std::string::npos);
  CHECK(table.find("\"T-0006\"") != std::string::npos);
  REQUIRE(goTo(field, {"past-pair0", "past-unit"}));
  CHECK(field.shows("T-0001"));
}
