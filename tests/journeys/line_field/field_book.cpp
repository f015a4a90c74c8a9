// SPDX-License-Identifier: Apache-2.0
#include <cstdlib>
#include <iostream>

#include "field.h"
#include "platform/system/file_keys.h"

namespace snugline::field {

namespace {

class StandingClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return at; }
  Instant at = field::now();
};

// A field that cannot be made is no test: say so and end.
template <typename T>
T must(Result<T> result, const char* what) {
  if (result) return std::move(*result);
  std::cerr << "The field's Book: " << what << ": " << static_cast<int>(result.error().code) << " " << result.error().place << " "
            << result.error().detail << "\n";
  std::abort();
}

struct Maker {
  book::Book& book;
  StandingClock& clock;
  std::string sheet;

  std::string put(book::Drafts drafts, const char* what) {
    auto appended = must(book.append(std::move(drafts)), what);
    return appended.ids.empty() ? std::string() : appended.ids.front();
  }
  std::string athlete(const char* jersey, const char* family, const char* given) {
    const std::string id = put(must(book::addAthlete(book.views(), {jersey, family, given, 2009}), "athlete"), "athlete");
    put(must(book::readTape(book.views(), id, {Length::millimetres(590), Length::millimetres(592)}), "tape"), "tape");
    return id;
  }
  void helmet(const std::string& athlete, const char* serial) {
    book::Arrival arrival;
    arrival.tag = must(gear::parseTag(serial, kToday), "tag");
    arrival.sheet = sheet;
    arrival.size = "L";
    arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
    for (auto& point : arrival.points) point.state = gear::PointState::sound;
    arrival.isGroup = true;
    const std::string unit = put(must(book::takeIn(book.views(), arrival, dayOf(clock.at)), "take in"), "take in");
    put(must(book::pair(book.views(), athlete, unit, dayOf(clock.at)), "pair"), "pair");
  }
  void fit(const std::string& athlete, fit::CheckKind kind, Day day, std::optional<Pressure> crown = {}) {
    clock.at = instantAt(day, 960, -300);
    const std::string check = put(must(book::beginCheck(book.views(), athlete, kind, day), "begin"), "begin");
    std::vector<fit::Answer> answers{fit::HairSeen{true}};
    if (crown) {
      fit::Fitted set;
      set.air[static_cast<std::size_t>(gear::Port::crown)] = crown;
      answers.emplace_back(set);
    }
    for (const fit::LookView view : fit::kLookViews) answers.emplace_back(fit::GroupSnug{view});
    answers.emplace_back(fit::PointsSound{});
    for (const gear::Question& asked : book.views().sheet(sheet)->questions) answers.emplace_back(fit::QuestionAnswered{asked.id, true});
    put(must(book::answer(book.views(), check, answers, clock.at), "answer"), "answer");
    put(must(book::endCheck(book.views(), check, clock.at), "end"), "end");
  }
};

}  // namespace

Instant now() { return instantAt(kToday, 840, -300); }

void makeBook(const std::string& folder, const std::string& sheetName) {
  StandingClock clock;
  platform::FileKeys keys(folder + "/keys");
  book::TeamFounded team;
  team.name = "Field";
  team.season = "2026";
  clock.at = instantAt(kToday.plus(-10), 540, -300);
  auto book = must(book::Book::create(folder + "/team.snugbook", team, keys, clock), "create");
  Maker make{*book, clock, {}};
  const auto sheet = must(gear::readSheetFile(SNUGLINE_SOURCE_DIR "/demo/data/" + sheetName), "sheet");
  make.put(must(book::adoptSheet(book->views(), sheet), "sheet"), "sheet");
  make.sheet = sheet.hash;
  make.put({{"", book::PersonAdded{"Kim Parr", "KP", "admin", true}}}, "person");
  book::PracticeSet practice;
  practice.seasonStart = kToday.plus(-40);
  practice.seasonEnd = kToday.plus(40);
  make.put({{book->views().team->id, practice}}, "practice");

  const std::string okafor = make.athlete("57", "Okafor", "Dele");
  make.helmet(okafor, "H-0231");
  const std::string lindqvist = make.athlete("88", "Lindqvist", "Bo");
  make.helmet(lindqvist, "H-0207");
  make.fit(lindqvist, fit::CheckKind::first, kToday.plus(-8));
  make.fit(lindqvist, fit::CheckKind::look, kToday.plus(-6));
  const std::string marsh = make.athlete("12", "Marsh", "Teo");
  make.helmet(marsh, "H-0118");
  make.fit(marsh, fit::CheckKind::first, kToday.plus(-1));
}

