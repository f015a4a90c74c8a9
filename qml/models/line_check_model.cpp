// SPDX-License-Identifier: Apache-2.0
#include "line_check_model.h"

#include <algorithm>
#include <utility>

#include "drawn_values.h"
#include "line_model.h"
#include "sentences_air.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {
constexpr std::array<fit::Mark, 3> kInLine{fit::Mark::brow, fit::Mark::straps, fit::Mark::hold};
constexpr std::array<fit::Finding, 2> kOff{fit::Finding::over, fit::Finding::under};

QString choiceName(fit::Mark mark, fit::Finding finding) {
  return codeWord(fit::code(mark)) + QLatin1Char('-') + codeWord(fit::code(finding));
}
}  // namespace

LineCheckModel::LineCheckModel(Desk* desk, Choices* choices, LineModel* line, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_lineModel(line), m_last(QStringLiteral("line"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &LineCheckModel::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_trouble = why;
    emit changed();
  });
  connect(&m_last, &LastAct::undone, this, [this] {
    if (m_screen > 0) --m_screen;
    emit changed();
  });
  connect(choices, &Choices::changed, this, &LineCheckModel::changed);
}

Speech LineCheckModel::speech() const { return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()}; }

void LineCheckModel::begin() {
  m_screens.clear();
  m_screen = 0;
  m_off.clear();
  m_away.clear();
  m_open.clear();
  m_apart.clear();
  m_last.forget();
  m_trouble.clear();
  if (!m_desk->isOpen()) return;
  std::vector<const season::DueRow*> rows = m_lineModel->airRows();
  std::stable_sort(rows.begin(), rows.end(), [](const auto* a, const auto* b) { return season::jerseyBefore(a->jersey, b->jersey); });
  std::vector<std::string> line;
  for (const season::DueRow* row : rows) line.push_back(row->athlete);
  sift(line);
  auto next = line.begin();
  for (const int size : book::lineScreens(static_cast<int>(line.size()))) {
    m_screens.emplace_back(next, next + size);
    next += size;
  }
  emit changed();
}

// Asked of core for each alone, so that one who cannot does not stop the others.
bool LineCheckModel::sift(std::vector<std::string>& athletes) {
  return std::erase_if(athletes, [this](const std::string& athlete) {
           const auto asked = book::lineCheck(m_desk->views(), {athlete}, {}, m_desk->now());
           if (!asked) m_apart << tr("%1: %2", "an athlete, why not in the line").arg(nameOf(athlete), errorSentence(asked.error()));
           return !asked;
         }) > 0;
}

std::vector<std::string> LineCheckModel::shown() const {
  if (!isThrough()) return m_screen < m_screens.size() ? m_screens[m_screen] : std::vector<std::string>();
  std::vector<std::string> all;
  for (const auto& screen : m_screens) all.insert(all.end(), screen.begin(), screen.end());
  return all;
}

std::vector<std::string> LineCheckModel::present() const {
  std::vector<std::string> here = shown();
  std::erase_if(here, [this](const std::string& athlete) { return m_away.contains(athlete); });
  return here;
}

int LineCheckModel::offCount() const {
  const auto here = present();
  return static_cast<int>(std::count_if(here.begin(), here.end(), [this](const std::string& id) { return m_off.contains(id); }));
}

QString LineCheckModel::nameOf(const std::string& athlete) const {
  const season::AthleteRecord* record = m_desk->views().athlete(athlete);
  if (record == nullptr) return {};
  return (PlainWords::text(record->jersey) + QLatin1Char(' ') + PlainWords::shortName(speech(), record->family, record->given)).trimmed();
}

QVariantList LineCheckModel::tiles() const {
  QVariantList list;
  for (const std::string& id : shown()) {
    const season::AthleteRecord* record = m_desk->views().athlete(id);
    if (record == nullptr) continue;
    QStringList noted;
    if (const auto off = m_off.find(id); off != m_off.end()) {
      for (const auto& [mark, finding] : off->second) noted << MarkWords::found(mark, finding, fit::Side::both, fit::HoldHow::unsaid);
    }
    const bool isAway = m_away.contains(id);
    const bool isSnug = !isAway && noted.isEmpty() && isThrough();
    list << QVariantMap{{QStringLiteral("athlete"), PlainWords::text(id)},
                        {QStringLiteral("jersey"), PlainWords::text(record->jersey)},
                        {QStringLiteral("name"), PlainWords::shortName(speech(), record->family, record->given)},
                        {QStringLiteral("noted"), isAway   ? tr("not here")
                                                  : isSnug ? tr("snug")
                                                           : noted.join(QStringLiteral(", "))},
                        {QStringLiteral("state"), isAway            ? QStringLiteral("away")
                                                  : isSnug          ? QStringLiteral("snug")
                                                  : noted.isEmpty() ? QString()
                                                                    : QStringLiteral("off")}};
  }
  return list;
}

