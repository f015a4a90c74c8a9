// SPDX-License-Identifier: Apache-2.0
// Purpose: closing a season and opening the next: what a closing leaves open, taking it back, and the next one's name, days and roster.
// What was chosen for the next season is kept in a small file after every touch, so that a kill loses nothing; it becomes facts by one act.
// Nobody is preselected as leaving. Rules are core/book/acts_season.h's. Errors: `refusal`, one sentence. Thread: GUI thread.
#pragma once

#include <set>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/acts_season.h"
#include "qml/models/desk.h"
#include "qml/models/last_act.h"

namespace snugline::models {

class Choices;

class TurnModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(bool isBetween READ isBetween NOTIFY changed)         // closed, and no other is open
  Q_PROPERTY(bool isLastDay READ isLastDay NOTIFY changed)         // its last day has come, or is past
  Q_PROPERTY(QString seasonWords READ seasonWords NOTIFY changed)  // "Season 2026"
  Q_PROPERTY(QString stateWords READ stateWords NOTIFY changed)    // "Runs to 20 Nov 2026", "Closed on 24 Nov 2026, 3 helmets missing"
  Q_PROPERTY(QVariantList open READ open NOTIFY changed)  // what a closing leaves: {name, title, rows: [{athlete, number, title, detail}]}
  Q_PROPERTY(QString missingWords READ missingWords NOTIFY changed)
  Q_PROPERTY(QString closeDetail READ closeDetail NOTIFY changed)  // what closing now writes down
  Q_PROPERTY(QString name READ name NOTIFY changed)                // of the next season, as typed
  Q_PROPERTY(QString start READ start NOTIFY changed)              // year-month-day, as typed
  Q_PROPERTY(QString end READ end NOTIFY changed)
  Q_PROPERTY(QString nameMessage READ nameMessage NOTIFY changed)  // what is wrong with what was typed
  Q_PROPERTY(QString daysMessage READ daysMessage NOTIFY changed)
  Q_PROPERTY(QString nameOffer READ nameOffer NOTIFY changed)             // "2027"; empty where none can be made
  Q_PROPERTY(QString daysOffer READ daysOffer NOTIFY changed)             // "A year on: Mon 2 Aug to Fri 19 Nov 2027"
  Q_PROPERTY(QVariantList years READ years NOTIFY changed)                // {name, text, detail, chosen}: birth years, eldest first
  Q_PROPERTY(QVariantList roster READ roster NOTIFY changed)              // {athlete, number, title, detail, isLeaving}, eldest first
  Q_PROPERTY(QString rosterWords READ rosterWords NOTIFY changed)         // "64 on the roster, 12 leave"
  Q_PROPERTY(QVariantList carried READ carried NOTIFY changed)            // {name, title, count}: helmets by how they stand
  Q_PROPERTY(QVariantList carriedSizes READ carriedSizes NOTIFY changed)  // {title, count}: by model and size
  Q_PROPERTY(QString carriedWords READ carriedWords NOTIFY changed)
  Q_PROPERTY(bool canOpen READ canOpen NOTIFY changed)
  Q_PROPERTY(QString openText READ openText NOTIFY changed)      // "Open season 2027"
  Q_PROPERTY(QString openDetail READ openDetail NOTIFY changed)  // who leaves, or why it cannot be opened yet
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what undo would take back
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  TurnModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] bool isBetween() const;
  [[nodiscard]] bool isLastDay() const;
  [[nodiscard]] QString seasonWords() const;
  [[nodiscard]] QString stateWords() const;
  [[nodiscard]] QVariantList open() const;
  [[nodiscard]] QString missingWords() const;
  [[nodiscard]] QString closeDetail() const;
  [[nodiscard]] QString name() const { return m_name; }
  [[nodiscard]] QString start() const { return m_start; }
  [[nodiscard]] QString end() const { return m_end; }
  [[nodiscard]] QString nameMessage() const;
  [[nodiscard]] QString daysMessage() const;
  [[nodiscard]] QString nameOffer() const;
  [[nodiscard]] QString daysOffer() const;
  [[nodiscard]] QVariantList years() const;
  [[nodiscard]] QVariantList roster() const;
  [[nodiscard]] QString rosterWords() const;
  [[nodiscard]] QVariantList carried() const;
  [[nodiscard]] QVariantList carriedSizes() const;
  [[nodiscard]] QString carriedWords() const;
  [[nodiscard]] bool canOpen() const;
  [[nodiscard]] QString openText() const;
  [[nodiscard]] QString openDetail() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString lastWords() const { return m_last.words(); }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

  Q_INVOKABLE void close();
  Q_INVOKABLE void reopen();  // takes the closing back, also after a restart
  Q_INVOKABLE void setName(const QString& name);
  Q_INVOKABLE void setDays(const QString& start, const QString& end);
  Q_INVOKABLE void takeNameOffer();
  Q_INVOKABLE void takeDaysOffer();
  Q_INVOKABLE void toggle(const QString& athlete);   // leaves, or stays after all
  Q_INVOKABLE void toggleYear(const QString& year);  // all of one birth year; empty: those without one
  Q_INVOKABLE void openNext();
  Q_INVOKABLE void undo() { m_last.undo(); }

 signals:
  void changed();
  void closed();
  void opened();  // the next season is on disk

 private:
  [[nodiscard]] book::NextSeason next() const;
  [[nodiscard]] std::optional<Error> doubt() const;  // why the next season could not be opened as it is typed
  [[nodiscard]] std::vector<const season::AthleteRecord*> onRoster() const;
  [[nodiscard]] QVariantMap rowOf(const season::AthleteRecord& athlete, const QString& detail) const;
  [[nodiscard]] std::optional<std::pair<Day, Day>> offeredDays() const;
  [[nodiscard]] QString draftFile() const;
  void readDraft();
  void keepDraft();
  void forgetDraft();
  void submit(Desk::Job job, std::function<void(const book::Appended&)> then);

  Desk* m_desk;
  const Choices* m_choices;
  QString m_name, m_start, m_end;  // as typed
  std::set<std::string> m_leaving;
  LastAct m_last;
  QString m_refusal;
  bool m_isBusy = false;
};

}  // namespace snugline::models
