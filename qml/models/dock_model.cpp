// SPDX-License-Identifier: Apache-2.0
#include "qml/models/dock_model.h"

#include <algorithm>
#include <utility>

#include <QFileInfo>
#include <QVariantMap>

#include "core/book/undo.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/dock_body.h"
#include "qml/models/label_reading.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

namespace {
constexpr qsizetype kArrivalsShown = 12;

QString photosKept(const season::UnitRecord& unit) {
  const auto count = static_cast<int>(unit.photos.size());
  return count == 0 ? QString() : DockModel::tr("%n photo(s) kept", nullptr, count);
}
}  // namespace

DockModel::DockModel(Desk* desk, const Choices* choices, QObject* parent) : QObject(parent), m_body(std::make_unique<Body>()) {
  m_body->desk = desk;
  m_body->choices = choices;
  const auto start = [this] {
    const QString file = m_body->choices->file();
    m_body->table.open(file.isEmpty() ? QString() : QFileInfo(file).absolutePath() + QStringLiteral("/dock.json"), m_body->desk->views(),
                       m_body->desk->today());
    emit changed();
  };
  connect(desk, &Desk::opened, this, start);
  connect(desk, &Desk::changed, this, &DockModel::changed);
  if (desk->isOpen()) start();
}

DockModel::~DockModel() = default;

DockModel::Stage DockModel::stage() const {
  switch (m_body->table.draft().stage) {
    case DockStage::waiting:
      return Stage::Waiting;
    case DockStage::what:
      return Stage::What;
    case DockStage::points:
      return Stage::Points;
  }
  return Stage::Waiting;
}

bool DockModel::isBusy() const { return m_body->isBusy; }
QString DockModel::refusal() const { return m_body->refusal; }
QString DockModel::serial() const { return text(m_body->table.draft().arrival.tag.serial); }
bool DockModel::isKnown() const { return m_body->table.isKnown(m_body->desk->views()); }
QString DockModel::unitId() const { return m_body->unit() == nullptr ? QString() : text(m_body->unit()->id); }
int DockModel::faultOpen() const { return m_body->faultOpen; }
bool DockModel::isLabelMissing() const { return m_body->table.draft().arrival.isLabelMissing; }
bool DockModel::isLabelUnreadable() const { return m_body->table.draft().arrival.isLabelUnreadable; }
bool DockModel::isDateKnown() const {
  const auto& label = m_body->table.draft().arrival.label;
  return label && label->fullDate.has_value();
}

QString DockModel::remark() const {
  if (stage() == Stage::Waiting) return {};
  const gear::Tag& tag = m_body->table.draft().arrival.tag;
  QStringList words;
  if (!tag.made.empty()) words << tr("Made %1").arg(text(tag.made));
  if (const auto lot = tag.ai.find("10"); lot != tag.ai.end()) words << tr("Lot %1").arg(text(lot->second));
  if (!m_body->table.draft().arrival.unit.empty()) words << tr("Found by its serial, not by its whole tag");
  return words.join(QStringLiteral(". "));
}

QString DockModel::kindWords() const { return m_body->table.kindWords(m_body->desk->views()); }

QStringList DockModel::due() const {
  const season::UnitRecord* unit = m_body->unit();
  return unit == nullptr ? QStringList() : dueOnUnit(m_body->desk->views(), *unit, m_body->desk->today());
}

QVariantList DockModel::sheets() const {
  const season::Views& views = m_body->desk->views();
  const std::string& chosen = views.standingSheet(m_body->table.draft().arrival.sheet);
  QVariantList list;
  for (const season::SheetRecord* record : season::standingSheets(views)) {
    list.append(QVariantMap{{QStringLiteral("key"), text(record->hash)},
                            {QStringLiteral("name"), text(record->sheet->name)},
                            {QStringLiteral("isChosen"), record->hash == chosen}});
  }
  return list;
}

QVariantList DockModel::sizes() const {
  QVariantList list;
  const season::Views& views = m_body->desk->views();
  const gear::ModelSheet* chosen = views.sheet(views.standingSheet(m_body->table.draft().arrival.sheet));
  // Before a sheet is chosen the longest of them keeps the room.
  const gear::ModelSheet* shown = chosen;
  if (chosen == nullptr) {
    for (const season::SheetRecord* record : season::standingSheets(views)) {
      if (shown == nullptr || record->sheet->sizes.size() > shown->sizes.size()) shown = &*record->sheet;
    }
  }
  if (shown == nullptr) return list;
  for (const gear::SizeBand& band : shown->sizes) {
    list.append(QVariantMap{{QStringLiteral("key"), text(band.name)},
                            {QStringLiteral("name"), text(band.name)},
                            {QStringLiteral("isOpen"), chosen != nullptr},
                            {QStringLiteral("isChosen"), chosen != nullptr && band.name == m_body->table.draft().arrival.size}});
  }
  return list;
}

