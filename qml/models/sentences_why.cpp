// SPDX-License-Identifier: Apache-2.0
// The arithmetic behind an air reason, in plain numbers: what was set and when, what it is now, both bounds, and what the sheet allows.
#include <algorithm>
#include <cmath>

#include "core/air/bladder.h"
#include "core/season/board_reasons.h"
#include "core/season/season_air.h"
#include "sentences_air.h"
#include "sentences_gear.h"
#include "why_parts.h"

namespace snugline::models {

namespace {

using namespace why;
using season::AirEvent;
using season::Climate;

Temperature temperatureOf(const Climate& c) { return Temperature::millikelvin(c.temperatureMk); }
Pressure ambientOf(const Climate& c) { return Pressure::pascals(c.ambientPa); }

const AirEvent* lastReading(const season::UnitRecord& unit, gear::Port port) {
  for (std::size_t i = unit.air.size(); i > unit.airFrom; --i) {
    const AirEvent& event = unit.air[i - 1];
    if (event.port == port && event.gauge) return &event;
  }
  return nullptr;
}

}  // namespace

QVariantMap airWhy(const season::Views& views, const season::AthleteRecord* athlete, const season::UnitRecord& unit, gear::Port port,
                   const season::Conditions& now, UnitSystem units, Instant at) {
  const Day today = dayOf(at);
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  const gear::AirPort* limits = sheet == nullptr ? nullptr : sheet->airAt(port);
  if (limits == nullptr) return {};
  QVariantMap why;
  QVariantList parts;
  const QString name = PlainWords::sentenceCase(MarkWords::port(port));
  why.insert(QStringLiteral("title"), WhyWords::tr("Why: %1 air", "of a bladder").arg(name));

  // What it was.
  const AirEvent* reading = lastReading(unit, port);
  QVariantList was;
  if (reading != nullptr) {
    const QString when =
        WhyWords::tr("%1, %2", "when, by what").arg(timeWords(reading->stamp.at, today), AirWords::source(reading->source));
    was << line(reading->kind == season::AirKind::read ? WhyWords::tr("Read on the gauge") : WhyWords::tr("Set to"),
                plain(*reading->gauge, units), when);
    if (reading->climate.temperatureMk != 0) was << line(WhyWords::tr("Temperature then"), plain(temperatureOf(reading->climate), units));
    if (reading->climate.ambientPa != 0)
      was << line(WhyWords::tr("Air around it then, absolute"), plain(ambientOf(reading->climate), units));
  } else {
    was << line(WhyWords::tr("Never measured; the sheet starts at"), plain(limits->start, units));
  }
  parts << part(WhyWords::tr("What it was"), was);

  // From where the board judges: the marks as last seen in this helmet, a reading of another day carried there first.
  season::MarksSeen seen;
  const season::DueContext context = season::contextOf(views, {at});
  season::Standing standing;
  if (athlete != nullptr) {
    standing = season::standingOf(context, *athlete);
    if (standing.unit == &unit) seen = season::marksSeen(standing);
  }
  const season::AirWatch watch = season::watchOf(unit, *sheet, seen);
  const season::PortWatch* base = nullptr;
  for (std::size_t i = 0; i < watch.count; ++i)
    if (watch.ports[i].port == port) base = &watch.ports[i];
  if (base == nullptr) return {};
  if (seen.stamp != nullptr && seen.climate.isKnown()) {
    const bool isInLine = std::any_of(athlete->lines.begin(), athlete->lines.end(), [&](const auto& l) { return &l.stamp == seen.stamp; });
    QVariantList lines{line(isInLine ? WhyWords::tr("Seen in the line") : WhyWords::tr("Marks seen"), timeWords(seen.stamp->at, today))};
    if (seen.climate.temperatureMk != 0) lines << line(WhyWords::tr("Temperature then"), plain(temperatureOf(seen.climate), units));
    if (seen.climate.ambientPa != 0) lines << line(WhyWords::tr("Air around it then, absolute"), plain(ambientOf(seen.climate), units));
    if (base->isMeasured && reading != nullptr && base->gaugePa != reading->gauge->pa)
      lines << line(WhyWords::tr("Its air then, worked out"), plain(Pressure::pascals(base->gaugePa), units),
                    WhyWords::tr("As a bladder that keeps its room."));
    parts << part(WhyWords::tr("When the marks were last seen"), lines);
  }

  const auto noted = season::ambientOf(now);
  QVariantList nowLines;
  if (now.temperature) nowLines << line(WhyWords::tr("Temperature"), plain(*now.temperature, units), AirWords::place(now));
  if (noted)
    nowLines << line(WhyWords::tr("Air around it, absolute"), plain(*noted, units),
                     now.ambient ? WhyWords::tr("By the barometer of this device.")
                                 : WhyWords::tr("By the elevation, %1, in a standard atmosphere (US Standard Atmosphere 1976).")
                                       .arg(PlainWords::text(print(*now.elevation, units))));
  if (!nowLines.isEmpty()) parts << part(WhyWords::tr("Now"), nowLines);

  const Climate climate = season::climateOf(now);
  const bool isTemperatureKnown = climate.temperatureMk != 0 && base->seen.temperatureMk != 0;
  const bool isAmbientKnown = climate.ambientPa != 0 && base->seen.ambientPa != 0;
  if (!isTemperatureKnown && !isAmbientKnown) {
    why.insert(QStringLiteral("sentence"),
               climate.isKnown() ? WhyWords::tr("No weather was noted when its air was set, so that nothing can be worked out.")
                                 : WhyWords::tr("Weather is not noted, so that nothing can be worked out."));
    why.insert(QStringLiteral("tone"), QStringLiteral("plain"));
    why.insert(QStringLiteral("parts"), parts);
    return why;
  }
  // What is not known on one side is as on the other, as the board takes it.
  const auto known = [](std::int32_t one, std::int32_t other, std::int64_t neither) {
    return one != 0 ? one : other != 0 ? other : neither;
  };
  const auto then = Temperature::millikelvin(known(base->seen.temperatureMk, climate.temperatureMk, air::kReferenceTemperature.mk));
  const auto warmth = Temperature::millikelvin(known(climate.temperatureMk, base->seen.temperatureMk, air::kReferenceTemperature.mk));
  const auto ambientThen = Pressure::pascals(known(base->seen.ambientPa, climate.ambientPa, air::kStandardAtmosphere.pa));
  const auto ambientNow = Pressure::pascals(known(climate.ambientPa, base->seen.ambientPa, air::kStandardAtmosphere.pa));
  const auto start = Pressure::pascals(base->gaugePa);
  const air::SeenAir from{base->isMeasured ? std::optional(start) : std::nullopt, then, ambientThen};

  const air::Judgement judged = air::judge(*limits, sheet->changeAllowance, from, warmth, ambientNow);
  const air::Foresight& f = judged.since;
  const QString rigid =
      WhyWords::tr("(%1 + %2) × %3 / %4 − %5", "gauge, ambient then, kelvin now, kelvin then, ambient now")
          .arg(plain(start, units), plain(ambientThen, units), fromZero(warmth, units), fromZero(then, units), plain(ambientNow, units));
  const double percent = f.volumeRatio * 100.0;
  QVariantList bounds;
  bounds << line(WhyWords::tr("If the bladder keeps its room"), plain(f.gauge, units),
                 f.isBelowZero() ? WhyWords::tr("%1. Below zero: no air is left to hold it.").arg(rigid) : rigid);
  bounds << line(
      WhyWords::tr("If it gives way and keeps its pressure"), WhyWords::tr("%1 % of its room").arg(percent, 0, 'f', 1),
      WhyWords::tr("%1 / %2 × (%3 + %4) / (%3 + %5)", "kelvin now, kelvin then, gauge, ambient then, ambient now")
          .arg(fromZero(warmth, units), fromZero(then, units), plain(start, units), plain(ambientThen, units), plain(ambientNow, units)));
  parts << part(WhyWords::tr("Two bounds. The truth lies between them."), bounds, QStringLiteral("info"));

  QVariantList moves;
  moves << line(WhyWords::tr("Moved since"), AirWords::signedExact(f.change, units),
                WhyWords::tr("%1 by the temperature, %2 by the elevation")
                    .arg(AirWords::signedExact(f.byTemperature, units), AirWords::signedExact(f.byElevation, units)));
  moves << line(WhyWords::tr("The model sheet allows"), plain(sheet->changeAllowance, units),
                judged.movesTooMuch ? WhyWords::tr("Moved more than that.") : WhyWords::tr("Within that."));
  moves << line(WhyWords::tr("Band of the sheet"), WhyWords::tr("%1 to %2").arg(plain(limits->low, units), plain(limits->high, units)),
                !judged.isMeasured  ? WhyWords::tr("Never measured: only the move is judged.")
                : judged.leavesBand ? WhyWords::tr("The first bound has left it.")
                                    : WhyWords::tr("The first bound has not left it."));
  parts << part(PlainWords::text(sheet->name), moves, judged.calls() ? QStringLiteral("see") : QString());

  const QString amount = AirWords::about(f.change, units);
  QString sentence = f.isBelowZero()   ? WhyWords::tr("%1: no air left to hold it at %2").arg(name, plain(warmth, units))
                     : f.change.pa < 0 ? WhyWords::tr("%1 air %2 down at %3").arg(name, amount, AirWords::figures(now, units))
                                       : WhyWords::tr("%1 air %2 up at %3").arg(name, amount, AirWords::figures(now, units));
  why.insert(QStringLiteral("sentence"), sentence);
  why.insert(QStringLiteral("tone"), judged.calls() ? QStringLiteral("see") : QStringLiteral("plain"));
  why.insert(QStringLiteral("parts"), parts);
  why.insert(QStringLiteral("advice"),
             judged.calls()
                 ? WhyWords::tr("Bring the helmet to room temperature before changing its air. Air changed in the cold is seen again warm.")
                 : QString());
  why.insert(QStringLiteral("caution"), GuideWords::caution(sheet));
  return why;
}

}  // namespace snugline::models
