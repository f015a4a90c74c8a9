// SPDX-License-Identifier: Apache-2.0
#include "say_model.h"

#include <algorithm>

#include "athlete_model.h"
#include "drawn_values.h"
#include "say_parts.h"
#include "sentences_gear.h"
#include "sentences_said.h"

namespace snugline::models {

using season::AthleteRecord;
using season::SaidRecord;
using season::UnitRecord;

namespace {

constexpr std::size_t kWholeNumber = 2;  // digits: most jerseys have no more
constexpr int kLettersMost = 4;          // of a given name, ours

}  // namespace

SayModel::SayModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  m_quiet.setSingleShot(true);
  connect(&m_quiet, &QTimer::timeout, this, &SayModel::walkAway);
  connect(desk, &Desk::changed, this, &SayModel::changed);
  connect(choices, &Choices::changed, this, &SayModel::changed);
}

void SayModel::setQuietTime(int saidMs, int otherMs) {
  m_saidMs = saidMs;
  m_otherMs = otherMs;
  touched();
}

const AthleteRecord* SayModel::record() const { return m_athlete.empty() ? nullptr : m_desk->views().athlete(m_athlete); }

const UnitRecord* SayModel::unit() const {
  const AthleteRecord* athlete = record();
  return athlete == nullptr || athlete->units.empty() ? nullptr : m_desk->views().unit(athlete->units.back());
}

Speech SayModel::speech() const { return {m_desk->views(), m_choices->units(), m_desk->today(), true}; }

void SayModel::begin() {
  m_number.clear();
  m_matches.clear();
  m_athlete.clear();
  m_place.clear();
  m_words.clear();
  m_typed.clear();
  m_said.clear();
  m_next.clear();
  m_fact.clear();
  m_seen.clear();
  m_trouble.clear();
  m_hit.reset();
  m_isBroken = false;
  go(QStringLiteral("number"));
  m_quiet.stop();
  emit cleared();
}

void SayModel::walkAway() {
  const QString typed = m_step == QLatin1String("words") ? oneLine(m_typed) : m_words;
  if (!typed.isEmpty()) {
    SaidRecord said;
    if (const Place* place = placeOf(m_place)) {
      said.where = place->mark;
      said.side = place->side;
    }
    m_words = typed;
    report(said);
  }
  begin();
}

// The stop screen stands until somebody touches it: whoever reads it may have to fetch an adult first. It names nobody.
void SayModel::touched() {
  if (m_step == QLatin1String("stop") || (m_step == QLatin1String("number") && m_number.isEmpty())) {
    m_quiet.stop();
    return;
  }
  m_quiet.start(m_step == QLatin1String("said") ? m_saidMs : m_otherMs);
}

void SayModel::go(const QString& step) {
  m_step = step;
  touched();
  emit changed();
}

void SayModel::setNumber(const QString& number) {
  if (m_number == number) return;
  m_number = number;
  m_matches.clear();
  const std::string wanted = number.toStdString();
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    if (athlete.isOnRoster && !wanted.empty() && athlete.jersey == wanted) m_matches.push_back(id);
  }
  std::sort(m_matches.begin(), m_matches.end());
  touched();
  // Whole at its second digit, unless somebody wears a longer one that begins so.
  const auto isLonger = [&](const auto& entry) {
    return entry.second.isOnRoster && entry.second.jersey.size() > wanted.size() && entry.second.jersey.starts_with(wanted);
  };
  const auto& athletes = m_desk->views().athletes;
  if (wanted.size() >= kWholeNumber && std::none_of(athletes.begin(), athletes.end(), isLonger)) enterNumber();
  emit changed();
}

bool SayModel::isNobody() const {
  const std::string typed = m_number.toStdString();
  const auto& athletes = m_desk->views().athletes;
  return !typed.empty() && std::none_of(athletes.begin(), athletes.end(), [&](const auto& entry) {
    return entry.second.isOnRoster && entry.second.jersey.starts_with(typed);
  });
}

void SayModel::enterNumber() {
  if (m_matches.size() == 1) return arrive(m_matches.front());
  if (!m_matches.empty()) go(QStringLiteral("who"));
}

