// SPDX-License-Identifier: Apache-2.0
// What is ordered covers the heads that come, at the chance asked: seasons played out many times with a fixed seed, the heads drawn from
// ANSUR II (NATICK/TR-15/007, 2014) and from the Dutch boys of 1997 (R package mice), not from the plan's own
// arithmetic.
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <random>

#include "core/season/plan.h"
#include "tests/core/season/season_world.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;
using namespace snugline::season;

namespace {

constexpr int kSeasons = 4000;
constexpr int kHeads = 80;

struct Played {
  std::map<std::string, int> enoughFor;  // size -> seasons in which the number asked was enough
  std::map<std::string, const Order*> orders;
};

// A head in millimetres falls into one band of the chart, overlaps split at their middle, as core splits them; empty off the chart.
std::string sizeOfHead(const gear::ModelSheet& sheet, double mm) {
  const auto bands = fit::sizeOf(sheet, {Length::millimetres(550)});
  for (const fit::SizeOdds& band : bands->odds)
    if (mm >= band.low.mm() && mm < band.high.mm()) return band.size;
  return {};
}

// Seasons: each head returns or not, has grown, and is itself unknown but for its tape; newcomers come as drawn.
template <typename Newcomer>
Played play(const Views& views, const PlanAnswer& plan, const PlanWishes& wishes, const std::map<std::string, double>& readMm,
            double yearsGrown, Newcomer newcomer, std::mt19937_64& chance) {
  const gear::ModelSheet& sheet = *views.sheet(SeasonWorld::hashOf(0));
  Played played;
  for (const Order& order : plan.orders)
    if (order.sheet == SeasonWorld::hashOf(0)) played.orders[order.size] = &order;
  std::bernoulli_distribution returns(wishes.returning);
  std::normal_distribution<double> tapeError(0, fit::kDefaultTem.mm() / std::sqrt(2.0));
  std::normal_distribution<double> growth(kGrowthPerYear.mm() * yearsGrown, kGrowthSpread.mm() * yearsGrown + 1e-12);
  std::poisson_distribution<int> newcomers(*wishes.newcomers);
  for (int season = 0; season < kSeasons; ++season) {
    std::map<std::string, int> heads;
    for (const auto& [id, read] : readMm)
      if (returns(chance)) ++heads[sizeOfHead(sheet, read - tapeError(chance) + growth(chance))];
    for (int i = newcomers(chance); i > 0; --i) ++heads[sizeOfHead(sheet, newcomer(chance))];
    for (const auto& [size, order] : played.orders) played.enoughFor[size] += heads[size] <= order->enough ? 1 : 0;
  }
  return played;
}

// Between the chance that the plan states and three standard errors of it.
void judge(const Played& played, double cover, double allowance) {
  int busy = 0;
  for (const auto& [size, order] : played.orders) {
    INFO(size << " expected " << order->returning + order->newcomers << " enough " << order->enough << " covered " << order->covered);
    const double share = static_cast<double>(played.enoughFor.at(size)) / kSeasons;
    CHECK(share >= cover - 3 * std::sqrt(cover * (1 - cover) / kSeasons) - allowance);
    const double error = std::sqrt(std::max(order->covered * (1 - order->covered), 1.0 / kSeasons) / kSeasons);
    CHECK(std::abs(share - order->covered) <= 3.5 * error + allowance);
    busy += order->enough >= 5 ? 1 : 0;
  }
  CHECK(busy >= 3);
}

SeasonWorld team(const std::vector<double>& heads, int birthYear, std::map<std::string, double>& readMm) {
  SeasonWorld world(11);
  world.today = dayOf(2026, 6, 1);
  for (const double mm : heads) {
    AthleteRecord& athlete = world.addAthlete(mm, birthYear);
    world.wear(athlete, world.addUnit(0, "M", 2026));
    readMm[athlete.id] = athlete.tapes.back().readings.front().mm();
  }
  return world;
}

}  // namespace

