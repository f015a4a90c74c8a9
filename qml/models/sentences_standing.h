// SPDX-License-Identifier: Apache-2.0
// Purpose: the words of a helmet's standing (core/season/standing.h), for every page and paper alike: its headline, and each reason why it
// may not be worn. Words are about equipment only. Thread: GUI thread.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <QVariantMap>

#include "core/season/standing.h"

namespace snugline::models {

enum class Names { full, initials, none };

struct StandingWords {
  Q_DECLARE_TR_FUNCTIONS(StandingWords)
 public:
  // "On hold: Shell: crack, still with 40 Brindlecote, Ada", "In service, on the shelf"
  static QString headline(const season::UnitStanding& standing, Names names, Day today);
  static QString reason(const season::WhyNot& why, Day today);  // "Faceguard: bare metal"
  static QStringList reasons(const season::UnitStanding& standing, Day today);
  static QString returned(const season::ReturnRecord& returned);  // "recertified by the recertifying firm, on list 12, cleaned"
  static QString bar(season::Bar bar);                            // "on hold", what keeps a helmet off every head
  static QString where(const season::UnitStanding& standing, Names names);
  static QString tone(const season::UnitStanding& standing);  // "snug", "see", "stop"
};

// What was said of a return, for taking it over: {by, done, paper, isCleaned, words}; empty for nothing.
[[nodiscard]] QVariantMap returnMap(const std::optional<season::ReturnRecord>& returned);
// The headline of one helmet where no more of its standing is shown.
[[nodiscard]] QString unitStatus(const season::Views& views, const season::UnitRecord& unit, Day today, Names names);

}  // namespace snugline::models
