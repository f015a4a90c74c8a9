// SPDX-License-Identifier: Apache-2.0
// Purpose: the steps that journeys of the Say door share: a ground, a code, the way in, and being somebody. Thread: GUI thread.
#pragma once

#include <QTemporaryDir>

#include "field.h"
#include "qml/models/shell.h"

namespace snugline::field {

inline constexpr const char* kCode = "480219";  // invented

struct Ground {
  QTemporaryDir folder;
  Ground() { makeBook(folder.path().toStdString()); }
  [[nodiscard]] std::string path() const { return folder.path().toStdString(); }
};

inline bool type(Field& field, const QString& digits) {
  for (const QChar digit : digits) {
    if (!field.touch(QStringLiteral("key-") + digit)) return false;
  }
  return true;
}

inline bool enterCode(Field& field, const QString& code) {
  models::LockModel& lock = *field.app().shell().lock();
  return type(field, code) && field.touch("key-enter") && field.until([&] { return !lock.isBusy(); });
}

// As the first admin would: Say asks for a code, it is set twice, and Say opens.
inline bool openSay(Field& field) {
  if (!field.touch("door-say") || !field.touch("person-KP") || !enterCode(field, kCode) || !enterCode(field, kCode)) return false;
  if (!field.until([&] { return field.screen() == "people"; })) return false;
  field.press(Qt::Key_Escape);
  return field.touch("door-say") && field.until([&] { return field.screen() == "say"; });
}

// The last digit opens the helmet.
inline bool iAm(Field& field, const QString& number) {
  return type(field, number) && field.until([&] { return field.app().shell().say()->step() == "where"; });
}

// The staff's side again, by the code.
inline bool backToStaff(Field& field) {
  return field.touch("say-staff") && field.until([&] { return field.screen() == "locked"; }) && enterCode(field, kCode) &&
         field.until([&] { return field.screen() == "doors"; });
}

}  // namespace snugline::field
