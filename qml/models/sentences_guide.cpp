// SPDX-License-Identifier: Apache-2.0
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

using fit::Advice;
using fit::AdviceKind;
using fit::Deed;
using fit::Mark;
using fit::Reason;
using fit::ReasonKind;
using gear::Part;
using gear::Port;

QString MarkWords::port(Port port) {
  switch (port) {
    case Port::crown:
      return tr("crown");
    case Port::sides:
      return tr("sides and back");
    case Port::jawLeft:
      return tr("left jaw pad");
    case Port::jawRight:
      return tr("right jaw pad");
  }
  return {};
}

QString MarkWords::part(Part part) {
  switch (part) {
    case Part::jawLeft:
      return tr("left jaw pad");
    case Part::jawRight:
      return tr("right jaw pad");
    case Part::crownPad:
      return tr("crown pad");
    case Part::straps:
      return tr("straps");
    case Part::chinCup:
      return tr("chin cup");
  }
  return {};
}

QString GuideWords::kind(fit::CheckKind kind) {
  switch (kind) {
    case fit::CheckKind::first:
      return tr("First fit");
    case fit::CheckKind::refit:
      return tr("Refit");
    case fit::CheckKind::look:
      return tr("Look");
  }
  return {};
}

namespace {

QString pumps(const Advice& advice) {
  if (advice.pumpsLow <= 0) return GuideWords::tr("a little air");
  if (advice.pumpsLow == advice.pumpsHigh) return GuideWords::tr("%n pump(s)", nullptr, advice.pumpsLow);
  return GuideWords::tr("%1 to %2 pumps").arg(advice.pumpsLow).arg(advice.pumpsHigh);
}

QString place(const Advice& advice) {
  if (advice.point) return pointName(*advice.point).toLower();
  if (advice.port) return MarkWords::port(*advice.port);
  if (advice.part) return MarkWords::part(*advice.part);
  return MarkWords::brief(advice.mark);
}

QString swapTo(const Advice& advice, const Speech& speech) {
  if (!advice.to) return GuideWords::tr("Swap the %1.").arg(place(advice));
  return GuideWords::tr("Swap the %1 for the one of %2.").arg(place(advice), PlainWords::number(*advice.to, speech.units));
}

QString relength(const Advice& advice) {
  if (advice.direction > 0) return GuideWords::tr("Lengthen the straps evenly on both sides.");
  if (advice.direction < 0) return GuideWords::tr("Shorten the straps evenly on both sides.");
  return GuideWords::tr("Set the straps to even length on both sides.");
}

QString change(const Advice& advice, const Speech& speech) {
  if (!advice.deed) return GuideWords::tr("Change the %1.").arg(place(advice));
  switch (*advice.deed) {
    case Deed::add:
      return GuideWords::tr("Put %1 into the %2.", "1 to 3 pumps, crown").arg(pumps(advice), place(advice));
    case Deed::release:
      return GuideWords::tr("Let %1 out of the %2.", "1 to 3 pumps, crown").arg(pumps(advice), place(advice));
    case Deed::swap:
      return swapTo(advice, speech);
    case Deed::reroute:
      return GuideWords::tr("Reroute the straps under the faceguard, as the sheet draws them.");
    case Deed::relength:
      return relength(advice);
  }
  return {};
}

}  // namespace

QString GuideWords::advice(const Advice& advice, const Speech& speech) {
  switch (advice.kind) {
    case AdviceKind::reseat:
      return tr("Take the helmet off and seat it again, low and level.");
    case AdviceKind::warm:
      return tr("The helmet is cold: warm it first.");
    case AdviceKind::change:
      return change(advice, speech);
    case AdviceKind::check:
      if (advice.part == Part::straps) return tr("See the straps first: every snap done up, even, routed.");
      return tr("Try it again: grip the shell, athlete braces.");
    case AdviceKind::replacePart:
      return tr("Replace the %1. The helmet is not worn until that is done.").arg(place(advice));
    case AdviceKind::otherSize:
      return advice.direction > 0 ? tr("Everything here is used up: try the next size up.")
                                  : tr("Everything here is used up: try the next size down.");
    case AdviceKind::otherModel:
      return tr("Everything here is used up: try another model.");
    case AdviceKind::holdUnit:
      return tr("Hold this helmet. It is not worn until it is repaired.");
  }
  return {};
}

