// SPDX-License-Identifier: Apache-2.0
// assess(): where the check stands. Reasons are gathered by rank; the verdict is the rank of the worst one.
#include <algorithm>
#include <cassert>

#include "core/fit/guide.h"
#include "core/fit/guide_table.h"

namespace snugline::fit {

namespace {

using gear::ModelSheet;
using gear::Part;
using gear::Point;
using gear::PointState;

template <typename Enum>
std::size_t indexOf(Enum e) {
  return static_cast<std::size_t>(e);
}

bool needsWetHair(const Setup& setup) { return setup.kind != CheckKind::look; }

bool isWayLeft(const ModelSheet& sheet, const State& state, Mark mark) {
  if (isReseatLeft(state, mark) || isWarmLeft(sheet, state, mark)) return true;
  const CellWays ways = waysOf(sheet, state, mark);
  return std::any_of(ways.begin(), ways.end(), [&](const CellWay& w) { return isLeft(sheet, state, mark, w.way); });
}

std::optional<bool> answerTo(const State& state, const std::string& question) {
  for (const auto& [id, isYes] : state.questions)
    if (id == question) return isYes;
  return std::nullopt;
}

// A shell on a head that presses somewhere is too small; one that presses nowhere and still turns is too large.
int directionByPressure(const State& state) {
  for (const Mark m : {Mark::jaw, Mark::crown, Mark::sides}) {
    const MarkState& mark = state.marks[indexOf(m)];
    if (mark.isCurrent && mark.finding == Finding::over) return 1;
  }
  return -1;
}

int directionOfEnd(Row row, const State& state) {
  if (row == Row::sizeUp) return 1;
  if (row == Row::sizeDown) return -1;
  return row == Row::sizeByPressure ? directionByPressure(state) : 0;
}

bool isEnd(Row row) { return row >= Row::sizeUp; }

// ---- reasons ----

struct Ranked {
  std::vector<Reason> doNotWear, adjust, unfinished;
};

Reason reasonOf(ReasonKind kind) {
  Reason r;
  r.kind = kind;
  return r;
}

void addUnit(Ranked& out, const Setup& setup, const State& state) {
  if (state.isBroken) out.doNotWear.push_back(reasonOf(ReasonKind::broken));
  for (const Point p : gear::kPoints) {
    const gear::PointFinding& point = state.points[indexOf(p)];
    if (point.state == PointState::sound) continue;
    Reason r = reasonOf(point.state == PointState::fault ? ReasonKind::pointFault : ReasonKind::pointOpen);
    r.point = p;
    r.text = point.what;
    (point.state == PointState::fault ? out.doNotWear : out.unfinished).push_back(std::move(r));
  }
  Reason label = reasonOf(ReasonKind::labelMissing);
  label.point = Point::certification;
  if (setup.isLabelMissing) {
    out.doNotWear.push_back(std::move(label));
  } else if (!setup.certifiedUntil) {
    label.kind = ReasonKind::labelUnknown;
    out.unfinished.push_back(std::move(label));
  } else if (*setup.certifiedUntil < setup.today) {
    label.kind = ReasonKind::labelLapsed;
    out.doNotWear.push_back(std::move(label));
  }
}

void addMark(Ranked& out, const ModelSheet& sheet, const State& state, Mark mark) {
  const MarkState& m = state.marks[indexOf(mark)];
  Reason r;
  r.mark = mark;
  if (state.words.has(mark)) {
    r.kind = ReasonKind::wordOpen;
    r.side = state.wordSides[indexOf(mark)];
    out.unfinished.push_back(std::move(r));
    return;
  }
  if (!m.isCurrent) {
    r.kind = ReasonKind::markOpen;
    out.unfinished.push_back(std::move(r));
    return;
  }
  if (!isOff(m)) return;
  r.finding = m.finding;
  r.side = m.side;
  if (isFaultAtOnce(mark, m.finding)) {
    r.kind = mark == Mark::hold ? ReasonKind::cannotTry : ReasonKind::markFault;
    out.doNotWear.push_back(std::move(r));
  } else if (isWayLeft(sheet, state, mark)) {
    r.kind = ReasonKind::markOff;
    out.adjust.push_back(std::move(r));
  } else {
    r.kind = ReasonKind::notReached;
    for (const CellRow& row : cell(mark, m.finding)) {
      if (!isEnd(row.row)) continue;
      r.direction = directionOfEnd(row.row, state);
      break;
    }
    out.doNotWear.push_back(std::move(r));
  }
}

Ranked reasonsOf(const Setup& setup, const State& state) {
  Ranked out;
  if (needsWetHair(setup) && !state.isHairWet) out.unfinished.push_back(reasonOf(ReasonKind::hairOpen));
  for (const Mark m : marksInOrder(*setup.sheet)) addMark(out, *setup.sheet, state, m);
  for (const gear::Question& q : setup.sheet->questions) {
    const std::optional<bool> isYes = answerTo(state, q.id);
    if (isYes == true) continue;
    Reason r = reasonOf(isYes ? ReasonKind::veto : ReasonKind::questionOpen);
    r.text = q.id;
    (isYes ? out.doNotWear : out.unfinished).push_back(std::move(r));
  }
  addUnit(out, setup, state);
  if (needsWetHair(setup) && state.isHairWet == false) out.adjust.push_back(reasonOf(ReasonKind::dryHair));
  return out;
}

// ---- steps ----

Step stepOf(StepKind kind) {
  Step s;
  s.kind = kind;
  return s;
}

std::vector<Step> openSteps(const Setup& setup, const State& state) {
  std::vector<Step> open;
  if (needsWetHair(setup) && !state.isHairWet) open.push_back(stepOf(StepKind::hair));
  for (const Mark m : marksInOrder(*setup.sheet)) {
    if (state.marks[indexOf(m)].isCurrent && state.marks[indexOf(m)].finding == Finding::snug) continue;
    open.push_back(stepOf(StepKind::mark));
    open.back().mark = m;
  }
  for (const gear::Question& q : setup.sheet->questions) {
    if (answerTo(state, q.id)) continue;
    open.push_back(stepOf(StepKind::question));
    open.back().question = q.id;
  }
  for (const Point p : gear::kPoints) {
    const bool isDateOpen = p == Point::certification && !setup.certifiedUntil && !setup.isLabelMissing;
    if (state.points[indexOf(p)].state != PointState::unseen && !isDateOpen) continue;
    open.push_back(stepOf(StepKind::point));
    open.back().point = p;
  }
  return open;
}

bool isFittedAsked(const Setup& setup, const State& state) {
  const bool isFresh = state.turns == 0 &&
                       std::all_of(state.marks.begin(), state.marks.end(), [](const MarkState& m) { return m.finding == Finding::unseen; });
  return setup.asksFitted && !setup.sheet->air.empty() && !state.isFittedSet && isFresh;
}

Step nextStep(const Setup& setup, const State& state, const std::vector<Step>& open) {
  if (state.isUnwell) return stepOf(StepKind::stop);
  if (!open.empty() && open.front().kind == StepKind::hair) return open.front();
  if (isFittedAsked(setup, state)) return stepOf(StepKind::fitted);
  return open.empty() ? stepOf(StepKind::done) : open.front();
}

// ---- advice ----

void addEnds(std::vector<Advice>& out, const State& state, Mark mark) {
  const MarkState& m = state.marks[indexOf(mark)];
  const auto push = [&](AdviceKind kind, int direction, std::optional<Part> part, std::size_t row) {
    Advice a;
    a.kind = kind;
    a.mark = mark;
    a.direction = direction;
    a.part = part;
    a.way = static_cast<std::uint8_t>(row);
    out.push_back(std::move(a));
  };
  const auto rows = cell(mark, m.finding);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!isEnd(rows[i].row)) continue;
    const int direction = directionOfEnd(rows[i].row, state);
    if (direction != 0) {
      push(AdviceKind::otherSize, direction, std::nullopt, i);
    } else if (rows[i].row == Row::otherModel) {
      push(AdviceKind::otherModel, 0, std::nullopt, i);
    } else if (rows[i].row == Row::holdUnit) {
      push(AdviceKind::holdUnit, 0, std::nullopt, i);
    } else if (rows[i].row == Row::tryAgain) {
      push(AdviceKind::check, 0, std::nullopt, i);
    } else if (mark == Mark::jaw) {
      if (m.side != Side::right) push(AdviceKind::replacePart, 0, Part::jawLeft, i);
      if (m.side != Side::left) push(AdviceKind::replacePart, 0, Part::jawRight, i);
    } else {
      push(AdviceKind::replacePart, 0, mark == Mark::chin ? Part::chinCup : Part::straps, i);
    }
  }
}

