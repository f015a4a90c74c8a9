// SPDX-License-Identifier: Apache-2.0
// Purpose: what this device was told about how to show things, for QML: units, theme, text size, names as initials, reduced motion.
// Kept by Choices outside the Book, because it belongs to the glass and not to the record. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "core/quantity/quantity.h"

namespace snugline::models {

class Choices;
class Desk;

class SettingsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built where the app is put together")
  Q_PROPERTY(Units units READ units WRITE setUnits NOTIFY changed)
  Q_PROPERTY(Theme theme READ theme WRITE setTheme NOTIFY changed)
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)  // 100..200
  Q_PROPERTY(bool namesAsInitials READ namesAsInitials WRITE setNamesAsInitials NOTIFY changed)
  Q_PROPERTY(bool reducedMotion READ reducedMotion WRITE setReducedMotion NOTIFY changed)
  Q_PROPERTY(int lockMinutes READ lockMinutes WRITE setLockMinutes NOTIFY changed)  // of no touch, 1..60
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)       // "en", "es": of the staff's side
  Q_PROPERTY(QString bookTrail MEMBER m_bookTrail NOTIFY trailChanged)  // pages of the Book left open, "helmets/unit", until the app ends
  Q_PROPERTY(QString teamWords READ teamWords NOTIFY teamChanged)       // "Harrow Creek High Herons, season 2026"
  Q_PROPERTY(QString emergencyNumber READ emergencyNumber NOTIFY teamChanged)  // whom to call, for every device of the team
  Q_PROPERTY(QString emergencyPlan READ emergencyPlan NOTIFY teamChanged)      // may be empty
  Q_PROPERTY(QString trouble READ trouble NOTIFY teamChanged)                  // of what was to be kept in the Book, one sentence
  Q_PROPERTY(QString bookWords READ bookWords NOTIFY teamChanged)              // "64 athletes, 78 helmets, 3 model sheets"

 public:
  enum Units { Metric, Us };
  Q_ENUM(Units)
  enum Theme { Day, Sun, Night };
  Q_ENUM(Theme)

  SettingsModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] Units units() const;
  [[nodiscard]] Theme theme() const;
  [[nodiscard]] int textPercent() const;
  [[nodiscard]] bool namesAsInitials() const;
  [[nodiscard]] bool reducedMotion() const;
  [[nodiscard]] QString teamWords() const;
  [[nodiscard]] QString bookWords() const;
  [[nodiscard]] QString emergencyNumber() const;
  [[nodiscard]] QString emergencyPlan() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  Q_INVOKABLE void setEmergency(const QString& number, const QString& plan);

  void setUnits(Units units);
  void setTheme(Theme theme);
  void setTextPercent(int percent);
  void setNamesAsInitials(bool isOn);
  void setReducedMotion(bool isOn);
  [[nodiscard]] int lockMinutes() const;
  void setLockMinutes(int minutes);
  [[nodiscard]] QString language() const;
  void setLanguage(const QString& language);

 signals:
  void changed();
  void teamChanged();
  void trailChanged();

 private:
  Desk* m_desk;
  Choices* m_choices;
  QString m_bookTrail, m_trouble;
};

}  // namespace snugline::models
