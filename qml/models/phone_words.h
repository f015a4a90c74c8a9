// SPDX-License-Identifier: Apache-2.0
// Purpose: what the phone's side and the staff's side of an athlete's own phone share: refusals in words, and small files of its exchange.
// Errors of readFile: cannotRead, tooLong. Thread: GUI thread (words), any (readFile).
#pragma once

#include <string>

#include <QCoreApplication>
#include <QString>

#include "core/quantity/result.h"

namespace snugline::models {

struct PhoneWords {
  Q_DECLARE_TR_FUNCTIONS(PhoneWords)
 public:
  static QString trouble(const Error& error);
  static QString localFile(const QString& pathOrUrl);
  static Result<std::string> readFile(const QString& pathOrUrl);
};

}  // namespace snugline::models
