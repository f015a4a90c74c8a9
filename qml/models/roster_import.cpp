// SPDX-License-Identifier: Apache-2.0
#include "qml/models/roster_import.h"

#include <algorithm>
#include <utility>
#include <variant>

#include <QFile>
#include <QFileInfo>
#include <QVariantMap>

#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
QVariantMap row(std::size_t line, const QString& kind, const QString& who, const QString& why) {
  return {{QStringLiteral("line"), line == 0 ? QString() : QString::number(line)},
          {QStringLiteral("kind"), kind},
          {QStringLiteral("who"), who},
          {QStringLiteral("why"), why},
          {QStringLiteral("question"), QString()},
          {QStringLiteral("answers"), QVariantList()}};
}

constexpr auto kAsWritten = "as-written";
constexpr auto kLeftOut = "left-out";

QString questionOf(const book::RowNote& note) { return QStringLiteral("%1 %2").arg(note.line).arg(text(book::code(note.doubt))); }

QVariantMap answerOf(const char* name, const QString& words, bool isChosen) {
  return {{QStringLiteral("name"), QLatin1String(name)}, {QStringLiteral("text"), words}, {QStringLiteral("chosen"), isChosen}};
}

QVariantList answersTo(const book::RowNote& note, std::optional<book::RowAnswer> given) {
  QString stands = RosterImport::tr("It is right"), goes = RosterImport::tr("Leave the head out");
  if (note.doubt == book::RowDoubt::birthYearUnlikely) goes = RosterImport::tr("Leave the year out");
  if (note.doubt == book::RowDoubt::sameJersey) {
    stands = RosterImport::tr("Both have it");
    goes = RosterImport::tr("Leave the number out");
  }
  QVariantList answers;
  if (book::canStand(note)) answers.append(answerOf(kAsWritten, stands, given == book::RowAnswer::asWritten));
  answers.append(answerOf(kLeftOut, goes, given == book::RowAnswer::leftOut));
  return answers;
}

QString whoIn(const book::RosterRead& read, std::size_t line) {
  const auto found = std::find_if(read.rows.begin(), read.rows.end(), [line](const book::RosterRow& entry) { return entry.line == line; });
  if (found == read.rows.end()) return {};
  return RosterImport::tr("%1 %2", "jersey, name").arg(text(found->jersey), text(found->family)).trimmed();
}

std::size_t lineOf(const book::RosterRead& read, const std::string& jersey, const std::string& family) {
  const auto found = std::find_if(read.rows.begin(), read.rows.end(),
                                  [&](const book::RosterRow& entry) { return entry.jersey == jersey && entry.family == family; });
  return found == read.rows.end() ? 0 : found->line;
}

QString changesOf(const book::AthleteChanged& change) {
  QStringList parts;
  if (change.jersey) parts.append(RosterImport::tr("jersey %1").arg(text(*change.jersey)));
  if (change.family || change.given) parts.append(RosterImport::tr("name"));
  if (change.birthYear) parts.append(RosterImport::tr("birth year %1").arg(*change.birthYear));
  if (change.isOnRoster) parts.append(*change.isOnRoster ? RosterImport::tr("back on the roster") : RosterImport::tr("off the roster"));
  return parts.join(RosterImport::tr(", ", "between changes"));
}
}  // namespace

RosterImport::RosterImport(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_last(QStringLiteral("roster"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &RosterImport::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_refusal = why;
    emit changed();
  });
}

void RosterImport::undo() {
  m_outcome.clear();
  m_refusal.clear();
  m_last.undo();
}

QString RosterImport::formWords() const {
  if (!m_isRead) return {};
  QString separated = tr("commas");
  if (m_rosterRead.delimiter == ';') separated = tr("semicolons");
  if (m_rosterRead.delimiter == '\t') separated = tr("tabs");
  return tr("%1, separated by %2").arg(text(m_rosterRead.encoding), separated);
}

