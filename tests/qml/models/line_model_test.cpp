// SPDX-License-Identifier: Apache-2.0
// The board as the Line shows it, on a clock that goes on: what is done clears at once, and the list keeps its place.
#include <atomic>
#include <memory>

#include <QAbstractItemModelTester>
#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "core/ports/memory_ports.h"
#include "platform/system/file_keys.h"
#include "qml/models/line_check_model.h"
#include "qml/models/line_model.h"
#include "tests/core/book/book_world.h"
#include "tests/qml/models/one_application.h"

using namespace snugline;
using models::LineModel;
using test::until;

namespace {

// Shared by the two threads; goes on by a second whenever it is asked.
class RunningClock final : public ports::Clock {
 public:
  explicit RunningClock(std::shared_ptr<std::atomic<std::int64_t>> ms) : m_ms(std::move(ms)) {}
  [[nodiscard]] Instant now() override { return {m_ms->fetch_add(1000), -300}; }

 private:
  std::shared_ptr<std::atomic<std::int64_t>> m_ms;
};

constexpr std::int64_t kDayMs = 24LL * 60 * 60 * 1000;

// Athletes "1" to so many, each in a helmet in service that was never fitted.
struct Field {
  QTemporaryDir folder;
  std::shared_ptr<std::atomic<std::int64_t>> ms = std::make_shared<std::atomic<std::int64_t>>(instantAt(dayOf(2026, 10, 14), 840, -300).ms);
  std::unique_ptr<models::Desk> desk;
  std::unique_ptr<models::Choices> choices;
  std::unique_ptr<models::WeatherModel> weather;
  std::unique_ptr<LineModel> line;
  std::unique_ptr<QAbstractItemModelTester> tester;

