// SPDX-License-Identifier: Apache-2.0
// The guide's codes: short words for files, facts and the terminal. Sentences for people are made elsewhere.
#include <initializer_list>

#include "core/fit/guide.h"

namespace snugline::fit {

namespace {

template <typename Enum>
std::optional<Enum> fromCode(std::string_view text, std::initializer_list<Enum> all) {
  for (const Enum e : all)
    if (code(e) == text) return e;
  return std::nullopt;
}

std::string joined(std::string_view head, std::string_view tail) { return std::string(head).append("-").append(tail); }

}  // namespace

std::string_view code(CheckKind k) {
  switch (k) {
    case CheckKind::first:
      return "first";
    case CheckKind::refit:
      return "refit";
    case CheckKind::look:
      return "look";
  }
  return "first";
}
std::optional<CheckKind> checkKindFromCode(std::string_view text) {
  return fromCode(text, {CheckKind::first, CheckKind::refit, CheckKind::look});
}

std::string_view code(Deed d) {
  switch (d) {
    case Deed::add:
      return "add";
    case Deed::release:
      return "release";
    case Deed::swap:
      return "swap";
    case Deed::reroute:
      return "reroute";
    case Deed::relength:
      return "relength";
  }
  return "add";
}
std::optional<Deed> deedFromCode(std::string_view text) {
  return fromCode(text, {Deed::add, Deed::release, Deed::swap, Deed::reroute, Deed::relength});
}

std::string_view code(Feels f) {
  switch (f) {
    case Feels::tight:
      return "tight";
    case Feels::loose:
      return "loose";
    case Feels::broke:
      return "broke";
  }
  return "tight";
}
std::optional<Feels> feelsFromCode(std::string_view text) {
  if (text == "hurts" || text == "presses") return Feels::tight;
  if (text == "slips" || text == "slides" || text == "moves") return Feels::loose;
  return fromCode(text, {Feels::tight, Feels::loose, Feels::broke});
}

std::string_view code(Verdict v) {
  switch (v) {
    case Verdict::unfinished:
      return "unfinished";
    case Verdict::fits:
      return "fits";
    case Verdict::adjust:
      return "adjust";
    case Verdict::doNotWear:
      return "do-not-wear";
  }
  return "unfinished";
}
std::optional<Verdict> verdictFromCode(std::string_view text) {
  return fromCode(text, {Verdict::unfinished, Verdict::fits, Verdict::adjust, Verdict::doNotWear});
}

std::string Reason::codeText() const {
  const std::string_view markCode = mark ? code(*mark) : std::string_view{};
  const std::string_view pointCode = point ? gear::code(*point) : std::string_view{};
  switch (kind) {
    case ReasonKind::pointFault:
      return joined(pointCode, "fault");
    case ReasonKind::labelLapsed:
      return "label-lapsed";
    case ReasonKind::labelMissing:
      return "label-missing";
    case ReasonKind::labelUnknown:
      return "label-unknown";
    case ReasonKind::markFault:
      return joined(markCode, "fault");
    case ReasonKind::cannotTry:
      return joined(markCode, "not-tried");
    case ReasonKind::notReached:
      return joined(markCode, "not-reached");
    case ReasonKind::markOff:
      return joined(markCode, code(finding));
    case ReasonKind::dryHair:
      return "dry-hair";
    case ReasonKind::veto:
      return joined(text, "no");
    case ReasonKind::hairOpen:
      return "hair-open";
    case ReasonKind::markOpen:
      return joined(markCode, "open");
    case ReasonKind::pointOpen:
      return joined(pointCode, "open");
    case ReasonKind::questionOpen:
      return joined(text, "open");
    case ReasonKind::wordOpen:
      return joined(markCode, "said");
    case ReasonKind::broken:
      return "broken";
    case ReasonKind::unwell:
      return "unwell";
  }
  return {};
}

std::string Advice::doText() const {
  switch (kind) {
    case AdviceKind::reseat:
      return "reseat";
    case AdviceKind::warm:
      return "warm";
    case AdviceKind::change:
      return std::string(deed ? code(*deed) : std::string_view{});
    case AdviceKind::check:
      return "check";
    case AdviceKind::replacePart:
      return "replace";
    case AdviceKind::otherSize:
      return direction > 0 ? "other-size-up" : "other-size-down";
    case AdviceKind::otherModel:
      return "other-model";
    case AdviceKind::holdUnit:
      return "hold";
  }
  return {};
}

std::string Advice::amountText() const {
  if (pumpsHigh == 1) return "1 pump";
  if (pumpsHigh > 0) return std::to_string(pumpsLow) + "-" + std::to_string(pumpsHigh) + " pumps";
  if (to) return exact(*to);
  if (deed != Deed::relength) return {};
  if (direction == 0) return "even";
  return direction > 0 ? "longer" : "shorter";
}

std::string Step::codeText() const {
  switch (kind) {
    case StepKind::stop:
      return "stop";
    case StepKind::hair:
      return "hair";
    case StepKind::fitted:
      return "fitted";
    case StepKind::mark:
      return std::string(mark ? code(*mark) : std::string_view{});
    case StepKind::question:
      return question;
    case StepKind::point:
      return std::string(point ? gear::code(*point) : std::string_view{});
    case StepKind::done:
      return "done";
  }
  return {};
}

}  // namespace snugline::fit
