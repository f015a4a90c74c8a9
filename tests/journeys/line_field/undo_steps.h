// SPDX-License-Identifier: Apache-2.0
// Purpose: the steps that the undo journey and its killed lives share: a spare like the helmet of 57, and the swap for it. Thread: GUI
// thread.
#pragma once

#include <string>

#include "field.h"
#include "qml/models/shell.h"

namespace snugline::field {

inline std::string serialOf(const Field& field, const std::string& jersey) {
  const season::AthleteRecord* athlete = field.athlete(jersey);
  return athlete == nullptr || athlete->units.size() != 1 ? std::string() : field.views().unit(athlete->units.front())->serial;
}

// "S-0001", of the same model and size, all sound and in service.
inline bool addSpare(Field& field) {
  const season::UnitRecord* worn = field.views().unit(field.athlete("57")->units.front());
  book::Arrival arrival;
  arrival.tag = gear::parseTag("S-0001", kToday).value();
  arrival.sheet = worn->sheet;
  arrival.size = worn->size;
  arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
  for (auto& point : arrival.points) point.state = gear::PointState::sound;
  arrival.isGroup = true;
  bool isDone = false, isIn = false;
  field.app().desk().submit([arrival](const season::Views& views, Instant now) { return book::takeIn(views, arrival, dayOf(now)); },
                            &field.app().desk(),
                            [&](const Result<book::Appended>& outcome) {
                              isDone = true;
                              isIn = outcome.has_value();
                            });
  return field.until([&] { return isDone; }) && isIn;
}

// From the page of 57 to the first question of the spare.
inline bool swapForSpare(Field& field) {
  return field.touch("choose") && field.touch("shell") && field.touch("hands") && field.touch("spare-S-0001") &&
         field.until([&] { return field.screen() == "guide"; });
}

}  // namespace snugline::field