QVariantList DockModel::years() const { return labelYears(m_body->table.draft().arrival.label, m_body->desk->today()); }
QString DockModel::labelWords() const { return m_body->table.labelWords(m_body->desk->views(), m_body->desk->today()); }
bool DockModel::isLabelGood() const { return m_body->table.isLabelGood(m_body->desk->views(), m_body->desk->today()); }
bool DockModel::isReturnAsked() const {
  const season::UnitRecord* known = m_body->unit();
  const bool isAtWork = known != nullptr && (known->place == season::UnitPlace::repair || known->place == season::UnitPlace::sentOut);
  return isAtWork && !m_body->table.draft().arrival.returned;
}
QVariantMap DockModel::lastReturn() const { return returnMap(m_body->table.lastReturn()); }
void DockModel::sayBack(const QString& by, const QString& done, const QString& paper, bool isCleaned) {
  change([&](DockTable& table) { table.sayBack({utf8(by), utf8(done.trimmed()), utf8(paper.trimmed()), isCleaned, {}}); });
}
bool DockModel::isLabelRead() const {
  const book::Arrival& arrival = m_body->table.draft().arrival;
  return arrival.label.has_value() || arrival.isLabelMissing || arrival.isLabelUnreadable;
}
QVariantList DockModel::points() const {
  const book::Arrival& arrival = m_body->table.draft().arrival;
  const season::Views& views = m_body->desk->views();
  return pointList(arrival.points, views.sheet(views.standingSheet(arrival.sheet)));
}

QString DockModel::outcomeWords() const {
  if (stage() != Stage::Points) return {};
  if (isReturnAsked()) return tr("Say first what was done to it");
  const book::Outcome outcome = m_body->outcome();
  if (outcome.isInService) return tr("Goes in service");
  return outcomeSentence(outcome, m_body->table.draft().arrival);
}

bool DockModel::isInServiceOpen() const {
  return stage() == Stage::Points && !m_body->isBusy && !isReturnAsked() && m_body->outcome().isInService;
}
bool DockModel::isAllSoundOpen() const {
  if (stage() != Stage::Points || m_body->isBusy || isReturnAsked() || !m_body->isJustScanned) return false;
  if (uncheckedCount() != static_cast<int>(gear::kPointCount)) return false;
  book::Arrival arrival = m_body->arrival();
  arrival.points.fill({gear::PointState::sound, {}});
  return book::outcomeOf(m_body->desk->views(), arrival, m_body->desk->today()).isInService;
}
int DockModel::uncheckedCount() const { return stage() == Stage::Points ? m_body->table.uncheckedCount() : 0; }
bool DockModel::isHoldOpen() const { return stage() == Stage::Points && !m_body->isBusy && !isReturnAsked(); }

bool DockModel::isReasonNeeded() const {
  return stage() == Stage::Points && isReasonOpen(m_body->outcome(), m_body->table.draft().arrival);
}

bool DockModel::isWorn() const { return m_body->unit() != nullptr && !m_body->unit()->athletes.empty(); }
bool DockModel::isWhatComplete() const { return m_body->table.isWhatComplete(m_body->desk->views()); }
QString DockModel::offer() const { return m_body->table.offerWords(m_body->desk->views(), m_body->desk->now()); }
QString DockModel::offerSerial() const { return m_body->table.offerSerial(m_body->desk->views(), m_body->desk->now()); }
QString DockModel::lastWords() const { return m_body->table.draft().last ? m_body->table.draft().last->words : QString(); }
QVariantList DockModel::arrivals() const {
  QVariantList list;
  const season::Views& views = m_body->desk->views();
  const std::vector<std::string>& units = m_body->table.draft().units;
  for (auto id = units.rbegin(); id != units.rend() && list.size() < kArrivalsShown; ++id) {
    const season::UnitRecord* unit = views.unit(*id);
    if (unit == nullptr) continue;
    list.append(QVariantMap{{QStringLiteral("unit"), text(unit->id)},
                            {QStringLiteral("serial"), text(unit->serial)},
                            {QStringLiteral("kind"), kindOf(views, *unit)},
                            {QStringLiteral("status"), unitStatus(views, *unit, m_body->desk->today(), Names::none)},
                            {QStringLiteral("photos"), photosKept(*unit)},
                            {QStringLiteral("isHeld"), !season::standingOf(views, *unit, m_body->desk->today()).mayBeWorn()}});
  }
  return list;
}

int DockModel::count() const { return static_cast<int>(m_body->table.draft().units.size()); }
int DockModel::inServiceCount() const { return count() - heldCount(); }
int DockModel::heldCount() const { return m_body->table.heldCount(m_body->desk->views()); }

void DockModel::change(const std::function<void(DockTable&)>& touch) {
  if (m_body->isBusy) return;
  m_body->refusal.clear();
  m_body->meant.clear();
  m_body->doubted.clear();
  m_body->asked.clear();
  touch(m_body->table);
  if (!m_body->table.keep()) m_body->refusal = tr("This device has no room to keep what was touched. It stays on the glass only.");
  emit changed();
}

