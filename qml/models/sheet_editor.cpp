// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sheet_editor.h"

#include <algorithm>

#include <QVariantMap>

#include "core/gear/sheet_figure.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"
#include "qml/models/sheet_page.h"

namespace snugline::models {

namespace {

constexpr int kIdLongest = 40;

// "Alder A1, 2027" -> "alder-a1-2027".
std::string idFrom(const std::string& name) {
  std::string id;
  for (const char c : name) {
    const char low = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    const bool isKept = (low >= 'a' && low <= 'z') || (low >= '0' && low <= '9');
    if (isKept)
      id += low;
    else if (!id.empty() && id.back() != '-')
      id += '-';
  }
  while (!id.empty() && id.back() == '-') id.pop_back();
  return id.substr(0, kIdLongest);
}

}  // namespace

SheetEditor::SheetEditor(Desk* desk, const Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::opened, this, &SheetEditor::readFile);
  connect(desk, &Desk::changed, this, [this] {
    if (!m_isOpen) return;
    judge();
    if (m_change) look();
  });
  connect(choices, &Choices::changed, this, [this] {
    judge();
    if (m_change) emit looked();
  });
  if (desk->isOpen()) readFile();
}

void SheetEditor::start(gear::SheetDraft draft, std::string replaces, SheetSection section) {
  m_dropped.reset();
  m_draft = std::move(draft);
  m_replaces = std::move(replaces);
  m_isOpen = true;
  m_isIdSaid = !m_draft.id.empty();
  m_section = section;
  m_typed.clear();
  m_unread.clear();
  m_change.reset();
  m_refusal.clear();
  edited();
}

void SheetEditor::beginNew() {
  gear::SheetDraft draft;
  draft.unsaid = {true, true, true};
  start(std::move(draft), {}, SheetSection::names);
}

void SheetEditor::beginCopy(const QString& hash) {
  const gear::ModelSheet* sheet = m_desk->views().sheet(utf8(hash));
  if (sheet == nullptr) return;
  gear::SheetDraft draft = gear::draftOf(*sheet);
  draft.id.clear();
  draft.name.clear();
  start(std::move(draft), {}, SheetSection::names);
}

void SheetEditor::beginChange(const QString& hash) {
  const gear::ModelSheet* sheet = m_desk->views().sheet(utf8(hash));
  if (sheet != nullptr) start(gear::draftOf(*sheet), m_desk->views().standingSheet(utf8(hash)), SheetSection::sizes);
}

void SheetEditor::begin(const gear::ReadDraft& read, const std::string& replaces) {
  start(read.draft, replaces, read.faults.empty() ? SheetSection::names : sectionOf(read.faults.front().path));
  for (const gear::SheetFault& fault : read.faults) {
    if (fault.rule != gear::SheetRule::form) continue;
    m_unread << tr("%1: %2", "where, what is wrong")
                    .arg(SheetWords::place(read.draft, fault.path), SheetWords::fault(fault, m_choices->units()));
  }
  emit changed();
}

void SheetEditor::drop() {
  m_dropped.reset();
  if (m_isOpen) m_dropped = Dropped{m_draft, m_replaces, m_section};
  clear();
}

void SheetEditor::undoDrop() {
  if (!m_dropped || m_isOpen) return;
  const Dropped back = std::move(*m_dropped);
  m_dropped.reset();
  start(back.draft, back.replaces, back.section);
}

QString SheetEditor::droppedWords() const {
  if (!m_dropped || m_isOpen) return {};
  return m_dropped->draft.name.empty() ? tr("Dropped: a sheet without a name")
                                       : tr("Dropped: %1").arg(PlainWords::text(m_dropped->draft.name));
}

void SheetEditor::clear() {
  m_isOpen = false;
  m_draft = {};
  m_replaces.clear();
  m_typed.clear();
  m_unread.clear();
  m_faults.clear();
  m_fields = {};
  m_change.reset();
  m_refusal.clear();
  writeFile();
  emit changed();
  emit looked();
}

void SheetEditor::setSection(const QString& section) {
  const auto known = sheetSection(section);
  if (!known || *known == m_section) return;
  m_section = *known;
  edited();
}

void SheetEditor::edited() {
  m_change.reset();
  m_refusal.clear();
  writeFile();
  judge();
  emit looked();
}

void SheetEditor::judge() {
  m_faults = m_isOpen ? gear::faultsOf(m_draft) : std::vector<gear::SheetFault>{};
  m_fields = m_isOpen ? fieldsOf(m_draft, m_section, m_faults, m_typed, m_choices->units()) : SheetFields{};
  emit changed();
}

void SheetEditor::step(const QString& path, const QString& wholes) {
  const std::string at = utf8(path);
  gear::Figure* figure = gear::figureAt(m_draft, at);
  const auto range = gear::figureRange(at);
  if (figure == nullptr || !range || m_isBusy) return;
  const std::int64_t next = gear::stepFigure(*figure, wholes.toInt(), *range, m_choices->units(), stepsFrom(m_draft, at));
  type(path, QString::fromStdString(range->unit == gear::FigureUnit::um   ? exact(Length{next})
                                    : range->unit == gear::FigureUnit::pa ? exact(Pressure{next})
                                                                          : std::to_string(next)));
}