Advice changeAdvice(const ModelSheet& sheet, const State& state, Mark mark, const CellWay& way) {
  const Adjusted change = changeOf(sheet, state, way.way);
  Advice a;
  a.kind = AdviceKind::change;
  a.mark = mark;
  a.deed = change.deed;
  a.port = change.port;
  a.part = change.part;
  if (change.port) {
    a.pumpsLow = kPumpsLow;
    a.pumpsHigh = state.isCold ? kPumpsLow : kPumpsHigh;
  }
  a.to = change.to;
  a.direction = directionOf(way.way);
  a.reopens = reopens(change) | state.wordsEver;
  a.way = way.row;
  return a;
}

void addMarkAdvice(std::vector<Advice>& out, const ModelSheet& sheet, const State& state, Mark mark) {
  const MarkState& m = state.marks[indexOf(mark)];
  if (!isOff(m)) return;
  if (isFaultAtOnce(mark, m.finding) || !isWayLeft(sheet, state, mark)) return addEnds(out, state, mark);
  const auto rows = cell(mark, m.finding);
  const CellWays ways = waysOf(sheet, state, mark);
  const auto push = [&](AdviceKind kind, std::size_t row) {
    Advice a;
    a.kind = kind;
    a.mark = mark;
    if (kind == AdviceKind::check) a.part = Part::straps;
    if (kind == AdviceKind::warm) a.reopens = kAllMarks;
    a.way = static_cast<std::uint8_t>(row);
    out.push_back(std::move(a));
  };
  bool isWarmOpen = isWarmLeft(sheet, state, mark);
  if (isWarmOpen && isColdPress(state, mark)) return push(AdviceKind::warm, 0);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].row == Row::reseat && isReseatLeft(state, mark)) push(AdviceKind::reseat, i);
    if (rows[i].row == Row::seeStraps) push(AdviceKind::check, i);
    for (const CellWay& w : ways) {
      if (w.row != i) continue;
      if (isLeft(sheet, state, mark, w.way)) {
        out.push_back(changeAdvice(sheet, state, mark, w));
      } else if (isWarmOpen && isLeftWarm(sheet, state, mark, w.way)) {
        push(AdviceKind::warm, i);
        isWarmOpen = false;
      }
    }
  }
}

