// SPDX-License-Identifier: Apache-2.0
#include "qml/models/notice_model.h"

#include <algorithm>
#include <tuple>

#include <QVariantMap>

#include "core/book/acts_dock.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"
#include "qml/models/sentences_units.h"

namespace snugline::models {

namespace {

QVariantList rowsOf(const season::Views& views, std::vector<const season::UnitRecord*> units, Day today, bool areNamesShort) {
  std::sort(units.begin(), units.end(), [](const auto* a, const auto* b) {
    return std::tuple(a->athletes.empty(), a->serial, a->id) < std::tuple(b->athletes.empty(), b->serial, b->id);
  });
  QVariantList list;
  for (const season::UnitRecord* unit : units) {
    const season::AthleteRecord* wearer = unit->athletes.empty() ? nullptr : views.athlete(unit->athletes.back());
    list.append(
        QVariantMap{{QStringLiteral("unit"), text(unit->id)},
                    {QStringLiteral("title"), NoticeModel::tr("%1, %2", "serial, kind").arg(text(unit->serial), kindOf(views, *unit))},
                    {QStringLiteral("detail"), unitStatus(views, *unit, today, areNamesShort ? Names::initials : Names::full)},
                    {QStringLiteral("isWorn"), wearer != nullptr}});
  }
  return list;
}

}  // namespace

NoticeModel::NoticeModel(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_last(QStringLiteral("notice"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &NoticeModel::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_refusal = why;
    emit changed();
  });
  connect(desk, &Desk::opened, this, &NoticeModel::changed);
  connect(desk, &Desk::changed, this, &NoticeModel::changed);
  connect(choices, &Choices::changed, this, &NoticeModel::changed);
}

void NoticeModel::begin() {
  m_notice = {};
  m_notice.day = m_desk->today();
  m_isDayGood = m_areYearsGood = true;
  m_refusal.clear();
  emit changed();
}

QVariantList NoticeModel::sheets() const {
  QVariantList list;
  for (const season::SheetRecord* record : season::standingSheets(m_desk->views())) {
    list.append(QVariantMap{{QStringLiteral("name"), text(record->hash)},
                            {QStringLiteral("text"), text(record->sheet->name)},
                            {QStringLiteral("chosen"), record->hash == m_notice.scope.sheet}});
  }
  return list;
}

void NoticeModel::chooseSheet(const QString& hash) {
  m_notice.scope.sheet = utf8(hash) == m_notice.scope.sheet ? std::string() : utf8(hash);
  emit changed();
}

void NoticeModel::setText(const QString& words) {
  m_notice.text = utf8(words.trimmed());
  emit changed();
}

void NoticeModel::setDay(const QString& isoDay) {
  const auto day = parseDay(utf8(isoDay.trimmed()));
  m_isDayGood = day.has_value();
  if (day) m_notice.day = *day;
  emit changed();
}

void NoticeModel::setYears(const QString& from, const QString& to) {
  m_areYearsGood = true;
  const auto read = [this](const QString& words) -> std::optional<int> {
    const QString digits = words.trimmed();
    if (digits.isEmpty()) return std::nullopt;
    bool isNumber = false;
    const int year = digits.toInt(&isNumber);
    m_areYearsGood = m_areYearsGood && isNumber && digits.size() == 4;
    return isNumber ? std::optional(year) : std::nullopt;
  };
  const auto first = read(from), last = read(to);
  // One year said is that year alone; the other end is said where a span is meant.
  m_notice.scope.yearFrom = first ? first : last;
  m_notice.scope.yearTo = last ? last : first;
  if (!m_areYearsGood) m_notice.scope.yearFrom = m_notice.scope.yearTo = std::nullopt;
  emit changed();
}

void NoticeModel::setLot(const QString& lot) {
  m_notice.scope.lot = utf8(lot.trimmed());
  emit changed();
}

void NoticeModel::setSerials(const QString& from, const QString& to) {
  m_notice.scope.serialFrom = utf8(from.trimmed());
  m_notice.scope.serialTo = utf8(to.trimmed());
  emit changed();
}

void NoticeModel::setTakesUnknown(bool takes) {
  m_notice.scope.takesUnknown = takes;
  emit changed();
}

QString NoticeModel::preview() const {
  if (m_notice.scope.isEmpty()) return {};
  return UnitWords::cover(season::coverOf(m_desk->views(), m_notice.scope));
}

QString NoticeModel::scopeWords() const { return UnitWords::scope(m_desk->views(), m_notice.scope); }

QString NoticeModel::notKnown() const {
  if (m_notice.scope.isEmpty()) return {};
  return UnitWords::notKnown(season::coverOf(m_desk->views(), m_notice.scope), m_notice.scope);
}

bool NoticeModel::canKeep() const {
  return !m_isBusy && m_isDayGood && m_areYearsGood && !m_notice.text.empty() && !m_notice.scope.isEmpty();
}

QVariantList NoticeModel::meant() const {
  const season::Views& views = m_desk->views();
  std::vector<const season::UnitRecord*> units;
  for (const std::string& id : season::coverOf(views, m_notice.scope).units) units.push_back(views.unit(id));
  return rowsOf(views, std::move(units), m_desk->today(), m_choices->areNamesShort());
}

QVariantList NoticeModel::kept() const {
  QVariantList list;
  const season::Views& views = m_desk->views();
  if (!views.team) return list;
  for (auto notice = views.team->notices.rbegin(); notice != views.team->notices.rend(); ++notice) {
    const season::NoticeProgress progress = season::progressOf(views, *notice);
    std::vector<const season::UnitRecord*> held;
    for (const auto& [id, unit] : views.units) {
      const bool isHeld = std::any_of(unit.holds.begin(), unit.holds.end(), [&](const auto& hold) { return hold.notice == notice->fact; });
      if (isHeld) held.push_back(&unit);
    }
    const QString state = progress.held == 0 ? tr("No helmet is held for it now")
                                             : tr("Still held: %1").arg(tr("%n helmet(s)", nullptr, progress.held)) +
                                                   (progress.worn == 0 ? QString() : tr(", %n with athletes", nullptr, progress.worn));
    list.append(QVariantMap{{QStringLiteral("notice"), text(notice->fact)},
                            {QStringLiteral("words"), UnitWords::notice(*notice)},
                            {QStringLiteral("scope"), UnitWords::scope(views, notice->scope)},
                            {QStringLiteral("state"), state},
                            {QStringLiteral("units"), rowsOf(views, held, m_desk->today(), m_choices->areNamesShort())},
                            {QStringLiteral("isOpen"), progress.held > 0}});
  }
  return list;
}

void NoticeModel::keep() {
  if (!canKeep()) return;
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  const QString words = tr("Held for the notice: %1").arg(preview());
  m_desk->submit([notice = m_notice](const season::Views& views, Instant now) { return book::issueNotice(views, notice, dayOf(now)); },
                 this,
                 [this, words](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (!outcome) {
                     m_refusal = errorSentence(outcome.error());
                     emit changed();
                     return;
                   }
                   m_last.did(outcome->ids, words);
                   begin();
                   emit written();
                 });
}

}  // namespace snugline::models
