// SPDX-License-Identifier: Apache-2.0
// Purpose: what the Dock's model holds, for its own sources only.
#pragma once

#include <deque>
#include <string>
#include <vector>

#include "qml/models/desk.h"
#include "qml/models/dock_model.h"
#include "qml/models/dock_table.h"

namespace snugline::models {

struct DockModel::Body {
  Desk* desk;
  const Choices* choices;
  DockTable table;
  bool isBusy = false;
  int faultOpen = -1;
  bool isJustScanned = false;   // the one on the table is in hand; not after a restart
  std::deque<QString> waiting;  // tags that came while one was written
  QString refusal;
  std::string meant;      // what the scanner sent, where it types as on another keyboard
  std::string doubted;    // what was read, where it may be a slip
  std::string askedScan;  // a tag that means several helmets, and which
  std::vector<std::string> asked;
  bool isAskedBySerial = false;

  [[nodiscard]] const season::UnitRecord* unit() const { return table.unit(desk->views()); }
  [[nodiscard]] book::Arrival arrival() const { return table.arrival(desk->views()); }
  [[nodiscard]] book::Outcome outcome() const { return book::outcomeOf(desk->views(), arrival(), desk->today()); }
};

}  // namespace snugline::models
