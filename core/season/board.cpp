// SPDX-License-Identifier: Apache-2.0
#include "core/season/board.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <tuple>
#include <utility>

#include "core/season/board_reasons.h"

namespace snugline::season {

namespace {

constexpr std::int32_t kNoNumber = std::numeric_limits<std::int32_t>::max();

std::int32_t numberOf(const std::string& jersey) {
  std::int32_t number = 0;
  const auto [end, error] = std::from_chars(jersey.data(), jersey.data() + jersey.size(), number);
  return error != std::errc{} || end != jersey.data() + jersey.size() || number < 0 ? kNoNumber : number;
}

// Total: two rows are never of one rank, so that a board comes out the same in whatever order the athletes are walked.
auto rankOf(const DueRow& row) {
  const auto text = [](const std::string& s) { return std::string_view(s); };
  return std::tuple(row.lane, row.grade, row.dueBy, numberOf(row.jersey), text(row.jersey), text(row.family), text(row.given),
                    text(row.athlete));
}

}  // namespace

std::string_view code(Lane l) {
  switch (l) {
    case Lane::doNotWear:
      return "do-not-wear";
    case Lane::beforePractice:
      return "before-practice";
    case Lane::noHelmet:
      return "no-helmet";
    case Lane::weekly:
      return "weekly";
    case Lane::nothingDue:
      return "nothing-due";
  }
  return {};
}

std::string_view code(DueKind k) {
  switch (k) {
    case DueKind::seeAthleteNow:
      return "see-athlete-now";
    case DueKind::withTrainer:
      return "with-athletic-trainer";
    case DueKind::pointsAfterHit:
      return "points-after-report";
    case DueKind::noUnit:
      return "no-helmet";
    case DueKind::held:
      return "held";
    case DueKind::unitFault:
      return "unit-fault";
    case DueKind::labelLapsed:
      return "label-lapsed";
    case DueKind::labelMissing:
      return "label-missing";
    case DueKind::labelUnreadable:
      return "label-unreadable";
    case DueKind::labelUnknown:
      return "label-unknown";
    case DueKind::verdictDoNotWear:
      return "verdict-do-not-wear";
    case DueKind::brokeSaid:
      return "broke-said";
    case DueKind::twoAthletes:
      return "two-athletes";
    case DueKind::twoUnits:
      return "two-helmets";
    case DueKind::labelDisputed:
      return "label-disputed";
    case DueKind::unitAway:
      return "helmet-away";
    case DueKind::noSheet:
      return "no-sheet";
    case DueKind::notInService:
      return "not-in-service";
    case DueKind::keptUnit:
      return "old-helmet-out";
    case DueKind::neverFitted:
      return "never-fitted";
    case DueKind::checkOpen:
      return "check-unfinished";
    case DueKind::adjustOpen:
      return "adjust-open";
    case DueKind::wordOpen:
      return "word-open";
    case DueKind::hairChanged:
      return "hair-changed";
    case DueKind::partChanged:
      return "part-changed";
    case DueKind::airChanged:
      return "air-changed";
    case DueKind::airLeaking:
      return "air-leaking";
    case DueKind::lineOff:
      return "line-off";
    case DueKind::dryHair:
      return "dry-hair";
    case DueKind::breakIn:
      return "break-in-look";
    case DueKind::weeklyLook:
      return "weekly-look";
    case DueKind::pointUnseen:
      return "point-unseen";
    case DueKind::labelLapsing:
      return "label-lapsing";
    case DueKind::tapeStale:
      return "tape-stale";
    case DueKind::neverTaped:
      return "never-taped";
    case DueKind::stillOut:
      return "still-out";
  }
  return {};
}

bool jerseyBefore(const std::string& a, const std::string& b) {
  return std::pair(numberOf(a), std::string_view(a)) < std::pair(numberOf(b), std::string_view(b));
}

bool ranksBefore(const DueRow& a, const DueRow& b) { return rankOf(a) < rankOf(b); }

const DueRow* Board::row(const std::string& athlete) const {
  const auto it = std::find_if(rows.begin(), rows.end(), [&](const DueRow& row) { return row.athlete == athlete; });
  return it == rows.end() ? nullptr : &*it;
}

Board boardOf(const Views& views, BoardTime time, const Conditions& conditions) {
  const DueContext context = contextOf(views, time, conditions);
  std::vector<DueRow> rows;
  rows.reserve(views.athletes.size());
  for (const auto& [id, athlete] : views.athletes) {
    if (athlete.isOnRoster) rows.push_back(makeRow(context, athlete));
  }
  // A row is large; its rank and its place are small.
  std::vector<std::pair<decltype(rankOf(rows.front())), std::size_t>> order;
  order.reserve(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) order.emplace_back(rankOf(rows[i]), i);
  std::sort(order.begin(), order.end());
  Board board;
  board.weather = weatherNow(views, time, conditions);
  board.clocks = clockDoubts(views, time.now);
  board.rows.reserve(rows.size());
  for (const auto& [rank, i] : order) {
    const DueRow& row = board.rows.emplace_back(std::move(rows[i]));
    ++board.counts[static_cast<std::size_t>(row.lane)];
    board.airUnknown += row.isAirUnknown ? 1 : 0;
    board.withTrainerCount += row.grade == Grade::withTrainer ? 1 : 0;
    board.foldedCount += row.lane == Lane::beforePractice && row.grade == Grade::weather ? 1 : 0;
  }
  if (board.foldedCount <= kWeatherRowsMost) board.foldedCount = 0;
  return board;
}

}  // namespace snugline::season
