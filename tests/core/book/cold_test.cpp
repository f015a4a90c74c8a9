// SPDX-License-Identifier: Apache-2.0
// The cold rule through a whole Book: what a check learns of the weather, what it then advises, and what the board asks afterwards.
#include SNUGLINE_CATCH_HEADER
#include "core/season/board.h"
#include "tests/core/book/book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

// A helmet set and fitted indoors at 22 C, now out in whatever is said.
struct ColdWorld : World {
  std::unique_ptr<book::Book> book = create();
  Fitting f = pairUp(*book, today());

  ColdWorld() {
    weather(22);
    fitWhole(*book, f, clock);
  }
  void weather(double celsius) {
    season::Conditions c;
    c.temperature = Temperature::celsius(celsius);
    c.elevation = Elevation::metres(0);
    put(*book, must(book::noteWeather(book->views(), c)));
  }
  void sayJawTight() {
    season::SaidRecord said;
    said.where = fit::Mark::jaw;
    said.side = fit::Side::left;
    said.feels = fit::Feels::tight;
    put(*book, must(book::say(book->views(), f.athlete, said)));
  }
  void look() {
    clock.stepDays(1);
    beginCheck(*book, f, today(), fit::CheckKind::look);
  }
  void tell(const fit::Answer& given) { put(*book, must(book::answer(book->views(), f.check, {given}, clock.now()))); }
  void off(fit::Mark mark, fit::Finding finding, fit::Side side = fit::Side::both) {
    tell(fit::MarkSeen{mark, finding, side, fit::HoldHow::unsaid, std::nullopt});
  }
  void restSnug() {
    for (const fit::Mark mark : fit::kMarks) off(mark, fit::Finding::snug);
    tell(fit::PointsSound{});
  }
  void end() { put(*book, must(book::endCheck(book->views(), f.check, clock.now()))); }
  [[nodiscard]] fit::Assessment now() {
    const season::CheckRecord& check = *book->views().openCheck(f.check);
    return fit::assess(must(season::setupOf(book->views(), check, today())), check.state);
  }
  [[nodiscard]] std::string firstAdvice() {
    const fit::Assessment all = now();
    if (all.advice.empty()) return {};
    const fit::Advice& first = all.advice.front();
    return first.doText() + (first.port ? " " + std::string(code(*first.port)) : "");
  }
  [[nodiscard]] const season::AthleteRecord& athlete() const { return *book->views().athlete(f.athlete); }
  [[nodiscard]] season::DueRow row() { return season::rowOf(book->views(), athlete(), {clock.now()}, {}); }
};

const season::DueReason* airReason(const season::DueRow& row) {
  for (const season::DueReason& reason : row.reasons)
    if (reason.kind == season::DueKind::airChanged) return &reason;
  return nullptr;
}

}  // namespace

TEST_CASE("A jaw said to press at 2 C lets no air out while it is cold, and lets it out when it presses still, warm") {
  ColdWorld world;
  world.weather(2);
  world.sayJawTight();
  world.look();
  world.weather(2);
  world.off(fit::Mark::jaw, fit::Finding::over, fit::Side::left);
  CHECK(world.firstAdvice() == "warm");
  for (const fit::Advice& each : world.now().advice) CHECK(each.deed != fit::Deed::release);
  CHECK(world.now().verdict == fit::Verdict::adjust);
  world.weather(21);  // the helmet was brought indoors
  world.off(fit::Mark::jaw, fit::Finding::over, fit::Side::left);
  CHECK(world.firstAdvice() == "release jaw-left");
}

TEST_CASE("What a person says of the cold stands in that check whatever the weather says") {
  ColdWorld world;
  world.look();
  world.weather(2);
  world.off(fit::Mark::jaw, fit::Finding::over);
  CHECK(world.firstAdvice() == "warm");
  world.tell(fit::ColdSeen{false, true});
  CHECK(world.now().advice.empty());
  world.off(fit::Mark::jaw, fit::Finding::over, fit::Side::right);
  CHECK(world.firstAdvice() == "release jaw-right");
}

TEST_CASE("Cold is below 5 C, or so much colder than when its air was set that the sheet's allowance is gone; not known is not cold") {
  ColdWorld world;
  const auto isCold = [&] { return world.book->views().openCheck(world.f.check)->state.isCold; };
  world.look();
  world.weather(14);
  world.off(fit::Mark::brow, fit::Finding::snug);
  CHECK_FALSE(isCold());
  world.weather(4.9);
  world.off(fit::Mark::brow, fit::Finding::snug);
  CHECK(isCold());
  world.weather(5);
  world.off(fit::Mark::brow, fit::Finding::snug);
  CHECK_FALSE(isCold());
  // Set to 20 kPa at 22 C: the allowance of 7 kPa is gone below 5 C only (by hand, 121,325 Pa * dT / 295.15 K = 7,000 Pa at dT = 17.03 K),
  // so that the second half of the rule shows on a helmet set where it was hot.
  const auto* unit = world.book->views().unit(world.f.unit);
  season::UnitRecord hot = *unit;
  season::AirEvent set;
  set.kind = season::AirKind::set;
  set.gauge = Pressure{20000};
  set.climate.temperatureMk = 303150;
  hot.air = {set};
  const auto* sheet = world.book->views().sheet(world.f.sheet);
  const auto at = [](double celsius) {
    season::Climate c;
    c.temperatureMk = static_cast<std::int32_t>(Temperature::celsius(celsius).mk);
    return c;
  };
  // 121,325 * 17.5 / 303.15 = 7,003.8 Pa against 121,325 * 17.4 / 303.15 = 6,963.7 Pa
  CHECK(season::isCold(hot, *sheet, at(12.5)));
  CHECK_FALSE(season::isCold(hot, *sheet, at(12.6)));
  CHECK_FALSE(season::isCold(hot, *sheet, {}));
}

TEST_CASE("Air added in the cold, one pump at a time, fits for this cold; a warmer session asks for a recheck and says why") {
  ColdWorld world;
  world.look();
  world.weather(2);
  world.off(fit::Mark::sides, fit::Finding::under);
  CHECK(world.firstAdvice() == "add sides");
  CHECK(world.now().advice.front().amountText() == "1 pump");
  world.tell(fit::Adjusted{fit::Deed::add, gear::Port::sides, std::nullopt, 1, std::nullopt, std::nullopt});
  world.restSnug();
  world.end();
  CHECK(world.athlete().checks.back().verdict == fit::Verdict::fits);
  CHECK(world.athlete().checks.back().isForCold);
  CHECK(airReason(world.row()) == nullptr);
  world.clock.stepDays(1);
  world.weather(6);
  CHECK(airReason(world.row()) == nullptr);
  world.weather(22);
  const season::DueRow row = world.row();
  REQUIRE(airReason(row) != nullptr);
  CHECK(airReason(row)->cause == season::AirCause::afterCold);
  CHECK(row.lane == season::Lane::beforePractice);
}

TEST_CASE("Cold, for whom it was seen and what fitted for it come back from the file as they were") {
  ColdWorld world;
  world.look();
  world.weather(2);
  world.off(fit::Mark::sides, fit::Finding::under);
  const fit::State before = world.book->views().openCheck(world.f.check)->state;
  CHECK(before.isCold);
  world.book.reset();
  world.book = world.open();
  CHECK(world.book->views().openCheck(world.f.check)->state == before);
  world.tell(fit::Adjusted{fit::Deed::add, gear::Port::sides, std::nullopt, 1, std::nullopt, std::nullopt});
  world.restSnug();
  world.end();
  world.book.reset();
  world.book = world.open();
  CHECK(world.athlete().checks.back().isForCold);
}
