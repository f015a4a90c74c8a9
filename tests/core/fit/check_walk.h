// SPDX-License-Identifier: Apache-2.0
// Purpose: small sheets made in code and a walk through a check, for the tests of fit.
#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/fit/guide.h"

namespace snugline::fit::testing {

using gear::Part;
using gear::Point;
using gear::PointState;
using gear::Port;

inline gear::ModelSheet bareSheet(const std::string& id) {
  gear::ModelSheet sheet;
  sheet.id = id;
  sheet.name = id;
  sheet.sizes = {{"M", Length{540000}, Length{570000}}, {"L", Length{571000}, Length{600000}}};
  sheet.browLow = Length{19000};
  sheet.browHigh = Length{32000};
  sheet.certificationMonths = 24;
  return sheet;
}

inline gear::AirPort port(Port p) { return {p, Pressure{14000}, Pressure{7000}, Pressure{28000}}; }

// Air everywhere, no pads.
inline gear::ModelSheet airSheet() {
  gear::ModelSheet sheet = bareSheet("air");
  sheet.air = {port(Port::crown), port(Port::sides), port(Port::jawLeft), port(Port::jawRight)};
  return sheet;
}

// Air in crown and sides, pads at jaw and crown.
inline gear::ModelSheet mixedSheet() {
  gear::ModelSheet sheet = bareSheet("mixed");
  sheet.air = {port(Port::crown), port(Port::sides)};
  sheet.jawPads = gear::PadSet{{Length{22000}, Length{25000}, Length{28000}}, 1};
  sheet.crownPads = gear::PadSet{{Length{10000}, Length{13000}, Length{16000}}, 1};
  return sheet;
}

// Pads only.
inline gear::ModelSheet padSheet() {
  gear::ModelSheet sheet = mixedSheet();
  sheet.id = "pads";
  sheet.air.clear();
  return sheet;
}

inline Adjusted add(Port p, int pumps = 1) { return {Deed::add, p, std::nullopt, pumps, std::nullopt, std::nullopt}; }
inline Adjusted release(Port p, int pumps = 1) { return {Deed::release, p, std::nullopt, pumps, std::nullopt, std::nullopt}; }
inline Adjusted addTo(Port p, std::int64_t pa) { return {Deed::add, p, std::nullopt, 1, Pressure{pa}, std::nullopt}; }
inline Adjusted releaseTo(Port p, std::int64_t pa) { return {Deed::release, p, std::nullopt, 1, Pressure{pa}, std::nullopt}; }
inline Adjusted swapTo(Part p, std::int64_t um) { return {Deed::swap, std::nullopt, p, 0, std::nullopt, Length{um}}; }
inline Adjusted swap(Part p) { return {Deed::swap, std::nullopt, p, 0, std::nullopt, std::nullopt}; }
inline Adjusted reroute() { return {Deed::reroute, std::nullopt, Part::straps, 0, std::nullopt, std::nullopt}; }
inline Adjusted relength() { return {Deed::relength, std::nullopt, Part::straps, 0, std::nullopt, std::nullopt}; }
inline MarkSeen seen(Mark m, Finding f, Side s = Side::both) { return {m, f, s, HoldHow::unsaid, std::nullopt}; }
inline MarkSeen slides(HoldHow how) { return {Mark::hold, Finding::under, Side::both, how, std::nullopt}; }
inline MarkSeen browAt(std::int64_t um, Finding f = Finding::snug) { return {Mark::brow, f, Side::both, HoldHow::unsaid, Length{um}}; }

// A check under way. tell() throws the guide's refusal, so that a test fails where it went wrong.
struct Walk {
  gear::ModelSheet sheet;
  Setup setup;
  State state;

  explicit Walk(gear::ModelSheet s, CheckKind kind = CheckKind::first) : sheet(std::move(s)) {
    setup.sheet = &sheet;
    setup.kind = kind;
    setup.today = Day{20000};
    setup.certifiedUntil = Day{20300};
    state = begin(setup);
  }
  Walk(const Walk&) = delete;
  Walk& operator=(const Walk&) = delete;

  Walk& tell(const Answer& answer) {
    auto next = take(setup, state, answer);
    if (!next) throw std::runtime_error("refused at " + next.error().place + ": " + next.error().detail);
    state = std::move(*next);
    return *this;
  }
  std::optional<ErrorCode> refusal(const Answer& answer) const {
    const auto next = take(setup, state, answer);
    return next ? std::nullopt : std::optional<ErrorCode>(next.error().code);
  }
  Walk& allSnug() {
    for (const Mark m : kMarks) tell(seen(m, Finding::snug));
    return *this;
  }
  // Everything seen and good on wet hair.
  Walk& fit() {
    tell(HairSeen{true}).tell(PointsSound{}).allSnug();
    for (const auto& q : sheet.questions) tell(QuestionAnswered{q.id, true});
    return *this;
  }
  [[nodiscard]] Assessment now() const { return assess(setup, state); }
  [[nodiscard]] Verdict verdict() const {
    const Verdict v = now().verdict;
    if ((v == Verdict::fits) != isFits(setup, state)) throw std::runtime_error("the verdict and the predicate of fits disagree");
    return v;
  }
  [[nodiscard]] std::vector<std::string> reasons() const {
    std::vector<std::string> out;
    for (const Reason& r : now().reasons) out.push_back(r.codeText());
    return out;
  }
  [[nodiscard]] bool hasReason(const std::string& text) const {
    const auto all = reasons();
    return std::find(all.begin(), all.end(), text) != all.end();
  }
  // "release crown", "swap crown-pad 10mm", "relength straps longer", "other-size-up", in the order offered for one mark.
  [[nodiscard]] std::vector<std::string> adviceFor(Mark m) const {
    std::vector<std::string> out;
    for (const Advice& a : now().advice) {
      if (a.mark != m || a.point) continue;
      std::string line = a.doText();
      if (a.port) line += " " + std::string(code(*a.port));
      if (a.part) line += " " + std::string(code(*a.part));
      if (a.part && !a.amountText().empty()) line += " " + a.amountText();
      out.push_back(line);
    }
    return out;
  }
  [[nodiscard]] MarkSet current() const {
    MarkSet set;
    for (const Mark m : kMarks)
      if (state.marks[static_cast<std::size_t>(m)].isCurrent) set.add(m);
    return set;
  }
  [[nodiscard]] std::string next() const { return now().next.codeText(); }
  [[nodiscard]] const MarkState& mark(Mark m) const { return state.marks[static_cast<std::size_t>(m)]; }
};

}  // namespace snugline::fit::testing