// What needs eyes comes first: refused, questioned, changed, added.
QVariantList RosterImport::rows() const {
  QVariantList list;
  if (!m_isRead) return list;
  for (const book::RowNote& note : m_plan.refused)
    list.append(row(note.line, QStringLiteral("refused"), whoIn(m_rosterRead, note.line), rowDoubt(note)));
  for (const book::RowNote& note : m_plan.questioned) {
    QVariantMap asked = row(note.line, QStringLiteral("questioned"), whoIn(m_rosterRead, note.line), rowDoubt(note));
    const auto given = m_answers.find({note.line, note.doubt});
    asked[QStringLiteral("question")] = questionOf(note);
    asked[QStringLiteral("answers")] = answersTo(note, given == m_answers.end() ? std::nullopt : std::optional(given->second));
    list.append(asked);
  }
  const season::Views& views = m_desk->views();
  for (const book::Draft& draft : m_plan.drafts) {
    if (const auto* change = std::get_if<book::AthleteChanged>(&draft.body)) {
      const season::AthleteRecord* athlete = views.athlete(draft.about);
      if (athlete != nullptr) list.append(row(0, QStringLiteral("changed"), athleteName(*athlete), changesOf(*change)));
    }
  }
  for (const book::Draft& draft : m_plan.drafts) {
    if (const auto* added = std::get_if<book::AthleteAdded>(&draft.body)) {
      season::AthleteRecord shown;
      shown.jersey = added->jersey;
      shown.family = added->family;
      shown.given = added->given;
      list.append(row(lineOf(m_rosterRead, added->jersey, added->family), QStringLiteral("added"), athleteName(shown), {}));
    }
  }
  return list;
}

void RosterImport::read(const QString& pathOrUrl) {
  if (m_isBusy || pathOrUrl.trimmed().isEmpty()) return;
  putAside();
  const QString path = localPath(pathOrUrl);
  m_file = QFileInfo(path).fileName();
  const std::string name = utf8(m_file);
  QFile file(path);
  Result<book::RosterRead> roster = fail(ErrorCode::cannotRead, name);
  if (!file.open(QIODevice::ReadOnly)) {
    roster = fail(ErrorCode::cannotRead, name, utf8(file.errorString()));
  } else if (file.size() > static_cast<qint64>(book::kRosterLimitBytes)) {
    roster = fail(ErrorCode::tooLong, name, std::to_string(file.size()) + ", " + std::to_string(book::kRosterLimitBytes));
  } else {
    roster = book::readRoster(file.readAll().toStdString(), name);
  }
  if (roster) {
    m_rosterRead = std::move(*roster);
    m_answers.clear();
    m_plan = book::planRoster(m_desk->views(), m_rosterRead, m_desk->today());
    m_isRead = true;
  } else {
    m_refusal = errorSentence(roster.error());
  }
  emit changed();
}

int RosterImport::unanswered() const {
  return static_cast<int>(std::count_if(m_plan.questioned.begin(), m_plan.questioned.end(), [this](const book::RowNote& note) {
    return !m_answers.contains({note.line, note.doubt});
  }));
}

void RosterImport::answer(const QString& question, const QString& name) {
  if (!m_isRead || m_isBusy) return;
  const auto asked = std::find_if(m_plan.questioned.begin(), m_plan.questioned.end(),
                                  [&](const book::RowNote& note) { return questionOf(note) == question; });
  if (asked == m_plan.questioned.end()) return;
  m_answers[{asked->line, asked->doubt}] = name == QLatin1String(kAsWritten) ? book::RowAnswer::asWritten : book::RowAnswer::leftOut;
  m_plan = book::planRoster(m_desk->views(), m_rosterRead, m_desk->today(), m_answers);
  emit changed();
}

void RosterImport::takeIn() {
  if (!m_isRead || m_isBusy) return;
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  // Planned anew against the Book itself, so that what another screen wrote meanwhile is not added twice.
  const auto job = [roster = m_rosterRead, answers = m_answers](const season::Views& views, Instant now) -> Result<book::Drafts> {
    return book::planRoster(views, roster, dayOf(now), answers).drafts;
  };
  m_desk->submit(job, this, [this](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    if (!outcome) {
      m_refusal = errorSentence(outcome.error());
      emit changed();
      return;
    }
    m_outcome = tr("%1 is taken in: %2 added, %3 changed, %4 unchanged.").arg(m_file).arg(added()).arg(altered()).arg(unchanged());
    if (refused() > 0) m_outcome += QLatin1Char(' ') + tr("Refused rows stayed out: %1.").arg(refused());
    m_last.did(outcome->ids, m_outcome);
    m_isRead = false;
    m_rosterRead = {};
    m_plan = {};
    emit changed();
    emit taken();
  });
}

void RosterImport::putAside() {
  if (m_isBusy) return;
  m_isRead = false;
  m_rosterRead = {};
  m_plan = {};
  m_refusal.clear();
  m_outcome.clear();
  emit changed();
}

}  // namespace snugline::models
