// SPDX-License-Identifier: Apache-2.0
#include "qml/models/dock_table.h"

#include <algorithm>
#include <utility>
#include <variant>

#include <QCoreApplication>

#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
struct Dock {
  Q_DECLARE_TR_FUNCTIONS(Dock)
};

std::size_t indexOf(int point) { return static_cast<std::size_t>(point); }
bool isPoint(int point) { return point >= 0 && indexOf(point) < gear::kPointCount; }

std::optional<gear::DaySpan> spanOf(const season::Views& views, const book::Arrival& arrival) {
  const gear::ModelSheet* sheet = views.sheet(views.standingSheet(arrival.sheet));
  if (sheet == nullptr || !arrival.label) return std::nullopt;
  return gear::lastGoodDay(*arrival.label, sheet->certificationMonths, std::nullopt, sheet->ageLimitMonths);
}
}  // namespace

void DockTable::open(const QString& path, const season::Views& views, Day today) {
  m_path = path;
  m_draft = readDraft(path, today);
  if (m_draft.stage == DockStage::waiting) return;
  const auto tag = gear::parseTag(m_draft.scan, today);
  if (!tag) {
    clear();
    return;
  }
  m_draft.arrival.tag = *tag;
  // A kill between the Book's sync and this file's: the unit of this draft went in, so the table is free.
  if (isKnown(views) && !m_draft.arrival.sheet.empty()) clear();
}

bool DockTable::isKnown(const season::Views& views) const {
  const season::UnitRecord* known = unit(views);
  return known != nullptr && !known->sheet.empty();
}

const season::UnitRecord* DockTable::unit(const season::Views& views) const {
  if (m_draft.stage == DockStage::waiting) return nullptr;
  return m_draft.arrival.unit.empty() ? views.unitByTag(m_draft.arrival.tag.key) : views.unit(m_draft.arrival.unit);
}

book::Arrival DockTable::arrival(const season::Views& views) const {
  book::Arrival arrival = m_draft.arrival;
  if (const season::UnitRecord* known = unit(views)) {
    arrival.sheet = known->sheet;
    arrival.size = known->size;
  }
  return arrival;
}

bool DockTable::isTouched() const {
  const book::Arrival& a = m_draft.arrival;
  const bool isAnyPointSeen = std::any_of(a.points.begin(), a.points.end(),
                                          [](const gear::PointFinding& finding) { return finding.state != gear::PointState::unseen; });
  return isAnyPointSeen || !a.sheet.empty() || !a.size.empty() || a.label || a.isLabelMissing;
}

bool DockTable::isWhatComplete(const season::Views& views) const {
  const book::Arrival& a = m_draft.arrival;
  if (isKnown(views)) return true;
  return !a.sheet.empty() && !a.size.empty() && (a.label || a.isLabelMissing);
}

QString DockTable::kindWords(const season::Views& views) const {
  const book::Arrival a = arrival(views);
  const gear::ModelSheet* sheet = views.sheet(views.standingSheet(a.sheet));
  if (sheet == nullptr) return {};
  return a.size.empty() ? text(sheet->name) : Dock::tr("%1, size %2").arg(text(sheet->name), text(a.size));
}

QString DockTable::labelWords(const season::Views& views, Day today) const {
  if (m_draft.arrival.isLabelMissing) return Dock::tr("Label looked for and missing");
  if (m_draft.arrival.label) return models::labelWords(*m_draft.arrival.label, spanOf(views, arrival(views)), today);
  const season::UnitRecord* known = unit(views);
  return known == nullptr ? QString() : labelWordsOf(views, *known, today);
}

bool DockTable::isLabelGood(const season::Views& views, Day today) const {
  if (m_draft.arrival.isLabelMissing) return false;
  if (m_draft.arrival.label) {
    const auto span = spanOf(views, arrival(views));
    return !span || gear::judge(*span, today) == gear::LabelState::good;
  }
  const season::UnitRecord* known = unit(views);
  return known == nullptr || labelStateOf(views, *known, today) == gear::LabelState::good;
}

const season::UnitRecord* DockTable::before(const season::Views& views) const {
  const season::UnitRecord* latest = nullptr;
  for (const auto& [id, record] : views.units) {
    if (record.tagKey == m_draft.arrival.tag.key || (record.labels.empty() && !record.isLabelMissing)) continue;
    const bool isLater = latest == nullptr || season::isAfter(record.received, latest->received);
    if (isLater) latest = &record;
  }
  return latest;
}

QString DockTable::offerWords(const season::Views& views) const {
  if (m_draft.stage != DockStage::what || isKnown(views)) return {};
  const season::UnitRecord* last = before(views);
  const gear::ModelSheet* sheet = last == nullptr ? nullptr : views.sheetOf(*last);
  if (sheet == nullptr || last->labels.empty()) return {};
  return Dock::tr("%1, size %2, %3").arg(text(sheet->name), text(last->size), labelShort(last->labels.back().label));
}