void makeSquad(const std::string& folder, int athletes, int spares) {
  StandingClock clock;
  platform::FileKeys keys(folder + "/keys");
  book::TeamFounded team;
  team.name = "Field";
  team.season = "2026";
  clock.at = instantAt(kToday.plus(-10), 540, -300);
  auto book = must(book::Book::create(folder + "/team.snugbook", team, keys, clock), "create");
  Maker make{*book, clock, {}};
  const auto sheet = must(gear::readSheetFile(SNUGLINE_SOURCE_DIR "/demo/data/sheets/alder-a1.json"), "sheet");
  make.put(must(book::adoptSheet(book->views(), sheet), "sheet"), "sheet");
  make.put({{"", book::PersonAdded{"Kim Parr", "KP", "admin", true}}}, "person");
  const std::string trainer = book->views().people.begin()->first;
  std::vector<book::BulkDraft> drafts;
  const auto add = [&](std::string about, book::Body body) {
    drafts.push_back({{std::move(about), std::move(body)}, clock.at, trainer});
    return '#' + std::to_string(drafts.size() - 1);
  };
  book::PracticeSet practice;
  practice.seasonStart = kToday.plus(-40);
  practice.seasonEnd = kToday.plus(-2);
  add(book->views().team->id, practice);
  for (int i = 1; i <= athletes + spares; ++i) {
    const bool isSpare = i > athletes;
    std::string number = std::to_string(isSpare ? i - athletes : i);
    const std::string serial = (isSpare ? "S-" : "T-") + std::string(4 - number.size(), '0') + number;
    const std::string unit = add("", book::UnitReceived{serial, serial, sheet.hash, "L", {}, {}});
    if (isSpare) continue;
    const std::string athlete = add("", book::AthleteAdded{number, "Family" + number, "Given", 2008 + i % 4});
    add(unit, book::UnitPaired{athlete});
  }
  must(book->appendBulk(std::move(drafts)), "squad");
}

void sayEarlier(const std::string& folder, const std::string& jersey, fit::Mark where, fit::Side side, const std::vector<int>& daysAgo) {
  StandingClock clock;
  platform::FileKeys keys(folder + "/keys");
  auto book = must(book::Book::open(folder + "/team.snugbook", book::Access::readWrite, keys, clock), "open");
  Maker make{*book, clock, {}};
  for (const int ago : daysAgo) {
    clock.at = instantAt(kToday.plus(-ago), 1000, -300);
    season::SaidRecord said;
    said.where = where;
    said.side = side;
    make.put(must(book::say(book->views(), book->views().athleteByJersey(jersey)->id, said), "say"), "say");
  }
}

namespace {
constexpr std::int64_t kCrownPa = 20'000;
}

void makeColdBook(const std::string& folder, const std::vector<std::string>& jerseys) {
  StandingClock clock;
  platform::FileKeys keys(folder + "/keys");
  book::TeamFounded team;
  team.name = "Cold field";
  team.season = "2026";
  clock.at = instantAt(kToday.plus(-10), 540, -300);
  auto book = must(book::Book::create(folder + "/team.snugbook", team, keys, clock), "create");
  Maker make{*book, clock, {}};
  const auto sheet = must(gear::readSheetFile(SNUGLINE_SOURCE_DIR "/demo/data/sheets/alder-a1.json"), "sheet");
  make.put(must(book::adoptSheet(book->views(), sheet), "sheet"), "sheet");
  make.sheet = sheet.hash;
  make.put({{"", book::PersonAdded{"Kim Parr", "KP", "admin", true}}}, "person");
  book::PracticeSet practice;
  practice.seasonStart = kToday.plus(-40);
  practice.seasonEnd = kToday.plus(40);
  make.put({{book->views().team->id, practice}}, "practice");
  const auto weather = [&](Day day) {
    clock.at = instantAt(day, 900, -300);
    season::Conditions room;
    room.temperature = Temperature::celsius(21);
    room.elevation = Elevation::metres(180);
    room.whereabouts = season::Whereabouts::indoors;
    room.place = "home";
    make.put(must(book::noteWeather(book->views(), room), "weather"), "weather");
  };
  std::vector<std::string> all;
  for (const std::string& jersey : jerseys) {
    all.push_back(make.athlete(jersey.c_str(), "Marsh", jersey.c_str()));
    make.helmet(all.back(), ("H-0" + jersey).c_str());
  }
  weather(kToday.plus(-6));
  for (const std::string& id : all) make.fit(id, fit::CheckKind::first, kToday.plus(-6), Pressure{kCrownPa});
  weather(kToday.plus(-1));
  for (const std::string& id : all) make.fit(id, fit::CheckKind::look, kToday.plus(-1));
}

void loseAir(const std::string& folder, const std::string& jersey) {
  StandingClock clock;
  platform::FileKeys keys(folder + "/keys");
  auto book = must(book::Book::open(folder + "/team.snugbook", book::Access::readWrite, keys, clock), "open");
  const std::string unit = book->views().athleteByJersey(jersey)->units.back();
  constexpr int kReadings = 5;
  for (int i = 1; i <= kReadings; ++i) {
    clock.at = instantAt(kToday.plus(-1), 960, -300);
    clock.at.ms += std::int64_t{i - 1} * 4 * 3600 * 1000;
    const book::AirReading reading{gear::Port::crown, Pressure{kCrownPa - 2000 - 100 * (i - 1)}, false, false, {}};
    must(book->append(must(book::readAir(book->views(), unit, reading, clock.at), "air")), "air");
  }
}

}  // namespace snugline::field
