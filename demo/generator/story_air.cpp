// SPDX-License-Identifier: Apache-2.0
// Weather each morning, the places that the team travels to, and a few helmets whose air is read once a week. Nothing here throws dice, so
// that the rest of the story stays as it was.
#include <algorithm>

#include "demo/generator/story.h"

namespace snugline::demo {

namespace {

constexpr int kMorning = 7 * 60;
constexpr int kLineAt = 15 * 60 + 10;
constexpr int kReadAt = 8 * 60 + 30;
constexpr Elevation kHome{180'000};
constexpr Temperature kRoom{293'650};      // 20.5 C
constexpr std::int64_t kHalfDegree = 500;  // mK
constexpr std::size_t kReadEvery = 9;      // one helmet in nine is read
constexpr std::int64_t kScatter = 110;     // Pa, of one reading
constexpr std::size_t kSecondLeak = 27;    // of the squad; the first is the first
constexpr std::int64_t kLeakPerWeek = 2'900, kHoldsPerWeek = 140;
constexpr std::int64_t kRefillBelow = 9'000;
constexpr int kDaysInWeek = 7;

// Scatter without dice: the same on every run, and nobody's pattern.
std::int64_t scatter(std::int64_t n, std::int64_t width) { return (n * 7919 % 11 - 5) * width / 5; }

}  // namespace

void Story::noteWeather(Day day) {
  season::Conditions morning;
  morning.place = "Equipment room";
  morning.whereabouts = season::Whereabouts::indoors;
  morning.elevation = kHome;
  morning.temperature = Temperature::millikelvin(kRoom.mk + scatter(day.number, 2) * kHalfDegree);
  m_scribe.write(book::noteWeather(m_scribe.views(), morning), at(day, kMorning), m_trainer);
  flush();
}

void Story::notePlaces(Day day) {
  m_scribe.write(book::setPlace(m_scribe.views(), "Pine Ridge field", Elevation::metres(1620)), at(day, kMorning), m_trainer);
  m_scribe.write(book::setPlace(m_scribe.views(), "River Bend field", Elevation::metres(95)), at(day, kMorning), m_trainer);
  flush();
}

// Every ninth helmet with air, on the shelf before practice; two of them leak and are filled again.
void Story::readAir(const Season& season, Day day) {
  const int week = daysBetween(season.start, day) / kDaysInWeek;
  for (std::size_t i = 0; i < m_players.size(); i += kReadEvery) {
    const season::UnitRecord* unit = m_players[i].id.empty() ? nullptr : unitOf(m_players[i]);
    const gear::ModelSheet* sheet = unit == nullptr ? nullptr : m_scribe.views().sheetOf(*unit);
    if (sheet == nullptr || sheet->air.empty()) continue;
    const gear::AirPort& port = sheet->air.front();
    const auto last = std::find_if(unit->air.rbegin(), unit->air.rend(), [&](const auto& e) { return e.port == port.port && e.gauge; });
    const bool isFirst = last == unit->air.rend();
    const bool isLeaking = i == 0 || i == kSecondLeak;
    const std::int64_t lost = isLeaking ? kLeakPerWeek : kHoldsPerWeek;
    std::int64_t pa = isFirst ? port.start.pa : last->gauge->pa - lost + scatter(week + static_cast<std::int64_t>(i) * 3, kScatter);
    book::AirReading reading;
    reading.port = port.port;
    reading.isRefill = isFirst || pa < kRefillBelow;
    reading.gauge = Pressure::pascals(reading.isRefill ? port.start.pa : pa);
    reading.source.gauge = week % 4 == 3 ? std::string() : std::string(i % 2 == 0 ? "Bench gauge 0142" : "Truck gauge Tern 7");
    const Instant when = at(day, kReadAt, i);
    m_scribe.write(book::readAir(m_scribe.views(), unit->id, reading, when), when, someoneOf(week));
  }
  flush();
}

// The first cold morning: the squad walks by in a line, two with slack straps; those are seen at the next look.
void Story::lineUp(Day day) {
  season::Conditions cold;
  cold.place = "Home field";
  cold.whereabouts = season::Whereabouts::outside;
  cold.elevation = kHome;
  cold.temperature = Temperature::celsius(6);
  m_scribe.write(book::noteWeather(m_scribe.views(), cold), at(day, kLineAt), m_trainer);
  if (!flush()) return;
  const Instant when = at(day, kLineAt + 5);
  std::vector<std::string> line;
  for (const Player& player : m_players) {
    if (!player.id.empty() && book::lineCheck(m_scribe.views(), {player.id}, {}, when)) line.push_back(player.id);
  }
  if (line.empty()) return;
  std::vector<book::LineException> off;
  for (const std::size_t place : {std::size_t{3}, std::size_t{17}}) {
    if (place < line.size()) off.push_back({line[place], fit::Mark::straps, fit::Finding::under});
  }
  m_scribe.write(book::lineCheck(m_scribe.views(), line, off, when), when, m_trainer);
  flush();
}

}  // namespace snugline::demo
