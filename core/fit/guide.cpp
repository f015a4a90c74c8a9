// SPDX-License-Identifier: Apache-2.0
// take(): one answer folded into the state. Only seeing a mark makes it current; everything else can but reopen.
#include "core/fit/guide.h"

#include <algorithm>
#include <utility>

#include "core/fit/guide_table.h"

namespace snugline::fit {

namespace {

using gear::ModelSheet;
using gear::Part;
using gear::Point;
using gear::PointState;
using gear::Port;

constexpr Pressure kGaugeLowest{-100000};  // no gauge reads below a vacuum
constexpr Pressure kGaugeHighest{300000};  // beyond this the number was meant for something else (ours)

// Sets: common practice, no source.
constexpr MarkSet kCrownReopens{Mark::brow, Mark::ears, Mark::nape, Mark::chin, Mark::straps, Mark::jaw, Mark::crown, Mark::hold};
constexpr MarkSet kSidesReopens{Mark::brow, Mark::ears, Mark::nape, Mark::jaw, Mark::sides, Mark::hold};
constexpr MarkSet kJawReopens{Mark::brow, Mark::ears, Mark::chin, Mark::straps, Mark::jaw, Mark::hold};
constexpr MarkSet kStrapsReopens{Mark::brow, Mark::nape, Mark::chin, Mark::straps, Mark::crown, Mark::hold};

template <typename Enum>
std::size_t at(Enum e) {
  return static_cast<std::size_t>(e);
}

void reopen(State& state, MarkSet set) {
  for (const Mark m : kMarks) {
    if (!set.has(m)) continue;
    state.marks[at(m)].isCurrent = state.marks[at(m)].isSeenAgain = false;
    state.marks[at(m)].standing = Finding::unseen;
  }
}

// ---- marks ----

bool isOffFinding(Finding f) { return f == Finding::over || f == Finding::under || f == Finding::fault; }
Side opposite(Side s) { return s == Side::left ? Side::right : Side::left; }

// A finding of one side, where findings of named sides stand already: the other side's stays.
void seeOneSide(MarkState& m, Finding found, Side side) {
  Finding other = Finding::unseen;
  if (m.side == Side::both || m.side == side)
    other = m.standing;
  else
    other = m.finding;
  m.standing = Finding::unseen;
  if (!isOffFinding(other)) {
    m.finding = found;
    m.side = isOffFinding(found) ? side : Side::both;
  } else if (!isOffFinding(found)) {
    m.finding = other;
    m.side = opposite(side);
  } else if (found == other) {
    m.finding = found;
    m.side = Side::both;
    m.standing = found;
  } else {
    const bool isOtherFirst = other == Finding::fault;  // a fault is never hidden by the other side
    m.finding = isOtherFirst ? other : found;
    m.standing = isOtherFirst ? found : other;
    m.side = isOtherFirst ? opposite(side) : side;
  }
}

Finding judged(const ModelSheet& sheet, const MarkSeen& seen) {
  return !seen.gap || seen.finding == Finding::fault ? seen.finding : browFinding(sheet, *seen.gap);
}

void see(State& state, const ModelSheet& sheet, const MarkSeen& seen, bool isInGroup) {
  MarkState& m = state.marks[at(seen.mark)];
  const bool wasOff = isOff(m);
  const Finding found = judged(sheet, seen);
  const Side side = knowsSides(seen.mark) ? seen.side : Side::both;
  const bool isSideNamed = m.side != Side::both || m.standing != Finding::unseen;
  if (side != Side::both && isOff(m) && isSideNamed) {
    seeOneSide(m, found, side);
  } else {
    m.finding = found;
    m.side = isOffFinding(found) ? side : Side::both;
    m.standing = Finding::unseen;
  }
  m.how = isOffFinding(m.finding) ? seen.how : HoldHow::unsaid;
  m.gap = seen.gap;
  m.isInGroup = isInGroup;
  m.isCurrent = true;
  m.isSeenAgain = wasOff && isOff(m);
  state.words.remove(seen.mark);
}

// ---- changes ----

Result<void> checkChange(const ModelSheet& sheet, const Adjusted& c) {
  if (c.port && c.part) return fail(ErrorCode::inconsistent, std::string(code(*c.part)), "port and part");
  if (c.pumps < 0 || c.pumps > kPumpsMost)
    return fail(ErrorCode::outOfRange, "pumps", std::to_string(c.pumps) + ", 0, " + std::to_string(kPumpsMost));
  const bool hasAirAmount = c.pumps != 0 || c.air.has_value();
  const std::string deed(code(c.deed));
  switch (c.deed) {
    case Deed::add:
    case Deed::release:
      if (!c.port) return fail(ErrorCode::inconsistent, deed, "a port");
      if (!sheet.hasPort(*c.port)) return fail(ErrorCode::unknownPort, std::string(code(*c.port)), sheet.id);
      if (c.to) return fail(ErrorCode::inconsistent, deed, "a thickness goes with swap");
      if (c.air && (*c.air < kGaugeLowest || *c.air > kGaugeHighest))
        return fail(ErrorCode::outOfRange, std::string(code(*c.port)),
                    exact(*c.air) + ", " + exact(kGaugeLowest) + ", " + exact(kGaugeHighest));
      return {};
    case Deed::swap: {
      if (!c.part) return fail(ErrorCode::inconsistent, deed, "a part");
      if (hasAirAmount) return fail(ErrorCode::inconsistent, deed, "no air");
      if (!sheet.hasPart(*c.part)) return fail(ErrorCode::unknownPort, std::string(code(*c.part)), sheet.id);
      if (!c.to) return {};
      const gear::PadSet* pads = sheet.padsAt(*c.part);
      if (pads == nullptr) return fail(ErrorCode::inconsistent, std::string(code(*c.part)), "no thickness");
      if (*c.to < pads->steps.front() || *c.to > pads->steps.back())
        return fail(ErrorCode::outOfRange, std::string(code(*c.part)),
                    exact(*c.to) + ", " + exact(pads->steps.front()) + ", " + exact(pads->steps.back()));
      return {};
    }
    case Deed::reroute:
    case Deed::relength:
      if (c.port || (c.part && *c.part != Part::straps)) return fail(ErrorCode::inconsistent, deed, "straps");
      if (hasAirAmount || c.to) return fail(ErrorCode::inconsistent, deed, "no amount");
      return {};
  }
  return fail(ErrorCode::internal);
}

// Where a pad stands after a swap: as said, else one step the way that its mark asked for.
void movePad(State& state, const ModelSheet& sheet, const Adjusted& change, std::optional<Way> way) {
  std::optional<Length> to = change.to;
  if (!to && way == Way::jawPadsMatched)
    to = state.fitted.pad[at(change.part == Part::jawLeft ? Part::jawRight : Part::jawLeft)];
  else if (!to && way)
    to = changeOf(sheet, state, *way).to;
  if (to) state.fitted.pad[at(*change.part)] = to;
}

void countTurn(State& state, const ModelSheet& sheet, const Adjusted& change, std::optional<Way>& credited) {
  MarkState* firstOff = nullptr;
  state.turns += 1;
  for (const Mark m : marksInOrder(sheet)) {
    MarkState& mark = state.marks[at(m)];
    if (!isOff(mark)) continue;
    if (firstOff == nullptr) firstOff = &mark;
    for (const CellWay& w : waysOf(sheet, state, m)) {
      if (!isSuchChange(state, w.way, change)) continue;
      mark.turns += 1;
      mark.waysUsed |= 1U << static_cast<unsigned>(w.way);
      credited = w.way;
      return;
    }
  }
  if (firstOff != nullptr) firstOff->turns += 1;
}

Result<State> change(const ModelSheet& sheet, State state, const Adjusted& c) {
  if (const auto good = checkChange(sheet, c); !good) return tl::unexpected(good.error());
  std::optional<Way> credited;
  countTurn(state, sheet, c, credited);
  if (c.port) {
    const std::size_t p = at(*c.port);
    state.pumps[p] += c.deed == Deed::add ? c.pumps : -c.pumps;
    state.fitted.air[p] = c.air;
    state.isGauged[p] = c.air.has_value();
    state.isAirAddedCold = state.isAirAddedCold || (state.isCold && c.deed == Deed::add);
  }
  if (c.deed == Deed::swap && sheet.padsAt(*c.part) != nullptr) movePad(state, sheet, c, credited);
  reopen(state, reopens(c) | state.wordsEver);
  state.words = state.words | state.wordsEver;
  return state;
}

// ---- the rest ----

Result<State> setFitted(const ModelSheet& sheet, State state, const Fitted& fitted) {
  if (state.turns > 0) return fail(ErrorCode::notAllowed, "fitted", "before the first change");
  for (const Port p : {Port::crown, Port::sides, Port::jawLeft, Port::jawRight}) {
    const std::optional<Pressure> v = fitted.air[at(p)];
    if (!v) continue;
    if (!sheet.hasPort(p)) return fail(ErrorCode::unknownPort, std::string(code(p)), sheet.id);
    if (*v < kGaugeLowest || *v > kGaugeHighest)
      return fail(ErrorCode::outOfRange, std::string(code(p)), exact(*v) + ", " + exact(kGaugeLowest) + ", " + exact(kGaugeHighest));
    state.fitted.air[at(p)] = v;
    state.isGauged[at(p)] = true;
  }
  for (const Part p : {Part::jawLeft, Part::jawRight, Part::crownPad, Part::straps, Part::chinCup}) {
    const std::optional<Length> v = fitted.pad[at(p)];
    if (!v) continue;
    const gear::PadSet* pads = sheet.padsAt(p);
    if (pads == nullptr) return fail(ErrorCode::unknownPort, std::string(code(p)), sheet.id);
    if (*v < pads->steps.front() || *v > pads->steps.back())
      return fail(ErrorCode::outOfRange, std::string(code(p)),
                  exact(*v) + ", " + exact(pads->steps.front()) + ", " + exact(pads->steps.back()));
    state.fitted.pad[at(p)] = v;
  }
  state.isFittedSet = true;
  return state;
}

void clearBrokenWhenSeen(State& state) {
  if (std::all_of(state.points.begin(), state.points.end(), [](const auto& p) { return p.state != PointState::unseen; }))
    state.isBroken = false;
}

State seePoint(State state, const PointSeen& seen) {
  gear::PointFinding& point = state.points[at(seen.point)];
  const bool isCrack = seen.point == Point::shell && point.state == PointState::fault;
  if (!isCrack) point = {seen.state, seen.state == PointState::fault ? seen.what : std::string()};
  clearBrokenWhenSeen(state);
  return state;
}

State hear(State state, const AthleteSaid& said) {
  MarkSet where = kAllMarks;
  if (said.where) where = MarkSet{*said.where};
  if (said.feels == Feels::broke) {
    state.isBroken = true;
    for (auto& point : state.points)
      if (point.state == PointState::sound) point = {};
    if (!said.where) return state;
  }
  for (const Mark m : kMarks) {
    if (!where.has(m)) continue;
    state.words.add(m);
    state.wordsEver.add(m);
    state.wordFeels[at(m)] = said.feels;
    state.wordSides[at(m)] = knowsSides(m) ? said.side : Side::both;
  }
  reopen(state, where);
  return state;
}

Result<State> answerQuestion(const ModelSheet& sheet, State state, const QuestionAnswered& answered) {
  const bool isKnown = std::any_of(sheet.questions.begin(), sheet.questions.end(), [&](const auto& q) { return q.id == answered.id; });
  if (!isKnown) return fail(ErrorCode::unknownWord, answered.id, sheet.id);
  for (auto& [id, isYes] : state.questions) {
    if (id != answered.id) continue;
    isYes = answered.isYes;
    return state;
  }
  state.questions.emplace_back(answered.id, answered.isYes);
  return state;
}

// One overload for each kind of answer.
struct Taker {
  const Setup& setup;
  const State& before;
  [[nodiscard]] const ModelSheet& sheet() const { return *setup.sheet; }

