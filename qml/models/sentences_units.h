// SPDX-License-Identifier: Apache-2.0
// Purpose: words for what happens to helmets: parts replaced and what they reopen, notices of a maker and whom they mean, spares and why
// others are not offered, and what a tag or a camera has to say. Words are about equipment only. Thread: GUI thread.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/gear/unit_part.h"
#include "core/season/notice.h"
#include "core/season/spares.h"

namespace snugline::models {

struct UnitWords {
  Q_DECLARE_TR_FUNCTIONS(UnitWords)
 public:
  static QString part(gear::UnitPart part);        // "Chin strap"
  static QString parts(const std::string& codes);  // of codes joined by ", ", or words as they are: "chin strap and jaw pads"
  static QString reopened(fit::MarkSet marks);     // "To see again: brow, nape and hold"; empty for none
  static QString scope(const season::Views& views, const season::NoticeScope& scope);  // "Alder A1, made 2023 to 2024, lot L7"
  // "14 helmets, 9 on heads", and what is not known.
  static QString cover(const season::NoticeCover& cover);
  static QString notKnown(const season::NoticeCover& cover, const season::NoticeScope& scope);
  static QString notice(const season::NoticeRecord& notice);  // "Maker's notice of 3 Nov 2026: clips may open"
  static QString notOffered(season::NotOffered why, int count);
  static QString spareNote(const season::Spare& spare, const season::Views& views);  // shelf, label, what was not seen
};

}  // namespace snugline::models
