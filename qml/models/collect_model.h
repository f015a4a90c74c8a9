// SPDX-License-Identifier: Apache-2.0
// Purpose: helmets handed in at the end of a season, one after another: each says whose it was, how many are in, what is missing. A tag is
// read as at the Dock; what it means for a helmet is book::handIn's. Each is on disk before the next is counted; tags that come while one
// is written wait their turn, so that a fast hand loses none. Who handed in what is read from the log, so that it is known after a kill.
// Errors: every refusal is a sentence in `refusal`, and the next tag goes on. Thread: GUI thread.
#pragma once

#include <deque>
#include <map>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>

#include "core/gear/tag.h"
#include "core/season/record.h"
#include "qml/models/desk.h"
#include "qml/models/last_act.h"

namespace snugline::models {

class Choices;

class CollectModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(QString title READ title NOTIFY changed)                // "Hand helmets in"
  Q_PROPERTY(QString countWords READ countWords NOTIFY changed)      // "41 of 64 handed in"
  Q_PROPERTY(QString shelfWords READ shelfWords NOTIFY changed)      // "Shelf: 9 of 14 seen"
  Q_PROPERTY(double share READ share NOTIFY changed)                 // of all that are to come, 0..1
  Q_PROPERTY(QVariantMap lastReturn READ lastReturn NOTIFY changed)  // as returnMap
  Q_PROPERTY(QVariantMap last READ last NOTIFY changed)              // {unit, title, detail, note, tone, isHeld}; empty: none yet
  Q_PROPERTY(QVariantList recent READ recent NOTIFY changed)         // {unit, title, detail, tone}, latest first, without `last`
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString meant READ meant NOTIFY changed)            // with the refusal: what the scanner seems to have sent
  Q_PROPERTY(QString awayWords READ awayWords NOTIFY changed)    // the tag is of a helmet that is away: is it back?
  Q_PROPERTY(QString strayWords READ strayWords NOTIFY changed)  // the tag is in no Book
  Q_PROPERTY(QVariantList asked READ asked NOTIFY changed)       // {unit, title, detail}: several are meant; one is to be touched
  Q_PROPERTY(QString askedWords READ askedWords NOTIFY changed)
  Q_PROPERTY(QVariantList strays READ strays NOTIFY changed)         // {tag}: in no Book and not taken in, latest first
  Q_PROPERTY(QVariantList missing READ missing NOTIFY changed)       // {unit, athlete, number, title, detail, tone, hasAthlete}
  Q_PROPERTY(QString missingWords READ missingWords NOTIFY changed)  // "23 still missing, 21 with athletes"
  Q_PROPERTY(int missingCount READ missingCount NOTIFY changed)
  Q_PROPERTY(QVariantList elsewhere READ elsewhere NOTIFY changed)    // {unit, title, detail}: in repair, sent out, lost: not missing
  Q_PROPERTY(QString query READ query WRITE setQuery NOTIFY changed)  // a jersey number
  Q_PROPERTY(QVariantList matches READ matches NOTIFY changed)        // {unit, number, title, detail}
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)         // what undo would take back
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  CollectModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] QString title() const;
  [[nodiscard]] QString countWords() const;
  [[nodiscard]] QString shelfWords() const;
  [[nodiscard]] double share() const;
  [[nodiscard]] QVariantMap last() const;
  [[nodiscard]] QVariantMap lastReturn() const;
  [[nodiscard]] QVariantList recent() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString meant() const;
  [[nodiscard]] QString awayWords() const;
  [[nodiscard]] QString strayWords() const;
  [[nodiscard]] QVariantList asked() const;
  [[nodiscard]] QString askedWords() const;
  [[nodiscard]] QVariantList strays() const;
  [[nodiscard]] QVariantList missing() const;
  [[nodiscard]] QString missingWords() const;
  [[nodiscard]] int missingCount() const;
  [[nodiscard]] QVariantList elsewhere() const;
  [[nodiscard]] QString query() const { return m_query; }
  [[nodiscard]] QVariantList matches() const;
  [[nodiscard]] QString lastWords() const { return m_last.words(); }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] bool isOpen() const { return m_isOpen; }  // tags that the camera reads are meant for this page
  void setQuery(const QString& digits);

  Q_INVOKABLE void begin();
  Q_INVOKABLE void leave();
  Q_INVOKABLE void scan(const QString& text);  // with or without the scanner's Enter
  Q_INVOKABLE void takeMeant();                // reads what the scanner seems to have sent
  Q_INVOKABLE void chooseAsked(const QString& unit);
  Q_INVOKABLE void putAside();  // questions and refusals; nothing is written
  Q_INVOKABLE void sayBack(const QString& by, const QString& done, const QString& paper,
                           bool isCleaned);  // the helmet that was away is back, and handed in
  Q_INVOKABLE void takeStray();              // the helmet that is in no Book is taken in, on hold, and handed in
  Q_INVOKABLE void handIn(const QString& unit);
  Q_INVOKABLE void markLost(const QString& unit, const QString& reason);
  Q_INVOKABLE void hold(const QString& what);  // the last one
  Q_INVOKABLE void undoLast();

 signals:
  void changed();
  void counted(const QString& unit);  // on disk

 private:
  // How the helmet that is shown as the last came in.
  enum class Came { fromAthlete, fromShelf, wasLost, wasBack, isNew, already };
  struct Counts {
    int handedIn = 0, withAthletes = 0, seen = 0, onShelf = 0;
  };
  [[nodiscard]] Counts counts() const;
  [[nodiscard]] const season::UnitRecord* unit(const std::string& id) const;
  [[nodiscard]] std::string giverOf(const season::UnitRecord& unit) const;
  [[nodiscard]] QString cameWords(const season::UnitRecord& unit, Came came) const;
  [[nodiscard]] QString helmetWords(const season::UnitRecord& unit) const;
  [[nodiscard]] QString athleteWords(const std::string& id) const;
  [[nodiscard]] std::vector<const season::UnitRecord*> collectedUnits() const;  // latest first
  void forgetQuestions();
  void read(const QString& text);
  void place(const std::string& unit);
  void write(const std::string& unit, const std::optional<season::ReturnRecord>& returned);
  std::optional<season::ReturnRecord> m_lastReturn;  // of this sitting
  void submit(Desk::Job job, std::function<void(const book::Appended&)> then);
  void finished();
  void findGivers();
  void findLast();

  Desk* m_desk;
  const Choices* m_choices;
  bool m_isOpen = false, m_isBusy = false, m_isFinding = false;
  std::deque<QString> m_waiting;                // tags that came while one was written
  std::map<std::string, std::string> m_givers;  // fact -> athlete, empty: nobody
  std::string m_lastUnit;
  Came m_lastCame = Came::fromShelf;
  QString m_refusal, m_query;
  std::string m_meant, m_away;
  std::optional<gear::Tag> m_stray;
  std::vector<std::string> m_strays;
  std::vector<std::string> m_asked;
  std::string m_askedScan;
  LastAct m_last;
};

}  // namespace snugline::models
