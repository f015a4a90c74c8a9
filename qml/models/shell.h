// SPDX-License-Identifier: Apache-2.0
// Purpose: everything that Main.qml is given, as one required property: the models of the screens, whether the Book is open, and which
// screen the app starts at. A model reads the desk's mirror at construction (it may be empty) and again on Desk::opened and Desk::changed.
// Errors: a Book that cannot be opened is `failure`, one sentence. Ownership: the Shell owns its models; Desk and Choices outlive it.
// Thread: GUI thread only.
#pragma once

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "athlete_model.h"
#include "choices.h"
#include "desk.h"
#include "dock_model.h"
#include "doors_model.h"
#include "gauge_model.h"
#include "guide_model.h"
#include "line_check_model.h"
#include "line_model.h"
#include "lock_model.h"
#include "phone_model.h"
#include "phones_model.h"
#include "photo_model.h"
#include "privacy_model.h"
#include "recovery_model.h"
#include "rights_model.h"
#include "roster_model.h"
#include "say_model.h"
#include "scan_model.h"
#include "season_model.h"
#include "settings_model.h"
#include "swap_model.h"
#include "unit_card.h"
#include "units_model.h"
#include "unwell_model.h"
#include "warning_model.h"
#include "weather_model.h"

namespace snugline::models {

// What athletes' own phones need of the outside. Left empty: no code is drawn, and this program is nobody's phone.
struct PhoneEdges {
  DrawCode drawCode;
  QString file;  // where the phone is kept
};

class Shell : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(snugline::models::DoorsModel* doors MEMBER m_doors CONSTANT)
  Q_PROPERTY(snugline::models::LineModel* line MEMBER m_line CONSTANT)
  Q_PROPERTY(snugline::models::WeatherModel* weather MEMBER m_weather CONSTANT)
  Q_PROPERTY(snugline::models::LineCheckModel* lineCheck MEMBER m_lineCheck CONSTANT)
  Q_PROPERTY(snugline::models::GaugeModel* gauge MEMBER m_gauge CONSTANT)
  Q_PROPERTY(snugline::models::AthleteModel* athlete MEMBER m_athlete CONSTANT)
  Q_PROPERTY(snugline::models::GuideModel* guide MEMBER m_guide CONSTANT)
  Q_PROPERTY(snugline::models::DockModel* dock MEMBER m_dock CONSTANT)
  Q_PROPERTY(snugline::models::ScanModel* scan MEMBER m_scan CONSTANT)
  Q_PROPERTY(snugline::models::SwapModel* swap MEMBER m_swap CONSTANT)
  Q_PROPERTY(snugline::models::UnitsModel* units MEMBER m_units CONSTANT)
  Q_PROPERTY(snugline::models::RosterModel* roster MEMBER m_roster CONSTANT)
  Q_PROPERTY(snugline::models::SettingsModel* settings MEMBER m_settings CONSTANT)
  Q_PROPERTY(snugline::models::SayModel* say MEMBER m_say CONSTANT)
  Q_PROPERTY(snugline::models::SeasonModel* season MEMBER m_season CONSTANT)
  Q_PROPERTY(snugline::models::UnwellModel* unwell MEMBER m_unwell CONSTANT)
  Q_PROPERTY(snugline::models::RightsModel* rights MEMBER m_rights CONSTANT)
  Q_PROPERTY(snugline::models::PhonesModel* phones MEMBER m_phones CONSTANT)
  Q_PROPERTY(snugline::models::PhoneModel* phone MEMBER m_phone CONSTANT)
  Q_PROPERTY(snugline::models::PhotoModel* photos MEMBER m_photos CONSTANT)
  Q_PROPERTY(snugline::models::UnitCard* unitCard MEMBER m_unitCard CONSTANT)
  Q_PROPERTY(snugline::models::LockModel* lock MEMBER m_lock CONSTANT)
  Q_PROPERTY(snugline::models::RecoveryModel* recovery MEMBER m_recovery CONSTANT)
  Q_PROPERTY(snugline::models::WarningModel* warning MEMBER m_warning CONSTANT)
  Q_PROPERTY(snugline::models::PrivacyModel* privacy MEMBER m_privacy CONSTANT)
  Q_PROPERTY(bool isOpen READ isOpen NOTIFY stateChanged)
  Q_PROPERTY(QString failure READ failure NOTIFY stateChanged)
  Q_PROPERTY(QString startScreen READ startScreen NOTIFY stateChanged)
  Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
 public:
  // gauge may be null: then there is no Bluetooth in this program. Likewise the camera and the sheets of labels in tags.
  Shell(Desk* desk, Choices* choices, std::unique_ptr<ports::PressureGauge> gauge = {}, LockEdges edges = {}, TagEdges tags = {},
        PhoneEdges phones = {}, PhotoEdges photos = {}, QObject* parent = nullptr);

