// SPDX-License-Identifier: Apache-2.0
// Purpose: what is shown is what a fresh start would show at this moment. The Book is copied through its own backup; a fresh process
// (`snug due`, `snug show`) and fresh models over the copy say what is so; every difference to what the screens hold is named.
// Thread: GUI thread; runs the event loop while it waits.
#pragma once

#include <functional>
#include <memory>

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include "moving_time.h"
#include "qml/models/athlete_model.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/doors_model.h"
#include "qml/models/line_model.h"
#include "qml/models/units_model.h"
#include "qml/models/weather_model.h"

namespace snugline::eyes {

// What the screens look at.
struct Glass {
  models::Desk* desk = nullptr;
  models::Choices* choices = nullptr;
  models::WeatherModel* weather = nullptr;
  models::LineModel* line = nullptr;
  models::DoorsModel* doors = nullptr;
  models::AthleteModel* athlete = nullptr;  // null: no athlete's page is shown
  models::UnitsModel* units = nullptr;      // null: no helmet is shown
};

bool until(const std::function<bool()>& isSo);  // false when patience ran out
bool settle(models::Desk& desk);                // all that was handed to the Book is on disk and in the mirror

// A Book made from a backup of that one, for another process or another Desk. Empty: why stands on stderr.
[[nodiscard]] QString copyOf(models::Desk& desk, const QTemporaryDir& folder, const std::shared_ptr<MovingTime>& time);

// Every difference, one a line; empty where all is true.
[[nodiscard]] QStringList untruths(const Glass& shown, const std::shared_ptr<MovingTime>& time);

// The same for two sets of models of which the second one is fresh.
[[nodiscard]] QStringList differences(const Glass& shown, const Glass& fresh);

}  // namespace snugline::eyes
