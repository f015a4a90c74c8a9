// SPDX-License-Identifier: Apache-2.0
// Purpose: words for the year in helmets: what a pair costs and why, who gets none, what lapses, goes out and is to be ordered.
// Words are about equipment only. Thread: GUI thread (translation is looked up there).
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/season/matching.h"
#include "core/season/plan.h"
#include "sentences.h"

namespace snugline::models {

struct SeasonWords {
  Q_DECLARE_TR_FUNCTIONS(SeasonWords)
 public:
  static QString term(season::CostTerm term, int count);                     // "2 points not seen"
  static QString pair(const season::MatchPair& pair, const Speech& speech);  // "B200012, Brant B2 M. 83 %, the last helmet"
  static QString noHelmet(const season::UnmatchedHead& head);                // a sentence
  static QString kind(const season::Views& views, const std::string& sheet, const std::string& size);  // "Brant B2 M", "off the charts"
  static QString counts(const season::Views& views, const std::vector<season::SizeCount>& counts);     // "2 Brant B2 M, 1 Alder A1 L"
  static QString lapse(season::LapseWhen when);
  static QString order(const season::Order& order, double cover);  // why so many
  static QStringList assumptions(const season::Views& views, const season::PlanWishes& wishes, const season::PlanAnswer& plan, Day today);
  static QString wishTrouble(const Error& error);  // a plan or match that was refused; others: errorSentence
};

}  // namespace snugline::models