void DockModel::chooseSheet(const QString& hash) {
  change([&](DockTable& table) { table.chooseSheet(utf8(hash), m_body->desk->views()); });
}
void DockModel::chooseSize(const QString& name) {
  change([&](DockTable& table) { table.chooseSize(utf8(name), m_body->desk->views()); });
}

void DockModel::chooseYear(int year, bool isMakersMark) {
  change([&](DockTable& table) { table.chooseLabel(labelOfYear(year, isMakersMark), m_body->desk->views()); });
}

void DockModel::chooseDate(const QString& isoDay, const QString& source) {
  const auto label = labelOfDate(isoDay, source, m_body->desk->today());
  if (const auto* refused = std::get_if<QString>(&label)) {
    m_body->refusal = *refused;
    emit changed();
    return;
  }
  change([&](DockTable& table) { table.chooseLabel(std::get<gear::Label>(label), m_body->desk->views()); });
}

void DockModel::chooseLabelMissing() {
  change([&](DockTable& table) { table.chooseLabel(std::nullopt, m_body->desk->views()); });
}

void DockModel::chooseLabelUnreadable() {
  change([&](DockTable& table) { table.chooseLabel(std::nullopt, m_body->desk->views(), true); });
}

void DockModel::asTheLast() {
  change([&](DockTable& table) { table.copyLast(m_body->desk->views(), m_body->desk->now()); });
}

void DockModel::toWhat() {
  change([](DockTable& table) { table.show(DockStage::what); });
}

void DockModel::toPoints() {
  if (!isWhatComplete()) return;
  change([](DockTable& table) { table.show(DockStage::points); });
}

void DockModel::touchPoint(int index) {
  change([&](DockTable& table) { m_body->faultOpen = table.touch(index) ? index : -1; });
}

void DockModel::sayFault(int index, const QString& what) {
  change([&](DockTable& table) { table.sayFault(index, utf8(what.trimmed())); });
  closeFault();
}

void DockModel::closeFault() {
  m_body->faultOpen = -1;
  emit changed();
}

void DockModel::allSound() {
  change([&](DockTable& table) {
    m_body->faultOpen = -1;
    table.allSound();
  });
}

void DockModel::putInService() {
  if (!isInServiceOpen()) return;
  write({}, false, true);
}

void DockModel::putAllSoundInService() {
  if (!isAllSoundOpen()) return;
  allSound();
  putInService();
}

void DockModel::hold(const QString& what, bool isWithAthlete) {
  if (!isHoldOpen()) return;
  if (isReasonNeeded() && what.trimmed().isEmpty()) {
    m_body->refusal = tr("Say why it is held.");
    emit changed();
    return;
  }
  write(utf8(what.trimmed()), isWithAthlete, false);
}

void DockModel::write(const std::string& what, bool isWithAthlete, bool isInService) {
  m_body->isBusy = true;
  m_body->refusal.clear();
  emit changed();
  const book::Arrival arrival = m_body->arrival();
  const std::string known = m_body->unit() == nullptr ? std::string() : m_body->unit()->id;
  const QString name = serial();
  const auto job = [arrival, what, isWithAthlete, isInService](const season::Views& views, Instant now) -> Result<book::Drafts> {
    return isInService ? book::takeIn(views, arrival, dayOf(now)) : draftsOfHold(views, arrival, what, isWithAthlete, dayOf(now));
  };
  m_body->desk->submit(job, this, [this, known, name, isInService](const Result<book::Appended>& outcome) {
    m_body->isBusy = false;
    if (!outcome) {
      m_body->refusal = errorSentence(outcome.error());
      m_body->waiting.clear();  // what is on the table is not in the Book yet
      emit changed();
      return;
    }
    const std::string unit = known.empty() && !outcome->ids.empty() ? outcome->ids.front() : known;
    const QString words = isInService ? tr("%1 is in service").arg(name) : tr("%1 is on hold").arg(name);
    change([&](DockTable& table) { table.finish(DockLast{outcome->ids, unit, words}, m_body->desk->now()); });
    emit taken(name, isInService);
    finished();
  });
}

// The next of the tags that came meanwhile.
void DockModel::finished() {
  if (m_body->waiting.empty() || m_body->isBusy) return;
  const QString next = m_body->waiting.front();
  m_body->waiting.pop_front();
  scan(next);
  finished();
}

void DockModel::undoLast() {
  if (m_body->isBusy || !m_body->table.draft().last) return;
  m_body->isBusy = true;
  m_body->refusal.clear();
  emit changed();
  m_body->desk->correct(m_body->table.draft().last->facts, this, [this](const Result<book::Appended>& outcome) {
    m_body->isBusy = false;
    if (outcome || outcome.error().code == ErrorCode::notFound) {
      change([](DockTable& table) { table.forgetLast(); });
      return finished();
    }
    if (outcome.error().detail == book::rule::kRestsOnIt) change([](DockTable& table) { table.settleLast(); });
    m_body->refusal = errorSentence(outcome.error());
    m_body->waiting.clear();
    emit changed();
  });
}

void DockModel::putAside() {
  m_body->faultOpen = -1;
  change([](DockTable& table) { table.clear(); });
}

}  // namespace snugline::models
