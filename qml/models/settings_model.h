// SPDX-License-Identifier: Apache-2.0
// Purpose: what this device shows and how: units, theme, text size, names as initials, reduced motion. Kept in a small INI file outside
// the Book, because it belongs to the glass and not to the record; every change is on disk before it shows.
// Errors: an unreadable or foreign value falls back to the standard one; a file that cannot be written is said in `refusal`.
// Thread: GUI thread.
#pragma once

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "core/quantity/quantity.h"

QT_BEGIN_NAMESPACE
class QSettings;
QT_END_NAMESPACE

namespace snugline::models {

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
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString teamWords READ teamWords NOTIFY changed)  // "Harrow Creek High Herons, season 2026"

 public:
  enum class Units { Metric, Us };
  Q_ENUM(Units)
  enum class Theme { Day, Sun, Night };
  Q_ENUM(Theme)

  explicit SettingsModel(Desk* desk, QObject* parent = nullptr);
  ~SettingsModel() override;

  // Reads the file if it is there and keeps every later change in it. Without it nothing is kept.
  void keepIn(const QString& iniPath);

  [[nodiscard]] Units units() const { return m_units; }
  [[nodiscard]] UnitSystem system() const { return m_units == Units::Us ? UnitSystem::us : UnitSystem::metric; }
  [[nodiscard]] Theme theme() const { return m_theme; }
  [[nodiscard]] int textPercent() const { return m_textPercent; }
  [[nodiscard]] bool namesAsInitials() const { return m_namesAsInitials; }
  [[nodiscard]] bool reducedMotion() const { return m_reducedMotion; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString teamWords() const;

  void setUnits(Units units);
  void setTheme(Theme theme);
  void setTextPercent(int percent);
  void setNamesAsInitials(bool isOn);
  void setReducedMotion(bool isOn);

 signals:
  void changed();

 private:
  void keep(const QString& key, const QVariant& value);

  Desk* m_desk;
  std::unique_ptr<QSettings> m_file;
  Units m_units = Units::Metric;
  Theme m_theme = Theme::Day;
  int m_textPercent = 100;
  bool m_namesAsInitials = false;
  bool m_reducedMotion = false;
  QString m_refusal;
};

}  // namespace snugline::models
