// SPDX-License-Identifier: Apache-2.0
// Matching against SciPy: every pair's cost goes to scipy.optimize.linear_sum_assignment (Debian python3-scipy) as one dense table.
#include <cmath>
#include <cstdio>

#include "core/season/match_table.h"
#include "tests/core/season/season_world.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;
using namespace snugline::season;

namespace {

// Exact to the last bit, as text.
std::string exactly(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%.17g", value);
  return text;
}

std::string question(const MatchTable& table) {
  const auto& heads = table.heads();
  const auto& helmets = table.helmets();
  std::string text = std::to_string(heads.size()) + " " + std::to_string(helmets.size()) + "\n";
  for (int h = 0; h < static_cast<int>(heads.size()); ++h) {
    for (int u = 0; u < static_cast<int>(helmets.size()); ++u) {
      const MatchHelmet& helmet = helmets[static_cast<std::size_t>(u)];
      const bool isFeasible = !helmet.bar && !table.isSetAside(h, u) && table.oddsOf(h, helmet.kind).value_or(0) >= kTryOnOdds;
      text += (u == 0 ? "" : " ") + (isFeasible ? exactly(table.pairOf(h, u).cost) : std::string("-"));
    }
    text += "\n";
  }
  return text;
}

}  // namespace

TEST_CASE("Matching serves as many heads at the same cost as SciPy's assignment in 200 random teams") {
  std::vector<MatchAnswer> answers;
  std::string input;
  std::mt19937 chance(20261120);
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const int heads = std::uniform_int_distribution<int>(1, 90)(chance), helmets = std::uniform_int_distribution<int>(1, 110)(chance);
    const SeasonWorld world = SeasonWorld::random(seed, heads, helmets);
    MatchWishes wishes;
    for (const auto& [id, athlete] : world.views.athletes)
      if (std::uniform_int_distribution<int>(1, 15)(chance) == 1) wishes.exclusions.emplace_back(id, world.views.units.begin()->first);
    const auto table = MatchTable::make(world.views, wishes, world.today);
    REQUIRE(table.has_value());
    input += question(*table);
    const auto answer = matchHelmets(world.views, wishes, world.today);
    REQUIRE(answer.has_value());
    answers.push_back(*answer);
  }
  const auto lines = ask("/usr/bin/python3 '" + kHere + "scripts/assignment.py'", input);
  REQUIRE(lines.size() == answers.size());
  std::size_t without = 0, paired = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const auto fields = split(lines[i], ' ');
    INFO("team " << i + 1);
    CHECK(answers[i].pairs.size() == std::stoul(fields.at(0)));
    const double cost = std::stod(fields.at(1));
    CHECK(std::abs(answers[i].cost - cost) <= 1e-9 * std::max(1.0, cost));
    without += answers[i].unmatched.size();
    paired += answers[i].pairs.size();
  }
  CHECK(without > 1000);
  CHECK(paired > 4000);
}
