// SPDX-License-Identifier: Apache-2.0
// Purpose: a cold field for journeys at the Line: a Book of three athletes in a folder of its own, the shipping app on it with a clock
// that moves at every touch, and a finger. Touches are real touch events on what is drawn; nothing is called behind the screens' back.
// After every act the screens are held against fresh eyes (tests/eyes), and once at the end against a whole fresh app: where they differ,
// the touch is false, and a field that was left untrue does not end well. Choices of the device are kept where choices.ini lies in the
// folder. Thread: GUI thread.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>
#include <QTest>

#include "core/book/acts.h"
#include "core/quantity/time.h"
#include "fresh_eyes.h"
#include "platform/app/composition.h"

class QGuiApplication;
class QQuickItem;

namespace snugline::field {

inline constexpr Day kToday{20740};  // 2026-10-14
[[nodiscard]] Instant now();         // 14:00 of that day, when a field begins

// 57 Okafor: paired, never fitted. 88 Lindqvist: fitted and seen since, weekly look due today. 12 Marsh: fitted yesterday, break-in look
// due.
// sheet: of demo/data.
void makeBook(const std::string& folder, const std::string& sheet = "sheets/alder-a1.json");

// So many athletes with a helmet each, "T-0001" and on, and so many helmets on the shelf, "S-0001" and on; nobody was fitted.
void makeSquad(const std::string& folder, int athletes, int spares);

// Athletes who were fitted and checked indoors at 21 C and 180 m with their crown air gauged: nothing is due on the day.
void makeColdBook(const std::string& folder, const std::vector<std::string>& jerseys = {"05", "12", "31", "57", "74", "88"});
// Five readings of the crown of that athlete's helmet in that Book, off the head, four hours and 0.1 kPa apart: 18 to 17.6 kPa.
void loseAir(const std::string& folder, const std::string& jersey);

// An athlete of makeBook said this place hurts, so many days ago each; written by another device's hand before the field opens.
void sayEarlier(const std::string& folder, const std::string& jersey, fit::Mark where, fit::Side side, const std::vector<int>& daysAgo);

QGuiApplication& application();                                     // made at the first call
[[nodiscard]] QTest::QTouchEventSequence fingers(QWindow& window);  // as many as are named in it

class Field {
 public:
  using MakeGauge = std::function<std::unique_ptr<ports::PressureGauge>()>;
  // at: when it begins; another than now() for an app that is started later.
  explicit Field(const std::string& folder, const MakeGauge& makeGauge = {}, Instant at = now());
  ~Field();

  [[nodiscard]] bool open();  // waits for the first screen; somebody is signed in where nobody has a code
  // Touches the item of that name, once it is there, enabled and inside the window. False when it does not come.
  bool touch(const QString& name);
  // Drags a finger from the front edge of the drawn shell so far up, in millimetres of the drawing. False when there is none to drag.
  bool dragEdge(double millimetres);
  void touchAt(double x, double y);        // in shares of the window, whatever is there
  void press(int key, int modifiers = 0);  // of the device: Qt::Key, Qt::KeyboardModifiers
  // Every word that the screen holds, shown or not: texts, titles, spoken names, and what lists are made of.
  [[nodiscard]] QStringList everyWord() const;
  bool until(const std::function<bool()>& isSo);
  [[nodiscard]] QQuickItem* find(const QString& name) const;  // visible ones only
  [[nodiscard]] bool reads(const QString& text) const;        // some visible text contains it now
  bool shows(const QString& text) {
    return until([&] { return reads(text); });
  }
  [[nodiscard]] QString stage() const;
  [[nodiscard]] QString title() const;
  [[nodiscard]] QString screen() const;
  [[nodiscard]] int touches() const { return m_touches; }
  void countAnew() { m_touches = 0; }
  [[nodiscard]] const season::AthleteRecord* athlete(const std::string& jersey) const;
  [[nodiscard]] const season::Views& views() const;
  [[nodiscard]] eyes::MovingTime& time() { return *m_time; }
  bool passDays(int days);                     // nobody touches the glass meanwhile; true where it then shows the new day
  bool isTrue();                               // looks now, whether or not anything was written
  void closeEyes() { m_areEyesOpen = false; }  // for a life that is killed: looking seals the Book, which a killed app had not
  [[nodiscard]] app::Composition& app() { return *m_app; }
  [[nodiscard]] ports::MemoryOutbox& outbox() { return *m_outbox; }  // what was printed and handed out

 private:
  [[nodiscard]] eyes::Glass glass() const;
  bool look();
  bool isTrueForAFreshApp();

  std::string m_folder;
  std::shared_ptr<eyes::MovingTime> m_time;
  std::unique_ptr<eyes::Hand> m_hand;
  bool m_areEyesOpen = true, m_isStirred = false;
  int m_untruths = 0;
  QString m_lookedAt;  // the screen
  std::shared_ptr<ports::MemoryOutbox> m_outbox = std::make_shared<ports::MemoryOutbox>();
  std::unique_ptr<app::Composition> m_app;
  int m_touches = 0;
};

}  // namespace snugline::field
