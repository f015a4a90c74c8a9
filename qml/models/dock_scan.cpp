// SPDX-License-Identifier: Apache-2.0
// From what was scanned to a helmet on the table, or a question, or a reason why not.
#include <algorithm>

#include <QVariantMap>

#include "core/book/acts_dock.h"
#include "qml/models/dock_body.h"
#include "qml/models/scan_reading.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

QString DockModel::meant() const { return readableScan(m_body->meant); }
QString DockModel::doubted() const { return readableScan(m_body->doubted); }
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
    QStringList detail{unitStatus(views, *unit, m_body->desk->today(), Names::none)};
    if (wearer != nullptr) detail << athleteName(*wearer);
    if (unit->tagKey != unit->serial) detail << text(unit->tagKey);
    list.append(QVariantMap{{QStringLiteral("unit"), text(id)},
                            {QStringLiteral("title"), tr("%1, %2", "serial, kind").arg(text(unit->serial), kindOf(views, *unit))},
                            {QStringLiteral("detail"), detail.join(QStringLiteral(", "))}});
  }
  return list;
}

QVariantList DockModel::aside() const {
  QVariantList list;
  for (auto one = m_body->table.draft().aside.rbegin(); one != m_body->table.draft().aside.rend(); ++one) {
    const auto unseen = std::count_if(one->arrival.points.begin(), one->arrival.points.end(),
                                      [](const gear::PointFinding& finding) { return finding.state == gear::PointState::unseen; });
    list.append(QVariantMap{{QStringLiteral("title"), text(one->arrival.tag.serial)},
                            {QStringLiteral("detail"), tr("Unfinished: %n point(s) checked", nullptr,
                                                          static_cast<int>(gear::kPointCount) - static_cast<int>(unseen))}});
  }
  return list;
}

void DockModel::takeUp(int aside) {
  const auto count = static_cast<int>(m_body->table.draft().aside.size());
  if (aside < 0 || aside >= count || m_body->isBusy) return;
  m_body->faultOpen = -1;
  m_body->isJustScanned = false;
  change([&](DockTable& table) { table.takeUp(static_cast<std::size_t>(count - 1 - aside)); });
}

void DockModel::scan(const QString& scanned) {
  if (scanned.trimmed().isEmpty()) return;
  if (m_body->isBusy) return m_body->waiting.push_back(scanned);
  read(scanned, false);
}

// The table is free for what was scanned now.
void DockModel::clearTable() {
  m_body->faultOpen = -1;
  m_body->doubted.clear();
  std::string serial;
  change([&](DockTable& table) { serial = table.setAside(); });
  if (!serial.empty() && m_body->refusal.isEmpty())
    m_body->refusal = tr("%1 is off the table, unfinished. What was checked is kept: scan it again to go on.").arg(text(serial));
}

void DockModel::read(const QString& scanned, bool isRight) {
  const ScanReading reading = readScan(scanned, m_body->desk->today());
  const book::TagMeaning meaning = reading.tag ? book::meaningOf(m_body->desk->views(), *reading.tag) : book::TagMeaning();
  const std::string unit = meaning.isBySerial && meaning.units.size() == 1 ? meaning.units.front() : std::string();
  const DockDraft& draft = m_body->table.draft();
  const bool isDoubted = !reading.doubt.isEmpty() && meaning.units.empty() && !isRight;
  if (draft.stage != DockStage::waiting && reading.tag && reading.tag->key == draft.arrival.tag.key && unit == draft.arrival.unit) {
    m_body->isJustScanned = true;  // the same tag once more
    return change([](DockTable&) {});
  }
  clearTable();
  if (!reading.tag || isDoubted) {
    const QString offTable = m_body->refusal;
    m_body->meant = reading.meant;
    if (isDoubted) m_body->doubted = reading.read;
    m_body->refusal = isDoubted ? reading.doubt : reading.refusal;
    if (!offTable.isEmpty()) m_body->refusal += QLatin1Char(' ') + offTable;
  } else if (meaning.units.size() > 1) {
    m_body->askedScan = reading.read;
    m_body->asked = meaning.units;
    m_body->isAskedBySerial = meaning.isBySerial;
  } else {
    return placeTag(reading.read, *reading.tag, unit);
  }
  emit changed();
}

void DockModel::placeTag(const std::string& read, const gear::Tag& tag, const std::string& unit) {
  m_body->isJustScanned = true;
  change([&](DockTable& table) { table.place(read, tag, unit, m_body->desk->views()); });
}

void DockModel::takeMeant() {
  const QString meant = text(m_body->meant);
  if (!meant.isEmpty() && !m_body->isBusy) read(meant, false);
}

void DockModel::takeDoubted() {
  const QString doubted = text(m_body->doubted);
  if (!doubted.isEmpty() && !m_body->isBusy) read(doubted, true);
}

void DockModel::chooseAsked(const QString& unit) {
  const std::string read = m_body->askedScan;
  const auto tag = gear::parseTag(read, m_body->desk->today());
  const bool isOne =
      unit.isEmpty() ? m_body->isAskedBySerial : std::find(m_body->asked.begin(), m_body->asked.end(), utf8(unit)) != m_body->asked.end();
  if (m_body->asked.empty() || !tag || !isOne) return;
  m_body->asked.clear();
  placeTag(read, *tag, utf8(unit));
}

void DockModel::dropAsked() {
  m_body->asked.clear();
  emit changed();
}

}  // namespace snugline::models
