// SPDX-License-Identifier: Apache-2.0
// The arithmetic behind a leak, in plain numbers: each reading and what it is carried to, the median of the slopes, its interval, and what
// the sheet allows.
#include <algorithm>
#include <cmath>

#include "core/season/season_air.h"
#include "sentences_air.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

struct LeakWords {
  Q_DECLARE_TR_FUNCTIONS(AirWhy)
};

QVariantMap line(const QString& name, const QString& value, const QString& how = {}) {
  return {{QStringLiteral("name"), name}, {QStringLiteral("value"), value}, {QStringLiteral("how"), how}};
}
QString shown(double pa, UnitSystem units) {
  return PlainWords::text(print(Pressure{std::llround(pa)}, units)).replace(QLatin1Char('-'), QStringLiteral("\u2212"));
}
// From where there is no warmth, as the ratio of the gas law needs it.
QString warmth(std::int64_t mk, UnitSystem units) {
  const double kelvin = static_cast<double>(mk) / 1000.0;
  return units == UnitSystem::metric ? LeakWords::tr("%1 K").arg(kelvin, 0, 'f', 1) : LeakWords::tr("%1 °R").arg(kelvin * 1.8, 0, 'f', 1);
}
QString carrying(const season::AirEvent& event, UnitSystem units) {
  const std::int64_t ambient = event.climate.ambientPa != 0 ? event.climate.ambientPa : air::kStandardAtmosphere.pa;
  return LeakWords::tr("(%1 + %2) × %3 / %4 − %5", "gauge, ambient, kelvin of 20 C, kelvin then, one standard atmosphere")
      .arg(shown(static_cast<double>(event.gauge->pa), units), shown(static_cast<double>(ambient), units),
           warmth(air::kReferenceTemperature.mk, units), warmth(event.climate.temperatureMk, units),
           shown(static_cast<double>(air::kStandardAtmosphere.pa), units));
}
QString whyLeft(air::LeftOut why) {
  switch (why) {
    case air::LeftOut::notInOrder:
      return LeakWords::tr("Left out: older than one before it");
    case air::LeftOut::beforeRefill:
      return LeakWords::tr("Left out: older than the last filling");
    case air::LeftOut::notBelieved:
      return LeakWords::tr("Left out: no weather was noted with it");
    case air::LeftOut::onlyOne:
      return LeakWords::tr("Left out: alone since a filling");
    case air::LeftOut::beyondTheMost:
      return LeakWords::tr("Left out: too long ago");
  }
  return {};
}

QVariantMap part(const QString& title, const QVariantList& lines, const QString& tone = {}) {
  return {{QStringLiteral("title"), title}, {QStringLiteral("lines"), lines}, {QStringLiteral("tone"), tone}};
}

}  // namespace

QVariantMap leakWhy(const season::Views& views, const season::UnitRecord& unit, gear::Port port, UnitSystem units, Instant at) {
  const Day today = dayOf(at);
  const season::RecentAir recent = season::recentAirOf(views, unit, port);
  const air::Leak& leak = recent.leak;
  if (leak.readings.empty()) return {};
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  const Pressure allowance = sheet != nullptr && sheet->leakPerWeek.pa > 0 ? sheet->leakPerWeek : air::kLeakAllowanceUnsaid;
  QVariantMap why;
  QVariantList parts;
  why.insert(QStringLiteral("title"), LeakWords::tr("Why: %1 air", "of a bladder").arg(PlainWords::sentenceCase(MarkWords::port(port))));
  why.insert(QStringLiteral("sentence"), AirWords::leak(leak, allowance, units));
  why.insert(QStringLiteral("tone"), leak.isLeaking ? QStringLiteral("see") : QStringLiteral("plain"));

  // Newest first; the newest one shows how it is carried, the rest are done alike.
  QVariantList carried;
  for (std::size_t i = leak.readings.size(); i-- > 0;) {
    const air::CarriedReading& one = leak.readings[i];
    const season::AirEvent& event = *recent.events[one.index];
    const QString raw = shown(static_cast<double>(event.gauge->pa), units);
    const QString how = i + 1 == leak.readings.size()         ? carrying(event, units)
                        : event.kind == season::AirKind::read ? QString()
                                                              : LeakWords::tr("Filled or let out just before: a new run begins here");
    carried << line(LeakWords::tr("%1: %2", "a day, a pressure").arg(PlainWords::day(dayOf(one.at), today), raw), shown(one.pa, units),
                    how);
  }
  for (const air::LeftOutReading& left : leak.leftOut) {
    const season::AirEvent& event = *recent.events[left.index];
    if (!event.gauge) continue;
    carried << line(LeakWords::tr("%1: %2", "a day, a pressure")
                        .arg(PlainWords::day(dayOf(event.stamp.at), today), shown(static_cast<double>(event.gauge->pa), units)),
                    QStringLiteral("\u2013"), whyLeft(left.why));
  }
  parts << part(units == UnitSystem::metric ? LeakWords::tr("Each reading, carried to 20 °C at sea level")
                                            : LeakWords::tr("Each reading, carried to 68 °F at sea level"),
                carried);

  if (leak.hasSlope) {
    qlonglong pairs = 0;
    for (const air::LeakRun& run : leak.runs) pairs += static_cast<qlonglong>(run.count * (run.count - 1) / 2);
    QVariantList slope;
    const QString howSlope = leak.runs.size() == 1
                                 ? LeakWords::tr("The middle one of the slopes of all %1 pairs (Theil 1950, Sen 1968).").arg(pairs)
                                 : LeakWords::tr("The middle one of the slopes of all %1 pairs within %2 runs (Theil 1950, Sen 1968).")
                                       .arg(pairs)
                                       .arg(static_cast<qlonglong>(leak.runs.size()));
    slope << line(LeakWords::tr("A week"), shown(leak.paPerWeek, units), howSlope);
    if (leak.hasInterval)
      slope << line(LeakWords::tr("95 % interval"), LeakWords::tr("%1 to %2").arg(shown(leak.low, units), shown(leak.high, units)),
                    LeakWords::tr("By the ranks of the slopes (Sen 1968)."));
    parts << part(LeakWords::tr("The slope"), slope, QStringLiteral("info"));
  }
  QVariantList judged;
  judged << line(LeakWords::tr("Loss that is allowed in a week"), shown(static_cast<double>(allowance.pa), units),
                 !leak.hasInterval ? LeakWords::tr("Nothing is called a leak without an interval.")
                 : leak.isLeaking  ? LeakWords::tr("All of the interval loses more than that.")
                                   : LeakWords::tr("Not all of the interval loses more than that."));
  parts << part(sheet == nullptr ? LeakWords::tr("No model sheet") : PlainWords::text(sheet->name), judged,
                leak.isLeaking ? QStringLiteral("see") : QString());
  why.insert(QStringLiteral("parts"), parts);
  why.insert(QStringLiteral("advice"), leak.isLeaking
                                           ? LeakWords::tr("Fill it, see the marks again, and look at the valve and the bladder. What "
                                                           "goes on losing air needs a repair by the maker's instructions.")
                                           : QString());
  why.insert(QStringLiteral("caution"), GuideWords::caution(sheet));
  return why;
}

}  // namespace snugline::models
