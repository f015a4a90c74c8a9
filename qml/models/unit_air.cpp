// SPDX-License-Identifier: Apache-2.0
#include "unit_air.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "choices.h"
#include "core/season/season_air.h"
#include "drawn_values.h"
#include "gauge_model.h"
#include "sentences_air.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

constexpr double kMsPerWeek = 7.0 * 24.0 * 3600.0 * 1000.0;
constexpr int kHeightLinesMost = 6;
constexpr double kPascalsPerPsi = 6894.757293168361;

// Steps that people count in.
double niceStep(double span) {
  const double rough = span / kHeightLinesMost;
  const double tens = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 5.0})
    if (rough <= step * tens) return step * tens;
  return 10.0 * tens;
}

bool isRefill(const season::AirEvent& event) { return event.kind != season::AirKind::read; }

}  // namespace

UnitAir::UnitAir(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_last(QStringLiteral("air"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &UnitAir::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_trouble = why;
    emit changed();
  });
  connect(choices, &Choices::changed, this, &UnitAir::changed);
  connect(desk, &Desk::changed, this, [this](const std::vector<std::string>& touched) {
    if (!m_unit.empty() && std::find(touched.begin(), touched.end(), m_unit) != touched.end()) refresh();
  });
}

const season::UnitRecord* UnitAir::unit() const { return m_unit.empty() ? nullptr : m_desk->views().unit(m_unit); }
const gear::ModelSheet* UnitAir::sheet() const { return unit() == nullptr ? nullptr : m_desk->views().sheetOf(*unit()); }
const gear::AirPort* UnitAir::limits() const { return sheet() == nullptr ? nullptr : sheet()->airAt(m_port); }
QString UnitAir::title() const { return unit() == nullptr ? QString() : text(unit()->serial); }
QString UnitAir::subtitle() const { return unit() == nullptr ? QString() : kindOf(m_desk->views(), *unit()); }
bool UnitAir::hasAir() const { return sheet() != nullptr && !sheet()->air.empty(); }
QString UnitAir::unitName() const { return m_choices->units() == UnitSystem::metric ? tr("kPa") : tr("psi"); }

void UnitAir::open(const QString& unitId) {
  m_unit = utf8(unitId);
  m_trouble.clear();
  if (sheet() != nullptr && !sheet()->air.empty()) m_port = sheet()->air.front().port;
  refresh();
}

void UnitAir::choosePort(const QString& port) {
  const auto chosen = gear::portFromCode(utf8(port));
  if (!chosen) return;
  m_port = *chosen;
  refresh();
}

void UnitAir::refresh() {
  m_events.clear();
  if (unit() != nullptr) {
    for (std::size_t i = unit()->airFrom; i < unit()->air.size(); ++i) {
      const season::AirEvent& event = unit()->air[i];
      if (event.port == m_port) m_events.push_back(event);
    }
    m_history = season::leakOf(m_desk->views(), *unit(), m_port);
    m_leak = season::recentAirOf(m_desk->views(), *unit(), m_port).leak;
  } else {
    m_history = m_leak = {};
  }
  emit changed();
}

QVariantList UnitAir::ports() const {
  QVariantList list;
  if (!hasAir()) return list;
  for (const gear::AirPort& port : sheet()->air)
    list << QVariantMap{{QStringLiteral("name"), codeWord(gear::code(port.port))},
                        {QStringLiteral("text"), PlainWords::sentenceCase(MarkWords::port(port.port))},
                        {QStringLiteral("chosen"), port.port == m_port}};
  return list;
}

QString UnitAir::bandWords() const {
  const gear::AirPort* port = limits();
  if (port == nullptr) return {};
  const auto shown = [this](Pressure v) { return PlainWords::text(print(v, m_choices->units())); };
  return tr("The sheet starts at %1, and its band is %2 to %3.").arg(shown(port->start), shown(port->low), shown(port->high));
}

QString UnitAir::leakWords() const {
  const auto isRead = [](const season::AirEvent& event) { return event.gauge.has_value(); };
  if (std::none_of(m_events.begin(), m_events.end(), isRead)) return tr("Not measured yet.");
  const auto left = std::count_if(m_history.leftOut.begin(), m_history.leftOut.end(), [this](const air::LeftOutReading& one) {
    return one.why == air::LeftOut::notBelieved && m_events[one.index].gauge;
  });
  QString words = AirWords::leak(m_leak, sheet() == nullptr ? air::kLeakAllowanceUnsaid : sheet()->leakPerWeek, m_choices->units());
  if (left > 0) words += QLatin1Char(' ') + tr("%n reading(s) without weather cannot be compared.", nullptr, static_cast<int>(left));
  return words;
}

