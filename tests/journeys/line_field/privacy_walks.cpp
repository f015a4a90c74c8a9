// SPDX-License-Identifier: Apache-2.0
// Names kept back, legal holds, the whole record on its ways out, and text of hostile hands on every screen.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>

#include <QQuickItem>
#include <QQuickView>

#include "core/book/privacy_acts.h"
#include "core/book/written.h"
#include "platform/printing/typesetter.h"
#include "platform/system/file_keys.h"
#include "say_steps.h"

using namespace snugline;
using namespace snugline::field;

namespace {

constexpr const char* kFamily = "Vanhornet";  // invented

models::PrivacyModel& privacy(Field& field) { return *field.app().shell().privacy(); }

struct YearsAgo final : ports::Clock {
  [[nodiscard]] Instant now() override { return instantAt(dayOf(2019, 11, 20), 900, -300); }
};

// Somebody who left in 2019, in a Book that shows names for five years.
void addLeaver(const std::string& folder) {
  platform::FileKeys keys(folder + "/keys");
  YearsAgo clock;
  auto book = book::Book::open(folder + "/team.snugbook", book::Access::readWrite, keys, clock).value();
  book::AthleteChanged off;
  off.isOnRoster = false;
  REQUIRE(book->append({{"", book::AthleteAdded{"55", kFamily, "Pia", 2003}}, {"#0", off}}));
  REQUIRE(book->append(book::setRetention(book->views(), 5).value()));
}

const season::AthleteRecord* leaver(Field& field) {
  for (const auto& [id, athlete] : field.views().athletes) {
    if (athlete.jersey == "55") return &athlete;
  }
  return nullptr;
}

bool open(Field& field, const char* screen, const QString& what = {}) {
  QQuickItem* root = field.app().view().rootObject();
  QMetaObject::invokeMethod(root, "go", Q_ARG(QString, QLatin1String(screen)), Q_ARG(QString, what), Q_ARG(bool, false));
  return field.until([&] { return field.screen() == QLatin1String(screen) && field.find("back") != nullptr; });
}

std::string all(const ports::Paper& paper) {
  std::string text = paper.title + paper.subtitle + paper.foot;
  for (const auto& part : paper.parts) text += part.text + '\n' + part.margin + '\n';
  return text;
}

// Letters that come out of every visible text of the window; controls would show here.
void collect(const QQuickItem* item, QStringList& texts) {
  if (!item->isVisible()) return;
  const QVariant text = item->property("text");
  // A hint in an empty entry is ours.
  const bool isHint = item->inherits("QQuickPlaceholderText");
  if (!isHint && text.userType() == QMetaType::QString && item->metaObject()->indexOfProperty("textFormat") >= 0) {
    texts << text.toString();
    CHECK(item->property("textFormat").toInt() == static_cast<int>(Qt::PlainText));
  }
  for (const QQuickItem* child : item->childItems()) collect(child, texts);
}

const std::vector<std::string>& hostile() {
  static const std::vector<std::string> kAll{
      "\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x9A\x80 \xF0\x9F\x8F\x88",              // emoji, joined
      "\xD9\x85\xD8\xB1\xD8\xAD\xD8\xA8\xD8\xA7 \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D",  // Arabic and Hebrew
      "\xE2\x80\xAE"
      "drowssap\xE2\x81\xA6",  // an override and an isolate left open
      std::string(10'000, 'W'),
      std::string("a\x01\x1b[2Jb\x7f\r\n\tc\0d", 13),
      "=cmd|' /C calc'!A0",
      "<b>bold</b><img src=x>&amp;%1%2",
  };
  return kAll;
}

}  // namespace

TEST_CASE("A name past its years is on no screen and no paper, and a legal hold brings it back") {
  const Ground ground;
  addLeaver(ground.path());
  Field field(ground.path());
  REQUIRE(field.open());
  field.app().desk().setPerson(field.views().people.begin()->first);
  CHECK(leaver(field)->family.empty());
  CHECK(leaver(field)->nameKeptBack == dayOf(2024, 11, 20));
  const QString id = QString::fromStdString(leaver(field)->id);
  REQUIRE(open(field, "record", id));
  CHECK(field.shows("Name kept back since 20 Nov 2024. The log still holds it."));
  REQUIRE(field.until([&] { return !privacy(field).lines().isEmpty(); }));
  for (const char* form : {"pdf", "csv", "json"}) REQUIRE(field.touch(QLatin1String(form)));
  CHECK_FALSE(field.reads(QLatin1String(kFamily)));
  REQUIRE(field.outbox().files.size() == 2);
  for (const auto& [name, bytes] : field.outbox().files) {
    INFO(name);
    CHECK(bytes.size() > 100);
    CHECK(bytes.find(kFamily) == std::string::npos);
    CHECK(bytes.find("Pia") == std::string::npos);
  }
  CHECK(all(field.outbox().papers.begin()->second).find(kFamily) == std::string::npos);
  privacy(field).hold(id, "Letter of 12 October");
  REQUIRE(field.until([&] { return !privacy(field).isBusy(); }));
  CHECK(leaver(field)->family == kFamily);
  CHECK(field.shows(QLatin1String(kFamily)));
  privacy(field).endHold(id, privacy(field).athleteHolds().first().toMap().value("id").toString(), "Settled");
  REQUIRE(field.until([&] { return !privacy(field).isBusy(); }));
  CHECK(leaver(field)->family.empty());
  privacy(field).hold({}, "District counsel");
  REQUIRE(field.until([&] { return !privacy(field).isBusy(); }));
  CHECK(leaver(field)->family == kFamily);  // on everybody: every name at once
  privacy(field).endHold({}, privacy(field).teamHolds().first().toMap().value("id").toString(), "Settled");
  REQUIRE(field.until([&] { return !privacy(field).isBusy(); }));
  CHECK(leaver(field)->family.empty());
  privacy(field).setYears(10);
  REQUIRE(field.until([&] { return !privacy(field).isBusy(); }));
  CHECK(leaver(field)->family == kFamily);
}

TEST_CASE("The years are set by touch, by an admin") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  REQUIRE(open(field, "privacy"));
  REQUIRE(field.until([&] { return field.find("legal-reason")->isEnabled(); }));
  REQUIRE(field.touch("5"));
  REQUIRE(field.until([&] { return field.views().team->nameYears == 5; }));
}

