// SPDX-License-Identifier: Apache-2.0
// Numbers of a sheet as people write them. An inch is 25.4 mm and a psi 6894.757293... Pa, exactly by definition (international yard and
// pound agreement, 1959; standard gravity, 3rd CGPM, 1901).
#include "core/gear/sheet_figure.h"

#include SNUGLINE_CATCH_HEADER

using namespace snugline;
using namespace snugline::gear;

namespace {

constexpr auto kMetric = UnitSystem::metric, kUs = UnitSystem::us;

std::optional<std::int64_t> read(const char* text, FigureUnit unit, UnitSystem system) {
  const auto value = readFigure(text, unit, system);
  return value ? std::optional(*value) : std::nullopt;
}

}  // namespace

TEST_CASE("A length is read in the units chosen, exact to the micrometre, and a unit of its own wins") {
  CHECK(read("550", FigureUnit::um, kMetric) == 550'000);
  CHECK(read(" 549,91 ", FigureUnit::um, kMetric) == 549'910);
  CHECK(read("55 cm", FigureUnit::um, kMetric) == 550'000);
  CHECK(read("21.65", FigureUnit::um, kUs) == 549'910);
  CHECK(read("21 5/8", FigureUnit::um, kUs) == 549'275);
  CHECK(read("21 5/8 in", FigureUnit::um, kMetric) == 549'275);
  CHECK(read("5/16", FigureUnit::um, kUs) == 7'938);  // 7937.5
  CHECK(read("550 mm", FigureUnit::um, kUs) == 550'000);
  CHECK(read("20.5in", FigureUnit::um, kMetric) == 520'700);
  for (const char* text : {"", "wide", "5/8", "21 8/5 in", "21 5/0 in", "1/", "5 kPa", "1e3", "21 5/8 mm"})
    CHECK_FALSE(read(text, FigureUnit::um, kMetric));
}

TEST_CASE("A pressure is read in the units chosen, exact to the pascal") {
  CHECK(read("20.345", FigureUnit::pa, kMetric) == 20'345);
  CHECK(read("2.9", FigureUnit::pa, kUs) == 19'995);
  CHECK(read("3 psi", FigureUnit::pa, kMetric) == 20'684);
  CHECK_FALSE(read("3 psia", FigureUnit::pa, kUs));
  CHECK_FALSE(read("3 mm", FigureUnit::pa, kUs));
}

TEST_CASE("Months and points are whole numbers") {
  CHECK(read("24", FigureUnit::months, kUs) == 24);
  for (const char* text : {"24.5", "-1", "two", ""}) CHECK_FALSE(read(text, FigureUnit::months, kUs));
}

TEST_CASE("A print that leaves something out says so") {
  CHECK(printFigure(549'910, FigureUnit::um, kMetric) == "549.91 mm");
  CHECK(printFigure(550'000, FigureUnit::um, kUs) == "21.654 in");
  CHECK(printFigure(20'345, FigureUnit::pa, kMetric) == "20.345 kPa");
  CHECK(printFigure(19'995, FigureUnit::pa, kUs) == "2.9 psi");
  CHECK(printFigure(500, FigureUnit::um, kMetric) == "0.5 mm");
  CHECK(printFigure(0, FigureUnit::um, kUs) == "0 in");
  CHECK(isPrintedWhole(549'910, FigureUnit::um, kUs));
  CHECK_FALSE(isPrintedWhole(550'000, FigureUnit::um, kUs));
  CHECK(isPrintedWhole(19'995, FigureUnit::pa, kUs));
  CHECK_FALSE(isPrintedWhole(20'000, FigureUnit::pa, kUs));
  for (std::int64_t um = 300'000; um <= 800'000; um += 12'345) CHECK(isPrintedWhole(um, FigureUnit::um, kMetric));
  for (std::int64_t pa = 0; pa <= 200'000; pa += 777) CHECK(isPrintedWhole(pa, FigureUnit::pa, kMetric));
}

TEST_CASE("Steps go by eighths of an inch and tenths of a psi without drifting, and end at the range") {
  const FigureRange head{FigureUnit::um, 300'000, 800'000}, air{FigureUnit::pa, 0, 200'000};
  CHECK(stepFigure(550'000, 1, head, kMetric, 0) == 551'000);
  CHECK(stepFigure(549'910, -5, head, kMetric, 0) == 544'910);
  CHECK(stepFigure(549'275, 1, head, kUs, 0) == 552'450);
  CHECK(stepFigure(800'000, 1, head, kMetric, 0) == 800'000);
  CHECK(stepFigure(std::nullopt, 1, head, kMetric, 520'000) == 520'000);
  CHECK(stepFigure(std::nullopt, -1, head, kMetric, 0) == 300'000);
  // From nothing and with no place to begin the step counts from nought: twelve months twice are twenty-four.
  const FigureRange certified{FigureUnit::months, 1, 60}, age{FigureUnit::months, 0, 240}, allowance{FigureUnit::pa, 1, 100'000};
  CHECK(stepFigure(stepFigure(std::nullopt, 12, certified, kUs, {}), 12, certified, kUs, {}) == 24);
  CHECK(stepFigure(std::nullopt, 12, age, kUs, {}) == 12);
  CHECK(stepFigure(stepFigure(std::nullopt, 1, allowance, kMetric, {}), 1, allowance, kMetric, {}) == 2'000);
  CHECK(stepFigure(std::nullopt, -12, certified, kUs, {}) == 1);
  std::int64_t pa = read("2.9", FigureUnit::pa, kUs).value();
  for (int i = 0; i < 41; ++i) pa = stepFigure(pa, 1, air, kUs, 0);
  CHECK(pa == read("7", FigureUnit::pa, kUs));
  for (const FigureUnit unit : {FigureUnit::um, FigureUnit::pa, FigureUnit::months, FigureUnit::points})
    for (const UnitSystem system : {kMetric, kUs}) CHECK_FALSE(figureSteps(unit, system).empty());
}
