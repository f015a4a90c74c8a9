// SPDX-License-Identifier: Apache-2.0
#include "tests/core/fit_proof/positions.h"

#include <stdexcept>

#include "core/fit/guide_table.h"

namespace snugline::fit::proof {

using gear::Part;
using gear::Port;

namespace {

constexpr std::array<Port, 4> kPorts{Port::crown, Port::sides, Port::jawLeft, Port::jawRight};
constexpr unsigned kColdShift = 42;
constexpr std::array<Part, 3> kPads{Part::jawLeft, Part::jawRight, Part::crownPad};

// 5 findings x 3 sides x 5 standing x 4 hows fit into 9 bits. Brow and ears have no how: seen off again stands in its place.
bool canReseat(std::size_t mark) { return kMarks[mark] == Mark::brow || kMarks[mark] == Mark::ears; }

std::uint64_t codeOf(const State& state, std::size_t mark) {
  const MarkState& m = state.marks[mark];
  if (!m.isCurrent) return 0;
  const auto how = canReseat(mark) ? static_cast<std::uint64_t>(m.isSeenAgain) : static_cast<std::uint64_t>(m.how);
  return ((static_cast<std::uint64_t>(m.finding) * 3 + static_cast<std::uint64_t>(m.side)) * 5 + static_cast<std::uint64_t>(m.standing)) *
             4 +
         how;
}
MarkState markOf(std::uint64_t code, std::size_t mark) {
  MarkState m;
  if (canReseat(mark))
    m.isSeenAgain = code % 4 == 1;
  else
    m.how = static_cast<HoldHow>(code % 4);
  m.standing = static_cast<Finding>(code / 4 % 5);
  m.side = static_cast<Side>(code / 20 % 3);
  m.finding = static_cast<Finding>(code / 60);
  m.isCurrent = m.finding != Finding::unseen;
  return m;
}

}  // namespace

gear::ModelSheet demoSheet(const std::string& id) {
  auto sheet = gear::readSheetFile(std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/" + id + ".json");
  if (!sheet) throw std::runtime_error(sheet.error().place + ": " + sheet.error().detail);
  return std::move(*sheet);
}

Ground::Ground(gear::ModelSheet s, bool isCold) : sheet(std::move(s)) {
  setup.sheet = &sheet;
  setup.today = Day{20000};
  setup.certifiedUntil = Day{20400};
  start = *take(setup, *take(setup, begin(setup), HairSeen{true}), PointsSound{});
  start = *take(setup, start, ColdSeen{isCold, false});
  for (const gear::Question& q : sheet.questions) start = *take(setup, start, QuestionAnswered{q.id, true});
}

Key keyOf(const Ground& ground, const State& state) {
  Key key;
  for (std::size_t m = 0; m < 7; ++m) key.low |= codeOf(state, m) << (9 * m);
  key.high = codeOf(state, 7) | codeOf(state, 8) << 9U | static_cast<std::uint64_t>(state.isCold) << kColdShift;
  unsigned shift = 18;
  key.high |= static_cast<std::uint64_t>(state.turns < 15 ? state.turns : 15) << shift;
  shift += 4;
  for (const Port p : kPorts) {
    const gear::AirPort* port = ground.sheet.airAt(p);
    const auto now = state.fitted.air[static_cast<std::size_t>(p)];
    std::uint64_t code = 0;
    if (port != nullptr && now) code = *now <= port->low ? 1U : *now >= port->high ? 2U : 0U;
    key.high |= code << shift;
    shift += 2;
  }
  for (const Part p : kPads) {
    const gear::PadSet* pads = ground.sheet.padsAt(p);
    std::uint64_t code = 0;
    if (pads != nullptr)
      while (code + 1 < pads->steps.size() && pads->steps[code] != *state.fitted.pad[static_cast<std::size_t>(p)]) ++code;
    key.high |= code << shift;
    shift += 4;
  }
  return key;
}

State stateOf(const Ground& ground, Key key) {
  State state = ground.start;
  for (std::size_t m = 0; m < 7; ++m) state.marks[m] = markOf(key.low >> (9 * m) & 511U, m);
  state.marks[7] = markOf(key.high & 511U, 7);
  state.marks[8] = markOf(key.high >> 9U & 511U, 8);
  state.isCold = (key.high >> kColdShift & 1U) != 0;
  unsigned shift = 18;
  state.turns = static_cast<int>(key.high >> shift & 15U);
  shift += 4;
  for (const Port p : kPorts) {
    const gear::AirPort* port = ground.sheet.airAt(p);
    auto& air = state.fitted.air[static_cast<std::size_t>(p)];
    air.reset();
    const std::uint64_t code = key.high >> shift & 3U;
    if (port != nullptr && code == 1) air = port->low;
    if (port != nullptr && code == 2) air = port->high;
    shift += 2;
  }
  for (const Part p : kPads) {
    const gear::PadSet* pads = ground.sheet.padsAt(p);
    if (pads != nullptr) state.fitted.pad[static_cast<std::size_t>(p)] = pads->steps[key.high >> shift & 15U];
    shift += 4;
  }
  return state;
}

std::vector<MarkSeen> everyFinding(Mark mark) {
  std::vector<MarkSeen> out;
  for (const Finding f : {Finding::snug, Finding::over, Finding::under, Finding::fault}) {
    if (mark == Mark::hold && f == Finding::under) {
      for (const HoldHow how : {HoldHow::unsaid, HoldHow::twist, HoldHow::rock, HoldHow::drop})
        out.push_back({mark, f, Side::both, how, std::nullopt});
      continue;
    }
    out.push_back({mark, f, Side::both, HoldHow::unsaid, std::nullopt});
    if (!knowsSides(mark)) continue;
    out.push_back({mark, f, Side::left, HoldHow::unsaid, std::nullopt});
    out.push_back({mark, f, Side::right, HoldHow::unsaid, std::nullopt});
  }
  return out;
}

std::vector<Adjusted> everyOutcome(const Ground& ground, const Advice& advice) {
  Adjusted change{*advice.deed, advice.port, advice.part, 0, std::nullopt, advice.to};
  if (!advice.port) return {change};
  change.pumps = advice.pumpsLow;
  Adjusted atLimit = change;
  const gear::AirPort* port = ground.sheet.airAt(*advice.port);
  atLimit.air = change.deed == Deed::add ? port->high : port->low;
  return {change, atLimit};
}

std::vector<Adjusted> everyChange(const Ground& ground, const State& state) {
  std::vector<Adjusted> out;
  for (const gear::AirPort& port : ground.sheet.air) {
    for (const Deed deed : {Deed::add, Deed::release}) {
      out.push_back({deed, port.port, std::nullopt, 2, std::nullopt, std::nullopt});
      out.push_back({deed, port.port, std::nullopt, 0, port.low, std::nullopt});
      out.push_back({deed, port.port, std::nullopt, 1, port.high, std::nullopt});
    }
  }
  for (const Part part : kPads) {
    const gear::PadSet* pads = ground.sheet.padsAt(part);
    if (pads == nullptr) continue;
    for (const Length step : pads->steps) out.push_back({Deed::swap, std::nullopt, part, 0, std::nullopt, step});
    out.push_back({Deed::swap, std::nullopt, part, 0, std::nullopt, std::nullopt});
    out.push_back({Deed::swap, std::nullopt, part, 0, std::nullopt, state.fitted.pad[static_cast<std::size_t>(part)]});
  }
  for (const Part part : {Part::straps, Part::chinCup}) out.push_back({Deed::swap, std::nullopt, part, 0, std::nullopt, std::nullopt});
  for (const Deed deed : {Deed::reroute, Deed::relength}) {
    out.push_back({deed, std::nullopt, Part::straps, 0, std::nullopt, std::nullopt});
    out.push_back({deed, std::nullopt, std::nullopt, 0, std::nullopt, std::nullopt});
  }
  return out;
}

void forCounters(const Ground& ground, const State& base, bool every, const std::function<void(const State&)>& call) {
  call(base);
  State worn = base;
  bool isAnyOff = false;
  for (const Mark m : kMarks) {
    const auto i = static_cast<std::size_t>(m);
    if (!isOffNow(base.marks[i])) continue;
    isAnyOff = true;
    worn.marks[i].turns = kTurnsPerMark;
    worn.marks[i].waysUsed = ~0U;
    const CellWays ways = waysOf(ground.sheet, base, m);
    State one = base;
    one.marks[i].turns = kTurnsPerMark;
    const std::uint32_t subsets = every ? 1U << ways.count : 0U;
    for (std::uint32_t subset = 0; subset < subsets; ++subset) {
      one.marks[i].waysUsed = 0;
      for (std::size_t w = 0; w < ways.count; ++w)
        if ((subset >> w & 1U) != 0) one.marks[i].waysUsed |= 1U << static_cast<unsigned>(ways.items[w].way);
      call(one);
    }
    if (every) continue;
    one.marks[i].waysUsed = 0;
    call(one);
    one.marks[i].waysUsed = ~0U;
    call(one);
    for (const CellWay& w : ways) {
      one.marks[i].waysUsed = ~(1U << static_cast<unsigned>(w.way));
      call(one);
    }
  }
  if (isAnyOff) call(worn);
}

}  // namespace snugline::fit::proof
