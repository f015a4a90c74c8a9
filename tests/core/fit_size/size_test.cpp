// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <cmath>
#include <random>

#include "core/fit/size.h"

using namespace snugline;
using namespace snugline::fit;
using Catch::Detail::Approx;

namespace {

Length mm(double v) { return Length::millimetres(v); }

// S 500..540, M 536..570 (overlap 536..540), gap, L 576..610
gear::ModelSheet chart() {
  gear::ModelSheet sheet;
  sheet.sizes = {{"S", mm(500), mm(540)}, {"M", mm(536), mm(570)}, {"L", mm(576), mm(610)}};
  return sheet;
}

SizeAnswer sized(std::initializer_list<double> readings, double temMm = 3.0) {
  std::vector<Length> lengths;
  for (double v : readings) lengths.push_back(mm(v));
  Result<SizeAnswer> answer = sizeOf(chart(), lengths, mm(temMm));
  REQUIRE(answer.has_value());
  return *answer;
}

}  // namespace

TEST_CASE("One reading stands for itself, two for their mean, three and more for their median") {
  CHECK(sized({553}).circumference == mm(553));
  CHECK(sized({553, 556}).circumference == mm(554.5));
  CHECK(sized({553, 590, 555}).circumference == mm(555));
  CHECK(sized({560, 553, 555, 554}).circumference == mm(554.5));
}

TEST_CASE("The standard error falls with the root of the number of readings") {
  CHECK(sized({553}).uncertainty == mm(3));
  CHECK(sized({553, 553, 553, 553}).uncertainty == mm(1.5));
  CHECK(sized({553, 553}).uncertainty == Length{2121});
}

TEST_CASE("Readings more than 5 mm apart ask for another") {
  CHECK_FALSE(sized({553}).isRetake);
  CHECK_FALSE(sized({553, 558}).isRetake);
  CHECK(sized({553, 558.001}).isRetake);
  CHECK(sized({550, 553, 556}).isRetake);
}

TEST_CASE("While another reading is asked for no size is guessed") {
  const SizeAnswer apart = sized({545, 560});
  CHECK(apart.isRetake);
  CHECK(apart.size.empty());
  CHECK(apart.startWith.empty());
  CHECK_FALSE(apart.isBetween);
  CHECK(sized({551, 554}).size == "M");
}

TEST_CASE("Overlapping bands are parted at the middle of the overlap, and a gap is left as it is") {
  const SizeAnswer answer = sized({553});
  REQUIRE(answer.odds.size() == 3);
  CHECK(answer.odds[0].low == mm(500));
  CHECK(answer.odds[0].high == mm(538));
  CHECK(answer.odds[1].low == mm(538));
  CHECK(answer.odds[1].high == mm(570));
  CHECK(answer.odds[2].low == mm(576));
  CHECK(answer.odds[2].high == mm(610));
}

TEST_CASE("A head in the middle of a band has that size and nothing in doubt") {
  const SizeAnswer answer = sized({554, 555});
  CHECK(answer.size == "M");
  CHECK(answer.startWith == "M");
  CHECK_FALSE(answer.isBetween);
  CHECK(answer.odds[1].odds > 0.999);
}

TEST_CASE("A head at the edge of two bands is between sizes, and the nearer middle is tried first") {
  // Odds lean to M from 538 on, yet the printed middles, 520 and 553, meet at 536.5.
  const SizeAnswer low = sized({536.2});
  CHECK(low.isBetween);
  CHECK(low.size == "S");
  CHECK(low.startWith == "S");
  const SizeAnswer within = sized({537.5});
  CHECK(within.isBetween);
  CHECK(within.size == "S");
  CHECK(within.startWith == "M");
}

TEST_CASE("A head in a gap is mostly off the chart, between the sizes on both sides") {
  const SizeAnswer answer = sized({572.4}, 5.0);
  CHECK(answer.size.empty());
  CHECK(answer.isBetween);
  CHECK(answer.startWith == "M");
  CHECK(std::abs(answer.none - 0.449) < 0.002);
  const SizeAnswer sure = sized({573}, 0.5);
  CHECK(sure.none > 0.999);
  CHECK(sure.size.empty());
  CHECK_FALSE(sure.isBetween);
  CHECK(sure.startWith.empty());
}

TEST_CASE("A head off either end of the chart has no size and is not between two") {
  for (const double v : {450.0, 650.0}) {
    const SizeAnswer answer = sized({v});
    CHECK(answer.size.empty());
    CHECK(answer.startWith.empty());
    CHECK_FALSE(answer.isBetween);
    CHECK(std::abs(answer.none - 1.0) < 1e-9);
  }
}

TEST_CASE("The odds of every head on every chart sum to one") {
  CHECK(rc::check("sum", [] {
    const double head = *rc::gen::inRange(400000, 700001) / 1000.0;
    const int count = *rc::gen::inRange(1, 6);
    const double tem = *rc::gen::inRange(289, 30001) / 1000.0;
    const Result<SizeAnswer> answer = sizeOf(chart(), std::vector<Length>(static_cast<std::size_t>(count), mm(head)), mm(tem));
    RC_ASSERT(answer.has_value());
    double sum = answer->none;
    RC_ASSERT(answer->none >= 0.0);
    for (const SizeOdds& o : answer->odds) {
      RC_ASSERT(o.odds >= 0.0);
      sum += o.odds;
    }
    RC_ASSERT(std::abs(sum - 1.0) < 1e-12);
  }));
}

