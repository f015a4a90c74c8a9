// SPDX-License-Identifier: Apache-2.0
#include "warning_model.h"

#include <QFile>

#include "core/book/fold.h"
#include "core/book/rights.h"
#include "core/season/privacy.h"
#include "sentences.h"
#include "sentences_gear.h"
#include "sentences_paper.h"

namespace snugline::models {

namespace {

std::string plainText(const char* language) {
  QFile file(QStringLiteral(":/qt/qml/Snugline/Models/warning_%1.txt").arg(QLatin1String(language)));
  return file.open(QIODevice::ReadOnly) ? file.readAll().trimmed().toStdString() : std::string();
}

}  // namespace

WarningModel::WarningModel(Desk* desk, Choices* choices, LockModel* lock, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_lock(lock) {
  for (const char* language : {"en", "es"}) m_plain.push_back({language, plainText(language)});
  connect(desk, &Desk::opened, this, &WarningModel::changed);
  connect(desk, &Desk::changed, this, &WarningModel::changed);
  connect(choices, &Choices::changed, this, &WarningModel::changed);
  connect(lock, &LockModel::opened, this, &WarningModel::onOpened);
  // Locked by a pause: nothing of what was typed is left for the next one.
  connect(lock, &LockModel::changed, this, [this] {
    if (m_isOut && m_lock->wall() == QLatin1String("locked")) {
      m_isOut = false;
      m_initials.clear();
      m_step = QStringLiteral("read");
      emit changed();
    }
  });
}

void WarningModel::say(const QString& trouble) {
  m_trouble = trouble;
  emit changed();
}

void WarningModel::forgetTrouble() { say({}); }

std::string WarningModel::textIn(const std::string& language) const {
  const auto& team = m_desk->views().team;
  if (team && team->warning) {
    for (const season::WarningText& each : team->warning->texts) {
      if (each.language == language) return each.text;
    }
    return {};
  }
  for (const auto& each : m_plain) {
    if (each.language == language) return each.text;
  }
  return {};
}

QString WarningModel::jersey() const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_athlete);
  return athlete == nullptr ? QString() : QString::fromStdString(athlete->jersey);
}

// The language asked for, where the team has the text in it.
QString WarningModel::language() const {
  const QString asked = m_choices->sayLanguage();
  if (!textIn(asked.toStdString()).empty()) return asked;
  return asked == QLatin1String("es") ? QStringLiteral("en") : QStringLiteral("es");
}

void WarningModel::setLanguage(const QString& language) {
  if (!textIn(language.toStdString()).empty()) m_choices->setSayLanguage(language);
}

QString WarningModel::text() const { return QString::fromStdString(textIn(language().toStdString())); }

int WarningModel::openCount() const { return m_desk->isOpen() ? season::countWarningOpen(m_desk->views(), m_desk->today()) : 0; }

QString WarningModel::openWords() const {
  const int count = openCount();
  return count == 0 ? QString() : tr("%n athlete(s) have yet to sign the yearly warning", nullptr, count);
}

QVariantMap WarningModel::stateOf(const QString& id) const {
  const season::AthleteRecord* athlete = m_desk->views().athlete(id.toStdString());
  if (athlete == nullptr) return {};
  const season::WarningState state = season::warningState(m_desk->views().team, *athlete, m_desk->today());
  const bool isNeeded = season::needsGuardian(*athlete, m_desk->today());
  QString text = tr("Yearly warning: read and signed");
  if (state.isAthleteOpen && state.isGuardianOpen) text = tr("Yearly warning: not signed yet, nor by a parent or guardian");
  if (state.isAthleteOpen && !state.isGuardianOpen) text = tr("Yearly warning: not signed yet by the athlete");
  if (!state.isAthleteOpen && state.isGuardianOpen) text = tr("Yearly warning: not signed yet by a parent or guardian");
  QStringList detail;
  for (const season::SignatureRecord& each : athlete->signatures) {
    if (!m_desk->views().team || each.season != m_desk->views().team->season) continue;
    const QString when = PlainWords::day(dayOf(each.stamp.at), m_desk->today());
    const QString initials = PlainWords::text(each.initials), witness = PlainWords::person(m_desk->views(), each.stamp.who);
    detail << (each.as == season::Signer::athlete
                   ? tr("Athlete %1, %2, before %3", "initials, date, witness").arg(initials, when, witness)
                   : tr("Parent or guardian %1, %2, before %3", "initials, date, witness").arg(initials, when, witness));
  }
  return {{QStringLiteral("text"), text},
          {QStringLiteral("detail"), detail.join(QLatin1Char('\n'))},
          {QStringLiteral("isOpen"), !state.isDone()},
          {QStringLiteral("athleteOpen"), state.isAthleteOpen},
          {QStringLiteral("guardianOpen"), state.isGuardianOpen},
          {QStringLiteral("guardianNeeded"), isNeeded}};
}

