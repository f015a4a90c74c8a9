// SPDX-License-Identifier: Apache-2.0
// Purpose: the year in helmets on a page: what lapses when, which batches go out and when, what no plan can prevent, and what to order for
// the next season, with the reckoning beside each figure. What is asked (cover, days away, share that returns) is kept while the app runs;
// nothing is written. Worked out when the page is opened and when a wish or the Book changes.
// Errors: a refused plan is `trouble`, one sentence. Thread: GUI thread only.
#pragma once

#include <optional>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include "choices.h"
#include "core/season/plan.h"
#include "desk.h"
#include "sentences.h"

namespace snugline::models {

class PlanModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(QString title READ title NOTIFY changed)         // "Plan for 2026 and 2027"
  Q_PROPERTY(QVariantList covers READ covers NOTIFY changed)  // {name, text, chosen}
  Q_PROPERTY(QVariantList turnarounds READ turnarounds NOTIFY changed)
  Q_PROPERTY(QVariantList returns READ returns NOTIFY changed)
  Q_PROPERTY(QVariantList lapses READ lapses NOTIFY changed)    // {title, detail, tone}: by month
  Q_PROPERTY(QVariantList batches READ batches NOTIFY changed)  // {title, detail, tone}
  Q_PROPERTY(QVariantList missing READ missing NOTIFY changed)  // {title, detail, tone}
  Q_PROPERTY(QVariantList orders READ orders NOTIFY changed)    // {title, detail, tone}
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY changed)      // for Bars: {label, parts: [{value, words, kind}]}
  Q_PROPERTY(QVariantList months READ months NOTIFY changed)    // likewise: helmets certified at the start of each month
  Q_PROPERTY(QStringList assumptions READ assumptions NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  PlanModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void begin();
  Q_INVOKABLE void chooseCover(const QString& name);
  Q_INVOKABLE void chooseTurnaround(const QString& name);
  Q_INVOKABLE void chooseReturns(const QString& name);

  [[nodiscard]] QString title() const;
  [[nodiscard]] QVariantList covers() const;
  [[nodiscard]] QVariantList turnarounds() const;
  [[nodiscard]] QVariantList returns() const;
  [[nodiscard]] QVariantList lapses() const;
  [[nodiscard]] QVariantList batches() const;
  [[nodiscard]] QVariantList missing() const;
  [[nodiscard]] QVariantList orders() const;
  [[nodiscard]] QVariantList sizes() const;
  [[nodiscard]] QVariantList months() const;
  [[nodiscard]] QStringList assumptions() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }

 signals:
  void changed();

 private:
  void workOut();

  Desk* m_desk;
  Choices* m_choices;
  season::PlanWishes m_wishes;
  std::optional<season::PlanAnswer> m_answer;
  QString m_trouble;
  bool m_isShown = false;
};

}  // namespace snugline::models
