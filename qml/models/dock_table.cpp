// SPDX-License-Identifier: Apache-2.0
#include "qml/models/dock_table.h"

#include <algorithm>
#include <utility>
#include <variant>

#include <QCoreApplication>

#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

namespace {
struct Dock {
  Q_DECLARE_TR_FUNCTIONS(Dock)
};

constexpr std::int64_t kSittingMs = 2LL * 60 * 60 * 1000;  // ours: later than that the one before says nothing of the next
constexpr std::size_t kAsideMost = 50;                     // ours

std::size_t indexOf(int point) { return static_cast<std::size_t>(point); }
bool isLabelSaid(const book::Arrival& a) { return a.label || a.isLabelMissing || a.isLabelUnreadable; }
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
  const auto isTag = [&](OnTable& table) {
    const auto tag = gear::parseTag(table.scan, today);
    if (tag) table.arrival.tag = *tag;
    return tag.has_value();
  };
  std::erase_if(m_draft.aside, [&](OnTable& table) { return !isTag(table); });
  if (m_draft.stage == DockStage::waiting) return;
  if (!isTag(m_draft)) return clear();
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
  return isAnyPointSeen || !a.sheet.empty() || !a.size.empty() || isLabelSaid(a) || a.returned;
}

bool DockTable::isWhatComplete(const season::Views& views) const {
  const book::Arrival& a = m_draft.arrival;
  if (isKnown(views)) return true;
  return !a.sheet.empty() && !a.size.empty() && isLabelSaid(a);
}

QString DockTable::kindWords(const season::Views& views) const {
  const book::Arrival a = arrival(views);
  const gear::ModelSheet* sheet = views.sheet(views.standingSheet(a.sheet));
  if (sheet == nullptr) return {};
  return a.size.empty() ? text(sheet->name) : Dock::tr("%1, size %2").arg(text(sheet->name), text(a.size));
}

QString DockTable::labelWords(const season::Views& views, Day today) const {
  if (m_draft.arrival.isLabelMissing) return Dock::tr("Label looked for and missing");
  if (m_draft.arrival.isLabelUnreadable) return Dock::tr("Label cannot be read. It goes on hold until one is read");
  if (m_draft.arrival.label) return models::labelWords(*m_draft.arrival.label, spanOf(views, arrival(views)), today);
  const season::UnitRecord* known = unit(views);
  return known == nullptr ? QString() : labelWordsOf(views, *known, today);
}

bool DockTable::isLabelGood(const season::Views& views, Day today) const {
  if (m_draft.arrival.isLabelMissing || m_draft.arrival.isLabelUnreadable) return false;
  if (m_draft.arrival.label) {
    const auto span = spanOf(views, arrival(views));
    return !span || gear::judge(*span, today) == gear::LabelState::good;
  }
  const season::UnitRecord* known = unit(views);
  return known == nullptr || labelStateOf(views, *known, today) == gear::LabelState::good;
}

// Only what this table saw in this sitting: the one before on another day, or at another table, says nothing of this one.
const season::UnitRecord* DockTable::before(const season::Views& views, Instant now) const {
  if (m_draft.stage != DockStage::what || isKnown(views) || m_draft.units.empty()) return nullptr;
  if (std::abs(now.ms - m_draft.lastMs) > kSittingMs) return nullptr;
  const season::UnitRecord* last = views.unit(m_draft.units.back());
  return last == nullptr || last->labels.empty() || last->isLabelMissing || last->isLabelUnreadable || views.sheetOf(*last) == nullptr
             ? nullptr
             : last;
}

QString DockTable::offerSerial(const season::Views& views, Instant now) const {
  const season::UnitRecord* last = before(views, now);
  return last == nullptr ? QString() : text(last->serial);
}

QString DockTable::offerWords(const season::Views& views, Instant now) const {
  const season::UnitRecord* last = before(views, now);
  if (last == nullptr) return {};
  return Dock::tr("%1, size %2, %3").arg(text(views.sheetOf(*last)->name), text(last->size), labelShort(last->labels.back().label));
}

int DockTable::uncheckedCount() const {
  const gear::PointFindings& points = m_draft.arrival.points;
  return static_cast<int>(std::count_if(points.begin(), points.end(),
                                        [](const gear::PointFinding& finding) { return finding.state == gear::PointState::unseen; }));
}

