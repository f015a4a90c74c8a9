// SPDX-License-Identifier: Apache-2.0
// Purpose: one athlete: what is due and why, the fit as it was last seen, the helmet, the tape history with the size it speaks for, the
// timeline, and what can be done: first fit, look, refit, a helmet from the shelf, a tape reading. Rules are core's.
// Errors: a refused act is `trouble`, one sentence, and nothing is written. Thread: GUI thread only.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>

#include "choices.h"
#include "core/season/board.h"
#include "desk.h"
#include "sentences.h"
#include "weather_model.h"

namespace snugline::models {

class AthleteModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString athleteId READ athleteId NOTIFY changed)
  Q_PROPERTY(QString jersey READ jersey NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString summary READ summary NOTIFY changed)  // "Helmet H-0207, Alder A1, L"
  Q_PROPERTY(
      QVariantList reasons READ reasons NOTIFY changed)  // {text, tone, port, about}: port and "air" or "leak" where a reason has a why
  Q_PROPERTY(QString nothingDue READ nothingDue NOTIFY changed)  // what comes next where nothing is due
  Q_PROPERTY(QStringList strip READ strip NOTIFY changed)
  Q_PROPERTY(QStringList points READ points NOTIFY changed)
  Q_PROPERTY(QVariantList places READ places NOTIFY changed)              // of the large strip: {name, text, state, detail}
  Q_PROPERTY(QVariantMap findings READ findings NOTIFY changed)           // mark -> code, for the drawing
  Q_PROPERTY(QVariantMap sheet READ sheet NOTIFY changed)                 // which parts the drawing has
  Q_PROPERTY(QVariantMap helmet READ helmet NOTIFY changed)               // {serial, model, label, labelTone, holds, id}; empty without one
  Q_PROPERTY(QVariantList actions READ actions NOTIFY changed)            // {name, text, kind}: the first is what is due
  Q_PROPERTY(QVariantList tapes READ tapes NOTIFY changed)                // {reading, when}
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY changed)                // {model, text, note, odds: [{size, percent, share}]}
  Q_PROPERTY(QVariantList shelf READ shelf NOTIFY changed)                // {unit, serial, model, odds, label, isLikely, isRemote}
  Q_PROPERTY(QVariantList timeline READ timeline NOTIFY timelineChanged)  // {when, text, who}, newest first
  Q_PROPERTY(QVariantList readings READ readings NOTIFY readingsChanged)  // of the tape in hand: {text}
  Q_PROPERTY(QString tapeAdvice READ tapeAdvice NOTIFY readingsChanged)   // "Readings differ by more than …: take another."
  Q_PROPERTY(QString tapeUnit READ tapeUnit NOTIFY changed)               // "mm" or "in"
  Q_PROPERTY(QString tapeLabel READ tapeLabel NOTIFY changed)             // "Reading in inches"
  Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged)
 public:
  AthleteModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& athlete);
  // The arithmetic of a reason, for WhyLines. about: "air", "leak".
  Q_INVOKABLE QVariantMap why(const QString& port, const QString& about) const;
  Q_INVOKABLE void choose(const QString& unit);
  Q_INVOKABLE void addReading(const QString& digits);  // recorded at once, with the earlier ones of this tape
  Q_INVOKABLE void endTape();
  Q_INVOKABLE void dismissTrouble();

  [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete); }
  [[nodiscard]] QString jersey() const;
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QVariantList reasons() const;
  [[nodiscard]] QString nothingDue() const;
  [[nodiscard]] QStringList strip() const;
  [[nodiscard]] QStringList points() const;
  [[nodiscard]] QVariantList places() const;
  [[nodiscard]] QVariantMap findings() const;
  [[nodiscard]] QVariantMap sheet() const;
  [[nodiscard]] QVariantMap helmet() const;
  [[nodiscard]] QVariantList actions() const;
  [[nodiscard]] QVariantList tapes() const;
  [[nodiscard]] QVariantList sizes() const;
  [[nodiscard]] QVariantList shelf() const;
  [[nodiscard]] QVariantList timeline() const { return m_timeline; }
  [[nodiscard]] QVariantList readings() const;
  [[nodiscard]] QString tapeAdvice() const;
  [[nodiscard]] QString tapeUnit() const;
  [[nodiscard]] QString tapeLabel() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void timelineChanged();
  void readingsChanged();
  void troubleChanged();
  void busyChanged();
  void chosen();  // a helmet was paired

 private:
  [[nodiscard]] const season::AthleteRecord* record() const;
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] Length tem() const;
  [[nodiscard]] QVariantMap sizeMap(const gear::ModelSheet& sheet, const std::vector<Length>& readings) const;
  [[nodiscard]] QString sizeOdds(const season::UnitRecord& unit, double& odds) const;
  void refresh();
  void readTimeline();
  void setTrouble(const QString& sentence);
  void setBusy(bool isBusy);
  void act(Desk::Job job, std::function<void(const book::Appended&)> then);

  Desk* m_desk;
  Choices* m_choices;
  WeatherModel* m_weather;
  std::string m_athlete;
  std::optional<season::DueRow> m_row;
  QVariantList m_timeline;
  std::vector<Length> m_readings;  // of the tape in hand
  std::string m_tapeFact;          // the fact that holds them so far
  QString m_trouble;
  bool m_isBusy = false;
};

// Which parts the drawing of a helmet of this model has.
[[nodiscard]] QVariantMap drawnSheet(const gear::ModelSheet* sheet, const season::UnitRecord* unit);

}  // namespace snugline::models
