// SPDX-License-Identifier: Apache-2.0
// Air against the US Standard Atmosphere 1976, published examples of the gas law and GNU units; leaks and pumps against SciPy.
#include <cmath>
#include <random>

#include "core/air/bladder.h"
#include "core/air/leak.h"
#include "core/air/pump_response.h"
#include "core/air/steady.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

namespace {

const char* const kPython = "/usr/bin/python3";  // Debian's own, the one for which python3-scipy is packaged

std::string hex(double v) {
  char text[40];
  std::snprintf(text, sizeof text, "%a", v);
  return text;
}

// Digits behind the point of a published value, so that it is met to the last of them.
double halfOfLastPlace(const std::string& number) {
  const std::size_t point = number.find('.');
  std::size_t end = number.find_first_not_of("0123456789.-");
  if (end == std::string::npos) end = number.size();
  return 0.5 * std::pow(10.0, point == std::string::npos ? 0 : -static_cast<double>(end - point - 1));
}

using Runs = std::vector<std::vector<air::Point>>;

std::string lineOf(const Runs& runs) {
  std::string line;
  for (const auto& run : runs) {
    if (!line.empty()) line += ';';
    for (const air::Point& p : run) line += (&p == run.data() ? "" : " ") + hex(p.week) + ":" + hex(p.pa);
  }
  return line + "\n";
}

// Half of the series have whole weeks and whole kilopascals, so that both repeat; a few start with the same week twice.
std::vector<air::Point> randomRun(std::mt19937& chance, int least) {
  const auto whole = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(chance); };
  const bool isCoarse = whole(0, 1) == 0;
  const int n = whole(least, 24);
  std::vector<air::Point> run;
  double week = 0;
  for (int i = 0; i < n; ++i) {
    week += i == 1 ? 1.0 : isCoarse ? whole(0, 2) : std::uniform_real_distribution<double>(0.1, 2)(chance);
    const double pa = 20'000 - 300 * week + std::normal_distribution<double>(0, 900)(chance);
    run.push_back({week, isCoarse ? std::round(pa / 1000) * 1000 : pa});
  }
  return run;
}

void agreeWithOracle(const std::vector<Runs>& cases) {
  std::string input;
  for (const Runs& runs : cases) input += lineOf(runs);
  const auto lines = ask(std::string(kPython) + " '" + kHere + "scripts/theil_sen.py'", input);
  REQUIRE(lines.size() == cases.size());
  std::size_t withInterval = 0;
  for (std::size_t i = 0; i < cases.size(); ++i) {
    INFO(lineOf(cases[i]));
    const auto fields = split(lines[i], ' ');
    REQUIRE(fields.size() == 4);
    const air::Slope slope = air::theilSen(cases[i]);
    CHECK(slope.hasSlope);
    CHECK(slope.perWeek == std::strtod(fields[0].c_str(), nullptr));
    const double low = std::strtod(fields[1].c_str(), nullptr), high = std::strtod(fields[2].c_str(), nullptr);
    // Where ties leave less than no variance SciPy says nan, and we that there is no interval.
    CHECK((slope.low == low || (std::isnan(low) && !slope.hasInterval)));
    CHECK((slope.high == high || (std::isnan(high) && !slope.hasInterval)));
    CHECK(slope.hasInterval == (fields[3] == "1"));
    withInterval += slope.hasInterval ? 1 : 0;
  }
  // The cases are worth asking only if they hold both kinds.
  CHECK(withInterval > cases.size() / 2);
  CHECK(withInterval < cases.size());
}

}  // namespace

TEST_CASE("Pressure at a height is that of the US Standard Atmosphere 1976 to the published digits") {
  for (const auto& row : rowsOf("atmosphere_1976.csv")) {
    INFO(row[0]);
    const Elevation height = Elevation::metres(std::stod(row[0]));
    CHECK(std::abs(air::pascalsAt(height) - std::stod(row[1])) <= halfOfLastPlace(row[1]));
    CHECK(std::abs(static_cast<double>(air::ambientAt(height).pa) - std::stod(row[1])) <= 0.5 + 1e-3);
  }
}

