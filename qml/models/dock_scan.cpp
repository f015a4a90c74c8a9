// SPDX-License-Identifier: Apache-2.0
// From what was scanned to a helmet on the table, or a question, or a reason why not.
#include <algorithm>

#include <QVariantMap>

#include "core/book/acts_dock.h"
#include "core/gear/keyboard_layout.h"
#include "core/gear/own_serial.h"
#include "qml/models/dock_body.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {

QString layoutName(gear::KeyboardLayout layout) {
  switch (layout) {
    case gear::KeyboardLayout::german:
      return DockModel::tr("German");
    case gear::KeyboardLayout::french:
      return DockModel::tr("French");
    case gear::KeyboardLayout::spanish:
      return DockModel::tr("Spanish");
    case gear::KeyboardLayout::capsLock:
      return {};
  }
  return {};
}

QString layoutWords(const gear::LayoutGuess& guess) {
  const QString name = layoutName(guess.layout);
  if (name.isEmpty()) return DockModel::tr("Capitals and small letters are the wrong way round: caps lock is on, here or on the scanner.");
  return DockModel::tr("The scanner types as on another keyboard than this device (%1 here). Set both to the same one.").arg(name);
}

QString readable(std::string_view text) {
  std::string shown(text);
  std::replace(shown.begin(), shown.end(), '\x1d', ' ');
  return models::text(shown);
}

}  // namespace

QString DockModel::meant() const { return readable(m_body->meant); }
bool DockModel::canBeNew() const { return m_body->isAskedBySerial; }

QString DockModel::askedWords() const {
  if (m_body->asked.empty()) return {};
  return m_body->isAskedBySerial ? tr("%1 is the serial of several helmets. Which one is it?").arg(readable(m_body->askedScan))
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
  const std::string read = bareScan(scanned);
  const Day today = m_body->desk->today();
  m_body->meant.clear();
  m_body->asked.clear();
  if (const auto guess = gear::wrongLayout(read, today)) {
    m_body->meant = guess->meant;
    return refuse(layoutWords(*guess));
  }
  const auto tag = gear::parseTag(read, today);
  if (!tag) return refuse(tr("Refused: %1").arg(errorSentence(tag.error())));
  if (!tag->isCheckDigitOk) {
    return refuse(tr("Refused: the check digit of this tag does not agree. Scan it again, or type the serial from the plate."));
  }
  if (const auto own = gear::readOwnSerial(read); own && !own->isCheckOk) {
    return refuse(
        tr("Refused: %1 looks like one of our own labels, and its last letter does not agree. Look at it again.").arg(readable(read)));
  }
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
