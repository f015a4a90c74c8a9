// SPDX-License-Identifier: Apache-2.0
#include "qml/models/label_reading.h"

#include <QCoreApplication>
#include <QVariantMap>

#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
struct LabelReading {
  Q_DECLARE_TR_FUNCTIONS(LabelReading)
};
constexpr int kYearsShown = 12;  // a label older than the age limit and a spare year is lapsed by any sheet
}  // namespace

QVariantList labelYears(const std::optional<gear::Label>& chosen, Day today) {
  QVariantList list;
  const int thisYear = civil(today).year;
  for (int year = thisYear; year > thisYear - kYearsShown; --year) {
    const bool isChosen = chosen && !chosen->fullDate && chosen->year == year;
    list.append(QVariantMap{{QStringLiteral("year"), year},
                            {QStringLiteral("isRecertified"), isChosen && chosen->kind == gear::LabelKind::recertification},
                            {QStringLiteral("isMark"), isChosen && chosen->kind == gear::LabelKind::makersMark}});
  }
  return list;
}

gear::Label labelOfYear(int year, bool isMakersMark) {
  gear::Label label;
  label.kind = isMakersMark ? gear::LabelKind::makersMark : gear::LabelKind::recertification;
  label.year = year;
  return label;
}

std::variant<gear::Label, QString> labelOfDate(const QString& isoDay, const QString& source, Day today) {
  const auto day = parseDay(utf8(isoDay.trimmed()));
  if (!day) return LabelReading::tr("Write the date as year-month-day, such as 2025-03-14.");
  if (*day > today) return LabelReading::tr("That date is still to come.");
  if (source.trimmed().isEmpty()) return LabelReading::tr("Say where the full date stands, such as the firm's list.");
  gear::Label label;
  label.year = civil(*day).year;
  label.fullDate = *day;
  label.source = utf8(source.trimmed());
  return label;
}

}  // namespace snugline::models
