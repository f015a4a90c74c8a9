// SPDX-License-Identifier: Apache-2.0
// Purpose: the guide for the screen: the page that stands (guide_page.h), and taking answers to the Book. Each answer is on disk before the
// next page shows; where a check stands is read from the Book alone, so that a restart comes to the same question. At the end of the
// open steps the check is ended and `verdict` says what came of it.
// Errors: a refused or failed answer is `trouble`, one sentence; the question stays. Thread: GUI thread only.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>

#include "choices.h"
#include "desk.h"
#include "guide_page.h"
#include "last_act.h"

namespace snugline::models {

class GaugeModel;

class GuideModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString checkId READ checkId NOTIFY changed)
  Q_PROPERTY(QString athleteId READ athleteId NOTIFY changed)
  Q_PROPERTY(QString stage READ stage NOTIFY changed)  // as stageCode(), or "verdict"
  Q_PROPERTY(QString who READ who NOTIFY changed)      // "88 Lindqvist, helmet H-0207"
  Q_PROPERTY(QString kind READ kind NOTIFY changed)    // "First fit"
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString ask READ ask NOTIFY changed)
  Q_PROPERTY(QString hint READ hint NOTIFY changed)
  Q_PROPERTY(QString notice READ notice NOTIFY changed)
  Q_PROPERTY(QString reopens READ reopens NOTIFY changed)
  Q_PROPERTY(QString caution READ caution NOTIFY changed)  // where advice is given
  Q_PROPERTY(QVariantList answers READ answers NOTIFY changed)
  Q_PROPERTY(QVariantList choices READ choices NOTIFY changed)
  Q_PROPERTY(QString broken READ broken NOTIFY changed)
  Q_PROPERTY(QString another READ another NOTIFY changed)
  Q_PROPERTY(QString pumps READ pumps NOTIFY changed)  // what pumps did so far with this model, beside the advice
  Q_PROPERTY(QVariantMap entry READ entry NOTIFY
                 changed)  // the number being entered: {label, port, known, value, unit, otherUnit, note, message, typed}
  Q_PROPERTY(bool canReadGauge READ canReadGauge NOTIFY changed)  // beside the advice that stands
  Q_PROPERTY(bool hasAir READ hasAir NOTIFY changed)
  Q_PROPERTY(QString drawing READ drawing NOTIFY changed)
  Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)  // what the drawing shows: view, focus, touch, findings, motion, sheet, hair
  Q_PROPERTY(bool isBrow READ isBrow NOTIFY changed)
  // While it is dragged only these move; the page is made anew when the gap is known for the first time.
  Q_PROPERTY(bool isGapKnown READ isGapKnown NOTIFY gapChanged)
  Q_PROPERTY(double gapMm READ gapMm NOTIFY gapChanged)
  Q_PROPERTY(QString gapText READ gapText NOTIFY gapChanged)
  Q_PROPERTY(QString gapText2 READ gapText2 NOTIFY gapChanged)
  Q_PROPERTY(QString gapAnswer READ gapAnswer NOTIFY gapChanged)  // on the answer: "It sits at 38 mm"
  Q_PROPERTY(QString gapFound READ gapFound NOTIFY gapChanged)    // under it: "Sits high"
  Q_PROPERTY(QVariantList ladder READ ladder NOTIFY changed)
  Q_PROPERTY(int ladderAt READ ladderAt NOTIFY changed)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
  Q_PROPERTY(bool canStepBack READ canStepBack NOTIFY changed)  // a question opened out of turn: back goes to where the guide stands
  Q_PROPERTY(QString undoWords READ undoWords NOTIFY changed)   // what undo takes back
  Q_PROPERTY(QVariantMap verdict READ verdict NOTIFY changed)   // {word, tone, reasons, next, signed, strip, points, caution, verdict}
  Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged)
 public:
  GuideModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  // action: "first", "refit", "look" begin a check; "resume" takes the open one up. `begun` follows, or `trouble` says why not.
  Q_INVOKABLE void start(const QString& athlete, const QString& action);
  Q_INVOKABLE void answer(const QString& name);
  Q_INVOKABLE void choose(const QString& name);       // one of the choices, or a part touched on the drawing
  Q_INVOKABLE void moveGap(double mm);                // dragged
  Q_INVOKABLE void nudgeGap(int steps);               // plus and minus
  Q_INVOKABLE void typeEntry(const QString& digits);  // the number pad, in the units chosen
  Q_INVOKABLE void stepEntry(int steps);              // plus and minus
  Q_INVOKABLE void setEntry(int pascals);             // a read-out fills it
  Q_INVOKABLE void takeLive();                        // the gauge's steady value, with its name and raw values
  Q_INVOKABLE void switchUnit();
  Q_INVOKABLE void openGauge();  // after the change that is advised
  Q_INVOKABLE void readGauge();  // and change nothing
  Q_INVOKABLE void openBroken();
  Q_INVOKABLE void anotherWay();
  Q_INVOKABLE void openStep(const QString& name);  // of the ladder
  Q_INVOKABLE void stepBack();
  Q_INVOKABLE void undo();
  Q_INVOKABLE void sayUnwell();
  Q_INVOKABLE void endHere();  // ends the check as it stands
  Q_INVOKABLE void dismissTrouble();
  // The open check that this device began today, newest first; false when there is none.
  bool takeUpOpenCheck(const std::string& device);

  [[nodiscard]] QString checkId() const { return QString::fromStdString(m_check); }
  [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete); }
  // "who" while a check that is to end waits for somebody to sign it.
  [[nodiscard]] QString stage() const {
    return m_isEnded ? QStringLiteral("verdict") : m_asksWho ? QStringLiteral("who") : stageCode(m_page.stage);
  }
  [[nodiscard]] QString who() const { return m_who; }
  [[nodiscard]] QString kind() const { return m_kind; }
  [[nodiscard]] QString title() const { return m_page.title; }
  [[nodiscard]] QString ask() const { return m_page.ask; }
  [[nodiscard]] QString hint() const { return m_page.hint; }
  [[nodiscard]] QString notice() const { return m_page.notice; }
  [[nodiscard]] QString reopens() const { return m_page.reopens; }
  [[nodiscard]] QString caution() const;
  [[nodiscard]] QVariantList answers() const { return m_page.answers; }
  [[nodiscard]] QVariantList choices() const { return m_page.choices; }
  [[nodiscard]] QString broken() const { return m_page.broken; }
  [[nodiscard]] QString another() const { return m_page.another; }
  [[nodiscard]] QString pumps() const { return m_page.pumps; }
  void useGauge(GaugeModel* gauge) { m_gauge = gauge; }
  void useLast(LastAct* last) { m_last = last; }
  [[nodiscard]] QVariantMap entry() const { return m_page.entry; }
  [[nodiscard]] bool canReadGauge() const { return m_page.canReadGauge; }
  [[nodiscard]] bool hasAir() const { return m_drawn.value(QStringLiteral("hasAir")).toBool(); }
  [[nodiscard]] QString drawing() const { return m_page.drawing; }
  [[nodiscard]] QVariantMap drawn() const { return m_drawn; }
  [[nodiscard]] bool isBrow() const { return m_page.isBrow; }
  [[nodiscard]] bool isGapKnown() const { return m_page.isGapKnown; }
  [[nodiscard]] double gapMm() const { return m_page.gapMm; }
  [[nodiscard]] QString gapText() const { return m_page.gapText; }
  [[nodiscard]] QString gapText2() const { return m_page.gapText2; }
  [[nodiscard]] QString gapAnswer() const { return m_page.gapAnswer; }
  [[nodiscard]] QString gapFound() const { return m_page.gapFound; }
  [[nodiscard]] QVariantList ladder() const { return m_page.ladder; }
  [[nodiscard]] int ladderAt() const { return m_page.ladderAt; }
  [[nodiscard]] bool canUndo() const;
  [[nodiscard]] bool canStepBack() const;
  [[nodiscard]] QString undoWords() const { return m_undoWords; }
  [[nodiscard]] QVariantMap verdict() const { return m_verdict; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void gapChanged();
  void troubleChanged();
  void busyChanged();
  void begun();      // a check stands open and the page shows
  void left();       // its beginning was taken back
  void whoWanted();  // whoever signs is to be asked

 private:
  [[nodiscard]] const season::CheckRecord* check() const;
  [[nodiscard]] Speech speech() const;
  void openCheck(const std::string& check);
  void refresh();
  void show(const season::CheckRecord& check);
  void showVerdict();
  [[nodiscard]] const gear::ModelSheet* sheetOfCheck(const season::UnitRecord* unit) const;
  [[nodiscard]] bool isOfSwap() const;  // the last act about this athlete began this check
  void take(std::vector<fit::Answer> answers);
  void answerMark(const QString& name);
  void answerFinding(fit::Finding finding);
  void answerAdvice(const QString& name);
  void answerFitted(const QString& name);
  void answerReading(const QString& name);
  void answerGauge(const QString& name);
  void choosePlace(const QString& name);
  void clearEntry();
  [[nodiscard]] std::optional<gear::Port> entryPort() const;
  void answerPoint(const QString& name);
  void finish(bool isOfItself);  // isOfItself: nothing was left open. Where nobody is signed in, asks who first
  void askWho();
  void setGap(std::int64_t um);
  void submit(Desk::Job job, std::function<void(const book::Appended&)> then);
  void setTrouble(const QString& sentence);
  void setBusy(bool isBusy);

  Desk* m_desk;
  Choices* m_choices;
  GaugeModel* m_gauge = nullptr;
  LastAct* m_last = nullptr;  // of the athlete's pages: a swap begins a check too
  std::string m_check, m_athlete, m_unit;
  Touches m_touches;
  GuidePage m_page;
  QVariantMap m_drawn, m_verdict;
  std::string m_sheet;  // hash of the sheet that the check shown is judged by
  QString m_who, m_kind, m_undoWords, m_trouble;
  std::vector<std::string> m_endFacts;   // what ending the check wrote down, for undo
  std::vector<std::string> m_lastFacts;  // of the last touch
  bool m_isEnded = false;
  bool m_asksWho = false, m_isWhoWanted = false, m_isOfItself = false;
  bool m_isBusy = false;
};

}  // namespace snugline::models
