// SPDX-License-Identifier: Apache-2.0
#include "sentences_said.h"

#include <algorithm>
#include <cstdlib>

#include <QDate>
#include <QLocale>

namespace snugline::models {

namespace {

constexpr int kDaysByName = 6;  // a weekday's name alone says the last days, a week ago it would say two

// The place by its own words, so that a translation can put the article where its language wants it.
QString stepped(const QString& pad, int direction) {
  if (direction < 0) return SaidWords::tr("%1 one step thinner", "a pad").arg(pad);
  if (direction > 0) return SaidWords::tr("%1 one step thicker", "a pad").arg(pad);
  return SaidWords::tr("%1 swapped", "a pad").arg(pad);
}

QString swapped(const book::Done& done, const Speech& speech) {
  const QString pad = MarkWords::part(done.change.part.value_or(gear::Part::crownPad));
  const bool isPad = done.change.part != gear::Part::straps && done.change.part != gear::Part::chinCup;
  if (!isPad) return SaidWords::tr("%1 swapped", "a part").arg(pad);
  if (!done.change.to) return stepped(pad, done.direction);
  const QString to = PlainWords::number(*done.change.to, speech.units);
  if (done.direction < 0) return SaidWords::tr("%1 thinner, %2", "a pad, its thickness").arg(pad, to);
  if (done.direction > 0) return SaidWords::tr("%1 thicker, %2", "a pad, its thickness").arg(pad, to);
  return SaidWords::tr("%1 now %2", "a pad, its thickness").arg(pad, to);
}

QString relengthed(int direction) {
  if (direction > 0) return SaidWords::tr("straps longer");
  if (direction < 0) return SaidWords::tr("straps shorter");
  return SaidWords::tr("straps set even");
}

QString sinceThen(const std::vector<book::WordOutcome>& ofOneCheck) {
  if (std::any_of(ofOneCheck.begin(), ofOneCheck.end(), [](const auto& one) { return one.isOtherHelmet; }))
    return SaidWords::tr("You have another helmet since.");
  return ofOneCheck.front().verdict == fit::Verdict::doNotWear ? SaidWords::tr("Do not wear that helmet.") : QString();
}

}  // namespace

QString SaidWords::times(int times, Day since, Day today) {
  if (times < 2) return {};
  const QString day = PlainWords::day(since, today);
  if (times == 2) return tr("second time since %1", "a day").arg(day);
  if (times == 3) return tr("third time since %1", "a day").arg(day);
  if (times == 4) return tr("fourth time since %1", "a day").arg(day);
  if (times == 5) return tr("fifth time since %1", "a day").arg(day);
  return tr("%n times since %1", "a day", times).arg(day);
}

QString SaidWords::place(fit::Mark where, fit::Side side) {
  const QString mark = MarkWords::brief(where);
  switch (side) {
    case fit::Side::both:
      return mark;
    case fit::Side::left:
      return tr("%1 on the left", "a mark").arg(mark);
    case fit::Side::right:
      return tr("%1 on the right", "a mark").arg(mark);
  }
  return mark;
}

QString SaidWords::done(const book::Done& done, const Speech& speech) {
  const QString port = done.change.port ? MarkWords::port(*done.change.port) : QString();
  switch (done.change.deed) {
    case fit::Deed::add:
      return tr("more air in the %1", "a bladder").arg(port);
    case fit::Deed::release:
      return tr("less air in the %1", "a bladder").arg(port);
    case fit::Deed::swap:
      return swapped(done, speech);
    case fit::Deed::reroute:
      return tr("straps rerouted");
    case fit::Deed::relength:
      return relengthed(done.direction);
  }
  return {};
}

QString SaidWords::seenDay(Instant at, Day today) {
  const Day day = dayOf(at);
  const int ago = daysBetween(day, today);
  if (ago == 0) return tr("today");
  if (ago == 1) return tr("yesterday");
  if (ago < 0 || ago > kDaysByName) return PlainWords::weekdayAndDay(day);
  const CivilDate date = civil(day);
  //: Format of a date, see QLocale: the weekday's name.
  return QLocale().toString(QDate(date.year, date.month, date.day), tr("dddd"));
}

QString SaidWords::outcome(const std::vector<book::WordOutcome>& ofOneCheck, const std::vector<book::Done>& done, const Speech& speech) {
  if (ofOneCheck.empty()) return {};
  const book::WordOutcome& first = ofOneCheck.front();
  const QString when = seenDay(first.seenAt, speech.today);
  QStringList found, deeds, sentences;
  bool isAllSnug = true;
  for (const book::WordOutcome& one : ofOneCheck) {
    if (one.found == fit::Finding::unseen) continue;
    isAllSnug = isAllSnug && one.found == fit::Finding::snug;
    const QString words = MarkWords::found(one.where, one.found, fit::Side::both, fit::HoldHow::unsaid);
    if (!found.contains(words)) found << words;
  }
  for (const book::Done& one : done) deeds << SaidWords::done(one, speech);
  if (!deeds.isEmpty()) {
    sentences << tr("Seen %1: %2.", "day, what was done").arg(when, PlainWords::list(deeds));
    if (!found.isEmpty()) sentences << tr("Now: %1.", "what was found").arg(PlainWords::list(found));
  } else if (found.isEmpty()) {
    sentences << tr("Seen %1.", "day").arg(when);
  } else if (isAllSnug) {
    sentences << tr("Seen %1: %2, nothing to change.", "day, what was found").arg(when, PlainWords::list(found));
  } else {
    sentences << tr("Seen %1: %2.", "day, what was found").arg(when, PlainWords::list(found));
  }
  sentences << sinceThen(ofOneCheck);
  return sentences.join(QLatin1Char(' ')).trimmed();
}

QString SaidWords::helmetOutcome(const std::vector<book::WordOutcome>& ofOneCheck, const std::vector<book::Done>& done,
                                 const Speech& speech) {
  if (ofOneCheck.empty()) return {};
  const QString when = seenDay(ofOneCheck.front().seenAt, speech.today);
  QStringList deeds;
  for (const book::Done& one : done) deeds << SaidWords::done(one, speech);
  const QString checked = deeds.isEmpty() ? tr("Your helmet was checked %1.", "day").arg(when)
                                          : tr("Your helmet was checked %1: %2.", "day, what was done").arg(when, PlainWords::list(deeds));
  return QStringLiteral("%1 %2").arg(checked, sinceThen(ofOneCheck)).trimmed();
}

QString SaidWords::pattern(const season::Pattern& pattern, const Speech& speech) {
  const QString place = SaidWords::place(pattern.where, pattern.side);
  if (pattern.kind == season::PatternKind::oneModel) {
    const gear::ModelSheet* sheet = speech.views.sheet(pattern.sheet);
    return tr("%1: %2", "who or what model, a place").arg(sheet == nullptr ? tr("One model") : PlainWords::text(sheet->name), place);
  }
  const season::AthleteRecord* athlete = speech.views.athlete(pattern.athlete);
  if (athlete == nullptr) return place;
  const QString who = tr("%1 %2", "jersey, name")
                          .arg(PlainWords::text(athlete->jersey), PlainWords::shortName(speech, athlete->family, athlete->given))
                          .trimmed();
  return tr("%1: %2", "who or what model, a place").arg(who, place);
}

QString SaidWords::patternDetail(const season::Pattern& pattern, const Speech& speech) {
  const QString first = PlainWords::day(pattern.first, speech.today), last = PlainWords::day(pattern.last, speech.today);
  const QString how = pattern.kind == season::PatternKind::oneModel
                          ? tr("Said by %n athletes, %1 to %2", "first and last day", pattern.times).arg(first, last)
                          : tr("Said on %n days, %1 to %2", "first and last day", pattern.times).arg(first, last);
  QStringList feels, numbers;
  if (pattern.kind == season::PatternKind::oneModel) {
    for (const std::string& id : pattern.athletes) {
      if (const season::AthleteRecord* athlete = speech.views.athlete(id)) numbers << PlainWords::text(athlete->jersey);
    }
  }
  if (pattern.tight > 0) feels << tr("tight %n times", nullptr, pattern.tight);
  if (pattern.loose > 0) feels << tr("loose %n times", nullptr, pattern.loose);
  const QString counted = feels.isEmpty() ? how : tr("%1: %2", "how often, how it felt").arg(how, PlainWords::list(feels));
  QStringList sentences{counted};
  if (!numbers.isEmpty()) sentences << tr("Numbers %1", "of jerseys").arg(PlainWords::list(numbers));
  if (pattern.isOpen) sentences << tr("Not all of it is seen yet");
  return sentences.join(QStringLiteral(". "));
}

}  // namespace snugline::models