  explicit Field(int athletes) {
    test::application();
    const std::string keys = folder.filePath("keys").toStdString(), path = folder.filePath("team.snugbook").toStdString();
    {
      platform::FileKeys fileKeys(keys);
      RunningClock clock(ms);
      const auto book = test::must(book::Book::create(path, {"Team", "", "2026", ""}, fileKeys, clock));
      for (int i = 1; i <= athletes; ++i) test::pairUp(*book, dayOf(clock.now()), std::to_string(i), "HC-" + std::to_string(i));
    }
    desk = std::make_unique<models::Desk>([this] { return std::make_unique<RunningClock>(ms); },
                                          [keys] { return std::make_unique<platform::FileKeys>(keys); });
    choices = std::make_unique<models::Choices>(folder.filePath("choices.ini"));
    weather = std::make_unique<models::WeatherModel>(desk.get(), choices.get());
    line = std::make_unique<LineModel>(desk.get(), choices.get(), weather.get());
    tester = std::make_unique<QAbstractItemModelTester>(line.get(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    desk->open(QString::fromStdString(path), {});
    REQUIRE(until([&] { return desk->isOpen(); }));
  }
  [[nodiscard]] const season::AthleteRecord& athlete(const std::string& jersey) const { return *desk->views().athleteByJersey(jersey); }
  void act(models::Desk::Job job) {
    bool isDone = false;
    desk->submit(std::move(job), desk.get(), [&](const Result<book::Appended>& outcome) {
      INFO((outcome ? std::string() : outcome.error().place + ' ' + outcome.error().detail));
      CHECK(outcome);
      isDone = true;
    });
    REQUIRE(until([&] { return isDone; }));
  }
  void fit(const std::string& jersey) {
    const std::string id = athlete(jersey).id;
    act([id](const season::Views& views, Instant now) { return book::beginCheck(views, id, fit::CheckKind::first, dayOf(now)); });
    const std::string check = athlete(jersey).openCheck;
    std::vector<fit::Answer> answers{fit::HairSeen{true}};
    for (const fit::Mark mark : fit::kMarks) answers.push_back(test::seen(mark));
    answers.push_back(fit::PointsSound{});
    for (const auto& question : desk->views().sheets.begin()->second.sheet->questions)
      answers.push_back(fit::QuestionAnswered{question.id, true});
    act([check, answers](const season::Views& views, Instant now) { return book::answer(views, check, answers, now); });
    act([check](const season::Views& views, Instant now) { return book::endCheck(views, check, now); });
  }
  // The list as it stands: jersey numbers of rows, names of lanes.
  [[nodiscard]] QStringList shown() const {
    QStringList list;
    for (int i = 0; i < line->rowCount(); ++i) {
      const QModelIndex at = line->index(i);
      const bool isRow = line->data(at, LineModel::kindRole) == "row";
      list << line->data(at, isRow ? LineModel::jerseyRole : LineModel::laneRole).toString();
    }
    return list;
  }
  [[nodiscard]] QString reasonOf(const QString& jersey, int role = LineModel::reasonRole) const {
    return line->data(line->index(static_cast<int>(shown().indexOf(jersey))), role).toString();
  }
  void passDays(int days) {
    *ms += days * kDayMs;
    desk->askClock();
  }
};

}  // namespace

TEST_CASE("a first fit clears its row at once while the clock goes on, and nobody is offered twice") {
  Field field(3);
  CHECK(field.shown() == QStringList{"do-not-wear", "1", "2", "3", "before-practice", "weekly", "nothing-due"});
  CHECK(field.line->doNotWear() == 3);
  field.fit("2");
  CHECK(field.shown().mid(0, 3) == QStringList{"do-not-wear", "1", "3"});
  CHECK(field.line->doNotWear() == 2);
  CHECK(field.line->walkWords().contains("2"));
  field.line->toggleLane("nothing-due");
  CHECK_FALSE(field.shown().last() == "2");  // head never measured is said weekly
  CHECK(field.shown().contains("2"));
}

TEST_CASE("days that pass with nobody near bring what is due") {
  Field field(1);
  field.fit("1");
  CHECK_FALSE(field.reasonOf("1").contains("day 1"));
  field.passDays(1);
  CHECK(field.reasonOf("1").contains("day 1"));
  field.passDays(7);
  CHECK(field.reasonOf("1").contains("late"));
}

TEST_CASE("a clock set back by a month loses nothing that was done here, and the board names it") {
  Field field(2);
  field.fit("1");
  const QStringList before = field.shown();
  CHECK(field.line->clockWords().isEmpty());
  field.passDays(-30);
  CHECK(field.shown() == before);
  CHECK(field.line->clockWords().contains("14 Oct"));
  field.fit("2");
  CHECK(field.line->doNotWear() == 0);
}

TEST_CASE("a report is said in the row itself, however many other reasons stand with it") {
  Field field(1);
  season::SaidRecord said;
  said.where = fit::Mark::jaw;
  field.act([id = field.athlete("1").id, said](const season::Views& views, Instant) { return book::say(views, id, said); });
  CHECK(field.reasonOf("1").contains("Never fitted"));
  CHECK(field.reasonOf("1").contains("Says: jaw"));
  CHECK(field.reasonOf("1", LineModel::moreRole) == "and 1 more");  // the head was never measured
}

TEST_CASE("a hit stands alone in its row, and acknowledged it is not counted and not walked") {
  Field field(2);
  season::SaidRecord said;
  said.isUnwell = true;
  const std::string id = field.athlete("2").id;
  field.act([id, said](const season::Views& views, Instant) { return book::say(views, id, said); });
  CHECK(field.shown().mid(0, 3) == QStringList{"do-not-wear", "2", "1"});
  CHECK(field.reasonOf("2") == "See athlete now");
  CHECK(field.reasonOf("2", LineModel::moreRole).isEmpty());
  CHECK(field.reasonOf("2", LineModel::serialRole).isEmpty());
  CHECK(field.line->doNotWear() == 2);
  field.act([id, fact = field.athlete("2").said.front().fact](const season::Views& views, Instant) {
    return book::acknowledge(views, id, fact, false, {});
  });
  CHECK(field.shown().mid(0, 3) == QStringList{"do-not-wear", "2", "1"});
  CHECK(field.reasonOf("2") == "With the athletic trainer");
  CHECK(field.reasonOf("2", LineModel::actionRole) == "Close");
  CHECK(field.line->doNotWear() == 1);
  field.line->startWalk();
  CHECK(field.line->walkRow().value("jersey") == "1");
  field.line->walkOn();
  CHECK(field.line->walkRow().isEmpty());
}

TEST_CASE("whoever comes back from a row finds the list where it was, also when the row is gone") {
  Field field(5);
  field.line->keepPlace(3, 12);
  field.fit("1");
  CHECK(field.line->keptEntry() == 2);  // number 3, now one further up
  CHECK(field.line->keptBeyond() == 12);
  field.fit("3");
  CHECK(field.line->keptEntry() == 3);  // who took the place
  field.line->keepPlace(-1, 0);
  CHECK(field.line->keptEntry() == -1);
}
