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
#include "last_act.h"
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
      QVariantList reasons READ reasons NOTIFY changed)      // {text, tone, port, about}: port and "air" or "leak" where a reason has a why
  Q_PROPERTY(QString standing READ standing NOTIFY changed)  // code of the lane, as `snug show` says it
  Q_PROPERTY(bool isStop READ isStop NOTIFY changed)         // do not wear
  Q_PROPERTY(bool isOfPoints READ isOfPoints NOTIFY changed)     // and the seven points hold the reason, not the nine marks
  Q_PROPERTY(QString nothingDue READ nothingDue NOTIFY changed)  // what comes next where nothing is due
  Q_PROPERTY(QStringList strip READ strip NOTIFY changed)
  Q_PROPERTY(QStringList points READ points NOTIFY changed)
  Q_PROPERTY(QVariantList places READ places NOTIFY changed)     // of the large strip: {name, text, state, detail}
  Q_PROPERTY(QVariantMap findings READ findings NOTIFY changed)  // mark -> code, for the drawing
  Q_PROPERTY(QVariantMap sheet READ sheet NOTIFY changed)        // which parts the drawing has
  Q_PROPERTY(
      QVariantMap helmet READ helmet NOTIFY changed)  // {serial, model, label, labelTone, status, tone, stops, id}; empty without one
  Q_PROPERTY(QVariantList actions READ actions NOTIFY changed)            // {name, text, kind}: the first is what is due
  Q_PROPERTY(QVariantList tapes READ tapes NOTIFY changed)                // {when, readings: [{name, text, detail, isAside}]}, newest first
  Q_PROPERTY(QString tapeNote READ tapeNote NOTIFY changed)               // why no size is guessed; empty where there is one
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY changed)                // {model, text, note, odds: [{size, percent, share}]}
  Q_PROPERTY(QVariantList timeline READ timeline NOTIFY timelineChanged)  // {when, text, who}, newest first
  Q_PROPERTY(QVariantList readings READ readings NOTIFY readingsChanged)  // of the tape in hand, as in tapes
  Q_PROPERTY(QString tapeAdvice READ tapeAdvice NOTIFY readingsChanged)   // "Readings differ by more than …: take another."
  Q_PROPERTY(QString tapeDoubt READ tapeDoubt NOTIFY readingsChanged)     // why the last reading is questioned; empty where it is not
  Q_PROPERTY(QVariantList asideReasons READ asideReasons CONSTANT)        // why a reading is set aside: {name, text}
  Q_PROPERTY(QStringList tapeKeys READ tapeKeys NOTIFY changed)           // beside the digits: eighths of an inch
  Q_PROPERTY(QString tapeUnit READ tapeUnit NOTIFY changed)               // "mm" or "in"
  Q_PROPERTY(QString tapeLabel READ tapeLabel NOTIFY changed)             // "Reading in inches"
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)             // what undo takes back: the last act about this athlete
  Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged)
 public:
  AthleteModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& athlete);
  // The arithmetic of a reason, for WhyLines. about: "air", "leak".
  Q_INVOKABLE QVariantMap why(const QString& port, const QString& about) const;
  Q_INVOKABLE void addReading(const QString& digits);  // recorded at once, with the earlier ones of this tape
  Q_INVOKABLE void setAside(const QString& reading, const QString& reason);
  Q_INVOKABLE void countAgain(const QString& reading);  // what was set aside
  Q_INVOKABLE void endTape();
  Q_INVOKABLE void undo();
  Q_INVOKABLE void dismissTrouble();

  [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete); }
  [[nodiscard]] QString jersey() const;
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QVariantList reasons() const;
  [[nodiscard]] QString standing() const;
  [[nodiscard]] bool isStop() const;
  [[nodiscard]] bool isOfPoints() const;
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
  [[nodiscard]] QVariantList timeline() const { return m_timeline; }
  [[nodiscard]] QVariantList readings() const;
  [[nodiscard]] QString tapeNote() const;
  [[nodiscard]] QString tapeAdvice() const;
  [[nodiscard]] QString tapeDoubt() const;
  [[nodiscard]] QVariantList asideReasons() const;
  [[nodiscard]] QStringList tapeKeys() const;
  [[nodiscard]] QString tapeUnit() const;
  [[nodiscard]] QString tapeLabel() const;
  [[nodiscard]] LastAct* last() { return &m_last; }  // shared with the pages that act for an athlete: swap, guide
  [[nodiscard]] QString lastWords() const { return m_last.wordsAbout(m_athlete); }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void timelineChanged();
  void readingsChanged();
  void troubleChanged();
  void busyChanged();

 private:
  [[nodiscard]] const season::AthleteRecord* record() const;
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] const season::TapeRecord* tapeInHand() const;
  [[nodiscard]] QVariantList readingList(const season::TapeRecord& tape) const;
  [[nodiscard]] QVariantMap sizeMap(const gear::ModelSheet& sheet, const std::vector<Length>& readings) const;
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
  std::string m_tapeFact;  // that began the tape in hand; empty before its first reading
  LastAct m_last;
  QString m_trouble;
  bool m_isBusy = false;
};

// Which parts the drawing of a helmet of this model has.
[[nodiscard]] QVariantMap drawnSheet(const gear::ModelSheet* sheet, const season::UnitRecord* unit);

}  // namespace snugline::models
