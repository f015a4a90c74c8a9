// SPDX-License-Identifier: Apache-2.0
// Purpose: what the files of the Say door share: the places of the drawing, by name, and what is done with what was written or typed.
// Thread: GUI thread.
#pragma once

#include <array>
#include <functional>
#include <string>

#include <QString>

#include "core/fit/marks.h"
#include "desk.h"

namespace snugline::models {

struct Place {
  const char* name;
  fit::Mark mark;
  fit::Side side;
};
// In the order of the nine marks; where left and right are told apart, each has its own place.
inline constexpr std::array<Place, 12> kPlaces{{{"brow", fit::Mark::brow, fit::Side::both},
                                                {"ears-left", fit::Mark::ears, fit::Side::left},
                                                {"ears-right", fit::Mark::ears, fit::Side::right},
                                                {"nape", fit::Mark::nape, fit::Side::both},
                                                {"chin", fit::Mark::chin, fit::Side::both},
                                                {"straps", fit::Mark::straps, fit::Side::both},
                                                {"jaw-left", fit::Mark::jaw, fit::Side::left},
                                                {"jaw-right", fit::Mark::jaw, fit::Side::right},
                                                {"crown", fit::Mark::crown, fit::Side::both},
                                                {"sides-left", fit::Mark::sides, fit::Side::left},
                                                {"sides-right", fit::Mark::sides, fit::Side::right},
                                                {"hold", fit::Mark::hold, fit::Side::both}}};

[[nodiscard]] const Place* placeOf(const QString& name);  // null where there is none
[[nodiscard]] QString oneLine(const QString& words);      // what was typed, without line ends, at most kWordsLimit characters
[[nodiscard]] Desk::Done firstFact(std::function<void(const Result<std::string>& fact)> done);

}  // namespace snugline::models
