// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/season/match_table.h"
#include "core/season/plan_parts.h"
#include "core/season/tape.h"

namespace snugline::season {

namespace {

constexpr double kChanceWorthAdding = 1e-10;  // ours: of a hundred thousand heads this leaves out a hundred-thousandth of one

// What a head may measure: half of the chance on either side of the middle, each half as a normal of its own spread.
struct HeadGuess {
  double middleUm = 0, belowUm = 0, aboveUm = 0;
  [[nodiscard]] double upTo(double um) const {
    return 0.5 * std::erfc((middleUm - um) / (um < middleUm ? belowUm : aboveUm) / std::numbers::sqrt2);
  }
};

HeadGuess guessOfAge(int age) {
  const fit::HeadsOfAge heads = fit::headsOfAge(age);
  return {static_cast<double>(heads.middle.um), static_cast<double>(heads.below.um), static_cast<double>(heads.above.um)};
}

// The head in the middle of the next season.
HeadGuess guessOf(const AthleteRecord& athlete, const PlanWishes& wishes, const PlanAnswer& calendar) {
  const Day middle = calendar.nextStart.plus(daysBetween(calendar.nextStart, calendar.nextEnd) / 2);
  if (const TapeRecord* tape = lastTape(athlete); tape != nullptr && !isReadingWanted(*tape)) {
    if (const auto read = fit::sizeOf(gear::ModelSheet{}, tape->readings, wishes.tem)) {
      const double years = yearsGrown(athlete, dayOf(tape->stamp.at), middle);
      const double grown = static_cast<double>(kGrowthSpread.um) * years;
      const double spread = std::hypot(static_cast<double>(read->uncertainty.um), grown);
      return {static_cast<double>(read->circumference.um) + static_cast<double>(kGrowthPerYear.um) * years, spread, spread};
    }
  }
  return guessOfAge(athlete.birthYear ? calendar.nextSeason - *athlete.birthYear : wishes.newcomerAge + 1);
}

class Counter {
 public:
  Counter(const Views& views, const PlanWishes& wishes, PlanKinds& kinds, PlanAnswer& answer)
      : m_views(views), m_wishes(wishes), m_kinds(kinds), m_answer(answer) {}

  Result<void> count() {
    std::vector<const AthleteRecord*> roster;
    for (const auto& [id, athlete] : m_views.athletes)
      if (athlete.isOnRoster) roster.push_back(&athlete);
    std::sort(roster.begin(), roster.end(), [](const auto* a, const auto* b) { return idBefore(a->id, b->id); });
    for (const AthleteRecord* athlete : roster)
      if (auto added = add(*athlete); !added) return added;
    m_answer.expectedNewcomers =
        m_wishes.newcomers.value_or(std::max(0.0, static_cast<double>(roster.size()) - m_answer.expectedReturning));
    return addNewcomers();
  }

 private:
  Result<void> add(const AthleteRecord& athlete) {
    const UnitRecord* worn = m_views.unit(lastHelmetOf(athlete));
    PlanKind* kind = worn == nullptr || worn->place == UnitPlace::retired || worn->place == UnitPlace::lost
                         ? nullptr
                         : m_kinds.find(m_views.standingSheet(worn->sheet), worn->size);
    const std::string sheet = kind == nullptr ? m_answer.newSheet : kind->sheet;
    const TapeState tape = tapeState(athlete, m_answer.today);
    m_answer.untaped += isSizeKnown(tape) ? 0 : 1;
    m_answer.staleTapes += tape == TapeState::stale ? 1 : 0;
    m_answer.unknownBirthYears += athlete.birthYear ? 0 : 1;
    if (kind == nullptr) kind = likeliest(athlete, sheet);
    if (kind != nullptr) ++kind->wornNow;
    if (athlete.birthYear && m_answer.nextSeason - *athlete.birthYear > m_wishes.lastAge) {
      ++m_answer.leaving;
      return {};
    }
    m_answer.expectedReturning += m_wishes.returning;
    return spread(
        sheet, guessOf(athlete, m_wishes, m_answer),
        [&](PlanKind& its, double odds) {
          its.next.addHead(m_wishes.returning * odds);
          its.returning += m_wishes.returning * odds;
        },
        m_wishes.returning);
  }

  Result<void> addNewcomers() {
    const double expected = m_answer.expectedNewcomers;
    return spread(
        m_answer.newSheet, guessOfAge(m_wishes.newcomerAge),
        [&](PlanKind& its, double odds) {
          its.next.addNewcomers(expected * odds);
          its.newcomers += expected * odds;
        },
        expected);
  }

  // A head without a helmet that counts: the size that its tape says today.
  PlanKind* likeliest(const AthleteRecord& athlete, const std::string& sheet) {
    const gear::ModelSheet* model = m_kinds.sheet(sheet);
    const TapeRecord* tape = lastTape(athlete);
    if (model == nullptr || tape == nullptr) return nullptr;
    const auto answer = fit::sizeOf(*model, tape->readings, m_wishes.tem);
    return answer ? m_kinds.find(sheet, answer->size) : nullptr;
  }

  template <typename Add>
  Result<void> spread(const std::string& sheet, const HeadGuess& guess, const Add& addTo, double heads) {
    const gear::ModelSheet* model = m_kinds.sheet(sheet);
    if (model == nullptr) {  // no sheet in the Book at all
      m_answer.offChart += heads;
      return {};
    }
    // Any reading gives the bands, overlaps split as for a tape.
    const auto chart = fit::sizeOf(*model, {fit::kTapeLowest});
    if (!chart) return tl::unexpected<Error>(chart.error());
    const auto first = static_cast<std::size_t>(m_kinds.firstOf(sheet));
    double none = 1;
    for (std::size_t i = 0; i < chart->odds.size(); ++i) {
      const fit::SizeOdds& band = chart->odds[i];
      const double odds = guess.upTo(static_cast<double>(band.high.um)) - guess.upTo(static_cast<double>(band.low.um));
      if (odds > kChanceWorthAdding) addTo(m_kinds.all()[first + i], odds);
      none -= odds;
    }
    m_answer.offChart += heads * std::max(0.0, none);
    return {};
  }

  const Views& m_views;
  const PlanWishes& m_wishes;
  PlanKinds& m_kinds;
  PlanAnswer& m_answer;
};

}  // namespace

Result<void> addHeads(const Views& views, const PlanWishes& wishes, PlanKinds& kinds, PlanAnswer& answer) {
  return Counter(views, wishes, kinds, answer).count();
}

}  // namespace snugline::season
