// SPDX-License-Identifier: Apache-2.0
// The tape side of AthleteModel: readings, the size they speak for, and helmets on the shelf by the odds of their size.
#include <algorithm>

#include "athlete_model.h"
#include "sentences_gear.h"

#include "core/season/sheet_chain.h"

namespace snugline::models {

namespace {

constexpr double kLikelyOdds = 0.2;   // below this a size is not worth trying on (ours)
constexpr double kRemoteOdds = 0.01;  // below this a size is only shown when asked for (ours)
constexpr std::size_t kShelfShown = 40;

QString numbers(const std::vector<Length>& readings, UnitSystem units) {
  QStringList list;
  for (const Length reading : readings) list << PlainWords::number(reading, units);
  return list.join(QStringLiteral(", "));
}

}  // namespace

// From the first two readings of every tape in the Book, once there are enough.
Length AthleteModel::tem() const {
  std::vector<fit::TapePair> pairs;
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    for (const season::TapeRecord& tape : athlete.tapes) {
      if (tape.readings.size() > 1) pairs.push_back({tape.readings[0], tape.readings[1]});
    }
  }
  return fit::technicalError(pairs).value_or(fit::kDefaultTem);
}

QVariantList AthleteModel::tapes() const {
  QVariantList list;
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr) return list;
  for (auto tape = athlete->tapes.rbegin(); tape != athlete->tapes.rend(); ++tape) {
    const QString who = PlainWords::person(m_desk->views(), tape->stamp.who);
    const QString when = PlainWords::day(dayOf(tape->stamp.at), m_desk->today());
    list << QVariantMap{{QStringLiteral("reading"), numbers(tape->readings, m_choices->units())},
                        {QStringLiteral("when"), who.isEmpty() ? when : tr("%1 by %2", "a day, initials").arg(when, who)}};
  }
  return list;
}

QVariantMap AthleteModel::sizeMap(const gear::ModelSheet& sheet, const std::vector<Length>& readings) const {
  const auto answer = fit::sizeOf(sheet, readings, tem());
  if (!answer) return {};
  QVariantList odds;
  for (const fit::SizeOdds& one : answer->odds) {
    odds << QVariantMap{{QStringLiteral("size"), PlainWords::text(one.size)},
                        {QStringLiteral("percent"), PlainWords::percent(one.odds)},
                        {QStringLiteral("share"), one.odds}};
  }
  QString text, note;
  if (answer->size.empty())
    text = tr("Off the chart of this model");
  else if (answer->isBetween)
    text = tr("Between sizes: try both, start with %1").arg(PlainWords::text(answer->startWith));
  else
    text = tr("Size %1").arg(PlainWords::text(answer->size));
  note =
      tr("Head %1, give or take %2")
          .arg(PlainWords::number(answer->circumference, m_choices->units()), PlainWords::number(answer->uncertainty, m_choices->units()));
  return {{QStringLiteral("model"), PlainWords::text(sheet.name)},
          {QStringLiteral("text"), text},
          {QStringLiteral("note"), note},
          {QStringLiteral("odds"), odds}};
}

QVariantList AthleteModel::sizes() const {
  QVariantList list;
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr || athlete->tapes.empty()) return list;
  for (const season::SheetRecord* adopted : season::standingSheets(m_desk->views())) {
    const QVariantMap map = sizeMap(*adopted->sheet, athlete->tapes.back().readings);
    if (!map.isEmpty()) list << map;
  }
  return list;
}

QString AthleteModel::sizeOdds(const season::UnitRecord& unit, double& odds) const {
  odds = 0;
  const season::AthleteRecord* athlete = record();
  const gear::ModelSheet* model = m_desk->views().sheetOf(unit);
  if (athlete == nullptr || athlete->tapes.empty() || model == nullptr) return {};
  const auto answer = fit::sizeOf(*model, athlete->tapes.back().readings, fit::kDefaultTem);
  if (!answer) return {};
  for (const fit::SizeOdds& one : answer->odds) {
    if (one.size == unit.size) odds = one.odds;
  }
  return tr("%1 likely", "odds of a size").arg(PlainWords::percent(odds));
}

