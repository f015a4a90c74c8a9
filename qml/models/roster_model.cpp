// SPDX-License-Identifier: Apache-2.0
#include "qml/models/roster_model.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "core/fit/size.h"
#include "core/season/board.h"
#include "core/season/privacy.h"
#include "core/season/tape.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
// As the board counts it: never taped, or too long ago for a head that grows.
bool isTapeDue(const season::Views& views, const season::AthleteRecord& athlete, Instant now) {
  const season::DueRow row = season::rowOf(views, athlete, {now}, {});
  return std::any_of(row.reasons.begin(), row.reasons.end(), [](const season::DueReason& reason) {
    return reason.kind == season::DueKind::tapeStale || reason.kind == season::DueKind::neverTaped;
  });
}

bool isUnsigned(const season::Views& views, const season::AthleteRecord& athlete, Day today) {
  return athlete.isOnRoster && !season::warningState(views.team, athlete, today).isDone();
}

QString tapeWords(const season::AthleteRecord& athlete, const Speech& speech, bool isDue) {
  const season::TapeRecord* last = season::lastTape(athlete);
  if (last == nullptr) return RosterModel::tr("Head not taped yet");
  const season::TapeRecord& tape = *last;
  const QString day = PlainWords::day(dayOf(tape.stamp.at), speech.today);
  if (season::isReadingWanted(tape)) return RosterModel::tr("Head readings of %1 disagree: take another").arg(day);
  // How readings become one circumference is a rule of fit; any sheet will do to ask for it.
  const auto& sheets = speech.views.sheets;
  const auto size = sheets.empty() || !sheets.begin()->second.sheet ? Result<fit::SizeAnswer>(fail(ErrorCode::notFound))
                                                                    : fit::sizeOf(*sheets.begin()->second.sheet, tape.readings);
  const QString head = PlainWords::tape(size ? size->circumference : tape.readings.front(), speech.units);
  return isDue ? RosterModel::tr("Head %1 on %2: tape again").arg(head, day) : RosterModel::tr("Head %1 on %2").arg(head, day);
}

// An empty field says nothing; anything else must be a year.
Result<std::optional<int>> yearOf(const QString& words) {
  const QString trimmed = words.trimmed();
  if (trimmed.isEmpty()) return std::optional<int>{};
  bool isNumber = false;
  const int year = trimmed.toInt(&isNumber);
  if (!isNumber) return fail(ErrorCode::notADate, {}, utf8(trimmed));
  return std::optional<int>{year};
}
}  // namespace

RosterModel::RosterModel(Desk* desk, const Choices* choices, QObject* parent)
    : QAbstractListModel(parent), m_desk(desk), m_choices(choices), m_intake(desk, choices) {
  connect(desk, &Desk::opened, this, &RosterModel::list);
  connect(desk, &Desk::changed, this, &RosterModel::list);
  connect(desk, &Desk::timeTurned, this, [this] {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1));
  });
  connect(choices, &Choices::changed, this, &RosterModel::list);
  list();
}

int RosterModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }
int RosterModel::total() const { return static_cast<int>(m_desk->views().athletes.size()); }

QVariant RosterModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() < 0 || index.row() >= count()) return {};
  const season::Views& views = m_desk->views();
  const season::AthleteRecord* athlete = views.athlete(m_rows[static_cast<std::size_t>(index.row())]);
  if (athlete == nullptr) return {};
  const Speech speech{views, m_choices->units(), m_desk->today(), m_choices->areNamesShort()};
  switch (static_cast<Role>(role)) {
    case AthleteIdRole:
      return text(athlete->id);
    case JerseyRole:
      return text(athlete->jersey);
    case NameRole:
      if (athlete->nameKeptBack) return tr("Name kept back since %1").arg(dayWords(*athlete->nameKeptBack));
      return PlainWords::name(speech, athlete->family, athlete->given);
    case HelmetRole: {
      QStringList serials;
      for (const std::string& id : athlete->units) {
        if (const season::UnitRecord* unit = views.unit(id)) serials.append(text(unit->serial));
      }
      return serials.isEmpty() ? tr("No helmet") : serials.join(tr(", ", "between serials"));
    }
    case TapeRole:
      return tapeWords(*athlete, speech, isTapeDue(views, *athlete, m_desk->now()));
    case IsTapeStaleRole:
      return isTapeDue(views, *athlete, m_desk->now());
    case IsOnRosterRole:
      return athlete->isOnRoster;
    case IsUnsignedRole:
      return isUnsigned(views, *athlete, m_desk->today());
  }
  return {};
}

