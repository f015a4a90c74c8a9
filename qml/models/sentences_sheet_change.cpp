// SPDX-License-Identifier: Apache-2.0
// Model sheets: what is different between two, and whom a change concerns.
#include "core/gear/sheet_figure.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"

namespace snugline::models {

namespace {

using gear::SheetDifference;
using gear::SheetField;

QString change(const QString& what, const QString& before, const QString& after) {
  if (before.isEmpty()) return SheetWords::tr("%1: %2, new").arg(what, after);
  if (after.isEmpty()) return SheetWords::tr("%1: %2, gone").arg(what, before);
  return SheetWords::tr("%1: %2, before %3", "what, value now, value before").arg(what, after, before);
}

QString stepsText(const std::string& steps, UnitSystem units) {
  QStringList words;
  for (const QString& one : text(steps).split(QStringLiteral(", "), Qt::SkipEmptyParts))
    words << SheetWords::figure(one.toLongLong(), gear::FigureUnit::um, units);
  return words.join(QStringLiteral(", "));
}

QString orderText(const std::string& codes) {
  std::vector<gear::Port> ports;
  for (const QString& one : text(codes).split(QStringLiteral(", "), Qt::SkipEmptyParts))
    if (const auto port = gear::portFromCode(utf8(one))) ports.push_back(*port);
  return SheetWords::order(ports);
}

QString marksText(const std::string& codes) {
  QStringList names;
  for (const QString& one : text(codes).split(QStringLiteral(", "), Qt::SkipEmptyParts))
    if (const auto mark = fit::markFromCode(utf8(one))) names << MarkWords::brief(*mark);
  return names.join(QStringLiteral(", "));
}

QString nameOf(const SheetDifference& d) {
  const QString item = PlainWords::text(d.item);
  switch (d.field) {
    case SheetField::id:
      return SheetWords::tr("Short name");
    case SheetField::name:
      return SheetWords::tr("Name");
    case SheetField::size:
      return SheetWords::tr("Size");
    case SheetField::sizeLow:
      return SheetWords::tr("Size %1, low end").arg(item);
    case SheetField::sizeHigh:
      return SheetWords::tr("Size %1, high end").arg(item);
    case SheetField::sizeOrder:
      return SheetWords::tr("Order of sizes");
    case SheetField::port:
      return SheetWords::tr("Air");
    case SheetField::airStart:
      return SheetWords::tr("Air at %1, start").arg(SheetWords::port(d.item));
    case SheetField::airLow:
      return SheetWords::tr("Air at %1, low end").arg(SheetWords::port(d.item));
    case SheetField::airHigh:
      return SheetWords::tr("Air at %1, high end").arg(SheetWords::port(d.item));
    case SheetField::pads:
    case SheetField::padSteps:
      return SheetWords::padSet(d.item);
    case SheetField::padFitted:
      return SheetWords::tr("%1 as delivered").arg(SheetWords::padSet(d.item));
    case SheetField::browLow:
      return SheetWords::tr("Brow gap, low end");
    case SheetField::browHigh:
      return SheetWords::tr("Brow gap, high end");
    case SheetField::strapPoints:
      return SheetWords::tr("Strap points");
    case SheetField::certificationMonths:
      return SheetWords::tr("Certified for");
    case SheetField::ageLimitMonths:
      return SheetWords::tr("Age limit");
    case SheetField::changeAllowance:
      return SheetWords::tr("Move of air that calls for a look");
    case SheetField::leakPerWeek:
      return SheetWords::tr("Loss in a week that is no leak");
    case SheetField::fittingOrder:
      return SheetWords::tr("Order of setting");
    case SheetField::markOrder:
      return SheetWords::tr("Order of the marks");
    case SheetField::question:
      return SheetWords::tr("Question %1").arg(item);
    case SheetField::questionIfNo:
      return SheetWords::tr("Question %1, the reason if no").arg(item);
    case SheetField::questionOrder:
      return SheetWords::tr("Order of questions");
    case SheetField::cautions:
      return SheetWords::tr("Cautions");
  }
  return {};
}

QStringList reasonsOf(const season::DueRow& row, const Speech& speech) {
  QStringList words;
  for (const season::DueReason& reason : row.reasons) words << DueWords::reason(reason, speech);
  return words;
}

// The lane with its first reason where that changes, else what joins or leaves the reasons, else when it is due.
QStringList rowEffects(const season::BeforeAfter<season::DueRow>& row, const Speech& speech) {
  const QString before = SheetWords::row(row.before, speech), after = SheetWords::row(row.after, speech);
  if (before != after) return {SheetWords::tr("%1. Before: %2", "what the board will say, what it says now").arg(after, before)};
  const QStringList was = reasonsOf(row.before, speech), is = reasonsOf(row.after, speech);
  QStringList words;
  for (const QString& one : is)
    if (!was.contains(one)) words << SheetWords::tr("Also: %1", "a reason of the board").arg(one);
  for (const QString& one : was)
    if (!is.contains(one)) words << SheetWords::tr("No longer: %1", "a reason of the board").arg(one);
  if (words.isEmpty()) {
    words << SheetWords::tr("Due %1, before %2")
                 .arg(PlainWords::dueDay(row.after.dueBy, speech.today), PlainWords::dueDay(row.before.dueBy, speech.today));
  }
  return words;
}

QString dayText(const std::optional<Day>& day) { return day ? dayWords(*day) : SheetWords::tr("not known"); }

QString oddsText(const std::optional<double>& odds) { return odds ? PlainWords::percent(*odds) : SheetWords::tr("not on the chart"); }

}  // namespace

QString SheetWords::difference(const SheetDifference& d, UnitSystem units) {
  const QString what = nameOf(d);
  if (const auto unit = gear::unitOf(d.field)) {
    const auto words = [&](const gear::Figure& value) { return value ? figure(*value, *unit, units) : QString(); };
    const auto both = [&](const QString& from, const QString& to) { return change(what, from, to); };
    if (d.field == SheetField::ageLimitMonths) {
      const auto age = [&](const gear::Figure& value) { return value.value_or(0) == 0 ? tr("none stated") : words(value); };
      return both(age(d.from), age(d.to));
    }
    // Too near one another to tell in the units chosen: then in those that are kept.
    const bool isTold = !d.from || !d.to || words(d.from) != words(d.to);
    return isTold ? both(words(d.from), words(d.to))
                  : both(figure(*d.from, *unit, UnitSystem::metric), figure(*d.to, *unit, UnitSystem::metric));
  }
  switch (d.field) {
    case SheetField::port:
      return change(what, SheetWords::port(d.before), SheetWords::port(d.after));
    case SheetField::pads:
    case SheetField::padSteps:
      return change(what, stepsText(d.before, units), stepsText(d.after, units));
    case SheetField::fittingOrder:
      return change(what, orderText(d.before), orderText(d.after));
    case SheetField::markOrder:
      return change(what, marksText(d.before), marksText(d.after));
    case SheetField::id:
    case SheetField::name:
    case SheetField::size:
    case SheetField::sizeLow:
    case SheetField::sizeHigh:
    case SheetField::sizeOrder:
    case SheetField::airStart:
    case SheetField::airLow:
    case SheetField::airHigh:
    case SheetField::padFitted:
    case SheetField::browLow:
    case SheetField::browHigh:
    case SheetField::strapPoints:
    case SheetField::certificationMonths:
    case SheetField::ageLimitMonths:
    case SheetField::changeAllowance:
    case SheetField::leakPerWeek:
    case SheetField::question:
    case SheetField::questionIfNo:
    case SheetField::questionOrder:
    case SheetField::cautions:
      break;
  }
  return change(what, PlainWords::text(d.before), PlainWords::text(d.after));
}

QString SheetWords::row(const season::DueRow& row, const Speech& speech) {
  const QString lane = DueWords::lane(row.lane);
  return row.reasons.empty() ? lane
                             : tr("%1: %2", "a lane of the board, its reason").arg(lane, DueWords::reason(row.reasons.front(), speech));
}

QStringList SheetWords::effects(const season::UnitEffect& effect, Day today) {
  QStringList words;
  if (effect.isSizeGone) words << tr("Size %1 is not on the new chart").arg(PlainWords::text(effect.size));
  if (effect.lastGood.isChanged()) {
    words << tr("Label good to %1, before to %2").arg(dayText(effect.lastGood.after), dayText(effect.lastGood.before));
    if (effect.lastGood.after && *effect.lastGood.after < today && effect.lastGood.before && *effect.lastGood.before >= today)
      words << tr("Out of date by it");
    if (effect.lastGood.before && *effect.lastGood.before < today && effect.lastGood.after && *effect.lastGood.after >= today)
      words << tr("In date again by it");
  }
  if (effect.lastByAge.isChanged()) {
    words << (effect.lastByAge.after ? tr("Too old after %1").arg(dayWords(*effect.lastByAge.after)) : tr("No age limit any more"));
  }
  if (!effect.ports.empty()) {
    QStringList places;
    for (const gear::Port port : effect.ports) places << MarkWords::port(port);
    words << tr("Other air at %1", "places").arg(PlainWords::list(places));
  }
  return words;
}

QStringList SheetWords::effects(const season::AthleteEffect& effect, const season::SheetChange& change, const Speech& speech) {
  QStringList words;
  if (effect.row.isChanged()) words << rowEffects(effect.row, speech);
  if (oddsText(effect.odds.after) != oddsText(effect.odds.before))
    words << tr("Size worn: %1 likely, before %2").arg(oddsText(effect.odds.after), oddsText(effect.odds.before));
  for (const season::UnitEffect& unit : change.units)
    if (unit.unit == effect.unit) words << effects(unit, speech.today);
  if (!effect.openCheck.empty()) words << tr("The check that is open goes on by the sheet it began with");
  return words;
}

}  // namespace snugline::models
