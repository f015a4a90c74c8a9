// SPDX-License-Identifier: Apache-2.0
#include <QRegularExpression>

#include SNUGLINE_CATCH_HEADER

#include "qml/models/guide_page.h"

using namespace snugline;
using models::GuidePage;
using models::Stage;

namespace {

constexpr Day kToday{20740};

// A check as the Book would hold it, fed by answers.
struct Check {
  gear::ModelSheet sheet;
  season::Views views;
  season::CheckRecord record;
  fit::Setup setup;
  models::Touches touches;

  explicit Check(const char* name, fit::CheckKind kind = fit::CheckKind::first) {
    auto read = gear::readSheetFile(std::string(SNUGLINE_SOURCE_DIR "/demo/data/sheets/") + name + ".json");
    REQUIRE(read);
    sheet = std::move(*read);
    setup.sheet = &sheet;
    setup.kind = record.kind = kind;
    setup.today = kToday;
    setup.certifiedUntil = kToday.plus(200);
    setup.asksFitted = kind != fit::CheckKind::look;
    record.state = fit::begin(setup);
  }
  void take(const fit::Answer& answer) {
    auto next = fit::take(setup, record.state, answer);
    REQUIRE(next);
    record.state = std::move(*next);
    record.answers.push_back({"d:" + std::to_string(record.answers.size()), answer, {}});
  }
  void see(fit::Mark mark, fit::Finding finding) {
    take(fit::MarkSeen{mark, finding, fit::Side::both, fit::HoldHow::unsaid, std::nullopt});
  }
  [[nodiscard]] GuidePage page() const { return models::pageOf(record, setup, touches, {views, UnitSystem::metric, kToday, false}); }
};

}  // namespace

TEST_CASE("no page of the guide asks for more than three large answers, on any demo sheet") {
  for (const char* sheet : {"alder-a1", "brant-b2", "cedar-c3"}) {
    for (const fit::Mark mark : fit::kMarks) {
      for (const fit::Finding finding : {fit::Finding::over, fit::Finding::under, fit::Finding::fault}) {
        Check check(sheet);
        check.take(fit::HairSeen{true});
        check.see(mark, finding);
        for (int way = 0; way < 4; ++way) {
          check.touches.way = way;
          const GuidePage page = check.page();
          CAPTURE(sheet, std::string(fit::code(mark)), std::string(fit::code(finding)), way);
          CHECK(page.answers.size() <= 3);
          CHECK_FALSE(page.answers.isEmpty());
          CHECK_FALSE(page.ask.isEmpty());
        }
      }
    }
  }
}

TEST_CASE("the words of the guide speak of equipment only") {
  const QRegularExpression forbidden(QStringLiteral("\\b(safe|cleared|passed|approved|protected)\\b"),
                                     QRegularExpression::CaseInsensitiveOption);
  Check check("alder-a1");
  for (const fit::Mark mark : fit::kMarks) {
    for (const fit::Finding finding : {fit::Finding::under, fit::Finding::snug, fit::Finding::over}) {
      CHECK_FALSE(models::MarkWords::answer(mark, finding).contains(forbidden));
    }
    CHECK_FALSE(models::MarkWords::how(mark).contains(forbidden));
    CHECK_FALSE(models::MarkWords::ask(mark).contains(forbidden));
  }
  for (const fit::Verdict verdict : {fit::Verdict::unfinished, fit::Verdict::fits, fit::Verdict::adjust, fit::Verdict::doNotWear}) {
    CHECK_FALSE(models::GuideWords::verdict(verdict).contains(forbidden));
  }
  CHECK_FALSE(models::GuideWords::stop().contains(forbidden));
}

TEST_CASE("seating anew is asked for once, then the next way is shown") {
  Check check("alder-a1");
  check.take(fit::HairSeen{true});
  check.see(fit::Mark::brow, fit::Finding::over);
  CHECK(check.page().stage == Stage::mark);
  CHECK_FALSE(check.page().notice.isEmpty());
  check.see(fit::Mark::brow, fit::Finding::over);
  const GuidePage page = check.page();
  CHECK(page.stage == Stage::advice);
  REQUIRE(page.advice);
  CHECK(page.advice->port == gear::Port::crown);
  CHECK(page.reopens == "Then see again: brow, ears, nape, chin, straps, jaw, crown and hold.");
}

