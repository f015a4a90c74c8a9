// SPDX-License-Identifier: Apache-2.0
#include "shell.h"

#include <utility>

#include "sentences_gear.h"

namespace snugline::models {

Shell::Shell(Desk* desk, Choices* choices, std::unique_ptr<ports::PressureGauge> gauge, LockEdges edges, TagEdges tags, PhoneEdges phones,
             PhotoEdges photos, QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_weather(new WeatherModel(desk, choices, this)),
      m_line(new LineModel(desk, choices, m_weather, this)),
      m_lineCheck(new LineCheckModel(desk, choices, m_line, this)),
      m_gauge(new GaugeModel(std::move(gauge), desk, choices, this)),
      m_athlete(new AthleteModel(desk, choices, m_weather, this)),
      m_guide(new GuideModel(desk, choices, this)),
      m_dock(new DockModel(desk, choices, this)),
      m_scan(new ScanModel(std::move(tags), desk, choices, this)),
      m_swap(new SwapModel(desk, choices, this)),
      m_units(new UnitsModel(desk, choices, this)),
      m_roster(new RosterModel(desk, choices, this)),
      m_settings(new SettingsModel(desk, choices, this)),
      m_say(new SayModel(desk, choices, this)) {
  m_doors = new DoorsModel(desk, choices, m_line, this);
  m_units->air()->useGauge(m_gauge);
  // One camera: what it reads is meant for the page that is open.
  connect(m_scan, &ScanModel::read, this, [this](const QString& tag) {
    if (m_season->collect()->isOpen()) {
      m_season->collect()->scan(tag);
    } else {
      m_dock->scan(tag);
    }
  });
  m_guide->useGauge(m_gauge);
  m_guide->useLast(m_athlete->last());
  m_swap->useLast(m_athlete->last());
  m_season = new SeasonModel(desk, choices, this);
  m_unwell = new UnwellModel(desk, choices, this);
  m_rights = new RightsModel(desk, this);
  const Desk::MakeKeys makeKeys = edges.makeKeys;
  m_phones = new PhonesModel(desk, choices, makeKeys, std::move(phones.drawCode), this);
  m_phone = new PhoneModel(phones.file, desk, choices, this);
  m_photos = new PhotoModel(std::move(photos), desk, choices, this);
  m_units->sheets()->useOutbox(edges.outbox);
  m_unitCard = new UnitCard(desk, edges.outbox, this);
  m_lock = new LockModel(desk, choices, std::move(edges), this);
  m_season->past()->setOutbox(m_lock->edges().outbox);
  m_recovery = new RecoveryModel(desk, m_lock, this);
  m_warning = new WarningModel(desk, choices, m_lock, this);
  m_privacy = new PrivacyModel(desk, choices, m_lock, this);
  connect(desk, &Desk::opened, this, &Shell::onOpened);
  connect(desk, &Desk::failed, this, &Shell::onFailed);
  if (desk->isOpen()) onOpened();
}

void Shell::onOpened() {
  m_isOpen = true;
  m_failure.clear();
  m_startScreen = m_guide->takeUpOpenCheck(m_desk->device()) ? QStringLiteral("guide") : QStringLiteral("doors");
  if (m_desk->views().people.empty()) m_startScreen = QStringLiteral("first");
  emit stateChanged();
}

void Shell::onFailed(const Error& error) {
  if (!m_isOpen) {
    m_failure = errorSentence(error);
    emit stateChanged();
    return;
  }
  m_trouble = errorSentence(error);
  emit troubleChanged();
}

void Shell::dismissTrouble() {
  m_trouble.clear();
  emit troubleChanged();
}

}  // namespace snugline::models
