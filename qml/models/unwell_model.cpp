// SPDX-License-Identifier: Apache-2.0
#include "unwell_model.h"

#include <algorithm>

#include "athlete_model.h"
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

using season::SaidRecord;

UnwellModel::UnwellModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk) {
  connect(desk, &Desk::changed, this, &UnwellModel::changed);
  connect(desk, &Desk::personChanged, this, &UnwellModel::changed);
  connect(choices, &Choices::changed, this, &UnwellModel::changed);
}

void UnwellModel::open(const QString& athlete) {
  m_athlete = athlete.toStdString();
  m_trouble.clear();
  emit changed();
}

const SaidRecord* UnwellModel::said() const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_athlete);
  if (athlete == nullptr) return nullptr;
  const auto open =
      std::find_if(athlete->said.begin(), athlete->said.end(), [](const SaidRecord& s) { return s.isUnwell && !s.isAnswered; });
  return open == athlete->said.end() ? nullptr : &*open;
}

bool UnwellModel::isTrainer() const {
  const auto& people = m_desk->views().people;
  const auto person = people.find(m_desk->person());
  return person != people.end() && person->second.role == "trainer";
}

QString UnwellModel::words() const {
  const SaidRecord* open = said();
  if (open == nullptr) return {};
  const QString when = PlainWords::moment(open->at, m_desk->today());
  if (!open->isAcknowledged)
    return tr("Said %1. See the athlete now and follow the local concussion protocol.", "a time or a day").arg(when);
  const QString after = tr("Said %1, and the trainer knows. Back only with leave of a licensed practitioner.", "a time or a day").arg(when);
  return isTrainer() ? after : tr("%1 A trainer closes it.").arg(after);
}

QString UnwellModel::action() const {
  const SaidRecord* open = said();
  if (open == nullptr || m_isBusy) return {};
  if (!open->isAcknowledged) return tr("The trainer knows");
  return isTrainer() ? tr("Leave was given: close it") : QString();
}

void UnwellModel::act() {
  const SaidRecord* open = said();
  if (open == nullptr || action().isEmpty()) return;
  m_isBusy = true;
  m_trouble.clear();
  m_desk->submit([athlete = m_athlete, fact = open->fact, isClosed = open->isAcknowledged](
                     const season::Views& views, Instant) { return book::acknowledge(views, athlete, fact, isClosed, {}); },
                 this,
                 [this](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (!outcome) m_trouble = errorSentence(outcome.error());
                   emit changed();
                 });
  emit changed();
}

}  // namespace snugline::models
