// SPDX-License-Identifier: Apache-2.0
#include "choices.h"

#include <algorithm>

#include <QLocale>
#include <QSettings>
#include <QVariant>

namespace snugline::models {

namespace {
constexpr const char* kUnits = "units";
constexpr const char* kTheme = "theme";
constexpr const char* kNamesShort = "namesShort";
constexpr const char* kMotionReduced = "motionReduced";
constexpr const char* kTextPercent = "textPercent";
constexpr const char* kPerson = "person";
constexpr const char* kGaugeName = "gauge/name";
constexpr const char* kGaugeSerial = "gauge/serial";
constexpr const char* kGaugeInPsi = "gauge/psi";
constexpr const char* kLockMinutes = "lockMinutes";
constexpr const char* kLanguage = "language";
constexpr const char* kSayLanguage = "sayLanguage";
constexpr const char* kShelf = "shelf";
constexpr const char* kLabelsGiven = "labelsGiven";
constexpr int kLockMinutesMost = 60;

bool isSpoken(const QString& language) { return language == QLatin1String("en") || language == QLatin1String("es"); }
QString languageOfDevice() { return QLocale::system().language() == QLocale::Spanish ? QStringLiteral("es") : QStringLiteral("en"); }
}  // namespace

Choices::Choices(const QString& file, QObject* parent) : QObject(parent), m_file(file), m_language(languageOfDevice()) {
  if (m_file.isEmpty()) return;
  const QSettings kept(m_file, QSettings::IniFormat);
  m_units = kept.value(kUnits).toString() == QLatin1String("metric") ? UnitSystem::metric : UnitSystem::us;
  const QString theme = kept.value(kTheme).toString();
  if (theme == QLatin1String("sun") || theme == QLatin1String("night")) m_theme = theme;
  m_areNamesShort = kept.value(kNamesShort).toBool();
  m_isMotionReduced = kept.value(kMotionReduced).toBool();
  m_textPercent = std::clamp(kept.value(kTextPercent, 100).toInt(), 100, 200);
  m_person = kept.value(kPerson).toString();
  m_gaugeName = kept.value(kGaugeName).toString();
  m_gaugeSerial = kept.value(kGaugeSerial).toString();
  if (kept.contains(kGaugeInPsi)) m_isGaugeInPsi = kept.value(kGaugeInPsi).toBool();
  if (const QString language = kept.value(kLanguage).toString(); isSpoken(language)) m_language = language;
  if (const QString language = kept.value(kSayLanguage).toString(); isSpoken(language)) m_sayLanguage = language;
  m_shelf = kept.value(kShelf).toString();
  m_labelsGiven = std::max(0, kept.value(kLabelsGiven).toInt());
  m_lockMinutes = std::clamp(kept.value(kLockMinutes, m_lockMinutes).toInt(), 1, kLockMinutesMost);
}

void Choices::keep(const char* key, const QVariant& value) {
  if (!m_file.isEmpty()) QSettings(m_file, QSettings::IniFormat).setValue(QLatin1String(key), value);
  emit changed();
}

void Choices::setUnits(UnitSystem units) {
  if (m_units == units) return;
  m_units = units;
  // The gauge follows the one switch for everything; its own is for the dial at hand.
  m_isGaugeInPsi.reset();
  if (!m_file.isEmpty()) QSettings(m_file, QSettings::IniFormat).remove(QLatin1String(kGaugeInPsi));
  keep(kUnits, units == UnitSystem::metric ? QStringLiteral("metric") : QStringLiteral("us"));
}

void Choices::setTheme(const QString& theme) {
  if (m_theme == theme) return;
  m_theme = theme;
  keep(kTheme, theme);
}

void Choices::setNamesShort(bool areShort) {
  if (m_areNamesShort == areShort) return;
  m_areNamesShort = areShort;
  keep(kNamesShort, areShort);
}

void Choices::setMotionReduced(bool isReduced) {
  if (m_isMotionReduced == isReduced) return;
  m_isMotionReduced = isReduced;
  keep(kMotionReduced, isReduced);
}

void Choices::setTextPercent(int percent) {
  const int within = std::clamp(percent, 100, 200);
  if (m_textPercent == within) return;
  m_textPercent = within;
  keep(kTextPercent, within);
}

void Choices::setPerson(const QString& person) {
  if (m_person == person) return;
  m_person = person;
  keep(kPerson, person);
}

void Choices::setGauge(const QString& name, const QString& serial) {
  if (m_gaugeName == name && m_gaugeSerial == serial) return;
  m_gaugeName = name;
  m_gaugeSerial = serial;
  if (!m_file.isEmpty()) QSettings(m_file, QSettings::IniFormat).setValue(QLatin1String(kGaugeSerial), serial);
  keep(kGaugeName, name);
}

void Choices::setGaugeInPsi(bool isInPsi) {
  if (isGaugeInPsi() == isInPsi) return;
  m_isGaugeInPsi = isInPsi;
  keep(kGaugeInPsi, isInPsi);
}

void Choices::setLanguage(const QString& language) {
  if (m_language == language || !isSpoken(language)) return;
  m_language = language;
  keep(kLanguage, language);
}

void Choices::setSayLanguage(const QString& language) {
  if (m_sayLanguage == language || !isSpoken(language)) return;
  m_sayLanguage = language;
  keep(kSayLanguage, language);
}

void Choices::setShelf(const QString& shelf) {
  if (m_shelf == shelf) return;
  m_shelf = shelf;
  keep(kShelf, shelf);
}

void Choices::setLabelsGiven(int number) {
  if (m_labelsGiven == number) return;
  m_labelsGiven = number;
  keep(kLabelsGiven, number);
}

void Choices::setLockMinutes(int minutes) {
  const int within = std::clamp(minutes, 1, kLockMinutesMost);
  if (m_lockMinutes == within) return;
  m_lockMinutes = within;
  keep(kLockMinutes, within);
}

}  // namespace snugline::models
