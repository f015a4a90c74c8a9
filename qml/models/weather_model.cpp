// SPDX-License-Identifier: Apache-2.0
#include "weather_model.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/air/atmosphere.h"
#include "sentences_air.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

constexpr int kPauseMs = 900;          // fingers rest this long before a touch is written down (ours)
constexpr Temperature kRoom{294'150};  // 21 C: where the steps begin when nothing was ever noted (ours)
// Steps of the large buttons, in units of the unit shown: degrees; metres or feet (ours).
constexpr std::array<int, 4> kDegrees{-5, -1, 1, 5};
constexpr std::array<int, 4> kMetres{-100, -10, 10, 100};
constexpr std::array<int, 4> kFeet{-500, -50, 50, 500};
constexpr std::int64_t kMetreMm = 1000;
constexpr double kFootMm = 304.8;
constexpr std::array<season::Whereabouts, season::kWhereaboutsCount> kAll{season::Whereabouts::indoors, season::Whereabouts::outside,
                                                                          season::Whereabouts::truck};

QString minus(std::string printed) { return QString::fromStdString(printed).replace(QLatin1Char('-'), QStringLiteral("\u2212")); }

Temperature moved(Temperature from, int degrees, bool isMetric) {
  const double shown = isMetric ? from.celsius() : from.fahrenheit();
  const double next = std::round(shown) + degrees;
  const Temperature made = Temperature::celsius(isMetric ? next : (next - 32.0) * 5.0 / 9.0);
  return std::clamp(made, air::kTemperatureLow, air::kTemperatureHigh);
}

// To the next whole step, so that 591 ft goes to 600 and 650.
Elevation moved(Elevation from, int by, bool isMetric) {
  const double unit = isMetric ? static_cast<double>(kMetreMm) : kFootMm;
  const double grid = isMetric ? kMetres[2] : kFeet[2];
  const double shown = static_cast<double>(from.mm) / unit;
  const double steps = by > 0 ? std::floor(shown / grid + 1e-6) : std::ceil(shown / grid - 1e-6);
  const double next = steps * grid + by;
  return std::clamp(Elevation{std::llround(next * unit)}, air::kElevationLow, air::kElevationHigh);
}

}  // namespace

WeatherModel::WeatherModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  m_pause.setSingleShot(true);
  m_pause.setInterval(kPauseMs);
  connect(&m_pause, &QTimer::timeout, this, &WeatherModel::flush);
  connect(desk, &Desk::opened, this, &WeatherModel::onDeskChanged);
  connect(desk, &Desk::changed, this, &WeatherModel::onDeskChanged);
  connect(choices, &Choices::changed, this, &WeatherModel::changed);
}

const season::TeamRecord* WeatherModel::team() const { return m_desk->isOpen() && m_desk->views().team ? &*m_desk->views().team : nullptr; }

season::Conditions WeatherModel::now() const {
  if (m_draft) return *m_draft;
  return team() != nullptr && team()->weather ? team()->weather->conditions : season::Conditions{};
}

void WeatherModel::onDeskChanged() {
  const season::TeamRecord* record = team();
  const auto weather = record == nullptr ? std::nullopt : record->weather;
  if (weather == m_seen && record != nullptr && record->places.size() == m_places) return;
  const bool isOther = weather != m_seen;
  m_seen = weather;
  m_places = record == nullptr ? 0 : record->places.size();
  emit changed();
  if (isOther && !m_draft) emit weatherChanged();
}

void WeatherModel::touch(season::Conditions conditions) {
  conditions.ambient.reset();  // a barometer's reading goes with the place where it was read
  m_draft = std::move(conditions);
  m_temperatureTrouble.clear();
  m_elevationTrouble.clear();
  m_pause.start();
  emit changed();
  emit weatherChanged();
}

void WeatherModel::submit(Desk::Job job) {
  m_desk->submit(std::move(job), this, [this](const Result<book::Appended>& outcome) {
    if (!outcome) {
      const QString words = airErrorSentence(outcome.error(), m_choices->units());
      setTrouble(m_placeTrouble, words.isEmpty() ? errorSentence(outcome.error()) : words);
    }
    emit changed();
    emit written();
  });
}

