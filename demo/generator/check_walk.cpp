// SPDX-License-Identifier: Apache-2.0
#include "demo/generator/check_walk.h"

#include <algorithm>

namespace snugline::demo {

namespace {

constexpr int kTouchesMost = 90;  // a walk that does not end is a mistake here, not in the guide
constexpr int kSecond = 1000;
constexpr int kWarmingSeconds = 1200;

class Walk {
 public:
  Walk(Scribe& scribe, Dice& dice, const CheckPlan& plan, Instant at, const std::string& who)
      : m_scribe(scribe), m_dice(dice), m_plan(plan), m_at(at), m_who(who) {}

  CheckEndedAs run(const std::string& athlete) {
    if (!begin(athlete)) return {};
    for (int touches = 0; touches < kTouchesMost && m_scribe.isOk(); ++touches) {
      if (m_plan.touches && touches >= *m_plan.touches) return {fit::Verdict::unfinished, m_at};
      const fit::Assessment now = fit::assess(m_setup, m_check.state);
      if (now.next.kind == fit::StepKind::done || now.next.kind == fit::StepKind::stop) break;
      if (!now.advice.empty() && now.advice.front().kind == fit::AdviceKind::warm) {
        if (m_plan.isLeftOff) break;
        touch({fit::ColdSeen{false, true}}, kWarmingSeconds);
        continue;
      }
      if (const auto change = adviceFor(now)) {
        if (m_plan.isLeftOff) break;
        touch({*change}, m_dice.between(30, 70));
        continue;
      }
      if (m_plan.isLeftOff && now.verdict == fit::Verdict::adjust) break;
      if (!step(now.next)) break;
    }
    return end();
  }

 private:
  bool begin(const std::string& athlete) {
    const auto drafts = book::beginCheck(m_scribe.views(), athlete, m_plan.kind, dayOf(m_at));
    const std::string name = m_scribe.nextName();
    m_scribe.write(drafts, m_at, m_who);
    if (!drafts || !m_scribe.isOk()) return false;
    const auto& begun = std::get<book::CheckBegun>(drafts->front().body);
    // A small world with nothing but this check in it, so that each touch sees the one before without a commit.
    const season::Views& views = m_scribe.views();
    m_world.team = views.team;
    m_world.sheets.emplace(begun.sheet, views.sheets.at(begun.sheet));
    m_world.units.emplace(begun.unit, views.units.at(begun.unit));
    m_check.id = name;
    m_check.athlete = athlete;
    m_check.unit = begun.unit;
    m_check.sheet = begun.sheet;
    m_check.kind = begun.kind;
    m_check.certifiedUntil = begun.certifiedUntil;
    m_check.isLabelMissing = begun.isLabelMissing;
    const auto setup = season::setupOf(m_world, m_check, dayOf(m_at));
    if (!setup) return false;
    m_setup = *setup;
    m_check.state = fit::begin(m_setup);
    for (const book::WordRef& word : begun.words) {
      if (auto next = fit::take(m_setup, m_check.state, fit::AthleteSaid{word.where, word.side, word.feels}))
        m_check.state = std::move(*next);
    }
    m_world.openChecks[name] = m_check;
    return true;
  }

  void touch(const std::vector<fit::Answer>& answers, int seconds) {
    m_at.ms += std::int64_t{seconds} * kSecond;
    const auto drafts = book::answer(m_world, m_check.id, answers, m_at);
    if (!drafts) return m_scribe.write(drafts, m_at, m_who);
    season::CheckRecord& kept = m_world.openChecks[m_check.id];
    std::vector<fit::Answer> taken = answers;
    if (const auto cold = book::coldNow(m_world, kept, m_at)) taken.insert(taken.begin(), *cold);
    for (const fit::Answer& answer : taken) {
      m_check.state = *fit::take(m_setup, m_check.state, answer);
      kept.answers.push_back({m_scribe.nextName(), answer, {}});
    }
    kept.state = m_check.state;
    m_scribe.writeNamed(*drafts, m_at, m_who);
  }

  // The first change that the guide proposes for something that is off now.
  std::optional<fit::Adjusted> adviceFor(const fit::Assessment& now) {
    for (const fit::Advice& advice : now.advice) {
      if (advice.kind != fit::AdviceKind::change || !advice.deed) continue;
      fit::Adjusted change;
      change.deed = *advice.deed;
      change.port = advice.port;
      change.part = advice.part;
      if (advice.port) change.pumps = m_dice.between(std::max(advice.pumpsLow, fit::kPumpsLow), std::max(advice.pumpsHigh, fit::kPumpsLow));
      change.to = advice.to;
      if (change.port == gear::Port::crown) m_crownPumps += change.deed == fit::Deed::release ? -change.pumps : change.pumps;
      return change;
    }
    return std::nullopt;
  }