// Helmets that core would let this athlete have now, the likeliest size first.
QVariantList AthleteModel::shelf() const {
  struct Candidate {
    const season::UnitRecord* unit;
    double odds;
    QString words;
  };
  std::vector<Candidate> candidates;
  for (const auto& [id, one] : m_desk->views().units) {
    if (one.place != season::UnitPlace::shelf || !one.athletes.empty()) continue;
    if (!book::pair(m_desk->views(), m_athlete, id, m_desk->today())) continue;
    double odds = 0;
    const QString words = sizeOdds(one, odds);
    candidates.push_back({&one, odds, words});
  }
  std::sort(candidates.begin(), candidates.end(),
            [](const Candidate& a, const Candidate& b) { return a.odds != b.odds ? a.odds > b.odds : a.unit->serial < b.unit->serial; });
  if (candidates.size() > kShelfShown) candidates.resize(kShelfShown);
  QVariantList list;
  for (const Candidate& candidate : candidates) {
    const gear::ModelSheet* model = m_desk->views().sheetOf(*candidate.unit);
    list << QVariantMap{
        {QStringLiteral("unit"), QString::fromStdString(candidate.unit->id)},
        {QStringLiteral("serial"), PlainWords::text(candidate.unit->serial)},
        {QStringLiteral("model"),
         tr("%1, size %2").arg(model == nullptr ? QString() : PlainWords::text(model->name), PlainWords::text(candidate.unit->size))},
        {QStringLiteral("odds"), candidate.words},
        {QStringLiteral("label"), labelWordsOf(m_desk->views(), *candidate.unit, m_desk->today())},
        {QStringLiteral("isLikely"), candidate.odds >= kLikelyOdds},
        {QStringLiteral("isRemote"), !candidate.words.isEmpty() && candidate.odds < kRemoteOdds}};
  }
  return list;
}

QString AthleteModel::tapeUnit() const { return m_choices->units() == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in"); }

QString AthleteModel::tapeLabel() const {
  return m_choices->units() == UnitSystem::metric ? tr("Reading in millimetres") : tr("Reading in inches");
}

// Each reading is on disk before the next is asked for: the tape so far is written anew and the shorter one taken back.
void AthleteModel::addReading(const QString& digits) {
  const auto reading = parseLength((digits + tapeUnit()).toStdString(), {});
  if (!reading) return setTrouble(errorSentence(reading.error()));
  std::vector<Length> readings = m_readings;
  readings.push_back(*reading);
  act([athlete = m_athlete, readings](const season::Views& views, Instant) { return book::readTape(views, athlete, readings); },
      [this, readings](const book::Appended& appended) {
        const std::string earlier = m_tapeFact;
        m_readings = readings;
        m_tapeFact = appended.ids.empty() ? std::string() : appended.ids.front();
        emit readingsChanged();
        if (!earlier.empty()) m_desk->correct(earlier, this, [](const Result<book::Appended>&) {});
      });
}

void AthleteModel::endTape() {
  m_readings.clear();
  m_tapeFact.clear();
  emit readingsChanged();
}

QVariantList AthleteModel::readings() const {
  QVariantList list;
  for (const Length reading : m_readings) list << QVariantMap{{QStringLiteral("text"), PlainWords::number(reading, m_choices->units())}};
  return list;
}

QString AthleteModel::tapeAdvice() const {
  if (m_readings.empty())
    return tr("Tape %1 above the eyebrows, level, round the back.").arg(PlainWords::wholeNumber(fit::kBrowTarget, m_choices->units()));
  if (m_readings.size() == 1) return tr("Take the tape off and read once more.");
  const auto sheet = m_desk->views().sheets.begin();
  if (sheet == m_desk->views().sheets.end()) return {};
  const auto answer = fit::sizeOf(*sheet->second.sheet, m_readings, fit::kDefaultTem);
  if (answer && answer->isRetake)
    return tr("Readings differ by more than %1: take another.").arg(PlainWords::number(fit::kRetakeSpread, m_choices->units()));
  return tr("Readings agree. Done, or take another.");
}

}  // namespace snugline::models