// What was touched stays the draft until it is on disk; touches that come meanwhile are written down after it.
void WeatherModel::flush() {
  m_pause.stop();
  if (!m_draft || m_isWriting) return;
  m_isWriting = true;
  const season::Conditions noted = *m_draft;
  m_desk->submit([noted](const season::Views& views, Instant) { return book::noteWeather(views, noted); }, this,
                 [this, noted](const Result<book::Appended>& outcome) {
                   m_isWriting = false;
                   const bool isLast = m_draft && *m_draft == noted;
                   if (isLast) m_draft.reset();
                   if (!outcome) setTrouble(m_temperatureTrouble, airErrorSentence(outcome.error(), m_choices->units()));
                   emit changed();
                   emit weatherChanged();
                   emit written();
                   if (m_draft) flush();
                 });
}

void WeatherModel::step(int by) {
  season::Conditions next = now();
  next.temperature = next.temperature ? moved(*next.temperature, by, isMetric()) : kRoom;
  touch(std::move(next));
}

void WeatherModel::stepTemperature(const QString& name) { step(name.toInt()); }

void WeatherModel::stepElevation(const QString& name) {
  season::Conditions next = now();
  next.elevation = moved(next.elevation.value_or(Elevation{}), name.toInt(), isMetric());
  touch(std::move(next));
}

bool WeatherModel::typeTemperature(const QString& words) {
  const auto typed = typedTemperature(words, m_choices->units());
  if (!typed) {
    setTrouble(m_temperatureTrouble, airErrorSentence(typed.error(), m_choices->units()));
    return false;
  }
  season::Conditions next = now();
  next.temperature = *typed;
  touch(std::move(next));
  return true;
}

bool WeatherModel::typeElevation(const QString& words) {
  const auto typed = typedElevation(words, m_choices->units());
  if (!typed) {
    setTrouble(m_elevationTrouble, airErrorSentence(typed.error(), m_choices->units()));
    return false;
  }
  season::Conditions next = now();
  next.elevation = *typed;
  touch(std::move(next));
  return true;
}

// The temperature last noted there comes along; where none was noted yet the figure stays as it is, to be moved.
void WeatherModel::chooseWhereabouts(const QString& code) {
  const auto where = season::whereaboutsFromCode(code.toStdString());
  if (!where || now().whereabouts == where) return;
  season::Conditions next = now();
  next.whereabouts = where;
  if (team() != nullptr) {
    if (const auto place = team()->places.find(next.place); place != team()->places.end()) {
      if (const auto& kept = place->second.temperatures[static_cast<std::size_t>(*where)]) next.temperature = kept;
    }
  }
  touch(std::move(next));
}

void WeatherModel::choosePlace(const QString& name) {
  if (team() == nullptr) return;
  season::Conditions next = now();
  next.place = name.toStdString();
  if (const auto place = team()->places.find(next.place); place != team()->places.end()) {
    if (place->second.elevation) next.elevation = place->second.elevation;
    if (next.whereabouts) {
      if (const auto& kept = place->second.temperatures[static_cast<std::size_t>(*next.whereabouts)]) next.temperature = kept;
    }
  }
  touch(std::move(next));
}

bool WeatherModel::addPlace(const QString& name, const QString& elevation) {
  const QString trimmed = name.trimmed();
  if (trimmed.isEmpty()) {
    setTrouble(m_placeTrouble, tr("Give the place a name."));
    return false;
  }
  const auto typed = typedElevation(elevation, m_choices->units());
  if (!typed) {
    setTrouble(m_placeTrouble, airErrorSentence(typed.error(), m_choices->units()));
    return false;
  }
  m_placeTrouble.clear();
  submit([place = trimmed.toStdString(), height = *typed](const season::Views& views, Instant) {
    return book::setPlace(views, place, height);
  });
  return true;
}

void WeatherModel::removePlace(const QString& name) {
  submit([place = name.toStdString()](const season::Views& views, Instant) { return book::removePlace(views, place); });
}

void WeatherModel::setUnjudged(int count) {
  if (m_unjudged == count) return;
  m_unjudged = count;
  emit changed();
}

void WeatherModel::setTrouble(QString& which, const QString& sentence) {
  which = sentence;
  emit changed();
}

QString WeatherModel::figures() const { return AirWords::figures(now(), m_choices->units()); }

QString WeatherModel::words() const {
  const season::Conditions c = now();
  if (!c.temperature && !c.elevation) return tr("Weather not noted. Touch plus or minus, or here.");
  QStringList parts;
  if (!c.temperature) parts << tr("temperature not noted");
  if (const QString place = AirWords::place(c); !place.isEmpty()) parts << place;
  if (isOld()) parts << AirWords::noted(team()->weather->stamp.at, m_desk->today());
  if (m_unjudged > 0) parts << tr("%n not judged", nullptr, m_unjudged);
  return PlainWords::sentenceCase(parts.join(QStringLiteral(", ")));
}

