// SPDX-License-Identifier: Apache-2.0
// Purpose: the words on papers: the recovery sheet, the yearly warning to sign at home, one athlete's whole record. Thread: GUI thread.
#pragma once

#include <map>

#include <QCoreApplication>
#include <QString>

#include "core/book/fact.h"
#include "core/ports/outbox.h"
#include "core/season/record.h"

namespace snugline::models {

struct PaperWords {
  Q_DECLARE_TR_FUNCTIONS(PaperWords)
 public:
  static ports::Paper recoverySheet(const season::Views& views, const std::string& key, Day today);  // holds no athlete
  static ports::Paper warningForm(const season::Views& views, const season::WarningText& text, Day today);
  static ports::Paper wholeRecord(const season::Views& views, const season::AthleteRecord& athlete, const std::vector<book::Fact>& facts,
                                  Day today);
  // One helmet: label, points, holds, photos, what was done. Holds no athlete. photos: the bytes of each by its hash; those not there are
  // said.
  static ports::Paper unitCard(const season::Views& views, const season::UnitRecord& unit, const std::vector<book::Fact>& facts,
                               const std::map<std::string, std::string>& photos, Day today);
  // One line of a whole record: what a fact says, answers of a check one by one.
  static QString line(const season::Views& views, const book::Fact& fact, Day today);
  // Opens what was printed and says where it lies.
  static QString opened(ports::Outbox& outbox, const std::string& place);
  static QString teamName(const season::Views& views);
};

}  // namespace snugline::models