std::vector<Advice> adviceOf(const Setup& setup, const State& state) {
  std::vector<Advice> out;
  if (state.isUnwell) return out;
  for (const Point p : gear::kPoints) {
    if (state.points[indexOf(p)].state != PointState::fault) continue;
    Advice a;
    const bool isForTheUnit = p == Point::certification || p == Point::warningLabel || p == Point::shell;
    a.kind = isForTheUnit ? AdviceKind::holdUnit : AdviceKind::replacePart;
    a.point = p;
    out.push_back(std::move(a));
  }
  for (const Mark m : marksInOrder(*setup.sheet)) addMarkAdvice(out, *setup.sheet, state, m);
  return out;
}

void setDue(Assessment& out, const Setup& setup) {
  out.dueFrom = out.dueBy = setup.today;
  if (out.verdict != Verdict::fits) return;
  const bool isLook = setup.kind == CheckKind::look;
  out.dueFrom = setup.today.plus(isLook ? kWeeklyFromDays : kBreakInFromDays);
  out.dueBy = setup.today.plus(isLook ? kWeeklyByDays : kBreakInByDays);
  out.dueBy = std::min(out.dueBy, *setup.certifiedUntil);
  out.dueFrom = std::min(out.dueFrom, out.dueBy);
}

void append(std::vector<Reason>& to, std::vector<Reason>& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

}  // namespace

Assessment assess(const Setup& setup, const State& state) {
  Assessment out;
  Ranked ranked = reasonsOf(setup, state);
  if (!ranked.doNotWear.empty())
    out.verdict = Verdict::doNotWear;
  else if (!ranked.adjust.empty())
    out.verdict = Verdict::adjust;
  else if (!ranked.unfinished.empty() || state.isUnwell)
    out.verdict = Verdict::unfinished;
  else
    out.verdict = Verdict::fits;
  assert((out.verdict == Verdict::fits) == isFits(setup, state));

  if (state.isUnwell) out.reasons.push_back(reasonOf(ReasonKind::unwell));
  append(out.reasons, ranked.doNotWear);
  append(out.reasons, ranked.adjust);
  append(out.reasons, ranked.unfinished);
  out.open = openSteps(setup, state);
  out.next = nextStep(setup, state, out.open);
  out.advice = adviceOf(setup, state);
  for (const Mark m : kMarks) out.strip[indexOf(m)] = state.marks[indexOf(m)].isCurrent ? state.marks[indexOf(m)].finding : Finding::unseen;
  out.isForCold = out.verdict == Verdict::fits && state.isCold && state.isAirAddedCold;
  setDue(out, setup);
  return out;
}

bool isFits(const Setup& setup, const State& state) {
  const bool areMarksSnug =
      std::all_of(state.marks.begin(), state.marks.end(), [](const MarkState& m) { return m.isCurrent && m.finding == Finding::snug; });
  const bool arePointsSound =
      std::all_of(state.points.begin(), state.points.end(), [](const gear::PointFinding& p) { return p.state == PointState::sound; });
  const bool isLabelGood = !setup.isLabelMissing && setup.certifiedUntil && *setup.certifiedUntil >= setup.today;
  const bool areQuestionsYes = std::all_of(setup.sheet->questions.begin(), setup.sheet->questions.end(),
                                           [&](const gear::Question& q) { return answerTo(state, q.id) == true; });
  const bool isHairRight = !needsWetHair(setup) || state.isHairWet == true;
  return areMarksSnug && arePointsSound && isLabelGood && areQuestionsYes && isHairRight && state.words == MarkSet{} && !state.isBroken &&
         !state.isUnwell;
}

}  // namespace snugline::fit