  [[nodiscard]] bool isOpen() const { return m_isOpen; }
  [[nodiscard]] DoorsModel* doors() const { return m_doors; }
  [[nodiscard]] LineModel* line() const { return m_line; }
  [[nodiscard]] AthleteModel* athlete() const { return m_athlete; }
  [[nodiscard]] GuideModel* guide() const { return m_guide; }
  [[nodiscard]] WeatherModel* weather() const { return m_weather; }
  [[nodiscard]] LineCheckModel* lineCheck() const { return m_lineCheck; }
  [[nodiscard]] GaugeModel* gauge() const { return m_gauge; }
  [[nodiscard]] UnitsModel* units() const { return m_units; }
  [[nodiscard]] DockModel* dock() const { return m_dock; }
  [[nodiscard]] ScanModel* scan() const { return m_scan; }
  [[nodiscard]] SwapModel* swap() const { return m_swap; }
  [[nodiscard]] SayModel* say() const { return m_say; }
  [[nodiscard]] UnwellModel* unwell() const { return m_unwell; }
  [[nodiscard]] SeasonModel* season() const { return m_season; }
  [[nodiscard]] PhonesModel* phones() const { return m_phones; }
  [[nodiscard]] PhoneModel* phone() const { return m_phone; }
  [[nodiscard]] PhotoModel* photos() const { return m_photos; }
  [[nodiscard]] LockModel* lock() const { return m_lock; }
  [[nodiscard]] RecoveryModel* recovery() const { return m_recovery; }
  [[nodiscard]] WarningModel* warning() const { return m_warning; }
  [[nodiscard]] PrivacyModel* privacy() const { return m_privacy; }
  [[nodiscard]] QString failure() const { return m_failure; }
  // "doors"; "first" where nobody is in the Book yet; "guide" where a check that this device began today is still open: the guide then
  // stands at its question.
  [[nodiscard]] QString startScreen() const { return m_startScreen; }
  // A write that failed while the app was running, one sentence; empty when all is well.
  [[nodiscard]] QString trouble() const { return m_trouble; }
  Q_INVOKABLE void dismissTrouble();

 signals:
  void stateChanged();
  void troubleChanged();

 private:
  void onOpened();
  void onFailed(const snugline::Error& error);

  Desk* m_desk;
  DoorsModel* m_doors;
  WeatherModel* m_weather;
  LineModel* m_line;
  LineCheckModel* m_lineCheck;
  GaugeModel* m_gauge;
  AthleteModel* m_athlete;
  GuideModel* m_guide;
  DockModel* m_dock;
  ScanModel* m_scan;
  SwapModel* m_swap;
  UnitsModel* m_units;
  RosterModel* m_roster;
  SettingsModel* m_settings;
  SayModel* m_say;
  SeasonModel* m_season;
  UnwellModel* m_unwell;
  RightsModel* m_rights;
  PhonesModel* m_phones;
  PhoneModel* m_phone;
  PhotoModel* m_photos;
  UnitCard* m_unitCard;
  LockModel* m_lock;
  RecoveryModel* m_recovery;
  WarningModel* m_warning;
  PrivacyModel* m_privacy;
  bool m_isOpen = false;
  QString m_failure;
  QString m_startScreen = QStringLiteral("doors");
  QString m_trouble;
};

}  // namespace snugline::models
