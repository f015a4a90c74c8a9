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
    : QObject(parent), m_desk(desk), m_choices(choices), m_lineModel(line) {
  connect(choices, &Choices::changed, this, &LineCheckModel::changed);
}

Speech LineCheckModel::speech() const { return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()}; }

// Whether somebody can be seen in the line is asked of core for each alone, so that one who cannot does not stop the others.
void LineCheckModel::begin() {
  m_line.clear();
  m_off.clear();
  m_away.clear();
  m_open.clear();
  m_apart.clear();
  m_facts.clear();
  m_doneWords.clear();
  m_trouble.clear();
  if (!m_desk->isOpen()) return;
  std::vector<std::pair<std::string, std::string>> line;  // jersey, athlete
  for (const season::DueRow* row : m_lineModel->airRows()) {
    const auto asked = book::lineCheck(m_desk->views(), {row->athlete}, {}, m_desk->now());
    if (asked)
      line.emplace_back(row->jersey, row->athlete);
    else
      m_apart << tr("%1: %2", "an athlete, why not in the line").arg(nameOf(row->athlete), errorSentence(asked.error()));
  }
  std::stable_sort(line.begin(), line.end(), [](const auto& a, const auto& b) { return season::jerseyBefore(a.first, b.first); });
  for (auto& [jersey, athlete] : line) m_line.push_back(std::move(athlete));
  emit changed();
}

QString LineCheckModel::nameOf(const std::string& athlete) const {
  const season::AthleteRecord* record = m_desk->views().athlete(athlete);
  if (record == nullptr) return {};
  return (PlainWords::text(record->jersey) + QLatin1Char(' ') + PlainWords::shortName(speech(), record->family, record->given)).trimmed();
}

QVariantList LineCheckModel::tiles() const {
  QVariantList list;
  for (const std::string& id : m_line) {
    const season::AthleteRecord* record = m_desk->views().athlete(id);
    if (record == nullptr) continue;
    QStringList noted;
    if (const auto off = m_off.find(id); off != m_off.end()) {
      for (const auto& [mark, finding] : off->second) noted << MarkWords::found(mark, finding, fit::Side::both, fit::HoldHow::unsaid);
    }
    const bool isAway = m_away.contains(id);
    const bool isSnug = !isAway && noted.isEmpty() && !m_doneWords.isEmpty();
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
  if (m_line.empty()) return tr("Nobody stands in this lane because of the air.");
  return tr("%n in the line. Go along it: brow, straps, hold. Touch only what is off.", nullptr, static_cast<int>(m_line.size()));
}

QString LineCheckModel::allWords() const {
  const auto off =
      std::count_if(m_line.begin(), m_line.end(), [this](const std::string& id) { return !m_away.contains(id) && m_off.contains(id); });
  const int others = present() - static_cast<int>(off);
  if (others == 0) return tr("Note what was touched");
  return off == 0 ? tr("All %n snug", nullptr, others) : tr("All %n others snug", nullptr, others);
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
  std::vector<std::string> seen;
  std::vector<book::LineException> exceptions;
  for (const std::string& id : m_line) {
    if (m_away.contains(id)) continue;
    seen.push_back(id);
    if (const auto off = m_off.find(id); off != m_off.end()) {
      for (const auto& [mark, finding] : off->second) exceptions.push_back({id, mark, finding});
    }
  }
  m_isBusy = true;
  m_trouble.clear();
  emit changed();
  m_desk->submit([seen, exceptions](const season::Views& views, Instant now) { return book::lineCheck(views, seen, exceptions, now); },
                 this,
                 [this, count = static_cast<int>(seen.size()), off = m_off.size()](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (!outcome) {
                     m_trouble = errorSentence(outcome.error());
                   } else {
                     m_facts = outcome->ids;
                     m_doneWords = off == 0 ? tr("Brow, straps and hold seen in line: %n, all snug.", nullptr, count)
                                            : tr("Brow, straps and hold seen in line: %1, and %2 with something off.").arg(count).arg(off);
                   }
                   emit changed();
                   if (outcome) emit recorded();
                 });
}

void LineCheckModel::undo() {
  if (m_isBusy || m_facts.empty()) return;
  m_isBusy = true;
  emit changed();
  takeBack({m_facts.rbegin(), m_facts.rend()});
}

void LineCheckModel::takeBack(std::vector<std::string> facts) {
  const std::string fact = facts.front();
  facts.erase(facts.begin());
  m_desk->correct(fact, this, [this, facts = std::move(facts)](const Result<book::Appended>& outcome) mutable {
    if (outcome && !facts.empty()) return takeBack(std::move(facts));
    m_isBusy = false;
    if (outcome) {
      m_facts.clear();
      m_doneWords.clear();
    } else {
      m_trouble = errorSentence(outcome.error());
    }
    emit changed();
  });
}

void LineCheckModel::dismissTrouble() {
  m_trouble.clear();
  emit changed();
}

}  // namespace snugline::models