bool WeatherModel::isOld() const {
  return !m_draft && team() != nullptr && team()->weather && dayOf(team()->weather->stamp.at) != m_desk->today();
}

QString WeatherModel::age() const {
  return isOld() ? tr("%1. Touch what is different now; it is noted anew.")
                       .arg(PlainWords::sentenceCase(AirWords::noted(team()->weather->stamp.at, m_desk->today())))
                 : QString();
}

QString WeatherModel::unjudged() const {
  return m_unjudged == 0 ? QString()
                         : tr("%n helmet(s) could not be judged: no weather was noted when their air was set.", nullptr, m_unjudged);
}

QString WeatherModel::temperature() const { return now().temperature ? minus(print(*now().temperature, m_choices->units())) : QString(); }
QString WeatherModel::elevation() const { return now().elevation ? minus(print(*now().elevation, m_choices->units())) : QString(); }

QVariantList WeatherModel::temperatureSteps() const {
  QVariantList list;
  const auto t = now().temperature;
  for (const int by : kDegrees) {
    const bool isFree = !t || (by < 0 ? *t > air::kTemperatureLow : *t < air::kTemperatureHigh);
    list << QVariantMap{
        {QStringLiteral("name"), QString::number(by)},
        {QStringLiteral("text"), by < 0 ? QStringLiteral("\u2212%1").arg(-by) : QStringLiteral("+%1").arg(by)},
        {QStringLiteral("spokenName"), by < 0 ? tr("%n degree(s) colder", nullptr, -by) : tr("%n degree(s) warmer", nullptr, by)},
        {QStringLiteral("enabled"), isFree}};
  }
  return list;
}

QVariantList WeatherModel::elevationSteps() const {
  QVariantList list;
  const auto e = now().elevation;
  for (const int by : isMetric() ? kMetres : kFeet) {
    const bool isFree = !e || (by < 0 ? *e > air::kElevationLow : *e < air::kElevationHigh);
    list << QVariantMap{{QStringLiteral("name"), QString::number(by)},
                        {QStringLiteral("text"), by < 0 ? QStringLiteral("\u2212%1").arg(-by) : QStringLiteral("+%1").arg(by)},
                        {QStringLiteral("spokenName"), by < 0 ? tr("%1 lower").arg(-by) : tr("%1 higher").arg(by)},
                        {QStringLiteral("enabled"), isFree}};
  }
  return list;
}

QString WeatherModel::temperatureLabel() const { return isMetric() ? tr("Temperature in °C") : tr("Temperature in °F"); }
QString WeatherModel::elevationLabel() const { return isMetric() ? tr("Elevation in metres") : tr("Elevation in feet"); }

QVariantList WeatherModel::whereabouts() const {
  QVariantList list;
  const season::Conditions c = now();
  const season::PlaceRecord* place = nullptr;
  if (team() != nullptr) {
    if (const auto found = team()->places.find(c.place); found != team()->places.end()) place = &found->second;
  }
  for (const season::Whereabouts w : kAll) {
    const bool isChosen = c.whereabouts == w;
    const auto kept = place == nullptr ? std::nullopt : place->temperatures[static_cast<std::size_t>(w)];
    list << QVariantMap{{QStringLiteral("name"), QString::fromUtf8(season::code(w).data(), static_cast<qsizetype>(season::code(w).size()))},
                        {QStringLiteral("text"), AirWords::whereabouts(w)},
                        {QStringLiteral("detail"),
                         !isChosen && kept ? tr("last %1", "a temperature").arg(minus(print(*kept, m_choices->units()))) : QString()},
                        {QStringLiteral("chosen"), isChosen}};
  }
  return list;
}

QVariantList WeatherModel::places() const {
  QVariantList list;
  if (team() == nullptr) return list;
  const std::string chosen = now().place;
  for (const auto& [name, place] : team()->places) {
    list << QVariantMap{{QStringLiteral("name"), PlainWords::text(name)},
                        {QStringLiteral("text"), PlainWords::text(name)},
                        {QStringLiteral("detail"), place.elevation ? minus(print(*place.elevation, m_choices->units())) : QString()},
                        {QStringLiteral("chosen"), name == chosen},
                        {QStringLiteral("isPreset"), place.isPreset}};
  }
  return list;
}

QString WeatherModel::ambient() const {
  const auto pa = season::ambientOf(now());
  return pa ? tr("Air pressure there about %1").arg(PlainWords::text(print(*pa, m_choices->units()))) : QString();
}

}  // namespace snugline::models
