// SPDX-License-Identifier: Apache-2.0
// Purpose: how much one pump does, learned from the Book: millimetres of brow gap per crown pump, kilopascals per pump of a port, for each
// sheet. Bayesian linear regression through the origin, change = beta * pumps + noise, with the noise known and a normal prior for beta:
// the posterior is normal, 1/sd^2 = 1/priorSd^2 + sum(pumps^2)/noise^2, mean = sd^2 (priorMean/priorSd^2 + sum(pumps*change)/noise^2)
// (Box and Tiao, Bayesian Inference in Statistical Analysis, 1973, normal theory with known variance).
// All that is kept are three whole-number sums, so that adding a step and taking it away again is exact in any order.
// Shown as "about 2 pumps", never applied by itself. Pumps are signed: in above zero, out below.
// Units: micrometres or pascals, whole. Ranges: one step is at most kPumpsMost pumps; more is refused, the sums stay far from overflow
// for a billion steps. Errors: add and remove answer false. Thread: plain values.
#pragma once

#include <cstdint>
#include <optional>

#include "core/gear/model_sheet.h"
#include "core/quantity/quantity.h"

namespace snugline::air {

inline constexpr int kPumpsMost = 50;                   // in one step (ours)
inline constexpr std::int64_t kChangeMost = 2'000'000;  // um or Pa in one step (ours): two metres or two megapascals are no step

// What was seen of one response of one sheet.
struct PumpEvidence {
  std::int64_t count = 0;
  std::int64_t pumpsSquared = 0;      // sum of pumps * pumps
  std::int64_t pumpsTimesChange = 0;  // sum of pumps * change, um or Pa
  // No pumps say nothing and are refused, as is what is beyond the limits.
  bool add(int pumps, std::int64_t change);
  bool remove(int pumps, std::int64_t change);  // what was added before; false when the count is zero
  friend bool operator==(const PumpEvidence&, const PumpEvidence&) = default;
};

// What is believed before anything was seen, and how much a single look scatters; um or Pa.
struct PumpPrior {
  double mean = 0, sd = 1, noise = 1;
};
// Ours: a hand pump moves the shell by a few millimetres; the gap is read to about two.
inline constexpr PumpPrior kBrowPrior{2500, 1500, 2500};
// Ours: a stroke gives a few kilopascals, more in a small jaw bladder; a needle lets some air out at each reading.
inline constexpr PumpPrior kCrownAirPrior{3000, 2000, 1500};
inline constexpr PumpPrior kSidesAirPrior{3000, 2000, 1500};
inline constexpr PumpPrior kJawAirPrior{4000, 2500, 1500};
[[nodiscard]] const PumpPrior& airPrior(gear::Port port);

struct PumpResponse {
  double mean = 0, sd = 0;  // of one pump, um or Pa
  std::int64_t count = 0;   // steps seen; 0: the prior alone
};
[[nodiscard]] PumpResponse respond(const PumpPrior& prior, const PumpEvidence& evidence);

// About how many pumps move by so much: whole and signed, nearest; at least one away from zero for a change that is not zero. low and
// high (by size) come from the 95 % interval of beta; high is missing where that interval reaches zero. Nothing where the mean of beta is
// not above zero (air in that made less of it) or the number is beyond kPumpsMost.
struct PumpCount {
  int about = 0;
  int low = 0;
  std::optional<int> high;
  friend bool operator==(const PumpCount&, const PumpCount&) = default;
};
[[nodiscard]] std::optional<PumpCount> pumpsFor(const PumpResponse& response, std::int64_t change);

}  // namespace snugline::air
