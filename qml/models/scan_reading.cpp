// SPDX-License-Identifier: Apache-2.0
#include "qml/models/scan_reading.h"

#include <algorithm>

#include "core/gear/keyboard_layout.h"
#include "core/gear/own_serial.h"
#include "qml/models/dock_model.h"
#include "qml/models/dock_table.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {

QString layoutName(gear::KeyboardLayout layout) {
  switch (layout) {
    case gear::KeyboardLayout::german:
      return DockModel::tr("German");
    case gear::KeyboardLayout::french:
      return DockModel::tr("French");
    case gear::KeyboardLayout::spanish:
      return DockModel::tr("Spanish");
    case gear::KeyboardLayout::capsLock:
      return {};
  }
  return {};
}

QString layoutWords(const gear::LayoutGuess& guess, const QString& read) {
  const QString name = layoutName(guess.layout);
  if (name.isEmpty()) return DockModel::tr("Capitals and small letters are the wrong way round: caps lock is on, here or on the scanner.");
  if (guess.isAsRead) {
    return DockModel::tr(
               "%1 has a sign where a serial mostly has a dash. A scanner that is set to another keyboard than this device types that.")
        .arg(read);
  }
  if (guess.isScanner)
    return DockModel::tr("The scanner types as on another keyboard than this device (%1 there). Set both to the same one.").arg(name);
  return DockModel::tr("The scanner types as on another keyboard than this device (%1 here). Set both to the same one.").arg(name);
}

QString doubtWords(gear::TagDoubt doubt, const QString& read) {
  switch (doubt) {
    case gear::TagDoubt::tooShort:
      return DockModel::tr("Only \"%1\" was read. Is that its whole serial?").arg(read);
    case gear::TagDoubt::onlySigns:
      return DockModel::tr("\"%1\" has neither a letter nor a digit. Is that its serial?").arg(read);
  }
  return {};
}

}  // namespace

QString readableScan(std::string_view text) {
  std::string shown(text);
  std::replace(shown.begin(), shown.end(), '\x1d', ' ');
  return models::text(shown);
}

ScanReading readScan(const QString& scanned, Day today) {
  ScanReading reading;
  reading.read = bareScan(scanned);
  if (const auto guess = gear::wrongLayout(reading.read, today)) {
    reading.meant = guess->meant;
    (guess->isAsRead ? reading.doubt : reading.refusal) = layoutWords(*guess, readableScan(reading.read));
    if (!guess->isAsRead) return reading;
  }
  const auto tag = gear::parseTag(reading.read, today);
  if (!tag) {
    reading.refusal = DockModel::tr("Refused: %1").arg(errorSentence(tag.error()));
  } else if (!tag->isCheckDigitOk) {
    reading.refusal =
        DockModel::tr("Refused: the check digit of this tag does not agree. Scan it again, or type the serial from the plate.");
  } else if (const auto own = gear::readOwnSerial(reading.read); own && !own->isCheckOk) {
    reading.refusal = DockModel::tr("Refused: %1 looks like one of our own labels, and its last letter does not agree. Look at it again.")
                          .arg(readableScan(reading.read));
  } else {
    reading.tag = *tag;
    if (const auto doubt = gear::doubtOf(*tag)) reading.doubt = doubtWords(*doubt, readableScan(reading.read));
  }
  return reading;
}

}  // namespace snugline::models
