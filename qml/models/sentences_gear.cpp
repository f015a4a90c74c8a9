// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sentences_gear.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QUrl>
#include <QVariantMap>

#include "core/book/acts.h"
#include "core/book/shown_text.h"
#include "qml/models/sentences.h"

namespace snugline::models {

namespace {
struct Gear {
  Q_DECLARE_TR_FUNCTIONS(Gear)
};
}  // namespace

QString text(std::string_view utf8Bytes) { return QString::fromStdString(book::shownText(utf8Bytes)); }
std::string utf8(const QString& words) { return words.toStdString(); }

QString localPath(const QString& pathOrUrl) {
  const QString trimmed = pathOrUrl.trimmed();
  return trimmed.startsWith(QLatin1String("file:")) ? QUrl(trimmed).toLocalFile() : trimmed;
}

QString dayWords(Day day) {
  const CivilDate date = civil(day);
  return QLocale().toString(QDate(date.year, date.month, date.day), QStringLiteral("d MMM yyyy"));
}

QString pointName(gear::Point point) {
  switch (point) {
    case gear::Point::certification:
      return Gear::tr("Certification");
    case gear::Point::warningLabel:
      return Gear::tr("Warning label");
    case gear::Point::shell:
      return Gear::tr("Shell");
    case gear::Point::hardware:
      return Gear::tr("Hardware");
    case gear::Point::faceguard:
      return Gear::tr("Faceguard");
    case gear::Point::liner:
      return Gear::tr("Liner");
    case gear::Point::chinStrap:
      return Gear::tr("Chin strap");
  }
  return {};
}

QString pointAsk(gear::Point point, bool hasAir) {
  switch (point) {
    case gear::Point::certification:
      return Gear::tr("Label there, readable, in date");
    case gear::Point::warningLabel:
      return Gear::tr("On the outside, readable");
    case gear::Point::shell:
      return Gear::tr("No crack, dent or add-on");
    case gear::Point::hardware:
      return Gear::tr("Snaps and clips firm, screws turn");
    case gear::Point::faceguard:
      return Gear::tr("Straight, coated, tight");
    case gear::Point::liner:
      return hasAir ? Gear::tr("All there, holds air, clean") : Gear::tr("All there, clean");
    case gear::Point::chinStrap:
      return Gear::tr("Cup and every strap whole");
  }
  return {};
}

QStringList pointFaults(gear::Point point, bool hasAir) {
  switch (point) {
    case gear::Point::certification:
      return {Gear::tr("label missing"), Gear::tr("label not readable"), Gear::tr("out of date")};
    case gear::Point::warningLabel:
      return {Gear::tr("missing"), Gear::tr("not readable"), Gear::tr("covered by a decal")};
    case gear::Point::shell:
      return {Gear::tr("crack"), Gear::tr("deep dent"), Gear::tr("hole drilled"), Gear::tr("something added")};
    case gear::Point::hardware:
      return {Gear::tr("snap loose"), Gear::tr("clip broken"), Gear::tr("screw stuck"), Gear::tr("part missing")};
    case gear::Point::faceguard:
      return {Gear::tr("bare metal"), Gear::tr("bent bar"), Gear::tr("cracked weld"), Gear::tr("loose")};
    case gear::Point::liner:
      if (!hasAir) return {Gear::tr("pad missing"), Gear::tr("torn"), Gear::tr("packed down hard")};
      return {Gear::tr("pad missing"), Gear::tr("loses air"), Gear::tr("torn"), Gear::tr("packed down hard")};
    case gear::Point::chinStrap:
      return {Gear::tr("strap frayed"), Gear::tr("buckle broken"), Gear::tr("cup torn"), Gear::tr("strap missing")};
  }
  return {};
}

QString pointStateWords(const gear::PointFinding& finding) {
  switch (finding.state) {
    case gear::PointState::unseen:
      return Gear::tr("Not seen");
    case gear::PointState::sound:
      return Gear::tr("Sound");
    case gear::PointState::fault:
      return finding.what.empty() ? Gear::tr("Fault") : Gear::tr("Fault: %1").arg(text(finding.what));
  }
  return {};
}

QVariantList pointList(const gear::PointFindings& findings, const gear::ModelSheet* sheet) {
  const bool hasAir = sheet == nullptr || !sheet->air.empty();
  QVariantList list;
  for (const gear::Point point : gear::kPoints) {
    const gear::PointFinding& finding = findings[static_cast<std::size_t>(point)];
    list.append(QVariantMap{{QStringLiteral("code"), text(gear::code(point))},
                            {QStringLiteral("name"), pointName(point)},
                            {QStringLiteral("ask"), pointAsk(point, hasAir)},
                            {QStringLiteral("state"), static_cast<int>(finding.state)},
                            {QStringLiteral("words"), pointStateWords(finding)},
                            {QStringLiteral("faults"), pointFaults(point, hasAir)}});
  }
  return list;
}

QString labelShort(const gear::Label& label) {
  if (label.fullDate) return Gear::tr("certified %1").arg(dayWords(*label.fullDate));
  switch (label.kind) {
    case gear::LabelKind::makersMark:
      return Gear::tr("maker's mark %1").arg(label.year);
    case gear::LabelKind::recertification:
      return Gear::tr("label %1").arg(label.year);
  }
  return {};
}

QString labelWords(const gear::Label& label, const std::optional<gear::DaySpan>& lastGood, Day today) {
  QString what;
  switch (label.kind) {
    case gear::LabelKind::makersMark:
      what = Gear::tr("Maker's mark %1").arg(label.year);
      break;
    case gear::LabelKind::recertification:
      what = Gear::tr("Label %1").arg(label.year);
      break;
  }
  if (label.fullDate) {
    what = label.source.empty() ? Gear::tr("Certified %1").arg(dayWords(*label.fullDate))
                                : Gear::tr("Certified %1 by %2").arg(dayWords(*label.fullDate), text(label.source));
  }
  if (!lastGood) return what;
  const QString first = dayWords(lastGood->first);
  const QString last = dayWords(lastGood->last);
  switch (gear::judge(*lastGood, today)) {
    case gear::LabelState::unknown:
      return what;
    case gear::LabelState::good:
      return lastGood->isOneDay() ? Gear::tr("%1: good to %2").arg(what, first)
                                  : Gear::tr("%1: good to between %2 and %3, judged by the earlier").arg(what, first, last);
    case gear::LabelState::mayHaveLapsed:
      return Gear::tr("%1: good to between %2 and %3, judged by the earlier, so lapsed").arg(what, first, last);
    case gear::LabelState::lapsed:
      return Gear::tr("%1: lapsed, last good day %2").arg(what, last);
  }
  return what;
}

QString labelWordsOf(const season::Views& views, const season::UnitRecord& unit, Day today) {
  if (unit.isLabelMissing) return Gear::tr("Label looked for and missing");
  if (unit.isLabelUnreadable) return Gear::tr("Label cannot be read");
  if (unit.labels.empty()) return Gear::tr("No label read yet");
  const QString words = labelWords(unit.labels.back().label, season::lastGoodDay(views, unit), today);
  return unit.isLabelDisputed ? Gear::tr("%1. Two readings differ: read it again").arg(words) : words;
}

gear::LabelState labelStateOf(const season::Views& views, const season::UnitRecord& unit, Day today) {
  if (unit.isLabelMissing || unit.isLabelUnreadable) return gear::LabelState::lapsed;
  const auto span = season::lastGoodDay(views, unit);
  return span ? gear::judge(*span, today) : gear::LabelState::unknown;
}

QString holdReason(const std::string& reason) {
  if (const auto point = gear::pointFromCode(reason)) return pointName(*point);
  if (reason == "label" || reason == "label-lapsed") return Gear::tr("Label");
  if (reason == "label-missing") return Gear::tr("Label missing");
  if (reason == "fit") return Gear::tr("Fit not reached");
  if (reason == "broken") return Gear::tr("Something broke");
  if (reason == "notice") return Gear::tr("Maker's notice");
  return Gear::tr("Held");
}

QString holdWhat(const std::string& what) {
  if (what == book::kNotSeenYet) return Gear::tr("not seen yet");
  if (what == "missing") return Gear::tr("missing");
  if (what == "lapsed") return Gear::tr("lapsed");
  if (what == "unreadable") return Gear::tr("cannot be read");
  return text(what);
}

QString holdWords(const season::HoldRecord& hold) {
  return hold.what.empty() ? holdReason(hold.reason) : Gear::tr("%1: %2").arg(holdReason(hold.reason), holdWhat(hold.what));
}

QString placeWords(season::UnitPlace place, const std::string& where) {
  QString words;
  switch (place) {
    case season::UnitPlace::shelf:
      words = Gear::tr("On the shelf");
      break;
    case season::UnitPlace::withAthlete:
      words = Gear::tr("With an athlete");
      break;
    case season::UnitPlace::repair:
      words = Gear::tr("In repair");
      break;
    case season::UnitPlace::sentOut:
      words = Gear::tr("Sent out");
      break;
    case season::UnitPlace::retired:
      words = Gear::tr("Retired");
      break;
    case season::UnitPlace::lost:
      words = Gear::tr("Lost");
      break;
  }
  return where.empty() ? words : Gear::tr("%1: %2").arg(words, text(where));
}

QString athleteName(const season::AthleteRecord& athlete, bool isShort) {
  if (athlete.family.empty() && athlete.given.empty()) {
    const QString kept = PlainWords::tr("Name kept back");
    return athlete.jersey.empty() ? kept : Gear::tr("%1 %2", "jersey, name").arg(text(athlete.jersey), kept);
  }
  const QString family = text(athlete.family);
  const QString given = text(athlete.given);
  QString name = given.isEmpty() ? family : Gear::tr("%1, %2", "family name, given name").arg(family, given);
  if (isShort)
    name = given.isEmpty() ? Gear::tr("%1.", "initial").arg(family.left(1))
                           : Gear::tr("%1. %2.", "initials").arg(given.left(1), family.left(1));
  return athlete.jersey.empty() ? name : Gear::tr("%1 %2", "jersey, name").arg(text(athlete.jersey), name);
}

std::pair<int, std::string> jerseyOrder(const std::string& jersey) {
  bool isNumber = false;
  const int number = text(jersey).toInt(&isNumber);
  return {isNumber ? number : 1000, jersey};
}

QString kindOf(const season::Views& views, const season::UnitRecord& unit) {
  const gear::ModelSheet* sheet = views.sheetOf(unit);
  return sheet == nullptr ? Gear::tr("size %1").arg(text(unit.size)) : Gear::tr("%1, size %2").arg(text(sheet->name), text(unit.size));
}

QString rowDoubt(const book::RowNote& note) {
  const QString cell = text(note.text);
  switch (note.doubt) {
    case book::RowDoubt::headTooLarge:
      return Gear::tr("A head of %1 is larger than expected: tape it again. Not recorded").arg(cell);
    case book::RowDoubt::headTooSmall:
      return Gear::tr("A head of %1 is smaller than expected: tape it again. Not recorded").arg(cell);
    case book::RowDoubt::sameJersey:
      return Gear::tr("Jersey %1 is on the roster already").arg(cell);
    case book::RowDoubt::birthYearUnlikely:
      return Gear::tr("Birth year %1 looks unlikely").arg(cell);
    case book::RowDoubt::noName:
      return Gear::tr("No name in this row");
    case book::RowDoubt::jerseyUnreadable:
      return Gear::tr("\"%1\" is not a jersey number").arg(cell);
    case book::RowDoubt::headUnreadable:
      return Gear::tr("\"%1\" is not a head size, such as 575 mm or 22.5 in").arg(cell);
    case book::RowDoubt::birthYearUnreadable:
      return Gear::tr("\"%1\" is not a birth year").arg(cell);
    case book::RowDoubt::tooFewCells:
      return Gear::tr("Fewer cells than the header has");
    case book::RowDoubt::tooManyCells:
      return Gear::tr("More cells than the header has");
    case book::RowDoubt::badQuote:
      return Gear::tr("A quote is opened and never closed");
    case book::RowDoubt::notPrintable:
      return Gear::tr("Characters that cannot be printed");
    case book::RowDoubt::tagUnreadable:
      return Gear::tr("\"%1\" cannot be a serial tag").arg(cell);
    case book::RowDoubt::sheetUnknown:
      return Gear::tr("No model sheet \"%1\" is adopted").arg(cell);
    case book::RowDoubt::sizeUnknown:
      return Gear::tr("The model sheet has no size \"%1\"").arg(cell);
    case book::RowDoubt::labelUnreadable:
      return Gear::tr("\"%1\" is not a label year").arg(cell);
    case book::RowDoubt::pointUnknown:
      return Gear::tr("\"%1\" is none of the seven points").arg(cell);
    case book::RowDoubt::unitAway:
      return Gear::tr("%1 is away for repair or recertification. Say at the Dock what was done").arg(cell);
    case book::RowDoubt::unitRetired:
      return Gear::tr("%1 is retired and stays so").arg(cell);
    case book::RowDoubt::repeated:
      return Gear::tr("The same row stands further up");
  }
  return {};
}

}  // namespace snugline::models
