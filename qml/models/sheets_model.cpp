// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sheets_model.h"

#include <algorithm>

#include <QHash>
#include <QSet>
#include <QVariantMap>

#include "core/book/acts_sheets.h"
#include "core/gear/strict_json.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"

namespace snugline::models {

namespace {

// "spoilt.json" of a path.
QString leafOf(const QString& path) { return path.section(QLatin1Char('/'), -1); }

struct Use {
  int units = 0;
  QSet<QString> athletes;
};

}  // namespace

SheetsModel::SheetsModel(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_choices(choices),
      m_page(desk, choices),
      m_editor(desk, choices),
      m_last(QStringLiteral("sheets"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &SheetsModel::changed);
  connect(&m_last, &LastAct::undone, this, [this] {
    m_remark.clear();
    if (!m_before.empty() && m_desk->views().sheet(utf8(m_page.hash())) == nullptr) m_page.open(text(m_before));
    m_page.follow();
    emit changed();
    emit undone();
  });
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_remark.clear();
    m_refusal = why;
    emit changed();
  });
  connect(desk, &Desk::opened, this, &SheetsModel::changed);
  connect(desk, &Desk::changed, this, &SheetsModel::changed);
  connect(choices, &Choices::changed, this, &SheetsModel::changed);
  connect(&m_editor, &SheetEditor::changed, this, [this] {
    if (m_wasWriting == m_editor.isOpen()) return;  // not with every letter that is written
    m_wasWriting = m_editor.isOpen();
    emit changed();
  });
  connect(&m_editor, &SheetEditor::kept, this, &SheetsModel::onKept);
}

QVariantList SheetsModel::sheets() const {
  const season::Views& views = m_desk->views();
  QHash<QString, Use> uses;
  for (const auto& [id, unit] : views.units) {
    if (unit.sheet.empty() || unit.place == season::UnitPlace::retired) continue;
    Use& use = uses[text(views.standingSheet(unit.sheet))];
    ++use.units;
    for (const std::string& athlete : unit.athletes) use.athletes.insert(text(athlete));
  }
  QVariantList list;
  for (const season::SheetRecord* record : season::standingSheets(views)) {
    const Use use = uses.value(text(record->hash));
    const auto before = static_cast<int>(season::sheetsBefore(views, record->hash).size());
    const QString changes = before == 0 ? QString() : tr(" Changed %n time(s).", nullptr, before);
    list.append(QVariantMap{
        {QStringLiteral("hash"), text(record->hash)},
        {QStringLiteral("title"), PlainWords::text(record->sheet->name)},
        {QStringLiteral("detail"),
         tr("Sizes %1; %2", "names, where there is air").arg(SheetWords::sizes(*record->sheet), SheetWords::air(*record->sheet))},
        {QStringLiteral("note"),
         tr("%1, %2.", "helmets, athletes")
                 .arg(tr("%n helmet(s)", nullptr, use.units), tr("%n athlete(s)", nullptr, static_cast<int>(use.athletes.size()))) +
             changes}});
  }
  return list;
}

QVariantList SheetsModel::earlier() const {
  const season::Views& views = m_desk->views();
  std::vector<const season::SheetRecord*> records;
  for (const auto& [hash, record] : views.sheets)
    if (record.sheet && record.replaced && !season::isStanding(views, hash)) records.push_back(&record);
  std::sort(records.begin(), records.end(),
            [](const auto* a, const auto* b) { return season::isAfter(a->replaced->stamp, b->replaced->stamp); });
  QVariantList list;
  for (const season::SheetRecord* record : records) {
    const gear::ModelSheet* now = views.sheet(views.standingSheet(record->hash));
    list.append(QVariantMap{{QStringLiteral("hash"), text(record->hash)},
                            {QStringLiteral("title"), PlainWords::text(record->sheet->name)},
                            {QStringLiteral("detail"), tr("Until %1; now %2", "a moment, the sheet that counts")
                                                           .arg(timeWords(record->replaced->stamp.at, m_desk->today()),
                                                                now == nullptr ? QString() : PlainWords::text(now->name))}});
  }
  return list;
}