TEST_CASE("The whole record is handed out by touch, without a name in the file's name and without how somebody feels") {
  const Ground ground;
  Field field(ground.path());
  REQUIRE(field.open());
  field.app().desk().setPerson(field.views().people.begin()->first);
  const std::string athlete = field.athlete("88")->id;
  season::SaidRecord unwell;
  unwell.isUnwell = true;
  bool isSaid = false;
  field.app().desk().submit([athlete, unwell](const season::Views& views, Instant) { return book::say(views, athlete, unwell); },
                            &field.app().shell(), [&](const Result<book::Appended>& outcome) { isSaid = outcome.has_value(); });
  REQUIRE(field.until([&] { return isSaid; }));
  REQUIRE(open(field, "record", QString::fromStdString(athlete)));
  REQUIRE(field.until([&] { return privacy(field).lines().size() > 10; }));
  for (const char* form : {"pdf", "csv", "json"}) REQUIRE(field.touch(QLatin1String(form)));
  for (const auto& [name, bytes] : field.outbox().files) {
    INFO(name);
    for (const char* word : {"Lindqvist", "Bo", "88"}) CHECK(name.find(word) == std::string::npos);
    CHECK(bytes.find("unwell") == std::string::npos);
  }
  CHECK(field.outbox().files.begin()->second.find("All seven points sound") != std::string::npos);  // csv
  const ports::Paper& paper = field.outbox().papers.begin()->second;
  CHECK(all(paper).find("Lindqvist") != std::string::npos);
  CHECK(platform::setPaper(paper).rfind("%PDF-", 0) == 0);
}

