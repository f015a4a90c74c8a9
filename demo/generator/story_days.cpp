// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "demo/generator/story.h"

namespace snugline::demo {

namespace {

using fit::Finding;
using fit::Mark;

struct FaultWords {
  gear::Point point;
  std::string_view what;
};
constexpr std::array<FaultWords, 6> kFaults{{{gear::Point::faceguard, "bare metal on the upper bar"},
                                             {gear::Point::liner, "bladder does not hold air"},
                                             {gear::Point::chinStrap, "snap torn out on the left"},
                                             {gear::Point::hardware, "screw turns without end"},
                                             {gear::Point::shell, "crack behind the ear opening"},
                                             {gear::Point::faceguard, "clip missing on the right"}}};

struct Likely {
  OffMark off;
  int percent;
};
// How often a mark is off at a first fit in this world. Invented; brow is wrong most often, as ASTM STP1177 (1997) found.
constexpr std::array<Likely, 9> kOffAtFit{{{{Mark::brow, Finding::over}, 24},
                                           {{Mark::brow, Finding::under}, 10},
                                           {{Mark::chin, Finding::under}, 12},
                                           {{Mark::straps, Finding::under}, 14},
                                           {{Mark::jaw, Finding::under, fit::Side::left}, 12},
                                           {{Mark::jaw, Finding::over, fit::Side::right}, 8},
                                           {{Mark::crown, Finding::over}, 8},
                                           {{Mark::sides, Finding::under}, 12},
                                           {{Mark::hold, Finding::under, fit::Side::both, fit::HoldHow::twist}, 9}}};

bool isWeekend(Day day) { return weekday(day) >= 5; }

}  // namespace

// --- handing out

std::string Story::freeUnitFor(const Player& player) {
  const season::Views& views = m_scribe.views();
  const Length head = Length::micrometres(std::int64_t{player.headMm} * 1000);
  // What a new helmet of the model they like would be outside by: a head off every chart gets the nearest there is.
  const gear::SizeBand& wish = bandFor(*m_sheets[player.sheet].second, head);
  const std::int64_t unavoidable = std::max({std::int64_t{0}, wish.low.um - head.um, head.um - wish.high.um});
  std::string best;
  std::int64_t bestCost = 0;
  for (const auto& [id, unit] : views.units) {
    if (!unit.isInService || !unit.athletes.empty() || !unit.holds.empty() || unit.place != season::UnitPlace::shelf) continue;
    if (unit.isLabelMissing || std::find(m_promised.begin(), m_promised.end(), id) != m_promised.end()) continue;
    const auto& model = *views.sheetOf(unit);
    const auto band = std::find_if(model.sizes.begin(), model.sizes.end(), [&size = unit.size](const auto& b) { return b.name == size; });
    if (band == model.sizes.end()) continue;
    // The size first, then the model they like, then the same choice every time.
    const std::int64_t outside = std::max({std::int64_t{0}, band->low.um - head.um, head.um - band->high.um});
    const std::int64_t cost = outside * 4 + (unit.sheet == m_sheets[player.sheet].first ? 0 : 1000);
    if (best.empty() || cost < bestCost || (cost == bestCost && unit.serial < views.units.at(best).serial)) {
      best = id;
      bestCost = cost;
    }
  }
  return bestCost > unavoidable * 4 + 48'000 ? std::string() : best;  // 12 mm further out of its band: not worth trying
}

bool Story::pairWith(Player& player, Day day, int minute) {
  const std::string unit = freeUnitFor(player);
  if (unit.empty()) return false;
  const auto drafts = book::pair(m_scribe.views(), player.id, unit, day);
  if (!drafts) return false;
  m_promised.push_back(unit);
  m_scribe.write(drafts, at(day, minute, m_turn++), someone());
  player.fitted.reset();
  return true;
}

// Whoever stands without a helmet gets another; where none is left a new one is taken in.
void Story::replaceHelmets(const Season& season, Day day, int minute) {
  for (int round = 0; round < 3; ++round) {
    std::vector<Player*> bare;
    for (Player& player : m_players) {
      if (player.id.empty() || !record(player).openCheck.empty() || player.scene == Scene::neverFitted) continue;
      const season::UnitRecord* unit = unitOf(player);
      if (unit == nullptr || !unit->holds.empty()) bare.push_back(&player);
    }
    if (bare.empty()) return;
    std::vector<Player*> fitted;
    for (Player* player : bare) {
      if (pairWith(*player, day, minute)) {
        fitted.push_back(player);
        continue;
      }
      const Length head = Length::micrometres(std::int64_t{player->headMm} * 1000);
      takeInNew(player->sheet, bandFor(*m_sheets[player->sheet].second, head).name, season, day);
    }
    if (!flush()) return;
    if (day >= season.start) fitAll(fitted, day, minute + 20);
    if (!flush()) return;
  }
}

// --- checks

CheckPlan Story::fitPlan(const Player& player) {
  CheckPlan plan;
  plan.kind = book::kindDue(m_scribe.views(), record(player));
  const season::UnitRecord* unit = unitOf(player);
  const bool hasAir = unit != nullptr && !m_scribe.views().sheetOf(*unit)->air.empty();
  for (const Likely& likely : kOffAtFit) {
    const bool isStrap = likely.off.mark == Mark::straps || likely.off.mark == Mark::chin;
    const bool isTaken = std::any_of(plan.off.begin(), plan.off.end(), [&](const OffMark& o) { return o.mark == likely.off.mark; });
    const bool isThrown = m_dice.isPercent(likely.percent);
    if (isThrown && !isTaken && (hasAir || isStrap) && plan.off.size() < 3) plan.off.push_back(likely.off);
  }
  return plan;
}

void Story::fitAll(const std::vector<Player*>& players, Day day, int minute) {
  for (Player* player : players) {
    if (unitOf(*player) == nullptr || !record(*player).openCheck.empty()) continue;
    CheckPlan plan = fitPlan(*player);
    if (plan.kind == fit::CheckKind::look) plan.kind = fit::CheckKind::refit;
    const auto ended = walkCheck(m_scribe, m_dice, player->id, plan, at(day, minute, m_turn++), someone());
    player->isRefitDue = false;
    if (ended.verdict == fit::Verdict::fits) player->fitted = day;
    // The break-in look: next day or the one after.
    player->lookOn = day.plus(isWeekend(day.plus(1)) ? 3 : m_dice.between(1, isWeekend(day.plus(2)) ? 1 : 2));
  }
  flush();
}

bool Story::isLookDay(const Season& season, const Player& player, Day day) const {
  if (player.id.empty() || player.scene == Scene::neverFitted) return false;
  if (season.isLast && isQuiet(day)) {
    const int age = daysBetween(day, m_options.today);
    switch (player.scene) {
      case Scene::lookMissed:
        if (age < 8) return false;
        break;
      case Scene::fittedYesterday:
      case Scene::fittedBefore:
      case Scene::dryHair:
      case Scene::adjustOpen:
        return age == 6;
      case Scene::labelLapsed:
        if (age < 6) return false;
        break;
      case Scene::nothing:
      case Scene::recent:
      case Scene::heldWithAthlete:
      case Scene::neverFitted:
      case Scene::brokeSaid:
      case Scene::unwellSaid:
      case Scene::tightSaid:
      case Scene::looseSaid:
      case Scene::hairCut:
      case Scene::partChanged:
      case Scene::checkBrokenOff:
      case Scene::checkUnderWay:
      case Scene::labelLapsing:
      case Scene::tapeStale:
        break;
    }
  }
  if (player.lookOn) return day == *player.lookOn;
  return weekday(day) == weekday(m_options.today.plus(-player.lookAge)) && day > season.start.plus(4);
}

CheckPlan Story::lookPlan(const Player& player, Day day) {
  CheckPlan plan;
  plan.kind = player.isRefitDue ? fit::CheckKind::refit : book::kindDue(m_scribe.views(), record(player));
  const season::UnitRecord* unit = unitOf(player);
  const bool hasAir = unit != nullptr && !m_scribe.views().sheetOf(*unit)->air.empty();
  // What the athlete felt is mostly there.
  for (const season::SaidRecord& said : record(player).said) {
    const bool isOpen = !said.isAnswered && said.where && !said.isBroken;
    if (!isOpen || !hasAir || !m_dice.isPercent(70)) continue;
    plan.off.push_back({*said.where, said.feels == fit::Feels::tight ? Finding::over : Finding::under, said.side});
    if (*said.where == Mark::hold) plan.off.back().how = fit::HoldHow::twist;
  }
  if (plan.off.empty() && m_dice.isPercent(9))
    plan.off.push_back(m_dice.isPercent(50) || !hasAir ? OffMark{Mark::straps, Finding::under} : OffMark{Mark::sides, Finding::under});
  if (!isQuiet(day) && m_dice.below(1000) < 6) {
    const FaultWords& fault = m_dice.oneOf(kFaults);
    plan.fault.emplace(fault.point, std::string(fault.what));
  }
  return plan;
}

void Story::lookAll(const Season& season, Day day) {
  for (Player& player : m_players) {
    if (!isLookDay(season, player, day)) continue;
    if (player.lookOn == day) player.lookOn.reset();
    const season::UnitRecord* unit = unitOf(player);
    if (unit == nullptr || !unit->holds.empty() || !record(player).openCheck.empty()) continue;
    if (const auto good = season::lastGoodDay(m_scribe.views(), *unit); !good || good->first < day) continue;
    const CheckPlan plan = lookPlan(player, day);
    const auto ended = walkCheck(m_scribe, m_dice, player.id, plan, at(day, 820, m_turn++), someone());
    if (plan.kind != fit::CheckKind::look) {
      player.isRefitDue = false;
      if (ended.verdict == fit::Verdict::fits) player.fitted = day;
      player.lookOn = day.plus(isWeekend(day.plus(1)) ? 3 : 1);
    }
    if (plan.fault && ended.verdict == fit::Verdict::doNotWear)
      m_repairs.push_back({unit->id, day.plus(2), day.plus(m_dice.between(8, 14))});
  }
}

void Story::say(Player& player, season::SaidRecord said, Instant when) {
  m_scribe.write(book::say(m_scribe.views(), player.id, said), when, {});
}

void Story::wordsAfterPractice(Day day) {
  if (isWeekend(day) || isQuiet(day)) return;
  for (Player& player : m_players) {
    if (player.id.empty() || unitOf(player) == nullptr || !record(player).openCheck.empty()) continue;
    const Day next = day.plus(weekday(day) == 4 ? 3 : 1);
    const std::size_t chance = m_dice.below(1000);
    season::SaidRecord said;
    if (chance < 6) {
      constexpr std::array<std::pair<Mark, fit::Feels>, 4> kWords{{{Mark::jaw, fit::Feels::tight},
                                                                   {Mark::crown, fit::Feels::tight},
                                                                   {Mark::sides, fit::Feels::loose},
                                                                   {Mark::brow, fit::Feels::loose}}};
      const auto& [mark, feels] = m_dice.oneOf(kWords);
      said.where = mark;
      said.feels = feels;
      if (fit::knowsSides(mark) && m_dice.isPercent(60)) said.side = m_dice.isPercent(50) ? fit::Side::left : fit::Side::right;
      player.lookOn = next;
    } else if (chance < 8) {
      said.isHairChanged = true;
      player.lookOn = next;
      player.isRefitDue = true;
    } else {
      continue;
    }
    say(player, said, at(day, 1070, m_turn++));
  }
}

// Sent away when due, back when done: looked over, and in service again.
void Story::repairs(const Season& season, Day day) {
  std::vector<Repair> open;
  for (const Repair& repair : m_repairs) {
    const season::UnitRecord* unit = m_scribe.views().unit(repair.unit);
    const bool isHere = unit->place == season::UnitPlace::shelf || unit->place == season::UnitPlace::withAthlete;
    if (day == repair.sent && isHere && unit->athletes.empty())
      m_scribe.write(book::move(m_scribe.views(), repair.unit, "repair", "workshop"), at(day, 500, m_turn++), m_aide);
    if (day < repair.back) {
      open.push_back(repair);
      continue;
    }
    if (isHere) continue;
    book::Arrival back;
    back.tag.serial = unit->serial;
    back.tag.key = unit->tagKey;
    for (gear::PointFinding& finding : back.points) finding.state = gear::PointState::sound;
    back.isGroup = true;
    const bool isRecertified = unit->place == season::UnitPlace::sentOut;
    back.returned = season::ReturnRecord{std::string(isRecertified ? season::kByRecertifier : season::kByFirm),
                                         isRecertified ? "recertified" : "put right",
                                         "delivery note of " + print(day),
                                         true,
                                         {}};
    if (isRecertified) back.label = freshLabel(season);
    m_scribe.write(book::takeIn(m_scribe.views(), back, day), at(day, 510, m_turn++), m_aide);
  }
  m_repairs = std::move(open);
}

}  // namespace snugline::demo
