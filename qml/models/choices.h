// SPDX-License-Identifier: Apache-2.0
// Purpose: what this device was told about how to show things: units, theme, names as initials, motion. No part of the Book. Kept in
// one small settings file; the gauge that was chosen on this device is kept beside them. Wrapped for QML by SettingsModel. Thread: GUI
// thread only.
#pragma once

#include <optional>

#include <QObject>
#include <QString>

#include "core/quantity/quantity.h"

namespace snugline::models {

class Choices : public QObject {
  Q_OBJECT
 public:
  // file: an INI file; empty keeps the choices in memory only.
  explicit Choices(const QString& file, QObject* parent = nullptr);

  [[nodiscard]] UnitSystem units() const { return m_units; }
  [[nodiscard]] QString theme() const { return m_theme; }  // "day", "sun", "night"
  [[nodiscard]] bool areNamesShort() const { return m_areNamesShort; }
  [[nodiscard]] bool isMotionReduced() const { return m_isMotionReduced; }
  [[nodiscard]] int textPercent() const { return m_textPercent; }  // 100..200
  [[nodiscard]] QString file() const { return m_file; }            // other small files of this device lie beside it
  [[nodiscard]] QString person() const { return m_person; }        // id of who holds the device; empty when not said
  // The gauge chosen on this device, as it calls itself; empty when none is. Its read-out may have another unit than the rest.
  [[nodiscard]] QString gaugeName() const { return m_gaugeName; }
  [[nodiscard]] QString gaugeSerial() const { return m_gaugeSerial; }
  [[nodiscard]] bool isGaugeInPsi() const { return m_isGaugeInPsi.value_or(m_units == UnitSystem::us); }
  [[nodiscard]] UnitSystem gaugeUnits() const { return isGaugeInPsi() ? UnitSystem::us : UnitSystem::metric; }

  [[nodiscard]] QString shelf() const { return m_shelf; }          // by which this device stands; empty when not said
  [[nodiscard]] int labelsGiven() const { return m_labelsGiven; }  // the last number of a serial of our own that was printed here
  [[nodiscard]] int lockMinutes() const { return m_lockMinutes; }  // of no touch, 1..60
  // "en" or "es": of the staff's side; as the device speaks until somebody says otherwise. The athletes' side keeps its own.
  [[nodiscard]] QString language() const { return m_language; }
  [[nodiscard]] QString sayLanguage() const { return m_sayLanguage.isEmpty() ? m_language : m_sayLanguage; }

  void setUnits(UnitSystem units);
  void setTheme(const QString& theme);
  void setNamesShort(bool areShort);
  void setMotionReduced(bool isReduced);
  void setTextPercent(int percent);
  void setPerson(const QString& person);
  void setGauge(const QString& name, const QString& serial);  // both empty forgets it
  void setGaugeInPsi(bool isInPsi);
  void setLockMinutes(int minutes);
  void setLanguage(const QString& language);  // others than the two are left alone
  void setSayLanguage(const QString& language);
  void tellAgain() { emit changed(); }  // words are made anew: the language of the glass has changed
  void setShelf(const QString& shelf);
  void setLabelsGiven(int number);

 signals:
  void changed();

 private:
  void keep(const char* key, const QVariant& value);

  QString m_file;
  UnitSystem m_units = UnitSystem::us;
  QString m_theme = QStringLiteral("day");
  bool m_areNamesShort = false;
  bool m_isMotionReduced = false;
  int m_textPercent = 100;
  QString m_person;
  QString m_gaugeName, m_gaugeSerial;
  std::optional<bool> m_isGaugeInPsi;  // not said: as the unit system
  int m_lockMinutes = 5;               // ours
  QString m_language, m_sayLanguage;   // m_sayLanguage empty: as m_language
  QString m_shelf;
  int m_labelsGiven = 0;
};

}  // namespace snugline::models
