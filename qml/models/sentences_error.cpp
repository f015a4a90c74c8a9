// SPDX-License-Identifier: Apache-2.0
// Every error code as a sentence that says what and where.
#include <algorithm>
#include <initializer_list>

#include <QCoreApplication>

#include "core/book/acts_season.h"
#include "core/book/acts_sheets.h"
#include "core/book/privacy_acts.h"
#include "core/book/rights.h"
#include "core/book/undo.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
struct Trouble {
  Q_DECLARE_TR_FUNCTIONS(Trouble)
};

// The last part of a path: people know the file, not the folders of the device.
QString leaf(const QString& place) {
  const qsizetype slash = place.lastIndexOf(QLatin1Char('/'), place.indexOf(QLatin1Char('#')) < 0 ? -1 : place.indexOf(QLatin1Char('#')));
  return slash < 0 ? place : place.mid(slash + 1);
}

QString because(const QString& sentence, const QString& detail) {
  return detail.isEmpty() ? sentence : Trouble::tr("%1 (%2)").arg(sentence, detail);
}

QString inFile(const QString& place, const QString& what) { return place.isEmpty() ? what : Trouble::tr("%1: %2").arg(leaf(place), what); }
}  // namespace

namespace {
// What came after an act and rests on it, by the kind of its fact.
QString sinceWords(const std::string& kind) {
  const auto isAny = [&](std::initializer_list<const char*> kinds) { return std::find(kinds.begin(), kinds.end(), kind) != kinds.end(); };
  if (isAny({"unit-paired", "unit-unpaired", "unit-moved", "unit-collected"}))
    return Trouble::tr("the helmet has changed hands or place since");
  if (isAny({"check-begun", "line-seen"})) return Trouble::tr("a check was begun since");
  if (isAny({"hair-seen", "fitting-set", "mark-seen", "adjusted", "air-read", "question-answered", "check-answered", "points-seen"}))
    return Trouble::tr("the check went on since");
  if (kind == "check-ended") return Trouble::tr("the check has ended since");
  if (kind == "unit-held") return Trouble::tr("a helmet is held because of it");
  if (kind == "unit-received") return Trouble::tr("a helmet was taken in under it since");
  if (isAny({"season-closed", "practice-set"})) return Trouble::tr("the season went on since");
  return Trouble::tr("something recorded since rests on it");
}

// A rule that refused, by its name in core/book/acts.h.
QString refusedBy(const std::string& name, const std::string& place) {
  namespace rule = book::rule;
  const auto point = gear::pointFromCode(place);
  const QString what = point ? pointName(*point) : text(place);
  if (name == rule::kUnitHeld) return Trouble::tr("%1 is on hold. Release the hold first").arg(what);
  if (name == rule::kUnitAway) return Trouble::tr("%1 is away. Note that it is back first").arg(what);
  if (name == rule::kUnitRetired) return Trouble::tr("%1 is retired and stays so").arg(what);
  if (name == rule::kNotInService) return Trouble::tr("%1 is not in service. Take it in at the Dock first").arg(what);
  if (name == rule::kLabelLapsed) return Trouble::tr("The label of %1 has lapsed").arg(what);
  if (name == rule::kLabelMissing) return Trouble::tr("%1 has no certification label").arg(what);
  if (name == rule::kLabelUnreadable) return Trouble::tr("The label of %1 cannot be read").arg(what);
  if (name == rule::kNobodyHasIt) return Trouble::tr("Nobody has %1").arg(what);
  if (name == rule::kLabelUnknown) return Trouble::tr("The label of %1 has not been read yet").arg(what);
  if (name == rule::kLabelDisputed) return Trouble::tr("Two readings of the label of %1 differ. Read it again").arg(what);
  if (name == rule::kPointUnseen) return Trouble::tr("%1 has not been seen yet").arg(what);
  if (name == rule::kPointFault) return Trouble::tr("%1 has an open fault").arg(what);
  if (name == rule::kBrokeSaid) return Trouble::tr("The athlete said that something broke. See the seven points first");
  if (name == rule::kUnwellSaid) return Trouble::tr("See the athlete now. Equipment work waits");
  if (name == rule::kNeedsStaff) return Trouble::tr("Staff do this. Ask one of them to sign here");
  if (name == rule::kNeedsAdmin) return Trouble::tr("An admin does this. Ask one of them to sign here");
  if (name == rule::kNeedsPractitioner) return Trouble::tr("An athletic trainer or designated health care professional closes this");
  if (name == rule::kStaysSaid) return Trouble::tr("A hit that was said stays. Staff ask the athlete and close it");
  if (name == rule::kLastAdmin) return Trouble::tr("One admin must remain: somebody gives out codes");
  if (name == rule::kReportOpen) return Trouble::tr("The athlete said something that nobody has seen to yet");
  if (name == rule::kNoUnit) return Trouble::tr("No helmet is paired with this athlete");
  if (name == rule::kTwoUnits) return Trouble::tr("Two helmets are noted for this athlete. Settle which one is worn");
  if (name == rule::kTwoAthletes) return Trouble::tr("Two athletes are noted for this helmet. Settle who wears it");
  if (name == rule::kNeverFitted) return Trouble::tr("This helmet was never fitted on this athlete. Begin with a first fit");
  if (name == rule::kCheckOpen) return Trouble::tr("A check is still open for this athlete");
  if (name == rule::kCrackHold)
    return Trouble::tr(
        "A hold on the shell ends when the recertifying firm or the maker sends it back with paper and its label is read anew, or when it "
        "is retired");
  if (name == rule::kLabelNotGood) return Trouble::tr("The label of %1 is not good today. Read a good one first").arg(what);
  if (name == rule::kPointsAfterReport) return Trouble::tr("Check the seven points of %1 first: somebody reported on it").arg(what);
  if (name == rule::kReturnUnsaid) return Trouble::tr("%1 is away. Say first what was done to it").arg(what);
  if (name == rule::kNotAway) return Trouble::tr("%1 is not away").arg(what);
  if (name == rule::kAlreadyClosed) return Trouble::tr("That is closed already");
  if (name == rule::kNothingSaid) return Trouble::tr("Nothing was said yet");
  if (name == rule::kBeforeRefill) return Trouble::tr("This reading would be older than the last refill. Look at the clock of this device");
  if (name == rule::kBeforeReading) return Trouble::tr("This reading would be older than the last one. Look at the clock of this device");
  if (name == rule::kWarningChanged) return Trouble::tr("The text was changed while it was read. Read it again");
  if (name == rule::kWarningSigned) return Trouble::tr("That is signed already this season");
  if (name == rule::kNoWitness) return Trouble::tr("Say first who signs for staff: whoever stands by is the witness");
  if (name == rule::kSheetIdTaken)
    return Trouble::tr("Another sheet that counts has the short name %1. Give this one another, or change that sheet instead").arg(what);
  if (name == rule::kSheetReplaced) return Trouble::tr("%1 was changed meanwhile. Look again at what counts now").arg(what);
  if (name == rule::kSizeInUse) return Trouble::tr("Helmets have a size that this sheet lacks: %1").arg(what);
  if (name == rule::kSeasonOpen) return Trouble::tr("Season %1 is still open. Close it first").arg(what);
  if (name == rule::kSeasonTaken) return Trouble::tr("There was a season %1 already. Give the next one another name").arg(what);
  if (name == rule::kRestsOnIt) return Trouble::tr("That cannot be undone any more: %1", "what happened since").arg(sinceWords(place));
  if (name == rule::kOffRoster) return Trouble::tr("This athlete is off the roster");
  return because(Trouble::tr("That cannot be done now"), text(name));
}
}  // namespace

