// SPDX-License-Identifier: Apache-2.0
// The touches of GuideModel: what each means on the page that stands. What it does to the check, core says.
#include <algorithm>
#include <cmath>

#include "drawn_values.h"
#include "guide_model.h"
#include "sentences_gear.h"

namespace snugline::models {

using season::CheckRecord;

namespace {

constexpr Length kNudgeMetric{1000};  // 1 mm
constexpr Length kNudgeUs{3175};      // 1/8 in
constexpr Length kGapHighest{60000};  // as far as the drawing reaches

std::int64_t nearest(std::int64_t um, std::int64_t step) { return (um + step / 2) / step * step; }

// "jaw-left" -> jaw, left; "jaw" -> jaw, no side.
std::optional<fit::Mark> markOfPart(const QString& part, std::optional<fit::Side>& side) {
  QString name = part;
  if (name.endsWith(QLatin1String("-left"))) side = fit::Side::left;
  if (name.endsWith(QLatin1String("-right"))) side = fit::Side::right;
  if (side) name.truncate(name.lastIndexOf(QLatin1Char('-')));
  return fit::markFromCode(name.toStdString());
}

}  // namespace

void GuideModel::answer(const QString& name) {
  if (m_isBusy || m_isEnded) return;
  if (m_asksWho) {
    m_isWhoWanted = true;
    return emit whoWanted();
  }
  switch (m_page.stage) {
    case Stage::none:
    case Stage::done:
      return;
    case Stage::stop:
      return finish(false);
    case Stage::hair:
      return take({fit::HairSeen{name == QLatin1String("wet")}});
    case Stage::fitted:
      return answerFitted(name);
    case Stage::reading:
      return answerReading(name);
    case Stage::pad:
    case Stage::gaugePort:
      return stepBack();
    case Stage::gauge:
      return answerGauge(name);
    case Stage::view:
      if (m_page.view) take({fit::GroupSnug{*m_page.view}});
      return;
    case Stage::mark:
    case Stage::side:
    case Stage::how:
    case Stage::broken:
      return answerMark(name);
    case Stage::advice:
      return answerAdvice(name);
    case Stage::points:
    case Stage::point:
    case Stage::pointFault:
      return answerPoint(name);
    case Stage::question:
      return take({fit::QuestionAnswered{m_page.question, name == QLatin1String("yes")}});
  }
}

void GuideModel::answerMark(const QString& name) {
  if (!m_page.mark) return;
  const fit::Mark mark = *m_page.mark;
  const std::string code = name.toStdString();
  if (m_page.stage == Stage::broken) {
    if (name == QLatin1String("nothing")) return stepBack();
    for (const MarkWords::Fault& fault : MarkWords::faults(mark, nullptr)) {
      if (fault.id != name) continue;
      const QString prefix = QStringLiteral("point:");
      if (!name.startsWith(prefix))
        return take(
            {fit::MarkSeen{mark, fit::Finding::fault, m_touches.side.value_or(fit::Side::both), fit::HoldHow::unsaid, std::nullopt}});
      const auto point = gear::pointFromCode(name.mid(prefix.size()).toStdString());
      if (point) take({fit::PointSeen{*point, gear::PointState::fault, fault.what}});
      return;
    }
    return;
  }
  if (m_page.stage == Stage::side) {
    const auto side = fit::sideFromCode(code);
    if (side && m_touches.finding) take({fit::MarkSeen{mark, *m_touches.finding, *side, fit::HoldHow::unsaid, std::nullopt}});
    return;
  }
  if (m_page.stage == Stage::how) {
    const auto how = fit::holdHowFromCode(code);
    if (how && m_touches.finding) take({fit::MarkSeen{mark, *m_touches.finding, fit::Side::both, *how, std::nullopt}});
    return;
  }
  if (name == QLatin1String("gap")) {
    if (m_touches.gap) take({fit::MarkSeen{mark, fit::Finding::snug, fit::Side::both, fit::HoldHow::unsaid, m_touches.gap}});
    return;
  }
  if (const auto finding = fit::findingFromCode(code)) answerFinding(*finding);
}

// Off on a mark with sides asks for the side unless the drawing was touched; a slide asks in what.
void GuideModel::answerFinding(fit::Finding finding) {
  const fit::Mark mark = *m_page.mark;
  const bool isOff = finding != fit::Finding::snug;
  if (isOff && fit::knowsSides(mark) && !m_touches.side) {
    m_touches.finding = finding;
    if (!m_touches.mark && m_page.notice.isEmpty()) m_touches.mark = mark;
    return refresh();
  }
  if (mark == fit::Mark::hold && finding == fit::Finding::under) {
    m_touches.finding = finding;
    return refresh();
  }
  const fit::Side side = isOff ? m_touches.side.value_or(fit::Side::both) : fit::Side::both;
  take({fit::MarkSeen{mark, finding, side, fit::HoldHow::unsaid, std::nullopt}});
}

void GuideModel::answerAdvice(const QString& name) {
  if (name == QLatin1String("end")) return finish(false);
  if (!m_page.advice) return;
  const fit::Advice& advice = *m_page.advice;
  if (advice.kind == fit::AdviceKind::warm) return take({fit::ColdSeen{false, true}});
  if (advice.kind != fit::AdviceKind::change || !advice.deed) return;
  fit::Adjusted change;
  change.deed = *advice.deed;
  change.port = advice.port;
  change.part = advice.part;
  change.to = advice.to;
  const QString pumps = QStringLiteral("pumps-");
  if (name.startsWith(pumps)) change.pumps = name.mid(pumps.size()).toInt();
  if (m_touches.isGaugeOpen) change.air = m_touches.pressure;
  take({change});
}

void GuideModel::answerPoint(const QString& name) {
  const season::CheckRecord* record = check();
  if (record == nullptr) return;
  if (name == QLatin1String("nothing")) return stepBack();
  if (name == QLatin1String("all-sound")) {
    const auto isUnseen = [](const gear::PointFinding& p) { return p.state == gear::PointState::unseen; };
    const auto& seen = record->state.points;
    if (std::all_of(seen.begin(), seen.end(), isUnseen)) return take({fit::PointsSound{}});
    std::vector<fit::Answer> rest;
    for (std::size_t i = 0; i < gear::kPointCount; ++i) {
      if (isUnseen(seen[i])) rest.emplace_back(fit::PointSeen{gear::kPoints[i], gear::PointState::sound, {}});
    }
    if (rest.empty()) return stepBack();
    return take(std::move(rest));
  }
  if (!m_page.point) return;
  if (name == QLatin1String("sound")) return take({fit::PointSeen{*m_page.point, gear::PointState::sound, {}}});
  if (name == QLatin1String("fault")) {
    m_touches.point = m_page.point;
    m_touches.isPointFault = true;
    refresh();
  }
}

void GuideModel::choose(const QString& name) {
  if (m_isBusy || m_isEnded) return;
  const std::string code = name.toStdString();
  if (m_page.stage == Stage::fitted || m_page.stage == Stage::pad || m_page.stage == Stage::gaugePort) return choosePlace(name);
  if (m_page.stage == Stage::pointFault && name.startsWith(QLatin1String("fault-"))) {
    const season::CheckRecord* record = check();
    const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
    const QStringList faults = pointFaults(*m_page.point, sheet == nullptr || !sheet->air.empty());
    bool isNumber = false;
    const int i = name.mid(6).toInt(&isNumber);
    const std::string what = isNumber && i < faults.size() ? faults[i].toStdString() : std::string();
    return take({fit::PointSeen{*m_page.point, gear::PointState::fault, what}});
  }
  if (const auto point = gear::pointFromCode(code);
      point && (m_page.stage == Stage::points || m_page.stage == Stage::point || m_page.stage == Stage::pointFault)) {
    m_touches.point = point;
    m_touches.isPointFault = false;
    return refresh();
  }
  std::optional<fit::Side> side;
  const auto mark = markOfPart(name, side);
  if (!mark) return;
  if (m_page.stage == Stage::side && side) return answerMark(codeWord(fit::code(*side)));
  if (m_page.stage != Stage::view && m_page.mark != mark) return;
  m_touches.mark = mark;
  m_touches.side = side;
  refresh();
}

void GuideModel::moveGap(double mm) {
  if (!m_page.isBrow || m_isBusy) return;
  const std::int64_t step = m_choices->units() == UnitSystem::metric ? kNudgeMetric.um : kNudgeUs.um / 2;
  setGap(nearest(std::llround(mm * 1000.0), step));
}

void GuideModel::nudgeGap(int steps) {
  if (!m_page.isBrow || m_isBusy) return;
  const std::int64_t step = m_choices->units() == UnitSystem::metric ? kNudgeMetric.um : kNudgeUs.um;
  const std::int64_t now = nearest(std::llround(m_page.gapMm * 1000.0), step);
  setGap(now + steps * step);
}

void GuideModel::setGap(std::int64_t um) {
  const Length gap{std::clamp<std::int64_t>(um, 0, kGapHighest.um)};
  const bool isFirst = !m_touches.gap.has_value();
  if (m_touches.gap == gap) return;
  m_touches.gap = gap;
  const CheckRecord* record = check();
  const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
  if (isFirst || sheet == nullptr) return refresh();
  showGap(m_page, *sheet, gap, m_choices->units());
  emit gapChanged();
}

void GuideModel::openBroken() {
  if (m_page.mark && m_page.mark == fit::Mark::hold)
    return take({fit::MarkSeen{fit::Mark::hold, fit::Finding::fault, fit::Side::both, fit::HoldHow::unsaid, std::nullopt}});
  m_touches.mark = m_page.mark;
  m_touches.isBroken = true;
  refresh();
}

void GuideModel::anotherWay() {
  if (m_page.advice)
    ++m_touches.way;
  else
    m_touches.isRestWanted = true;
  refresh();
}

void GuideModel::openStep(const QString& name) {
  if (m_isBusy || m_isEnded) return;
  m_touches = {};
  if (name == QLatin1String("points"))
    m_touches.arePointsOpen = true;
  else if (name == QLatin1String("fitted"))
    m_touches.isFittingOpen = check() != nullptr && check()->state.turns == 0;  // what it was fitted with is said before the first change
  else
    m_touches.mark = fit::markFromCode(name.toStdString());
  refresh();
}

void GuideModel::sayUnwell() { take({fit::Unwell{}}); }

}  // namespace snugline::models