QString GuideWords::adviceHow(const Advice& advice, const fit::Setup& setup) {
  if (advice.kind == AdviceKind::warm)
    return setup.sheet->air.empty()
               ? tr("Bring it indoors until it is as warm as the room. Then see it again.")
               : tr("Bring it indoors until it is as warm as the room. Let no air out in the cold. Then see it again.");
  const bool isAir = advice.kind == AdviceKind::change && advice.port.has_value();
  if (isAir && advice.pumpsHigh == 1) return tr("Cold: one pump at a time. Athlete on a knee, needle wetted. Then stand and see again.");
  if (isAir) return tr("Athlete on a knee, needle wetted. Then stand and see again.");
  if (advice.kind == AdviceKind::change && advice.deed == Deed::swap) return tr("Helmet off for the swap. A handed pair stays a pair.");
  return {};
}

QString GuideWords::reopens(const Advice& advice) {
  const QString marks = MarkWords::marks(advice.reopens);
  return marks.isEmpty() ? QString() : tr("Then see again: %1.").arg(marks);
}

QString GuideWords::adviceDone(const Advice& advice) {
  switch (advice.kind) {
    case AdviceKind::reseat:
    case AdviceKind::check:
      return tr("Done, see again");
    case AdviceKind::warm:
      return tr("It is warm now");
    case AdviceKind::change:
      return tr("Done, see again");
    case AdviceKind::replacePart:
    case AdviceKind::holdUnit:
      return tr("Hold this helmet");
    case AdviceKind::otherSize:
    case AdviceKind::otherModel:
      return tr("End: another helmet");
  }
  return {};
}

QString GuideWords::verdict(fit::Verdict verdict) {
  switch (verdict) {
    case fit::Verdict::unfinished:
      return tr("Left open");
    case fit::Verdict::fits:
      return tr("Fits");
    case fit::Verdict::adjust:
      return tr("Adjust");
    case fit::Verdict::doNotWear:
      return tr("Do not wear");
  }
  return {};
}

namespace {

// The question of the sheet that was answered no, in the sheet's words.
QString veto(const Reason& reason, const fit::Setup& setup) {
  if (setup.sheet != nullptr) {
    for (const gear::Question& question : setup.sheet->questions) {
      if (question.id == reason.text) return PlainWords::text(question.ifNo);
    }
  }
  return GuideWords::tr("A question of the model sheet was answered no");
}

QString pointFault(const Reason& reason) {
  const QString point = reason.point ? pointName(*reason.point) : GuideWords::tr("Helmet");
  return reason.text.empty() ? GuideWords::tr("%1: fault").arg(point) : GuideWords::tr("%1: %2").arg(point, PlainWords::text(reason.text));
}

QString notReached(const Reason& reason) {
  const QString mark = reason.mark ? MarkWords::name(*reason.mark) : QString();
  if (reason.direction > 0) return GuideWords::tr("%1: every way is used up, try the next size up").arg(mark);
  if (reason.direction < 0) return GuideWords::tr("%1: every way is used up, try the next size down").arg(mark);
  return GuideWords::tr("%1: every way is used up, try another model").arg(mark);
}

QString ofMark(const Reason& reason, fit::Finding finding) {
  if (!reason.mark) return {};
  return PlainWords::sentenceCase(MarkWords::found(*reason.mark, finding, reason.side, fit::HoldHow::unsaid));
}

}  // namespace

QString GuideWords::reason(const Reason& reason, const fit::Setup& setup, const Speech& speech) {
  switch (reason.kind) {
    case ReasonKind::pointFault:
      return pointFault(reason);
    case ReasonKind::labelLapsed:
      return setup.certifiedUntil ? tr("Certification lapsed %1").arg(PlainWords::day(*setup.certifiedUntil, speech.today))
                                  : tr("Certification lapsed");
    case ReasonKind::labelMissing:
      return tr("Certification label is missing");
    case ReasonKind::labelUnknown:
      return tr("Certification label not read yet");
    case ReasonKind::markFault:
      return ofMark(reason, fit::Finding::fault);
    case ReasonKind::cannotTry:
      return tr("Hold cannot be tried");
    case ReasonKind::notReached:
      return notReached(reason);
    case ReasonKind::hairOpen:
      return tr("Hair: not said whether it is wet");
    case ReasonKind::markOff:
      return ofMark(reason, reason.finding);
    case ReasonKind::dryHair:
      return tr("Fitted on dry hair: see again with hair wet");
    case ReasonKind::veto:
      return veto(reason, setup);
    case ReasonKind::markOpen:
      return tr("%1 not seen").arg(reason.mark ? MarkWords::name(*reason.mark) : QString());
    case ReasonKind::pointOpen:
      return tr("%1 not seen").arg(reason.point ? pointName(*reason.point) : QString());
    case ReasonKind::questionOpen:
      return tr("A question of the model sheet is not answered");
    case ReasonKind::wordOpen:
      return tr("Athlete's word on the %1 not answered").arg(reason.mark ? MarkWords::brief(*reason.mark) : QString());
    case ReasonKind::broken:
      return tr("Athlete says something broke: see the seven points");
    case ReasonKind::unwell:
      return tr("See athlete now");
  }
  return {};
}

