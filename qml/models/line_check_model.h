// SPDX-License-Identifier: Apache-2.0
// Purpose: the line check: everybody of a lane stands in a line, which is gone along in screens of a few; only what is off is touched, and
// one touch on each screen notes "brow, straps, hold seen in line" for those on it. Who may stand in it and what is written,
// core/book/acts.h says; never nine marks. Undo takes back the last screen that was noted.
// Errors: a refused check is `trouble`, one sentence, and nothing is written. Thread: GUI thread only.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "choices.h"
#include "desk.h"
#include "last_act.h"
#include "sentences.h"

namespace snugline::models {

class LineModel;

class LineCheckModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QVariantList tiles READ tiles NOTIFY
                 changed)  // {athlete, jersey, name, noted, state}; state "", "off", "away", "snug" once it is written
  Q_PROPERTY(QString summary READ summary NOTIFY changed)      // "14 in the line, screen 1 of 2. Touch only what is off."
  Q_PROPERTY(QStringList apart READ apart NOTIFY changed)      // who is in the lane and cannot be seen in the line, and why
  Q_PROPERTY(QString allWords READ allWords NOTIFY changed)    // on the button: "These 10: checked"
  Q_PROPERTY(QString offWords READ offWords NOTIFY changed)    // under it, where something is off: "and 1 with something off"
  Q_PROPERTY(QString doneWords READ doneWords NOTIFY changed)  // of the screen noted last; empty before
  Q_PROPERTY(bool isThrough READ isThrough NOTIFY changed)     // every screen was noted
  Q_PROPERTY(bool canRecord READ canRecord NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString openName READ openName NOTIFY changed)             // whose tile is open: "57 Okafor"
  Q_PROPERTY(QVariantList openChoices READ openChoices NOTIFY changed)  // {name, text, chosen}: what can be off
  Q_PROPERTY(bool isOpenAway READ isOpenAway NOTIFY changed)
 public:
  LineCheckModel(Desk* desk, Choices* choices, LineModel* line, QObject* parent = nullptr);

  Q_INVOKABLE void begin();  // gathers the line as it stands on the board
  Q_INVOKABLE void openTile(const QString& athlete);
  Q_INVOKABLE void note(const QString& name);  // "brow-over": once it is off, again it is not
  Q_INVOKABLE void setAway(bool isAway);       // the open one does not stand in the line
  Q_INVOKABLE void record();
  Q_INVOKABLE void undo() { m_last.undo(); }
  Q_INVOKABLE void dismissTrouble();

  [[nodiscard]] QVariantList tiles() const;
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QStringList apart() const { return m_apart; }
  [[nodiscard]] QString allWords() const;
  [[nodiscard]] QString offWords() const;
  [[nodiscard]] QString doneWords() const { return m_last.words(); }
  [[nodiscard]] bool isThrough() const { return !m_screens.empty() && m_screen == m_screens.size(); }
  [[nodiscard]] bool canRecord() const { return !m_isBusy && m_screen < m_screens.size(); }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] QString openName() const;
  [[nodiscard]] QVariantList openChoices() const;
  [[nodiscard]] bool isOpenAway() const { return m_away.contains(m_open); }

 signals:
  void changed();
  void recorded();

 private:
  using Off = std::map<fit::Mark, fit::Finding>;
  // Whoever cannot be seen in the line goes apart. True: somebody of this screen did.
  bool sift(std::vector<std::string>& athletes);
  [[nodiscard]] std::vector<std::string> shown() const;    // of this screen; of all when it is through
  [[nodiscard]] std::vector<std::string> present() const;  // of this screen, without those away
  [[nodiscard]] int offCount() const;                      // of those present
  [[nodiscard]] QString nameOf(const std::string& athlete) const;
  [[nodiscard]] Speech speech() const;

  Desk* m_desk;
  Choices* m_choices;
  LineModel* m_lineModel;
  std::vector<std::vector<std::string>> m_screens;  // by jersey
  std::size_t m_screen = 0;                         // past the last: it is through
  std::map<std::string, Off> m_off;
  std::set<std::string> m_away;
  std::string m_open;
  QStringList m_apart;
  LastAct m_last;
  QString m_trouble;
  bool m_isBusy = false;
};

}  // namespace snugline::models