QHash<int, QByteArray> RosterModel::roleNames() const {
  return {{AthleteIdRole, "athleteId"},
          {JerseyRole, "jersey"},
          {NameRole, "name"},
          {HelmetRole, "helmet"},
          {TapeRole, "tape"},
          {IsTapeStaleRole, "isTapeStale"},
          {IsOnRosterRole, "isOnRoster"},
          {IsUnsignedRole, "isUnsigned"}};
}

void RosterModel::setSearch(const QString& search) {
  if (m_search == search) return;
  m_search = search;
  list();
}

void RosterModel::setOnlyUnsigned(bool isOnly) {
  if (m_isOnlyUnsigned == isOnly) return;
  m_isOnlyUnsigned = isOnly;
  list();
}

void RosterModel::list() {
  const QString wanted = m_search.trimmed();
  bool isNumber = false;
  wanted.toInt(&isNumber);
  std::vector<const season::AthleteRecord*> found;
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    const bool isWanted = wanted.isEmpty() ||
                          (isNumber ? text(athlete.jersey).startsWith(wanted) : athleteName(athlete).contains(wanted, Qt::CaseInsensitive));
    if (isWanted && (!m_isOnlyUnsigned || isUnsigned(m_desk->views(), athlete, m_desk->today()))) found.push_back(&athlete);
  }
  std::sort(found.begin(), found.end(), [](const season::AthleteRecord* a, const season::AthleteRecord* b) {
    if (a->isOnRoster != b->isOnRoster) return a->isOnRoster;
    if (a->jersey != b->jersey) {
      const auto numberA = jerseyOrder(a->jersey), numberB = jerseyOrder(b->jersey);
      if (numberA != numberB) return numberA < numberB;
    }
    return std::tie(a->family, a->given, a->id) < std::tie(b->family, b->given, b->id);
  });
  std::vector<std::string> rows;
  rows.reserve(found.size());
  for (const season::AthleteRecord* athlete : found) rows.push_back(athlete->id);
  if (rows == m_rows) {
    if (!m_rows.empty()) emit dataChanged(index(0), index(count() - 1));
  } else {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
  }
  emit listed();
}

QVariantMap RosterModel::athlete(const QString& athleteId) const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(utf8(athleteId));
  if (athlete == nullptr) return {};
  return {{QStringLiteral("jersey"), QString::fromStdString(athlete->jersey)},
          {QStringLiteral("family"), QString::fromStdString(athlete->family)},
          {QStringLiteral("given"), QString::fromStdString(athlete->given)},
          {QStringLiteral("birthYear"), athlete->birthYear ? QString::number(*athlete->birthYear) : QString()},
          {QStringLiteral("isOnRoster"), athlete->isOnRoster}};
}

void RosterModel::refuse(const QString& words) {
  m_isBusy = false;
  m_refusal = words;
  emit refusalChanged();
}

void RosterModel::write(Desk::Job job, const QString& words) {
  if (m_isBusy) return;
  m_isBusy = true;
  m_refusal.clear();
  emit refusalChanged();
  m_desk->submit(std::move(job), this, [this, words](const Result<book::Appended>& outcome) {
    refuse(outcome ? QString() : errorSentence(outcome.error()));
    if (!outcome) return;
    m_intake.did(*outcome, words);
    emit written();
  });
}

void RosterModel::add(const QString& jersey, const QString& family, const QString& given, const QString& birthYear) {
  const auto year = yearOf(birthYear);
  if (!year) return refuse(tr("\"%1\" is not a birth year").arg(birthYear.trimmed()));
  const book::AthleteAdded added{utf8(jersey.trimmed()), utf8(family.trimmed()), utf8(given.trimmed()), *year};
  write([added](const season::Views& views, Instant) { return book::addAthlete(views, added); },
        tr("Added: %1").arg((jersey + QLatin1Char(' ') + family).trimmed()));
}

void RosterModel::change(const QString& athleteId, const QString& jersey, const QString& family, const QString& given,
                         const QString& birthYear, bool isOnRoster) {
  const auto year = yearOf(birthYear);
  if (!year) return refuse(tr("\"%1\" is not a birth year").arg(birthYear.trimmed()));
  const book::AthleteChanged changed{utf8(jersey.trimmed()), utf8(family.trimmed()), utf8(given.trimmed()), *year, isOnRoster};
  write([id = utf8(athleteId), changed](const season::Views& views, Instant) { return book::changeAthlete(views, id, changed); },
        tr("Changed: %1").arg((jersey + QLatin1Char(' ') + family).trimmed()));
}

void RosterModel::forgetRefusal() { refuse({}); }

}  // namespace snugline::models
