// SPDX-License-Identifier: Apache-2.0
// Undo names the last act of its page and takes it back whole: swap, measuring, a check begun. Killed between act and undo, it is still
// there.
#include SNUGLINE_CATCH_HEADER

#include <array>
#include <csignal>
#include <cstdio>
#include <string>

#include <sys/wait.h>

#include <QFile>
#include <QQuickItem>
#include <QQuickView>

#include "say_steps.h"
#include "undo_steps.h"

using namespace snugline;
using namespace snugline::field;

namespace {

bool isAt(Field& field, const char* screen) {
  return field.until([&] { return field.screen() == QLatin1String(screen); });
}

// A ground on a device that keeps its choices.
struct Kept : Ground {
  Kept() {
    QFile choices(folder.filePath("choices.ini"));
    REQUIRE(choices.open(QIODevice::WriteOnly));
  }
};

bool openAthlete(Field& field, const QString& jersey) {
  return field.touch("door-line") && field.touch("row-" + jersey) && isAt(field, "athlete");
}

bool measure(Field& field, const QString& reading) { return type(field, reading) && field.touch("key-enter"); }
std::size_t readings(Field& field, const std::string& jersey) {
  const auto& tapes = field.athlete(jersey)->tapes;
  return tapes.empty() ? 0 : tapes.back().readings.size();
}

std::string life(const std::string& folder, const char* what, int& status) {
  FILE* child = ::popen((std::string(SNUGLINE_UNDO_CHILD) + " " + folder + " " + what).c_str(), "r");
  std::string said;
  std::array<char, 256> part{};
  while (child != nullptr && std::fgets(part.data(), static_cast<int>(part.size()), child) != nullptr) said += part.data();
  status = child == nullptr ? -1 : ::pclose(child);
  return said;
}

}  // namespace

TEST_CASE("A swap is taken back whole at the first question of the new helmet, and the athlete has the old one again") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(addSpare(field));
  const std::string jersey = "57", old = serialOf(field, jersey);
  REQUIRE(openAthlete(field, "57"));
  REQUIRE(swapForSpare(field));
  CHECK(serialOf(field, jersey) == "S-0001");
  CHECK(field.app().shell().guide()->undoWords() == QString::fromStdString(old + " swapped for S-0001"));
  REQUIRE(field.touch("undo"));
  REQUIRE(isAt(field, "athlete"));
  CHECK(serialOf(field, jersey) == old);
  CHECK(field.views().unit(field.athlete(jersey)->units.front())->holds.empty());
  CHECK(field.views().openChecks.empty());
}

TEST_CASE("A swap is undone on the athlete's page too, until the check of the new helmet goes on") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(addSpare(field));
  const std::string jersey = "57", old = serialOf(field, jersey);
  REQUIRE(openAthlete(field, "57"));
  for (const bool goesOn : {false, true}) {
    REQUIRE(swapForSpare(field));
    if (goesOn) REQUIRE(field.touch("wet"));
    field.press(Qt::Key_Escape);
    REQUIRE(isAt(field, "athlete"));
    CHECK(field.app().shell().athlete()->lastWords() == QString::fromStdString(old + " swapped for S-0001"));
    REQUIRE(field.touch("undo"));
    if (goesOn) {
      CHECK(field.shows("That cannot be undone any more: the check went on since"));
      CHECK(serialOf(field, jersey) == "S-0001");
      CHECK(field.find("undo") == nullptr);
    } else {
      REQUIRE(field.until([&] { return serialOf(field, jersey) == old; }));
      CHECK(field.find("undo") == nullptr);
    }
  }
}

TEST_CASE("A wrong reading of the tape is taken back alone, and the next one goes on from those before it") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  const std::string jersey = "57";
  REQUIRE(openAthlete(field, "57"));
  // The card of the head lies below the fold.
  QMetaObject::invokeMethod(field.app().view().rootObject(), "go", Q_ARG(QString, "tape"),
                            Q_ARG(QString, QString::fromStdString(field.athlete(jersey)->id)), Q_ARG(bool, false));
  REQUIRE(isAt(field, "tape"));
  models::AthleteModel& athlete = *field.app().shell().athlete();
  REQUIRE(measure(field, "22.5"));
  REQUIRE(field.until([&] { return readings(field, jersey) == 1; }));
  REQUIRE(measure(field, "25.2"));
  REQUIRE(field.until([&] { return readings(field, jersey) == 2; }));
  CHECK(athlete.lastWords().contains("25"));
  REQUIRE(field.touch("undo"));
  REQUIRE(field.until([&] { return readings(field, jersey) == 1; }));
  CHECK(athlete.readings().size() == 1);
  CHECK(athlete.lastWords().isEmpty());
  REQUIRE(measure(field, "22.6"));
  REQUIRE(field.until([&] { return readings(field, jersey) == 2; }));
  CHECK(athlete.readings().size() == 2);
}

TEST_CASE("A check begun by mistake is taken back before its first answer, and nothing of it stands on the board") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(field.touch("door-line"));
  REQUIRE(field.touch("act-57"));
  REQUIRE(isAt(field, "guide"));
  REQUIRE(field.touch("undo"));
  REQUIRE(isAt(field, "line"));
  CHECK(field.views().openChecks.empty());
  CHECK(field.athlete("57")->openCheck.empty());
}

TEST_CASE("Killed between a swap and its undo, the app still offers it, and it takes back all of it") {
  const Kept kept;
  int status = 0;
  const std::string before = life(kept.path(), "swap-and-die", status);
  CAPTURE(before);
  CHECK((WIFSIGNALED(status) || WEXITSTATUS(status) == 128 + SIGKILL));
  REQUIRE(before.find("swapped for S-0001") != std::string::npos);
  CHECK(life(kept.path(), "undo", status) == before.substr(0, before.find(' ')) + "|0|0\n");
  CHECK(status == 0);
}
