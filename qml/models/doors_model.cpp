// SPDX-License-Identifier: Apache-2.0
#include "doors_model.h"

#include <algorithm>

#include "core/book/people.h"
#include "core/season/turn.h"
#include "sentences_gear.h"

namespace snugline::models {

DoorsModel::DoorsModel(Desk* desk, Choices* choices, LineModel* line, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_line(line) {
  connect(desk, &Desk::opened, this, &DoorsModel::takeUpPerson);
  connect(desk, &Desk::opened, this, &DoorsModel::changed);
  connect(desk, &Desk::personChanged, this, &DoorsModel::changed);
  connect(desk, &Desk::changed, this, &DoorsModel::changed);
  connect(line, &LineModel::boardChanged, this, &DoorsModel::changed);
}

QString DoorsModel::team() const {
  const auto& team = m_desk->views().team;
  return team ? (PlainWords::text(team->name) + QLatin1Char(' ') + PlainWords::text(team->mascot)).trimmed() : QString();
}

QString DoorsModel::lineWaiting() const {
  if (!m_desk->isOpen()) return {};
  if (const season::SeasonRecord* closed = season::between(m_desk->views()))
    return tr("Season %1 is closed").arg(PlainWords::text(closed->season));
  const int count = m_line->beforePractice() + m_line->doNotWear();
  if (count == 0) return tr("Nobody to see before practice");
  const auto& team = m_desk->views().team;
  if (!team) return tr("%n to see", nullptr, count);
  const QString time = PlainWords::time(instantAt(m_line->practice(), team->practiceMinute, 0));
  const bool isToday = m_line->practice() == m_desk->today();
  return tr("%n to see before %1", nullptr, count)
      .arg(isToday ? time : tr("%1, %2", "a day, a time").arg(PlainWords::weekdayAndDay(m_line->practice()), time));
}

QString DoorsModel::lineWorst() const {
  if (m_desk->isOpen() && season::between(m_desk->views()) != nullptr)
    return m_line->doNotWear() == 0 ? QString() : tr("%n still on the Line", nullptr, m_line->doNotWear());
  return m_line->doNotWear() == 0 ? QString() : tr("%n of them: do not wear", nullptr, m_line->doNotWear());
}

QString DoorsModel::sayWaiting() const {
  if (!m_desk->isOpen()) return {};
  int open = 0;
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    const bool isOpen =
        std::any_of(athlete.said.begin(), athlete.said.end(), [](const season::SaidRecord& said) { return !said.isAnswered; });
    open += athlete.isOnRoster && isOpen ? 1 : 0;
  }
  return open == 0 ? tr("Helmet bothering you? Show us where.") : tr("%n athlete(s) said something nobody has seen to yet", nullptr, open);
}

QString DoorsModel::dockWaiting() const {
  if (!m_desk->isOpen()) return {};
  int held = 0;
  for (const auto& [id, unit] : m_desk->views().units) {
    if (!unit.holds.empty() && unit.place != season::UnitPlace::retired && unit.place != season::UnitPlace::lost) ++held;
  }
  return held == 0 ? tr("Take helmets in, one scan after another") : tr("%n helmet(s) on hold", nullptr, held);
}

QString DoorsModel::bookWaiting() const {
  if (!m_desk->isOpen()) return {};
  const auto& views = m_desk->views();
  int athletes = 0;
  for (const auto& [id, athlete] : views.athletes) athletes += athlete.isOnRoster ? 1 : 0;
  return tr("%1, %2", "athletes, helmets")
      .arg(tr("%n athlete(s)", nullptr, athletes), tr("%n helmet(s)", nullptr, static_cast<int>(views.units.size())));
}

// Who held the glass last still does, if this Book knows them; nobody is made to sign who did not say so.
void DoorsModel::takeUpPerson() {
  const std::string kept = m_choices->person().toStdString();
  // With codes in use, only a code says who it is.
  if (!book::hasCodes(m_desk->views()) && m_desk->views().people.contains(kept)) m_desk->setPerson(kept);
}

QString DoorsModel::holder() const {
  const QString initials = PlainWords::person(m_desk->views(), m_desk->person());
  return initials.isEmpty() ? tr("Who signs?") : initials;
}

QString DoorsModel::holderDetail() const { return m_desk->person().empty() ? tr("nobody yet") : tr("signs here"); }

QVariantList DoorsModel::people() const {
  QVariantList list;
  for (const auto& [id, person] : m_desk->views().people) {
    list << QVariantMap{
        {QStringLiteral("id"), QString::fromStdString(id)},      {QStringLiteral("initials"), PlainWords::text(person.initials)},
        {QStringLiteral("name"), PlainWords::text(person.name)}, {QStringLiteral("role"), QString::fromStdString(person.role)},
        {QStringLiteral("roleWords"), roleWords(person)},        {QStringLiteral("isPractitioner"), person.isPractitioner},
        {QStringLiteral("hasCode"), person.code.has_value()},    {QStringLiteral("isHolder"), id == m_desk->person()}};
  }
  return list;
}

QString DoorsModel::roleWords(const season::PersonRecord& person) {
  const QString role = person.role == book::kAdmin ? tr("admin") : person.role == book::kStaff ? tr("staff") : tr("helper");
  return person.isPractitioner ? tr("%1, athletic trainer or designated health care professional", "a role").arg(role) : role;
}

void DoorsModel::choosePerson(const QString& person) {
  m_choices->setPerson(person);
  m_desk->setPerson(person.toStdString());
}

void DoorsModel::addPerson(const QString& name, const QString& role, bool isPractitioner) {
  const QString clean = name.simplified();
  if (clean.isEmpty()) return;
  QString initials;
  for (const QString& word : clean.split(QLatin1Char(' '))) initials += word.left(1).toUpper();
  const book::PersonAdded added{clean.toStdString(), initials.left(3).toStdString(), role.toStdString(), isPractitioner};
  m_desk->submit([added](const season::Views& views, Instant) { return book::addPerson(views, added); }, this,
                 [this](const Result<book::Appended>& outcome) {
                   m_trouble = outcome ? QString() : errorSentence(outcome.error());
                   if (outcome && !outcome->ids.empty() && !book::hasCodes(m_desk->views()))
                     choosePerson(QString::fromStdString(outcome->ids.front()));
                   emit changed();
                   if (outcome) emit personAdded();
                 });
}

void DoorsModel::changePerson(const QString& person, const QString& role, bool isPractitioner) {
  const book::PersonChanged change{role.toStdString(), isPractitioner};
  m_desk->submit(
      [person = person.toStdString(), change](const season::Views& views, Instant) { return book::changePerson(views, person, change); },
      this,
      [this](const Result<book::Appended>& outcome) {
        m_trouble = outcome ? QString() : errorSentence(outcome.error());
        emit changed();
      });
}

}  // namespace snugline::models
