// SPDX-License-Identifier: Apache-2.0
// The rules of a model sheet, each value judged beside its neighbours, all of them at once.
#include <algorithm>

#include "core/gear/points.h"
#include "core/gear/sheet_draft.h"
#include "core/gear/sheet_limits.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

// Of a list that is too long only as much is looked at as it may have.
class Judge {
 public:
  explicit Judge(const SheetDraft& draft) : m_draft(draft) {}

  std::vector<SheetFault> all() {
    names();
    sizes();
    air();
    pads("/jaw_pads", m_draft.jawPads, m_draft.unsaid.jawPads && !m_draft.hasPort(Port::jawLeft));
    pads("/crown_pads", m_draft.crownPads, m_draft.unsaid.crownPads);
    if (m_draft.jawPads && m_draft.hasPort(Port::jawLeft))
      add("/jaw_pads", SheetRule::padsBesideAir, "the jaw has air ports; it has air or pads by thickness, not both");
    brow();
    intervals();
    airRules();
    markOrder();
    questions();
    return std::move(m_faults);
  }

 private:
  void add(const std::string& path, SheetRule rule, std::string detail, ErrorCode code = ErrorCode::inconsistent, std::int64_t lowest = 0,
           std::int64_t highest = 0) {
    const bool isNamed = std::any_of(m_faults.begin(), m_faults.end(), [&](const SheetFault& fault) { return fault.path == path; });
    if (!isNamed) m_faults.push_back({path, rule, code, std::move(detail), lowest, highest});
  }

  // The value where it is there and within its range.
  Figure figure(const std::string& path, const Figure& value) {
    const auto range = figureRange(path);
    if (!value) {
      add(path, SheetRule::missing, {}, ErrorCode::missingKey);
    } else if (range && (*value < range->lowest || *value > range->highest)) {
      add(path, SheetRule::range, std::to_string(*value) + ", " + std::to_string(range->lowest) + ", " + std::to_string(range->highest),
          ErrorCode::outOfRange, range->lowest, range->highest);
    } else {
      return value;
    }
    return std::nullopt;
  }

  void count(const std::string& path, std::size_t entries, std::size_t least, std::size_t most) {
    if (entries >= least && entries <= most) return;
    add(path, entries == 0 ? SheetRule::missing : SheetRule::entries,
        std::to_string(entries) + " entries, " + std::to_string(least) + ", " + std::to_string(most), ErrorCode::outOfRange,
        static_cast<std::int64_t>(least), static_cast<std::int64_t>(most));
  }

  bool text(const std::string& path, const std::string& value, std::size_t least, std::size_t most) {
    const std::size_t length = codePoints(value);
    if (length < least || length > most) {
      add(path, length == 0 ? SheetRule::missing : SheetRule::characters,
          std::to_string(length) + " characters, " + std::to_string(least) + ", " + std::to_string(most), ErrorCode::outOfRange,
          static_cast<std::int64_t>(least), static_cast<std::int64_t>(most));
    } else if (!isUtf8(value) || !isPrintable(value) || (least > 0 && value.find_first_not_of(' ') == std::string::npos)) {
      add(path, SheetRule::printable, "printable text", ErrorCode::wrongType);  // a blank name would be an empty button
    } else {
      return true;
    }
    return false;
  }

