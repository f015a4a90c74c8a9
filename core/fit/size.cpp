// SPDX-License-Identifier: Apache-2.0
#include "core/fit/size.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <new>
#include <numbers>

namespace snugline::fit {

namespace {

constexpr std::size_t kMostReadings = 20;

double lowerTail(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

// Normal mass between a and b in standard units. Taken from the nearer tail, so that a far band does not drown in 1 - 1.
double mass(double a, double b) {
  if (b <= a) return 0;
  return a > 0 ? lowerTail(-a) - lowerTail(-b) : lowerTail(b) - lowerTail(a);
}

double middleOf(std::vector<Length> readings) {
  std::sort(readings.begin(), readings.end());
  const std::size_t half = readings.size() / 2;
  // The median of two is their mean, so that one rule serves every count.
  if (readings.size() % 2 == 1) return static_cast<double>(readings[half].um);
  return static_cast<double>(readings[half - 1].um + readings[half].um) / 2.0;
}

// Half of an overlap goes to each neighbour; a band overlaps its neighbours at most (model sheet format).
std::vector<SizeOdds> splitBands(const std::vector<gear::SizeBand>& sizes) {
  std::vector<SizeOdds> bands;
  bands.reserve(sizes.size());
  for (const gear::SizeBand& size : sizes) {
    SizeOdds band{size.name, 0, size.low, size.high};
    if (!bands.empty() && bands.back().high > band.low) {
      const Length middle{(bands.back().high.um + band.low.um) / 2};
      bands.back().high = middle;
      band.low = middle;
    }
    bands.push_back(std::move(band));
  }
  return bands;
}

double distanceToMiddle(const gear::SizeBand& size, double um) {
  return std::abs(um - static_cast<double>(size.low.um + size.high.um) / 2.0);
}

// Of the two likeliest sizes the one whose middle, as the maker prints the band, is nearer.
std::string startWith(const gear::ModelSheet& sheet, const std::vector<SizeOdds>& odds, double um) {
  std::vector<std::size_t> order(odds.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return odds[a].odds > odds[b].odds; });
  if (order.empty() || odds[order[0]].odds <= 0) return {};
  std::size_t best = order[0];
  if (order.size() > 1 && odds[order[1]].odds > 0 && distanceToMiddle(sheet.sizes[order[1]], um) < distanceToMiddle(sheet.sizes[best], um))
    best = order[1];
  return odds[best].size;
}

Error rangeError(const char* place, Length value, Length low, Length high) {
  return {ErrorCode::outOfRange, place, exact(value) + ", " + exact(low) + ", " + exact(high)};
}

}  // namespace

Result<SizeAnswer> sizeOf(const gear::ModelSheet& sheet, const std::vector<Length>& readings, Length tem) try {
  if (readings.empty() || readings.size() > kMostReadings)
    return fail(ErrorCode::outOfRange, {}, std::to_string(readings.size()) + " readings, 1, " + std::to_string(kMostReadings));
  for (const Length& reading : readings)
    if (reading < kTapeLowest || reading > kTapeHighest) return tl::unexpected<Error>(rangeError("", reading, kTapeLowest, kTapeHighest));
  if (tem < kTemLowest || tem > kTemHighest) return tl::unexpected<Error>(rangeError("tem", tem, kTemLowest, kTemHighest));

  const double um = middleOf(readings);
  const double error = static_cast<double>(tem.um) / std::sqrt(static_cast<double>(readings.size()));
  const auto inErrors = [&](Length edge) { return (static_cast<double>(edge.um) - um) / error; };
  SizeAnswer answer;
  answer.circumference = Length{std::llround(um)};
  answer.uncertainty = Length{std::llround(error)};
  const auto [least, most] = std::minmax_element(readings.begin(), readings.end());
  answer.isRetake = most->um - least->um > kRetakeSpread.um;
  answer.odds = splitBands(sheet.sizes);

  // What no band holds is summed by itself: 1 minus the rest would lose a small remainder.
  answer.none = answer.odds.empty() ? 1.0 : lowerTail(inErrors(answer.odds.front().low)) + lowerTail(-inErrors(answer.odds.back().high));
  double best = 0;
  for (std::size_t i = 0; i < answer.odds.size(); ++i) {
    SizeOdds& band = answer.odds[i];
    band.odds = mass(inErrors(band.low), inErrors(band.high));
    if (i > 0) answer.none += mass(inErrors(answer.odds[i - 1].high), inErrors(band.low));
    if (band.odds > best) {
      best = band.odds;
      answer.size = band.size;
    }
  }
  if (answer.none > best || answer.isRetake) answer.size.clear();
  if (answer.isRetake) return answer;
  // A head that is surely off the chart is not between sizes.
  answer.isBetween = std::max(best, answer.none) < kBetweenBelow;
  answer.startWith = answer.isBetween ? startWith(sheet, answer.odds, um) : answer.size;
  return answer;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

constexpr double kMedianOfNormal = 0.6744897501960817;  // of the amount of a standard normal

std::optional<Length> technicalError(const std::vector<TapePair>& pairs) {
  if (pairs.size() < static_cast<std::size_t>(kPairsForOwnTem)) return std::nullopt;
  std::vector<double> apart;
  apart.reserve(pairs.size());
  for (const TapePair& pair : pairs) apart.push_back(std::abs(static_cast<double>(pair.first.um - pair.second.um)));
  std::sort(apart.begin(), apart.end());
  const double median = (apart[(apart.size() - 1) / 2] + apart[apart.size() / 2]) / 2;
  const double most = std::max(kApart * median / kMedianOfNormal, static_cast<double>(kRetakeSpread.um));
  double squares = 0, count = 0;
  for (const double each : apart) {
    if (each > most) break;
    squares += each * each;
    count += 1;
  }
  const Length tem{std::llround(std::sqrt(squares / (2 * count)))};
  return std::clamp(tem, kTemLowest, kTemHighest);
}

namespace {

// Head circumference in millimetres of those from this age (whole years) on.
struct Heads {
  int fromAge = 0;
  double p5 = 0, p50 = 0, p95 = 0;
};
// Fourth Dutch growth study 1997, boys, as carried in the R package mice (`boys`, column hc), quantile type 7. Ages
// [5,10) n 67, [10,12) n 63, [12,14) n 66, [14,15) n 44, [15,16) n 50, [16,17) n 35, [17,19) n 58.
constexpr std::array<Heads, 7> kDutchBoys{{{0, 501.2, 531.0, 552.0},
                                           {10, 506.2, 537.0, 561.0},
                                           {12, 520.2, 550.0, 580.0},
                                           {14, 527.5, 557.5, 581.9},
                                           {15, 541.4, 566.0, 594.6},
                                           {16, 545.1, 565.0, 589.2},
                                           {17, 552.8, 572.0, 600.3}}};
// ANSUR II (NATICK/TR-15/007, 2014), head circumference, n 4082 and 1986.
constexpr Heads kAnsurMen{19, 548.0, 574.0, 601.0};
constexpr Heads kAnsurWomen{19, 532.0, 560.0, 597.0};

constexpr double kP5ToP95 = 2 * 1.6448536269514722;  // standard deviations between the 5th and the 95th percentile
// Four standard deviations either way (ours), taken from the percentiles: the one boy of 65.0 cm in the Dutch sample, whom
// this is to question, would stretch the plain standard deviation of his age.
constexpr double kDoubtBeyond = 4;

double reach(const Heads& h) { return kDoubtBeyond * (h.p95 - h.p5) / kP5ToP95; }
double lowest(const Heads& h) { return h.p50 - reach(h); }
double highest(const Heads& h) { return h.p50 + reach(h); }

// Girls play too, and no table of girls is at hand: the low end is never above that of women.
double lowestAt(int age) {
  double low = lowest(kAnsurWomen);
  for (auto row = kDutchBoys.rbegin(); row != kDutchBoys.rend(); ++row)
    if (age >= row->fromAge) return age >= kAnsurMen.fromAge ? low : std::min(low, lowest(*row));
  return std::min(low, lowest(kDutchBoys.front()));
}

// A head does not shrink with age, so that the bound does not either.
double highestAt(int age) {
  double high = highest(kDutchBoys.front());
  for (const Heads& row : kDutchBoys)
    if (age >= row.fromAge) high = std::max(high, highest(row));
  return age >= kAnsurMen.fromAge ? std::max({high, highest(kAnsurMen), highest(kAnsurWomen)}) : high;
}

constexpr int kYoungestUnsaid = 10;  // ours: the youngest who is fitted without an age on the roster

}  // namespace

HeadsOfAge headsOfAge(int ageYears) {
  Heads heads = kDutchBoys.front();
  for (const Heads& row : kDutchBoys)
    if (ageYears >= row.fromAge) heads = row;
  if (ageYears >= kAnsurMen.fromAge) heads = kAnsurMen;
  return {Length::millimetres(heads.p50), Length::millimetres((heads.p50 - heads.p5) / (kP5ToP95 / 2)),
          Length::millimetres((heads.p95 - heads.p50) / (kP5ToP95 / 2))};
}

HeadDoubt doubt(Length circumference, std::optional<int> ageYears) {
  const double low = lowestAt(ageYears.value_or(kYoungestUnsaid));
  const double high = highestAt(ageYears.value_or(kAnsurMen.fromAge));
  if (circumference.mm() < low) return HeadDoubt::tooSmall;
  return circumference.mm() > high ? HeadDoubt::tooLarge : HeadDoubt::none;
}

}  // namespace snugline::fit
