// SPDX-License-Identifier: Apache-2.0
#include "unwell_model.h"

#include <algorithm>

#include "rights_model.h"
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

using season::SaidRecord;

UnwellModel::UnwellModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk) {
  connect(desk, &Desk::opened, this, &UnwellModel::changed);
  connect(desk, &Desk::changed, this, &UnwellModel::changed);
  connect(desk, &Desk::personChanged, this, &UnwellModel::changed);
  connect(choices, &Choices::changed, this, &UnwellModel::changed);
}

void UnwellModel::open(const QString& about) {
  m_about = about.toStdString();
  m_trouble.clear();
  emit changed();
}

const SaidRecord* UnwellModel::unnamed(const std::string& fact) const {
  const auto& team = m_desk->views().team;
  if (!team) return nullptr;
  const auto found = std::find_if(team->unnamed.begin(), team->unnamed.end(), [&](const SaidRecord& said) { return said.fact == fact; });
  return found == team->unnamed.end() ? nullptr : &*found;
}

bool UnwellModel::isUnnamed(const QString& about) const { return unnamed(about.toStdString()) != nullptr; }

const SaidRecord* UnwellModel::said() const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_about);
  if (athlete == nullptr) {
    const SaidRecord* said = unnamed(m_about);
    return said == nullptr || said->isAnswered ? nullptr : said;
  }
  const auto isOpen = [](const SaidRecord& said) { return said.isUnwell && !said.isAnswered; };
  const auto open = std::find_if(athlete->said.begin(), athlete->said.end(), isOpen);
  return open == athlete->said.end() ? nullptr : &*open;
}

QString UnwellModel::unnamedWords(Instant at, Day today) {
  return tr("A player at this tablet, %1", "a time or a day").arg(PlainWords::moment(at, today));
}

QString UnwellModel::who() const {
  const SaidRecord* said = unnamed(m_about);
  return said == nullptr ? QString() : unnamedWords(said->at, m_desk->today());
}

QString UnwellModel::waitingAbout() const {
  const auto& team = m_desk->views().team;
  if (!team) return {};
  const auto open = std::find_if(team->unnamed.begin(), team->unnamed.end(), [](const SaidRecord& said) { return !said.isAnswered; });
  return open == team->unnamed.end() ? QString() : QString::fromStdString(open->fact);
}

QString UnwellModel::waitingWords() const {
  const SaidRecord* said = unnamed(waitingAbout().toStdString());
  return said == nullptr ? QString() : unnamedWords(said->at, m_desk->today());
}

QString UnwellModel::words() const {
  const SaidRecord* open = said();
  if (open == nullptr) return {};
  const QString when = PlainWords::moment(open->at, m_desk->today());
  QStringList words;
  words << (open->isAcknowledged
                ? tr("Said %1. With the athletic trainer. Back only with written permission from a licensed health care professional.",
                     "a time or a day")
                : tr("Said %1. See the athlete now and follow the local concussion protocol.", "a time or a day"))
               .arg(when);
  if (open->isMistake) words << tr("Then said to be touched by mistake: ask the athlete.");
  if (open->isAdultTold && !open->isAcknowledged) words << tr("The athlete says that an adult was told.");
  return words.join(QLatin1Char(' '));
}

QVariantList UnwellModel::acts() const {
  const SaidRecord* open = said();
  QVariantList list;
  if (open == nullptr) return list;
  const season::Views& views = m_desk->views();
  const auto add = [&](const char* name, const QString& text, book::Right right) {
    const bool isAllowed = book::may(views, m_desk->person(), right);
    list << QVariantMap{{QStringLiteral("name"), QLatin1String(name)},
                        {QStringLiteral("text"), text},
                        {QStringLiteral("detail"), isAllowed ? QString() : RightsModel::whoMay(views, right)},
                        {QStringLiteral("enabled"), isAllowed && !m_isBusy}};
  };
  if (!open->isAcknowledged) add("told", tr("I have been told"), book::Right::staff);
  if (open->isMistake) add("mistake", tr("I asked: a mistake"), book::Right::staff);
  if (open->isAcknowledged) add("close", tr("Close"), book::Right::practitioner);
  return list;
}

void UnwellModel::act(const QString& name) {
  const SaidRecord* open = said();
  if (open == nullptr || m_isBusy) return;
  m_isBusy = true;
  m_trouble.clear();
  const bool isClosed = name != QLatin1String("told");
  const std::string outcome = name == QLatin1String("mistake") ? "touched-by-mistake" : "";
  const std::string athlete = m_desk->views().athlete(m_about) == nullptr ? std::string() : m_about;
  m_desk->submit([athlete, fact = open->fact, isClosed, outcome](
                     const season::Views& views, Instant) { return book::acknowledge(views, athlete, fact, isClosed, outcome); },
                 this,
                 [this](const Result<book::Appended>& written) {
                   m_isBusy = false;
                   if (!written) m_trouble = errorSentence(written.error());
                   emit changed();
                 });
  emit changed();
}

}  // namespace snugline::models