TEST_CASE("Published examples of the gas law come out to the digits in which they were printed") {
  for (const auto& row : rowsOf("gas_law.csv")) {
    INFO(row[4] << ": " << row[0] << " at " << row[1] << ", now " << row[2]);
    const air::AirState set{parsePressure(row[0]).value(), parseTemperature(row[1]).value(), air::kStandardAtmosphere};
    const air::Foresight f = air::foresee(set, parseTemperature(row[2]).value(), air::kStandardAtmosphere);
    const bool isPsi = row[3].ends_with("psi");
    CHECK(std::abs((isPsi ? f.gauge.psi() : f.gauge.kpa()) - std::stod(row[3])) <= halfOfLastPlace(row[3]) + 0.0001);
  }
}

TEST_CASE("Air foreseen agrees with GNU units in 600 random cases of temperature and height") {
  std::mt19937 chance(2015);
  const auto real = [&](double low, double high) { return std::uniform_real_distribution<double>(low, high)(chance); };
  struct Case {
    air::AirState set;
    Temperature now;
    Elevation from, to;
  };
  std::vector<Case> cases;
  std::string input;
  for (int i = 0; i < 600; ++i) {
    Case c;
    c.from = Elevation::metres(real(-430, 9000));
    c.to = Elevation::metres(real(-430, 9000));
    c.now = Temperature::celsius(real(-60, 60));
    c.set = {Pressure::kilopascals(real(-5, 100)), Temperature::celsius(real(-60, 60)), air::ambientAt(c.from)};
    cases.push_back(c);
    char line[256];
    std::snprintf(line, sizeof line, "(%lld Pa + stdatmP(%.3f m)) * (%.3f K / (%.3f K)) - stdatmP(%.3f m)\nPa\n",
                  static_cast<long long>(c.set.gauge.pa), c.from.metres(), static_cast<double>(c.now.mk) / 1000,
                  static_cast<double>(c.set.temperature.mk) / 1000, c.to.metres());
    input += line;
    std::snprintf(line, sizeof line, "(%lld Pa + stdatmP(%.3f m)) / (%lld Pa + stdatmP(%.3f m)) * (%.3f K / (%.3f K))\n1\n",
                  static_cast<long long>(c.set.gauge.pa), c.from.metres(), static_cast<long long>(c.set.gauge.pa), c.to.metres(),
                  static_cast<double>(c.now.mk) / 1000, static_cast<double>(c.set.temperature.mk) / 1000);
    input += line;
  }
  const auto lines = ask("units -q -t -o '%.15g'", input);
  REQUIRE(lines.size() == 2 * cases.size());
  std::size_t below = 0;
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const Case& c = cases[i];
    INFO(exact(c.set.gauge) << " at " << exact(c.set.temperature) << " and " << exact(c.from) << ", now " << exact(c.now) << " and "
                            << exact(c.to));
    const air::Foresight f = air::foresee(c.set, c.now, air::ambientAt(c.to));
    // Whole pascals of ambient on both sides, the first stretched by at most 1.6, and of the answer: half a pascal each.
    CHECK(std::abs(static_cast<double>(f.gauge.pa) - std::stod(lines[2 * i])) <= 0.5 * 1.6 + 0.5 + 0.5);
    CHECK(std::abs(f.volumeRatio - std::stod(lines[2 * i + 1])) <= 1e-4);
    below += f.isBelowZero() ? 1 : 0;
  }
  CHECK(below > 50);
  CHECK(below < 550);
}

TEST_CASE("Raw value of three psi over one atmosphere agrees with GNU units") {
  const auto lines = ask("units -q -t -o '%.10g'", "3 psi + 1 atm\n0.1 Pa\npsig(12.5) * tempF(48) / tempF(71)\npsig\n");
  REQUIRE(lines.size() == 2);
  CHECK(std::llround(std::stod(lines[0])) == 1'220'093);
  const air::AirState set{parsePressure("12.5psi").value(), parseTemperature("71F").value(), air::kStandardAtmosphere};
  CHECK(std::abs(air::foresee(set, parseTemperature("48F").value(), air::kStandardAtmosphere).gauge.psi() - std::stod(lines[1])) < 0.0003);
}

