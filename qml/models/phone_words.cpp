// SPDX-License-Identifier: Apache-2.0
#include "phone_words.h"

#include <QFile>
#include <QUrl>

#include "core/book/phone.h"
#include "sentences_gear.h"

namespace snugline::models {

QString PhoneWords::trouble(const Error& error) {
  namespace rule = book::rule;
  const std::string& why = error.detail;
  if (error.code == ErrorCode::notAllowed) {
    if (why == rule::kNotAJoinCode) return tr("This is not a join code, or a letter of it is wrong. Ask staff for a new one.");
    if (why == rule::kPhoneFileAltered) return tr("This file was altered or is not whole. Nothing of it is taken.");
    if (why == rule::kPhoneNotJoined)
      return tr("This phone is not joined to anybody here. Nothing of it is taken; show the athlete a new code.");
    if (why == rule::kPhoneOther) return tr("This file says something that its phone may not say. Nothing of it is taken.");
    if (why == rule::kPhoneTwice)
      return tr("Two phones were joined by one code. Nothing of the second is taken; show the athlete a new code.");
    if (why == rule::kAnswersNotOurs) return tr("This answer is for another phone or from other staff. Nothing of it is taken.");
    if (why == rule::kAnswersOld) return tr("This answer is older than the one that is here.");
  }
  switch (error.code) {
    case ErrorCode::notJson:
    case ErrorCode::missingKey:
    case ErrorCode::wrongType:
    case ErrorCode::unknownKey:
    case ErrorCode::unknownWord:
    case ErrorCode::duplicateKey:
    case ErrorCode::inconsistent:
    case ErrorCode::outOfRange:
    case ErrorCode::notADate:
    case ErrorCode::tooLong:
      return tr("This is not a file of an athlete's phone, or it was altered. Nothing of it is taken.");
    case ErrorCode::notAQuantity:
    case ErrorCode::missingUnit:
    case ErrorCode::unknownPort:
    case ErrorCode::notATag:
    case ErrorCode::checkDigitWrong:
    case ErrorCode::notText:
    case ErrorCode::badRow:
    case ErrorCode::cannotRead:
    case ErrorCode::cannotWrite:
    case ErrorCode::diskFull:
    case ErrorCode::readOnly:
    case ErrorCode::notABook:
    case ErrorCode::damagedBook:
    case ErrorCode::newerBook:
    case ErrorCode::bookInUse:
    case ErrorCode::fileExists:
    case ErrorCode::notFound:
    case ErrorCode::unknownDevice:
    case ErrorCode::brokenChain:
    case ErrorCode::badSignature:
    case ErrorCode::notAllowed:
    case ErrorCode::noKey:
    case ErrorCode::outOfMemory:
    case ErrorCode::internal:
      break;
  }
  return errorSentence(error);
}

QString PhoneWords::localFile(const QString& pathOrUrl) {
  return pathOrUrl.startsWith(QLatin1String("file:")) ? QUrl(pathOrUrl).toLocalFile() : pathOrUrl.trimmed();
}

Result<std::string> PhoneWords::readFile(const QString& pathOrUrl) {
  QFile file(localFile(pathOrUrl));
  if (!file.open(QIODevice::ReadOnly)) return fail(ErrorCode::cannotRead, file.fileName().toStdString(), file.errorString().toStdString());
  const QByteArray bytes = file.read(static_cast<qint64>(book::kPhoneFileBytes) + 1);
  if (bytes.size() > static_cast<qsizetype>(book::kPhoneFileBytes)) return fail(ErrorCode::tooLong, file.fileName().toStdString());
  return bytes.toStdString();
}

}  // namespace snugline::models