void SheetEditor::type(const QString& path, const QString& words) {
  if (m_isBusy) return;
  const std::string at = utf8(path);
  if (std::string* value = gear::textAt(m_draft, at)) {
    *value = utf8(words);
    if (at == "/id") m_isIdSaid = !words.isEmpty();
    if (at == "/name" && !m_isIdSaid) m_draft.id = idFrom(*value);
    return edited();
  }
  gear::Figure* figure = gear::figureAt(m_draft, at);
  const auto range = gear::figureRange(at);
  if (figure == nullptr || !range) return;
  m_typed.erase(at);
  gear::Figure next;
  if (!words.trimmed().isEmpty()) {
    const auto read = gear::readFigure(utf8(words), range->unit, m_choices->units());
    if (read)
      next = *read;
    else
      m_typed[at] = words;
  }
  if (m_typed.contains(at)) return edited();  // what stood there stays until a number is typed
  const auto steps = at.find("/steps_um/");
  if (steps != std::string::npos) {
    gear::PadsDraft& pads = at.rfind("/jaw", 0) == 0 ? *m_draft.jawPads : *m_draft.crownPads;
    gear::setStep(pads, std::stoul(at.substr(steps + 10)), next);
  } else {
    *figure = next;
  }
  edited();
}

void SheetEditor::choose(const QString& path, const QString& value) {
  gear::Figure* figure = gear::figureAt(m_draft, utf8(path));
  bool isNumber = false;
  const qlonglong chosen = value.toLongLong(&isNumber);
  if (figure == nullptr || !isNumber || m_isBusy) return;
  *figure = chosen;
  edited();
}

void SheetEditor::act(const QString& action) {
  if (m_isBusy || !actOn(m_draft, action)) return;
  m_typed.clear();
  edited();
}

void SheetEditor::goToFault() {
  if (!m_typed.empty())
    setSection(code(sectionOf(m_typed.begin()->first)));
  else if (!m_faults.empty())
    setSection(code(sectionOf(m_faults.front().path)));
}

gear::ModelSheet SheetEditor::sheet() const { return gear::sheetOfDraft(m_draft); }

// The bytes of a sheet that the Book knows already where it means the same: then it is that one which counts again.
Result<gear::ModelSheet> SheetEditor::whole() const {
  auto made = gear::sheetFrom(m_draft);
  if (!made || m_replaces.empty()) return made;
  for (const season::SheetRecord* record : season::sheetsBefore(m_desk->views(), m_desk->views().standingSheet(m_replaces)))
    if (gear::differencesOf(*record->sheet, *made).empty()) return *record->sheet;
  return made;
}

Speech SheetEditor::speech() const {
  return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort(), {}, m_choices->gaugeUnits()};
}

QString SheetEditor::title() const { return m_draft.name.empty() ? tr("No name yet") : PlainWords::text(m_draft.name); }

QString SheetEditor::insteadWords() const {
  const gear::ModelSheet* old = m_desk->views().sheet(m_replaces);
  return old == nullptr ? tr("A new sheet") : tr("Instead of %1, once it is kept").arg(PlainWords::text(old->name));
}

QVariantList SheetEditor::sections() const {
  QVariantList list;
  for (std::size_t i = 0; i < kSheetSectionCount; ++i) {
    const auto section = static_cast<SheetSection>(i);
    int open = 0, wrong = 0;
    for (const gear::SheetFault& fault : m_faults) {
      if (sectionOf(fault.path) != section) continue;
      ++(fault.rule == gear::SheetRule::missing ? open : wrong);
    }
    for (const auto& [path, words] : m_typed) wrong += sectionOf(path) == section ? 1 : 0;
    list.append(QVariantMap{{QStringLiteral("name"), code(section)},
                            {QStringLiteral("text"), sectionName(section)},
                            {QStringLiteral("state"), wrong > 0  ? QStringLiteral("fault")
                                                      : open > 0 ? QStringLiteral("open")
                                                                 : QStringLiteral("done")}});
  }
  return list;
}

QVariantMap SheetEditor::drawn() const { return drawingOf(sheet()); }
QVariantList SheetEditor::callouts() const { return m_isOpen ? models::callouts(sheet(), m_choices->units()) : QVariantList(); }

QVariantList SheetEditor::chart() const {
  gear::ModelSheet made = sheet();
  // A band without both ends has no place on the chart yet.
  for (std::size_t i = m_draft.sizes.size(); i > 0; --i)
    if (!m_draft.sizes[i - 1].low || !m_draft.sizes[i - 1].high) made.sizes.erase(made.sizes.begin() + static_cast<std::ptrdiff_t>(i - 1));
  return sizeChart(made, m_choices->units());
}

QString SheetEditor::openWords() const {
  const auto open = static_cast<int>(
      std::count_if(m_faults.begin(), m_faults.end(), [](const auto& fault) { return fault.rule == gear::SheetRule::missing; }));
  const int wrong = static_cast<int>(m_faults.size()) - open + static_cast<int>(m_typed.size());
  QStringList parts;
  if (wrong > 0) parts << tr("%n value(s) to put right", nullptr, wrong);
  if (open > 0) parts << tr("%n value(s) not said yet", nullptr, open);
  return parts.join(QStringLiteral(", "));
}

QString SheetEditor::nextFault() const {
  if (!m_typed.empty()) return SheetWords::place(m_draft, m_typed.begin()->first);
  return m_faults.empty() ? QString() : SheetWords::place(m_draft, m_faults.front().path);
}

bool SheetEditor::isDifferent() const {
  const gear::ModelSheet* old = m_desk->views().sheet(m_replaces);
  return old == nullptr || !isWhole() || !gear::differencesOf(*old, sheet()).empty();
}

}  // namespace snugline::models
