// SPDX-License-Identifier: Apache-2.0
// The words of marks, points, verdicts, advice and sizes. The marks' own words are common practice.
#include <array>
#include <cstdio>

#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

struct MarkWords {
  const char* over;
  const char* under;
  const char* fault;
};

MarkWords markWords(fit::Mark mark) {
  switch (mark) {
    case fit::Mark::brow:
      return {"high", "low", "front pad gone or torn"};
    case fit::Mark::ears:
      return {"high", "low", "forward or back"};
    case fit::Mark::nape:
      return {"presses", "uncovered", "rear pad gone"};
    case fit::Mark::chin:
      return {"tight", "slack", "off centre"};
    case fit::Mark::straps:
      return {"tight", "loose or outside the bars", "a snap or strap gone"};
    case fit::Mark::jaw:
      return {"presses", "gap", "pad gone"};
    case fit::Mark::crown:
      return {"presses", "gap", "bladder does not hold"};
    case fit::Mark::sides:
      return {"presses", "gap", "bladder or pad fails"};
    case fit::Mark::hold:
      return {"hurts", "slides", "cannot be tried"};
  }
  return {"", "", ""};
}

std::string percent(double odds) {
  std::array<char, 16> text{};
  std::snprintf(text.data(), text.size(), "%.0f %%", odds * 100.0);
  return text.data();
}

std::string listOf(fit::MarkSet marks) {
  std::string list;
  for (const fit::Mark m : fit::kMarks) {
    if (marks.has(m)) list += (list.empty() ? "" : ", ") + std::string(code(m));
  }
  return list;
}

std::string placeWords(const fit::Advice& advice) {
  if (advice.port) return std::string(code(*advice.port)) + " air";
  if (!advice.part) return "the fit";
  switch (*advice.part) {
    case gear::Part::jawLeft:
      return "left jaw pad";
    case gear::Part::jawRight:
      return "right jaw pad";
    case gear::Part::crownPad:
      return "crown pad";
    case gear::Part::straps:
      return "straps";
    case gear::Part::chinCup:
      return "chin cup";
  }
  return {};
}

std::string changeWords(const fit::Advice& advice) {
  const std::string place = placeWords(advice);
  const std::string pumps =
      advice.pumpsHigh == 1 ? "one pump at a time" : std::to_string(advice.pumpsLow) + " to " + std::to_string(advice.pumpsHigh) + " pumps";
  switch (advice.deed.value_or(fit::Deed::relength)) {
    case fit::Deed::add:
      return "add " + place + ", " + pumps;
    case fit::Deed::release:
      return "let " + place + " out, " + pumps;
    case fit::Deed::swap:
      return "swap the " + place + (advice.to ? " to " + print(*advice.to, UnitSystem::metric) : std::string());
    case fit::Deed::reroute:
      return "route the " + place + " as the sheet draws, under the faceguard";
    case fit::Deed::relength:
      return "set the length of the " + place + " evenly on both sides";
  }
  return {};
}

}  // namespace

std::string words(fit::Verdict verdict) {
  switch (verdict) {
    case fit::Verdict::unfinished:
      return "Unfinished";
    case fit::Verdict::fits:
      return "Fits";
    case fit::Verdict::adjust:
      return "Adjust";
    case fit::Verdict::doNotWear:
      return "Do not wear";
  }
  return {};
}

std::string words(fit::Mark mark, fit::Finding finding, fit::Side side) {
  const std::string name = std::string(code(mark)) + (side == fit::Side::both ? "" : ' ' + std::string(code(side)));
  switch (finding) {
    case fit::Finding::unseen:
      return name + " not seen";
    case fit::Finding::snug:
      return name + " snug";
    case fit::Finding::over:
      return name + ' ' + markWords(mark).over;
    case fit::Finding::under:
      return name + ' ' + markWords(mark).under;
    case fit::Finding::fault:
      return name + ' ' + markWords(mark).fault;
  }
  return name;
}

std::string words(gear::Point point) {
  switch (point) {
    case gear::Point::certification:
      return "certification";
    case gear::Point::warningLabel:
      return "warning label";
    case gear::Point::shell:
      return "shell";
    case gear::Point::hardware:
      return "hardware";
    case gear::Point::faceguard:
      return "faceguard";
    case gear::Point::liner:
      return "liner";
    case gear::Point::chinStrap:
      return "chin strap";
  }
  return {};
}