  Result<State> operator()(const HairSeen& hair) const {
    State state = before;
    // What was seen on dry hair says nothing about wet hair.
    if (setup.kind != CheckKind::look && hair.isWet && state.isHairWet == false) reopen(state, kAllMarks);
    state.isHairWet = hair.isWet;
    return state;
  }
  // A bladder that was warmed or has gone cold sits otherwise, and a pad is softer or harder.
  Result<State> operator()(const ColdSeen& cold) const {
    State state = before;
    if (cold.isCold == state.isCold) return state;
    state.isCold = cold.isCold;
    state.isAirAddedCold = false;
    reopen(state, kAllMarks);
    state.words = state.words | state.wordsEver;
    return state;
  }
  Result<State> operator()(const Fitted& fitted) const { return setFitted(sheet(), before, fitted); }
  Result<State> operator()(const MarkSeen& seen) const {
    if (seen.finding == Finding::unseen)
      return fail(ErrorCode::unknownWord, std::string(code(seen.mark)), "unseen; snug, over, under, fault");
    if (seen.gap && seen.mark != Mark::brow)
      return fail(ErrorCode::inconsistent, std::string(code(seen.mark)), "a gap is measured at brow only");
    if (seen.gap && (*seen.gap < Length{} || *seen.gap > kGapMost))
      return fail(ErrorCode::outOfRange, std::string(code(seen.mark)), exact(*seen.gap) + ", 0mm, " + exact(kGapMost));
    if (seen.how != HoldHow::unsaid && seen.mark != Mark::hold)
      return fail(ErrorCode::inconsistent, std::string(code(seen.mark)), "twist, rock and drop belong to hold");
    State state = before;
    see(state, sheet(), seen, false);
    return state;
  }
  Result<State> operator()(const GroupSnug& group) const {
    State state = before;
    for (const Mark m : marksOf(group.view))
      see(state, sheet(), MarkSeen{m, Finding::snug, Side::both, HoldHow::unsaid, std::nullopt}, true);
    return state;
  }
  Result<State> operator()(const Adjusted& c) const { return change(sheet(), before, c); }
  Result<State> operator()(const AirRead& read) const {
    if (!sheet().hasPort(read.port)) return fail(ErrorCode::unknownPort, std::string(code(read.port)), sheet().id);
    if (read.gauge < kGaugeLowest || read.gauge > kGaugeHighest)
      return fail(ErrorCode::outOfRange, std::string(code(read.port)),
                  exact(read.gauge) + ", " + exact(kGaugeLowest) + ", " + exact(kGaugeHighest));
    State state = before;
    state.fitted.air[at(read.port)] = read.gauge;
    state.isGauged[at(read.port)] = true;
    reopen(state, MarkSet{Mark::hold});  // a reading through the needle can bleed a small bladder
    return state;
  }
  Result<State> operator()(const PointSeen& seen) const { return seePoint(before, seen); }
  Result<State> operator()(const PointsSound&) const {
    State state = before;
    for (auto& point : state.points)
      if (point.state == PointState::unseen) point.state = PointState::sound;
    clearBrokenWhenSeen(state);
    return state;
  }
  Result<State> operator()(const QuestionAnswered& answered) const { return answerQuestion(sheet(), before, answered); }
  Result<State> operator()(const AthleteSaid& said) const { return hear(before, said); }
  Result<State> operator()(const Unwell&) const {
    State state = before;
    state.isUnwell = true;
    return state;
  }
};

}  // namespace

Finding browFinding(const ModelSheet& sheet, Length gap) {
  if (gap > sheet.browHigh) return Finding::over;
  return gap < sheet.browLow ? Finding::under : Finding::snug;
}

std::array<Mark, kMarkCount> marksInOrder(const ModelSheet& sheet) {
  std::array<Mark, kMarkCount> order{};
  for (std::size_t i = 0; i < kMarkCount; ++i) order[i] = static_cast<Mark>(sheet.markOrder[i]);
  return order;
}

State begin(const Setup& setup) {
  State state;
  for (const gear::AirPort& port : setup.sheet->air) state.fitted.air[at(port.port)] = port.start;
  for (const Part p : {Part::jawLeft, Part::jawRight, Part::crownPad}) {
    const gear::PadSet* pads = setup.sheet->padsAt(p);
    if (pads != nullptr) state.fitted.pad[at(p)] = pads->steps[pads->fitted];
  }
  return state;
}

Result<State> take(const Setup& setup, const State& state, const Answer& answer) { return std::visit(Taker{setup, state}, answer); }

MarkSet reopens(const Adjusted& change) {
  if (change.port) {
    switch (*change.port) {
      case Port::crown:
        return kCrownReopens;
      case Port::sides:
        return kSidesReopens;
      case Port::jawLeft:
      case Port::jawRight:
        return kJawReopens;
    }
  }
  if (change.part) {
    switch (*change.part) {
      case Part::crownPad:
        return kCrownReopens;
      case Part::jawLeft:
      case Part::jawRight:
        return kJawReopens;
      case Part::straps:
      case Part::chinCup:
        return kStrapsReopens;
    }
  }
  return kStrapsReopens;  // reroute and relength without a part mean the straps
}

}  // namespace snugline::fit
