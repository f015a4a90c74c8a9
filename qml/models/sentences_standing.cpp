// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sentences_standing.h"

#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

using season::Bar;
using season::UnitState;
using season::Where;

QString StandingWords::bar(Bar bar) {
  switch (bar) {
    case Bar::retired:
      return tr("retired");
    case Bar::lost:
      return tr("lost");
    case Bar::sentOut:
      return tr("sent out");
    case Bar::repair:
      return tr("in repair");
    case Bar::held:
      return tr("on hold");
    case Bar::fault:
      return tr("a fault is open");
    case Bar::brokeSaid:
      return tr("reported broken");
    case Bar::labelMissing:
      return tr("label missing");
    case Bar::labelUnreadable:
      return tr("label cannot be read");
    case Bar::labelDisputed:
      return tr("two readings of its label differ");
    case Bar::labelUnknown:
      return tr("label not read yet");
    case Bar::labelLapsed:
      return tr("certification lapses too early, or may");
    case Bar::noSheet:
      return tr("its model or size is not known");
    case Bar::pointsAfterReport:
      return tr("seven points to check after a report");
    case Bar::pointUnchecked:
    case Bar::notInService:
      return tr("not in service");
    case Bar::twoAthletes:
      return tr("two athletes are down for it");
    case Bar::verdict:
      return tr("last check: do not wear");
  }
  return {};
}

QString StandingWords::reason(const season::WhyNot& why, Day today) {
  switch (why.bar) {
    case Bar::retired:
    case Bar::lost:
    case Bar::sentOut:
    case Bar::repair:
    case Bar::noSheet:
    case Bar::twoAthletes:
      return PlainWords::sentenceCase(bar(why.bar));
    case Bar::held:
      return tr("On hold: %1").arg(holdWords({why.hold, why.reason, why.text, why.stamp}));
    case Bar::fault: {
      const QString point = pointName(*why.point);
      return why.text.empty() ? tr("%1: fault", "a point").arg(point) : tr("%1: %2").arg(point, text(why.text));
    }
    case Bar::brokeSaid:
      return why.text.empty() ? tr("Reported broken") : tr("Reported broken: “%1”").arg(text(why.text));
    case Bar::labelMissing:
      return tr("Certification label is missing");
    case Bar::labelUnreadable:
      return tr("Certification label cannot be read");
    case Bar::labelDisputed:
      return tr("Two readings of the label differ");
    case Bar::labelUnknown:
      return tr("Certification label not read yet");
    case Bar::labelLapsed:
      return why.day ? tr("Certification lapsed, last good day %1").arg(PlainWords::day(*why.day, today)) : tr("Certification lapsed");
    case Bar::pointsAfterReport:
      return tr("After a report: check all seven points before it is worn");
    case Bar::pointUnchecked:
      return tr("%1 not seen yet").arg(pointName(*why.point));
    case Bar::notInService:
      return tr("Not in service yet");
    case Bar::verdict: {
      const QString words = GuideWords::reasonCode(why.text);
      return words.isEmpty() ? tr("Last check: do not wear") : tr("Last check: do not wear, %1").arg(words);
    }
  }
  return {};
}

QStringList StandingWords::reasons(const season::UnitStanding& standing, Day today) {
  QStringList list;
  for (const season::WhyNot& why : standing.reasons) list << reason(why, today);
  return list;
}

QString StandingWords::where(const season::UnitStanding& standing, Names names) {
  const season::UnitRecord& unit = *standing.unit;
  switch (standing.where) {
    case Where::withUs:
      return unit.athletes.empty() ? tr("on the shelf") : tr("in our hands");
    case Where::withAthlete:
      break;
    case Where::repair:
    case Where::sentOut:
    case Where::lost:
    case Where::retired:
      return placeWords(unit.place, unit.placeWords);
  }
  QStringList who;
  if (names != Names::none) {
    for (const season::AthleteRecord* athlete : standing.with) who << athleteName(*athlete, names == Names::initials);
  }
  const QString with = who.isEmpty() ? tr("an athlete") : PlainWords::list(who);
  const bool isAskedFor = !standing.mayBeWorn() || !unit.keptBy.empty();
  return isAskedFor ? tr("still with %1", "an athlete").arg(with) : tr("with %1", "an athlete").arg(with);
}

QString StandingWords::headline(const season::UnitStanding& standing, Names names, Day today) {
  const QString place = where(standing, names);
  switch (standing.state) {
    case UnitState::repair:
    case UnitState::sentOut:
    case UnitState::lost:
    case UnitState::retired:
      return place;
    case UnitState::inService:
      return tr("In service, %1", "where it is").arg(place);
    case UnitState::notInService:
      return tr("Not in service yet, %1", "where it is").arg(place);
    case UnitState::onHold:
      return tr("%1, %2", "why it is on hold, where it is").arg(reason(standing.reasons.front(), today), place);
    case UnitState::doNotWear:
      return tr("Do not wear: %1, %2", "why, where it is").arg(reason(standing.reasons.front(), today), place);
  }
  return place;
}

QString StandingWords::tone(const season::UnitStanding& standing) {
  if (standing.mayBeWorn()) return QStringLiteral("snug");
  const bool isOnlyUnchecked = standing.state == UnitState::notInService && standing.where != Where::withAthlete;
  return isOnlyUnchecked ? QStringLiteral("see") : QStringLiteral("stop");
}

QString StandingWords::returned(const season::ReturnRecord& returned) {
  QStringList parts{text(returned.done)};
  if (returned.by == season::kByUs) parts << tr("by us");
  if (returned.by == season::kByFirm) parts << tr("by a workshop");
  if (returned.by == season::kByRecertifier) parts << tr("by the recertifying firm");
  if (returned.by == season::kByMaker) parts << tr("by its maker");
  if (!returned.paper.empty()) parts << tr("on paper: %1").arg(text(returned.paper));
  parts << (returned.isCleaned ? tr("cleaned") : tr("not cleaned yet"));
  return parts.join(QStringLiteral(", "));
}

QVariantMap returnMap(const std::optional<season::ReturnRecord>& returned) {
  if (!returned) return {};
  return {{QStringLiteral("by"), text(returned->by)},
          {QStringLiteral("done"), text(returned->done)},
          {QStringLiteral("paper"), text(returned->paper)},
          {QStringLiteral("isCleaned"), returned->isCleaned},
          {QStringLiteral("words"), StandingWords::returned(*returned)}};
}

QString unitStatus(const season::Views& views, const season::UnitRecord& unit, Day today, Names names) {
  return StandingWords::headline(season::standingOf(views, unit, today), names, today);
}

}  // namespace snugline::models
