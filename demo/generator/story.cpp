// SPDX-License-Identifier: Apache-2.0
#include "demo/generator/story.h"

#include <algorithm>

#include "core/book/acts_season.h"
#include "core/gear/tag.h"

namespace snugline::demo {

namespace {

constexpr int kWeeksToToday = 10;  // the season under way began so many weeks ago
constexpr int kWeeks = 16;
constexpr int kSignUpDays = 131;  // before the first practice: spring
constexpr int kReadyDays = 14;    // schedule and roster
constexpr int kHelmetsDays = 12;
constexpr int kTapeDays = 6;
constexpr int kRecertifiedDays = 40;  // back from recertification before the season
constexpr int kSentOutDays = 150;
constexpr std::size_t kMissingUnits = 2;  // when a season is closed
constexpr std::size_t kMissingEach = 7;   // every so many athletes does not hand in, until there are enough

}  // namespace

Story::Story(Scribe& scribe, const Options& options) : m_scribe(scribe), m_options(options), m_dice(options.seed), m_names(m_dice) {}

Story::Season Story::seasonAt(int index) const {
  const int back = m_options.seasons - 1 - index;
  const Day monday = m_options.today.plus(-weekday(m_options.today));
  Season season;
  season.start = monday.plus(-7 * kWeeksToToday - 364 * back);  // whole weeks, so that a season starts on a Monday
  season.end = season.start.plus(7 * kWeeks - 3);
  season.isLast = back == 0;
  season.year = civil(season.start).year;
  return season;
}

Instant Story::openingOf(const Options& options) {
  const Day monday = options.today.plus(-weekday(options.today));
  const Day first = monday.plus(-7 * kWeeksToToday - 364 * (options.seasons - 1));
  return instantAt(first.plus(-kSentOutDays), 8 * 60, options.offsetMinutes);
}

// People take turns: about a minute and a quarter for each athlete.
Instant Story::at(Day day, int minute, std::size_t turn) const {
  Instant when = instantAt(day, minute, m_options.offsetMinutes);
  when.ms += static_cast<std::int64_t>(turn % 90) * 75'000;
  return when;
}

const std::string& Story::someone() { return m_dice.isPercent(70) ? m_trainer : m_aide; }

const season::UnitRecord* Story::unitOf(const Player& player) const {
  const auto& units = record(player).units;
  return units.empty() ? nullptr : m_scribe.views().unit(units.back());
}

bool Story::isQuiet(Day day) const { return day >= m_options.today.plus(-9); }

bool Story::flush() {
  m_scribe.flush();
  m_promised.clear();
  return m_scribe.isOk();
}

bool Story::tell() {
  const int days = 7 * kWeeks + kSentOutDays;
  for (int index = 0; index < m_options.seasons; ++index) {
    const Season season = seasonAt(index);
    if (index == 0) found(season);
    if (!m_scribe.isOk()) return false;
    const Day first = season.start.plus(-kSentOutDays);
    const Day last = season.isLast ? m_options.today : season.end.plus(3);
    for (Day day = first; day <= last; day = day.plus(1)) {
      runDay(season, day);
      if (!flush()) return false;
      const double done = (index + static_cast<double>(daysBetween(first, day)) / days) / m_options.seasons;
      if (m_options.progress && weekday(day) == 0 && !m_options.progress(done)) return false;
    }
  }
  return m_scribe.isOk();
}

void Story::found(const Season& first) {
  m_team = m_scribe.views().team ? m_scribe.views().team->id : std::string();
  const Instant when = at(first.start.plus(-kSentOutDays), 9 * 60);
  book::Drafts people{{"", book::PersonAdded{"Maren Tollgate", "MT", "admin", true}},
                      {"", book::PersonAdded{"Silvio Kestrelby", "SK", "staff"}}};
  m_scribe.write(std::move(people), when, {});
  const auto ids = m_scribe.flush();
  if (ids.size() != 2) return;
  m_trainer = ids[0];
  m_aide = ids[1];
  for (const BuiltInSheet& built : builtInSheets()) {
    auto sheet = gear::parseSheet(built.bytes, std::string(built.name));
    if (!sheet) return m_scribe.write(tl::unexpected(sheet.error()), when, m_trainer);
    m_scribe.write(book::adoptSheet(m_scribe.views(), *sheet), when, m_trainer);
    std::string hash = sheet->hash;  // read before the sheet is moved away
    m_sheets.emplace_back(std::move(hash), std::make_shared<gear::ModelSheet>(std::move(*sheet)));
  }
  flush();
}

void Story::openSeason(const Season& season) {
  book::PracticeSet set;
  set.seasonStart = season.start;
  set.seasonEnd = season.end;
  set.minute = 930;
  set.days = std::array<bool, 7>{true, true, true, true, true, false, false};
  set.season = std::to_string(season.year);
  m_scribe.write(book::Drafts{{m_team, set}}, at(season.start.plus(-kReadyDays), 540), m_trainer);
}

// A quarter of the squad leaves after a season, newcomers take their numbers.
void Story::signUp(const Season& season) {
  const Day day = season.start.plus(-kSignUpDays);
  const auto count = static_cast<std::size_t>(m_options.athletes);
  std::vector<Player*> entering;
  if (m_players.empty()) {
    for (const std::string& jersey : jerseysFor(m_dice, count)) m_players.push_back(newPlayer(m_dice, m_names, jersey, season.year, false));
    for (Player& player : m_players) entering.push_back(&player);
  } else {
    for (Player& player : m_players) {
      player.fitted.reset();
      player.lookOn.reset();
      player.headMm += m_dice.between(0, 3);  // still growing
      if (season.year - player.birthYear <= 18 && !m_dice.isPercent(20)) continue;
      m_scribe.write(book::changeAthlete(m_scribe.views(), player.id, {{}, {}, {}, {}, false}), at(day, 600), m_trainer);
      player = newPlayer(m_dice, m_names, player.jersey, season.year, true);
      entering.push_back(&player);
    }
  }
  std::vector<Scene> scenes = season.isLast ? castScenes(count) : std::vector<Scene>(count, Scene::nothing);
  m_dice.shuffle(scenes);
  for (std::size_t i = 0; i < count; ++i) {
    Player& player = m_players[i];
    player.scene = scenes[i];
    player.lookAge = player.scene == Scene::recent ? 5 + static_cast<int>(m_dice.below(3)) : 1 + static_cast<int>(m_dice.below(2));
    if (player.scene == Scene::tapeStale && season.year - player.birthYear > 17) player.birthYear = season.year - 16;
  }
  enter(entering, day);
}

void Story::enter(std::vector<Player*>& entering, Day day) {
  std::vector<Player*> now;
  for (Player* player : entering) {
    if (player->scene == Scene::neverFitted) continue;  // joins the day before the demo's today
    m_scribe.write(book::addAthlete(m_scribe.views(), {player->jersey, player->family, player->given, player->birthYear}), at(day, 620),
                   m_trainer);
    now.push_back(player);
  }
  const auto ids = m_scribe.flush();
  // Departures come first in the piece; the newcomers are its end.
  for (std::size_t i = 0; i < now.size() && ids.size() >= now.size(); ++i) now[i]->id = ids[ids.size() - now.size() + i];
}

gear::Label Story::freshLabel(const Season& season) {
  gear::Label label;
  label.year = season.year;
  if (!m_dice.isOneIn(3)) return label;
  label.fullDate = dayOf(season.year, 1, 10).plus(m_dice.between(0, 120));
  label.source = "delivery note " + std::to_string(m_dice.between(1000, 9999));
  return label;
}

book::Arrival Story::arrival(const std::string& serial, std::size_t sheet, const std::string& size, const Season& season) {
  book::Arrival arrival;
  if (const auto tag = gear::parseTag(serial, season.start)) arrival.tag = *tag;
  arrival.sheet = m_sheets[sheet].first;
  arrival.size = size;
  arrival.label = freshLabel(season);
  if (m_dice.isOneIn(4)) arrival.label->kind = gear::LabelKind::makersMark;
  for (gear::PointFinding& finding : arrival.points) finding.state = gear::PointState::sound;
  arrival.isGroup = true;
  return arrival;
}

// Serials of the plain sort, and for one sheet GS1 tags with an item number of the range for use inside a company (prefix 02).
void Story::takeInNew(std::size_t sheet, const std::string& size, const Season& season, Day day) {
  const gear::ModelSheet& model = *m_sheets[sheet].second;
  const int count = ++m_serials[model.id];
  std::string number = std::to_string(count);
  number.insert(0, number.size() < 5 ? 5 - number.size() : 0, '0');
  std::string serial = model.name.substr(model.name.size() - 2) + '-' + size + '-' + number;
  if (sheet == 1) {
    const std::string item = "0200000000" + std::to_string(100 + static_cast<int>(sheet));
    serial =
        "]d201" + item + std::to_string(gear::gs1CheckDigit(item)) + "11" + std::to_string(season.year % 100) + "0115" + "21B2" + number;
  }
  book::Arrival arriving = arrival(serial, sheet, size, season);
  // One in twenty has something: it is held and dealt with.
  if (m_dice.isOneIn(20))
    arriving.points[static_cast<std::size_t>(gear::Point::warningLabel)] = {gear::PointState::fault, "worn off, cannot be read"};
  m_scribe.write(book::takeIn(m_scribe.views(), arriving, day), at(day, 560, m_turn++), someone());
}

void Story::takeHelmetsIn(const Season& season) {
  const Day day = season.start.plus(-kHelmetsDays);
  for (const Player& player : m_players) {
    const Length head = Length::micrometres(std::int64_t{player.headMm} * 1000);
    takeInNew(player.sheet, bandFor(*m_sheets[player.sheet].second, head).name, season, day);
  }
  const std::size_t spares = std::max<std::size_t>(2, (m_players.size() * 14 + 32) / 64);
  for (std::size_t i = 0; i < spares; ++i) {
    const std::size_t sheet = i % m_sheets.size();
    const auto& sizes = m_sheets[sheet].second->sizes;
    takeInNew(sheet, sizes[(i / m_sheets.size() + 1) % sizes.size()].name, season, day);
  }
}

// Whatever would lapse within the season was sent out in winter and comes back with a new label.
void Story::renewLabels(const Season& season) {
  const Day out = season.start.plus(-kSentOutDays), back = season.start.plus(-kRecertifiedDays);
  std::vector<std::pair<std::string, const season::UnitRecord*>> sent;
  for (const auto& [id, unit] : m_scribe.views().units) sent.emplace_back(id, &unit);
  std::sort(sent.begin(), sent.end());  // the hash map's order is nobody's
  for (const auto& [id, unit] : sent) {
    const auto good = season::lastGoodDay(m_scribe.views(), *unit);
    const bool isDue = good && good->first < season.end && unit->place == season::UnitPlace::shelf;
    if (!isDue) continue;
    m_scribe.write(book::move(m_scribe.views(), id, "sent-out", "recertification"), at(out, 600, m_turn++), m_aide);
    m_repairs.push_back({id, out.plus(-1), back});  // on its way already
  }
}

// Most warning labels that were worn off at intake are replaced before helmets are handed out.
void Story::mendWarningLabels(Day day) {
  const std::string reason(gear::code(gear::Point::warningLabel));
  std::vector<std::string> mended;
  for (const auto& [id, unit] : m_scribe.views().units) {
    if (unit.holds.size() == 1 && unit.holds.front().reason == reason) mended.push_back(id);
  }
  std::sort(mended.begin(), mended.end());
  gear::PointFindings sound{};
  sound[static_cast<std::size_t>(gear::Point::warningLabel)].state = gear::PointState::sound;
  std::erase_if(mended, [this](const std::string&) { return m_dice.isOneIn(4); });
  for (const std::string& id : mended) {
    const Instant when = at(day, 600, m_turn++);
    m_scribe.write(book::changePart(m_scribe.views(), id, "exterior warning label", "new one from the maker"), when, m_aide);
    m_scribe.write(book::seePoints(m_scribe.views(), id, sound, false), when, m_aide);
  }
  if (!flush()) return;
  for (const std::string& id : mended) {
    const Instant when = at(day, 620, m_turn++);
    m_scribe.write(book::releaseHold(m_scribe.views(), id, m_scribe.views().units.at(id).holds.front().fact, "label replaced", day), when,
                   m_aide);
  }
  if (!flush()) return;
  for (const std::string& id : mended) m_scribe.write(book::putInService(m_scribe.views(), id, day), at(day, 640, m_turn++), m_aide);
  flush();
}

void Story::tapeHeads(const std::vector<Player*>& players, Day day) {
  for (Player* player : players)
    m_scribe.write(book::readTape(m_scribe.views(), player->id, tapeReadings(m_dice, player->headMm)), at(day, 480, m_turn++), someone());
}

void Story::handOut(const Season& season, Day day) {
  for (Player& player : m_players) {
    if (player.scene == Scene::neverFitted) continue;
    pairWith(player, day, 840);
  }
  flush();
  replaceHelmets(season, day, 900);
}

// Everything is carried in and the season closed; two helmets are missing then, of which one turns up and one is given up for lost.
void Story::handBack(Day day) {
  std::vector<std::string> missing;
  for (std::size_t i = 0; i < m_players.size(); ++i) {
    const auto& athlete = record(m_players[i]);
    for (const std::string& unit : athlete.units) {
      if (missing.size() < kMissingUnits && i % kMissingEach == kMissingEach - 1) {
        missing.push_back(unit);
      } else {
        m_scribe.write(book::handIn(m_scribe.views(), {unit}, at(day, 960)), at(day, 960, m_turn++), m_aide);
      }
    }
  }
  if (!flush()) return;
  std::vector<std::string> onShelf;
  for (const season::MissingUnit& each : season::missingUnits(m_scribe.views())) {
    if (each.athlete == nullptr) onShelf.push_back(each.unit->id);
  }
  for (const std::string& unit : onShelf)
    m_scribe.write(book::handIn(m_scribe.views(), {unit}, at(day, 1000)), at(day, 1000, m_turn++), m_aide);
  if (!flush()) return;
  m_scribe.write(book::closeSeason(m_scribe.views(), day), at(day, 1050), m_trainer);
  if (!flush() || missing.size() < kMissingUnits) return;
  m_scribe.write(book::handIn(m_scribe.views(), {missing.front()}, at(day.plus(9), 600)), at(day.plus(9), 600), m_aide);
  m_scribe.write(book::move(m_scribe.views(), missing.back(), "lost", {}, "not handed in"), at(day.plus(20), 600), m_trainer);
}

void Story::runDay(const Season& season, Day day) {
  m_turn = 0;
  const int until = daysBetween(day, season.start);
  repairs(season, day);  // what came back over the winter first
  if (until == kSentOutDays && !m_unitsAreNew && flush()) renewLabels(season);
  if (until == kSignUpDays) signUp(season);
  if (until == kReadyDays) openSeason(season);
  if (until == kHelmetsDays && m_unitsAreNew) {
    takeHelmetsIn(season);
    m_unitsAreNew = false;
  }
  if (until == kSignUpDays - 1 || until == kTapeDays) {
    std::vector<Player*> taped;
    for (Player& player : m_players) {
      const bool isEarly = player.scene == Scene::tapeStale;
      if (player.scene != Scene::neverFitted && isEarly == (until != kTapeDays)) taped.push_back(&player);
    }
    tapeHeads(taped, day);
  }
  if (until == kTapeDays - 1) mendWarningLabels(day);
  if (until == kTapeDays - 2) handOut(season, day);
  if (season.isLast && day == m_options.today.plus(-8)) scenesBefore(day);  // from now on nobody changes helmets by chance
  if (!flush() || day < season.start || day > season.end.plus(3)) return;
  if (day == season.end.plus(3)) return handBack(day);
  if (day > season.end) return;
  if (day == season.start && season.isLast) notePlaces(day);
  if (season.isLast) noteWeather(day);
  if (season.isLast && day == m_options.today) return scenesOn(season, day);
  if (season.isLast && weekday(day) == 3) readAir(season, day);
  // First fits go over the first three days.
  if (const int fitDay = daysBetween(season.start, day); fitDay < 3) {
    std::vector<Player*> fitted;
    for (std::size_t i = static_cast<std::size_t>(fitDay); i < m_players.size(); i += 3) {
      if (m_players[i].scene != Scene::neverFitted) fitted.push_back(&m_players[i]);
    }
    fitAll(fitted, day, 600);
  }
  lookAll(season, day);
  if (!flush()) return;
  if (season.isLast && day == m_options.today.plus(-16)) lineUp(day);
  replaceHelmets(season, day, 960);
  wordsAfterPractice(day);
  if (season.isLast && day >= m_options.today.plus(-2) && flush()) scenesOn(season, day);
}

}  // namespace snugline::demo