int DockTable::heldCount(const season::Views& views) const {
  return static_cast<int>(std::count_if(m_draft.units.begin(), m_draft.units.end(), [&](const std::string& id) {
    const season::UnitRecord* record = views.unit(id);
    return record != nullptr && (!record->holds.empty() || !record->isInService);
  }));
}

void DockTable::place(const std::string& scan, const gear::Tag& tag, const std::string& unit, const season::Views& views) {
  clear();
  m_draft.scan = scan;
  m_draft.arrival.tag = tag;
  m_draft.arrival.unit = unit;
  const bool isThere = unit.empty() ? views.unitByTag(tag.key) != nullptr : views.unit(unit) != nullptr;
  m_draft.stage = isThere ? DockStage::points : DockStage::what;
}

// Once sheet, size and label are all said, the points are the next question.
void DockTable::moveOn(bool wasComplete, const season::Views& views) {
  if (isWhatComplete(views) && (!wasComplete || isKnown(views))) m_draft.stage = DockStage::points;
}

void DockTable::chooseSheet(const std::string& hash, const season::Views& views) {
  const bool wasComplete = isWhatComplete(views);
  if (m_draft.arrival.sheet != hash) m_draft.arrival.size.clear();
  m_draft.arrival.sheet = hash;
  moveOn(wasComplete, views);
}

void DockTable::chooseSize(const std::string& name, const season::Views& views) {
  const bool wasComplete = isWhatComplete(views);
  m_draft.arrival.size = name;
  moveOn(wasComplete, views);
}

void DockTable::chooseLabel(const std::optional<gear::Label>& label, const season::Views& views) {
  const bool wasComplete = isWhatComplete(views);
  m_draft.arrival.label = label;
  m_draft.arrival.isLabelMissing = !label;
  moveOn(wasComplete, views);
}

void DockTable::copyLast(const season::Views& views) {
  const season::UnitRecord* last = before(views);
  if (last == nullptr || last->labels.empty()) return;
  m_draft.arrival.sheet = views.standingSheet(last->sheet);
  m_draft.arrival.size = last->size;
  m_draft.arrival.label = last->labels.back().label;
  m_draft.arrival.isLabelMissing = false;
  m_draft.stage = DockStage::points;
}

void DockTable::show(DockStage stage) { m_draft.stage = stage; }

bool DockTable::touch(int point) {
  if (!isPoint(point)) return false;
  gear::PointFinding& finding = m_draft.arrival.points[indexOf(point)];
  m_draft.arrival.isGroup = false;
  switch (finding.state) {
    case gear::PointState::unseen:
      finding = {gear::PointState::sound, {}};
      return false;
    case gear::PointState::sound:
      finding = {gear::PointState::fault, {}};
      return true;
    case gear::PointState::fault:
      finding = {};
      return false;
  }
  return false;
}

void DockTable::sayFault(int point, const std::string& what) {
  if (!isPoint(point)) return;
  m_draft.arrival.isGroup = false;
  m_draft.arrival.points[indexOf(point)] = {gear::PointState::fault, what};
}

void DockTable::allSound() {
  m_draft.arrival.points.fill({gear::PointState::sound, {}});
  m_draft.arrival.isGroup = true;
}

void DockTable::finish(DockLast last) {
  if (!last.unit.empty() && std::find(m_draft.units.begin(), m_draft.units.end(), last.unit) == m_draft.units.end()) {
    m_draft.units.push_back(last.unit);
  }
  m_draft.last = std::move(last);
  clear();
}

void DockTable::shortenLast(const std::vector<std::string>& facts) {
  if (m_draft.last) m_draft.last->facts = facts;
}

void DockTable::forgetLast() {
  if (!m_draft.last) return;
  std::erase(m_draft.units, m_draft.last->unit);
  m_draft.last.reset();
}

void DockTable::clear() {
  m_draft.stage = DockStage::waiting;
  m_draft.scan.clear();
  m_draft.arrival = {};
}

std::string bareScan(const QString& scanned) {
  const std::string raw = utf8(scanned);
  std::string read;
  for (std::size_t i = 0; i < raw.size(); ++i) {
    const bool isEscape = raw.compare(i, 2, "\\x") == 0 && i + 3 < raw.size() && (raw[i + 2] == '0' || raw[i + 2] == '1');
    if (isEscape) {
      bool isHex = false;
      const int value = QString::fromStdString(raw.substr(i + 2, 2)).toInt(&isHex, 16);
      if (isHex) {
        read.push_back(static_cast<char>(value));
        i += 3;
        continue;
      }
    }
    read.push_back(raw[i]);
  }
  const auto isWrapping = [](char c) { return c == '\r' || c == '\n' || c == '\t' || c == ' ' || c == '\x02' || c == '\x03'; };
  while (!read.empty() && isWrapping(read.back())) read.pop_back();
  std::size_t start = 0;
  while (start < read.size() && isWrapping(read[start])) ++start;
  return read.substr(start);
}