TEST_CASE("a look asks its three views and then the points; one mark that is off opens the rest of its view one by one") {
  Check check("alder-a1", fit::CheckKind::look);
  CHECK(check.page().stage == Stage::view);
  check.take(fit::GroupSnug{fit::LookView::front});
  CHECK(check.page().view == fit::LookView::side);
  check.see(fit::Mark::ears, fit::Finding::snug);
  CHECK(check.page().stage == Stage::mark);
  CHECK(check.page().mark == fit::Mark::nape);
  check.see(fit::Mark::nape, fit::Finding::snug);
  check.see(fit::Mark::jaw, fit::Finding::snug);
  CHECK(check.page().view == fit::LookView::hold);
  check.take(fit::GroupSnug{fit::LookView::hold});
  CHECK(check.page().stage == Stage::points);
  check.take(fit::PointsSound{});
  CHECK(check.page().stage == Stage::done);
}

TEST_CASE("a look begins with what the athlete said, then asks the rest") {
  Check check("alder-a1", fit::CheckKind::look);
  check.take(fit::AthleteSaid{fit::Mark::jaw, fit::Side::left, fit::Feels::tight});
  CHECK(check.page().mark == fit::Mark::jaw);
  CHECK(check.page().notice.contains("jaw tight on the left"));
  check.see(fit::Mark::jaw, fit::Finding::over);
  CHECK(check.page().advice.has_value());
  check.see(fit::Mark::jaw, fit::Finding::snug);
  CHECK(check.page().view == fit::LookView::front);
  CHECK(check.page().stage == Stage::view);
}

TEST_CASE("a dragged gap is judged by the sheet and said in both unit systems") {
  Check check("alder-a1");
  check.take(fit::HairSeen{true});
  check.take(fit::Fitted{});
  check.touches.gap = Length::millimetres(40);
  const GuidePage page = check.page();
  CHECK(page.isGapKnown);
  CHECK(page.gapText == "40 mm");
  CHECK(page.gapText2.endsWith("in"));
  REQUIRE(page.answers.size() == 1);
  CHECK(page.answers.front().toMap().value("detail").toString() == models::MarkWords::answer(fit::Mark::brow, fit::Finding::over));
}

TEST_CASE("a sheet without air is asked for its pads, for no starting air, and advised no air") {
  Check check("cedar-c3");
  check.take(fit::HairSeen{true});
  CHECK(check.page().stage == Stage::fitted);
  for (const QVariant& choice : check.page().choices) CHECK(choice.toMap().value("name").toString().startsWith("pad-"));
  check.take(fit::Fitted{});
  CHECK(check.page().mark == fit::Mark::brow);
  check.see(fit::Mark::brow, fit::Finding::over);
  check.see(fit::Mark::brow, fit::Finding::over);
  const GuidePage page = check.page();
  REQUIRE(page.advice);
  CHECK_FALSE(page.advice->port);
}

TEST_CASE("a fault of a point stops the look at once, and the rest can still be seen first") {
  Check check("alder-a1", fit::CheckKind::look);
  check.take(fit::PointSeen{gear::Point::faceguard, gear::PointState::fault, "bare metal"});
  CHECK(check.page().stage == Stage::advice);
  CHECK(check.page().ask.contains("bare metal"));
  CHECK_FALSE(check.page().another.isEmpty());
  check.touches.isRestWanted = true;
  CHECK(check.page().stage == Stage::view);
}

