// SPDX-License-Identifier: Apache-2.0
#include "core/air/pump_response.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace snugline::air {

namespace {

constexpr double kNormal95 = 1.959963984540054;  // standard normal quantile of 0.975

bool isStep(int pumps, std::int64_t change) {
  return pumps != 0 && pumps >= -kPumpsMost && pumps <= kPumpsMost && change >= -kChangeMost && change <= kChangeMost;
}

}  // namespace

bool PumpEvidence::add(int pumps, std::int64_t change) {
  if (!isStep(pumps, change)) return false;
  const std::int64_t n = pumps;
  ++count;
  pumpsSquared += n * n;
  pumpsTimesChange += n * change;
  return true;
}

bool PumpEvidence::remove(int pumps, std::int64_t change) {
  const std::int64_t n = pumps;
  if (!isStep(pumps, change) || count <= 0 || pumpsSquared < n * n) return false;
  --count;
  pumpsSquared -= n * n;
  pumpsTimesChange -= n * change;
  return true;
}

const PumpPrior& airPrior(gear::Port port) {
  switch (port) {
    case gear::Port::crown:
      return kCrownAirPrior;
    case gear::Port::sides:
      return kSidesAirPrior;
    case gear::Port::jawLeft:
    case gear::Port::jawRight:
      return kJawAirPrior;
  }
  return kCrownAirPrior;
}

PumpResponse respond(const PumpPrior& prior, const PumpEvidence& evidence) {
  const double noise = prior.noise * prior.noise;
  const double before = 1.0 / (prior.sd * prior.sd);
  const double precision = before + static_cast<double>(evidence.pumpsSquared) / noise;
  const double sum = prior.mean * before + static_cast<double>(evidence.pumpsTimesChange) / noise;
  return {sum / precision, std::sqrt(1.0 / precision), evidence.count};
}

std::optional<PumpCount> pumpsFor(const PumpResponse& response, std::int64_t change) {
  if (change == 0) return PumpCount{0, 0, 0};
  if (!(response.mean > 0)) return std::nullopt;
  const double amount = std::abs(static_cast<double>(change));
  const double about = std::max(1.0, std::round(amount / response.mean));
  if (about > kPumpsMost) return std::nullopt;
  const int sign = change < 0 ? -1 : 1;
  PumpCount n;
  n.about = sign * static_cast<int>(about);
  n.low = sign * static_cast<int>(std::clamp(std::floor(amount / (response.mean + kNormal95 * response.sd)), 1.0, about));
  const double least = response.mean - kNormal95 * response.sd;
  if (least > 0 && std::ceil(amount / least) <= kPumpsMost) n.high = sign * static_cast<int>(std::max(about, std::ceil(amount / least)));
  return n;
}

}  // namespace snugline::air
