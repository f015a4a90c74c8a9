// SPDX-License-Identifier: Apache-2.0
// Purpose: past seasons, read from the log in pieces on the Book thread, and one of them opened: who had which helmet, what checks came to,
// what was missing at the close and whether it turned up; and that table as a file. Errors: `trouble`, one sentence. Thread: GUI thread.
#pragma once

#include <memory>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/past_seasons.h"
#include "core/ports/outbox.h"
#include "qml/models/desk.h"

namespace snugline::models {

class Choices;

class PastModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(QVariantList seasons READ seasons NOTIFY changed)  // {name, title, detail, more, isOpen}, latest first
  Q_PROPERTY(QString emptyWords READ emptyWords NOTIFY changed)
  Q_PROPERTY(double progress READ progress NOTIFY progressChanged)  // 0..1 while reading, below 0 when not
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)  // of the one that is open
  Q_PROPERTY(QString days READ days NOTIFY changed)
  Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)  // {name, title, count, tone}
  Q_PROPERTY(QVariantList missing READ missing NOTIFY changed)  // {unit, title, detail, tone}
  Q_PROPERTY(QVariantList pairs READ pairs NOTIFY changed)      // {athlete, unit, number, title, detail, serial}: by jersey
  Q_PROPERTY(QString place READ place NOTIFY changed)           // where the file lies
 public:
  PastModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);
  ~PastModel() override;

  void setOutbox(std::shared_ptr<ports::Outbox> outbox) { m_outbox = std::move(outbox); }

  Q_INVOKABLE void begin();  // the page was opened: reads what the log says now
  Q_INVOKABLE void leave();  // reading stops
  Q_INVOKABLE void choose(const QString& season);
  Q_INVOKABLE void handOut();  // the table of the open one, as CSV

  [[nodiscard]] QVariantList seasons() const;
  [[nodiscard]] QString emptyWords() const;
  [[nodiscard]] double progress() const { return m_progress; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] QString title() const;
  [[nodiscard]] QString days() const;
  [[nodiscard]] QVariantList figures() const;
  [[nodiscard]] QVariantList missing() const;
  [[nodiscard]] QVariantList pairs() const;
  [[nodiscard]] QString place() const { return m_place; }

 signals:
  void changed();
  void progressChanged();

 private:
  struct Reading;
  void step(const std::shared_ptr<Reading>& reading);
  [[nodiscard]] const book::PastSeason* chosen() const;
  [[nodiscard]] QString daysOf(const book::PastSeason& season) const;
  [[nodiscard]] QString helmetWords(const std::string& unit) const;
  [[nodiscard]] std::vector<const book::PastPair*> sortedPairs() const;

  Desk* m_desk;
  const Choices* m_choices;
  std::shared_ptr<ports::Outbox> m_outbox;
  std::shared_ptr<Reading> m_reading;  // the one that counts; another one's steps are let go
  std::vector<book::PastSeason> m_seasons;
  std::string m_chosen;
  double m_progress = -1;
  QString m_trouble, m_place;
};

}  // namespace snugline::models
