// SPDX-License-Identifier: Apache-2.0
// Purpose: codes of core -> sentences for people, translated, with numbers in the unit system chosen. The one place of the app where
// words are made (with sentences_gear.h); QML shows them as they come. Words are about equipment only. Thread: GUI thread (translation is
// looked up there).
#pragma once

#include <optional>

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/fit/guide.h"
#include "core/fit/size.h"
#include "core/season/board.h"
#include "core/season/record.h"

namespace snugline::models {

// What a sentence needs to know beside the thing it speaks of.
struct Speech {
  const season::Views& views;
  UnitSystem units = UnitSystem::us;
  Day today;
  bool areNamesShort = false;
  season::Conditions weather = {};                 // as it counts now
  std::optional<UnitSystem> gauge = std::nullopt;  // of gauge values, where another was chosen
  [[nodiscard]] UnitSystem gaugeUnits() const { return gauge.value_or(units); }
};

// Days, times, people and numbers.
struct PlainWords {
  Q_DECLARE_TR_FUNCTIONS(PlainWords)
 public:
  static QString day(Day day, Day today);                                    // "30 Sep", with the year when it is another
  static QString weekdayAndDay(Day day);                                     // "Wed 14 Oct"
  static QString dueDay(Day day, Day today);                                 // "today", "tomorrow", "Thu 15 Oct"
  static QString time(Instant at);                                           // "08:12"
  static QString moment(Instant at, Day today);                              // "08:12" today, else "30 Sep"
  static QString person(const season::Views& views, const std::string& id);  // initials, empty when not known
  static QString name(const Speech& speech, const std::string& family, const std::string& given);       // "Okafor, Dele" or "O. D."
  static QString shortName(const Speech& speech, const std::string& family, const std::string& given);  // "Okafor" or "O. D."
  static QString list(const QStringList& parts);                                                        // "brow, ears and nape"
  static QString percent(double odds);                                                                  // "84 %"
  static QString text(const std::string& utf8);       // of others, as it may be shown: core/book/shown_text.h
  static QString number(Length v, UnitSystem units);  // as core prints it
  static QString tape(Length v, UnitSystem units);    // of a head: as its tape is read
  static QString sentenceCase(const QString& words);  // first letter raised
};

// The board: lanes, reasons, what a row offers.
struct DueWords {
  Q_DECLARE_TR_FUNCTIONS(DueWords)
 public:
  static QString lane(season::Lane lane);
  static QString laneEmpty(season::Lane lane);
  static QString reason(const season::DueReason& reason, const Speech& speech);
  static QString action(const season::DueRow& row);
};

// The nine marks in their own words; the seven points stand in sentences_gear.h.
struct MarkWords {
  Q_DECLARE_TR_FUNCTIONS(MarkWords)
 public:
  struct Fault {
    QString id;  // "fault", or "point:chin-strap" where the fault is one of the unit's points
    QString label;
    std::string what;  // recorded, in plain words
  };
  static QString name(fit::Mark mark);   // "Brow gap"
  static QString brief(fit::Mark mark);  // "brow"
  static QString ask(fit::Mark mark);
  static QString how(fit::Mark mark);                                                            // what to do to see it
  static QString answer(fit::Mark mark, fit::Finding finding);                                   // on a button: "Sits low"
  static QString found(fit::Mark mark, fit::Finding finding, fit::Side side, fit::HoldHow how);  // "jaw presses on the left"
  static QString said(fit::Mark mark, fit::Side side, fit::Feels feels);                         // "jaw tight on the left"
  static QList<Fault> faults(fit::Mark mark, const gear::ModelSheet* sheet);
  static QString side(fit::Side side);  // "Left"
  static QString holdHow(fit::HoldHow how);
  static QString view(fit::LookView view);  // "From the front"
  static QString viewAsk(fit::LookView view);
  static QString finding(fit::Finding finding);  // "snug", "not seen"
  static QString marks(fit::MarkSet set);        // "brow, ears and nape"

  static QString port(gear::Port port);  // "crown"
  static QString part(gear::Part part);  // "left jaw pad"
};

// The guide: advice, verdicts, what comes next.
struct GuideWords {
  Q_DECLARE_TR_FUNCTIONS(GuideWords)
 public:
  static QString kind(fit::CheckKind kind);                                      // "First fit"
  static QString advice(const fit::Advice& advice, const Speech& speech);        // what to do
  static QString adviceHow(const fit::Advice& advice, const fit::Setup& setup);  // how it is done, may be empty
  static QString reopens(const fit::Advice& advice);                             // "Then see again: brow, ears and nape."
  static QString adviceDone(const fit::Advice& advice);                          // on the button
  static QString verdict(fit::Verdict verdict);                                  // "Fits"
  static QString reason(const fit::Reason& reason, const fit::Setup& setup, const Speech& speech);
  static QString reasonCode(const std::string& code);  // as recorded: "brow-over"
  static QString next(const season::EndedCheck& ended, const season::UnitRecord* unit, const Speech& speech);
  static QString caution(const gear::ModelSheet* sheet);
  static QString stop();                                 // somebody feels unwell
  static QString notHere();                              // whom else to tell
  static QString emergency(const season::Views& views);  // "Emergency: call 911", and the team's plan
};

// One answer of a check, as undo names it: "Brow: front edge sits high".
[[nodiscard]] QString answerWords(const fit::Answer& answer, const Speech& speech);

}  // namespace snugline::models