QString LineCheckModel::summary() const {
  int count = 0;
  for (const auto& screen : m_screens) count += static_cast<int>(screen.size());
  if (count == 0) return tr("Nobody stands in this lane because of the air.");
  const QString line = tr("%n in the line. Go along it: brow, straps, hold. Touch only what is off.", nullptr, count);
  if (m_screens.size() == 1 || isThrough()) return line;
  return tr("%1 Screen %2 of %3.", "what to do, which screen").arg(line).arg(m_screen + 1).arg(m_screens.size());
}

QString LineCheckModel::allWords() const {
  const int others = static_cast<int>(present().size()) - offCount();
  if (others > 0) return tr("These %n: checked", nullptr, others);
  return offCount() > 0 ? tr("Note what was touched") : tr("None of these is here: go on");
}

QString LineCheckModel::offWords() const {
  const int off = offCount();
  return off == 0 ? QString() : tr("and %n with something off", nullptr, off);
}

void LineCheckModel::openTile(const QString& athlete) {
  m_open = athlete.toStdString();
  emit changed();
}

QString LineCheckModel::openName() const { return m_open.empty() ? QString() : nameOf(m_open); }

QVariantList LineCheckModel::openChoices() const {
  QVariantList list;
  const auto off = m_off.find(m_open);
  for (const fit::Mark mark : kInLine) {
    for (const fit::Finding finding : kOff) {
      const bool isChosen = off != m_off.end() && off->second.contains(mark) && off->second.at(mark) == finding;
      list << QVariantMap{
          {QStringLiteral("name"), choiceName(mark, finding)},
          {QStringLiteral("text"), PlainWords::sentenceCase(MarkWords::found(mark, finding, fit::Side::both, fit::HoldHow::unsaid))},
          {QStringLiteral("chosen"), isChosen}};
    }
  }
  return list;
}

void LineCheckModel::note(const QString& name) {
  if (m_open.empty()) return;
  for (const fit::Mark mark : kInLine) {
    for (const fit::Finding finding : kOff) {
      if (choiceName(mark, finding) != name) continue;
      m_away.erase(m_open);
      Off& off = m_off[m_open];
      if (off.contains(mark) && off.at(mark) == finding)
        off.erase(mark);
      else
        off[mark] = finding;
      if (off.empty()) m_off.erase(m_open);
    }
  }
  emit changed();
}

void LineCheckModel::setAway(bool isAway) {
  if (m_open.empty()) return;
  if (isAway) {
    m_away.insert(m_open);
    m_off.erase(m_open);
  } else {
    m_away.erase(m_open);
  }
  emit changed();
}

void LineCheckModel::record() {
  if (!canRecord()) return;
  m_trouble.clear();
  // What was said meanwhile, or begun on another page, takes somebody out; the button then names another count.
  if (sift(m_screens[m_screen])) {
    if (m_screens[m_screen].empty()) m_screens.erase(m_screens.begin() + static_cast<std::ptrdiff_t>(m_screen));
    emit changed();
    return;
  }
  const std::vector<std::string> seen = present();
  if (seen.empty()) {
    ++m_screen;
    m_last.forget();
    emit changed();
    return;
  }
  std::vector<book::LineException> exceptions;
  for (const std::string& id : seen) {
    if (const auto off = m_off.find(id); off != m_off.end()) {
      for (const auto& [mark, finding] : off->second) exceptions.push_back({id, mark, finding});
    }
  }
  m_isBusy = true;
  emit changed();
  m_desk->submit(
      [seen, exceptions](const season::Views& views, Instant now) { return book::lineCheck(views, seen, exceptions, now); }, this,
      [this, count = static_cast<int>(seen.size()), off = offCount()](const Result<book::Appended>& outcome) {
        m_isBusy = false;
        if (!outcome) {
          m_trouble = errorSentence(outcome.error());
        } else {
          ++m_screen;
          m_last.did(outcome->ids, off == 0 ? tr("Brow, straps and hold seen in line: %n, all snug.", nullptr, count)
                                            : tr("Brow, straps and hold seen in line: %1, and %2 with something off.").arg(count).arg(off));
        }
        emit changed();
        if (outcome) emit recorded();
      });
}

void LineCheckModel::dismissTrouble() {
  m_trouble.clear();
  emit changed();
}

}  // namespace snugline::models
