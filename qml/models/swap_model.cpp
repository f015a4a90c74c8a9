// SPDX-License-Identifier: Apache-2.0
#include "swap_model.h"

#include <QVariantMap>

#include "core/book/acts_dock.h"
#include "sentences.h"
#include "sentences_gear.h"
#include "sentences_units.h"

namespace snugline::models {

namespace {
constexpr const char* kNothingWrong = "good";
}

SwapModel::SwapModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::changed, this, &SwapModel::refresh);
  connect(desk, &Desk::timeTurned, this, &SwapModel::refresh);
  connect(choices, &Choices::changed, this, &SwapModel::refresh);
}

void SwapModel::open(const QString& athlete) {
  m_athlete = utf8(athlete);
  m_reason.clear();
  m_what.clear();
  m_isOldWithAthlete.reset();
  m_trouble.clear();
  refresh();
}

void SwapModel::refresh() {
  if (m_athlete.empty() || !m_desk->isOpen()) return;
  auto spares = season::sparesFor(m_desk->views(), m_athlete, utf8(m_choices->shelf()), m_desk->today());
  m_spares.reset();
  if (spares) {
    m_spares = std::move(*spares);
  } else {
    m_trouble = errorSentence(spares.error());
  }
  emit changed();
}

const season::UnitRecord* SwapModel::worn() const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_athlete);
  return athlete == nullptr || athlete->units.empty() ? nullptr : m_desk->views().unit(athlete->units.back());
}

std::optional<season::HoldCause> SwapModel::knownCause() const {
  if (worn() == nullptr || !worn()->holds.empty()) return std::nullopt;
  return season::knownCause(season::standingOf(m_desk->views(), *worn(), m_desk->today()));
}

// What is against it already is not asked again.
bool SwapModel::isReasonWanted() const { return worn() != nullptr && worn()->holds.empty() && !knownCause(); }

// Worn now, and those that the athlete kept: where they are is asked once for all of them.
std::vector<const season::UnitRecord*> SwapModel::old() const {
  std::vector<const season::UnitRecord*> units = season::keptBy(m_desk->views(), m_athlete);
  if (worn() != nullptr) units.insert(units.begin(), worn());
  return units;
}

QString SwapModel::who() const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_athlete);
  return athlete == nullptr ? QString() : athleteName(*athlete, m_choices->areNamesShort());
}

QString SwapModel::oldWords() const {
  QStringList words;
  for (const season::UnitRecord* unit : old())
    words << tr("%1, %2", "serial, kind").arg(text(unit->serial), kindOf(m_desk->views(), *unit));
  return words.join(QStringLiteral("; "));
}

QStringList SwapModel::oldHolds() const {
  QStringList words;
  if (worn() == nullptr) return words;
  for (const season::HoldRecord& hold : worn()->holds) words << tr("On hold already: %1").arg(holdWords(hold));
  if (const auto cause = knownCause()) words << tr("It goes on hold: %1").arg(holdWords({{}, cause->reason, cause->what, {}}));
  return words;
}

bool SwapModel::needsReason() const { return isReasonWanted() && m_reason.isEmpty(); }
bool SwapModel::needsWhere() const { return !old().empty() && !m_isOldWithAthlete; }

QVariantList SwapModel::whereabouts() const {
  if (old().empty()) return {};
  const auto choice = [&](const char* name, const QString& words, bool isWithAthlete) {
    return QVariantMap{{QStringLiteral("name"), QLatin1String(name)},
                       {QStringLiteral("text"), words},
                       {QStringLiteral("chosen"), m_isOldWithAthlete == isWithAthlete}};
  };
  return {choice("hands", tr("In our hands"), false), choice("athlete", tr("Still with %1", "an athlete").arg(who()), true)};
}

void SwapModel::sayWhere(const QString& name) {
  m_isOldWithAthlete = name == QLatin1String("athlete");
  m_trouble.clear();
  emit changed();
}

// Points that stop a helmet on the field come first; a fit that slipped and anything else stand beside them.
QVariantList SwapModel::reasons() const {
  QVariantList list;
  if (!isReasonWanted()) return list;
  const auto add = [&](const QString& name, const QString& words) {
    list << QVariantMap{{QStringLiteral("name"), name}, {QStringLiteral("text"), words}, {QStringLiteral("chosen"), name == m_reason}};
  };
  for (const gear::Point point : {gear::Point::chinStrap, gear::Point::faceguard, gear::Point::hardware, gear::Point::shell,
                                  gear::Point::liner, gear::Point::certification, gear::Point::warningLabel}) {
    add(text(gear::code(point)), pointName(point));
  }
  add(QStringLiteral("fit"), tr("Does not fit"));
  add(QStringLiteral("broken"), tr("Broken"));
  add(QStringLiteral("other"), tr("Other cause"));
  add(QLatin1String(kNothingWrong), tr("Nothing wrong with it"));
  return list;
}

