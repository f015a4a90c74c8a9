// SPDX-License-Identifier: Apache-2.0
#include "say_model.h"

#include <algorithm>
#include <array>

#include "athlete_model.h"
#include "drawn_values.h"
#include "sentences_gear.h"
#include "sentences_said.h"

namespace snugline::models {

using season::AthleteRecord;
using season::SaidRecord;
using season::UnitRecord;

namespace {

struct Place {
  const char* name;
  fit::Mark mark;
  fit::Side side;
};
// In the order of the nine marks; where left and right are told apart, each has its own place.
constexpr std::array<Place, 12> kPlaces{{{"brow", fit::Mark::brow, fit::Side::both},
                                         {"ears-left", fit::Mark::ears, fit::Side::left},
                                         {"ears-right", fit::Mark::ears, fit::Side::right},
                                         {"nape", fit::Mark::nape, fit::Side::both},
                                         {"chin", fit::Mark::chin, fit::Side::both},
                                         {"straps", fit::Mark::straps, fit::Side::both},
                                         {"jaw-left", fit::Mark::jaw, fit::Side::left},
                                         {"jaw-right", fit::Mark::jaw, fit::Side::right},
                                         {"crown", fit::Mark::crown, fit::Side::both},
                                         {"sides-left", fit::Mark::sides, fit::Side::left},
                                         {"sides-right", fit::Mark::sides, fit::Side::right},
                                         {"hold", fit::Mark::hold, fit::Side::both}}};

const Place* placeOf(const QString& name) {
  const auto at = std::find_if(kPlaces.begin(), kPlaces.end(), [&](const Place& p) { return name == QLatin1String(p.name); });
  return at == kPlaces.end() ? nullptr : &*at;
}

}  // namespace

SayModel::SayModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  m_quiet.setSingleShot(true);
  connect(&m_quiet, &QTimer::timeout, this, &SayModel::begin);
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
  m_said.clear();
  m_next.clear();
  m_fact.clear();
  m_seen.clear();
  m_trouble.clear();
  go(QStringLiteral("number"));
  m_quiet.stop();
  emit cleared();
}

// The stop screen stands until somebody touches it: whoever reads it may have to fetch the trainer first. It names nobody.
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
  emit changed();
}

