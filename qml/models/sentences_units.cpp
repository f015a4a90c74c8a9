// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sentences_units.h"

#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

QString UnitWords::part(gear::UnitPart part) {
  switch (part) {
    case gear::UnitPart::faceguard:
      return tr("Faceguard");
    case gear::UnitPart::chinStrap:
      return tr("Chin strap");
    case gear::UnitPart::hardware:
      return tr("Hardware");
    case gear::UnitPart::crownPads:
      return tr("Crown pads");
    case gear::UnitPart::sidePads:
      return tr("Side pads");
    case gear::UnitPart::jawPads:
      return tr("Jaw pads");
    case gear::UnitPart::crownBladder:
      return tr("Crown bladder");
    case gear::UnitPart::sideBladder:
      return tr("Side bladder");
    case gear::UnitPart::jawBladder:
      return tr("Jaw bladder");
    case gear::UnitPart::warningLabel:
      return tr("Warning label");
  }
  return {};
}

QString UnitWords::parts(const std::string& codes) {
  QStringList names;
  for (const QString& code : text(codes).split(QStringLiteral(", "), Qt::SkipEmptyParts)) {
    const auto known = gear::unitPartFromCode(utf8(code));
    const QString name = known ? UnitWords::part(*known).toLower() : code;
    if (!names.contains(name)) names.append(name);
  }
  return PlainWords::list(names);
}

QString UnitWords::reopened(fit::MarkSet marks) {
  QStringList names;
  for (const fit::Mark mark : fit::kMarks) {
    if (marks.has(mark)) names.append(MarkWords::brief(mark));
  }
  if (names.isEmpty()) return {};
  if (names.size() == static_cast<qsizetype>(fit::kMarkCount)) return tr("To see again: all nine marks");
  return tr("To see again: %1", "marks").arg(PlainWords::list(names));
}

QString UnitWords::scope(const season::Views& views, const season::NoticeScope& scope) {
  QStringList parts;
  if (const gear::ModelSheet* sheet = views.sheet(views.standingSheet(scope.sheet))) parts.append(text(sheet->name));
  if (scope.yearFrom && scope.yearTo && scope.yearFrom == scope.yearTo) {
    parts.append(tr("made %1", "year").arg(*scope.yearFrom));
  } else if (scope.yearFrom && scope.yearTo) {
    parts.append(tr("made %1 to %2", "years").arg(*scope.yearFrom).arg(*scope.yearTo));
  } else if (scope.yearFrom) {
    parts.append(tr("made %1 or later", "year").arg(*scope.yearFrom));
  } else if (scope.yearTo) {
    parts.append(tr("made %1 or earlier", "year").arg(*scope.yearTo));
  }
  if (!scope.lot.empty()) parts.append(tr("lot %1").arg(text(scope.lot)));
  const QString from = text(scope.serialFrom), to = text(scope.serialTo);
  if (!from.isEmpty() && !to.isEmpty()) {
    parts.append(tr("serials %1 to %2").arg(from, to));
  } else if (!from.isEmpty()) {
    parts.append(tr("serials from %1").arg(from));
  } else if (!to.isEmpty()) {
    parts.append(tr("serials up to %1").arg(to));
  }
  return parts.join(QStringLiteral(", "));
}

QString UnitWords::cover(const season::NoticeCover& cover) {
  const int all = static_cast<int>(cover.units.size()), worn = static_cast<int>(cover.worn.size());
  if (all == 0) return tr("No helmet");
  return tr("%1, %2", "14 helmets, 9 on heads").arg(tr("%n helmet(s)", nullptr, all), tr("%n on heads", nullptr, worn));
}

QString UnitWords::notKnown(const season::NoticeCover& cover, const season::NoticeScope& scope) {
  const int count = static_cast<int>(cover.unknown.size());
  if (count == 0) return {};
  const bool isYear = scope.yearFrom || scope.yearTo;
  const bool isLot = !scope.lot.empty();
  if (isYear && isLot) return tr("Of %n helmet(s) the year or the lot is not known", nullptr, count);
  return isLot ? tr("Of %n helmet(s) the lot is not known", nullptr, count)
               : tr("Of %n helmet(s) the year made is not known", nullptr, count);
}

QString UnitWords::notice(const season::NoticeRecord& notice) {
  return tr("Maker's notice of %1: %2").arg(dayWords(notice.day), text(notice.text));
}

QString UnitWords::notOffered(season::NotOffered why, int count) {
  switch (why) {
    case season::NotOffered::held:
      return tr("%n on hold", nullptr, count);
    case season::NotOffered::away:
      return tr("%n in repair, sent out or still with an athlete", nullptr, count);
    case season::NotOffered::notInService:
      return tr("%n not put in service yet", nullptr, count);
    case season::NotOffered::faultOpen:
      return tr("%n with an open fault", nullptr, count);
    case season::NotOffered::brokeSaid:
      return tr("%n said to be broken and not looked at since", nullptr, count);
    case season::NotOffered::label:
      return tr("%n with a label that is lapsed, missing, not read or in question", nullptr, count);
    case season::NotOffered::noSheet:
      return tr("%n without a model sheet", nullptr, count);
    case season::NotOffered::pointsOpen:
      return tr("%n with seven points to check after a report", nullptr, count);
    case season::NotOffered::otherSize:
      return tr("%n of another size", nullptr, count);
    case season::NotOffered::didNotFit:
      return tr("%n tried on this head, and no fit was reached", nullptr, count);
  }
  return {};
}

QString UnitWords::spareNote(const season::Spare& spare, const season::Views& views) {
  QStringList parts;
  if (const season::UnitRecord* unit = views.unit(spare.unit)) parts.append(text(unit->serial));
  if (!spare.shelf.empty()) parts.append(text(spare.shelf));
  parts.append(tr("good to %1", "day").arg(dayWords(spare.lastGood)));
  if (spare.unseenPoints > 0) parts.append(tr("%n point(s) not seen", nullptr, spare.unseenPoints));
  return parts.join(QStringLiteral(", "));
}

}  // namespace snugline::models
