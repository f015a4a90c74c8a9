// SPDX-License-Identifier: Apache-2.0
// The last act of a page over a real Book, with a clock that moves: named, taken back whole, gone with the day.
#include <atomic>
#include <memory>

#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "core/book/undo.h"
#include "platform/system/file_keys.h"
#include "qml/models/last_act.h"
#include "tests/qml/models/one_application.h"

using namespace snugline;
using models::Choices;
using models::Desk;
using models::LastAct;
using test::application;
using test::until;

namespace {

// A second passes at each look; days when told.
struct Time {
  std::atomic<std::int64_t> ms{instantAt(Day{20740}, 840, -300).ms};
};
class MovingClock final : public ports::Clock {
 public:
  explicit MovingClock(std::shared_ptr<Time> time) : m_time(std::move(time)) {}
  [[nodiscard]] Instant now() override { return {m_time->ms += 1000, -300}; }

 private:
  std::shared_ptr<Time> m_time;
};

struct Page {
  QTemporaryDir folder;
  std::shared_ptr<Time> time = std::make_shared<Time>();
  std::unique_ptr<Choices> choices;
  std::unique_ptr<Desk> desk;
  std::unique_ptr<LastAct> last;
  QString refused;

  Page() {
    application();
    open();
  }
  ~Page() { last.reset(); }
  // Again: as after a kill, nothing of the last act is in memory.
  void open() {
    last.reset();
    desk.reset();
    choices = std::make_unique<Choices>(folder.filePath("choices.ini"));
    const std::string keys = folder.filePath("keys").toStdString();
    desk = std::make_unique<Desk>([time = time] { return std::make_unique<MovingClock>(time); },
                                  [keys] { return std::make_unique<platform::FileKeys>(keys); });
    last = std::make_unique<LastAct>(QStringLiteral("page"), desk.get(), choices.get());
    QObject::connect(last.get(), &LastAct::refused, desk.get(), [this](const QString& why) { refused = why; });
    book::TeamFounded team;
    team.name = "Room";
    team.season = "2026";
    desk->open(folder.filePath("team.snugbook"), team);
    REQUIRE(until([this] { return desk->isOpen(); }));
  }
  std::vector<std::string> write(book::Drafts drafts) {
    std::vector<std::string> ids;
    desk->submit([drafts](const season::Views&, Instant) -> Result<book::Drafts> { return drafts; }, desk.get(),
                 [&](const Result<book::Appended>& outcome) { ids = outcome ? outcome->ids : std::vector<std::string>{"none"}; });
    REQUIRE(until([&] { return !ids.empty(); }));
    return ids;
  }
  std::vector<std::string> addTwo() {
    return write({{"", book::AthleteAdded{"44", "Boyd", "", {}}}, {"", book::AthleteAdded{"45", "Tamm", "", {}}}});
  }
  bool undo() {
    bool isOver = false;
    QObject context;
    QObject::connect(last.get(), &LastAct::undone, &context, [&] { isOver = true; });
    QObject::connect(last.get(), &LastAct::refused, &context, [&] { isOver = true; });
    last->undo();
    return until([&] { return isOver; });
  }
};

}  // namespace

TEST_CASE("the last act of a page is taken back whole, in one append, and there is nothing more to undo") {
  Page page;
  page.last->did(page.addTwo(), QStringLiteral("Two added"));
  CHECK(page.last->words() == "Two added");
  int changes = 0;
  QObject::connect(page.desk.get(), &Desk::changed, page.last.get(), [&] { ++changes; });
  REQUIRE(page.undo());
  CHECK(page.desk->views().athletes.empty());
  CHECK(changes == 1);
  CHECK(page.last->words().isEmpty());
}

TEST_CASE("the act after it takes its place: undo never goes back past the last one") {
  Page page;
  page.last->did(page.addTwo(), QStringLiteral("Two added"));
  page.last->did(page.write({{"", book::AthleteAdded{"7", "Marsh", "", {}}}}), QStringLiteral("Marsh added"));
  CHECK(page.last->words() == "Marsh added");
  REQUIRE(page.undo());
  CHECK(page.desk->views().athletes.size() == 2);
  CHECK(page.last->words().isEmpty());
  page.last->undo();  // nothing
  CHECK(page.desk->views().athletes.size() == 2);
}

TEST_CASE("killed between an act and its undo, the page names it again and takes all of it back") {
  Page page;
  const auto ids = page.addTwo();
  page.last->did(ids, QStringLiteral("Two added"), ids.front());
  page.open();
  CHECK(page.last->words() == "Two added");
  CHECK(page.last->wordsAbout(ids.front()) == "Two added");
  CHECK(page.last->wordsAbout(ids.back()).isEmpty());
  REQUIRE(page.undo());
  CHECK(page.desk->views().athletes.empty());
  page.open();
  CHECK(page.last->words().isEmpty());
}

TEST_CASE("what was done yesterday is not offered, and pages do not see each other's acts") {
  Page page;
  page.last->did(page.addTwo(), QStringLiteral("Two added"));
  const LastAct other(QStringLiteral("other"), page.desk.get(), page.choices.get());
  CHECK(other.words().isEmpty());
  page.time->ms += 24 * 3'600'000;
  page.open();
  CHECK(page.last->words().isEmpty());
}

TEST_CASE("an act that something rests on by now is refused with a sentence, stands whole, and is offered no more") {
  Page page;
  const auto ids = page.addTwo();
  page.last->did(ids, QStringLiteral("Two added"));
  page.write({{ids.front(), book::TapeRead{{Length::millimetres(575)}}}});
  REQUIRE(page.undo());
  CHECK(page.refused.startsWith("That cannot be undone any more"));
  CHECK(page.desk->views().athletes.size() == 2);
  CHECK(page.last->words().isEmpty());
}

TEST_CASE("an act recorded without words of its own is named as the history names it") {
  Page page;
  page.last->didAsRecorded(page.addTwo(), "somebody:1");
  REQUIRE(until([&] { return !page.last->words().isEmpty(); }));
  CHECK(page.last->words() == "Added to the roster");
  REQUIRE(page.undo());
  CHECK(page.desk->views().athletes.empty());
}