void WarningModel::open(const QString& athlete, bool asGuardian) {
  if (m_desk->person().empty()) return say(tr("Say first who signs for staff: whoever stands by is the witness."));
  m_athlete = athlete.toStdString();
  m_as = asGuardian ? season::Signer::guardian : season::Signer::athlete;
  m_step = QStringLiteral("read");
  m_initials.clear();
  m_trouble.clear();
  m_isOut = true;
  m_lock->handOver();
  emit changed();
}

void WarningModel::sign(const QString& initials) {
  const QString clean = initials.simplified().toUpper();
  if (clean.isEmpty() || clean.size() > static_cast<int>(book::kSignedInitialsMost)) return say(tr("Type one to four initials."));
  m_initials = clean;
  m_step = QStringLiteral("witness");
  say({});
}

void WarningModel::again() {
  m_initials.clear();
  m_step = QStringLiteral("read");
  say({});
}

void WarningModel::leave() {
  m_isOut = false;
  m_initials.clear();
  m_step = QStringLiteral("read");
  m_lock->takeBack();
}

void WarningModel::witnessed() {
  if (m_isOut && !needsCode()) m_lock->takeBack();
}

// The right code, or nobody has one: whoever holds the glass now saw it signed.
void WarningModel::onOpened() {
  if (!m_isOut) return;
  m_isOut = false;
  if (m_initials.isEmpty()) return;
  keep(m_athlete, {text().toStdString(), language().toStdString(), m_as, m_initials.toStdString(), false});
  m_initials.clear();
  m_step = QStringLiteral("read");
}

void WarningModel::keep(const std::string& athlete, const book::Signing& signing) {
  m_isBusy = true;
  m_desk->submit(
      [athlete, signing, witness = m_desk->person(), plain = m_plain](const season::Views& views, Instant now) {
        return book::signWarning(views, athlete, signing, witness, plain, dayOf(now));
      },
      this,
      [this, isOnPaper = signing.isOnPaper](const Result<book::Appended>& outcome) {
        m_isBusy = false;
        say(outcome ? QString() : errorSentence(outcome.error()));
        if (outcome) isOnPaper ? emit kept() : emit finished();
      });
}

void WarningModel::signedOnPaper(const QString& athlete, bool asGuardian, const QString& initials) {
  const QString clean = initials.simplified().toUpper();
  if (clean.isEmpty() || clean.size() > static_cast<int>(book::kSignedInitialsMost)) return say(tr("Type one to four initials."));
  if (m_desk->person().empty()) return say(tr("Say first who signs for staff: whoever stands by is the witness."));
  const season::Signer as = asGuardian ? season::Signer::guardian : season::Signer::athlete;
  keep(athlete.toStdString(), {text().toStdString(), language().toStdString(), as, clean.toStdString(), true});
}

void WarningModel::setTexts(const QString& english, const QString& spanish, bool asksAnew) {
  if (!book::may(m_desk->views(), m_desk->person(), book::Right::admin)) return say(tr("An admin sets the text of the warning."));
  std::vector<book::WarningSet::Text> texts;
  if (!english.trimmed().isEmpty()) texts.push_back({"en", english.trimmed().toStdString()});
  if (!spanish.trimmed().isEmpty()) texts.push_back({"es", spanish.trimmed().toStdString()});
  m_isBusy = true;
  m_desk->submit([texts, asksAnew](const season::Views& views, Instant) { return book::setWarning(views, texts, asksAnew); }, this,
                 [this](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   say(outcome ? QString() : errorSentence(outcome.error()));
                   if (outcome) emit kept();
                 });
}

QString WarningModel::setWords() const {
  const auto& team = m_desk->views().team;
  if (!team || !team->warning) return tr("The plain text of this program. It becomes the team's when the first one signs.");
  const QString who = PlainWords::person(m_desk->views(), team->warning->stamp.who);
  const QString when = PlainWords::day(dayOf(team->warning->stamp.at), m_desk->today());
  return who.isEmpty() ? tr("Set %1").arg(when) : tr("Set %1 by %2").arg(when, who);
}

void WarningModel::printForm() {
  if (!m_lock->edges().outbox) return;
  const std::string words = text().toStdString();
  const season::WarningText form{language().toStdString(), words, book::hashOf(words)};
  const auto place = m_lock->edges().outbox->print("snugline-warning-" + print(m_desk->today()) + ".pdf",
                                                   PaperWords::warningForm(m_desk->views(), form, m_desk->today()));
  m_place = place ? PaperWords::opened(*m_lock->edges().outbox, *place) : QString();
  say(place ? QString() : errorSentence(place.error()));
}

}  // namespace snugline::models