QVariantList SayModel::matches() const {
  QVariantList list;
  for (std::size_t i = 0; i < m_matches.size(); ++i) {
    const AthleteRecord* athlete = m_desk->views().athlete(m_matches[i]);
    if (athlete == nullptr) continue;
    // Enough to know oneself by, too little to know another by. Without a given name the family's initial serves.
    const std::string& own = athlete->given.empty() ? athlete->family : athlete->given;
    list << QVariantMap{{QStringLiteral("name"), QString::number(i)},
                        {QStringLiteral("text"), tr("That is me: %1.").arg(PlainWords::text(own).left(1).toUpper())}};
  }
  return list;
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

std::vector<SaidRecord> SayModel::ownWords() const { return record() == nullptr ? std::vector<SaidRecord>() : record()->said; }

QString SayModel::jersey() const { return record() == nullptr ? QString() : PlainWords::text(record()->jersey); }

QVariantMap SayModel::drawn() const {
  const UnitRecord* worn = unit();
  return worn == nullptr ? QVariantMap() : drawnSheet(m_desk->views().sheetOf(*worn), worn);
}

QVariantMap SayModel::findings() const {
  QVariantMap map;
  for (const SaidRecord& said : ownWords()) {
    if (said.isAnswered || !said.where) continue;
    for (const Place& place : kPlaces) {
      const bool isHere =
          place.mark == *said.where && (said.side == fit::Side::both || place.side == fit::Side::both || place.side == said.side);
      if (isHere) map.insert(QLatin1String(place.name), saidCode(said.feels));
    }
  }
  return map;
}

// The words a person would use who never heard of the nine marks.
QString SayModel::placeWords(const QString& name) const {
  const Place* place = placeOf(name);
  if (place == nullptr) return {};
  switch (place->mark) {
    case fit::Mark::brow:
      return tr("Forehead");
    case fit::Mark::ears:
      return place->side == fit::Side::left ? tr("Left ear") : tr("Right ear");
    case fit::Mark::nape:
      return tr("Neck");
    case fit::Mark::chin:
      return tr("Chin");
    case fit::Mark::straps:
      return tr("Straps");
    case fit::Mark::jaw:
      return place->side == fit::Side::left ? tr("Left cheek") : tr("Right cheek");
    case fit::Mark::crown:
      return tr("Top");
    case fit::Mark::sides:
      return place->side == fit::Side::left ? tr("Left side") : tr("Right side");
    case fit::Mark::hold:
      return tr("Whole helmet");
  }
  return {};
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

QString SayModel::ask() const { return m_place.isEmpty() ? tr("Touch where") : tr("%1: what is it?", "a place").arg(placeWords(m_place)); }

QString SayModel::caution() const { return tr("No helmet prevents concussion. Hurt or unwell: stop and tell the trainer."); }

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
  record(said, *kind == fit::Feels::tight ? tr("%1: hurts or presses").arg(placeWords(m_place))
                                          : tr("%1: moves or slips").arg(placeWords(m_place)));
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
  record(said, said.where ? tr("Something broke: %1").arg(placeWords(m_place)) : tr("Something broke"));
}

void SayModel::unwell() {
  SaidRecord said;
  said.isUnwell = true;
  record(said, QString());
}

void SayModel::openWords() { go(QStringLiteral("words")); }

void SayModel::keepWords(const QString& words) {
  // Line ends and other control characters are blanks here: what is left is one line of text, whatever was pasted.
  QString clean;
  for (const char32_t c : words.toUcs4())
    clean += QChar::category(c) == QChar::Other_Control ? QStringLiteral(" ") : QString::fromUcs4(&c, 1);
  QList<uint> kept = clean.simplified().toUcs4().mid(0, static_cast<qsizetype>(book::kWordsLimit));
  m_words = QString::fromUcs4(reinterpret_cast<const char32_t*>(kept.constData()), kept.size());
  go(QStringLiteral("where"));
}

void SayModel::backToWhere() { go(QStringLiteral("where")); }

// What is said is on disk before it is confirmed. The stop screen does not wait for that: it shows at once, and says so if the
// record could not be made.
void SayModel::record(SaidRecord said, const QString& words) {
  if (m_isBusy || m_athlete.empty()) return;
  said.words = m_words.toStdString();
  m_isBusy = true;
  m_trouble.clear();
  if (said.isUnwell) go(QStringLiteral("stop"));
  send(said, [this, said, words, asked = m_athlete](const Result<std::string>& outcome) {
    m_isBusy = false;
    // Whoever said it has left: it is recorded, and nobody else is shown it.
    if (asked != m_athlete) return changed();
    if (!outcome) {
      m_trouble = errorSentence(outcome.error());
      emit changed();
      return;
    }
    if (said.isUnwell) {
      emit changed();
      return;
    }
    m_fact = *outcome;
    m_said = m_words.isEmpty() ? words : tr("%1. \"%2\"", "what was touched, own words").arg(words, m_words);
    m_words.clear();
    m_place.clear();
    m_next = nextWords(said);
    go(QStringLiteral("said"));
  });
  emit changed();
}

void SayModel::send(const SaidRecord& said, Recorded done) {
  m_desk->submit([athlete = m_athlete, said](const season::Views& views, Instant) { return book::say(views, athlete, said); }, this,
                 [done = std::move(done)](const Result<book::Appended>& outcome) {
                   if (!outcome) return done(tl::unexpected<Error>(outcome.error()));
                   done(outcome->ids.empty() ? std::string() : outcome->ids.front());
                 });
}

void SayModel::takeBackFact(const std::string& fact, Recorded done) {
  m_desk->correct(fact, this, [fact, done = std::move(done)](const Result<book::Appended>& outcome) {
    if (!outcome) return done(tl::unexpected<Error>(outcome.error()));
    done(fact);
  });
}

QString SayModel::nextWords(const SaidRecord& said) const {
  const season::Views& views = m_desk->views();
  const QString when = PlainWords::dueDay(season::nextPractice(views, m_desk->now()), m_desk->today());
  const QString at = views.team ? PlainWords::time(instantAt(m_desk->today(), views.team->practiceMinute, 0)) : QString();
  const QString practice = at.isEmpty() ? when : tr("%1 at %2", "day, time").arg(when, at);
  if (said.isBroken) return tr("Do not wear this helmet until staff have seen it. Hand it to them now.");
  if (unit() == nullptr) return tr("You have no helmet in the Book yet. Staff see to it before the next practice, %1.").arg(practice);
  return tr("Staff look at it before the next practice, %1. If it gets worse, take the helmet off and tell them.").arg(practice);
}

void SayModel::another() {
  m_said.clear();
  m_next.clear();
  m_fact.clear();
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

// What the last check made of what was said: what was done about it, and how the place sits now.
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
  m_seen = {SaidWords::outcome(outcomes, {}, speech())};
  if (check.empty()) return;
  m_desk->history(check, this, [this, asked = m_athlete, outcomes](const Result<std::vector<book::Fact>>& facts) {
    if (!facts || asked != m_athlete) return;
    m_seen = {SaidWords::outcome(outcomes, book::doneIn(*facts), speech())};
    emit changed();
  });
}

QString SayModel::otherLanguageText() const { return otherLanguage() == QLatin1String("es") ? tr("Español") : tr("English"); }

}  // namespace snugline::models