// Enough to know oneself by, too little to know another by.
QString SayModel::initialsOf(const AthleteRecord& athlete, int letters) const {
  QStringList initials;
  const QString given = PlainWords::text(athlete.given).left(letters), family = PlainWords::text(athlete.family).left(1).toUpper();
  if (!given.isEmpty()) initials << given.left(1).toUpper() + given.mid(1) + QLatin1Char('.');
  if (!family.isEmpty()) initials << family + QLatin1Char('.');
  return initials.join(QLatin1Char(' '));
}

QString SayModel::initials() const { return record() == nullptr ? QString() : initialsOf(*record(), 1); }

// Of two with the same initials as many letters as tell them apart.
QVariantList SayModel::matches() const {
  for (int letters = 1;; ++letters) {
    QVariantList list;
    QStringList texts;
    for (std::size_t i = 0; i < m_matches.size(); ++i) {
      const AthleteRecord* athlete = m_desk->views().athlete(m_matches[i]);
      if (athlete == nullptr) continue;
      texts << initialsOf(*athlete, letters);
      list << QVariantMap{{QStringLiteral("name"), QString::number(i)}, {QStringLiteral("text"), texts.back()}};
    }
    if (texts.removeDuplicates() == 0 || letters == kLettersMost) return list;
  }
}

void SayModel::identify(const QString& name) {
  const int at = name.toInt();
  if (at < 0 || static_cast<std::size_t>(at) >= m_matches.size()) return;
  arrive(m_matches[static_cast<std::size_t>(at)]);
}

void SayModel::arrive(const std::string& athlete) {
  m_athlete = athlete;
  m_trouble.clear();
  tellSeen();
  go(QStringLiteral("where"));
}

void SayModel::showSeen(const QStringList& seen) {
  m_seen = seen;
  emit changed();
}

QString SayModel::jersey() const { return record() == nullptr ? QString() : PlainWords::text(record()->jersey); }

QVariantMap SayModel::drawn() const {
  const UnitRecord* worn = unit();
  return worn == nullptr ? QVariantMap() : drawnSheet(m_desk->views().sheetOf(*worn), worn);
}

QVariantList SayModel::places() const {
  QVariantList list;
  for (const Place& place : kPlaces) {
    const QString name = QLatin1String(place.name);
    list << QVariantMap{
        {QStringLiteral("name"), name}, {QStringLiteral("text"), placeWords(name)}, {QStringLiteral("chosen"), name == m_place}};
  }
  return list;
}

QString SayModel::ask() const { return m_place.isEmpty() ? tr("Touch where") : tr("%1: what is it?", "a place").arg(yourPlace(m_place)); }

QString SayModel::caution() const {
  return tr("No helmet prevents concussion. A headache, dizzy, or took a hit: stop and tell an adult now.");
}

QString SayModel::emergency() const { return GuideWords::emergency(m_desk->views()); }

void SayModel::touchPlace(const QString& name) {
  if (placeOf(name) == nullptr) return;
  m_place = name == m_place ? QString() : name;
  touched();
  emit changed();
}

void SayModel::feels(const QString& feels) {
  const Place* place = placeOf(m_place);
  const auto kind = fit::feelsFromCode(feels.toStdString());
  if (place == nullptr || !kind) return;
  SaidRecord said;
  said.where = place->mark;
  said.side = place->side;
  said.feels = *kind;
  record(said, *kind == fit::Feels::tight ? tr("%1: tight or pinches", "a place").arg(yourPlace(m_place))
                                          : tr("%1: loose or moves", "a place").arg(yourPlace(m_place)));
}

void SayModel::hairChanged() {
  SaidRecord said;
  said.isHairChanged = true;
  record(said, tr("Hair changed"));
}

void SayModel::somethingBroke() {
  SaidRecord said;
  said.isBroken = true;
  said.feels = fit::Feels::broke;
  if (const Place* place = placeOf(m_place)) {
    said.where = place->mark;
    said.side = place->side;
  }
  record(said, said.where ? tr("Something broke: %1", "a place").arg(yourPlace(m_place)) : tr("Something broke"));
}

void SayModel::openWords() {
  m_typed = m_words;
  go(QStringLiteral("words"));
}

void SayModel::typeWords(const QString& words) {
  m_typed = words;
  touched();
}

void SayModel::keepWords(const QString& words) {
  m_words = oneLine(words);
  go(QStringLiteral("where"));
}

void SayModel::backToWhere() { go(QStringLiteral("where")); }

