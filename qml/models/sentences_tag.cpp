// SPDX-License-Identifier: Apache-2.0
// Why a scan is no tag, for whoever stands at the Dock with it.
#include <QCoreApplication>

#include "core/gear/tag_fault.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
struct TagTrouble {
  Q_DECLARE_TR_FUNCTIONS(TagTrouble)
};
}  // namespace

QString tagFaultWords(const std::string& detail) {
  using gear::TagFault;
  const auto refusal = gear::refusalOf(detail);
  if (!refusal) return text(detail);
  const QString named = text(refusal->identifier);
  switch (refusal->fault) {
    case TagFault::nothing:
    case TagFault::blanks:
      return TagTrouble::tr("there is nothing in it");
    case TagFault::tooManyBytes:
    case TagFault::tooManyCharacters:
      return TagTrouble::tr("%1 characters, at most %2").arg(refusal->count).arg(refusal->most);
    case TagFault::notUtf8:
      return TagTrouble::tr("it is not text");
    case TagFault::controlCharacter:
      return TagTrouble::tr("a control character");
    case TagFault::nothingBehindPrefix:
      return TagTrouble::tr("nothing stands behind the prefix");
    case TagFault::unknownIdentifier:
      return TagTrouble::tr("identifier %1 is not one that says which helmet it is").arg(named);
    case TagFault::wrongLength:
      return refusal->least == refusal->most
                 ? TagTrouble::tr("identifier %1 has %2 characters and needs %3").arg(named).arg(refusal->count).arg(refusal->most)
                 : TagTrouble::tr("identifier %1 has %2 characters and needs %3 to %4")
                       .arg(named)
                       .arg(refusal->count)
                       .arg(refusal->least)
                       .arg(refusal->most);
    case TagFault::needsDigits:
      return TagTrouble::tr("identifier %1 begins with %2 digits, this one does not").arg(named).arg(refusal->count);
    case TagFault::strangeCharacter:
      return TagTrouble::tr("identifier %1 has a character that GS1 does not allow").arg(named);
    case TagFault::noCompanyPrefix:
      return TagTrouble::tr("identifier %1 does not begin with a company prefix").arg(named);
    case TagFault::noLeadingZero:
      return TagTrouble::tr("identifier %1 does not begin with 0").arg(named);
    case TagFault::noSuchMonth:
    case TagFault::noSuchDay:
      return TagTrouble::tr("identifier %1 is no day of the calendar").arg(named);
    case TagFault::twiceDifferent:
      return TagTrouble::tr("identifier %1 stands twice with different values").arg(named);
    case TagFault::badPercent:
      return TagTrouble::tr("identifier %1 has a % that is not followed by two hexadecimal digits").arg(named);
    case TagFault::noValueInPath:
      return TagTrouble::tr("identifier %1 has no value").arg(named);
    case TagFault::twoKeysInPath:
      return TagTrouble::tr("it names two things at once");
    case TagFault::belongsInPath:
      return TagTrouble::tr("identifier %1 stands behind the question mark and belongs before it").arg(named);
    case TagFault::noBracket:
      return TagTrouble::tr("an identifier in brackets is missing");
    case TagFault::noHost:
      return TagTrouble::tr("the address names no host");
    case TagFault::serialAlone:
      return TagTrouble::tr("serial 21 stands without item 01");
    case TagFault::namesNoHelmet:
      return TagTrouble::tr("nothing in it names a helmet");
  }
  return text(detail);
}

}  // namespace snugline::models
