// SPDX-License-Identifier: Apache-2.0
// Purpose: heads to helmets for the whole roster, on a page: who gets another helmet, who gets none and why, what is spare and what is
// left out. A touch on a pair opens its cost term by term, and pins it or sets it aside; that is a wish for this page, kept while the app
// runs, and writes nothing. Worked out when the page is opened, when a wish changes and when the Book does.
// Errors: a refused match is `trouble`, one sentence. Thread: GUI thread only.
#pragma once

#include <optional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "choices.h"
#include "core/season/matching.h"
#include "desk.h"
#include "sentences.h"

namespace snugline::models {

class MatchingModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SeasonModel")
  Q_PROPERTY(QString summary READ summary NOTIFY changed)   // "61 of 64 heads have a helmet that can be given"
  Q_PROPERTY(QString through READ through NOTIFY changed)   // through which day certification is asked
  Q_PROPERTY(bool keepsWorn READ keepsWorn NOTIFY changed)  // whoever wears a helmet that can be given keeps it
  Q_PROPERTY(
      QVariantList rows READ rows NOTIFY changed)  // {kind: "head", "pair", "none", "words"; name, number, title, detail, tone, athlete}
  Q_PROPERTY(QVariantList wishes READ wishes NOTIFY changed)  // {name, text}: pinned and set aside; a touch takes one back
  Q_PROPERTY(QVariantMap opened READ opened NOTIFY changed)   // of the pair touched: {title, why (WhyLines), athlete, isPinned}
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  MatchingModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void begin();
  Q_INVOKABLE void setKeepsWorn(bool keeps);
  Q_INVOKABLE void open(const QString& athlete);
  Q_INVOKABLE void pin();       // the pair that is open, whatever the sum says
  Q_INVOKABLE void setAside();  // never this helmet for this head
  Q_INVOKABLE void takeBack(const QString& wish);

  [[nodiscard]] QString summary() const;
  [[nodiscard]] QString through() const;
  [[nodiscard]] bool keepsWorn() const { return m_wishes.keepsWorn; }
  [[nodiscard]] QVariantList rows() const { return m_rows; }
  [[nodiscard]] QVariantList wishes() const;
  [[nodiscard]] QVariantMap opened() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }

 signals:
  void changed();

 private:
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] const season::MatchPair* pairOf(const std::string& athlete) const;
  [[nodiscard]] QString nameOf(const std::string& athlete) const;
  void workOut();
  void listRows();

  Desk* m_desk;
  Choices* m_choices;
  season::MatchWishes m_wishes;
  std::optional<season::MatchAnswer> m_answer;
  QVariantList m_rows;
  std::string m_open;
  QString m_trouble;
  bool m_isShown = false;
};

}  // namespace snugline::models
