// SPDX-License-Identifier: Apache-2.0
// Purpose: the weather where the helmets are, for the chip on the board and its sheet: temperature and elevation by touches or typed, where
// the helmets have been, the place, and the places that the team travels to. A touch re-ranks the board at once; it is written down when
// the fingers rest for a moment or the sheet closes, so that ten touches are one entry. Errors: what is not believed is
// `temperatureTrouble`, `elevationTrouble` or `placeTrouble`, one sentence, and nothing changes. Thread: GUI thread only.
#pragma once

#include <optional>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>

#include "choices.h"
#include "desk.h"

namespace snugline::models {

class WeatherModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString figures READ figures NOTIFY changed)  // "4 °C, 180 m"; empty: not noted
  Q_PROPERTY(QString words READ words NOTIFY changed)      // "Outside, home field, noted yesterday"
  Q_PROPERTY(bool isOld READ isOld NOTIFY changed)
  Q_PROPERTY(QString age READ age NOTIFY changed)            // "Noted yesterday." in the sheet; empty where it was today
  Q_PROPERTY(QString unjudged READ unjudged NOTIFY changed)  // helmets that could not be judged, a sentence; empty where there are none
  Q_PROPERTY(QString temperature READ temperature NOTIFY changed)
  Q_PROPERTY(QString elevation READ elevation NOTIFY changed)
  Q_PROPERTY(QVariantList temperatureSteps READ temperatureSteps NOTIFY changed)  // for FigureStepper
  Q_PROPERTY(QVariantList elevationSteps READ elevationSteps NOTIFY changed)
  Q_PROPERTY(QString temperatureLabel READ temperatureLabel NOTIFY changed)
  Q_PROPERTY(QString elevationLabel READ elevationLabel NOTIFY changed)
  Q_PROPERTY(QVariantList whereabouts READ whereabouts NOTIFY changed)  // {name, text, detail, chosen}
  Q_PROPERTY(QVariantList places READ places NOTIFY changed)            // {name, text, detail, chosen, isPreset}
  Q_PROPERTY(QString ambient READ ambient NOTIFY changed)               // "Air around it 99.2 kPa"; empty when not known
  Q_PROPERTY(QString temperatureTrouble READ temperatureTrouble NOTIFY changed)
  Q_PROPERTY(QString elevationTrouble READ elevationTrouble NOTIFY changed)
  Q_PROPERTY(QString placeTrouble READ placeTrouble NOTIFY changed)
 public:
  WeatherModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void step(int by);  // of the temperature, in degrees of the unit shown
  Q_INVOKABLE void stepTemperature(const QString& name);
  Q_INVOKABLE void stepElevation(const QString& name);
  Q_INVOKABLE bool typeTemperature(const QString& words);  // false: not taken
  Q_INVOKABLE bool typeElevation(const QString& words);
  Q_INVOKABLE void chooseWhereabouts(const QString& code);
  Q_INVOKABLE void choosePlace(const QString& name);  // "" is no place
  Q_INVOKABLE bool addPlace(const QString& name, const QString& elevation);
  Q_INVOKABLE void removePlace(const QString& name);
  Q_INVOKABLE void flush();  // writes down what was touched, now

  // As it counts for the board: what was touched last, else as noted.
  [[nodiscard]] season::Conditions now() const;
  [[nodiscard]] const std::optional<season::Conditions>& draft() const { return m_draft; }
  void setUnjudged(int count);  // of the board

  [[nodiscard]] QString figures() const;
  [[nodiscard]] QString words() const;
  [[nodiscard]] bool isOld() const;
  [[nodiscard]] QString age() const;
  [[nodiscard]] QString unjudged() const;
  [[nodiscard]] QString temperature() const;
  [[nodiscard]] QString elevation() const;
  [[nodiscard]] QVariantList temperatureSteps() const;
  [[nodiscard]] QVariantList elevationSteps() const;
  [[nodiscard]] QString temperatureLabel() const;
  [[nodiscard]] QString elevationLabel() const;
  [[nodiscard]] QVariantList whereabouts() const;
  [[nodiscard]] QVariantList places() const;
  [[nodiscard]] QString ambient() const;
  [[nodiscard]] QString temperatureTrouble() const { return m_temperatureTrouble; }
  [[nodiscard]] QString elevationTrouble() const { return m_elevationTrouble; }
  [[nodiscard]] QString placeTrouble() const { return m_placeTrouble; }

 signals:
  void changed();
  void weatherChanged();  // now() is another: rank anew
  void written();

 private:
  void touch(season::Conditions conditions);
  void onDeskChanged();
  void setTrouble(QString& which, const QString& sentence);
  void submit(Desk::Job job);
  [[nodiscard]] bool isMetric() const { return m_choices->units() == UnitSystem::metric; }
  [[nodiscard]] const season::TeamRecord* team() const;

  Desk* m_desk;
  Choices* m_choices;
  std::optional<season::Conditions> m_draft;
  std::optional<season::WeatherRecord> m_seen;  // as the Book had it when it was last looked at
  std::size_t m_places = 0;
  QTimer m_pause;
  QString m_temperatureTrouble, m_elevationTrouble, m_placeTrouble;
  int m_unjudged = 0;
  bool m_isWriting = false;
};

}  // namespace snugline::models