int DockTable::heldCount(const season::Views& views) const {
  return static_cast<int>(std::count_if(m_draft.units.begin(), m_draft.units.end(), [&](const std::string& id) {
    const season::UnitRecord* record = views.unit(id);
    return record != nullptr && (!record->holds.empty() || !record->isInService);
  }));
}

std::string DockTable::setAside() {
  std::string serial;
  if (m_draft.stage != DockStage::waiting && isTouched()) {
    serial = m_draft.arrival.tag.serial;
    m_draft.aside.push_back(m_draft);
    if (m_draft.aside.size() > kAsideMost) m_draft.aside.erase(m_draft.aside.begin());
  }
  clear();
  return serial;
}

void DockTable::place(const std::string& scan, const gear::Tag& tag, const std::string& unit, const season::Views& views) {
  clear();
  const auto same = std::find_if(m_draft.aside.begin(), m_draft.aside.end(),
                                 [&](const OnTable& one) { return one.arrival.tag.key == tag.key && one.arrival.unit == unit; });
  if (same != m_draft.aside.end()) {
    static_cast<OnTable&>(m_draft) = *same;
    m_draft.aside.erase(same);
    return;
  }
  m_draft.scan = scan;
  m_draft.arrival.tag = tag;
  m_draft.arrival.unit = unit;
  const bool isThere = unit.empty() ? views.unitByTag(tag.key) != nullptr : views.unit(unit) != nullptr;
  m_draft.stage = isThere ? DockStage::points : DockStage::what;
}

void DockTable::takeUp(std::size_t aside) {
  if (aside >= m_draft.aside.size()) return;
  const OnTable taken = m_draft.aside[aside];
  m_draft.aside.erase(m_draft.aside.begin() + static_cast<std::ptrdiff_t>(aside));
  setAside();
  static_cast<OnTable&>(m_draft) = taken;
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

void DockTable::chooseLabel(const std::optional<gear::Label>& label, const season::Views& views, bool isUnreadable) {
  const bool wasComplete = isWhatComplete(views);
  m_draft.arrival.label = label;
  m_draft.arrival.isLabelMissing = !label && !isUnreadable;
  m_draft.arrival.isLabelUnreadable = !label && isUnreadable;
  moveOn(wasComplete, views);
}

void DockTable::copyLast(const season::Views& views, Instant now) {
  const season::UnitRecord* last = before(views, now);
  if (last == nullptr) return;
  m_draft.arrival.sheet = views.standingSheet(last->sheet);
  m_draft.arrival.size = last->size;
  m_draft.arrival.label = last->labels.back().label;
  m_draft.arrival.isLabelMissing = m_draft.arrival.isLabelUnreadable = false;
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

void DockTable::finish(DockLast last, Instant now) {
  std::erase(m_draft.units, last.unit);
  if (!last.unit.empty()) m_draft.units.push_back(last.unit);
  m_draft.lastMs = now.ms;
  m_draft.last = std::move(last);
  clear();
}

void DockTable::settleLast() {
  if (!m_draft.last) return;
  m_draft.last->facts.clear();
  m_draft.last->words.clear();
}

void DockTable::forgetLast() {
  if (!m_draft.last) return;
  std::erase(m_draft.units, m_draft.last->unit);
  m_draft.last.reset();
}

void DockTable::clear() { static_cast<OnTable&>(m_draft) = {}; }

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

void DockTable::sayBack(season::ReturnRecord returned) {
  m_lastReturn = returned;
  m_draft.arrival.returned = std::move(returned);
}

QStringList dueOnUnit(const season::Views& views, const season::UnitRecord& unit, Day today) {
  const season::UnitStanding standing = season::standingOf(views, unit, today);
  QStringList due;
  for (const season::WhyNot& why : standing.reasons) {
    if (why.bar != season::Bar::pointUnchecked) due.append(StandingWords::reason(why, today));
  }
  if (standing.where == season::Where::withAthlete && (!unit.keptBy.empty() || !unit.holds.empty())) {
    due.append(Dock::tr("It was still with the athlete"));
  }
  QStringList unseen;
  for (const gear::Point point : gear::kPoints) {
    if (standing.points[static_cast<std::size_t>(point)] == gear::PointState::unseen) unseen.append(pointName(point));
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
