// SPDX-License-Identifier: Apache-2.0
// Purpose: one check, walked as a fitter would: ask the guide for the next step, answer, take its first advice, see again what it reopened.
// The answers become facts through core/book/acts.h; the verdict is the guide's. Thread: one thread.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "demo/generator/dice.h"
#include "demo/generator/scribe.h"

namespace snugline::demo {

struct OffMark {
  fit::Mark mark = fit::Mark::brow;
  fit::Finding finding = fit::Finding::over;
  fit::Side side = fit::Side::both;
  fit::HoldHow how = fit::HoldHow::unsaid;
};
struct CheckPlan {
  fit::CheckKind kind = fit::CheckKind::look;
  bool isHairWet = true;
  std::vector<OffMark> off;                                  // found once each, then put right
  std::optional<std::pair<gear::Point, std::string>> fault;  // found at the points
  bool isLeftOff = false;                                    // ended at the first mark that is off: adjust
  std::optional<int> touches;                                // broken off after so many, not ended
};
struct CheckEndedAs {
  fit::Verdict verdict = fit::Verdict::unfinished;
  Instant at;
};
// The athlete must be paired in the views already. `at` is when it begins.
CheckEndedAs walkCheck(Scribe& scribe, Dice& dice, const std::string& athlete, const CheckPlan& plan, Instant at, const std::string& who);

}  // namespace snugline::demo