TEST_CASE("More readings of the same head never make its likely size less likely") {
  CHECK(rc::check("surer", [] {
    const double head = *rc::gen::inRange(500000, 610001) / 1000.0;
    const Result<SizeAnswer> one = sizeOf(chart(), {mm(head)});
    const Result<SizeAnswer> four = sizeOf(chart(), std::vector<Length>(4, mm(head)));
    RC_ASSERT(one.has_value());
    RC_ASSERT(four.has_value());
    for (std::size_t i = 0; i < 3; ++i)
      if (one->odds[i].odds > 0.5) RC_ASSERT(four->odds[i].odds >= one->odds[i].odds - 1e-12);
  }));
}

TEST_CASE("No reading, too many, or one that no head has, is refused with the limits") {
  CHECK(sizeOf(chart(), {}).error().code == ErrorCode::outOfRange);
  CHECK(sizeOf(chart(), std::vector<Length>(21, mm(560))).error().code == ErrorCode::outOfRange);
  CHECK(sizeOf(chart(), {mm(560), mm(57.5)}).error().detail == "57.5mm, 400mm, 700mm");
  CHECK(sizeOf(chart(), {mm(700.001)}).error().code == ErrorCode::outOfRange);
  CHECK(sizeOf(chart(), {mm(400), mm(700)}).has_value());
  CHECK(sizeOf(chart(), {mm(560)}, Length{0}).error().place == "tem");
  CHECK(sizeOf(chart(), {mm(560)}, Length{-3000}).error().code == ErrorCode::outOfRange);
}

TEST_CASE("The technical error is known from twenty pairs on") {
  std::vector<TapePair> pairs(19, {mm(560), mm(564)});
  CHECK_FALSE(technicalError(pairs).has_value());
  pairs.push_back({mm(564), mm(560)});
  // sqrt(20 * 16 / 40)
  CHECK(technicalError(pairs).value() == Length{2828});
}

// Without it the one pair would make the error of every head of the team twelve millimetres.
TEST_CASE("One wrong reading among the repeats does not change everybody's error") {
  std::vector<TapePair> pairs(20, {mm(560), mm(564)});
  pairs.push_back({mm(560), mm(640)});
  CHECK(technicalError(pairs).value() == Length{2828});
  CHECK(rc::check("a wrong one among twenty and more ordinary ones", [] {
    // Repeats of one tape and one head differ by a normal of 1.4 times the error; these are its quantiles, turned by chance.
    const int count = *rc::gen::inRange(20, 120);
    std::vector<TapePair> ordinary;
    for (int i = 0; i < count; ++i) {
      double p = (i + 0.5) / count, z = 0;
      for (double step = 4; step > 1e-9; step /= 2) z += 0.5 * std::erfc(-z / std::sqrt(2.0)) < p ? step : -step;
      ordinary.push_back({mm(560), mm(560 + 3 * std::sqrt(2.0) * z)});
    }
    std::vector<TapePair> all = ordinary;
    const int off = *rc::gen::inRange(20, 120) * *rc::gen::element(1, -1);
    all.push_back({mm(560), mm(560 + off)});
    RC_ASSERT(technicalError(all).value() == technicalError(ordinary).value());
  }));
}

// The formula of anthropometry: Ulijaszek and Kerr, British Journal of Nutrition 82 (1999), 165 (memory).
TEST_CASE("The error of ordinary repeats is the technical error of measurement") {
  std::mt19937 chance(20261129);
  std::normal_distribution<double> reading(560, 3);
  std::vector<TapePair> pairs;
  double squares = 0;
  for (int i = 0; i < 4000; ++i) {
    pairs.push_back({mm(reading(chance)), mm(reading(chance))});
    squares += std::pow(pairs.back().first.mm() - pairs.back().second.mm(), 2);
  }
  CHECK(technicalError(pairs)->mm() == Approx(std::sqrt(squares / (2.0 * 4000))).epsilon(0.02));
}

TEST_CASE("Pairs that agree to the millimetre still leave the error of a tape read to one") {
  CHECK(technicalError(std::vector<TapePair>(30, {mm(560), mm(560)})).value() == kTemLowest);
  CHECK(technicalError(std::vector<TapePair>(30, {mm(400), mm(700)})).value() == kTemHighest);
}

TEST_CASE("A head of 650 mm at fourteen is questioned, and so are others that hardly anybody has") {
  CHECK(doubt(mm(650), 14) == HeadDoubt::tooLarge);
  CHECK(doubt(mm(650), std::nullopt) == HeadDoubt::tooLarge);
  CHECK(doubt(mm(650), 25) == HeadDoubt::tooLarge);
  CHECK(doubt(mm(455), 16) == HeadDoubt::tooSmall);
  CHECK(doubt(mm(455), std::nullopt) == HeadDoubt::tooSmall);
  CHECK(doubt(mm(610), 7) == HeadDoubt::tooLarge);
}

TEST_CASE("Ordinary heads of every age are taken as they are") {
  for (int age = 6; age <= 40; ++age) {
    INFO(age);
    CHECK(doubt(mm(520), age) == HeadDoubt::none);
    CHECK(doubt(mm(age < 10 ? 560 : 595), age) == HeadDoubt::none);
  }
  CHECK(doubt(mm(575), std::nullopt) == HeadDoubt::none);
  CHECK(doubt(mm(625), 17) == HeadDoubt::none);
}

TEST_CASE("What is large for a child is never called large for anyone older") {
  CHECK(rc::check("monotone", [] {
    const Length head{*rc::gen::inRange<std::int64_t>(400000, 700001)};
    const int age = *rc::gen::inRange(0, 60);
    if (doubt(head, age) != HeadDoubt::tooLarge) RC_ASSERT(doubt(head, age + 1) != HeadDoubt::tooLarge);
  }));
}
