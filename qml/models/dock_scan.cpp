// SPDX-License-Identifier: Apache-2.0
// From what was scanned to a helmet on the table, or a question, or a reason why not.
#include <algorithm>

#include <QVariantMap>

#include "core/book/acts_dock.h"
#include "qml/models/dock_body.h"
#include "qml/models/scan_reading.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

QString DockModel::meant() const { return readableScan(m_body->meant); }
bool DockModel::canBeNew() const { return m_body->isAskedBySerial; }

QString DockModel::askedWords() const {
  if (m_body->asked.empty()) return {};
  return m_body->isAskedBySerial ? tr("%1 is the serial of several helmets. Which one is it?").arg(readableScan(m_body->askedScan))
                                 : tr("Several helmets stand in the Book with this tag. Which one is it?");
}

QVariantList DockModel::asked() const {
  QVariantList list;
  const season::Views& views = m_body->desk->views();
  for (const std::string& id : m_body->asked) {
    const season::UnitRecord* unit = views.unit(id);
    if (unit == nullptr) continue;
    const season::AthleteRecord* wearer = unit->athletes.empty() ? nullptr : views.athlete(unit->athletes.back());
    QStringList detail{unitStatus(*unit)};
    if (wearer != nullptr) detail << athleteName(*wearer);
    if (unit->tagKey != unit->serial) detail << text(unit->tagKey);
    list.append(QVariantMap{{QStringLiteral("unit"), text(id)},
                            {QStringLiteral("title"), tr("%1, %2", "serial, kind").arg(text(unit->serial), kindOf(views, *unit))},
                            {QStringLiteral("detail"), detail.join(QStringLiteral(", "))}});
  }
  return list;
}

void DockModel::refuse(const QString& sentence) {
  m_body->refusal = sentence;
  emit changed();
}

void DockModel::scan(const QString& scanned) {
  if (m_body->isBusy || scanned.trimmed().isEmpty()) return;
  m_body->meant.clear();
  m_body->asked.clear();
  const ScanReading reading = readScan(scanned, m_body->desk->today());
  if (!reading.tag) {
    m_body->meant = reading.meant;
    return refuse(reading.refusal);
  }
  const std::string& read = reading.read;
  const std::optional<gear::Tag>& tag = reading.tag;
  const book::TagMeaning meaning = book::meaningOf(m_body->desk->views(), *tag);
  if (meaning.units.size() > 1) {
    m_body->askedScan = read;
    m_body->asked = meaning.units;
    m_body->isAskedBySerial = meaning.isBySerial;
    m_body->refusal.clear();
    emit changed();
    return;
  }
  placeTag(read, *tag, meaning.isBySerial ? meaning.units.front() : std::string());
}

void DockModel::placeTag(const std::string& read, const gear::Tag& tag, const std::string& unit) {
  const DockDraft& draft = m_body->table.draft();
  const bool isOther = tag.key != draft.arrival.tag.key || unit != draft.arrival.unit;
  if (draft.stage != DockStage::waiting && isOther && m_body->table.isTouched()) {
    return refuse(tr("%1 is still on the table. Finish it or put it aside, then scan %2 again.").arg(serial(), text(tag.serial)));
  }
  if (draft.stage != DockStage::waiting && !isOther) return;  // the same tag once more
  m_body->faultOpen = -1;
  change([&](DockTable& table) { table.place(read, tag, unit, m_body->desk->views()); });
}

void DockModel::takeMeant() {
  if (m_body->meant.empty()) return;
  const QString meant = text(m_body->meant);
  m_body->refusal.clear();
  scan(meant);
}

void DockModel::chooseAsked(const QString& unit) {
  const std::string read = m_body->askedScan;
  const auto tag = gear::parseTag(read, m_body->desk->today());
  const bool isOne =
      unit.isEmpty() ? m_body->isAskedBySerial : std::find(m_body->asked.begin(), m_body->asked.end(), utf8(unit)) != m_body->asked.end();
  if (m_body->asked.empty() || !tag || !isOne) return;
  m_body->asked.clear();
  placeTag(read, *tag, utf8(unit));
  emit changed();
}

void DockModel::dropAsked() {
  m_body->asked.clear();
  emit changed();
}

}  // namespace snugline::models