// What is said is on disk before it is confirmed.
void SayModel::record(SaidRecord said, const QString& words) {
  if (m_isBusy || m_athlete.empty()) return;
  said.words = m_words.toStdString();
  m_isBusy = true;
  m_trouble.clear();
  send(said, [this, said, words, asked = m_athlete](const Result<std::string>& outcome) {
    m_isBusy = false;
    // Whoever said it has left, or stopped: it is recorded, and nobody else is shown it.
    if (asked != m_athlete || m_step == QLatin1String("stop")) return changed();
    if (!outcome) {
      m_trouble = errorSentence(outcome.error());
      emit changed();
      return;
    }
    m_fact = *outcome;
    m_said = m_words.isEmpty() ? words : tr("%1. \"%2\"", "what was touched, own words").arg(words, m_words);
    m_words.clear();
    m_place.clear();
    m_next = nextWords(said);
    m_isBroken = said.isBroken;
    go(QStringLiteral("said"));
  });
  emit changed();
}

void SayModel::report(SaidRecord said) {
  if (m_athlete.empty() && isShared()) return;
  said.words = m_words.toStdString();
  send(said, [](const Result<std::string>&) {});
}

void SayModel::send(const SaidRecord& said, Recorded done) {
  m_desk->submit([athlete = m_athlete, said](const season::Views& views, Instant) { return book::say(views, athlete, said); }, this,
                 firstFact(std::move(done)));
}

void SayModel::takeBackFact(const std::string& fact, Recorded done) {
  m_desk->correct({fact}, this, [fact, done = std::move(done)](const Result<book::Appended>& outcome) {
    if (!outcome) return done(tl::unexpected<Error>(outcome.error()));
    done(fact);
  });
}

QString SayModel::nextWords(const SaidRecord& said) const {
  const season::Views& views = m_desk->views();
  const QString when = PlainWords::dueDay(season::nextPractice(views, m_desk->now()), m_desk->today());
  const QString at = views.team ? PlainWords::time(instantAt(m_desk->today(), views.team->practiceMinute, 0)) : QString();
  const QString practice = at.isEmpty() ? when : tr("%1 at %2", "day, time").arg(when, at);
  if (said.isBroken) return tr("Do not wear this helmet. Hand it to staff now.");
  if (unit() == nullptr) return tr("You have no helmet in the Book yet. Staff see to it before the next practice, %1.").arg(practice);
  return tr("Staff look at it before the next practice, %1. If it gets worse, take the helmet off and tell them.").arg(practice);
}

void SayModel::another() {
  m_said.clear();
  m_next.clear();
  m_fact.clear();
  m_isBroken = false;
  go(QStringLiteral("where"));
}

void SayModel::takeBack() {
  if (m_fact.empty() || m_isBusy) return;
  m_isBusy = true;
  takeBackFact(m_fact, [this, asked = m_athlete](const Result<std::string>& outcome) {
    m_isBusy = false;
    if (asked != m_athlete) return changed();
    if (outcome) return another();
    m_trouble = errorSentence(outcome.error());
    emit changed();
  });
}

// What the last check that somebody spoke before did to the helmet; nothing of what was said.
void SayModel::tellSeen() {
  m_seen.clear();
  const AthleteRecord* athlete = record();
  if (athlete == nullptr) return;
  std::vector<book::WordOutcome> outcomes = book::outcomesOf(*athlete);
  if (outcomes.empty()) return;
  const auto later = [](const auto& a, const auto& b) { return a.seenAt.ms < b.seenAt.ms; };
  const std::string check = std::max_element(outcomes.begin(), outcomes.end(), later)->check;
  std::erase_if(outcomes, [&](const auto& one) { return one.check != check; });
  if (check.empty()) outcomes.erase(outcomes.begin(), outcomes.end() - 1);
  m_seen = {SaidWords::helmetOutcome(outcomes, {}, speech())};
  if (check.empty()) return;
  m_desk->history(check, this, [this, asked = m_athlete, outcomes](const Result<std::vector<book::Fact>>& facts) {
    if (!facts || asked != m_athlete) return;
    m_seen = {SaidWords::helmetOutcome(outcomes, book::doneIn(*facts), speech())};
    emit changed();
  });
}

QString SayModel::otherLanguageText() const { return otherLanguage() == QLatin1String("es") ? tr("Español") : tr("English"); }

}  // namespace snugline::models