  bool id(const std::string& path, const std::string& value) {
    if (!text(path, value, 1, limits::kIdLength)) return false;
    const bool isId =
        std::all_of(value.begin(), value.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
    if (!isId) add(path, SheetRule::idLetters, "letters a to z, digits and -", ErrorCode::wrongType);
    return isId;
  }

  void names() {
    id("/id", m_draft.id);
    text("/name", m_draft.name, 1, limits::kNameLength);
    text("/cautions", m_draft.cautions, 0, limits::kCautionsLength);
  }

  void sizes() {
    count("/sizes", m_draft.sizes.size(), 1, limits::kSizeCount);
    std::vector<std::pair<Figure, Figure>> ends;
    for (std::size_t i = 0; i < std::min(m_draft.sizes.size(), limits::kSizeCount); ++i) {
      const BandDraft& band = m_draft.sizes[i];
      const std::string path = "/sizes/" + std::to_string(i);
      if (text(path + "/name", band.name, 1, limits::kSizeNameLength)) {
        if (band.name == "none") add(path + "/name", SheetRule::sizeNone, "\"none\" means off the chart");
        const bool isTwice = std::any_of(m_draft.sizes.begin(), m_draft.sizes.begin() + static_cast<std::ptrdiff_t>(i),
                                         [&](const BandDraft& before) { return before.name == band.name; });
        if (isTwice) add(path + "/name", SheetRule::sizeTwice, "two bands have this name");
      }
      const Figure low = figure(path + "/low_um", band.low), high = figure(path + "/high_um", band.high);
      if (low && high && *high <= *low) add(path + "/high_um", SheetRule::bandEnds, "the band ends where it begins or before");
      if (i > 0 && low && ends[i - 1].first && *low <= *ends[i - 1].first)
        add(path + "/low_um", SheetRule::bandBegins, "begins no higher than the band before it");
      if (i > 0 && high && ends[i - 1].second && *high <= *ends[i - 1].second)
        add(path + "/high_um", SheetRule::bandEndsTooLow, "ends no higher than the band before it");
      if (i > 1 && low && ends[i - 2].second && *low <= *ends[i - 2].second)
        add(path + "/low_um", SheetRule::bandReachesOver, "reaches into the band before its neighbour");
      ends.emplace_back(low, high);
    }
  }

  void air() {
    if (m_draft.unsaid.air && m_draft.air.empty()) add("/air", SheetRule::missing, {}, ErrorCode::missingKey);
    count("/air", m_draft.air.size(), 0, kPortCount);
    bool isEachPort = true;
    for (std::size_t i = 0; i < std::min(m_draft.air.size(), kPortCount); ++i) {
      const PortDraft& each = m_draft.air[i];
      const std::string path = "/air/" + std::to_string(i);
      if (!each.port) {
        add(path + "/port", SheetRule::missing, {}, ErrorCode::missingKey);
        isEachPort = false;
      } else if (std::any_of(m_draft.air.begin(), m_draft.air.begin() + static_cast<std::ptrdiff_t>(i),
                             [&](const PortDraft& before) { return before.port == each.port; })) {
        add(path + "/port", SheetRule::portTwice, "the port is listed twice");
      }
      const Figure low = figure(path + "/low_pa", each.low), high = figure(path + "/high_pa", each.high);
      const Figure start = figure(path + "/start_pa", each.start);
      if (low && high && *high <= *low) add(path + "/high_pa", SheetRule::bandEnds, "the band ends where it begins or before");
      if (start && ((low && *start < *low) || (high && *start > *high)))
        add(path + "/start_pa", SheetRule::startOutside, "outside the band from low_pa to high_pa");
    }
    if (isEachPort && m_draft.hasPort(Port::jawLeft) != m_draft.hasPort(Port::jawRight))
      add("/air", SheetRule::jawPair, "jaw-left and jaw-right come as a pair");
  }

  void pads(const std::string& path, const std::optional<PadsDraft>& pads, bool isUnsaid) {
    if (!pads && isUnsaid) add(path, SheetRule::missing, {}, ErrorCode::missingKey);
    if (!pads) return;
    count(path + "/steps_um", pads->steps.size(), 1, limits::kStepCount);
    Figure before;
    for (std::size_t i = 0; i < std::min(pads->steps.size(), limits::kStepCount); ++i) {
      const std::string at = path + "/steps_um/" + std::to_string(i);
      const Figure step = figure(at, pads->steps[i]);
      if (step && before && *step <= *before) add(at, SheetRule::stepNotThicker, "no thicker than the step before it");
      before = step ? step : before;
    }
    const Figure fitted = figure(path + "/fitted_um", pads->fitted);
    if (fitted && std::find(pads->steps.begin(), pads->steps.end(), fitted) == pads->steps.end())
      add(path + "/fitted_um", SheetRule::fittedNoStep, "not among steps_um");
  }

  void brow() {
    const Figure low = figure("/brow_low_um", m_draft.browLow), high = figure("/brow_high_um", m_draft.browHigh);
    if (low && high && *high <= *low) add("/brow_high_um", SheetRule::browEnds, "no higher than brow_low_um");
    if (low && *low > limits::kBrowTarget) add("/brow_low_um", SheetRule::browAboveTarget, "above the target, 25400");
    if (high && *high < limits::kBrowTarget) add("/brow_high_um", SheetRule::browBelowTarget, "below the target, 25400");
  }

  void intervals() {
    const Figure straps = figure("/strap_points", m_draft.strapPoints);
    if (straps && *straps != limits::kStrapsFew && *straps != limits::kStrapsMany)
      add("/strap_points", SheetRule::strapCount, "neither 4 nor 6");
    figure("/certification_months", m_draft.certificationMonths);
    figure("/age_limit_months", m_draft.ageLimitMonths);
  }

  // What only air needs: asked for where there is air, refused where there is none.
  void airRules() {
    const std::string none = "the sheet has no air";
    if (m_draft.air.empty()) {
      if (m_draft.changeAllowance) add("/change_allowance_pa", SheetRule::noAir, none);
      if (m_draft.leakPerWeek) add("/leak_per_week_pa", SheetRule::noAir, none);
      if (!m_draft.order.empty()) add("/fitting_order", SheetRule::noAir, none);
      return;
    }
    figure("/change_allowance_pa", m_draft.changeAllowance);
    figure("/leak_per_week_pa", m_draft.leakPerWeek);
    count("/fitting_order", m_draft.order.size(), 1, kPortCount);
    for (std::size_t i = 0; i < std::min(m_draft.order.size(), kPortCount); ++i) {
      const std::optional<Port>& port = m_draft.order[i];
      const std::string path = "/fitting_order/" + std::to_string(i);
      if (!port)
        add(path, SheetRule::missing, {}, ErrorCode::missingKey);
      else if (!m_draft.hasPort(*port))
        add(path, SheetRule::orderNoPort, "a port without air");
      else if (std::find(m_draft.order.begin(), m_draft.order.begin() + static_cast<std::ptrdiff_t>(i), port) !=
               m_draft.order.begin() + static_cast<std::ptrdiff_t>(i))
        add(path, SheetRule::orderTwice, "the port is listed twice");
    }
    const bool isLeftOut = std::any_of(m_draft.air.begin(), m_draft.air.end(), [&](const PortDraft& air) {
      return air.port && std::find(m_draft.order.begin(), m_draft.order.end(), air.port) == m_draft.order.end();
    });
    if (isLeftOut) add("/fitting_order", SheetRule::orderLeavesOut, "a port of air is left out");
  }

  void markOrder() {
    const auto& order = m_draft.markOrder;
    if (order.empty()) return;
    count("/mark_order", order.size(), kMarkCodes.size(), kMarkCodes.size());
    for (std::size_t i = 0; i < std::min(order.size(), kMarkCodes.size()); ++i) {
      const std::string path = "/mark_order/" + std::to_string(i);
      if (std::find(kMarkCodes.begin(), kMarkCodes.end(), order[i]) == kMarkCodes.end())
        add(path, SheetRule::form, "not one of the nine marks", ErrorCode::unknownWord);
      else if (std::find(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(i), order[i]) !=
               order.begin() + static_cast<std::ptrdiff_t>(i))
        add(path, SheetRule::orderTwice, "the mark is listed twice");
    }
  }

  void questions() {
    const auto& all = m_draft.questions;
    count("/questions", all.size(), 0, limits::kQuestionCount);
    for (std::size_t i = 0; i < std::min(all.size(), limits::kQuestionCount); ++i) {
      const std::string path = "/questions/" + std::to_string(i);
      if (id(path + "/id", all[i].id)) {
        const bool isTaken = std::find(limits::kTaken.begin(), limits::kTaken.end(), all[i].id) != limits::kTaken.end();
        if (isTaken || pointFromCode(all[i].id))
          add(path + "/id", SheetRule::questionTaken, "a mark, a point or a step has this name");
        else if (std::any_of(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(i),
                             [&](const QuestionDraft& before) { return before.id == all[i].id; }))
          add(path + "/id", SheetRule::questionTwice, "two questions have this id");
      }
      text(path + "/ask", all[i].ask, 1, limits::kSentenceLength);
      text(path + "/if_no", all[i].ifNo, 1, limits::kSentenceLength);
    }
  }

  const SheetDraft& m_draft;
  std::vector<SheetFault> m_faults;
};

}  // namespace

std::vector<SheetFault> faultsOf(const SheetDraft& draft) { return Judge(draft).all(); }

}  // namespace snugline::gear
