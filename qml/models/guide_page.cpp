// SPDX-License-Identifier: Apache-2.0
#include "guide_page.h"

#include <algorithm>

#include "drawn_values.h"
#include "guide_page_maker.h"
#include "sentences_gear.h"

namespace snugline::models {

using fit::Finding;
using fit::LookView;
using fit::Mark;
using fit::StepKind;
using Maker = GuidePageMaker;

bool Maker::isFresh(LookView view) const {
  const auto marks = fit::marksOf(view);
  return std::all_of(marks.begin(), marks.end(),
                     [this](Mark m) { return stateOf(m).finding == Finding::unseen && !m_check.state.words.has(m); });
}

std::vector<fit::Advice> Maker::waysFor(Mark mark) const {
  std::vector<fit::Advice> ways;
  for (const fit::Advice& one : m_assessment.advice) {
    if (!one.point && one.mark == mark) ways.push_back(one);
  }
  return ways;
}

std::optional<Mark> Maker::firstOff() const {
  for (const Mark mark : fit::marksInOrder(*m_setup.sheet)) {
    const fit::MarkState& state = stateOf(mark);
    if (state.isCurrent && state.finding != Finding::snug && state.finding != Finding::unseen) return mark;
  }
  return std::nullopt;
}

// What was touched out of turn first; then a fault of the unit; then what is off and can be put right; then the first open step.
void Maker::choose() {
  if (m_check.state.isUnwell) return stop();
  if (m_touches.pad) return pad(*m_touches.pad);
  if (m_touches.isFittingOpen) return fitted();
  if (m_touches.isGaugeAlone) return m_touches.port ? gauge(*m_touches.port) : gaugePort();
  if (m_touches.mark) return mark(*m_touches.mark);
  if (m_touches.point) return m_touches.isPointFault ? pointFault(*m_touches.point) : point(*m_touches.point);
  if (m_touches.arePointsOpen) return points();
  const auto isPointFault = [](const gear::PointFinding& p) { return p.state == gear::PointState::fault; };
  const bool isFaulty = std::any_of(m_check.state.points.begin(), m_check.state.points.end(), isPointFault);
  if (isFaulty && !m_touches.isRestWanted) return pointFaultAdvice();
  if (const auto off = firstOff()) return adviceOrMark(*off);
  if (isFittingAsked()) return fitted();
  // A look that an athlete's word called for begins where the word points.
  for (const Mark said : fit::marksInOrder(*m_setup.sheet)) {
    if (isLook() && m_check.state.words.has(said)) return mark(said);
  }
  step(m_assessment.next);
}

namespace {

// The advice to see the straps first is spent once they were seen after the finding, with no change in between.
bool areStrapsSeen(const season::CheckRecord& check) {
  bool isOff = false, isSpent = false;
  for (const season::AnswerRecord& record : check.answers) {
    if (std::holds_alternative<fit::Adjusted>(record.answer)) isOff = isSpent = false;
    const auto* seen = std::get_if<fit::MarkSeen>(&record.answer);
    if (seen == nullptr) continue;
    if (seen->mark == Mark::hold) isOff = true;
    if (seen->mark == Mark::straps && isOff) isSpent = true;
  }
  return isSpent;
}

}  // namespace

// Seating anew and trying again are seen at once: the question stands under the advice, so nothing is between a deed and its answer.
void Maker::adviceOrMark(Mark off) {
  m_page.ways = waysFor(off);
  if (m_page.ways.empty()) return step(m_assessment.next);
  const auto isAsked = [](const fit::Advice& a) { return a.kind == fit::AdviceKind::reseat || a.kind == fit::AdviceKind::check; };
  const bool isStrapsSpent = m_page.ways.front().kind == fit::AdviceKind::check && off == Mark::hold && areStrapsSeen(m_check);
  const std::size_t first = isStrapsSpent ? 1 : 0;
  m_page.advice = m_page.ways[(first + static_cast<std::size_t>(m_touches.way)) % m_page.ways.size()];
  if (!isAsked(*m_page.advice)) return advice();
  const fit::Advice asked = *m_page.advice;
  const bool isStrapsFirst = asked.kind == fit::AdviceKind::check && asked.part == gear::Part::straps;
  mark(isStrapsFirst ? Mark::straps : off);
  m_page.notice = GuideWords::advice(asked, m_speech);
  if (m_page.ways.size() > 1) m_page.another = GuidePageWords::tr("Another way");
}

void Maker::step(const fit::Step& step) {
  switch (step.kind) {
    case StepKind::stop:
      return stop();
    case StepKind::hair:
      return hair();
    case StepKind::fitted:
      return fitted();
    case StepKind::mark:
      if (!step.mark) return;
      if (isLook()) {
        for (const LookView group : fit::kLookViews) {
          const auto marks = fit::marksOf(group);
          if (std::find(marks.begin(), marks.end(), *step.mark) != marks.end() && isFresh(group)) return view(group);
        }
      }
      return mark(*step.mark);
    case StepKind::question:
      return question(step.question);
    case StepKind::point:
      return points();
    case StepKind::done:
      m_page.stage = Stage::done;
      return;
  }
}

void Maker::drawFindings() {
  const QStringList codes = stripCodes(m_assessment.strip, m_check.state.words, m_check.state.wordFeels);
  for (std::size_t i = 0; i < fit::kMarkCount; ++i) {
    const QString name = codeWord(fit::code(fit::kMarks[i]));
    const fit::MarkState& state = m_check.state.marks[i];
    const QString code = codes[static_cast<qsizetype>(i)];
    m_page.findings.insert(name, code);
    if (!fit::knowsSides(fit::kMarks[i])) continue;
    // What the athlete said of one side is drawn on that side, as what was found is.
    const bool isSaid = m_check.state.words.has(fit::kMarks[i]);
    const fit::Side side = isSaid ? m_check.state.wordSides[i] : state.side;
    const Finding onOther = isSaid || !state.isCurrent          ? Finding::unseen
                            : state.standing == Finding::unseen ? Finding::snug
                                                                : state.standing;
    const QString other = codeWord(fit::code(onOther));
    // The plain name has its place on one side of the drawing: it stands for both or for neither.
    if (side != fit::Side::both) m_page.findings.insert(name, codeWord(fit::code(Finding::unseen)));
    m_page.findings.insert(name + QStringLiteral("-left"), side == fit::Side::right ? other : code);
    m_page.findings.insert(name + QStringLiteral("-right"), side == fit::Side::left ? other : code);
  }
  for (std::size_t i = 0; i < gear::kPointCount; ++i)
    m_page.findings.insert(codeWord(gear::code(gear::kPoints[i])), pointCode(m_check.state.points[i].state));
}

void Maker::ladder() {
  const auto add = [this](const QString& name, const QString& text, const char* state, bool isHere) {
    if (isHere) m_page.ladderAt = static_cast<int>(m_page.ladder.size());
    m_page.ladder << QVariantMap{
        {QStringLiteral("name"), name}, {QStringLiteral("text"), text}, {QStringLiteral("state"), QLatin1String(state)}};
  };
  if (m_page.stage == Stage::stop) add(QStringLiteral("stop"), GuidePageWords::tr("Stop"), "fault", true);
  if (!isLook())
    add(QStringLiteral("hair"), GuidePageWords::tr("Hair"), m_check.state.isHairWet ? "done" : "open", m_page.stage == Stage::hair);
  if (m_setup.asksFitted && (!m_setup.sheet->air.empty() || m_setup.sheet->jawPads || m_setup.sheet->crownPads)) {
    const bool isHere = m_page.stage == Stage::fitted || m_page.stage == Stage::reading || m_page.stage == Stage::pad;
    add(QStringLiteral("fitted"), m_setup.sheet->air.empty() ? GuidePageWords::tr("Fitted pads") : GuidePageWords::tr("Starting air"),
        m_check.state.isFittedSet ? "done" : "open", isHere);
  }
  const bool isGauge = m_page.stage == Stage::gauge || m_page.stage == Stage::gaugePort;  // which has hold seen again
  for (const Mark mark : fit::marksInOrder(*m_setup.sheet)) {
    const fit::MarkState& state = stateOf(mark);
    const bool isOff = state.isCurrent && state.finding != Finding::snug;
    const char* code = isOff ? "fault" : state.isCurrent ? "done" : state.finding == Finding::unseen ? "open" : "again";
    const bool isInView = m_page.view && [&] {
      const auto m = fit::marksOf(*m_page.view);
      return m[0] == mark;
    }();
    add(codeWord(fit::code(mark)), PlainWords::sentenceCase(MarkWords::brief(mark)), code,
        m_page.mark == mark || isInView || (mark == Mark::hold && isGauge));
  }
  for (const gear::Question& one : m_setup.sheet->questions) {
    const auto& answered = m_check.state.questions;
    const auto found = std::find_if(answered.begin(), answered.end(), [&](const auto& q) { return q.first == one.id; });
    const char* code = found == answered.end() ? "open" : found->second ? "done" : "fault";
    add(QStringLiteral("question-") + PlainWords::text(one.id), PlainWords::text(one.ask), code,
        m_page.stage == Stage::question && m_page.question == one.id);
  }
  const auto& seen = m_check.state.points;
  const bool isFault = std::any_of(seen.begin(), seen.end(), [](const auto& p) { return p.state == gear::PointState::fault; });
  const bool isAll = std::all_of(seen.begin(), seen.end(), [](const auto& p) { return p.state != gear::PointState::unseen; });
  const bool isHere = m_page.stage == Stage::points || m_page.stage == Stage::point || m_page.stage == Stage::pointFault ||
                      (m_page.stage == Stage::advice && !m_page.mark);
  add(QStringLiteral("points"), GuidePageWords::tr("Seven points"), isFault ? "fault" : isAll ? "done" : "open", isHere);
}

GuidePage Maker::make() {
  choose();
  drawFindings();
  ladder();
  return std::move(m_page);
}

QString stageCode(Stage stage) {
  switch (stage) {
    case Stage::none:
      return QStringLiteral("none");
    case Stage::stop:
      return QStringLiteral("stop");
    case Stage::hair:
      return QStringLiteral("hair");
    case Stage::fitted:
      return QStringLiteral("fitted");
    case Stage::reading:
      return QStringLiteral("reading");
    case Stage::pad:
      return QStringLiteral("pad");
    case Stage::gaugePort:
      return QStringLiteral("gauge-port");
    case Stage::gauge:
      return QStringLiteral("gauge");
    case Stage::view:
      return QStringLiteral("view");
    case Stage::mark:
      return QStringLiteral("mark");
    case Stage::side:
      return QStringLiteral("side");
    case Stage::how:
      return QStringLiteral("how");
    case Stage::broken:
      return QStringLiteral("broken");
    case Stage::advice:
      return QStringLiteral("advice");
    case Stage::points:
      return QStringLiteral("points");
    case Stage::point:
      return QStringLiteral("point");
    case Stage::pointFault:
      return QStringLiteral("point-fault");
    case Stage::question:
      return QStringLiteral("question");
    case Stage::done:
      return QStringLiteral("done");
  }
  return {};
}

GuidePage pageOf(const season::CheckRecord& check, const fit::Setup& setup, const Touches& touches, const Speech& speech) {
  return Maker(check, setup, touches, speech).make();
}

}  // namespace snugline::models