TEST_CASE("the bladders are asked in the sheet's order, and the list stands until it is closed") {
  Check check("brant-b2");
  check.take(fit::HairSeen{true});
  CHECK(check.page().stage == Stage::fitted);
  const auto first = check.page().choices;
  REQUIRE(first.size() == 5);
  CHECK(first[0].toMap().value("name").toString() == "air-sides");
  CHECK(first[1].toMap().value("name").toString() == "air-crown");
  fit::Fitted sides;
  sides.air[static_cast<std::size_t>(gear::Port::sides)] = Pressure::kilopascals(21);
  check.take(sides);
  GuidePage page = check.page();
  CHECK(page.stage == Stage::reading);
  CHECK(page.entry.value("port").toString() == "crown");
  check.touches.isListWanted = true;
  page = check.page();
  CHECK(page.stage == Stage::fitted);
  CHECK(page.choices[0].toMap().value("text").toString().contains("21.0 kPa"));
  CHECK(page.answers.size() == 2);
  check.touches = {};
  fit::Fitted pad;
  pad.pad[static_cast<std::size_t>(gear::Part::crownPad)] = Length{22000};
  check.take(pad);
  CHECK(check.page().stage == Stage::fitted);  // a pad does not ask for the next bladder
  check.take(fit::Fitted{});
  CHECK(check.page().mark == fit::Mark::brow);
}

TEST_CASE("an entry says the sheet's start and band in both unit systems, and refuses what no bladder reads") {
  Check check("alder-a1");
  check.take(fit::HairSeen{true});
  check.touches.port = gear::Port::crown;
  const GuidePage metric = check.page();
  CHECK(metric.stage == Stage::reading);
  CHECK(metric.entry.value("note").toString() == "Sheet: 20.0, between 7.0 and 41.0 kPa");
  CHECK_FALSE(metric.entry.value("known").toBool());
  check.touches.pressure = Pressure::kilopascals(20.5);
  const GuidePage us = models::pageOf(check.record, check.setup, check.touches, {check.views, UnitSystem::us, kToday, false});
  CHECK(us.entry.value("value").toString() == "2.97");
  CHECK(us.entry.value("unit").toString() == "psi");
  CHECK(us.entry.value("message").toString().isEmpty());
  check.touches.pressure = Pressure::kilopascals(900);
  CHECK_FALSE(check.page().entry.value("message").toString().isEmpty());
  CHECK(check.page().answers[0].toMap().value("name").toString() != "record");
}

TEST_CASE("a reading after a change goes with the pumps that are counted") {
  Check check("alder-a1");
  check.take(fit::HairSeen{true});
  check.take(fit::Fitted{});
  check.see(fit::Mark::brow, fit::Finding::over);
  check.see(fit::Mark::brow, fit::Finding::over);
  REQUIRE(check.page().stage == Stage::advice);
  CHECK(check.page().canReadGauge);
  check.touches.isGaugeOpen = true;
  check.touches.pressure = Pressure::kilopascals(18);
  const GuidePage page = check.page();
  CHECK(page.stage == Stage::advice);
  CHECK_FALSE(page.canReadGauge);
  CHECK(page.entry.value("port").toString() == "crown");
  REQUIRE(page.answers.size() == 3);
  CHECK(page.answers[1].toMap().value("name").toString() == "pumps-2");
  CHECK(page.answers[1].toMap().value("detail").toString() == "reads 18.0 kPa");
}

namespace {

// Everything that a page says.
QStringList wordsOf(const GuidePage& page) {
  QStringList all{page.title, page.ask,    page.hint,    page.notice,    page.reopens,
                  page.pumps, page.broken, page.another, page.gapAnswer, page.gapFound};
  for (const QVariantList& list : {page.answers, page.choices, page.ladder})
    for (const QVariant& one : list)
      all << one.toMap()[QStringLiteral("text")].toString() << one.toMap()[QStringLiteral("detail")].toString();
  return all;
}

}  // namespace

