// SPDX-License-Identifier: Apache-2.0
// Conversions against GNU units (Debian package units, version 2.22).
#include <cmath>
#include <random>

#include "core/quantity/quantity.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

namespace {

struct Conversion {
  const char* ours;    // unit as a person types it
  const char* theirs;  // the same for GNU units, # standing for the number
  const char* kept;    // what the quantity keeps
  double low, high;
};

template <typename Parse>
void agree(const std::vector<Conversion>& conversions, Parse parse) {
  std::mt19937 chance(11);
  std::string input;
  std::vector<std::string> typed;
  for (const Conversion& c : conversions)
    for (int i = 0; i < 40; ++i) {
      char number[32];
      std::snprintf(number, sizeof number, "%.4f", std::uniform_real_distribution<double>(c.low, c.high)(chance));
      std::string theirs = c.theirs;
      theirs.replace(theirs.find('#'), 1, "(" + std::string(number) + ")");
      input += theirs + "\n" + c.kept + "\n";
      typed.push_back(number + std::string(c.ours));
    }
  const auto lines = ask("units -q -t -o '%.15g'", input);
  REQUIRE(lines.size() == typed.size());
  for (std::size_t i = 0; i < typed.size(); ++i) {
    INFO(typed[i]);
    // Kept in whole units, so half of one apart at most.
    CHECK(std::abs(static_cast<double>(parse(typed[i])) - std::stod(lines[i])) <= 0.5 + 1e-6);
  }
}

}  // namespace

TEST_CASE("Lengths agree with GNU units") {
  agree({{"mm", "# mm", "um", 0, 9000},
         {"cm", "# cm", "um", 0, 900},
         {"m", "# m", "um", 0, 9},
         {"in", "# inch", "um", 0, 390},
         {"ft", "# ft", "um", 0, 32}},
        [](const std::string& text) { return parseLength(text).value().um; });
}

TEST_CASE("Pressures agree with GNU units") {
  agree({{"kPa", "# kPa", "Pa", -190, 1900},
         {"hPa", "# hPa", "Pa", -1900, 19000},
         {"bar", "# bar", "Pa", -1.9, 19},
         {"psi", "# psi", "Pa", -29, 290}},
        [](const std::string& text) { return parsePressure(text).value().pa; });
}

TEST_CASE("Temperatures agree with GNU units") {
  agree({{"F", "tempF(#)", "mK", -120, 190}, {"C", "tempC(#)", "mK", -89, 89}, {"K", "# K", "mK", 190, 360}},
        [](const std::string& text) { return parseTemperature(text).value().mk; });
}

TEST_CASE("Elevations agree with GNU units") {
  agree({{"m", "# m", "mm", -420, 8990}, {"ft", "# ft", "mm", -1400, 29000}, {"km", "# km", "mm", -0.4, 8.9}},
        [](const std::string& text) { return parseElevation(text).value().mm; });
}
