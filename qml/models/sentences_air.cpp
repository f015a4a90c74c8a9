// SPDX-License-Identifier: Apache-2.0
#include "sentences_air.h"

#include <cmath>
#include <cstdlib>

namespace snugline::models {

using season::AirCause;
using season::DueReason;

namespace {

constexpr double kPaPerKpa = 1000.0;

QString bladder(const DueReason& reason) {
  const QString port = reason.port ? PlainWords::sentenceCase(MarkWords::port(*reason.port)) : AirWords::tr("Helmet");
  return reason.count > 1 ? AirWords::tr("%1 air (and %n more)", "a bladder; so many others too", reason.count - 1).arg(port)
                          : AirWords::tr("%1 air", "of a bladder").arg(port);
}

// "at 4 °C", "at 1609 m", "at 4 °C and 1609 m": what moved it.
QString by(AirCause cause, const season::Conditions& now, UnitSystem units) {
  const QString temperature = now.temperature ? PlainWords::text(print(*now.temperature, units)) : QString();
  const QString elevation = now.elevation ? PlainWords::text(print(*now.elevation, units)) : QString();
  switch (cause) {
    case AirCause::cold:
    case AirCause::warm:
    case AirCause::afterCold:
      return temperature.isEmpty() ? QString() : AirWords::tr(" at %1", "a temperature").arg(temperature);
    case AirCause::altitude:
      return elevation.isEmpty() ? AirWords::tr(" up here") : AirWords::tr(" at %1", "an elevation").arg(elevation);
    case AirCause::both:
      if (temperature.isEmpty() || elevation.isEmpty()) return AirWords::tr(" in this weather");
      return AirWords::tr(" at %1 and %2", "temperature, elevation").arg(temperature, elevation);
    case AirCause::none:
    case AirCause::refilled:
      break;
  }
  return {};
}

}  // namespace

// Whole kilopascals and tenths of a psi: a forecast is not known better.
QString AirWords::about(Pressure amount, UnitSystem units) {
  const Pressure size{std::abs(amount.pa)};
  if (units == UnitSystem::metric) {
    const auto kpa = std::llround(static_cast<double>(size.pa) / kPaPerKpa);
    return kpa == 0 ? tr("less than 1 kPa") : tr("about %1 kPa").arg(kpa);
  }
  const double psi = std::round(size.psi() * 10.0) / 10.0;
  return psi < 0.1 ? tr("less than 0.1 psi") : tr("about %1 psi").arg(psi, 0, 'f', 1);
}

QString AirWords::signedExact(Pressure v, UnitSystem units) {
  const QString size = PlainWords::text(print(Pressure{std::abs(v.pa)}, units));
  return v.pa < 0 ? QStringLiteral("\u2212") + size : v.pa > 0 ? QStringLiteral("+") + size : size;
}

QString AirWords::whereabouts(season::Whereabouts w) {
  switch (w) {
    case season::Whereabouts::indoors:
      return tr("Indoors");
    case season::Whereabouts::outside:
      return tr("Outside");
    case season::Whereabouts::truck:
      return tr("In the truck");
  }
  return {};
}

QString AirWords::place(const season::Conditions& c) {
  QStringList parts;
  if (c.whereabouts) parts << whereabouts(*c.whereabouts);
  if (!c.place.empty()) parts << PlainWords::text(c.place);
  return parts.join(QStringLiteral(", "));
}

QString AirWords::figures(const season::Conditions& c, UnitSystem units) {
  QStringList parts;
  if (c.temperature) parts << PlainWords::text(print(*c.temperature, units)).replace(QLatin1Char('-'), QStringLiteral("\u2212"));
  if (c.elevation) parts << PlainWords::text(print(*c.elevation, units)).replace(QLatin1Char('-'), QStringLiteral("\u2212"));
  return parts.join(QStringLiteral(", "));
}

QString AirWords::noted(Instant at, Day today) {
  if (dayOf(at) == today) return tr("noted %1", "a time").arg(PlainWords::time(at));
  if (daysBetween(dayOf(at), today) == 1) return tr("noted yesterday");
  return tr("noted %1", "a day").arg(PlainWords::day(dayOf(at), today));
}

QString AirWords::changed(const DueReason& reason, const season::Conditions& now, UnitSystem units) {
  if (reason.cause == AirCause::refilled) return tr("%1 was filled and nobody has seen the marks since").arg(bladder(reason));
  if (reason.belowZero)
    return tr("%1: no air left to hold it%2", "a bladder; at what temperature").arg(bladder(reason), by(reason.cause, now, units));
  if (!reason.change) return tr("%1 has moved%2").arg(bladder(reason), by(reason.cause, now, units));
  const QString amount = about(*reason.change, units);
  QString words =
      reason.change->pa < 0
          ? tr("%1 %2 down%3", "a bladder; about so much; at what temperature").arg(bladder(reason), amount, by(reason.cause, now, units))
          : tr("%1 %2 up%3", "a bladder; about so much; at what temperature").arg(bladder(reason), amount, by(reason.cause, now, units));
  if (reason.cause == AirCause::afterCold) return tr("Fitted in the cold: %1").arg(words);
  if (!reason.air) words += tr(", never measured");
  return words;
}

QString AirWords::leaking(const DueReason& reason, UnitSystem units) {
  if (!reason.change) return tr("%1 leaks").arg(bladder(reason));
  const QString port = reason.port ? PlainWords::sentenceCase(MarkWords::port(*reason.port)) : tr("Helmet");
  return tr("%1 air leaks %2 a week, from %n readings", "a bladder; about so much", reason.count).arg(port, about(*reason.change, units));
}

QString AirWords::lineOff(const DueReason& reason) {
  if (!reason.mark) return tr("Seen off in the line");
  return tr("Seen in the line: %1").arg(MarkWords::found(*reason.mark, reason.finding, reason.side, fit::HoldHow::unsaid));
}

QString AirWords::leakRange(const air::Leak& leak, UnitSystem units) {
  const auto amount = [units](double pa) { return PlainWords::text(print(Pressure{std::llround(std::abs(pa))}, units)); };
  if (leak.high <= 0) return tr("between %1 and %2").arg(amount(leak.high), amount(leak.low));
  if (leak.low >= 0) return tr("between %1 and %2").arg(amount(leak.low), amount(leak.high));
  return tr("between %1 lost and %2 gained").arg(amount(leak.low), amount(leak.high));
}

QString AirWords::leak(const air::Leak& leak, Pressure allowance, UnitSystem units) {
  const auto amount = [units](double pa) { return PlainWords::text(print(Pressure{std::llround(std::abs(pa))}, units)); };
  const auto count = static_cast<int>(leak.used);
  if (!leak.hasInterval)
    return tr("%n readings: too few to speak of a leak. Five in a row between two refills are needed.", nullptr, count);
  const bool isLoss = leak.paPerWeek <= 0;
  const QString slope = isLoss ? tr("Loses %1 a week").arg(amount(leak.paPerWeek)) : tr("Gains %1 a week").arg(amount(leak.paPerWeek));
  const QString range = tr("%1 with 95 % confidence, from %n readings", "between what and what", count).arg(leakRange(leak, units));
  if (leak.isLeaking) return tr("Leaks. %1, %2. The sheet allows %3.").arg(slope, range, amount(static_cast<double>(allowance.pa)));
  return tr("No leak shown. %1, %2. The sheet allows %3.").arg(slope, range, amount(static_cast<double>(allowance.pa)));
}

QString AirWords::pumps(const air::PumpCount& count, std::int64_t steps) {
  const int size = std::abs(count.about), low = std::max(1, std::abs(count.low));
  QString words = tr("About %n pump(s)", nullptr, size);
  if (count.high && std::abs(*count.high) != low) words = tr("%1, likely %2 to %3").arg(words).arg(low).arg(std::abs(*count.high));
  if (!count.high) words = tr("%1, perhaps many more").arg(words);
  return steps == 0 ? tr("%1: a guess, nothing was learned with this model yet").arg(words)
                    : tr("%1: learned from %n step(s) with this model", nullptr, static_cast<int>(steps)).arg(words);
}

QString AirWords::onePump(const air::PumpResponse& response, UnitSystem units) {
  if (response.mean <= 0) return {};
  const auto amount = [units](double pa) { return PlainWords::text(print(Pressure{std::llround(pa)}, units)); };
  const QString words =
      tr("One pump does %1, give or take %2").arg(about(Pressure{std::llround(response.mean)}, units), amount(2.0 * response.sd));
  return response.count == 0 ? tr("%1: a guess, nothing was learned with this model yet").arg(words)
                             : tr("%1: learned from %n step(s) with this model", nullptr, static_cast<int>(response.count)).arg(words);
}

QString AirWords::source(const season::AirSource& source) {
  return source.gauge.empty() ? tr("typed") : tr("by gauge %1").arg(PlainWords::text(source.gauge));
}

namespace {
// "4" stands for the unit shown; "4 C" says its own.
std::string withUnit(const QString& words, const char* unit) {
  QString plain = words.trimmed();
  plain.replace(QChar(0x2212), QLatin1Char('-'));
  const bool isBare = !plain.isEmpty() && (plain.back().isDigit() || plain.back() == QLatin1Char('.') || plain.back() == QLatin1Char(','));
  return (isBare ? plain + QLatin1String(unit) : plain).toStdString();
}
}  // namespace

Result<Temperature> typedTemperature(const QString& words, UnitSystem units) {
  const auto parsed = parseTemperature(withUnit(words, units == UnitSystem::metric ? "C" : "F"), "temperature");
  if (!parsed && parsed.error().code != ErrorCode::outOfRange) return parsed;
  return air::believed(parsed.value_or(Temperature::millikelvin(air::kTemperatureHigh.mk + 1)), "temperature");
}

Result<Elevation> typedElevation(const QString& words, UnitSystem units) {
  const auto parsed = parseElevation(withUnit(words, units == UnitSystem::metric ? "m" : "ft"), "elevation");
  if (!parsed && parsed.error().code != ErrorCode::outOfRange) return parsed;
  return air::believed(parsed.value_or(Elevation{air::kElevationHigh.mm + 1}), "elevation");
}

Result<Pressure> typedGauge(const QString& words, UnitSystem units) {
  const auto parsed = parsePressure(withUnit(words, units == UnitSystem::metric ? "kPa" : "psi"), "gauge");
  if (!parsed && parsed.error().code != ErrorCode::outOfRange) return parsed;
  if (parsed && *parsed >= season::kGaugeLeast && *parsed <= season::kGaugeMost) return parsed;
  return fail(ErrorCode::outOfRange, "gauge", {});
}

QString airErrorSentence(const Error& error, UnitSystem units) {
  const auto shown = [units](auto v) { return PlainWords::text(print(v, units)).replace(QLatin1Char('-'), QStringLiteral("\u2212")); };
  if (error.code == ErrorCode::outOfRange) {
    if (error.place == "temperature")
      return AirWords::tr("Air where helmets are lies between %1 and %2. Look at the figure again.")
          .arg(shown(air::kTemperatureLow), shown(air::kTemperatureHigh));
    if (error.place == "elevation")
      return AirWords::tr("Elevations go from %1 to %2. Look at the figure again.")
          .arg(shown(air::kElevationLow), shown(air::kElevationHigh));
    if (error.place == "gauge")
      return AirWords::tr("A bladder's gauge reads between %1 and %2. Look at the figure again.")
          .arg(shown(season::kGaugeLeast), shown(season::kGaugeMost));
  }
  if (error.code == ErrorCode::notAQuantity || error.code == ErrorCode::missingUnit || error.code == ErrorCode::inconsistent) {
    const bool isMetric = units == UnitSystem::metric;
    if (error.place == "temperature")
      return AirWords::tr("That is not a temperature. Write it as %1.").arg(isMetric ? QStringLiteral("4 C") : QStringLiteral("39 F"));
    if (error.place == "elevation")
      return AirWords::tr("That is not an elevation. Write it as %1.").arg(isMetric ? QStringLiteral("1600 m") : QStringLiteral("5250 ft"));
    if (error.place == "gauge")
      return AirWords::tr("That is not a gauge pressure. Write it as %1.")
          .arg(isMetric ? QStringLiteral("20.5 kPa") : QStringLiteral("3.0 psi"));
  }
  if (error.code == ErrorCode::notAllowed && error.detail == "before-refill")
    return AirWords::tr("This reading would be older than the last refill. Look at the clock of this device, or leave it.");
  if (error.code == ErrorCode::notAllowed && error.detail == "before-reading")
    return AirWords::tr("This reading would be older than the last one. Look at the clock of this device, or leave it.");
  return {};
}

}  // namespace snugline::models
