// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sheets_model.h"

#include <algorithm>

#include <QVariantMap>

#include "core/gear/model_sheet.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
QString range(const std::string& low, const std::string& high) { return SheetsModel::tr("%1 to %2").arg(text(low), text(high)); }

QVariantMap fact(const QString& name, const QString& words) { return {{QStringLiteral("name"), name}, {QStringLiteral("words"), words}}; }

QString portName(gear::Port port) { return PlainWords::sentenceCase(MarkWords::port(port)); }

QVariantList factsOf(const gear::ModelSheet& sheet, UnitSystem units) {
  QVariantList facts;
  facts.append(
      fact(SheetsModel::tr("Certified for"),
           SheetsModel::tr("%1 months; no longer than %2 months from the first").arg(sheet.certificationMonths).arg(sheet.ageLimitMonths)));
  facts.append(fact(SheetsModel::tr("Brow gap"), range(print(sheet.browLow, units), print(sheet.browHigh, units))));
  for (const gear::AirPort& port : sheet.air) {
    facts.append(fact(SheetsModel::tr("Air, %1").arg(MarkWords::port(port.port)),
                      SheetsModel::tr("start %1, within %2")
                          .arg(text(print(port.start, units)), range(print(port.low, units), print(port.high, units)))));
  }
  if (sheet.air.empty()) facts.append(fact(SheetsModel::tr("Air"), SheetsModel::tr("none, fitted foam only")));
  const auto pads = [&](const std::optional<gear::PadSet>& set, const QString& name) {
    if (!set || set->steps.empty()) return;
    const QString words = set->steps.size() == 1 ? text(print(set->steps.front(), units))
                                                 : range(print(set->steps.front(), units), print(set->steps.back(), units));
    facts.append(fact(name, words));
  };
  pads(sheet.jawPads, SheetsModel::tr("Jaw pads"));
  pads(sheet.crownPads, SheetsModel::tr("Crown pads"));
  facts.append(fact(SheetsModel::tr("Straps"), SheetsModel::tr("%1 points").arg(sheet.strapPoints)));
  QStringList order;
  for (const gear::Port port : sheet.fittingOrder) order.append(portName(port));
  if (!order.isEmpty()) facts.append(fact(SheetsModel::tr("Set in this order"), order.join(SheetsModel::tr(", ", "between ports"))));
  return facts;
}
}  // namespace

SheetsModel::SheetsModel(Desk* desk, const Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::opened, this, &SheetsModel::changed);
  connect(desk, &Desk::changed, this, &SheetsModel::changed);
  connect(choices, &Choices::changed, this, &SheetsModel::changed);
}

QVariantList SheetsModel::sheets() const {
  std::vector<const season::SheetRecord*> records;
  for (const auto& [hash, record] : m_desk->views().sheets) {
    if (record.sheet) records.push_back(&record);
  }
  std::sort(records.begin(), records.end(), [](const auto* a, const auto* b) { return a->sheet->name < b->sheet->name; });
  QVariantList list;
  for (const season::SheetRecord* record : records) {
    const gear::ModelSheet& sheet = *record->sheet;
    int count = 0;
    for (const auto& [id, unit] : m_desk->views().units) count += unit.sheet == record->hash ? 1 : 0;
    QVariantList sizes;
    for (const gear::SizeBand& band : sheet.sizes) {
      sizes.append(fact(text(band.name), range(print(band.low, m_choices->units()), print(band.high, m_choices->units()))));
    }
    list.append(QVariantMap{{QStringLiteral("hash"), text(record->hash)},
                            {QStringLiteral("name"), text(sheet.name)},
                            {QStringLiteral("adopted"), tr("Adopted %1").arg(timeWords(record->adopted.at, m_desk->today()))},
                            {QStringLiteral("units"), count},
                            {QStringLiteral("sizes"), sizes},
                            {QStringLiteral("facts"), factsOf(sheet, m_choices->units())},
                            {QStringLiteral("cautions"), text(sheet.cautions)}});
  }
  return list;
}

void SheetsModel::adopt(const QString& pathOrUrl) {
  if (m_isBusy || pathOrUrl.trimmed().isEmpty()) return;
  m_refusal.clear();
  m_remark.clear();
  const auto read = gear::readSheetFile(utf8(localPath(pathOrUrl)));
  if (!read) {
    m_refusal = errorSentence(read.error());
    emit changed();
    return;
  }
  const QString name = text(read->name);
  if (m_desk->views().sheet(read->hash) != nullptr) {
    m_remark = tr("%1 is adopted already").arg(name);
    emit changed();
    return;
  }
  m_isBusy = true;
  emit changed();
  m_desk->submit([sheet = *read](const season::Views& views, Instant) { return book::adoptSheet(views, sheet); }, this,
                 [this, name](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (outcome) m_remark = tr("%1 adopted").arg(name);
                   if (!outcome) m_refusal = errorSentence(outcome.error());
                   emit changed();
                 });
}

}  // namespace snugline::models