// Wells/Exponent report 2015, p. 116: two gauges read one ball 0.3 to 0.45 psi apart, which is why a reading keeps the name of its gauge.
TEST_CASE("Two gauges can differ by more than a leak's allowance of a week, so that a change of gauge looks like a leak") {
  const Pressure least = parsePressure("0.3psi").value(), most = parsePressure("0.45psi").value();
  CHECK(least > air::kLeakAllowanceUnsaid);
  CHECK(least > air::kSteadyWithin);
  CHECK(most.kpa() < 3.2);
}

// Reference: scipy.stats.theilslopes (SciPy 1.10, Debian python3-scipy), to the last bit.
TEST_CASE("The slope of one run and its interval are those of SciPy in 400 random series, ties among them") {
  std::mt19937 chance(1968);
  std::vector<Runs> cases;
  for (int i = 0; i < 400; ++i) cases.push_back({randomRun(chance, 2)});
  agreeWithOracle(cases);
}

// Hirsch, Slack and Smith 1982: slopes within seasons pooled, variance summed; worked out by a script of its own from the definitions.
TEST_CASE("The slope of several runs is that of the definitions in 300 random series") {
  std::mt19937 chance(1982);
  std::vector<Runs> cases;
  for (int i = 0; i < 300; ++i) {
    Runs runs{randomRun(chance, 2), randomRun(chance, 2)};
    if (i % 3 == 0) runs.push_back(randomRun(chance, 2));
    if (i % 5 == 0)
      runs = {std::vector<air::Point>(runs[0].begin(), runs[0].begin() + 2), std::vector<air::Point>(runs[1].begin(), runs[1].begin() + 2)};
    cases.push_back(runs);
  }
  agreeWithOracle(cases);
}

// Reference: numerical integration with scipy.stats.norm and scipy.integrate.simpson.
TEST_CASE("What a pump does is the posterior that SciPy integrates, in 100 random cases") {
  std::mt19937 chance(1973);
  std::string input;
  std::vector<air::PumpResponse> ours;
  for (int i = 0; i < 100; ++i) {
    const air::PumpPrior prior{std::uniform_real_distribution<double>(500, 5000)(chance),
                               std::uniform_real_distribution<double>(300, 3000)(chance),
                               std::uniform_real_distribution<double>(500, 4000)(chance)};
    air::PumpEvidence evidence;
    std::string steps;
    const int n = std::uniform_int_distribution<int>(1, 30)(chance);
    for (int k = 0; k < n; ++k) {
      const int pumps = std::uniform_int_distribution<int>(1, 3)(chance) * (k % 2 == 0 ? 1 : -1);
      const auto change = std::llround(pumps * prior.mean + std::normal_distribution<double>(0, prior.noise)(chance));
      REQUIRE(evidence.add(pumps, change));
      steps += (k == 0 ? "" : " ") + std::to_string(pumps) + ":" + std::to_string(change);
    }
    char line[128];
    std::snprintf(line, sizeof line, "%.17g;%.17g;%.17g;", prior.mean, prior.sd, prior.noise);
    input += line + steps + "\n";
    ours.push_back(air::respond(prior, evidence));
  }
  const auto lines = ask(std::string(kPython) + " '" + kHere + "scripts/pump_posterior.py'", input);
  REQUIRE(lines.size() == ours.size());
  for (std::size_t i = 0; i < ours.size(); ++i) {
    const auto fields = split(lines[i], ' ');
    CHECK(std::abs(ours[i].mean - std::stod(fields[0])) < 1e-6 * std::abs(ours[i].mean) + 1e-6);
    CHECK(std::abs(ours[i].sd - std::stod(fields[1])) < 1e-6 * ours[i].sd);
  }
}