TEST_CASE("a model without air never says air: not in a question, an answer, an advice, a point, and not in undo") {
  const QRegularExpression air(QStringLiteral("\\bairs?\\b"), QRegularExpression::CaseInsensitiveOption);
  Check plain("cedar-c3");
  const models::Speech speech{plain.views, UnitSystem::us, kToday, false};
  const auto silent = [&](const Check& check) {
    for (const QString& words : wordsOf(check.page())) {
      CAPTURE(words.toStdString());
      CHECK_FALSE(words.contains(air));
    }
    for (const season::AnswerRecord& record : check.record.answers) CHECK_FALSE(models::answerWords(record.answer, speech).contains(air));
  };
  for (const bool isCold : {false, true}) {
    for (const fit::CheckKind kind : {fit::CheckKind::first, fit::CheckKind::look}) {
      for (const fit::Mark mark : fit::kMarks) {
        for (const fit::Finding finding : {fit::Finding::snug, fit::Finding::over, fit::Finding::under, fit::Finding::fault}) {
          Check check("cedar-c3", kind);
          silent(check);
          check.take(fit::HairSeen{true});
          check.take(fit::ColdSeen{isCold, true});
          check.take(fit::Fitted{});
          check.touches.mark = mark;
          silent(check);
          check.touches.isBroken = true;
          silent(check);
          check.touches = {};
          check.see(mark, finding);
          for (check.touches.way = 0; check.touches.way < 5; ++check.touches.way) silent(check);
        }
      }
    }
  }
  Check points("cedar-c3");
  points.touches.arePointsOpen = true;
  silent(points);
  for (const gear::Point point : gear::kPoints) {
    points.touches.point = point;
    for (points.touches.isPointFault = false;; points.touches.isPointFault = true) {
      silent(points);
      if (points.touches.isPointFault) break;
    }
  }
  CHECK_FALSE(models::GuideWords::caution(&plain.sheet).contains(air));
}

TEST_CASE("a side that the athlete spoke of is drawn on that side only, and so is a side that was found off") {
  for (const fit::Mark mark : {fit::Mark::jaw, fit::Mark::ears, fit::Mark::sides}) {
    const QString name = QString::fromUtf8(fit::code(mark).data(), static_cast<qsizetype>(fit::code(mark).size()));
    Check check("alder-a1", fit::CheckKind::look);
    check.take(fit::AthleteSaid{mark, fit::Side::left, fit::Feels::tight});
    GuidePage page = check.page();
    CHECK(page.findings[name + "-left"].toString() == "said-over");
    CHECK(page.findings[name + "-right"].toString() == "unseen");
    CHECK(page.focusPart == name + "-left");
    CHECK(page.findings[name].toString() == "unseen");  // its place in the drawing is on one side
    check.take(fit::MarkSeen{mark, fit::Finding::over, fit::Side::left, fit::HoldHow::unsaid, std::nullopt});
    page = check.page();
    CHECK(page.findings[name + "-left"].toString() == "over");
    CHECK(page.findings[name + "-right"].toString() == "snug");
  }
}

TEST_CASE("ears, straps and jaw are asked for on both sides") {
  for (const fit::Mark mark : {fit::Mark::ears, fit::Mark::straps, fit::Mark::jaw}) CHECK(models::MarkWords::ask(mark).contains("both"));
}

TEST_CASE("a cold helmet that presses shows that it is warmed first, and offers no pump") {
  Check check("alder-a1", fit::CheckKind::look);
  check.take(fit::ColdSeen{true, false});
  check.see(fit::Mark::jaw, fit::Finding::over);
  const GuidePage page = check.page();
  CHECK(page.stage == Stage::advice);
  CHECK(page.answers.at(0).toMap()["text"].toString() == "It is warm now");
  CHECK_FALSE(page.canReadGauge);
  for (const QVariant& one : page.answers) CHECK_FALSE(one.toMap()["name"].toString().startsWith("pumps"));
}

TEST_CASE("a sheet's own order of the marks is the order of the questions and of the ladder") {
  Check check("cedar-c3");
  check.sheet.markOrder = {6, 7, 8, 0, 1, 2, 3, 4, 5};
  check.take(fit::HairSeen{true});
  check.take(fit::Fitted{});
  CHECK(check.page().mark == fit::Mark::crown);
  QStringList marks;
  for (const QVariant& step : check.page().ladder)
    if (fit::markFromCode(step.toMap()["name"].toString().toStdString())) marks << step.toMap()["name"].toString();
  CHECK(marks == QStringList{"crown", "sides", "hold", "brow", "ears", "nape", "chin", "straps", "jaw"});
}
