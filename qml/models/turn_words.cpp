// SPDX-License-Identifier: Apache-2.0
// What the pages of closing a season and opening the next say.
#include <algorithm>
#include <map>

#include <QVariantMap>

#include "core/season/board.h"
#include "core/season/turn.h"
#include "qml/models/choices.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/turn_model.h"

namespace snugline::models {

namespace {

constexpr int kDaysOfWeeksYear = 364;  // whole weeks, so that a Monday stays a Monday

QString stateTitle(season::CarryState state) {
  switch (state) {
    case season::CarryState::ready:
      return TurnModel::tr("In service, on the shelf");
    case season::CarryState::held:
      return TurnModel::tr("On hold");
    case season::CarryState::notInService:
      return TurnModel::tr("Not in service");
    case season::CarryState::withAthlete:
      return TurnModel::tr("Still with an athlete");
    case season::CarryState::repair:
      return TurnModel::tr("In repair");
    case season::CarryState::sentOut:
      return TurnModel::tr("Sent out");
    case season::CarryState::lost:
      return TurnModel::tr("Lost");
  }
  return {};
}

}  // namespace

QString TurnModel::seasonWords() const {
  const auto& team = m_desk->views().team;
  return team ? tr("Season %1").arg(text(team->season)) : QString();
}

QString TurnModel::stateWords() const {
  const auto& team = m_desk->views().team;
  if (!team) return {};
  if (const season::SeasonRecord* closed = season::between(m_desk->views())) {
    const int missing = static_cast<int>(closed->missing.size());
    const QString day = tr("Closed on %1").arg(dayWords(closed->closed));
    return missing == 0 ? day + tr(", every helmet was in") : day + tr(", %n helmet(s) missing", nullptr, missing);
  }
  if (!team->seasonEnd) return tr("Its last day is not set");
  return *team->seasonEnd < m_desk->today() ? tr("Its last day was %1").arg(dayWords(*team->seasonEnd))
                                            : tr("Runs to %1").arg(dayWords(*team->seasonEnd));
}

QString TurnModel::missingWords() const {
  const season::TurnCount count = season::turnCount(m_desk->views());
  const int all = count.withAthletes + count.onShelf;
  if (all == 0) return tr("Every helmet that is to come is in");
  return tr("%n helmet(s) not handed in", nullptr, all) +
         (count.withAthletes == 0 ? QString() : tr(", %n with athletes", nullptr, count.withAthletes));
}

QString TurnModel::closeDetail() const {
  const season::TurnCount count = season::turnCount(m_desk->views());
  const int all = count.withAthletes + count.onShelf;
  return all == 0 ? tr("Every helmet is in") : tr("%n helmet(s) will be named as missing", nullptr, all);
}

QVariantMap TurnModel::rowOf(const season::AthleteRecord& athlete, const QString& detail) const {
  const Speech speech{m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()};
  return {{QStringLiteral("athlete"), text(athlete.id)},
          {QStringLiteral("number"), text(athlete.jersey)},
          {QStringLiteral("title"), PlainWords::name(speech, athlete.family, athlete.given)},
          {QStringLiteral("detail"), detail}};
}

QVariantList TurnModel::open() const {
  const season::Views& views = m_desk->views();
  const season::OpenAtTurn open = season::openAtTurn(views);
  QVariantList helmets, checks, words;
  for (const season::AthleteRecord* athlete : open.helmets) {
    QStringList serials;
    for (const std::string& id : athlete->units) {
      if (const season::UnitRecord* unit = views.unit(id)) serials << text(unit->serial);
    }
    helmets << rowOf(*athlete, PlainWords::list(serials));
  }
  for (const season::AthleteRecord* athlete : open.checks) {
    const season::CheckRecord* check = views.openCheck(athlete->openCheck);
    checks << rowOf(*athlete, check == nullptr ? tr("Check left open")
                                               : tr("%1, begun %2").arg(GuideWords::kind(check->kind), dayWords(dayOf(check->begun.at))));
  }
  for (const season::AthleteRecord* athlete : open.words) {
    const auto count = std::count_if(athlete->said.begin(), athlete->said.end(), [](const auto& said) { return !said.isAnswered; });
    words << rowOf(*athlete, tr("%n word(s) not answered", nullptr, static_cast<int>(count)));
  }
  const auto section = [](const char* name, const QString& title, const QVariantList& rows) {
    return QVariantMap{{QStringLiteral("name"), QLatin1String(name)}, {QStringLiteral("title"), title}, {QStringLiteral("rows"), rows}};
  };
  return {section("helmets", tr("Athletes still with a helmet"), helmets), section("checks", tr("Checks left open"), checks),
          section("words", tr("Words not answered"), words)};
}

QString TurnModel::nameMessage() const {
  if (m_name.trimmed().isEmpty()) return {};
  const auto error = doubt();
  if (!error) return {};
  const bool isOfName = error->detail == book::rule::kSeasonTaken || error->place == "season";
  return isOfName ? errorSentence(*error) : QString();
}

QString TurnModel::daysMessage() const {
  const QString start = m_start.trimmed(), end = m_end.trimmed();
  for (const QString& day : {start, end}) {
    if (!day.isEmpty() && day.size() >= 10 && !parseDay(utf8(day))) return tr("%1 is no day. Write it as year-month-day").arg(day);
  }
  const book::NextSeason typed = next();
  if (!typed.start || !typed.end) return {};
  if (*typed.end <= *typed.start) return tr("The last day must come after the first");
  const int days = daysBetween(*typed.start, *typed.end);
  if (days > book::kSeasonDaysMost) return tr("That would be %n days. Look at the years", nullptr, days);
  const season::SeasonRecord* closed = season::between(m_desk->views());
  if (closed == nullptr) return {};
  const Day before = closed->end ? std::min(*closed->end, closed->closed) : closed->closed;
  return *typed.start <= before ? tr("The first day must come after %1, the end of season %2").arg(dayWords(before), text(closed->season))
                                : QString();
}

// A year one up, where the last name is a year.
QString TurnModel::nameOffer() const {
  const season::SeasonRecord* closed = season::between(m_desk->views());
  if (closed == nullptr) return {};
  bool isYear = false;
  const int year = text(closed->season).toInt(&isYear);
  return isYear && year > 0 ? QString::number(year + 1) : QString();
}

std::optional<std::pair<Day, Day>> TurnModel::offeredDays() const {
  const season::SeasonRecord* closed = season::between(m_desk->views());
  if (closed == nullptr || !closed->start || !closed->end) return std::nullopt;
  return std::pair(closed->start->plus(kDaysOfWeeksYear), closed->end->plus(kDaysOfWeeksYear));
}

QString TurnModel::daysOffer() const {
  const auto days = offeredDays();
  return days ? tr("The same weeks: %1 to %2").arg(PlainWords::weekdayAndDay(days->first), PlainWords::weekdayAndDay(days->second))
              : QString();
}

// Eldest first; those without a birth year last.
std::vector<const season::AthleteRecord*> TurnModel::onRoster() const {
  std::vector<const season::AthleteRecord*> list;
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    if (athlete.isOnRoster) list.push_back(&athlete);
  }
  std::sort(list.begin(), list.end(), [](const auto* a, const auto* b) {
    if (a->birthYear.has_value() != b->birthYear.has_value()) return a->birthYear.has_value();
    if (a->birthYear != b->birthYear) return *a->birthYear < *b->birthYear;
    return a->jersey != b->jersey ? season::jerseyBefore(a->jersey, b->jersey) : a->id < b->id;
  });
  return list;
}

