// SPDX-License-Identifier: Apache-2.0
// The arithmetic behind a leak, in plain numbers: each reading and what it is carried to, the median of the slopes, its interval, and what
// the sheet allows.
#include <algorithm>
#include <cmath>

#include "core/season/season_air.h"
#include "sentences_air.h"
#include "sentences_gear.h"
#include "why_parts.h"

namespace snugline::models {

namespace {

using namespace why;

QString shown(double pa, UnitSystem units) { return plain(Pressure{std::llround(pa)}, units); }
QString carrying(const season::AirEvent& event, UnitSystem units) {
  const std::int64_t ambient = event.climate.ambientPa != 0 ? event.climate.ambientPa : air::kStandardAtmosphere.pa;
  return WhyWords::tr("(%1 + %2) × %3 / %4 − %5", "gauge, ambient, kelvin of 20 C, kelvin then, one standard atmosphere")
      .arg(shown(static_cast<double>(event.gauge->pa), units), shown(static_cast<double>(ambient), units),
           fromZero(air::kReferenceTemperature, units), fromZero(Temperature::millikelvin(event.climate.temperatureMk), units),
           shown(static_cast<double>(air::kStandardAtmosphere.pa), units));
}
QString whyLeft(air::LeftOut why) {
  switch (why) {
    case air::LeftOut::notInOrder:
      return WhyWords::tr("Left out: older than one before it");
    case air::LeftOut::beforeRefill:
      return WhyWords::tr("Left out: older than the last filling");
    case air::LeftOut::notBelieved:
      return WhyWords::tr("Left out: no weather was noted with it");
    case air::LeftOut::onlyOne:
      return WhyWords::tr("Left out: alone since a filling");
    case air::LeftOut::beyondTheMost:
      return WhyWords::tr("Left out: too long ago");
  }
  return {};
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
  why.insert(QStringLiteral("title"), WhyWords::tr("Why: %1 air", "of a bladder").arg(PlainWords::sentenceCase(MarkWords::port(port))));
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
                                                              : WhyWords::tr("Filled or let out just before: a new run begins here");
    carried << line(WhyWords::tr("%1: %2", "a day, a pressure").arg(PlainWords::day(dayOf(one.at), today), raw), shown(one.pa, units), how);
  }
  for (const air::LeftOutReading& left : leak.leftOut) {
    const season::AirEvent& event = *recent.events[left.index];
    if (!event.gauge) continue;
    carried << line(WhyWords::tr("%1: %2", "a day, a pressure")
                        .arg(PlainWords::day(dayOf(event.stamp.at), today), shown(static_cast<double>(event.gauge->pa), units)),
                    QStringLiteral("\u2013"), whyLeft(left.why));
  }
  parts << part(units == UnitSystem::metric ? WhyWords::tr("Each reading, carried to 20 °C at sea level")
                                            : WhyWords::tr("Each reading, carried to 68 °F at sea level"),
                carried);

  if (leak.hasSlope) {
    qlonglong pairs = 0;
    for (const air::LeakRun& run : leak.runs) pairs += static_cast<qlonglong>(run.count * (run.count - 1) / 2);
    QVariantList slope;
    const QString howSlope = leak.runs.size() == 1
                                 ? WhyWords::tr("The middle one of the slopes of all %1 pairs (Theil 1950, Sen 1968).").arg(pairs)
                                 : WhyWords::tr("The middle one of the slopes of all %1 pairs within %2 runs (Theil 1950, Sen 1968).")
                                       .arg(pairs)
                                       .arg(static_cast<qlonglong>(leak.runs.size()));
    slope << line(WhyWords::tr("A week"), shown(leak.paPerWeek, units), howSlope);
    if (leak.hasInterval)
      slope << line(WhyWords::tr("95 % interval"), WhyWords::tr("%1 to %2").arg(shown(leak.low, units), shown(leak.high, units)),
                    WhyWords::tr("By the ranks of the slopes (Sen 1968)."));
    parts << part(WhyWords::tr("The slope"), slope, QStringLiteral("info"));
  }
  QVariantList judged;
  judged << line(WhyWords::tr("Loss that is allowed in a week"), shown(static_cast<double>(allowance.pa), units),
                 !leak.hasInterval ? WhyWords::tr("Nothing is called a leak without an interval.")
                 : leak.isLeaking  ? WhyWords::tr("All of the interval loses more than that.")
                                   : WhyWords::tr("Not all of the interval loses more than that."));
  parts << part(sheet == nullptr ? WhyWords::tr("No model sheet") : PlainWords::text(sheet->name), judged,
                leak.isLeaking ? QStringLiteral("see") : QString());
  why.insert(QStringLiteral("parts"), parts);
  why.insert(QStringLiteral("advice"), leak.isLeaking
                                           ? WhyWords::tr("Fill it, see the marks again, and look at the valve and the bladder. What "
                                                          "goes on losing air needs a repair by the maker's instructions.")
                                           : QString());
  why.insert(QStringLiteral("caution"), GuideWords::caution(sheet));
  return why;
}

}  // namespace snugline::models
