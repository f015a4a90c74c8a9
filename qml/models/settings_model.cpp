// SPDX-License-Identifier: Apache-2.0
#include "qml/models/settings_model.h"

#include "core/book/people.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

SettingsModel::SettingsModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(choices, &Choices::changed, this, &SettingsModel::changed);
  connect(choices, &Choices::changed, this, &SettingsModel::teamChanged);
  connect(desk, &Desk::opened, this, &SettingsModel::teamChanged);
  connect(desk, &Desk::changed, this, &SettingsModel::teamChanged);
}

SettingsModel::Units SettingsModel::units() const { return m_choices->units() == UnitSystem::us ? Us : Metric; }

SettingsModel::Theme SettingsModel::theme() const {
  const QString name = m_choices->theme();
  if (name == QLatin1String("sun")) return Sun;
  return name == QLatin1String("night") ? Night : Day;
}

int SettingsModel::textPercent() const { return m_choices->textPercent(); }
bool SettingsModel::namesAsInitials() const { return m_choices->areNamesShort(); }
bool SettingsModel::reducedMotion() const { return m_choices->isMotionReduced(); }

QString SettingsModel::teamWords() const {
  const auto& team = m_desk->views().team;
  if (!team) return {};
  return tr("%1 %2, season %3").arg(text(team->name), text(team->mascot), text(team->season));
}

QString SettingsModel::emergencyNumber() const {
  const auto& team = m_desk->views().team;
  return team ? text(team->emergency.number) : QString();
}

QString SettingsModel::emergencyPlan() const {
  const auto& team = m_desk->views().team;
  return team ? text(team->emergency.plan) : QString();
}

void SettingsModel::setEmergency(const QString& number, const QString& plan) {
  const book::EmergencySet set{number.simplified().toStdString(), plan.simplified().toStdString()};
  m_desk->submit([set](const season::Views& views, Instant) { return book::setEmergency(views, set); }, this,
                 [this](const Result<book::Appended>& outcome) {
                   m_trouble = outcome ? QString() : errorSentence(outcome.error());
                   emit teamChanged();
                 });
}

QString SettingsModel::bookWords() const {
  const season::Views& views = m_desk->views();
  return tr("Athletes %1, helmets %2, model sheets %3")
      .arg(views.athletes.size())
      .arg(views.units.size())
      .arg(season::standingSheets(views).size());
}

void SettingsModel::setUnits(Units units) { m_choices->setUnits(units == Us ? UnitSystem::us : UnitSystem::metric); }

void SettingsModel::setTheme(Theme theme) {
  switch (theme) {
    case Day:
      m_choices->setTheme(QStringLiteral("day"));
      return;
    case Sun:
      m_choices->setTheme(QStringLiteral("sun"));
      return;
    case Night:
      m_choices->setTheme(QStringLiteral("night"));
      return;
  }
}

void SettingsModel::setTextPercent(int percent) { m_choices->setTextPercent(percent); }
void SettingsModel::setNamesAsInitials(bool isOn) { m_choices->setNamesShort(isOn); }
void SettingsModel::setReducedMotion(bool isOn) { m_choices->setMotionReduced(isOn); }

int SettingsModel::lockMinutes() const { return m_choices->lockMinutes(); }
void SettingsModel::setLockMinutes(int minutes) { m_choices->setLockMinutes(minutes); }

QString SettingsModel::language() const { return m_choices->language(); }
void SettingsModel::setLanguage(const QString& language) { m_choices->setLanguage(language); }

}  // namespace snugline::models
