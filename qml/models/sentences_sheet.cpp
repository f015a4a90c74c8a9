// SPDX-License-Identifier: Apache-2.0
// Model sheets: figures, places and faults.
#include "qml/models/sentences_sheet.h"

#include "core/gear/sheet_figure.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {

// "/sizes/2/low_um" -> {"sizes", "2", "low_um"}.
QStringList partsOf(const std::string& path) { return text(path).split(QLatin1Char('/'), Qt::SkipEmptyParts); }

QString endOf(const QString& key) {
  if (key == QLatin1String("name")) return SheetWords::tr("name");
  if (key.startsWith(QLatin1String("low_"))) return SheetWords::tr("low end");
  if (key.startsWith(QLatin1String("high_"))) return SheetWords::tr("high end");
  if (key == QLatin1String("start_pa")) return SheetWords::tr("start");
  if (key == QLatin1String("port")) return SheetWords::tr("place of the air");
  if (key == QLatin1String("fitted_um")) return SheetWords::tr("as delivered");
  if (key == QLatin1String("steps_um")) return SheetWords::tr("thicknesses");
  if (key == QLatin1String("id")) return SheetWords::tr("short name");
  if (key == QLatin1String("ask")) return SheetWords::tr("what it asks");
  if (key == QLatin1String("if_no")) return SheetWords::tr("the reason if no");
  return key;
}

QString plainPlace(const QString& key) {
  if (key == QLatin1String("id")) return SheetWords::tr("Short name");
  if (key == QLatin1String("name")) return SheetWords::tr("Name");
  if (key == QLatin1String("sizes")) return SheetWords::tr("Sizes");
  if (key == QLatin1String("air")) return SheetWords::tr("Air");
  if (key == QLatin1String("jaw_pads")) return SheetWords::tr("Jaw pads");
  if (key == QLatin1String("crown_pads")) return SheetWords::tr("Crown pads");
  if (key == QLatin1String("brow_low_um")) return SheetWords::tr("Brow gap, low end");
  if (key == QLatin1String("brow_high_um")) return SheetWords::tr("Brow gap, high end");
  if (key == QLatin1String("strap_points")) return SheetWords::tr("Strap points");
  if (key == QLatin1String("certification_months")) return SheetWords::tr("Certified for");
  if (key == QLatin1String("age_limit_months")) return SheetWords::tr("Age limit");
  if (key == QLatin1String("change_allowance_pa")) return SheetWords::tr("Move of air that calls for a look");
  if (key == QLatin1String("leak_per_week_pa")) return SheetWords::tr("Loss in a week that is no leak");
  if (key == QLatin1String("fitting_order")) return SheetWords::tr("Order of setting");
  if (key == QLatin1String("mark_order")) return SheetWords::tr("Order of the marks");
  if (key == QLatin1String("questions")) return SheetWords::tr("Questions");
  if (key == QLatin1String("cautions")) return SheetWords::tr("Cautions");
  return key;
}

QString ends(const gear::SheetFault& fault, UnitSystem units) {
  const auto range = gear::figureRange(fault.path);
  const gear::FigureUnit unit = range ? range->unit : gear::FigureUnit::months;
  return SheetWords::tr("From %1 to %2").arg(SheetWords::figure(fault.lowest, unit, units), SheetWords::figure(fault.highest, unit, units));
}

}  // namespace

QString SheetWords::figure(std::int64_t value, gear::FigureUnit unit, UnitSystem units) {
  switch (unit) {
    case gear::FigureUnit::um:
    case gear::FigureUnit::pa:
      return text(gear::printFigure(value, unit, units));
    case gear::FigureUnit::months:
      return tr("%n month(s)", nullptr, static_cast<int>(value));
    case gear::FigureUnit::points:
      return tr("%n point(s)", nullptr, static_cast<int>(value));
  }
  return {};
}

QString SheetWords::kept(std::int64_t value, gear::FigureUnit unit, UnitSystem units) {
  if (gear::isPrintedWhole(value, unit, units)) return {};
  return tr("Kept as %1").arg(figure(value, unit, UnitSystem::metric));
}

QString SheetWords::port(const std::string& code) {
  const auto known = gear::portFromCode(code);
  return known ? MarkWords::port(*known) : text(code);
}

QString SheetWords::padSet(const std::string& item) { return item == "jaw" ? tr("Jaw pads") : tr("Crown pads"); }

QString SheetWords::place(const gear::SheetDraft& draft, const std::string& path) {
  const QStringList parts = partsOf(path);
  if (parts.isEmpty()) return {};
  if (parts.size() == 1) return plainPlace(parts.front());
  bool isEntry = false;
  const std::size_t at = parts[1].toUInt(&isEntry);
  const QString end = parts.size() > 2 ? endOf(parts[2]) : QString();
  if (parts.front() == QLatin1String("sizes") && isEntry) {
    const bool isNamed = at < draft.sizes.size() && !draft.sizes[at].name.empty();
    const QString which = isNamed ? tr("Size %1").arg(PlainWords::text(draft.sizes[at].name)) : tr("Size no. %1").arg(at + 1);
    return end.isEmpty() ? which : tr("%1, %2", "which size or port, which value").arg(which, end);
  }
  if (parts.front() == QLatin1String("air") && isEntry) {
    const bool isNamed = at < draft.air.size() && draft.air[at].port;
    const QString which = isNamed ? tr("Air at %1").arg(MarkWords::port(*draft.air[at].port)) : tr("Air no. %1").arg(at + 1);
    return end.isEmpty() ? which : tr("%1, %2", "which size or port, which value").arg(which, end);
  }
  if (parts.front() == QLatin1String("questions") && isEntry)
    return tr("%1, %2", "which size or port, which value").arg(tr("Question %1").arg(at + 1), end);
  if (parts.front() == QLatin1String("fitting_order") || parts.front() == QLatin1String("mark_order"))
    return tr("%1, no. %2", "a list, which entry").arg(plainPlace(parts.front())).arg(at + 1);
  const QString which = plainPlace(parts.front());
  return parts.size() > 2 ? tr("%1, no. %2", "a list, which entry").arg(which).arg(parts[2].toInt() + 1)
                          : tr("%1, %2", "which size or port, which value").arg(which, endOf(parts[1]));
}

