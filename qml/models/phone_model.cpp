// SPDX-License-Identifier: Apache-2.0
#include "phone_model.h"

#include <algorithm>

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>
#include <QUrl>

#include "phone_words.h"
#include "sentences_said.h"

namespace snugline::models {

namespace {

QVariantMap drawnHelmet(const std::optional<book::PhoneHelmet>& helmet) {
  if (!helmet) return {};
  return {{QStringLiteral("hasCrownAir"), helmet->hasCrownAir},
          {QStringLiteral("hasSideAir"), helmet->hasSideAir},
          {QStringLiteral("hasJawAir"), helmet->hasJawAir},
          {QStringLiteral("strapPoints"), helmet->strapPoints}};
}

// By check, newest first: one sentence says what one check made of everything it answered.
QStringList outcomeSentences(const book::PhoneAnswers& answers, const Speech& speech) {
  QStringList sentences;
  std::vector<bool> isTold(answers.outcomes.size());
  for (std::size_t i = answers.outcomes.size(); i > 0; --i) {
    const book::PhoneOutcome& newest = answers.outcomes[i - 1];
    if (isTold[i - 1]) continue;
    std::vector<book::WordOutcome> ofOneCheck;
    for (std::size_t k = 0; k < i; ++k) {
      const book::WordOutcome& outcome = answers.outcomes[k].outcome;
      if (k + 1 != i && (newest.outcome.check.empty() || outcome.check != newest.outcome.check)) continue;
      ofOneCheck.push_back(outcome);
      isTold[k] = true;
    }
    sentences << SaidWords::outcome(ofOneCheck, newest.done, speech);
  }
  return sentences;
}

}  // namespace

PhoneSay::PhoneSay(PhoneModel* phone, Desk* desk, Choices* choices, QObject* parent) : SayModel(desk, choices, parent), m_phone(phone) {}

void PhoneSay::beginOwn() {
  if (m_phone->phone()) arrive(m_phone->phone()->code().athlete);
}

QString PhoneSay::jersey() const { return m_phone->jersey(); }

QVariantMap PhoneSay::drawn() const {
  const auto& phone = m_phone->phone();
  return phone && phone->answers() ? drawnHelmet(phone->answers()->helmet) : QVariantMap();
}

QVariantMap PhoneSay::findings() const { return m_phone->phone() ? findingsOf(m_phone->phone()->said()) : QVariantMap(); }

void PhoneSay::send(const season::SaidRecord& said, Recorded done) { done(m_phone->record(said)); }
void PhoneSay::follow(const std::string&, const std::string& said, bool isMistake, Recorded done) {
  done(m_phone->follow(said, isMistake));
}
void PhoneSay::takeBackFact(const std::string& fact, Recorded done) { done(m_phone->takeBack(fact)); }

QString PhoneSay::nextWords(const season::SaidRecord& said) const {
  if (said.isBroken) return tr("Do not wear this helmet. Hand it to staff now.");
  return tr("Kept on this phone. Staff see it once they have the file from you. If it gets worse, take the helmet off and tell them.");
}

void PhoneSay::tellSeen() { showSeen(m_phone->outcomes().mid(0, 1)); }

PhoneModel::PhoneModel(const QString& file, Desk* desk, Choices* choices, QObject* parent)
    : QObject(parent), m_file(file), m_desk(desk), m_choices(choices), m_say(new PhoneSay(this, desk, choices, this)) {
  connect(choices, &Choices::changed, this, &PhoneModel::changed);
  connect(desk, &Desk::opened, this, &PhoneModel::changed);
  connect(desk, &Desk::changed, this, &PhoneModel::changed);
  if (m_file.isEmpty()) return;
  QFile kept(m_file);
  if (!kept.open(QIODevice::ReadOnly)) return;
  auto phone = book::Phone::read(kept.read(static_cast<qint64>(book::kPhoneFileBytes) * 2).toStdString());
  if (phone)
    m_phone = std::move(*phone);
  else
    m_trouble = PhoneWords::trouble(phone.error());
}

bool PhoneModel::mayJoin() const { return !m_file.isEmpty() && !m_phone && m_desk->views().athletes.empty(); }
QString PhoneModel::jersey() const { return m_phone ? PlainWords::text(m_phone->jersey()) : QString(); }

QString PhoneModel::next() const {
  if (!m_phone) return {};
  if (!m_phone->answers()) return tr("Staff have not answered yet. Give them your first file.");
  const book::PhoneAnswers& answers = *m_phone->answers();
  const Day today = m_desk->today();
  if (answers.isDue || answers.dueFrom <= today)
    return tr("Staff see your helmet by %1.", "a day").arg(PlainWords::dueDay(answers.dueBy, today));
  return tr("Next look from %1.", "a day").arg(PlainWords::dueDay(answers.dueFrom, today));
}

QStringList PhoneModel::outcomes() const {
  static const season::Views kNobody;
  if (!m_phone || !m_phone->answers()) return {};
  return outcomeSentences(*m_phone->answers(), {kNobody, m_choices->units(), m_desk->today(), true});
}

QString PhoneModel::waiting() const {
  const int count = m_phone ? m_phone->waiting() : 0;
  return count == 0 ? QString() : tr("%n report(s) that staff do not have yet", nullptr, count);
}

Result<void> PhoneModel::keep(const book::Phone& phone) {
  const auto bytes = phone.file();
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  QSaveFile file(m_file);
  const bool isWritten = file.open(QIODevice::WriteOnly) && file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                         file.write(QByteArray::fromStdString(*bytes)) == static_cast<qint64>(bytes->size()) && file.commit();
  if (!isWritten) return fail(ErrorCode::cannotWrite, m_file.toStdString());
  return {};
}

void PhoneModel::tell(const QString& remark, const QString& trouble) {
  m_remark = remark;
  m_trouble = trouble;
  emit changed();
}

void PhoneModel::join(const QString& code) {
  if (!mayJoin()) return;
  auto phone = book::Phone::join(code.toStdString());
  if (!phone) return tell({}, PhoneWords::trouble(phone.error()));
  if (const auto kept = keep(*phone); !kept) return tell({}, PhoneWords::trouble(kept.error()));
  m_phone = std::move(*phone);
  tell({}, {});
  emit joined();
}

Result<std::string> PhoneModel::record(const season::SaidRecord& said) {
  if (!m_phone) return fail(ErrorCode::notFound, "phone");
  book::Phone next = *m_phone;
  auto fact = next.say(said, m_desk->now());
  if (!fact) return fact;
  if (const auto kept = keep(next); !kept) return tl::unexpected<Error>(kept.error());
  m_phone = std::move(next);
  emit changed();
  return fact;
}

Result<std::string> PhoneModel::follow(const std::string& said, bool isMistake) {
  if (!m_phone) return fail(ErrorCode::notFound, "phone");
  book::Phone next = *m_phone;
  if (auto followed = next.follow(said, isMistake, m_desk->now()); !followed) return tl::unexpected<Error>(followed.error());
  if (const auto kept = keep(next); !kept) return tl::unexpected<Error>(kept.error());
  m_phone = std::move(next);
  emit changed();
  return said;
}

Result<std::string> PhoneModel::takeBack(const std::string& fact) {
  if (!m_phone || !m_phone->canTakeBack()) return fail(ErrorCode::notAllowed, fact, std::string(book::rule::kAlreadyClosed));
  book::Phone next = *m_phone;
  next.takeBack();
  if (const auto kept = keep(next); !kept) return tl::unexpected<Error>(kept.error());
  m_phone = std::move(next);
  emit changed();
  return fact;
}

void PhoneModel::writeReports(const QString& folder) {
  if (!m_phone) return;
  book::Phone next = *m_phone;
  const auto reports = next.reports();
  if (!reports) return tell({}, PhoneWords::trouble(reports.error()));
  if (const auto kept = keep(next); !kept) return tell({}, PhoneWords::trouble(kept.error()));
  m_phone = std::move(next);
  const QDir to(folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : PhoneWords::localFile(folder));
  to.mkpath(QStringLiteral("."));
  QSaveFile file(to.filePath(QStringLiteral("snugline-reports.json")));
  const bool isWritten = file.open(QIODevice::WriteOnly) &&
                         file.write(QByteArray::fromStdString(*reports)) == static_cast<qint64>(reports->size()) && file.commit();
  if (!isWritten) return tell({}, PhoneWords::trouble({ErrorCode::cannotWrite, file.fileName().toStdString(), {}}));
  tell(tr("Written: %1. Give this file to staff.", "a file").arg(file.fileName()), {});
}

void PhoneModel::takeAnswers(const QString& path) {
  if (!m_phone) return;
  const auto bytes = PhoneWords::readFile(path);
  if (!bytes) return tell({}, PhoneWords::trouble(bytes.error()));
  book::Phone next = *m_phone;
  if (const auto taken = next.takeAnswers(*bytes); !taken) return tell({}, PhoneWords::trouble(taken.error()));
  if (const auto kept = keep(next); !kept) return tell({}, PhoneWords::trouble(kept.error()));
  m_phone = std::move(next);
  tell(tr("The answer of the staff is here."), {});
}

void PhoneModel::forget() { tell({}, {}); }

}  // namespace snugline::models
