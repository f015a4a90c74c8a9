// SPDX-License-Identifier: Apache-2.0
// The tape side of AthleteModel: readings, the size they speak for, and helmets on the shelf by the odds of their size.
#include <algorithm>
#include <cstdlib>

#include <QCoreApplication>

#include "athlete_model.h"
#include "sentences_gear.h"

#include "core/season/sheet_chain.h"
#include "core/season/tape.h"

namespace snugline::models {

namespace {

struct TapeWords {
  Q_DECLARE_TR_FUNCTIONS(TapeWords)
};

QString reasonWords(const std::string& reason) {
  if (reason == "misread") return TapeWords::tr("The tape was read wrong");
  if (reason == "typed") return TapeWords::tr("Typed wrong");
  if (reason == "hair") return TapeWords::tr("Hair or a band in the way");
  return reason == "other-head" ? TapeWords::tr("Another head") : TapeWords::tr("Another reason");
}

}  // namespace

QVariantList AthleteModel::asideReasons() const {
  QVariantList list;
  for (const char* reason : {"misread", "typed", "hair", "other-head", "other"})
    list << QVariantMap{{QStringLiteral("name"), QLatin1String(reason)}, {QStringLiteral("text"), reasonWords(reason)}};
  return list;
}

QVariantList AthleteModel::readingList(const season::TapeRecord& tape) const {
  QVariantList list;
  const auto add = [&](Length reading, const std::string& name, const QString& detail) {
    list << QVariantMap{{QStringLiteral("name"), QString::fromStdString(name)},
                        {QStringLiteral("text"), PlainWords::tape(reading, m_choices->units())},
                        {QStringLiteral("detail"), detail},
                        {QStringLiteral("isAside"), !detail.isEmpty()}};
  };
  for (std::size_t i = 0; i < tape.readings.size(); ++i) add(tape.readings[i], tape.names[i], {});
  for (const season::AsideReading& one : tape.aside) add(one.reading, one.name, tr("Set aside: %1").arg(reasonWords(one.reason)));
  return list;
}

QVariantList AthleteModel::tapes() const {
  QVariantList list;
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr) return list;
  for (auto tape = athlete->tapes.rbegin(); tape != athlete->tapes.rend(); ++tape) {
    const QString who = PlainWords::person(m_desk->views(), tape->stamp.who);
    const QString when = PlainWords::day(dayOf(tape->stamp.at), m_desk->today());
    list << QVariantMap{{QStringLiteral("readings"), readingList(*tape)},
                        {QStringLiteral("when"), who.isEmpty() ? when : tr("%1 by %2", "a day, initials").arg(when, who)}};
  }
  return list;
}

QString AthleteModel::tapeNote() const {
  const season::AthleteRecord* athlete = record();
  const season::TapeRecord* tape = athlete == nullptr ? nullptr : season::lastTape(*athlete);
  if (tape == nullptr || !season::isReadingWanted(*tape)) return {};
  return tr("Readings differ by more than %1: take another. Until then no size is known.")
      .arg(PlainWords::number(fit::kRetakeSpread, m_choices->units()));
}

QVariantMap AthleteModel::sizeMap(const gear::ModelSheet& sheet, const std::vector<Length>& readings) const {
  const auto answer = fit::sizeOf(sheet, readings, season::readingError(m_desk->views()));
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
  note = tr("Head %1, give or take %2")
             .arg(PlainWords::tape(answer->circumference, m_choices->units()), PlainWords::tape(answer->uncertainty, m_choices->units()));
  return {{QStringLiteral("model"), PlainWords::text(sheet.name)},
          {QStringLiteral("text"), text},
          {QStringLiteral("note"), note},
          {QStringLiteral("odds"), odds}};
}

QVariantList AthleteModel::sizes() const {
  QVariantList list;
  const season::AthleteRecord* athlete = record();
  const season::TapeRecord* tape = athlete == nullptr ? nullptr : season::lastTape(*athlete);
  if (tape == nullptr || season::isReadingWanted(*tape)) return list;
  for (const season::SheetRecord* adopted : season::standingSheets(m_desk->views())) {
    const QVariantMap map = sizeMap(*adopted->sheet, tape->readings);
    if (!map.isEmpty()) list << map;
  }
  return list;
}