QString SheetWords::fault(const gear::SheetFault& fault, UnitSystem units) {
  switch (fault.rule) {
    case gear::SheetRule::missing:
      return tr("Not said yet");
    case gear::SheetRule::range:
      return ends(fault, units);
    case gear::SheetRule::characters:
      return tr("At most %n character(s)", nullptr, static_cast<int>(fault.highest));
    case gear::SheetRule::entries:
      return fault.lowest > 0 ? tr("From %1 to %2 of them").arg(fault.lowest).arg(fault.highest)
                              : tr("At most %1 of them").arg(fault.highest);
    case gear::SheetRule::form:
      return fault.code == ErrorCode::unknownKey ? tr("Not an entry of a model sheet") : tr("Cannot be read (%1)").arg(text(fault.detail));
    case gear::SheetRule::printable:
      return tr("Letters, digits and signs only, and not all blanks");
    case gear::SheetRule::idLetters:
      return tr("Small letters a to z, digits and - only");
    case gear::SheetRule::sizeNone:
      return tr("\"none\" means off the chart; another name");
    case gear::SheetRule::sizeTwice:
      return tr("Another size has this name");
    case gear::SheetRule::bandEnds:
      return tr("Ends where it begins, or before");
    case gear::SheetRule::bandBegins:
      return tr("Must begin above where the size before it begins");
    case gear::SheetRule::bandEndsTooLow:
      return tr("Must end above where the size before it ends");
    case gear::SheetRule::bandReachesOver:
      return tr("Reaches past its neighbour into the size before that");
    case gear::SheetRule::portTwice:
      return tr("This place has air already");
    case gear::SheetRule::startOutside:
      return tr("The start lies outside the band");
    case gear::SheetRule::jawPair:
      return tr("Air in the jaw comes left and right");
    case gear::SheetRule::padsBesideAir:
      return tr("The jaw has air or pads by thickness, not both");
    case gear::SheetRule::stepNotThicker:
      return tr("Must be thicker than the one before it");
    case gear::SheetRule::fittedNoStep:
      return tr("None of the thicknesses above");
    case gear::SheetRule::browEnds:
      return tr("Must lie above the low end");
    case gear::SheetRule::browAboveTarget:
      return tr("Must not lie above the target, %1").arg(figure(fit::kBrowTarget.um, gear::FigureUnit::um, units));
    case gear::SheetRule::browBelowTarget:
      return tr("Must not lie below the target, %1").arg(figure(fit::kBrowTarget.um, gear::FigureUnit::um, units));
    case gear::SheetRule::strapCount:
      return tr("Four or six");
    case gear::SheetRule::noAir:
      return tr("Only where there is air");
    case gear::SheetRule::orderNoPort:
      return tr("There is no air here");
    case gear::SheetRule::orderTwice:
      return tr("Named twice");
    case gear::SheetRule::orderLeavesOut:
      return tr("A place with air is left out");
    case gear::SheetRule::questionTaken:
      return tr("A mark, a point or a step of the guide has this name");
    case gear::SheetRule::questionTwice:
      return tr("Another question has this name");
  }
  return {};
}

QString SheetWords::air(const gear::ModelSheet& sheet) {
  QStringList places;
  for (const gear::AirPort& port : sheet.air) {
    if (port.port == gear::Port::jawRight) continue;  // comes with the left
    places << (port.port == gear::Port::jawLeft ? tr("jaw") : MarkWords::port(port.port));
  }
  return places.isEmpty() ? tr("no air") : tr("air: %1", "places").arg(places.join(QStringLiteral(", ")));
}

QString SheetWords::sizes(const gear::ModelSheet& sheet) {
  QStringList names;
  for (const gear::SizeBand& band : sheet.sizes) names << PlainWords::text(band.name);
  return names.join(QStringLiteral(", "));
}

QString SheetWords::steps(const gear::PadSet& pads, UnitSystem units) {
  QStringList steps;
  for (const Length& step : pads.steps) steps << figure(step.um, gear::FigureUnit::um, units);
  if (steps.size() == 1) return tr("%1, not swapped by thickness").arg(steps.front());
  return tr("%1; %2 as delivered").arg(steps.join(QStringLiteral(", ")), steps.value(static_cast<qsizetype>(pads.fitted)));
}

QString SheetWords::order(const std::vector<gear::Port>& ports) {
  QStringList names;
  for (const gear::Port port : ports) names << MarkWords::port(port);
  return names.join(tr(", then ", "between places with air"));
}

}  // namespace snugline::models
