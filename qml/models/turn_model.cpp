// SPDX-License-Identifier: Apache-2.0
// Closing, taking it back, opening the next.
#include "qml/models/turn_model.h"

#include <algorithm>

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include "core/season/turn.h"
#include "qml/models/choices.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
constexpr auto kName = "name";
constexpr auto kStart = "start";
constexpr auto kEnd = "end";
constexpr auto kLeaving = "leaving";
constexpr auto kAfter = "after";  // the season that was closed: a draft of another turn is nobody's
}  // namespace

TurnModel::TurnModel(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_last(QStringLiteral("turn"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &TurnModel::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_refusal = why;
    emit changed();
  });
  connect(desk, &Desk::opened, this, [this] {
    readDraft();
    emit changed();
  });
  connect(desk, &Desk::changed, this, &TurnModel::changed);
  connect(choices, &Choices::changed, this, &TurnModel::changed);
  if (desk->isOpen()) readDraft();
}

bool TurnModel::isBetween() const { return season::between(m_desk->views()) != nullptr; }

bool TurnModel::isLastDay() const {
  const auto& team = m_desk->views().team;
  return team && team->seasonEnd && m_desk->today() >= *team->seasonEnd;
}

QString TurnModel::draftFile() const {
  const QString file = m_choices->file();
  return file.isEmpty() ? QString() : QFileInfo(file).absolutePath() + QStringLiteral("/next_season.json");
}

void TurnModel::readDraft() {
  QFile file(draftFile());
  const season::SeasonRecord* closed = season::between(m_desk->views());
  if (closed == nullptr || file.fileName().isEmpty() || !file.open(QIODevice::ReadOnly)) return;
  const QJsonObject object = QJsonDocument::fromJson(file.readAll()).object();
  if (utf8(object[QLatin1String(kAfter)].toString()) != closed->season) return;
  m_name = object[QLatin1String(kName)].toString();
  m_start = object[QLatin1String(kStart)].toString();
  m_end = object[QLatin1String(kEnd)].toString();
  const QJsonArray leaving = object[QLatin1String(kLeaving)].toArray();
  for (const QJsonValue& athlete : leaving) m_leaving.insert(utf8(athlete.toString()));
}

void TurnModel::keepDraft() {
  emit changed();
  const season::SeasonRecord* closed = season::between(m_desk->views());
  if (draftFile().isEmpty() || closed == nullptr) return;
  QJsonArray leaving;
  for (const std::string& athlete : m_leaving) leaving.append(text(athlete));
  const QJsonObject object{{QLatin1String(kAfter), text(closed->season)},
                           {QLatin1String(kName), m_name},
                           {QLatin1String(kStart), m_start},
                           {QLatin1String(kEnd), m_end},
                           {QLatin1String(kLeaving), leaving}};
  QSaveFile file(draftFile());
  const QByteArray bytes = QJsonDocument(object).toJson(QJsonDocument::Compact);
  const bool isKept = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
  if (isKept) return;
  m_refusal = tr("What is chosen here could not be kept on this device. Open the season before the app is closed");
  emit changed();
}

void TurnModel::forgetDraft() {
  m_name.clear();
  m_start.clear();
  m_end.clear();
  m_leaving.clear();
  if (!draftFile().isEmpty()) QFile::remove(draftFile());
}

void TurnModel::close() {
  if (m_isBusy) return;
  const QString words = tr("%1 is closed").arg(seasonWords());
  submit([](const season::Views& views, Instant now) { return book::closeSeason(views, dayOf(now)); },
         [this, words](const book::Appended& appended) {
           m_last.did(appended.ids, words);
           emit closed();
         });
}

void TurnModel::reopen() {
  if (m_isBusy) return;
  m_refusal.clear();
  const auto fact = book::closingFact(m_desk->views());
  if (!fact) {
    m_refusal = errorSentence(fact.error());
    emit changed();
    return;
  }
  m_isBusy = true;
  emit changed();
  const QString words = tr("%1 is open again").arg(seasonWords());
  m_desk->correct({*fact}, this, [this, words](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    if (outcome) {
      m_last.did(outcome->ids, words);
    } else {
      m_refusal = errorSentence(outcome.error());
    }
    emit changed();
  });
}

void TurnModel::setName(const QString& name) {
  if (m_name == name) return;
  m_name = name;
  keepDraft();
}

void TurnModel::setDays(const QString& start, const QString& end) {
  if (m_start == start && m_end == end) return;
  m_start = start;
  m_end = end;
  keepDraft();
}

void TurnModel::takeNameOffer() { setName(nameOffer()); }

void TurnModel::takeDaysOffer() {
  if (const auto days = offeredDays()) setDays(text(print(days->first)), text(print(days->second)));
}

void TurnModel::toggle(const QString& athlete) {
  const std::string id = utf8(athlete);
  if (m_desk->views().athlete(id) == nullptr) return;
  if (m_leaving.erase(id) == 0) m_leaving.insert(id);
  keepDraft();
}

// A touch on a year takes all of them, and one more puts all of them back.
void TurnModel::toggleYear(const QString& year) {
  std::vector<std::string> those;
  for (const season::AthleteRecord* athlete : onRoster()) {
    const QString born = athlete->birthYear ? QString::number(*athlete->birthYear) : QString();
    if (born == year) those.push_back(athlete->id);
  }
  const bool areAll = std::all_of(those.begin(), those.end(), [this](const std::string& id) { return m_leaving.contains(id); });
  for (const std::string& id : those) {
    if (areAll) {
      m_leaving.erase(id);
    } else {
      m_leaving.insert(id);
    }
  }
  keepDraft();
}

book::NextSeason TurnModel::next() const {
  book::NextSeason next;
  next.name = utf8(m_name.trimmed());
  if (const auto day = parseDay(utf8(m_start.trimmed()))) next.start = *day;
  if (const auto day = parseDay(utf8(m_end.trimmed()))) next.end = *day;
  // Who left meanwhile, or came into the draft of another Book, is left out.
  for (const season::AthleteRecord* athlete : onRoster()) {
    if (m_leaving.contains(athlete->id)) next.leaving.push_back(athlete->id);
  }
  return next;
}

std::optional<Error> TurnModel::doubt() const {
  const auto drafts = book::openSeason(m_desk->views(), next());
  return drafts ? std::nullopt : std::optional(drafts.error());
}

bool TurnModel::canOpen() const { return !m_isBusy && isBetween() && !doubt(); }

void TurnModel::openNext() {
  if (!canOpen()) return;
  const QString words = tr("Season %1 is open").arg(m_name.trimmed());
  submit([next = next()](const season::Views& views, Instant) { return book::openSeason(views, next); },
         [this, words](const book::Appended& appended) {
           m_last.did(appended.ids, words);
           forgetDraft();
           emit opened();
         });
}

void TurnModel::submit(Desk::Job job, std::function<void(const book::Appended&)> then) {
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  m_desk->submit(std::move(job), this, [this, then = std::move(then)](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    if (outcome) {
      then(*outcome);
    } else {
      m_refusal = errorSentence(outcome.error());
    }
    emit changed();
  });
}

}  // namespace snugline::models