// Codes as core records them: "brow-over", "faceguard-fault", "crown-not-reached", "label-lapsed", …
QString GuideWords::reasonCode(const std::string& code) {
  if (code == "label-lapsed") return tr("certification lapsed");
  if (code == "label-missing") return tr("certification label missing");
  if (code == "dry-hair") return tr("dry hair");
  if (code == "broken") return tr("something broke");
  if (code == "label-unknown") return tr("certification label not read");
  if (code == "hair-open") return tr("hair not seen");
  if (code == "unwell") return tr("see athlete now");
  const std::size_t dash = code.rfind('-');
  for (std::size_t at = code.find('-'); at != std::string::npos; at = code.find('-', at + 1)) {
    const std::string head = code.substr(0, at);
    const std::string tail = code.substr(at + 1);
    if (const auto mark = fit::markFromCode(head)) {
      if (const auto finding = fit::findingFromCode(tail)) return MarkWords::found(*mark, *finding, fit::Side::both, fit::HoldHow::unsaid);
      if (tail == "not-reached") return tr("%1 could not be reached").arg(MarkWords::brief(*mark));
      if (tail == "open") return tr("%1 not seen").arg(MarkWords::brief(*mark));
      if (tail == "said") return tr("athlete's word on the %1 not answered").arg(MarkWords::brief(*mark));
      if (tail == "not-tried") return tr("%1 could not be tried").arg(MarkWords::brief(*mark));
    }
  }
  if (dash == std::string::npos) return {};
  if (const auto point = gear::pointFromCode(code.substr(0, dash))) {
    if (code.ends_with("-open")) return tr("%1 not seen").arg(pointName(*point).toLower());
    return tr("%1 at fault", "a point of the helmet").arg(pointName(*point).toLower());
  }
  return {};
}

QString GuideWords::next(const season::EndedCheck& ended, const season::UnitRecord* unit, const Speech& speech) {
  switch (ended.verdict) {
    case fit::Verdict::fits: {
      if (ended.isForCold)
        return tr("Fits for this cold. See it again before the next session that is warmer, at the latest %1.")
            .arg(PlainWords::dueDay(ended.dueBy, speech.today));
      const QString from = PlainWords::dueDay(ended.dueFrom, speech.today);
      const QString by = PlainWords::dueDay(ended.dueBy, speech.today);
      if (ended.dueFrom == ended.dueBy) return tr("Next look %1.").arg(by);
      return tr("Next look from %1, at the latest %2.").arg(from, by);
    }
    case fit::Verdict::adjust:
      return tr("Stays on the board under “See before practice” until it is put right.");
    case fit::Verdict::doNotWear:
      if (unit != nullptr && !unit->holds.empty())
        return tr("Helmet %1 is held. Choose another for this athlete.").arg(PlainWords::text(unit->serial));
      return tr("Choose another helmet: the next one is a new check.");
    case fit::Verdict::unfinished:
      return tr("Stays on the board under “See before practice”. Go on from there.");
  }
  return {};
}

// The sheet's own cautions say it in the maker's words; without them we say it in ours.
QString GuideWords::caution(const gear::ModelSheet* sheet) {
  if (sheet != nullptr && !sheet->cautions.empty()) return PlainWords::text(sheet->cautions);
  return tr("Follow the helmet maker's instructions and local rules; they come first. No helmet prevents concussion.");
}

QString GuideWords::notHere() { return tr("Not here? Tell a coach or any adult now."); }

QString GuideWords::emergency(const season::Views& views) {
  const season::EmergencyRecord call = views.team ? views.team->emergency : season::EmergencyRecord();
  const QString number = tr("Emergency: call %1", "a number").arg(PlainWords::text(call.number));
  return call.plan.empty() ? number : QStringLiteral("%1. %2").arg(number, PlainWords::text(call.plan));
}

QString GuideWords::stop() {
  return tr(
      "Stop. Tell the athletic trainer now. Out at once and out for the day; follow the local concussion protocol. "
      "Back only with written permission from a licensed health care professional.");
}

}  // namespace snugline::models
