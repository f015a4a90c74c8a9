// SPDX-License-Identifier: Apache-2.0
#include "privacy_model.h"

#include <algorithm>

#include "core/book/privacy_acts.h"
#include "core/book/rights.h"
#include "core/book/whole_record.h"
#include "core/report/csv_table.h"
#include "sentences.h"
#include "sentences_gear.h"
#include "sentences_paper.h"

namespace snugline::models {

PrivacyModel::PrivacyModel(Desk* desk, Choices* choices, LockModel* lock, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_lock(lock) {
  connect(desk, &Desk::opened, this, &PrivacyModel::changed);
  connect(desk, &Desk::personChanged, this, &PrivacyModel::changed);
  connect(desk, &Desk::changed, this, [this](const std::vector<std::string>& touched) {
    if (std::find(touched.begin(), touched.end(), m_athlete) != touched.end()) read();
    emit changed();
  });
}

void PrivacyModel::say(const QString& trouble) {
  m_trouble = trouble;
  emit changed();
}

void PrivacyModel::forgetTrouble() { say({}); }

bool PrivacyModel::mayChange() const { return book::may(m_desk->views(), m_desk->person(), book::Right::admin); }

int PrivacyModel::years() const { return m_desk->views().team ? m_desk->views().team->nameYears.value_or(0) : 0; }

QString PrivacyModel::yearsWords() const {
  const auto& athletes = m_desk->views().athletes;
  const auto count = std::count_if(athletes.begin(), athletes.end(), [](const auto& each) { return each.second.nameKeptBack.has_value(); });
  return count == 0 ? tr("No name is kept back now.") : tr("%n name(s) are kept back now.", nullptr, static_cast<int>(count));
}

QVariantList PrivacyModel::holdsOf(const std::vector<season::LegalHoldRecord>& holds) const {
  QVariantList list;
  for (const season::LegalHoldRecord& hold : holds) {
    const QString who = PlainWords::person(m_desk->views(), hold.stamp.who), when = PlainWords::day(dayOf(hold.stamp.at), m_desk->today());
    list << QVariantMap{{QStringLiteral("id"), QString::fromStdString(hold.fact)},
                        {QStringLiteral("text"), PlainWords::text(hold.reason)},
                        {QStringLiteral("detail"), who.isEmpty() ? when : when + QStringLiteral(", ") + who}};
  }
  return list;
}

QVariantList PrivacyModel::teamHolds() const { return m_desk->views().team ? holdsOf(m_desk->views().team->legalHolds) : QVariantList(); }
QVariantList PrivacyModel::athleteHolds() const { return record() == nullptr ? QVariantList() : holdsOf(record()->legalHolds); }

const season::AthleteRecord* PrivacyModel::record() const { return m_desk->views().athlete(m_athlete); }

QString PrivacyModel::title() const { return record() == nullptr ? QString() : athleteName(*record(), m_choices->areNamesShort()); }

QString PrivacyModel::nameWords() const {
  if (record() == nullptr || !record()->nameKeptBack) return {};
  return tr("Name kept back since %1. The log still holds it.").arg(dayWords(*record()->nameKeptBack));
}

void PrivacyModel::write(Desk::Job job) {
  if (m_isBusy) return;
  if (!mayChange()) return say(tr("An admin changes this."));
  m_isBusy = true;
  m_desk->submit(std::move(job), this, [this](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    say(outcome ? QString() : errorSentence(outcome.error()));
  });
}

void PrivacyModel::setYears(int years) {
  write([years](const season::Views& views, Instant) {
    return book::setRetention(views, years == 0 ? std::nullopt : std::optional<int>(years));
  });
}

void PrivacyModel::hold(const QString& athlete, const QString& reason) {
  write([athlete = athlete.toStdString(), reason = reason.simplified().toStdString()](const season::Views& views, Instant) {
    return book::makeLegalHold(views, athlete, reason);
  });
}

void PrivacyModel::endHold(const QString& athlete, const QString& hold, const QString& reason) {
  write([athlete = athlete.toStdString(), hold = hold.toStdString(), reason = reason.simplified().toStdString()](
            const season::Views& views, Instant) { return book::endLegalHold(views, athlete, hold, reason); });
}

void PrivacyModel::open(const QString& athlete) {
  m_athlete = athlete.toStdString();
  m_facts.clear();
  m_lines.clear();
  m_place.clear();
  m_trouble.clear();
  emit changed();
  emit recordChanged();
  read();
}

void PrivacyModel::read() {
  m_desk->wholeRecord(m_athlete, this, [this, asked = m_athlete](const Result<std::vector<book::Fact>>& facts) {
    if (asked != m_athlete) return;
    if (!facts) return say(errorSentence(facts.error()));
    m_facts = book::forExport(*facts);
    if (record() != nullptr && record()->nameKeptBack) book::keepNameBack(m_facts, m_athlete);
    m_lines.clear();
    for (auto fact = m_facts.rbegin(); fact != m_facts.rend(); ++fact) {
      m_lines << QVariantMap{{QStringLiteral("when"), timeWords(fact->at, m_desk->today())},
                             {QStringLiteral("who"), PlainWords::person(m_desk->views(), fact->who)},
                             {QStringLiteral("text"), PaperWords::line(m_desk->views(), *fact, m_desk->today())}};
    }
    emit recordChanged();
  });
}

std::string PrivacyModel::bytesOf(const QString& form) const {
  if (form == QLatin1String("json")) {
    std::string lines;
    for (const book::Fact& fact : m_facts) {
      if (const auto line = book::encode(fact)) lines += *line + '\n';
    }
    return lines;
  }
  std::vector<std::vector<std::string>> rows{
      {tr("When").toStdString(), tr("By").toStdString(), tr("What").toStdString(), tr("Kind").toStdString(), tr("Entry").toStdString()}};
  for (const book::Fact& fact : m_facts) {
    rows.push_back({print(fact.at), PlainWords::person(m_desk->views(), fact.who).toStdString(),
                    PaperWords::line(m_desk->views(), fact, m_desk->today()).toStdString(), std::string(book::kindOf(fact.body)),
                    fact.id()});
  }
  return report::csvTable(rows);
}

void PrivacyModel::handOut(const QString& form) {
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr || !m_lock->edges().outbox) return;
  // By day and the entry that made the athlete: no name, and no jersey number that could be one's own next year.
  const std::string name = "snugline-record-" + print(m_desk->today()) + '-' + athlete->id.substr(athlete->id.find(':') + 1) + '.';
  const bool isPaper = form == QLatin1String("pdf");
  const auto place =
      isPaper ? m_lock->edges().outbox->print(name + "pdf", PaperWords::wholeRecord(m_desk->views(), *athlete, m_facts, m_desk->today()))
              : m_lock->edges().outbox->keep(name + form.toStdString(), bytesOf(form));
  m_place = !place ? QString() : isPaper ? PaperWords::opened(*m_lock->edges().outbox, *place) : PlainWords::text(*place);
  say(place ? QString() : errorSentence(place.error()));
}

}  // namespace snugline::models
