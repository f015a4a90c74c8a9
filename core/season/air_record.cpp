// SPDX-License-Identifier: Apache-2.0
#include "core/season/air_record.h"

namespace snugline::season {

std::string_view code(Whereabouts w) {
  switch (w) {
    case Whereabouts::indoors:
      return "indoors";
    case Whereabouts::outside:
      return "outside";
    case Whereabouts::truck:
      return "truck";
  }
  return {};
}

std::optional<Whereabouts> whereaboutsFromCode(std::string_view word) {
  for (const Whereabouts w : {Whereabouts::indoors, Whereabouts::outside, Whereabouts::truck}) {
    if (code(w) == word) return w;
  }
  return std::nullopt;
}

std::string_view code(AirKind k) {
  switch (k) {
    case AirKind::set:
      return "set";
    case AirKind::read:
      return "read";
    case AirKind::changed:
      return "changed";
  }
  return {};
}

std::string_view code(AirCause c) {
  switch (c) {
    case AirCause::none:
      return "none";
    case AirCause::cold:
      return "cold";
    case AirCause::warm:
      return "warm";
    case AirCause::afterCold:
      return "after-cold";
    case AirCause::altitude:
      return "altitude";
    case AirCause::both:
      return "both";
    case AirCause::refilled:
      return "refilled";
  }
  return {};
}

std::optional<AirKind> airKindFromCode(std::string_view word) {
  for (const AirKind k : {AirKind::set, AirKind::read, AirKind::changed}) {
    if (code(k) == word) return k;
  }
  return std::nullopt;
}

std::optional<Pressure> ambientOf(const Conditions& conditions) { return air::ambientOf(conditions.ambient, conditions.elevation); }

Climate climateOf(const Conditions& conditions) {
  Climate climate;
  if (conditions.temperature) climate.temperatureMk = static_cast<std::int32_t>(conditions.temperature->mk);
  if (const auto ambient = ambientOf(conditions)) climate.ambientPa = static_cast<std::int32_t>(ambient->pa);
  return climate;
}

}  // namespace snugline::season
