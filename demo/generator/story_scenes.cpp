// SPDX-License-Identifier: Apache-2.0
// What the board shows on the demo's today, one scene an athlete.
#include <algorithm>

#include "demo/generator/story.h"

namespace snugline::demo {

namespace {

using fit::Finding;
using fit::Mark;

}  // namespace

// Paperwork with a full date turns up for the units whose label lapses about now.
void Story::scenesBefore(Day day) {
  int lapsing = 0;
  for (Player& player : m_players) {
    if (player.scene != Scene::labelLapsed && player.scene != Scene::labelLapsing) continue;
    const season::UnitRecord* unit = unitOf(player);
    if (unit == nullptr) continue;
    const int months = m_scribe.views().sheetOf(*unit)->certificationMonths;
    const Day firstBad = m_options.today.plus(player.scene == Scene::labelLapsed ? -4 : 7 + 4 * lapsing++);
    gear::Label label;
    label.fullDate = addMonths(firstBad, -months);
    while (addMonths(*label.fullDate, months) > firstBad) label.fullDate = label.fullDate->plus(-1);
    label.year = civil(*label.fullDate).year;
    label.source = "delivery note " + std::to_string(m_dice.between(1000, 9999));
    m_scribe.write(book::readLabel(m_scribe.views(), unit->id, label, day), at(day, 480, m_turn++), m_trainer);
  }
}

void Story::scenesOn(const Season& season, Day day) {
  for (Player& player : m_players) {
    scene(season, player, day);
    if (!m_scribe.isOk()) return;
  }
  flush();
}

void Story::scene(const Season& season, Player& player, Day day) {
  const int ago = daysBetween(day, m_options.today);  // 2, 1, 0
  const bool isYesterday = ago == 1, isToday = ago == 0;
  const int morning = std::max(0, m_options.minute - 330);
  const season::UnitRecord* unit = player.id.empty() ? nullptr : unitOf(player);
  if (unit == nullptr && player.scene != Scene::neverFitted) return;
  season::SaidRecord said;
  CheckPlan plan;
  switch (player.scene) {
    case Scene::nothing:
    case Scene::recent:
    case Scene::labelLapsed:
    case Scene::labelLapsing:
    case Scene::lookMissed:
    case Scene::tapeStale:
      return;
    case Scene::heldWithAthlete:
      if (isYesterday)
        m_scribe.write(book::hold(m_scribe.views(), unit->id, "faceguard", "bare metal on the lower bar", true), at(day, 1065), m_aide);
      return;
    case Scene::neverFitted:
      if (isYesterday) {
        m_scribe.write(book::addAthlete(m_scribe.views(), {player.jersey, player.family, player.given, player.birthYear}), at(day, 1000),
                       m_trainer);
        const auto ids = m_scribe.flush();
        if (!ids.empty()) player.id = ids.back();
        tapeHeads({&player}, day);
      } else if (isToday && !pairWith(player, day, morning)) {
        takeInNew(player.sheet, bandFor(*m_sheets[player.sheet].second, Length::micrometres(std::int64_t{player.headMm} * 1000)).name,
                  season, day);
      }
      return;
    case Scene::brokeSaid:
      if (!isToday) return;
      said.where = Mark::straps;
      said.feels = fit::Feels::broke;
      said.isBroken = true;
      said.words = "snap pulled out on the left";
      return say(player, said, at(day, morning + 20));
    case Scene::unwellSaid:
      if (isYesterday) {
        said.isUnwell = true;
        say(player, said, at(day, 1050));
      } else if (isToday) {
        const auto& all = record(player).said;
        if (!all.empty())
          m_scribe.write(book::acknowledge(m_scribe.views(), player.id, all.back().fact, false, {}), at(day, morning - 60), m_trainer);
      }
      return;
    case Scene::tightSaid:
      if (!isYesterday) return;
      said.where = Mark::jaw;
      said.side = fit::Side::left;
      said.feels = fit::Feels::tight;
      return say(player, said, at(day, 1072, m_turn++));
    case Scene::looseSaid:
      if (!isYesterday) return;
      said.where = Mark::hold;
      said.feels = fit::Feels::loose;
      said.words = "slides when I turn my head";
      return say(player, said, at(day, 1072, m_turn++));
    case Scene::hairCut:
      if (isYesterday) m_scribe.write(book::hairChanged(m_scribe.views(), player.id, "braids out, cut short"), at(day, 1080), m_trainer);
      return;
    case Scene::partChanged:
      if (isToday) m_scribe.write(book::changePart(m_scribe.views(), unit->id, "chin strap", "worn snaps"), at(day, morning + 40), m_aide);
      return;
    case Scene::checkBrokenOff:
      plan.touches = 2;
      if (isYesterday) walkCheck(m_scribe, m_dice, player.id, plan, at(day, 922), m_aide);
      return;
    case Scene::checkUnderWay:
      plan.kind = fit::CheckKind::refit;
      plan.touches = 6;
      if (isToday) walkCheck(m_scribe, m_dice, player.id, plan, at(day, std::max(0, m_options.minute - 12)), m_trainer);
      return;
    case Scene::adjustOpen:
      plan.off = {{Mark::straps, Finding::under}};
      plan.isLeftOff = true;
      if (isYesterday) walkCheck(m_scribe, m_dice, player.id, plan, at(day, 915), m_aide);
      return;
    case Scene::dryHair:
      plan.kind = fit::CheckKind::refit;
      plan.isHairWet = false;
      if (isYesterday) walkCheck(m_scribe, m_dice, player.id, plan, at(day, 830, m_turn++), m_aide);
      return;
    case Scene::fittedYesterday:
    case Scene::fittedBefore:
      if (ago != (player.scene == Scene::fittedYesterday ? 1 : 2)) return;
      // The old one goes to have its liner renewed.
      if (pairWith(player, day, 790)) {
        m_repairs.push_back({unit->id, day, m_options.today.plus(9)});
        flush();
        fitAll({&player}, day, 800);
        player.lookOn = m_options.today.plus(1);
      }
      return;
  }
}

}  // namespace snugline::demo
