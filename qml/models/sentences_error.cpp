// SPDX-License-Identifier: Apache-2.0
// Every error code as a sentence that says what and where.
#include "sentences.h"

namespace snugline::models {

namespace {
// The last part of a path: people know the file, not the folders of the device.
QString leaf(const QString& place) {
  const qsizetype slash = place.lastIndexOf(QLatin1Char('/'), place.indexOf(QLatin1Char('#')) < 0 ? -1 : place.indexOf(QLatin1Char('#')));
  return slash < 0 ? place : place.mid(slash + 1);
}

QString because(const QString& sentence, const QString& detail) {
  return detail.isEmpty() ? sentence : ErrorWords::tr("%1 (%2)").arg(sentence, detail);
}

QString inFile(const QString& place, const QString& what) {
  return place.isEmpty() ? what : ErrorWords::tr("%1: %2").arg(leaf(place), what);
}
}  // namespace

QString ErrorWords::error(const Error& error) {
  const QString place = PlainWords::text(error.place);
  const QString detail = PlainWords::text(error.detail);
  switch (error.code) {
    case ErrorCode::notAQuantity:
      return inFile(place, ErrorWords::tr("\"%1\" is not a number with a unit").arg(detail));
    case ErrorCode::missingUnit:
      return inFile(place, ErrorWords::tr("\"%1\" needs a unit, such as mm or in").arg(detail));
    case ErrorCode::outOfRange:
      return inFile(place, because(ErrorWords::tr("That value is out of range"), detail));
    case ErrorCode::notADate:
      return inFile(place, ErrorWords::tr("\"%1\" is not a date").arg(detail));
    case ErrorCode::notJson:
      return inFile(place, because(ErrorWords::tr("This is not a model sheet file"), detail));
    case ErrorCode::missingKey:
      return inFile(place, ErrorWords::tr("This entry is missing"));
    case ErrorCode::wrongType:
      return inFile(place, because(ErrorWords::tr("This entry is of the wrong kind"), detail));
    case ErrorCode::unknownKey:
      return inFile(place, ErrorWords::tr("This entry is not known"));
    case ErrorCode::unknownWord:
      return inFile(place, because(ErrorWords::tr("This word is not known"), detail));
    case ErrorCode::duplicateKey:
      return inFile(place, ErrorWords::tr("This entry stands there twice"));
    case ErrorCode::inconsistent:
      return inFile(place, because(ErrorWords::tr("These entries contradict each other"), detail));
    case ErrorCode::unknownPort:
      return because(ErrorWords::tr("The model sheet has no such part"), detail);
    case ErrorCode::notATag:
      return because(ErrorWords::tr("This scan cannot be a serial tag"), detail);
    case ErrorCode::checkDigitWrong:
      return because(ErrorWords::tr("The check digit of this tag does not agree"), detail);
    case ErrorCode::notText:
      return inFile(place, ErrorWords::tr("This file is not text. Save the roster as CSV and choose that file"));
    case ErrorCode::badRow:
      return inFile(place, because(ErrorWords::tr("No row could be read"), detail));
    case ErrorCode::cannotRead:
      return inFile(place, because(ErrorWords::tr("The file cannot be read"), detail));
    case ErrorCode::cannotWrite:
      return inFile(place, because(ErrorWords::tr("Nothing could be written"), detail));
    case ErrorCode::diskFull:
      return inFile(place, ErrorWords::tr("The disk is full. Nothing was half written; make room and try again"));
    case ErrorCode::readOnly:
      return inFile(place, ErrorWords::tr("This place can only be read, not written"));
    case ErrorCode::notABook:
      return inFile(place, ErrorWords::tr("This file is not a Book"));
    case ErrorCode::damagedBook:
      return inFile(place, because(ErrorWords::tr("This Book is damaged"), detail));
    case ErrorCode::newerBook:
      return inFile(place, because(ErrorWords::tr("This Book was written by a newer Snugline"), detail));
    case ErrorCode::bookInUse:
      return inFile(place, ErrorWords::tr("Another program has this Book open"));
    case ErrorCode::fileExists:
      return inFile(place, ErrorWords::tr("There is a file of that name already"));
    case ErrorCode::notFound:
      return because(ErrorWords::tr("That is not in the Book"), place.isEmpty() ? detail : place);
    case ErrorCode::unknownDevice:
      return because(ErrorWords::tr("That device is not known to the Book"), place);
    case ErrorCode::brokenChain:
      return because(ErrorWords::tr("The record does not follow on from what is held"), place);
    case ErrorCode::badSignature:
      return because(ErrorWords::tr("A signature does not agree"), place);
    case ErrorCode::tooLong:
      return inFile(place, because(ErrorWords::tr("That is too long"), detail));
    case ErrorCode::notAllowed:
      return because(ErrorWords::tr("That cannot be done now"), detail);
    case ErrorCode::noKey:
      return because(ErrorWords::tr("The key of this device could not be read or made"), detail);
    case ErrorCode::outOfMemory:
      return ErrorWords::tr("The device has run out of memory. Nothing was written");
    case ErrorCode::internal:
      return because(ErrorWords::tr("Something went wrong inside Snugline. Nothing was written"), detail);
  }
  return {};
}

}  // namespace snugline::models
