// SPDX-License-Identifier: Apache-2.0
// Purpose: the Say door: an athlete gives the jersey number, says by touch where the helmet is tight or loose, and is told what happens
// next. Whoever types a number sees initials and what was done to that helmet, never what was reported before. The red way works at every
// step, with or without a number, and is on the board from its first touch (core/book/rights.h says who closes it).
// What is said carries no person: staff sign, athletes do not. It clears itself when nobody touches it (kSaidStaysMs, kQuietStaysMs); what
// was typed until then is reported.
// Errors: what could not be written is `trouble`, one sentence, and nothing that was touched is lost. Thread: GUI thread only.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <QVariantList>
#include <QVariantMap>

#include "choices.h"
#include "desk.h"
#include "sentences.h"

namespace snugline::models {

inline constexpr int kSaidStaysMs = 15'000;   // the confirmation, ours
inline constexpr int kQuietStaysMs = 45'000;  // anything else that nobody touches, ours

class SayModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  // "number", "who", "where", "words", "said", "stop"
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)  // "en", "es": of the athletes' side, kept
  Q_PROPERTY(QString otherLanguage READ otherLanguage NOTIFY changed)          // what the switch on the first screen changes to
  Q_PROPERTY(QString otherLanguageText READ otherLanguageText NOTIFY changed)  // its own name for itself
  Q_PROPERTY(QString step READ step NOTIFY changed)
  Q_PROPERTY(QString number READ number WRITE setNumber NOTIFY changed)
  Q_PROPERTY(QVariantList matches READ matches NOTIFY changed)  // {name: place in the list, text: "D. O."}
  Q_PROPERTY(bool isNobody READ isNobody NOTIFY changed)        // nobody wears a number that begins so
  Q_PROPERTY(QString jersey READ jersey NOTIFY changed)
  Q_PROPERTY(QString initials READ initials NOTIFY changed)  // whose helmet it is
  Q_PROPERTY(bool isShared READ isShared CONSTANT)           // several athletes speak here: one may not be the one they typed
  Q_PROPERTY(QStringList seen READ seen NOTIFY changed)      // what was done to the helmet
  Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)
  Q_PROPERTY(QVariantMap findings READ findings NOTIFY changed)  // on one's own phone: what was said and nobody has seen yet
  Q_PROPERTY(QVariantList places READ places NOTIFY changed)     // {name, text, chosen}: the drawing in words
  Q_PROPERTY(QString place READ place NOTIFY changed)            // "jaw-left"; empty while none was touched
  Q_PROPERTY(QString placeText READ placeText NOTIFY changed)    // "Your left cheek"
  Q_PROPERTY(QString ask READ ask NOTIFY changed)
  Q_PROPERTY(QString words READ words NOTIFY changed)
  Q_PROPERTY(QString said READ said NOTIFY changed)            // what was recorded, in plain words
  Q_PROPERTY(QString next READ next NOTIFY changed)            // what happens now and when
  Q_PROPERTY(bool isBroken READ isBroken NOTIFY changed)       // something broke: what is next is said as a stop
  Q_PROPERTY(QString emergency READ emergency NOTIFY changed)  // "Emergency: call 911", and the team's plan
  Q_PROPERTY(QString notHere READ notHere CONSTANT)
  Q_PROPERTY(QString caution READ caution CONSTANT)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
 public:
  SayModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void begin();        // an empty screen, whoever was there before
  Q_INVOKABLE void walkAway();     // the same, and what was typed is reported
  Q_INVOKABLE void touched();      // somebody is there
  Q_INVOKABLE void enterNumber();  // what is typed is the whole number
  Q_INVOKABLE void identify(const QString& name);
  Q_INVOKABLE void touchPlace(const QString& name);  // the same once more takes it back
  Q_INVOKABLE void feels(const QString& feels);      // "tight", "loose": needs a place, and records
  Q_INVOKABLE void hairChanged();
  Q_INVOKABLE void somethingBroke();
  Q_INVOKABLE void unwell();            // the red way: recorded at once, by whoever is known by then
  Q_INVOKABLE void toldAdult();         // leaves the stop screen
  Q_INVOKABLE void touchedByMistake();  // likewise, and staff ask
  Q_INVOKABLE void openWords();
  Q_INVOKABLE void typeWords(const QString& words);  // as they are typed
  Q_INVOKABLE void keepWords(const QString& words);  // at most kWordsLimit characters, the rest is cut
  Q_INVOKABLE void another();                        // one more thing to say, by the same athlete
  Q_INVOKABLE void takeBack();                       // what was just recorded
  Q_INVOKABLE void backToWhere();

  [[nodiscard]] QString language() const { return m_choices->sayLanguage(); }
  void setLanguage(const QString& language) { m_choices->setSayLanguage(language); }
  [[nodiscard]] QString otherLanguage() const { return language() == QLatin1String("es") ? QStringLiteral("en") : QStringLiteral("es"); }
  [[nodiscard]] QString otherLanguageText() const;
  [[nodiscard]] QString step() const { return m_step; }
  [[nodiscard]] QString number() const { return m_number; }
  void setNumber(const QString& number);
  [[nodiscard]] QVariantList matches() const;
  [[nodiscard]] bool isNobody() const;
  [[nodiscard]] virtual QString jersey() const;
  [[nodiscard]] QString initials() const;
  [[nodiscard]] virtual bool isShared() const { return true; }
  [[nodiscard]] QStringList seen() const { return m_seen; }
  [[nodiscard]] virtual QVariantMap drawn() const;
  [[nodiscard]] virtual QVariantMap findings() const { return {}; }
  [[nodiscard]] QVariantList places() const;
  [[nodiscard]] QString place() const { return m_place; }
  [[nodiscard]] QString placeText() const { return yourPlace(m_place); }
  [[nodiscard]] QString ask() const;
  [[nodiscard]] QString words() const { return m_words; }
  [[nodiscard]] QString said() const { return m_said; }
  [[nodiscard]] QString next() const { return m_next; }
  [[nodiscard]] bool isBroken() const { return m_isBroken; }
  [[nodiscard]] QString emergency() const;
  [[nodiscard]] QString notHere() const { return GuideWords::notHere(); }
  [[nodiscard]] QString caution() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  void setQuietTime(int saidMs, int otherMs);  // for tests that do not wait

 signals:
  void changed();
  void cleared();

 protected:
  // What an athlete's own phone does otherwise (phone_say.h).
  using Recorded = std::function<void(const Result<std::string>& fact)>;
  virtual void send(const season::SaidRecord& said, Recorded done);
  virtual void follow(const std::string& athlete, const std::string& said, bool isMistake, Recorded done);
  virtual void takeBackFact(const std::string& fact, Recorded done);
  [[nodiscard]] virtual QString nextWords(const season::SaidRecord& said) const;
  virtual void tellSeen();
  void arrive(const std::string& athlete);  // it is known who says it
  void showSeen(const QStringList& seen);
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] static QVariantMap findingsOf(const std::vector<season::SaidRecord>& words);

 private:
  // The red way was touched: its fact once it is on disk, and what followed on the stop screen until then.
  struct Hit {
    std::string athlete, fact;  // athlete empty: no number was given
    std::optional<bool> isMistake;
  };
  [[nodiscard]] const season::AthleteRecord* record() const;
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] static QString placeWords(const QString& name);
  [[nodiscard]] static QString yourPlace(const QString& name);
  [[nodiscard]] QString initialsOf(const season::AthleteRecord& athlete, int letters) const;
  void report(season::SaidRecord said);  // nobody waits for it
  void leaveStop(bool isMistake);
  void sendFollow(const std::shared_ptr<Hit>& hit);
  void record(season::SaidRecord said, const QString& words);
  void go(const QString& step);

  Desk* m_desk;
  Choices* m_choices;
  QTimer m_quiet;
  int m_saidMs = kSaidStaysMs, m_otherMs = kQuietStaysMs;
  QString m_step = QStringLiteral("number");
  QString m_number, m_place, m_words, m_typed, m_said, m_next, m_trouble;
  std::vector<std::string> m_matches;
  std::string m_athlete, m_fact;
  QStringList m_seen;
  std::shared_ptr<Hit> m_hit;
  bool m_isBusy = false, m_isBroken = false;
};

}  // namespace snugline::models