std::string SheetsModel::standingOfId(const std::string& id) const {
  for (const season::SheetRecord* record : season::standingSheets(m_desk->views()))
    if (record->sheet->id == id) return record->hash;
  return {};
}

void SheetsModel::forget() {
  m_refusal.clear();
  m_faults.clear();
  m_remark.clear();
  m_broken.reset();
  emit changed();
}

void SheetsModel::adopt(const QString& pathOrUrl) {
  if (m_isBusy || pathOrUrl.trimmed().isEmpty()) return;
  forget();
  const QString path = localPath(pathOrUrl);
  const auto bytes = json::readText(utf8(path), gear::kSheetLimitBytes);
  auto read = bytes ? gear::readDraft(*bytes, utf8(path)) : Result<gear::ReadDraft>(tl::unexpected<Error>(bytes.error()));
  if (!read) {
    m_refusal = errorSentence(read.error());
    return emit changed();
  }
  if (!read->faults.empty()) {
    for (const gear::SheetFault& fault : read->faults)
      m_faults << tr("%1#%2: %3", "file, path in it, what is wrong")
                      .arg(leafOf(path), text(fault.path), SheetWords::fault(fault, m_choices->units()));
    m_refusal = tr("This file is no whole model sheet. %1").arg(m_faults.front());
    m_broken = std::move(*read);
    return emit changed();
  }
  const auto sheet = gear::parseSheet(*bytes, utf8(path));
  if (!sheet) {
    m_refusal = errorSentence(sheet.error());
    return emit changed();
  }
  const QString name = PlainWords::text(sheet->name);
  const std::string standing = standingOfId(sheet->id);
  if (standing.empty()) {
    m_isBusy = true;
    emit changed();
    m_desk->submit([sheet = *sheet](const season::Views& views, Instant) { return book::adoptSheet(views, sheet); }, this,
                   [this, name, hash = sheet->hash](const Result<book::Appended>& outcome) {
                     m_isBusy = false;
                     if (!outcome) {
                       m_refusal = errorSentence(outcome.error());
                       return emit changed();
                     }
                     QStringList facts;
                     for (const std::string& fact : outcome->ids) facts << text(fact);
                     onKept(text(hash), {}, facts);
                   });
    return;
  }
  if (gear::differencesOf(*m_desk->views().sheet(standing), *sheet).empty()) {
    m_remark = tr("%1 is adopted already").arg(name);
    return emit changed();
  }
  if (m_editor.isOpen()) {
    m_refusal = tr("A half written sheet is here. Keep it or drop it first");
    return emit changed();
  }
  m_editor.begin(*read, standing);
  emit changeWanted();
}

void SheetsModel::mend() {
  if (!canMend()) return;
  const std::string standing = standingOfId(m_broken->draft.id);
  const gear::ReadDraft read = std::move(*m_broken);
  forget();
  m_editor.begin(read, standing);
}

void SheetsModel::onKept(const QString& hash, const QString& before, const QStringList& facts) {
  const gear::ModelSheet* sheet = m_desk->views().sheet(utf8(hash));
  const QString name = sheet == nullptr ? QString() : PlainWords::text(sheet->name);
  forget();
  m_editor.forgetDropped();
  m_remark = before.isEmpty() ? tr("%1 adopted").arg(name) : tr("%1 counts from now on").arg(name);
  std::vector<std::string> ids;
  for (const QString& fact : facts) ids.push_back(utf8(fact));
  m_last.did(std::move(ids), m_remark, utf8(hash));
  m_page.follow();
  emit changed();
}

void SheetsModel::undo() {
  const auto before = season::sheetsBefore(m_desk->views(), m_last.about());
  m_before = before.empty() ? std::string() : before.front()->hash;
  m_refusal.clear();
  m_last.undo();
}

}  // namespace snugline::models
