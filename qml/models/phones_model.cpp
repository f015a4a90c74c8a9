// SPDX-License-Identifier: Apache-2.0
#include "phones_model.h"

#include <algorithm>
#include <memory>
#include <optional>

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include "core/book/phone_exchange.h"
#include "core/ports/memory_ports.h"
#include "phone_words.h"

namespace snugline::models {

namespace {

constexpr int kCodeGroup = 4;

// Beside the file that was taken in, under a name of its own; another answer to the same file takes its place.
QString answerPath(const QString& reports) {
  const QFileInfo info(PhoneWords::localFile(reports));
  return info.dir().filePath(info.completeBaseName() + QStringLiteral("-answer.json"));
}

Result<void> writeFile(const QString& path, const std::string& bytes) {
  QSaveFile file(path);
  const bool isWritten =
      file.open(QIODevice::WriteOnly) && file.write(QByteArray::fromStdString(bytes)) == static_cast<qint64>(bytes.size()) && file.commit();
  if (!isWritten) return fail(ErrorCode::cannotWrite, path.toStdString(), file.errorString().toStdString());
  return {};
}

}  // namespace

PhonesModel::PhonesModel(Desk* desk, Choices* choices, Desk::MakeKeys makeKeys, DrawCode drawCode, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_makeKeys(std::move(makeKeys)), m_drawCode(std::move(drawCode)) {
  if (!m_makeKeys) m_makeKeys = [] { return std::make_unique<ports::MemoryKeys>(); };
  connect(desk, &Desk::opened, this, &PhonesModel::changed);
  connect(desk, &Desk::changed, this, &PhonesModel::changed);
  connect(choices, &Choices::changed, this, &PhonesModel::changed);
}

const season::AthleteRecord* PhonesModel::record() const { return m_desk->views().athlete(m_athlete); }

void PhonesModel::open(const QString& athlete) {
  close();
  m_athlete = athlete.toStdString();
  emit changed();
}

void PhonesModel::close() {
  m_athlete.clear();
  m_code.clear();
  m_matrix.clear();
  m_remark.clear();
  m_refusal.clear();
  emit changed();
}

QString PhonesModel::who() const {
  const season::AthleteRecord* athlete = record();
  if (athlete == nullptr) return {};
  const Speech speech{m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()};
  return tr("%1 %2", "jersey, name")
      .arg(PlainWords::text(athlete->jersey), PlainWords::shortName(speech, athlete->family, athlete->given))
      .trimmed();
}

bool PhonesModel::hasPhone() const { return record() != nullptr && !record()->phones.empty(); }

QString PhonesModel::state() const {
  if (!hasPhone()) return tr("No phone has joined.");
  return tr("A code was given out %1.", "a day").arg(PlainWords::day(dayOf(record()->phones.back().joined.at), m_desk->today()));
}

QString PhonesModel::joinedWords() const {
  const auto& athletes = m_desk->views().athletes;
  const auto count = std::count_if(athletes.begin(), athletes.end(), [](const auto& each) { return !each.second.phones.empty(); });
  return count == 0 ? tr("No athlete has a phone of their own here")
                    : tr("%n athlete(s) with a phone of their own", nullptr, static_cast<int>(count));
}

QString PhonesModel::code() const {
  QString grouped;
  const QString letters = m_code.section(QLatin1Char(':'), 1);
  for (qsizetype i = 0; i < letters.size(); i += kCodeGroup)
    grouped += (i > 0 ? QStringLiteral(" ") : QString()) + letters.mid(i, kCodeGroup);
  return grouped;
}

void PhonesModel::work(Desk::Work work, std::function<void(const book::Appended&)> then) {
  if (m_isBusy) return;
  m_isBusy = true;
  m_remark.clear();
  m_refusal.clear();
  m_desk->work(std::move(work), this, [this, then = std::move(then)](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    if (outcome)
      then(*outcome);
    else
      m_refusal = PhoneWords::trouble(outcome.error());
    emit changed();
  });
  emit changed();
}

void PhonesModel::invite() {
  const auto text = std::make_shared<std::string>();
  work(
      [athlete = m_athlete, makeKeys = m_makeKeys, text](book::Book& book, Instant) -> Result<book::Appended> {
        const auto seed = makeKeys()->freshSeed();
        if (!seed) return tl::unexpected<Error>(seed.error());
        std::array<std::uint8_t, 16> secret{};
        std::copy_n(seed->begin(), secret.size(), secret.begin());
        // The key of this device is made with its first write; a code has to name it.
        const auto own = book.signWords(book::kAnswersMark);
        if (!own) return tl::unexpected<Error>(own.error());
        auto made = book::invite(book.views(), athlete, secret, book::deviceOf(own->publicKey), book.highestOrder());
        if (!made) return tl::unexpected<Error>(made.error());
        *text = made->text;
        return book.append(std::move(made->drafts));
      },
      [this, text](const book::Appended&) {
        m_code = QString::fromStdString(*text);
        m_matrix = m_drawCode ? m_drawCode(m_code) : QStringList();
      });
}

void PhonesModel::letGo() {
  work(
      [athlete = m_athlete](book::Book& book, Instant) -> Result<book::Appended> {
        auto drafts = book::letGo(book.views(), athlete);
        if (!drafts) return tl::unexpected<Error>(drafts.error());
        return drafts->empty() ? Result<book::Appended>(book::Appended{}) : book.append(std::move(*drafts));
      },
      [this](const book::Appended&) {
        m_code.clear();
        m_matrix.clear();
        m_remark = tr("Nothing more is taken from that phone.");
      });
}

void PhonesModel::takeIn(const QString& path) {
  const auto taken = std::make_shared<book::PhoneTaken>();
  const auto unanswered = std::make_shared<std::optional<Error>>();
  const QString answer = answerPath(path);
  work(
      [path, answer, taken, unanswered](book::Book& book, Instant now) -> Result<book::Appended> {
        const auto bytes = PhoneWords::readFile(path);
        if (!bytes) return tl::unexpected<Error>(bytes.error());
        auto done = book::takeReports(book, *bytes);
        if (!done) return tl::unexpected<Error>(done.error());
        *taken = std::move(*done);
        const auto told = book::answersFor(book, taken->device, now);
        // What was taken is in the Book, whether or not there is an answer or room for it.
        const auto written = told ? writeFile(answer, *told) : Result<void>(tl::unexpected<Error>(told.error()));
        if (!written) *unanswered = written.error();
        return taken->appended;
      },
      [this, taken, answer, unanswered](const book::Appended&) {
        const season::AthleteRecord* athlete = m_desk->views().athlete(taken->athlete);
        const QString jersey = athlete == nullptr ? QString() : PlainWords::text(athlete->jersey);
        const QString counted = taken->taken == 0 ? tr("Nothing new from number %1.").arg(jersey)
                                                  : tr("%n new report(s) from number %1.", nullptr, taken->taken).arg(jersey);
        m_refusal = *unanswered ? PhoneWords::trouble(**unanswered) : QString();
        m_remark = m_refusal.isEmpty() ? tr("%1 The answer for the phone: %2", "how many, a file").arg(counted, answer) : counted;
      });
}

}  // namespace snugline::models
