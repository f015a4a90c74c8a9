// SPDX-License-Identifier: Apache-2.0
// Purpose: the Season page of the Book: what is only seen over weeks. Each section is a list of its own; this one knows what was said again
// and again. Worked out when it is asked for, from the mirror. Thread: GUI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "choices.h"
#include "collect_model.h"
#include "desk.h"
#include "lanes_model.h"
#include "matching_model.h"
#include "past_model.h"
#include "plan_model.h"
#include "sentences.h"
#include "turn_model.h"

namespace snugline::models {

class SeasonModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString words READ words NOTIFY changed)               // for the way in: "2 places said again and again"
  Q_PROPERTY(QVariantList saidAgain READ saidAgain NOTIFY changed)  // {name, title, detail, tone, athlete}: athlete empty for a model
  Q_PROPERTY(snugline::models::MatchingModel* matching READ matching CONSTANT)
  Q_PROPERTY(snugline::models::PlanModel* plan READ plan CONSTANT)
  Q_PROPERTY(snugline::models::LanesModel* lanes READ lanes CONSTANT)
  Q_PROPERTY(snugline::models::CollectModel* collect READ collect CONSTANT)
  Q_PROPERTY(snugline::models::TurnModel* turn READ turn CONSTANT)
  Q_PROPERTY(snugline::models::PastModel* past READ past CONSTANT)
  Q_PROPERTY(QVariantList pointBars READ pointBars NOTIFY changed)  // for Bars: the seven points over all helmets
  Q_PROPERTY(QVariantList lookBars READ lookBars NOTIFY changed)    // likewise: how soon the first look came
  Q_PROPERTY(QString againRule READ againRule NOTIFY changed)       // when a place is listed
 public:
  SeasonModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] QString words() const;
  [[nodiscard]] QVariantList saidAgain() const;
  [[nodiscard]] QVariantList pointBars() const;
  [[nodiscard]] QVariantList lookBars() const;
  [[nodiscard]] QString againRule() const;
  [[nodiscard]] MatchingModel* matching() const { return m_matching; }
  [[nodiscard]] PlanModel* plan() const { return m_plan; }
  [[nodiscard]] LanesModel* lanes() const { return m_lanes; }
  [[nodiscard]] CollectModel* collect() const { return m_collect; }
  [[nodiscard]] TurnModel* turn() const { return m_turn; }
  [[nodiscard]] PastModel* past() const { return m_past; }

 signals:
  void changed();

 private:
  [[nodiscard]] Speech speech() const;

  Desk* m_desk;
  Choices* m_choices;
  MatchingModel* m_matching;
  PlanModel* m_plan;
  LanesModel* m_lanes;
  CollectModel* m_collect;
  TurnModel* m_turn;
  PastModel* m_past;
};

}  // namespace snugline::models
