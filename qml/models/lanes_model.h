// SPDX-License-Identifier: Apache-2.0
// Purpose: how many helmets stood in which lane of the Line, week by week over the season, from the log. Read in pieces on the Book thread,
// so that no answer waits for it, and only while the page is open. Errors: `trouble`, one sentence. Thread: GUI thread only.
#pragma once

#include <memory>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/season/lanes.h"
#include "desk.h"
#include "sentences.h"

namespace snugline::book {
class PastLanes;
}

namespace snugline::models {

class LanesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(QVariantList columns READ columns NOTIFY changed)  // for Columns: {label, words, parts: [{value, kind, tone}]}, oldest first
  Q_PROPERTY(int chosen READ chosen NOTIFY changed)             // column whose figures are shown; -1 when there is none
  Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed)
  Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)  // of the chosen one: {name, title, count, kind, tone}
  Q_PROPERTY(QString rule READ rule NOTIFY changed)
  Q_PROPERTY(QString emptyWords READ emptyWords NOTIFY changed)     // why there is nothing to show; empty while there is, or while reading
  Q_PROPERTY(double progress READ progress NOTIFY progressChanged)  // 0..1 while reading, below 0 when not
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  explicit LanesModel(Desk* desk, QObject* parent = nullptr);
  ~LanesModel() override;

  Q_INVOKABLE void begin();  // the page was opened: reads what the log says now
  Q_INVOKABLE void leave();  // reading stops
  Q_INVOKABLE void choose(int column);

  [[nodiscard]] QVariantList columns() const;
  [[nodiscard]] int chosen() const { return m_chosen; }
  [[nodiscard]] QString chosenTitle() const;
  [[nodiscard]] QVariantList figures() const;
  [[nodiscard]] QString rule() const;
  [[nodiscard]] QString emptyWords() const;
  [[nodiscard]] double progress() const { return m_progress; }
  [[nodiscard]] QString trouble() const { return m_trouble; }

 signals:
  void changed();
  void progressChanged();

 private:
  struct Reading;
  void step(const std::shared_ptr<Reading>& reading);
  void end(const std::shared_ptr<Reading>& reading);
  [[nodiscard]] const season::LaneCount* chosenCount() const;

  Desk* m_desk;
  std::shared_ptr<Reading> m_reading;  // the one that counts; another one's steps are let go
  std::vector<season::LaneCount> m_counts;
  int m_chosen = -1;
  double m_progress = -1;
  QString m_trouble;
};

}  // namespace snugline::models
