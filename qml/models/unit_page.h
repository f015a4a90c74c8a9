// SPDX-License-Identifier: Apache-2.0
// Purpose: one helmet: what it is, its label, its seven points, open holds, who wears it, where it is, and its history; and the acts on
// it. Each act is one of core/book/acts.h; a refused one leaves a sentence in `refusal` and nothing written. Thread: GUI thread.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/fact.h"
#include "core/season/standing.h"
#include "qml/models/desk.h"
#include "qml/models/last_act.h"

namespace snugline::models {

class Choices;

class UnitPage : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of UnitsModel")
  Q_PROPERTY(QString unitId READ unitId NOTIFY changed)  // empty when none is open
  Q_PROPERTY(QString serial READ serial NOTIFY changed)
  Q_PROPERTY(QString kindWords READ kindWords NOTIFY changed)        // "Alder A1, L"
  Q_PROPERTY(QString standing READ standingCode NOTIFY changed)      // code of its state, as `snug show` says it
  Q_PROPERTY(QString standingTone READ standingTone NOTIFY changed)  // "snug", "see", "stop"
  Q_PROPERTY(bool isStop READ isStop NOTIFY changed)                 // do not wear, said large
  Q_PROPERTY(QString statusWords READ statusWords NOTIFY changed)    // its headline
  Q_PROPERTY(QVariantList reasons READ reasons NOTIFY changed)       // {code, text}: why it may not be worn, worst first
  Q_PROPERTY(QStringList acts READ acts NOTIFY changed)              // codes of season::UnitAct
  Q_PROPERTY(QVariantMap knownCause READ knownCause NOTIFY changed)  // {reason, what, words} of a hold; empty: nobody knows yet
  Q_PROPERTY(QString labelWords READ labelWords NOTIFY changed)
  Q_PROPERTY(bool isLabelGood READ isLabelGood NOTIFY changed)
  Q_PROPERTY(QVariantList years READ years NOTIFY changed)  // as in label_reading.h, by the label read last
  Q_PROPERTY(bool isLabelMissing READ isLabelMissing NOTIFY changed)
  Q_PROPERTY(bool isHeld READ isHeld NOTIFY changed)
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)    // as in sentences_gear.h, with {seen}
  Q_PROPERTY(bool hasAir READ hasAir NOTIFY changed)            // its model has bladders
  Q_PROPERTY(QString airWords READ airWords NOTIFY changed)     // "Crown 20.0 kPa, sides not measured"
  Q_PROPERTY(QVariantList holds READ holds NOTIFY changed)      // {fact, words, seen, rule}
  Q_PROPERTY(QVariantList wearers READ wearers NOTIFY changed)  // {athlete, name}
  Q_PROPERTY(QVariantList moves READ moves NOTIFY changed)      // {to, words, reasons}: those that make sense now; reasons: usual ones
  Q_PROPERTY(QVariantList parts READ parts NOTIFY changed)      // {code, name, reopens}: what may be replaced on it
  Q_PROPERTY(QString shelf READ shelf NOTIFY changed)           // where it belongs
  Q_PROPERTY(QStringList shelves READ shelves NOTIFY changed)   // that helmets stand on, by name
  Q_PROPERTY(QString ageWords READ ageWords NOTIFY changed)     // interval and age limit by its sheet
  Q_PROPERTY(QVariantList photos READ photos NOTIFY changed)    // as in sentences_photos.h
  Q_PROPERTY(QVariantList history READ history NOTIFY changed)  // {when, who, words, fact, photo (hash, of a kept one)}, latest first
  Q_PROPERTY(QVariantList candidates READ candidates NOTIFY changed)  // {athlete, name, words, old (serial)} by candidateSearch
  Q_PROPERTY(QString candidateSearch READ candidateSearch WRITE setCandidateSearch NOTIFY changed)
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what undo takes back
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  UnitPage(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] QString unitId() const;
  [[nodiscard]] QString serial() const;
  [[nodiscard]] QString kindWords() const;
  [[nodiscard]] QString standingCode() const;
  [[nodiscard]] QString standingTone() const;
  [[nodiscard]] bool isStop() const;
  [[nodiscard]] QString statusWords() const;
  [[nodiscard]] QVariantList reasons() const;
  [[nodiscard]] QStringList acts() const;
  [[nodiscard]] QVariantMap knownCause() const;
  [[nodiscard]] QString labelWords() const;
  [[nodiscard]] bool isLabelGood() const;
  [[nodiscard]] QVariantList years() const;
  [[nodiscard]] bool isLabelMissing() const;
  [[nodiscard]] bool isHeld() const;
  [[nodiscard]] QVariantList points() const;
  [[nodiscard]] bool hasAir() const;
  [[nodiscard]] QString airWords() const;
  [[nodiscard]] QVariantList holds() const;
  [[nodiscard]] QVariantList wearers() const;
  [[nodiscard]] QVariantList moves() const;
  [[nodiscard]] QVariantList parts() const;
  [[nodiscard]] QString shelf() const;
  [[nodiscard]] QStringList shelves() const;
  [[nodiscard]] QString ageWords() const;
  [[nodiscard]] QVariantList photos() const;
  [[nodiscard]] QVariantList history() const { return m_history; }
  [[nodiscard]] QVariantList candidates() const;
  [[nodiscard]] QString candidateSearch() const { return m_candidateSearch; }
  [[nodiscard]] QString lastWords() const { return m_last.wordsAbout(m_unit); }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  void setCandidateSearch(const QString& words);

  Q_INVOKABLE void open(const QString& unitId);
  Q_INVOKABLE void close();
  Q_INVOKABLE void hold(const QString& reason, const QString& what, bool isWithAthlete);
  Q_INVOKABLE void release(const QString& holdFact, const QString& why);
  Q_INVOKABLE void moveTo(const QString& to, const QString& where, const QString& reason = {});
  Q_INVOKABLE void comeBack(const QString& by, const QString& done, const QString& paper, bool isCleaned);
  Q_INVOKABLE void whereNow(bool isWithAthlete);
  Q_INVOKABLE void changePart(const QString& part, const QString& what);
  Q_INVOKABLE void setShelf(const QString& shelf);
  Q_INVOKABLE void pairWith(const QString& athleteId, bool isOldWithAthlete);
  Q_INVOKABLE void unpair(const QString& athleteId);
  Q_INVOKABLE void seePoint(const QString& point, bool isSound, const QString& what);
  Q_INVOKABLE void readLabelYear(int year, bool isMakersMark);
  Q_INVOKABLE void readLabelDate(const QString& isoDay, const QString& source);
  Q_INVOKABLE void readLabelMissing();
  Q_INVOKABLE void readLabelUnreadable();
  Q_INVOKABLE void forgetRefusal();
  Q_INVOKABLE void undo();

 signals:
  void changed();
  void written();  // an act of this page is on disk

 private:
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] std::optional<season::UnitStanding> standing() const;
  void act(Desk::Job job);
  void readLabel(const std::optional<gear::Label>& label, bool isUnreadable = false);
  void readHistory();
  [[nodiscard]] QString photoOf(const book::Fact& fact) const;  // hash of a kept one, else empty
  [[nodiscard]] bool isPhotoGone(const book::Fact& fact) const;

  Desk* m_desk;
  const Choices* m_choices;
  std::string m_unit;
  QVariantList m_history;
  QString m_candidateSearch;
  LastAct m_last;
  QString m_refusal;
  bool m_isBusy = false;
};

}  // namespace snugline::models
