// SPDX-License-Identifier: Apache-2.0
// Size odds against SciPy and R, heads against ANSUR II and the Dutch boys. Sources stand in data/head_circumference.csv.
#include <algorithm>
#include <cmath>
#include <random>

#include "core/fit/size.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

namespace {

const char* const kSystemPython = "/usr/bin/python3";  // Debian's own, the one for which python3-scipy is packaged

std::string mm(Length v) { return std::to_string(v.mm()); }

struct OddsCase {
  gear::ModelSheet sheet;
  std::vector<Length> readings;
  Length tem;
  [[nodiscard]] std::string line() const {
    std::string text = mm(tem) + ";";
    for (const Length& r : readings) text += (&r == readings.data() ? "" : ",") + mm(r);
    text += ";";
    for (const gear::SizeBand& b : sheet.sizes) text += (&b == sheet.sizes.data() ? "" : ",") + mm(b.low) + ":" + mm(b.high);
    return text + "\n";
  }
};

// Charts with overlaps, gaps and touching bands, heads mostly on the chart, one to six readings.
OddsCase randomCase(std::mt19937& chance) {
  const auto between = [&](std::int64_t low, std::int64_t high) { return std::uniform_int_distribution<std::int64_t>(low, high)(chance); };
  OddsCase c;
  std::int64_t low = between(480, 520) * 1000;
  const auto bands = between(1, 6);
  for (std::int64_t i = 0; i < bands; ++i) {
    const std::int64_t high = low + between(20, 45) * 1000;
    c.sheet.sizes.push_back({std::to_string(i), Length{low}, Length{high}});
    low = high + between(-4, 4) * 2000;  // whole millimetres at the middle of an overlap
  }
  c.tem = Length{between(1000, 6000)};
  const std::int64_t head = between(490'000, low + 10'000);
  const auto count = between(1, 6);
  for (std::int64_t i = 0; i < count; ++i)
    c.readings.push_back(Length{std::clamp<std::int64_t>(head + between(-4000, 4000), 400'000, 700'000)});
  return c;
}

gear::ModelSheet percentileChart(const std::vector<std::string>& row) {
  gear::ModelSheet sheet;
  for (std::size_t i = 4; i + 1 < row.size(); ++i)
    sheet.sizes.push_back({row[i], Length::millimetres(std::stod(row[i])), Length::millimetres(std::stod(row[i + 1]))});
  return sheet;
}

gear::ModelSheet demoSheet(const std::string& id) {
  Result<gear::ModelSheet> sheet = gear::readSheetFile(std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/" + id + ".json");
  REQUIRE(sheet.has_value());
  return *sheet;
}

// Answers of scripts/boys.R for the bands of a sheet.
std::vector<std::string> boysFor(const gear::ModelSheet& sheet) {
  const auto bands = fit::sizeOf(sheet, {Length::millimetres(550)});
  REQUIRE(bands.has_value());
  std::string input;
  for (const fit::SizeOdds& band : bands->odds) input += mm(band.low) + " " + mm(band.high) + "\n";
  return ask("Rscript --vanilla '" + kHere + "scripts/boys.R'", input);
}

}  // namespace

// Reference: scipy.stats.norm (SciPy, Debian python3-scipy).
TEST_CASE("Size odds agree with SciPy's normal distribution in 300 random cases") {
  std::mt19937 chance(20261014);
  std::vector<OddsCase> cases;
  std::string input;
  for (int i = 0; i < 300; ++i) input += cases.emplace_back(randomCase(chance)).line();
  const auto lines = ask(std::string(kSystemPython) + " '" + kHere + "scripts/normal_odds.py'", input);
  REQUIRE(lines.size() == cases.size());
  std::size_t undecided = 0;
  for (std::size_t i = 0; i < cases.size(); ++i) {
    INFO(cases[i].line());
    const auto answer = fit::sizeOf(cases[i].sheet, cases[i].readings, cases[i].tem);
    REQUIRE(answer.has_value());
    const auto fields = split(lines[i], ' ');
    REQUIRE(fields.size() == answer->odds.size() + 2);
    CHECK(std::abs(answer->uncertainty.mm() - std::stod(fields[0])) <= 0.0005 + 1e-9);
    double best = std::stod(fields.back());
    for (std::size_t b = 0; b < answer->odds.size(); ++b) {
      CHECK(std::abs(answer->odds[b].odds - std::stod(fields[b + 1])) < 1e-9);
      best = std::max(best, std::stod(fields[b + 1]));
    }
    CHECK(std::abs(answer->none - std::stod(fields.back())) < 1e-9);
    CHECK(answer->isBetween == (best < 0.8 && !answer->isRetake));
    undecided += best < 0.8 ? 1 : 0;
  }
  // The cases are worth asking only if they hold both kinds.
  CHECK(undecided > 30);
  CHECK(undecided < 270);
}

// ANSUR II, NATICK/TR-15/007 (2014): mean and SD as one normal reading, its published percentiles as the bands of a chart.
TEST_CASE("Bands cut at ANSUR II percentiles hold the shares of soldiers that they should") {
  int checked = 0;
  for (const auto& row : rowsOf("head_circumference.csv")) {
    if (!row[0].starts_with("ansur2")) continue;
    INFO(row[0]);
    const auto answer = fit::sizeOf(percentileChart(row), {Length::millimetres(std::stod(row[2]))}, Length::millimetres(std::stod(row[3])));
    REQUIRE(answer.has_value());
    const std::vector<double> shares{0.20, 0.25, 0.25, 0.20};
    for (std::size_t i = 0; i < shares.size(); ++i) {
      INFO(i);
      // Percentiles are printed to the millimetre and heads are not quite normal (women lean to the large): four in a hundred.
      CHECK(std::abs(answer->odds.at(i).odds - shares[i]) < 0.04);
    }
    CHECK(std::abs(answer->none - 0.10) < 0.04);
    ++checked;
  }
  CHECK(checked == 2);
}

// Fourth Dutch growth study 1997 (R package mice): 35 to 58 boys a group, so the shares are rougher.
TEST_CASE("Bands cut at the percentiles of Dutch boys hold about the shares of boys that they should") {
  int checked = 0;
  for (const auto& row : rowsOf("head_circumference.csv")) {
    if (!row[0].starts_with("dutch")) continue;
    INFO(row[0]);
    const auto answer = fit::sizeOf(percentileChart(row), {Length::millimetres(std::stod(row[2]))}, Length::millimetres(std::stod(row[3])));
    REQUIRE(answer.has_value());
    const std::vector<double> shares{0.20, 0.25, 0.25, 0.20};
    // One standard error of a share of 25 % among n heads, twice.
    const double rough = 2 * std::sqrt(0.25 * 0.75 / std::stod(row[1]));
    for (std::size_t i = 0; i < shares.size(); ++i) CHECK(std::abs(answer->odds.at(i).odds - shares[i]) < rough);
    ++checked;
  }
  CHECK(checked == 4);
}

TEST_CASE("Nobody within the published percentiles of soldiers is questioned") {
  for (const auto& row : rowsOf("head_circumference.csv"))
    if (row[0].starts_with("ansur2"))
      for (const std::size_t column : {4U, 6U, 8U}) {
        const Length head = Length::millimetres(std::stod(row[column]));
        CHECK(fit::doubt(head, 25) == fit::HeadDoubt::none);
        CHECK(fit::doubt(head, std::nullopt) == fit::HeadDoubt::none);
      }
}

// Reference: R's pnorm over the data set boys of the package mice (Debian r-cran-mice).
TEST_CASE("The boys of the Dutch study fall into the bands of the demo charts as R says") {
  for (const char* id : {"alder-a1", "brant-b2", "cedar-c3"}) {
    INFO(id);
    const gear::ModelSheet sheet = demoSheet(id);
    std::vector<double> expected, found(sheet.sizes.size(), 0.0);
    int boys = 0;
    for (const std::string& line : boysFor(sheet)) {
      const auto fields = split(line, ' ');
      if (fields[0] == "band") expected.push_back(std::stod(fields[1]));
      if (fields[0] != "head" || std::stod(fields[1]) < 10) continue;
      ++boys;
      const auto answer = fit::sizeOf(sheet, {Length::millimetres(std::stod(fields[2]))});
      REQUIRE(answer.has_value());
      for (std::size_t i = 0; i < found.size(); ++i) found[i] += answer->odds[i].odds;
    }
    CHECK(boys > 300);
    REQUIRE(expected.size() == found.size());
    for (std::size_t i = 0; i < found.size(); ++i) CHECK(std::abs(found[i] - expected[i]) < 1e-6);
  }
}

TEST_CASE("The table of Dutch boys that we carry is the one that R computes") {
  std::vector<std::vector<std::string>> groups;
  for (const std::string& line : boysFor(demoSheet("alder-a1")))
    if (line.starts_with("group")) groups.push_back(split(line, ' '));
  std::vector<std::vector<std::string>> rows;
  for (const auto& row : rowsOf("head_circumference.csv"))
    if (row[0].starts_with("dutch")) rows.push_back(row);
  REQUIRE(groups.size() == rows.size());
  for (std::size_t g = 0; g < rows.size(); ++g) {
    INFO(rows[g][0]);
    REQUIRE(groups[g].size() >= rows[g].size());
    for (std::size_t i = 1; i < rows[g].size(); ++i) CHECK(std::abs(std::stod(groups[g][i]) - std::stod(rows[g][i])) <= 0.1);
  }
}

// Four standard deviations out is where a head is questioned (ours); in that study this is to be rare.
TEST_CASE("The boy of 65.0 cm at 14.53 years is questioned, and hardly any other") {
  int questioned = 0, boys = 0;
  bool isTheOne = false;
  for (const std::string& line : boysFor(demoSheet("alder-a1"))) {
    const auto fields = split(line, ' ');
    if (fields[0] != "head") continue;
    ++boys;
    const double age = std::stod(fields[1]);
    const Length head = Length::millimetres(std::stod(fields[2]));
    const bool isQuestioned = fit::doubt(head, static_cast<int>(age)) != fit::HeadDoubt::none;
    questioned += isQuestioned ? 1 : 0;
    if (head == Length{650000} && std::abs(age - 14.53) < 0.01) isTheOne = isQuestioned;
  }
  CHECK(isTheOne);
  CHECK(boys > 350);
  CHECK(questioned * 200 < boys);
}
