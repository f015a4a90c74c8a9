// SPDX-License-Identifier: Apache-2.0
// What keeping a sheet would change, keeping it, and the half written sheet on this device.
#include <algorithm>

#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QVariantMap>

#include "core/book/acts_sheets.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"
#include "qml/models/sheet_editor.h"

namespace snugline::models {

namespace {
constexpr auto kSheetKey = "sheet";
constexpr auto kReplacesKey = "replaces";
constexpr auto kSectionKey = "section";
constexpr auto kUnsaidKey = "unsaid";  // 1 air, 2 jaw pads, 4 crown pads
constexpr qint64 kFileMost = 256 * 1024;
}  // namespace

void SheetEditor::look() {
  m_change.reset();
  m_refusal.clear();
  if (m_isOpen && isWhole() && !m_replaces.empty()) {
    const season::Views& views = m_desk->views();
    // Replaced meanwhile, on another tablet: compared with the one that counts now, and so said.
    if (!season::isStanding(views, m_replaces)) {
      m_replaces = views.standingSheet(m_replaces);
      m_refusal = tr("The sheet was changed meanwhile. What follows compares with the one that counts now.");
    }
    if (const auto made = whole()) {
      const season::BoardTime time{m_desk->now()};
      const season::Conditions given = season::weatherNow(views, time, {}).conditions;
      auto change = season::changeOf(views, m_replaces, *made, time, given);
      if (change)
        m_change = std::move(*change);
      else
        m_refusal = errorSentence(change.error());
    } else {
      m_refusal = errorSentence(made.error());
    }
  }
  emit changed();
  emit looked();
}

QStringList SheetEditor::differences() const {
  QStringList lines;
  if (m_change)
    for (const gear::SheetDifference& one : m_change->differences) lines << SheetWords::difference(one, m_choices->units());
  return lines;
}

QString SheetEditor::effectWords() const {
  if (m_replaces.empty()) return tr("A new model: no helmet goes by it yet.");
  if (!m_change) return {};
  if (m_change->unitCount == 0) return tr("No helmet goes by this sheet.");
  const QString all = tr("%n helmet(s) of this model", nullptr, static_cast<int>(m_change->unitCount));
  if (m_change->athletes.empty() && m_change->units.empty()) return tr("%1. Nobody's row, size or label changes.").arg(all);
  const auto rows = std::count_if(m_change->athletes.begin(), m_change->athletes.end(), [](const auto& a) { return a.row.isChanged(); });
  return tr("%1. Concerned: %2, %3. Rows of the board that change: %4.", "all helmets, athletes, helmets, rows")
      .arg(all, tr("%n athlete(s)", nullptr, static_cast<int>(m_change->athletes.size())),
           tr("%n helmet(s)", nullptr, static_cast<int>(m_change->units.size())))
      .arg(rows);
}

QVariantList SheetEditor::athletes() const {
  QVariantList list;
  if (!m_change) return list;
  for (const season::AthleteEffect& effect : m_change->athletes) {
    const season::AthleteRecord* athlete = m_desk->views().athlete(effect.athlete);
    const season::UnitRecord* unit = m_desk->views().unit(effect.unit);
    if (athlete == nullptr) continue;
    const QString worn = unit == nullptr ? QString() : tr("%1, size %2").arg(PlainWords::text(unit->serial), PlainWords::text(unit->size));
    const bool isWorse = effect.row.after.lane < effect.row.before.lane;
    list.append(
        QVariantMap{{QStringLiteral("athlete"), text(effect.athlete)},
                    {QStringLiteral("number"), text(athlete->jersey)},
                    {QStringLiteral("title"), PlainWords::name(speech(), athlete->family, athlete->given)},
                    {QStringLiteral("detail"), SheetWords::effects(effect, *m_change, speech()).join(QLatin1Char('\n'))},
                    {QStringLiteral("note"), worn},
                    {QStringLiteral("changesRow"), effect.row.isChanged()},
                    {QStringLiteral("tone"), !effect.row.isChanged()                                       ? QStringLiteral("plain")
                                             : isWorse && effect.row.after.lane == season::Lane::doNotWear ? QStringLiteral("stop")
                                                                                                           : QStringLiteral("see")}});
  }
  return list;
}

QVariantList SheetEditor::helmets() const {
  QVariantList list;
  if (!m_change) return list;
  for (const season::UnitEffect& effect : m_change->units) {
    const season::UnitRecord* unit = m_desk->views().unit(effect.unit);
    if (unit == nullptr || !unit->athletes.empty()) continue;  // the worn ones stand with their athletes
    list.append(QVariantMap{{QStringLiteral("unit"), text(effect.unit)},
                            {QStringLiteral("title"), tr("%1, size %2").arg(PlainWords::text(unit->serial), PlainWords::text(unit->size))},
                            {QStringLiteral("detail"), SheetWords::effects(effect, m_desk->today()).join(QLatin1Char('\n'))},
                            {QStringLiteral("tone"), effect.isSizeGone ? QStringLiteral("stop") : QStringLiteral("plain")}});
  }
  return list;
}

QString SheetEditor::openChecks() const {
  if (!m_change || m_change->openChecks.empty()) return {};
  return tr("%n check(s) open now go on by the sheet they began with.", nullptr, static_cast<int>(m_change->openChecks.size()));
}

QString SheetEditor::barred() const {
  if (!m_change || m_change->sizesGone.empty()) return {};
  QStringList sizes;
  for (const season::SizeGone& gone : m_change->sizesGone)
    sizes << tr("%1: %2", "a size, how many helmets")
                 .arg(PlainWords::text(gone.size), tr("%n helmet(s)", nullptr, static_cast<int>(gone.units.size())));
  return tr("Helmets have sizes that this sheet lacks (%1). Leave these sizes in, under the same name, or retire the helmets first.")
      .arg(sizes.join(QStringLiteral("; ")));
}

bool SheetEditor::canKeep() const {
  if (!isWhole() || m_isBusy) return false;
  if (m_replaces.empty()) return true;
  return m_change && m_change->sizesGone.empty() && !m_change->differences.empty();
}

void SheetEditor::keep() {
  if (!canKeep()) return;
  const auto made = whole();
  if (!made) {
    m_refusal = errorSentence(made.error());
    emit changed();
    return;
  }
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  emit looked();
  const std::string replaces = m_replaces;
  m_desk->submit(
      [sheet = *made, replaces](const season::Views& views, Instant) {
        return replaces.empty() ? book::adoptSheet(views, sheet) : book::replaceSheet(views, replaces, sheet);
      },
      this,
      [this, hash = made->hash, replaces](const Result<book::Appended>& outcome) {
        m_isBusy = false;
        if (!outcome) {
          m_refusal = errorSentence(outcome.error());
          emit changed();
          emit looked();
          return;
        }
        clear();
        QStringList facts;
        for (const std::string& fact : outcome->ids) facts << text(fact);
        emit kept(text(hash), text(replaces), facts);
      });
}

QString SheetEditor::draftFile() const {
  const QString file = m_choices->file();
  return file.isEmpty() ? QString() : QFileInfo(file).absolutePath() + QStringLiteral("/sheet-draft.json");
}

void SheetEditor::readFile() {
  QFile file(draftFile());
  if (file.fileName().isEmpty() || file.size() > kFileMost || !file.open(QIODevice::ReadOnly)) return;
  const QJsonObject object = QJsonDocument::fromJson(file.readAll()).object();
  const auto read = gear::readDraft(utf8(object[QLatin1String(kSheetKey)].toString()), "draft");
  if (!read) return;
  std::string replaces = utf8(object[QLatin1String(kReplacesKey)].toString());
  // Of another Book, or of a sheet taken back: then it would stand for nothing.
  if (!replaces.empty() && m_desk->views().sheet(replaces) == nullptr) replaces.clear();
  gear::SheetDraft draft = read->draft;
  const int unsaid = object[QLatin1String(kUnsaidKey)].toInt();
  draft.unsaid = {(unsaid & 1) != 0, (unsaid & 2) != 0, (unsaid & 4) != 0};
  start(std::move(draft), replaces, sheetSection(object[QLatin1String(kSectionKey)].toString()).value_or(SheetSection::names));
}

void SheetEditor::writeFile() {
  const QString name = draftFile();
  if (name.isEmpty()) return;
  if (!m_isOpen) {
    QFile::remove(name);
    return;
  }
  QSaveFile file(name);
  const gear::Unsaid& open = m_draft.unsaid;
  const int unsaid = (open.air ? 1 : 0) + (open.jawPads ? 2 : 0) + (open.crownPads ? 4 : 0);
  const QByteArray bytes = QJsonDocument(QJsonObject{{QLatin1String(kUnsaidKey), unsaid},
                                                     {QLatin1String(kSheetKey), QString::fromStdString(gear::bytesOf(m_draft))},
                                                     {QLatin1String(kReplacesKey), text(m_replaces)},
                                                     {QLatin1String(kSectionKey), code(m_section)}})
                               .toJson(QJsonDocument::Compact);
  const bool isKept = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
  if (!isKept) m_refusal = tr("What is written here cannot be stored on this device. It is lost when the app ends.");
}

}  // namespace snugline::models
