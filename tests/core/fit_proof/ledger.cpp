// SPDX-License-Identifier: Apache-2.0
#include "tests/core/fit_proof/ledger.h"

namespace snugline::fit::proof {

namespace {
constexpr std::string_view kEverything = "x x x x x x x x x";
constexpr std::string_view kHoldOnly = ". . . . . . . . x";
}  // namespace

std::string_view disturbedBy(const Adjusted& change) {
  if (change.port == gear::Port::crown || change.part == gear::Part::crownPad) return kDisturbedByCrown;
  if (change.port == gear::Port::sides) return kDisturbedBySides;
  if (change.port || change.part == gear::Part::jawLeft || change.part == gear::Part::jawRight) return kDisturbedByJaw;
  return kDisturbedByStraps;
}

void Ledger::see(std::size_t mark, Finding finding, Side side, const std::optional<Length>& gap) {
  Page& page = m_marks[mark];
  bool isOff = finding != Finding::snug;
  if (gap && finding != Finding::fault) isOff = *gap < m_setup.sheet->browLow || *gap > m_setup.sheet->browHigh;
  const bool isNamed = side != Side::both && knowsSides(kMarks[mark]);
  const bool isSomeSideOff = isSeenSinceDisturbed(mark) && (page.isSideOff[0] || page.isSideOff[1]);
  if (!isSomeSideOff || !isNamed) page.isSideOff = {};
  page.isOff = isNamed ? false : isOff;
  if (isNamed) page.isSideOff[side == Side::left ? 0 : 1] = isOff;
  page.seen = m_now;
}

void Ledger::disturb(std::string_view row) {
  for (std::size_t m = 0; m < kMarkCount; ++m)
    if (isDisturbed(row, m)) m_marks[m].disturbed = m_now;
}

void Ledger::write(const Answer& answer) {
  ++m_now;
  if (const auto* hair = std::get_if<HairSeen>(&answer)) {
    if (hair->isWet && m_isWet == false && m_setup.kind != CheckKind::look) disturb(kEverything);
    m_isWet = hair->isWet;
  } else if (const auto* cold = std::get_if<ColdSeen>(&answer)) {
    if (cold->isCold == m_isCold) return;
    m_isCold = cold->isCold;
    disturb(kEverything);
    for (Page& page : m_marks)
      if (page.hasWord) page.word = m_now;
  } else if (const auto* seen = std::get_if<MarkSeen>(&answer)) {
    see(static_cast<std::size_t>(seen->mark), seen->finding, seen->side, seen->gap);
  } else if (const auto* group = std::get_if<GroupSnug>(&answer)) {
    for (const Mark m : marksOf(group->view)) see(static_cast<std::size_t>(m), Finding::snug, Side::both, std::nullopt);
  } else if (const auto* change = std::get_if<Adjusted>(&answer)) {
    disturb(disturbedBy(*change));
    for (Page& page : m_marks)
      if (page.hasWord) page.disturbed = page.word = m_now;
  } else if (std::get_if<AirRead>(&answer) != nullptr) {
    disturb(kHoldOnly);
  } else if (const auto* point = std::get_if<PointSeen>(&answer)) {
    const auto p = static_cast<std::size_t>(point->point);
    const bool isCrack = point->point == gear::Point::shell && m_points[p] == gear::PointState::fault;
    if (!isCrack) m_points[p] = point->state;
    m_arePointsSeenSinceBroke[p] = m_points[p] != gear::PointState::unseen;
  } else if (std::get_if<PointsSound>(&answer) != nullptr) {
    for (std::size_t p = 0; p < gear::kPointCount; ++p) {
      if (m_points[p] == gear::PointState::unseen) m_points[p] = gear::PointState::sound;
      m_arePointsSeenSinceBroke[p] = true;
    }
  } else if (const auto* question = std::get_if<QuestionAnswered>(&answer)) {
    m_questions[question->id] = question->isYes;
  } else if (const auto* said = std::get_if<AthleteSaid>(&answer)) {
    if (said->feels == Feels::broke) m_arePointsSeenSinceBroke = {};
    for (std::size_t m = 0; m < kMarkCount; ++m) {
      const bool isHere = said->where ? kMarks[m] == *said->where : said->feels != Feels::broke;
      if (!isHere) continue;
      m_marks[m].hasWord = true;
      m_marks[m].word = m_marks[m].disturbed = m_now;
    }
  } else if (std::get_if<Unwell>(&answer) != nullptr) {
    m_isUnwell = true;
  }
}

bool Ledger::isSnug(std::size_t mark) const {
  const Page& page = m_marks[mark];
  return isSeenSinceDisturbed(mark) && !page.isOff && !page.isSideOff[0] && !page.isSideOff[1];
}

bool Ledger::isFits() const {
  for (std::size_t m = 0; m < kMarkCount; ++m)
    if (!isSnug(m) || (m_marks[m].hasWord && m_marks[m].seen < m_marks[m].word)) return false;
  for (std::size_t p = 0; p < gear::kPointCount; ++p)
    if (m_points[p] != gear::PointState::sound || !m_arePointsSeenSinceBroke[p]) return false;
  for (const gear::Question& q : m_setup.sheet->questions) {
    const auto answered = m_questions.find(q.id);
    if (answered == m_questions.end() || !answered->second) return false;
  }
  if (m_isUnwell || m_setup.isLabelMissing || !m_setup.certifiedUntil || m_setup.today > *m_setup.certifiedUntil) return false;
  return m_setup.kind == CheckKind::look || m_isWet == true;
}

bool isFitsByFields(const Setup& setup, const State& state) {
  int good = 0;
  for (const MarkState& m : state.marks) good += m.isCurrent && m.finding == Finding::snug ? 1 : 0;
  if (good != 9) return false;
  for (const gear::PointFinding& p : state.points) good += p.state == gear::PointState::sound ? 1 : 0;
  if (good != 16) return false;
  if (setup.isLabelMissing || !setup.certifiedUntil || daysBetween(setup.today, *setup.certifiedUntil) < 0) return false;
  if (state.words.bits != 0 || state.isBroken || state.isUnwell) return false;
  for (const gear::Question& q : setup.sheet->questions) {
    bool isYes = false;
    for (const auto& [id, yes] : state.questions)
      if (id == q.id) isYes = yes;
    if (!isYes) return false;
  }
  return setup.kind == CheckKind::look || (state.isHairWet && *state.isHairWet);
}

}  // namespace snugline::fit::proof
