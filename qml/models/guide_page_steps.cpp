// SPDX-License-Identifier: Apache-2.0
// The pages of the guide, one function each: what is asked, what can be answered, what is drawn.
#include <algorithm>

#include "core/season/season_air.h"
#include "drawn_values.h"
#include "guide_page_maker.h"
#include "sentences_air.h"
#include "sentences_gear.h"

namespace snugline::models {

using fit::Finding;
using fit::LookView;
using fit::Mark;
using fit::StepKind;
using Maker = GuidePageMaker;

void Maker::stop() {
  m_page.stage = Stage::stop;
  m_page.title = GuidePageWords::tr("Stop");
  m_page.drawing = QStringLiteral("stop");
  m_page.ask = GuideWords::stop();
  m_page.hint = GuideWords::notHere() + QLatin1Char(' ') + GuideWords::emergency(m_speech.views);
  m_page.answers << guideAnswer(QStringLiteral("end"), GuidePageWords::tr("Put the check away"), QStringLiteral("danger"));
}

void Maker::hair() {
  m_page.stage = Stage::hair;
  m_page.title = GuidePageWords::tr("Hair");
  m_page.ask = GuidePageWords::tr("Is the hair wet?");
  m_page.hint = GuidePageWords::tr("Water or sweat, worn as in play: braided, covered or shaved as it is. Then helmet on.");
  m_page.answers << guideAnswer(QStringLiteral("wet"), GuidePageWords::tr("Wet"))
                 << guideAnswer(QStringLiteral("dry"), GuidePageWords::tr("Dry"), QStringLiteral("plain"),
                                GuidePageWords::tr("to see again wet"));
  m_page.drawing = QStringLiteral("profile");
}

void Maker::view(LookView view) {
  m_page.stage = Stage::view;
  m_page.view = view;
  m_page.title = MarkWords::view(view);
  m_page.ask = MarkWords::viewAsk(view);
  m_page.hint = GuidePageWords::tr("Touch what is off, on the drawing or below.");
  m_page.answers << guideAnswer(QStringLiteral("all-snug"), GuidePageWords::tr("All snug"), QStringLiteral("primary"));
  for (const Mark mark : fit::marksOf(view)) {
    const QString name = codeWord(fit::code(mark));
    m_page.choices << guideAnswer(name, MarkWords::name(mark));
    m_page.touchParts << name;
    if (fit::knowsSides(mark)) m_page.touchParts << name + QStringLiteral("-left") << name + QStringLiteral("-right");
  }
  m_page.drawing = QStringLiteral("look");
  m_page.drawnView = codeWord(fit::code(view));
}

void Maker::mark(Mark mark) {
  m_page.mark = mark;
  if (m_touches.isBroken) return broken(mark);
  if (m_touches.finding && fit::knowsSides(mark) && !m_touches.side) return side(mark);
  if (m_touches.finding && mark == Mark::hold) return how();
  m_page.stage = Stage::mark;
  m_page.title = MarkWords::name(mark);
  m_page.ask = MarkWords::ask(mark);
  m_page.hint = MarkWords::how(mark);
  for (const Finding finding : {Finding::under, Finding::snug, Finding::over}) {
    m_page.answers << guideAnswer(codeWord(fit::code(finding)), MarkWords::answer(mark, finding));
  }
  m_page.broken = mark == Mark::hold   ? GuidePageWords::tr("Cannot be tried")
                  : mark == Mark::ears ? GuidePageWords::tr("Ahead, behind or turned")
                                       : GuidePageWords::tr("Something is broken");
  if (m_check.state.words.has(mark)) {
    const auto i = static_cast<std::size_t>(mark);
    m_page.notice =
        GuidePageWords::tr("Athlete says: %1").arg(MarkWords::said(mark, m_check.state.wordSides[i], m_check.state.wordFeels[i]));
    if (const QString likely = likelyFor(mark); !likely.isEmpty()) m_page.notice += QStringLiteral(". ") + likely;
  }
  m_page.focusPart = codeWord(fit::code(mark));
  const fit::Side said = m_check.state.words.has(mark) ? m_check.state.wordSides[static_cast<std::size_t>(mark)] : fit::Side::both;
  // The profile is that of the left side.
  const bool isFront = mark == Mark::jaw || mark == Mark::chin || mark == Mark::straps || mark == Mark::sides || said == fit::Side::right;
  m_page.drawing = isFront ? QStringLiteral("front") : QStringLiteral("profile");
  if (mark == Mark::hold) m_page.motion = QStringLiteral("twist");
  if (fit::knowsSides(mark)) {
    m_page.touchParts << m_page.focusPart + QStringLiteral("-left") << m_page.focusPart + QStringLiteral("-right");
    if (!m_touches.side && said != fit::Side::both)
      m_page.focusPart += said == fit::Side::left ? QStringLiteral("-left") : QStringLiteral("-right");
    if (m_touches.side && *m_touches.side != fit::Side::both) {
      m_page.ask =
          GuidePageWords::tr("%1: %2", "the side that is spoken of, the question").arg(MarkWords::side(*m_touches.side), m_page.ask);
      m_page.focusPart += m_touches.side == fit::Side::left ? QStringLiteral("-left") : QStringLiteral("-right");
    }
  }
  if (mark == Mark::brow) browAnswers();
}

// What would be advised first if staff find what the athlete says; nothing is advised before they have looked.
QString Maker::likelyFor(Mark mark) const {
  const auto i = static_cast<std::size_t>(mark);
  const fit::Feels feels = m_check.state.wordFeels[i];
  if (feels == fit::Feels::broke) return {};
  const Finding finding = feels == fit::Feels::tight ? Finding::over : Finding::under;
  const auto taken = fit::take(m_setup, m_check.state, fit::MarkSeen{mark, finding, m_check.state.wordSides[i], fit::HoldHow::unsaid, {}});
  if (!taken) return {};
  for (const fit::Advice& one : fit::assess(m_setup, *taken).advice) {
    if (one.point || one.mark != mark) continue;
    return GuidePageWords::tr("If so: %1", "what is likely advised").arg(GuideWords::advice(one, m_speech));
  }
  return {};
}

void showGap(GuidePage& page, const gear::ModelSheet& sheet, Length gap, UnitSystem units) {
  page.gapMm = gap.mm();
  page.gapText = PlainWords::number(gap, units);
  page.gapText2 = PlainWords::number(gap, units == UnitSystem::metric ? UnitSystem::us : UnitSystem::metric);
  page.gapAnswer = GuidePageWords::tr("It sits at %1").arg(page.gapText);
  page.gapFound = MarkWords::answer(Mark::brow, fit::browFinding(sheet, gap));
}

// A gap that was dragged is answered by its number; which of the three it is, core says.
void Maker::browAnswers() {
  m_page.isBrow = true;
  const fit::MarkState& state = stateOf(Mark::brow);
  const Length shown = m_touches.gap.value_or(state.gap.value_or(fit::kBrowTarget));
  m_page.isGapKnown = m_touches.gap.has_value();
  showGap(m_page, *m_setup.sheet, shown, m_speech.units);
  if (m_touches.gap) m_page.answers = {guideAnswer(QStringLiteral("gap"), m_page.gapAnswer, QStringLiteral("plain"), m_page.gapFound)};
}

void Maker::side(Mark mark) {
  m_page.stage = Stage::side;
  m_page.title = MarkWords::name(mark);
  // In the order in which they stand in the drawing: the athlete's right is at its left.
  m_page.ask = GuidePageWords::tr("%1: on which side?")
                   .arg(PlainWords::sentenceCase(MarkWords::found(mark, *m_touches.finding, fit::Side::both, fit::HoldHow::unsaid)));
  m_page.hint = GuidePageWords::tr("The athlete's left and right. Or touch it on the drawing.");
  for (const fit::Side one : {fit::Side::right, fit::Side::both, fit::Side::left})
    m_page.answers << guideAnswer(codeWord(fit::code(one)), MarkWords::side(one));
  const QString name = codeWord(fit::code(mark));
  m_page.drawing = QStringLiteral("front");
  m_page.focusPart = name;
  m_page.touchParts << name + QStringLiteral("-left") << name + QStringLiteral("-right");
}

void Maker::how() {
  m_page.stage = Stage::how;
  m_page.title = MarkWords::name(Mark::hold);
  m_page.ask = GuidePageWords::tr("Slides: in what?");
  m_page.hint = GuidePageWords::tr("Twist left and right, rock from behind, press down on the crown.");
  for (const fit::HoldHow how : {fit::HoldHow::twist, fit::HoldHow::rock, fit::HoldHow::drop})
    m_page.answers << guideAnswer(codeWord(fit::code(how)), MarkWords::holdHow(how));
  m_page.drawing = QStringLiteral("profile");
  m_page.focusPart = QStringLiteral("hold");
  m_page.motion = QStringLiteral("rock");
}

void Maker::broken(Mark mark) {
  m_page.stage = Stage::broken;
  m_page.title = MarkWords::name(mark);
  m_page.ask = mark == Mark::hold   ? GuidePageWords::tr("Why can it not be tried?")
               : mark == Mark::ears ? GuidePageWords::tr("How do the ear openings stand?")
                                    : GuidePageWords::tr("What is broken?");
  for (const MarkWords::Fault& fault : MarkWords::faults(mark, m_setup.sheet))
    m_page.answers << guideAnswer(fault.id, fault.label, QStringLiteral("danger"));
  m_page.answers << guideAnswer(QStringLiteral("nothing"), GuidePageWords::tr("Nothing, go back"), QStringLiteral("quiet"));
  m_page.drawing = QStringLiteral("front");
  m_page.focusPart = codeWord(fit::code(mark));
}

// How many pumps it takes where the gap was measured, else what one pump does: learned from the Book, beside the advice and never for it.
QString Maker::pumpsKnown(const fit::Advice& one) const {
  if (one.kind != fit::AdviceKind::change || !one.port || one.pumpsHigh <= one.pumpsLow) return {};  // one at a time: nothing to count
  const season::PumpLearned learned = season::pumpLearned(m_speech.views, m_check.sheet);
  const auto& gap = stateOf(one.mark).gap;
  if (one.mark == Mark::brow && one.port == gear::Port::crown && gap) {
    const air::PumpResponse response = season::browResponse(learned);
    const auto count = air::pumpsFor(response, fit::kBrowTarget.um - gap->um);
    return count ? AirWords::pumps(*count, response.count) : QString();
  }
  return AirWords::onePump(season::airResponse(learned, *one.port), m_speech.gaugeUnits());
}

void Maker::advice() {
  const fit::Advice& one = *m_page.advice;
  m_page.stage = Stage::advice;
  m_page.mark = one.mark;
  m_page.title =
      PlainWords::sentenceCase(MarkWords::found(one.mark, stateOf(one.mark).finding, stateOf(one.mark).side, stateOf(one.mark).how));
  m_page.ask = GuideWords::advice(one, m_speech);
  m_page.hint = GuideWords::adviceHow(one, m_setup);
  m_page.reopens = GuideWords::reopens(one);
  m_page.pumps = pumpsKnown(one);
  const bool isRead = m_touches.isGaugeOpen && m_touches.pressure.has_value();
  if (one.kind == fit::AdviceKind::change && one.pumpsHigh > 0) {
    for (int pumps = one.pumpsLow; pumps <= one.pumpsHigh; ++pumps) {
      m_page.answers << guideAnswer(
          QStringLiteral("pumps-%1").arg(pumps), GuidePageWords::tr("%n pump(s)", nullptr, pumps), QStringLiteral("plain"),
          isRead ? GuidePageWords::tr("reads %1").arg(PlainWords::text(print(*m_touches.pressure, m_speech.gaugeUnits())))
                 : GuidePageWords::tr("done, see again"));
    }
  } else {
    const bool isChange = one.kind == fit::AdviceKind::change || one.kind == fit::AdviceKind::warm;
    m_page.answers << guideAnswer(isChange ? QStringLiteral("done") : QStringLiteral("end"), GuideWords::adviceDone(one),
                                  isChange ? QStringLiteral("primary") : QStringLiteral("danger"));
    if (one.kind == fit::AdviceKind::warm)
      m_page.answers << guideAnswer(QStringLiteral("end"), GuidePageWords::tr("Later"), QStringLiteral("plain"),
                                    GuidePageWords::tr("stays open on the board"));
  }
  if (m_page.ways.size() > 1) m_page.another = GuidePageWords::tr("Another way");
  if (one.kind == fit::AdviceKind::change && one.port) {
    if (m_touches.isGaugeOpen) {
      entry(*one.port);
      m_page.hint.clear();  // the number pad needs the room
    } else {
      m_page.canReadGauge = true;
    }
  }
  m_page.focusPart = one.port ? QStringLiteral("port-") + codeWord(gear::code(*one.port))
                     : one.part && (*one.part == gear::Part::jawLeft || *one.part == gear::Part::jawRight) ? codeWord(gear::code(*one.part))
                                                                                                           : codeWord(fit::code(one.mark));
  const bool isJaw = one.port == gear::Port::jawLeft || one.port == gear::Port::jawRight || one.part == gear::Part::jawLeft ||
                     one.part == gear::Part::jawRight;
  m_page.drawing = isJaw || one.part == gear::Part::straps ? QStringLiteral("front") : QStringLiteral("profile");
  if (one.port) m_page.motion = QStringLiteral("pump");
}

void Maker::pointFaultAdvice() {
  m_page.stage = Stage::advice;
  QStringList faults;
  bool isUnseenLeft = false;
  for (const gear::Point point : gear::kPoints) {
    const gear::PointFinding& seen = m_check.state.points[static_cast<std::size_t>(point)];
    if (seen.state == gear::PointState::fault)
      faults << (seen.what.empty() ? pointName(point)
                                   : GuidePageWords::tr("%1: %2", "a point, its fault").arg(pointName(point), PlainWords::text(seen.what)));
    if (seen.state == gear::PointState::unseen) isUnseenLeft = true;
    if (seen.state == gear::PointState::fault) m_page.focusPart = codeWord(gear::code(point));
  }
  m_page.title = GuidePageWords::tr("Do not wear");
  m_page.ask = faults.join(QLatin1Char('\n'));
  m_page.hint = GuidePageWords::tr("Hold this helmet. It is not worn until that is put right.");
  m_page.answers << guideAnswer(QStringLiteral("end"), GuidePageWords::tr("Hold this helmet"), QStringLiteral("danger"));
  if (isUnseenLeft || m_assessment.next.kind != StepKind::done) m_page.another = GuidePageWords::tr("See the rest first");
  m_page.drawing = QStringLiteral("points");
}

void Maker::points() {
  m_page.stage = Stage::points;
  m_page.title = GuidePageWords::tr("Seven points");
  const auto& seen = m_check.state.points;
  const bool isFirst = std::all_of(seen.begin(), seen.end(), [](const auto& p) { return p.state == gear::PointState::unseen; });
  m_page.ask = isFirst ? GuidePageWords::tr("The helmet itself: all seven sound?") : GuidePageWords::tr("The rest of the helmet: sound?");
  m_page.hint = GuidePageWords::tr("Touch what is not sound, on the drawing or below.");
  m_page.answers << guideAnswer(QStringLiteral("all-sound"),
                                isFirst ? GuidePageWords::tr("All seven sound") : GuidePageWords::tr("The rest is sound"),
                                QStringLiteral("primary"));
  for (const gear::Point point : gear::kPoints) {
    const QString name = codeWord(gear::code(point));
    m_page.choices << guideAnswer(name, pointName(point), QStringLiteral("plain"),
                                  seen[static_cast<std::size_t>(point)].state == gear::PointState::unseen
                                      ? QString()
                                      : pointStateWords(seen[static_cast<std::size_t>(point)]));
    m_page.touchParts << name;
  }
  m_page.drawing = QStringLiteral("points");
}

void Maker::point(gear::Point point) {
  m_page.stage = Stage::point;
  m_page.point = point;
  m_page.title = pointName(point);
  m_page.ask = pointAsk(point, !m_setup.sheet->air.empty());
  m_page.answers << guideAnswer(QStringLiteral("sound"), GuidePageWords::tr("Sound"))
                 << guideAnswer(QStringLiteral("fault"), GuidePageWords::tr("Fault"), QStringLiteral("danger"));
  m_page.drawing = QStringLiteral("points");
  m_page.focusPart = codeWord(gear::code(point));
}

void Maker::pointFault(gear::Point point) {
  this->point(point);
  m_page.stage = Stage::pointFault;
  m_page.ask = GuidePageWords::tr("What is at fault?");
  m_page.answers = {guideAnswer(QStringLiteral("nothing"), GuidePageWords::tr("Nothing, go back"), QStringLiteral("quiet"))};
  const QStringList faults = pointFaults(point, !m_setup.sheet->air.empty());
  for (qsizetype i = 0; i < faults.size(); ++i)
    m_page.choices << guideAnswer(QStringLiteral("fault-%1").arg(i), PlainWords::sentenceCase(faults[i]));
  m_page.choices << guideAnswer(QStringLiteral("fault-other"), GuidePageWords::tr("Something else"));
}

void Maker::question(const std::string& id) {
  m_page.stage = Stage::question;
  m_page.question = id;
  m_page.title = GuidePageWords::tr("From the model sheet");
  for (const gear::Question& one : m_setup.sheet->questions) {
    if (one.id == id) m_page.ask = PlainWords::text(one.ask);
  }
  m_page.answers << guideAnswer(QStringLiteral("yes"), GuidePageWords::tr("Yes"))
                 << guideAnswer(QStringLiteral("no"), GuidePageWords::tr("No"));
  m_page.drawing = QStringLiteral("front");
}

}  // namespace snugline::models