QVariantList TurnModel::years() const {
  struct Count {
    int all = 0, leaving = 0;
  };
  std::map<QString, Count> counts;
  for (const season::AthleteRecord* athlete : onRoster()) {
    Count& count = counts[athlete->birthYear ? QString::number(*athlete->birthYear) : QString()];
    ++count.all;
    count.leaving += m_leaving.contains(athlete->id) ? 1 : 0;
  }
  QVariantList list;
  const auto add = [&](const QString& year, const Count& count) {
    list << QVariantMap{{QStringLiteral("name"), QStringLiteral("year-") + year},
                        {QStringLiteral("text"), year.isEmpty() ? tr("No birth year") : tr("Born %1").arg(year)},
                        {QStringLiteral("detail"), tr("%1 of %2 leave").arg(count.leaving).arg(count.all)},
                        {QStringLiteral("chosen"), count.leaving == count.all}};
  };
  for (const auto& [year, count] : counts) {
    if (!year.isEmpty()) add(year, count);
  }
  if (const auto none = counts.find(QString()); none != counts.end()) add({}, none->second);
  return list;
}

QVariantList TurnModel::roster() const {
  QVariantList list;
  for (const season::AthleteRecord* athlete : onRoster()) {
    QStringList detail{athlete->birthYear ? tr("Born %1").arg(*athlete->birthYear) : tr("No birth year")};
    if (!athlete->units.empty()) detail << tr("still has a helmet");
    QVariantMap row = rowOf(*athlete, detail.join(QStringLiteral(", ")));
    row[QStringLiteral("isLeaving")] = m_leaving.contains(athlete->id);
    list << row;
  }
  return list;
}

QString TurnModel::rosterWords() const {
  const int all = static_cast<int>(onRoster().size()), leaving = static_cast<int>(next().leaving.size());
  return tr("%n on the roster", nullptr, all) + (leaving == 0 ? tr(", all stay") : tr(", %n leave", nullptr, leaving));
}

QVariantList TurnModel::carried() const {
  QVariantList list;
  const season::Carry carry = season::carryOf(m_desk->views());
  for (std::size_t i = 0; i < season::kCarryStateCount; ++i) {
    const auto state = static_cast<season::CarryState>(i);
    if (carry.byState[i] == 0) continue;
    list << QVariantMap{{QStringLiteral("name"), text(season::code(state))},
                        {QStringLiteral("title"), stateTitle(state)},
                        {QStringLiteral("count"), QString::number(carry.byState[i])}};
  }
  return list;
}

QVariantList TurnModel::carriedSizes() const {
  QVariantList list;
  for (const season::CarrySize& size : season::carryOf(m_desk->views()).sizes) {
    const gear::ModelSheet* sheet = m_desk->views().sheet(size.sheet);
    const QString title = sheet == nullptr ? (size.size.empty() ? tr("Model and size not said") : text(size.size))
                                           : tr("%1, %2", "model, size").arg(text(sheet->name), text(size.size));
    list << QVariantMap{{QStringLiteral("title"), title}, {QStringLiteral("count"), QString::number(size.units)}};
  }
  return list;
}

QString TurnModel::carriedWords() const { return tr("%n helmet(s) go over", nullptr, season::carryOf(m_desk->views()).units()); }

QString TurnModel::openDetail() const {
  if (canOpen()) return rosterWords();
  for (const QString& message : {nameMessage(), daysMessage()}) {
    if (!message.isEmpty()) return message;
  }
  return tr("It needs a name, a first and a last day");
}

QString TurnModel::openText() const {
  const QString name = m_name.trimmed();
  return name.isEmpty() ? tr("Open the next season") : tr("Open season %1").arg(name);
}

}  // namespace snugline::models
