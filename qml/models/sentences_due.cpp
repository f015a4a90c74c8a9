// SPDX-License-Identifier: Apache-2.0
#include "sentences.h"
#include "sentences_air.h"
#include "sentences_gear.h"
#include "sentences_said.h"
#include "sentences_units.h"

namespace snugline::models {

using season::DueKind;
using season::DueReason;
using season::Lane;
using season::RowAction;

QString DueWords::lane(Lane lane) {
  switch (lane) {
    case Lane::doNotWear:
      return tr("Do not wear");
    case Lane::beforePractice:
      return tr("See before practice");
    case Lane::noHelmet:
      return tr("No helmet yet");
    case Lane::weekly:
      return tr("Weekly look");
    case Lane::nothingDue:
      return tr("Nothing due");
  }
  return {};
}

QString DueWords::laneEmpty(Lane lane) {
  switch (lane) {
    case Lane::doNotWear:
      return tr("No helmet is out of use.");
    case Lane::beforePractice:
      return tr("Nobody to see before practice.");
    case Lane::noHelmet:
      return tr("Everybody has a helmet.");
    case Lane::weekly:
      return tr("No weekly look is due.");
    case Lane::nothingDue:
      return tr("Everybody has something due.");
  }
  return {};
}

QString DueWords::action(const season::DueRow& row) {
  const bool isAdjust = !row.reasons.empty() && row.reasons.front().kind == DueKind::adjustOpen;
  switch (row.action) {
    case RowAction::none:
      return {};
    case RowAction::firstFit:
      return tr("First fit");
    case RowAction::refit:
      return isAdjust ? tr("Continue") : tr("Refit");
    case RowAction::look:
      return isAdjust ? tr("Continue") : tr("Look");
    case RowAction::resume:
      return tr("Go on");
    case RowAction::chooseHelmet:
      return tr("Swap helmet");
    case RowAction::athlete:
      return tr("Open");
    case RowAction::close:
      return tr("Close");
  }
  return {};
}

namespace {

// "Held 08:12 by KP", in today's or another day's words.
QString heldBy(const DueReason& reason, const Speech& speech) {
  const QString who = PlainWords::person(speech.views, reason.who);
  const QString when = reason.at ? PlainWords::moment(*reason.at, speech.today) : QString();
  if (when.isEmpty()) return DueWords::tr("Held.");
  if (who.isEmpty()) return DueWords::tr("Held %1.").arg(when);
  return DueWords::tr("Held %1 by %2").arg(when, who);
}

QString whatIsHeld(const DueReason& reason) {
  if (reason.text.empty()) return reason.point ? pointName(*reason.point) : QString();
  // Without the finder's words the board hands over the hold's reason code.
  for (const char* code : {"label", "fit", "broken", "other"}) {
    if (reason.text == code) return holdReason(reason.text);
  }
  if (gear::pointFromCode(reason.text)) return holdReason(reason.text);
  // A hold out of a check carries the code of the verdict's reason.
  if (const QString known = GuideWords::reasonCode(reason.text); !known.isEmpty()) return PlainWords::sentenceCase(known);
  return PlainWords::sentenceCase(PlainWords::text(reason.text));
}

QString lapsed(const DueReason& reason, const Speech& speech) {
  return reason.day ? DueWords::tr("Certification lapsed %1").arg(PlainWords::day(*reason.day, speech.today))
                    : DueWords::tr("Certification lapsed");
}

QString wordOf(const DueReason& reason, const Speech& speech) {
  QString words = reason.mark ? MarkWords::said(*reason.mark, reason.side, reason.feels) : DueWords::tr("something does not sit right");
  if (!reason.text.empty()) words += DueWords::tr(", “%1”", "the athlete's own words").arg(PlainWords::text(reason.text));
  if (reason.at) words = DueWords::tr("%1, %2", "the athlete's word, when").arg(words, PlainWords::moment(*reason.at, speech.today));
  const QString often = reason.day ? SaidWords::times(reason.count, *reason.day, speech.today) : QString();
  if (!often.isEmpty()) words = DueWords::tr("%1, %2", "the athlete's word, how often").arg(words, often);
  return DueWords::tr("Says: %1").arg(words);
}

QString brokeWords(const DueReason& reason) {
  QString words = reason.mark ? MarkWords::said(*reason.mark, reason.side, fit::Feels::broke) : DueWords::tr("something broke");
  if (!reason.text.empty()) words += DueWords::tr(", “%1”", "the athlete's own words").arg(PlainWords::text(reason.text));
  return DueWords::tr("Says: %1").arg(words);
}

QString breakIn(const DueReason& reason) {
  if (reason.isLate) return DueWords::tr("Break-in look late, day %1").arg(reason.count);
  return DueWords::tr("Break-in look, day %1 of %2").arg(reason.count).arg(fit::kBreakInByDays);
}

QString noHelmet(const DueReason& reason) {
  if (reason.text.empty()) return DueWords::tr("No helmet yet");
  if (reason.text == "held") return DueWords::tr("No helmet: the last one is on hold");
  if (reason.text == "repair") return DueWords::tr("No helmet: the last one is in repair");
  if (reason.text == "sent-out") return DueWords::tr("No helmet: the last one is sent out for recertification");
  if (reason.text == "retired") return DueWords::tr("No helmet: the last one is retired");
  if (reason.text == "lost") return DueWords::tr("No helmet: the last one is lost");
  if (reason.text == "given") return DueWords::tr("No helmet: somebody else has the last one");
  if (reason.text == "shelf") return DueWords::tr("No helmet: the last one is on the shelf");
  const QString why = GuideWords::reasonCode(reason.text);
  return why.isEmpty() ? DueWords::tr("No helmet: the last one did not fit")
                       : DueWords::tr("No helmet: the last one did not fit, %1").arg(why);
}

QString away(const DueReason& reason) {
  if (reason.text == "repair") return DueWords::tr("Helmet is away: %1").arg(DueWords::tr("in repair"));
  if (reason.text == "sent-out") return DueWords::tr("Helmet is away: %1").arg(DueWords::tr("sent out for recertification"));
  if (reason.text == "retired") return DueWords::tr("Helmet is retired");
  if (reason.text == "lost") return DueWords::tr("Helmet is lost");
  return DueWords::tr("Helmet is away");
}

}  // namespace

QString DueWords::reason(const DueReason& reason, const Speech& speech) {
  switch (reason.kind) {
    case DueKind::seeAthleteNow:
      return tr("See athlete now");
    case DueKind::withTrainer:
      return tr("With the athletic trainer");
    case DueKind::pointsAfterHit:
      return tr("Check the helmet’s seven points before it is worn");
    case DueKind::noUnit:
      return noHelmet(reason);
    case DueKind::held: {
      const QString what = whatIsHeld(reason);
      const QString held = what.isEmpty() ? heldBy(reason, speech)
                                          : tr("%1. %2", "why a helmet is held. Held when by whom").arg(what, heldBy(reason, speech));
      return reason.isWithAthlete ? tr("%1, still with the athlete", "why a helmet is held").arg(held) : held;
    }
    case DueKind::unitFault: {
      const QString point = reason.point ? pointName(*reason.point) : tr("Helmet");
      return reason.text.empty() ? tr("%1: fault found").arg(point) : tr("%1: %2").arg(point, PlainWords::text(reason.text));
    }
    case DueKind::labelLapsed:
      return lapsed(reason, speech);
    case DueKind::labelMissing:
      return tr("Certification label is missing");
    case DueKind::labelUnreadable:
      return tr("Certification label cannot be read");
    case DueKind::labelUnknown:
      return tr("Certification label not read yet");
    case DueKind::verdictDoNotWear: {
      const QString why = GuideWords::reasonCode(reason.text);
      return why.isEmpty() ? tr("Last check: do not wear") : tr("Last check: do not wear, %1").arg(why);
    }
    case DueKind::brokeSaid:
      return brokeWords(reason);
    case DueKind::twoAthletes:
      return tr("Helmet is also down for number %1").arg(PlainWords::text(reason.text));
    case DueKind::twoUnits:
      return tr("Two helmets are down for this athlete");
    case DueKind::labelDisputed:
      return tr("Two readings of the label differ");
    case DueKind::unitAway:
      return away(reason);
    case DueKind::noSheet:
      return tr("Model or size of the helmet is not known");
    case DueKind::notInService:
      return tr("Helmet is not in service");
    case DueKind::keptUnit:
      return reason.isWithAthlete ? tr("Old helmet %1 is not to be worn and still with the athlete").arg(PlainWords::text(reason.text))
                                  : tr("Old helmet %1 is still with the athlete").arg(PlainWords::text(reason.text));
    case DueKind::neverFitted:
      return tr("Never fitted in this helmet");
    case DueKind::checkOpen:
      return reason.mark ? tr("Check left open at %1").arg(MarkWords::brief(*reason.mark)) : tr("Check left open");
    case DueKind::adjustOpen:
      return reason.mark ? tr("To adjust: %1").arg(MarkWords::found(*reason.mark, reason.finding, reason.side, fit::HoldHow::unsaid))
                         : tr("To adjust");
    case DueKind::wordOpen:
      return wordOf(reason, speech);
    case DueKind::hairChanged:
      return tr("Hair changed since the last fit");
    case DueKind::partChanged:
      if (reason.text.empty()) return tr("A part was changed since the last fit");
      return reason.marks == fit::MarkSet{} ? tr("New part: %1").arg(UnitWords::parts(reason.text))
                                            : tr("New part: %1. %2").arg(UnitWords::parts(reason.text), UnitWords::reopened(reason.marks));
    case DueKind::airChanged:
      return AirWords::changed(reason, speech.weather, speech.units);
    case DueKind::airLeaking:
      return AirWords::leaking(reason, speech.units);
    case DueKind::lineOff:
      return AirWords::lineOff(reason);
    case DueKind::dryHair:
      return tr("Fitted on dry hair: see again wet");
    case DueKind::breakIn:
      return breakIn(reason);
    case DueKind::weeklyLook:
      return reason.isLate ? tr("Weekly look late, %n days since the last", nullptr, reason.count)
                           : tr("Weekly look, %n days since the last", nullptr, reason.count);
    case DueKind::pointUnseen:
      return reason.point ? tr("%1 not seen yet").arg(pointName(*reason.point)) : tr("A point not seen yet");
    case DueKind::labelLapsing:
      return reason.day ? tr("Certification lapses after %1").arg(PlainWords::day(*reason.day, speech.today))
                        : tr("Certification lapses soon");
    case DueKind::tapeStale:
      return tr("Head last taped %n months ago", nullptr, reason.count);
    case DueKind::neverTaped:
      return tr("Head not taped yet");
    case DueKind::stillOut:
      return tr("Season %1 is closed and this helmet was not handed in").arg(PlainWords::text(reason.text));
  }
  return {};
}

}  // namespace snugline::models