void SwapModel::chooseReason(const QString& name) {
  m_reason = m_reason == name ? QString() : name;  // touched again: another reason
  m_trouble.clear();
  emit changed();
}

void SwapModel::sayWhat(const QString& words) { m_what = words.trimmed(); }

void SwapModel::standAt(const QString& shelf) { m_choices->setShelf(shelf == m_choices->shelf() ? QString() : shelf); }

QVariantList SwapModel::offers() const {
  QVariantList list;
  if (!m_spares) return list;
  for (const season::Spare& spare : m_spares->offers) {
    const season::UnitRecord* unit = m_desk->views().unit(spare.unit);
    if (unit == nullptr) continue;
    list << QVariantMap{{QStringLiteral("unit"), text(spare.unit)},
                        {QStringLiteral("serial"), text(unit->serial)},
                        {QStringLiteral("title"), kindOf(m_desk->views(), *unit)},
                        {QStringLiteral("detail"), UnitWords::spareNote(spare, m_desk->views())},
                        {QStringLiteral("odds"), spare.odds                     ? PlainWords::percent(*spare.odds)
                                                 : m_spares->likelySize.empty() ? QString()
                                                                                : tr("same size")},
                        {QStringLiteral("isTryOn"), spare.isTryOn}};
  }
  return list;
}

QString SwapModel::sizeWords() const {
  if (!m_spares) return {};
  const gear::ModelSheet* sheet = m_desk->views().sheet(m_spares->likelySheet);
  const QString kind = sheet == nullptr ? QString() : tr("%1, size %2").arg(text(sheet->name), text(m_spares->likelySize));
  switch (m_spares->tape) {
    case season::TapeState::missing:
      return kind.isEmpty() ? tr("The head is not taped: sizes are a guess.")
                            : tr("The head is not taped: the size of the helmet before stands in, %1.").arg(kind);
    case season::TapeState::open:
      return kind.isEmpty() ? tr("The readings of the head disagree: no size can be said.")
                            : tr("The readings of the head disagree: the size of the helmet before stands in, %1.").arg(kind);
    case season::TapeState::stale:
    case season::TapeState::fresh:
      break;
  }
  if (kind.isEmpty()) return tr("This head is off the charts of every model here.");
  return m_spares->tape == season::TapeState::stale ? tr("By an old tape reading: %1.").arg(kind) : tr("By the tape: %1.").arg(kind);
}

QString SwapModel::none() const {
  if (!m_spares || !m_spares->offers.empty()) return {};
  const gear::ModelSheet* sheet = m_desk->views().sheet(m_spares->likelySheet);
  return sheet == nullptr ? tr("There is no spare for this head.")
                          : tr("There is no spare in %1, size %2 or any size near it.").arg(text(sheet->name), text(m_spares->likelySize));
}

QStringList SwapModel::notOffered() const {
  QStringList words;
  if (!m_spares) return words;
  for (std::size_t i = 0; i < season::kNotOfferedCount; ++i) {
    if (m_spares->notOffered[i] > 0) words << UnitWords::notOffered(static_cast<season::NotOffered>(i), m_spares->notOffered[i]);
  }
  if (m_spares->worn > 0) words << tr("%n worn by others", nullptr, m_spares->worn);
  return words;
}

QVariantList SwapModel::shelves() const {
  QVariantList list;
  if (!m_spares || m_spares->shelves.size() < 2) return list;
  for (const std::string& shelf : m_spares->shelves) {
    list << QVariantMap{{QStringLiteral("name"), text(shelf)},
                        {QStringLiteral("text"), text(shelf)},
                        {QStringLiteral("chosen"), text(shelf) == m_choices->shelf()}};
  }
  return list;
}

void SwapModel::take(const QString& unit) {
  if (m_isBusy || needsReason() || needsWhere()) return;
  m_isBusy = true;
  m_trouble.clear();
  emit changed();
  const bool isGood = m_reason == QLatin1String(kNothingWrong);
  const book::Swap swap{
      m_athlete, utf8(unit), isReasonWanted() && !isGood ? utf8(m_reason) : std::string(), utf8(m_what), m_isOldWithAthlete.value_or(false),
      isGood};
  const season::UnitRecord* given = m_desk->views().unit(swap.unit);
  const QString serial = given == nullptr ? QString() : text(given->serial);
  const QString words = worn() == nullptr ? tr("Given: %1").arg(serial) : tr("%1 swapped for %2").arg(text(worn()->serial), serial);
  m_desk->submit([swap](const season::Views& views, Instant now) { return book::swapHelmet(views, swap, now); }, this,
                 [this, words, athlete = athleteId()](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (outcome && m_last != nullptr) m_last->did(outcome->ids, words, utf8(athlete));
                   if (!outcome) m_trouble = errorSentence(outcome.error());
                   emit changed();
                   if (outcome) emit swapped(athlete);
                 });
}

}  // namespace snugline::models