std::string strip(const std::array<fit::Finding, fit::kMarkCount>& findings) {
  std::string text;
  for (const fit::Finding f : findings) {
    switch (f) {
      case fit::Finding::unseen:
        text += '-';
        break;
      case fit::Finding::snug:
        text += 'o';
        break;
      case fit::Finding::over:
        text += '\'';
        break;
      case fit::Finding::under:
        text += '.';
        break;
      case fit::Finding::fault:
        text += 'x';
        break;
    }
  }
  return text;
}

std::string sentence(const fit::Reason& r) {
  using fit::ReasonKind;
  const fit::Mark mark = r.mark.value_or(fit::Mark::brow);
  const std::string point = r.point ? words(*r.point) : std::string("a point");
  const std::string more = r.text.empty() ? std::string() : ": " + r.text;
  switch (r.kind) {
    case ReasonKind::pointFault:
      return "fault, " + point + more;
    case ReasonKind::labelLapsed:
      return "certification lapsed";
    case ReasonKind::labelMissing:
      return "no certification label";
    case ReasonKind::labelUnknown:
      return "certification not known, read the label";
    case ReasonKind::markFault:
      return words(mark, fit::Finding::fault, r.side);
    case ReasonKind::cannotTry:
      return "hold cannot be tried";
    case ReasonKind::notReached:
      return std::string(code(mark)) + " cannot be brought to snug in this helmet, another size or model";
    case ReasonKind::markOff:
      return words(mark, r.finding, r.side);
    case ReasonKind::dryHair:
      return "hair is dry, wet it";
    case ReasonKind::veto:
      return "answered no" + more;
    case ReasonKind::hairOpen:
      return "not said whether the hair is wet";
    case ReasonKind::markOpen:
      return std::string(code(mark)) + " not seen, or to be seen again";
    case ReasonKind::pointOpen:
      return point + " not seen";
    case ReasonKind::questionOpen:
      return "a question of the sheet is open" + more;
    case ReasonKind::wordOpen:
      return std::string(code(mark)) + ", the athlete's word is not answered yet";
    case ReasonKind::broken:
      return "the athlete said that something broke";
    case ReasonKind::unwell:
      return "stop, tell the athletic trainer now";
  }
  return {};
}

std::string sentence(const fit::Advice& advice) {
  const std::string mark(code(advice.mark));
  const std::string again = listOf(advice.reopens);
  const std::string then = again.empty() ? std::string() : "; then see again: " + again;
  switch (advice.kind) {
    case fit::AdviceKind::reseat:
      return mark + ": seat the helmet anew" + then;
    case fit::AdviceKind::warm:
      return mark + ": the helmet is cold, warm it first, let no air out" + then;
    case fit::AdviceKind::change:
      return mark + ": " + changeWords(advice) + then;
    case fit::AdviceKind::check:
      return mark + ": look at the part again" + then;
    case fit::AdviceKind::replacePart:
      return mark + ": replace the part, do not wear until done" + then;
    case fit::AdviceKind::otherSize:
      return mark + (advice.direction > 0 ? ": next size up" : ": next size down");
    case fit::AdviceKind::otherModel:
      return mark + ": another model";
    case fit::AdviceKind::holdUnit:
      return mark + ": hold the helmet";
  }
  return {};
}

std::string sentence(const fit::SizeAnswer& a) {
  const std::string head = print(a.circumference, UnitSystem::metric) + " round the head";
  if (a.isRetake)
    return "The readings disagree by more than " + print(fit::kRetakeSpread, UnitSystem::metric) + ", no size is known, tape again";
  std::string text;
  if (a.size.empty()) {
    text = head + " is off the chart of this sheet";
  } else if (a.isBetween) {
    text = head + " lies between sizes, likeliest " + a.size + ", try both and start with " + a.startWith;
  } else {
    text = head + " is size " + a.size;
  }
  for (const fit::SizeOdds& o : a.odds) {
    if (!a.size.empty() && o.size == a.size) text += ", " + percent(o.odds) + " likely";
  }
  return text;
}

}  // namespace snugline::cli
