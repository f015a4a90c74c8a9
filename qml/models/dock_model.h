// SPDX-License-Identifier: Apache-2.0
// Purpose: the Dock: one arriving unit at a time, from the scan to in service or hold. The scan is read by gear::parseTag, what would
// come of it by book::outcomeOf; nothing is decided here. What was touched for the unit on the table is kept in a small file after
// every touch, so that a kill loses nothing; the facts are in the Book before the field is empty again. Each scan takes the helmet before
// off the table, also one that cannot be read: what is touched is always what was scanned last. What was checked on it is kept.
// Errors: every refusal is a sentence in `refusal`. Thread: GUI thread.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include "core/gear/tag.h"

namespace snugline::models {

class Choices;
class Desk;
class DockTable;

class DockModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built where the app is put together")
  Q_PROPERTY(Stage stage READ stage NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)  // a write is on its way to the disk
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString meant READ meant NOTIFY changed)       // with the refusal: what the scanner seems to have sent; empty else
  Q_PROPERTY(QString doubted READ doubted NOTIFY changed)   // with the refusal: what was read, and may be right; empty else
  Q_PROPERTY(QVariantList asked READ asked NOTIFY changed)  // {unit, title, detail}: the tag means several; one is to be touched
  Q_PROPERTY(QString askedWords READ askedWords NOTIFY changed)
  Q_PROPERTY(bool canBeNew READ canBeNew NOTIFY changed)  // it may also be a helmet that is not in the Book
  Q_PROPERTY(QString serial READ serial NOTIFY changed)
  Q_PROPERTY(QString remark READ remark NOTIFY changed)  // what the tag says besides, or a wrong check digit
  Q_PROPERTY(bool isKnown READ isKnown NOTIFY changed)
  Q_PROPERTY(QString unitId READ unitId NOTIFY changed)        // of a known one
  Q_PROPERTY(QString kindWords READ kindWords NOTIFY changed)  // "Alder A1, L"
  Q_PROPERTY(QStringList due READ due NOTIFY changed)          // on a known unit, in words
  Q_PROPERTY(QVariantList sheets READ sheets NOTIFY changed)   // {key, name, isChosen}
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY changed)     // {key, name, isOpen, isChosen}; closed until a sheet is chosen
  Q_PROPERTY(QVariantList years READ years NOTIFY changed)     // {year, isRecertified, isMark}
  Q_PROPERTY(bool isLabelMissing READ isLabelMissing NOTIFY changed)
  Q_PROPERTY(bool isLabelUnreadable READ isLabelUnreadable NOTIFY changed)
  Q_PROPERTY(bool isDateKnown READ isDateKnown NOTIFY changed)
  Q_PROPERTY(QString labelWords READ labelWords NOTIFY changed)
  Q_PROPERTY(bool isReturnAsked READ isReturnAsked NOTIFY changed)   // it stands as in repair or sent out: what was done comes first
  Q_PROPERTY(QVariantMap lastReturn READ lastReturn NOTIFY changed)  // {by, done, paper, isCleaned, words} in this sitting; may be empty
  Q_PROPERTY(bool isLabelRead READ isLabelRead NOTIFY changed)       // at this table, not only before
  Q_PROPERTY(bool isLabelGood READ isLabelGood NOTIFY changed)
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)            // as in sentences_gear.h
  Q_PROPERTY(int faultOpen READ faultOpen NOTIFY changed)               // the point whose fault is being named, -1 none
  Q_PROPERTY(QString outcomeWords READ outcomeWords NOTIFY changed)     // what comes of it as it stands
  Q_PROPERTY(bool isInServiceOpen READ isInServiceOpen NOTIFY changed)  // *In service* can be touched
  Q_PROPERTY(bool isAllSoundOpen READ isAllSoundOpen NOTIFY changed)    // one touch may check all seven and put it in service
  Q_PROPERTY(int uncheckedCount READ uncheckedCount NOTIFY changed)     // of the seven points
  Q_PROPERTY(bool isHoldOpen READ isHoldOpen NOTIFY changed)
  Q_PROPERTY(bool isReasonNeeded READ isReasonNeeded NOTIFY changed)  // a hold that no fault explains needs words
  Q_PROPERTY(bool isWorn READ isWorn NOTIFY changed)                  // paired, so a hold says where it is
  Q_PROPERTY(bool isWhatComplete READ isWhatComplete NOTIFY changed)  // sheet, size and label are said
  Q_PROPERTY(QString offer READ offer NOTIFY changed)                 // sheet, size and label of the one before, in this sitting
  Q_PROPERTY(QString offerSerial READ offerSerial NOTIFY changed)
  Q_PROPERTY(QVariantList aside READ aside NOTIFY changed)     // {title, detail}: taken off the table unfinished, latest first
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what undo would take back
  Q_PROPERTY(
      QVariantList arrivals READ arrivals NOTIFY changed)  // {unit, serial, kind, status, isHeld, photos (words)} of today, latest first
  Q_PROPERTY(int count READ count NOTIFY changed)          // of today at this dock
  Q_PROPERTY(int inServiceCount READ inServiceCount NOTIFY changed)
  Q_PROPERTY(int heldCount READ heldCount NOTIFY changed)

 public:
  enum class Stage { Waiting, What, Points };
  Q_ENUM(Stage)

  // The unit on the table is kept beside the file of choices; where that has none, in memory only.
  DockModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);
  ~DockModel() override;

  [[nodiscard]] Stage stage() const;
  [[nodiscard]] bool isBusy() const;
  [[nodiscard]] QString refusal() const;
  [[nodiscard]] QString meant() const;
  [[nodiscard]] QString doubted() const;
  [[nodiscard]] QVariantList asked() const;
  [[nodiscard]] QString askedWords() const;
  [[nodiscard]] bool canBeNew() const;
  [[nodiscard]] QString serial() const;
  [[nodiscard]] QString remark() const;
  [[nodiscard]] bool isKnown() const;
  [[nodiscard]] QString unitId() const;
  [[nodiscard]] QString kindWords() const;
  [[nodiscard]] QStringList due() const;
  [[nodiscard]] QVariantList sheets() const;
  [[nodiscard]] QVariantList sizes() const;
  [[nodiscard]] QVariantList years() const;
  [[nodiscard]] bool isLabelMissing() const;
  [[nodiscard]] bool isLabelUnreadable() const;
  [[nodiscard]] bool isDateKnown() const;
  [[nodiscard]] QString labelWords() const;
  [[nodiscard]] bool isReturnAsked() const;
  [[nodiscard]] QVariantMap lastReturn() const;
  [[nodiscard]] bool isLabelRead() const;
  [[nodiscard]] bool isLabelGood() const;
  [[nodiscard]] QVariantList points() const;
  [[nodiscard]] int faultOpen() const;
  [[nodiscard]] QString outcomeWords() const;
  [[nodiscard]] bool isInServiceOpen() const;
  [[nodiscard]] bool isAllSoundOpen() const;
  [[nodiscard]] int uncheckedCount() const;
  [[nodiscard]] bool isHoldOpen() const;
  [[nodiscard]] bool isReasonNeeded() const;
  [[nodiscard]] bool isWorn() const;
  [[nodiscard]] bool isWhatComplete() const;
  [[nodiscard]] QString offer() const;
  [[nodiscard]] QString offerSerial() const;
  [[nodiscard]] QVariantList aside() const;
  [[nodiscard]] QString lastWords() const;
  [[nodiscard]] QVariantList arrivals() const;
  [[nodiscard]] int count() const;
  [[nodiscard]] int inServiceCount() const;
  [[nodiscard]] int heldCount() const;

  Q_INVOKABLE void scan(const QString& text);         // with or without the scanner's Enter
  Q_INVOKABLE void takeMeant();                       // reads what the scanner seems to have sent
  Q_INVOKABLE void takeDoubted();                     // what was read is right
  Q_INVOKABLE void chooseAsked(const QString& unit);  // empty: none of them, it is new here
  Q_INVOKABLE void dropAsked();
  Q_INVOKABLE void chooseSheet(const QString& hash);
  Q_INVOKABLE void chooseSize(const QString& name);
  Q_INVOKABLE void chooseYear(int year, bool isMakersMark);
  Q_INVOKABLE void chooseDate(const QString& isoDay, const QString& source);
  Q_INVOKABLE void chooseLabelMissing();
  Q_INVOKABLE void chooseLabelUnreadable();
  Q_INVOKABLE void asTheLast();  // model, size and label; never a point
  Q_INVOKABLE void toWhat();     // back to sheet, size and label
  Q_INVOKABLE void toPoints();
  Q_INVOKABLE void touchPoint(int index);  // unseen, sound, fault, unseen
  Q_INVOKABLE void sayFault(int index, const QString& what);
  Q_INVOKABLE void closeFault();
  Q_INVOKABLE void allSound();
  Q_INVOKABLE void putInService();
  Q_INVOKABLE void sayBack(const QString& by, const QString& done, const QString& paper, bool isCleaned);
  Q_INVOKABLE void putAllSoundInService();
  Q_INVOKABLE void hold(const QString& what, bool isWithAthlete);  // what may be empty when a fault says it already
  Q_INVOKABLE void undoLast();
  Q_INVOKABLE void putAside();  // nothing is written, and nothing kept
  Q_INVOKABLE void takeUp(int aside);

 signals:
  void changed();
  void taken(const QString& serial, bool isInService);  // on disk

 private:
  void read(const QString& scanned, bool isRight);
  void placeTag(const std::string& read, const gear::Tag& tag, const std::string& unit);
  void clearTable();
  void finished();
  void change(const std::function<void(DockTable&)>& touch);
  void write(const std::string& what, bool isWithAthlete, bool isInService);

  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::models