QString AthleteModel::tapeUnit() const { return m_choices->units() == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in"); }

QString AthleteModel::tapeLabel() const {
  return m_choices->units() == UnitSystem::metric ? tr("Reading in millimetres") : tr("Reading in inches");
}

QStringList AthleteModel::tapeKeys() const {
  if (m_choices->units() == UnitSystem::metric) return {};
  return {QStringLiteral("1/8"), QStringLiteral("1/4"), QStringLiteral("3/8"), QStringLiteral("1/2"),
          QStringLiteral("5/8"), QStringLiteral("3/4"), QStringLiteral("7/8")};
}

// Each reading is on disk before the next is asked for.
void AthleteModel::addReading(const QString& digits) {
  const auto reading = parseLength((digits + tapeUnit()).toStdString(), {});
  if (!reading) return setTrouble(errorSentence(reading.error()));
  act([athlete = m_athlete, reading = *reading, with = m_tapeFact](const season::Views& views,
                                                                   Instant) { return book::readTape(views, athlete, {reading}, with); },
      [this, reading = *reading, athlete = m_athlete](const book::Appended& appended) {
        m_last.did(appended.ids, tr("Reading recorded: %1").arg(PlainWords::number(reading, m_choices->units())), athlete);
        if (athlete == m_athlete && m_tapeFact.empty() && !appended.ids.empty()) m_tapeFact = appended.ids.front();
        emit readingsChanged();
      });
}

void AthleteModel::setAside(const QString& reading, const QString& reason) {
  act([athlete = m_athlete, reading = reading.toStdString(), reason = reason.toStdString()](
          const season::Views& views, Instant) { return book::setReadingAside(views, athlete, reading, reason); },
      [this](const book::Appended&) { emit readingsChanged(); });
}

void AthleteModel::countAgain(const QString& reading) {
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr) return;
  for (const season::TapeRecord& tape : athlete->tapes)
    for (const season::AsideReading& one : tape.aside)
      if (one.name == reading.toStdString())
        return m_desk->correct(std::vector<std::string>{one.stamp.fact}, this, [this](const Result<book::Appended>& outcome) {
          if (!outcome) setTrouble(errorSentence(outcome.error()));
          emit readingsChanged();
        });
}

void AthleteModel::endTape() {
  m_tapeFact.clear();
  emit readingsChanged();
}

const season::TapeRecord* AthleteModel::tapeInHand() const {
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr || m_tapeFact.empty()) return nullptr;
  const auto& tapes = athlete->tapes;
  const auto found = std::find_if(tapes.begin(), tapes.end(), [this](const auto& tape) { return tape.stamp.fact == m_tapeFact; });
  return found == tapes.end() ? nullptr : &*found;
}

QVariantList AthleteModel::readings() const { return tapeInHand() == nullptr ? QVariantList() : readingList(*tapeInHand()); }

// The reading that was just taken.
QString AthleteModel::tapeDoubt() const {
  const season::TapeRecord* tape = tapeInHand();
  if (tape == nullptr || tape->readings.empty()) return {};
  const auto doubt = season::doubtOf(*record(), *tape, tape->readings.size() - 1);
  if (!doubt) return {};
  const Length reading = tape->readings.back();
  const auto words = [this](Length length) { return PlainWords::tape(length, m_choices->units()); };
  if (doubt->last) {
    const bool isMore = reading > *doubt->last;
    const QString by = words(Length{std::abs(reading.um - doubt->last->um)});
    const QString when =
        dayOf(tape->stamp.at) == doubt->lastDay && tape->readings.size() > 1
            ? tr("the one before")
            : tr("%1 on %2", "a reading, a day").arg(words(*doubt->last), PlainWords::day(doubt->lastDay, m_desk->today()));
    return isMore ? tr("%1 is %2 more than %3. Read once more; what is wrong can be set aside.").arg(words(reading), by, when)
                  : tr("%1 is %2 less than %3. Read once more; what is wrong can be set aside.").arg(words(reading), by, when);
  }
  return tr("Hardly any head of that age measures %1. Read once more; what is wrong can be set aside.").arg(words(reading));
}

QString AthleteModel::tapeAdvice() const {
  const season::TapeRecord* tape = tapeInHand();
  if (tape == nullptr || tape->readings.empty())
    return tr("Tape %1 above the eyebrows, level, round the back.").arg(PlainWords::number(fit::kBrowTarget, m_choices->units()));
  if (tape->readings.size() == 1) return tr("Take the tape off and read once more.");
  if (const auto odd = season::oddReading(*tape))
    return tr("%1 stands apart from the others: set it aside, or take another.")
        .arg(PlainWords::tape(tape->readings[*odd], m_choices->units()));
  if (season::isReadingWanted(*tape))
    return tr("Readings differ by more than %1: take another.").arg(PlainWords::number(fit::kRetakeSpread, m_choices->units()));
  return tr("Readings agree. Done, or take another.");
}

}  // namespace snugline::models