TEST_CASE("Orders cover grown heads drawn as ANSUR II has them, at each chance asked") {
  std::mt19937_64 chance(20261014);
  for (const auto& row : rowsOf("head_circumference.csv")) {
    if (row[0] != "ansur2-men") continue;
    std::normal_distribution<double> soldier(std::stod(row[2]), std::stod(row[3]));
    std::vector<double> heads;
    for (int i = 0; i < kHeads; ++i) heads.push_back(std::clamp(soldier(chance), 505.0, 650.0));
    std::map<std::string, double> readMm;
    const SeasonWorld world = team(heads, 1998, readMm);
    for (const double cover : {0.8, 0.95, 0.99}) {
      INFO("cover " << cover);
      PlanWishes wishes;
      wishes.season = 2026;
      wishes.cover = cover;
      wishes.newcomers = 25.0;
      wishes.newcomerAge = 25;
      wishes.lastAge = 60;
      const auto plan = planSeason(world.views, wishes, world.today);
      REQUIRE(plan.has_value());
      const auto played = play(
          world.views, *plan, wishes, readMm, 0, [&](auto& dice) { return soldier(dice); }, chance);
      judge(played, cover, 0.01);  // a hundredth: the plan takes the spread from published percentiles
    }
  }
}

// The five percentiles that R computes from the study (data/head_circumference.csv), straight lines between them and normal tails beyond.
// Not the boys one by one: 44 of them put the share of a size no nearer than 7 in a hundred, and one is the boy of 65.0 cm.
class DutchBoys {
 public:
  explicit DutchBoys(const std::vector<std::string>& row) {
    for (std::size_t i = 4; i < row.size(); ++i) m_mm.push_back(std::stod(row[i]));
  }
  double operator()(std::mt19937_64& chance) const {
    const double p = std::uniform_real_distribution<double>(0, 1)(chance);
    if (p < kShares.front() || p > kShares.back()) {  // a tail: the normal beyond 1.645, mirrored
      double z = 0;
      while (z < 1.6448536) z = std::abs(std::normal_distribution<double>(0, 1)(chance));
      const double spread = (m_mm.back() - m_mm.front()) / (2 * 1.6448536);
      return p < 0.5 ? m_mm.front() - spread * (z - 1.6448536) : m_mm.back() + spread * (z - 1.6448536);
    }
    std::size_t i = 0;
    while (p > kShares[i + 1]) ++i;
    return m_mm[i] + (m_mm[i + 1] - m_mm[i]) * (p - kShares[i]) / (kShares[i + 1] - kShares[i]);
  }

 private:
  static constexpr std::array<double, 5> kShares{0.05, 0.25, 0.5, 0.75, 0.95};
  std::vector<double> m_mm;
};

TEST_CASE("Orders cover boys of 14 and 15 as the Dutch study has them, who grow by the rate assumed") {
  std::mt19937_64 chance(19970101);
  const auto rows = rowsOf("head_circumference.csv");
  const auto find = [&](const char* name) {
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& r) { return r[0] == name; });
    REQUIRE(row != rows.end());
    return DutchBoys(*row);
  };
  const DutchBoys fourteen = find("dutch-boys-14-15"), fifteen = find("dutch-boys-15-16");
  std::vector<double> heads;
  for (int i = 0; i < kHeads; ++i) heads.push_back(std::clamp(fifteen(chance), 505.0, 640.0));
  std::map<std::string, double> readMm;
  const SeasonWorld world = team(heads, 2011, readMm);
  for (const double cover : {0.8, 0.95, 0.99}) {
    INFO("cover " << cover);
    PlanWishes wishes;
    wishes.season = 2026;
    wishes.cover = cover;
    wishes.newcomers = 25.0;
    const auto plan = planSeason(world.views, wishes, world.today);
    REQUIRE(plan.has_value());
    const Day middle = plan->nextStart.plus(daysBetween(plan->nextStart, plan->nextEnd) / 2);
    const double years = daysBetween(dayOf(2026, 5, 20), middle) / 365.25;
    const auto played = play(world.views, *plan, wishes, readMm, years, fourteen, chance);
    judge(played, cover, 0.02);  // two hundredths: the plan takes half-normals through three of the five percentiles
  }
}
