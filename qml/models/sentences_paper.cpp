// SPDX-License-Identifier: Apache-2.0
#include "sentences_paper.h"

#include "core/book/shown_text.h"
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

using Kind = ports::PaperPart::Kind;

void add(ports::Paper& paper, Kind kind, const QString& words, const QString& margin = {}) {
  paper.parts.push_back({kind, words.toStdString(), margin.toStdString()});
}

QString wholeText(const std::string& utf8) { return QString::fromStdString(book::shownText(utf8, 0, book::Lines::several)); }

}  // namespace

QString PaperWords::opened(ports::Outbox& outbox, const std::string& place) {
  const QString where = PlainWords::text(place);
  return outbox.open(place) ? tr("%1. It opens now, to be printed from there.").arg(where)
                            : tr("%1. Nothing on this device opens it: take the file to where you print.").arg(where);
}

QString PaperWords::teamName(const season::Views& views) {
  if (!views.team) return {};
  return (PlainWords::text(views.team->name) + QLatin1Char(' ') + PlainWords::text(views.team->mascot)).trimmed();
}

ports::Paper PaperWords::recoverySheet(const season::Views& views, const std::string& key, Day today) {
  ports::Paper paper;
  paper.title = tr("Recovery sheet").toStdString();
  paper.subtitle = tr("%1. Made on %2.", "team, date").arg(teamName(views), dayWords(today)).toStdString();
  paper.foot = tr("Snugline: opens the Book when every code is forgotten").toStdString();
  add(paper, Kind::heading, tr("What it is for"));
  add(paper, Kind::text,
      tr("When every admin's code is forgotten, this key lets one admin set a new code. It works once: a new key is made then, and "
         "this sheet is void."));
  add(paper, Kind::heading, tr("The key"));
  add(paper, Kind::key, QString::fromStdString(key));
  add(paper, Kind::heading, tr("How to use it"));
  add(paper, Kind::text,
      tr("1. On the screen that asks for a staff code, touch \"Every code forgotten\".\n2. Type the key, group after group. A mistyped "
         "group is named.\n3. Choose the admin and type a new code twice.\n4. Print the new sheet and destroy this one."));
  add(paper, Kind::heading, tr("Keep it"));
  add(paper, Kind::text,
      tr("Under lock and key, away from the tablet: with the school's keys, or in a sealed envelope with the athletic director. Whoever "
         "holds this sheet and the tablet can open the Book. Do not photograph it, and do not send it by mail or message."));
  add(paper, Kind::text,
      tr("Wrong keys make the tablet wait longer and longer, as wrong codes do. An admin can make a new sheet at any time, under People; "
         "every sheet before it is void."));
  add(paper, Kind::text, tr("Nobody can read this key from the Book again. It stands here and nowhere else."));
  return paper;
}

ports::Paper PaperWords::warningForm(const season::Views& views, const season::WarningText& text, Day today) {
  ports::Paper paper;
  paper.title = tr("Yearly warning").toStdString();
  const QString season = views.team ? PlainWords::text(views.team->season) : QString();
  paper.subtitle = tr("%1, season %2. Printed on %3.", "team, season, date").arg(teamName(views), season, dayWords(today)).toStdString();
  paper.foot = tr("Text %1", "first characters of a hash").arg(QString::fromStdString(text.hash).left(12)).toStdString();
  add(paper, Kind::text, wholeText(text.text));
  for (const QString& line :
       {tr("Jersey number"), tr("Athlete: name and date"), tr("Parent or guardian: name and date"), tr("Seen by staff: initials and date")})
    add(paper, Kind::line, line);
  return paper;
}

QString PaperWords::line(const season::Views& views, const book::Fact& fact, Day today) {
  if (const auto* answered = std::get_if<book::CheckAnswered>(&fact.body)) {
    const Speech speech{views, UnitSystem::metric, today, false, {}};
    QStringList words;
    for (const fit::Answer& answer : answered->answers) words << answerWords(answer, speech);
    return words.join(QStringLiteral("; "));
  }
  if (const auto* said = std::get_if<book::Said>(&fact.body); said != nullptr && !said->said.words.empty())
    return tr("%1. In their words: %2").arg(factWords(views, fact), wholeText(said->said.words));
  if (const auto* acknowledged = std::get_if<book::SaidAcknowledged>(&fact.body))
    return acknowledged->outcome.empty() ? tr("What was said was acknowledged")
                                         : tr("What was said was acknowledged: %1").arg(wholeText(acknowledged->outcome));
  if (const auto* note = std::get_if<book::NoteAdded>(&fact.body)) return wholeText(note->text);
  const QString words = factWords(views, fact);
  return words.isEmpty() ? QString::fromUtf8(book::kindOf(fact.body).data(), static_cast<qsizetype>(book::kindOf(fact.body).size()))
                         : words;
}

ports::Paper PaperWords::wholeRecord(const season::Views& views, const season::AthleteRecord& athlete, const std::vector<book::Fact>& facts,
                                     Day today) {
  ports::Paper paper;
  paper.title = tr("Record of one athlete").toStdString();
  paper.subtitle = tr("%1. Handed out on %2.", "team, date").arg(teamName(views), dayWords(today)).toStdString();
  paper.foot = tr("Snugline: everything the Book holds about one athlete").toStdString();
  const QString name = athlete.nameKeptBack ? tr("Name kept back since %1").arg(dayWords(*athlete.nameKeptBack))
                                            : (wholeText(athlete.family) + QStringLiteral(", ") + wholeText(athlete.given));
  add(paper, Kind::heading, athlete.jersey.empty() ? name : tr("%1  %2", "jersey, name").arg(PlainWords::text(athlete.jersey), name));
  if (athlete.birthYear) add(paper, Kind::text, tr("Born %1").arg(*athlete.birthYear));
  add(paper, Kind::text, tr("What was said about how somebody feels is not part of this paper."));
  add(paper, Kind::text, tr("A record of equipment: what was seen, when and by whom. It says nothing about whether a person may play."));
  for (const book::Fact& fact : facts) {
    const QString who = PlainWords::person(views, fact.who);
    const QString when = QString::fromStdString(print(dayOf(fact.at))) + QLatin1Char(' ') + PlainWords::time(fact.at);
    add(paper, Kind::row, line(views, fact, today), who.isEmpty() ? when : when + QStringLiteral(", ") + who);
  }
  return paper;
}

}  // namespace snugline::models
