// SPDX-License-Identifier: Apache-2.0
// Purpose: the last act of one page: what it was, in the words that confirmed it, and taking all of it back in one append. Only the last:
// whatever the page writes next takes its place. Kept beside the choices of this device, for that day and that Book, so that a kill
// between the act and its undo leaves the way back.
// Errors: `refused` with one sentence; an act that something rests on by now can be taken back no more. Thread: GUI thread.
#pragma once

#include <string>
#include <vector>

#include <QObject>
#include <QString>

#include "choices.h"
#include "desk.h"

namespace snugline::models {

class LastAct : public QObject {
  Q_OBJECT
 public:
  // page: its name in the small file; each has its own.
  LastAct(const QString& page, Desk* desk, const Choices* choices, QObject* parent = nullptr);

  void did(std::vector<std::string> facts, const QString& words, const std::string& about = {});
  // In the words of the history: of the first fact that has some.
  void didAsRecorded(std::vector<std::string> facts, const std::string& about);
  void forget();
  void undo();

  [[nodiscard]] QString words() const { return m_words; }  // what undo takes back; empty when there is nothing
  // On a page of one athlete or helmet: only what was done about it.
  [[nodiscard]] QString wordsAbout(const std::string& about) const { return m_about == about ? m_words : QString(); }
  [[nodiscard]] const std::string& about() const { return m_about; }
  [[nodiscard]] const std::vector<std::string>& facts() const { return m_facts; }

 signals:
  void changed();
  void undone();
  void refused(const QString& why);

 private:
  void read();
  void keep();
  [[nodiscard]] QString file() const;

  QString m_page;
  Desk* m_desk;
  const Choices* m_choices;
  std::vector<std::string> m_facts;
  std::string m_about;
  QString m_words;
  bool m_isBusy = false;
};

}  // namespace snugline::models
