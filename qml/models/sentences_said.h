// SPDX-License-Identifier: Apache-2.0
// Purpose: sentences about what athletes said: how often, what came of it, what is said again and again. Read by athletes too, so: plain
// words, nothing about a person. Thread: GUI thread.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/book/outcomes.h"
#include "core/season/patterns.h"
#include "sentences.h"

namespace snugline::models {

struct SaidWords {
  Q_DECLARE_TR_FUNCTIONS(SaidWords)
 public:
  static QString times(int times, Day since, Day today);              // "third time since 2 Sep"; empty for the first
  static QString place(fit::Mark where, fit::Side side);              // "jaw on the left"
  static QString done(const book::Done& done, const Speech& speech);  // "left jaw pad one step thinner"
  static QString seenDay(Instant at, Day today);                      // "today", "yesterday", "Tuesday", "Wed 30 Sep"
  // What one check made of what was said, in one or two sentences: "Seen Tuesday: left jaw pad one step thinner. Now: jaw snug."
  static QString outcome(const std::vector<book::WordOutcome>& ofOneCheck, const std::vector<book::Done>& done, const Speech& speech);
  // The same for a glass that others see: what was done to the helmet, nothing of what was said.
  static QString helmetOutcome(const std::vector<book::WordOutcome>& ofOneCheck, const std::vector<book::Done>& done, const Speech& speech);
  static QString pattern(const season::Pattern& pattern, const Speech& speech);  // "88 Lindqvist: jaw on the left"
  static QString patternDetail(const season::Pattern& pattern,
                               const Speech& speech);  // "Said on 3 days, 2 Sep to 14 Oct: 2 tight, 1 loose"
};

}  // namespace snugline::models