  std::optional<OffMark> plannedFor(fit::Mark mark) {
    const auto it = std::find_if(m_plan.off.begin(), m_plan.off.end(), [&](const OffMark& o) { return o.mark == mark; });
    if (it == m_plan.off.end()) return std::nullopt;
    const OffMark off = *it;
    m_plan.off.erase(it);
    return off;
  }

  fit::MarkSeen seen(fit::Mark mark) {
    fit::MarkSeen answer;
    answer.mark = mark;
    const auto off = plannedFor(mark);
    answer.finding = off ? off->finding : fit::Finding::snug;
    if (off) {
      answer.side = off->side;
      answer.how = off->how;
    }
    if (mark != fit::Mark::brow || answer.finding == fit::Finding::fault) return answer;
    const auto low = m_setup.sheet->browLow.um / 1000, high = m_setup.sheet->browHigh.um / 1000;
    std::int64_t um = std::int64_t{m_dice.between(23, 28)} * 1000;
    if (answer.finding == fit::Finding::over) um = high * 1000 + std::int64_t{m_dice.between(3, 8)} * 500;
    if (answer.finding == fit::Finding::under) um = low * 1000 - std::int64_t{m_dice.between(3, 8)} * 500;
    // Crown air in brings the shell up, by much the same for each pump; what was put right lies within the band.
    constexpr std::int64_t kPerPump = 2'600, kInside = 500;
    if (m_crownPumps != 0 && m_gap && answer.finding == fit::Finding::snug)
      um = std::clamp(m_gap->um + kPerPump * m_crownPumps + m_dice.between(-4, 4) * 100, low * 1000 + kInside, high * 1000 - kInside);
    answer.gap = m_gap = Length::micrometres(um);
    m_crownPumps = 0;
    return answer;
  }

  // A look takes three marks at one touch where all of them are open and none is off.
  std::optional<fit::LookView> groupAt(fit::Mark mark) const {
    if (m_plan.kind != fit::CheckKind::look) return std::nullopt;
    for (fit::LookView view : fit::kLookViews) {
      const auto marks = fit::marksOf(view);
      if (std::find(marks.begin(), marks.end(), mark) == marks.end()) continue;
      const bool isWhole = std::all_of(marks.begin(), marks.end(), [&](fit::Mark m) {
        const bool isOff = std::any_of(m_plan.off.begin(), m_plan.off.end(), [&](const OffMark& o) { return o.mark == m; });
        return !isOff && !m_check.state.marks[static_cast<std::size_t>(m)].isCurrent && !m_check.state.words.has(m);
      });
      if (isWhole) return view;
    }
    return std::nullopt;
  }

  bool step(const fit::Step& next) {
    switch (next.kind) {
      case fit::StepKind::hair:
        touch({fit::HairSeen{m_plan.isHairWet}}, m_dice.between(5, 12));
        return true;
      case fit::StepKind::fitted:
        touch({fit::Fitted{}}, m_dice.between(40, 90));
        return true;
      case fit::StepKind::mark:
        if (const auto view = groupAt(*next.mark)) {
          touch({fit::GroupSnug{*view}}, m_dice.between(6, 14));
        } else {
          touch({seen(*next.mark)}, m_dice.between(5, 15));
        }
        return true;
      case fit::StepKind::question:
        touch({fit::QuestionAnswered{next.question, true}}, m_dice.between(4, 9));
        return true;
      case fit::StepKind::point:
        points(next.point);
        return true;
      case fit::StepKind::stop:
      case fit::StepKind::done:
        return false;
    }
    return false;
  }

  void points(std::optional<gear::Point> point) {
    if (!m_plan.fault || !point) return touch({fit::PointsSound{}}, m_dice.between(8, 20));
    if (*point == m_plan.fault->first)
      return touch({fit::PointSeen{*point, gear::PointState::fault, m_plan.fault->second}}, m_dice.between(10, 25));
    touch({fit::PointSeen{*point, gear::PointState::sound, {}}}, m_dice.between(2, 5));
  }

  CheckEndedAs end() {
    m_at.ms += std::int64_t{m_dice.between(3, 8)} * kSecond;
    const auto drafts = book::endCheck(m_world, m_check.id, m_at);
    if (!drafts) {
      m_scribe.write(drafts, m_at, m_who);
      return {};
    }
    m_scribe.writeNamed(*drafts, m_at, m_who);
    return {std::get<book::CheckEnded>(drafts->front().body).outcome.verdict, m_at};
  }

  Scribe& m_scribe;
  Dice& m_dice;
  CheckPlan m_plan;
  Instant m_at;
  std::string m_who;
  season::Views m_world;
  season::CheckRecord m_check;
  fit::Setup m_setup;
  std::optional<Length> m_gap;  // of the brow, as last seen
  int m_crownPumps = 0;         // net, since then
};

}  // namespace

CheckEndedAs walkCheck(Scribe& scribe, Dice& dice, const std::string& athlete, const CheckPlan& plan, Instant at, const std::string& who) {
  return Walk(scribe, dice, plan, at, who).run(athlete);
}

}  // namespace snugline::demo