QVariantMap UnitAir::plot() const {
  QVariantMap map;
  if (!hasPlot()) return map;
  const bool isMetric = m_choices->units() == UnitSystem::metric;
  const double scale = isMetric ? 1000.0 : kPascalsPerPsi;
  const auto& carried = m_history.readings;
  double low = carried.front().pa, high = carried.front().pa;
  for (const air::CarriedReading& one : carried) {
    const auto raw = static_cast<double>(m_events[one.index].gauge->pa);
    low = std::min({low, one.pa, raw});
    high = std::max({high, one.pa, raw});
  }
  const double room = std::max(high - low, scale / 2.0) * 0.12;
  low -= room;
  high += room;
  const auto first = static_cast<double>(carried.front().at.ms), last = static_cast<double>(carried.back().at.ms);
  const auto x = [&](double ms) { return last > first ? std::clamp((ms - first) / (last - first), 0.0, 1.0) : 0.5; };
  const auto y = [&](double pa) { return (pa - low) / (high - low); };
  const auto clipped = [&](double pa) { return std::clamp(y(pa), 0.0, 1.0); };

  QVariantList raw, points, refills, slopes, heights, times;
  for (const air::CarriedReading& one : carried) {
    const auto at = x(static_cast<double>(one.at.ms));
    const auto point = [&](double pa) {
      return QVariantMap{{QStringLiteral("x"), at}, {QStringLiteral("y"), y(pa)}, {QStringLiteral("run"), static_cast<int>(one.run)}};
    };
    points << point(one.pa);
    raw << point(static_cast<double>(m_events[one.index].gauge->pa));
    if (isRefill(m_events[one.index])) refills << at;
  }
  if (m_leak.hasInterval) {
    for (std::size_t run = 0; run < m_leak.runs.size(); ++run) {
      std::optional<double> from, to;
      for (const air::CarriedReading& one : m_leak.readings) {
        if (one.run != run) continue;
        if (!from) from = static_cast<double>(one.at.ms);
        to = static_cast<double>(one.at.ms);
      }
      if (!from || !to || *from == *to) continue;
      const air::LeakRun& line = m_leak.runs[run];
      const auto on = [&](double slope, double ms) {
        return clipped(line.medianPa + slope * (ms - static_cast<double>(line.medianAt.ms)) / kMsPerWeek);
      };
      slopes << QVariantMap{{QStringLiteral("x1"), x(*from)},
                            {QStringLiteral("x2"), x(*to)},
                            {QStringLiteral("y1"), on(m_leak.paPerWeek, *from)},
                            {QStringLiteral("y2"), on(m_leak.paPerWeek, *to)},
                            {QStringLiteral("low1"), on(m_leak.low, *from)},
                            {QStringLiteral("low2"), on(m_leak.low, *to)},
                            {QStringLiteral("high1"), on(m_leak.high, *from)},
                            {QStringLiteral("high2"), on(m_leak.high, *to)}};
    }
  }
  const double step = niceStep((high - low) / scale);
  const int places = step < 0.1 ? 2 : step < 1.0 ? 1 : 0;
  for (double v = std::ceil(low / scale / step) * step; v * scale <= high; v += step)
    heights << QVariantMap{{QStringLiteral("at"), y(v * scale)},
                           {QStringLiteral("text"), QString::number(v, 'f', places).replace(QLatin1Char('-'), QStringLiteral("\u2212"))}};
  const auto day = [this](const air::CarriedReading& one) { return PlainWords::day(dayOf(one.at), m_desk->today()); };
  times << QVariantMap{{QStringLiteral("at"), 0.0}, {QStringLiteral("text"), day(carried.front())}}
        << QVariantMap{{QStringLiteral("at"), 1.0}, {QStringLiteral("text"), day(carried.back())}};
  map.insert(QStringLiteral("raw"), raw);
  map.insert(QStringLiteral("carried"), points);
  map.insert(QStringLiteral("refills"), refills);
  map.insert(QStringLiteral("slopes"), slopes);
  map.insert(QStringLiteral("heights"), heights);
  map.insert(QStringLiteral("times"), times);
  map.insert(QStringLiteral("unit"), unitName());
  map.insert(QStringLiteral("legend"),
             QVariantMap{{QStringLiteral("raw"), tr("As read")},
                         {QStringLiteral("carried"), isMetric ? tr("Carried to 20 °C at sea level") : tr("Carried to 68 °F at sea level")},
                         {QStringLiteral("refill"), refills.isEmpty() ? QString() : tr("Set or pumped")},
                         {QStringLiteral("slope"), slopes.isEmpty() ? QString() : tr("Leak slope and its 95 % band")}});
  map.insert(QStringLiteral("description"), leakWords());
  return map;
}

