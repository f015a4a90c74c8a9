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
  const Instant practice = instantAt(m_desk->today(), team ? team->practiceMinute : 0, 0);
  return team ? tr("%n to see before %1", nullptr, count).arg(PlainWords::time(practice)) : tr("%n to see", nullptr, count);
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
  return open == 0 ? tr("Athletes say where it hurts or slips") : tr("%n athlete(s) said something nobody has seen to yet", nullptr, open);
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
    list << QVariantMap{{QStringLiteral("id"), QString::fromStdString(id)},
                        {QStringLiteral("initials"), PlainWords::text(person.initials)},
                        {QStringLiteral("name"), PlainWords::text(person.name)},
                        {QStringLiteral("role"), person.role == book::kTrainer ? tr("trainer") : tr("staff")},
                        {QStringLiteral("hasCode"), person.code.has_value()},
                        {QStringLiteral("isHolder"), id == m_desk->person()}};
  }
  return list;
}

void DoorsModel::choosePerson(const QString& person) {
  m_choices->setPerson(person);
  m_desk->setPerson(person.toStdString());
}

void DoorsModel::addPerson(const QString& name, const QString& role) {
  const QString clean = name.simplified();
  if (clean.isEmpty()) return;
  QString initials;
  for (const QString& word : clean.split(QLatin1Char(' '))) initials += word.left(1).toUpper();
  const book::PersonAdded added{clean.toStdString(), initials.left(3).toStdString(), role.toStdString()};
  m_desk->submit([added](const season::Views& views, Instant) { return book::addPerson(views, added); }, this,
                 [this](const Result<book::Appended>& outcome) {
                   m_trouble = outcome ? QString() : errorSentence(outcome.error());
                   if (outcome && !outcome->ids.empty() && !book::hasCodes(m_desk->views()))
                     choosePerson(QString::fromStdString(outcome->ids.front()));
                   emit changed();
                   if (outcome) emit personAdded();
                 });
}

}  // namespace snugline::models