QString errorSentence(const Error& error) {
  const QString place = text(error.place);
  const QString detail = text(error.detail);
  switch (error.code) {
    case ErrorCode::notAQuantity:
      return inFile(place, Trouble::tr("\"%1\" is not a number with a unit").arg(detail));
    case ErrorCode::missingUnit:
      return inFile(place, Trouble::tr("\"%1\" needs a unit, such as mm or in").arg(detail));
    case ErrorCode::outOfRange:
      return inFile(place, because(Trouble::tr("That value is out of range"), detail));
    case ErrorCode::notADate:
      return inFile(place, Trouble::tr("\"%1\" is not a date").arg(detail));
    case ErrorCode::notJson:
      return inFile(place, because(Trouble::tr("This is not a model sheet file"), detail));
    case ErrorCode::missingKey:
      return inFile(place, Trouble::tr("This entry is missing"));
    case ErrorCode::wrongType:
      return inFile(place, because(Trouble::tr("This entry is of the wrong kind"), detail));
    case ErrorCode::unknownKey:
      return inFile(place, Trouble::tr("This entry is not known"));
    case ErrorCode::unknownWord:
      return inFile(place, because(Trouble::tr("This word is not known"), detail));
    case ErrorCode::duplicateKey:
      return inFile(place, Trouble::tr("This entry stands there twice"));
    case ErrorCode::inconsistent:
      return inFile(place, because(Trouble::tr("These entries contradict each other"), detail));
    case ErrorCode::unknownPort:
      return because(Trouble::tr("The model sheet has no such part"), detail);
    case ErrorCode::notATag:
      return because(Trouble::tr("This scan cannot be a serial tag"), tagFaultWords(error.detail));
    case ErrorCode::checkDigitWrong:
      return because(Trouble::tr("The check digit of this tag does not agree"), detail);
    case ErrorCode::notText:
      return inFile(place, Trouble::tr("This file is not text. Save the roster as CSV and choose that file"));
    case ErrorCode::badRow:
      return inFile(place, because(Trouble::tr("No row could be read"), detail));
    case ErrorCode::cannotRead:
      return inFile(place, because(Trouble::tr("The file cannot be read"), detail));
    case ErrorCode::cannotWrite:
      return inFile(place, because(Trouble::tr("Nothing could be written"), detail));
    case ErrorCode::diskFull:
      return inFile(place, Trouble::tr("The disk is full. Nothing was half written; make room and try again"));
    case ErrorCode::readOnly:
      return inFile(place, Trouble::tr("This place can only be read, not written"));
    case ErrorCode::notABook:
      return inFile(place, Trouble::tr("This file is not a Book"));
    case ErrorCode::damagedBook:
      return inFile(place, because(Trouble::tr("This Book is damaged"), detail));
    case ErrorCode::newerBook:
      return inFile(place, because(Trouble::tr("This Book was written by a newer Snugline"), detail));
    case ErrorCode::bookInUse:
      return inFile(place, Trouble::tr("Another program has this Book open"));
    case ErrorCode::fileExists:
      return inFile(place, Trouble::tr("There is a file of that name already"));
    case ErrorCode::notFound:
      return because(Trouble::tr("That is not in the Book"), place.isEmpty() ? detail : place);
    case ErrorCode::unknownDevice:
      return because(Trouble::tr("That device is not known to the Book"), place);
    case ErrorCode::brokenChain:
      return because(Trouble::tr("The record does not follow on from what is held"), place);
    case ErrorCode::badSignature:
      return because(Trouble::tr("A signature does not agree"), place);
    case ErrorCode::tooLong:
      return inFile(place, because(Trouble::tr("That is too long"), detail));
    case ErrorCode::notAllowed:
      return refusedBy(error.detail, error.place);
    case ErrorCode::noKey:
      return because(Trouble::tr("The key of this device could not be read or made"), detail);
    case ErrorCode::outOfMemory:
      return Trouble::tr("The device has run out of memory. Nothing was written");
    case ErrorCode::internal:
      return because(Trouble::tr("Something went wrong inside Snugline. Nothing was written"), detail);
  }
  return {};
}

}  // namespace snugline::models