QStringList dueOnUnit(const season::Views& views, const season::UnitRecord& unit, Day today) {
  QStringList due;
  for (const season::HoldRecord& hold : unit.holds) due.append(Dock::tr("On hold: %1").arg(holdWords(hold)));
  if (unit.isLabelMissing || unit.labels.empty() || unit.isLabelDisputed || labelStateOf(views, unit, today) != gear::LabelState::good) {
    due.append(labelWordsOf(views, unit, today));
  }
  if (unit.athletes.size() > 1) due.append(Dock::tr("Two athletes are said to wear it: settle which"));
  if (unit.place != season::UnitPlace::shelf && unit.place != season::UnitPlace::withAthlete)
    due.append(placeWords(unit.place, unit.placeWords));
  QStringList unseen;
  for (const gear::Point point : gear::kPoints) {
    const auto& seen = unit.points[static_cast<std::size_t>(point)];
    if (!seen || seen->finding.state == gear::PointState::unseen) unseen.append(pointName(point));
    const bool isHeld =
        std::any_of(unit.holds.begin(), unit.holds.end(), [&](const season::HoldRecord& hold) { return hold.reason == gear::code(point); });
    if (seen && seen->finding.state == gear::PointState::fault && !isHeld) {
      due.append(Dock::tr("%1: %2").arg(pointName(point), pointStateWords(seen->finding)));
    }
  }
  if (unseen.size() == static_cast<qsizetype>(gear::kPointCount)) {
    due.append(Dock::tr("None of the seven points seen yet"));
  } else if (!unseen.isEmpty()) {
    due.append(Dock::tr("Not seen yet: %1").arg(PlainWords::list(unseen)));
  }
  return due;
}

QString outcomeSentence(const book::Outcome& outcome, const book::Arrival& arrival) {
  QStringList faults;
  for (const gear::Point point : gear::kPoints) {
    const gear::PointFinding& finding = arrival.points[static_cast<std::size_t>(point)];
    if (finding.state == gear::PointState::fault) {
      faults.append(finding.what.empty() ? pointName(point) : Dock::tr("%1: %2").arg(pointName(point), text(finding.what)));
    }
  }
  if (!faults.isEmpty()) return Dock::tr("On hold: %1").arg(faults.join(Dock::tr("; ", "between faults")));
  QStringList unseen;
  for (const gear::Point point : gear::kPoints) {
    if (gear::isNeededForService(point) && arrival.points[static_cast<std::size_t>(point)].state == gear::PointState::unseen)
      unseen.append(pointName(point));
  }
  const bool isNoneSeen = std::all_of(arrival.points.begin(), arrival.points.end(),
                                      [](const gear::PointFinding& finding) { return finding.state == gear::PointState::unseen; });
  if (isNoneSeen) return Dock::tr("See the seven points first");
  if (!unseen.isEmpty()) return Dock::tr("To go in service, see first: %1").arg(PlainWords::list(unseen));
  const QString why =
      outcome.what.empty() ? holdReason(outcome.reason) : Dock::tr("%1: %2").arg(holdReason(outcome.reason), holdWhat(outcome.what));
  return Dock::tr("On hold: %1").arg(why);
}

bool isReasonOpen(const book::Outcome& outcome, const book::Arrival& arrival) {
  if (outcome.isInService) return true;
  const bool isAnyFault = std::any_of(arrival.points.begin(), arrival.points.end(),
                                      [](const gear::PointFinding& finding) { return finding.state == gear::PointState::fault; });
  return !isAnyFault && outcome.what == book::kNotSeenYet;
}

Result<book::Drafts> draftsOfHold(const season::Views& views, const book::Arrival& arrival, const std::string& what, bool isWithAthlete,
                                  Day today) {
  auto drafts = book::takeIn(views, arrival, today);
  if (!drafts) return drafts;
  bool isHeld = false;
  for (book::Draft& draft : *drafts) {
    if (auto* held = std::get_if<book::UnitHeld>(&draft.body)) {
      held->isWithAthlete = isWithAthlete;
      if (!what.empty()) held->what = what;
      isHeld = true;
    }
  }
  if (isHeld) return drafts;
  const season::UnitRecord* known = arrival.unit.empty() ? views.unitByTag(arrival.tag.key) : views.unit(arrival.unit);
  drafts->push_back({known == nullptr ? std::string("#0") : known->id, book::UnitHeld{"other", what, isWithAthlete}});
  return drafts;
}

}  // namespace snugline::models