TEST_CASE("Text of hostile hands is kept as it came and shown as text on every screen, in CSV and in PDF") {
  const Ground ground;
  const auto& texts = hostile();
  {
    platform::FileKeys keys(ground.path() + "/keys");
    YearsAgo clock;
    auto book = book::Book::open(ground.path() + "/team.snugbook", book::Access::readWrite, keys, clock).value();
    const std::string unit = book->views().units.begin()->first;
    // As another program could have written it: the acts would refuse most of it.
    for (std::size_t i = 0; i < texts.size(); ++i) {
      const auto ids = book->append({{"", book::AthleteAdded{"9" + std::to_string(i), texts[i], texts[i], 2009}}});
      REQUIRE(ids);
      season::SaidRecord said;
      said.where = fit::Mark::jaw;
      said.words = texts[i];
      REQUIRE(book->append({{ids->ids.front(), book::Said{said, {}}},
                            {ids->ids.front(), book::NoteAdded{texts[i]}},
                            {unit, book::UnitHeld{"other", texts[i], true}}}));
    }
    for (std::size_t i = 0; i < texts.size(); ++i)
      CHECK(std::any_of(book->views().athletes.begin(), book->views().athletes.end(),
                        [&](const auto& each) { return each.second.family == texts[i]; }));
  }
  Field field(ground.path());
  REQUIRE(field.open());
  field.app().desk().setPerson(field.views().people.begin()->first);
  QStringList shown;
  const auto look = [&] { collect(field.app().view().contentItem(), shown); };
  look();
  for (const char* screen : {"line", "jersey", "people", "privacy", "warning-text"}) {
    REQUIRE(open(field, screen));
    look();
  }
  REQUIRE(open(field, "book"));
  for (const char* page : {"athletes", "helmets", "season"}) {
    QMetaObject::invokeMethod(field.find("bookStack")->parentItem(), "push", Q_ARG(QString, QLatin1String(page)),
                              Q_ARG(QVariant, QVariantMap()));
    look();
  }
  for (const auto& [id, unit] : field.views().units) {
    QMetaObject::invokeMethod(field.find("bookStack")->parentItem(), "showUnit", Q_ARG(QString, QString::fromStdString(id)));
    look();
  }
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const std::string jersey = "9" + std::to_string(i);
    const QString id = QString::fromStdString(field.athlete(jersey)->id);
    REQUIRE(open(field, "athlete", id));
    look();
    REQUIRE(open(field, "record", id));
    REQUIRE(field.until([&] { return privacy(field).lines().size() >= 3; }));
    look();
    REQUIRE(field.touch("csv"));
    REQUIRE(field.touch("pdf"));
  }
  CHECK(shown.size() > 200);
  CHECK(field.app().view().title() == "Snugline");
  for (const QString& text : shown) {
    for (const QString& line : text.split(QLatin1Char('\n'))) {
      INFO(line.left(80).toStdString());
      CHECK(book::printableLength(line.toStdString()).has_value());
      CHECK_FALSE(line.contains(QChar(0x202E)));
    }
  }
  for (const auto& [name, bytes] : field.outbox().files) {
    for (const std::string& begin : {std::string("\"=cmd"), std::string(",=cmd"), std::string("\n=cmd")})
      CHECK(bytes.find(begin) == std::string::npos);
    CHECK(bytes.find('\x1b') == std::string::npos);
  }
  for (const auto& [name, paper] : field.outbox().papers) {
    int pages = 0;
    const std::string pdf = platform::setPaper(paper, &pages);
    CHECK(pdf.rfind("%PDF-", 0) == 0);
    if (all(paper).size() > 10'000) CHECK(pages > 2);
    CHECK(all(paper).find('\x1b') == std::string::npos);
  }
}
