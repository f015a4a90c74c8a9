// SPDX-License-Identifier: Apache-2.0
// Purpose: words about photos of gear: what one shows, when and by whom it was taken, and why one could not be taken, kept, shown or
// deleted. Thread: GUI thread.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QVariantList>

#include "core/ports/tag_port.h"
#include "core/quantity/result.h"
#include "core/season/record.h"

namespace snugline::models {

struct PhotoWords {
  Q_DECLARE_TR_FUNCTIONS(PhotoWords)
 public:
  // {fact, photo, title, seen, hold}, latest first; title: "Shell: crack at the rim".
  static QVariantList list(const season::Views& views, const season::UnitRecord& unit, Day today);
  static QString title(const season::PhotoRecord& photo);
  static QString trouble(const Error& error);             // any error, in words about pictures where it is about one
  static QString camera(ports::CameraState state);        // what to do, or why it sees nothing
  static bool isCameraTrouble(ports::CameraState state);  // that sentence is about something that does not work
};

}  // namespace snugline::models
