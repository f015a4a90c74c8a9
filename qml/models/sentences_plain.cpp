// SPDX-License-Identifier: Apache-2.0
#include "sentences.h"

#include <cmath>

#include <QDate>
#include <QLocale>
#include <QTime>

#include "core/book/shown_text.h"

namespace snugline::models {

namespace {
QDate dateOf(Day day) {
  const CivilDate date = civil(day);
  return {date.year, date.month, date.day};
}
QString initial(const std::string& name) { return name.empty() ? QString() : PlainWords::text(name).left(1).toUpper() + QLatin1Char('.'); }
}  // namespace

QString PlainWords::day(Day day, Day today) {
  const bool isThisYear = civil(day).year == civil(today).year;
  //: Format of a date, see QLocale: day and short month; the second with the year.
  return QLocale().toString(dateOf(day), isThisYear ? tr("d MMM") : tr("d MMM yyyy"));
}

QString PlainWords::weekdayAndDay(Day day) { return QLocale().toString(dateOf(day), tr("ddd d MMM")); }

QString PlainWords::dueDay(Day day, Day today) {
  if (day == today) return tr("today");
  if (daysBetween(today, day) == 1) return tr("tomorrow");
  if (civil(day).year != civil(today).year) return PlainWords::day(day, today);
  return weekdayAndDay(day);
}

QString PlainWords::time(Instant at) {
  const int minute = minuteOfDay(at);
  return QLocale().toString(QTime(minute / 60, minute % 60), QStringLiteral("HH:mm"));
}

QString PlainWords::moment(Instant at, Day today) { return dayOf(at) == today ? time(at) : day(dayOf(at), today); }

QString PlainWords::person(const season::Views& views, const std::string& id) {
  const auto found = views.people.find(id);
  return found == views.people.end() ? QString() : text(found->second.initials);
}

QString PlainWords::text(const std::string& utf8) { return QString::fromStdString(book::shownText(utf8)); }

// Empty only where it is kept back (season/privacy.h): nobody is added without one.
QString PlainWords::name(const Speech& speech, const std::string& family, const std::string& given) {
  if (family.empty() && given.empty()) return tr("Name kept back");
  if (speech.areNamesShort) return (initial(family) + QLatin1Char(' ') + initial(given)).trimmed();
  const auto part = [](const std::string& utf8) { return QString::fromStdString(book::shownText(utf8, book::kShownNameMost)); };
  if (given.empty()) return part(family);
  return tr("%1, %2", "family name, given name").arg(part(family), part(given));
}

QString PlainWords::shortName(const Speech& speech, const std::string& family, const std::string& given) {
  return speech.areNamesShort ? name(speech, family, given) : text(family.empty() ? given : family);
}

QString PlainWords::list(const QStringList& parts) {
  if (parts.size() < 2) return parts.join(QString());
  QStringList head = parts;
  const QString last = head.takeLast();
  return tr("%1 and %2", "the end of a list").arg(head.join(tr(", ", "between the members of a list")), last);
}

QString PlainWords::percent(double odds) {
  if (odds > 0.0 && odds < 0.01) return tr("under 1 %");
  if (odds < 1.0 && odds > 0.99) return tr("over 99 %");
  return tr("%1 %", "odds").arg(std::lround(odds * 100.0));
}

QString PlainWords::number(Length v, UnitSystem units) { return text(print(v, units)); }

QString PlainWords::tape(Length v, UnitSystem units) { return text(printTape(v, units)); }

QString PlainWords::sentenceCase(const QString& words) { return words.isEmpty() ? words : words.left(1).toUpper() + words.mid(1); }

}  // namespace snugline::models