QVariantList UnitAir::readings() const {
  QVariantList list;
  const auto shown = [this](double pa) {
    return PlainWords::text(print(Pressure::pascals(std::llround(pa)), m_choices->units()))
        .replace(QLatin1Char('-'), QStringLiteral("\u2212"));
  };
  std::vector<std::optional<double>> carried(m_events.size());
  for (const air::CarriedReading& one : m_history.readings) carried[one.index] = one.pa;
  for (std::size_t i = m_events.size(); i-- > 0;) {
    const season::AirEvent& event = m_events[i];
    if (!event.gauge) continue;  // pumps counted, not measured
    QStringList how;
    how << (event.kind == season::AirKind::set ? tr("set") : event.kind == season::AirKind::changed ? tr("pumped") : tr("read"));
    how << (event.isOnHead ? tr("on the head") : tr("off the head")) << AirWords::source(event.source);
    if (event.climate.temperatureMk != 0)
      how << tr("at %1").arg(PlainWords::text(print(Temperature::millikelvin(event.climate.temperatureMk), m_choices->units())));
    const QString who = whoWords(m_desk->views(), event.stamp.who);
    if (!who.isEmpty()) how << who;
    list << QVariantMap{{QStringLiteral("when"), timeWords(event.stamp.at, m_desk->today())},
                        {QStringLiteral("raw"), shown(static_cast<double>(event.gauge->pa))},
                        {QStringLiteral("carried"), carried[i] ? shown(*carried[i]) : QString()},
                        {QStringLiteral("how"), how.join(QStringLiteral(", "))}};
  }
  return list;
}

QVariantMap UnitAir::why() const {
  if (unit() == nullptr || limits() == nullptr) return {};
  const season::AthleteRecord* athlete = unit()->athletes.empty() ? nullptr : m_desk->views().athlete(unit()->athletes.back());
  const auto& team = m_desk->views().team;
  return airWhy(m_desk->views(), athlete, *unit(), m_port, team && team->weather ? team->weather->conditions : season::Conditions{},
                m_choices->units(), m_desk->now());
}

QVariantMap UnitAir::leakArithmetic() const {
  return unit() == nullptr ? QVariantMap() : leakWhy(m_desk->views(), *unit(), m_port, m_choices->units(), m_desk->now());
}

void UnitAir::takeTyped(const QString& words, bool isOnHead, bool isRefill) {
  const auto typed = typedGauge(words, m_choices->units());
  if (!typed) {
    m_trouble = airErrorSentence(typed.error(), m_choices->units());
    emit changed();
    return;
  }
  take(*typed, isOnHead, isRefill, {});
}

void UnitAir::takeLive(bool isOnHead, bool isRefill) {
  if (m_gauge == nullptr) return;
  if (const auto live = m_gauge->reading()) take(*live, isOnHead, isRefill, m_gauge->source());
}

void UnitAir::take(Pressure gauge, bool isOnHead, bool isRefill, const season::AirSource& source) {
  if (m_unit.empty() || m_isBusy) return;
  m_isBusy = true;
  m_trouble.clear();
  emit changed();
  const book::AirReading reading{m_port, gauge, isOnHead, isRefill, source};
  m_desk->submit([id = m_unit, reading](const season::Views& views, Instant now) { return book::readAir(views, id, reading, now); }, this,
                 [this, gauge](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (outcome) {
                     const QString bladder = PlainWords::sentenceCase(MarkWords::port(m_port));
                     m_last.did(
                         outcome->ids,
                         tr("%1 recorded: %2", "a bladder, a pressure").arg(bladder, PlainWords::text(print(gauge, m_choices->units()))),
                         m_unit);
                   } else {
                     const QString words = airErrorSentence(outcome.error(), m_choices->units());
                     m_trouble = words.isEmpty() ? errorSentence(outcome.error()) : words;
                   }
                   emit changed();
                   if (outcome) emit recorded();
                 });
}

void UnitAir::dismissTrouble() {
  m_trouble.clear();
  emit changed();
}

}  // namespace snugline::models
